#include "db/Statement.h"

#include "core/base/Json.h"
#include "core/base/TextForm.h"
#include "db/Connection.h"
#include "db/Database.h"
#include "db/SqlCatalog.h"
#include "db/WriteLock.h"

#include <QJsonDocument>

#include <algorithm>

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

Statement::Statement(Connection &connection, std::string_view label, bool mayWrite,
                     const std::vector<std::string_view> &parts)
    : m_connection(&connection)
{
    const SqlCatalog &catalog = connection.catalog();
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
    m_bound.assign(m_prepared->parameters().size(), false);
    if (!mayWrite && m_prepared->changesRows())
        m_trouble = Error{ErrorCode::DatabaseTrouble,
                          asText(key) + " changes rows and needs a transaction", connection.path()};
}

Statement::~Statement()
{
    if (m_prepared)
        m_connection->giveBack(std::move(m_prepared));
}

int Statement::placeOf(const char *name) const
{
    if (!m_prepared)
        return 0;
    const auto &names = m_prepared->parameters();
    const auto found = std::ranges::find(names, name);
    return found == names.end() ? 0 : int(found - names.begin()) + 1;
}

int Statement::parameter(const char *name)
{
    if (m_trouble)
        return 0;
    rewind();
    const int place = placeOf(name);
    if (place == 0)
        refuse(name, "is not a parameter");
    else
        m_bound[std::size_t(place - 1)] = true;
    return place;
}

int Statement::column(const char *name) const
{
    if (!m_prepared)
        return -1;
    const auto &columns = m_prepared->columns();
    const auto found = std::ranges::find(columns, name);
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
                                   asText(m_prepared ? m_prepared->label() : std::string()), what),
                          m_connection->path()};
}

void Statement::rewind()
{
    if (m_stepped)
        m_prepared->rewind();
    m_stepped = false;
}

void Statement::checkBindings()
{
    const auto missing = std::find(m_bound.begin(), m_bound.end(), false);
    if (!m_trouble && missing != m_bound.end())
        refuse((':' + m_prepared->parameters()[std::size_t(missing - m_bound.begin())]).c_str(),
               "is not bound");
}

Statement &Statement::bind(const char *name, const QString &value)
{
    return bindBytes(name, value.toUtf8());
}

Statement &Statement::bind(const char *name, double value)
{
    if (const int index = parameter(name))
        m_prepared->bind(index, value);
    return *this;
}

Statement &Statement::bindInteger(const char *name, qint64 value)
{
    if (const int index = parameter(name))
        m_prepared->bind(index, value);
    return *this;
}

Statement &Statement::bindNull(const char *name)
{
    if (const int index = parameter(name))
        m_prepared->bindNull(index);
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
    if (const int index = parameter(name))
        m_prepared->bind(index, QByteArrayView(utf8));
    return *this;
}

Statement &Statement::bindMoment(const QByteArray &name, const Moment &value)
{
    bind(QByteArray(name + "_utc").constData(), value.storedText());
    return bind(QByteArray(name + "_offset").constData(), value.offsetSeconds);
}

Result<void> Statement::mayRun()
{
    if (!m_trouble && !m_stepped) {
        checkBindings();
        if (const auto may = m_connection->mayStart(); !may && !m_trouble)
            m_trouble = may.error();
    }
    return m_trouble ? failure(*m_trouble) : Result<void>();
}

Result<bool> Statement::next()
{
    LOOPWRIGHT_TRY(mayRun());
    m_stepped = true;
    const auto more = m_prepared->step();
    if (!more) {
        m_trouble = more.error();
        return failure(*m_trouble);
    }
    if (!*more)
        rewind();
    return *more;
}

Result<qint64> Statement::run()
{
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto more, next());
        if (!more)
            return m_prepared->changed();
    }
}

Result<void> Statement::write()
{
    LOOPWRIGHT_TRY(mayRun());
    const auto written = m_prepared->write();
    if (!written)
        m_trouble = written.error();
    return written;
}

bool Statement::isNull(const char *name) const
{
    const int index = column(name);
    return index < 0 || m_prepared->type(index) == PreparedStatement::Type::Null;
}

QByteArray Statement::bytes(const char *name) const
{
    const int index = column(name);
    return index < 0 ? QByteArray() : m_prepared->text(index).toByteArray();
}

QStringList Statement::columnNames() const
{
    QStringList names;
    if (m_prepared)
        for (const std::string &column : m_prepared->columns())
            names << QString::fromStdString(column);
    return names;
}

QString Statement::text(const char *name) const
{
    const int index = column(name);
    return index < 0 ? QString() : textFromUtf8(m_prepared->text(index));
}

qint64 Statement::integer(const char *name) const
{
    const int index = column(name);
    return index < 0 ? 0 : m_prepared->integer(index);
}

double Statement::real(const char *name) const
{
    const int index = column(name);
    return index < 0 ? 0 : m_prepared->real(index);
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
