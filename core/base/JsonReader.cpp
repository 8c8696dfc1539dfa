// The strict reading of one object.

#include "core/base/Json.h"
#include "core/base/TextForm.h"

#include <QUuid>

#include <cmath>

namespace loopwright {

namespace {

constexpr int longestWordList = 50; ///< more than any enumeration has

/// As it is stored; empty if the text is no UUID. The schema has no braces.
QString uuidText(const QString &text)
{
    const QUuid uuid = QUuid::fromString(text);
    return uuid.isNull() || text.size() != 36 ? QString() : uuid.toString(QUuid::WithoutBraces);
}

} // namespace

JsonReader::JsonReader(QJsonObject object, QString place)
    : m_object(std::move(object))
    , m_place(std::move(place))
    , m_error(std::make_shared<std::optional<Error>>())
{
}

bool JsonReader::has(const QString &key) const
{
    return m_object.contains(key);
}

QString JsonReader::place(const QString &key) const
{
    return m_place.isEmpty() ? key : QString(m_place + '.' + key);
}

void JsonReader::fail(const QString &key, const QString &message)
{
    if (!failed())
        *m_error = Error{ErrorCode::BadInput, message, key.isEmpty() ? m_place : place(key)};
}

const QJsonValue JsonReader::take(const QString &key, QJsonValue::Type type, const char *typeName)
{
    m_seen.insert(key);
    const QJsonValue value = m_object.value(key);
    if (value.isUndefined())
        fail(key, "is required and missing");
    else if (value.type() != type)
        fail(key, QString("must be %1").arg(QLatin1StringView(typeName)));
    return failed() ? QJsonValue() : value;
}

QString JsonReader::text(const QString &key, int maxLength)
{
    const QString found = take(key, QJsonValue::String, "a text").toString();
    if (const Text trouble = textTrouble(found, maxLength); !trouble.isEmpty())
        fail(key, trouble.english());
    return failed() ? QString() : found;
}

std::optional<QString> JsonReader::optionalText(const QString &key, int maxLength)
{
    return has(key) ? std::optional(text(key, maxLength)) : std::nullopt;
}

std::optional<QString> JsonReader::optionalName(const QString &key, int maxLength)
{
    const auto found = optionalText(key, maxLength);
    if (const Text trouble = identifierTrouble(found.value_or(QString())); !trouble.isEmpty())
        fail(key, trouble.english());
    return found;
}

QString JsonReader::filledText(const QString &key, int maxLength)
{
    const QString found = text(key, maxLength);
    if (!failed() && found.trimmed().isEmpty())
        fail(key, "must not be empty");
    return found;
}

QString JsonReader::text(const FactField &field)
{
    if (field.type == FieldType::Uuid)
        return uuid(field.ownKey());
    return field.required ? filledText(field.ownKey(), field.maxLength)
                          : text(field.ownKey(), field.maxLength);
}

qint64 JsonReader::integer(const FactField &field)
{
    return integer(field.ownKey(), qint64(field.minimum), qint64(field.maximum));
}

double JsonReader::number(const FactField &field)
{
    return number(field.ownKey(), field.minimum, field.maximum);
}

qint64 JsonReader::integer(const QString &key, qint64 min, qint64 max)
{
    const double found = take(key, QJsonValue::Double, "a whole number").toDouble();
    if (failed())
        return min;
    if (found != std::floor(found))
        fail(key, "must be a whole number");
    else if (found < double(min) || found > double(max))
        fail(key, QString("must be from %1 to %2").arg(min).arg(max));
    return failed() ? min : qint64(found);
}

std::optional<qint64> JsonReader::optionalInteger(const QString &key, qint64 min, qint64 max)
{
    return has(key) ? std::optional(integer(key, min, max)) : std::nullopt;
}

double JsonReader::number(const QString &key, double min, double max)
{
    const double found = take(key, QJsonValue::Double, "a number").toDouble();
    if (!failed() && !(found >= min && found <= max))
        fail(key, QString("must be from %1 to %2").arg(min).arg(max));
    return failed() ? min : found;
}

std::optional<double> JsonReader::optionalNumber(const QString &key, double min, double max)
{
    return has(key) ? std::optional(number(key, min, max)) : std::nullopt;
}

bool JsonReader::boolean(const QString &key)
{
    return take(key, QJsonValue::Bool, "true or false").toBool();
}

std::optional<bool> JsonReader::optionalBoolean(const QString &key)
{
    return has(key) ? std::optional(boolean(key)) : std::nullopt;
}

Moment JsonReader::moment(const QString &key)
{
    const QString found = text(key, 40);
    if (const auto parsed = Moment::parse(found))
        return *parsed;
    fail(key, "must be a time in ISO 8601 with its offset, such as 2026-03-04T09:15:00-06:00");
    return {};
}

std::optional<Moment> JsonReader::optionalMoment(const QString &key)
{
    return has(key) ? std::optional(moment(key)) : std::nullopt;
}

QString JsonReader::uuid(const QString &key)
{
    const QString found = text(key, 60);
    const QString id = uuidText(found);
    if (id.isEmpty())
        fail(key, "is not a UUID");
    return id;
}

std::optional<QString> JsonReader::optionalUuid(const QString &key)
{
    return has(key) ? std::optional(uuid(key)) : std::nullopt;
}

QStringList JsonReader::uuids(const QString &key, int maxItems)
{
    const QJsonArray list = array(key, maxItems);
    if (list.isEmpty())
        fail(key, "must name at least one");
    QStringList ids;
    for (int i = 0; i < list.size() && !failed(); ++i) {
        const QString at = QString("%1[%2]").arg(key).arg(i);
        const QString id = uuidText(list[i].toString());
        if (id.isEmpty())
            fail(at, "is not a UUID");
        else if (ids.contains(id))
            fail(at, "stands there twice");
        ids << id;
    }
    return ids;
}

QJsonArray JsonReader::array(const QString &key, int maxItems)
{
    const QJsonArray found = take(key, QJsonValue::Array, "a list").toArray();
    if (found.size() > maxItems)
        fail(key, QString("has more than %1 entries").arg(maxItems));
    return failed() ? QJsonArray() : found;
}

QJsonValue JsonReader::raw(const QString &key)
{
    m_seen.insert(key);
    return m_object.value(key);
}

JsonReader JsonReader::child(const QString &key)
{
    JsonReader reader(take(key, QJsonValue::Object, "an object").toObject(), place(key));
    reader.m_error = m_error;
    return reader;
}

JsonReader JsonReader::item(const QString &key, int index, const QJsonValue &value)
{
    const QString where = QString("%1[%2]").arg(key).arg(index);
    if (!value.isObject())
        fail(where, "must be an object");
    JsonReader reader(value.toObject(), place(where));
    reader.m_error = m_error;
    return reader;
}

QStringList JsonReader::wordList(const FactField &field)
{
    const QString key = field.ownKey();
    const QStringList known = field.words();
    const QJsonArray list = array(key, longestWordList);
    if (field.required && list.isEmpty())
        fail(key, "must name at least one");
    QStringList found;
    for (int i = 0; i < list.size() && !failed(); ++i) {
        const QString at = QString("%1[%2]").arg(key).arg(i);
        const QString word = list[i].toString();
        if (!list[i].isString())
            fail(at, "must be a text");
        else if (!known.contains(word))
            refuseWord(at, word, known);
        else if (found.contains(word))
            fail(at, QString("\"%1\" stands there twice").arg(word));
        found << word;
    }
    return found;
}

void JsonReader::refuseWord(const QString &key, const QString &found, const QStringList &words)
{
    fail(key, QString("\"%1\" is not one of %2").arg(found.left(60), words.join(", ")));
}

void JsonReader::done()
{
    for (const QString &key : m_object.keys())
        if (!m_seen.contains(key))
            fail(key.left(60), "is not a known key");
}

Result<void> JsonReader::result()
{
    if (failed())
        return failure(**m_error);
    return {};
}

} // namespace loopwright
