#pragma once
// How anything is found by any part of a number or name: both the stored text and what is typed are
// folded the same way, and a number is found with and without its separators.

#include "core/acceptance/BoardQuery.h"
#include "core/office/Office.h"
#include "core/order/ServiceOrder.h"

namespace loopwright {

/// Every number and name of an order, folded, one a line; a number also as its letters and digits
/// alone.
QString searchTextOf(const ServiceOrder &order);

/// The words of a search that must all be found: `words` by the text index, which has any part of
/// three and more characters, `shortWords`, a JSON list, in the text itself.
struct SearchTerms
{
    struct Word
    {
        QString word;
        QString bare; ///< of a number: without its separators, which will do as well; else empty
    };
    std::vector<Word> words;
    QString shortWords = QStringLiteral("[]");

    bool isEmpty() const { return words.empty() && shortWords == u"[]"; }
    /// All of `words` as SQLite's text index is asked.
    QString match() const;
};
SearchTerms searchTerms(const QString &typed);

class Statement;
/// Binds the words for the index of the engine: SQLite's takes all of them as one question
/// (:match), PostgreSQL's each as two patterns (:word1, :bare1, up to mostIndexedWords).
void bindWords(Statement &statement, const SearchTerms &terms);
constexpr int mostIndexedWords = 8;

/// The columns of an order (its document; the name of its installer) that hold a word of a search.
QStringList columnsWith(const QJsonObject &order, const QString &installerName,
                        const QString &typed);

/// The people in whose names words of three and more characters are; none for a whole number.
std::vector<NamedInstaller> installersNamed(const QList<Person> &people, const QString &typed);
/// For a statement: a list of {"key","rest":[{"word","bare"}]}; a word is there if either is.
QString toJson(const std::vector<NamedInstaller> &named);

/// The digits of a text that is one number of ten or more, as directory numbers and SPIDs have;
/// empty for any other.
QString wholeNumber(const QString &typed);

} // namespace loopwright
