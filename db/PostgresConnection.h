#pragma once
// One connection to records that a PostgreSQL server keeps. Who writes holds an advisory lock, so
// that there is one writer at a time as with a file.

#include "db/Connection.h"
#include "db/PostgresSession.h"

namespace loopwright {

class PostgresConnection final : public Connection
{
public:
    /// Whether a path is the address of a server: it begins with postgresql:// or postgres://.
    static bool isAddress(const QString &path);
    /// Host, port and database of it: neither login nor password, wherever they stand.
    static QString shownAddress(const QString &address);
    /// Connects (PostgresSession::connect()). path() holds host, port and database alone.
    static Result<std::unique_ptr<PostgresConnection>> open(const QString &address);
    ~PostgresConnection() override { forgetStatements(); }

    const SqlCatalog &catalog() const override;
    Result<void> run(const QByteArray &sql, const QString &doing) override;
    Result<QStringList> texts(const QByteArray &sql) override;

    Result<qint64> form() override;
    Result<bool> migrate(const Migration &migration) override;
    Result<QStringList> schemaFaults() override;
    Result<QStringList> damagedPages() override { return QStringList(); }     // the server's care
    Result<QStringList> brokenReferences() override { return QStringList(); } // likewise
    Result<void> keepStatistics(bool all) override;
    Result<qint64> dataVersion() override;
    Result<void> forgetPages() override { return {}; }

    bool inTransaction() const override;
    Result<void> beginChange() override;
    Result<void> commit() override;
    void foresee(const std::function<void()> &reads) override;
    Result<void> beginReading() override;
    void rollBack() override;
    void watchRows(RowNote note) override { m_rowNote = std::move(note); }
    Result<void> tellWrittenRows() override;
    qint64 rowsChanged() const override { return m_session.rowsChanged(); }

    std::optional<ServerLogin> login() const override { return m_login; }
    /// Reads who is logged in, and gives the groups their rights where the owner finds that they
    /// have none. DatabaseTrouble for a login that belongs to none of them.
    Result<void> readLogin(bool mayWrite);

    PostgresSession &session() { return m_session; }

protected:
    Result<std::unique_ptr<PreparedStatement>> prepare(std::string_view label,
                                                       const std::string &sql) override;
    void breakOff() override;

private:
    PostgresConnection(const QString &path, const QByteArray &address);
    Result<void> makeRoles();
    /// Waits for the lock of who writes for so long.
    Result<void> tryToLock(int ms);

    PostgresSession m_session;
    RowNote m_rowNote;
    std::optional<ServerLogin> m_login;
};

} // namespace loopwright
