#include "app/actions/ToldContents.h"

#include "app/actions/StationConflicts.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"

#include <algorithm>

namespace loopwright {

Result<std::optional<Fact>> addToldContent(Transaction &transaction,
                                           const StationConflict &conflict, const QString &side)
{
    LOOPWRIGHT_ASSIGN(auto fact, factAsTold(conflict, side));
    const QByteArray content = conflict.toldBy(side);
    fact.id = idOfToldContent(content);
    LOOPWRIGHT_ASSIGN(const bool added, FactStore::add(transaction, fact));
    QStringList tellers = conflict.tellers();
    tellers.removeIf([&](const QString &each) { return conflict.toldBy(each) != content; });
    if (!tellers.contains(officeSide))
        for (const QString &teller : std::as_const(tellers)) {
            const QString pair = conflict.content.value("told")[teller]["pair"].toString();
            LOOPWRIGHT_TRY(ForeignStore::add(
                transaction,
                FactOrigin{fact.id, teller, {}, pair, fact.at.isAheadOf(conflict.since)}));
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
        for (const Fact &fact : facts) {
            found.isHere = found.isHere || fact.id == told;
            const auto *voiding = fact.as<VoidFact>();
            if (!voiding || voiding->fact != told)
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
    const auto isHis = [&side](const ToldVoid &each) { return each.isOf(side); };
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

} // namespace loopwright
