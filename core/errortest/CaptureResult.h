#pragma once
// What is asked of the analysis of a capture, and what it reports.

#include "core/base/Result.h"
#include "core/errortest/G821.h"
#include "core/errortest/Pattern.h"

#include <QByteArray>
#include <QJsonObject>

#include <optional>
#include <vector>

namespace loopwright {

enum class BitOrder
{
    MsbFirst, ///< the first bit sent is the most significant of an octet
    LsbFirst,
};
template<>
struct EnumCodes<BitOrder>
{
    static constexpr std::pair<BitOrder, const char *> table[] = {
        {BitOrder::MsbFirst, "msb_first"}, {BitOrder::LsbFirst, "lsb_first"}};
};

struct CaptureOptions
{
    std::optional<PatternKey> pattern; ///< none: find it
    /// 64000 or 128000: every bit of an octet is the pattern's. 56000 or 112000: the first seven
    /// sent, the eighth is ignored. None: 64000 is tried first, then 56000.
    std::optional<qint64> rate;
    std::optional<BitOrder> order; ///< none: find it, MsbFirst is tried first
};

/// What was found on the channel.
enum class ChannelState
{
    Pattern,        ///< the pattern asked for, or one of the six
    EighthBitStuck, ///< the pattern, but nearly all errors in the eighth bit: a restricted path
    OtherPattern,   ///< another pattern than the one asked for
    OtherRate,      ///< the pattern in the other use of the octets, or in the other bit order
    Inverted,       ///< the pattern that was followed, and now its complement
    Dead,           ///< nothing but ones or nothing but zeros
    Fixed,          ///< one to four octets that repeat
    Unknown,        ///< none of these: speech, data, noise, or a pattern that is not known here
    Empty,          ///< not one octet
};
template<>
struct EnumCodes<ChannelState>
{
    static constexpr std::pair<ChannelState, const char *> table[] = {
        {ChannelState::Pattern, "pattern"},
        {ChannelState::EighthBitStuck, "eighth_bit_stuck"},
        {ChannelState::OtherPattern, "other_pattern"},
        {ChannelState::OtherRate, "other_rate"},
        {ChannelState::Inverted, "inverted"},
        {ChannelState::Dead, "dead"},
        {ChannelState::Fixed, "fixed"},
        {ChannelState::Unknown, "unknown"},
        {ChannelState::Empty, "empty"}};
};

/// A pattern in the way in which it lies in the octets.
struct PatternSeen
{
    PatternKey pattern = PatternKey::Prbs9;
    bool inverted = false; ///< the complement of what the standard sends
    qint64 rate = 64000;
    BitOrder order = BitOrder::MsbFirst;

    bool operator==(const PatternSeen &) const = default;
};

struct Slip
{
    qint64 second = 0; ///< in which it was, or in which synchronisation came back, from 0
    /// Phase after less phase before, the smallest number modulo the period: above 0 bits were
    /// lost, below 0 bits were repeated or put in. A multiple of the octet is the network clock's.
    qint64 bits = 0;

    bool operator==(const Slip &) const = default;
};

/// Synchronisation was lost.
struct SyncLoss
{
    qint64 second = 0; ///< in which it was lost, from 0
    /// What the channel held instead, if it was out for a whole second or more: OtherPattern,
    /// OtherRate, Inverted, Dead, Fixed or Unknown.
    ChannelState channel = ChannelState::Unknown;
    std::optional<PatternSeen> other = std::nullopt; ///< for the first three
    QByteArray fixedOctets = {};                     ///< for Dead and Fixed: what repeats

    bool operator==(const SyncLoss &) const = default;
};

struct CaptureResult
{
    ChannelState channel = ChannelState::Empty;
    std::optional<PatternSeen> found;        ///< what was compared with; none: no pattern found
    std::optional<PatternSeen> other;        ///< for OtherPattern and OtherRate
    QByteArray fixedOctets;                  ///< for Dead and Fixed: what repeats
    std::optional<qint64> synchronisedAtBit; ///< pattern bits before the first that was compared
    std::vector<Slip> slips;
    std::vector<SyncLoss> losses;
    SecondList seconds;
    ErrorSummary summary; ///< `bits` are those that were compared; `syncLosses` is losses.size()

    /// The fields of `analyse capture`; "pattern" is null if none was found.
    QJsonObject toJson() const;
    /// One sentence for a person, e.g. "the channel is dead: nothing but ones".
    QString sentence() const;
    /// The same for what the channel held after a loss, e.g. "Synchronisation lost in second 6:
    /// then …".
    QString lossSentence(const SyncLoss &loss) const;
};

} // namespace loopwright
