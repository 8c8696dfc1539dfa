#pragma once
// A certificate as it was issued or issued again.

#include "core/certificate/CertificateContent.h"

#include <QJsonObject>

namespace loopwright {

struct IssuedCertificate
{
    CertificateContent content;
    QString number, digest, code;
    int pages = 0;
    bool copy = false; ///< issued before: the same certificate, marked as a copy

    QJsonObject toJson() const;
};

} // namespace loopwright
