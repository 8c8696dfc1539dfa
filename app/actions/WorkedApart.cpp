#include "app/actions/WorkedApart.h"

#include "app/actions/ToldFacts.h"
#include "core/acceptance/Proof.h"

#include <QHash>
#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

using Works = QSet<QString>; ///< by the id under which each was told

bool hasMore(const Works &works, const Works &known)
{
    return !(works - known).isEmpty();
}

class Work
{
public:
    Work(const Database &database, const Drawing &drawing, const AddedParts &parts)
        : m_database(database)
        , m_drawing(drawing)
        , m_parts(parts)
    {
    }

    Result<void> read();
    Apart apart() const;

private:
    Works knownTo(const ToldOrder &told) const;
    bool areApart(const ToldOrder &one, const ToldOrder &other) const;
    Works worksOf(const auto &facts) const
    {
        Works works;
        for (const QString &fact : facts)
            works.insert(m_toldUnder.value(fact, fact));
        return works;
    }
    Works brought() const
    {
        QStringList ids;
        for (const Fact &fact : m_drawing.facts)
            if (isEvidence(fact))
                ids << fact.id;
        return worksOf(ids);
    }

    const Database &m_database;
    const Drawing &m_drawing;
    const AddedParts &m_parts;
    QHash<QString, QString> m_toldUnder;
    std::vector<ToldOrder> m_told;
    QHash<QString, Works> m_done; ///< by station, and the office
    Works m_before;               ///< by whomever, without what the bundle adds
};

Result<void> Work::read()
{
    const QString &order = m_drawing.joining.entry.number;
    LOOPWRIGHT_ASSIGN(const auto all, ToldFacts::read(m_database, order));
    LOOPWRIGHT_ASSIGN(m_told, StationStore(m_database).told(order));
    m_toldUnder = toldUnder(all.conflicts);
    QHash<QString, QStringList> sides; // of each fact
    for (const FactOrigin &teller : all.tellers)
        sides[teller.fact] << teller.station;
    for (const StationConflict &each : all.conflicts)
        if (each.stands && each.code == ConflictCode::FactDiffers)
            sides[each.fact()] << each.tellers();
    const QStringList added = idsOf(m_parts.facts);
    for (const Fact &fact : all.facts) {
        if (!isEvidence(fact))
            continue;
        const QString work = m_toldUnder.value(fact.id, fact.id);
        QStringList who = sides.value(fact.id) + sides.value(work);
        if (who.isEmpty())
            who << officeSide;
        for (const QString &side : std::as_const(who))
            m_done[side].insert(work);
        if (!added.contains(fact.id))
            m_before.insert(work);
    }
    m_done[m_drawing.joining.van.tag] += brought();
    return {};
}

Works Work::knownTo(const ToldOrder &told) const
{
    return worksOf(told.known) + m_done.value(told.station);
}

bool Work::areApart(const ToldOrder &one, const ToldOrder &other) const
{
    return hasMore(m_done.value(one.station), knownTo(other)) &&
           hasMore(m_done.value(other.station), knownTo(one));
}

Apart Work::apart() const
{
    const Works offices = m_done.value(officeSide);
    bool unseen = false;
    for (std::size_t i = 0; i < m_told.size(); ++i) {
        const ToldOrder &told = m_told[i];
        if (told.station == officeSide)
            continue;
        for (std::size_t j = i + 1; j < m_told.size(); ++j)
            if (m_told[j].station != officeSide && areApart(told, m_told[j]))
                return Apart::Yes;
        const bool lacks = hasMore(offices, knownTo(told));
        if (lacks && told.station == m_drawing.joining.van.tag && hasMore(brought(), m_before))
            return Apart::Yes;
        unseen = unseen || lacks;
    }
    return unseen ? Apart::AsBefore : Apart::No;
}

} // namespace

Result<Apart> workedApart(const Database &database, const Drawing &drawing, const AddedParts &parts)
{
    Work work(database, drawing, parts);
    LOOPWRIGHT_TRY(work.read());
    return work.apart();
}

} // namespace loopwright
