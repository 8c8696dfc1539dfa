#pragma once
// The small facts of a job: that something was changed, how an instrument's self-test ended, a
// note.

#include "core/base/Json.h"

namespace loopwright {

enum class ChangedWhat
{
    Pair,
    LineEquipment,
    Nt,
    Identifiers
};
template<>
struct EnumCodes<ChangedWhat>
{
    static constexpr std::pair<ChangedWhat, const char *> table[] = {
        {ChangedWhat::Pair, "pair"},
        {ChangedWhat::LineEquipment, "line_equipment"},
        {ChangedWhat::Nt, "nt"},
        {ChangedWhat::Identifiers, "identifiers"}};
};

/// Something on the line was changed; retires the evidence that it made old
/// (core/acceptance/Evidence.h).
struct ChangedFact
{
    ChangedWhat what = ChangedWhat::Pair;
    std::optional<QString> text;

    static ChangedFact read(JsonReader &reader)
    {
        return {reader.word<ChangedWhat>("what"), reader.optionalText("text", 2000)};
    }
    void write(QJsonObject &object) const
    {
        object.insert("what", toText(what));
        if (text)
            object.insert("text", *text);
    }
    bool operator==(const ChangedFact &) const = default;
};

enum class SelfTestOutcome
{
    Passed,
    Failed
};
template<>
struct EnumCodes<SelfTestOutcome>
{
    static constexpr std::pair<SelfTestOutcome, const char *> table[] = {
        {SelfTestOutcome::Passed, "passed"}, {SelfTestOutcome::Failed, "failed"}};
};

/// The instrument's own test of itself, on a visit.
struct SelfTestFact
{
    SelfTestOutcome outcome = SelfTestOutcome::Passed;

    static SelfTestFact read(JsonReader &reader)
    {
        return {reader.word<SelfTestOutcome>("outcome")};
    }
    void write(QJsonObject &object) const { object.insert("outcome", toText(outcome)); }
    bool operator==(const SelfTestFact &) const = default;
};

struct NoteFact
{
    QString text;

    static NoteFact read(JsonReader &reader)
    {
        NoteFact note{reader.text("text", 2000)};
        if (!reader.failed() && note.text.trimmed().isEmpty())
            reader.fail("text", "must not be empty");
        return note;
    }
    void write(QJsonObject &object) const { object.insert("text", text); }
    bool operator==(const NoteFact &) const = default;
};

} // namespace loopwright
