#pragma once
// An office whose records lie on the test server, for tests of what goes to the server and back.

#include "db/PersonStore.h"
#include "db/PostgresConnection.h"
#include "tests/support/Office.h"
#include "tests/support/Records.h"

namespace loopwright::jobs {

class ServerOffice
{
protected:
    void startOffice() { m_records = office(newServerRecords()); }
    Records &records() { return *m_records; }
    Database &database() { return m_records->database(); }
    PostgresConnection &connection()
    {
        return dynamic_cast<PostgresConnection &>(database().connection());
    }
    /// How often the server was waited for.
    qint64 trips() { return connection().session().trips(); }
    std::optional<Person> person(const QString &key)
    {
        const auto found = PersonStore(database()).find(key);
        if (!found)
            qFatal("%s", qPrintable(found.error().text()));
        return *found;
    }

private:
    std::unique_ptr<Records> m_records;
};

} // namespace loopwright::jobs
