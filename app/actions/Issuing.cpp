#include "app/actions/Issuing.h"

#include "app/actions/Acceptance.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/LimitSets.h"
#include "core/certificate/CertificateNumber.h"
#include "core/certificate/MakeCertificate.h"
#include "db/CertificateStore.h"
#include "db/DecisionStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/MetaStore.h"
#include "db/OfficeStore.h"
#include "db/PersonStore.h"

#include <algorithm>

namespace loopwright {

namespace {

/// Whether a certificate still says what would be said now. Its own are number, date, decision,
/// signatures and what it took the place of; whom to call may change without a new certificate.
bool saysTheSame(const QJsonObject &issued, CertificateContent now)
{
    const auto before = CertificateContent::fromJson(issued, "certificate");
    if (!before)
        return false;
    now.number = before->number;
    now.issuedAt = before->issuedAt;
    now.decision = before->decision;
    now.signatures = before->signatures;
    now.replaces = before->replaces;
    now.issuer = before->issuer;
    now.call = before->call;
    return now.toJson() == before->toJson();
}

Result<QString> nextNumber(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto series, MetaStore(records.database()).series());
    const int year = records.now().localDate().year();
    LOOPWRIGHT_ASSIGN(const auto sequence,
                      CertificateStore(records.database()).nextSequence(year, series));
    if (sequence > CertificateNumber::mostSequence)
        return failure(ErrorCode::Refused,
                       QString("The %1 certificate numbers of this year are used up.")
                           .arg(CertificateNumber::mostSequence));
    return CertificateNumber{year, series.toInt(), sequence}.text();
}

/// The certificate to issue: the one that stands, or a new one.
Result<CertificateContent> chooseContent(Records &records, Transaction &transaction,
                                         const Certifying &about, const Signatures &signatures,
                                         bool &copy)
{
    auto content = contentNow(records, about, signatures);
    if (!content)
        return content;
    const QString &order = about.stored.order.number;
    LOOPWRIGHT_ASSIGN(auto stands, standingCertificate(records, order, *content));
    copy = stands.has_value();
    if (copy)
        return std::move(*stands);
    LOOPWRIGHT_ASSIGN(const auto number, nextNumber(records));
    content->number = number;
    LOOPWRIGHT_TRY(DecisionStore::add(transaction, about.decision, about.input, records.now()));
    LOOPWRIGHT_TRY(
        CertificateStore::add(transaction, {content->number, order, about.decision.id,
                                            records.now(), content->toJson(), content->digest()}));
    return content;
}

const QString signedEvent = QStringLiteral("certificate_signed");

/// Of those who sign now, who did not before.
Signatures newAmong(const Signatures &now, const Signatures &inContent, const Signatures &later)
{
    Signatures added;
    for (const Signature &each : now)
        if (!signatureOf(inContent, each.role) && !signatureOf(later, each.role))
            added.push_back(each);
    return added;
}

} // namespace

Result<Signatures> laterSignatures(const Database &database, const QString &order,
                                   const QString &certificate)
{
    Signatures later;
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database).ofOrder(order));
    for (const Event &event : events) {
        if (event.kind != signedEvent || event.detail.value("certificate") != certificate)
            continue;
        LOOPWRIGHT_ASSIGN(
            const auto signatures,
            readSignatures(event.detail.value("signatures").toArray(), "certificate_signed"));
        later.insert(later.end(), signatures.begin(), signatures.end());
    }
    return later;
}

Result<NumberGuard> guardOf(const Database &database, const QString &office)
{
    LOOPWRIGHT_ASSIGN(const auto lines, OfficeStore(database).testLines(office));
    return NumberGuard(lines);
}

Result<CertificateContent> contentNow(Records &records, const Certifying &about,
                                      const Signatures &signatures)
{
    LOOPWRIGHT_ASSIGN(auto sources, sourcesOf(records, about));
    LOOPWRIGHT_ASSIGN(const auto guard, guardOf(records.database(), about.stored.order.office));
    sources.signatures = signatures;
    return makeCertificate(sources, guard);
}

namespace {

/// When each fact of the order was recorded, by the clock of the machine.
Result<QHash<QString, Moment>> recordedTimes(const Database &database, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database).ofOrder(order));
    QHash<QString, Moment> times;
    for (const Event &event : events)
        for (const Seal &seal : event.seals())
            if (seal.row == u"fact")
                times.insert(seal.id, event.recordedAt);
    return times;
}

/// Why facts that an earlier certificate may have counted are void.
Result<QStringList> voidedSince(const Database &database, const QString &order, const Moment &since)
{
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(database).ofOrder(order));
    QStringList reasons;
    for (const Fact &fact : facts)
        if (const auto *voiding = fact.as<VoidFact>(); voiding && since <= fact.at)
            reasons << QString("evidence was struck out: %1").arg(voiding->because);
    return reasons;
}

} // namespace

Result<CertificateSources> sourcesOf(Records &records, const Certifying &about)
{
    const auto &[stored, input, decision] = about;
    const Database &database = records.database();
    CertificateSources sources;
    LOOPWRIGHT_ASSIGN(const auto office, OfficeStore(database).find(stored.order.office));
    LOOPWRIGHT_ASSIGN(sources.issuer, OfficeStore(database).issuer());
    LOOPWRIGHT_ASSIGN(const auto people, PersonStore(database).all());
    LOOPWRIGHT_ASSIGN(sources.limits, limitSet(records, input.limitSet));
    LOOPWRIGHT_ASSIGN(sources.recordedAt, recordedTimes(database, stored.order.number));
    LOOPWRIGHT_ASSIGN(const auto earlier, CertificateStore(database).ofOrder(stored.order.number));
    sources.issuedAt = records.now();
    sources.input = input;
    sources.office = office.value_or(ServingOffice{stored.order.office, {}, {}});
    sources.decision = decision;
    sources.instruments = input.instruments;
    sources.people = QList<Person>(people.begin(), people.end());
    if (earlier.empty())
        return sources;
    // What it can no longer be read from is only not told of.
    if (auto before = CertificateContent::fromJson(earlier.back().content, "certificate"))
        sources.replaces = std::move(*before);
    LOOPWRIGHT_ASSIGN(sources.replacedBecause,
                      voidedSince(database, stored.order.number, earlier.back().at));
    return sources;
}

Result<Certifying> certifying(Records &records, const QString &order)
{
    LOOPWRIGHT_ASSIGN(auto stored, OrderStore(records.database()).get(order));
    LOOPWRIGHT_ASSIGN(auto input, evidenceOf(records, stored));
    LOOPWRIGHT_ASSIGN(auto decision, decisionOf(records, input));
    return Certifying{std::move(stored), std::move(input), std::move(decision)};
}

Result<void> checkMayIssue(const Certifying &about)
{
    const auto &[stored, input, decision] = about;
    if (stored.status == OrderStatus::Cancelled)
        return failure(ErrorCode::Refused,
                       QString("Order %1 was cancelled.").arg(stored.order.number));
    if (input.scope == OrderScope::Nothing || input.scope == OrderScope::RecordOnly)
        return failure(ErrorCode::Refused, QString("A %1 order is completed without a certificate.")
                                               .arg(toText(stored.order.type).replace('_', '-')));
    if (isAccepted(decision.outcome))
        return checkForPaper(input);
    const CriterionResult *open = decision.firstOpen();
    return failure(ErrorCode::Refused,
                   QString("Order %1 is %2%3")
                       .arg(stored.order.number, toText(decision.outcome).replace('_', ' '),
                            open ? ": " + open->sentence().english() : QString(".")));
}

Result<MadeIssue> makeIssue(Records &records, Transaction &transaction, const Certifying &about,
                            Paper paper, const Signatures &signatures)
{
    LOOPWRIGHT_TRY(checkMayIssue(about));
    MadeIssue made;
    IssuedCertificate &issued = made.issued;
    LOOPWRIGHT_ASSIGN(auto content,
                      chooseContent(records, transaction, about, signatures, issued.copy));
    LOOPWRIGHT_ASSIGN(const auto issues,
                      CertificateStore(records.database()).issuesOf(content.number));
    LOOPWRIGHT_ASSIGN(const auto guard, guardOf(records.database(), about.stored.order.office));
    LOOPWRIGHT_ASSIGN(
        auto later, laterSignatures(records.database(), about.stored.order.number, content.number));
    Signatures added = issued.copy ? newAmong(signatures, content.signatures, later) : Signatures();
    for (Signature &signature : added)
        signature.name = guard.coverTyped(signature.name);
    later.insert(later.end(), added.begin(), added.end());
    LOOPWRIGHT_ASSIGN(const auto head, EventStore(records.database()).logHead());
    issued.mark = {int(issues.size()), records.now(), !added.empty(), std::move(later), head};
    issued.copy = issued.copy && added.empty();
    LOOPWRIGHT_ASSIGN(auto laidOut, certificatePaper(content, issued.mark, paper));
    made.paper = std::move(laidOut);
    LOOPWRIGHT_ASSIGN(const auto stored, CertificateStore::addIssue(transaction, content.number,
                                                                    sha256Hex(made.paper.pdf),
                                                                    toText(paper), records.now()));
    issued.content = std::move(content);
    issued.number = issued.content.number;
    issued.digest = issued.content.digest();
    issued.code = shortCode(issued.digest);
    issued.pages = int(made.paper.sheet.pages.size());
    LOOPWRIGHT_TRY(refreshState(records, transaction, about.stored.order.number));
    QJsonObject detail{{"certificate", issued.number},
                       {"digest", issued.digest},
                       {"issue", stored.issue},
                       {"log_position", head.position}}; // with it the file can be made again
    if (!added.empty())
        detail.insert("signatures", toJson(added));
    made.event = orderEvent(records, about.stored.order,
                            !added.empty() ? signedEvent
                            : issued.copy  ? QString("certificate_copied")
                                           : QString("certificate_issued"),
                            detail);
    return made;
}

Result<std::optional<CertificateContent>>
standingCertificate(Records &records, const QString &order, const CertificateContent &now)
{
    LOOPWRIGHT_ASSIGN(const auto earlier, CertificateStore(records.database()).ofOrder(order));
    if (earlier.empty() || !saysTheSame(earlier.back().content, now))
        return std::optional<CertificateContent>();
    LOOPWRIGHT_ASSIGN(auto content,
                      CertificateContent::fromJson(earlier.back().content,
                                                   "certificate " + earlier.back().number));
    return std::optional(std::move(content));
}

} // namespace loopwright
