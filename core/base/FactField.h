#pragma once
// The fields of a fact in one table: what the codec takes, what the JSON Schema says and what a
// form asks for are the same rows.

#include "core/base/EnumCodes.h"

#include <span>

namespace loopwright {

enum class FieldType
{
    Number,
    Whole,
    YesNo,
    Word,    ///< one of `words`
    Words,   ///< a list of them, none twice
    Text,    ///< up to `maxLength` UTF-16 code units
    Moment,  ///< ISO 8601 with offset
    Uuid,    ///< id of a fact
    Uuids,   ///< a list of up to `maxLength`, none twice
    Seconds, ///< bit errors of each second, null out of sync; up to `maxLength` entries
    Makeup,  ///< the content of a loop.json
    Value,   ///< of an analog line: valueFieldOf() says which for a quantity
};
template<>
struct EnumCodes<FieldType>
{
    static constexpr std::pair<FieldType, const char *> table[] = {
        {FieldType::Number, "number"}, {FieldType::Whole, "whole"},
        {FieldType::YesNo, "yes_no"},  {FieldType::Word, "word"},
        {FieldType::Words, "words"},   {FieldType::Text, "text"},
        {FieldType::Moment, "moment"}, {FieldType::Uuid, "uuid"},
        {FieldType::Uuids, "uuids"},   {FieldType::Seconds, "seconds"},
        {FieldType::Makeup, "makeup"}, {FieldType::Value, "value"}};
};

struct FactField
{
    const char *key; ///< of an object within the fact: "ac_v.tip_ground"
    FieldType type = FieldType::Text;
    const char *unit = ""; ///< "ohm", "dB", "s"; empty if there is none
    double minimum = 0;    ///< of a number, a whole number, a second's errors; both are taken
    double maximum = 0;
    QStringList (*words)() = nullptr; ///< of a word and of words
    /// The key must be there; of an object within the fact, if the object does. A text or a
    /// list that is required is not empty either.
    bool required = false;
    int maxLength = 0;

    /// "tip_ground" of "ac_v.tip_ground".
    QString ownKey() const { return QString::fromLatin1(key).section('.', -1); }
};

/// Null if the table has no such key.
inline const FactField *findField(std::span<const FactField> fields, QStringView key)
{
    for (const FactField &field : fields)
        if (key == QLatin1StringView(field.key))
            return &field;
    return nullptr;
}

} // namespace loopwright
