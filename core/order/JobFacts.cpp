#include "core/order/JobFacts.h"

#include "core/base/FieldCodec.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr int longestName = 200;
constexpr int longestRemark = 2000;

constexpr auto changedFields =
    std::tuple{bound("what", &ChangedFact::what), bound("to", &ChangedFact::to, longestName),
               bound("text", &ChangedFact::text, longestRemark)};
constexpr auto selfTestFields = std::tuple{bound("outcome", &SelfTestFact::outcome)};
constexpr auto clearedFields =
    std::tuple{bound("what", &ClearedFact::what), bound("text", &ClearedFact::text, longestRemark),
               bound("found", &ClearedFact::found, longestRemark)};
constexpr auto referredFields =
    std::tuple{bound("to", &ReferredFact::to, longestName),
               bound("reference", &ReferredFact::reference, longestName),
               bound("waiting_on", &ReferredFact::waitingOn)};
constexpr auto madeWithFields =
    std::tuple{bound("facts", &MadeWithFact::facts, 10000),
               apart({.key = "instrument", .required = true, .maxLength = longestName})};
constexpr auto deskFields =
    std::tuple{bound("what", &DeskFact::what), bound("by", &DeskFact::by, longestName),
               bound("text", &DeskFact::text, longestRemark)};
constexpr auto noteFields = std::tuple{bound("text", &NoteFact::text, longestRemark)};

} // namespace

ChangedFact ChangedFact::read(JsonReader &reader)
{
    ChangedFact fact;
    readFields(reader, fact, changedFields);
    if (fact.to && fact.to->trimmed().isEmpty())
        reader.fail("to", "must not be empty");
    if (fact.to && fact.what != ChangedWhat::Pair)
        reader.fail("to", "is the new pair, and the pair was not changed");
    return fact;
}

void ChangedFact::write(QJsonObject &object) const
{
    writeFields(object, *this, changedFields);
}

std::span<const FactField> ChangedFact::fields()
{
    static constexpr auto rows = fieldsIn(changedFields);
    return rows;
}

SelfTestFact SelfTestFact::read(JsonReader &reader)
{
    SelfTestFact fact;
    readFields(reader, fact, selfTestFields);
    return fact;
}

void SelfTestFact::write(QJsonObject &object) const
{
    writeFields(object, *this, selfTestFields);
}

std::span<const FactField> SelfTestFact::fields()
{
    static constexpr auto rows = fieldsIn(selfTestFields);
    return rows;
}

namespace {

/// A word holds a letter or a figure.
qsizetype countWords(const QString &text)
{
    return std::ranges::count_if(text.simplified().split(u' '), [](const QString &word) {
        return std::ranges::any_of(word, [](QChar each) { return each.isLetterOrNumber(); });
    });
}

} // namespace

ClearedFact ClearedFact::read(JsonReader &reader)
{
    ClearedFact fact;
    readFields(reader, fact, clearedFields);
    if (reader.failed() || fact.what == ClearedWhat::NothingFound)
        return fact;
    if (!fact.text)
        reader.fail("text", "is required and missing");
    else if (countWords(*fact.text) < 2)
        reader.fail("text", "must say in at least two words what was done");
    return fact;
}

void ClearedFact::write(QJsonObject &object) const
{
    writeFields(object, *this, clearedFields);
}

std::span<const FactField> ClearedFact::fields()
{
    static constexpr auto rows = fieldsIn(clearedFields);
    return rows;
}

ReferredFact ReferredFact::read(JsonReader &reader)
{
    ReferredFact fact;
    readFields(reader, fact, referredFields);
    return fact;
}

void ReferredFact::write(QJsonObject &object) const
{
    writeFields(object, *this, referredFields);
}

std::span<const FactField> ReferredFact::fields()
{
    static constexpr auto rows = fieldsIn(referredFields);
    return rows;
}

MadeWithFact MadeWithFact::read(JsonReader &reader)
{
    MadeWithFact fact;
    readFields(reader, fact, madeWithFields);
    return fact;
}

void MadeWithFact::write(QJsonObject &object) const
{
    writeFields(object, *this, madeWithFields);
}

std::span<const FactField> MadeWithFact::fields()
{
    static constexpr auto rows = fieldsIn(madeWithFields);
    return rows;
}

DeskFact DeskFact::read(JsonReader &reader)
{
    DeskFact fact;
    readFields(reader, fact, deskFields);
    return fact;
}

void DeskFact::write(QJsonObject &object) const
{
    writeFields(object, *this, deskFields);
}

std::span<const FactField> DeskFact::fields()
{
    static constexpr auto rows = fieldsIn(deskFields);
    return rows;
}

NoteFact NoteFact::read(JsonReader &reader)
{
    NoteFact fact;
    readFields(reader, fact, noteFields);
    return fact;
}

void NoteFact::write(QJsonObject &object) const
{
    writeFields(object, *this, noteFields);
}

std::span<const FactField> NoteFact::fields()
{
    static constexpr auto rows = fieldsIn(noteFields);
    return rows;
}

} // namespace loopwright
