#pragma once
// Which pair of the cable to take where one must be swapped: those that nobody has, the best first,
// with what speaks against each and what its make-up, or that of the nearest pair with one, lets
// expect.

#include "app/actions/Records.h"
#include "core/loop/DesignRules.h"
#include "core/order/ServiceOrder.h"

namespace loopwright {

struct SparePair
{
    QString pair;
    QString lastOrder;   ///< that had it; empty if no order ever did
    QStringList against; ///< a sentence each; empty: nothing is known against it
    qint64 away = 0;     ///< places from the order's own pair
    QString makeupOf;    ///< the pair whose make-up is known; empty: none near it
    double lossDb = 0;   ///< predicted by that
    Suitability verdict = Suitability::Suitable;

    QJsonObject toJson() const;
};

struct SparePairs
{
    QString pair, cable; ///< of the order
    std::vector<SparePair> spares;
};

/// At most `limit`. What nothing speaks against comes first, then what lies in the same binder
/// group of 25 pairs (common practice, no source: such groups go to the same terminals), then the
/// nearest. A pair that no order ever had is offered only between those that some had. NotFound if
/// there is no such order; Refused if its pair names no cable.
Result<SparePairs> sparePairs(Records &records, const QString &order, int limit = 10);
/// The same of an order whose pair names a cable.
Result<std::vector<SparePair>> sparesInCable(Records &records, const ServiceOrder &order,
                                             int limit);

} // namespace loopwright
