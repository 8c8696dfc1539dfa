// The runs as a certificate lists them.

#include "core/acceptance/Judging.h"
#include "core/acceptance/RunWords.h"
#include "core/base/PaperTime.h"
#include "core/certificate/ContentParts.h"
#include "core/errortest/CountText.h"

#include <algorithm>

namespace loopwright {

namespace {

QString lengthText(double seconds)
{
    const auto whole = qint64(seconds);
    return (whole % 60 == 0 && whole > 0 ? countText(whole / 60, Counted::Minute)
                                         : countText(whole, Counted::Second))
        .english();
}

QString countsOf(const RunFact &run, const RunEvaluation &evaluation)
{
    const ErrorSummary &sum = evaluation.summary;
    const QString errored = countText(sum.erroredSeconds, Counted::ErroredSecond).english() + ' ' +
                            severelyErroredToo(run, sum).english();
    QStringList parts{
        groupedNumbers(countText(sum.bitErrors, Counted::BitError).english()), errored.trimmed(),
        countText(sum.severelyErroredSeconds, Counted::SeverelyErroredSecond).english()};
    if (evaluation.fromSeconds || sum.unavailableSeconds > 0)
        parts << countText(sum.unavailableSeconds, Counted::UnavailableSecond).english();
    parts << countText(sum.syncLosses, Counted::LossOfSync).english()
          << (run.slips ? countText(*run.slips, Counted::Slip).english()
                        : QString("slips not told"));
    return parts.join(", ");
}

/// In the customer's words, and why it failed.
QString resultOf(const RunMade &made, const RunFact &run, const CertificateSources &sources)
{
    if (made.outcome == RunOutcome::Counted)
        return "It counts for this certificate";
    QString result = inPlainWords(made.resultInWords());
    if (!result.isEmpty())
        result[0] = result[0].toUpper();
    const QString over =
        overLimits(run, evaluateRun(run, sources.limits.value("run_confidence")), sources.limits)
            .english();
    return over.isEmpty() ? result : result + ": " + groupedNumbers(over);
}

QString clearedInWords(ClearedWhat what)
{
    switch (what) {
    case ClearedWhat::Contact:
        return "a contact was mended";
    case ClearedWhat::Wiring:
        return "wiring was mended";
    case ClearedWhat::Pair:
        return "the pair was mended or changed";
    case ClearedWhat::Terminal:
        return "the terminal was mended or changed";
    case ClearedWhat::Setting:
        return "a setting was corrected";
    case ClearedWhat::Nt:
        return "the NT was changed";
    case ClearedWhat::Other:
        return "something else was mended";
    case ClearedWhat::NothingFound:
        break;
    }
    return "nothing was found";
}

/// Goes behind the result: ". Then, 4 March 2026, 10:20 (UTC-06:00): wiring was mended"; empty if
/// nothing was recorded before the next run. What the installer wrote of it stays in the records.
QString doneAfter(const RunFact &failed, const CertificateSources &sources)
{
    std::optional<Moment> next;
    for (const Fact &fact : sources.input.facts)
        if (const auto *run = fact.as<RunFact>(); run && failed.ended <= run->started)
            if (!next || run->started < *next)
                next = run->started;
    QString text;
    for (const Fact *fact : standingFacts(sources.input.facts)) {
        const auto *cleared = fact->as<ClearedFact>();
        if (!cleared || fact->at < failed.ended || (next && *next < fact->at))
            continue;
        text += QString(". Then, %1: %2").arg(paperTime(fact->at), clearedInWords(cleared->what));
    }
    return text;
}

} // namespace

const Fact *factOf(const CertificateSources &sources, const QString &id)
{
    const auto found = std::ranges::find(sources.input.facts, id, &Fact::id);
    return found == sources.input.facts.end() ? nullptr : &*found;
}

QString pathInWords(const RunFact &run)
{
    const auto channel = [&run](qsizetype i) { return toText(run.channels[i]); };
    QStringList names;
    for (const Channel each : run.channels)
        names << toText(each);
    switch (run.path) {
    case Path::SelfCall:
        if (run.channels.size() == 2)
            return QString("call from channel %1 to channel %2 of this line")
                .arg(channel(0), channel(1));
        return "call from this line to itself on " + names.join(" and ");
    case Path::TestLine:
        return "call to a test line of the network on " + names.join(" and ");
    case Path::FarEnd:
        return "call to the far end on " + names.join(" and ");
    case Path::NtLoop:
        return "loop at the NT, for diagnosis, on " + names.join(" and ");
    }
    return {};
}

std::vector<CertificateRun> runLines(const CertificateSources &sources, const NumberGuard &guard)
{
    std::vector<CertificateRun> lines;
    for (const RunMade &made : sources.decision.runs) {
        RunMade told = made;
        if (told.struckOut) {
            told.struckOut->by = nameOf(sources.people, made.struckOut->by);
            told.struckOut->because = guard.coverTyped(made.struckOut->because);
        }
        CertificateRun line;
        line.outcome = made.outcome;
        line.struckOut = made.struckOut.has_value();
        const Fact *fact = factOf(sources, made.fact);
        const auto *run = fact ? fact->as<RunFact>() : nullptr;
        if (!run) { // the decision tells of a run that its facts do not hold
            line.text = guard.cover(inPlainWords(made.text()));
            line.result = guard.cover(inPlainWords(told.resultInWords()));
            lines.push_back(line);
            continue;
        }
        const RunEvaluation evaluation = evaluateRun(*run, sources.limits.value("run_confidence"));
        line.when = paperTimes(run->started, run->ended);
        line.text = QString("%1, %2 at %3 kbit/s")
                        .arg(pathInWords(*run), lengthText(evaluation.durationSeconds))
                        .arg(double(run->bitsPerSecond()) / 1000);
        line.counts = countsOf(*run, evaluation);
        line.result = guard.cover(resultOf(told, *run, sources));
        if (made.outcome == RunOutcome::Failed)
            line.result += doneAfter(*run, sources);
        lines.push_back(line);
    }
    return lines;
}

} // namespace loopwright
