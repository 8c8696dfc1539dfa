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
    m_fed = m_fed || count > 0;
    if (count <= 2 * longestRepeat)
        return;
    m_compared += count - longestRepeat;
    for (int lag = 1; lag <= longestRepeat; ++lag) {
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

int ChannelWatch::repeatLength() const
{
    for (int lag = 1; lag <= longestRepeat; ++lag)
        if (m_compared > 0 && 10 * m_equal[std::size_t(lag)] >= repeatingTenths * m_compared &&
            !m_repeated[std::size_t(lag)].isEmpty())
            return lag;
    return 0;
}

ChannelState ChannelWatch::state() const
{
    if (!m_fed)
        return ChannelState::Empty;
    const int length = repeatLength();
    if (length == 0)
        return ChannelState::Unknown;
    const char octet = m_repeated[1].isEmpty() ? 'x' : m_repeated[1].front();
    return length == 1 && (octet == '\x00' || octet == '\xff') ? ChannelState::Dead
                                                               : ChannelState::Fixed;
}

QByteArray ChannelWatch::repeated() const
{
    const int length = repeatLength();
    return length > 0 ? firstRotation(m_repeated[std::size_t(length)]) : QByteArray();
}

} // namespace loopwright
