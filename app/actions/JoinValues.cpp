#include "app/actions/JoinValues.h"

#include "app/actions/BundleOrders.h"
#include "app/actions/OrderIntake.h"
#include "core/acceptance/Proof.h"
#include "core/acceptance/StationConflict.h"
#include "core/order/MergedFields.h"

#include <algorithm>

namespace loopwright {

namespace {

tl::unexpected<Error> noJoin(const char *code, const QString &why)
{
    return failure(ErrorCode::Refused, why, code);
}

class ValueJoining
{
public:
    ValueJoining(Records &records, Transaction &transaction, const Joining &joining,
                 const std::vector<Fact> &facts)
        : m_records(records)
        , m_transaction(transaction)
        , m_joining(joining)
        , m_entry(joining.entry)
        , m_facts(facts)
    {
    }

    Result<JoinedValues> run();

private:
    Result<void> checkKnown(const ServiceOrder &van) const;
    Result<void> takeNew(const ServiceOrder &van);
    Result<void> merge(const ServiceOrder &van);
    Result<bool> apply(const OrderFields &fields);
    Result<void> noteOffice(const OrderFields &own);
    Result<void> noteTold(const OrderFields &base, const OrderFields &now);
    Result<void> tellKept(const OrderFields &base, const OrderFields &van);
    const Database &database() const { return m_transaction.database(); }

    Records &m_records;
    Transaction &m_transaction;
    const Joining &m_joining;
    const BundledOrder &m_entry;
    const std::vector<Fact> &m_facts; ///< all that it brings
    std::vector<ToldOrder> m_before;  ///< what was told until now
    JoinedValues m_joined;
};

Result<void> ValueJoining::checkKnown(const ServiceOrder &van) const
{
    const auto &before = m_joined.before;
    if (!before && !m_entry.base.isEmpty())
        return noJoin("unknown_order", QString("Order %1 was taken along from this office, and "
                                               "is not in its records: an older copy of them is "
                                               "in use.")
                                           .arg(m_entry.number));
    // Entered in the van and here it is one order, if it is of one circuit.
    if (before && before->uuid != m_entry.uuid && before->order.circuit != van.circuit)
        return noJoin("number_in_use",
                      QString("The van made an order %1 of its own, of circuit %2, and here it is "
                              "of circuit %3. Enter it in the van under its right number, record "
                              "its work there anew, cancel the wrong one, and bring it back.")
                          .arg(m_entry.number, van.circuit, before->order.circuit));
    if (before && before->order.circuit != van.circuit)
        return noJoin(
            "unknown_order",
            QString("Order %1 is of circuit %2 here.").arg(m_entry.number, before->order.circuit));
    return {};
}

Result<void> ValueJoining::takeNew(const ServiceOrder &van)
{
    LOOPWRIGHT_ASSIGN(const auto taken, takeOrder(m_records, m_transaction, van, std::nullopt,
                                                  false, {m_entry.uuid, m_entry.circuitUuid}));
    m_joined.events.push_back(taken.event);
    LOOPWRIGHT_TRY(noteTold(van.fields(), van.fields()));
    return noteOffice(van.fields());
}

/// Whether it could be; the order is as it was if the values make none.
Result<bool> ValueJoining::apply(const OrderFields &fields)
{
    LOOPWRIGHT_ASSIGN(const auto reading, readFields(m_records, fields));
    if (worst(reading.malformed) == Severity::Error)
        return false;
    LOOPWRIGHT_ASSIGN(auto taken,
                      takeOrder(m_records, m_transaction, reading.order, m_joined.before));
    // What the change makes old, and when, the van's own event says.
    taken.event.detail.remove("retires");
    m_joined.events.push_back(taken.event);
    return true;
}

Result<void> ValueJoining::noteTold(const OrderFields &base, const OrderFields &now)
{
    for (const ToldOrder &each : m_before)
        if (m_joining.tags.contains(each.station))
            m_joined.known << each.known;
    QStringList known = m_entry.seen + idsOf(m_facts) + m_joined.known;
    known.removeDuplicates();
    known.sort();
    return StationStore::tell(m_transaction, m_entry.number,
                              {m_joining.van.tag, base, now,
                               std::ranges::any_of(m_facts, isEvidence), known,
                               m_entry.events.back().event.sequence});
}

Result<void> ValueJoining::noteOffice(const OrderFields &own)
{
    LOOPWRIGHT_ASSIGN(const auto now, OrderStore(database()).get(m_entry.number));
    return StationStore::tell(m_transaction, m_entry.number,
                              {officeSide, own, now.order.fields(), false, {}, 0});
}

/// What the office says by itself: the order as it stands, but for what came of stations alone.
OrderFields ownValues(const OrderFields &here, const std::vector<ToldOrder> &told)
{
    const auto office = std::ranges::find(told, officeSide, &ToldOrder::station);
    if (office == told.end())
        return here;
    OrderFields own = here;
    const QStringList columns = office->base.keys() + office->now.keys();
    for (const QString &column : columns)
        if (here.value(column) == office->now.value(column))
            own.insert(column, office->base.value(column));
    own.removeIf([](const auto &each) { return each.value().isEmpty(); });
    return own;
}

Result<void> ValueJoining::merge(const ServiceOrder &van)
{
    const auto known = std::ranges::find(m_before, m_joining.van.tag, &ToldOrder::station);
    OrderFields base = known == m_before.end() ? van.fields() : known->base;
    if (!m_entry.base.isEmpty()) {
        LOOPWRIGHT_ASSIGN(const auto taken, orderIn(m_entry, m_entry.base, m_joining.place));
        base = taken.fields();
    }
    LOOPWRIGHT_TRY(noteTold(base, van.fields()));
    const OrderFields here = m_joined.before->order.fields(), own = ownValues(here, m_before);
    if (m_joined.before->status == OrderStatus::Open) {
        LOOPWRIGHT_ASSIGN(const auto all, StationStore(database()).told(m_entry.number));
        std::vector<ToldFields> told;
        for (const ToldOrder &each : all)
            if (each.station != officeSide)
                told.push_back({each.base, each.now});
        OrderFields merged = mergedFields(own, told);
        const bool changes = merged != here;
        LOOPWRIGHT_ASSIGN(const bool applied, changes ? apply(merged) : Result<bool>(true));
        if (!applied && own != here)
            LOOPWRIGHT_TRY(apply(own));
    }
    LOOPWRIGHT_TRY(tellKept(base, van.fields()));
    return noteOffice(own);
}

/// Nobody's word is dropped in silence.
Result<void> ValueJoining::tellKept(const OrderFields &base, const OrderFields &van)
{
    LOOPWRIGHT_ASSIGN(const auto now, OrderStore(database()).get(m_entry.number));
    const OrderFields here = now.order.fields();
    const QStringList columns = van.keys();
    for (const QString &column : columns)
        if (van.value(column) != base.value(column) && van.value(column) != here.value(column))
            m_joined.kept.push_back(
                {Severity::Warning,
                 "value_kept",
                 Text(QT_TRANSLATE_NOOP("core",
                                        "%1 was changed in the van to %2, and stays %3 here."))
                     .arg(column)
                     .arg(van.value(column))
                     .arg(here.value(column).isEmpty() ? QString("-") : here.value(column)),
                 {},
                 column,
                 0});
    return {};
}

Result<JoinedValues> ValueJoining::run()
{
    LOOPWRIGHT_ASSIGN(const auto van, orderIn(m_entry, m_entry.content, m_joining.place));
    LOOPWRIGHT_ASSIGN(m_joined.before, OrderStore(database()).find(m_entry.number));
    LOOPWRIGHT_TRY(checkKnown(van));
    LOOPWRIGHT_ASSIGN(m_before, StationStore(database()).told(m_entry.number));
    if (m_joined.before)
        LOOPWRIGHT_TRY(merge(van));
    else
        LOOPWRIGHT_TRY(takeNew(van));
    return std::move(m_joined);
}

} // namespace

Result<JoinedValues> joinValues(Records &records, Transaction &transaction, const Joining &joining,
                                const std::vector<Fact> &facts)
{
    return ValueJoining(records, transaction, joining, facts).run();
}

} // namespace loopwright
