#include "db/Statement.h"

#include "core/base/Json.h"
#include "core/base/TextForm.h"
#include "db/Database.h"
#include "db/SqlCatalog.h"
#include "db/SqliteConnection.h"
#include "db/WriteLock.h"

#include <QJsonDocument>

#include <algorithm>
#include <sqlite3.h>

namespace loopwright {

namespace {

QString asText(std::string_view text)
{
    return QString::fromUtf8(text.data(), qsizetype(text.size()));
}

} // namespace

Statement::Statement(const Database &database, std::string_view label,
                     const std::vector<std::string_view> &parts)
    : Statement(database.connection(), label, false, parts)
{
}

Statement::Statement(WriteLock &lock, std::string_view label)
    : Statement(lock.connection(), label, true)
{
}

Statement::Statement(SqliteConnection &connection, std::string_view label, bool mayWrite,
                     const std::vector<std::string_view> &parts)
    : m_connection(&connection)
{
    const SqlCatalog &catalog = SqlCatalog::embedded();
    std::string key(label);
    for (const std::string_view part : parts)
        key.append("+").append(part);
    const std::string *plain = catalog.statement(label);
    const std::string sql =
        parts.empty() ? (plain ? *plain : std::string()) : catalog.compose(label, parts);
    if (sql.empty()) {
        m_trouble = Error{ErrorCode::DatabaseTrouble, "there is no statement " + asText(key),
                          connection.path()};
        return;
    }
    auto lent = connection.lend(key, sql);
    if (!lent) {
        m_trouble = lent.error();
        return;
    }
    m_prepared = std::move(*lent);
    m_bound.assign(std::size_t(sqlite3_bind_parameter_count(m_prepared->handle)), false);
    if (!mayWrite && !sqlite3_stmt_readonly(m_prepared->handle))
        m_trouble = Error{ErrorCode::DatabaseTrouble,
                          asText(key) + " changes rows and needs a transaction", connection.path()};
}

Statement::~Statement()
{
    if (m_prepared)
        m_connection->giveBack(std::move(m_prepared));
}

int Statement::parameter(const char *name)
{
    if (m_trouble)
        return 0;
    rewind();
    const QByteArray full = QByteArray(":") + name;
    const int index = sqlite3_bind_parameter_index(m_prepared->handle, full.constData());
    if (index == 0)
        refuse(name, "is not a parameter");
    else
        m_bound[std::size_t(index - 1)] = true;
    return index;
}

int Statement::column(const char *name) const
{
    if (!m_prepared)
        return -1;
    const auto &columns = m_prepared->columns;
    const auto found = std::find(columns.begin(), columns.end(), name);
    if (found == columns.end()) {
        refuse(name, "is not a column");
        return -1;
    }
    return int(found - columns.begin());
}

void Statement::refuse(const char *column, const QString &what) const
{
    if (!m_trouble)
        m_trouble = Error{ErrorCode::DatabaseTrouble,
                          QString("the records hold something unreadable: %1 of %2 %3")
                              .arg(QString::fromUtf8(column),
                                   asText(m_prepared ? m_prepared->label : std::string()), what),
                          m_connection->path()};
}

void Statement::rewind()
{
    if (m_stepped)
        sqlite3_reset(m_prepared->handle);
    m_stepped = false;
}

void Statement::checkBindings()
{
    const auto missing = std::find(m_bound.begin(), m_bound.end(), false);
    if (!m_trouble && missing != m_bound.end())
        refuse(sqlite3_bind_parameter_name(m_prepared->handle, int(missing - m_bound.begin()) + 1),
               "is not bound");
}

Statement &Statement::bind(const char *name, const QString &value)
{
    return bindBytes(name, value.toUtf8());
}

Statement &Statement::bind(const char *name, double value)
{
    if (const int index = parameter(name))
        sqlite3_bind_double(m_prepared->handle, index, value);
    return *this;
}

Statement &Statement::bindInteger(const char *name, qint64 value)
{
    if (const int index = parameter(name))
        sqlite3_bind_int64(m_prepared->handle, index, value);
    return *this;
}

Statement &Statement::bindNull(const char *name)
{
    if (const int index = parameter(name))
        sqlite3_bind_null(m_prepared->handle, index);
    return *this;
}

Statement &Statement::bindOrNull(const char *name, const QString &value)
{
    return value.isEmpty() ? bindNull(name) : bind(name, value);
}

Statement &Statement::bindJson(const char *name, const QJsonObject &value)
{
    return bindBytes(name, canonicalJson(value));
}

Statement &Statement::bindBytes(const char *name, const QByteArray &utf8)
{
    if (const int index = parameter(name)) {
        // constData() of an empty array is not null, so an empty text does not become NULL.
        if (sqlite3_bind_text64(m_prepared->handle, index, utf8.constData(),
                                sqlite3_uint64(utf8.size()), SQLITE_TRANSIENT,
                                SQLITE_UTF8) != SQLITE_OK)
            m_trouble = m_connection->lastError(asText(m_prepared->label));
    }
    return *this;
}

Statement &Statement::bindMoment(const QByteArray &name, const Moment &value)
{
    bind(QByteArray(name + "_utc").constData(), value.storedText());
    return bind(QByteArray(name + "_offset").constData(), value.offsetSeconds);
}

Result<bool> Statement::next()
{
    if (!m_trouble && !m_stepped) {
        checkBindings();
        if (const auto may = m_connection->mayStart(); !may && !m_trouble)
            m_trouble = may.error();
    }
    if (m_trouble)
        return failure(*m_trouble);
    m_stepped = true;
    const int code = sqlite3_step(m_prepared->handle);
    if (code == SQLITE_ROW)
        return true;
    if (code != SQLITE_DONE) {
        m_trouble = m_connection->lastError(asText(m_prepared->label));
        return failure(*m_trouble);
    }
    rewind();
    return false;
}

Result<qint64> Statement::run()
{
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto more, next());
        if (!more)
            return sqlite3_changes64(m_connection->handle());
    }
}

Result<qint64> Statement::insert()
{
    LOOPWRIGHT_TRY(run());
    return sqlite3_last_insert_rowid(m_connection->handle());
}

bool Statement::isNull(const char *name) const
{
    const int index = column(name);
    return index < 0 || sqlite3_column_type(m_prepared->handle, index) == SQLITE_NULL;
}

QByteArray Statement::bytes(const char *name) const
{
    const int index = column(name);
    if (index < 0)
        return {};
    const auto *text =
        reinterpret_cast<const char *>(sqlite3_column_text(m_prepared->handle, index));
    return QByteArray(text, sqlite3_column_bytes(m_prepared->handle, index));
}

QStringList Statement::columnNames() const
{
    QStringList names;
    if (m_prepared)
        for (const std::string &column : m_prepared->columns)
            names << QString::fromStdString(column);
    return names;
}

QString Statement::text(const char *name) const
{
    const int index = column(name);
    if (index < 0)
        return {};
    const auto *text =
        reinterpret_cast<const char *>(sqlite3_column_text(m_prepared->handle, index));
    return textFromUtf8({text, sqlite3_column_bytes(m_prepared->handle, index)});
}

qint64 Statement::integer(const char *name) const
{
    const int index = column(name);
    return index < 0 ? 0 : sqlite3_column_int64(m_prepared->handle, index);
}

double Statement::real(const char *name) const
{
    const int index = column(name);
    return index < 0 ? 0 : sqlite3_column_double(m_prepared->handle, index);
}

QJsonObject Statement::json(const char *name) const
{
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(withMarksKept(bytes(name)), &error);
    if (error.error != QJsonParseError::NoError || !document.isObject())
        refuse(name, "is no JSON object");
    return document.object();
}

Moment Statement::moment(const QByteArray &name) const
{
    const QByteArray utc(name + "_utc");
    auto found = Moment::parse(text(utc.constData()));
    if (!found) {
        refuse(utc.constData(), "is no time");
        return {};
    }
    found->offsetSeconds = int(integer(QByteArray(name + "_offset").constData()));
    return *found;
}

std::optional<QString> Statement::optionalText(const char *name) const
{
    return isNull(name) ? std::nullopt : std::optional(text(name));
}

std::optional<qint64> Statement::optionalInteger(const char *name) const
{
    return isNull(name) ? std::nullopt : std::optional(integer(name));
}

Result<QStringList> texts(Statement &statement, const char *column)
{
    LOOPWRIGHT_ASSIGN(const auto found,
                      rows(statement, [column](const Statement &row) { return row.text(column); }));
    return QStringList(found.begin(), found.end());
}

Result<QMap<QString, QString>> firstRowAsTexts(Statement &statement)
{
    QMap<QString, QString> texts;
    LOOPWRIGHT_TRY(firstRow(statement, [&texts](const Statement &row) {
        for (const QString &column : row.columnNames())
            texts.insert(column, row.text(column.toLatin1().constData()));
        return true;
    }));
    return texts;
}

} // namespace loopwright
