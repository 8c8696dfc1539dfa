#pragma once
// Cause values of Q.850: name, class, and the first thing to check. A 1TR6 line has a cause list of
// its own with other meanings, so its causes are never named from this one.

#include "core/base/EnumCodes.h"
#include "core/base/Text.h"
#include "core/identifiers/ProtocolVariant.h"

#include <optional>
#include <span>

namespace loopwright {

struct Cause
{
    int number = 0;  ///< 1 to 127
    Text name;       ///< "User busy"; "not in the Q.850 list" if it is not
    Text classText;  ///< by number div 16: "normal event", …
    Text checkFirst; ///< one line for the installer
    bool inList = false;
};

/// Where a cause was generated (the location of Q.850), as seen from the user.
enum class CauseLocation
{
    User,
    PrivateLocal,
    PublicLocal,
    Transit,
    PublicRemote,
    PrivateRemote,
    International,
    Beyond, ///< the network beyond an interworking point
};
template<>
struct EnumCodes<CauseLocation>
{
    static constexpr std::pair<CauseLocation, const char *> table[] = {
        {CauseLocation::User, "user"},
        {CauseLocation::PrivateLocal, "private_local"},
        {CauseLocation::PublicLocal, "public_local"},
        {CauseLocation::Transit, "transit"},
        {CauseLocation::PublicRemote, "public_remote"},
        {CauseLocation::PrivateRemote, "private_remote"},
        {CauseLocation::International, "international"},
        {CauseLocation::Beyond, "beyond"}};
};

/// Same cause, another location: another place to look.
struct LocationAdvice
{
    CauseLocation location;
    Text from;  ///< "from the serving switch"
    Text check; ///< where to look, one sentence
};
const LocationAdvice &adviceOf(CauseLocation location);

/// Nothing for 0 (equipment uses it for "no error") and for anything outside 1 to 127.
std::optional<Cause> causeOf(int number);
/// Every cause of the list, in order.
std::span<const Cause> allCauses();

/// True if causeOf() speaks for this variant: everything but 1TR6 and analog lines.
bool usesQ850(const ProtocolVariant &variant);
/// Why no name is given on such a variant; empty if usesQ850().
Text whyNoCauseNames(const ProtocolVariant &variant);

} // namespace loopwright
