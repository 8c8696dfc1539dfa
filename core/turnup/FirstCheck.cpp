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
    QT_TRANSLATE_NOOP("core",
                      "The network termination does not reach synchronisation on the pair."),
    QT_TRANSLATE_NOOP("core",
                      "The pair: is it the one on the order, free of load coils, with loss and "
                      "resistance in limits? Wait 15 s after a cold start before calling it down."),
    QT_TRANSLATE_NOOP(
        "core", "The line code of the network termination (2B1Q unless the loop is an old one), "
                "then the line card in the serving office and whether it is provisioned."),
    LinePart::Loop};
constexpr Advice noSyncAtSt{
    QT_TRANSLATE_NOOP(
        "core",
        "The network termination and the terminal do not see each other on the inside wiring."),
    QT_TRANSLATE_NOOP("core",
                      "The inside wiring: both pairs through and not reversed, 100 ohm at the "
                      "network termination and at the last socket only, each on both pairs."),
    QT_TRANSLATE_NOOP("core", "Power of the network termination and of the terminal; then try one "
                              "terminal alone at the network termination."),
    LinePart::PremisesWiring};
constexpr Advice noTei{
    QT_TRANSLATE_NOOP("core", "The terminal was given no TEI."),
    QT_TRANSLATE_NOOP("core", "How the terminal is set: automatic or fixed TEI as ordered, and no "
                              "fixed TEI twice on the line."),
    QT_TRANSLATE_NOOP("core", "Whether layer 2 is provisioned in the serving office."),
    LinePart::Terminal};
constexpr Advice noDataLink{
    QT_TRANSLATE_NOOP("core", "The terminal has a TEI, but the data link is not established."),
    QT_TRANSLATE_NOOP("core", "The TEI and the protocol variant in the terminal against the order: "
                              "point-to-point or multipoint."),
    QT_TRANSLATE_NOOP("core", "The variant that the serving office's switch gives to the line."),
    LinePart::Terminal};
constexpr Advice noLayer3{
    QT_TRANSLATE_NOOP("core", "The switch did not accept the terminal's SPID."),
    QT_TRANSLATE_NOOP(
        "core",
        "The SPID in the terminal against the order, digit by digit, and the protocol variant."),
    QT_TRANSLATE_NOOP("core", "Whether the SPID is built in the serving office's switch."),
    LinePart::Terminal};

struct CauseAdvice
{
    int first; ///< causes from `first` to `last`
    int last;
    Advice advice;
};

constexpr Advice office{
    QT_TRANSLATE_NOOP("core", "The network itself cannot serve the line now."),
    QT_TRANSLATE_NOOP("core",
                      "The serving office: report the cause and the time; try again first."),
    QT_TRANSLATE_NOOP("core", "Nothing at the premises before the office has answered."),
    LinePart::ServingOffice};
constexpr Advice notProvisioned{
    QT_TRANSLATE_NOOP("core", "The line is not provisioned for what the terminal asks."),
    QT_TRANSLATE_NOOP(
        "core", "The order's services against what the serving office has built on the line."),
    QT_TRANSLATE_NOOP("core", "The bearer that the terminal is set to, also 56 against 64 kbit/s."),
    LinePart::ServingOffice};
constexpr Advice variant{
    QT_TRANSLATE_NOOP("core",
                      "The terminal and the switch do not speak the same protocol variant."),
    QT_TRANSLATE_NOOP("core", "The protocol variant set in the terminal against the order."),
    QT_TRANSLATE_NOOP("core", "The variant that the serving office's switch gives to the line; "
                              "then restart the terminal."),
    LinePart::Terminal};
constexpr Advice outOfStep{
    QT_TRANSLATE_NOOP("core", "The terminal and the switch are out of step."),
    QT_TRANSLATE_NOOP("core", "Restart the terminal and let it start anew."),
    QT_TRANSLATE_NOOP("core", "The protocol variant set in the terminal."), LinePart::Terminal};

// Causes of Q.850 that name another part than the layer does, for layers 2 and 3.
constexpr CauseAdvice byCause[] = {
    {18,
     18,
     {QT_TRANSLATE_NOOP("core", "The terminal does not answer."),
      QT_TRANSLATE_NOOP("core", "Power of the terminal, its TEI and its SPID state."),
      QT_TRANSLATE_NOOP("core", "The inside wiring to it."), LinePart::Terminal}},
    {27,
     27,
     {QT_TRANSLATE_NOOP("core", "The line is down below this layer."),
      QT_TRANSLATE_NOOP("core", "Layers 1 and 2 again, from the U interface upwards."),
      QT_TRANSLATE_NOOP("core", "The pair."), LinePart::Loop}},
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
     {QT_TRANSLATE_NOOP("core", "The channel that was asked for does not exist on this line."),
      QT_TRANSLATE_NOOP("core",
                        "Point-to-point or multipoint, as set in the terminal against the order."),
      QT_TRANSLATE_NOOP("core", "How the serving office has built the line."), LinePart::Terminal}},
    {95, 97, variant},
    {98, 98, outOfStep},
    {99, 99, variant},
    {100,
     100,
     {QT_TRANSLATE_NOOP(
          "core", "The switch does not know what the terminal sent: at start-up, a wrong SPID."),
      QT_TRANSLATE_NOOP("core", "The SPID in the terminal against the order, digit by digit."),
      QT_TRANSLATE_NOOP("core", "Whether the SPID is built in the serving office's switch."),
      LinePart::Terminal}},
    {101, 101, outOfStep},
    {102,
     102,
     {QT_TRANSLATE_NOOP("core", "No reply came in time."),
      QT_TRANSLATE_NOOP("core", "The inside wiring and its terminations: frames are being lost."),
      QT_TRANSLATE_NOOP("core", "Layer 2 of the terminal, then noise on the loop."),
      LinePart::PremisesWiring}},
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
    {LinePart::PremisesWiring, QT_TRANSLATE_NOOP("core", "premises wiring")},
    {LinePart::Terminal, QT_TRANSLATE_NOOP("core", "terminal equipment")},
    {LinePart::Loop, QT_TRANSLATE_NOOP("core", "loop and outside plant")},
    {LinePart::ServingOffice, QT_TRANSLATE_NOOP("core", "serving office")},
};

} // namespace

Text partName(LinePart part)
{
    const auto row = std::find_if(std::begin(partNames), std::end(partNames),
                                  [part](const PartName &each) { return each.part == part; });
    return row->name;
}

FirstCheck firstCheck(const LayerFact &fact)
{
    const Advice &advice = adviceFor(fact);
    return {advice.meaning, advice.check, advice.then, advice.part};
}

} // namespace loopwright
