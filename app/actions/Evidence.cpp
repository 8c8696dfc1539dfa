#include "app/actions/Evidence.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/EvidenceStore.h"
#include "app/actions/ForeseenRecord.h"
#include "app/actions/LimitSets.h"
#include "app/actions/RecordCheck.h"
#include "app/actions/Register.h"
#include "app/actions/VisitOverlaps.h"
#include "app/actions/VoidRights.h"
#include "core/acceptance/Doubt.h"
#include "core/base/PaperTime.h"
#include "db/FactStore.h"
#include "db/InstrumentStore.h"
#include "db/OrderStore.h"
#include "db/PersonStore.h"

#include <QSet>
#include <QUuid>

#include <algorithm>

namespace loopwright {

namespace {

/// The same content has the same id: a record without ids that is handed in twice adds nothing.
QString idOfContent(const Fact &fact)
{
    static const QUuid space("{8f1c9d0e-6f0b-5b52-9c0e-3d2a7b1e4c55}");
    return QUuid::createUuidV5(space, fact.digest()).toString(QUuid::WithoutBraces);
}

/// Reports each key that the register lacks, once.
template<class Store>
Result<void> tellUnregistered(const Store &store, const QSet<QString> &keys, const QString &what,
                              RecordReport &report)
{
    QStringList sorted(keys.begin(), keys.end());
    sorted.sort();
    for (const QString &key : sorted) {
        LOOPWRIGHT_ASSIGN(const auto found, store.find(key));
        if (!found)
            report.told.push_back({{Severity::Warning,
                                    what + "_not_registered",
                                    Text(QT_TRANSLATE_NOOP("core", "The %1 %2 is not registered."))
                                        .arg(Text::message(what))
                                        .arg(key),
                                    {},
                                    what,
                                    0}});
    }
    return {};
}

Result<RecordReport> addFacts(Transaction &transaction, const JobRecord &record,
                              const QString &place)
{
    RecordReport report;
    for (std::size_t i = 0; i < record.facts.size(); ++i) {
        const auto added = FactStore::add(transaction, record.facts[i]);
        // What the engine itself refuses may be of a fact before it, which waited.
        const bool isOfFact = !added && added.error().code == ErrorCode::BadInput &&
                              added.error().place != transaction.database().path();
        if (isOfFact)
            return failure(ErrorCode::BadInput, added.error().message, placeOf(place, i) + ".id");
        if (!added)
            return failure(added.error());
        (*added ? report.added : report.alreadyThere) << record.facts[i].id;
    }
    return report;
}

Result<void> tell(Records &records, const JobRecord &record, RecordReport &report)
{
    QSet<QString> installers, instruments;
    for (const Fact &fact : record.facts) {
        if (!fact.installer.isEmpty())
            installers.insert(fact.installer);
        if (!fact.instrument.isEmpty())
            instruments.insert(fact.instrument);
    }
    LOOPWRIGHT_TRY(
        tellUnregistered(PersonStore(records.database()), installers, "installer", report));
    return tellUnregistered(InstrumentStore(records.database()), instruments, "instrument", report);
}

/// Why a recorded fact counts for nothing, as a code; none if it counts, or only a newer one does.
std::optional<QString> codeOf(Discount why)
{
    switch (why) {
    case Discount::Disputed:
        return "disputed";
    case Discount::OtherPair:
        return "other_pair";
    case Discount::OrderEnded:
        return "order_not_open";
    case Discount::NoCard:
    case Discount::Hazard:
    case Discount::NothingDone:
    case Discount::NoCheck:
        return "closed_step";
    case Discount::Retired:
        return "retired";
    case Discount::SelfTest:
        return "self_test_failed";
    case Discount::NewTei:
    case Discount::LayerDown:
        return "layer";
    case Discount::Elsewhere:
        return "elsewhere";
    case Discount::Contradiction:
        return "contradiction";
    case Discount::StruckOut:
    case Discount::NoResult:
    case Discount::Newer:
        break;
    }
    return std::nullopt;
}

/// Whether it closes a hazard and a registered supervisor records it: his word closes it.
Result<bool> closesAsSupervisor(Records &records, const JobRecord &record)
{
    if (std::ranges::none_of(
            record.facts, [](const Fact &fact) { return fact.as<HazardClosedFact>() != nullptr; }))
        return false;
    LOOPWRIGHT_ASSIGN(const auto actor, actorOf(records));
    return actor.person && actor.person->role == Role::Supervisor;
}

/// The closings of hazards among what was added, if a registered supervisor records them.
Result<QStringList> closedBySupervisor(Records &records, const JobRecord &record,
                                       const RecordReport &report)
{
    QStringList ids;
    LOOPWRIGHT_ASSIGN(const bool supervised, closesAsSupervisor(records, record));
    for (const Fact &fact : record.facts)
        if (supervised && fact.as<HazardClosedFact>() && report.added.contains(fact.id))
            ids << fact.id;
    return ids;
}

/// A card that is recorded late stands before what was recorded already.
bool isOnAddedCard(const Fact &fact, const Evidence &evidence, const RecordReport &report)
{
    if (!showsOffice(fact.body))
        return false;
    const Card *card = evidence.cards().holdingAt(timeOf(fact), evidence.visitOf(fact));
    return card && report.added.contains(card->fact->id);
}

/// Says of each added fact what a decision makes of it: it is kept in any case.
Result<void> tellStandings(Records &records, const StoredOrder &stored,
                           const QStringList &supervised, RecordReport &report)
{
    LOOPWRIGHT_ASSIGN(auto input, evidenceOf(records, stored));
    input.bySupervisor << supervised;
    if (stored.status != OrderStatus::Open)
        input.afterEnd << report.added;
    LOOPWRIGHT_ASSIGN(const auto limits, limitSet(records, input.limitSet));
    const Judged judged = judge(input, limits);
    QStringList told;
    const auto tell = [&](const QString &code, const QString &fact, const Text &reason) {
        if (told.contains(fact))
            return;
        told << fact;
        report.told.push_back({{Severity::Warning, code, reason, {}, {}, 0}, fact});
    };
    for (const Fact &fact : input.facts)
        if (const auto *card = fact.as<SafetyFact>(); card && report.added.contains(fact.id)) {
            const Card *counts = judged.cards.cardOf(fact);
            const SafetyVerdict read = counts ? counts->verdict : judge(*card, limits);
            if (read.outcome == SafetyOutcome::Hazard)
                tell("hazard", fact.id, read.text());
            else if (read.outcome == SafetyOutcome::ForeignBattery)
                tell("foreign_battery", fact.id, read.text());
            else if (!read.misfits.empty() && !read.readTwice)
                tell("contradiction", fact.id, read.text());
        }
    for (const Hazard &hazard : judged.cards.open())
        if (hazard.refused && report.added.contains(hazard.refused->id))
            tell(hazard.isDisputed ? "disputed" : "closed_step", hazard.refused->id,
                 Text(hazard.whyRefused()));
    if (stored.status != OrderStatus::Open)
        for (const QString &id : report.added)
            tell("order_not_open", id,
                 Text(QT_TRANSLATE_NOOP(
                          "core", "Order %1 is no longer open: it is kept and decides nothing."))
                     .arg(stored.order.number));
    for (const Need &need : judged.needs)
        for (const Discounted &each : judged.standings.value(need.key).before)
            if (const auto code = codeOf(each.why); code && report.added.contains(each.fact->id))
                tell(*code, each.fact->id,
                     Text(QT_TRANSLATE_NOOP("core", "%1 of %2 is kept and does not count: %3"))
                         .arg(Text(factName(each.fact->kind())))
                         .arg(paperTime(timeOf(*each.fact)))
                         .arg(each.sentence));
    for (const CriterionResult &criterion : judged.decision.criteria) {
        Text remarks;
        for (const Remark &remark : criterion.remarks)
            remarks += remark.trade;
        const auto shown = std::ranges::find_if(report.added, [&criterion](const QString &id) {
            return criterion.evidence.contains(id);
        });
        if (!remarks.isEmpty() && shown != report.added.end())
            tell("to_mend", *shown, remarks);
    }
    const Evidence evidence(input, limits);
    for (const Fact *fact : evidence.facts())
        if (report.added.contains(fact->id) || isOnAddedCard(*fact, evidence, report))
            if (const auto doubt = doubtIn(*fact, evidence))
                tell(doubt->code, (doubt->of ? doubt->of : fact)->id, doubt->sentence);
    return {};
}

/// Commits what was done to facts, with the event that says so. `decides`: the order stands as its
/// evidence does; what is recorded when it is no longer open decides nothing.
Result<void> commitFacts(Records &records, Transaction &transaction, const StoredOrder &stored,
                         bool decides, const std::vector<Fact> &facts, const QString &kind,
                         const QJsonObject &detail)
{
    PendingEvent pending;
    pending.bySupervisor = supervisedIn(detail);
    if (decides)
        LOOPWRIGHT_TRY(refreshState(records, transaction, stored.order.number, pending));
    LOOPWRIGHT_TRY(refreshOrdersOnVisits(records, transaction, stored.order, facts));
    LOOPWRIGHT_TRY(refreshOrdersConcerned(records, transaction, stored.order, facts, pending));
    return transaction.commit(orderEvent(records, stored.order, kind, detail));
}

/// What a record adds, before it is committed.
struct AddedRecord
{
    StoredOrder order;
    RecordReport report;
    QJsonObject detail; ///< of the event
};

Result<AddedRecord> addRecord(Records &records, Transaction &transaction, JobRecord &record,
                              const QString &place)
{
    foreseeRecord(records, record);
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).find(record.order));
    if (!stored)
        return failure(ErrorCode::NotFound,
                       QString("There is no order \"%1\".").arg(record.order.left(60)),
                       place + ".order");
    for (Fact &fact : record.facts)
        if (fact.id.isEmpty())
            fact.id = newFactId();
    LOOPWRIGHT_TRY(checkRecord(records, record, stored->order, place));
    LOOPWRIGHT_ASSIGN(auto report, addFacts(transaction, record, place));
    LOOPWRIGHT_TRY(tell(records, record, report));
    if (report.added.isEmpty())
        return AddedRecord{*stored, std::move(report), {}};
    LOOPWRIGHT_ASSIGN(const auto supervised, closedBySupervisor(records, record, report));
    LOOPWRIGHT_TRY(tellStandings(records, *stored, supervised, report));
    LOOPWRIGHT_TRY(tellOverlaps(records.database(), *stored, report));
    QJsonArray kinds;
    for (const Fact &fact : record.facts)
        if (report.added.contains(fact.id))
            kinds << toText(fact.kind());
    QJsonObject detail{{"kinds", kinds}};
    if (stored->status != OrderStatus::Open)
        detail.insert("after_end", QJsonArray::fromStringList(report.added));
    if (!supervised.isEmpty())
        detail.insert("by_supervisor", QJsonArray::fromStringList(supervised));
    return AddedRecord{*stored, std::move(report), detail};
}

/// The fact that no longer counts.
Result<Fact> addVoid(Records &records, Transaction &transaction, const QString &factId,
                     const QString &because)
{
    const QString id = QUuid::fromString(factId).toString(QUuid::WithoutBraces);
    LOOPWRIGHT_ASSIGN(const auto fact, FactStore(records.database()).find(id));
    if (!fact)
        return failure(ErrorCode::NotFound,
                       QString("There is no fact \"%1\".").arg(factId.left(60)));
    if (fact->as<VoidFact>())
        return failure(ErrorCode::Refused, "A void is not voided; record the fact anew.");
    LOOPWRIGHT_ASSIGN(const auto before, FactStore(records.database()).voidOf(id));
    if (before)
        return failure(ErrorCode::Refused, "The fact is void already.");
    LOOPWRIGHT_TRY(FactStore::add(transaction, {newFactId(),
                                                records.now(),
                                                fact->order,
                                                {},
                                                {},
                                                {},
                                                VoidFact{id, because, records.by()}}));
    return *fact;
}

/// A supervisor who closes a hazard answers for it himself, with his PIN if he has one.
Result<void> allowRecord(Records &records, const JobRecord &record)
{
    LOOPWRIGHT_TRY(allow(records, Act::RecordFacts, record.order));
    LOOPWRIGHT_ASSIGN(const bool supervised, closesAsSupervisor(records, record));
    return supervised ? allow(records, Act::VoidAnothersFact, record.order) : Result<void>();
}

} // namespace

Result<RecordReport> recordFile(Records &records, const QByteArray &json, const QString &fileName,
                                const QString &corrects)
{
    LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(json, fileName));
    auto record = readJobRecord(object, fileName, [] { return QString(); });
    if (!record)
        return failure(record.error());
    for (Fact &fact : record->facts)
        if (fact.id.isEmpty())
            fact.id = idOfContent(fact);
    return corrects.isEmpty() ? recordFacts(records, std::move(*record), fileName)
                              : correctFact(records, corrects, std::move(*record), fileName);
}

Result<RecordReport> recordFacts(Records &records, JobRecord record, const QString &place)
{
    LOOPWRIGHT_TRY(allowRecord(records, record));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(auto made, addRecord(records, transaction, record, place));
    if (made.report.added.isEmpty())
        return std::move(made.report);
    LOOPWRIGHT_TRY(commitFacts(records, transaction, made.order,
                               made.order.status == OrderStatus::Open, record.facts,
                               "facts_recorded", made.detail));
    return std::move(made.report);
}

Result<RecordReport> correctFact(Records &records, const QString &factId, JobRecord record,
                                 const QString &place)
{
    LOOPWRIGHT_TRY(allowRecord(records, record));
    LOOPWRIGHT_TRY(allowVoid(records, factId, true));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    // First: what is recorded is then told of as it stands without the old one.
    LOOPWRIGHT_ASSIGN(const Fact old, addVoid(records, transaction, factId, "corrected"));
    if (old.order != record.order)
        return failure(ErrorCode::Refused,
                       QString("The fact that it corrects is of order %1.").arg(old.order),
                       place + ".order");
    if (std::ranges::none_of(record.facts,
                             [&old](const Fact &each) { return each.kind() == old.kind(); }))
        return failure(
            ErrorCode::Refused,
            QString("The fact that it corrects is of the kind “%1”, and the record holds "
                    "none.")
                .arg(factName(old.kind())),
            place + ".facts");
    LOOPWRIGHT_ASSIGN(auto made, addRecord(records, transaction, record, place));
    if (made.report.added.isEmpty())
        return failure(ErrorCode::Refused,
                       "It says what is recorded already: nothing is corrected.", place);
    QJsonObject detail = made.detail;
    detail.insert("fact", old.id);
    detail.insert("kind", toText(old.kind()));
    record.facts.push_back(old);
    LOOPWRIGHT_TRY(commitFacts(records, transaction, made.order, true, record.facts,
                               "fact_corrected", detail));
    return std::move(made.report);
}

Result<QStringList> unregisteredInstallers(Records &records, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(records.database()).ofOrder(order));
    LOOPWRIGHT_ASSIGN(const auto known, people(records));
    QStringList keys;
    for (const Fact &fact : facts)
        if (!fact.installer.isEmpty() && !keys.contains(fact.installer) &&
            !isRegistered(known, fact.installer))
            keys << fact.installer;
    return keys;
}

Result<QString> voidFact(Records &records, const QString &factId, const QString &because)
{
    LOOPWRIGHT_TRY(checkReason(because, "A fact is voided with a reason."));
    LOOPWRIGHT_TRY(allowVoid(records, factId, false));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const Fact fact, addVoid(records, transaction, factId, because));
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).get(fact.order));
    LOOPWRIGHT_TRY(
        commitFacts(records, transaction, stored, true, {fact}, "fact_voided",
                    {{"fact", fact.id}, {"kind", toText(fact.kind())}, {"because", because}}));
    LOOPWRIGHT_ASSIGN(const auto voiding, FactStore(records.database()).voidOf(fact.id));
    return voiding ? voiding->id : QString();
}

} // namespace loopwright
