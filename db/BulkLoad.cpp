#include "db/BulkLoad.h"

#include "db/Database.h"
#include "db/SqliteConnection.h"

namespace loopwright {

namespace {

// In KiB, negative as SQLite wants it: as many indexes as there are grow at all ends at once.
const QByteArray manyPages = "PRAGMA cache_size = -1500000";
const QByteArray usualPages = "PRAGMA cache_size = -65536";

Result<void> leaveWriteAheadLog(const Database &database)
{
    if (!database.isFile())
        return {};
    SqliteConnection &connection = database.file();
    LOOPWRIGHT_ASSIGN(const auto mode, connection.text("PRAGMA journal_mode = DELETE"));
    if (mode == u"wal")
        return failure(ErrorCode::DatabaseTrouble, "another program has the database open",
                       connection.path());
    return connection.run(manyPages, "load");
}

} // namespace

BulkLoad::BulkLoad(Database &database)
    : m_database(database)
    , m_result(leaveWriteAheadLog(database))
{
}

BulkLoad::~BulkLoad()
{
    if (!m_database.isFile())
        return;
    // If it fails the database is opened with the other journal until it is opened anew.
    [[maybe_unused]] const auto set =
        m_database.file().run("PRAGMA journal_mode = WAL; " + usualPages, "load");
}

} // namespace loopwright
