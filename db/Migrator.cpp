#include "db/Migrator.h"

#include "db/Connection.h"
#include "db/SqlCatalog.h"

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

} // namespace

Result<Migrator> Migrator::embedded(const QString &folder)
{
    std::vector<Migration> migrations;
    for (const QString &file : embeddedSqlFiles(folder)) {
        LOOPWRIGHT_ASSIGN(const auto migration,
                          readMigration(file, embeddedSql(folder + '/' + file)));
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

Result<Migrator::Outcome> Migrator::look(Connection &connection) const
{
    LOOPWRIGHT_ASSIGN(const auto version, connection.form());
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

Result<Migrator::Outcome> Migrator::apply(Connection &connection,
                                          const std::function<Result<void>(int)> &beforeFirst) const
{
    const auto seen = look(connection);
    if (!seen || (*seen != Outcome::Created && *seen != Outcome::Older))
        return seen;
    LOOPWRIGHT_ASSIGN(const auto version, connection.form());
    if (*seen == Outcome::Older)
        LOOPWRIGHT_TRY(beforeFirst(int(version) + 1));
    bool applied = false;
    for (const Migration &migration : m_migrations) {
        if (migration.number <= version)
            continue;
        LOOPWRIGHT_ASSIGN(const auto done, connection.migrate(migration));
        applied = applied || done;
    }
    if (!applied)
        return Outcome::Current;
    return *seen == Outcome::Created ? Outcome::Created : Outcome::Upgraded;
}

} // namespace loopwright
