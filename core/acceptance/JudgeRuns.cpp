// How every run stands, and the list of those that were made.

#include "core/acceptance/CheckFaults.h"
#include "core/acceptance/Judging.h"
#include "core/acceptance/RunWords.h"
#include "core/errortest/CountText.h"
#include "core/errortest/Pattern.h"
#include "core/errortest/RunTotals.h"
#include "core/order/OrderIdentifiers.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace loopwright {

Text overLimits(const RunFact &run, const RunEvaluation &evaluation, const LimitSet &limits)
{
    const ErrorSummary &sum = evaluation.summary;
    const double fullSeconds = limits.value("run_seconds_min");
    const double bits = std::max(double(sum.bits), fullSeconds * double(run.bitsPerSecond()));
    const double available = std::max(double(sum.availableSeconds), fullSeconds);
    const qint64 severe = sum.severelyErroredSeconds + sum.unavailableSeconds;
    std::vector<Text> over;
    const double mostErrors = std::floor(limits.value("run_ber_max") * bits * (1 + 1e-12));
    const double mostErrored = std::floor(limits.value("run_esr_max") * available * (1 + 1e-12));
    if (double(sum.bitErrors) > mostErrors)
        over.push_back(Text(QT_TRANSLATE_NOOP("core", "%1 where %2 are the most"))
                           .arg(countText(sum.bitErrors, Counted::BitError))
                           .arg(mostErrors));
    if (double(sum.erroredSeconds) > mostErrored)
        over.push_back(Text(QT_TRANSLATE_NOOP("core", "%1 where %2 are the most"))
                           .arg(countText(sum.erroredSeconds, Counted::ErroredSecond))
                           .arg(mostErrored));
    if (double(severe) > limits.value("run_ses_max"))
        over.push_back(Text(QT_TRANSLATE_NOOP("core", "%1 where %2 are the most"))
                           .arg(countText(severe, Counted::SevereOrUnavailableSecond))
                           .arg(limits.value("run_ses_max")));
    if (double(sum.syncLosses) > limits.value("run_sync_losses_max"))
        over.push_back(Text(QT_TRANSLATE_NOOP("core", "%1 where %2 are the most"))
                           .arg(countText(sum.syncLosses, Counted::LossOfSync))
                           .arg(limits.value("run_sync_losses_max")));
    if (double(run.slips.value_or(0)) > limits.value("run_slips_max"))
        over.push_back(Text(QT_TRANSLATE_NOOP("core", "%1 where %2 are the most"))
                           .arg(countText(*run.slips, Counted::Slip))
                           .arg(limits.value("run_slips_max")));
    return Text::joined(over, "; ");
}

namespace {

/// What keeps a run within its limits from passing, before its totals are looked at; few words and
/// a sentence, both empty if nothing does.
std::pair<QString, Text> whyNoResult(const Judging &judging, const RunFact &run,
                                     const RunEvaluation &evaluation, double length)
{
    const double longEnough = judging.limits.value("run_seconds_min");
    if (evaluation.stoppedEarly)
        return {
            "stopped early",
            Text(QT_TRANSLATE_NOOP(
                     "core", "The run was stopped early, after %1 s; it neither passes nor fails."))
                .arg(length)};
    if (evaluation.clockBreak)
        return {"broken",
                Text(QT_TRANSLATE_NOOP(
                    "core", "The clock of the run shows a break; it neither passes nor fails."))};
    if (length < longEnough)
        return {"no result",
                Text(QT_TRANSLATE_NOOP("core", "The run lasted %1 s; at least %2 s are needed."))
                    .arg(length)
                    .arg(longEnough)};
    if (run.pattern && isFixedPattern(*run.pattern))
        return {"fixed pattern",
                Text(QT_TRANSLATE_NOOP(
                    "core", "The run was made with a fixed pattern, which shows no slip "
                            "and no wrong channel: it can fail a line, never pass it."))};
    if (const Text trouble = selfCallTrouble(run, judging.order); !trouble.isEmpty())
        return {"no self-call between two numbers of the order", trouble};
    return {};
}

/// The check that belongs to a run: the newest before it over the same channels and path, with the
/// same instrument, on the same visit.
const Fact *checkBefore(const Judging &judging, const Fact &run)
{
    const auto *content = run.as<RunFact>();
    const Fact *found = nullptr;
    for (const Fact *fact : judging.evidence.of<DetectorFact>()) {
        const auto *check = fact->as<DetectorFact>();
        if (fact->at <= content->started && check->path == content->path &&
            channelsText(check->channels) == channelsText(content->channels) &&
            judging.evidence.instrumentOf(*fact) == judging.evidence.instrumentOf(run) &&
            judging.evidence.visitOf(*fact) == judging.evidence.visitOf(run))
            found = fact;
    }
    return found;
}

/// A run without the check proves nothing, and does not count.
void holdAgainstCheck(const Judging &judging, JudgedRun &judged)
{
    judged.check = checkBefore(judging, *judged.fact);
    if (judged.standing != RunStanding::Passed)
        return;
    const auto [outcome, why] = judged.check ? checkOutcome(*judged.check, judging.limits)
                                             : std::pair(CriterionOutcome::Missing, Text());
    if (outcome == CriterionOutcome::Met)
        return;
    judged.standing = RunStanding::Unchecked;
    judged.why =
        judged.check
            ? Text(QT_TRANSLATE_NOOP(
                  "core", "The detector check before the run was not good: without it the run "
                          "proves nothing."))
            : Text(QT_TRANSLATE_NOOP(
                  "core", "No detector check came before the run, over the same channels and "
                          "path, with the same instrument, on the same visit."));
}

JudgedRun judgeOne(const Judging &judging, const Fact &fact)
{
    const auto *run = fact.as<RunFact>();
    const RunEvaluation evaluation = evaluateRun(*run, judging.limits.value("run_confidence"));
    JudgedRun judged{&fact, evaluation};
    const Text over = overLimits(*run, evaluation, judging.limits);
    const auto contradiction = contradictionIn(*run);
    // Whole seconds count if they were exported: a clock rounded to seconds may show one more than
    // was compared.
    const double length = evaluation.fromSeconds ? double(evaluation.summary.seconds)
                                                 : std::floor(evaluation.durationSeconds);
    std::tie(judged.unresolved, judged.why) = whyNoResult(judging, *run, evaluation, length);
    if (!over.isEmpty()) {
        judged.standing = RunStanding::Failed;
        judged.why = Text(QT_TRANSLATE_NOOP("core", "The run is over its limits: %1.")).arg(over);
        if (contradiction)
            judged.why += Text(QT_TRANSLATE_NOOP("core", "Its totals contradict each other: %1."))
                              .arg(contradiction->what);
    } else if (!judged.why.isEmpty()) {
        return judged;
    } else if (contradiction) {
        judged.standing = RunStanding::Contradictory;
        judged.why = Text(QT_TRANSLATE_NOOP("core", "The totals contradict each other: %1."))
                         .arg(contradiction->what);
    } else if (!evaluation.notRecorded.isEmpty()) {
        judged.unresolved = "no result";
        judged.why = Text(QT_TRANSLATE_NOOP("core", "The run does not say %1."))
                         .arg(evaluation.notRecorded.join(", ").replace('_', ' '));
    } else {
        judged.standing = RunStanding::Passed;
        judged.why = Text(QT_TRANSLATE_NOOP("core", "%1 s on %2 by %3: %4."))
                         .arg(length)
                         .arg(Text::message(channelsText(run->channels)))
                         .arg(Text::message(pathText(run->path)))
                         .arg(countsText(*run, evaluation.summary));
    }
    holdAgainstCheck(judging, judged);
    return judged;
}

bool mayCount(const Judging &judging, const Fact &fact, Channel channel)
{
    const auto *run = fact.as<RunFact>();
    return run->path != Path::NtLoop && run->channels.contains(channel) &&
           run->bitsPerSecond() == judging.order.dataRate;
}

LineInterface interfaceOf(const RunFact &run, const ServiceOrder &order)
{
    return run.interface.value_or(order.ntSupplied ? LineInterface::St : LineInterface::U);
}

/// Why a run that would count does not, after one that failed; empty if it does. `failedAtSt`: a
/// run at the interface that the customer gets failed, and none there has passed since.
Text whyBehind(const Judging &judging, const JudgedRun &failed, bool failedAtSt,
               const JudgedRun &run)
{
    const auto *before = failed.fact->as<RunFact>(), *after = run.fact->as<RunFact>();
    if (failedAtSt && interfaceOf(*after, judging.order) == LineInterface::U)
        return Text(QT_TRANSLATE_NOOP(
            "core", "The run at S/T failed, and the customer gets S/T: a run at U does not stand "
                    "for it."));
    switch (judging.evidence.doneBetween(before->ended, after->started)) {
    case WhatWasDone::Nothing:
        return Text(QT_TRANSLATE_NOOP(
            "core", "A run before it failed, and nothing between them says what was done."));
    case WhatWasDone::NothingFound:
        if (run.evaluation.summary.bitErrors > 0 || run.evaluation.summary.erroredSeconds > 0)
            return Text(QT_TRANSLATE_NOOP(
                "core", "A run before it failed and nothing was found: then only a run without "
                        "any error counts."));
        break;
    case WhatWasDone::Something:
        break;
    }
    return {};
}

/// After a failed run a later one counts only if it was said what was done in between.
void blockBehindFailures(const Judging &judging, std::vector<JudgedRun> &runs)
{
    const JudgedRun *failed = nullptr;
    bool failedAtSt = false;
    for (JudgedRun &run : runs) {
        const bool wouldCount =
            run.standing == RunStanding::Passed || run.standing == RunStanding::Contradictory;
        if (wouldCount && failed) {
            const Text why = whyBehind(judging, *failed, failedAtSt, run);
            if (why.isEmpty()) {
                failed = nullptr;
                failedAtSt = false;
            } else {
                run.standing = RunStanding::Blocked;
                run.why = why;
            }
        }
        if (run.standing == RunStanding::Failed) {
            failed = &run;
            failedAtSt = failedAtSt || (judging.order.ntSupplied &&
                                        interfaceOf(*run.fact->as<RunFact>(), judging.order) ==
                                            LineInterface::St);
        }
    }
}

/// If the numbering plan does not say how long a number is, what ends one of the order's may be
/// that number without its area code. One of the order's that cannot be read may be any.
bool isOfOrder(const DirectoryNumber &number, const ServiceOrder &order, const NumberKey &key)
{
    return std::ranges::any_of(order.terminals, [&](const OrderedTerminal &terminal) {
        if (terminal.dn.isEmpty())
            return false;
        const DirectoryNumber ordered = key.numberOf(terminal.dn);
        return ordered.isNull() || ordered.assignmentKey() == number.assignmentKey() ||
               (!ordered.isNanp() && ordered.digits.endsWith(number.digits));
    });
}

} // namespace

const JudgedRun *ChannelRuns::deciding() const
{
    const JudgedRun *doubtful = nullptr;
    for (auto run = runs.rbegin(); run != runs.rend(); ++run) {
        if (run->standing == RunStanding::Passed || run->standing == RunStanding::Failed) {
            // Recorded anew, the same run has the same start.
            const bool readAnew = !doubtful || timeOf(*doubtful->fact) == timeOf(*run->fact);
            return readAnew ? &*run : doubtful;
        }
        if (run->standing == RunStanding::Contradictory && !doubtful)
            doubtful = &*run;
    }
    return doubtful;
}

const JudgedRun *ChannelRuns::failed() const
{
    const JudgedRun *failed = nullptr;
    for (const JudgedRun &run : runs)
        if (run.standing == RunStanding::Failed)
            failed = &run;
        else if (run.standing == RunStanding::Passed)
            failed = nullptr;
    return failed;
}

Text selfCallTrouble(const RunFact &run, const ServiceOrder &order)
{
    if (run.path != Path::SelfCall || order.kind == LineKind::Analog || !run.fromDn || !run.toDn)
        return {};
    const NumberKey key(order);
    const DirectoryNumber from = key.numberOf(*run.fromDn), to = key.numberOf(*run.toDn);
    if (from.isNull() || to.isNull())
        return {};
    if (from == to)
        return Text(QT_TRANSLATE_NOOP("core", "The self-call was made from %1 to itself; it needs "
                                              "two numbers that may call "
                                              "each other."))
            .arg(from.shown());
    for (const DirectoryNumber &number : {from, to})
        if (!isOfOrder(number, order, key))
            return Text(QT_TRANSLATE_NOOP("core", "The self-call was made from %1 to %2, and %3 is "
                                                  "no number of this order."))
                .arg(from.shown())
                .arg(to.shown())
                .arg(number.shown());
    return {};
}

bool lastedAsCall(const RunFact &run)
{
    constexpr double shortest = 10; // s, in sync: less is no call
    if (!run.seconds)
        return run.durationSeconds() >= shortest;
    return std::ranges::count_if(*run.seconds, [](Second each) { return each.inSync(); }) >=
           shortest;
}

bool isSelfCall(const RunFact &run, const ServiceOrder &order)
{
    if (run.path != Path::SelfCall || !run.fromDn || !run.toDn || run.channels.isEmpty())
        return false;
    const NumberKey key(order);
    for (const QString &typed : {*run.fromDn, *run.toDn})
        if (const DirectoryNumber number = key.numberOf(typed);
            number.isNull() || !isOfOrder(number, order, key))
            return false;
    return selfCallTrouble(run, order).isEmpty() && lastedAsCall(run);
}

std::vector<ChannelRuns> judgeRuns(const Judging &judging)
{
    std::vector<ChannelRuns> list;
    for (const Channel channel : dataChannels(judging.order)) {
        ChannelRuns runs{channel, {}};
        for (const Fact *fact : judging.evidence.of<RunFact>())
            if (mayCount(judging, *fact, channel))
                runs.runs.push_back(judgeOne(judging, *fact));
        blockBehindFailures(judging, runs.runs);
        list.push_back(std::move(runs));
    }
    return list;
}

} // namespace loopwright
