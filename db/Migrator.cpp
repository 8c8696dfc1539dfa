#include "db/Migrator.h"

#include "db/SqlCatalog.h"
#include "db/SqlScript.h"
#include "db/SqliteConnection.h"

#include <QRegularExpression>

namespace loopwright {

namespace {

Result<Migration> readMigration(const QString &name, const QByteArray &script)
{
    static const QRegularExpression namePattern(R"(\A(\d{4})_[a-z0-9_]+\.sql\z)");
    static const QRegularExpression readable(R"((?m)^-- readable-from: (\d{4})$)");
    const auto number = namePattern.match(name);
    const auto readableFrom = readable.match(QString::fromUtf8(script));
    if (!number.hasMatch() || !readableFrom.hasMatch())
        return failure(ErrorCode::DatabaseTrouble,
                       "a migration needs a name like 0001_what.sql and a readable-from line",
                       name);
    return Migration{number.captured(1).toInt(), readableFrom.captured(1).toInt(), name, script};
}

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

} // namespace

Result<Migrator> Migrator::embedded()
{
    std::vector<Migration> migrations;
    for (const QString &file : embeddedSqlFiles("migrations")) {
        LOOPWRIGHT_ASSIGN(const auto migration,
                          readMigration(file, embeddedSql("migrations/" + file)));
        migrations.push_back(migration);
    }
    return of(std::move(migrations));
}

Result<Migrator> Migrator::of(std::vector<Migration> migrations)
{
    for (std::size_t i = 0; i < migrations.size(); ++i)
        if (migrations[i].number != int(i) + 1)
            return failure(ErrorCode::DatabaseTrouble,
                           QString("migration %1 is missing").arg(i + 1), migrations[i].name);
    Migrator migrator;
    migrator.m_migrations = std::move(migrations);
    return migrator;
}

Result<Migrator> Migrator::upTo(int number) const
{
    return of({m_migrations.begin(), m_migrations.begin() + number});
}

Result<Migrator::Outcome> Migrator::look(SqliteConnection &connection) const
{
    LOOPWRIGHT_ASSIGN(const auto version, connection.number("PRAGMA user_version"));
    if (version == 0)
        return Outcome::Created;
    if (version < newest())
        return Outcome::Older;
    if (version == newest())
        return Outcome::Current;
    const auto readableFrom =
        connection.number("SELECT value FROM meta WHERE key = 'readable_from'");
    const bool readable = readableFrom && *readableFrom > 0 && *readableFrom <= newest();
    return readable ? Outcome::NewerReadable : Outcome::NewerUnreadable;
}

Result<Migrator::Outcome> Migrator::apply(SqliteConnection &connection,
                                          const std::function<Result<void>(int)> &beforeFirst) const
{
    const auto seen = look(connection);
    if (!seen || (*seen != Outcome::Created && *seen != Outcome::Older))
        return seen;
    LOOPWRIGHT_ASSIGN(const auto version, connection.number("PRAGMA user_version"));
    if (*seen == Outcome::Older)
        LOOPWRIGHT_TRY(beforeFirst(int(version) + 1));
    bool applied = false;
    for (const Migration &migration : m_migrations) {
        if (migration.number <= version)
            continue;
        LOOPWRIGHT_ASSIGN(const auto done, applyOne(connection, migration));
        applied = applied || done;
    }
    if (!applied)
        return Outcome::Current;
    return *seen == Outcome::Created ? Outcome::Created : Outcome::Upgraded;
}

Result<bool> Migrator::applyOne(SqliteConnection &connection, const Migration &migration) const
{
    LOOPWRIGHT_ASSIGN(const auto pieces, splitSqlScript(migration.script, migration.name));
    // A migration that builds a table anew drops the old one; the references are checked at the
    // end.
    LOOPWRIGHT_TRY(connection.run("PRAGMA foreign_keys = OFF", "foreign keys"));
    const Step step(connection);
    LOOPWRIGHT_TRY(connection.run("BEGIN IMMEDIATE", "migration"));
    LOOPWRIGHT_ASSIGN(const auto version, connection.number("PRAGMA user_version"));
    if (version >= migration.number)
        return false; // another program was faster
    for (const SqlPiece &piece : pieces) {
        if (auto done = connection.run(piece.sql, migration.name); !done) {
            Error error = done.error();
            error.message += QString(" (%1 line %2)").arg(migration.name).arg(piece.line);
            return failure(error);
        }
    }
    LOOPWRIGHT_TRY(checkForeignKeys(connection, migration.name));
    LOOPWRIGHT_TRY(connection.run(QString("PRAGMA user_version = %1; PRAGMA application_id = %2;"
                                          "INSERT INTO meta (key, value)"
                                          " VALUES ('readable_from', %3)"
                                          " ON CONFLICT (key) DO UPDATE SET value = excluded.value")
                                      .arg(migration.number)
                                      .arg(applicationId)
                                      .arg(migration.readableFrom)
                                      .toUtf8(),
                                  migration.name));
    LOOPWRIGHT_TRY(connection.run("COMMIT", migration.name));
    return true;
}

} // namespace loopwright
