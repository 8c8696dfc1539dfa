#pragma once
// JSON as the records need it: reading that names the place of every error, and one canonical
// writing (RFC 8785, JSON Canonicalization Scheme) over which digests are taken.

#include "core/base/FactField.h"
#include "core/base/Moment.h"
#include "core/base/Result.h"

#include <QByteArray>
#include <QJsonArray>
#include <QJsonObject>
#include <QJsonValue>
#include <QMap>
#include <QSet>

#include <memory>
#include <optional>

namespace loopwright {

/// Parses UTF-8 JSON (a byte-order mark is allowed). BadInput with line and column if it is
/// truncated, not UTF-8, too deeply nested, or longer than `maxBytes`.
Result<QJsonValue> parseJson(const QByteArray &bytes, const QString &fileName,
                             qint64 maxBytes = 64'000'000);
Result<QJsonObject> parseJsonObject(const QByteArray &bytes, const QString &fileName,
                                    qint64 maxBytes = 64'000'000);

/// The same JSON, in which Qt's reader drops no U+FEFF from the beginning of a text.
QByteArray withMarksKept(QByteArray json);

/// RFC 8785: keys sorted by UTF-16 code unit, shortest round-trip numbers, no white space.
QByteArray canonicalJson(const QJsonValue &value);
/// Appends a text as canonical JSON, from UTF-8 as it is stored.
void appendCanonicalText(QByteArray &out, QByteArrayView utf8);
/// Appends an object of texts as canonical JSON: for long lists, where it takes a fifth of the
/// time. The keys are given sorted, in plain ASCII.
void appendCanonicalObject(QByteArray &out,
                           std::initializer_list<std::pair<const char *, const QString &>> members);
/// Texts by key, and back: what is no text is an empty one.
QJsonObject objectOf(const QMap<QString, QString> &texts);
QMap<QString, QString> textsIn(const QJsonObject &object);
/// SHA-256 in lower-case hexadecimal.
QString sha256Hex(const QByteArray &bytes);
/// sha256Hex(canonicalJson(value)).
QString digestOf(const QJsonValue &value);

/// Reads one JSON object strictly. Every key that is asked for is ticked off; `done()` reports what
/// is left over as an unknown key. The first error wins and carries its place, e.g.
/// "facts[2].channel"; after it every read yields a default, so that a codec can read straight
/// through and look once at the end. Children share the error.
class JsonReader
{
public:
    JsonReader(QJsonObject object, QString place);

    bool has(const QString &key) const;
    QString place(const QString &key) const;

    QString text(const QString &key, int maxLength = 200);
    std::optional<QString> optionalText(const QString &key, int maxLength = 200);
    /// A name by which records are told apart (identifierTrouble).
    std::optional<QString> optionalName(const QString &key, int maxLength = 200);
    /// A text that is not blank.
    QString filledText(const QString &key, int maxLength = 200);
    // Within the bounds of a row of a table of fields.
    QString text(const FactField &field);
    qint64 integer(const FactField &field);
    double number(const FactField &field);
    qint64 integer(const QString &key, qint64 min, qint64 max);
    std::optional<qint64> optionalInteger(const QString &key, qint64 min, qint64 max);
    double number(const QString &key, double min, double max);
    std::optional<double> optionalNumber(const QString &key, double min, double max);
    bool boolean(const QString &key);
    std::optional<bool> optionalBoolean(const QString &key);
    Moment moment(const QString &key);
    /// Lower case, without braces, however it was written.
    QString uuid(const QString &key);
    std::optional<QString> optionalUuid(const QString &key);
    /// A list of UUIDs, at least one and none twice.
    QStringList uuids(const QString &key, int maxItems);
    std::optional<Moment> optionalMoment(const QString &key);
    QJsonArray array(const QString &key, int maxItems);
    QJsonValue raw(const QString &key); ///< ticks the key off, no check
    JsonReader child(const QString &key);
    JsonReader item(const QString &key, int index, const QJsonValue &value);

    template<class E>
    E word(const QString &key)
    {
        const QString found = text(key);
        if (const auto value = fromText<E>(found))
            return *value;
        if (!failed())
            refuseWord(key, found, allWords<E>());
        return EnumCodes<E>::table[0].first;
    }
    template<class E>
    std::optional<E> optionalWord(const QString &key)
    {
        if (!has(key))
            return std::nullopt;
        return word<E>(key);
    }

    /// A list of the field's words, none twice.
    template<class List>
    List words(const FactField &field)
    {
        List list;
        for (const QString &word : wordList(field))
            if (const auto value = fromText<typename List::value_type>(word))
                list.push_back(*value);
        return list;
    }

    void fail(const QString &key, const QString &message);
    bool failed() const { return m_error->has_value(); }
    /// Reports keys that nobody asked for.
    void done();
    /// The first error, if there was one; ends the reading.
    Result<void> result();

private:
    const QJsonValue take(const QString &key, QJsonValue::Type type, const char *typeName);
    QStringList wordList(const FactField &field);
    void refuseWord(const QString &key, const QString &found, const QStringList &words);

    QJsonObject m_object;
    QString m_place;
    QSet<QString> m_seen;
    std::shared_ptr<std::optional<Error>> m_error;
};

} // namespace loopwright
