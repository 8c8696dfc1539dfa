#pragma once
// The facts of an order with all who tell them, and what stations say otherwise of it: read once.

#include "core/acceptance/StationConflict.h"
#include "db/Database.h"

#include <QSet>

namespace loopwright {

struct ToldFacts
{
    std::vector<Fact> facts;
    std::vector<FactOrigin> tellers;
    std::vector<StationConflict> conflicts; ///< settled and withdrawn ones too

    static Result<ToldFacts> read(const Database &database, const QString &order);
    /// Ids of those that count for nothing, as stations disagree.
    QSet<QString> aside() const;
    /// Likewise, as their id has several contents: whose stands under it is chance.
    QSet<QString> differing() const;
};

} // namespace loopwright
