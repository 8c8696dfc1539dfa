// A conflict between stations is settled: declared in StationConflicts.h.

#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/OrderIntake.h"
#include "app/actions/StationConflicts.h"
#include "db/AssignmentStore.h"
#include "db/ConflictStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"
#include "db/StationStore.h"

#include <QUuid>

#include <algorithm>

namespace loopwright {

namespace {

Result<ShownConflict> openConflict(Records &records, const QString &id)
{
    LOOPWRIGHT_ASSIGN(const auto known, ConflictStore(records.database()).find(id));
    if (!known)
        return failure(ErrorCode::NotFound,
                       QString("There is no conflict \"%1\".").arg(id.left(60)));
    if (!known->stands)
        return failure(ErrorCode::Refused,
                       "The conflict holds no longer: more was told since, see what is open now.");
    if (!known->isOpen())
        return failure(ErrorCode::Refused, "The conflict is settled already.");
    return shownConflict(records, *known);
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
            LOOPWRIGHT_TRY(takeOfficesBack());
        if (m_settlement.side == bothSides && m_conflict.code == ConflictCode::OrderChanged)
            noteOtherName();
        LOOPWRIGHT_TRY(ConflictStore::settle(m_transaction, m_conflict.id, m_settlement));
        LOOPWRIGHT_TRY(refreshState(m_records, m_transaction, m_conflict.order, m_pending));
        if (!m_events.empty()) // the order has other values
            LOOPWRIGHT_TRY(claimForHeldOrders(m_records, m_transaction, m_events));
        LOOPWRIGHT_ASSIGN(const auto stored,
                          OrderStore(m_transaction.database()).get(m_conflict.order));
        LOOPWRIGHT_TRY(refreshOrdersOfHazards(m_records, m_transaction, stored.order));
        m_events.push_back(orderEvent(m_records, stored.order, "conflict_settled", m_detail));
        return m_transaction.commit(m_events);
    }

private:
    Result<void> forStation();
    Result<void> takeValuesBack();
    Result<void> takeFactOfSide();
    Result<void> takeOfficesBack();
    Result<bool> standsHere(const QString &id) const;
    Result<void> strikeOut(const QString &id);
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
        return takeFactOfSide();
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

/// What stands under the id is struck out, even if it is the same, and what the station told is
/// recorded under an id made of it: so it does not matter which content came first.
Result<void> Settling::takeFactOfSide()
{
    LOOPWRIGHT_ASSIGN(auto fact, factAsTold(m_conflict, m_settlement.side));
    LOOPWRIGHT_TRY(strikeOut(fact.id));
    fact.id = idOfToldContent(m_conflict.toldBy(m_settlement.side));
    m_detail.insert("fact", fact.id);
    LOOPWRIGHT_ASSIGN(const auto known, FactStore(m_transaction.database()).find(fact.id));
    if (known) // a safety card, or settled so before
        return {};
    LOOPWRIGHT_TRY(FactStore::add(m_transaction, fact));
    if (m_settlement.side == officeSide)
        return {};
    const QString pair = m_conflict.content.value("told")[m_settlement.side]["pair"].toString();
    return ForeignStore::add(
        m_transaction,
        FactOrigin{fact.id, m_settlement.side, {}, pair, fact.at.isAheadOf(m_conflict.since)});
}

/// What the office recorded counts under its own id; where that was struck out, as somebody settled
/// it otherwise before a further content came, under one made of it.
Result<void> Settling::takeOfficesBack()
{
    LOOPWRIGHT_ASSIGN(const bool stands, standsHere(m_conflict.content.value("fact").toString()));
    return stands ? Result<void>() : takeFactOfSide();
}

/// Recorded in this order, and not struck out.
Result<bool> Settling::standsHere(const QString &id) const
{
    LOOPWRIGHT_ASSIGN(const auto facts,
                      FactStore(m_transaction.database()).ofOrder(m_conflict.order));
    const bool isVoid = std::ranges::any_of(facts, [&id](const Fact &each) {
        return each.as<VoidFact>() && each.as<VoidFact>()->fact == id;
    });
    return !isVoid && std::ranges::find(facts, id, &Fact::id) != facts.end();
}

Result<void> Settling::strikeOut(const QString &id)
{
    LOOPWRIGHT_ASSIGN(const bool stands, standsHere(id));
    if (!stands)
        return {};
    const QString ownId = QUuid::createUuid().toString(QUuid::WithoutBraces);
    LOOPWRIGHT_TRY(
        FactStore::add(m_transaction, {ownId,
                                       m_records.now(),
                                       m_conflict.order,
                                       {},
                                       {},
                                       {},
                                       VoidFact{id, m_settlement.because, m_settlement.by}}));
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
                                       const QString &because)
{
    LOOPWRIGHT_TRY(checkReason(because, "Say why it is settled so."));
    LOOPWRIGHT_ASSIGN(const auto shown, openConflict(records, id));
    LOOPWRIGHT_TRY(allow(records, Act::SendVans, shown.conflict.order));
    LOOPWRIGHT_ASSIGN(const auto tag, tagOfSide(shown, side));
    if (shown.conflict.code == ConflictCode::FactDiffers && tag != officeSide)
        LOOPWRIGHT_TRY(allow(records, Act::VoidAnothersFact, shown.conflict.order));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    const Settlement settlement{tag, because.trimmed(), records.by(), records.now()};
    LOOPWRIGHT_TRY(Settling(records, transaction, shown.conflict, settlement).run());
    StationConflict settled = shown.conflict;
    settled.settled = settlement;
    return settled;
}

} // namespace loopwright
