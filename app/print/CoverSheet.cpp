#include "app/print/CoverSheet.h"

#include "app/print/CertificateStyle.h"
#include "app/print/JobLinePainter.h"
#include "app/print/PdfFile.h"

#include <algorithm>

namespace loopwright {

namespace {

/// A cover has this subject and a certificate does not.
const QString coverSubject = QStringLiteral("The lines at one premises; no certificate");

QString outcomeName(OrderOutcome outcome)
{
    if (outcome == OrderOutcome::AcceptedWithException)
        return "Accepted by exception"; // as the certificate says it
    QString text = toText(outcome).replace('_', ' ');
    text[0] = text[0].toUpper();
    return text;
}

StationState outcomeMark(OrderOutcome outcome)
{
    const StationMark mark = outcome == OrderOutcome::Incomplete    ? StationMark::Open
                             : outcome == OrderOutcome::NotAccepted ? StationMark::Failed
                                                                    : StationMark::Done;
    return {Station::Acceptance, mark, outcome == OrderOutcome::AcceptedWithException, false};
}

QString countText(const CoverContent &content)
{
    const auto issued = std::count_if(content.lines.begin(), content.lines.end(),
                                      [](const CoverLine &l) { return !l.certificate.isEmpty(); });
    if (issued == qsizetype(content.lines.size()))
        return issued == 1 ? QString("One line, with its certificate.")
                           : QString("%1 lines, each with a certificate of its own.").arg(issued);
    return QString("%1 of %2 lines have a certificate; for each other it is said why not.")
        .arg(issued)
        .arg(content.lines.size());
}

void drawCoverFact(SheetBuilder &sheet, const QString &name, const QString &value,
                   const CertificateStyle &style)
{
    if (value.isEmpty())
        return;
    const double indent = mm(28);
    sheet.row({{sheet.left(), indent - mm(3), name, style.label()},
               {sheet.left() + indent, sheet.width() - indent, value, style.body()}});
    sheet.y += mm(1.4);
}

/// The columns of a line: its mark, the line, its outcome.
struct CoverColumns
{
    explicit CoverColumns(const SheetBuilder &sheet)
        : line(sheet.left() + mm(7))
        , outcome(sheet.left() + sheet.width() * 0.58)
        , lineWidth(outcome - line - mm(4))
        , outcomeWidth(sheet.right() - outcome)
    {
    }
    double line, outcome, lineWidth, outcomeWidth;
};

/// Left and right text, line by line.
std::vector<std::pair<QString, QString>> lineTexts(const CoverLine &line)
{
    QStringList left{line.numbers, QString("Circuit %1, order %2").arg(line.circuit, line.order)};
    QStringList right;
    if (line.certificate.isEmpty()) {
        if (!line.stage.isEmpty())
            right << "Stands at: " + line.stage;
        right << "No certificate";
    } else {
        right << QString("%1, code %2").arg(line.certificate, line.code)
              << QString("%1 page%2%3%4")
                     .arg(line.pages)
                     .arg(line.pages == 1 ? "" : "s",
                          line.tested.isEmpty() ? QString() : ", tested " + line.tested,
                          line.copy ? ", a copy" : "");
    }
    left.removeAll(QString());
    std::vector<std::pair<QString, QString>> texts;
    for (qsizetype i = 0; i < std::max(left.size(), right.size()); ++i)
        texts.emplace_back(left.value(i), right.value(i));
    return texts;
}

void drawCoverLine(SheetBuilder &sheet, const CoverLine &line, const CertificateStyle &style)
{
    const CoverColumns columns(sheet);
    std::vector<std::vector<Cell>> rows{
        {{columns.line, columns.lineWidth, line.kind, style.strong()},
         {columns.outcome, columns.outcomeWidth, outcomeName(line.outcome), style.strong()}}};
    for (const auto &[left, right] : lineTexts(line))
        rows.push_back({{columns.line, columns.lineWidth, left, style.body()},
                        {columns.outcome, columns.outcomeWidth, right, style.body()}});
    const double reasonWidth = sheet.right() - columns.line;
    double height = mm(5) + SheetBuilder::paragraphHeight(line.reason, style.body(), reasonWidth);
    for (const auto &cells : rows)
        height += SheetBuilder::rowHeight(cells) + mm(0.8);
    sheet.ensure(height);
    sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.line);
    sheet.y += mm(2.2);
    const StationState state = outcomeMark(line.outcome);
    const QPointF centre(sheet.left() + mm(2.2), sheet.y + mm(1.6));
    sheet.draw([centre, state, ink = style.ink](QPainter &painter) {
        paintStationMark(painter, centre, mm(1.9), state, ink);
    });
    for (const auto &cells : rows) {
        sheet.row(cells);
        sheet.y += mm(0.8);
    }
    if (!line.reason.isEmpty())
        sheet.paragraph(line.reason, style.body(), columns.line - sheet.left(), reasonWidth);
    sheet.y += mm(2);
}

} // namespace

Sheet coverSheet(const CoverContent &content, Paper paper)
{
    const CertificateStyle style;
    const QString title = "Lines at one premises";
    SheetBuilder sheet(paper, "Cover, " + content.premises);
    sheet.textAt(sheet.left(), sheet.top() + mm(7), title, style.title());
    sheet.y = sheet.top() + mm(12);
    sheet.paragraph(countText(content), style.body());
    sheet.y += mm(4);
    drawCoverFact(sheet, "Customer", content.customer, style);
    drawCoverFact(sheet, "Premises", content.premises, style);
    drawCoverFact(sheet, "Visit", content.visit, style);
    drawCoverFact(sheet, "Set made", longDate(content.made.localDate()), style);
    sheet.y += mm(3);
    sheet.setOnNewPage([title, style](SheetBuilder &next) {
        next.textAt(next.left(), next.top() + mm(3), title, style.strong());
        next.y = next.top() + mm(7);
    });
    for (const CoverLine &line : content.lines)
        drawCoverLine(sheet, line, style);
    sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.line);
    sheet.y += mm(4);
    sheet.paragraph("Each certificate stands for itself and is checked by its own number and code.",
                    style.small());
    return sheet.finish("A list of the set; it is no certificate", style.foot());
}

Result<QByteArray> coverPdf(const Sheet &cover, const Moment &made)
{
    return sheetPdf(cover, {cover.title, coverSubject, made});
}

bool isCover(const PdfContents &contents)
{
    return contents.subject == coverSubject;
}

} // namespace loopwright
