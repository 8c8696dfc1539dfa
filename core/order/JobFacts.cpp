#include "core/order/JobFacts.h"

namespace loopwright {

namespace {

constexpr int longestRemark = 2000;

void writeText(QJsonObject &object, const char *key, const std::optional<QString> &text)
{
    if (text)
        object.insert(QLatin1StringView(key), *text);
}

} // namespace

ChangedFact ChangedFact::read(JsonReader &reader)
{
    ChangedFact fact;
    fact.what = reader.word<ChangedWhat>("what");
    fact.text = reader.optionalText("text", longestRemark);
    if (reader.has("to"))
        fact.to = reader.filledText("to");
    if (fact.to && fact.what != ChangedWhat::Pair)
        reader.fail("to", "is the new pair, and the pair was not changed");
    return fact;
}

void ChangedFact::write(QJsonObject &object) const
{
    object.insert("what", toText(what));
    writeText(object, "text", text);
    writeText(object, "to", to);
}

SelfTestFact SelfTestFact::read(JsonReader &reader)
{
    return {reader.word<SelfTestOutcome>("outcome")};
}

void SelfTestFact::write(QJsonObject &object) const
{
    object.insert("outcome", toText(outcome));
}

ClearedFact ClearedFact::read(JsonReader &reader)
{
    ClearedFact fact;
    fact.what = reader.word<ClearedWhat>("what");
    fact.text = reader.optionalText("text", longestRemark);
    if (fact.what == ClearedWhat::NothingFound)
        return fact;
    if (!fact.text)
        reader.fail("text", "is required and missing");
    else if (!fact.text->simplified().contains(u' '))
        reader.fail("text", "must say in at least two words what was done");
    return fact;
}

void ClearedFact::write(QJsonObject &object) const
{
    object.insert("what", toText(what));
    writeText(object, "text", text);
}

ReferredFact ReferredFact::read(JsonReader &reader)
{
    ReferredFact fact;
    fact.to = reader.filledText("to");
    fact.reference = reader.optionalText("reference");
    fact.waitingOn = reader.optionalWord<WaitingOn>("waiting_on");
    return fact;
}

void ReferredFact::write(QJsonObject &object) const
{
    object.insert("to", to);
    writeText(object, "reference", reference);
    if (waitingOn)
        object.insert("waiting_on", toText(*waitingOn));
}

MadeWithFact MadeWithFact::read(JsonReader &reader)
{
    return {reader.uuids("facts", 10000)};
}

void MadeWithFact::write(QJsonObject &object) const
{
    object.insert("facts", QJsonArray::fromStringList(facts));
}

DeskFact DeskFact::read(JsonReader &reader)
{
    DeskFact fact;
    fact.what = reader.word<DeskWhat>("what");
    fact.by = reader.optionalText("by");
    fact.text = reader.optionalText("text", longestRemark);
    return fact;
}

void DeskFact::write(QJsonObject &object) const
{
    object.insert("what", toText(what));
    writeText(object, "by", by);
    writeText(object, "text", text);
}

NoteFact NoteFact::read(JsonReader &reader)
{
    return {reader.filledText("text", longestRemark)};
}

void NoteFact::write(QJsonObject &object) const
{
    object.insert("text", text);
}

} // namespace loopwright
