#pragma once
// Makes captures with errors, slips and outages at known places, bit by bit.

#include "core/errortest/CaptureResult.h"

#include <QByteArray>

#include <random>
#include <vector>

namespace loopwright {

class MadeCapture
{
public:
    MadeCapture(PatternKey key, bool inverted, quint32 start)
        : m_source(patternOf(key), start)
        , m_inverted(inverted)
    {
    }

    qint64 size() const { return qint64(m_bits.size()); }
    /// Pattern bits, as they are sent.
    void add(qint64 count)
    {
        for (qint64 i = 0; i < count; ++i)
            m_bits.push_back(m_source.next() != m_inverted);
    }
    /// Pattern bits that do not arrive.
    void lose(qint64 count)
    {
        for (qint64 i = 0; i < count; ++i)
            m_source.next();
    }
    void addConstant(qint64 count, bool bit)
    {
        m_bits.insert(m_bits.end(), std::size_t(count), bit);
    }
    template<class Random>
    void addNoise(qint64 count, Random &random)
    {
        for (qint64 i = 0; i < count; ++i)
            m_bits.push_back(random() & 1);
    }
    /// The last bits once more.
    void repeat(qint64 count)
    {
        const qint64 from = size() - count;
        for (qint64 i = 0; i < count; ++i)
            m_bits.push_back(m_bits[std::size_t(from + i)]);
    }
    void flip(qint64 at) { m_bits[std::size_t(at)] ^= 1; }
    void set(qint64 at, bool bit) { m_bits[std::size_t(at)] = bit; }

    QByteArray octets(BitOrder order, bool seven) const
    {
        const int perOctet = seven ? 7 : 8;
        QByteArray octets;
        octets.reserve(size() / perOctet);
        for (qint64 at = 0; at + perOctet <= size(); at += perOctet) {
            uchar octet = seven ? (order == BitOrder::MsbFirst ? 0x01 : 0x80) : 0;
            for (int i = 0; i < perOctet; ++i)
                if (m_bits[std::size_t(at + i)])
                    octet |= uchar(order == BitOrder::MsbFirst ? 0x80 >> i : 1 << i);
            octets += char(octet);
        }
        return octets;
    }

private:
    PatternRegister m_source;
    bool m_inverted;
    std::vector<quint8> m_bits;
};

} // namespace loopwright
