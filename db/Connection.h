#pragma once
// One connection to the records, whatever engine keeps them: prepared statements, lent out by
// label, and transactions. What an engine has of its own lies in files that are named after it.

#include "core/base/Result.h"
#include "core/office/Office.h"

#include <QByteArrayView>
#include <QStringList>

#include <atomic>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace loopwright {

class SqlCatalog;
struct Migration;

/// A statement that the engine has read. Parameters count from 1 and columns from 0. What is read
/// of a row is valid until the next step.
class PreparedStatement
{
public:
    /// As SQLite numbers them: they go into the seals of rows.
    enum class Type
    {
        Integer = 1,
        Real,
        Text,
        Blob,
        Null
    };

    PreparedStatement(std::string label, std::vector<std::string> parameters)
        : m_label(std::move(label))
        , m_parameters(std::move(parameters))
    {
    }
    virtual ~PreparedStatement() = default;
    PreparedStatement(const PreparedStatement &) = delete;
    PreparedStatement &operator=(const PreparedStatement &) = delete;

    const std::string &label() const { return m_label; }
    /// Names, without their colon.
    const std::vector<std::string> &parameters() const { return m_parameters; }
    /// Names; some engines tell them of a statement that has rows alone.
    virtual const std::vector<std::string> &columns() = 0;
    virtual bool changesRows() const = 0;

    virtual void bind(int parameter, qint64 value) = 0;
    virtual void bind(int parameter, double value) = 0;
    virtual void bind(int parameter, QByteArrayView utf8) = 0;
    virtual void bindNull(int parameter) = 0;

    /// True when there is a row, false at the end.
    virtual Result<bool> step() = 0;
    /// Of one that gives no rows: changes them, at the latest with what is asked next.
    virtual Result<void> write();
    /// How many rows it changed, once it has ended.
    virtual qint64 changed() const = 0;
    /// The next step begins anew, with the same values.
    virtual void rewind() = 0;
    /// Forgets the values too.
    virtual void clear() = 0;

    virtual Type type(int column) const = 0;
    virtual QByteArrayView text(int column) const = 0; ///< a number in digits
    virtual qint64 integer(int column) const = 0;      ///< true is 1
    virtual double real(int column) const = 0;

private:
    std::string m_label;
    std::vector<std::string> m_parameters;
};

/// Who is logged in on a server.
struct ServerLogin
{
    QString name;
    bool isOwner = false;     ///< of the tables, or may act as their owner
    std::optional<Role> role; ///< the highest of the groups that it belongs to
};

class Connection
{
public:
    /// How long a statement waits for another program's lock, unless setPatience.
    static constexpr int usualPatienceMs = 2500;

    virtual ~Connection() = default;
    Connection(const Connection &) = delete;
    Connection &operator=(const Connection &) = delete;

    /// Of the file, or host and name of the database; without a password.
    QString path() const { return m_path; }
    /// Nothing where the records are a file.
    virtual std::optional<ServerLogin> login() const { return std::nullopt; }
    /// The statements in the engine's words.
    virtual const SqlCatalog &catalog() const = 0;

    /// Runs one or several statements that give no rows.
    virtual Result<void> run(const QByteArray &sql, const QString &doing) = 0;
    /// First column of every row as text; of the first row as a number or text.
    virtual Result<QStringList> texts(const QByteArray &sql) = 0;
    Result<qint64> number(const QByteArray &sql);
    Result<QString> text(const QByteArray &sql);

    /// A prepared statement of this label: one that is idle, or a new one from `sql`.
    Result<std::unique_ptr<PreparedStatement>> lend(std::string_view label, const std::string &sql);
    void giveBack(std::unique_ptr<PreparedStatement> statement);

    /// The number of the newest migration that was applied; 0 if none was.
    virtual Result<qint64> form() = 0;
    /// Applies it in one transaction of its own, with its number. False if it was there already:
    /// another program was faster.
    virtual Result<bool> migrate(const Migration &migration) = 0;
    /// Each difference between what the migrations make and what is there, in one sentence.
    virtual Result<QStringList> schemaFaults() = 0;

    /// See Database.
    virtual Result<QStringList> damagedPages() = 0;
    virtual Result<QStringList> brokenReferences() = 0;
    virtual Result<void> keepStatistics(bool all) = 0;
    virtual Result<qint64> dataVersion() = 0;
    /// What is read next comes from where it is kept, not from what is remembered of it here.
    virtual Result<void> forgetPages() = 0;

    virtual bool inTransaction() const = 0;
    /// Takes the lock of who writes; all that follows is one change. DatabaseTrouble if somebody
    /// else holds it for longer than the patience.
    virtual Result<void> beginChange() = 0;
    /// Makes the change lasting. DiskTrouble and DatabaseTrouble say whether it may be there all
    /// the same.
    virtual Result<void> commit() = 0;
    /// `reads` asks what is asked right after it, and changes nothing: within a change, on an
    /// engine that is far away, it is gone through without answers first, and all of it asked at
    /// once.
    virtual void foresee(const std::function<void()> &reads) { (void)reads; }
    /// All that follows shows one moment.
    virtual Result<void> beginReading() = 0;
    virtual void rollBack();
    /// From now on `note` is told the table and the key of each row that is written; nothing ends
    /// it. Some engines tell at once, others when they are asked (tellWrittenRows).
    using RowNote = std::function<void(std::string_view table, qint64 id)>;
    virtual void watchRows(RowNote note) = 0;
    virtual Result<void> tellWrittenRows() = 0;
    /// Rows changed through it until now; less those that triggers changed on some engines.
    virtual qint64 rowsChanged() const = 0;

    /// See Database.
    int setPatience(int ms) { return std::exchange(m_patienceMs, ms); }
    void whenWaiting(std::function<void()> tell) { m_waiting = std::move(tell); }
    /// See Database. Engines forget an interrupt that comes between two statements.
    void interrupt();
    void resume() { m_interrupted = false; }
    /// Refused, as long as an interrupt stands.
    Result<void> mayStart() const;

protected:
    explicit Connection(QString path)
        : m_path(std::move(path))
    {
    }
    virtual Result<std::unique_ptr<PreparedStatement>> prepare(std::string_view label,
                                                               const std::string &sql) = 0;
    /// Breaks off what runs, from any thread.
    virtual void breakOff() = 0;
    bool isInterrupted() const { return m_interrupted; }
    int patienceMs() const { return m_patienceMs; }
    void tellWaiting() const;
    /// Before the engine closes: its statements end first.
    void forgetStatements() { m_idle.clear(); }

    /// A wait of so long is told.
    static constexpr int longWaitMs = 1000;

private:
    QString m_path;
    std::atomic<bool> m_interrupted = false;
    int m_patienceMs = usualPatienceMs;
    std::function<void()> m_waiting;
    std::map<std::string, std::vector<std::unique_ptr<PreparedStatement>>, std::less<>> m_idle;
};

/// Holds a read transaction, so that everything read under it shows one moment however long it
/// takes.
class ReadSnapshot
{
public:
    explicit ReadSnapshot(Connection &connection);
    ~ReadSnapshot();
    ReadSnapshot(const ReadSnapshot &) = delete;
    ReadSnapshot &operator=(const ReadSnapshot &) = delete;

    Result<void> result() const { return m_result; }

private:
    Connection &m_connection;
    bool m_started; ///< not if a transaction is open already, which does the same
    Result<void> m_result;
};

} // namespace loopwright
