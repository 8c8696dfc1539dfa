#include "app/actions/VerifyCertificate.h"

#include "app/actions/Issuing.h"
#include "app/actions/LineSince.h"
#include "app/print/CoverSheet.h"
#include "app/print/PdfFile.h"
#include "core/certificate/CertificateNumber.h"
#include "core/certificate/LineChange.h"
#include "db/CertificateStore.h"
#include "db/DecisionStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/KeyStore.h"
#include "db/OrderStore.h"
#include "db/StationStore.h"

#include <QRegularExpression>
#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

/// All that names a certificate in a PDF: its title, its record, and its bytes as they are. They
/// hold the title too, so that it is found even if a damaged file cannot be read; a damaged title
/// leaves the record.
QString namingText(const QByteArray &pdf, const PdfContents &contents)
{
    QString text = QString::fromLatin1(pdf) + '\n' + contents.title + '\n' + contents.subject;
    for (const PdfAttachment &attachment : contents.attachments)
        text += '\n' + QString::fromUtf8(attachment.bytes);
    return text;
}

Result<std::optional<StoredCertificate>>
certificateNamedIn(const Database &database, const QByteArray &file, const CertificateCheck &byKeys)
{
    if (isCover(readPdf(file)))
        return std::optional<StoredCertificate>();
    const QString text = byKeys.claims ? byKeys.claims->number : namingText(file, readPdf(file));
    static const QRegularExpression shape(R"(\d\d-[A-Z0-9]{6}-\d{5}-\d\d)");
    auto found = shape.globalMatch(text);
    QSet<QString> tried;
    constexpr qsizetype mostTried = 1000; // a certificate names its own, and one that it replaces
    while (found.hasNext() && tried.size() < mostTried) {
        const QString number = found.next().captured();
        if (tried.contains(number))
            continue;
        tried.insert(number);
        auto certificate = CertificateStore(database).find(number);
        if (!certificate || *certificate)
            return certificate;
    }
    return std::optional<StoredCertificate>();
}

/// Why a counted fact was voided after all; nothing if none was.
Result<std::optional<QString>> voidedEvidence(const Database &database,
                                              const StoredDecision &decision)
{
    LOOPWRIGHT_ASSIGN(const auto result, parseJsonObject(decision.result, "decision"));
    for (const QJsonValue &criterion : result.value("criteria").toArray())
        for (const QJsonValue &id : criterion.toObject().value("evidence").toArray()) {
            LOOPWRIGHT_ASSIGN(const auto voiding, FactStore(database).voidOf(id.toString()));
            if (voiding)
                return std::optional(voiding->as<VoidFact>()->because);
        }
    return std::optional<QString>();
}

bool isOfIssue(const Event &event, const StoredCertificate &certificate)
{
    return event.kind == "certificate_issued" &&
           event.detail.value("certificate") == certificate.number;
}

/// What the order is now, held against what was decided on. Empty if they agree.
QString orderSince(const ServiceOrder &then, OrderOutcome certified, const Certifying &about)
{
    const ServiceOrder &now = about.stored.order;
    if (const QString change = lineChange(then, now); !change.isEmpty())
        return QString("Since then %1.").arg(change);
    if (then.type != now.type)
        return "Since then the type of the order was changed.";
    const OrderOutcome outcome = about.decision.outcome;
    if (isAccepted(outcome))
        return outcome == certified ? QString()
                                    : QString("Order %1 is %2 now.")
                                          .arg(now.number, toText(outcome).replace(u'_', u' '));
    const CriterionResult *open = about.decision.firstOpen();
    return QString("Order %1 is not accepted now%2")
        .arg(now.number, open ? ": " + open->sentence().english() : QString("."));
}

/// Why what the certificate says holds no longer; empty if it does.
Result<QString> overtaken(Records &records, const StoredCertificate &certificate,
                          const std::vector<Event> &ofCircuit)
{
    const Database &database = records.database();
    LOOPWRIGHT_ASSIGN(const auto about, certifying(records, certificate.order));
    if (about.stored.status == OrderStatus::Cancelled)
        return QString("Order %1 was cancelled.").arg(certificate.order);
    LOOPWRIGHT_ASSIGN(const auto decision, DecisionStore(database).find(certificate.decision));
    if (!decision)
        return QString("The records lack the decision that it attests; verify the history.");
    LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(decision->input, "decision"));
    LOOPWRIGHT_ASSIGN(const auto input, DecisionInput::fromJson(object, "decision"));
    LOOPWRIGHT_ASSIGN(const auto circuit,
                      lineSince(database, input.order, ofCircuit,
                                [&](const Event &event) { return isOfIssue(event, certificate); }));
    if (!circuit.isEmpty())
        return circuit;
    LOOPWRIGHT_ASSIGN(const auto voided, voidedEvidence(database, *decision));
    if (voided)
        return QString("Evidence that it counts was voided: %1").arg(*voided);
    LOOPWRIGHT_ASSIGN(const auto then,
                      CertificateContent::fromJson(certificate.content, certificate.number));
    return orderSince(input.order, then.outcome, about);
}

/// What the records say of a certificate of theirs; the paper itself is not judged here.
Result<CertificateCheck> standing(Records &records, const StoredCertificate &certificate)
{
    const Database &database = records.database();
    CertificateCheck check;
    check.verdict = CertificateVerdict::Genuine;
    check.certificate = certificate.number;
    check.order = certificate.order;
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(database).get(certificate.order));
    LOOPWRIGHT_ASSIGN(const auto ofCircuit, EventStore(database).ofCircuit(stored.order.circuit));
    const auto issue = std::ranges::find_if(
        ofCircuit, [&](const Event &event) { return isOfIssue(event, certificate); });
    if (issue != ofCircuit.end())
        check.later.assign(issue + 1, ofCircuit.end());
    LOOPWRIGHT_ASSIGN(check.troubles, troublesOf(records, stored.order.circuit));
    if (issue != ofCircuit.end())
        std::erase_if(check.troubles, [&](const Trouble &trouble) {
            return std::ranges::none_of(check.later, [&trouble](const Event &event) {
                return event.kind == "order_taken" && event.order == trouble.order;
            });
        });
    LOOPWRIGHT_ASSIGN(const auto all, CertificateStore(database).ofOrder(certificate.order));
    const auto claims = SignedClaims::parse(certificate.claims, certificate.number);
    const auto key = claims ? KeyStore(database).find(claims->claims.key)
                            : Result<std::optional<PublicKey>>(std::nullopt);
    const bool isIntact = digestOf(certificate.content) == certificate.digest && key && *key &&
                          claims->claims.digest == certificate.digest &&
                          isSignedBy((*key)->bytes, claims->claims.text(), claims->signature);
    if (!isIntact) {
        check.verdict = CertificateVerdict::Altered;
        check.reason = "The content that the records keep of this certificate was altered; verify "
                       "the history.";
        check.record = RecordVerdict::Altered;
        return check;
    }
    check.record = RecordVerdict::Genuine;
    check.claims = claims->claims;
    check.signedBy = (*key)->words();
    LOOPWRIGHT_ASSIGN(check.because, overtaken(records, certificate, ofCircuit));
    check.stands = check.because.isEmpty();
    if (all.back().number != certificate.number) {
        check.verdict = CertificateVerdict::Superseded;
        check.stands = false;
        check.reason =
            QString("Certificate %1 was issued for the order after it.").arg(all.back().number);
        check.because = check.reason;
    } else {
        check.reason = "It is the certificate that was issued, unaltered.";
    }
    return check;
}

/// Of another station of the issuer's, or of nobody that is known here. What bears the tag of a
/// station of these records, and is not in them, they never gave, or they are older than it.
Result<CertificateCheck> notOurs(Records &records, CertificateCheck byKeys,
                                 const std::vector<PublicKey> &keys)
{
    const auto number = CertificateNumber::parse(byKeys.certificate);
    const bool ours =
        number && std::ranges::find(keys, number->station, &PublicKey::holder) != keys.end();
    if (byKeys.verdict != CertificateVerdict::Genuine || !ours)
        return byKeys;
    LOOPWRIGHT_ASSIGN(const auto van, StationStore(records.database()).ofTag(number->station));
    if (van) {
        byKeys.because = QString("It was issued by %1, whose work is not here yet.").arg(van->name);
        return byKeys;
    }
    byKeys.verdict = CertificateVerdict::Unknown;
    byKeys.reason = QString("Its number is of station %1, whose records these are, and they do not "
                            "hold it: they never gave it, or they are older than the paper.")
                        .arg(number->station);
    return byKeys;
}

/// Of a paper that is not true nothing is said that could be taken for a word about it.
void makeAltered(CertificateCheck &check, const QString &reason)
{
    check.verdict = CertificateVerdict::Altered;
    check.reason = reason;
    check.stands.reset();
    check.because.clear();
    check.signedBy.clear();
}

Result<std::vector<PublicKey>> keysOfRecords(const Database &database)
{
    LOOPWRIGHT_ASSIGN(const auto stored, KeyStore(database).all());
    std::vector<PublicKey> keys;
    for (const StoredKey &each : stored)
        if (!each.revokedAt)
            keys.push_back(each.key);
    return keys;
}

} // namespace

Result<CertificateCheck> verifyCertificateFile(Records &records, const QByteArray &file)
{
    const CertificateStore store(records.database());
    LOOPWRIGHT_ASSIGN(const auto number, store.numberOfFile(sha256Hex(file)));
    if (number) {
        LOOPWRIGHT_ASSIGN(const auto certificate, store.find(*number));
        if (certificate)
            return standing(records, *certificate);
    }
    LOOPWRIGHT_ASSIGN(const auto keys, keysOfRecords(records.database()));
    const CertificateCheck byKeys = verifyByKeys(file, keys);
    LOOPWRIGHT_ASSIGN(const auto named, certificateNamedIn(records.database(), file, byKeys));
    if (!named)
        return notOurs(records, byKeys, keys);
    LOOPWRIGHT_ASSIGN(auto check, standing(records, *named));
    if (check.verdict == CertificateVerdict::Altered)
        return check;
    check.record = byKeys.record;
    const bool isSquare = !file.contains("%PDF-") && byKeys.claims == check.claims;
    if (isSquare && byKeys.verdict == CertificateVerdict::Genuine) {
        check.record = RecordVerdict::Missing;
        if (check.verdict == CertificateVerdict::Genuine)
            check.reason = byKeys.reason;
        return check;
    }
    makeAltered(check,
                QString("The file is not the one that was issued as %1.").arg(named->number));
    if (byKeys.record == RecordVerdict::Genuine)
        check.reason += ' ' + byKeys.reason;
    return check;
}

Result<QString> standsNoLonger(Records &records, const QString &number)
{
    LOOPWRIGHT_ASSIGN(const auto certificate, CertificateStore(records.database()).find(number));
    if (!certificate)
        return QString();
    LOOPWRIGHT_ASSIGN(const auto check, standing(records, *certificate));
    return check.stands.value_or(true) ? QString() : check.because;
}

void tellStanding(Records &records, IssuedCertificate &issued)
{
    if (!issued.copy)
        return;
    if (auto because = standsNoLonger(records, issued.number)) // it is issued, whatever fails now
        issued.because = std::move(*because);
}

Result<CertificateCheck> verifyCertificateNumber(Records &records, const QString &number,
                                                 const QString &code)
{
    const auto parsed = CertificateNumber::parse(number);
    if (!parsed)
        return CertificateCheck::unknown(parsed.error().text());
    LOOPWRIGHT_ASSIGN(const auto certificate,
                      CertificateStore(records.database()).find(parsed->text()));
    if (!certificate)
        return CertificateCheck::unknown(
            QString("The records know no certificate %1.").arg(parsed->text()));
    LOOPWRIGHT_ASSIGN(auto check, standing(records, *certificate));
    if (codeMatches(code, certificate->digest)) {
        if (check.verdict == CertificateVerdict::Genuine)
            check.reason = "Number and code belong together; hold the paper beside what was "
                           "certified, for its pages were not seen.";
        check.record = RecordVerdict::Missing;
        return check;
    }
    makeAltered(check,
                QString("The code does not belong to certificate %1.").arg(certificate->number));
    check.record = RecordVerdict::Missing;
    return check;
}

bool CertificateCheck::isGood() const
{
    return verdict == CertificateVerdict::Genuine && stands.value_or(true);
}

CertificateCheck CertificateCheck::unknown(const QString &reason)
{
    CertificateCheck check;
    check.reason = reason;
    return check;
}

QJsonObject CertificateCheck::toJson() const
{
    QJsonArray events, after;
    for (const Trouble &trouble : troubles)
        after << trouble.toJson();
    for (const Event &event : later)
        events << event.toJson();
    return {{"verdict", toText(verdict)},
            {"certificate", certificate},
            {"order", order},
            {"reason", reason},
            {"stands", stands ? QJsonValue(*stands) : QJsonValue()},
            {"because", because},
            {"record", toText(record)},
            {"claims", claims ? QJsonValue(claims->toJson()) : QJsonValue()},
            {"signed_by", signedBy},
            {"troubles", after},
            {"later", events}};
}

} // namespace loopwright
