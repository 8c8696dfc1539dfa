#pragma once
// What is wrong with a detector check, fault by fault: the decision joins them, entry tells each
// beside its field, and whether the test set or the line is to blame is read off them.

#include "core/acceptance/Decision.h"
#include "core/acceptance/Fact.h"
#include "core/base/LimitSet.h"

namespace loopwright {

enum class CheckFaultKind
{
    QuietTooShort,
    ErrorsInQuiet, ///< before any was sent: of the line
    NotSeen,       ///< fewer than were sent
    MoreSeen,      ///< more than were sent: of the line
    NotCleared,
};

struct CheckFault
{
    CheckFaultKind kind = CheckFaultKind::NotSeen;
    const char *field = ""; ///< key of the fact
    Text sentence;
    Text plain; ///< what it means to the customer
};

/// In the order of the work; of a figure that was left out nothing is said.
std::vector<CheckFault> faultsOf(const DetectorFact &check, const LimitSet &limits);
/// The line makes the errors: nothing is wrong with how the check was made.
bool isOfTheLine(const CheckFault &fault);
/// Missing if a figure lacks, NotMet if anything is wrong, else Met; with the sentences.
std::pair<CriterionOutcome, Text> checkOutcome(const Fact &check, const LimitSet &limits);

} // namespace loopwright
