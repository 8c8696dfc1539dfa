#include "core/safety/Cautions.h"

namespace loopwright {

namespace {

#define TEXT(text) QT_TRANSLATE_NOOP("core", text)

constexpr Caution table[] = {
    {"live_until_measured", TEXT("Every pair is live until measured"),
     TEXT("A working pair carries 42 to 53 V of direct current, and ringing puts about 90 V of "
          "alternating current at 20 Hz on top: enough to hurt, and on a ladder to make you fall. "
          "Line-powered extension equipment of digital lines puts up to 190 V, and coin lines 130 "
          "V, "
          "between the wires. Basic-rate lines may carry a small sealing current."),
     TEXT("published equipment practice; coin lines from memory")},
    {"foreign_voltage", TEXT("Measure before touching"),
     TEXT(
         "Measure alternating and direct voltage of each wire to ground and between the wires, for "
         "power contact and induced voltage. Above the limit, or where the office does not explain "
         "what you read: stop, move away, report. A few volts on a dead pair are a trouble to "
         "clear, "
         "not a hazard."),
     "common practice"},
    {"power_on_the_pole", TEXT("Power on the same pole"),
     TEXT("Power lines and power equipment count as live until you can see that they are bonded to "
          "an "
          "accepted ground. Metal conduit, bare ground wires and street-light fixtures below the "
          "communications attachment, or less than 20 inches above it, count as live too: test for "
          "voltage first, then place a temporary bond to the strand that carries 500 A for 1 s."),
     "8 CCR 8614(a), (c)"},
    {"approach_distance", TEXT("Keep away from overhead power"),
     TEXT(
         "Keep the approach distances to exposed power lines with your body and with anything that "
         "conducts and that you hold, carry or raise."),
     "29 CFR 1910.268(b)(7); 8 CCR 8602(h)"},
    {"strand_gloves", TEXT("Handling strand near power wires"),
     TEXT("Wear insulating gloves and let no part of your body touch the strand until it is "
          "tensioned, "
          "dead-ended and permanently grounded."),
     "8 CCR 8615(a)"},
    {"wood_pole", TEXT("Before climbing a wood pole"),
     TEXT(
         "Inspect it. Test it as well where it is a dead end, carries only drops or fewer than ten "
         "wires, stands between long unguyed spans (over 165 ft) or at a downward change of grade, "
         "or "
         "where your work changes its tension."),
     "8 CCR 8615(b)-(c)"},
    {"storm", TEXT("Thunderstorm"),
     TEXT("Do no work on outside plant, protectors or inside wiring while a thunderstorm is near."),
     "common practice"},
    {"bonding_ground", TEXT("Protector, bond and ground"),
     TEXT("They must be in place and to the electrical code in force. Never remove or defeat a "
          "ground, "
          "not even for a measurement."),
     TEXT("NEC article 800 (from memory); the local electrical code")},
    {"ladder_roof", TEXT("Ladders and roofs"),
     TEXT("Inspect, set on firm ground, tie off. From 4 ft up, telecommunications work asks for "
          "fall "
          "protection."),
     "29 CFR 1910.268(g)"},
    {"manhole", TEXT("Manholes and vaults"),
     TEXT(
         "Guard the opening at once when the cover comes off. Test the air every time before entry "
         "(oxygen 19.5 to 23.5 %, combustible gas under 10 % of the explosive limit) and "
         "ventilate. "
         "Somebody with first-aid training stays at hand where traffic, water, power cables, an "
         "explosive reading, poison or open flame make a hazard."),
     TEXT("29 CFR 1910.268(o)(2); 8 CCR 8616(a); the figures: rule on confined spaces, 29 CFR "
          "1910.146(b) (from memory)")},
    {"span_power", TEXT("Span power"),
     TEXT("Before work on a pair that carries power for equipment along the way have it turned off "
          "and "
          "tagged at its source, and prove the pair dead with the meter. Restore it hands off; "
          "measure "
          "at "
          "guarded points."),
     "common practice"},
    {"eyes", TEXT("Eye protection"),
     TEXT("Wear it when you drill, cut, drive, climb or work overhead, and at batteries."),
     TEXT("common practice; employer's rules")},
    {"traffic", TEXT("Traffic"),
     TEXT("Set out signs, cones and a warning garment before you work beside or in a road; park "
          "between "
          "the traffic and yourself."),
     TEXT("common practice; local traffic rules")},
    {"alone", TEXT("Working alone"),
     TEXT("Check in and out, and tell somebody where you are. Do not climb or enter alone."),
     "common practice"},
    {"insulation_test", TEXT("Insulation tests"),
     TEXT("An insulation test puts high voltage on the pair: warn others, disconnect the equipment "
          "at "
          "both ends, discharge the pair afterwards."),
     "common practice"},
};

#undef TEXT

} // namespace

std::span<const Caution> cautions()
{
    return table;
}

QString cautionsDisclaimer()
{
    return QT_TRANSLATE_NOOP(
        "core",
        "These reminders do not replace training, permits or local code; where they differ, "
        "local code and licensed practice prevail. In the United States 29 CFR 1910.268 covers "
        "telecommunications work, part 1926 construction; in California title 8 sections 8600 "
        "to 8618 (\"8 CCR\").");
}

} // namespace loopwright
