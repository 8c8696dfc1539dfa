#pragma once
// Brings a database to the form that this program knows. Migrations are numbered without gaps,
// forward only, each in one transaction with its number. The table `meta`
// holds under 'readable_from' the oldest program form that may still read the result.

#include "core/base/Result.h"

#include <QByteArray>
#include <QString>

#include <functional>
#include <vector>

namespace loopwright {

class Connection;

struct Migration
{
    int number = 0;
    int readableFrom = 0; ///< from the script's line `-- readable-from: NNNN`
    QString name;         ///< of the file, e.g. "0001_initial.sql"
    QByteArray script;
};

class Migrator
{
public:
    enum class Outcome
    {
        Created,         ///< the database was empty
        Current,         ///< nothing was to be done
        Upgraded,        ///< one or more migrations were applied
        Older,           ///< behind this program, and may not be changed now (read-only)
        NewerReadable,   ///< made by a later program; may be read, not written
        NewerUnreadable, ///< made by a later program and not to be touched
    };

    /// The migrations that are built into this program, of db/ or of a folder of it for another
    /// engine, or others. Numbers must run from 1.
    static Result<Migrator> embedded(const QString &folder = QStringLiteral("migrations"));
    static Result<Migrator> of(std::vector<Migration> migrations);

    /// The first ones alone.
    Result<Migrator> upTo(int number) const;

    int newest() const { return int(m_migrations.size()); }
    /// What would have to be done; changes nothing. Created means: would be created, and so on.
    Result<Outcome> look(Connection &connection) const;
    /// Applies what is missing. `beforeFirst(number)` is called once before the first migration of
    /// a database that is not empty; if it fails, nothing is applied. Another program may do the
    /// same at the same time: the second finds it done.
    Result<Outcome> apply(Connection &connection,
                          const std::function<Result<void>(int)> &beforeFirst) const;

private:
    std::vector<Migration> m_migrations;
};

/// Stands in the header of every database of this program (PRAGMA application_id).
constexpr qint64 applicationId = 0x4c705772; // "LpWr"
/// In its place in the header of a backup, which nobody works in.
constexpr qint64 backupApplicationId = 0x4c705762; // "LpWb"

} // namespace loopwright
