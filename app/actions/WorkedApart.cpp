#include "app/actions/WorkedApart.h"

#include "core/acceptance/Proof.h"
#include "db/ConflictStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"

#include <QHash>

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
    Work(const Database &database, const Drawing &drawing)
        : m_database(database)
        , m_drawing(drawing)
    {
    }

    Result<void> read();
    bool isDoneApart(const QSet<QString> &before) const;

private:
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
    QHash<QString, QString> m_toldUnder;
    std::vector<ToldOrder> m_told;
    QHash<QString, Works> m_done; ///< by station, and the office
};

Result<void> Work::read()
{
    const QString &order = m_drawing.joining.entry.number;
    LOOPWRIGHT_ASSIGN(const auto conflicts, ConflictStore(m_database).ofOrder(order));
    LOOPWRIGHT_ASSIGN(const auto tellers, ForeignStore(m_database).tellersOf(order));
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(m_database).ofOrder(order));
    LOOPWRIGHT_ASSIGN(auto told, StationStore(m_database).told(order));
    m_told = std::move(told);
    m_toldUnder = toldUnder(conflicts);
    QHash<QString, QStringList> sides; // of each fact
    for (const FactOrigin &teller : tellers)
        sides[teller.fact] << teller.station;
    for (const StationConflict &each : conflicts)
        if (each.stands && each.code == ConflictCode::FactDiffers)
            sides[each.content.value("fact").toString()] << each.tellers();
    for (const Fact &fact : facts) {
        if (!isEvidence(fact))
            continue;
        const QString work = m_toldUnder.value(fact.id, fact.id);
        QStringList who = sides.value(fact.id) + sides.value(work);
        if (who.isEmpty())
            who << officeSide;
        for (const QString &side : std::as_const(who))
            m_done[side].insert(work);
    }
    return {};
}

bool Work::isDoneApart(const QSet<QString> &before) const
{
    const QString &tag = m_drawing.joining.van.tag;
    const Works own = m_done.value(tag) + brought();
    const auto knownTo = [&](const QString &station) {
        const auto row = std::ranges::find(m_told, station, &ToldOrder::station);
        const Works told = row == m_told.end() ? Works() : worksOf(row->known);
        return told + m_done.value(station);
    };
    const Works known = knownTo(tag) + own;
    const bool apart = std::ranges::any_of(m_told, [&](const ToldOrder &each) {
        return each.station != tag && each.station != officeSide &&
               hasMore(own, knownTo(each.station)) && hasMore(m_done.value(each.station), known);
    });
    return apart ||
           (hasMore(brought(), worksOf(before)) && hasMore(m_done.value(officeSide), known));
}

} // namespace

Result<bool> workedApart(const Database &database, const Drawing &drawing,
                         const QSet<QString> &before)
{
    Work work(database, drawing);
    LOOPWRIGHT_TRY(work.read());
    return work.isDoneApart(before);
}

bool isEvidence(const Fact &fact)
{
    return provenBy(fact) != Proves::Nothing;
}

} // namespace loopwright
