#pragma once
// A fact of kind `loop`: what was measured of a pair, or its make-up as found on record or on site.
// Absent keys stay absent, so that reading and writing is the identity.

#include "core/loop/LoopMakeup.h"

namespace loopwright {

struct LoopFact
{
    std::optional<double> dcResistanceOhm; ///< 0 to 10^6 ohm
    std::optional<double> lossDb;          ///< -20 to 200 dB
    std::optional<double> frequencyHz;     ///< of the loss; 20 Hz to 10 MHz
    std::optional<LoopMakeup> makeup;

    /// Reads its own keys; the caller reads the header of the fact and calls done(). At least one
    /// of resistance, loss and make-up must be there.
    static LoopFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    bool operator==(const LoopFact &) const = default;
};

} // namespace loopwright
