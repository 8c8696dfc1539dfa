#include "app/cli/LimitsFile.h"

#include "app/actions/LimitSets.h"
#include "app/cli/Files.h"

namespace loopwright {

namespace {

constexpr qint64 largestLimitsFile = 1'000'000; // bytes

}

Result<LimitSet> readLimitsFile(const QString &path)
{
    LOOPWRIGHT_ASSIGN(const auto bytes, readFile(path, largestLimitsFile));
    LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(bytes, fileNameOf(path)));
    return LimitSet::fromJson(object, fileNameOf(path));
}

Result<LimitSet> limitsToJudgeBy(const QString &path)
{
    return path.isEmpty() ? shippedLimits() : readLimitsFile(path);
}

} // namespace loopwright
