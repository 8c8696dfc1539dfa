#include "core/base/Json.h"

#include "core/base/JsonKeys.h"
#include "core/base/TextForm.h"

#include <QCryptographicHash>
#include <QJsonDocument>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <utility>

namespace loopwright {

namespace {

QString lineAndColumn(const QByteArray &bytes, qsizetype offset)
{
    const auto before = QByteArrayView(bytes).first(std::clamp<qsizetype>(offset, 0, bytes.size()));
    const auto line = before.count('\n') + 1;
    const auto column = before.size() - (before.lastIndexOf('\n') + 1) + 1;
    return QString("line %1, column %2").arg(line).arg(column);
}

/// Where an escaped half of a surrogate pair stands without the other half; -1 if none does.
/// UTF-8 cannot hold it (RFC 7493 2.1, which RFC 8785 asks for). The JSON is valid otherwise.
qsizetype loneSurrogate(const QByteArray &json)
{
    const auto escaped = [&json](qsizetype at) { // the code unit, or 0 if no \u stands
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
void appendEscaped(QByteArray &out, char c)
{
    static constexpr std::pair<char, char> shortEscapes[] = {
        {'"', '"'}, {'\\', '\\'}, {'\b', 'b'}, {'\f', 'f'}, {'\n', 'n'}, {'\r', 'r'}, {'\t', 't'}};
    const auto escape = std::find_if(std::begin(shortEscapes), std::end(shortEscapes),
                                     [c](const auto &pair) { return pair.first == c; });
    if (escape != std::end(shortEscapes))
        (out += '\\') += escape->second;
    else
        out += "\\u00" + QByteArray::number(uchar(c), 16).rightJustified(2, '0');
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
        appendCanonicalText(out, keys[i].toUtf8());
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
        appendCanonicalText(out, value.toString().toUtf8());
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

} // namespace

QByteArray withMarksKept(QByteArray json)
{
    return json.replace("\"\xEF\xBB\xBF", "\"\\ufeff");
}

Result<QJsonValue> parseJson(const QByteArray &bytes, const QString &fileName, qint64 maxBytes)
{
    if (bytes.size() > maxBytes)
        return failure(ErrorCode::BadInput,
                       QString("is longer than the %1 bytes that are taken").arg(maxBytes),
                       fileName);
    if (isUtf16(bytes))
        return failure(ErrorCode::BadInput, "is UTF-16: save it as UTF-8", fileName);
    const bool marked = bytes.startsWith("\xEF\xBB\xBF");
    const QByteArray body = withMarksKept(marked ? bytes.mid(3) : bytes);
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

void appendCanonicalText(QByteArray &out, QByteArrayView utf8)
{
    out += '"';
    auto from = utf8.begin();
    for (auto at = utf8.begin(); at != utf8.end(); ++at)
        if (uchar(*at) < 0x20 || *at == '"' || *at == '\\') {
            out.append(from, at - from);
            appendEscaped(out, *at);
            from = at + 1;
        }
    out.append(from, utf8.end() - from);
    out += '"';
}

void appendCanonicalObject(QByteArray &out,
                           std::initializer_list<std::pair<const char *, const QString &>> members)
{
    out += '{';
    bool first = true;
    for (const auto &[key, value] : members) {
        (out += std::exchange(first, false) ? "\"" : ",\"") += key;
        out += "\":";
        appendCanonicalText(out, value.toUtf8());
    }
    out += '}';
}

QJsonObject objectOf(const QMap<QString, QString> &texts)
{
    QJsonObject object;
    for (auto it = texts.begin(); it != texts.end(); ++it)
        object.insert(it.key(), it.value());
    return object;
}

QMap<QString, QString> textsIn(const QJsonObject &object)
{
    QMap<QString, QString> texts;
    for (auto it = object.begin(); it != object.end(); ++it)
        texts.insert(it.key(), it.value().toString());
    return texts;
}

QString sha256Hex(const QByteArray &bytes)
{
    return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
}

QString digestOf(const QJsonValue &value)
{
    return sha256Hex(canonicalJson(value));
}

} // namespace loopwright
