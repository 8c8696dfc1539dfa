#include "core/turnup/FirstCheck.h"

#include <algorithm>
#include <iterator>

namespace loopwright {

namespace {

struct Advice
{
    const char *meaning;
    const char *check;
    const char *then;
    LinePart part;
};

// Hints in our own words following the steps that an installer confirms in order (common practice).
constexpr Advice noSyncAtU{
    "The network termination does not reach synchronisation on the pair.",
    "The pair: is it the one on the order, free of load coils, with loss and resistance in limits? "
    "Wait 15 s after a cold start before calling it down.",
    "The line code of the network termination (2B1Q unless the loop is an old one), then the line "
    "card in the serving office and whether it is provisioned.",
    LinePart::Loop};
constexpr Advice noSyncAtSt{
    "The network termination and the terminal do not see each other on the inside wiring.",
    "The inside wiring: both pairs through and not reversed, 100 ohm at the network termination "
    "and at the last socket only, each on both pairs.",
    "Power of the network termination and of the terminal; then try one terminal alone at the "
    "network termination.",
    LinePart::PremisesWiring};
constexpr Advice noTei{
    "The terminal was given no TEI.",
    "How the terminal is set: automatic or fixed TEI as ordered, and no fixed TEI twice on the "
    "line.",
    "Whether layer 2 is provisioned in the serving office.", LinePart::Terminal};
constexpr Advice noDataLink{
    "The terminal has a TEI, but the data link is not established.",
    "The TEI and the protocol variant in the terminal against the order: point-to-point or "
    "multipoint.",
    "The variant that the serving office's switch gives to the line.", LinePart::Terminal};
constexpr Advice noLayer3{
    "The switch did not accept the terminal's SPID.",
    "The SPID in the terminal against the order, digit by digit, and the protocol variant.",
    "Whether the SPID is built in the serving office's switch.", LinePart::Terminal};

struct CauseAdvice
{
    int first; ///< causes from `first` to `last`
    int last;
    Advice advice;
};

constexpr Advice office{"The network itself cannot serve the line now.",
                        "The serving office: report the cause and the time; try again first.",
                        "Nothing at the premises before the office has answered.",
                        LinePart::ServingOffice};
constexpr Advice notProvisioned{
    "The line is not provisioned for what the terminal asks.",
    "The order's services against what the serving office has built on the line.",
    "The bearer that the terminal is set to, also 56 against 64 kbit/s.", LinePart::ServingOffice};
constexpr Advice variant{"The terminal and the switch do not speak the same protocol variant.",
                         "The protocol variant set in the terminal against the order.",
                         "The variant that the serving office's switch gives to the line; then "
                         "restart the terminal.",
                         LinePart::Terminal};
constexpr Advice outOfStep{"The terminal and the switch are out of step.",
                           "Restart the terminal and let it start anew.",
                           "The protocol variant set in the terminal.", LinePart::Terminal};

// Causes of Q.850 that name another part than the layer does, for layers 2 and 3.
constexpr CauseAdvice byCause[] = {
    {18,
     18,
     {"The terminal does not answer.", "Power of the terminal, its TEI and its SPID state.",
      "The inside wiring to it.", LinePart::Terminal}},
    {27,
     27,
     {"The line is down below this layer.", "Layers 1 and 2 again, from the U interface upwards.",
      "The pair.", LinePart::Loop}},
    {38, 38, office},
    {41, 42, office},
    {47, 47, office},
    {50, 50, notProvisioned},
    {57, 58, notProvisioned},
    {63, 63, notProvisioned},
    {65, 65, notProvisioned},
    {69, 69, variant},
    {70, 70, notProvisioned},
    {81, 81, outOfStep},
    {82,
     82,
     {"The channel that was asked for does not exist on this line.",
      "Point-to-point or multipoint, as set in the terminal against the order.",
      "How the serving office has built the line.", LinePart::Terminal}},
    {95, 97, variant},
    {98, 98, outOfStep},
    {99, 99, variant},
    {100,
     100,
     {"The switch does not know what the terminal sent: at start-up, a wrong SPID.",
      "The SPID in the terminal against the order, digit by digit.",
      "Whether the SPID is built in the serving office's switch.", LinePart::Terminal}},
    {101, 101, outOfStep},
    {102,
     102,
     {"No reply came in time.", "The inside wiring and its terminations: frames are being lost.",
      "Layer 2 of the terminal, then noise on the loop.", LinePart::PremisesWiring}},
    {111, 111, variant},
};

const Advice &adviceFor(const LayerFact &fact)
{
    if (fact.layer == 1)
        return fact.interfaceOrU() == LineInterface::U ? noSyncAtU : noSyncAtSt;
    const auto row = std::find_if(std::begin(byCause), std::end(byCause), [&](const auto &each) {
        return fact.cause && *fact.cause >= each.first && *fact.cause <= each.last;
    });
    if (row != std::end(byCause))
        return row->advice;
    if (fact.layer == 2)
        return fact.tei ? noDataLink : noTei;
    return noLayer3;
}

struct PartName
{
    LinePart part;
    const char *name;
};
constexpr PartName partNames[] = {
    {LinePart::PremisesWiring, "premises wiring"},
    {LinePart::Terminal, "terminal equipment"},
    {LinePart::Loop, "loop and outside plant"},
    {LinePart::ServingOffice, "serving office"},
};

} // namespace

QString partName(LinePart part)
{
    const auto row = std::find_if(std::begin(partNames), std::end(partNames),
                                  [part](const PartName &each) { return each.part == part; });
    return QString::fromUtf8(row->name);
}

FirstCheck firstCheck(const LayerFact &fact)
{
    const Advice &advice = adviceFor(fact);
    return {QString::fromUtf8(advice.meaning), QString::fromUtf8(advice.check),
            QString::fromUtf8(advice.then), advice.part};
}

} // namespace loopwright
