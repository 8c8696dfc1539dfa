#pragma once
// Decisions with their whole input and result, as bytes, so that an old one can be decided again
// and compared. Only ever added.

#include "core/acceptance/Decision.h"
#include "core/acceptance/DecisionInput.h"
#include "core/history/Bundle.h"
#include "db/Transaction.h"

namespace loopwright {

struct StoredDecision
{
    QString id;
    QString order;
    Moment at;
    QByteArray input;    ///< canonical JSON of the DecisionInput
    QString inputDigest; ///< SHA-256 of it
    QByteArray result;   ///< canonical JSON of the Decision
    QString digest;      ///< SHA-256 of it
};

class DecisionStore
{
public:
    explicit DecisionStore(const Database &database)
        : m_database(database)
    {
    }

    Result<std::optional<StoredDecision>> find(const QString &id) const;
    Result<std::vector<StoredDecision>> ofOrder(const QString &order) const; ///< oldest first
    Result<std::optional<StoredDecision>> newestOf(const QString &order) const;
    /// Version of the limit set of the newest one.
    Result<std::optional<QString>> newestLimitSetOf(const QString &order) const;

    /// True if it was added; false if the decision of this id with this input and result is
    /// there already. BadInput if the id is there with another.
    static Result<bool> add(Transaction &transaction, const Decision &decision,
                            const DecisionInput &input, const Moment &at);

    /// One that another station made, as its bytes came.
    static Result<bool> addStored(Transaction &transaction, const BundledDecision &decision,
                                  const QString &order);

private:
    const Database &m_database;
};

} // namespace loopwright
