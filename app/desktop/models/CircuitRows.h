#pragma once
// The lists of a circuit's page, row by row.

#include "app/actions/Circuits.h"
#include "app/desktop/models/TextTable.h"

namespace loopwright {

/// Order, type, due, state, customer, premises, variant, pair, numbers.
TextRow orderRow(const OrderView &view);
/// When, order, kind, what.
TextRow lifeRow(const LifeEntry &entry);
/// Figure, at turn-up, newest, change, unit, read. `turnUp`: the order of the turn-up.
TextRow figureRow(const CircuitFigure &figure, const QString &turnUp);
/// Pair, circuit, why, customer, order; opens the circuit.
TextRow neighbourRow(const BoardRow &row);
/// Pair, places away, who had it last, predicted loss, by the make-up of which pair, what speaks
/// against it.
TextRow spareRow(const SparePair &spare);
/// Circuit, customer, premises, office, pair, order; opens the circuit.
TextRow candidateRow(const BoardRow &row);

} // namespace loopwright
