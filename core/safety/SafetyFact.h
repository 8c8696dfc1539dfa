#pragma once
// A fact of kind `safety`: the card that is made for a pair before the first measurement of a
// visit. What its readings mean: SafetyVerdict.h.

#include "core/base/Json.h"
#include "core/base/Text.h"

#include <optional>
#include <vector>

namespace loopwright {

/// What the installer confirms on the card.
enum class CardKey
{
    ForeignVoltage,
    BondingGround,
    Storm,
    WorkPosition,
};
template<>
struct EnumCodes<CardKey>
{
    static constexpr std::pair<CardKey, const char *> table[] = {
        {CardKey::ForeignVoltage, "foreign_voltage"},
        {CardKey::BondingGround, "bonding_ground"},
        {CardKey::Storm, "storm"},
        {CardKey::WorkPosition, "work_position"}};
};
/// What is confirmed, as a sentence to tick.
Text cardSentence(CardKey key);

/// Between which two conductors a voltage was read.
enum class WirePair
{
    TipGround,
    RingGround,
    TipRing,
};
template<>
struct EnumCodes<WirePair>
{
    static constexpr std::pair<WirePair, const char *> table[] = {
        {WirePair::TipGround, "tip_ground"},
        {WirePair::RingGround, "ring_ground"},
        {WirePair::TipRing, "tip_ring"}};
};
/// "tip to ground".
QString wirePairName(WirePair pair);

/// Volts, -20000 to 20000; a reading that was not taken is absent.
struct Voltages
{
    std::optional<double> tipGround;
    std::optional<double> ringGround;
    std::optional<double> tipRing;

    std::optional<double> at(WirePair pair) const;
    bool operator==(const Voltages &) const = default;
};

/// A voltage that is on the pair on purpose, by word of the office. Not thereby safe to touch.
struct NamedVoltage
{
    QString by;   ///< who at the office said so
    QString what; ///< "span power", "ringing", …
    std::optional<double> volts;

    bool operator==(const NamedVoltage &) const = default;
};

struct SafetyFact
{
    std::optional<bool> officeConnected;
    std::optional<Voltages> acV;
    std::optional<Voltages> dcV;
    std::optional<std::vector<CardKey>> confirmed; ///< as written; each key once
    std::optional<QString> place = {};    ///< where the pair is worked on: "NT", "terminal 4", …
    std::optional<bool> meterProved = {}; ///< on a known source, before and after
    std::optional<bool> wet = {};         ///< the place is wet
    std::optional<NamedVoltage> namedByOffice = {};

    bool isConfirmed(CardKey key) const;

    /// Reads its own keys; the caller reads the header of the fact and calls done().
    static SafetyFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const SafetyFact &) const = default;
};

} // namespace loopwright
