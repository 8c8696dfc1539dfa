#include "app/actions/LimitSets.h"

#include "db/DecisionStore.h"
#include "db/LimitSetStore.h"
#include "db/OrderStore.h"

#include <QDir>
#include <QFile>

#include <algorithm>

static void initLimits()
{
    Q_INIT_RESOURCE(limits);
}

namespace loopwright {

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

Result<LimitSet> limitSet(Records &records, const QString &version)
{
    LOOPWRIGHT_ASSIGN(auto found, LimitSetStore(records.database()).find(version));
    if (!found)
        return failure(ErrorCode::NotFound, QString("There is no limit set \"%1\".").arg(version));
    return std::move(*found);
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

} // namespace loopwright
