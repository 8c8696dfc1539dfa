#pragma once
// The board: the derived state of every order, kept by whatever action changes what it comes from,
// and asked for by filters (BoardStatement.h).

#include "core/acceptance/BoardQuery.h"
#include "core/acceptance/BoardRow.h"
#include "core/order/ServiceOrder.h"
#include "db/OrderStore.h"
#include "db/Transaction.h"

#include <QMap>

namespace loopwright {

/// What is derived for one order.
struct OrderState
{
    OrderStatus status = OrderStatus::Open;
    Stage stage = stageAt(Station::Identifiers);
    OrderOutcome outcome = OrderOutcome::Incomplete;
    QString criterion = {};              ///< key of the first open one; empty if none is
    QString reason = {};                 ///< why it is not accepted; empty if it is
    QString waitingOn = {};              ///< of a hold, or the referral that stands
    bool paper = false;                  ///< accepted, and its certificate is not issued
    bool hazard = false;                 ///< one is open on its pair or at its premises
    std::optional<Moment> hazardAt = {}; ///< when the one that `reason` tells was read
    QDate takenOn = {};                  ///< local day
    QDate acceptedOn = {}; ///< local day of its newest evidence; invalid if it is not accepted
    int visits = 0;        ///< on which its evidence was made
    int facts = 0;
    int runs = 0;
    std::vector<OutAt> out = {}; ///< the vans that have it
    int conflicts = 0;           ///< between stations, that nobody has settled
};

/// So many orders agree in all that the board filters by.
struct BoardCombination
{
    QMap<BoardFacet, QString> values; ///< "1" or "0" of those that are on or off
    bool pending = false;
    bool past = false, today = false, soon = false, thisWeek = false,
         missed = false; ///< of grouped() alone
    qint64 orders = 0;
};

struct BoardKeyParts;
struct BoardSortRow;
enum class TextBy;

class BoardStore
{
public:
    explicit BoardStore(const Database &database)
        : m_database(database)
    {
    }

    /// `limit` -1: all. `after` is the last line of the page before.
    Result<std::vector<BoardRow>> lines(const BoardQuery &query, int limit = -1,
                                        const BoardRow *after = nullptr) const;
    /// The lines from a place on, from 0, which need not follow any that is known: the walk to it
    /// reads an index alone.
    Result<std::vector<BoardRow>> linesAt(const BoardQuery &query, qint64 place, int limit) const;
    Result<qint64> count(const BoardQuery &query) const;
    /// Whether more orders have the words of a search than are looked at: the newest mostFound, and
    /// the latest mostOfEach() of who is named in it (BoardStatement.h). Rows and counts are then
    /// of those alone.
    Result<bool> findsMore(const BoardQuery &query) const;

    /// Out of the tally, every combination under the filters of a query, whatever its orders are
    /// due and called.
    Result<std::vector<BoardCombination>> tallied(const BoardQuery &query = {}) const;
    /// Those of the orders that the query finds; the week begins on Monday, soon is
    /// from today to the end of riskWorkingDays.
    Result<std::vector<BoardCombination>> grouped(const BoardQuery &query, QDate today) const;

    /// How many open orders each installer has on a day, by key; who has none is not there.
    Result<QMap<QString, int>> loadOn(QDate day) const;

    /// Nothing if there is no such order.
    Result<std::optional<BoardRow>> row(const QString &order) const;

    /// Every order at the premises that was not cancelled; by due date, then number.
    Result<std::vector<BoardRow>> atPremises(const QString &premises) const;

    /// Of other circuits of the office whose pair, planned or working, lies in the cable: those
    /// that are not accepted, in repair, or have an open hazard; by pair.
    Result<std::vector<BoardRow>> inTroubleInCable(const QString &office, const QString &cable,
                                                   const QString &butCircuit) const;

    /// The row of an order as it is stored, by column, and as it follows from order and state.
    Result<QMap<QString, QString>> columnsOf(const QString &order) const;
    static QMap<QString, QString> columnsFor(const ServiceOrder &order, const OrderState &state);
    /// BadInput if the search index does not say what the rows say.
    static Result<void> checkSearch(Transaction &transaction);
    /// The number of combinations that the tally counts otherwise than the rows do.
    Result<qint64> wrongTallies() const;

    /// Numbers or variant of an order were changed that is not decided any more: it is found and
    /// counted by the new ones, and stands as it stood.
    static Result<void> putIdentifiers(Transaction &transaction, const ServiceOrder &order);
    /// Adds or replaces the state of a stored order. NotFound if there is no such order.
    static Result<void> put(Transaction &transaction, const ServiceOrder &order,
                            const OrderState &state);

private:
    Result<std::vector<BoardRow>> linesOf(const BoardQuery &query, const BoardKeyParts &parts,
                                          int limit, const BoardRow *after) const;
    Result<std::vector<BoardRow>> valueByValue(const BoardQuery &query, const BoardSortRow &sort,
                                               int limit, const BoardRow *after) const;
    Result<std::optional<BoardRow>> lineAt(const BoardQuery &query, const BoardKeyParts &parts,
                                           qint64 place) const;
    Result<QStringList> valuesInOrder(const BoardQuery &query, const BoardSortRow &sort,
                                      const BoardRow *after) const;
    Result<std::vector<BoardRow>> foundByRank(const BoardQuery &query, TextBy how,
                                              const BoardSortRow &sort, const QStringList &values,
                                              int limit, const BoardRow *after) const;

    const Database &m_database;
};

} // namespace loopwright
