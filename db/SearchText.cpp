#include "db/SearchText.h"

#include "core/base/Folding.h"
#include "db/Statement.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>

#include <algorithm>

namespace loopwright {

namespace {

/// Of the words that the text index finds.
constexpr qsizetype shortestIndexed = 3;

// Of searchTextOf(), by column.
constexpr const char *numberColumns[] = {"order_number", "circuit_number", "pair", "related_order",
                                         "feeder_pair"};
constexpr const char *nameColumns[] = {"customer", "premises", "office", "installer",
                                       "contact",  "crew",     "remarks"};

/// A text of digits and separators without the separators; empty for any other text, and for one
/// that has none.
QString bareDigits(const QString &text)
{
    static const QRegularExpression number(R"(\A[+(]?\d[- \d()./]*\z)");
    if (!number.match(text).hasMatch())
        return {};
    QString digits;
    for (const QChar c : text)
        if (c.isDigit())
            digits += c;
    return digits == text ? QString() : digits;
}

/// Letters and digits alone of a text with a digit, such as the number of a circuit or a pair;
/// empty where that is the same text, or there is no digit.
QString bareNumber(const QString &text)
{
    QString bare;
    bool hasDigit = false;
    for (const QChar c : text) {
        hasDigit = hasDigit || c.isDigit();
        if (c.isLetterOrNumber())
            bare += c;
    }
    return hasDigit && bare != text ? bare : QString();
}

QString quoted(const QString &word)
{
    return '"' + QString(word).replace('"', "\"\"") + '"';
}

/// For LIKE.
const QString anything = QStringLiteral("%");
QString patternOf(QString word)
{
    for (const char special : {'\\', '%', '_'})
        word.replace(QLatin1Char(special), QString('\\') + QLatin1Char(special));
    return anything + word + anything;
}

} // namespace

QString searchTextOf(const ServiceOrder &order)
{
    QStringList numbers{order.number, order.circuit, order.pair, order.relatedOrder,
                        order.feederPair};
    for (const OrderedTerminal &terminal : order.terminals)
        numbers << terminal.dn << terminal.spid;
    const QStringList names{order.customer, order.premises, order.office, order.installer,
                            order.contact,  order.crew,     order.remarks};
    QStringList words;
    const auto add = [&words](const QString &word) {
        if (!word.isEmpty() && !words.contains(word))
            words << word;
    };
    for (const QString &number : numbers) {
        const QString folded = foldForSearch(number);
        add(folded);
        add(bareNumber(folded));
    }
    for (const QString &name : names) {
        const QString folded = foldForSearch(name);
        add(folded);
        add(bareDigits(folded));
    }
    return words.join('\n');
}

SearchTerms searchTerms(const QString &typed)
{
    SearchTerms terms;
    QJsonArray shortWords;
    for (const QString &word : foldForSearch(typed).split(' ', Qt::SkipEmptyParts)) {
        const QString bare = bareNumber(word);
        if (word.size() < shortestIndexed || terms.words.size() == mostIndexedWords)
            shortWords << word;
        else
            terms.words.push_back({word, bare.size() >= shortestIndexed ? bare : QString()});
    }
    terms.shortWords = QString::fromUtf8(QJsonDocument(shortWords).toJson(QJsonDocument::Compact));
    return terms;
}

QString SearchTerms::match() const
{
    QStringList matches;
    for (const auto &[word, bare] : words)
        matches << (bare.isEmpty() ? quoted(word)
                                   : '(' + quoted(word) + " OR " + quoted(bare) + ')');
    return matches.join(" AND ");
}

void bindWords(Statement &statement, const SearchTerms &terms)
{
    if (statement.takes("match")) {
        statement.bind("match", terms.match());
        return;
    }
    for (int i = 0; i < mostIndexedWords; ++i) {
        const bool isThere = i < int(terms.words.size());
        const SearchTerms::Word each = isThere ? terms.words[std::size_t(i)] : SearchTerms::Word();
        const QString pattern = isThere ? patternOf(each.word) : anything;
        const QByteArray number = QByteArray::number(i + 1);
        statement.bind(QByteArray("word" + number).constData(), pattern);
        statement.bind(QByteArray("bare" + number).constData(),
                       each.bare.isEmpty() ? pattern : patternOf(each.bare));
    }
}

QStringList columnsWith(const QJsonObject &order, const QString &installerName,
                        const QString &typed)
{
    const QString whole = wholeNumber(typed);
    const QStringList words =
        whole.isEmpty() ? foldForSearch(typed).split(' ', Qt::SkipEmptyParts) : QStringList{whole};
    QStringList found;
    const auto look = [&](const QString &column, const QString &text, bool isNumber) {
        if (text.isEmpty())
            return;
        const QString folded = foldForSearch(text);
        const QString bare = isNumber ? bareNumber(folded) : bareDigits(folded);
        const auto holds = [&](const QString &word) {
            return !word.isEmpty() && (folded.contains(word) || bare.contains(word));
        };
        for (const QString &word : words) {
            const QString plain = bareNumber(word);
            if (holds(word) || (plain.size() >= shortestIndexed && holds(plain))) {
                found << column;
                return;
            }
        }
    };
    for (const char *column : numberColumns)
        look(column, order.value(QLatin1StringView(column)).toString(), true);
    for (int terminal = 1; terminal <= mostTerminals; ++terminal)
        for (const char *number : {"dn_%1", "spid_%1"}) {
            const QString column = QString(number).arg(terminal);
            look(column, order.value(column).toString(), true);
        }
    for (const char *column : nameColumns)
        look(column, order.value(QLatin1StringView(column)).toString(), false);
    if (!found.contains("installer"))
        look("installer", installerName, false);
    return found;
}

std::vector<NamedInstaller> installersNamed(const QList<Person> &people, const QString &typed)
{
    std::vector<NamedInstaller> named;
    if (!wholeNumber(typed).isEmpty())
        return named;
    const QStringList words = foldForSearch(typed).split(' ', Qt::SkipEmptyParts);
    for (const Person &person : people) {
        const QString name = foldForSearch(person.name);
        NamedInstaller found{person.key, {}};
        bool any = false;
        for (const QString &word : words) {
            const bool isHis = name.contains(word);
            any = any || (isHis && word.size() >= shortestIndexed);
            if (!isHis)
                found.rest << word;
        }
        if (any)
            named.push_back(found);
    }
    return named;
}

QString toJson(const std::vector<NamedInstaller> &named)
{
    QJsonArray list;
    for (const NamedInstaller &one : named) {
        QJsonArray rest;
        for (const QString &word : one.rest) {
            const QString bare = bareNumber(word);
            rest << QJsonObject{{"word", word},
                                {"bare", bare.size() < shortestIndexed ? word : bare}};
        }
        list << QJsonObject{{"key", one.key}, {"rest", rest}};
    }
    return QString::fromUtf8(QJsonDocument(list).toJson(QJsonDocument::Compact));
}

QString wholeNumber(const QString &typed)
{
    constexpr int fewestDigits = 10;
    const QString folded = foldForSearch(typed);
    const bool bare = !folded.isEmpty() &&
                      std::ranges::all_of(folded, [](QChar c) { return c >= u'0' && c <= u'9'; });
    const QString digits = bare ? folded : bareDigits(folded);
    return digits.size() < fewestDigits ? QString() : digits;
}

} // namespace loopwright
