#pragma once
// What an order says of hazards to whoever works at its pair or premises: cards, closings, and what
// strikes one of them out.

#include "core/acceptance/StationConflict.h"

namespace loopwright {

struct HazardCards
{
    std::vector<Fact> facts;  ///< a card or closing names the pair on which it was made
    QStringList bySupervisor; ///< ids of the closings that a registered supervisor recorded
    std::vector<SetAside> setAside;
    /// By id of a fact that is one of several contents of one id: that id.
    QMap<QString, QString> toldUnder;

    /// What another station knows of the same order and is not here.
    void add(const HazardCards &other);

    QJsonObject toJson() const;
    static Result<HazardCards> fromJson(const QJsonObject &object, const QString &place);
};

} // namespace loopwright
