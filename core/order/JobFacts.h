#pragma once
// The small facts of a job: that something was changed or cleared, how an instrument's self-test
// ended, whom the trouble was referred to, what the desk did, with which instrument readings were
// made, a note. Of each, read() reads its own keys; the caller reads the header of the fact and
// calls done().

#include "core/base/Json.h"

namespace loopwright {

/// A trouble that comes within so many days of the closing of one on the circuit is a repeat; the
/// last day counts (common practice, no source).
inline constexpr int repeatDays = 30;

enum class ChangedWhat
{
    Pair,
    LineEquipment,
    Nt,
    Identifiers,
    Feed ///< the office or a feed was connected or disconnected
};
template<>
struct EnumCodes<ChangedWhat>
{
    static constexpr std::pair<ChangedWhat, const char *> table[] = {
        {ChangedWhat::Pair, "pair"},
        {ChangedWhat::LineEquipment, "line_equipment"},
        {ChangedWhat::Nt, "nt"},
        {ChangedWhat::Identifiers, "identifiers"},
        {ChangedWhat::Feed, "feed"}};
};

/// Something on the line was changed; retires the evidence that it made old
/// (core/acceptance/Evidence.h).
struct ChangedFact
{
    ChangedWhat what = ChangedWhat::Pair;
    std::optional<QString> text;
    std::optional<QString> to = {}; ///< the new pair; only if the pair was changed

    static ChangedFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
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

    static SelfTestFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const SelfTestFact &) const = default;
};

enum class ClearedWhat
{
    Contact,
    Wiring,
    Pair,
    Terminal,
    Setting,
    Nt,
    Other,
    NothingFound
};
template<>
struct EnumCodes<ClearedWhat>
{
    static constexpr std::pair<ClearedWhat, const char *> table[] = {
        {ClearedWhat::Contact, "contact"}, {ClearedWhat::Wiring, "wiring"},
        {ClearedWhat::Pair, "pair"},       {ClearedWhat::Terminal, "terminal"},
        {ClearedWhat::Setting, "setting"}, {ClearedWhat::Nt, "nt"},
        {ClearedWhat::Other, "other"},     {ClearedWhat::NothingFound, "nothing_found"}};
};

/// What was done about a failed run, or about the trouble that a repair was opened for.
struct ClearedFact
{
    ClearedWhat what = ClearedWhat::NothingFound;
    std::optional<QString> text;       ///< at least two words; may be left out if nothing was found
    std::optional<QString> found = {}; ///< of a repair: what was wrong

    static ClearedFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const ClearedFact &) const = default;
};

enum class WaitingOn
{
    Office,
    Plant,
    Customer,
    Installer,
    PowerUtility,
    Weather,
    Permit,
    Other
};
template<>
struct EnumCodes<WaitingOn>
{
    static constexpr std::pair<WaitingOn, const char *> table[] = {
        {WaitingOn::Office, "office"},
        {WaitingOn::Plant, "plant"},
        {WaitingOn::Customer, "customer"},
        {WaitingOn::Installer, "installer"},
        {WaitingOn::PowerUtility, "power_utility"},
        {WaitingOn::Weather, "weather"},
        {WaitingOn::Permit, "permit"},
        {WaitingOn::Other, "other"}};
};

/// The job was handed on.
struct ReferredFact
{
    QString to; ///< never blank
    std::optional<QString> reference;
    std::optional<WaitingOn> waitingOn;

    static ReferredFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const ReferredFact &) const = default;
};

/// Says afterwards with which instrument readings were made that named none. The instrument is the
/// fact's own (Fact::instrument), and the fact itself must name it: the record's head does not.
/// It stands in fields(), and is read with the head of the fact.
struct MadeWithFact
{
    QStringList facts; ///< ids of the readings, at least one, none twice

    static MadeWithFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const MadeWithFact &) const = default;
};

enum class DeskWhat
{
    SwitchBuilt,
    JumperRun,
    CutOver,
    Released
};
template<>
struct EnumCodes<DeskWhat>
{
    static constexpr std::pair<DeskWhat, const char *> table[] = {
        {DeskWhat::SwitchBuilt, "switch_built"},
        {DeskWhat::JumperRun, "jumper_run"},
        {DeskWhat::CutOver, "cut_over"},
        {DeskWhat::Released, "released"}};
};

/// What was done at the office for the line.
struct DeskFact
{
    DeskWhat what = DeskWhat::SwitchBuilt;
    std::optional<QString> by;
    std::optional<QString> text;

    static DeskFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const DeskFact &) const = default;
};

struct NoteFact
{
    QString text; ///< never blank

    static NoteFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const NoteFact &) const = default;
};

} // namespace loopwright
