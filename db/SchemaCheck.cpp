#include "db/SchemaCheck.h"

#include "db/Migrator.h"
#include "db/RawStatement.h"

#include <QMap>
#include <QMutex>

namespace loopwright {

namespace {

/// By "trigger fact_no_update": table and text.
using Schema = QMap<QString, QByteArray>;

Result<Schema> schemaOf(SqliteConnection &connection)
{
    LOOPWRIGHT_ASSIGN(auto statement, RawStatement::of(connection, "schema.all"));
    Schema schema;
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto more, statement.next());
        if (!more)
            return schema;
        schema.insert(QString::fromUtf8(statement.bytes(0)), statement.bytes(1).toByteArray());
    }
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
    LOOPWRIGHT_ASSIGN(const auto schema, schemaOf(*fresh));
    made.insert(version, schema);
    return schema;
}

} // namespace

Result<QStringList> schemaFaults(SqliteConnection &connection)
{
    LOOPWRIGHT_ASSIGN(const auto migrator, Migrator::embedded());
    LOOPWRIGHT_ASSIGN(const auto version, connection.number("PRAGMA user_version"));
    if (version < 1 || version > migrator.newest())
        return QStringList{QString("the form of the records is told as %1").arg(version)};
    LOOPWRIGHT_ASSIGN(const auto wanted, schemaMadeBy(migrator, int(version)));
    LOOPWRIGHT_ASSIGN(const auto there, schemaOf(connection));
    QStringList faults;
    for (auto it = wanted.begin(); it != wanted.end(); ++it)
        if (!there.contains(it.key()))
            faults << QString("the %1 is missing").arg(it.key());
        else if (there.value(it.key()) != it.value())
            faults << QString("the %1 was changed").arg(it.key());
    for (auto it = there.begin(); it != there.end(); ++it)
        if (!wanted.contains(it.key()))
            faults << QString("the %1 was put in").arg(it.key());
    return faults;
}

} // namespace loopwright
