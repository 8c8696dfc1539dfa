// Criteria detector and run, and how every run stands.

#include "core/acceptance/Judging.h"
#include "core/errortest/Bounds.h"

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

QString channelsText(const QList<Channel> &channels)
{
    QStringList words;
    for (const Channel channel : channels)
        words << toText(channel);
    words.sort();
    return words.join(" and ");
}

QString pathText(Path path)
{
    switch (path) {
    case Path::SelfCall:
        return "self-call";
    case Path::TestLine:
        return "test line";
    case Path::FarEnd:
        return "far end";
    case Path::NtLoop:
        return "loopback at the NT";
    }
    return {};
}

QString counts(const ErrorSummary &summary)
{
    const auto many = [](qint64 count, const char *one) {
        return QString("%1 %2%3").arg(count).arg(one, count == 1 ? "" : "s");
    };
    return QStringList{many(summary.bitErrors, "bit error"),
                       many(summary.erroredSeconds, "errored second"),
                       many(summary.severelyErroredSeconds, "severely errored second")}
        .join(", ");
}

/// Why a run is over its limits; empty where it is not. A run that was stopped early is held
/// against what a run of full length may have, so that one error in its first minute has not failed
/// it yet.
QString overLimits(const RunEvaluation &run, qint64 rate, const LimitSet &limits)
{
    const ErrorSummary &sum = run.summary;
    const double fullSeconds = limits.value("run_seconds_min");
    const double bits = std::max(double(sum.bits), fullSeconds * double(rate));
    const double available = std::max(double(sum.availableSeconds), fullSeconds);
    const double severe = double(sum.severelyErroredSeconds + sum.unavailableSeconds);
    QStringList over;
    const double mostErrors = std::floor(limits.value("run_ber_max") * bits * (1 + 1e-12));
    const double mostErrored = std::floor(limits.value("run_esr_max") * available * (1 + 1e-12));
    if (double(sum.bitErrors) > mostErrors)
        over << QString("%1 bit errors where %2 are the most").arg(sum.bitErrors).arg(mostErrors);
    if (double(sum.erroredSeconds) > mostErrored)
        over << QString("%1 errored seconds where %2 are the most")
                    .arg(sum.erroredSeconds)
                    .arg(mostErrored);
    if (severe > limits.value("run_ses_max"))
        over << QString("%1 severely errored or unavailable seconds where %2 are the most")
                    .arg(severe)
                    .arg(limits.value("run_ses_max"));
    if (double(sum.syncLosses) > limits.value("run_sync_losses_max"))
        over << QString("%1 losses of synchronisation where %2 are the most")
                    .arg(sum.syncLosses)
                    .arg(limits.value("run_sync_losses_max"));
    return over.join("; ");
}

JudgedRun judgeOne(const Judging &judging, const Fact &fact)
{
    const auto *run = fact.as<RunFact>();
    JudgedRun judged{&fact,
                     evaluateRun(*run, judging.limits.value("run_confidence")),
                     RunStanding::NoResult,
                     {}};
    const QString over = overLimits(judged.evaluation, run->bitsPerSecond(), judging.limits);
    const double longEnough = judging.limits.value("run_seconds_min");
    // Whole seconds count where they were exported: a clock rounded to seconds may show one more
    // than was compared.
    const double length = judged.evaluation.fromSeconds
                              ? double(judged.evaluation.summary.seconds)
                              : std::floor(judged.evaluation.durationSeconds);
    if (!over.isEmpty()) {
        judged.standing = RunStanding::Failed;
        judged.why = "The run is over its limits: " + over + ".";
    } else if (judged.evaluation.stoppedEarly) {
        judged.why = QString("The run was stopped early, after %1 s; it neither passes nor fails.")
                         .arg(length);
    } else if (judged.evaluation.clockBreak) {
        judged.why = "The clock of the run shows a break; it neither passes nor fails.";
    } else if (length < longEnough) {
        judged.why =
            QString("The run lasted %1 s; at least %2 s are needed.").arg(length).arg(longEnough);
    } else if (!judged.evaluation.notRecorded.isEmpty()) {
        judged.why = QString("The run does not say %1.")
                         .arg(judged.evaluation.notRecorded.join(", ").replace('_', ' '));
    } else {
        judged.standing = RunStanding::Passed;
        judged.why = QString("%1 s on %2 by %3: %4.")
                         .arg(length)
                         .arg(channelsText(run->channels), pathText(run->path),
                              counts(judged.evaluation.summary));
    }
    return judged;
}

bool mayCount(const Judging &judging, const Fact &fact, Channel channel)
{
    const auto *run = fact.as<RunFact>();
    return run->path != Path::NtLoop && run->channels.contains(channel) &&
           run->bitsPerSecond() == judging.order.dataRate;
}

/// After a failed run a later one counts only when it was said what was done in between: what was
/// noted while the failed one still went on is no answer to it.
void blockBehindFailures(const Judging &judging, std::vector<JudgedRun> &runs)
{
    const JudgedRun *failed = nullptr;
    for (JudgedRun &run : runs) {
        if (run.standing == RunStanding::Passed && failed) {
            const Moment failedUntil = failed->fact->as<RunFact>()->ended;
            if (judging.evidence.somethingDoneBetween(failedUntil,
                                                      run.fact->as<RunFact>()->started)) {
                failed = nullptr;
            } else {
                run.standing = RunStanding::Blocked;
                run.why = "A run before it failed, and nothing between them says what was done.";
            }
        }
        if (run.standing == RunStanding::Failed)
            failed = &run;
    }
}

} // namespace

const JudgedRun *ChannelRuns::deciding() const
{
    for (auto run = runs.rbegin(); run != runs.rend(); ++run)
        if (run->standing == RunStanding::Passed || run->standing == RunStanding::Failed)
            return &*run;
    return nullptr;
}

std::vector<ChannelRuns> judgeRuns(const Judging &judging)
{
    std::vector<ChannelRuns> list;
    if (judging.isAnalog())
        return list;
    const std::pair<Channel, Services> channels[] = {{Channel::B1, judging.order.b1},
                                                     {Channel::B2, judging.order.b2}};
    for (const auto &[channel, services] : channels) {
        if (!services.testFlag(Service::Data))
            continue;
        ChannelRuns runs{channel, {}};
        for (const Fact *fact : judging.evidence.of<RunFact>(Proves::Upper))
            if (mayCount(judging, *fact, channel))
                runs.runs.push_back(judgeOne(judging, *fact));
        blockBehindFailures(judging, runs.runs);
        list.push_back(std::move(runs));
    }
    return list;
}

namespace {

void judgeChannelRun(const Judging &judging, const ChannelRuns &channel, CriterionResult &result)
{
    const QString name = toText(channel.channel);
    const JudgedRun *run = channel.deciding();
    if (run && run->standing == RunStanding::Passed) {
        result.evidence << run->fact->id;
        settle(result, CriterionOutcome::Met, run->why);
        return;
    }
    if (run) {
        result.evidence << run->fact->id;
        const JudgedRun &last = channel.runs.back();
        settle(result, CriterionOutcome::NotMet, name + ": " + run->why,
               last.standing == RunStanding::Blocked
                   ? "Record what was done after the failed run, then make the run again."
                   : "Find and mend the cause, record what was done, then make the run again.");
        if (last.standing == RunStanding::Blocked)
            settle(result, CriterionOutcome::NotMet, name + ": " + last.why);
        return;
    }
    settle(result, CriterionOutcome::Missing,
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
            result.measuredText = counts(run->evaluation.summary);
        }
    }
    result.evidence.removeDuplicates();
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
        settle(result, CriterionOutcome::Missing,
               QString("The detector check does not say %1.")
                   .arg(missing.join(", ").replace('_', ' ')),
               again);
        return;
    }
    if (double(check->quietSeconds.value_or(0)) < quiet || check->quietBitErrors.value_or(0) > 0)
        settle(result, CriterionOutcome::NotMet,
               QString("Before the errors were sent there were %1 quiet seconds with %2 bit "
                       "errors; %3 s without are needed.")
                   .arg(check->quietSeconds.value_or(0))
                   .arg(check->quietBitErrors.value_or(0))
                   .arg(quiet),
               again);
    if (!check->everyInjectionSeen())
        settle(result, CriterionOutcome::NotMet,
               QString("Errors were sent %1 times and %2 bit errors in %3 errored seconds were "
                       "seen: not every one was seen.")
                   .arg(check->injections.value_or(0))
                   .arg(check->seenBitErrors.value_or(0))
                   .arg(check->seenErroredSeconds.value_or(0)),
               again);
    if (!check->cleared.value_or(false))
        settle(result, CriterionOutcome::NotMet, "The counters were not cleared after the check.",
               again);
    settle(result, CriterionOutcome::Met,
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
            settle(result, CriterionOutcome::Missing,
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
        settle(result, CriterionOutcome::Missing,
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
        settle(result, CriterionOutcome::Missing,
               QString("A detector check was made on %1; the run that it belongs to is missing.")
                   .arg(name),
               QString("Make the run on %1 now, on the same visit.").arg(name));
}

QString whatBecame(const Judging &judging, const Fact &fact)
{
    const auto *run = fact.as<RunFact>();
    for (const ChannelRuns &channel : judging.runs)
        for (const JudgedRun &judged : channel.runs)
            if (judged.fact == &fact)
                switch (judged.standing) {
                case RunStanding::Passed:
                    return channel.deciding() == &judged ? "counted" : "passed";
                case RunStanding::Failed:
                    return "failed";
                case RunStanding::Blocked:
                    return "does not count: nothing says what was done after the failed run";
                case RunStanding::NoResult:
                    return judged.evaluation.stoppedEarly ? "stopped early"
                           : judged.evaluation.clockBreak ? "broken"
                                                          : "no result";
                }
    const QString over = overLimits(evaluateRun(*run, judging.limits.value("run_confidence")),
                                    run->bitsPerSecond(), judging.limits);
    const QString failed = over.isEmpty() ? QString() : QString(", failed");
    if (run->path == Path::NtLoop)
        return "for diagnosis" + failed;
    if (!judging.evidence.isNewer(fact, Proves::Upper))
        return "before a change" + failed;
    if (!judging.evidence.selfTestStands(fact))
        return "instrument had failed its self-test" + failed;
    if (run->bitsPerSecond() != judging.order.dataRate)
        return QString("at %1 bit/s, not the ordered rate").arg(run->bitsPerSecond()) + failed;
    return "on a channel that carries no data" + failed;
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

std::vector<RunMade> runsMade(const Judging &judging)
{
    std::vector<RunMade> list;
    for (const Fact *fact : judging.evidence.all<RunFact>()) {
        const auto *run = fact->as<RunFact>();
        const RunEvaluation evaluation = evaluateRun(*run, judging.limits.value("run_confidence"));
        list.push_back({fact->id,
                        QString("%1, %2 on %3, %4 s: %5")
                            .arg(run->started.text().left(16).replace('T', ' '),
                                 pathText(run->path), channelsText(run->channels))
                            .arg(std::floor(evaluation.durationSeconds))
                            .arg(counts(evaluation.summary)),
                        whatBecame(judging, *fact)});
    }
    return list;
}

} // namespace loopwright
