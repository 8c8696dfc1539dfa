#pragma once
// Text codes of an enumeration, in one table per enumeration. Codes are what is stored, exchanged
// and printed; ordinals never leave the program. An enumeration joins by specialising EnumCodes
// with a `table` of {value, "code"} pairs.

#include <QString>
#include <QStringList>

#include <array>
#include <optional>
#include <utility>

namespace loopwright {

template<class E>
struct EnumCodes; // template<> struct EnumCodes<Kind> { static constexpr std::pair<Kind, const char
                  // *> table[] = {…}; };

template<class E>
QString toText(E value)
{
    for (const auto &[candidate, word] : EnumCodes<E>::table)
        if (candidate == value)
            return QString::fromLatin1(word);
    return {};
}

template<class E>
std::optional<E> fromText(QStringView text)
{
    for (const auto &[candidate, word] : EnumCodes<E>::table)
        if (text == QLatin1StringView(word))
            return candidate;
    return std::nullopt;
}

template<class E>
QStringList allWords()
{
    QStringList words;
    for (const auto &entry : EnumCodes<E>::table)
        words << QString::fromLatin1(entry.second);
    return words;
}

} // namespace loopwright
