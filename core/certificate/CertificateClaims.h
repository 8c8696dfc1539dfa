#pragma once
// What a certificate claims, in a few lines that a person can read: the text that the station signs
// and that the square on page 1 holds. A reader of the square sees what was signed, so that nobody
// dresses true claims in other figures.

#include "core/certificate/CertificateContent.h"

namespace loopwright {

struct CertificateClaims
{
    QString number; ///< CertificateNumber::text()
    QDate date;     ///< of the first issue, local
    OrderOutcome outcome = OrderOutcome::Accepted;
    QString circuit;
    QStringList numbers;    ///< directory numbers, for a person
    QStringList exceptions; ///< keys of the criteria that are excepted
    QString digest;         ///< SHA-256 of record.json, hexadecimal
    QString key;            ///< fingerprint of the key that signs

    bool operator==(const CertificateClaims &) const = default;

    /// `key` signs.
    static CertificateClaims of(const CertificateContent &content, const QString &key);

    /// Eight lines in the order above, each ended by a line feed; a list is joined by ", " and may
    /// be empty. This is what is signed.
    QByteArray text() const;
    /// Only what text() gives is read. BadInput, with the line.
    static Result<CertificateClaims> parse(const QByteArray &text, const QString &place);

    QJsonObject toJson() const;
};

/// The claims and, on a ninth line, the signature over them: base64url without padding.
struct SignedClaims
{
    CertificateClaims claims;
    QByteArray signature; ///< 86 characters

    bool operator==(const SignedClaims &) const = default;

    QByteArray text() const { return claims.text() + signature; }
    /// BadInput, with the line. What a reader of codes adds as it saves the text is passed over: a
    /// byte-order mark, carriage returns before line feeds, empty lines at the end.
    static Result<SignedClaims> parse(const QByteArray &text, const QString &place);
};

} // namespace loopwright
