#pragma once
// Says again in another language what stands in English: sentences that were stored, or put
// together for a paper. They are read by the English sources of a catalogue, backwards: "Order %1
// is ready." is found in "Order 26-0001 is ready.", and what stands in its places is read in the
// same way. What no source fits stays as it is, so that a name, a key and what a person typed do.
// The stored English itself is never changed.

#include "core/base/Text.h"

#include <QHash>
#include <QMutex>
#include <QRegularExpression>

namespace loopwright {

class Phrasebook
{
public:
    /// The English sources; a plural's by its many, with %n.
    Phrasebook(const QStringList &sources, Text::Catalogue catalogue);

    /// Sentences, a list with commas or semicolons, or a single word. What was `typed` stays as it
    /// is wherever it stands alone, though it may read like a phrase. From any thread.
    QString say(const QString &english, const QStringList &typed = {}) const;

private:
    struct Phrase
    {
        QByteArray source;
        QRegularExpression form; ///< named places: p1 to p9, n
        QString longest;         ///< of what stands between its places
        qsizetype letters = 0;   ///< that are its own: of two that fit the one with more says more
        std::vector<int> places; ///< 1 to 9; 0 for %n
        std::vector<int> quoted; ///< of these, what stands in quotation marks: it was typed
    };

    /// What is said at present, and how deep in it.
    struct Within
    {
        const QStringList &typed;
        int depth = 0;

        Within deeper() const { return {typed, depth + 1}; }
    };

    enum class Strength
    {
        Strong,
        Weak
    };

    void addPhrase(const QString &source);
    bool fits(const Phrase &phrase, const QString &value, Within within) const;
    bool isKnown(const QString &english, Within within) const;
    QString saying(const QString &english, Within within) const;
    std::optional<QString> bySentences(const QString &english, Within within) const;
    std::optional<QString> wholly(const QString &english, Strength strength, Within within) const;
    std::optional<QString> wordInOtherCase(const QString &english) const;
    std::optional<QString> inOtherCase(const QString &english, Strength strength,
                                       Within within) const;
    std::optional<QString> word(const QString &english) const;
    std::optional<QString> byForm(const QString &english, Strength strength, Within within) const;
    std::optional<QString> byPhrase(const Phrase &phrase, const QString &english,
                                    Within within) const;
    std::optional<QString> inParts(const QString &english, Within within) const;
    std::optional<QString> divided(const QString &english, const QString &separator,
                                   Within within) const;

    Text::Catalogue m_catalogue;
    QHash<QString, QByteArray> m_words; ///< sources without places
    /// By their first word; those that begin with a place by none. Longer ones first.
    QHash<QString, std::vector<Phrase>> m_phrases;
    mutable QMutex m_mutex;
    mutable QHash<QString, QString> m_said; ///< without anything typed
};

} // namespace loopwright
