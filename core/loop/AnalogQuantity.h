#pragma once
// The quantities of an analog line at the customer's interface: unit, meaning, and what is good,
// marginal and poor. Limits come from the limit set. At the limit counts as the better class,
// except noise and foreign voltage, which are good only below it.
// Loss, noise and influence are measured off-hook, current off-hook, voltages on-hook; insulation
// and foreign voltage only on a pair that is disconnected at both ends and dead.

#include "core/base/FactField.h"
#include "core/base/LimitSet.h"
#include "core/base/Text.h"
#include "core/loop/LoopLoss.h"

#include <variant>

namespace loopwright {

enum class AnalogQuantity
{
    LoopCurrent,
    Loss1004,
    Noise,
    PowerInfluence,
    Balance, ///< power influence less noise: the installer's subtraction
    Polarity,
    DialTone,
    Ringing,
    Slope, ///< the larger of the differences of the losses at 404 and 2804 Hz from that at 1004 Hz
    Insulation,
    ForeignVoltage,
    OnHookVoltage,
    RingingVoltage,
};
template<>
struct EnumCodes<AnalogQuantity>
{
    static constexpr std::pair<AnalogQuantity, const char *> table[] = {
        {AnalogQuantity::LoopCurrent, "loop_current"},
        {AnalogQuantity::Loss1004, "loss_1004"},
        {AnalogQuantity::Noise, "noise"},
        {AnalogQuantity::PowerInfluence, "power_influence"},
        {AnalogQuantity::Balance, "balance"},
        {AnalogQuantity::Polarity, "polarity"},
        {AnalogQuantity::DialTone, "dial_tone"},
        {AnalogQuantity::Ringing, "ringing"},
        {AnalogQuantity::Slope, "slope"},
        {AnalogQuantity::Insulation, "insulation"},
        {AnalogQuantity::ForeignVoltage, "foreign_voltage"},
        {AnalogQuantity::OnHookVoltage, "on_hook_voltage"},
        {AnalogQuantity::RingingVoltage, "ringing_voltage"}};
};

enum class QuantityClass
{
    Good,
    Marginal,
    Poor,
};
template<>
struct EnumCodes<QuantityClass>
{
    static constexpr std::pair<QuantityClass, const char *> table[] = {
        {QuantityClass::Good, "good"},
        {QuantityClass::Marginal, "marginal"},
        {QuantityClass::Poor, "poor"}};
};

/// A number in the quantity's unit, or the answer yes or no.
using AnalogValue = std::variant<double, bool>;

struct AnalogQuantityInfo
{
    AnalogQuantity quantity;
    const char *name;       ///< "loop current"
    const char *unit;       ///< "mA"; empty for a yes or no
    bool yesOrNo;           ///< the value is true (as it should be) or false
    bool always;            ///< needed on every analog order; else only judged when recorded
    const char *definition; ///< how it is measured, and what it means
    double min;             ///< range of a number that can be recorded, in `unit`
    double max;
};
/// All quantities in the order of the table of limits.
std::span<const AnalogQuantityInfo> analogQuantities();
const AnalogQuantityInfo &info(AnalogQuantity quantity);

/// The field `value` of a fact about the quantity, in the quantity's unit.
FactField valueFieldOf(AnalogQuantity quantity);

/// How many of the quantity's units one of `unit` is (1 for "V dc", 1e6 for "Mohm"); nothing if
/// the unit does not fit the quantity.
std::optional<double> unitFactor(AnalogQuantity quantity, const QString &unit);

/// The value is in the quantity's unit; a number where an answer is due, and the reverse, is poor.
/// Voltages count by magnitude.
QuantityClass classify(AnalogQuantity quantity, const AnalogValue &value, const LimitSet &limits);
/// "good to 8.5 dB, marginal to 10 dB".
Text limitText(AnalogQuantity quantity, const LimitSet &limits);
/// Where the bound comes from that decided the class of the value, if the value keeps or breaks
/// that bound as the source has it.
QString limitSource(AnalogQuantity quantity, const AnalogValue &value, const LimitSet &limits);
/// Bound of good that the value is nearest to: what is printed beside it. 0 for a yes or no.
double goodLimit(AnalogQuantity quantity, double value, const LimitSet &limits);
/// "31.5 mA", "yes", "reversed".
Text valueText(AnalogQuantity quantity, const AnalogValue &value);

/// Power influence less noise, dB. Not a longitudinal balance by a bridge; below an influence of
/// about 60 dBrnC it means nothing (common practice). Free of the last digit's noise, so that 80.1
/// less 20.1 is 60.
double balanceDb(double powerInfluenceDbrnc, double noiseDbrnc);
/// Influence below which the subtraction means nothing, dBrnC (common practice).
inline constexpr double influenceForBalanceDbrnc = 60;

/// The larger magnitude of loss(404) - loss(1004) and loss(2804) - loss(1004), dB.
double slopeDb(double loss404Db, double loss1004Db, double loss2804Db);

/// What a make-up predicts at the customer's interface.
struct AnalogPrediction
{
    double loss1004Db = 0; ///< 900 ohm to 600 ohm
    double slopeDb = 0;
    double loopCurrentMa = 0;
    double dcResistanceOhm = 0;
};
/// Office battery and resistances of the feed and the set, from memory; not valid for current-
/// limited feeds of carrier equipment.
struct LoopFeed
{
    double batteryV = 48;
    double feedOhm = 400;
    double setOhm = 430;
};
double predictedLoopCurrentMa(double loopOhm, const LoopFeed &feed = {});
AnalogPrediction predictAnalog(const LoopMakeup &makeup, const LoopFeed &feed = {});

} // namespace loopwright
