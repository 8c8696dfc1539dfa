#include "core/acceptance/Contradiction.h"

#include <cmath>

namespace loopwright {

namespace {

constexpr double leastLossDb = -1;       // the accuracy of a loss set below nothing
constexpr double mostRingingV = 150;     // rms
constexpr double balanceToleranceDb = 3; // both figures are read, one after the other

Contradiction amplifies(const QString &field, double lossDb)
{
    return {field,
            Text(QT_TRANSLATE_NOOP("core",
                                   "A loss of %1 dB cannot be: a pair of wires does not amplify."))
                .arg(lossDb),
            Text(QT_TRANSLATE_NOOP("core",
                                   "Check the level that is sent and the impedance that the set is "
                                   "set to, and read again."))};
}

} // namespace

Text Contradiction::sentence() const
{
    Text whole = what;
    whole += check;
    return whole;
}

std::optional<Contradiction> contradictionIn(const LoopFact &loop)
{
    if (loop.dcResistanceOhm && *loop.dcResistanceOhm <= 0)
        return Contradiction{
            "dc_resistance_ohm",
            Text(QT_TRANSLATE_NOOP("core", "A resistance of %1 ohm cannot be: wires have some."))
                .arg(*loop.dcResistanceOhm),
            Text(QT_TRANSLATE_NOOP("core",
                                   "Check that the leads of the meter do not touch, and that "
                                   "the far end is short-circuited, and read again."))};
    const bool amplified = loop.makeup && loop.makeup->amplified;
    if (loop.lossDb && *loop.lossDb <= leastLossDb && !amplified)
        return amplifies("loss_db", *loop.lossDb);
    if (loop.lossDb && !loop.frequencyHz)
        return Contradiction{
            "frequency_hz",
            Text(QT_TRANSLATE_NOOP("core", "A loss of %1 dB without its frequency says nothing."))
                .arg(*loop.lossDb),
            Text(QT_TRANSLATE_NOOP("core", "Record it again with the frequency."))};
    return std::nullopt;
}

std::optional<Contradiction> contradictionIn(const AnalogFact &analog, bool amplified)
{
    const auto value = analog.number();
    if (!value)
        return std::nullopt;
    if (analog.quantity == AnalogQuantity::Loss1004 && *value <= leastLossDb && !amplified)
        return amplifies("value", *value);
    if (analog.quantity == AnalogQuantity::RingingVoltage && std::abs(*value) > mostRingingV)
        return Contradiction{
            "value",
            Text(QT_TRANSLATE_NOOP("core", "Ringing of %1 V cannot be: no office rings with more "
                                           "than %2 V."))
                .arg(std::abs(*value))
                .arg(mostRingingV),
            Text(QT_TRANSLATE_NOOP("core",
                                   "Check that the meter reads alternating voltage alone; if "
                                   "it stays, treat it as a foreign voltage."))};
    return std::nullopt;
}

std::optional<Contradiction> contradictionIn(const DetectorFact &check)
{
    // One that missed an error has failed, whatever else it says.
    if (!check.everyInjectionSeen() || *check.seenErroredSeconds <= *check.seenBitErrors)
        return std::nullopt;
    return Contradiction{
        "seen_errored_seconds",
        Text(QT_TRANSLATE_NOOP("core", "%1 bit errors cannot make %2 errored seconds."))
            .arg(*check.seenBitErrors)
            .arg(*check.seenErroredSeconds),
        Text(QT_TRANSLATE_NOOP("core", "Read the test set again."))};
}

std::optional<Contradiction> balanceContradiction(double balance,
                                                  std::optional<double> influenceDbrnc,
                                                  std::optional<double> noiseDbrnc)
{
    if (!influenceDbrnc || !noiseDbrnc)
        return std::nullopt;
    const double computed = balanceDb(*influenceDbrnc, *noiseDbrnc);
    if (std::abs(balance - computed) <= balanceToleranceDb)
        return std::nullopt;
    return Contradiction{
        "value",
        Text(QT_TRANSLATE_NOOP("core", "A balance of %1 dB does not fit: power influence %2 less "
                                       "noise %3 is %4 dB."))
            .arg(balance)
            .arg(*influenceDbrnc)
            .arg(*noiseDbrnc)
            .arg(computed),
        Text(QT_TRANSLATE_NOOP("core",
                               "Read influence and noise again; the balance can be left empty."))};
}

Contradictions::Contradictions(const std::vector<const Fact *> &counting)
{
    for (const Fact *fact : counting) {
        if (const auto *loop = fact->as<LoopFact>(); loop && loop->makeup)
            m_amplified = loop->makeup->amplified;
        const auto *analog = fact->as<AnalogFact>();
        if (analog && analog->quantity == AnalogQuantity::PowerInfluence)
            m_influenceDbrnc = analog->number();
        if (analog && analog->quantity == AnalogQuantity::Noise)
            m_noiseDbrnc = analog->number();
    }
}

std::optional<Contradiction> Contradictions::in(const Fact &fact) const
{
    if (const auto *loop = fact.as<LoopFact>())
        return contradictionIn(*loop);
    if (const auto *check = fact.as<DetectorFact>())
        return contradictionIn(*check);
    const auto *analog = fact.as<AnalogFact>();
    if (!analog)
        return std::nullopt;
    if (const auto found = contradictionIn(*analog, m_amplified))
        return found;
    const auto value = analog->number();
    return analog->quantity == AnalogQuantity::Balance && value
               ? balanceContradiction(*value, m_influenceDbrnc, m_noiseDbrnc)
               : std::nullopt;
}

} // namespace loopwright
