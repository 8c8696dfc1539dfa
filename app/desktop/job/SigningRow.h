#pragma once
// Where installer and customer sign, side by side. Who signed the certificate already stands there
// with name and day in the place of the field.

#include "app/desktop/widgets/SignLine.h"
#include "core/certificate/CertificateContent.h"

#include <QJsonObject>

namespace loopwright {

class SignaturePad;

class SigningRow : public QWidget
{
    Q_OBJECT
public:
    /// Object names begin with `part`.
    explicit SigningRow(const QString &part, QWidget *parent = nullptr);

    /// Who signed the certificate that stands; none, if none does.
    void setSigned(const Signatures &before, QDate today);
    /// What is drawn here by those who did not sign before; `names` by role.
    Signatures drawn(const QMap<QString, QString> &names, const Moment &now) const;
    bool isDrawn() const { return !drawn({}, {}).empty(); }
    /// The first that is empty, of those who did not sign before; null if there is none.
    QWidget *emptyPad() const;
    /// "the installer and the customer": who did not sign before; empty if both did.
    QString whoLacks() const;
    void clear();

    /// As a draft: strokes by role.
    QJsonObject strokes() const;
    void setStrokes(const QJsonObject &strokes);

signals:
    void edited(); ///< a stroke was ended, or a field was wiped

private:
    struct Signer
    {
        QString role;
        SignaturePad *pad;
        SignLine *done;
        bool hasSigned = false;
    };
    std::vector<Signer> m_signers;
};

} // namespace loopwright
