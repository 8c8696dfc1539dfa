#include "core/safety/SafetyFact.h"

#include "core/base/FieldCodec.h"

#include <algorithm>

namespace loopwright {

namespace {

struct CardRow
{
    CardKey key;
    const char *sentence;
};
constexpr CardRow cardRows[] = {
    {CardKey::ForeignVoltage,
     QT_TRANSLATE_NOOP("core", "Foreign voltage, alternating and direct, was measured between tip, "
                               "ring and ground before anything was touched.")},
    {CardKey::BondingGround,
     QT_TRANSLATE_NOOP("core",
                       "Protector, bond and ground are in place and sound; none was removed "
                       "or defeated.")},
    {CardKey::Storm, QT_TRANSLATE_NOOP("core", "No thunderstorm is near.")},
    {CardKey::WorkPosition,
     QT_TRANSLATE_NOOP(
         "core", "The place of work is safe: footing, ladder, traffic, eyes, power lines, air "
                 "of a manhole; span power is off and tagged; somebody knows where I am.")},
};

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

Text cardSentence(CardKey key)
{
    return std::ranges::find(cardRows, key, &CardRow::key)->sentence;
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

} // namespace loopwright
