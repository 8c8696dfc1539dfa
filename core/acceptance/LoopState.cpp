#include "core/acceptance/LoopState.h"

#include "core/acceptance/Evidence.h"

namespace loopwright {

LoopState loopState(const DecisionInput &input, const LimitSet &limits)
{
    LoopState state;
    std::optional<LossReading> loss;
    const Evidence evidence(input, limits);
    for (const Fact *fact : evidence.of<LoopFact>()) {
        const auto *loop = fact->as<LoopFact>();
        if (loop->makeup)
            state.makeup = loop->makeup;
        if (loop->dcResistanceOhm)
            state.measured.dcResistanceOhm = loop->dcResistanceOhm;
        if (loop->lossDb)
            loss = LossReading{loop->frequencyHz.value_or(0), *loop->lossDb, {}};
    }
    if (loss)
        state.measured.losses.push_back(*loss);
    return state;
}

} // namespace loopwright
