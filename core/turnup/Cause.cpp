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
    {1, QT_TRANSLATE_NOOP("core", "Unallocated (unassigned) number"),
     QT_TRANSLATE_NOOP(
         "core", "Check the digits dialled, and whether the number is built in the switch yet")},
    {2, QT_TRANSLATE_NOOP("core", "No route to specified transit network"),
     QT_TRANSLATE_NOOP("core", "Check the choice of long-distance carrier on the line")},
    {3, QT_TRANSLATE_NOOP("core", "No route to destination"),
     QT_TRANSLATE_NOOP("core", "Check the number, its prefix and the choice of carrier")},
    {4, QT_TRANSLATE_NOOP("core", "Send special information tone"),
     QT_TRANSLATE_NOOP("core",
                       "The called number is out of use: try a test number known to be good")},
    {5, QT_TRANSLATE_NOOP("core", "Misdialled trunk prefix"),
     QT_TRANSLATE_NOOP("core", "Drop or add the leading 0 or 1")},
    {6, QT_TRANSLATE_NOOP("core", "Channel unacceptable"),
     QT_TRANSLATE_NOOP("core", "Compare the B channel asked for with what is provisioned")},
    {7, QT_TRANSLATE_NOOP("core", "Call awarded, delivered in established channel"),
     QT_TRANSLATE_NOOP("core", "Normal on packet calls; otherwise pass over it")},
    {8, QT_TRANSLATE_NOOP("core", "Preemption"),
     QT_TRANSLATE_NOOP("core", "A priority call took the channel: try again")},
    {9, QT_TRANSLATE_NOOP("core", "Preemption, circuit reserved for reuse"),
     QT_TRANSLATE_NOOP("core", "A priority call took the channel: try again")},
    {14, QT_TRANSLATE_NOOP("core", "QoR: ported number"),
     QT_TRANSLATE_NOOP("core",
                       "The number moved to another carrier: dial again, report the routing")},
    {16, QT_TRANSLATE_NOOP("core", "Normal call clearing"),
     QT_TRANSLATE_NOOP("core", "Nothing: somebody hung up")},
    {17, QT_TRANSLATE_NOOP("core", "User busy"),
     QT_TRANSLATE_NOOP("core",
                       "The other end is in use; is additional call offering provisioned?")},
    {18, QT_TRANSLATE_NOOP("core", "No user responding"),
     QT_TRANSLATE_NOOP(
         "core", "The terminal does not answer SETUP: check its power, its SPID and its TEI")},
    {19, QT_TRANSLATE_NOOP("core", "No answer from user (alerted)"),
     QT_TRANSLATE_NOOP("core", "It rang: answer it")},
    {20, QT_TRANSLATE_NOOP("core", "Subscriber absent"),
     QT_TRANSLATE_NOOP("core", "The far terminal is not registered or is switched off")},
    {21, QT_TRANSLATE_NOOP("core", "Call rejected"),
     QT_TRANSLATE_NOOP(
         "core", "The terminal refused: check call screening, DN and bearer service set in it")},
    {22, QT_TRANSLATE_NOOP("core", "Number changed"),
     QT_TRANSLATE_NOOP("core", "Use the new number in the diagnostic")},
    {23, QT_TRANSLATE_NOOP("core", "Redirection to new destination"),
     QT_TRANSLATE_NOOP("core", "The call was forwarded: check that this is wanted")},
    {24, QT_TRANSLATE_NOOP("core", "Call rejected due to feature at destination"),
     QT_TRANSLATE_NOOP("core", "The far line blocks such calls")},
    {25, QT_TRANSLATE_NOOP("core", "Exchange routing error"),
     QT_TRANSLATE_NOOP("core", "Report it to the switch centre")},
    {26, QT_TRANSLATE_NOOP("core", "Non-selected user clearing"),
     QT_TRANSLATE_NOOP("core", "Normal when two terminals answer")},
    {27, QT_TRANSLATE_NOOP("core", "Destination out of order"),
     QT_TRANSLATE_NOOP("core", "The far line is down at layer 1 or 2")},
    {28, QT_TRANSLATE_NOOP("core", "Invalid number format (incomplete)"),
     QT_TRANSLATE_NOOP("core", "Check the count of digits and the type of number")},
    {29, QT_TRANSLATE_NOOP("core", "Facility rejected"),
     QT_TRANSLATE_NOOP("core", "The feature is not on this line: compare with the order")},
    {30, QT_TRANSLATE_NOOP("core", "Response to STATUS ENQUIRY"),
     QT_TRANSLATE_NOOP("core", "Nothing: information only")},
    {31, QT_TRANSLATE_NOOP("core", "Normal, unspecified"),
     QT_TRANSLATE_NOOP("core", "Try again, then try another number")},
    {34, QT_TRANSLATE_NOOP("core", "No circuit/channel available"),
     QT_TRANSLATE_NOOP("core", "Are both B channels busy? Otherwise trunks are full: try again")},
    {38, QT_TRANSLATE_NOOP("core", "Network out of order"),
     QT_TRANSLATE_NOOP("core", "Call the switch centre: it is not your wiring")},
    {39, QT_TRANSLATE_NOOP("core", "Permanent frame connection out of service"),
     QT_TRANSLATE_NOOP("core", "Check the state of the packet or frame link")},
    {40, QT_TRANSLATE_NOOP("core", "Permanent frame connection operational"),
     QT_TRANSLATE_NOOP("core", "Nothing: information only")},
    {41, QT_TRANSLATE_NOOP("core", "Temporary failure"),
     QT_TRANSLATE_NOOP("core", "Try again; if it stays, call the switch centre")},
    {42, QT_TRANSLATE_NOOP("core", "Switching equipment congestion"),
     QT_TRANSLATE_NOOP("core", "Try again later")},
    {43, QT_TRANSLATE_NOOP("core", "Access information discarded"),
     QT_TRANSLATE_NOOP("core", "Subaddress or user data were not carried: harmless to voice")},
    {44, QT_TRANSLATE_NOOP("core", "Requested circuit/channel not available"),
     QT_TRANSLATE_NOOP("core", "Ask for any channel; look for a B channel that hangs")},
    {46, QT_TRANSLATE_NOOP("core", "Precedence call blocked"),
     QT_TRANSLATE_NOOP("core", "On priority networks only: try again")},
    {47, QT_TRANSLATE_NOOP("core", "Resource unavailable, unspecified"),
     QT_TRANSLATE_NOOP("core", "Try again, then call the switch centre")},
    {49, QT_TRANSLATE_NOOP("core", "Quality of service not available"),
     QT_TRANSLATE_NOOP("core", "Check the packet parameters")},
    {50, QT_TRANSLATE_NOOP("core", "Requested facility not subscribed"),
     QT_TRANSLATE_NOOP("core", "The order lacks the feature: check the package")},
    {53, QT_TRANSLATE_NOOP("core", "Outgoing calls barred within closed user group"),
     QT_TRANSLATE_NOOP("core", "Check the closed-group settings")},
    {55, QT_TRANSLATE_NOOP("core", "Incoming calls barred within closed user group"),
     QT_TRANSLATE_NOOP("core", "Check the closed-group settings")},
    {57, QT_TRANSLATE_NOOP("core", "Bearer capability not authorised"),
     QT_TRANSLATE_NOOP("core", "The line is not provisioned for this kind of voice or data")},
    {58, QT_TRANSLATE_NOOP("core", "Bearer capability not presently available"),
     QT_TRANSLATE_NOOP("core", "Use 56 kbit/s instead of 64; try again")},
    {62, QT_TRANSLATE_NOOP("core", "Inconsistency in outgoing access information"),
     QT_TRANSLATE_NOOP("core", "Check the closed-group or class settings")},
    {63, QT_TRANSLATE_NOOP("core", "Service or option not available, unspecified"),
     QT_TRANSLATE_NOOP("core", "Check package and feature; call the switch centre")},
    {65, QT_TRANSLATE_NOOP("core", "Bearer capability not implemented"),
     QT_TRANSLATE_NOOP(
         "core", "The bearer is wrong for this switch: check V.110 or V.120, 56 or 64 kbit/s")},
    {66, QT_TRANSLATE_NOOP("core", "Channel type not implemented"),
     QT_TRANSLATE_NOOP("core", "Check the choice of B or D channel in the terminal")},
    {69, QT_TRANSLATE_NOOP("core", "Requested facility not implemented"),
     QT_TRANSLATE_NOOP("core", "Is the protocol variant in the terminal wrong?")},
    {70, QT_TRANSLATE_NOOP("core", "Only restricted digital bearer available"),
     QT_TRANSLATE_NOOP("core", "Use 56 kbit/s")},
    {79, QT_TRANSLATE_NOOP("core", "Service or option not implemented, unspecified"),
     QT_TRANSLATE_NOOP("core", "Check protocol variant and bearer")},
    {81, QT_TRANSLATE_NOOP("core", "Invalid call reference"),
     QT_TRANSLATE_NOOP("core", "Terminal and switch are out of step: restart the terminal")},
    {82, QT_TRANSLATE_NOOP("core", "Identified channel does not exist"),
     QT_TRANSLATE_NOOP("core",
                       "Check the channel number; point-to-point and multipoint mixed up?")},
    {83, QT_TRANSLATE_NOOP("core", "Suspended call exists, this identity does not"),
     QT_TRANSLATE_NOOP("core", "Check the identity of the parked call")},
    {84, QT_TRANSLATE_NOOP("core", "Call identity in use"),
     QT_TRANSLATE_NOOP("core", "Check the identity of the parked call")},
    {85, QT_TRANSLATE_NOOP("core", "No call suspended"),
     QT_TRANSLATE_NOOP("core", "Check the identity of the parked call")},
    {86, QT_TRANSLATE_NOOP("core", "Call with that identity already cleared"),
     QT_TRANSLATE_NOOP("core", "Check the identity of the parked call")},
    {87, QT_TRANSLATE_NOOP("core", "User not member of closed user group"),
     QT_TRANSLATE_NOOP("core", "Check the closed-group settings")},
    {88, QT_TRANSLATE_NOOP("core", "Incompatible destination"),
     QT_TRANSLATE_NOOP(
         "core",
         "The far terminal refuses the bearer: voice to a data set, or 56 against 64 kbit/s")},
    {90, QT_TRANSLATE_NOOP("core", "Non-existent closed user group"),
     QT_TRANSLATE_NOOP("core", "Check the closed-group index")},
    {91, QT_TRANSLATE_NOOP("core", "Invalid transit network selection"),
     QT_TRANSLATE_NOOP("core", "Check the carrier code")},
    {95, QT_TRANSLATE_NOOP("core", "Invalid message, unspecified"),
     QT_TRANSLATE_NOOP("core", "Check the protocol variant in the terminal")},
    {96, QT_TRANSLATE_NOOP("core", "Mandatory information element missing"),
     QT_TRANSLATE_NOOP("core", "Check the protocol variant in the terminal")},
    {97, QT_TRANSLATE_NOOP("core", "Message type non-existent or not implemented"),
     QT_TRANSLATE_NOOP("core", "Check the protocol variant in the terminal")},
    {98, QT_TRANSLATE_NOOP("core", "Message not compatible with state, or unknown"),
     QT_TRANSLATE_NOOP("core", "Check the protocol variant; restart the terminal")},
    {99, QT_TRANSLATE_NOOP("core", "Information element non-existent"),
     QT_TRANSLATE_NOOP("core", "Check the protocol variant; the switch may not know the feature")},
    {100, QT_TRANSLATE_NOOP("core", "Invalid information element contents"),
     QT_TRANSLATE_NOOP(
         "core",
         "At start-up: the SPID is wrong. Otherwise check the digits of number and bearer")},
    {101, QT_TRANSLATE_NOOP("core", "Message not compatible with call state"),
     QT_TRANSLATE_NOOP("core", "Restart the terminal")},
    {102, QT_TRANSLATE_NOOP("core", "Recovery on timer expiry"),
     QT_TRANSLATE_NOOP("core", "No reply came: layer 2 dropped, or noise on the wiring")},
    {103,
     QT_TRANSLATE_NOOP("core",
                       "Parameter non-existent, passed on; or length error in a mandatory element"),
     QT_TRANSLATE_NOOP("core", "Nothing: information only")},
    {110, QT_TRANSLATE_NOOP("core", "Message with unrecognised parameter discarded"),
     QT_TRANSLATE_NOOP("core", "Nothing: information only")},
    {111, QT_TRANSLATE_NOOP("core", "Protocol error, unspecified"),
     QT_TRANSLATE_NOOP("core", "Check the protocol variant; report with a trace")},
    {127, QT_TRANSLATE_NOOP("core", "Interworking, unspecified"),
     QT_TRANSLATE_NOOP("core", "The call left ISDN: listen to the other network's tone")},
};

// By number div 16. The last number of a class stands for "unspecified".
constexpr const char *classes[] = {QT_TRANSLATE_NOOP("core", "normal event"),
                                   QT_TRANSLATE_NOOP("core", "normal event"),
                                   QT_TRANSLATE_NOOP("core", "resource unavailable"),
                                   QT_TRANSLATE_NOOP("core", "service or option not available"),
                                   QT_TRANSLATE_NOOP("core", "service or option not implemented"),
                                   QT_TRANSLATE_NOOP("core", "invalid message"),
                                   QT_TRANSLATE_NOOP("core", "protocol error"),
                                   QT_TRANSLATE_NOOP("core", "interworking")};

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
    return {
        number, QT_TRANSLATE_NOOP("core", "not in the Q.850 list"), classes[number / 16],
        Text(QT_TRANSLATE_NOOP("core", "Take it for cause %1, the unspecified one of its class"))
            .arg(unspecified),
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
             "core",
             "A network on the way said so: report it to the office, this line is not at fault.")},
        {CauseLocation::PublicRemote,
         QT_TRANSLATE_NOOP("core", "from the public network at the far end"),
         QT_TRANSLATE_NOOP(
             "core",
             "The far end's switch said so: call another number, this line is not at fault.")},
        {CauseLocation::PrivateRemote,
         QT_TRANSLATE_NOOP("core", "from the private network at the far end"),
         QT_TRANSLATE_NOOP(
             "core",
             "The far end's exchange said so: call another number, this line is not at fault.")},
        {CauseLocation::International, QT_TRANSLATE_NOOP("core", "from the international network"),
         QT_TRANSLATE_NOOP("core", "The international network said so: call a number at home.")},
        {CauseLocation::Beyond,
         QT_TRANSLATE_NOOP("core", "from a network beyond an interworking point"),
         QT_TRANSLATE_NOOP("core",
                           "A network of another kind said so: call an ISDN number at home.")}};
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

Text whyNoCauseNames(const ProtocolVariant &variant)
{
    if (!variant.hasLayer2())
        return QT_TRANSLATE_NOOP("core", "An analog line has no cause codes");
    return variant.ownCauseList
               ? Text(QT_TRANSLATE_NOOP("core",
                                        "%1 has a cause list of its own, with other meanings"))
                     .arg(variant.name)
               : Text();
}

} // namespace loopwright
