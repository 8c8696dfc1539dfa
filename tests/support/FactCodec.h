#pragma once
// What every codec of a fact is held to: reading and writing is the identity, an unknown key and a
// wrong type are refused at their place, and no JSON crashes it.

#include "core/base/Json.h"
#include "tests/support/AnyJson.h"

#include <QTest>

namespace loopwright {

template<class T>
Result<T> readFact(const QJsonObject &object)
{
    JsonReader reader(object, "facts[0]");
    T fact = T::read(reader);
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return fact;
}

inline QJsonObject parsedObject(const char *text)
{
    return parseJsonObject(text, "test").value_or(QJsonObject());
}

/// Empty if the text reads, and writes itself again byte for byte; else what went wrong.
template<class T>
QString roundTripTrouble(const char *text)
{
    const auto fact = readFact<T>(parsedObject(text));
    if (!fact)
        return fact.error().text();
    QJsonObject again;
    fact->write(again);
    if (canonicalJson(again) != canonicalJson(parsedObject(text)))
        return QString("became " + canonicalJson(again));
    const auto twice = readFact<T>(again);
    return twice && *twice == *fact ? QString() : QString("reads otherwise the second time");
}

/// The error of a text that must be refused; empty if it was taken.
template<class T>
QString refusal(const char *text)
{
    const auto fact = readFact<T>(parsedObject(text));
    return fact ? QString() : fact.error().text();
}

/// Whatever the JSON, reading gives a value that writes itself, or an error with a place.
template<class T>
bool readsAnything(const QStringList &keys, const QStringList &words)
{
    return rc::check([&] {
        const QJsonObject object = anyJsonObject(keys, words);
        const auto fact = readFact<T>(object);
        if (!fact) {
            RC_ASSERT(!fact.error().message.isEmpty());
            RC_ASSERT(fact.error().place.startsWith("facts[0]"));
            return;
        }
        QJsonObject again;
        fact->write(again);
        const auto twice = readFact<T>(again);
        RC_ASSERT(bool(twice));
        RC_ASSERT(*twice == *fact);
    });
}

} // namespace loopwright
