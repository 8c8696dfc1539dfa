#pragma once
// Deciding, deciding again, and accepting with exception.

#include "app/actions/Records.h"
#include "core/acceptance/Judge.h"

namespace loopwright {

class Transaction;
struct StoredOrder;

/// Gathers the evidence of an order: the one bridge between the records and `decide`.
Result<DecisionInput> evidenceOf(Records &records, const QString &orderNumber);
/// The same for an order that was read already.
Result<DecisionInput> evidenceOf(Records &records, const StoredOrder &stored);

/// What `decide` answers to an input, by the limit set that the input names.
Result<Decision> decisionOf(Records &records, const DecisionInput &input);
/// What `decide` answers now; stores nothing.
Result<Decision> decisionNow(Records &records, const QString &orderNumber);
/// Decides and stores the decision with its whole input; an unchanged input stores nothing new.
Result<Decision> decideOrder(Records &records, const QString &orderNumber);
/// The same inside a transaction that does more. True if the decision is a new one.
Result<bool> storeDecision(Records &records, Transaction &transaction, const QString &orderNumber,
                           Decision &decision);
/// Repeats a stored decision from its stored input. NotFound if there is none with that id,
/// Refused if it does not end in the bytes that were stored.
Result<Decision> decideAgain(Records &records, const QString &decisionId);

/// Records a supervisor's exception for criteria that are not met or missing, and decides. Refused
/// for "safety", for a criterion that is met or not needed, without a reason or a name, or by
/// somebody registered as no supervisor; Usage for a key that is no criterion.
Result<Decision> acceptWithException(Records &records, const QString &orderNumber,
                                     const QStringList &criteria, const QString &because);

} // namespace loopwright
