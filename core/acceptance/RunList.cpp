// The list of the runs that were made, and what became of each.

#include "core/acceptance/Judging.h"
#include "core/acceptance/RunWords.h"
#include "core/base/PaperTime.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace loopwright {

namespace {

bool isOverByFigures(const Judging &judging, const RunFact &run)
{
    const RunEvaluation evaluation = evaluateRun(run, judging.limits.value("run_confidence"));
    return !overLimits(run, evaluation, judging.limits).isEmpty();
}

/// The result in words, and its kind.
std::pair<QString, RunOutcome> whatBecame(const Judging &judging, const Fact &fact)
{
    for (const ChannelRuns &channel : judging.runs)
        for (const JudgedRun &judged : channel.runs)
            if (judged.fact == &fact)
                switch (judged.standing) {
                case RunStanding::Passed:
                    return channel.deciding() == &judged ? std::pair("counted", RunOutcome::Counted)
                                                         : std::pair("passed", RunOutcome::Other);
                case RunStanding::Failed:
                    return {"failed", RunOutcome::Failed};
                case RunStanding::Blocked:
                case RunStanding::Unchecked:
                    return {"does not count: " + judged.why.english(), RunOutcome::Other};
                case RunStanding::Contradictory:
                    return {"totals contradict each other", RunOutcome::Other};
                case RunStanding::NoResult:
                    return {judged.unresolved, RunOutcome::Other};
                }
    const auto *run = fact.as<RunFact>();
    QString became;
    if (run->path == Path::NtLoop)
        became = "for diagnosis";
    else if (const Discounted *why = judging.evidence.whyNot(fact))
        became = "does not count: " + why->sentence.english();
    else if (run->bitsPerSecond() != judging.order.dataRate)
        became = QString("at %1 bit/s, not the ordered rate").arg(run->bitsPerSecond());
    else
        became = "on a channel that carries no data";
    if (isOverByFigures(judging, *run))
        return {became + ", failed", RunOutcome::Failed};
    return {became, RunOutcome::Other};
}

RunMade runMade(const Judging &judging, const Fact &fact)
{
    const auto *run = fact.as<RunFact>();
    const RunEvaluation evaluation = evaluateRun(*run, judging.limits.value("run_confidence"));
    return {fact.id,
            QString("%1, %2 on %3, %4 s")
                .arg(paperTime(run->started), pathText(run->path), channelsText(run->channels))
                .arg(std::floor(evaluation.durationSeconds)),
            countsText(*run, evaluation.summary).english(),
            {}};
}

StruckOut struckOut(const Judging &judging, const Fact &run)
{
    const VoidFact &voiding = judging.evidence.voidOf(run);
    return {run.as<RunFact>()->started, voiding.by, voiding.because};
}

std::vector<const Fact *> struckOutRunFacts(const Judging &judging)
{
    std::vector<const Fact *> runs;
    for (const Discounted &struck : judging.evidence.struckOut())
        if (struck.fact->as<RunFact>())
            runs.push_back(struck.fact);
    return runs;
}

} // namespace

std::vector<RunMade> runsMade(const Judging &judging)
{
    std::vector<std::pair<const Fact *, RunMade>> made;
    for (const Fact *fact : judging.evidence.all<RunFact>()) {
        made.emplace_back(fact, runMade(judging, *fact));
        RunMade &run = made.back().second;
        std::tie(run.result, run.outcome) = whatBecame(judging, *fact);
    }
    for (const Fact *fact : struckOutRunFacts(judging)) {
        made.emplace_back(fact, runMade(judging, *fact));
        RunMade &run = made.back().second;
        const bool over = isOverByFigures(judging, *fact->as<RunFact>());
        run.result = over ? "failed, struck out" : "struck out";
        run.struckOut = struckOut(judging, *fact);
    }
    std::sort(made.begin(), made.end(),
              [](const auto &a, const auto &b) { return isEarlier(*a.first, *b.first); });
    std::vector<RunMade> list;
    list.reserve(made.size());
    for (auto &[fact, run] : made)
        list.push_back(std::move(run));
    return list;
}

Text struckOutRuns(const Judging &judging)
{
    const auto runs = struckOutRunFacts(judging);
    if (runs.empty())
        return {};
    const QString last = struckOut(judging, *runs.back()).sentence();
    return runs.size() == 1 ? Text::verbatim(last)
                            : Text(QT_TRANSLATE_NOOP("core", "%1 runs were struck out. %2"))
                                  .arg(qint64(runs.size()))
                                  .arg(last);
}

} // namespace loopwright
