#pragma once
// What other stations recorded: their chains, event by event as they wrote them, and where each
// fact comes from that was not recorded here. Only ever added.

#include "core/acceptance/StationConflict.h"
#include "core/history/Bundle.h"
#include "db/HistoryFault.h"
#include "db/Transaction.h"

#include <functional>

namespace loopwright {

class ForeignStore
{
public:
    explicit ForeignStore(const Database &database)
        : m_database(database)
    {
    }

    Result<std::vector<ForeignEvent>> eventsOfOrder(const QString &order) const;
    /// As far as it was told here, in the order of the chain.
    Result<std::vector<Event>> chainOf(const QString &station, const QString &subject) const;
    /// Each fact once, with the first by tag of those who tell it.
    Result<std::vector<FactOrigin>> originsOf(const QString &order) const;
    /// Each fact with everybody who tells it, without their names.
    Result<std::vector<FactOrigin>> tellersOf(const QString &order) const;

    /// Tells every event that is not what its digest says, does not follow the one before, or is
    /// another than the event here that joined it says. What was told in part (the events of one
    /// order) is held together where one follows another.
    Result<void> check(const std::function<void(const HistoryFault &)> &report) const;

    static Result<void> add(Transaction &transaction, const ForeignEvent &event);
    /// Nothing if the station tells it already.
    static Result<void> add(Transaction &transaction, const FactOrigin &origin);

private:
    Result<void> checkJoins(const std::function<void(const HistoryFault &)> &report) const;

    const Database &m_database;
};

/// The kind of the event here that says that an order went along; no part of what is told.
inline const QString takenAlongKind = QStringLiteral("taken_along");
inline const QString recalledKind = QStringLiteral("taken_along_recalled");
/// The kind of the event here that joins a chain of another station; its detail names "station",
/// "bundle", how many "events" of it are told, and its "head".
inline const QString joinedKind = QStringLiteral("joined");

} // namespace loopwright
