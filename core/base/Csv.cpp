#include "core/base/Csv.h"

#include "core/base/TextForm.h"

#include <QRegularExpression>
#include <QSet>
#include <QStringDecoder>

#include <cstring>

namespace loopwright {

CsvScanner::CsvScanner(QByteArrayView bytes, char separator)
    : m_at(bytes.data())
    , m_end(bytes.data() + bytes.size())
    , m_separator(separator)
{
    if (bytes.startsWith("\xEF\xBB\xBF"))
        m_at += 3;
}

bool CsvScanner::next()
{
    while (m_at < m_end && (*m_at == '\n' || *m_at == '\r')) {
        if (m_rowEnd == RowEnd::Unknown)
            m_rowEnd = *m_at == '\n' || isBeforeFeed() ? RowEnd::Feed : RowEnd::Return;
        m_line += endsLine();
        ++m_at;
    }
    m_fields.clear();
    m_unquotedUsed = 0;
    m_trouble.clear();
    m_rowLine = m_line;
    if (m_at >= m_end)
        return false;
    while (readField()) {
    }
    return true;
}

/// A carriage return alone ends a line, as it ends a row; one before a line feed does not.
bool CsvScanner::endsLine() const
{
    return *m_at == '\n' || (*m_at == '\r' && (m_at + 1 == m_end || m_at[1] != '\n'));
}

/// Of a carriage return: whether a line feed follows, or nothing. Who turns line ends into those of
/// another system twice leaves two of them before it.
bool CsvScanner::isBeforeFeed() const
{
    const char *at = m_at + 1;
    if (at < m_end && *at == '\r')
        ++at;
    return at == m_end || *at == '\n';
}

bool CsvScanner::endsRow() const
{
    return *m_at == '\n' || (*m_at == '\r' && (m_rowEnd != RowEnd::Feed || isBeforeFeed()));
}

// True if another field of the same row follows.
bool CsvScanner::readField()
{
    if (m_at < m_end && *m_at == '"')
        readQuoted();
    else
        readBare();
    if (m_at < m_end && *m_at == m_separator) {
        ++m_at;
        return true;
    }
    return false;
}

void CsvScanner::readBare()
{
    const char *start = m_at;
    for (; m_at < m_end && *m_at != m_separator && !endsRow(); ++m_at)
        if (*m_at == '"')
            m_trouble = "has a quotation mark inside a field that is not quoted";
        else if (*m_at == '\r')
            m_trouble = "has a carriage return inside a field that is not quoted";
    m_fields.emplace_back(start, std::size_t(m_at - start));
}

void CsvScanner::readQuoted()
{
    if (m_unquoted.size() <= m_unquotedUsed)
        m_unquoted.push_back(std::make_unique<std::string>());
    std::string &text = *m_unquoted[m_unquotedUsed++];
    text.clear();
    bool closed = false;
    for (++m_at; m_at < m_end && !closed; ++m_at) {
        m_line += endsLine();
        if (*m_at != '"')
            text.push_back(*m_at);
        else if (m_at + 1 < m_end && m_at[1] == '"')
            text.push_back(*m_at++);
        else
            closed = true;
    }
    if (!closed)
        m_trouble = "has a quotation mark that is never closed";
    for (; m_at < m_end && *m_at != m_separator && !endsRow(); ++m_at)
        m_trouble = "has text behind a closing quotation mark";
    m_fields.emplace_back(text);
}

QString CsvTable::value(const CsvRow &row, const QString &name) const
{
    const int at = column(name);
    const QString given = at < 0 || at >= row.fields.size() ? QString() : row.fields[at].trimmed();
    return map && at >= 0 ? map->value(name, given) : given;
}

QString CsvTable::nameInFile(const QString &column) const
{
    const qsizetype at = column.isEmpty() ? -1 : header.indexOf(column);
    return at < 0 || at >= theirs.size() ? column : theirs[at];
}

Result<void> checkUtf8(QByteArrayView bytes, const QString &fileName)
{
    if (isUtf16(bytes))
        return failure(ErrorCode::BadInput, "is UTF-16: save it as UTF-8", fileName);
    QStringDecoder decoder(QStringDecoder::Utf8);
    int line = 1;
    for (qsizetype at = 0; at < bytes.size();) {
        const qsizetype length = std::min<qsizetype>(bytes.size() - at, 1 << 16);
        const QByteArrayView piece = bytes.sliced(at, length);
        const QString text = decoder.decode(piece);
        if (decoder.hasError()) {
            line += int(text.left(text.indexOf(QChar::ReplacementCharacter)).count('\n'));
            return failure(ErrorCode::BadInput, "is not UTF-8",
                           QString("%1: line %2").arg(fileName, QString::number(line)));
        }
        line += int(piece.count('\n'));
        at += length;
    }
    const QString end = decoder.decode("\n"); // completes what is cut off at the end, as an error
    if (decoder.hasError() || end.isEmpty())
        return failure(ErrorCode::BadInput, "is not UTF-8",
                       QString("%1: line %2").arg(fileName, QString::number(line)));
    return {};
}

bool CsvLayout::knows(const QString &column) const
{
    static const QRegularExpression number("_[1-8](?=_|$)");
    QString general = column;
    general.replace(number, "_#");
    return required.contains(column) || optional.contains(column) || optional.contains(general) ||
           ignored.contains(column);
}

Result<void> checkCsvHeader(const QStringList &header, const QString &fileName,
                            const CsvLayout &layout)
{
    const QString place = fileName + ": row 1";
    QSet<QString> seen;
    for (const QString &name : header) {
        if (!layout.knows(name)) {
            const QString shown = name.left(60);
            const Text trouble = identifierTrouble(shown);
            return failure(ErrorCode::BadInput,
                           trouble.isEmpty() ? QString("column \"%1\" is not known").arg(shown)
                                             : QString("column \"%1\" is not known: its name %2")
                                                   .arg(shown, trouble.english()),
                           place);
        }
        if (seen.contains(name))
            return failure(ErrorCode::BadInput,
                           QString("column \"%1\" stands there twice").arg(name), place);
        seen.insert(name);
    }
    for (const QString &name : layout.required)
        if (!seen.contains(name))
            return failure(ErrorCode::BadInput, QString("column \"%1\" is missing").arg(name),
                           place);
    return {};
}

/// Here, where the layout is known: a map knows of none.
Result<void> ColumnMap::check(const CsvLayout &layout) const
{
    const CsvLayout ours{layout.required, layout.optional, {}};
    const auto refuse = [this](const QString &column, const QString &place) {
        return failure(ErrorCode::BadInput,
                       QString("column \"%1\" is not one of ours").arg(column.left(60)),
                       name + ": " + place.left(80));
    };
    for (auto it = columns.begin(); it != columns.end(); ++it)
        if (!ours.knows(it.value()))
            return refuse(it.value(), "columns." + it.key());
    for (auto it = values.begin(); it != values.end(); ++it)
        if (!ours.knows(it.key()))
            return refuse(it.key(), "values." + it.key());
    return {};
}

Result<CsvTable> readCsv(const QByteArray &bytes, const QString &fileName, const CsvLayout &layout,
                         const std::optional<ColumnMap> &map)
{
    LOOPWRIGHT_TRY(checkUtf8(bytes, fileName));
    CsvScanner scanner(bytes);
    const auto fieldsOf = [&scanner] {
        QStringList fields;
        for (const std::string_view field : scanner.fields())
            fields << textFromUtf8(field);
        return fields;
    };
    if (!scanner.next())
        return failure(ErrorCode::BadInput, "is empty: a header row is required", fileName);
    CsvTable table;
    for (const QString &name : fieldsOf())
        table.theirs << name.trimmed();
    table.header = table.theirs;
    table.map = map;
    if (map) {
        LOOPWRIGHT_TRY(map->check(layout));
        LOOPWRIGHT_ASSIGN(table.header, map->header(table.theirs, fileName, layout.ignored));
    }
    QStringList read = table.header;
    if (map)
        read.removeAll(QString());
    LOOPWRIGHT_TRY(checkCsvHeader(read, fileName, layout));
    while (scanner.next()) {
        CsvRow row{scanner.line(), fieldsOf(), scanner.trouble()};
        if (row.trouble.isEmpty() && row.fields.size() != table.header.size())
            row.trouble = QString("has %1 fields where the header has %2")
                              .arg(row.fields.size())
                              .arg(table.header.size());
        table.rows.push_back(std::move(row));
    }
    return table;
}

QByteArray csvRecord(const QStringList &fields)
{
    QByteArray record;
    for (qsizetype i = 0; i < fields.size(); ++i) {
        if (i > 0)
            record += ',';
        QByteArray field = fields[i].toUtf8();
        const bool quote = field.contains('"') || field.contains(',') || field.contains('\n') ||
                           field.contains('\r') || (fields.size() == 1 && field.isEmpty());
        record += quote ? '"' + field.replace("\"", "\"\"") + '"' : field;
    }
    return record + "\r\n";
}

QString spreadsheetSafe(const QString &text)
{
    static const QRegularExpression number(R"(\A-?\d+(\.\d+)?\z)");
    if (text.isEmpty() || !QString("=+-@\t\r").contains(text[0]) || number.match(text).hasMatch())
        return text;
    return '\'' + text;
}

} // namespace loopwright
