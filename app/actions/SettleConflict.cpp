// A conflict between stations is settled: declared in StationConflicts.h.

#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/OrderIntake.h"
#include "app/actions/StationConflicts.h"
#include "app/actions/ToldContents.h"
#include "db/AssignmentStore.h"
#include "db/ConflictStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/StationStore.h"

#include <algorithm>

namespace loopwright {

namespace {

Result<ShownConflict> conflictToSettle(Records &records, const QString &id, bool anew)
{
    LOOPWRIGHT_ASSIGN(const auto known, ConflictStore(records.database()).find(id));
    if (!known)
        return failure(ErrorCode::NotFound,
                       QString("There is no conflict \"%1\".").arg(id.left(60)));
    if (!known->stands)
        return failure(ErrorCode::Refused,
                       "The conflict holds no longer: more was told since, see what is open now.");
    if (!known->isOpen() && !anew)
        return failure(
            ErrorCode::Refused,
            QString("The conflict is settled already, by %1: %2. If that was wrong, settle it "
                    "anew.")
                .arg(known->settled->by, known->settled->because));
    LOOPWRIGHT_ASSIGN(auto shown, shownConflict(records, *known));
    if (known->isOpen() || isSettledLoosely(*known))
        return shown;
    return failure(ErrorCode::Refused,
                   shown.sides.size() == 1
                       ? "It is seen, and there is nothing else that it could be settled for."
                       : "This settlement changed the order or an entry and is not taken back: "
                         "change the order, or strike the entry out and record the right one.");
}

Result<QString> tagOfSide(const ShownConflict &conflict, const QString &side)
{
    QStringList sides;
    for (const ShownConflict::Side &each : conflict.sides) {
        if (each.side == side)
            return each.tag;
        sides << each.side;
    }
    return failure(ErrorCode::Refused,
                   QString("\"%1\" is no side of it: %2.").arg(side.left(60), sides.join(", ")),
                   "side");
}

class Settling
{
public:
    Settling(Records &records, Transaction &transaction, StationConflict conflict,
             const Settlement &settlement)
        : m_records(records)
        , m_transaction(transaction)
        , m_conflict(std::move(conflict))
        , m_settlement(settlement)
    {
    }

    Result<void> run()
    {
        LOOPWRIGHT_ASSIGN(m_stored, OrderStore(m_transaction.database()).get(m_conflict.order));
        m_detail = {{"conflict", m_conflict.id},
                    {"code", toText(m_conflict.code)},
                    {"side", m_settlement.side},
                    {"because", m_settlement.because}};
        if (m_settlement.side != officeSide && m_settlement.side != bothSides)
            LOOPWRIGHT_TRY(forStation());
        else if (m_conflict.code == ConflictCode::FactDiffers)
            LOOPWRIGHT_TRY(takeContent());
        if (m_settlement.side == bothSides && m_conflict.code == ConflictCode::OrderChanged)
            noteOtherName();
        LOOPWRIGHT_TRY(ConflictStore::settle(m_transaction, m_conflict.id, m_settlement));
        // What is settled for now may strike out what was settled for before.
        LOOPWRIGHT_TRY(takeAllSettled(m_transaction, m_conflict.order));
        LOOPWRIGHT_TRY(refreshState(m_records, m_transaction, m_conflict.order, m_pending));
        if (!m_events.empty()) // the order has other values
            LOOPWRIGHT_TRY(claimForHeldOrders(m_records, m_transaction, m_events));
        LOOPWRIGHT_ASSIGN(const auto stored,
                          OrderStore(m_transaction.database()).get(m_conflict.order));
        LOOPWRIGHT_ASSIGN(const auto facts,
                          FactStore(m_transaction.database()).ofOrder(m_conflict.order));
        LOOPWRIGHT_TRY(refreshOrdersOnVisits(m_records, m_transaction, stored.order, facts));
        LOOPWRIGHT_TRY(refreshOrdersOfHazards(m_records, m_transaction, stored.order));
        m_events.push_back(orderEvent(m_records, stored.order, "conflict_settled", m_detail));
        return m_transaction.commit(m_events);
    }

private:
    Result<void> forStation();
    Result<void> takeValuesBack();
    Result<void> takeContent();
    Result<bool> countedAtEnd() const;
    Result<void> strikeOut();
    void noteOtherName();

    Records &m_records;
    Transaction &m_transaction;
    StationConflict m_conflict;
    Settlement m_settlement;
    StoredOrder m_stored;
    QJsonObject m_detail;
    std::vector<Event> m_events;
    PendingEvent m_pending;
};

Result<void> Settling::forStation()
{
    switch (m_conflict.code) {
    case ConflictCode::OrderChanged:
        return takeValuesBack();
    case ConflictCode::FactDiffers:
        return takeContent();
    case ConflictCode::ValueInUse: {
        LOOPWRIGHT_ASSIGN(const auto held,
                          AssignmentStore(m_transaction.database()).conflictsOf(m_stored.order));
        if (!held.empty())
            return failure(ErrorCode::Refused, held.front().reason().english());
        return {};
    }
    case ConflictCode::OrderClosed:
    case ConflictCode::TwoStations:
    case ConflictCode::CertificateSuperseded:
    case ConflictCode::ClockAhead:
    case ConflictCode::CertificateTwice:
    case ConflictCode::Forked:
        break;
    }
    return {};
}

/// The order takes the values that the van had; what the office changed meanwhile made nothing old.
Result<void> Settling::takeValuesBack()
{
    if (m_stored.status != OrderStatus::Open)
        return failure(
            ErrorCode::Refused,
            QString("Order %1 is no longer open: its values stay.").arg(m_stored.order.number));
    OrderFields fields = m_stored.order.fields();
    const QJsonObject columns = m_conflict.content.value("columns").toObject();
    for (auto it = columns.begin(); it != columns.end(); ++it) {
        const QString value = it.value().toArray().at(0).toString();
        if (value.isEmpty())
            fields.remove(it.key());
        else
            fields.insert(it.key(), value);
    }
    LOOPWRIGHT_ASSIGN(const auto reading, readFields(m_records, fields));
    if (worst(reading.malformed) == Severity::Error)
        return failure(ErrorCode::Refused, reading.malformed.front().reason.english());
    LOOPWRIGHT_ASSIGN(const auto taken,
                      takeOrder(m_records, m_transaction, reading.order, m_stored));
    if (!taken.findings.empty())
        return failure(ErrorCode::Refused, taken.findings.front().reason.english());
    m_events.push_back(taken.event);
    LOOPWRIGHT_ASSIGN(const auto carried,
                      StationStore(m_transaction.database()).carried(m_conflict.order));
    const auto taking = std::ranges::find(carried, m_conflict.station, &CarriedOrder::station);
    const Moment from = taking == carried.end() ? m_conflict.since : taking->since;
    m_detail.insert("takes_back", m_conflict.content.value("what"));
    m_detail.insert("takes_back_from", from.text());
    m_pending.takesBack = m_detail;
    return {};
}

/// Where a station is settled for, what stands under the id is struck out, even if it is the same:
/// so it does not matter which content came first.
Result<void> Settling::takeContent()
{
    if (m_settlement.side != officeSide)
        LOOPWRIGHT_TRY(strikeOut());
    LOOPWRIGHT_ASSIGN(const bool counted, countedAtEnd());
    StationConflict settled = m_conflict;
    settled.settled = m_settlement;
    LOOPWRIGHT_ASSIGN(const auto added, takeSettled(m_transaction, settled));
    const bool stands = m_settlement.side == officeSide && added.empty(); // under its own id
    const QString counts =
        stands ? m_conflict.fact() : idOfToldContent(m_conflict.toldBy(m_settlement.side));
    if (!stands)
        m_detail.insert("fact", counts);
    if (m_stored.status != OrderStatus::Open && !counted) {
        m_pending.afterEnd = idsOf(added) << counts;
        m_pending.afterEnd.removeDuplicates();
        m_detail.insert("after_end", QJsonArray::fromStringList(m_pending.afterEnd));
    }
    return {};
}

/// When the order ended the content was settled for, or nobody told otherwise than it.
Result<bool> Settling::countedAtEnd() const
{
    const Database &database = m_transaction.database();
    const QString told = m_conflict.fact();
    const QByteArray content = m_conflict.toldBy(m_settlement.side);
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database).ofOrder(m_conflict.order));
    Moment end;
    bool isLate = false; // came when the order had ended
    for (const Event &event : events) {
        isLate = isLate || event.detail.value("after_end").toArray().contains(told);
        if (event.kind == u"order_completed" || event.kind == u"order_cancelled")
            end = event.at;
    }
    LOOPWRIGHT_ASSIGN(const auto conflicts, ConflictStore(database).ofOrder(m_conflict.order));
    const StationConflict *then = nullptr; // as it was at the end
    for (const StationConflict &each : conflicts)
        if (each.isAbout(told) && each.since <= end)
            then = &each;
    if (then)
        return then->settled && then->settled->at <= end &&
               then->toldBy(then->settled->side) == content;
    LOOPWRIGHT_ASSIGN(const auto stored, FactStore(database).find(told));
    return stored && stored->order == m_conflict.order && !isLate &&
           canonicalJson(stored->toJson()) == content;
}

Result<void> Settling::strikeOut()
{
    const QString told = m_conflict.fact();
    LOOPWRIGHT_ASSIGN(const auto facts,
                      FactStore(m_transaction.database()).ofOrder(m_conflict.order));
    const bool isVoid = std::ranges::any_of(facts, [&told](const Fact &each) {
        return each.as<VoidFact>() && each.as<VoidFact>()->fact == told;
    });
    if (isVoid || std::ranges::find(facts, told, &Fact::id) == facts.end())
        return {};
    const VoidFact voiding{told, m_settlement.because, m_settlement.by};
    LOOPWRIGHT_TRY(FactStore::add(
        m_transaction,
        {idOfStrikeOut(m_conflict), m_records.now(), m_conflict.order, {}, {}, {}, voiding}));
    return {};
}

void Settling::noteOtherName()
{
    const QJsonArray pair = m_conflict.content.value("columns").toObject().value("pair").toArray();
    if (pair.isEmpty())
        return;
    m_detail.insert("also_named", pair.at(0).toString());
    m_pending.changes.push_back({std::nullopt, m_records.now(), pair.at(0).toString()});
}

} // namespace

Result<StationConflict> settleConflict(Records &records, const QString &id, const QString &side,
                                       const QString &because, bool anew)
{
    LOOPWRIGHT_TRY(checkReason(because, "Say why it is settled so."));
    LOOPWRIGHT_ASSIGN(const auto shown, conflictToSettle(records, id, anew));
    LOOPWRIGHT_TRY(allow(records, Act::SendVans, shown.conflict.order));
    LOOPWRIGHT_ASSIGN(const auto tag, tagOfSide(shown, side));
    if (shown.conflict.code == ConflictCode::FactDiffers && tag != officeSide)
        LOOPWRIGHT_TRY(allow(records, Act::VoidAnothersFact, shown.conflict.order));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    const Moment now = records.now();
    const auto &before = shown.conflict.settled;
    const Settlement settlement{tag, because.trimmed(), records.by(), now,
                                before ? before->first : now};
    LOOPWRIGHT_TRY(Settling(records, transaction, shown.conflict, settlement).run());
    StationConflict settled = shown.conflict;
    settled.settled = settlement;
    return settled;
}

} // namespace loopwright
