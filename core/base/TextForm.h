#pragma once
// What a text must not be, wherever it comes in: too long, with control characters, or no text at
// all in Unicode.

#include "core/base/Text.h"

namespace loopwright {

/// Empty, or what is wrong: "is longer than 200 characters", "holds a control character" (line
/// break and tab are allowed), "holds half a character" (an unpaired surrogate, which no UTF-8 can
/// hold). Lengths in UTF-16 code units.
Text textTrouble(QStringView text, qsizetype longest);

} // namespace loopwright
