#pragma once
// The board: the derived state of every order, kept by whatever action changes what it comes from,
// and asked for by filters. A filter is put together from labelled parts of board.sql; what was
// typed is only ever bound.

#include "core/acceptance/BoardRow.h"
#include "core/order/ServiceOrder.h"
#include "db/OrderStore.h"
#include "db/Transaction.h"

#include <QMap>

namespace loopwright {

/// What is derived for one order.
struct OrderState
{
    Stage stage = stageAt(Station::Identifiers);
    OrderOutcome outcome = OrderOutcome::Incomplete;
    QString reason;      ///< why it is not accepted; empty if it is
    bool hazard = false; ///< one is open on its pair or at its premises
    int facts = 0;
    int runs = 0;

    bool operator==(const OrderState &) const = default;
};

struct BoardQuery
{
    std::optional<Stage> stage{};
    std::optional<OrderOutcome> outcome{};
    QString office{}, installer{}; ///< empty: any
    QDate dueFrom{}, dueBefore{};  ///< invalid: any; from inclusive, before exclusive
    bool notDone = false;          ///< any stage but Done
    bool open = false;             ///< neither completed nor cancelled
    bool hazard = false;           ///< a hazard is open and the order is not done
    QString text{};                ///< words that must all be found, any part of a number or name
};

class BoardStore
{
public:
    enum class Tally
    {
        Stage,
        Office,
        Installer
    };

    explicit BoardStore(const Database &database)
        : m_database(database)
    {
    }

    /// Those with an open hazard that are not done, then the others; by due date, then number.
    /// `limit` -1: all. `after` is the last line of the page before.
    Result<std::vector<BoardRow>> lines(const BoardQuery &query, int limit = -1,
                                        const BoardRow *after = nullptr) const;
    Result<qint64> count(const BoardQuery &query) const;
    /// How many orders each value of one filter would show, with the other filters as they are.
    Result<QMap<QString, qint64>> tally(BoardQuery query, Tally of) const;

    /// For a list of a million rows: the row ids by due date and number at once, the lines page by
    /// page.
    Result<std::vector<qint64>> ids(const BoardQuery &query) const;
    /// The line of a row id from ids(); nothing if it is gone.
    Result<std::optional<BoardRow>> line(qint64 id) const;

    /// Every order at the premises that was not cancelled; by due date, then number.
    Result<std::vector<BoardRow>> atPremises(const QString &premises) const;

    Result<std::optional<OrderState>> stateOf(const QString &order) const;

    /// Adds or replaces the state of a stored order. NotFound if there is no such order.
    /// The row of an order as it is stored, by column, and as it follows from order and state.
    Result<QMap<QString, QString>> columnsOf(const QString &order) const;
    static QMap<QString, QString> columnsFor(const ServiceOrder &order, const OrderState &state);
    /// BadInput if the search index does not say what the rows say.
    static Result<void> checkSearch(Transaction &transaction);

    static Result<void> put(Transaction &transaction, const ServiceOrder &order,
                            const OrderState &state);

private:
    Result<std::vector<BoardRow>> linesOf(const BoardQuery &query, bool hazards, int limit,
                                          const BoardRow *after) const;

    const Database &m_database;
};

} // namespace loopwright
