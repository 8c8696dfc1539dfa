#pragma once
// The one bridge from the records to `decide`: gathers what was ordered, what is in use elsewhere,
// and the evidence.

#include "core/acceptance/HazardCards.h"
#include "core/acceptance/Judge.h"
#include "db/OrderStore.h"

namespace loopwright {

/// Ids of the closings that a registered supervisor recorded, by the detail of the event.
QStringList supervisedIn(const QJsonObject &detail);

/// A conflict was settled for a van's values, as the detail of its event says: what the office had
/// changed meanwhile is as if it had never been.
void takeBack(std::vector<OrderChange> &changes, const QJsonObject &detail);

class EvidenceStore
{
public:
    explicit EvidenceStore(const Database &database)
        : m_database(database)
    {
    }

    /// A completed or cancelled order has no conflicts: what it held may be on another circuit by
    /// now.
    Result<DecisionInput> of(const StoredOrder &stored, const QString &limitSet) const;
    /// What the order says of hazards to others, here or as an office told.
    Result<HazardCards> hazardCardsOf(const QString &order) const;

private:
    Result<DecisionInput> gathered(const StoredOrder &stored, const QString &limitSet) const;

    const Database &m_database;
};

} // namespace loopwright
