#pragma once
// A certificate as it was issued or issued again.

#include "app/print/CertificateDocument.h"

#include <QJsonObject>

namespace loopwright {

struct IssuedCertificate
{
    CertificateContent content;
    QString number, digest, code;
    int pages = 0;
    bool copy = false;    ///< issued before: the same certificate, marked as a copy
    QString because = {}; ///< why what a copy says holds no longer; empty: it does
    IssueMark
        mark; ///< `countersigns`: issued before, and no copy: the first that bears a signature

    /// "Certificate 26-… stands no longer: Since then …"; empty if it stands.
    QString doubt() const;
    QJsonObject toJson() const;
};

} // namespace loopwright
