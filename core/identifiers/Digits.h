#pragma once
// Digits out of what a person typed. Separators, which never change a verdict, are space, tab,
// no-break space, hyphen-minus, en dash, full stop and parentheses; everything else that is not 0
// to 9 is refused, never converted. Works on UTF-8 without allocating, because lists of a million
// rows go through it.

#include "core/base/Text.h"

#include <QList>

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace loopwright {

struct DigitText
{
    /// More than any identifier has; further digits are counted and not kept.
    static constexpr int capacity = 24;

    std::array<char, capacity> kept{};
    int count = 0;          ///< digits in all
    bool onlyDigits = true; ///< nothing but digits and separators
    bool plus = false;      ///< begins with "+", which only a directory number may

    std::string_view view() const { return {kept.data(), std::size_t(std::min(count, capacity))}; }
    bool isBlank() const { return count == 0 && onlyDigits && !plus; }
};

DigitText stripSeparators(std::string_view utf8);

/// A character that is neither digit nor separator.
struct OddCharacter
{
    int place = 0; ///< from 1, in characters as typed
    char32_t character = 0;
    std::optional<char> meant; ///< the only digit that it can stand for
    bool droppable = false;    ///< stands for nothing: another kind of space, dash, invisible mark,
                               ///< or the apostrophe in front
};

std::vector<OddCharacter> oddCharacters(QStringView typed);
/// "the letter O", "the character #", "the unprintable character U+0007".
Text characterInWords(char32_t character);
/// "Character 1 is the letter O: type the digit 0"; `onlyDigits` if it can be neither typed nor
/// left out, e.g. "a SPID has digits only".
Text oddCharacterText(const OddCharacter &odd, const char *onlyDigits);
/// The digits that were meant, if every odd character has exactly one meaning.
std::optional<std::string> respelt(QStringView typed);

/// 217-555-0143 or 555-0143 for ten or seven digits, anything else as it is.
std::string hyphenated(std::string_view digits);

} // namespace loopwright
