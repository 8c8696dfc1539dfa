#include "app/actions/ToldContents.h"

#include "app/actions/StationConflicts.h"
#include "db/ConflictStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"

#include <QSet>

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
        if (each.code == ConflictCode::FactDiffers &&
            each.content.value("fact") == conflict.content.value("fact") &&
            each.tellers().contains(teller))
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

struct UnderOneId
{
    bool isHere = false; ///< in the order of the conflict
    std::vector<ToldVoid> voids;
    bool isStruckOutAsSettled = false;

    bool stands() const { return isHere && voids.empty() && !isStruckOutAsSettled; }

    static Result<UnderOneId> read(const Database &database, const StationConflict &conflict)
    {
        const QString told = conflict.content.value("fact").toString();
        UnderOneId found;
        LOOPWRIGHT_ASSIGN(const auto facts, FactStore(database).ofOrder(conflict.order));
        LOOPWRIGHT_ASSIGN(const auto tellers, ForeignStore(database).tellersOf(conflict.order));
        LOOPWRIGHT_ASSIGN(const auto conflicts, ConflictStore(database).ofOrder(conflict.order));
        QSet<QString> disputed;
        for (const SetAside &each : setAside(facts, tellers, conflicts))
            if (each.code == ConflictCode::FactDiffers)
                disputed.insert(each.fact);
        for (const Fact &fact : facts) {
            found.isHere = found.isHere || fact.id == told;
            const auto *voiding = fact.as<VoidFact>();
            if (!voiding || voiding->fact != told || disputed.contains(fact.id))
                continue;
            if (fact.id == idOfStrikeOut(conflict)) {
                found.isStruckOutAsSettled = true;
                continue;
            }
            ToldVoid each{fact, {}};
            std::ranges::copy_if(tellers, std::back_inserter(each.tellers),
                                 [&fact](const FactOrigin &one) { return one.fact == fact.id; });
            found.voids.push_back(std::move(each));
        }
        return found;
    }
};

} // namespace

Result<std::vector<Fact>> takeSettled(Transaction &transaction, const StationConflict &settled)
{
    std::vector<Fact> added;
    const QString &side = settled.settled->side;
    LOOPWRIGHT_ASSIGN(const auto known, UnderOneId::read(transaction.database(), settled));
    const QStringList alike = tellersAlike(settled, side);
    const auto isHis = [&alike](const ToldVoid &each) {
        return std::ranges::any_of(alike, [&each](const QString &one) { return each.isOf(one); });
    };
    if (side == officeSide && (known.stands() || std::ranges::any_of(known.voids, isHis)))
        return added;
    LOOPWRIGHT_ASSIGN(auto content, addToldContent(transaction, settled, side));
    if (content)
        added.push_back(std::move(*content));
    const QString id = idOfToldContent(settled.toldBy(side));
    for (const ToldVoid &each : known.voids) {
        if (!isHis(each))
            continue;
        Fact following = each.fact;
        following.id = idOfFollowing(each.fact.id, id);
        following.body = VoidFact{id, each.said().because, each.said().by};
        LOOPWRIGHT_ASSIGN(const bool isNew, FactStore::add(transaction, following));
        if (isNew)
            added.push_back(following);
        for (const FactOrigin &teller : each.tellers) {
            FactOrigin of = teller;
            of.fact = following.id;
            LOOPWRIGHT_TRY(ForeignStore::add(transaction, of));
        }
    }
    return added;
}

Result<std::vector<Fact>> takeAllSettled(Transaction &transaction, const QString &order)
{
    std::vector<Fact> added;
    LOOPWRIGHT_ASSIGN(const auto conflicts, ConflictStore(transaction.database()).ofOrder(order));
    for (const StationConflict &each : conflicts) {
        if (each.code != ConflictCode::FactDiffers || !each.stands || !each.settled)
            continue;
        LOOPWRIGHT_ASSIGN(const auto more, takeSettled(transaction, each));
        added.insert(added.end(), more.begin(), more.end());
    }
    return added;
}

} // namespace loopwright
