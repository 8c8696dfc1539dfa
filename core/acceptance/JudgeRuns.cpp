// How every run stands, and the list of those that were made.

#include "core/acceptance/Judging.h"
#include "core/acceptance/RunWords.h"
#include "core/errortest/RunTotals.h"
#include "core/order/OrderIdentifiers.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace loopwright {

namespace {

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
        over << QString("%1 where %2 are the most")
                    .arg(countText(sum.bitErrors, "bit error"))
                    .arg(mostErrors);
    if (double(sum.erroredSeconds) > mostErrored)
        over << QString("%1 where %2 are the most")
                    .arg(countText(sum.erroredSeconds, "errored second"))
                    .arg(mostErrored);
    if (severe > limits.value("run_ses_max"))
        over << QString("%1 severely errored or unavailable seconds where %2 are the most")
                    .arg(severe)
                    .arg(limits.value("run_ses_max"));
    if (double(sum.syncLosses) > limits.value("run_sync_losses_max"))
        over << QString("%1 of synchronisation where %2 are the most")
                    .arg(sum.syncLosses == 1 ? "1 loss" : QString("%1 losses").arg(sum.syncLosses))
                    .arg(limits.value("run_sync_losses_max"));
    return over.join("; ");
}

/// What keeps a run within its limits from passing, before its totals are looked at; few words and
/// a sentence, both empty where nothing does.
std::pair<QString, QString> whyNoResult(const Judging &judging, const RunFact &run,
                                        const RunEvaluation &evaluation, double length)
{
    const double longEnough = judging.limits.value("run_seconds_min");
    if (evaluation.stoppedEarly)
        return {"stopped early",
                QString("The run was stopped early, after %1 s; it neither passes nor fails.")
                    .arg(length)};
    if (evaluation.clockBreak)
        return {"broken", "The clock of the run shows a break; it neither passes nor fails."};
    if (length < longEnough)
        return {
            "no result",
            QString("The run lasted %1 s; at least %2 s are needed.").arg(length).arg(longEnough)};
    if (const QString trouble = selfCallTrouble(run, judging.order); !trouble.isEmpty())
        return {"no self-call between two numbers of the order", trouble};
    return {};
}

JudgedRun judgeOne(const Judging &judging, const Fact &fact)
{
    const auto *run = fact.as<RunFact>();
    const RunEvaluation evaluation = evaluateRun(*run, judging.limits.value("run_confidence"));
    JudgedRun judged{&fact, evaluation, RunStanding::NoResult, {}, {}};
    const QString over = overLimits(evaluation, run->bitsPerSecond(), judging.limits);
    const auto contradiction = contradictionIn(*run);
    // Whole seconds count where they were exported: a clock rounded to seconds may show one more
    // than was compared.
    const double length = evaluation.fromSeconds ? double(evaluation.summary.seconds)
                                                 : std::floor(evaluation.durationSeconds);
    std::tie(judged.unresolved, judged.why) = whyNoResult(judging, *run, evaluation, length);
    if (!over.isEmpty()) {
        judged.standing = RunStanding::Failed;
        judged.why = "The run is over its limits: " + over + ".";
        if (contradiction)
            judged.why += " Its totals contradict each other: " + contradiction->what + ".";
    } else if (!judged.why.isEmpty()) {
        return judged;
    } else if (contradiction) {
        judged.standing = RunStanding::Contradictory;
        judged.why = "The totals contradict each other: " + contradiction->what + ".";
    } else if (!evaluation.notRecorded.isEmpty()) {
        judged.unresolved = "no result";
        judged.why = QString("The run does not say %1.")
                         .arg(evaluation.notRecorded.join(", ").replace('_', ' '));
    } else {
        judged.standing = RunStanding::Passed;
        judged.why = QString("%1 s on %2 by %3: %4.")
                         .arg(length)
                         .arg(channelsText(run->channels), pathText(run->path),
                              countsText(evaluation.summary));
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
        const bool wouldCount =
            run.standing == RunStanding::Passed || run.standing == RunStanding::Contradictory;
        if (wouldCount && failed) {
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

/// Where the numbering plan does not say how long a number is, what ends one of the order's may be
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

QString selfCallTrouble(const RunFact &run, const ServiceOrder &order)
{
    if (run.path != Path::SelfCall || order.kind == LineKind::Analog || !run.fromDn || !run.toDn)
        return {};
    const NumberKey key(order);
    const DirectoryNumber from = key.numberOf(*run.fromDn), to = key.numberOf(*run.toDn);
    if (from.isNull() || to.isNull())
        return {};
    if (from == to)
        return QString("The self-call was made from %1 to itself; it needs two numbers that may "
                       "call each other.")
            .arg(from.shown());
    for (const DirectoryNumber &number : {from, to})
        if (!isOfOrder(number, order, key))
            return QString("The self-call was made from %1 to %2, and %3 is no number of this "
                           "order.")
                .arg(from.shown(), to.shown(), number.shown());
    return {};
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

bool isOverByFigures(const Judging &judging, const RunFact &run)
{
    const RunEvaluation evaluation = evaluateRun(run, judging.limits.value("run_confidence"));
    return !overLimits(evaluation, run.bitsPerSecond(), judging.limits).isEmpty();
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
                case RunStanding::Contradictory:
                    return "totals contradict each other";
                case RunStanding::NoResult:
                    return judged.unresolved;
                }
    QString became;
    if (run->path == Path::NtLoop)
        became = "for diagnosis";
    else if (!judging.evidence.isNewer(fact, Proves::Upper))
        became = "before a change";
    else if (!judging.evidence.selfTestStands(fact))
        became = "instrument had failed its self-test";
    else if (run->bitsPerSecond() != judging.order.dataRate)
        became = QString("at %1 bit/s, not the ordered rate").arg(run->bitsPerSecond());
    else
        became = "on a channel that carries no data";
    return isOverByFigures(judging, *run) ? QString(became + ", failed") : became;
}

RunMade runMade(const Judging &judging, const Fact &fact)
{
    const auto *run = fact.as<RunFact>();
    const RunEvaluation evaluation = evaluateRun(*run, judging.limits.value("run_confidence"));
    return {fact.id,
            QString("%1, %2 on %3, %4 s: %5")
                .arg(run->started.text().left(16).replace('T', ' '), pathText(run->path),
                     channelsText(run->channels))
                .arg(std::floor(evaluation.durationSeconds))
                .arg(countsText(evaluation.summary)),
            {}};
}

StruckOut struckOut(const Voided &voided)
{
    return {voided.fact->as<RunFact>()->started, voided.by->by, voided.by->because};
}

} // namespace

std::vector<RunMade> runsMade(const Judging &judging)
{
    std::vector<std::pair<const Fact *, RunMade>> made;
    for (const Fact *fact : judging.evidence.all<RunFact>()) {
        made.emplace_back(fact, runMade(judging, *fact));
        made.back().second.result = whatBecame(judging, *fact);
    }
    for (const Voided &voided : judging.evidence.voided<RunFact>()) {
        made.emplace_back(voided.fact, runMade(judging, *voided.fact));
        RunMade &run = made.back().second;
        const bool over = isOverByFigures(judging, *voided.fact->as<RunFact>());
        run.result = over ? "failed, struck out" : "struck out";
        run.struckOut = struckOut(voided);
    }
    std::sort(made.begin(), made.end(),
              [](const auto &a, const auto &b) { return isEarlier(*a.first, *b.first); });
    std::vector<RunMade> list;
    for (auto &[fact, run] : made)
        list.push_back(std::move(run));
    return list;
}

QString struckOutRuns(const Judging &judging)
{
    const std::vector<Voided> voided = judging.evidence.voided<RunFact>();
    if (voided.empty())
        return {};
    const QString last = struckOut(voided.back()).sentence();
    return voided.size() == 1 ? last
                              : QString("%1 runs were struck out. %2").arg(voided.size()).arg(last);
}

} // namespace loopwright
