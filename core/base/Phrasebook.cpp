#include "core/base/Phrasebook.h"

#include <algorithm>
#include <array>

namespace loopwright {

namespace {

/// A sentence of a sentence of a sentence …; what is nested deeper is no text of the program.
constexpr int deepest = 8;
constexpr qsizetype mostRemembered = 20000;
/// Letters of its own by which a phrase is known whatever stands in its places. "by %1" has too
/// few: it counts only where what stands there is known too, and after the parts of a list.
constexpr qsizetype lettersOfStrong = 10;
/// Of one that may hold sentences.
constexpr qsizetype lettersOfOpen = 24;

bool isLetter(QChar c)
{
    return c.isLetter();
}

QString firstWord(const QString &text)
{
    return text.left(std::ranges::find_if_not(text, isLetter) - text.begin()).toLower();
}

/// A form such as "%1, %2" has nothing of its own: everything would fit it.
bool saysSomething(const QString &literal)
{
    static const QRegularExpression ownWord("[A-Za-z]{2}|[A-Za-z] [A-Za-z]");
    return ownWord.match(literal).hasMatch();
}

/// "self_test, hazard_closed": the words that a file may have, not what they are called.
bool isListOfCodes(const QString &text)
{
    static const QRegularExpression codes("^[a-z0-9_]+(, [a-z0-9_]+)+$");
    return text.contains('_') && codes.match(text).hasMatch();
}

/// What one of its places may hold: not two sentences, or two of a list, of which it has one.
bool holdsMore(const QString &value)
{
    static const QRegularExpression end("; |(?<!\\b[A-Z])\\. "); // "S. Lind" is one
    return end.match(value).hasMatch();
}

QString capitalised(QString text)
{
    if (!text.isEmpty())
        text.front() = text.front().toUpper();
    return text;
}

/// What begins a sentence has a capital, and none within another one; "B1 …" has it always.
std::optional<QString> otherCase(const QString &english)
{
    if (english.size() < 2 || !english[0].isLetter() || !english[1].isLower())
        return {};
    return english[0].isUpper() ? QString(english[0].toLower() + english.mid(1))
                                : capitalised(english);
}

const QRegularExpression &aPlace()
{
    static const QRegularExpression place("%([1-9]|n)");
    return place;
}

bool isQuoted(const QString &source, qsizetype from, qsizetype to)
{
    static const QString open = "\"“", close = "\"”";
    return from > 0 && to < source.size() && open.contains(source[from - 1]) &&
           close.contains(source[to]);
}

QString placeName(int place)
{
    return place == 0 ? QString("n") : QString("p%1").arg(place);
}

} // namespace

Phrasebook::Phrasebook(const QStringList &sources, Text::Catalogue catalogue)
    : m_catalogue(std::move(catalogue))
{
    for (const QString &source : sources) {
        if (source.contains(aPlace()))
            addPhrase(source);
        else
            m_words.insert(source, source.toUtf8());
    }
    for (std::vector<Phrase> &phrases : m_phrases)
        std::ranges::stable_sort(phrases, std::greater(), &Phrase::letters);
}

void Phrasebook::addPhrase(const QString &source)
{
    Phrase phrase{source.toUtf8(), {}, {}, 0, {}, {}};
    QString form, literal;
    qsizetype from = 0;
    const auto addLiteral = [&](qsizetype to) {
        const QString part = source.mid(from, to - from);
        form += QRegularExpression::escape(part);
        literal += part + u' ';
        if (part.size() > phrase.longest.size())
            phrase.longest = part;
    };
    for (auto it = aPlace().globalMatch(source); it.hasNext();) {
        const auto match = it.next();
        addLiteral(match.capturedStart());
        const int number = match.captured(1) == u"n" ? 0 : match.captured(1).toInt();
        if (std::ranges::find(phrase.places, number) != phrase.places.end()) {
            form += QString("\\k{%1}").arg(placeName(number));
        } else {
            form += QString(number == 0 ? "(?<%1>\\d+)" : "(?<%1>.+?)").arg(placeName(number));
            phrase.places.push_back(number);
            if (isQuoted(source, match.capturedStart(), match.capturedEnd()))
                phrase.quoted.push_back(number);
        }
        from = match.capturedEnd();
    }
    addLiteral(source.size());
    if (!saysSomething(literal))
        return;
    phrase.letters = std::ranges::count_if(literal, isLetter);
    if (phrase.quoted.size() == phrase.places.size()) // the marks themselves tell it
        phrase.letters = std::max(phrase.letters, lettersOfStrong);
    phrase.form.setPattern(QRegularExpression::anchoredPattern(form));
    phrase.form.setPatternOptions(QRegularExpression::DotMatchesEverythingOption);
    m_phrases[firstWord(source)].push_back(std::move(phrase));
}

QString Phrasebook::say(const QString &english, const QStringList &typed) const
{
    if (!typed.isEmpty())
        return saying(english, {typed});
    const QMutexLocker lock(&m_mutex);
    if (const auto known = m_said.constFind(english); known != m_said.constEnd())
        return *known;
    QString said = saying(english, {typed});
    if (m_said.size() >= mostRemembered)
        m_said.clear();
    m_said.insert(english, said);
    return said;
}

QString Phrasebook::saying(const QString &english, Within within) const
{
    if (within.depth > deepest || isListOfCodes(english) || within.typed.contains(english))
        return english;
    if (isFigure(english)) {
        if (const auto found = word(english)) // "up" is no figure
            return *found;
        return inOtherCase(english, Strength::Strong, within).value_or(m_catalogue.figure(english));
    }
    if (const auto sentences = bySentences(english, within))
        return *sentences;
    if (const auto whole = wholly(english, Strength::Strong, within))
        return *whole;
    if (const auto parts = inParts(english, within))
        return *parts;
    return wholly(english, Strength::Weak, within).value_or(english);
}

bool Phrasebook::isKnown(const QString &english, Within within) const
{
    return isFigure(english) || within.typed.contains(english) || m_words.contains(english) ||
           saying(english, within) != english;
}

/// Each by a phrase of its own, or none of them: the last place of a phrase would take in the
/// sentences that follow.
std::optional<QString> Phrasebook::bySentences(const QString &english, Within within) const
{
    static const QRegularExpression between("(?<=\\.)(?<!\\b[A-Z]\\.) (?=[A-Z“\"])");
    const QStringList sentences = english.split(between);
    if (sentences.size() < 2)
        return {};
    QStringList said;
    for (const QString &sentence : sentences)
        if (const auto found = wholly(sentence, Strength::Strong, within.deeper()))
            said << *found;
        else
            return {};
    return said.join(u' ');
}

/// As one phrase; with a full stop of its own or without, with a capital or without.
std::optional<QString> Phrasebook::wholly(const QString &english, Strength strength,
                                          Within within) const
{
    if (const auto found = word(english))
        return found;
    if (const auto found = wordInOtherCase(english)) // "Certificate issued" is no "Certificate %1"
        return found;
    if (const auto found = byForm(english, strength, within))
        return found;
    if (const auto found = inOtherCase(english, strength, within))
        return found;
    if (english.size() > 2 && english.endsWith(u'.') && !english.contains(". "))
        if (const auto found = wholly(english.chopped(1), strength, within.deeper()))
            return *found + u'.';
    return {};
}

std::optional<QString> Phrasebook::wordInOtherCase(const QString &english) const
{
    const auto other = otherCase(english);
    const auto found = other ? word(*other) : std::nullopt;
    return found && english[0].isUpper() ? capitalised(*found) : found;
}

std::optional<QString> Phrasebook::inOtherCase(const QString &english, Strength strength,
                                               Within within) const
{
    if (const auto found = wordInOtherCase(english))
        return found;
    const auto other = otherCase(english);
    const auto found = other ? byForm(*other, strength, within) : std::nullopt;
    return found && english[0].isUpper() ? capitalised(*found) : found;
}

std::optional<QString> Phrasebook::word(const QString &english) const
{
    const auto found = m_words.constFind(english);
    if (found == m_words.constEnd())
        return {};
    return m_catalogue.say(found->constData(), {});
}

std::optional<QString> Phrasebook::byForm(const QString &english, Strength strength,
                                          Within within) const
{
    // Those of no first word begin with a place.
    for (const QString &key : {firstWord(english), QString()}) {
        const auto phrases = m_phrases.constFind(key);
        if (phrases != m_phrases.constEnd())
            for (const Phrase &phrase : *phrases)
                if ((phrase.letters >= lettersOfStrong) == (strength == Strength::Strong))
                    if (const auto found = byPhrase(phrase, english, within))
                        return found;
        if (key.isEmpty())
            break;
    }
    return {};
}

/// What may stand in a place of the phrase.
bool Phrasebook::fits(const Phrase &phrase, const QString &value, Within within) const
{
    if (phrase.letters >= lettersOfStrong)
        return phrase.letters >= lettersOfOpen || !holdsMore(value);
    return value.isEmpty() || isKnown(value, within);
}

std::optional<QString> Phrasebook::byPhrase(const Phrase &phrase, const QString &english,
                                            Within within) const
{
    if (!english.contains(phrase.longest))
        return {};
    const auto match = phrase.form.match(english);
    if (!match.hasMatch())
        return {};
    std::array<QString, 10> values;
    for (const int place : phrase.places)
        values[std::size_t(place)] = match.captured(placeName(place));
    const auto isTyped = [&phrase](int place) {
        return std::ranges::find(phrase.quoted, place) != phrase.quoted.end();
    };
    for (const int place : phrase.places)
        if (!isTyped(place) && !fits(phrase, values[std::size_t(place)], within.deeper()))
            return {};
    // "Calls: No voice" is no kind of call.
    if (phrase.source.startsWith('%') && match.captured(placeName(phrase.places[0])).contains(": "))
        return {};
    const QString source = QString::fromUtf8(phrase.source);
    std::optional<qint64> count;
    if (!values[0].isEmpty())
        count = values[0].toLongLong();
    for (const int place : phrase.places)
        if (QString &value = values[std::size_t(place)];
            !isTyped(place) && !(isFigure(value) && holdsKey(source, place)))
            value = saying(value, within.deeper());
    const QString said = m_catalogue.say(phrase.source.constData(), count);
    QString text;
    for (qsizetype i = 0; i < said.size(); ++i) {
        const QChar next = i + 1 < said.size() ? said[i + 1] : QChar();
        const int place = next == u'n' ? 0 : next.digitValue();
        if (said[i] == u'%' && place >= 0 && place <= 9)
            text += values[std::size_t(place)], ++i;
        else
            text += said[i];
    }
    return text;
}

/// Sentences first, then what stands between semicolons, behind a colon, between commas.
std::optional<QString> Phrasebook::inParts(const QString &english, Within within) const
{
    static const QRegularExpression typedWithin("^(.*?)(“.*”)(.*)$",
                                                QRegularExpression::DotMatchesEverythingOption);
    static const QRegularExpression parenthesis("^([^()]+) \\(([^()]+)\\)$");
    // What stands in quotation marks was typed.
    if (const auto match = typedWithin.match(english); match.hasMatch())
        return saying(match.captured(1).trimmed(), within.deeper()) +
               (match.captured(1).endsWith(u' ') ? " " : "") + match.captured(2) +
               saying(match.captured(3), within.deeper());
    static const QString separators[] = {"\n", ". ", "  ·  ", "; ", " – ", ": ", ", ", " and "};
    if (const auto match = parenthesis.match(english); match.hasMatch())
        return saying(match.captured(1), within.deeper()) + " (" +
               saying(match.captured(2), within.deeper()) + u')';
    for (const QString &separator : separators)
        if (const auto found = divided(english, separator, within))
            return found;
    return {};
}

/// Empty where none of the parts is known.
std::optional<QString> Phrasebook::divided(const QString &english, const QString &separator,
                                           Within within) const
{
    QStringList parts = english.split(separator);
    if (parts.size() < 2)
        return {};
    if (separator == u": ") // what is said of the first may have one of its own
        parts = {parts[0], english.mid(parts[0].size() + separator.size())};
    const bool sentences = separator == u". ";
    bool anyKnown = false; // a figure alone does not show that the rest is the program's
    QStringList said;
    for (qsizetype i = 0; i < parts.size(); ++i) {
        const bool ownStop = sentences && i + 1 < parts.size();
        QString part = saying(ownStop ? QString(parts[i] + u'.') : parts[i], within.deeper());
        if (ownStop && part.endsWith(u'.'))
            part.chop(1);
        anyKnown = anyKnown || (part != parts[i] && !isFigure(parts[i]));
        said << part;
    }
    if (!anyKnown)
        return {};
    const QString between =
        separator == u" and " ? u' ' + word("and").value_or("and") + u' ' : separator;
    return said.join(between);
}

} // namespace loopwright
