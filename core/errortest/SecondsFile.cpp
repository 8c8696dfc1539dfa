#include "core/errortest/SecondsFile.h"

#include "core/base/Csv.h"
#include "core/errortest/Bounds.h"
#include "core/errortest/CountText.h"
#include "core/errortest/SecondStamp.h"
#include "core/errortest/SecondsRows.h"

#include <QRegularExpression>

#include <algorithm>
#include <span>

namespace loopwright {

namespace {

constexpr std::size_t mostSeconds = 10'000'000; ///< sixteen weeks
constexpr std::size_t maxFindings = 1000;
constexpr qint64 msOfDay = 86'400'000;
constexpr qint64 driftMs = 20; ///< a second, of a logger that works between two waits of a second

enum Column
{
    SecondColumn,
    ErrorsColumn,
    LostColumn,
    Columns,
};

/// What test sets call the columns, in lower case, blanks and hyphens as underlines. The first of
/// each is the contract's.
const QStringList columnNames[Columns] = {
    {"second", "seconds", "sec", "s", "time", "timestamp", "date_time", "elapsed"},
    {"bit_errors", "bit_error", "errors", "biterrors", "bit_error_count", "error_count", "be"},
    {"sync_lost", "sync_loss", "loss_of_sync", "pattern_loss", "los", "lost"},
};

/// In the column of errors: no count, because the receiver was out of synchronisation.
const QStringList lostWords = {"l", "los", "ais", "loss", "lost", "null", "-"};
const QStringList yesWords = {"1", "yes", "y", "true", "x", "lost"};
const QStringList noWords = {"", "0", "no", "n", "false", "-"};

QString normalised(const QString &name)
{
    return name.trimmed().toLower().replace(' ', '_').replace('-', '_');
}

int columnOf(const QString &name)
{
    for (int column = 0; column < Columns; ++column)
        if (columnNames[column].contains(normalised(name)))
            return column;
    return -1;
}

bool hasDigit(const QString &text)
{
    return std::any_of(text.begin(), text.end(), [](QChar c) { return c.isDigit(); });
}

/// A field as it can stand in a message: not too long, and what cannot be seen is spelled out.
QString shown(const QString &field)
{
    QString text;
    for (const QChar c : field.left(60))
        text += c.isPrint() ? QString(c)
                            : "\\u" + QString::number(c.unicode(), 16).rightJustified(4, '0');
    return '"' + text + '"';
}

/// Digits with or without a sign. QString's own reading ends at a NUL and drops what follows.
std::optional<qint64> countOf(const QString &text)
{
    static const QRegularExpression form(R"(\A[+-]?[0-9]+\z)");
    bool isNumber = false;
    const qint64 count = text.toLongLong(&isNumber);
    return isNumber && form.match(text).hasMatch() ? std::optional(count) : std::nullopt;
}

/// Why a text is no second.
Text stampTrouble(const QString &text)
{
    static const QRegularExpression dayFirst(R"(\A(?:1[3-9]|2\d|3[01])/(?:0?[1-9]|1[0-2])/\d{4})");
    if (dayFirst.match(text).hasMatch())
        return Text(QT_TRANSLATE_NOOP("core", "%1 is no date: with strokes the month stands first "
                                              "(12/31/2026); or write 2026-12-31"))
            .arg(shown(text));
    return Text(QT_TRANSLATE_NOOP("core", "%1 is neither a count of seconds nor a time"))
        .arg(shown(text));
}

QString placeOf(const Finding &finding)
{
    return QString("row %1, column %2").arg(QString::number(finding.row), finding.field);
}

class Reader
{
public:
    Reader(const QString &fileName, qint64 bitsPerSecond, const QStringList &ignored,
           const std::optional<ColumnMap> &map)
        : m_fileName(fileName)
        , m_bitsPerSecond(bitsPerSecond)
        , m_ignored(ignored)
        , m_map(map)
    {
    }

    Result<SecondsFile> read(const QByteArray &bytes);

private:
    bool isHeader(const QStringList &fields) const;
    Result<void> readHeader(const QStringList &theirs);
    void guessColumns(qsizetype count);
    void readRow(const SecondsRows &rows);
    bool follows(int row, const QString &text);
    std::optional<Second> errorsOf(int row, const QStringList &fields);
    std::optional<bool> lostOf(int row, const QStringList &fields);
    QString field(const QStringList &fields, Column column) const;
    QString nameInFile(Column column) const;
    void odd(int row, const char *code, Column column, const Text &reason);

    QString m_fileName;
    qint64 m_bitsPerSecond;
    QStringList m_ignored;
    const std::optional<ColumnMap> &m_map;
    QStringList m_theirs; ///< the header as it stands in the file
    qsizetype m_at[Columns] = {-1, -1, -1};
    qsizetype m_width = 0;
    SecondsFile m_file;
    // the second of the row before
    std::optional<SecondStamp::Kind> m_kind;
    qint64 m_lastMs = 0; ///< on the grid of seconds
    qint64 m_lastSecond = -1;
};

/// Ours, unless a map says that the file calls it otherwise.
QString Reader::nameInFile(Column column) const
{
    return m_map ? m_theirs.value(m_at[column], columnNames[column].first())
                 : columnNames[column].first();
}

void Reader::odd(int row, const char *code, Column column, const Text &reason)
{
    if (m_file.findings.size() < maxFindings)
        m_file.findings.push_back({Severity::Error, code, reason, {}, nameInFile(column), row});
    else
        ++m_file.furtherFindings;
}

QString Reader::field(const QStringList &fields, Column column) const
{
    const QString text = m_at[column] >= 0 ? fields.value(m_at[column]) : QString();
    return m_map ? m_map->value(columnNames[column].first(), text) : text;
}

/// A name of a column stands in it, or no digit; one that a map knows may have any.
bool Reader::isHeader(const QStringList &fields) const
{
    const auto any = [&fields](auto is) { return std::any_of(fields.begin(), fields.end(), is); };
    if (m_map && any([this](const QString &name) {
            return m_map->columns.contains(name) || m_map->ignored.contains(name);
        }))
        return true;
    return !SecondStamp::parse(fields.first()) &&
           (any([](const QString &name) { return columnOf(name) >= 0; }) ||
            std::none_of(fields.begin(), fields.end(), hasDigit));
}

Result<void> Reader::readHeader(const QStringList &theirs)
{
    m_theirs = theirs;
    QStringList names = theirs;
    if (m_map) {
        LOOPWRIGHT_TRY(m_map->check(secondsLayout()));
        LOOPWRIGHT_ASSIGN(names, m_map->header(theirs, m_fileName, m_ignored));
    }
    m_width = names.size();
    for (qsizetype i = 0; i < names.size(); ++i) {
        const int column = columnOf(names[i]);
        if (column < 0 && (names[i].isEmpty() || m_ignored.contains(names[i])))
            continue;
        if (column < 0)
            return failure(ErrorCode::BadInput,
                           QString("column %1 is not known").arg(shown(names[i])), m_fileName);
        if (m_at[column] >= 0)
            return failure(ErrorCode::BadInput,
                           QString("column \"%1\" is there twice").arg(columnNames[column].first()),
                           m_fileName);
        m_at[column] = i;
    }
    for (const Column column : {SecondColumn, ErrorsColumn})
        if (m_at[column] < 0 && !(column == SecondColumn && m_width == 1)) // errors alone
            return failure(ErrorCode::BadInput,
                           QString("column \"%1\" is missing").arg(columnNames[column].first()),
                           m_fileName);
    return {};
}

void Reader::guessColumns(qsizetype count)
{
    m_width = std::min<qsizetype>(count, Columns);
    if (count == 1) {
        m_at[ErrorsColumn] = 0;
        return;
    }
    for (qsizetype i = 0; i < m_width; ++i)
        m_at[i] = i;
}

/// Whether the row's second is the one after the last row's.
bool Reader::follows(int row, const QString &text)
{
    const auto stamp = SecondStamp::parse(text);
    if (!stamp || stamp->kind != m_kind.value_or(stamp->kind)) {
        odd(row, "second", SecondColumn,
            stamp ? Text(QT_TRANSLATE_NOOP("core",
                                           "%1 is another kind of time than in the rows before"))
                        .arg(shown(text))
                  : stampTrouble(text));
        ++m_lastSecond; // taken for the one it should be
        m_lastMs += 1000;
        return false;
    }
    qint64 ms = stamp->milliseconds;
    if (!m_kind) {
        m_kind = stamp->kind;
        m_lastMs = ms - 1000;
    } else if (*m_kind == SecondStamp::Kind::Clock) {
        while (ms < m_lastMs - msOfDay / 2)
            ms += msOfDay; // past midnight
    }
    // To the nearest second, so that a time taken a little early or late does no harm; the grid
    // follows a test set's clock, but not rows that are more or less than a second apart.
    const qint64 step = ms - m_lastMs;
    const qint64 second = m_lastSecond + (step + (step >= 0 ? 500 : -500)) / 1000;
    if (second == m_lastSecond + 1) {
        m_lastSecond = second;
        m_lastMs += 1000 + std::clamp(step - 1000, -driftMs, driftMs);
        return true;
    }
    if (second <= m_lastSecond) {
        odd(row, second == m_lastSecond ? "doubled" : "back", SecondColumn,
            Text(second == m_lastSecond ? QT_TRANSLATE_NOOP("core", "second %1 is there twice")
                                        : QT_TRANSLATE_NOOP("core", "second %1 goes back in time"))
                .arg(shown(text)));
        return false;
    }
    const qint64 missing = second - m_lastSecond - 1;
    odd(row, "gap", SecondColumn,
        Text::counted("%n s is missing before %1",
                      QT_TRANSLATE_N_NOOP("core", "%n s are missing before %1"), missing)
            .arg(shown(text)));
    m_lastSecond = second;
    m_lastMs = ms;
    return false;
}

std::optional<bool> Reader::lostOf(int row, const QStringList &fields)
{
    const QString text = field(fields, LostColumn).toLower();
    if (noWords.contains(text))
        return false;
    if (yesWords.contains(text))
        return true;
    odd(row, "sync_lost", LostColumn,
        Text(QT_TRANSLATE_NOOP("core", "%1 is neither yes nor no")).arg(shown(text)));
    return std::nullopt;
}

std::optional<Second> Reader::errorsOf(int row, const QStringList &fields)
{
    const auto lost = lostOf(row, fields);
    const QString text = field(fields, ErrorsColumn);
    const auto errors = countOf(text);
    if (!lost)
        return std::nullopt;
    if (lostWords.contains(text.toLower()) || (*lost && text.isEmpty()))
        return Second(std::nullopt);
    if (!errors || *errors < 0) {
        odd(row, "bit_errors", ErrorsColumn,
            Text(QT_TRANSLATE_NOOP("core", "%1 is not a number of bit errors")).arg(shown(text)));
        return std::nullopt;
    }
    if (*errors > m_bitsPerSecond) {
        odd(row, "too_many", ErrorsColumn,
            Text(QT_TRANSLATE_NOOP("core", "%1 in a second of %2"))
                .arg(countText(*errors, Counted::BitError))
                .arg(countText(m_bitsPerSecond, Counted::Bit)));
        return std::nullopt;
    }
    return *lost ? Second(std::nullopt) : Second(*errors);
}

void Reader::readRow(const SecondsRows &rows)
{
    QStringList fields = rows.fields();
    while (fields.size() > m_width && fields.last().isEmpty())
        fields.removeLast();
    if (!rows.trouble().isEmpty() || fields.size() > m_width ||
        fields.size() <= std::max(m_at[SecondColumn], m_at[ErrorsColumn])) {
        odd(rows.row(), "columns", SecondColumn,
            rows.trouble().isEmpty()
                ? Text(QT_TRANSLATE_NOOP("core", "%1, and %2"))
                      .arg(Text::counted("has %n column",
                                         QT_TRANSLATE_N_NOOP("core", "has %n columns"),
                                         fields.size()))
                      .arg(Text::counted("%n is wanted",
                                         QT_TRANSLATE_N_NOOP("core", "%n are wanted"), m_width))
                : Text::message(rows.trouble()));
        ++m_lastSecond;
        m_lastMs += 1000;
        return;
    }
    const bool inOrder = m_at[SecondColumn] < 0 || follows(rows.row(), field(fields, SecondColumn));
    const auto second = errorsOf(rows.row(), fields);
    if (inOrder && second)
        m_file.seconds.push_back(*second);
}

Result<SecondsFile> Reader::read(const QByteArray &bytes)
{
    LOOPWRIGHT_TRY(checkUtf8(bytes, m_fileName));
    QByteArrayView body = bytes;
    if (body.startsWith("\xEF\xBB\xBF"))
        body = body.sliced(3);
    SecondsRows rows(body);
    bool first = true;
    while (rows.next()) {
        if (m_file.seconds.size() >= mostSeconds)
            return failure(ErrorCode::BadInput,
                           QString("holds more than %1 seconds").arg(mostSeconds), m_fileName);
        const QStringList &fields = rows.fields();
        if (first && isHeader(fields)) {
            LOOPWRIGHT_TRY(readHeader(fields));
        } else if (first && m_map) {
            return failure(ErrorCode::BadInput, "has no header for the map to lead from",
                           QString("%1: row %2").arg(m_fileName).arg(rows.row()));
        } else {
            if (first)
                guessColumns(fields.size());
            readRow(rows);
        }
        first = false;
    }
    if (m_file.seconds.empty() && m_file.findings.empty())
        return failure(ErrorCode::BadInput, "holds no second", m_fileName);
    return std::move(m_file);
}

} // namespace

Result<SecondList> SecondsFile::accepted(const QString &fileName) const
{
    if (findings.empty())
        return seconds;
    const Finding &first = findings.front();
    QString message = first.reason.english();
    if (const qint64 more = qint64(findings.size()) - 1 + furtherFindings; more > 0)
        message += QString(" (and %1 more)").arg(more);
    return failure(ErrorCode::BadInput, message, fileName + ": " + placeOf(first));
}

QStringList SecondsFile::findingLines(std::size_t most) const
{
    QStringList lines;
    for (const Finding &finding : std::span(findings).first(std::min(most, findings.size())))
        lines << placeOf(finding) + ": " + finding.reason.english();
    const qint64 more = qint64(findings.size()) + furtherFindings - lines.size();
    if (more > 0)
        lines << (more == 1 ? QString("1 more is odd") : QString("%1 more are odd").arg(more));
    return lines;
}

Result<SecondsFile> readSecondsFile(const QByteArray &bytes, const QString &fileName,
                                    qint64 bitsPerSecond, const QStringList &ignoredColumns,
                                    const std::optional<ColumnMap> &map)
{
    return Reader(fileName, bitsPerSecond, ignoredColumns, map).read(bytes);
}

CsvLayout secondsLayout()
{
    return {{columnNames[SecondColumn].first(), columnNames[ErrorsColumn].first()},
            {columnNames[LostColumn].first()},
            {}};
}

} // namespace loopwright
