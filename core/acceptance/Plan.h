#pragma once
// The steps of an order as they stand now, for whoever works on it: what is next, what is closed
// and the one sentence why. The plan adds the situation to what was judged: the time, the person,
// the instrument, the path chosen for the error test. It never changes an outcome.

#include "core/acceptance/Judged.h"
#include "core/base/LimitSet.h"
#include "core/errortest/Path.h"

namespace loopwright {

struct Situation
{
    Moment now;
    QString person; ///< key of who works; empty if nobody said
    /// With which instrument the next readings are made. None: it is named with each record, and no
    /// step waits for it; empty: it is still to be said.
    std::optional<QString> instrument = {};
    std::optional<Path> path = {}; ///< of the error test; none: the usual one of the order
    bool orderIsOpen = true;       ///< neither completed nor cancelled
};

enum class StepState
{
    NotNeeded,
    Done,
    Open,   ///< to be recorded now
    Failed, ///< what counts misses the limit; may be recorded again at once
    Closed, ///< something else must be said or done first
};
template<>
struct EnumCodes<StepState>
{
    static constexpr std::pair<StepState, const char *> table[] = {
        {StepState::NotNeeded, "not_needed"},
        {StepState::Done, "done"},
        {StepState::Open, "open"},
        {StepState::Failed, "failed"},
        {StepState::Closed, "closed"}};
};

struct Step
{
    Need need; ///< its preset as the situation has it
    StepState state = StepState::NotNeeded;
    Text because;                 ///< one sentence: why it stands so
    Text next;                    ///< what to do; empty if nothing is
    const Fact *counts = nullptr; ///< the fact that counts; points into the input
    std::vector<Discounted> before = {};
    /// Why nothing that counts can be recorded for it now, whatever its state; empty: it can.
    Text closedBy = {};

    bool isToDo() const { return state == StepState::Open || state == StepState::Failed; }
};

/// In the order of the work, offers too. `judged` is of this input.
std::vector<Step> plan(const DecisionInput &input, const LimitSet &limits, const Judged &judged,
                       const Situation &situation);

/// How an open hazard was closed before everything else, then the first that is open or failed;
/// null if there is none.
const Step *nextStep(const std::vector<Step> &steps);
const Step *findStep(const std::vector<Step> &steps, const QString &key);

} // namespace loopwright
