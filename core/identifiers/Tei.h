#pragma once
// The TEI of a terminal (Q.921 3.3.4): 0 to 63 set in the terminal, 64 to 126 given by the network,
// 127 the group address. Typed as "auto", a number, or nothing, which means automatic.

#include "core/base/Finding.h"
#include "core/identifiers/ProtocolVariant.h"

#include <optional>

namespace loopwright {

struct TeiCheck
{
    std::optional<int> fixed; ///< 0 to 126; empty: automatic, or not readable
    Findings findings;        ///< their `field` is "tei"

    Severity worst() const { return loopwright::worst(findings); }
    QString verdict() const { return verdictName(worst()); }
};

/// Errors: not a number, 127 or more, any on a line without layer 2. Warnings: 64 to 126 as a fixed
/// one, 0 on a multipoint variant, anything but 0 on a point-to-point variant.
TeiCheck checkTei(const ProtocolVariant &variant, const QString &typed);

/// Nothing, "auto" or "automatic", however they are typed.
bool isAutomaticTei(const QString &typed);

} // namespace loopwright
