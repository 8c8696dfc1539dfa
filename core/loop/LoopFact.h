#pragma once
// A fact of kind `loop`: what was measured of a pair, or its make-up as found on record or on site.
// Absent keys stay absent, so that reading and writing is the identity.

#include "core/loop/LoopMakeup.h"

namespace loopwright {

/// Which end of the loop the reading was taken at; the office has the switch's test access.
enum class MeasuredFrom
{
    Premises,
    Office,
};
template<>
struct EnumCodes<MeasuredFrom>
{
    static constexpr std::pair<MeasuredFrom, const char *> table[] = {
        {MeasuredFrom::Premises, "premises"}, {MeasuredFrom::Office, "office"}};
};

struct LoopFact
{
    std::optional<double> dcResistanceOhm; ///< 0 to 10^6 ohm
    std::optional<double> lossDb;          ///< -20 to 200 dB
    std::optional<double> frequencyHz;     ///< of the loss; 20 Hz to 10 MHz
    std::optional<LoopMakeup> makeup;
    std::optional<MeasuredFrom> from = {}; ///< premises if it is left out

    /// Reads its own keys; the caller reads the header of the fact and calls done(). At least one
    /// of resistance, loss and make-up must be there.
    static LoopFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const LoopFact &) const = default;
};

} // namespace loopwright
