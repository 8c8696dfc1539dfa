#pragma once
// The one place where fonts for paper and pictures are made. The family is named, so that a page
// looks the same everywhere. DejaVu Sans joins f and i into one glyph, and a text taken out of the
// PDF would then lack the word "Certificate": a letter spacing of 100.01 % keeps the letters apart.

#include <QFont>
#include <QStringList>

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

/// The characters that no font at hand has, each once, in their order: they would be printed as
/// boxes or not at all. All of them if there is no font.
QStringList missingCharacters(const QString &text);
/// The Debian package whose fonts have such a character.
QString fontPackageFor(char32_t character);
/// "東 (U+6771)"; a character that cannot be shown on a terminal by its number alone.
QString characterName(const QString &character);

} // namespace loopwright
