// The form of records in a file: how migrations are applied, and what the schema must be.

#include "db/Migrator.h"
#include "db/SchemaFaults.h"
#include "db/SqlScript.h"
#include "db/SqliteConnection.h"

#include <QMutex>

namespace loopwright {

namespace {

/// Rolls back on every way out that did not commit.
class Step
{
public:
    explicit Step(SqliteConnection &connection)
        : m_connection(connection)
    {
    }
    ~Step()
    {
        if (m_connection.inTransaction())
            (void)m_connection.run("ROLLBACK", "rollback");
        (void)m_connection.run("PRAGMA foreign_keys = ON", "foreign keys");
    }
    Step(const Step &) = delete;
    Step &operator=(const Step &) = delete;

private:
    SqliteConnection &m_connection;
};

Result<void> checkForeignKeys(SqliteConnection &connection, const QString &name)
{
    LOOPWRIGHT_ASSIGN(const auto broken,
                      connection.text("SELECT \"table\" FROM pragma_foreign_key_check LIMIT 1"));
    if (!broken.isEmpty())
        return failure(
            ErrorCode::DatabaseTrouble,
            QString("%1 would leave rows of %2 without what they refer to").arg(name, broken),
            connection.path());
    return {};
}

/// What the first migrations make of an empty database. Made once for each form.
Result<Schema> schemaMadeBy(const Migrator &migrator, int version)
{
    static QMutex mutex;
    static QMap<int, Schema> made;
    const QMutexLocker locker(&mutex);
    if (const auto known = made.constFind(version); known != made.constEnd())
        return *known;
    LOOPWRIGHT_ASSIGN(const auto first, migrator.upTo(version));
    LOOPWRIGHT_ASSIGN(const auto fresh,
                      SqliteConnection::open(":memory:", SqliteConnection::Mode::ReadWrite));
    LOOPWRIGHT_TRY(first.apply(*fresh, [](int) { return Result<void>(); }));
    LOOPWRIGHT_ASSIGN(const auto schema, readSchema(*fresh));
    made.insert(version, schema);
    return schema;
}

} // namespace

Result<qint64> SqliteConnection::form()
{
    return number("PRAGMA user_version");
}

Result<bool> SqliteConnection::migrate(const Migration &migration)
{
    LOOPWRIGHT_ASSIGN(const auto pieces, splitSqlScript(migration.script, migration.name));
    // A migration that builds a table anew drops the old one; the references are checked at the
    // end.
    LOOPWRIGHT_TRY(run("PRAGMA foreign_keys = OFF", "foreign keys"));
    const Step step(*this);
    LOOPWRIGHT_TRY(run("BEGIN IMMEDIATE", "migration"));
    LOOPWRIGHT_ASSIGN(const auto version, form());
    if (version >= migration.number)
        return false; // another program was faster
    for (const SqlPiece &piece : pieces) {
        if (auto done = run(piece.sql, migration.name); !done) {
            Error error = done.error();
            error.message += QString(" (%1 line %2)").arg(migration.name).arg(piece.line);
            return failure(error);
        }
    }
    LOOPWRIGHT_TRY(checkForeignKeys(*this, migration.name));
    LOOPWRIGHT_TRY(run(QString("PRAGMA user_version = %1; PRAGMA application_id = %2;"
                               "INSERT INTO meta (key, value)"
                               " VALUES ('readable_from', %3)"
                               " ON CONFLICT (key) DO UPDATE SET value = excluded.value")
                           .arg(migration.number)
                           .arg(applicationId)
                           .arg(migration.readableFrom)
                           .toUtf8(),
                       migration.name));
    LOOPWRIGHT_TRY(run("COMMIT", migration.name));
    return true;
}

Result<QStringList> SqliteConnection::schemaFaults()
{
    LOOPWRIGHT_ASSIGN(const auto migrator, Migrator::embedded());
    LOOPWRIGHT_ASSIGN(const auto version, form());
    if (version < 1 || version > migrator.newest())
        return QStringList{QString("the form of the records is told as %1").arg(version)};
    LOOPWRIGHT_ASSIGN(const auto wanted, schemaMadeBy(migrator, int(version)));
    LOOPWRIGHT_ASSIGN(const auto there, readSchema(*this));
    return schemaDifferences(wanted, there);
}

} // namespace loopwright
