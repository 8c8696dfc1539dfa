#pragma once
// What one second of a run holds: its bit errors, or that the receiver was out of pattern
// synchronisation. Four bytes, so that the seconds of a run lie close together.

#include <QtGlobal>

#include <algorithm>
#include <limits>
#include <optional>
#include <vector>

namespace loopwright {

class Second
{
public:
    static constexpr qint64 maxBitErrors = std::numeric_limits<qint32>::max();

    /// A clean second.
    constexpr Second() = default;
    /// Bit errors, 0 to maxBitErrors; what lies outside is brought to the nearer end.
    constexpr Second(qint64 bitErrors)
        : m_code(qint32(std::clamp<qint64>(bitErrors, 0, maxBitErrors)))
    {
    }
    /// Out of synchronisation.
    constexpr Second(std::nullopt_t)
        : m_code(-1)
    {
    }
    constexpr Second(std::optional<qint64> bitErrors)
        : Second(bitErrors ? Second(*bitErrors) : Second(std::nullopt))
    {
    }

    constexpr bool inSync() const { return m_code >= 0; }
    constexpr qint64 bitErrors() const { return std::max(m_code, 0); } ///< 0 out of sync
    constexpr std::optional<qint64> value() const
    {
        return inSync() ? std::optional<qint64>(m_code) : std::nullopt;
    }
    /// The bit errors, or -1 out of sync.
    constexpr qint32 code() const { return m_code; }

    bool operator==(const Second &) const = default;

private:
    qint32 m_code = 0;
};

using SecondList = std::vector<Second>;

} // namespace loopwright
