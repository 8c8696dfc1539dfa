#include "app/actions/JoinFacts.h"

#include "app/actions/ToldContents.h"
#include "core/base/Json.h"
#include "db/ConflictStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"

#include <QHash>
#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

using TellersByFact = QMultiHash<QString, FactOrigin>;

TellersByFact tellersByFact(const std::vector<FactOrigin> &tellers)
{
    TellersByFact known;
    for (const FactOrigin &teller : tellers)
        known.insert(teller.fact, teller);
    return known;
}

QJsonObject toldAs(const QByteArray &content, const QString &pair)
{
    return {{"content", QString::fromUtf8(content)}, {"pair", pair}};
}

/// What is known of an order, read once: a bundle may bring many ids that differ.
struct KnownOrder
{
    QHash<QString, StationConflict> differing; ///< by fact, the one with all contents until now
    TellersByFact tellers;

    std::optional<StationConflict> newest(const QString &fact) const
    {
        const auto found = differing.constFind(fact);
        return found == differing.constEnd() ? std::nullopt : std::optional(*found);
    }
    static Result<KnownOrder> read(const Database &database, const QString &order)
    {
        KnownOrder known;
        LOOPWRIGHT_ASSIGN(const auto conflicts, ConflictStore(database).ofOrder(order));
        for (const StationConflict &each : conflicts)
            if (each.code == ConflictCode::FactDiffers && each.stands)
                known.differing.insert(each.fact(), each);
        LOOPWRIGHT_ASSIGN(const auto tellers, ForeignStore(database).tellersOf(order));
        known.tellers = tellersByFact(tellers);
        return known;
    }
};

/// Who told the content that stands under the id: the office alone, if it recorded it itself.
QJsonObject toldBefore(const Fact &stored, const TellersByFact &tellers)
{
    const QByteArray content = canonicalJson(stored.toJson());
    QJsonObject told;
    for (auto [teller, end] = tellers.equal_range(stored.id); teller != end; ++teller)
        told.insert(teller->station, toldAs(content, teller->pair));
    if (told.isEmpty())
        told.insert(officeSide, toldAs(content, {}));
    return told;
}

class FactJoining
{
public:
    FactJoining(Records &records, Transaction &transaction, const Drawing &drawing,
                AddedParts &parts)
        : m_records(records)
        , m_transaction(transaction)
        , m_entry(drawing.joining.entry)
        , m_tag(drawing.joining.van.tag)
        , m_facts(drawing.facts)
        , m_parts(parts)
    {
    }

    Result<void> run()
    {
        LOOPWRIGHT_ASSIGN(m_here, KnownOrder::read(database(), m_entry.number));
        const QSet<QString> added(m_parts.added.begin(), m_parts.added.end());
        for (std::size_t i = 0; i < m_facts.size(); ++i)
            if (!added.contains(m_facts[i].id))
                LOOPWRIGHT_TRY(tell(m_facts[i], m_entry.facts[i]));
        // What was settled for before may be struck out now.
        return takeAllSettled(m_transaction, m_entry.number);
    }

private:
    Result<void> tell(const Fact &fact, const BundledFact &bundled);
    Result<void> addTeller(const Fact &fact, const QString &pair);
    Result<StationConflict> draw(const QString &order, const QString &fact, const QJsonObject &told)
    {
        return drawConflict(m_records, m_transaction, order, ConflictCode::FactDiffers, {},
                            {{"fact", fact}, {"told", told}});
    }
    Result<StationConflict> drawHere(const QString &fact, const QJsonObject &told,
                                     const std::optional<StationConflict> &before);
    Result<void> drawElsewhere(const Fact &stored);
    Result<void> takeContents(const StationConflict &conflict, const Fact &stored);
    bool isAhead(const Fact &fact) const { return fact.at.isAheadOf(m_records.now()); }
    const Database &database() const { return m_transaction.database(); }

    Records &m_records;
    Transaction &m_transaction;
    const BundledOrder &m_entry;
    const QString &m_tag;
    const std::vector<Fact> &m_facts;
    AddedParts &m_parts;
    KnownOrder m_here;
    QHash<QString, KnownOrder> m_elsewhere; ///< by order
};

Result<void> FactJoining::addTeller(const Fact &fact, const QString &pair)
{
    const FactOrigin teller{fact.id, m_tag, {}, pair, isAhead(fact)};
    m_here.tellers.insert(fact.id, teller);
    return ForeignStore::add(m_transaction, teller);
}

Result<void> FactJoining::tell(const Fact &fact, const BundledFact &bundled)
{
    LOOPWRIGHT_ASSIGN(const auto stored, FactStore(database()).find(fact.id));
    if (!stored)
        return {};
    const bool same = stored->digest() == sha256Hex(bundled.content);
    const bool isElsewhere = stored->order != m_entry.number;
    const auto before = m_here.newest(fact.id);
    QJsonObject told;
    if (before)
        told = before->content.value("told").toObject();
    else if (!isElsewhere)
        told = toldBefore(*stored, m_here.tellers);
    if (told.contains(m_tag))
        return {};
    if (!before && same && told.contains(officeSide))
        return {};
    m_parts.ahead = m_parts.ahead || isAhead(fact);
    if (!before && same)
        return addTeller(fact, bundled.pair);
    const bool decided =
        before && before->settled && std::ranges::any_of(told, [&](const QJsonValue &each) {
            return each["content"].toString().toUtf8() == bundled.content;
        });
    told.insert(m_tag, toldAs(bundled.content, bundled.pair));
    if (decided) {
        StationConflict more = *before;
        more.content.insert("told", told);
        return takeContents(more, *stored);
    }
    LOOPWRIGHT_ASSIGN(const auto drawn, drawHere(fact.id, told, before));
    if (isElsewhere)
        LOOPWRIGHT_TRY(drawElsewhere(*stored));
    return takeContents(drawn, *stored);
}

Result<StationConflict> FactJoining::drawHere(const QString &fact, const QJsonObject &told,
                                              const std::optional<StationConflict> &before)
{
    LOOPWRIGHT_ASSIGN(const auto drawn, draw(m_entry.number, fact, told));
    if (before)
        LOOPWRIGHT_TRY(ConflictStore::withdraw(m_transaction, before->id));
    m_here.differing.insert(fact, drawn);
    return drawn;
}

/// One id in two orders: which of them has it hangs on who came first, so it counts in neither
/// until somebody settles it. What the office recorded stands: it was there before all of them.
Result<void> FactJoining::drawElsewhere(const Fact &stored)
{
    if (!m_elsewhere.contains(stored.order)) {
        LOOPWRIGHT_ASSIGN(const auto known, KnownOrder::read(database(), stored.order));
        m_elsewhere.insert(stored.order, known);
    }
    KnownOrder &there = m_elsewhere[stored.order];
    const QJsonObject told = toldBefore(stored, there.tellers);
    if (there.differing.contains(stored.id) || told.contains(officeSide))
        return {};
    LOOPWRIGHT_ASSIGN(auto drawn, draw(stored.order, stored.id, told));
    there.differing.insert(stored.id, drawn);
    m_parts.elsewhere.push_back(std::move(drawn));
    return {};
}

/// Under an id of its own each that does not stand under the one that it was told with, as far as
/// it must be seen now: a safety card, and what is of another order. One that is there already is
/// told by one station more.
Result<void> FactJoining::takeContents(const StationConflict &conflict, const Fact &stored)
{
    const QByteArray here = canonicalJson(stored.toJson());
    const QStringList sides = conflict.tellers();
    for (const QString &side : sides) {
        const QByteArray content = conflict.toldBy(side);
        LOOPWRIGHT_ASSIGN(const auto known, FactStore(database()).find(idOfToldContent(content)));
        const bool isSeenNow = stored.as<SafetyFact>() || conflict.order != stored.order;
        if (!known && (content == here || !isSeenNow))
            continue;
        LOOPWRIGHT_ASSIGN(auto added, addToldContent(m_transaction, conflict, side));
        if (added)
            m_parts.facts.push_back(std::move(*added));
    }
    return {};
}

} // namespace

Result<void> joinFacts(Records &records, Transaction &transaction, const Drawing &drawing,
                       AddedParts &parts)
{
    return FactJoining(records, transaction, drawing, parts).run();
}

} // namespace loopwright
