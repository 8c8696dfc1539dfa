#include "core/acceptance/CheckFaults.h"

#include "core/errortest/CountText.h"

#include <algorithm>

namespace loopwright {

namespace {

void findInQuiet(std::vector<CheckFault> &faults, const DetectorFact &check, const LimitSet &limits)
{
    const double quiet = limits.value("detector_quiet_seconds_min");
    const bool isShort = check.quietSeconds && double(*check.quietSeconds) < quiet;
    const bool hasErrors = check.quietBitErrors.value_or(0) > 0;
    if (isShort)
        faults.push_back(
            {CheckFaultKind::QuietTooShort, "quiet_seconds",
             Text(QT_TRANSLATE_NOOP("core", "Before the errors were sent there were %1 quiet "
                                            "seconds; at least %2 s are needed."))
                 .arg(*check.quietSeconds)
                 .arg(quiet),
             Text(QT_TRANSLATE_NOOP("core", "The line was not watched long enough before errors "
                                            "were sent on purpose."))});
    if (hasErrors)
        faults.push_back(
            {CheckFaultKind::ErrorsInQuiet, "quiet_bit_errors",
             Text(QT_TRANSLATE_NOOP("core",
                                    "In the quiet seconds before the errors were sent there "
                                    "came %1: the line makes errors."))
                 .arg(countText(*check.quietBitErrors, Counted::BitError)),
             Text(QT_TRANSLATE_NOOP("core", "Errors were seen before any was sent on purpose: the "
                                            "line makes errors."))});
}

Text seenText(const char *source, const DetectorFact &check)
{
    return Text(source)
        .arg(check.injections.value_or(0))
        .arg(check.seenBitErrors.value_or(0))
        .arg(check.seenErroredSeconds.value_or(0));
}

void findNotSeen(std::vector<CheckFault> &faults, const DetectorFact &check)
{
    const qint64 sent = std::max(check.injections.value_or(0), check.injected.value_or(0));
    const bool noneSent = check.injections && *check.injections < 1;
    const bool fewErrors = check.seenBitErrors && *check.seenBitErrors < sent;
    const bool noSecond =
        check.seenErroredSeconds && check.injections && *check.seenErroredSeconds < 1;
    if (noneSent)
        faults.push_back(
            {CheckFaultKind::NotSeen, "injections",
             Text(QT_TRANSLATE_NOOP("core", "No error was sent on purpose.")),
             Text(QT_TRANSLATE_NOOP("core", "No error was sent on purpose before the test."))});
    else if (fewErrors || noSecond)
        faults.push_back(
            {CheckFaultKind::NotSeen, fewErrors ? "seen_bit_errors" : "seen_errored_seconds",
             seenText(QT_TRANSLATE_NOOP("core", "Errors were sent %1 times and %2 bit errors in %3 "
                                                "errored seconds were seen: not every one was "
                                                "seen."),
                      check),
             Text(QT_TRANSLATE_NOOP("core", "Errors were sent on purpose before the test, and the "
                                            "test set did not see each one."))});
}

/// A receiver that synchronises itself may show one error as three; what is more comes from the
/// line. The seconds before and after an injection may each be errored by it.
void findMoreSeen(std::vector<CheckFault> &faults, const DetectorFact &check)
{
    if (!check.injections || *check.injections < 1)
        return;
    const qint64 sent = std::max(*check.injections, check.injected.value_or(0));
    const bool manyErrors =
        check.seenBitErrors.value_or(0) > 3 * sent + check.quietBitErrors.value_or(0);
    const bool manySeconds = check.seenErroredSeconds.value_or(0) > 2 * *check.injections;
    if (manyErrors || manySeconds)
        faults.push_back(
            {CheckFaultKind::MoreSeen, manyErrors ? "seen_bit_errors" : "seen_errored_seconds",
             seenText(QT_TRANSLATE_NOOP("core", "Errors were sent %1 times and %2 bit errors in %3 "
                                                "errored seconds were seen, more than were sent: "
                                                "the line makes errors."),
                      check),
             Text(QT_TRANSLATE_NOOP("core", "More errors were seen than were sent on purpose: the "
                                            "line makes errors."))});
}

} // namespace

std::vector<CheckFault> faultsOf(const DetectorFact &check, const LimitSet &limits)
{
    std::vector<CheckFault> faults;
    findInQuiet(faults, check, limits);
    const std::size_t before = faults.size();
    findNotSeen(faults, check);
    if (faults.size() == before)
        findMoreSeen(faults, check);
    if (check.cleared == false)
        faults.push_back(
            {CheckFaultKind::NotCleared, "cleared",
             Text(QT_TRANSLATE_NOOP("core", "The counters were not cleared after the check.")),
             Text(QT_TRANSLATE_NOOP("core", "The counters of the test set were not set back to "
                                            "zero before the test."))});
    return faults;
}

bool isOfTheLine(const CheckFault &fault)
{
    return fault.kind == CheckFaultKind::ErrorsInQuiet || fault.kind == CheckFaultKind::MoreSeen;
}

std::pair<CriterionOutcome, Text> checkOutcome(const Fact &fact, const LimitSet &limits)
{
    const auto *check = fact.as<DetectorFact>();
    const QStringList missing = check->missingKeys();
    if (!missing.isEmpty())
        return {CriterionOutcome::Missing,
                Text(QT_TRANSLATE_NOOP("core", "The detector check does not say %1."))
                    .arg(missing.join(", ").replace('_', ' '))};
    Text wrong;
    for (const CheckFault &fault : faultsOf(*check, limits))
        wrong += fault.sentence;
    if (!wrong.isEmpty())
        return {CriterionOutcome::NotMet, wrong};
    return {
        CriterionOutcome::Met,
        Text(QT_TRANSLATE_NOOP("core", "Errors sent %1 times, every one seen, counters cleared."))
            .arg(check->injections.value_or(0))};
}

} // namespace loopwright
