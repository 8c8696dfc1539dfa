#include "core/errortest/RunTotals.h"

#include "core/errortest/CountText.h"
#include "core/errortest/G821.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace loopwright {

namespace {

/// Too many of a kind of second for the bit errors: each takes `each` of them if
/// synchronisation was never lost.
std::optional<TotalsContradiction> tooMany(const RunFact &run, const char *key, Counted kind,
                                           std::optional<qint64> seconds, qint64 each)
{
    if (!run.bitErrors || !seconds || run.syncLosses != 0 || *seconds <= *run.bitErrors / each)
        return {};
    return TotalsContradiction{
        key, Text(QT_TRANSLATE_NOOP("core", "%1 cannot make %2 without a loss of synchronisation"))
                 .arg(countText(*run.bitErrors, Counted::BitError))
                 .arg(countText(*seconds, kind))};
}

/// Bit errors that lie in no second. Those of unavailable time are in none that is counted, but it
/// takes ten severely errored seconds to begin, or a loss of synchronisation.
bool liesInNoSecond(const RunFact &run)
{
    const qint64 unavailableFrom = 10 * severelyErroredFrom(run.bitsPerSecond());
    return run.erroredSeconds == 0 && run.syncLosses.value_or(0) == 0 &&
           run.bitErrors.value_or(0) > 0 && *run.bitErrors < unavailableFrom;
}

/// Totals typed beside the seconds must be what the seconds give.
std::optional<TotalsContradiction> besideSeconds(const RunFact &run)
{
    G821 evaluator(run.bitsPerSecond());
    evaluator.push(*run.seconds);
    const ErrorCounts counted = evaluator.counts();
    const std::tuple<const char *, Counted, std::optional<qint64>, qint64> totals[] = {
        {"bit_errors", Counted::BitError, run.bitErrors, counted.bitErrors},
        {"errored_seconds", Counted::ErroredSecond, run.erroredSeconds, counted.erroredSeconds},
        {"severely_errored_seconds", Counted::SeverelyErroredSecond, run.severelyErroredSeconds,
         counted.severelyErroredSeconds}};
    for (const auto &[key, one, typed, count] : totals)
        if (typed && *typed != count)
            return TotalsContradiction{
                key, Text(QT_TRANSLATE_NOOP("core", "%1 recorded, and the seconds give %2"))
                         .arg(countText(*typed, one))
                         .arg(count)};
    // Synchronisation may be lost more than once in a second, but not without a second that says
    // so.
    if (run.syncLosses &&
        (*run.syncLosses < counted.syncLosses || (*run.syncLosses > 0 && counted.syncLosses == 0)))
        return TotalsContradiction{
            "sync_losses", Text(QT_TRANSLATE_NOOP("core", "%1 recorded, and the seconds give %2"))
                               .arg(countText(*run.syncLosses, Counted::LossOfSync))
                               .arg(counted.syncLosses)};
    return {};
}

} // namespace

std::optional<TotalsContradiction> contradictionIn(const RunFact &run)
{
    if (run.seconds)
        return besideSeconds(run);
    const auto errored =
        tooMany(run, "errored_seconds", Counted::ErroredSecond, run.erroredSeconds, 1);
    if (errored)
        return errored;
    if (liesInNoSecond(run))
        return TotalsContradiction{
            "errored_seconds",
            Text(QT_TRANSLATE_NOOP("core", "%1 cannot come without an errored second"))
                .arg(countText(*run.bitErrors, Counted::BitError))};
    if (run.erroredSeconds && run.severelyErroredSeconds.value_or(0) > *run.erroredSeconds)
        return TotalsContradiction{
            "severely_errored_seconds",
            Text(QT_TRANSLATE_NOOP("core", "%1 cannot be among %2"))
                .arg(countText(*run.severelyErroredSeconds, Counted::SeverelyErroredSecond))
                .arg(countText(*run.erroredSeconds, Counted::ErroredSecond))};
    const auto severe =
        tooMany(run, "severely_errored_seconds", Counted::SeverelyErroredSecond,
                run.severelyErroredSeconds, severelyErroredFrom(run.bitsPerSecond()));
    if (severe)
        return severe;
    // The clock may be rounded to whole seconds: a part of one counts as one.
    const qint64 seconds = std::max<qint64>(1, qint64(std::ceil(run.durationSeconds())));
    if (run.bitErrors.value_or(0) > seconds * run.bitsPerSecond())
        return TotalsContradiction{
            "bit_errors", Text(QT_TRANSLATE_NOOP("core", "%1 cannot lie in %2 of %3 bit/s"))
                              .arg(countText(*run.bitErrors, Counted::BitError))
                              .arg(countText(seconds, Counted::Second))
                              .arg(run.bitsPerSecond())};
    return {};
}

} // namespace loopwright
