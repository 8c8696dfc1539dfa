#include "app/actions/Issuing.h"

#include "app/actions/Acceptance.h"
#include "core/certificate/CertificateNumber.h"
#include "core/certificate/MakeCertificate.h"
#include "db/CertificateStore.h"
#include "db/DecisionStore.h"
#include "db/MetaStore.h"
#include "db/OfficeStore.h"
#include "db/PersonStore.h"

namespace loopwright {

namespace {

/// Whether a certificate still says what would be said now; number, date, decision and signatures
/// are its own.
bool saysTheSame(const QJsonObject &issued, CertificateContent now)
{
    const auto before = CertificateContent::fromJson(issued, "certificate");
    if (!before)
        return false;
    now.number = before->number;
    now.issuedAt = before->issuedAt;
    now.decision = before->decision;
    now.signatures = before->signatures;
    return now.toJson() == before->toJson();
}

Result<QString> nextNumber(Records &records)
{
    const auto station = MetaStore(records.database()).station();
    if (!station)
        return failure(station.error());
    const int year = records.now().localDate().year();
    const auto sequence = CertificateStore(records.database()).nextSequence(year, *station);
    if (!sequence)
        return failure(sequence.error());
    if (*sequence > CertificateNumber::mostSequence)
        return failure(ErrorCode::Refused,
                       QString("The %1 certificate numbers of this year are used up.")
                           .arg(CertificateNumber::mostSequence));
    return CertificateNumber{year, station->toInt(), *sequence}.text();
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
    auto stands = standingCertificate(records, order, *content);
    if (!stands)
        return failure(stands.error());
    copy = stands->has_value();
    if (copy)
        return std::move(**stands);
    const auto number = nextNumber(records);
    if (!number)
        return failure(number.error());
    content->number = *number;
    const auto added = DecisionStore::add(transaction, about.decision, about.input, records.now());
    if (!added)
        return failure(added.error());
    LOOPWRIGHT_TRY(
        CertificateStore::add(transaction, {content->number, order, about.decision.id,
                                            records.now(), content->toJson(), content->digest()}));
    return content;
}

} // namespace

Result<NumberGuard> guardOf(const Database &database, const QString &office)
{
    const auto lines = OfficeStore(database).testLines(office);
    if (!lines)
        return failure(lines.error());
    return NumberGuard(*lines);
}

Result<CertificateContent> contentNow(Records &records, const Certifying &about,
                                      const Signatures &signatures)
{
    const auto &[stored, input, decision] = about;
    const Database &database = records.database();
    const auto office = OfficeStore(database).find(stored.order.office);
    const auto guard = guardOf(database, stored.order.office);
    const auto people = PersonStore(database).all();
    if (!office)
        return failure(office.error());
    if (!guard)
        return failure(guard.error());
    if (!people)
        return failure(people.error());
    CertificateSources sources;
    sources.issuedAt = records.now();
    sources.order = stored.order;
    sources.office = office->value_or(ServingOffice{stored.order.office, {}, {}});
    sources.decision = decision;
    sources.facts = input.facts;
    sources.instruments = input.instruments;
    sources.people = QList<Person>(people->begin(), people->end());
    sources.signatures = signatures;
    return makeCertificate(sources, *guard);
}

Result<Certifying> certifying(Records &records, const QString &order)
{
    auto stored = orderOf(records.database(), order);
    if (!stored)
        return failure(stored.error());
    auto input = evidenceOf(records, *stored);
    if (!input)
        return failure(input.error());
    auto decision = decisionOf(records, *input);
    if (!decision)
        return failure(decision.error());
    return Certifying{std::move(*stored), std::move(*input), std::move(*decision)};
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
    if (decision.outcome == OrderOutcome::Accepted ||
        decision.outcome == OrderOutcome::AcceptedWithException)
        return {};
    const CriterionResult *open = decision.firstOpen();
    return failure(ErrorCode::Refused,
                   QString("Order %1 is %2%3")
                       .arg(stored.order.number, toText(decision.outcome).replace('_', ' '),
                            open ? ": " + open->sentence() : QString(".")));
}

Result<MadeIssue> makeIssue(Records &records, Transaction &transaction, const Certifying &about,
                            Paper paper, const Signatures &signatures)
{
    LOOPWRIGHT_TRY(checkMayIssue(about));
    MadeIssue made;
    IssuedCertificate &issued = made.issued;
    auto content = chooseContent(records, transaction, about, signatures, issued.copy);
    if (!content)
        return failure(content.error());
    const auto issues = CertificateStore(records.database()).issuesOf(content->number);
    if (!issues)
        return failure(issues.error());
    auto laidOut = certificatePaper(*content, {int(issues->size()), records.now()}, paper);
    if (!laidOut)
        return failure(laidOut.error());
    made.paper = std::move(*laidOut);
    const auto added = CertificateStore::addIssue(
        transaction, content->number, sha256Hex(made.paper.pdf), toText(paper), records.now());
    if (!added)
        return failure(added.error());
    issued.content = std::move(*content);
    issued.number = issued.content.number;
    issued.digest = issued.content.digest();
    issued.code = shortCode(issued.digest);
    issued.pages = int(made.paper.sheet.pages.size());
    LOOPWRIGHT_TRY(refreshState(records, transaction, about.stored.order.number));
    made.event = orderEvent(
        records, about.stored.order, issued.copy ? "certificate_copied" : "certificate_issued",
        {{"certificate", issued.number}, {"digest", issued.digest}, {"issue", added->issue}});
    return made;
}

Result<std::optional<CertificateContent>>
standingCertificate(Records &records, const QString &order, const CertificateContent &now)
{
    const auto earlier = CertificateStore(records.database()).ofOrder(order);
    if (!earlier)
        return failure(earlier.error());
    if (earlier->empty() || !saysTheSame(earlier->back().content, now))
        return std::optional<CertificateContent>();
    auto content = CertificateContent::fromJson(earlier->back().content,
                                                "certificate " + earlier->back().number);
    if (!content)
        return failure(content.error());
    return std::optional(std::move(*content));
}

} // namespace loopwright
