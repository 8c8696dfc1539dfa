// Criteria detector and run.

#include "core/acceptance/Judging.h"
#include "core/acceptance/RunWords.h"
#include "core/errortest/Bounds.h"

#include <cmath>

namespace loopwright {

namespace {

void judgeChannelRun(const Judging &judging, const ChannelRuns &channel, CriterionResult &result)
{
    const QString name = toText(channel.channel);
    const JudgedRun *run = channel.deciding();
    if (run && run->standing == RunStanding::Passed) {
        result.evidence << run->fact->id;
        mergeOutcome(result, CriterionOutcome::Met, run->why);
        return;
    }
    if (run) {
        result.evidence << run->fact->id;
        if (run->standing == RunStanding::Contradictory) {
            mergeOutcome(result, CriterionOutcome::NotMet, name + ": " + run->why,
                         "Read the test set again and record the run anew.");
            return;
        }
        const JudgedRun &last = channel.runs.back();
        mergeOutcome(
            result, CriterionOutcome::NotMet, name + ": " + run->why,
            last.standing == RunStanding::Blocked
                ? "Record what was done after the failed run, then make the run again."
                : "Find and mend the cause, record what was done, then make the run again.");
        if (last.standing == RunStanding::Blocked)
            mergeOutcome(result, CriterionOutcome::NotMet, name + ": " + last.why);
        return;
    }
    mergeOutcome(result, CriterionOutcome::Missing,
                 channel.runs.empty() ? QString("No run on %1 at %2 bit/s was recorded.")
                                            .arg(name)
                                            .arg(judging.order.dataRate)
                                      : name + ": " + channel.runs.back().why,
                 QString("Make a run of %1 minutes on %2 without a break.")
                     .arg(judging.limits.value("run_seconds_min") / 60)
                     .arg(name));
}

} // namespace

void judgeRun(const Judging &judging, CriterionResult &result)
{
    const Limit &ber = judging.limits.limit("run_ber_max");
    const double seconds = judging.limits.value("run_seconds_min");
    result.limit = ber.value;
    result.limitText =
        QString("%1 s unbroken, BER at most %2 (%3 bit errors), at most %4 errored seconds, %5 "
                "severely errored")
            .arg(seconds)
            .arg(ratioText(ber.value))
            .arg(std::floor(ber.value * seconds * judging.order.dataRate * (1 + 1e-12)))
            .arg(std::floor(judging.limits.value("run_esr_max") * seconds * (1 + 1e-12)))
            .arg(judging.limits.value("run_ses_max"));
    result.source = ber.source + "; evaluated by the G.821 method";
    double worstBer = -1;
    for (const ChannelRuns &channel : judging.runs) {
        judgeChannelRun(judging, channel, result);
        const JudgedRun *run = channel.deciding();
        if (run && run->evaluation.summary.ber.value_or(1) > worstBer) {
            worstBer = run->evaluation.summary.ber.value_or(1);
            result.measured = worstBer;
            result.measuredText = countsText(run->evaluation.summary);
        }
    }
    result.evidence.removeDuplicates();
    mergeOutcome(result, result.outcome, struckOutRuns(judging));
}

namespace {

/// The check that belongs to a run: the newest before it on the same channels, path, instrument and
/// visit.
const Fact *checkBefore(const Judging &judging, const Fact &run)
{
    const auto *content = run.as<RunFact>();
    const Fact *found = nullptr;
    for (const Fact *fact : judging.evidence.of<DetectorFact>(Proves::Upper)) {
        const auto *check = fact->as<DetectorFact>();
        if (fact->at <= content->started && check->path == content->path &&
            channelsText(check->channels) == channelsText(content->channels) &&
            fact->instrument == run.instrument &&
            judging.evidence.visitOf(*fact) == judging.evidence.visitOf(run))
            found = fact;
    }
    return found;
}

void judgeCheck(const Judging &judging, const Fact &fact, CriterionResult &result)
{
    const auto *check = fact.as<DetectorFact>();
    const double quiet = judging.limits.value("detector_quiet_seconds_min");
    result.evidence << fact.id;
    const QString again = "Make the detector check again: quiet, inject, see, clear; then the run.";
    const QStringList missing = check->missingKeys();
    if (!missing.isEmpty()) {
        mergeOutcome(result, CriterionOutcome::Missing,
                     QString("The detector check does not say %1.")
                         .arg(missing.join(", ").replace('_', ' ')),
                     again);
        return;
    }
    if (double(check->quietSeconds.value_or(0)) < quiet || check->quietBitErrors.value_or(0) > 0)
        mergeOutcome(result, CriterionOutcome::NotMet,
                     QString("Before the errors were sent there were %1 quiet seconds with %2 bit "
                             "errors; %3 s without are needed.")
                         .arg(check->quietSeconds.value_or(0))
                         .arg(check->quietBitErrors.value_or(0))
                         .arg(quiet),
                     again);
    if (!check->everyInjectionSeen())
        mergeOutcome(
            result, CriterionOutcome::NotMet,
            QString("Errors were sent %1 times and %2 bit errors in %3 errored seconds were "
                    "seen: not every one was seen.")
                .arg(check->injections.value_or(0))
                .arg(check->seenBitErrors.value_or(0))
                .arg(check->seenErroredSeconds.value_or(0)),
            again);
    if (!check->cleared.value_or(false))
        mergeOutcome(result, CriterionOutcome::NotMet,
                     "The counters were not cleared after the check.", again);
    mergeOutcome(result, CriterionOutcome::Met,
                 QString("Errors sent %1 times, every one seen, counters cleared.")
                     .arg(check->injections.value_or(0)));
}

void judgeChannelCheck(const Judging &judging, const ChannelRuns &channel, CriterionResult &result)
{
    const QString name = toText(channel.channel);
    if (const JudgedRun *run = channel.deciding()) {
        if (const Fact *check = checkBefore(judging, *run->fact))
            judgeCheck(judging, *check, result);
        else
            mergeOutcome(
                result, CriterionOutcome::Missing,
                QString("No detector check came before the run on %1, over the same channels "
                        "and path, with the same "
                        "instrument, on the same visit.")
                    .arg(name),
                "Make the detector check, then the run again.");
        return;
    }
    const Fact *newest = nullptr;
    for (const Fact *fact : judging.evidence.of<DetectorFact>(Proves::Upper))
        if (const auto *check = fact->as<DetectorFact>();
            check->path != Path::NtLoop && check->channels.contains(channel.channel))
            newest = fact;
    if (!newest) {
        mergeOutcome(result, CriterionOutcome::Missing,
                     QString("No detector check was made on %1.").arg(name),
                     QString("Inject errors on %1 and record what the test set saw.").arg(name));
        return;
    }
    // A check that failed is known to have failed; one that was good is only worth something before
    // its run.
    CriterionResult check;
    check.outcome = CriterionOutcome::NotNeeded;
    judgeCheck(judging, *newest, check);
    if (check.outcome == CriterionOutcome::NotMet)
        judgeCheck(judging, *newest, result);
    else
        mergeOutcome(
            result, CriterionOutcome::Missing,
            QString("A detector check was made on %1; the run that it belongs to is missing.")
                .arg(name),
            QString("Make the run on %1 now, on the same visit.").arg(name));
}

} // namespace

void judgeDetector(const Judging &judging, CriterionResult &result)
{
    result.limitText = QString("%1 quiet seconds, then every error sent is seen, then counters "
                               "cleared, before the run")
                           .arg(judging.limits.value("detector_quiet_seconds_min"));
    result.source = judging.limits.limit("detector_quiet_seconds_min").source;
    for (const ChannelRuns &channel : judging.runs)
        judgeChannelCheck(judging, channel, result);
    result.evidence.removeDuplicates();
    if (result.outcome == CriterionOutcome::Met)
        result.measured = result.measuredText = "every error sent was seen";
}

} // namespace loopwright
