#include "core/errortest/ChannelWatch.h"

#include <algorithm>

namespace loopwright {

namespace {

/// Octets that must repeat, in tenths of all: random ones do in 0.4 %, speech at rest in fewer than
/// nine of ten. (Common practice, no source.)
constexpr qint64 repeatingTenths = 9;
constexpr qint64 triesForSample = 256;

qint64 countEqual(const uchar *octets, qint64 count, int lag)
{
    qint64 equal = 0;
    for (qint64 i = ChannelWatch::longestRepeat; i < count; ++i)
        equal += octets[i] == octets[i - lag];
    return equal;
}

QByteArray firstRotation(const QByteArray &octets)
{
    QByteArray first = octets;
    for (qsizetype i = 1; i < octets.size(); ++i)
        first = std::min(first, QByteArray(octets.mid(i) + octets.first(i)));
    return first;
}

} // namespace

void ChannelWatch::feed(const uchar *octets, qint64 count)
{
    m_fed += count;
    for (qint64 i = 0; i < count; ++i)
        ++m_octets[octets[i]];
    if (count <= 2 * longestRepeat)
        return;
    m_compared += count - longestRepeat;
    for (int lag = 2; lag <= longestRepeat; ++lag) {
        m_equal[std::size_t(lag)] += countEqual(octets, count, lag);
        const qint64 stop = std::max<qint64>(2 * lag, count - triesForSample);
        for (qint64 end = count; end >= stop; --end) {
            if (std::equal(octets + end - lag, octets + end, octets + end - 2 * lag)) {
                m_repeated[std::size_t(lag)] =
                    QByteArray(reinterpret_cast<const char *>(octets + end - lag), lag);
                break;
            }
        }
    }
}

bool ChannelWatch::isMost(qint64 octets) const
{
    return m_fed > 2 * longestRepeat && 10 * octets >= repeatingTenths * m_fed;
}

std::optional<uchar> ChannelWatch::commonOctet() const
{
    const auto most = std::max_element(m_octets.begin(), m_octets.end());
    return isMost(*most) ? std::optional(uchar(most - m_octets.begin())) : std::nullopt;
}

/// Several octets that repeat do not all the while repeat as one.
int ChannelWatch::repeatLength() const
{
    for (int lag = 2; lag <= longestRepeat; ++lag) {
        const QByteArray &seen = m_repeated[std::size_t(lag)];
        if (m_compared > 0 && 10 * m_equal[std::size_t(lag)] >= repeatingTenths * m_compared &&
            !seen.isEmpty() && seen.count(seen.front()) < lag)
            return lag;
    }
    return 0;
}

ChannelState ChannelWatch::state() const
{
    if (m_fed == 0)
        return ChannelState::Empty;
    if (const auto octet = commonOctet())
        return *octet == 0x00 || *octet == 0xff ? ChannelState::Dead : ChannelState::Fixed;
    if (repeatLength() > 0)
        return ChannelState::Fixed;
    return isMost(m_octets[0x00] + m_octets[0xff]) ? ChannelState::Dead : ChannelState::Unknown;
}

QByteArray ChannelWatch::repeated() const
{
    if (const auto octet = commonOctet())
        return QByteArray(1, char(*octet));
    const int length = repeatLength();
    return length > 0 ? firstRotation(m_repeated[std::size_t(length)]) : QByteArray();
}

} // namespace loopwright
