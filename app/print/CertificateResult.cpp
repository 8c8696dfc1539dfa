#include "app/print/CertificateResult.h"

#include "app/print/JobLinePainter.h"
#include "core/certificate/PlainWords.h"

#include <algorithm>

namespace loopwright {

namespace {

/// Columns of the table of criteria.
struct Columns
{
    double mark, name, measured, limit, result, end;

    explicit Columns(const SheetBuilder &sheet)
        : mark(sheet.left())
        , name(sheet.left() + mm(6.5))
        , measured(sheet.left() + sheet.width() * 0.30)
        , limit(sheet.left() + sheet.width() * 0.565)
        , result(sheet.left() + sheet.width() * 0.885)
        , end(sheet.right())
    {
    }
};

StationState markOf(CriterionOutcome outcome, bool excepted)
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

void drawMark(SheetBuilder &sheet, double x, double y, double radius, const StationState &state,
              const PictureStyle &ink)
{
    const QPointF centre(x + radius, y);
    sheet.draw([=](QPainter &painter) { paintStationMark(painter, centre, radius, state, ink); });
}

void drawTableHead(SheetBuilder &sheet, const CertificateStyle &style)
{
    const Columns columns(sheet);
    sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.text, 7);
    sheet.y += style.setting.rowGap * 0.9;
    sheet.row(
        {{columns.mark, columns.measured - columns.mark, "What was checked", style.heading()},
         {columns.measured, columns.limit - columns.measured, "Measured", style.heading()},
         {columns.limit, columns.result - columns.limit, "Limit", style.heading()},
         {columns.result, columns.end - columns.result, "Result", style.heading(), Align::Right}});
    sheet.y += style.setting.rowGap * 0.7;
}

QString capitalised(const QString &text)
{
    return text.isEmpty() ? text : QString(text[0].toUpper() + text.mid(1));
}

/// What most limits come from; said once below the table and not in every row.
const QString commonPractice = QStringLiteral("common practice");

QString meaningText(const CertificateCriterion &criterion)
{
    if (criterion.source.isEmpty() || criterion.source == commonPractice ||
        criterion.limit.isEmpty() || criterion.outcome == CriterionOutcome::NotNeeded)
        return criterion.meaning;
    return criterion.meaning + " Limit set by " + criterion.source + '.';
}

QString exceptionText(const CertificateException &exception)
{
    return QString("Accepted by exception, authorised by %1 on %2: “%3”")
        .arg(exception.by, longDate(exception.at.localDate()), exception.because);
}

std::vector<Cell> criterionCells(const SheetBuilder &sheet, const CertificateCriterion &criterion,
                                 const CertificateStyle &style)
{
    const Columns columns(sheet);
    const double gap = mm(3);
    const TextStyle limit{Face::Text, style.setting.small, style.ink.text};
    TextStyle result = style.body();
    if (criterion.outcome == CriterionOutcome::NotMet)
        result = {Face::Strong, style.setting.body, style.ink.bad};
    return {{columns.name, columns.measured - columns.name - gap, capitalised(criterion.name),
             style.strong()},
            {columns.measured, columns.limit - columns.measured - gap, criterion.measured,
             style.body()},
            {columns.limit, columns.result - columns.limit - gap, criterion.limit, limit},
            {columns.result, columns.end - columns.result, plainOutcome(criterion.outcome), result,
             Align::Right}};
}

void drawCriterion(SheetBuilder &sheet, const CertificateCriterion &criterion,
                   const CertificateStyle &style)
{
    const Columns columns(sheet);
    const double indent = columns.name - sheet.left();
    const double wide = sheet.width() - indent;
    const std::vector<Cell> cells = criterionCells(sheet, criterion, style);
    const QString meaning = meaningText(criterion);
    const QString exception = criterion.excepted ? exceptionText(*criterion.excepted) : QString();
    const double height = SheetBuilder::rowHeight(cells) + 2 * style.setting.rowGap +
                          SheetBuilder::paragraphHeight(meaning, style.small(), wide) +
                          SheetBuilder::paragraphHeight(exception, style.body(), wide);
    if (sheet.ensure(height))
        drawTableHead(sheet, style);
    sheet.rule(columns.name, sheet.right(), sheet.y, style.ink.line);
    sheet.y += style.setting.rowGap;
    const double radius = style.setting.body * 0.42;
    drawMark(sheet, columns.mark, sheet.y + style.setting.body * 0.62, radius,
             markOf(criterion.outcome, criterion.excepted.has_value()), style.ink);
    sheet.row(cells);
    sheet.paragraph(meaning, style.small(), indent);
    sheet.paragraph(exception, {Face::Text, style.setting.body, style.ink.bad}, indent);
    sheet.y += style.setting.rowGap;
}

/// What the order does not call for: one line each.
void drawNotNeeded(SheetBuilder &sheet, const CertificateCriterion &criterion,
                   const CertificateStyle &style)
{
    const Columns columns(sheet);
    const TextStyle text = style.small();
    const std::vector<Cell> cells{
        {columns.name, columns.measured - columns.name - mm(3), capitalised(criterion.name), text},
        {columns.measured, columns.result - columns.measured - mm(3), criterion.reason, text},
        {columns.result, columns.end - columns.result, plainOutcome(criterion.outcome), text,
         Align::Right}};
    const double gap = style.setting.rowGap * 0.7;
    if (sheet.ensure(SheetBuilder::rowHeight(cells) + 2 * gap))
        drawTableHead(sheet, style);
    sheet.rule(columns.name, sheet.right(), sheet.y, style.ink.line);
    sheet.y += gap;
    drawMark(sheet, columns.mark, sheet.y + style.setting.small * 0.62, style.setting.body * 0.42,
             markOf(criterion.outcome, false), style.ink);
    sheet.row(cells);
    sheet.y += gap;
}

/// A heading in the left column and paragraphs beside it.
class Section
{
public:
    Section(SheetBuilder &sheet, const QString &heading, const CertificateStyle &style)
        : m_sheet(sheet)
        , m_style(style)
        , m_heading(heading)
        , m_indent(mm(34))
    {
        sheet.y += style.setting.sectionGap * 0.55;
        sheet.ensure(mm(8));
        sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.line);
        sheet.y += style.setting.rowGap * 1.5;
    }

    void add(const QString &text, const TextStyle &textStyle,
             const std::optional<StationState> &mark = {})
    {
        if (text.isEmpty())
            return;
        const double indent = m_indent + (mark ? mm(5) : 0);
        const double gap = m_style.setting.rowGap * 0.55;
        const double wide = m_sheet.width() - indent;
        m_sheet.ensure(SheetBuilder::paragraphHeight(text, textStyle, wide) + gap);
        std::vector<Cell> cells;
        if (!m_heading.isEmpty())
            cells.push_back({m_sheet.left(), m_indent - mm(3), m_heading, m_style.heading()});
        m_heading.clear();
        if (mark)
            drawMark(m_sheet, m_sheet.left() + m_indent, m_sheet.y + textStyle.size * 0.66,
                     textStyle.size * 0.4, *mark, m_style.ink);
        cells.push_back({m_sheet.left() + indent, wide, text, textStyle});
        m_sheet.row(cells);
        m_sheet.y += gap;
    }

private:
    SheetBuilder &m_sheet;
    const CertificateStyle &m_style;
    QString m_heading;
    double m_indent;
};

StationState runMark(RunOutcome outcome)
{
    StationState state;
    state.mark = outcome == RunOutcome::Failed    ? StationMark::Failed
                 : outcome == RunOutcome::Counted ? StationMark::Done
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
    return QString("calibrated on %1, next due on %2").arg(longDate(on), longDate(*due));
}

} // namespace

void drawCriteria(SheetBuilder &sheet, const CertificateContent &content,
                  const CertificateStyle &style)
{
    drawTableHead(sheet, style);
    for (const CertificateCriterion &criterion : content.criteria)
        if (criterion.outcome != CriterionOutcome::NotNeeded)
            drawCriterion(sheet, criterion, style);
    for (const CertificateCriterion &criterion : content.criteria)
        if (criterion.outcome == CriterionOutcome::NotNeeded)
            drawNotNeeded(sheet, criterion, style);
    const bool anyCommon =
        std::any_of(content.criteria.begin(), content.criteria.end(),
                    [](const CertificateCriterion &criterion) {
                        return criterion.source == commonPractice && !criterion.limit.isEmpty();
                    });
    if (!anyCommon)
        return;
    const QString note = "Where no source is named, the limit is common practice of the trade.";
    sheet.ensure(SheetBuilder::lineHeight(style.small()) + style.setting.rowGap);
    sheet.y += style.setting.rowGap;
    sheet.paragraph(note, style.small(), Columns(sheet).name - sheet.left());
}

void drawRuns(SheetBuilder &sheet, const CertificateContent &content, const CertificateStyle &style)
{
    if (!content.runNeeded && content.runs.empty() && content.notes.isEmpty())
        return;
    Section section(sheet, "Error test", style);
    if (content.runNeeded)
        section.add(content.runsSentence() + '.', style.strong());
    for (const CertificateRun &run : content.runs)
        section.add(run.text + " – " + run.result, style.body(), runMark(run.outcome));
    const QString proves =
        content.proves.isEmpty() ? QString() : QString(capitalised(content.proves) + '.');
    section.add(QString(proves + ' ' + content.provesPlainly).trimmed(), style.body());
    for (const QString &note : content.notes)
        section.add(capitalised(note), style.small());
}

void drawInstruments(SheetBuilder &sheet, const CertificateContent &content,
                     const CertificateStyle &style)
{
    if (content.instruments.empty())
        return;
    Section section(sheet, "Measured with", style);
    for (const CertificateInstrument &instrument : content.instruments) {
        QStringList parts{instrument.key};
        if (!instrument.kind.isEmpty())
            parts << instrument.kind;
        if (!instrument.serial.isEmpty())
            parts << "serial " + instrument.serial;
        parts << calibrationText(instrument);
        section.add(parts.join(", "), style.small());
    }
    section.add(QString("Judged by limit set %1.").arg(content.limitSet), style.small());
}

} // namespace loopwright
