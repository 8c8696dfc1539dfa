#pragma once
// Who acts, and whether he may. Every action that changes the records asks `allow` before it
// begins; a refusal for want of a role is an event itself.

#include "app/actions/Records.h"
#include "core/office/Acts.h"

namespace loopwright {

/// Acts as the person with the key `by`; empty: as the person whose login the process has, else
/// under the login's name. On a server a login is the key; Refused for another one, but to the
/// owner.
Result<void> actFor(Records &records, const QString &by);

/// On a server a login acts as itself, by the groups that it belongs to there; its owner may name
/// anybody.
bool actsAsItself(Records &records);

Result<Actor> actorOf(Records &records);

/// Refused, with who may, unless the actor may do it; then the history has it (kind "refused"), in
/// the chain of the order if one is named. An act of supervisors asks for the PIN of one whose
/// login it is not, if he has set one.
Result<void> allow(Records &records, Act act, const QString &order = {});

/// Sets, changes or (empty) removes a PIN: his own, or another's by a supervisor. On a server none
/// is set.
Result<void> setPin(Records &records, const QString &person, const QString &pin);

} // namespace loopwright
