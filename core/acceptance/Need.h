#pragma once
// What an order needs: one thing to be shown each, in the order of the work. Needs follow from the
// order, its scope and the limits alone; that something was recorded changes how they stand
// (Judge.h), never what they are. Page, command line and handoff read them; nobody else knows what
// an order needs.

#include "core/acceptance/Decision.h"
#include "core/acceptance/Fact.h"
#include "core/base/LimitSet.h"
#include "core/base/Text.h"
#include "core/order/OrderScope.h"

#include <functional>

namespace loopwright {

/// What is entered together, in the order of the work: at the desk, then on site.
enum class StepGroup
{
    Settings,   ///< identifiers of the order
    Makeup,     ///< what the pair is made of, on record
    Visit,      ///< arriving
    Safety,     ///< how a hazard was closed, and the card
    Instrument, ///< with which the readings are made
    Pair,       ///< measured on the pair
    TurnUp,     ///< layers of a basic-rate line
    Analog,     ///< quantities of an analog line
    Calls,
    ErrorTest, ///< what was done after a failed run, detector check, run
    Remarks,   ///< changes, notes, self-tests
    Leaving,
};
template<>
struct EnumCodes<StepGroup>
{
    static constexpr std::pair<StepGroup, const char *> table[] = {
        {StepGroup::Settings, "settings"},     {StepGroup::Makeup, "makeup"},
        {StepGroup::Visit, "visit"},           {StepGroup::Safety, "safety"},
        {StepGroup::Instrument, "instrument"}, {StepGroup::Pair, "pair"},
        {StepGroup::TurnUp, "turnup"},         {StepGroup::Analog, "analog"},
        {StepGroup::Calls, "calls"},           {StepGroup::ErrorTest, "error_test"},
        {StepGroup::Remarks, "remarks"},       {StepGroup::Leaving, "leaving"}};
};

struct Need
{
    QString key;       ///< "layer.2.1", "call.in.2.data": stable within the order
    QString criterion; ///< that it provides evidence for; empty for an offer
    StepGroup group = StepGroup::Settings;
    Station station = Station::Order;  ///< of the job line
    std::optional<FactKind> kind = {}; ///< of the fact that shows it; none: not shown by a fact
    QJsonObject preset = {};           ///< keys of that fact that are known beforehand
    QStringList fields = {};           ///< keys that are to be filled in (fieldsOf(kind))
    QStringList optional = {};         ///< of the fields, those that may be left empty
    QStringList after = {};            ///< keys of needs that must stand before it
    Text label = {};                   ///< "Layer 2 of terminal 1"
    Text hint = {};                    ///< what is expected: unit and limit, or how it is done
    /// Whether a fact speaks of it.
    std::function<bool(const Fact &)> matches = [](const Fact &) { return false; };

    bool isOffer() const { return criterion.isEmpty(); }
};

/// The B channels that carry data, each of which needs a run.
QList<Channel> dataChannels(const ServiceOrder &order);
/// Whether a call from one channel of the line to its other one is possible: two channels that
/// carry data and two numbers.
bool mayCallItself(const ServiceOrder &order);
/// Numbers of the order, each once, as ordered.
QStringList ownNumbers(const ServiceOrder &order);
/// Path, channels and, of a self-call, numbers of an error test of this channel, as they stand in a
/// fact. The usual path is a self-call if the order has one, else the test line.
QJsonObject testPreset(const ServiceOrder &order, Channel channel, std::optional<Path> path = {});

} // namespace loopwright
