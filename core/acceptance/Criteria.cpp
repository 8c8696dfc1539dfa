// The table of criteria. Longer than 400 lines: one row each, with its words.

#include "core/acceptance/Criteria.h"

#include "core/loop/AnalogQuantity.h"

#include <algorithm>

namespace loopwright {

namespace {

bool hasSpids(const ServiceOrder &order)
{
    return std::ranges::any_of(
        order.terminals, [](const OrderedTerminal &terminal) { return !terminal.spid.isEmpty(); });
}
bool carriesData(const ServiceOrder &order)
{
    return !dataChannels(order).isEmpty();
}

constexpr const char *noSpid = "The circuit has no SPID.";
constexpr const char *noData = "The line carries no circuit-switched data.";

/// For a criterion whose needs stand with those of another: the quantities with the first of them,
/// the run with its detector check.
void noMore(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &)
{
}

/// A quantity of an analog line.
constexpr Criterion quantity(const char *key, const char *name, const PlainWords &words,
                             LinePart part, const char *check, AddNeeds addNeeds = noMore)
{
    return {key,
            name,
            Station::TurnUp,
            LinesWith::Analog,
            Scopes::FullOrMove,
            nullptr,
            nullptr,
            addNeeds,
            judgeQuantity,
            true,
            words,
            part,
            check};
}

constexpr Criterion table[] = {
    {"identifiers",
     "Identifiers",
     Station::Identifiers,
     LinesWith::Both,
     Scopes::RecordToo,
     nullptr,
     nullptr,
     needIdentifiers,
     judgeIdentifiers,
     true,
     {"The numbers and identifiers are well formed, and no other line in these records has them.",
      "The numbers and identifiers are well formed; one is to be confirmed with the provider.",
      "A number or identifier is wrong, or another line has it.",
      "The numbers and identifiers were not checked."},
     LinePart::ServingOffice,
     "Compare variant, numbers and SPIDs of the order with what the office assigned."},
    {"loop",
     "Loop",
     Station::Loop,
     LinesWith::Both,
     Scopes::Full,
     nullptr,
     nullptr,
     needLoop,
     judgeLoop,
     true,
     {"The pair of wires from the serving office is fit for this service.",
      "The pair of wires from the serving office is fit for this service, near the limit.",
      "The pair of wires from the serving office is not fit for this service.",
      "It was not shown that the pair of wires is fit for this service."},
     LinePart::Loop,
     "Is it the pair of the order? Look for taps and coils on record."},
    {"safety",
     "Safety card",
     Station::Safety,
     LinesWith::Both,
     Scopes::NumbersToo,
     nullptr,
     nullptr,
     needSafety,
     judgeSafety,
     false,
     {"The pair was checked for dangerous voltage before any work; no reading was above the stop "
      "limits.",
      "The pair was checked for dangerous voltage before any work; no reading was above the stop "
      "limits.",
      "A dangerous voltage was read on the pair.",
      "The check for dangerous voltage is not complete."},
     LinePart::Loop,
     "Leave the pair alone until the foreign voltage is cleared."},
    {"layer1",
     "Layer 1",
     Station::TurnUp,
     LinesWith::BasicRate,
     Scopes::FullOrMove,
     nullptr,
     nullptr,
     needLayer1,
     judgeLayer1,
     true,
     {"The line and the equipment in the serving office run in step.",
      "The line and the equipment in the serving office run in step.",
      "The line and the equipment in the serving office do not run in step.",
      "It was not shown that the line runs in step with the serving office."},
     LinePart::Loop,
     "Is it the pair of the order, free of load coils?"},
    {"layer2",
     "Layer 2",
     Station::TurnUp,
     LinesWith::BasicRate,
     Scopes::FullOrMove,
     nullptr,
     nullptr,
     needLayer2,
     judgeLayer2,
     true,
     {"Each terminal was given an address of its own on the line.",
      "Each terminal was given an address of its own on the line.",
      "A terminal has no address on the line, or a wrong one.",
      "It was not shown that each terminal has an address of its own."},
     LinePart::Terminal,
     "How the TEI is set in the terminal."},
    {"layer3",
     "Layer 3",
     Station::TurnUp,
     LinesWith::BasicRate,
     Scopes::NumbersToo,
     hasSpids,
     noSpid,
     needLayer3,
     judgeLayer3,
     true,
     {"The serving office recognised the identifier of each terminal.",
      "The serving office recognised the identifier of each terminal.",
      "The serving office did not recognise the identifier of a terminal.",
      "It was not shown that the serving office recognises each terminal."},
     LinePart::Terminal,
     "The SPID in the terminal against the order, digit by digit."},
    quantity("loop_current", "Loop current",
             {"Enough current reaches a telephone for it to work.",
              "Just enough current reaches a telephone for it to work.",
              "The current that reaches a telephone is not as it should be.",
              "It was not measured which current reaches a telephone."},
             LinePart::Loop, "Resistance of the pair, then the feed of the line card.",
             needQuantities),
    quantity("loss_1004", "Loss at 1004 Hz",
             {"A voice arrives loud enough.", "A voice arrives a little faint.",
              "A voice arrives too faint, or too loud.",
              "It was not measured how loud a voice arrives."},
             LinePart::Loop, "Joints, taps and load coils of the pair."),
    quantity("noise", "Circuit noise",
             {"The line is quiet while nobody speaks.",
              "A little noise can be heard while nobody speaks.",
              "The line hisses or crackles while nobody speaks.",
              "It was not measured how quiet the line is."},
             LinePart::Loop, "Insulation of the pair and its shield's ground."),
    quantity("power_influence", "Power influence",
             {"Power lines near the cable disturb it no more than it can bear.",
              "Power lines near the cable disturb it nearly as much as it can bear.",
              "Power lines near the cable disturb it more than it can bear.",
              "It was not measured how much power lines disturb the cable."},
             LinePart::Loop, "Bonds and grounds of the cable's shield along the way."),
    quantity("balance", "Balance",
             {"The two wires are alike enough to keep hum out of a call.",
              "The two wires are just alike enough to keep hum out of a call.",
              "The two wires are not alike enough to keep hum out of a call.",
              "It was not shown whether the two wires are alike enough to keep hum out."},
             LinePart::Loop, "A joint of high resistance, or a leak, in one of the two wires."),
    quantity("polarity", "Polarity",
             {"The two wires are connected the right way round.",
              "The two wires are connected the right way round.",
              "The two wires are connected the wrong way round.",
              "It was not shown which way round the two wires are."},
             LinePart::Loop, "Where tip and ring change places."),
    quantity("dial_tone", "Dial tone",
             {"Dial tone is heard when the receiver is lifted.",
              "Dial tone is heard when the receiver is lifted.",
              "No dial tone was heard when the receiver was lifted.",
              "It was not shown that dial tone is heard."},
             LinePart::ServingOffice, "Whether the line is built and connected."),
    quantity("ringing", "Ringing",
             {"The telephone rings when it is called.", "The telephone rings when it is called.",
              "The telephone did not ring when it was called.",
              "It was not shown that the telephone rings."},
             LinePart::ServingOffice, "Whether the number rings this line equipment."),
    quantity("slope", "Slope",
             {"High and low tones of a voice arrive about equally loud.",
              "High tones of a voice arrive a little fainter than low ones.",
              "High tones of a voice arrive fainter than low ones.",
              "It was not measured whether high and low tones arrive alike."},
             LinePart::Loop, "Taps and missing load coils."),
    quantity("insulation", "Insulation",
             {"The wires are well insulated from each other and from ground.",
              "The wires are just well enough insulated from each other and from ground.",
              "The wires leak current to each other or to ground.",
              "The insulation of the wires was not measured."},
             LinePart::Loop, "A wet joint or a damaged drop."),
    quantity("foreign_voltage", "Foreign voltage",
             {"No voltage from elsewhere is on the pair.",
              "A small voltage from elsewhere is on the pair.",
              "A voltage from elsewhere is on the pair.",
              "Voltage from elsewhere was not measured."},
             LinePart::Loop, "A cross with another pair or with power."),
    quantity("on_hook_voltage", "On-hook voltage",
             {"The serving office feeds the line with its usual voltage.",
              "The serving office feeds the line with little voltage.",
              "The voltage of the serving office is not as it should be.",
              "The voltage of the serving office was not measured."},
             LinePart::ServingOffice, "The feed of the line card."),
    quantity("ringing_voltage", "Ringing voltage",
             {"The ringing signal is strong enough.", "The ringing signal is just strong enough.",
              "The ringing signal is too weak.", "The ringing signal was not measured."},
             LinePart::ServingOffice, "The ringing supply; then how many telephones ring at once."),
    {"calls",
     "Calls",
     Station::Calls,
     LinesWith::Both,
     Scopes::NumbersToo,
     nullptr,
     nullptr,
     needCalls,
     judgeCalls,
     true,
     {"Calls were made and received for every service that was ordered.",
      "Calls were made and received for every service that was ordered.",
      "A call did not go through.", "Not every ordered service was shown to work in a call."},
     LinePart::ServingOffice,
     "The services of the order against what the office built."},
    {"readback",
     "Announced number",
     Station::Calls,
     LinesWith::Both,
     Scopes::NumbersToo,
     nullptr,
     nullptr,
     needReadback,
     judgeReadback,
     true,
     {"The number that the network announced on this pair is the number ordered.",
      "The number that the network announced on this pair is the number ordered.",
      "The network announced another number on this pair than the one ordered.",
      "It was not heard which number the network announces on this pair."},
     LinePart::ServingOffice,
     "Is the pair connected to the line equipment of the order?"},
    {"detector",
     "Detector check",
     Station::ErrorTest,
     LinesWith::BasicRate,
     Scopes::FullOrMove,
     carriesData,
     noData,
     needErrorTest,
     judgeDetector,
     true,
     {"Errors were sent on purpose before the test, and the test set saw each one.",
      "Errors were sent on purpose before the test, and the test set saw each one.",
      "Errors were sent on purpose before the test, and the test set did not see each one.",
      "It was not shown that the test set would have seen an error."},
     std::nullopt,
     "Make the detector check again, then the run."},
    {"run",
     "Error-rate run",
     Station::ErrorTest,
     LinesWith::BasicRate,
     Scopes::FullOrMove,
     carriesData,
     noData,
     noMore,
     judgeRun,
     true,
     {"Data was sent over the line without a break and compared bit by bit.",
      "Data was sent over the line without a break and compared bit by bit.",
      "Data that was sent over the line arrived with more errors than are allowed.",
      "It was not shown how many errors the line makes."},
     LinePart::Loop,
     "Loss and noise of the pair, then its joints and the drop."},
    {"instrument",
     "Instrument",
     Station::Acceptance,
     LinesWith::Both,
     Scopes::NumbersToo,
     nullptr,
     nullptr,
     needInstrument,
     judgeInstrument,
     true,
     {"The test sets are known, and were within their calibration.",
      "The test sets are known, and were within their calibration.",
      "A test set is not known, or was not within its calibration.",
      "It was not said which test sets were used."},
     std::nullopt,
     "Use a registered instrument within its calibration, or have it entered."},
};

/// Nothing but the quantities is of analog lines alone.
constexpr bool isQuantity(const Criterion &row)
{
    return row.lines == LinesWith::Analog;
}

/// judgeQuantity finds its quantity by the key, and the needs of all stand with the first of them.
constexpr bool everyQuantityHasItsRow()
{
    for (const auto &entry : EnumCodes<AnalogQuantity>::table)
        if (std::ranges::none_of(table, [&entry](const Criterion &row) {
                return isQuantity(row) && std::string_view(row.key) == entry.second;
            }))
            return false;
    return std::ranges::count_if(table, isQuantity) ==
           std::ranges::ssize(EnumCodes<AnalogQuantity>::table);
}
static_assert(everyQuantityHasItsRow());
// It is judged of what all others rest on.
static_assert(std::string_view(std::rbegin(table)->key) == "instrument");

/// What may be said at any time and is never asked for.
void addOffers(std::vector<Need> &needs, OrderScope scope)
{
    const auto offer = [&needs](const char *key, StepGroup group, Station station, FactKind kind,
                                const QStringList &fields, Text label, Text hint) {
        Need need{key, {}, group, station, kind};
        need.fields = fields;
        need.label = std::move(label);
        need.hint = std::move(hint);
        need.matches = [kind](const Fact &fact) { return fact.kind() == kind; };
        needs.push_back(std::move(need));
    };
    const bool onSite = scope != OrderScope::Nothing && scope != OrderScope::RecordOnly;
    if (onSite) {
        offer("arrived", StepGroup::Visit, Station::Order, FactKind::Visit, {"arrived"},
              Text(QT_TRANSLATE_NOOP("core", "Arrived at")),
              Text(QT_TRANSLATE_NOOP("core", "left empty: now")));
        needs.back().matches = [](const Fact &fact) {
            return fact.as<VisitFact>() && fact.as<VisitFact>()->arrived;
        };
        offer(
            "self_test", StepGroup::Remarks, Station::Acceptance, FactKind::SelfTest, {"outcome"},
            Text(QT_TRANSLATE_NOOP("core", "Self-test of the instrument")),
            Text(QT_TRANSLATE_NOOP(
                "core", "a failed one takes what the instrument measured on this visit out of the "
                        "evidence, until one passes")));
        offer("left", StepGroup::Leaving, Station::Certificate, FactKind::Visit, {"result", "left"},
              Text(QT_TRANSLATE_NOOP("core", "How the visit went")), {});
        needs.back().matches = [](const Fact &fact) {
            return fact.as<VisitFact>() &&
                   (fact.as<VisitFact>()->left || fact.as<VisitFact>()->result);
        };
    }
    offer("changed", StepGroup::Remarks, Station::Acceptance, FactKind::Changed,
          {"what", "to", "text"},
          Text(QT_TRANSLATE_NOOP("core", "Something on the line was changed")),
          Text(QT_TRANSLATE_NOOP("core",
                                 "takes the evidence that it makes old out of the decision")));
    offer("note", StepGroup::Remarks, Station::Acceptance, FactKind::Note, {"text"},
          Text(QT_TRANSLATE_NOOP("core", "Note")),
          Text(QT_TRANSLATE_NOOP("core", "for the record; never on the certificate")));
}

} // namespace

std::span<const Criterion> criteria()
{
    return table;
}

const Criterion *findCriterion(const QString &key)
{
    const auto found = std::ranges::find_if(
        table, [&key](const Criterion &row) { return key == QLatin1StringView(row.key); });
    return found == std::end(table) ? nullptr : found;
}

bool belongs(const Criterion &criterion, LineKind kind)
{
    switch (criterion.lines) {
    case LinesWith::BasicRate:
        return kind == LineKind::Bri;
    case LinesWith::Analog:
        return kind == LineKind::Analog;
    case LinesWith::Both:
        break;
    }
    return true;
}

namespace {

bool isAsked(Scopes scopes, OrderScope scope)
{
    switch (scope) {
    case OrderScope::Full:
        return true;
    case OrderScope::MoveWithin:
        return scopes != Scopes::Full;
    case OrderScope::NumbersOnly:
        return scopes == Scopes::NumbersToo || scopes == Scopes::RecordToo;
    case OrderScope::RecordOnly:
        return scopes == Scopes::RecordToo;
    case OrderScope::Nothing:
        break;
    }
    return false;
}

} // namespace

bool isNeeded(const Criterion &criterion, const ServiceOrder &order, OrderScope scope)
{
    return belongs(criterion, order.kind) && isAsked(criterion.scopes, scope) &&
           (!criterion.has || criterion.has(order));
}

Text whyNotNeeded(const Criterion &criterion, OrderScope scope)
{
    switch (scope) {
    case OrderScope::Nothing:
        return Text(QT_TRANSLATE_NOOP("core", "A disconnect needs no evidence."));
    case OrderScope::RecordOnly:
        return Text(QT_TRANSLATE_NOOP("core", "A record-only order needs its identifiers alone."));
    case OrderScope::NumbersOnly:
        if (!isAsked(criterion.scopes, scope))
            return Text(QT_TRANSLATE_NOOP("core", "A change of numbers alone does not need it."));
        break;
    case OrderScope::MoveWithin:
        if (!isAsked(criterion.scopes, scope))
            return Text(
                QT_TRANSLATE_NOOP("core", "A move within the premises leaves the loop as it is."));
        break;
    case OrderScope::Full:
        break;
    }
    return criterion.lacking ? Text(criterion.lacking) : Text();
}

std::vector<Need> needsOf(const ServiceOrder &order, OrderScope scope, const LimitSet &limits)
{
    std::vector<Need> needs;
    for (const Criterion &criterion : criteria())
        if (isNeeded(criterion, order, scope))
            criterion.addNeeds(needs, order, scope, limits);
    addOffers(needs, scope);
    std::ranges::stable_sort(needs, {}, &Need::group);
    return needs;
}

} // namespace loopwright
