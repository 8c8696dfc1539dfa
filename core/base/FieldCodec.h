#pragma once
// Reads and writes a fact by its table: each row binds a field to the member that holds it. Type,
// words and whether it is required follow from the member (an optional one may be left out).
// A codec makes its table with bound(), within() and apart(), as one constexpr tuple, and checks
// after readFields() what a row cannot say.

#include "core/base/Json.h"

#include <array>
#include <tuple>
#include <type_traits>
#include <vector>

namespace loopwright {

template<class V>
struct MemberType
{
    using Value = V;
    static constexpr bool optional = false;
};
template<class V>
struct MemberType<std::optional<V>>
{
    using Value = V;
    static constexpr bool optional = true;
};

template<class V>
concept WordList = std::is_enum_v<typename V::value_type>;
template<class V>
concept Numeric = std::is_arithmetic_v<V> && !std::is_same_v<V, bool>;

template<class V>
constexpr FieldType fieldTypeOf()
{
    if constexpr (std::is_same_v<V, bool>)
        return FieldType::YesNo;
    else if constexpr (std::is_integral_v<V>)
        return FieldType::Whole;
    else if constexpr (std::is_floating_point_v<V>)
        return FieldType::Number;
    else if constexpr (std::is_enum_v<V>)
        return FieldType::Word;
    else if constexpr (std::is_same_v<V, Moment>)
        return FieldType::Moment;
    else if constexpr (std::is_same_v<V, QStringList>)
        return FieldType::Uuids;
    else if constexpr (WordList<V>)
        return FieldType::Words;
    else
        return FieldType::Text;
}

template<class V>
constexpr FactField fieldOf(const char *key)
{
    using Value = typename MemberType<V>::Value;
    FactField field{key, fieldTypeOf<Value>()};
    field.required = !MemberType<V>::optional;
    if constexpr (std::is_enum_v<Value>)
        field.words = allWords<Value>;
    else if constexpr (fieldTypeOf<Value>() == FieldType::Words)
        field.words = allWords<typename Value::value_type>;
    return field;
}

/// A field and the member that holds it.
template<class T, class V>
struct BoundField
{
    FactField field;
    V T::*member;
};
/// An object within the fact, with a table of its own; left out if nothing is there.
template<class T, class V, class Table>
struct ObjectField
{
    const char *key;
    std::optional<V> T::*member;
    Table table;
};
/// A field that the codec reads and writes itself.
struct ApartField
{
    FactField field;
};

/// Yes or no, a word, words, a moment, ids.
template<class T, class V>
constexpr BoundField<T, V> bound(const char *key, V T::*member)
{
    const FactField field = fieldOf<V>(key);
    static_assert(!Numeric<typename MemberType<V>::Value> &&
                  fieldTypeOf<typename MemberType<V>::Value>() != FieldType::Text);
    return {field, member};
}
/// A number from `minimum` to `maximum`.
template<class T, class V>
requires Numeric<typename MemberType<V>::Value>
constexpr BoundField<T, V> bound(const char *key, V T::*member, const char *unit, double minimum,
                                 double maximum)
{
    FactField field = fieldOf<V>(key);
    field.unit = unit;
    field.minimum = minimum;
    field.maximum = maximum;
    return {field, member};
}
/// A text, or a list of ids, of at most `maxLength`.
template<class T, class V>
requires(!Numeric<typename MemberType<V>::Value>) constexpr BoundField<T, V> bound(const char *key,
                                                                                   V T::*member,
                                                                                   int maxLength)
{
    FactField field = fieldOf<V>(key);
    field.maxLength = maxLength;
    return {field, member};
}
/// A text that is the id of a fact.
template<class T>
constexpr BoundField<T, QString> boundId(const char *key, QString T::*member)
{
    FactField field = fieldOf<QString>(key);
    field.type = FieldType::Uuid;
    return {field, member};
}
/// Only some of the words.
template<class T, class V>
constexpr BoundField<T, V> among(QStringList (*words)(), BoundField<T, V> row)
{
    row.field.words = words;
    return row;
}
template<class T, class V, class... Rows>
constexpr auto within(const char *key, std::optional<V> T::*member,
                      const std::tuple<Rows...> &table)
{
    return ObjectField<T, V, std::tuple<Rows...>>{key, member, table};
}
constexpr ApartField apart(const FactField &field)
{
    return {field};
}

template<class... Rows>
constexpr auto fieldsIn(const std::tuple<Rows...> &table);

template<class T, class V>
constexpr std::array<FactField, 1> fieldsOfRow(const BoundField<T, V> &row)
{
    return {row.field};
}
constexpr std::array<FactField, 1> fieldsOfRow(const ApartField &row)
{
    return {row.field};
}
template<class T, class V, class Table>
constexpr auto fieldsOfRow(const ObjectField<T, V, Table> &row)
{
    return fieldsIn(row.table);
}
/// The rows of a table alone, as an array.
template<class... Rows>
constexpr auto fieldsIn(const std::tuple<Rows...> &table)
{
    return std::apply(
        [](const auto &...rows) {
            return std::apply(
                [](const auto &...fields) {
                    return std::array<FactField, sizeof...(fields)>{fields...};
                },
                std::tuple_cat(fieldsOfRow(rows)...));
        },
        table);
}

template<class V>
V readValue(JsonReader &reader, const FactField &field)
{
    if constexpr (std::is_same_v<V, bool>)
        return reader.boolean(field.ownKey());
    else if constexpr (std::is_integral_v<V>)
        return V(reader.integer(field));
    else if constexpr (std::is_floating_point_v<V>)
        return reader.number(field);
    else if constexpr (std::is_enum_v<V>)
        return reader.word<V>(field.ownKey());
    else if constexpr (std::is_same_v<V, Moment>)
        return reader.moment(field.ownKey());
    else if constexpr (std::is_same_v<V, QStringList>)
        return reader.uuids(field.ownKey(), field.maxLength);
    else if constexpr (fieldTypeOf<V>() == FieldType::Words)
        return reader.words<V>(field);
    else
        return reader.text(field);
}

template<class V>
QJsonValue jsonOf(const V &value)
{
    if constexpr (std::is_enum_v<V>) {
        return toText(value);
    } else if constexpr (std::is_same_v<V, Moment>) {
        return value.text();
    } else if constexpr (std::is_same_v<V, QStringList>) {
        return QJsonArray::fromStringList(value);
    } else if constexpr (fieldTypeOf<V>() == FieldType::Words) {
        QJsonArray list;
        for (const auto word : value)
            list << toText(word);
        return list;
    } else {
        return value;
    }
}

template<class T, class... Rows>
void readFields(JsonReader &reader, T &fact, const std::tuple<Rows...> &table);
template<class T, class... Rows>
void writeFields(QJsonObject &object, const T &fact, const std::tuple<Rows...> &table);

template<class T, class V>
void readRow(JsonReader &reader, T &fact, const BoundField<T, V> &row)
{
    if (row.field.required || reader.has(row.field.ownKey()))
        fact.*row.member = readValue<typename MemberType<V>::Value>(reader, row.field);
}
template<class T, class V, class Table>
void readRow(JsonReader &reader, T &fact, const ObjectField<T, V, Table> &row)
{
    if (!reader.has(row.key))
        return;
    JsonReader child = reader.child(row.key);
    readFields(child, (fact.*row.member).emplace(), row.table);
    child.done();
}
template<class T>
void readRow(JsonReader &, T &, const ApartField &)
{
}

template<class T, class V>
void writeRow(QJsonObject &object, const T &fact, const BoundField<T, V> &row)
{
    if constexpr (!MemberType<V>::optional)
        object.insert(row.field.ownKey(), jsonOf(fact.*row.member));
    else if (const auto &value = fact.*row.member)
        object.insert(row.field.ownKey(), jsonOf(*value));
}
template<class T, class V, class Table>
void writeRow(QJsonObject &object, const T &fact, const ObjectField<T, V, Table> &row)
{
    if (!(fact.*row.member))
        return;
    QJsonObject child;
    writeFields(child, *(fact.*row.member), row.table);
    object.insert(row.key, child);
}
template<class T>
void writeRow(QJsonObject &, const T &, const ApartField &)
{
}

/// Reads the fields in the order of the table; the caller looks at the reader's error.
template<class T, class... Rows>
void readFields(JsonReader &reader, T &fact, const std::tuple<Rows...> &table)
{
    std::apply([&](const Rows &...rows) { (readRow(reader, fact, rows), ...); }, table);
}
/// Fields that were left out stay left out.
template<class T, class... Rows>
void writeFields(QJsonObject &object, const T &fact, const std::tuple<Rows...> &table)
{
    std::apply([&](const Rows &...rows) { (writeRow(object, fact, rows), ...); }, table);
}

} // namespace loopwright
