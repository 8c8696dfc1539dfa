#pragma once
// Damage that a spreadsheet does to a number that is really a text: scientific notation, a decimal
// point at the end, an apostrophe in front, digits beyond the fifteenth lost. It is recognised and
// named; nothing is repaired here without being asked. (A lost leading zero needs the variant's
// shape to be seen; Spid.cpp looks for it.)

#include "core/base/Finding.h"

#include <optional>

namespace loopwright {

enum class SpellingTroubleKind
{
    Scientific, ///< 2.17556E+13
    Decimal,    ///< 21755501430101.0
    Apostrophe, ///< '21755501430101
    Rounded,    ///< more than 15 digits, all zero after the fifteenth
};

struct SpellingTrouble
{
    SpellingTroubleKind kind = SpellingTroubleKind::Decimal;
    QString code;     ///< "scientific", "decimal", "apostrophe", "rounded"; prefixed by the field
    Text reason;      ///< one sentence
    QString restored; ///< the digits that were meant; empty if they are lost
};

std::optional<SpellingTrouble> spellingTroubleOf(QStringView typed);

} // namespace loopwright
