#include "core/base/Json.h"

#include "core/base/JsonKeys.h"
#include "core/base/TextForm.h"

#include <QCryptographicHash>
#include <QJsonDocument>
#include <QUuid>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace loopwright {

namespace {

QString lineAndColumn(const QByteArray &bytes, qsizetype offset)
{
    const auto before = QByteArrayView(bytes).first(std::clamp<qsizetype>(offset, 0, bytes.size()));
    const auto line = before.count('\n') + 1;
    const auto column = before.size() - (before.lastIndexOf('\n') + 1) + 1;
    return QString("line %1, column %2").arg(line).arg(column);
}

/// Where an escaped half of a surrogate pair stands without the other half; -1 where none does.
/// UTF-8 cannot hold it (RFC 7493 2.1, which RFC 8785 asks for). The JSON is valid otherwise.
qsizetype loneSurrogate(const QByteArray &json)
{
    const auto escaped = [&json](qsizetype at) { // the code unit, or 0 where no \u stands
        return json.mid(at, 2) == "\\u" ? json.mid(at + 2, 4).toUInt(nullptr, 16) : 0;
    };
    for (auto at = json.indexOf('\\'); at >= 0; at = json.indexOf('\\', at)) {
        const uint unit = escaped(at);
        const bool pair = QChar::isHighSurrogate(unit) && QChar::isLowSurrogate(escaped(at + 6));
        if (QChar::isSurrogate(unit) && !pair)
            return at;
        at += pair ? 12 : 2;
    }
    return -1;
}

// RFC 8785 3.2.2.2: control characters as the short escapes or \u00xx, all else as it is, in UTF-8.
void appendText(QByteArray &out, const QString &text)
{
    static constexpr std::pair<char, char> shortEscapes[] = {
        {'"', '"'}, {'\\', '\\'}, {'\b', 'b'}, {'\f', 'f'}, {'\n', 'n'}, {'\r', 'r'}, {'\t', 't'}};
    out += '"';
    for (const char c : text.toUtf8()) {
        const auto escape = std::find_if(std::begin(shortEscapes), std::end(shortEscapes),
                                         [c](const auto &pair) { return pair.first == c; });
        if (escape != std::end(shortEscapes))
            (out += '\\') += escape->second;
        else if (uchar(c) < 0x20)
            out += "\\u00" + QByteArray::number(uchar(c), 16).rightJustified(2, '0');
        else
            out += c;
    }
    out += '"';
}

// RFC 8785 3.2.2.3: ECMAScript's Number::toString, i.e. the shortest digits that round-trip.
void appendNumber(QByteArray &out, double value)
{
    if (value == 0 || !std::isfinite(value)) {
        out += '0';
        return;
    }
    char buffer[40];
    const auto end = std::to_chars(buffer, buffer + sizeof buffer, std::abs(value),
                                   std::chars_format::scientific)
                         .ptr;
    const QByteArray text(buffer, end - buffer);
    const auto e = text.indexOf('e');
    QByteArray digits = text.first(e);
    digits.replace(".", "");
    const int n = text.mid(e + 1).toInt() + 1; // decimal point after n digits
    const int k = int(digits.size());
    if (value < 0)
        out += '-';
    if (k <= n && n <= 21)
        out += digits + QByteArray(n - k, '0');
    else if (0 < n && n <= 21)
        out += digits.first(n) + '.' + digits.mid(n);
    else if (-6 < n && n <= 0)
        out += "0." + QByteArray(-n, '0') + digits;
    else
        out += digits.first(1) + (k > 1 ? '.' + digits.mid(1) : QByteArray()) + 'e' +
               (n > 0 ? "+" : "-") + QByteArray::number(std::abs(n - 1));
}

void append(QByteArray &out, const QJsonValue &value);

void appendArray(QByteArray &out, const QJsonArray &array)
{
    out += '[';
    for (qsizetype i = 0; i < array.size(); ++i) {
        if (i > 0)
            out += ',';
        append(out, array[i]);
    }
    out += ']';
}

void appendObject(QByteArray &out, const QJsonObject &object)
{
    QStringList keys = object.keys();
    std::sort(keys.begin(),
              keys.end()); // QString compares UTF-16 code units, as RFC 8785 3.2.3 asks
    out += '{';
    for (qsizetype i = 0; i < keys.size(); ++i) {
        if (i > 0)
            out += ',';
        appendText(out, keys[i]);
        out += ':';
        append(out, object.value(keys[i]));
    }
    out += '}';
}

void append(QByteArray &out, const QJsonValue &value)
{
    switch (value.type()) {
    case QJsonValue::Bool:
        out += value.toBool() ? "true" : "false";
        break;
    case QJsonValue::Double:
        appendNumber(out, value.toDouble());
        break;
    case QJsonValue::String:
        appendText(out, value.toString());
        break;
    case QJsonValue::Array:
        appendArray(out, value.toArray());
        break;
    case QJsonValue::Object:
        appendObject(out, value.toObject());
        break;
    case QJsonValue::Null:
    case QJsonValue::Undefined:
        out += "null";
        break;
    }
}

/// As it is stored; empty where the text is no UUID. Braces are not of the schema.
QString uuidText(const QString &text)
{
    const QUuid uuid = QUuid::fromString(text);
    return uuid.isNull() || text.size() != 36 ? QString() : uuid.toString(QUuid::WithoutBraces);
}

} // namespace

Result<QJsonValue> parseJson(const QByteArray &bytes, const QString &fileName, qint64 maxBytes)
{
    if (bytes.size() > maxBytes)
        return failure(ErrorCode::BadInput,
                       QString("is longer than the %1 bytes that are taken").arg(maxBytes),
                       fileName);
    QByteArray body = bytes;
    if (body.startsWith("\xEF\xBB\xBF"))
        body.remove(0, 3);
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(body, &error);
    if (error.error != QJsonParseError::NoError)
        return failure(ErrorCode::BadInput,
                       QString("is not valid JSON: %1").arg(error.errorString()),
                       QString("%1: %2").arg(fileName, lineAndColumn(body, error.offset)));
    if (const auto at = loneSurrogate(body); at >= 0)
        return failure(ErrorCode::BadInput, "holds half of a surrogate pair, which is no text",
                       QString("%1: %2").arg(fileName, lineAndColumn(body, at)));
    if (const auto twice = repeatedKeyAt(body))
        return failure(ErrorCode::BadInput, "holds a key twice in one object",
                       QString("%1: %2").arg(fileName, lineAndColumn(body, *twice)));
    return document.isArray() ? QJsonValue(document.array()) : QJsonValue(document.object());
}

Result<QJsonObject> parseJsonObject(const QByteArray &bytes, const QString &fileName,
                                    qint64 maxBytes)
{
    LOOPWRIGHT_ASSIGN(const auto value, parseJson(bytes, fileName, maxBytes));
    if (!value.isObject())
        return failure(ErrorCode::BadInput, "must be a JSON object", fileName);
    return value.toObject();
}

QByteArray canonicalJson(const QJsonValue &value)
{
    QByteArray out;
    append(out, value);
    return out;
}

QString sha256Hex(const QByteArray &bytes)
{
    return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
}

QString digestOf(const QJsonValue &value)
{
    return sha256Hex(canonicalJson(value));
}

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
    if (const QString trouble = textTrouble(found, maxLength); !trouble.isEmpty())
        fail(key, trouble);
    return failed() ? QString() : found;
}

std::optional<QString> JsonReader::optionalText(const QString &key, int maxLength)
{
    return has(key) ? std::optional(text(key, maxLength)) : std::nullopt;
}

QString JsonReader::filledText(const QString &key, int maxLength)
{
    const QString found = text(key, maxLength);
    if (!failed() && found.trimmed().isEmpty())
        fail(key, "must not be empty");
    return found;
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
