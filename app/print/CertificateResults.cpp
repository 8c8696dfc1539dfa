#include "app/print/CertificateResults.h"

#include "core/base/PaperTime.h"
#include "core/certificate/ContentParts.h"
#include "core/certificate/PlainWords.h"

#include <algorithm>

namespace loopwright {

using namespace doc;

namespace {

/// What most limits come from; said once below the table.
const QString commonPractice = QStringLiteral("common practice");

QString resultText(const CertificateCriterion &criterion)
{
    if (criterion.outcome == CriterionOutcome::Met && criterion.grade == u"marginal")
        return "met, near the limit";
    return plainOutcome(criterion.outcome);
}

void addCriterion(Table &table, const CertificateCriterion &criterion)
{
    const bool good = criterion.outcome == CriterionOutcome::Met;
    // The class stands with its figure, or above several that it is the class of together.
    const bool isOfOne = criterion.readings.size() == 1 || criterion.grade.isEmpty();
    TableRow row{{{criterion.name, Tone::Strong},
                  {criterion.meaning, Tone::Body, Align::Left, isOfOne ? 3 : 2}},
                 criterionMark(criterion.outcome, criterion.excepted.has_value())};
    if (!isOfOne)
        row.cells.push_back({criterion.grade, Tone::Small});
    row.cells.push_back({resultText(criterion), good ? Tone::Body : Tone::Bad, Align::Right, 2});
    row.withNext = !criterion.readings.empty();
    table.rows.push_back(std::move(row));
    for (std::size_t i = 0; i < criterion.readings.size(); ++i) {
        const CertificateReading &reading = criterion.readings[i];
        // What the criterion is named for needs no name again.
        const bool same = reading.what.compare(criterion.name, Qt::CaseInsensitive) == 0;
        TableRow figures{{{same ? QString() : reading.what, Tone::Muted},
                          {reading.value, Tone::Small},
                          {reading.limit, Tone::Small},
                          {isOfOne ? criterion.grade : QString(), Tone::Small},
                          {reading.instrument, Tone::Small},
                          {reading.sure, Tone::Small}},
                         {},
                         false};
        figures.withNext = i + 1 < criterion.readings.size();
        table.rows.push_back(std::move(figures));
    }
}

/// What the order does not call for, equal reasons once.
QString notNeededText(const CertificateContent &content)
{
    std::vector<std::pair<QString, QStringList>> groups;
    for (const CertificateCriterion &criterion : content.criteria) {
        if (criterion.outcome != CriterionOutcome::NotNeeded)
            continue;
        QString reason = criterion.reason;
        if (reason.endsWith(u"was not recorded."))
            reason = "not recorded, and needed only where it is.";
        if (reason.isEmpty())
            reason = "not needed for this order.";
        const auto group =
            std::ranges::find(groups, reason, &std::pair<QString, QStringList>::first);
        if (group == groups.end())
            groups.emplace_back(reason, QStringList{criterion.name});
        else
            group->second << criterion.name;
    }
    QStringList texts;
    for (const auto &[reason, names] : groups)
        texts << names.join(", ") + ": " + reason;
    return texts.isEmpty() ? QString() : "Not needed: " + texts.join(' ');
}

QString sourcesText(const CertificateContent &content)
{
    QStringList sources;
    bool anyCommon = false;
    for (const CertificateCriterion &criterion : content.criteria) {
        if (criterion.limit.isEmpty() || criterion.outcome == CriterionOutcome::NotNeeded)
            continue;
        if (criterion.source.isEmpty() || criterion.source == commonPractice)
            anyCommon = true;
        else
            sources << QString("%1 – %2").arg(criterion.name, criterion.source);
    }
    QString text = sources.isEmpty() ? QString() : "Limits from: " + sources.join("; ") + '.';
    if (anyCommon)
        text += QString(sources.isEmpty() ? "The limits are" : " Every other limit is") +
                " common practice of the trade.";
    return text.trimmed();
}

/// " (9.4 mA; the limit: at least 20 mA)"; empty of what has no figure.
QString figuresText(const CertificateCriterion &criterion)
{
    QStringList parts{criterion.measured,
                      criterion.limit.isEmpty() ? QString() : "the limit: " + criterion.limit};
    parts.removeAll(QString());
    if (parts.isEmpty())
        return {};
    const QString text = inPlainWords(parts.join("; "));
    // Only counts: a telephone number is grouped by its own rules.
    return " (" + (criterion.key == u"run" ? groupedNumbers(text) : text) + ')';
}

StationState runMark(const CertificateRun &run)
{
    StationState state;
    state.mark = run.outcome == RunOutcome::Failed    ? StationMark::Failed
                 : run.outcome == RunOutcome::Counted ? StationMark::Done
                                                      : StationMark::NotNeeded;
    return state;
}

QString calibrationText(const CertificateInstrument &instrument)
{
    if (!instrument.calibration)
        return "calibration not known";
    const auto &[on, due] = *instrument.calibration;
    if (!due)
        return "needs no calibration";
    if (!instrument.held)
        return QString(
                   "calibrated on %1, was due on %2: not within its calibration when it was used")
            .arg(paperDay(on), paperDay(*due));
    return QString("calibrated on %1, next due on %2").arg(paperDay(on), paperDay(*due));
}

} // namespace

StationState criterionMark(CriterionOutcome outcome, bool excepted)
{
    static constexpr std::pair<CriterionOutcome, StationMark> table[] = {
        {CriterionOutcome::Met, StationMark::Done},
        {CriterionOutcome::NotMet, StationMark::Failed},
        {CriterionOutcome::Missing, StationMark::Open},
        {CriterionOutcome::NotNeeded, StationMark::NotNeeded}};
    StationState state;
    for (const auto &[candidate, mark] : table)
        if (candidate == outcome)
            state.mark = mark;
    state.excepted = excepted;
    return state;
}

Blocks exceptionBlocks(const CertificateContent &content)
{
    std::vector<std::pair<CertificateException, std::vector<const CertificateCriterion *>>> groups;
    for (const CertificateCriterion &criterion : content.criteria) {
        if (!criterion.excepted)
            continue;
        const auto group = std::ranges::find_if(
            groups, [&](const auto &each) { return each.first == *criterion.excepted; });
        if (group == groups.end())
            groups.push_back({*criterion.excepted, {&criterion}});
        else
            group->second.push_back(&criterion);
    }
    if (groups.empty())
        return {};
    Blocks blocks{Paragraph{"Exceptions", Tone::Heading}};
    for (const auto &[exception, criteria] : groups) {
        for (const CertificateCriterion *criterion : criteria)
            blocks.push_back(Paragraph{QString("%1, %2: %3%4")
                                           .arg(criterion->name, plainOutcome(criterion->outcome),
                                                criterion->meaning, figuresText(*criterion)),
                                       Tone::Body, mm(0.8), 0,
                                       criterionMark(criterion->outcome, true)});
        blocks.push_back(
            Paragraph{QString("Accepted by %1 on %2: “%3”")
                          .arg(exception.by, paperTime(exception.at), exception.because),
                      Tone::Strong, mm(1.5)});
    }
    return blocks;
}

Blocks resultBlocks(const CertificateContent &content)
{
    Table table{{0.185, 0.27, 0.255, 0.105, 0.09, 0.095},
                {{"What was checked", Tone::Muted},
                 {"Measured", Tone::Muted},
                 {"Limit", Tone::Muted},
                 {"Class", Tone::Muted},
                 {"With", Tone::Muted},
                 {"How sure", Tone::Muted}},
                {},
                mm(0.9),
                mm(6)};
    for (const CertificateCriterion &criterion : content.criteria)
        if (criterion.outcome != CriterionOutcome::NotNeeded)
            addCriterion(table, criterion);
    return {std::move(table), Rule{}, Paragraph{notNeededText(content), Tone::Muted},
            Paragraph{content.decisionRule, Tone::Muted},
            Paragraph{sourcesText(content), Tone::Muted}};
}

Blocks runBlocks(const CertificateContent &content)
{
    if (!content.runNeeded && content.runs.empty())
        return {};
    Blocks blocks;
    if (content.runNeeded)
        blocks.push_back(Paragraph{content.runsSentence() + '.', Tone::Strong});
    Table table{{0.24, 0.44, 0.32}, {}, {}, mm(0.8), mm(6)};
    for (const CertificateRun &run : content.runs)
        table.rows.push_back(
            {{{run.when, Tone::Small},
              {run.counts.isEmpty() ? run.text : run.text + ": " + run.counts, Tone::Small},
              {run.result, run.outcome == RunOutcome::Failed ? Tone::SmallBad : Tone::Small}},
             runMark(run)});
    if (!table.rows.empty())
        blocks.push_back(std::move(table));
    blocks.push_back(Paragraph{content.provesPlainly});
    return blocks;
}

Blocks instrumentBlocks(const CertificateContent &content)
{
    Blocks blocks;
    for (const CertificateInstrument &instrument : content.instruments) {
        QStringList parts{instrument.key, instrument.kind,
                          instrument.serial.isEmpty() ? QString() : "serial " + instrument.serial,
                          calibrationText(instrument),
                          instrument.asLabelled ? "as labelled: the office has not confirmed it yet"
                                                : QString()};
        parts.removeAll(QString());
        blocks.push_back(Paragraph{parts.join(", "), Tone::Small, mm(0.6)});
    }
    if (!blocks.empty())
        blocks.push_back(
            Paragraph{QString("Judged by limit set %1.").arg(content.limitSet), Tone::Muted});
    return blocks;
}

} // namespace loopwright
