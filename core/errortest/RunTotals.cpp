#include "core/errortest/RunTotals.h"

#include "core/errortest/G821.h"

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

QString many(qint64 count, const char *one)
{
    return QString("%1 %2%3").arg(count).arg(one, count == 1 ? "" : "s");
}

/// Too many of a kind of second for the bit errors: each takes `each` of them if
/// synchronisation was never lost.
std::optional<TotalsContradiction> tooMany(const RunFact &run, const char *key, const char *kind,
                                           std::optional<qint64> seconds, qint64 each)
{
    if (!run.bitErrors || !seconds || run.syncLosses != 0 || *seconds <= *run.bitErrors / each)
        return {};
    return TotalsContradiction{key,
                               QString("%1 cannot make %2 without a loss of synchronisation")
                                   .arg(many(*run.bitErrors, "bit error"), many(*seconds, kind))};
}

/// Bit errors that lie in no second. Those of unavailable time are in none that is counted, but it
/// takes ten severely errored seconds to begin, or a loss of synchronisation.
bool liesInNoSecond(const RunFact &run)
{
    const qint64 unavailableFrom = 10 * severelyErroredFrom(run.bitsPerSecond());
    return run.erroredSeconds == 0 && run.syncLosses.value_or(0) == 0 &&
           run.bitErrors.value_or(0) > 0 && *run.bitErrors < unavailableFrom;
}

} // namespace

std::optional<TotalsContradiction> contradictionIn(const RunFact &run)
{
    if (run.seconds)
        return {};
    const auto errored = tooMany(run, "errored_seconds", "errored second", run.erroredSeconds, 1);
    if (errored)
        return errored;
    if (liesInNoSecond(run))
        return TotalsContradiction{"errored_seconds",
                                   QString("%1 cannot come without an errored second")
                                       .arg(many(*run.bitErrors, "bit error"))};
    if (run.erroredSeconds && run.severelyErroredSeconds.value_or(0) > *run.erroredSeconds)
        return TotalsContradiction{
            "severely_errored_seconds",
            QString("%1 cannot be among %2")
                .arg(many(*run.severelyErroredSeconds, "severely errored second"),
                     many(*run.erroredSeconds, "errored second"))};
    const auto severe =
        tooMany(run, "severely_errored_seconds", "severely errored second",
                run.severelyErroredSeconds, severelyErroredFrom(run.bitsPerSecond()));
    if (severe)
        return severe;
    // The clock may be rounded to whole seconds: a part of one counts as one.
    const qint64 seconds = std::max<qint64>(1, qint64(std::ceil(run.durationSeconds())));
    if (run.bitErrors.value_or(0) > seconds * run.bitsPerSecond())
        return TotalsContradiction{
            "bit_errors", QString("%1 cannot lie in %2 of %3 bit/s")
                              .arg(many(*run.bitErrors, "bit error"), many(seconds, "second"))
                              .arg(run.bitsPerSecond())};
    return {};
}

} // namespace loopwright
