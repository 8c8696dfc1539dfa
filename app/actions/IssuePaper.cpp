#include "app/actions/IssuePaper.h"

#include "app/print/PaperLanguage.h"
#include "app/print/PdfSeal.h"
#include "db/EventStore.h"
#include "db/KeyStore.h"

#include <algorithm>

namespace loopwright {

namespace {

QByteArray signatureOver(const Signer &signer, const QByteArray &text)
{
    return signer.secret.sign(text);
}

bool isOf(const Event &event, const QString &certificate)
{
    return event.detail.value("certificate") == certificate && event.detail.contains("issue");
}

} // namespace

SignedClaims signedClaims(const CertificateContent &content, const Signer &signer)
{
    const auto claims = CertificateClaims::of(content, signer.key.fingerprint());
    return {claims, signatureOver(signer, claims.text())};
}

Result<CertificateProof> proofOf(const Database &database, const SignedClaims &claims,
                                 const LogHead &head, const Signer &signer)
{
    CertificateProof proof{claims, {signer.key}, signedHead(head, signer)};
    if (claims.claims.key == signer.key.fingerprint())
        return proof;
    // The claims were signed before the key was renewed.
    LOOPWRIGHT_ASSIGN(const auto earlier, KeyStore(database).find(claims.claims.key));
    if (!earlier)
        return failure(ErrorCode::DatabaseTrouble,
                       "The key that signed this certificate is not in the records; verify the "
                       "history.",
                       claims.claims.number);
    proof.stations.insert(proof.stations.begin(), *earlier);
    return proof;
}

Result<CertificatePaper> sealedPaper(const CertificateContent &content, const IssueMark &mark,
                                     Paper paper, const Signer &signer)
{
    LOOPWRIGHT_ASSIGN(auto made, certificatePaper(content, mark, paper));
    LOOPWRIGHT_ASSIGN(
        made.pdf, sealedPdf(made.pdf, signer.key.fingerprint(), [&signer](const QByteArray &text) {
            return signatureOver(signer, text);
        }));
    return made;
}

Result<std::optional<CertificatePaper>> paperMadeAgain(const CertificateContent &content,
                                                       const IssueMark &mark, Paper paper,
                                                       const Signer &signer, const QString &sha256)
{
    // In whichever language it was given out; that of the window first.
    std::vector<PaperLanguage> tried{paperLanguage()};
    for (const Language &each : languages())
        if (tried.front().code != QLatin1StringView(each.code))
            tried.push_back(paperLanguageOf(QString::fromLatin1(each.code)));
    for (const PaperLanguage &language : tried) {
        const PaperLanguageHere here(language);
        LOOPWRIGHT_ASSIGN(auto made, sealedPaper(content, mark, paper, signer));
        if (sha256Hex(made.pdf) == sha256)
            return std::optional(std::move(made));
    }
    return std::optional<CertificatePaper>();
}

Result<Signatures> laterSignatures(const Database &database, const QString &order,
                                   const QString &certificate, int upToIssue)
{
    Signatures later;
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database).ofOrder(order));
    for (const Event &event : events) {
        if (event.kind != signedEvent || !isOf(event, certificate) ||
            (upToIssue > 0 && event.detail.value("issue").toInt() > upToIssue))
            continue;
        LOOPWRIGHT_ASSIGN(const auto signatures,
                          readSignatures(event.detail.value("signatures").toArray(), signedEvent));
        later.insert(later.end(), signatures.begin(), signatures.end());
    }
    return later;
}

QJsonObject issueDetail(const QString &certificate, const QString &digest, int issue,
                        const LogHead &head)
{
    return {{"certificate", certificate},
            {"digest", digest},
            {"issue", issue},
            {"head", head.toJson()}};
}

Result<IssueMark> issueMark(const Database &database, const StoredCertificate &certificate,
                            const CertificateIssue &issue, const Signer &signer)
{
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database).ofOrder(certificate.order));
    const auto event = std::ranges::find_if(events, [&](const Event &each) {
        return isOf(each, certificate.number) && each.detail.value("issue") == issue.issue;
    });
    if (event == events.end())
        return failure(ErrorCode::DatabaseTrouble,
                       QString("Issue %1 of certificate %2 has no event; verify the history.")
                           .arg(QString::number(issue.issue), certificate.number));
    LOOPWRIGHT_ASSIGN(
        auto later, laterSignatures(database, certificate.order, certificate.number, issue.issue));
    LOOPWRIGHT_ASSIGN(const auto claims,
                      SignedClaims::parse(certificate.claims, "certificate " + certificate.number));
    LOOPWRIGHT_ASSIGN(const auto head,
                      LogHead::fromJson(event->detail.value("head").toObject(), event->kind));
    LOOPWRIGHT_ASSIGN(auto proof, proofOf(database, claims, head, signer));
    return IssueMark{issue.issue - 1, issue.at, event->kind == signedEvent, std::move(later),
                     std::move(proof)};
}

} // namespace loopwright
