#pragma once
// JSON that nobody would write: any types under the keys that a codec asks for, and under others.

#include <QJsonArray>
#include <QJsonObject>

#include <cmath>
#include <rapidcheck.h>

namespace loopwright {

inline QJsonValue anyJsonOf(const QStringList &keys, const QStringList &words, int depth)
{
    const int kind = *rc::gen::inRange(0, depth > 0 ? 9 : 6);
    if (kind == 0)
        return QJsonValue::Null;
    if (kind == 1)
        return *rc::gen::arbitrary<bool>();
    if (kind == 2)
        return *rc::gen::inRange(-5, 200);
    if (kind == 3)
        return std::ldexp(double(*rc::gen::inRange(-1000, 1000)), *rc::gen::inRange(-80, 80));
    if (kind == 4 && !words.isEmpty())
        return words[*rc::gen::inRange(0, int(words.size()))];
    if (kind <= 5)
        return QString::fromStdString(*rc::gen::arbitrary<std::string>());
    const int size = *rc::gen::inRange(0, 5);
    if (kind == 6) {
        QJsonArray array;
        for (int i = 0; i < size; ++i)
            array << anyJsonOf(keys, words, depth - 1);
        return array;
    }
    QJsonObject object;
    for (int i = 0; i < size; ++i)
        object.insert(keys[*rc::gen::inRange(0, int(keys.size()))],
                      anyJsonOf(keys, words, depth - 1));
    return object;
}

/// An object with up to eight of the keys.
inline QJsonObject anyJsonObject(const QStringList &keys, const QStringList &words, int depth = 3)
{
    QJsonObject object;
    const int size = *rc::gen::inRange(0, 9);
    for (int i = 0; i < size; ++i)
        object.insert(keys[*rc::gen::inRange(0, int(keys.size()))], anyJsonOf(keys, words, depth));
    return object;
}

} // namespace loopwright
