#pragma once
// A job handed on: the page that says how it stands, and the record of to whom.

#include "app/actions/Records.h"
#include "app/print/Document.h"
#include "core/acceptance/Handoff.h"

namespace loopwright {

/// How an order stands for whoever takes it over. Never refused; NotFound if there is no such
/// order.
Result<Handoff> handoffOf(Records &records, const QString &order);

/// Records that the order was handed on. What the order's newest referral says already, with no
/// work done since, is not recorded again: a command whose page could not be written is repeated.
/// Usage without `to`.
Result<void> refer(Records &records, const QString &order, const ReferredFact &referred);

} // namespace loopwright
