#include "core/base/JsonKeys.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QSet>

#include <vector>

namespace loopwright {

namespace {

struct JsonLevel
{
    bool isObject = false;
    QSet<QByteArray> keys; ///< those that were met
};

/// Where the text that begins at `from` ends, its closing quote included.
qsizetype endOfText(const QByteArray &json, qsizetype from)
{
    qsizetype i = from + 1;
    while (i < json.size() && json[i] != '"')
        i += json[i] == '\\' ? 2 : 1;
    return std::min(i + 1, json.size());
}

/// A key as it is meant: "a" may be written "\u0061".
QByteArray keyText(const QByteArray &quoted)
{
    if (!quoted.contains('\\'))
        return quoted.mid(1, quoted.size() - 2);
    return QJsonDocument::fromJson('[' + quoted + ']').array().at(0).toString().toUtf8();
}

} // namespace

std::optional<qsizetype> repeatedKeyAt(const QByteArray &json)
{
    std::vector<JsonLevel> levels;
    bool keyIsNext = false;
    for (qsizetype i = 0; i < json.size(); ++i) {
        const char c = json[i];
        if (c == '{' || c == '[') {
            levels.push_back({c == '{', {}});
            keyIsNext = c == '{';
        } else if ((c == '}' || c == ']') && !levels.empty()) {
            levels.pop_back();
            keyIsNext = false;
        } else if (c == ',') {
            keyIsNext = !levels.empty() && levels.back().isObject;
        } else if (c == '"') {
            const qsizetype end = endOfText(json, i);
            if (keyIsNext) {
                const QByteArray key = keyText(json.mid(i, end - i));
                if (levels.back().keys.contains(key))
                    return i;
                levels.back().keys.insert(key);
            }
            keyIsNext = false;
            i = end - 1;
        }
    }
    return std::nullopt;
}

} // namespace loopwright
