#pragma once
// One SPID judged alone (the rules: SpidRules.h): verdict, reason, the repair if exactly
// one is possible, and the SPID taken apart. A SPID is text: leading zeros count. The provider's
// order paper is the authority; this catches typing errors and wrong variants. Any text is an
// acceptable input; nothing here fails.

#include "core/base/Finding.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/identifiers/SpidPart.h"

namespace loopwright {

struct SpidCheck
{
    QString digits;              ///< without separators; empty if it holds anything but digits
    Findings findings;           ///< worst first; their `field` is "spid"
    std::vector<SpidPart> parts; ///< cover `digits` from left to right; empty if it is

    Severity worst() const { return loopwright::worst(findings); }
    /// "ok", "warning" or "error".
    QString verdict() const { return verdictName(worst()); }
    /// The whole repaired SPID if exactly one repair is possible; judged again it is ok.
    QString repair() const;
    /// "217 area code · 555-0143 number · 01 sharing id · 01 terminal id"; empty without parts.
    QString inWords() const;
    /// Digits in groups for reading aloud: "217 555 0143 01 01".
    QString grouped() const;
};

/// `dn` may be empty; it matters only for the comparison with the number in the SPID.
SpidCheck checkSpid(const ProtocolVariant &variant, const QString &spid, const QString &dn = {});

} // namespace loopwright
