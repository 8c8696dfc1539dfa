#include "core/safety/SafetyFact.h"

#include "core/base/FieldCodec.h"

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

constexpr WirePair wirePairs[] = {WirePair::TipGround, WirePair::RingGround, WirePair::TipRing};
constexpr CardKey cardKeys[] = {CardKey::ForeignVoltage, CardKey::BondingGround, CardKey::Storm,
                                CardKey::WorkPosition};

struct CardRow
{
    CardKey key;
    const char *sentence;
};
constexpr CardRow cardRows[] = {
    {CardKey::ForeignVoltage,
     "Foreign voltage, alternating and direct, was measured between tip, ring and ground before "
     "anything was touched."},
    {CardKey::BondingGround,
     "Protector, bond and ground are in place and sound; none was removed or defeated."},
    {CardKey::Storm, "No thunderstorm is near."},
    {CardKey::WorkPosition, "The place of work is safe: footing, ladder, traffic, power lines, air "
                            "of a manhole; somebody knows where I am."},
};

QString volts(double value)
{
    return QString::number(value, 'g', 6) + " V";
}

/// Which limits hold for the readings of one card.
struct Bounds
{
    QString hazardKey;
    QString troubleKey; ///< empty if no direct voltage below the hazard is a trouble
};

Bounds boundsFor(bool alternating, const std::optional<bool> &officeConnected)
{
    const bool battery = officeConnected.value_or(false);
    if (alternating) {
        // A working pair picks up a few volts from the power lines; a dead one should show none.
        const QString trouble = battery ? QString("foreign_voltage_marginal_max")
                                        : QString("foreign_voltage_good_below");
        return {"hazard_ac_v", trouble};
    }
    if (battery)
        return {"hazard_dc_v_office_connected", {}};
    return {"hazard_dc_v_office_disconnected", "foreign_voltage_good_below"};
}

QString why(const VoltageFinding &finding, const SafetyFact &fact, bool hazard)
{
    const QString reading = QString("%1 %2 between %3")
                                .arg(volts(std::abs(finding.volts)),
                                     finding.alternating ? QString("AC") : QString("DC"),
                                     wirePairName(finding.pair).replace(" to ", " and "));
    if (!hazard)
        return QString("%1: %2 or more on this pair is a trouble to clear, not a hazard")
            .arg(reading, volts(finding.limit));
    QString text = QString("%1 is more than %2").arg(reading, volts(finding.limit));
    if (finding.alternating)
        return text;
    if (!fact.officeConnected)
        return text + ", and the card does not say that the office is connected";
    return text + (*fact.officeConnected ? ", more than office battery explains"
                                         : " although the office is disconnected");
}

QString whatToDo(bool alternating, bool battery, bool hazard)
{
    if (hazard && alternating && battery)
        return "Stop, move away, report. Ringing is about 90 V: measure again only when the line "
               "is known not to ring.";
    if (hazard)
        return "Stop, move away, report. Nobody touches the pair until the source is found.";
    if (alternating)
        return "Look for power contact, a missing bond or an open shield; clear it before the line "
               "is handed over.";
    return "Look for a cross with a working pair or wet insulation; clear it before the line is "
           "handed over.";
}

void judgeReading(SafetyVerdict &verdict, const SafetyFact &fact, const LimitSet &limits,
                  WirePair pair, bool alternating, double reading)
{
    const Bounds bounds = boundsFor(alternating, fact.officeConnected);
    const double size = std::abs(reading);
    const bool hazard = size > limits.value(bounds.hazardKey);
    if (!hazard && (bounds.troubleKey.isEmpty() || size < limits.value(bounds.troubleKey)))
        return;
    VoltageFinding finding{pair, alternating, reading, 0, {}, {}, {}};
    finding.limitKey = hazard ? bounds.hazardKey : bounds.troubleKey;
    finding.limit = limits.value(finding.limitKey);
    finding.reason = why(finding, fact, hazard);
    finding.toDo = whatToDo(alternating, fact.officeConnected.value_or(false), hazard);
    (hazard ? verdict.hazards : verdict.troubles).push_back(finding);
}

void judgeVoltages(SafetyVerdict &verdict, const SafetyFact &fact, const LimitSet &limits,
                   bool alternating)
{
    const Voltages voltages = (alternating ? fact.acV : fact.dcV).value_or(Voltages());
    for (const WirePair pair : wirePairs) {
        if (const auto reading = voltages.at(pair))
            judgeReading(verdict, fact, limits, pair, alternating, *reading);
        else
            verdict.missing << QString("%1 voltage, %2")
                                   .arg(alternating ? QString("AC") : QString("DC"),
                                        wirePairName(pair));
    }
}

constexpr double maxVolts = 20000;

constexpr auto voltageFields(const char *tipGround, const char *ringGround, const char *tipRing)
{
    return std::tuple{bound(tipGround, &Voltages::tipGround, "V", -maxVolts, maxVolts),
                      bound(ringGround, &Voltages::ringGround, "V", -maxVolts, maxVolts),
                      bound(tipRing, &Voltages::tipRing, "V", -maxVolts, maxVolts)};
}
constexpr auto namedFields =
    std::tuple{bound("named_by_office.by", &NamedVoltage::by, 200),
               bound("named_by_office.what", &NamedVoltage::what, 200),
               bound("named_by_office.volts", &NamedVoltage::volts, "V", -maxVolts, maxVolts)};
constexpr auto safetyFields =
    std::tuple{bound("office_connected", &SafetyFact::officeConnected),
               within("ac_v", &SafetyFact::acV,
                      voltageFields("ac_v.tip_ground", "ac_v.ring_ground", "ac_v.tip_ring")),
               within("dc_v", &SafetyFact::dcV,
                      voltageFields("dc_v.tip_ground", "dc_v.ring_ground", "dc_v.tip_ring")),
               bound("confirmed", &SafetyFact::confirmed),
               bound("place", &SafetyFact::place, 200),
               bound("meter_proved", &SafetyFact::meterProved),
               bound("wet", &SafetyFact::wet),
               within("named_by_office", &SafetyFact::namedByOffice, namedFields)};

} // namespace

QString cardSentence(CardKey key)
{
    return QString::fromUtf8(
        std::find_if(std::begin(cardRows), std::end(cardRows), [key](const CardRow &row) {
            return row.key == key;
        })->sentence);
}

QString wirePairName(WirePair pair)
{
    return toText(pair).replace("_", " to ");
}

std::optional<double> Voltages::at(WirePair pair) const
{
    switch (pair) {
    case WirePair::TipGround:
        return tipGround;
    case WirePair::RingGround:
        return ringGround;
    case WirePair::TipRing:
        break;
    }
    return tipRing;
}

bool SafetyFact::isConfirmed(CardKey key) const
{
    return confirmed && std::find(confirmed->begin(), confirmed->end(), key) != confirmed->end();
}

SafetyFact SafetyFact::read(JsonReader &reader)
{
    SafetyFact fact;
    readFields(reader, fact, safetyFields);
    return fact;
}

void SafetyFact::write(QJsonObject &object) const
{
    writeFields(object, *this, safetyFields);
}

std::span<const FactField> SafetyFact::fields()
{
    static constexpr auto rows = fieldsIn(safetyFields);
    return rows;
}

QString SafetyVerdict::text() const
{
    switch (outcome) {
    case SafetyOutcome::Hazard: {
        QStringList reasons;
        for (const VoltageFinding &hazard : hazards)
            reasons << hazard.reason;
        return QString("Hazard: %1. Stop, move away, report.").arg(reasons.join("; "));
    }
    case SafetyOutcome::Incomplete:
        return QString("The safety card is incomplete; missing: %1.").arg(missing.join("; "));
    case SafetyOutcome::Clear:
        break;
    }
    return troubles.empty()
               ? QString("No reading is a hazard, and every check is confirmed.")
               : QString("No reading is a hazard; a foreign voltage is to be cleared.");
}

SafetyVerdict judge(const SafetyFact &fact, const LimitSet &limits)
{
    SafetyVerdict verdict;
    if (!fact.officeConnected)
        verdict.missing << "whether the office is connected";
    judgeVoltages(verdict, fact, limits, true);
    judgeVoltages(verdict, fact, limits, false);
    for (const CardKey key : cardKeys)
        if (!fact.isConfirmed(key))
            verdict.missing << QString("confirmation \"%1\"").arg(toText(key));
    verdict.outcome = !verdict.hazards.empty()     ? SafetyOutcome::Hazard
                      : !verdict.missing.isEmpty() ? SafetyOutcome::Incomplete
                                                   : SafetyOutcome::Clear;
    return verdict;
}

} // namespace loopwright
