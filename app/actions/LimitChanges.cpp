#include "app/actions/LimitChanges.h"

#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/LimitSets.h"
#include "db/Connection.h"
#include "db/MetaStore.h"

namespace loopwright {

namespace {

Result<bool> takeLimitSet(Records &records, const LimitSet &set)
{
    LOOPWRIGHT_ASSIGN(const auto shipped, shippedLimits());
    LOOPWRIGHT_TRY(set.checkSources(shipped));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    const auto added = LimitSetStore::add(transaction, set);
    if (!added || !*added)
        return added;
    LOOPWRIGHT_ASSIGN(const auto inForce,
                      LimitSetStore(records.database()).inForceOn(records.now().localDate()));
    if (inForce && inForce->version() == set.version())
        LOOPWRIGHT_TRY(refreshOpenOrders(records, transaction, set.version()));
    LOOPWRIGHT_TRY(transaction.commit(
        registerEvent(records, "limit_set_added", {{"version", set.version()}})));
    return true;
}

} // namespace

Result<void> bringShippedLimits(Records &records)
{
    // On a server the owner brings them, or a supervisor: others may not write them.
    const auto login = records.database().login();
    if (login && !login->isOwner && login->role != Role::Supervisor)
        return {};
    LOOPWRIGHT_ASSIGN(const auto sets, shippedLimitSets());
    for (const LimitSet &set : sets) {
        LOOPWRIGHT_ASSIGN(const auto there, LimitSetStore(records.database()).find(set.version()));
        if (there)
            continue;
        LOOPWRIGHT_TRY(takeLimitSet(records, set));
    }
    return {};
}

Result<bool> addLimitSet(Records &records, const LimitSet &set)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepLimits));
    return takeLimitSet(records, set);
}

namespace {

/// The board's open orders were decided by the limits in force.
Result<bool> boardFollows(Records &records, const QString &inForce)
{
    LOOPWRIGHT_ASSIGN(const auto noted, MetaStore(records.database()).boardLimits());
    return !noted || *noted == inForce;
}

} // namespace

Result<bool> limitsAreCurrent(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto sets, shippedLimitSets());
    for (const LimitSet &set : sets) {
        LOOPWRIGHT_ASSIGN(const auto there, LimitSetStore(records.database()).find(set.version()));
        if (!there)
            return false;
    }
    LOOPWRIGHT_ASSIGN(const auto limits, limitsInForce(records));
    return boardFollows(records, limits.version());
}

Result<void> followLimits(Records &records)
{
    if (records.database().access() == Database::Access::ReadOnly)
        return {};
    LOOPWRIGHT_ASSIGN(const auto limits, limitsInForce(records));
    LOOPWRIGHT_ASSIGN(const bool current, boardFollows(records, limits.version()));
    if (current)
        return {};
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const bool still, boardFollows(records, limits.version()));
    if (still) // another program was first
        return {};
    LOOPWRIGHT_TRY(refreshOpenOrders(records, transaction, limits.version()));
    return transaction.commit(
        registerEvent(records, "limit_set_followed", {{"version", limits.version()}}));
}

} // namespace loopwright
