#pragma once
// One run of a labelled statement (SqlCatalog): bind by name, step forward only, read columns by
// name. It sits on the engine's own interface, so that the same class serves one row and a million.
//
// A statement never fails visibly while it is set up or read. The first thing that goes wrong (an
// unknown label, a name that is not bound, a column that is not there, a stored text that is no
// JSON or no known code) is kept and comes out of next() or run(), or of trouble() when the last
// row has been read. rows() and firstRow() below do that.
//
// Made from a Database it may only read; a statement that writes needs the lock of a Transaction,
// and with it the event that the transaction is committed with.

#include "core/base/EnumCodes.h"
#include "core/base/Moment.h"
#include "core/base/Result.h"

#include <QByteArray>
#include <QJsonObject>
#include <QMap>
#include <QStringList>

#include <concepts>
#include <limits>
#include <memory>
#include <optional>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace loopwright {

class Connection;
class Database;
class PreparedStatement;
class WriteLock;

class Statement
{
public:
    Statement(const Database &database, std::string_view label,
              const std::vector<std::string_view> &parts = {});
    Statement(WriteLock &lock, std::string_view label);
    /// For the classes of this folder that look after the connection itself.
    Statement(Connection &connection, std::string_view label, bool mayWrite,
              const std::vector<std::string_view> &parts = {});
    ~Statement();
    Statement(const Statement &) = delete;
    Statement &operator=(const Statement &) = delete;

    /// Whether it has a parameter of this name.
    bool takes(const char *name) const { return placeOf(name) > 0; }
    // Names come without their colon. Binding after a step starts the statement anew and keeps the
    // other bindings.
    Statement &bind(const char *name, const QString &value);
    Statement &bind(const char *name, double value);
    template<std::integral T>
    Statement &bind(const char *name, T value)
    {
        return bindInteger(name, qint64(value));
    }
    template<class E>
    requires std::is_enum_v<E> Statement &bind(const char *name, E value)
    {
        return bind(name, toText(value));
    }
    template<class T>
    Statement &bind(const char *name, const std::optional<T> &value)
    {
        return value ? bind(name, *value) : bindNull(name);
    }
    Statement &bindNull(const char *name);
    Statement &bindOrNull(const char *name, const QString &value);   ///< an empty text becomes NULL
    Statement &bindJson(const char *name, const QJsonObject &value); ///< canonical JSON
    Statement &bindBytes(const char *name, const QByteArray &utf8);  ///< a text as it stands
    /// The two columns of a moment: `name`_utc and `name`_offset (seconds east of UTC).
    Statement &bindMoment(const QByteArray &name, const Moment &value);

    /// True when there is a row, false at the end.
    Result<bool> next();
    /// Runs a statement that changes rows; how many it changed.
    Result<qint64> run();
    /// The same where nobody asks how many. On an engine that is far away it goes with what is
    /// asked next, and what goes wrong comes out of that; at the latest with the end of the change.
    Result<void> write();

    /// In the order of the statement; empty if its label is not known.
    QStringList columnNames() const;
    bool isNull(const char *column) const;
    QString text(const char *column) const;
    QByteArray bytes(const char *column) const;
    qint64 integer(const char *column) const;
    double real(const char *column) const;
    bool boolean(const char *column) const { return integer(column) != 0; }
    QJsonObject json(const char *column) const;
    Moment moment(const QByteArray &name) const;
    std::optional<QString> optionalText(const char *column) const;
    std::optional<qint64> optionalInteger(const char *column) const;
    template<class E>
    E word(const char *column) const
    {
        const QString found = text(column);
        if (const auto value = fromText<E>(found))
            return *value;
        refuse(column, "holds an unknown code: " + found.left(40));
        return EnumCodes<E>::table[0].first;
    }

    /// Marks the row as unreadable; for row-mappers that find a stored content wrong.
    void refuse(const char *column, const QString &what) const;
    /// What went wrong up to now.
    const std::optional<Error> &trouble() const { return m_trouble; }
    /// The same, and goes on with the next row as if nothing had happened.
    std::optional<Error> takeTrouble() { return std::exchange(m_trouble, std::nullopt); }

private:
    Statement &bindInteger(const char *name, qint64 value);
    int placeOf(const char *name) const; ///< of a parameter, from 1; 0: there is none
    int parameter(const char *name);
    int column(const char *name) const;
    void checkBindings();
    /// Before its first step: whether it is bound, and nobody breaks off.
    Result<void> mayRun();
    void rewind();

    Connection *m_connection;
    std::unique_ptr<PreparedStatement> m_prepared;
    std::vector<bool> m_bound;
    bool m_stepped = false;
    mutable std::optional<Error> m_trouble;
};

/// For a LIMIT that is none; not every engine takes a negative one.
constexpr qint64 noLimit = std::numeric_limits<qint64>::max();
/// For how many rows are asked; negative: for all.
constexpr qint64 limitOf(int rows)
{
    return rows < 0 ? noLimit : rows;
}

/// Every row through `map` (const Statement & to a value).
template<class Map>
auto rows(Statement &statement, Map map)
    -> Result<std::vector<std::invoke_result_t<Map, const Statement &>>>
{
    std::vector<std::invoke_result_t<Map, const Statement &>> found;
    for (;;) {
        LOOPWRIGHT_ASSIGN(const auto more, statement.next());
        if (!more)
            return found;
        found.push_back(map(statement));
    }
}

/// The first row through `map`; nothing if there is none.
template<class Map>
auto firstRow(Statement &statement, Map map)
    -> Result<std::optional<std::invoke_result_t<Map, const Statement &>>>
{
    using Value = std::invoke_result_t<Map, const Statement &>;
    LOOPWRIGHT_ASSIGN(const auto more, statement.next());
    if (!more)
        return std::optional<Value>();
    std::optional<Value> value = map(statement);
    if (statement.trouble())
        return failure(*statement.trouble());
    return value;
}

/// A column of every row, as text.
Result<QStringList> texts(Statement &statement, const char *column);

/// Every column of the first row by its name, as text; empty if there is no row.
Result<QMap<QString, QString>> firstRowAsTexts(Statement &statement);

} // namespace loopwright
