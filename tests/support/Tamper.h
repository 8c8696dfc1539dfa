#pragma once
// What another program does to a database: edits the file itself, past every trigger, and leaves no
// trace in the schema.

#include <QFile>
#include <QList>
#include <QString>

#include <memory>
#include <sqlite3.h>

namespace loopwright {

class ForeignProgram
{
public:
    explicit ForeignProgram(const QString &path)
    {
        if (sqlite3_open(QFile::encodeName(path).constData(), &m_handle) != SQLITE_OK)
            qFatal("%s cannot be opened", qPrintable(path));
    }
    ~ForeignProgram() { sqlite3_close(m_handle); }
    ForeignProgram(const ForeignProgram &) = delete;
    ForeignProgram &operator=(const ForeignProgram &) = delete;

    void run(const QByteArray &sql)
    {
        char *message = nullptr;
        if (sqlite3_exec(m_handle, sql.constData(), nullptr, nullptr, &message) != SQLITE_OK)
            qFatal("%s: %s", sql.constData(), message);
    }
    QList<QByteArray> column(const QByteArray &sql)
    {
        QList<QByteArray> found;
        const auto take = [](void *list, int, char **values, char **) {
            *static_cast<QList<QByteArray> *>(list) << QByteArray(values[0]);
            return 0;
        };
        if (sqlite3_exec(m_handle, sql.constData(), take, &found, nullptr) != SQLITE_OK)
            qFatal("%s: %s", sql.constData(), sqlite3_errmsg(m_handle));
        return found;
    }

private:
    sqlite3 *m_handle = nullptr;
};

/// Runs `sql` on the file with no trigger, reference or check in the way; the triggers come back.
inline void tamper(const QString &path, const QByteArray &sql)
{
    ForeignProgram program(path);
    program.run("PRAGMA foreign_keys = OFF; PRAGMA ignore_check_constraints = ON");
    const auto triggers = program.column("SELECT sql FROM sqlite_schema WHERE type = 'trigger'");
    for (const QByteArray &name :
         program.column("SELECT name FROM sqlite_schema WHERE type = 'trigger'"))
        program.run("DROP TRIGGER " + name);
    program.run(sql);
    for (const QByteArray &trigger : triggers)
        program.run(trigger);
}

} // namespace loopwright
