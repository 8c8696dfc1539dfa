#pragma once
// What must not be used twice: numbers everywhere, SPIDs and pairs within an office. A value
// belongs to one circuit at a time, as planned (by an order that is open) or as working (by one
// that was completed).

#include "core/acceptance/Decision.h"
#include "core/acceptance/DecisionInput.h"
#include "core/order/Claims.h"
#include "db/Transaction.h"

#include <QHash>

namespace loopwright {

enum class AssignmentState
{
    Planned,
    Working,
    Released
};
template<>
struct EnumCodes<AssignmentState>
{
    static constexpr std::pair<AssignmentState, const char *> table[] = {
        {AssignmentState::Planned, "planned"},
        {AssignmentState::Working, "working"},
        {AssignmentState::Released, "released"}};
};

struct Assignment
{
    ClaimKind kind = ClaimKind::Dn;
    QString scope, value;
    AssignmentState state = AssignmentState::Planned;
    QString circuit, order;

    bool operator==(const Assignment &) const = default;
};

/// A value and the circuits and orders that want or have it.
struct ValueUse
{
    ClaimKind kind = ClaimKind::Dn;
    QString scope, value;
    QStringList circuits, orders; ///< each once

    bool operator==(const ValueUse &) const = default;
};

/// A pair of a cable and an order that has it, or had it once.
struct PairUse
{
    QString pair; ///< its key
    AssignmentState state = AssignmentState::Released;
    QString order, circuit;
    QString pairNow; ///< of the order, as typed
    OrderStatus status = OrderStatus::Open;
    OrderOutcome outcome = OrderOutcome::Incomplete;
    QString criterion, reason; ///< first open one of the order, and why
    bool hazard = false;       ///< the order holds one that is open
};

class AssignmentStore
{
public:
    explicit AssignmentStore(const Database &database)
        : m_database(database)
    {
    }

    /// What of the order's claims another circuit holds. The order itself need not be stored; what
    /// it holds already is no conflict, even if it names another circuit now.
    Result<std::vector<Conflict>> conflictsOf(const ServiceOrder &order) const;
    /// The circuit that holds a value, by the working row if there is one. What the order
    /// `except` holds is passed over.
    Result<std::optional<Assignment>> holderOf(ClaimKind kind, const QString &scope,
                                               const QString &value,
                                               const QString &except = {}) const;
    Result<std::vector<Assignment>> ofOrder(const QString &order) const;
    Result<std::vector<Assignment>> ofCircuit(const QString &circuit) const; ///< released ones too
    /// Every pair of the cable that an order of the office ever had; by pair, oldest first.
    Result<std::vector<PairUse>> ofCable(const QString &office, const QString &cable) const;
    /// Over the whole database, from the orders themselves (open ones, held ones too, and the one
    /// by which each circuit works): every value that two circuits or more want or have.
    Result<std::vector<ValueUse>> doubles() const;
    /// Likewise every value of an order that is not held which the assignments do not give to its
    /// circuit. Only a change past this program makes one.
    Result<std::vector<ValueUse>> unassigned() const;
    /// Values that are held for an order which does not ask for them.
    Result<std::vector<ValueUse>> unwanted() const;

    /// Plans every claim of a stored order, and releases what it had planned before and claims no
    /// longer, or claims for another circuit now. If another circuit holds one of them nothing
    /// is planned, what was planned before is released, and the conflicts are returned; the order
    /// is then to be held.
    static Result<std::vector<Conflict>> claim(Transaction &transaction, const ServiceOrder &order);
    /// Value to the circuit that holds it, of the values from one up to another.
    Result<QHash<QString, QString>> heldBetween(ClaimKind kind, const QString &scope,
                                                const QString &from, const QString &before) const;
    /// A stored order has other identifiers: what it holds and claims no longer is released, what
    /// it claims and does not hold it gets, in this state.
    static Result<void> exchange(Transaction &transaction, const ServiceOrder &order,
                                 AssignmentState state);
    /// Takes an exchange or claim back, as if it had never been: the rows that it made go, the ones
    /// that it released stand as they stood. The history has both. `order` is stored with the
    /// identifiers that it had; held: it had nothing.
    static Result<void> takeBack(Transaction &transaction, const ServiceOrder &order, bool held,
                                 AssignmentState state);
    /// The order is completed: what the circuit had working is released, what the order planned
    /// becomes working. A disconnect plans nothing, so that everything is released.
    static Result<void> startWorking(Transaction &transaction, const QString &order);
    /// The order is cancelled or held: what it planned is released.
    static Result<void> releasePlanned(Transaction &transaction, const QString &order);

private:
    Result<std::vector<ValueUse>> uses(const char *label) const;

    const Database &m_database;
};

} // namespace loopwright
