#pragma once
// Where tests keep the records that they make: in memory, or in a new database on a server, if
// LOOPWRIGHT_TEST_SERVER is the address of one (tests/support/server).

#include "db/Database.h"
#include "db/PostgresConnection.h"
#include "db/SqlCatalog.h"

#include <QUrl>
#include <QUuid>

namespace loopwright {

inline QString testServer()
{
    return qEnvironmentVariable("LOOPWRIGHT_TEST_SERVER");
}

/// The address with another database.
inline QString onTestServer(const QString &database)
{
    return testServer().replace("/postgres?", '/' + database + '?');
}

inline void runOnTestServer(const QByteArray &sql)
{
    const auto server = PostgresConnection::open(testServer());
    if (!server)
        qFatal("%s", qPrintable(server.error().text()));
    for (const QByteArray &each : {QByteArray("SET default_transaction_read_only = off"), sql})
        if (const auto done = (*server)->run(each, "test"); !done)
            qFatal("%s", qPrintable(done.error().text()));
}

/// The address of a new database without tables.
inline QString newServerDatabase(const QByteArray &how = "TEMPLATE template0")
{
    const QString name = "t" + QUuid::createUuid().toString(QUuid::Id128);
    runOnTestServer("CREATE DATABASE " + name.toLatin1() + ' ' + how);
    return onTestServer(name);
}

/// What somebody does to the records past the program.
inline Result<void> editPast(const Database &database, const QByteArray &sql)
{
    if (database.isFile())
        return database.connection().run(sql, "test");
    const auto done = database.connection().run("BEGIN READ WRITE; " + sql + "; COMMIT", "test");
    database.connection().rollBack(); // if it was refused
    return done;
}

/// The address of new records on the server, drawn anew in a copy of those that this program made
/// first: making the tables takes ten times as long.
inline QString newServerRecords()
{
    static const QByteArray first = [] {
        const QString address = newServerDatabase();
        if (const auto made = Database::open(address); !made)
            qFatal("%s", qPrintable(made.error().text()));
        return QUrl(address).path().mid(1).toLatin1();
    }();
    const QString address = newServerDatabase("TEMPLATE " + first);
    const auto made = Database::open(address);
    if (!made)
        qFatal("%s", qPrintable(made.error().text()));
    const auto drawn = editPast(
        *made, "UPDATE meta SET value = CAST(gen_random_uuid() AS TEXT) WHERE key = 'database';" +
                   QByteArray::fromStdString(
                       *made->connection().catalog().statement("meta.draw_station")));
    if (!drawn)
        qFatal("%s", qPrintable(drawn.error().text()));
    return address;
}

inline QString newPlace()
{
    return testServer().isEmpty() ? QStringLiteral(":memory:") : newServerRecords();
}

} // namespace loopwright
