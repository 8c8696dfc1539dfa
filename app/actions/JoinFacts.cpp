#include "app/actions/JoinFacts.h"

#include "core/base/Json.h"
#include "db/ConflictStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"

#include <QMultiHash>
#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

QJsonObject toldAs(const QByteArray &content, const QString &pair)
{
    return {{"content", QString::fromUtf8(content)}, {"pair", pair}};
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
        LOOPWRIGHT_ASSIGN(m_conflicts, ConflictStore(database()).ofOrder(m_entry.number));
        LOOPWRIGHT_ASSIGN(const auto tellers, ForeignStore(database()).tellersOf(m_entry.number));
        for (const FactOrigin &teller : tellers)
            m_tellers.insert(teller.fact, teller);
        const QSet<QString> added(m_parts.added.begin(), m_parts.added.end());
        for (std::size_t i = 0; i < m_facts.size(); ++i)
            if (!added.contains(m_facts[i].id))
                LOOPWRIGHT_TRY(tell(m_facts[i], m_entry.facts[i]));
        return {};
    }

private:
    Result<void> tell(const Fact &fact, const BundledFact &bundled);
    std::optional<StationConflict> newest(const QString &fact) const;
    QJsonObject toldBefore(const Fact &stored) const;
    Result<void> addTeller(const Fact &fact, const QString &pair);
    Result<void> draw(const QString &fact, const QJsonObject &told,
                      const std::optional<StationConflict> &before);
    Result<void> takeCards(const QJsonObject &told, const QByteArray &stored);
    bool isAhead(const Fact &fact) const
    {
        return fact.at > m_records.now().plusSeconds(24.0 * 60 * 60);
    }
    const Database &database() const { return m_transaction.database(); }

    Records &m_records;
    Transaction &m_transaction;
    const BundledOrder &m_entry;
    const QString &m_tag;
    const std::vector<Fact> &m_facts;
    AddedParts &m_parts;
    std::vector<StationConflict> m_conflicts;  ///< of the order
    QMultiHash<QString, FactOrigin> m_tellers; ///< by fact
};

/// The conflict about the id that has all contents known until now.
std::optional<StationConflict> FactJoining::newest(const QString &fact) const
{
    const auto found = std::ranges::find_if(m_conflicts, [&fact](const StationConflict &each) {
        return each.code == ConflictCode::FactDiffers && each.stands &&
               each.content.value("fact").toString() == fact;
    });
    return found == m_conflicts.end() ? std::nullopt : std::optional(*found);
}

/// Who told the content that stands under the id: the office alone, if it recorded it itself.
QJsonObject FactJoining::toldBefore(const Fact &stored) const
{
    const QByteArray content = canonicalJson(stored.toJson());
    QJsonObject told;
    for (auto [teller, end] = m_tellers.equal_range(stored.id); teller != end; ++teller)
        told.insert(teller->station, toldAs(content, teller->pair));
    if (told.isEmpty())
        told.insert(officeSide, toldAs(content, {}));
    return told;
}

Result<void> FactJoining::addTeller(const Fact &fact, const QString &pair)
{
    const FactOrigin teller{fact.id, m_tag, {}, pair, isAhead(fact)};
    m_tellers.insert(fact.id, teller);
    return ForeignStore::add(m_transaction, teller);
}

Result<void> FactJoining::tell(const Fact &fact, const BundledFact &bundled)
{
    LOOPWRIGHT_ASSIGN(const auto stored, FactStore(database()).find(fact.id));
    if (!stored)
        return {};
    const bool same = stored->digest() == sha256Hex(bundled.content);
    const auto before = newest(fact.id);
    QJsonObject told = before ? before->content.value("told").toObject() : toldBefore(*stored);
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
    if (decided)
        return {};
    told.insert(m_tag, toldAs(bundled.content, bundled.pair));
    LOOPWRIGHT_TRY(draw(fact.id, told, before));
    return takeCards(told, canonicalJson(stored->toJson()));
}

Result<void> FactJoining::draw(const QString &fact, const QJsonObject &told,
                               const std::optional<StationConflict> &before)
{
    const QJsonObject content{{"fact", fact}, {"told", told}};
    const QString id =
        StationConflict::idOf(ConflictCode::FactDiffers, m_entry.number, {}, content);
    const StationConflict drawn{
        id, m_entry.number, ConflictCode::FactDiffers, {}, content, m_records.now(), {}};
    LOOPWRIGHT_TRY(ConflictStore::add(m_transaction, drawn));
    if (before) {
        LOOPWRIGHT_TRY(ConflictStore::withdraw(m_transaction, before->id));
        std::erase_if(m_conflicts,
                      [&before](const StationConflict &each) { return each.id == before->id; });
    }
    m_conflicts.push_back(drawn);
    return {};
}

Result<void> FactJoining::takeCards(const QJsonObject &told, const QByteArray &stored)
{
    for (auto side = told.begin(); side != told.end(); ++side) {
        const QJsonObject saying = side.value().toObject();
        const QByteArray content = saying.value("content").toString().toUtf8();
        if (content == stored)
            continue;
        LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(content, "content"));
        LOOPWRIGHT_ASSIGN(auto card, Fact::fromJson(object, "content"));
        card.id = idOfToldContent(content);
        LOOPWRIGHT_ASSIGN(const auto known, FactStore(database()).find(card.id));
        if (known || !card.as<SafetyFact>())
            continue;
        LOOPWRIGHT_TRY(FactStore::add(m_transaction, card));
        LOOPWRIGHT_TRY(ForeignStore::add(
            m_transaction,
            FactOrigin{card.id, side.key(), {}, saying.value("pair").toString(), isAhead(card)}));
        m_parts.facts.push_back(card);
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
