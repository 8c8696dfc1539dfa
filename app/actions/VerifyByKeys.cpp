// What can be told of a certificate by public keys alone.

#include "app/actions/VerifyCertificate.h"
#include "app/print/CoverSheet.h"
#include "app/print/PdfFile.h"
#include "app/print/PdfSeal.h"
#include "app/trust/Signing.h"
#include "core/certificate/CertificateNumber.h"

#include <algorithm>

namespace loopwright {

namespace {

/// What a file says of itself; nothing of it is believed yet.
struct Handed
{
    std::optional<SignedClaims> claims;
    std::optional<CertificateContent> content; ///< record.json
    QByteArray record;
    std::vector<PublicKey> stations;
    std::optional<PdfSeal> seal;
    bool isPdf = false, isCover = false;
};

void take(const QByteArray &attachment, Handed &handed)
{
    if (auto claims = SignedClaims::parse(attachment, "claims.txt"); claims && !handed.claims) {
        handed.claims = std::move(*claims);
        return;
    }
    if (auto keys = readPublicKeys(attachment, "keys.txt"); keys && handed.stations.empty()) {
        handed.stations = std::move(*keys);
        return;
    }
    const auto object = parseJsonObject(attachment, "record.json");
    if (!object || handed.content)
        return;
    if (auto content = CertificateContent::fromJson(*object, "record.json")) {
        handed.content = std::move(*content);
        handed.record = attachment;
    }
}

Handed handedIn(const QByteArray &file)
{
    Handed handed;
    handed.isPdf = file.contains("%PDF-");
    if (!handed.isPdf) {
        take(file.trimmed(), handed);
        return handed;
    }
    const PdfContents contents = readPdf(file);
    handed.isCover = isCover(contents);
    handed.seal = sealOf(file);
    for (const char *name : {"claims.txt", "keys.txt", "record.json"})
        take(contents.attachment(name), handed);
    return handed;
}

/// The key with this fingerprint: one of those that are trusted, or a station's that one of them
/// endorsed.
std::optional<PublicKey> trusted(const QString &fingerprint, const std::vector<PublicKey> &keys,
                                 const std::vector<PublicKey> &stations)
{
    const auto isIt = [&fingerprint](const PublicKey &key) {
        return key.fingerprint() == fingerprint;
    };
    if (const auto known = std::ranges::find_if(keys, isIt); known != keys.end())
        return *known;
    const auto station = std::ranges::find_if(stations, isIt);
    if (station == stations.end())
        return std::nullopt;
    const bool endorsed = std::ranges::any_of(
        keys, [&](const PublicKey &issuer) { return isEndorsedBy(issuer, *station); });
    return endorsed ? std::optional(*station) : std::nullopt;
}

/// Whether the record is the one that the claims, which are true, speak of.
RecordVerdict recordVerdict(const Handed &handed, const CertificateClaims &claims)
{
    if (!handed.content)
        return RecordVerdict::Missing;
    return sha256Hex(handed.record) == claims.digest &&
                   CertificateClaims::of(*handed.content, claims.key) == claims
               ? RecordVerdict::Genuine
               : RecordVerdict::Altered;
}

enum class SealState
{
    Missing,  ///< lost when the file was saved anew
    Broken,   ///< it fits none of the keys that are given or in the file
    Stranger, ///< it fits a key in the file which nobody who is trusted endorsed
    Good
};

SealState stateOf(const Handed &handed, const std::vector<PublicKey> &keys)
{
    if (!handed.seal)
        return SealState::Missing;
    const PdfSeal &seal = *handed.seal;
    if (const auto sealer = trusted(seal.key, keys, handed.stations))
        return isSignedBy(sealer->bytes, seal.text, seal.signature) ? SealState::Good
                                                                    : SealState::Broken;
    const bool fits = std::ranges::any_of(handed.stations, [&seal](const PublicKey &key) {
        return key.fingerprint() == seal.key && isSignedBy(key.bytes, seal.text, seal.signature);
    });
    return fits ? SealState::Stranger : SealState::Broken;
}

/// The claims are true; what of the file around them?
void judgeFile(const Handed &handed, SealState seal, CertificateCheck &check)
{
    check.record = recordVerdict(handed, *check.claims);
    if (!handed.isPdf) {
        check.verdict = CertificateVerdict::Genuine;
        check.reason = "The text is signed as it stands; compare it with the paper.";
        return;
    }
    check.verdict = CertificateVerdict::Altered;
    if (check.record != RecordVerdict::Genuine) {
        check.reason = "The record in the file is not the one that was signed.";
    } else if (seal == SealState::Good) {
        check.verdict = CertificateVerdict::Genuine;
        check.reason = "Every byte of the file is as it was signed.";
    } else if (seal == SealState::Stranger) {
        check.verdict = CertificateVerdict::Unknown;
        check.reason = QString("The record in the file is the one that was signed, but its pages "
                               "are signed with the key %1, which is none of those given, nor "
                               "endorsed by one of them: ask the issuer for its present keys.")
                           .arg(groupedFingerprint(handed.seal->key));
    } else {
        check.reason = "The record in the file is the one that was signed, but the file around it "
                       "was changed or saved anew: do not trust its pages, compare them.";
    }
}

CertificateCheck changedFile(const Handed &handed)
{
    CertificateCheck check;
    check.verdict = CertificateVerdict::Altered;
    check.record = handed.content ? RecordVerdict::Altered : RecordVerdict::Missing;
    check.reason = "The file was changed after it was signed.";
    return check;
}

} // namespace

CertificateCheck verifyByKeys(const QByteArray &file, const std::vector<PublicKey> &keys)
{
    const Handed handed = handedIn(file);
    if (handed.isCover)
        return CertificateCheck::unknown(
            "This is the cover of a set and no certificate; verify the files of the "
            "certificates that it names.");
    const SealState seal = stateOf(handed, keys);
    const auto signer = handed.claims ? trusted(handed.claims->claims.key, keys, handed.stations)
                                      : std::optional<PublicKey>();
    if (!signer && seal == SealState::Broken)
        return changedFile(handed);
    if (!handed.claims)
        return CertificateCheck::unknown(
            "The file bears no signed claims: it is no certificate, or what it was has "
            "been taken out of it.");
    const auto &[claims, signature] = *handed.claims;
    CertificateCheck check;
    check.because = "Only the records of who issued it can tell whether it still stands.";
    check.certificate = claims.number;
    if (!signer) {
        check.reason =
            QString("It says that it is signed with the key %1, which is none of those given, nor "
                    "endorsed by one of them.")
                .arg(groupedFingerprint(claims.key));
        return check;
    }
    const auto number = CertificateNumber::parse(claims.number);
    const bool isHis = number && number->station == signer->holder;
    if (!isHis || !isSignedBy(signer->bytes, claims.text(), signature)) {
        check.verdict = CertificateVerdict::Altered;
        check.record = handed.content ? RecordVerdict::Altered : RecordVerdict::Missing;
        check.reason = isHis ? QString("The signature does not fit what the certificate claims.")
                             : QString("The number is not one of the station whose key signed.");
        return check;
    }
    check.claims = claims;
    check.signedBy = signer->words();
    if (handed.content)
        check.order = handed.content->order;
    judgeFile(handed, seal, check);
    return check;
}

} // namespace loopwright
