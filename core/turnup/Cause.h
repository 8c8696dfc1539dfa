#pragma once
// Cause values of Q.850: name, class, and the first thing to check. A 1TR6 line has a cause list of
// its own with other meanings, so its causes are never named from this one.

#include "core/identifiers/ProtocolVariant.h"

#include <QString>

#include <optional>
#include <span>

namespace loopwright {

struct Cause
{
    int number = 0;     ///< 1 to 127
    QString name;       ///< "User busy"; "not in the Q.850 list" where it is not
    QString classText;  ///< by number div 16: "normal event", …
    QString checkFirst; ///< one line for the installer
    bool inList = false;
};

/// Nothing for 0 (equipment uses it for "no error") and for anything outside 1 to 127.
std::optional<Cause> causeOf(int number);
/// Every cause of the list, in order.
std::span<const Cause> allCauses();

/// True where causeOf() speaks for this variant: everything but 1TR6 and analog lines.
bool usesQ850(const ProtocolVariant &variant);
/// Why no name is given on such a variant; empty where usesQ850().
QString whyNoCauseNames(const ProtocolVariant &variant);

} // namespace loopwright
