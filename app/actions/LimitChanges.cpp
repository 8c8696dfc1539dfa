#include "app/actions/LimitChanges.h"

#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/LimitSets.h"
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

Result<void> followLimits(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto limits, limitsInForce(records));
    const auto isCurrent = [&]() -> Result<bool> {
        LOOPWRIGHT_ASSIGN(const auto noted, MetaStore(records.database()).boardLimits());
        return !noted || *noted == limits.version();
    };
    const auto current = isCurrent();
    if (!current || *current)
        return current ? Result<void>() : failure(current.error());
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    const auto still = isCurrent(); // another program may have been first
    if (!still || *still)
        return still ? Result<void>() : failure(still.error());
    LOOPWRIGHT_TRY(refreshOpenOrders(records, transaction, limits.version()));
    return transaction.commit(
        registerEvent(records, "limit_set_followed", {{"version", limits.version()}}));
}

} // namespace loopwright
