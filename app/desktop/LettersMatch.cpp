#include "app/desktop/LettersMatch.h"

#include "core/base/Folding.h"

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>

namespace loopwright {

namespace {

enum Nearness
{
    BeginsTheName,
    BeginWords,
    AreInitials,
    StandInIt,
    InOrder
};

QStringList wordsOf(const QString &text)
{
    static const QRegularExpression between(QStringLiteral("[^\\p{L}\\p{N}]+"));
    return text.split(between, Qt::SkipEmptyParts);
}

bool beginWords(const QStringList &asked, const QStringList &words)
{
    return std::ranges::all_of(asked, [&words](const QString &each) {
        return std::ranges::any_of(words,
                                   [&each](const QString &word) { return word.startsWith(each); });
    });
}

/// How many other letters stand between them, where they stand closest; nothing where they do not
/// follow each other.
std::optional<int> lettersBetween(const QString &name, const QString &letters)
{
    std::optional<int> fewest;
    for (qsizetype from = name.indexOf(letters[0]); from >= 0;
         from = name.indexOf(letters[0], from + 1)) {
        qsizetype at = from;
        for (qsizetype i = 1; i < letters.size() && at >= 0; ++i)
            at = name.indexOf(letters[i], at + 1);
        if (at < 0)
            break;
        const int between = int(at - from + 1 - letters.size());
        fewest = std::min(fewest.value_or(between), between);
    }
    return fewest;
}

} // namespace

std::optional<int> lettersMatch(const QString &name, const QString &asked)
{
    const QString all = foldForSearch(name), sought = foldForSearch(asked);
    const QStringList words = wordsOf(all), parts = wordsOf(sought);
    if (parts.isEmpty()) // nothing, or signs alone
        return all.contains(sought) ? std::optional<int>(BeginsTheName) : std::nullopt;
    if (all.startsWith(sought))
        return BeginsTheName;
    if (beginWords(parts, words))
        return BeginWords;
    QString initials;
    for (const QString &word : words)
        initials += word[0];
    const QString letters = parts.join(QString());
    if (initials.startsWith(letters))
        return AreInitials;
    if (std::ranges::all_of(parts, [&all](const QString &part) { return all.contains(part); }))
        return StandInIt;
    const std::optional<int> between = lettersBetween(all, letters);
    return between ? std::optional<int>(InOrder + *between) : std::nullopt;
}

} // namespace loopwright
