#pragma once
// What another program does to the records meanwhile.

#include <QString>

#include <sqlite3.h>

namespace loopwright {

/// A lock that another program holds while this lives: nobody else writes.
class Lock
{
public:
    explicit Lock(const QString &database)
    {
        if (sqlite3_open(database.toUtf8().constData(), &m_handle) != SQLITE_OK ||
            sqlite3_exec(m_handle, "BEGIN EXCLUSIVE", nullptr, nullptr, nullptr) != SQLITE_OK)
            qFatal("cannot lock: %s", sqlite3_errmsg(m_handle));
    }
    ~Lock() { sqlite3_close(m_handle); }
    Lock(const Lock &) = delete;
    Lock &operator=(const Lock &) = delete;

private:
    sqlite3 *m_handle = nullptr;
};

} // namespace loopwright
