#include "app/actions/LimitSets.h"

#include "app/actions/Doing.h"
#include "db/DecisionStore.h"
#include "db/LimitSetStore.h"
#include "db/MetaStore.h"

#include <QDir>
#include <QFile>

#include <algorithm>

static void initLimits()
{
    Q_INIT_RESOURCE(limits);
}

namespace loopwright {

namespace {

Result<void> refreshOpenOrders(Records &records, Transaction &transaction, const QString &version)
{
    LOOPWRIGHT_TRY(MetaStore::putBoardLimits(transaction, version));
    QStringList numbers;
    LOOPWRIGHT_TRY(OrderStore(records.database()).eachOpen([&](const StoredOrder &stored) {
        numbers << stored.order.number;
        return Result<void>();
    }));
    for (const QString &number : std::as_const(numbers))
        LOOPWRIGHT_TRY(refreshState(records, transaction, number));
    return {};
}

} // namespace

Result<std::vector<LimitSet>> shippedLimitSets()
{
    initLimits();
    std::vector<LimitSet> sets;
    const QDir folder(":/limits");
    for (const QString &name : folder.entryList({"*.json"}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly))
            return failure(ErrorCode::BadInput, "cannot be read", name);
        LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(file.readAll(), name));
        LOOPWRIGHT_ASSIGN(auto set, LimitSet::fromJson(object, name));
        sets.push_back(std::move(set));
    }
    std::sort(sets.begin(), sets.end(), [](const LimitSet &left, const LimitSet &right) {
        return left.validFrom() < right.validFrom();
    });
    return sets;
}

Result<LimitSet> shippedLimits()
{
    LOOPWRIGHT_ASSIGN(auto sets, shippedLimitSets());
    if (sets.empty())
        return failure(ErrorCode::BadInput, "the program holds no limits", ":/limits");
    return std::move(sets.back());
}

Result<void> bringShippedLimits(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto sets, shippedLimitSets());
    for (const LimitSet &set : sets) {
        LOOPWRIGHT_ASSIGN(const auto there, LimitSetStore(records.database()).find(set.version()));
        if (there)
            continue;
        LOOPWRIGHT_TRY(addLimitSet(records, set));
    }
    return {};
}

Result<LimitSet> limitSet(Records &records, const QString &version)
{
    LOOPWRIGHT_ASSIGN(auto found, LimitSetStore(records.database()).find(version));
    if (!found)
        return failure(ErrorCode::NotFound, QString("There is no limit set \"%1\".").arg(version));
    return std::move(*found);
}

Result<bool> addLimitSet(Records &records, const LimitSet &set)
{
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

Result<LimitSet> limitsInForce(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto set,
                      LimitSetStore(records.database())
                          .inForceOn(records.now().localDate(), records.lastLimits()));
    if (!set)
        return failure(ErrorCode::Refused,
                       QString("No limit set is in force on %1.")
                           .arg(records.now().localDate().toString(Qt::ISODate)));
    return *set;
}

Result<LimitSet> limitsFor(Records &records, const StoredOrder &stored)
{
    if (stored.status != OrderStatus::Completed)
        return limitsInForce(records);
    LOOPWRIGHT_ASSIGN(const auto version,
                      DecisionStore(records.database()).newestLimitSetOf(stored.order.number));
    return version ? limitSet(records, *version) : limitsInForce(records);
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
