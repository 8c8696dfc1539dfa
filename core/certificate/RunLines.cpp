// The runs as a certificate lists them.

#include "core/acceptance/Judging.h"
#include "core/base/PaperTime.h"
#include "core/certificate/ContentParts.h"

#include <QRegularExpression>

namespace loopwright {

namespace {

QString lengthText(double seconds)
{
    const auto whole = qint64(seconds);
    return whole % 60 == 0 && whole > 0 ? countText(whole / 60, "minute")
                                        : countText(whole, "second");
}

QString groupedNumbers(QString text)
{
    static const QRegularExpression number("(?<![0-9.])[0-9]{5,15}(?![0-9])");
    for (auto match = number.match(text); match.hasMatch();
         match = number.match(text, match.capturedStart() + 1))
        text.replace(match.capturedStart(), match.capturedLength(),
                     paperCount(match.captured().toLongLong()));
    return text;
}

QString countsOf(const RunFact &run, const RunEvaluation &evaluation)
{
    const ErrorSummary &sum = evaluation.summary;
    QStringList parts{groupedNumbers(countText(sum.bitErrors, "bit error")),
                      countText(sum.erroredSeconds, "errored second"),
                      countText(sum.severelyErroredSeconds, "severely errored second")};
    if (evaluation.fromSeconds || sum.unavailableSeconds > 0)
        parts << countText(sum.unavailableSeconds, "unavailable second");
    parts << (sum.syncLosses == 1 ? QString("1 loss of synchronisation")
                                  : QString("%1 losses of synchronisation").arg(sum.syncLosses))
          << (run.slips ? countText(*run.slips, "slip") : QString("slips not told"));
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

} // namespace

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
        const RunFact *run = nullptr;
        for (const Fact &fact : sources.input.facts)
            if (fact.id == made.fact)
                run = fact.as<RunFact>();
        if (!run) { // the decision tells of a run that its facts do not hold
            line.text = guard.cover(inPlainWords(made.text));
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
        lines.push_back(line);
    }
    return lines;
}

} // namespace loopwright
