#pragma once
// The one place where fonts for paper and pictures are made. The family is named, so that a page
// looks the same everywhere. DejaVu Sans joins f and i into one glyph, and a text taken out of the
// PDF would then lack the word "Certificate": a letter spacing of 100.01 % keeps the letters apart.

#include <QFont>

namespace loopwright {

enum class Face
{
    Text,
    Strong,
    Title,  ///< serifs, for the name of a page
    Digits, ///< all digits of one width, for identifiers
    StrongDigits,
};

/// `size` in units of the painter: on a Sheet these are tenths of a point.
QFont printFont(Face face, int size);

/// Whether the fonts are there; without any, every letter would be printed as a box.
bool fontsAreThere();

} // namespace loopwright
