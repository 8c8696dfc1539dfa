#include "app/desktop/identifiers/IdentifierReport.h"

#include "app/actions/OutFile.h"
#include "core/base/Csv.h"

#include <QList>

#include <algorithm>

namespace loopwright {

namespace {

QString textOf(std::string_view utf8)
{
    return QString::fromUtf8(utf8.data(), qsizetype(utf8.size()));
}

QByteArrayView firstLineOf(const QByteArray &text)
{
    QByteArrayView line(text);
    if (line.startsWith("\xef\xbb\xbf"))
        line = line.sliced(3);
    const qsizetype end = line.indexOf('\n');
    return (end < 0 ? line : line.first(end)).trimmed();
}

bool namesColumns(const QByteArray &text)
{
    const QList<QByteArray> columns = firstLineOf(text).toByteArray().toLower().split(',');
    const auto has = [&columns](const char *name) {
        return std::ranges::any_of(columns, [name](QByteArray column) {
            column = column.trimmed();
            return column == name || column == QByteArray("\"") + name + "\"";
        });
    };
    return has("variant") && has("spid");
}

} // namespace

IdentifierInput identifierInput(const QByteArray &text, const QString &variant)
{
    if (namesColumns(text))
        return {text, 0};
    IdentifierInput input{csvRecord({"variant", "spid", "dn"}), 1};
    for (const QByteArray &raw : text.split('\n')) {
        const QString line = QString::fromUtf8(raw).trimmed();
        const auto isBreak = [](QChar c) { return c == u',' || c == u';' || c == u'\t'; };
        const auto cut = std::ranges::find_if(line, isBreak);
        const qsizetype at = cut - line.begin();
        const QString spid = line.first(at).trimmed();
        const QString dn = at < line.size() ? line.sliced(at + 1).trimmed() : QString();
        // A blank line keeps its place, so that the rows have the numbers that the eye counts.
        input.csv +=
            spid.isEmpty() && dn.isEmpty() ? QByteArray("\r\n") : csvRecord({variant, spid, dn});
    }
    return input;
}

Result<IdentifierReport> checkIdentifiers(const IdentifierInput &input, const QString &name)
{
    IdentifierReport report;
    const auto counted = checkIdentifierRows(input.csv, name, [&](const IdentifierListRow &row) {
        if (report.rows.size() >= identifierRowsShown)
            return;
        report.rows.push_back({row.line - input.linesBefore, textOf(row.variant), textOf(row.spid),
                               textOf(row.dn), textOf(row.code), textOf(row.reason),
                               textOf(row.repair), row.worst});
    });
    if (!counted)
        return failure(counted.error());
    report.count = *counted;
    return report;
}

Result<qint64> saveVerdicts(const IdentifierInput &input, const QString &name, const QString &path)
{
    LOOPWRIGHT_ASSIGN(auto file, OutFile::open(path, FileKind::Csv));
    LOOPWRIGHT_ASSIGN(const auto counted,
                      checkIdentifierList(input.csv, name, [&file](QByteArrayView piece) {
                          return file.write(piece);
                      }));
    LOOPWRIGHT_TRY(file.commit());
    return counted.rows;
}

} // namespace loopwright
