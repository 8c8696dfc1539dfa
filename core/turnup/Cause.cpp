#include "core/turnup/Cause.h"

#include <algorithm>
#include <vector>

namespace loopwright {

namespace {

struct Row
{
    int number;
    const char *name;
    const char *checkFirst;
};

// Names, shortened, from public lists that follow Q.850 (Asterisk causes.h, a call-record decoder,
// Wireshark's q933 dissector); 14 and 23 from memory; 103 has two names in them. What to check
// first is our own.
constexpr Row rows[] = {
    {1, "Unallocated (unassigned) number",
     "Check the digits dialled, and whether the number is built in the switch yet"},
    {2, "No route to specified transit network",
     "Check the choice of long-distance carrier on the line"},
    {3, "No route to destination", "Check the number, its prefix and the choice of carrier"},
    {4, "Send special information tone",
     "The called number is out of use: try a test number known to be good"},
    {5, "Misdialled trunk prefix", "Drop or add the leading 0 or 1"},
    {6, "Channel unacceptable", "Compare the B channel asked for with what is provisioned"},
    {7, "Call awarded, delivered in established channel",
     "Normal on packet calls; otherwise pass over it"},
    {8, "Preemption", "A priority call took the channel: try again"},
    {9, "Preemption, circuit reserved for reuse", "A priority call took the channel: try again"},
    {14, "QoR: ported number",
     "The number moved to another carrier: dial again, report the routing"},
    {16, "Normal call clearing", "Nothing: somebody hung up"},
    {17, "User busy", "The other end is in use; is additional call offering provisioned?"},
    {18, "No user responding",
     "The terminal does not answer SETUP: check its power, its SPID and its TEI"},
    {19, "No answer from user (alerted)", "It rang: answer it"},
    {20, "Subscriber absent", "The far terminal is not registered or is switched off"},
    {21, "Call rejected",
     "The terminal refused: check call screening, DN and bearer service set in it"},
    {22, "Number changed", "Use the new number in the diagnostic"},
    {23, "Redirection to new destination", "The call was forwarded: check that this is wanted"},
    {24, "Call rejected due to feature at destination", "The far line blocks such calls"},
    {25, "Exchange routing error", "Report it to the switch centre"},
    {26, "Non-selected user clearing", "Normal when two terminals answer"},
    {27, "Destination out of order", "The far line is down at layer 1 or 2"},
    {28, "Invalid number format (incomplete)", "Check the count of digits and the type of number"},
    {29, "Facility rejected", "The feature is not on this line: compare with the order"},
    {30, "Response to STATUS ENQUIRY", "Nothing: information only"},
    {31, "Normal, unspecified", "Try again, then try another number"},
    {34, "No circuit/channel available",
     "Are both B channels busy? Otherwise trunks are full: try again"},
    {38, "Network out of order", "Call the switch centre: it is not your wiring"},
    {39, "Permanent frame connection out of service",
     "Check the state of the packet or frame link"},
    {40, "Permanent frame connection operational", "Nothing: information only"},
    {41, "Temporary failure", "Try again; if it stays, call the switch centre"},
    {42, "Switching equipment congestion", "Try again later"},
    {43, "Access information discarded",
     "Subaddress or user data were not carried: harmless to voice"},
    {44, "Requested circuit/channel not available",
     "Ask for any channel; look for a B channel that hangs"},
    {46, "Precedence call blocked", "On priority networks only: try again"},
    {47, "Resource unavailable, unspecified", "Try again, then call the switch centre"},
    {49, "Quality of service not available", "Check the packet parameters"},
    {50, "Requested facility not subscribed", "The order lacks the feature: check the package"},
    {53, "Outgoing calls barred within closed user group", "Check the closed-group settings"},
    {55, "Incoming calls barred within closed user group", "Check the closed-group settings"},
    {57, "Bearer capability not authorised",
     "The line is not provisioned for this kind of voice or data"},
    {58, "Bearer capability not presently available", "Use 56 kbit/s instead of 64; try again"},
    {62, "Inconsistency in outgoing access information",
     "Check the closed-group or class settings"},
    {63, "Service or option not available, unspecified",
     "Check package and feature; call the switch centre"},
    {65, "Bearer capability not implemented",
     "The bearer is wrong for this switch: check V.110 or V.120, 56 or 64 kbit/s"},
    {66, "Channel type not implemented", "Check the choice of B or D channel in the terminal"},
    {69, "Requested facility not implemented", "Is the protocol variant in the terminal wrong?"},
    {70, "Only restricted digital bearer available", "Use 56 kbit/s"},
    {79, "Service or option not implemented, unspecified", "Check protocol variant and bearer"},
    {81, "Invalid call reference", "Terminal and switch are out of step: restart the terminal"},
    {82, "Identified channel does not exist",
     "Check the channel number; point-to-point and multipoint mixed up?"},
    {83, "Suspended call exists, this identity does not", "Check the identity of the parked call"},
    {84, "Call identity in use", "Check the identity of the parked call"},
    {85, "No call suspended", "Check the identity of the parked call"},
    {86, "Call with that identity already cleared", "Check the identity of the parked call"},
    {87, "User not member of closed user group", "Check the closed-group settings"},
    {88, "Incompatible destination",
     "The far terminal refuses the bearer: voice to a data set, or 56 against 64 kbit/s"},
    {90, "Non-existent closed user group", "Check the closed-group index"},
    {91, "Invalid transit network selection", "Check the carrier code"},
    {95, "Invalid message, unspecified", "Check the protocol variant in the terminal"},
    {96, "Mandatory information element missing", "Check the protocol variant in the terminal"},
    {97, "Message type non-existent or not implemented",
     "Check the protocol variant in the terminal"},
    {98, "Message not compatible with state, or unknown",
     "Check the protocol variant; restart the terminal"},
    {99, "Information element non-existent",
     "Check the protocol variant; the switch may not know the feature"},
    {100, "Invalid information element contents",
     "At start-up: the SPID is wrong. Otherwise check the digits of number and bearer"},
    {101, "Message not compatible with call state", "Restart the terminal"},
    {102, "Recovery on timer expiry", "No reply came: layer 2 dropped, or noise on the wiring"},
    {103, "Parameter non-existent, passed on; or length error in a mandatory element",
     "Nothing: information only"},
    {110, "Message with unrecognised parameter discarded", "Nothing: information only"},
    {111, "Protocol error, unspecified", "Check the protocol variant; report with a trace"},
    {127, "Interworking, unspecified", "The call left ISDN: listen to the other network's tone"},
};

// By number div 16. The last number of a class stands for "unspecified".
constexpr const char *classes[] = {"normal event",
                                   "normal event",
                                   "resource unavailable",
                                   "service or option not available",
                                   "service or option not implemented",
                                   "invalid message",
                                   "protocol error",
                                   "interworking"};

const std::vector<Cause> &table()
{
    static const std::vector<Cause> all = [] {
        std::vector<Cause> causes;
        for (const Row &row : rows)
            causes.push_back(
                {row.number, row.name, classes[row.number / 16], row.checkFirst, true});
        return causes;
    }();
    return all;
}

// An unknown cause is treated as the unspecified one of its class (Q.850, from memory).
Cause unlisted(int number)
{
    const int unspecified = number < 16 ? 31 : number | 15;
    return {number, "not in the Q.850 list", classes[number / 16],
            QString("Take it for cause %1, the unspecified one of its class").arg(unspecified),
            false};
}

} // namespace

const LocationAdvice &adviceOf(CauseLocation location)
{
    // Locations of Q.850 as public lists have them.
    static const LocationAdvice advice[] = {
        {CauseLocation::User, QT_TRANSLATE_NOOP("core", "from a terminal"),
         QT_TRANSLATE_NOOP("core", "A terminal said so, the far one or the line's own: look at its "
                                   "settings and services.")},
        {CauseLocation::PrivateLocal,
         QT_TRANSLATE_NOOP("core", "from the private network at this end"),
         QT_TRANSLATE_NOOP("core", "The customer's own exchange said so: its settings.")},
        {CauseLocation::PublicLocal, QT_TRANSLATE_NOOP("core", "from the serving switch"),
         QT_TRANSLATE_NOOP("core", "The serving switch said so: what the office has built.")},
        {CauseLocation::Transit, QT_TRANSLATE_NOOP("core", "from a transit network"),
         QT_TRANSLATE_NOOP(
             "core", "A network on the way said so: report it to the office, this line is not "
                     "at fault.")},
        {CauseLocation::PublicRemote,
         QT_TRANSLATE_NOOP("core", "from the public network at the far end"),
         QT_TRANSLATE_NOOP("core",
                           "The far end's switch said so: call another number, this line is "
                           "not at fault.")},
        {CauseLocation::PrivateRemote,
         QT_TRANSLATE_NOOP("core", "from the private network at the far end"),
         QT_TRANSLATE_NOOP("core", "The far end's exchange said so: call another number, this line "
                                   "is not at fault.")},
        {CauseLocation::International, QT_TRANSLATE_NOOP("core", "from the international network"),
         QT_TRANSLATE_NOOP("core", "The international network said so: call a number at home.")},
        {CauseLocation::Beyond,
         QT_TRANSLATE_NOOP("core", "from a network beyond an interworking point"),
         QT_TRANSLATE_NOOP("core", "A network of another kind said so: call an ISDN number at "
                                   "home.")}};
    return *std::ranges::find(advice, location, &LocationAdvice::location);
}

std::optional<Cause> causeOf(int number)
{
    if (number < 1 || number > 127)
        return std::nullopt;
    const auto found = std::find_if(table().begin(), table().end(), [number](const Cause &cause) {
        return cause.number == number;
    });
    return found == table().end() ? unlisted(number) : *found;
}

std::span<const Cause> allCauses()
{
    return table();
}

bool usesQ850(const ProtocolVariant &variant)
{
    return whyNoCauseNames(variant).isEmpty();
}

QString whyNoCauseNames(const ProtocolVariant &variant)
{
    if (!variant.hasLayer2())
        return "An analog line has no cause codes";
    return variant.ownCauseList ? variant.name + " has a cause list of its own, with other meanings"
                                : QString();
}

} // namespace loopwright
