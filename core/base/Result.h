#pragma once
// The only vocabulary of failure. An Error says that an operation could not be done, in words for a
// person, with the place where it went wrong; each code has one exit status on the command line. A
// Finding (Finding.h) is another thing: the user's data is wrong or doubtful and the work goes on.

#include <QString>

#include <tl/expected.hpp>

namespace loopwright {

enum class ErrorCode
{
    Usage,           ///< the caller asked for something that makes no sense (exit 2)
    BadInput,        ///< an input cannot be read, is malformed or is refused whole (exit 3)
    NotFound,        ///< names something that is not in the records (exit 3)
    Refused,         ///< understood, and the answer is no (exit 1)
    OrderOut,        ///< a van has the order: only if that is said (exit 1)
    DatabaseTrouble, ///< cannot be opened, is damaged, or of a newer version (exit 4)
    Busy,            ///< another program holds the lock for longer than the patience (exit 4)
    ConnectionLost,  ///< to the server that keeps the records; nothing was changed (exit 4)
    OutcomeUnknown,  ///< it was lost at the last step, and nobody could look (exit 4)
    DiskTrouble,     ///< the disk refused a write (exit 5)
};

/// The stable name of a code, as it stands in JSON output.
QString errorName(ErrorCode code);

struct Error
{
    ErrorCode code = ErrorCode::BadInput;
    QString message;  ///< one sentence: what happened and, if it helps, what to do
    QString place;    ///< file, row and column, JSON path, or table; empty if there is none
    int rowsDone = 0; ///< of an import that is kept in portions: rows taken in before it went wrong

    /// "place: message", or the message alone.
    QString text() const;
};

/// A value or an Error. Discarding one is a compile error, so that no failure is dropped.
template<class T>
class [[nodiscard]] Result : public tl::expected<T, Error>
{
public:
    using tl::expected<T, Error>::expected;
    Result(const tl::expected<T, Error> &other)
        : tl::expected<T, Error>(other)
    {
    }
    Result(tl::expected<T, Error> &&other)
        : tl::expected<T, Error>(std::move(other))
    {
    }
};

/// `return failure(ErrorCode::BadInput, "…", "row 3");` fits every Result.
inline tl::unexpected<Error> failure(ErrorCode code, QString message, QString place = {})
{
    return tl::unexpected<Error>(Error{code, std::move(message), std::move(place)});
}
inline tl::unexpected<Error> failure(Error error)
{
    return tl::unexpected<Error>(std::move(error));
}

} // namespace loopwright

// NOLINTBEGIN(bugprone-macro-parentheses): a declaration cannot stand in parentheses.
/// Leaves the function with the error of `expression` (a Result), if it has one.
#define LOOPWRIGHT_TRY(...)                                                                        \
    do {                                                                                           \
        if (auto tried = (__VA_ARGS__); !tried)                                                    \
            return ::loopwright::failure(std::move(tried).error());                                \
    } while (false)

/// `LOOPWRIGHT_ASSIGN(const auto order, orderOf(database, number));` declares the value of a
/// Result, or leaves the function with its error. The left side may also be a variable
/// that is there already.
#define LOOPWRIGHT_ASSIGN(declaration, ...)                                                        \
    LOOPWRIGHT_ASSIGN_BY(LOOPWRIGHT_JOINED(triedAtLine, __LINE__), declaration, (__VA_ARGS__))
#define LOOPWRIGHT_ASSIGN_BY(tried, declaration, expression)                                       \
    auto tried = expression;                                                                       \
    if (!tried)                                                                                    \
        return ::loopwright::failure(std::move(tried).error());                                    \
    declaration = *std::move(tried)
// NOLINTEND(bugprone-macro-parentheses)
#define LOOPWRIGHT_JOINED(a, b) LOOPWRIGHT_JOINED_AGAIN(a, b)
#define LOOPWRIGHT_JOINED_AGAIN(a, b) a##b
