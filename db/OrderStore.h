#pragma once
// Service orders, the circuits they are for, and the identifiers of their terminals.

#include "core/order/ServiceOrder.h"
#include "db/Transaction.h"

namespace loopwright {

struct StoredOrder
{
    ServiceOrder order;
    OrderStatus status = OrderStatus::Open;
    bool held = false; ///< taken in, but its identifiers are in error or taken
    QString uuid;      ///< the name under which it travels
};

/// The names under which an order and its circuit travel; drawn where they are empty.
struct TravelNames
{
    QString order, circuit;
    bool byOffice = false; ///< it took the order in by its records, and hands it out
};

/// By name, e.g. "pair_key" or "dn_key of terminal 2".
using OrderColumns = QMap<QString, QString>;

class OrderStore
{
public:
    explicit OrderStore(const Database &database)
        : m_database(database)
    {
    }

    Result<std::optional<StoredOrder>> find(const QString &number) const;
    /// NotFound, in a sentence, if there is no order of this number.
    Result<StoredOrder> get(const QString &number) const;
    /// Oldest first.
    Result<std::vector<StoredOrder>> ofCircuit(const QString &circuit) const;
    /// The order by which the circuit works today: the one that was completed last. Nothing if
    /// none was, or if that one disconnected it.
    Result<std::optional<StoredOrder>> workingOn(const QString &circuit) const;
    /// The order by which the circuit worked when this one was completed; nothing as above.
    Result<std::optional<StoredOrder>> workedBefore(const QString &completed) const;
    Result<qint64> count() const;
    Result<qint64> countOpen() const;
    /// Open orders that hold nothing until their identifiers are mended or free; oldest first.
    Result<std::vector<StoredOrder>> held() const;
    /// Troubles: orders to repair, oldest first.
    Result<std::vector<StoredOrder>> repairs() const;
    /// One after the other, oldest first, for work over every open order; the first failure of
    /// `visit` ends it.
    Result<void> eachOpen(const std::function<Result<void>(const StoredOrder &)> &visit) const;
    /// Likewise over every order.
    Result<void> each(const std::function<Result<void>(const StoredOrder &)> &visit) const;
    /// Likewise over those that say what the lines of an office are or are to be: open orders, and
    /// the one by which each circuit works; those of a circuit together. Read of each is lineOf().
    Result<void> eachLineOf(const QString &office,
                            const std::function<Result<void>(const StoredOrder &)> &visit) const;
    /// Of all orders of an office.
    Result<qint64> countOfOffice(const QString &office) const;
    /// What stands beside an order's content for keys and indexes, by what it is called: as it is
    /// stored, and as it follows from the order.
    Result<OrderColumns> columnsOf(const QString &number) const;
    static OrderColumns columnsFor(const ServiceOrder &order);
    /// Completed orders that were completed before one of a lower rank.
    Result<QStringList> wrongRanks() const;
    /// The name under which its circuit travels.
    Result<QString> circuitUuid(const QString &number) const;
    /// The subject of the history that an order belongs to; NotFound if there is no such order.
    Result<QString> subjectOf(const QString &number) const;

    /// Adds the order as open, or changes the one of this number, whose status stays. Its circuit
    /// is made if there is none yet; its office must be there. What is there keeps its names. The
    /// order as it is now.
    static Result<StoredOrder> put(Transaction &transaction, const ServiceOrder &order, bool held,
                                   const TravelNames &names = {});
    /// NotFound if there is no such order. A completed or cancelled order is not held.
    static Result<void> setStatus(Transaction &transaction, const QString &number,
                                  OrderStatus status);

private:
    Result<void> eachOf(const char *label,
                        const std::function<Result<void>(const StoredOrder &)> &visit) const;
    Result<qint64> countOf(const char *label) const;

    const Database &m_database;
};

} // namespace loopwright
