#include "core/loop/AnalogQuantity.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace loopwright {

namespace {

using Quantity = AnalogQuantity;

constexpr std::array<AnalogQuantityInfo, 13> table{{
    {Quantity::LoopCurrent, QT_TRANSLATE_NOOP("core", "loop current"), "mA", false, true,
     QT_TRANSLATE_NOOP("core", "direct current through the pair, off-hook"), 0, 1000},
    {Quantity::Loss1004, QT_TRANSLATE_NOOP("core", "circuit loss at 1004 Hz"), "dB", false, true,
     QT_TRANSLATE_NOOP("core", "off-hook, against the office's milliwatt at 1004 Hz"), -30, 100},
    {Quantity::Noise, QT_TRANSLATE_NOOP("core", "circuit noise"), "dBrnC", false, true,
     QT_TRANSLATE_NOOP(
         "core",
         "between the wires, C-message weighted, off-hook towards the office's quiet termination"),
     -30, 150},
    {Quantity::PowerInfluence, QT_TRANSLATE_NOOP("core", "power influence"), "dBrnC", false, true,
     QT_TRANSLATE_NOOP(
         "core",
         "from both wires to ground, C-message weighted, off-hook towards the quiet termination"),
     -30, 200},
    {Quantity::Balance, QT_TRANSLATE_NOOP("core", "balance"), "dB", false, true,
     QT_TRANSLATE_NOOP("core", "power influence less circuit noise: the installer's subtraction, "
                               "not a bridge measurement"),
     -150, 200},
    {Quantity::Polarity, QT_TRANSLATE_NOOP("core", "polarity"), "", true, true,
     QT_TRANSLATE_NOOP("core", "tip positive to ring, on-hook"), 0, 0},
    {Quantity::DialTone, QT_TRANSLATE_NOOP("core", "dial tone"), "", true, true,
     QT_TRANSLATE_NOOP("core", "heard off-hook, and broken by a digit"), 0, 0},
    {Quantity::Ringing, QT_TRANSLATE_NOOP("core", "ringing"), "", true, true,
     QT_TRANSLATE_NOOP("core", "a call in rings the line"), 0, 0},
    {Quantity::Slope, QT_TRANSLATE_NOOP("core", "slope"), "dB", false, false,
     QT_TRANSLATE_NOOP(
         "core",
         "the larger of the differences of the losses at 404 and 2804 Hz from that at 1004 Hz"),
     -30, 100},
    {Quantity::Insulation, QT_TRANSLATE_NOOP("core", "insulation"), "ohm", false, false,
     QT_TRANSLATE_NOOP("core", "the least of each wire to ground and wire to wire, on a dead pair "
                               "disconnected at both ends"),
     0, 1e15},
    {Quantity::ForeignVoltage, QT_TRANSLATE_NOOP("core", "foreign voltage"), "V", false, false,
     QT_TRANSLATE_NOOP("core", "the largest on any two of tip, ring and ground, on a dead pair "
                               "disconnected at both ends"),
     -20000, 20000},
    {Quantity::OnHookVoltage, QT_TRANSLATE_NOOP("core", "on-hook voltage"), "V", false, false,
     QT_TRANSLATE_NOOP("core", "direct voltage between the wires, on-hook"), -1000, 1000},
    {Quantity::RingingVoltage, QT_TRANSLATE_NOOP("core", "ringing voltage"), "V", false, false,
     QT_TRANSLATE_NOOP("core", "alternating voltage at 20 Hz between the wires while it rings"), 0,
     1000},
}};

// The rows stand in the order of the enumeration, so that info() is a look-up.
constexpr bool inOrder()
{
    for (std::size_t i = 0; i < table.size(); ++i)
        if (std::size_t(table[i].quantity) != i)
            return false;
    return true;
}
static_assert(inOrder());

struct UnitRow
{
    const char *of; ///< unit of the quantity
    const char *written;
    double factor;
};
constexpr UnitRow units[] = {
    {"mA", "mA", 1},      {"dB", "dB", 1},      {"dBrnC", "dBrnC", 1}, {"ohm", "ohm", 1},
    {"ohm", "kohm", 1e3}, {"ohm", "Mohm", 1e6}, {"V", "V", 1},         {"V", "V dc", 1},
    {"V", "V ac", 1},     {"V", "V rms", 1},    {"", "", 1},           {"", "-", 1},
};

/// One bound of good and its companion of marginal. A quantity may have one upwards and one
/// downwards.
struct Bound
{
    Quantity quantity;
    bool atMost;      ///< else at least
    bool strict;      ///< good only off the bound itself
    const char *good; ///< keys of the limit set
    const char *marginal;
};
constexpr Bound bounds[] = {
    {Quantity::LoopCurrent, false, false, "loop_current_good_min", "loop_current_marginal_min"},
    {Quantity::LoopCurrent, true, false, "loop_current_good_max", "loop_current_marginal_max"},
    {Quantity::Loss1004, true, false, "loss_1004_good_max", "loss_1004_marginal_max"},
    {Quantity::Noise, true, true, "noise_good_below", "noise_marginal_max"},
    {Quantity::PowerInfluence, true, false, "power_influence_good_max",
     "power_influence_marginal_max"},
    {Quantity::Balance, false, false, "balance_good_min", "balance_marginal_min"},
    {Quantity::Slope, true, false, "slope_good_max", "slope_marginal_max"},
    {Quantity::Insulation, false, false, "insulation_good_min", "insulation_marginal_min"},
    {Quantity::ForeignVoltage, true, true, "foreign_voltage_good_below",
     "foreign_voltage_marginal_max"},
    {Quantity::OnHookVoltage, false, false, "on_hook_voltage_good_min",
     "on_hook_voltage_marginal_min"},
    // No margin upwards: beyond the good voltage it is poor.
    {Quantity::OnHookVoltage, true, false, "on_hook_voltage_good_max", "on_hook_voltage_good_max"},
    {Quantity::RingingVoltage, false, false, "ringing_voltage_good_min",
     "ringing_voltage_marginal_min"},
};

constexpr bool everyNumberHasABound()
{
    return std::ranges::all_of(table, [](const AnalogQuantityInfo &row) {
        return row.yesOrNo || std::ranges::find(bounds, row.quantity, &Bound::quantity) !=
                                  std::ranges::end(bounds);
    });
}
static_assert(everyNumberHasABound());
static_assert(table.size() == std::size(EnumCodes<AnalogQuantity>::table));

/// Sign tells the side, not the size, of what is judged by size: a voltage by the hand that held
/// the leads, a slope by which end of the band is lower.
double judged(Quantity quantity, double value)
{
    const bool bySize = quantity == Quantity::Slope || quantity == Quantity::ForeignVoltage ||
                        quantity == Quantity::OnHookVoltage;
    return bySize ? std::abs(value) : value;
}

/// Of two readings with few decimals, without the binary rest that would push it off a limit.
double difference(double minuend, double subtrahend)
{
    return std::round((minuend - subtrahend) * 1e9) / 1e9;
}

QuantityClass classOf(const Bound &bound, double value, const LimitSet &limits)
{
    const double good = limits.value(bound.good);
    const double marginal = limits.value(bound.marginal);
    if (bound.atMost)
        return (bound.strict ? value < good : value <= good) ? QuantityClass::Good
               : value <= marginal                           ? QuantityClass::Marginal
                                                             : QuantityClass::Poor;
    return value >= good       ? QuantityClass::Good
           : value >= marginal ? QuantityClass::Marginal
                               : QuantityClass::Poor;
}

QString withUnit(double value, const char *unit)
{
    if (qstrcmp(unit, "ohm") == 0 && value >= 1e6)
        return QString::number(value / 1e6, 'g', 6) + " Mohm";
    if (qstrcmp(unit, "ohm") == 0 && value >= 1e4)
        return QString::number(value / 1e3, 'g', 6) + " kohm";
    return QString("%1 %2").arg(QString::number(value, 'g', 6), QString::fromUtf8(unit));
}

Text boundText(const Bound &bound, const char *unit, const LimitSet &limits)
{
    const Text good = Text(!bound.atMost  ? QT_TRANSLATE_NOOP("core", "good from %1")
                           : bound.strict ? QT_TRANSLATE_NOOP("core", "good below %1")
                                          : QT_TRANSLATE_NOOP("core", "good to %1"))
                          .arg(withUnit(limits.value(bound.good), unit));
    if (limits.value(bound.good) == limits.value(bound.marginal))
        return good;
    return Text(bound.atMost ? QT_TRANSLATE_NOOP("core", "%1, marginal to %2")
                             : QT_TRANSLATE_NOOP("core", "%1, marginal from %2"))
        .arg(good)
        .arg(withUnit(limits.value(bound.marginal), unit));
}

struct YesNoWords
{
    Quantity quantity;
    const char *yes;
    const char *no;
    const char *limit;
};
constexpr YesNoWords yesNoWords[] = {
    {Quantity::Polarity, QT_TRANSLATE_NOOP("core", "tip positive to ring"),
     QT_TRANSLATE_NOOP("core", "reversed"), QT_TRANSLATE_NOOP("core", "tip positive to ring")},
    {Quantity::DialTone, QT_TRANSLATE_NOOP("core", "heard"), QT_TRANSLATE_NOOP("core", "not heard"),
     QT_TRANSLATE_NOOP("core", "heard")},
    {Quantity::Ringing, QT_TRANSLATE_NOOP("core", "rings"),
     QT_TRANSLATE_NOOP("core", "does not ring"), QT_TRANSLATE_NOOP("core", "rings")},
};

const YesNoWords &yesNo(Quantity quantity)
{
    return *std::find_if(std::begin(yesNoWords), std::end(yesNoWords),
                         [quantity](const auto &row) { return row.quantity == quantity; });
}

} // namespace

std::span<const AnalogQuantityInfo> analogQuantities()
{
    return table;
}

const AnalogQuantityInfo &info(AnalogQuantity quantity)
{
    return table[std::size_t(quantity)];
}

FactField valueFieldOf(AnalogQuantity quantity)
{
    const AnalogQuantityInfo &row = info(quantity);
    return {.key = "value",
            .type = row.yesOrNo ? FieldType::YesNo : FieldType::Number,
            .unit = row.unit,
            .minimum = row.min,
            .maximum = row.max,
            .required = true};
}

std::optional<double> unitFactor(AnalogQuantity quantity, const QString &unit)
{
    for (const UnitRow &row : units)
        if (qstrcmp(row.of, info(quantity).unit) == 0 && unit == QLatin1StringView(row.written))
            return row.factor;
    return std::nullopt;
}

QuantityClass classify(AnalogQuantity quantity, const AnalogValue &value, const LimitSet &limits)
{
    if (info(quantity).yesOrNo) {
        const bool *answer = std::get_if<bool>(&value);
        return answer && *answer ? QuantityClass::Good : QuantityClass::Poor;
    }
    const double *number = std::get_if<double>(&value);
    if (!number || std::isnan(*number))
        return QuantityClass::Poor;
    QuantityClass worst = QuantityClass::Good;
    for (const Bound &bound : bounds)
        if (bound.quantity == quantity)
            worst = std::max(worst, classOf(bound, judged(quantity, *number), limits));
    return worst;
}

Text limitText(AnalogQuantity quantity, const LimitSet &limits)
{
    if (info(quantity).yesOrNo)
        return yesNo(quantity).limit;
    std::vector<Text> texts;
    for (const Bound &bound : bounds)
        if (bound.quantity == quantity)
            texts.push_back(boundText(bound, info(quantity).unit, limits));
    return Text::joined(texts, "; ");
}

QString limitSource(AnalogQuantity quantity, const AnalogValue &value, const LimitSet &limits)
{
    const double *number = std::get_if<double>(&value);
    if (info(quantity).yesOrNo || !number)
        return "common practice";
    const double figure = judged(quantity, *number);
    const Bound *deciding = nullptr; // of the worst class; among like ones the nearest
    for (const Bound &bound : bounds) {
        if (bound.quantity != quantity)
            continue;
        const auto rank = [&](const Bound &each) {
            return std::pair(classOf(each, figure, limits),
                             -std::abs(figure - limits.value(each.good)));
        };
        if (!deciding || rank(bound) > rank(*deciding))
            deciding = &bound;
    }
    const bool good = classOf(*deciding, figure, limits) == QuantityClass::Good;
    return limits.limit(good ? deciding->good : deciding->marginal).sourceFor(figure);
}

double goodLimit(AnalogQuantity quantity, double value, const LimitSet &limits)
{
    double nearest = 0;
    double distance = HUGE_VAL;
    for (const Bound &bound : bounds) {
        if (bound.quantity != quantity)
            continue;
        const double limit = limits.value(bound.good);
        if (std::abs(judged(quantity, value) - limit) < distance) {
            distance = std::abs(judged(quantity, value) - limit);
            nearest = limit;
        }
    }
    return nearest;
}

Text valueText(AnalogQuantity quantity, const AnalogValue &value)
{
    if (const bool *answer = std::get_if<bool>(&value)) {
        if (!info(quantity).yesOrNo)
            return *answer ? QT_TRANSLATE_NOOP("core", "yes") : QT_TRANSLATE_NOOP("core", "no");
        return *answer ? yesNo(quantity).yes : yesNo(quantity).no;
    }
    return Text::figure(withUnit(std::get<double>(value), info(quantity).unit));
}

double balanceDb(double powerInfluenceDbrnc, double noiseDbrnc)
{
    return difference(powerInfluenceDbrnc, noiseDbrnc);
}

double slopeDb(double loss404Db, double loss1004Db, double loss2804Db)
{
    return std::max(std::abs(difference(loss404Db, loss1004Db)),
                    std::abs(difference(loss2804Db, loss1004Db)));
}

double predictedLoopCurrentMa(double loopOhm, const LoopFeed &feed)
{
    return 1000 * feed.batteryV / (feed.feedOhm + loopOhm + feed.setOhm);
}

AnalogPrediction predictAnalog(const LoopMakeup &makeup, const LoopFeed &feed)
{
    const auto loss = [&makeup](double frequencyHz) {
        return insertionLossDb(makeup, frequencyHz, voiceBandTerminations);
    };
    AnalogPrediction prediction;
    prediction.loss1004Db = loss(1004);
    prediction.slopeDb = slopeDb(loss(404), prediction.loss1004Db, loss(2804));
    prediction.dcResistanceOhm = dcResistanceOhm(makeup);
    prediction.loopCurrentMa = predictedLoopCurrentMa(prediction.dcResistanceOhm, feed);
    return prediction;
}

} // namespace loopwright
