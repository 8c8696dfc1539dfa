#include "app/actions/ReportFiles.h"

#include "app/actions/InFile.h"
#include "app/actions/OutFile.h"
#include "app/actions/SheetFile.h"
#include "app/print/ReportDocument.h"
#include "core/base/Csv.h"

#include <QFileInfo>
#include <QJsonArray>

#include <algorithm>

namespace loopwright {

namespace {

constexpr std::size_t mostBarsInPicture = 200;

const ReportColumn &drawnColumn(const ReportDescription &what)
{
    const auto found = std::ranges::find_if(what.columns, [&what](const ReportColumn &each) {
        return QString(each.key) == what.drawn;
    });
    static constexpr ReportColumn orders{"orders", "Orders", ReportForm::Count};
    return found == what.columns.end() ? orders : *found;
}

QString csvText(const QJsonValue &value)
{
    if (value.isBool())
        return value.toBool() ? "true" : "false";
    if (value.isDouble() && value.toDouble() == double(value.toInteger()))
        return QString::number(value.toInteger()); // 'g' makes 1e+05 of a hundred thousand
    if (value.isDouble())
        return QString::number(value.toDouble(), 'g', QLocale::FloatingPointShortest);
    QStringList words;
    for (const QJsonValue &each : value.toArray())
        words << each.toString();
    return value.isArray() ? words.join(' ') : value.toString();
}

QByteArray csvRow(const std::vector<ReportColumn> &columns, const QJsonObject &values,
                  bool spreadsheet)
{
    QStringList cells;
    for (const ReportColumn &column : columns) {
        const QJsonValue value = values.value(QLatin1StringView(column.key));
        const bool isText = !value.isDouble() && !value.isBool(); // -1 is a number anywhere
        cells << (spreadsheet && isText ? spreadsheetSafe(csvText(value)) : csvText(value));
    }
    return csvRecord(cells);
}

QByteArray csvHeader(const std::vector<ReportColumn> &columns)
{
    QStringList names;
    for (const ReportColumn &column : columns)
        names << column.key;
    return csvRecord(names);
}

double shareOfWidth(const ReportColumn &column)
{
    return !isText(column.form) ? 0.7 : QString(column.key) == u"because" ? 2.5 : 1.2;
}

/// Keys and what people wrote, which may look like figures; not our own words and months.
bool isTyped(const ReportColumn &column, const Report &report)
{
    const QLatin1StringView key(column.key);
    return column.form == ReportForm::Words && key != QLatin1StringView("criterion") &&
           key != QLatin1StringView("criteria") &&
           !(key == QLatin1StringView("per") && report.query.per == ReportPer::Month);
}

} // namespace

std::vector<double> drawnLengths(const Report &report)
{
    const ReportColumn &drawn = drawnColumn(report.what());
    std::vector<double> lengths;
    double whole = 1;
    for (const ReportRow &row : report.rows) {
        lengths.push_back(row.values.value(QLatin1StringView(drawn.key)).toDouble());
        whole = std::max(whole, lengths.back()); // a share has the whole of 1
    }
    for (double &length : lengths)
        length /= whole;
    return lengths;
}

BarPicture barsOf(const Report &report)
{
    const ReportColumn &drawn = drawnColumn(report.what());
    BarPicture picture{
        report.title(), report.sum.english(), {}, report.query.per == ReportPer::Month};
    std::vector<double> amounts;
    for (const ReportRow &row : report.rows) {
        const QString detail =
            row.values.value("criterion").toString() + row.values.value("instrument").toString();
        QStringList label{row.values.value("per").toString(), detail};
        label.removeAll(QString());
        const QString name = label.isEmpty() ? QString("none") : label.join(", ");
        const double amount = row.values.value(QLatin1StringView(drawn.key)).toDouble();
        if (picture.bars.empty() || picture.bars.back().label != name) {
            picture.bars.push_back({name, {}, 0});
            amounts.push_back(0);
        }
        amounts.back() += amount;
        picture.bars.back().text =
            cellText(drawn, QJsonObject{{QLatin1StringView(drawn.key), amounts.back()}});
    }
    const double whole = amounts.empty() ? 1 : std::max(1.0, std::ranges::max(amounts));
    for (std::size_t i = 0; i < amounts.size(); ++i)
        picture.bars[i].length = amounts[i] / whole;
    return picture;
}

QByteArray reportCsv(const Report &report, bool spreadsheet)
{
    const std::vector<ReportColumn> columns = report.columns();
    QByteArray bytes = csvHeader(columns);
    for (const ReportRow &row : report.rows)
        bytes += csvRow(columns, row.values, spreadsheet);
    return bytes;
}

QByteArray ordersCsv(const std::vector<ReportOrder> &orders, ReportKind kind, bool spreadsheet)
{
    std::vector<ReportColumn> columns{{"per", "", ReportForm::Words}};
    const std::vector<ReportColumn> behind = columnsBehind(kind);
    columns.insert(columns.end(), behind.begin(), behind.end());
    QByteArray bytes = csvHeader(columns);
    for (const ReportOrder &order : orders)
        bytes += csvRow(columns, toJson(order, kind), spreadsheet);
    return bytes;
}

Sheet reportSheet(const Report &report, Paper paper)
{
    ReportContent content{barsOf(report), report.what().says, {}, {}, report.made};
    const std::vector<ReportColumn> columns = report.columns();
    for (const ReportColumn &column : columns)
        content.columns.push_back({column.name,
                                   !isText(column.form) && column.form != ReportForm::Yes,
                                   shareOfWidth(column), isTyped(column, report)});
    for (const ReportRow &row : report.rows) {
        QStringList cells;
        for (const ReportColumn &column : columns)
            cells << cellText(column, row.values);
        content.rows.push_back(cells);
    }
    return layOut(reportDocument(content), paper);
}

QStringList reportFormats()
{
    return {"csv", "svg", "pdf"};
}

Result<void> writeReport(Records &records, const Report &report, const QString &path,
                         const QString &format, Paper paper, bool spreadsheet)
{
    const QString form = format.isEmpty() ? QFileInfo(path).suffix().toLower() : format;
    if (form == "csv")
        return writeOut(path, FileKind::Csv, reportCsv(report, spreadsheet));
    if (form == "svg") {
        BarPicture picture = barsOf(report);
        picture.keep(mostBarsInPicture);
        return writeOut(path, FileKind::Svg, barsSvg(picture));
    }
    if (form == "pdf")
        return writeSheet(reportSheet(report, paper), path, records.now());
    return failure(
        ErrorCode::Usage,
        path == standardStream
            ? QString("say by --format csv, svg or pdf what goes there")
            : QString("must end in .csv, .svg or .pdf, not \"%1\"").arg(fileNameOf(path)),
        "--out");
}

} // namespace loopwright
