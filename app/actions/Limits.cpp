#include "app/actions/Limits.h"

#include <QDir>
#include <QFile>

#include <algorithm>

/// A resource in a static library is dropped by the linker unless somebody asks for it; the macro
/// must stand outside any namespace.
static void initLimitResource()
{
    Q_INIT_RESOURCE(limits);
}

namespace loopwright {

Result<std::vector<LimitSet>> shippedLimitSets()
{
    initLimitResource();
    std::vector<LimitSet> sets;
    for (const QString &name : QDir(":/limits").entryList()) {
        QFile file(":/limits/" + name);
        if (!file.open(QIODevice::ReadOnly))
            return failure(ErrorCode::BadInput, "cannot be read", file.fileName());
        const auto object = parseJsonObject(file.readAll(), name);
        if (!object)
            return failure(object.error());
        auto set = LimitSet::fromJson(*object, name);
        if (!set)
            return failure(set.error());
        sets.push_back(std::move(*set));
    }
    std::sort(sets.begin(), sets.end(), [](const LimitSet &left, const LimitSet &right) {
        return left.validFrom() < right.validFrom();
    });
    return sets;
}

Result<LimitSet> shippedLimits()
{
    auto sets = shippedLimitSets();
    if (!sets)
        return failure(std::move(sets).error());
    if (sets->empty())
        return failure(ErrorCode::BadInput, "the program holds no limits", ":/limits");
    return std::move(sets->back());
}

} // namespace loopwright
