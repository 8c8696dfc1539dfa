#pragma once
// Lengths of cable in the window: in feet or metres, as the reader's country measures. What is
// typed, drawn and predicted of a make-up stays in the unit that the make-up itself is given in;
// what is stored, printed, exported or said by the command line stays as it is.

#include <QString>

namespace loopwright {

/// By the country that dates and numbers go by (QLocale). A system that names no country is taken
/// for one of the trade's feet.
bool inMetres();

/// A sentence on a loop, in the language of the window, that a person has typed nothing in: each
/// "4500 ft" or "400 m" in it in that unit. With the decimals that it has; with more where two
/// lengths of the sentence would come out alike.
QString withLengths(const QString &said, bool metres);

} // namespace loopwright
