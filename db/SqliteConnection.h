#pragma once
// One connection to one SQLite file. Qt's driver opens and closes it; everything else goes through
// SQLite's own C interface on the driver's handle, which is four times as fast for many rows and
// tells every failure apart.

#include "db/Connection.h"

#include <QElapsedTimer>
#include <QSqlDatabase>

struct sqlite3;

namespace loopwright {

class SqliteConnection final : public Connection
{
public:
    enum class Mode
    {
        ReadWrite, ///< made if it is missing; its folder must be there
        ReadOnly,
        Immutable, ///< read-only, in a folder that cannot be written: no locks, no journal
    };

    /// Opens the file; nothing is read from it yet. ":memory:" is a database that is gone at the
    /// end.
    static Result<std::unique_ptr<SqliteConnection>> open(const QString &path, Mode mode);
    ~SqliteConnection() override;

    sqlite3 *handle() const { return m_handle; }

    const SqlCatalog &catalog() const override;
    Result<void> run(const QByteArray &sql, const QString &doing) override;
    Result<QStringList> texts(const QByteArray &sql) override;
    Result<qint64> form() override;
    Result<bool> migrate(const Migration &migration) override;
    Result<QStringList> schemaFaults() override;
    Result<QStringList> damagedPages() override;
    Result<QStringList> brokenReferences() override;
    Result<void> keepStatistics(bool all) override;
    Result<qint64> dataVersion() override;
    Result<void> forgetPages() override;
    bool inTransaction() const override;
    Result<void> beginChange() override;
    Result<void> commit() override;
    Result<void> beginReading() override;
    void watchRows(RowNote note) override;
    Result<void> tellWrittenRows() override { return {}; }
    qint64 rowsChanged() const override;

    Error lastError(const QString &doing) const;

protected:
    Result<std::unique_ptr<PreparedStatement>> prepare(std::string_view label,
                                                       const std::string &sql) override;
    void breakOff() override;

private:
    SqliteConnection(const QString &path, QString name);
    /// SQLite's busy handler: `tries` counts within one wait. Nonzero: try again.
    static int waitForLock(void *self, int tries);

    QString m_name; ///< generated; Qt keeps connections by name
    QSqlDatabase m_driver;
    sqlite3 *m_handle = nullptr;
    RowNote m_rowNote;
    QElapsedTimer m_waitedSince;
    bool m_waitTold = false;
};

} // namespace loopwright
