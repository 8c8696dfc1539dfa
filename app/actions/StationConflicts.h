#pragma once
// What stations say otherwise of an order: listed with both sides, and settled by a person with a
// reason.

#include "app/actions/Records.h"
#include "core/acceptance/StationConflict.h"

namespace loopwright {

struct ShownConflict
{
    StationConflict conflict;
    struct Side
    {
        QString side; ///< "office", "both", or the name of a station
        QString tag;  ///< as it is settled for: likewise, a tag for a station
        Text says;
    };
    std::vector<Side> sides;
    QStringList stations; ///< names of those whose work it concerns
    QStringList facts;    ///< ids of the facts that hang on it

    QJsonObject toJson() const;
};

/// Of `fact_differs`: the entry as that side tells it.
Result<Fact> factAsTold(const StationConflict &conflict, const QString &side);
/// With both sides, as a person is asked.
Result<ShownConflict> shownConflict(Records &records, const StationConflict &conflict);
/// Open ones, unless `settledToo`; of one order, or of all. NotFound for an unknown order.
Result<std::vector<ShownConflict>> stationConflicts(Records &records, const QString &order = {},
                                                    bool settledToo = false);

/// Refused if `side` is none of its sides, if it is settled (`anew`: so that it changed something),
/// or the value is still in use; NotFound if there is no such conflict; Usage without a reason.
Result<StationConflict> settleConflict(Records &records, const QString &id, const QString &side,
                                       const QString &because, bool anew = false);

} // namespace loopwright
