#include "core/acceptance/LoopState.h"

#include "core/acceptance/Evidence.h"

#include <cmath>

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

const char *const recordIsWrongText = QT_TRANSLATE_NOOP(
    "core", "The make-up on record explains what was measured at no temperature of the cable from "
            "-20 to 140 °F: the measurement decides, and the record is wrong.");

bool isRecordWrong(const LoopState &state, LineKind kind, const LimitSet &limits)
{
    if (!state.makeup)
        return false;
    MeasuredLoop measured{state.measured.dcResistanceOhm, {}};
    const double frequency = limits.value("bri_loss_frequency"),
                 ohms = limits.value("bri_termination");
    for (const LossReading &loss : state.measured.losses)
        if (kind == LineKind::Bri && std::abs(loss.frequencyHz - frequency) <= 0.01 * frequency)
            measured.losses.push_back({frequency, loss.lossDb, {ohms, ohms}});
    return !agreesAtSomeTemperature(*state.makeup, measured, limits);
}

} // namespace loopwright
