#pragma once
// How the bits of a pattern lie in the octets of a channel, eight octets at a time. "Native" words
// are octets as they lie in memory; "packed" words hold pattern bits, the first sent being the most
// significant, left-aligned if an octet carries seven.

#include "core/errortest/CaptureResult.h"

#include <QtEndian>

#include <cstring>

namespace loopwright {

struct OctetUse
{
    BitOrder order = BitOrder::MsbFirst;
    bool seven = false; ///< the eighth bit sent is not the pattern's (56 kbit/s)

    bool operator==(const OctetUse &) const = default;

    int bitsPerOctet() const { return seven ? 7 : 8; }
    int bitsPerWord() const { return 8 * bitsPerOctet(); }

    /// Ones where the pattern's bits are, in a native word.
    quint64 nativeMask() const
    {
        if (!seven)
            return ~quint64(0);
        return order == BitOrder::MsbFirst ? 0xfefefefefefefefe : 0x7f7f7f7f7f7f7f7f;
    }

    quint64 pack(quint64 native) const
    {
        quint64 octets = qFromBigEndian(native);
        if (order == BitOrder::LsbFirst)
            octets = reversedInOctets(octets);
        return seven ? closed(octets) : octets;
    }
    quint64 unpack(quint64 packed) const
    {
        quint64 octets = seven ? spread(packed) : packed;
        if (order == BitOrder::LsbFirst)
            octets = reversedInOctets(octets);
        return qToBigEndian(octets);
    }

private:
    static quint64 reversedInOctets(quint64 x)
    {
        x = ((x >> 1) & 0x5555555555555555) | ((x & 0x5555555555555555) << 1);
        x = ((x >> 2) & 0x3333333333333333) | ((x & 0x3333333333333333) << 2);
        return ((x >> 4) & 0x0f0f0f0f0f0f0f0f) | ((x & 0x0f0f0f0f0f0f0f0f) << 4);
    }
    /// 56 bits on the left to the upper seven bits of eight octets: halves, quarters, eighths.
    static quint64 spread(quint64 x)
    {
        x >>= 8;
        x = (x & 0x000000000fffffff) | ((x & 0x00fffffff0000000) << 4);
        x = (x & 0x00003fff00003fff) | ((x & 0x0fffc0000fffc000) << 2);
        x = (x & 0x007f007f007f007f) | ((x & 0x3f803f803f803f80) << 1);
        return x << 1;
    }
    /// The way back; the eighth bits fall away.
    static quint64 closed(quint64 x)
    {
        x = (x >> 1) & 0x7f7f7f7f7f7f7f7f;
        x = (x & 0x007f007f007f007f) | ((x & 0x7f007f007f007f00) >> 1);
        x = (x & 0x00003fff00003fff) | ((x & 0x3fff00003fff0000) >> 2);
        x = (x & 0x000000000fffffff) | ((x & 0x0fffffff00000000) >> 4);
        return x << 8;
    }
};

inline quint64 loadWord(const uchar *octets)
{
    quint64 word;
    std::memcpy(&word, octets, sizeof word);
    return word;
}

} // namespace loopwright
