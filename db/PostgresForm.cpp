#include "db/PostgresForm.h"

#include "db/SchemaFaults.h"
#include "db/Sha256.h"
#include "db/SqlCatalog.h"

namespace loopwright {

namespace {

const QString mark = QStringLiteral("Loopwright form ");

/// A file of the program holds a line for each thing that the migrations make: digest and name.
Schema schemaOfForm(qint64 form)
{
    Schema schema;
    const QString name = QString("postgresql/schema-%1.txt").arg(form, 4, 10, QChar('0'));
    for (const QByteArray &line : embeddedSql(name).split('\n'))
        if (const auto space = line.indexOf(' '); space > 0)
            schema.insert(line.mid(space + 1), line.left(space));
    return schema;
}

} // namespace

QByteArray schemaDigest(QByteArrayView told)
{
    constexpr qsizetype digits = 16;
    Sha256 sha;
    return view(sha.hexOf(told)).first(digits).toByteArray();
}

Result<qint64> PostgresConnection::form()
{
    LOOPWRIGHT_ASSIGN(const auto told,
                      text("SELECT obj_description(to_regclass('public.meta'), 'pg_class')"));
    if (told.startsWith(mark))
        return told.mid(mark.size()).toLongLong();
    LOOPWRIGHT_ASSIGN(const auto tables, number("SELECT count(*) FROM pg_class WHERE relkind = 'r'"
                                                " AND relnamespace = 'public'::regnamespace"));
    if (tables > 0)
        return failure(ErrorCode::DatabaseTrouble, "is a database of another program", path());
    return 0;
}

Result<bool> PostgresConnection::migrate(const Migration &migration)
{
    LOOPWRIGHT_TRY(beginChange());
    const auto applied = [&]() -> Result<bool> {
        LOOPWRIGHT_ASSIGN(const auto version, form());
        if (version >= migration.number)
            return false; // another program was faster
        LOOPWRIGHT_TRY(run(migration.script, migration.name));
        LOOPWRIGHT_TRY(run(QString("INSERT INTO meta (key, value) VALUES ('readable_from', '%1')"
                                   " ON CONFLICT (key) DO UPDATE SET value = excluded.value;"
                                   "COMMENT ON TABLE meta IS '%2%3'")
                               .arg(migration.readableFrom)
                               .arg(mark)
                               .arg(migration.number)
                               .toUtf8(),
                           migration.name));
        LOOPWRIGHT_TRY(commit());
        return true;
    }();
    if (!applied || !*applied)
        rollBack();
    return applied;
}

Result<QStringList> PostgresConnection::schemaFaults()
{
    LOOPWRIGHT_ASSIGN(const auto number, form());
    const Schema wanted = schemaOfForm(number);
    if (wanted.isEmpty())
        return QStringList{QString("the form of the records is told as %1").arg(number)};
    LOOPWRIGHT_ASSIGN(auto there, readSchema(*this));
    for (QByteArray &told : there)
        told = schemaDigest(told);
    return schemaDifferences(wanted, there);
}

Result<Migrator::Outcome> bringServerUpToDate(PostgresConnection &connection, bool mayWrite,
                                              const Migrator &migrator)
{
    using Outcome = Migrator::Outcome;
    LOOPWRIGHT_ASSIGN(const auto found, migrator.look(connection));
    if (found == Outcome::Current || (found == Outcome::NewerReadable && !mayWrite))
        return found;
    if (found == Outcome::NewerReadable || found == Outcome::NewerUnreadable)
        return failure(ErrorCode::DatabaseTrouble,
                       "was written by a newer version of this program, and was left as it is",
                       connection.path());
    LOOPWRIGHT_ASSIGN(const auto mayMake,
                      connection.text("SELECT has_schema_privilege('public', 'CREATE')"));
    if (!mayWrite || mayMake != u"t")
        return failure(ErrorCode::DatabaseTrouble,
                       found == Outcome::Created
                           ? "holds no records yet; the owner of the database opens it first"
                           : "is of an older form; the owner of the database brings it up to date",
                       connection.path());
    return migrator.apply(connection, [](int) { return Result<void>(); });
}

} // namespace loopwright
