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
     QT_TRANSLATE_NOOP("core", "Identifiers"),
     Station::Identifiers,
     LinesWith::Both,
     Scopes::RecordToo,
     nullptr,
     nullptr,
     needIdentifiers,
     judgeIdentifiers,
     true,
     {QT_TRANSLATE_NOOP("core", "The numbers and identifiers are well formed, and no other line in "
                                "these records has them."),
      QT_TRANSLATE_NOOP("core", "The numbers and identifiers are well formed, and no other line in "
                                "these records has them."),
      QT_TRANSLATE_NOOP("core", "A number or identifier is wrong, or another line has it."),
      QT_TRANSLATE_NOOP("core", "The numbers and identifiers were not checked.")},
     LinePart::ServingOffice,
     QT_TRANSLATE_NOOP(
         "core", "Compare variant, numbers and SPIDs of the order with what the office assigned.")},
    {"loop",
     QT_TRANSLATE_NOOP("core", "Loop"),
     Station::Loop,
     LinesWith::Both,
     Scopes::Full,
     nullptr,
     nullptr,
     needLoop,
     judgeLoop,
     true,
     {QT_TRANSLATE_NOOP("core",
                        "The pair of wires from the serving office is fit for this service."),
      QT_TRANSLATE_NOOP(
          "core",
          "The pair of wires from the serving office is fit for this service, near the limit."),
      QT_TRANSLATE_NOOP("core",
                        "The pair of wires from the serving office is not fit for this service."),
      QT_TRANSLATE_NOOP("core",
                        "It was not shown that the pair of wires is fit for this service.")},
     LinePart::Loop,
     QT_TRANSLATE_NOOP("core", "Is it the pair of the order? Look for taps and coils on record.")},
    {"safety",
     QT_TRANSLATE_NOOP("core", "Safety card"),
     Station::Safety,
     LinesWith::Both,
     Scopes::NumbersToo,
     nullptr,
     nullptr,
     needSafety,
     judgeSafety,
     false,
     {QT_TRANSLATE_NOOP("core", "The pair was checked for dangerous voltage before any work; no "
                                "reading was above the stop "
                                "limits."),
      QT_TRANSLATE_NOOP("core", "The pair was checked for dangerous voltage before any work; no "
                                "reading was above the stop "
                                "limits."),
      QT_TRANSLATE_NOOP("core", "A dangerous voltage was read on the pair."),
      QT_TRANSLATE_NOOP("core", "The check for dangerous voltage is not complete.")},
     LinePart::Loop,
     QT_TRANSLATE_NOOP("core", "Leave the pair alone until the foreign voltage is cleared.")},
    {"layer1",
     QT_TRANSLATE_NOOP("core", "Layer 1"),
     Station::TurnUp,
     LinesWith::BasicRate,
     Scopes::FullOrMove,
     nullptr,
     nullptr,
     needLayer1,
     judgeLayer1,
     true,
     {QT_TRANSLATE_NOOP("core", "The line and the equipment in the serving office run in step."),
      QT_TRANSLATE_NOOP("core", "The line and the equipment in the serving office run in step."),
      QT_TRANSLATE_NOOP("core",
                        "The line and the equipment in the serving office do not run in step."),
      QT_TRANSLATE_NOOP("core",
                        "It was not shown that the line runs in step with the serving office.")},
     LinePart::Loop,
     QT_TRANSLATE_NOOP("core", "Is it the pair of the order, free of load coils?")},
    {"layer2",
     QT_TRANSLATE_NOOP("core", "Layer 2"),
     Station::TurnUp,
     LinesWith::BasicRate,
     Scopes::FullOrMove,
     nullptr,
     nullptr,
     needLayer2,
     judgeLayer2,
     true,
     {QT_TRANSLATE_NOOP("core", "Each terminal was given an address of its own on the line."),
      QT_TRANSLATE_NOOP("core", "Each terminal was given an address of its own on the line."),
      QT_TRANSLATE_NOOP("core", "A terminal has no address on the line, or a wrong one."),
      QT_TRANSLATE_NOOP("core", "It was not shown that each terminal has an address of its own.")},
     LinePart::Terminal,
     QT_TRANSLATE_NOOP("core", "How the TEI is set in the terminal.")},
    {"layer3",
     QT_TRANSLATE_NOOP("core", "Layer 3"),
     Station::TurnUp,
     LinesWith::BasicRate,
     Scopes::NumbersToo,
     hasSpids,
     noSpid,
     needLayer3,
     judgeLayer3,
     true,
     {QT_TRANSLATE_NOOP("core", "The serving office recognised the identifier of each terminal."),
      QT_TRANSLATE_NOOP("core", "The serving office recognised the identifier of each terminal."),
      QT_TRANSLATE_NOOP("core",
                        "The serving office did not recognise the identifier of a terminal."),
      QT_TRANSLATE_NOOP("core",
                        "It was not shown that the serving office recognises each terminal.")},
     LinePart::Terminal,
     QT_TRANSLATE_NOOP("core", "The SPID in the terminal against the order, digit by digit.")},
    quantity(
        "loop_current", QT_TRANSLATE_NOOP("core", "Loop current"),
        {QT_TRANSLATE_NOOP("core", "Enough current reaches a telephone for it to work."),
         QT_TRANSLATE_NOOP("core", "Just enough current reaches a telephone for it to work."),
         QT_TRANSLATE_NOOP("core", "The current that reaches a telephone is not as it should be."),
         QT_TRANSLATE_NOOP("core", "It was not measured which current reaches a telephone.")},
        LinePart::Loop,
        QT_TRANSLATE_NOOP("core", "Resistance of the pair, then the feed of the line card."),
        needQuantities),
    quantity("loss_1004", QT_TRANSLATE_NOOP("core", "Loss at 1004 Hz"),
             {QT_TRANSLATE_NOOP("core", "A voice arrives loud enough."),
              QT_TRANSLATE_NOOP("core", "A voice arrives a little faint."),
              QT_TRANSLATE_NOOP("core", "A voice arrives too faint, or too loud."),
              QT_TRANSLATE_NOOP("core", "It was not measured how loud a voice arrives.")},
             LinePart::Loop, QT_TRANSLATE_NOOP("core", "Joints, taps and load coils of the pair.")),
    quantity("noise", QT_TRANSLATE_NOOP("core", "Circuit noise"),
             {QT_TRANSLATE_NOOP("core", "The line is quiet while nobody speaks."),
              QT_TRANSLATE_NOOP("core", "A little noise can be heard while nobody speaks."),
              QT_TRANSLATE_NOOP("core", "The line hisses or crackles while nobody speaks."),
              QT_TRANSLATE_NOOP("core", "It was not measured how quiet the line is.")},
             LinePart::Loop,
             QT_TRANSLATE_NOOP("core", "Insulation of the pair and its shield's ground.")),
    quantity(
        "power_influence", QT_TRANSLATE_NOOP("core", "Power influence"),
        {QT_TRANSLATE_NOOP("core",
                           "Power lines near the cable disturb it no more than it can bear."),
         QT_TRANSLATE_NOOP("core",
                           "Power lines near the cable disturb it nearly as much as it can bear."),
         QT_TRANSLATE_NOOP("core", "Power lines near the cable disturb it more than it can bear."),
         QT_TRANSLATE_NOOP("core", "It was not measured how much power lines disturb the cable.")},
        LinePart::Loop,
        QT_TRANSLATE_NOOP("core", "Bonds and grounds of the cable's shield along the way.")),
    quantity(
        "balance", QT_TRANSLATE_NOOP("core", "Balance"),
        {QT_TRANSLATE_NOOP("core", "The two wires are alike enough to keep hum out of a call."),
         QT_TRANSLATE_NOOP("core",
                           "The two wires are just alike enough to keep hum out of a call."),
         QT_TRANSLATE_NOOP("core", "The two wires are not alike enough to keep hum out of a call."),
         QT_TRANSLATE_NOOP(
             "core", "It was not shown whether the two wires are alike enough to keep hum out.")},
        LinePart::Loop,
        QT_TRANSLATE_NOOP("core",
                          "A joint of high resistance, or a leak, in one of the two wires.")),
    quantity("polarity", QT_TRANSLATE_NOOP("core", "Polarity"),
             {QT_TRANSLATE_NOOP("core", "The two wires are connected the right way round."),
              QT_TRANSLATE_NOOP("core", "The two wires are connected the right way round."),
              QT_TRANSLATE_NOOP("core", "The two wires are connected the wrong way round."),
              QT_TRANSLATE_NOOP("core", "It was not shown which way round the two wires are.")},
             LinePart::Loop, QT_TRANSLATE_NOOP("core", "Where tip and ring change places.")),
    quantity("dial_tone", QT_TRANSLATE_NOOP("core", "Dial tone"),
             {QT_TRANSLATE_NOOP("core", "Dial tone is heard when the receiver is lifted."),
              QT_TRANSLATE_NOOP("core", "Dial tone is heard when the receiver is lifted."),
              QT_TRANSLATE_NOOP("core", "No dial tone was heard when the receiver was lifted."),
              QT_TRANSLATE_NOOP("core", "It was not shown that dial tone is heard.")},
             LinePart::ServingOffice,
             QT_TRANSLATE_NOOP("core", "Whether the line is built and connected.")),
    quantity("ringing", QT_TRANSLATE_NOOP("core", "Ringing"),
             {QT_TRANSLATE_NOOP("core", "The telephone rings when it is called."),
              QT_TRANSLATE_NOOP("core", "The telephone rings when it is called."),
              QT_TRANSLATE_NOOP("core", "The telephone did not ring when it was called."),
              QT_TRANSLATE_NOOP("core", "It was not shown that the telephone rings.")},
             LinePart::ServingOffice,
             QT_TRANSLATE_NOOP("core", "Whether the number rings this line equipment.")),
    quantity(
        "slope", QT_TRANSLATE_NOOP("core", "Slope"),
        {QT_TRANSLATE_NOOP("core", "High and low tones of a voice arrive about equally loud."),
         QT_TRANSLATE_NOOP("core", "High tones of a voice arrive a little fainter than low ones."),
         QT_TRANSLATE_NOOP("core", "High tones of a voice arrive fainter than low ones."),
         QT_TRANSLATE_NOOP("core", "It was not measured whether high and low tones arrive alike.")},
        LinePart::Loop, QT_TRANSLATE_NOOP("core", "Taps and missing load coils.")),
    quantity(
        "insulation", QT_TRANSLATE_NOOP("core", "Insulation"),
        {QT_TRANSLATE_NOOP("core", "The wires are well insulated from each other and from ground."),
         QT_TRANSLATE_NOOP(
             "core", "The wires are just well enough insulated from each other and from ground."),
         QT_TRANSLATE_NOOP("core", "The wires leak current to each other or to ground."),
         QT_TRANSLATE_NOOP("core", "The insulation of the wires was not measured.")},
        LinePart::Loop, QT_TRANSLATE_NOOP("core", "A wet joint or a damaged drop.")),
    quantity("foreign_voltage", QT_TRANSLATE_NOOP("core", "Foreign voltage"),
             {QT_TRANSLATE_NOOP("core", "No voltage from elsewhere is on the pair."),
              QT_TRANSLATE_NOOP("core", "A small voltage from elsewhere is on the pair."),
              QT_TRANSLATE_NOOP("core", "A voltage from elsewhere is on the pair."),
              QT_TRANSLATE_NOOP("core", "Voltage from elsewhere was not measured.")},
             LinePart::Loop, QT_TRANSLATE_NOOP("core", "A cross with another pair or with power.")),
    quantity(
        "on_hook_voltage", QT_TRANSLATE_NOOP("core", "On-hook voltage"),
        {QT_TRANSLATE_NOOP("core", "The serving office feeds the line with its usual voltage."),
         QT_TRANSLATE_NOOP("core", "The serving office feeds the line with little voltage."),
         QT_TRANSLATE_NOOP("core", "The voltage of the serving office is not as it should be."),
         QT_TRANSLATE_NOOP("core", "The voltage of the serving office was not measured.")},
        LinePart::ServingOffice, QT_TRANSLATE_NOOP("core", "The feed of the line card.")),
    quantity(
        "ringing_voltage", QT_TRANSLATE_NOOP("core", "Ringing voltage"),
        {QT_TRANSLATE_NOOP("core", "The ringing signal is strong enough."),
         QT_TRANSLATE_NOOP("core", "The ringing signal is just strong enough."),
         QT_TRANSLATE_NOOP("core", "The ringing signal is too weak."),
         QT_TRANSLATE_NOOP("core", "The ringing signal was not measured.")},
        LinePart::ServingOffice,
        QT_TRANSLATE_NOOP("core", "The ringing supply; then how many telephones ring at once.")),
    {"calls",
     QT_TRANSLATE_NOOP("core", "Calls"),
     Station::Calls,
     LinesWith::Both,
     Scopes::NumbersToo,
     nullptr,
     nullptr,
     needCalls,
     judgeCalls,
     true,
     {QT_TRANSLATE_NOOP("core", "Calls were made and received for every service that was ordered."),
      QT_TRANSLATE_NOOP("core", "Calls were made and received for every service that was ordered."),
      QT_TRANSLATE_NOOP("core", "A call did not go through."),
      QT_TRANSLATE_NOOP("core", "Not every ordered service was shown to work in a call.")},
     LinePart::ServingOffice,
     QT_TRANSLATE_NOOP("core", "The services of the order against what the office built.")},
    {"readback",
     QT_TRANSLATE_NOOP("core", "Announced number"),
     Station::Calls,
     LinesWith::Both,
     Scopes::NumbersAssigned,
     nullptr,
     nullptr,
     needReadback,
     judgeReadback,
     true,
     {QT_TRANSLATE_NOOP(
          "core", "The number that the network announced on this pair is the number ordered."),
      QT_TRANSLATE_NOOP(
          "core", "The number that the network announced on this pair is the number ordered."),
      QT_TRANSLATE_NOOP("core",
                        "The network announced another number on this pair than the one ordered."),
      QT_TRANSLATE_NOOP("core",
                        "It was not heard which number the network announces on this pair.")},
     LinePart::ServingOffice,
     QT_TRANSLATE_NOOP("core", "Is the pair connected to the line equipment of the order?")},
    {"detector",
     QT_TRANSLATE_NOOP("core", "Detector check"),
     Station::ErrorTest,
     LinesWith::BasicRate,
     Scopes::FullOrMove,
     carriesData,
     noData,
     needErrorTest,
     judgeDetector,
     true,
     {QT_TRANSLATE_NOOP(
          "core", "Errors were sent on purpose before the test, and the test set saw each one."),
      QT_TRANSLATE_NOOP(
          "core", "Errors were sent on purpose before the test, and the test set saw each one."),
      QT_TRANSLATE_NOOP(
          "core",
          "Errors were sent on purpose before the test, and the test set did not see each one."),
      QT_TRANSLATE_NOOP("core", "It was not shown that the test set would have seen an error.")},
     std::nullopt,
     QT_TRANSLATE_NOOP("core", "Make the detector check again, then the run.")},
    {"run",
     QT_TRANSLATE_NOOP("core", "Error-rate run"),
     Station::ErrorTest,
     LinesWith::BasicRate,
     Scopes::FullOrMove,
     carriesData,
     noData,
     noMore,
     judgeRun,
     true,
     {QT_TRANSLATE_NOOP("core",
                        "Data was sent over the line without a break and compared bit by bit."),
      QT_TRANSLATE_NOOP("core",
                        "Data was sent over the line without a break and compared bit by bit."),
      QT_TRANSLATE_NOOP(
          "core", "Data that was sent over the line arrived with more errors than are allowed."),
      QT_TRANSLATE_NOOP("core", "It was not shown how many errors the line makes.")},
     LinePart::Loop,
     QT_TRANSLATE_NOOP("core", "Loss and noise of the pair, then its joints and the drop.")},
    {"instrument",
     QT_TRANSLATE_NOOP("core", "Instrument"),
     Station::Acceptance,
     LinesWith::Both,
     Scopes::NumbersToo,
     nullptr,
     nullptr,
     needInstrument,
     judgeInstrument,
     true,
     {QT_TRANSLATE_NOOP("core", "The test sets are known, and were within their calibration."),
      QT_TRANSLATE_NOOP("core", "The test sets are known, and were within their calibration."),
      QT_TRANSLATE_NOOP("core", "A test set is not known, or was not within its calibration."),
      QT_TRANSLATE_NOOP("core",
                        "It was not shown that the test sets used were within their calibration.")},
     std::nullopt,
     QT_TRANSLATE_NOOP("core",
                       "Use a registered instrument within its calibration, or have it entered.")},
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

QStringList criterionKeys()
{
    QStringList keys;
    for (const Criterion &criterion : table)
        keys << QString::fromLatin1(criterion.key);
    return keys;
}

const Criterion *findCriterion(const QString &key)
{
    const auto found = std::ranges::find_if(
        table, [&key](const Criterion &row) { return key == QLatin1StringView(row.key); });
    return found == std::end(table) ? nullptr : found;
}

bool isOfThePlant(const QString &criterion)
{
    const Criterion *found = findCriterion(criterion);
    return found && found->station != Station::Identifiers && found->station != Station::Acceptance;
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
        return scopes == Scopes::NumbersToo || scopes == Scopes::NumbersAssigned ||
               scopes == Scopes::RecordToo;
    case OrderScope::RecordOnly:
        return scopes == Scopes::RecordToo;
    case OrderScope::Repair:
        return scopes != Scopes::RecordToo && scopes != Scopes::NumbersAssigned;
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
    case OrderScope::Repair:
        if (!isAsked(criterion.scopes, scope))
            return Text(QT_TRANSLATE_NOOP("core", "A repair assigns no numbers."));
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
