#include "app/cli/LimitsFile.h"

#include "app/actions/LimitSets.h"
#include "app/cli/Files.h"

namespace loopwright {

Result<LimitSet> readLimitsFile(const QString &path)
{
    const auto bytes = readFile(path);
    if (!bytes)
        return failure(bytes.error());
    const auto object = parseJsonObject(*bytes, fileNameOf(path));
    if (!object)
        return failure(object.error());
    return LimitSet::fromJson(*object, fileNameOf(path));
}

Result<LimitSet> limitsToJudgeBy(const QString &path)
{
    return path.isEmpty() ? shippedLimits() : readLimitsFile(path);
}

} // namespace loopwright
