#pragma once
// A sentence that core says: the English source, marked for translation, and what stands in it. A
// decision keeps the English; a face shows it in the reader's language. What a person typed and a
// key stand in a sentence as arguments and are never translated; a figure has the decimal mark of
// the language, unless its place says that it is a key or was typed (holdsKey).

#include "core/base/Figures.h"

#include <concepts>
#include <functional>
#include <optional>
#include <variant>
#include <vector>

namespace loopwright {

class Text
{
public:
    /// Source and, for a sentence that counts, how many; returns the source in another language.
    struct Catalogue
    {
        Catalogue() = default;
        template<std::invocable<const char *, std::optional<qint64>> Say>
        explicit(false) Catalogue(Say words, QChar mark = englishMark)
            : say(std::move(words))
            , decimalMark(mark)
        {
        }
        explicit operator bool() const { return bool(say); }
        /// Its decimal mark, and its unit as the language writes that.
        QString figure(const QString &english) const;

        std::function<QString(const char *source, std::optional<qint64> count)> say = {};
        QChar decimalMark = englishMark; ///< of the figures that stand in it
    };

    Text() = default;
    /// A source text of the program, of static duration; %1 to %9 are filled by arg().
    explicit(false) Text(const char *source);
    /// What is shown as it is in every language.
    static Text verbatim(const QString &text);
    /// A number with its unit: the same in each language but for the decimal mark.
    static Text figure(const QString &text);
    /// A sentence or word of the program that comes as plain text, as an error's does; the
    /// catalogue of a face reads it (Phrasebook.h).
    static Text message(const QString &english);
    /// `one` for a count of one, else `many`; %n in it is the count. `many` is the catalogue's key.
    static Text counted(const char *one, const char *many, qint64 count);

    /// Fills the next place. All places are filled at once: a % in an argument is no place.
    Text arg(const QString &value) const;
    Text arg(const Text &value) const;
    Text arg(qint64 value) const;
    Text arg(int value) const { return arg(qint64(value)); }
    Text arg(double value) const; ///< shortest form

    /// As it stands within another sentence: in English without the capital that begins it, unless
    /// that is a name's ("B1 …"). A catalogue keeps what it says: German nouns have theirs.
    Text continued() const;

    /// Appends a further sentence, after a blank.
    Text &operator+=(const Text &next);
    /// Sentences or parts with something else between them, e.g. "; ".
    static Text joined(const std::vector<Text> &parts, const QString &between);

    bool isEmpty() const { return m_parts.empty(); }
    /// Whether one of the sentences says the same.
    bool contains(const Text &sentence) const;

    QString english() const;
    QString in(const Catalogue &catalogue) const;

    bool operator==(const Text &other) const { return english() == other.english(); }

private:
    using Argument = std::variant<QString, std::vector<Text>>;
    struct Part
    {
        const char *source = nullptr; ///< none: verbatim, in `one`
        const char *one = nullptr;
        std::optional<qint64> count = {};
        QString verbatim = {};
        std::vector<Argument> arguments = {};
        QString before = {}; ///< between it and the part before
        bool continues = false;
        bool isMessage = false; ///< the verbatim
        bool isFigure = false;  ///< likewise
    };

    Text withArgument(Argument argument) const;
    static QString shown(const Part &part, const Catalogue &catalogue);
    static QStringList shownArguments(const Part &part, const Catalogue &catalogue);

    std::vector<Part> m_parts;
};

} // namespace loopwright
