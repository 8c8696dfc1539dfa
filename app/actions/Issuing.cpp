#include "app/actions/Issuing.h"

#include "app/actions/Acceptance.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/IssuePaper.h"
#include "app/actions/KeptHead.h"
#include "app/actions/LimitSets.h"
#include "app/actions/Register.h"
#include "core/certificate/CertificateNumber.h"
#include "core/certificate/LineChange.h"
#include "core/certificate/MakeCertificate.h"
#include "db/CertificateStore.h"
#include "db/DecisionStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/MetaStore.h"
#include "db/OfficeStore.h"

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
    LOOPWRIGHT_ASSIGN(const auto station, MetaStore(records.database()).station());
    const int year = records.now().localDate().year();
    LOOPWRIGHT_ASSIGN(const auto sequence,
                      CertificateStore(records.database()).nextSequence(year, station));
    if (sequence > CertificateNumber::mostSequence)
        return failure(ErrorCode::Refused,
                       QString("The %1 certificate numbers of this year are used up.")
                           .arg(CertificateNumber::mostSequence));
    return CertificateNumber{year, station, sequence}.text();
}

/// The certificate to issue, and whether it was there.
struct Chosen
{
    CertificateContent content;
    SignedClaims claims;
    bool copy = false;
};

/// The one that stands, or a new one.
Result<Chosen> choose(Records &records, Transaction &transaction, const Certifying &about,
                      const Signatures &signatures, const Signer &signer)
{
    LOOPWRIGHT_ASSIGN(auto content, contentNow(records, about, signatures));
    const QString &order = about.stored.order.number;
    LOOPWRIGHT_ASSIGN(auto stands, standingCertificate(records, order, content));
    if (stands) {
        LOOPWRIGHT_ASSIGN(const auto stored,
                          CertificateStore(records.database()).find(stands->number));
        LOOPWRIGHT_ASSIGN(auto claims, SignedClaims::parse(stored->claims, stored->number));
        return Chosen{std::move(*stands), std::move(claims), true};
    }
    LOOPWRIGHT_ASSIGN(content.number, nextNumber(records));
    Chosen chosen{content, signedClaims(content, signer), false};
    LOOPWRIGHT_TRY(DecisionStore::add(transaction, about.decision, about.input, records.now()));
    LOOPWRIGHT_TRY(CertificateStore::add(transaction, {content.number, order, about.decision.id,
                                                       records.now(), content.toJson(),
                                                       content.digest(), chosen.claims.text()}));
    return chosen;
}

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
            reasons << QString("evidence was struck out: %1")
                           .arg(voiding->because.endsWith(u'.') ? voiding->because.chopped(1)
                                                                : voiding->because);
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
    LOOPWRIGHT_ASSIGN(sources.people, people(records));
    LOOPWRIGHT_ASSIGN(sources.limits, limitSet(records, input.limitSet));
    LOOPWRIGHT_ASSIGN(sources.recordedAt, recordedTimes(database, stored.order.number));
    LOOPWRIGHT_ASSIGN(const auto earlier, CertificateStore(database).ofOrder(stored.order.number));
    sources.issuedAt = records.now();
    sources.input = input;
    sources.office = office.value_or(ServingOffice{stored.order.office, {}, {}});
    sources.decision = decision;
    sources.instruments = input.instruments;
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

namespace {

/// What was completed with other values gets copies of the certificate that names those, and no new
/// one.
Result<void> checkLineIsTheSame(Records &records, const Certifying &about)
{
    const QString change = lineChange(about.input.order, about.stored.order);
    if (change.isEmpty())
        return {};
    const QString &order = about.stored.order.number;
    LOOPWRIGHT_ASSIGN(const auto content, contentNow(records, about, {}));
    LOOPWRIGHT_ASSIGN(const auto stands, standingCertificate(records, order, content));
    return stands ? Result<void>()
                  : failure(ErrorCode::Refused,
                            QString("Since order %1 was completed %2: a certificate of it would "
                                    "say what holds no longer.")
                                .arg(order, change));
}

} // namespace

Result<void> checkMayIssue(Records &records, const Certifying &about)
{
    const auto &[stored, input, decision] = about;
    if (stored.status == OrderStatus::Cancelled)
        return failure(ErrorCode::Refused,
                       QString("Order %1 was cancelled.").arg(stored.order.number));
    if (!getsCertificate(input.scope))
        return failure(ErrorCode::Refused, QString("A %1 order is completed without a certificate.")
                                               .arg(toText(stored.order.type).replace('_', '-')));
    if (isAccepted(decision.outcome)) {
        LOOPWRIGHT_TRY(checkForPaper(input));
        return checkLineIsTheSame(records, about);
    }
    const CriterionResult *open = decision.firstOpen();
    return failure(ErrorCode::Refused,
                   QString("Order %1 is %2%3")
                       .arg(stored.order.number, toText(decision.outcome).replace('_', ' '),
                            open ? ": " + open->sentence().english() : QString(".")));
}

namespace {

void fillIn(MadeIssue &made, CertificateContent content)
{
    IssuedCertificate &issued = made.issued;
    issued.content = std::move(content);
    issued.number = issued.content.number;
    issued.digest = issued.content.digest();
    issued.code = shortCode(issued.digest);
    issued.pages = int(made.paper.sheet.pages.size());
}

/// The issue whose paper was not written, made again byte for byte, by the key of that day. Nothing
/// if none is due, or the paper asked for is another, or that key is gone, or this version of the
/// program paints it otherwise.
Result<std::optional<MadeIssue>> dueIssue(Records &records, const Chosen &chosen, Paper paper)
{
    const CertificateStore store(records.database());
    LOOPWRIGHT_ASSIGN(const auto due, store.dueOf(chosen.content.number));
    if (!due || due->paper != toText(paper))
        return std::optional<MadeIssue>();
    LOOPWRIGHT_ASSIGN(const auto stored, store.find(chosen.content.number));
    LOOPWRIGHT_ASSIGN(const auto signers, signersAtHand(records));
    for (const Signer &signer : signers) {
        MadeIssue made;
        LOOPWRIGHT_ASSIGN(made.issued.mark, issueMark(records.database(), *stored, *due, signer));
        LOOPWRIGHT_ASSIGN(auto again, paperMadeAgain(chosen.content, made.issued.mark, paper,
                                                     signer, due->fileSha256));
        if (!again)
            continue;
        made.paper = std::move(*again);
        made.issued.copy = due->issue > 1 && !made.issued.mark.countersigns;
        fillIn(made, chosen.content);
        return made;
    }
    return std::optional<MadeIssue>();
}

Result<IssueMark> newMark(Records &records, const Chosen &chosen, Signatures later,
                          const Signatures &added, const Signer &signer)
{
    LOOPWRIGHT_ASSIGN(const auto issues,
                      CertificateStore(records.database()).issuesOf(chosen.content.number));
    later.insert(later.end(), added.begin(), added.end());
    LOOPWRIGHT_ASSIGN(const auto head, EventStore(records.database()).logHead());
    LOOPWRIGHT_ASSIGN(auto proof, proofOf(records.database(), chosen.claims, head, signer));
    return IssueMark{int(issues.size()), records.now(), !added.empty(), std::move(later),
                     std::move(proof)};
}

} // namespace

Result<MadeIssue> makeIssue(Records &records, Transaction &transaction, const Certifying &about,
                            Paper paper, const Signatures &signatures)
{
    LOOPWRIGHT_TRY(checkMayIssue(records, about));
    LOOPWRIGHT_TRY(checkNotOlder(records));
    const ServiceOrder &order = about.stored.order;
    LOOPWRIGHT_ASSIGN(const auto signer, loopwright::signer(records, transaction));
    LOOPWRIGHT_ASSIGN(auto chosen, choose(records, transaction, about, signatures, signer));
    LOOPWRIGHT_ASSIGN(auto later,
                      laterSignatures(records.database(), order.number, chosen.content.number));
    LOOPWRIGHT_ASSIGN(const auto guard, guardOf(records.database(), order.office));
    Signatures added =
        chosen.copy ? newAmong(signatures, chosen.content.signatures, later) : Signatures();
    for (Signature &signature : added)
        signature.name = guard.coverTyped(signature.name);
    if (chosen.copy && added.empty()) {
        LOOPWRIGHT_ASSIGN(auto due, dueIssue(records, chosen, paper));
        if (due)
            return std::move(*due);
    }
    MadeIssue made;
    LOOPWRIGHT_ASSIGN(made.issued.mark, newMark(records, chosen, std::move(later), added, signer));
    made.issued.copy = chosen.copy && added.empty();
    LOOPWRIGHT_ASSIGN(made.paper, sealedPaper(chosen.content, made.issued.mark, paper, signer));
    fillIn(made, std::move(chosen.content));
    const QString &number = made.issued.number;
    LOOPWRIGHT_ASSIGN(const auto stored,
                      CertificateStore::addIssue(transaction, number, sha256Hex(made.paper.pdf),
                                                 toText(paper), records.now()));
    LOOPWRIGHT_TRY(refreshState(records, transaction, order.number));
    QJsonObject detail =
        issueDetail(number, made.issued.digest, stored.issue, made.issued.mark.proof->head.head);
    if (!added.empty())
        detail.insert("signatures", toJson(added));
    made.event = orderEvent(records, order,
                            !added.empty()     ? signedEvent
                            : made.issued.copy ? QString("certificate_copied")
                                               : QString("certificate_issued"),
                            detail);
    return made;
}

Result<void> commitIssues(Records &records, Transaction transaction,
                          const std::vector<const MadeIssue *> &issues)
{
    std::vector<Event> events;
    QStringList numbers;
    for (const MadeIssue *made : issues) {
        if (!made->event)
            continue; // its paper is due, and all else was recorded
        events.push_back(*made->event);
        numbers << made->issued.number;
        LOOPWRIGHT_TRY(CertificateStore::clearDue(transaction, made->issued.number));
        LOOPWRIGHT_TRY(
            CertificateStore::setDue(transaction, made->issued.number, made->issued.mark.copy + 1));
    }
    if (events.empty())
        return {};
    LOOPWRIGHT_TRY(transaction.commit(events));
    // Before a paper is out: an older copy of the records must not give its number again.
    if (const auto kept = keepHead(records); !kept)
        return failure(paperMissing(numbers, kept.error()));
    return {};
}

void papersWritten(Records &records, const std::vector<const MadeIssue *> &issues)
{
    auto transaction = Transaction::begin(records.database());
    if (!transaction)
        return;
    for (const MadeIssue *made : issues)
        if (!CertificateStore::clearDue(*transaction, made->issued.number))
            return;
    // If it cannot be kept, who asks again is given the same paper once more instead of a copy.
    [[maybe_unused]] const auto kept = transaction->commitDraft();
}

Error paperMissing(const QStringList &numbers, const Error &why)
{
    return {ErrorCode::DiskTrouble,
            QString("Certificate %1 is in the records, but the paper could not be written: %2 "
                    "Issue it again when there is a place for it; it will be the same.")
                .arg(numbers.join(", "), why.message),
            why.place};
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
