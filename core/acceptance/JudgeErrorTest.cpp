// Criteria detector and run.

#include "core/acceptance/CheckFaults.h"
#include "core/acceptance/Judging.h"
#include "core/acceptance/RunWords.h"
#include "core/errortest/Bounds.h"
#include "core/errortest/Pattern.h"

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

QString checkKey(Channel channel)
{
    return "detector." + toText(channel);
}

QString runKey(Channel channel)
{
    return "run." + toText(channel);
}

/// Whether it is over the channel, and no loopback at the NT, which proves nothing.
template<class T>
bool isOver(const Fact &fact, Channel channel)
{
    const auto *test = fact.as<T>();
    return test && test->path != Path::NtLoop && test->channels.contains(channel);
}

} // namespace

namespace {

Need clearedNeed()
{
    Need need{"cleared", "run", StepGroup::ErrorTest, Station::ErrorTest, FactKind::Cleared};
    need.fields = {"what", "text"};
    need.after = {"safety"};
    need.label = Text(QT_TRANSLATE_NOOP("core", "What was done after the failed run"));
    need.hint = Text(QT_TRANSLATE_NOOP(
        "core", "\"nothing found\" is an answer: then only a run without any error counts"));
    need.matches = [](const Fact &fact) { return fact.as<ClearedFact>() != nullptr; };
    return need;
}

Need checkNeed(const ServiceOrder &order, Channel channel, const LimitSet &limits)
{
    Need need{checkKey(channel), "detector", StepGroup::ErrorTest, Station::ErrorTest,
              FactKind::Detector};
    need.preset = testPreset(order, channel);
    need.preset.remove("from_dn");
    need.preset.remove("to_dn");
    need.fields = {"quiet_seconds",   "quiet_bit_errors",     "injections", "injected",
                   "seen_bit_errors", "seen_errored_seconds", "cleared"};
    need.optional = {"injected"};
    need.after = {"safety", "instrument", "cleared"};
    need.label = Text(QT_TRANSLATE_NOOP("core", "Detector check on %1")).arg(toText(channel));
    need.hint =
        Text(QT_TRANSLATE_NOOP(
                 "core",
                 "%1 quiet seconds without an error, then errors sent on purpose, each seen, "
                 "then the counters cleared"))
            .arg(limits.value("detector_quiet_seconds_min"));
    need.matches = [channel](const Fact &fact) { return isOver<DetectorFact>(fact, channel); };
    return need;
}

Need runNeed(const ServiceOrder &order, Channel channel, const LimitSet &limits)
{
    Need need{runKey(channel), "run", StepGroup::ErrorTest, Station::ErrorTest, FactKind::Run};
    need.preset = testPreset(order, channel);
    need.preset.insert("interface",
                       toText(order.ntSupplied ? LineInterface::St : LineInterface::U));
    need.preset.insert("pattern", toText(PatternKey::Prbs11));
    need.preset.insert("rate", order.dataRate);
    need.fields = {"started",         "ended",
                   "stopped_early",   "bit_errors",
                   "errored_seconds", "severely_errored_seconds",
                   "sync_losses",     "slips"};
    need.optional = {"stopped_early", "slips"};
    need.after = {"safety", "instrument", "cleared", checkKey(channel)};
    need.label = Text(QT_TRANSLATE_NOOP("core", "Run on %1")).arg(toText(channel));
    need.hint = Text(QT_TRANSLATE_NOOP("core", "%1 s without a break, counters started from zero"))
                    .arg(limits.value("run_seconds_min"));
    need.matches = [channel](const Fact &fact) { return isOver<RunFact>(fact, channel); };
    return need;
}

} // namespace

void needErrorTest(std::vector<Need> &needs, const ServiceOrder &order, OrderScope,
                   const LimitSet &limits)
{
    needs.push_back(clearedNeed());
    for (const Channel channel : dataChannels(order)) {
        needs.push_back(checkNeed(order, channel, limits));
        needs.push_back(runNeed(order, channel, limits));
    }
}

namespace {

/// Why a run does not count; none if it passed or failed and a newer one took its place.
std::optional<Discount> discountOf(RunStanding standing)
{
    switch (standing) {
    case RunStanding::Blocked:
        return Discount::NothingDone;
    case RunStanding::Unchecked:
        return Discount::NoCheck;
    case RunStanding::NoResult:
        return Discount::NoResult;
    case RunStanding::Contradictory:
        return Discount::Contradiction;
    case RunStanding::Passed:
    case RunStanding::Failed:
        break;
    }
    return std::nullopt;
}

/// Not the newest run counts, but the one that decides; none if its totals contradict each other.
void tellRuns(Standing &standing, const ChannelRuns &channel)
{
    const JudgedRun *deciding = channel.deciding();
    const bool isClear = deciding && deciding->standing != RunStanding::Contradictory;
    const Fact *counts = isClear ? deciding->fact : nullptr;
    if (standing.counts && standing.counts != counts)
        standing.before.push_back({standing.counts, Discount::Newer,
                                   Text(QT_TRANSLATE_NOOP("core", "another run decides"))});
    standing.counts = counts;
    std::erase_if(standing.before, [counts](const auto &each) { return each.fact == counts; });
    for (const JudgedRun &run : channel.runs)
        for (Discounted &each : standing.before)
            if (const auto why = discountOf(run.standing); why && each.fact == run.fact)
                each = {run.fact, *why, run.why};
    std::ranges::stable_sort(
        standing.before, [](const auto &a, const auto &b) { return isEarlier(*b.fact, *a.fact); });
}

/// What the runs of a channel do not show yet.
void sayNoRun(Judging &judging, const Need &need, const ChannelRuns &channel,
              CriterionResult &result)
{
    judging.settle(
        need, result, CriterionOutcome::Missing,
        channel.runs.empty()
            ? Text(judging.evidence.all<RunFact>().empty() && struckOutRuns(judging).isEmpty()
                       ? QT_TRANSLATE_NOOP("core", "No run on %1 at %2 bit/s was recorded.")
                       : QT_TRANSLATE_NOOP("core", "No run on %1 at %2 bit/s counts."))
                  .arg(toText(channel.channel))
                  .arg(judging.order.dataRate)
            : Text(QT_TRANSLATE_NOOP("core", "%1: %2"))
                  .arg(toText(channel.channel))
                  .arg(channel.runs.back().why),
        Text(QT_TRANSLATE_NOOP("core", "Make a run of %1 minutes on %2 without a break."))
            .arg(judging.limits.value("run_seconds_min") / 60)
            .arg(toText(channel.channel)));
}

/// "B1 and B2": the channels on which this run has the same part, so that it is told once.
Text channelsOf(const Judging &judging, const Fact &fact,
                const JudgedRun *(*partOf)(const ChannelRuns &))
{
    QList<Channel> channels;
    for (const ChannelRuns &each : judging.runs)
        if (const JudgedRun *run = partOf(each); run && run->fact == &fact)
            channels << each.channel;
    return channelsSaid(channels);
}
const JudgedRun *decidingRun(const ChannelRuns &channel)
{
    return channel.deciding();
}
const JudgedRun *lastRun(const ChannelRuns &channel)
{
    return channel.runs.empty() ? nullptr : &channel.runs.back();
}

void judgeChannelRun(Judging &judging, const ChannelRuns &channel, CriterionResult &result)
{
    const Need &need = *judging.need(runKey(channel.channel));
    const JudgedRun *run = channel.deciding();
    tellRuns(judging.standings[need.key], channel);
    if (!run) {
        sayNoRun(judging, need, channel, result);
        return;
    }
    result.evidence << run->fact->id;
    const Text name = channelsOf(judging, *run->fact, decidingRun);
    const JudgedRun &last = channel.runs.back();
    switch (run->standing) {
    case RunStanding::Passed:
        judging.settle(need, result, CriterionOutcome::Met, run->why);
        return;
    case RunStanding::Contradictory:
        judging.settle(
            need, result, CriterionOutcome::Missing,
            Text(QT_TRANSLATE_NOOP("core", "%1: %2")).arg(name).arg(run->why),
            Text(QT_TRANSLATE_NOOP("core", "Read the test set again and record the run anew.")));
        return;
    default:
        break;
    }
    judging.settle(
        need, result, CriterionOutcome::NotMet,
        Text(QT_TRANSLATE_NOOP("core", "%1: %2")).arg(name).arg(run->why),
        last.standing == RunStanding::Blocked
            ? Text(QT_TRANSLATE_NOOP("core",
                                     "Record what was done after the failed run, then make the run "
                                     "again."))
            : Text(QT_TRANSLATE_NOOP(
                  "core", "Find and mend the cause, record what was done, then make the run "
                          "again.")));
    if (last.standing == RunStanding::Blocked || last.standing == RunStanding::Unchecked)
        judging.settle(need, result, CriterionOutcome::NotMet,
                       Text(QT_TRANSLATE_NOOP("core", "%1: %2"))
                           .arg(channelsOf(judging, *last.fact, lastRun))
                           .arg(last.why));
}

/// Whether it was said what was done after the newest failed run of any channel.
void judgeCleared(Judging &judging)
{
    const Moment end{std::numeric_limits<qint64>::max(), 0};
    Standing &standing = judging.standings["cleared"];
    for (const ChannelRuns &channel : judging.runs) {
        const JudgedRun *failed = channel.failed();
        if (!failed)
            continue;
        const bool said = judging.evidence.doneBetween(failed->fact->as<RunFact>()->ended, end) !=
                          WhatWasDone::Nothing;
        const NeedState state = said ? NeedState::Done : NeedState::Open;
        if (state < standing.state)
            continue;
        standing.state = state;
        standing.why =
            said ? Text(QT_TRANSLATE_NOOP("core",
                                          "It was said what was done after the failed run on %1."))
                       .arg(toText(channel.channel))
                 : Text(QT_TRANSLATE_NOOP(
                            "core", "The run on %1 failed, and nothing says what was done since."))
                       .arg(toText(channel.channel));
        standing.next = said ? Text()
                             : Text(QT_TRANSLATE_NOOP(
                                   "core", "Find and mend the cause, and record what was done."));
    }
    if (standing.state == NeedState::Open)
        standing.counts = nullptr;
}

} // namespace

void judgeRun(Judging &judging, CriterionResult &result)
{
    const Limit &ber = judging.limits.limit("run_ber_max");
    const double seconds = judging.limits.value("run_seconds_min");
    result.limit = ber.value;
    result.limitText =
        Text(QT_TRANSLATE_NOOP(
                 "core",
                 "%1 s unbroken, BER at most %2 (%3 bit errors), at most %4 errored seconds, %5 "
                 "severely errored"))
            .arg(seconds)
            .arg(ratioText(ber.value))
            .arg(std::floor(ber.value * seconds * judging.order.dataRate * (1 + 1e-12)))
            .arg(std::floor(judging.limits.value("run_esr_max") * seconds * (1 + 1e-12)))
            .arg(judging.limits.value("run_ses_max"));
    result.source = ber.source + "; evaluated by the G.821 method";
    double worst = -1;
    for (const ChannelRuns &channel : judging.runs) {
        judgeChannelRun(judging, channel, result);
        const JudgedRun *run = channel.deciding();
        if (!run || run->evaluation.summary.berAll.value_or(1) <= worst)
            continue;
        const ErrorSummary &sum = run->evaluation.summary;
        worst = sum.berAll.value_or(1);
        // Without any available time there is no ratio; the counts say what was seen.
        result.measured = sum.ber ? QJsonValue(*sum.ber) : QJsonValue();
        result.measuredText = countsText(*run->fact->as<RunFact>(), sum);
    }
    judgeCleared(judging);
    result.evidence.removeDuplicates();
    mergeOutcome(result, result.outcome, struckOutRuns(judging));
}

namespace {

/// Whether a run was made with it already, or it lies before one.
bool isUsedUp(const ChannelRuns &channel, const Fact &check)
{
    return std::ranges::any_of(channel.runs, [&check](const JudgedRun &run) {
        return timeOf(*run.fact) >= check.at && run.standing != RunStanding::NoResult;
    });
}

void judgeChannelCheck(Judging &judging, const ChannelRuns &channel, CriterionResult &result)
{
    const Need &need = *judging.need(checkKey(channel.channel));
    Standing &standing = judging.standings[need.key];
    const JudgedRun *run = channel.deciding();
    const Fact *newest = standing.counts;
    // A check made after a run that counts leaves that run as it is; one that no run has used up
    // stands for the run that is to come.
    if (run && run->standing == RunStanding::Passed)
        standing.counts = run->check;
    else if (newest && isUsedUp(channel, *newest) &&
             checkOutcome(*newest, judging.limits).first == CriterionOutcome::Met)
        standing.counts = run ? run->check : nullptr; // it was not for the run that followed
    const Text again = Text(QT_TRANSLATE_NOOP(
        "core", "Make the detector check: quiet, inject, see, clear; then the run."));
    if (!standing.counts) {
        judging.settle(need, result, CriterionOutcome::Missing,
                       Text(judging.evidence.all<DetectorFact>().empty()
                                ? QT_TRANSLATE_NOOP("core", "No detector check was made on %1.")
                                : QT_TRANSLATE_NOOP("core", "No detector check on %1 counts."))
                           .arg(toText(channel.channel)),
                       again);
        return;
    }
    result.evidence << standing.counts->id;
    const auto [outcome, why] = checkOutcome(*standing.counts, judging.limits);
    const std::vector<CheckFault> faults =
        outcome == CriterionOutcome::NotMet
            ? faultsOf(*standing.counts->as<DetectorFact>(), judging.limits)
            : std::vector<CheckFault>();
    const bool ofTheLine = std::ranges::any_of(faults, isOfTheLine);
    judging.settle(need, result, outcome, why,
                   outcome == CriterionOutcome::Met ? Text()
                   : ofTheLine
                       ? Text(QT_TRANSLATE_NOOP(
                             "core", "Find and mend what makes the errors: loss and noise of the "
                                     "pair, its joints and the drop; then make the detector check "
                                     "again."))
                       : again);
    for (const CheckFault &fault : faults)
        explainPlainly(result, CriterionOutcome::NotMet, fault.plain);
    if (ofTheLine)
        result.part = LinePart::Loop;
}

} // namespace

void judgeDetector(Judging &judging, CriterionResult &result)
{
    result.limitText =
        Text(QT_TRANSLATE_NOOP("core",
                               "%1 quiet seconds, then every error sent is seen, then counters "
                               "cleared, before the run"))
            .arg(judging.limits.value("detector_quiet_seconds_min"));
    result.source = judging.limits.limit("detector_quiet_seconds_min").source;
    for (const ChannelRuns &channel : judging.runs)
        judgeChannelCheck(judging, channel, result);
    result.evidence.removeDuplicates();
    if (result.outcome == CriterionOutcome::Met)
        result.setMeasured(QT_TRANSLATE_NOOP("core", "every error sent was seen"));
}

} // namespace loopwright
