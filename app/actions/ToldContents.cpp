#include "app/actions/ToldContents.h"

#include "app/actions/StationConflicts.h"
#include "app/actions/ToldFacts.h"
#include "db/ConflictStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"

#include <algorithm>
#include <utility>

namespace loopwright {

namespace {

/// Those who told the same as that side.
QStringList tellersAlike(const StationConflict &conflict, const QString &side)
{
    QStringList tellers = conflict.tellers();
    tellers.removeIf(
        [&](const QString &each) { return conflict.toldBy(each) != conflict.toldBy(side); });
    return tellers;
}

/// When the station told its content first, by the clock here.
Moment toldFirst(const std::vector<StationConflict> &conflicts, const StationConflict &conflict,
                 const QString &teller)
{
    Moment first = conflict.since;
    for (const StationConflict &each : conflicts)
        if (each.isAbout(conflict.fact()) && each.tellers().contains(teller))
            first = std::min(first, each.since);
    return first;
}

} // namespace

Result<std::optional<Fact>> addToldContent(Transaction &transaction,
                                           const StationConflict &conflict, const QString &side)
{
    const Database &database = transaction.database();
    LOOPWRIGHT_ASSIGN(auto fact, factAsTold(conflict, side));
    const QString told = std::exchange(fact.id, idOfToldContent(conflict.toldBy(side)));
    LOOPWRIGHT_ASSIGN(const bool added, FactStore::add(transaction, fact));
    LOOPWRIGHT_ASSIGN(const auto conflicts, ConflictStore(database).ofOrder(conflict.order));
    LOOPWRIGHT_ASSIGN(const auto known, ForeignStore(database).tellersOf(conflict.order));
    const QStringList tellers = tellersAlike(conflict, side);
    for (const QString &teller : tellers) {
        if (tellers.contains(officeSide))
            break; // the office recorded it itself
        const auto before = std::ranges::find_if(known, [&](const FactOrigin &each) {
            return each.fact == told && each.station == teller;
        });
        const bool ahead = before != known.end()
                               ? before->ahead
                               : fact.at.isAheadOf(toldFirst(conflicts, conflict, teller));
        const QString pair = conflict.content.value("told")[teller]["pair"].toString();
        LOOPWRIGHT_TRY(
            ForeignStore::add(transaction, FactOrigin{fact.id, teller, {}, pair, ahead}));
    }
    return added ? std::optional(std::move(fact)) : std::nullopt;
}

namespace {

/// A void of what stands under the id, and the stations that tell it.
struct ToldVoid
{
    Fact fact;
    std::vector<FactOrigin> tellers;

    const VoidFact &said() const { return *fact.as<VoidFact>(); }
    bool isOf(const QString &side) const
    {
        return side == officeSide
                   ? tellers.empty()
                   : std::ranges::find(tellers, side, &FactOrigin::station) != tellers.end();
    }
};

class UnderOneId
{
public:
    /// `disputed`: facts whose own contents differ; a void among them strikes out nothing.
    UnderOneId(const ToldFacts &told, const QSet<QString> &disputed,
               const StationConflict &conflict)
    {
        const QString id = conflict.fact();
        for (const Fact &fact : told.facts) {
            m_isHere = m_isHere || fact.id == id;
            const auto *voiding = fact.as<VoidFact>();
            if (!voiding || voiding->fact != id || disputed.contains(fact.id))
                continue;
            if (fact.id == idOfStrikeOut(conflict)) {
                m_isStruckOutAsSettled = true;
                continue;
            }
            ToldVoid each{fact, {}};
            std::ranges::copy_if(told.tellers, std::back_inserter(each.tellers),
                                 [&fact](const FactOrigin &one) { return one.fact == fact.id; });
            m_voids.push_back(std::move(each));
        }
    }

    bool stands() const { return m_isHere && m_voids.empty() && !m_isStruckOutAsSettled; }
    const std::vector<ToldVoid> &voids() const { return m_voids; }

private:
    bool m_isHere = false; ///< in the order of the conflict
    bool m_isStruckOutAsSettled = false;
    std::vector<ToldVoid> m_voids;
};

/// Under the id of the content; in the name of those who tell the void.
Result<std::optional<Fact>> followVoid(Transaction &transaction, const ToldVoid &told,
                                       const QString &content)
{
    Fact following = told.fact;
    following.id = idOfFollowing(told.fact.id, content);
    following.body = VoidFact{content, told.said().because, told.said().by};
    LOOPWRIGHT_ASSIGN(const bool isNew, FactStore::add(transaction, following));
    for (FactOrigin teller : told.tellers) {
        teller.fact = following.id;
        LOOPWRIGHT_TRY(ForeignStore::add(transaction, teller));
    }
    return isNew ? std::optional(std::move(following)) : std::nullopt;
}

Result<std::vector<Fact>> takeUnder(Transaction &transaction, const UnderOneId &known,
                                    const StationConflict &settled)
{
    std::vector<Fact> added;
    const QString &side = settled.settled->side;
    const QStringList alike = tellersAlike(settled, side);
    const auto isHis = [&alike](const ToldVoid &each) {
        return std::ranges::any_of(alike, [&each](const QString &one) { return each.isOf(one); });
    };
    if (side == officeSide && (known.stands() || std::ranges::any_of(known.voids(), isHis)))
        return added;
    LOOPWRIGHT_ASSIGN(auto content, addToldContent(transaction, settled, side));
    if (content)
        added.push_back(std::move(*content));
    for (const ToldVoid &each : known.voids()) {
        if (!isHis(each))
            continue;
        LOOPWRIGHT_ASSIGN(auto following,
                          followVoid(transaction, each, idOfToldContent(settled.toldBy(side))));
        if (following)
            added.push_back(std::move(*following));
    }
    return added;
}

} // namespace

Result<std::vector<Fact>> takeSettled(Transaction &transaction, const StationConflict &settled)
{
    LOOPWRIGHT_ASSIGN(const auto told, ToldFacts::read(transaction.database(), settled.order));
    return takeUnder(transaction, UnderOneId(told, told.differing(), settled), settled);
}

Result<void> takeAllSettled(Transaction &transaction, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto told, ToldFacts::read(transaction.database(), order));
    const QSet<QString> disputed = told.differing();
    for (const StationConflict &each : told.conflicts) {
        if (each.code != ConflictCode::FactDiffers || !each.stands || !each.settled)
            continue;
        if (const UnderOneId known(told, disputed, each); !known.voids().empty())
            LOOPWRIGHT_TRY(takeUnder(transaction, known, each));
    }
    return {};
}

} // namespace loopwright
