#pragma once
// An order of a van on its way into the records: what those who take it in hand to each other.

#include "app/actions/Records.h"
#include "core/acceptance/Fact.h"
#include "core/acceptance/StationConflict.h"
#include "core/history/Bundle.h"
#include "db/OrderStore.h"
#include "db/StationStore.h"

namespace loopwright {

struct Joining
{
    const BundledOrder &entry;
    PeerStation van;
    QStringList tags; ///< tagsOf() the van
    QString bundle;
    bool keep = false; ///< it stays out
    QJsonObject fork;  ///< where the van's log parts from what it told before; empty if nowhere
    QString place;     ///< in the file, for errors
};

/// The tag of the van, and those that it had before it was restored: what it wrote under them is
/// its own.
Result<QStringList> tagsOf(const Database &database, const PeerStation &van);

/// Of which conflicts are drawn.
struct Drawing
{
    const Joining &joining;
    const std::vector<Fact> &facts; ///< all that it brings
    const std::optional<StoredOrder> &before;
    const QStringList &known; ///< facts that its station told, or had from others, until now
};

/// Adds it to an order, under the id that it has by what it is about.
Result<StationConflict> drawConflict(const Records &records, Transaction &transaction,
                                     const QString &order, ConflictCode code,
                                     const QString &station, const QJsonObject &content);

} // namespace loopwright
