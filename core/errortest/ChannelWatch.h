#pragma once
// What a channel holds while no pattern is found on it: nothing but ones or zeros, a few octets
// that repeat, or something else. Tolerates an error here and there.

#include "core/errortest/CaptureResult.h"

#include <QByteArray>

#include <array>
#include <optional>

namespace loopwright {

class ChannelWatch
{
public:
    static constexpr int longestRepeat = 4; ///< octets

    void feed(const uchar *octets, qint64 count);
    void reset() { *this = {}; }

    /// Dead, Fixed, Unknown, or Empty if nothing was fed.
    ChannelState state() const;
    /// What repeats, for Dead and Fixed: of its rotations the one that comes first in order. Empty
    /// if a dead channel has stretches of ones and of zeros.
    QByteArray repeated() const;

private:
    bool isMost(qint64 octets) const;
    std::optional<uchar> commonOctet() const; ///< most are this one
    int repeatLength() const;                 ///< two or more; 0 for none

    qint64 m_fed = 0;
    std::array<qint64, 256> m_octets{}; ///< how many of each
    qint64 m_compared = 0;
    std::array<qint64, longestRepeat + 1> m_equal{};        ///< to the octet this many before
    std::array<QByteArray, longestRepeat + 1> m_repeated{}; ///< seen so, last
};

} // namespace loopwright
