#include "app/print/ReportDocument.h"

#include "app/print/HandoffDocument.h"
#include "core/base/PaperTime.h"

namespace loopwright {

using namespace doc;

namespace {

constexpr std::size_t mostBarsOnPaper = 25; ///< a picture stays on one page

Table figuresTable(const ReportContent &report)
{
    Table table;
    double sum = 0;
    for (const ReportContent::Column &column : report.columns)
        sum += column.share;
    const auto align = [](const ReportContent::Column &column) {
        return column.number ? Align::Right : Align::Left;
    };
    for (const ReportContent::Column &column : report.columns) {
        table.shares.push_back(column.share / sum);
        table.head.push_back({column.name, Tone::Muted, align(column)});
    }
    for (const QStringList &cells : report.rows) {
        TableRow row;
        for (std::size_t i = 0; i < report.columns.size(); ++i)
            row.cells.push_back({cells.value(qsizetype(i)), Tone::Small, align(report.columns[i])});
        table.rows.push_back(std::move(row));
    }
    return table;
}

QStringList typedIn(const ReportContent &report)
{
    QStringList typed;
    for (const QStringList &cells : report.rows)
        for (std::size_t i = 0; i < report.columns.size(); ++i)
            if (const QString cell = cells.value(qsizetype(i));
                report.columns[i].typed && cell != u"none")
                typed << cell;
    typed.removeDuplicates();
    return typed;
}

} // namespace

Document reportDocument(const ReportContent &report)
{
    Document document;
    document.typed = typedIn(report);
    document.title = report.picture.title;
    document.continued = document.title + ", continued";
    document.foot = "Made " + paperDay(report.made);
    document.end = "End of report";
    append(document.blocks, {Paragraph{document.title, Tone::Title, mm(1)},
                             Paragraph{report.picture.sum, Tone::Strong},
                             Paragraph{report.says, Tone::Muted, mm(3)}});
    if (!report.rows.empty()) {
        BarPicture bars{{}, {}, report.picture.bars, report.picture.inTime};
        bars.keep(mostBarsOnPaper);
        const PictureStyle style = paperStyle(85);
        const double height = barPictureHeight(mm(150), bars, style);
        append(document.blocks, {doc::Picture{height,
                                              [bars, style](QPainter &painter, const QRectF &rect) {
                                                  paintBars(painter, rect, bars, style);
                                              }},
                                 Gap{mm(3)}, figuresTable(report)});
    }
    spellMissingCharacters(document);
    return document;
}

} // namespace loopwright
