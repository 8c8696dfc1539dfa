#pragma once
// Longer than 400 lines: the oracle keeps the whole procedure in one place, bit by bit.
// The capture analysis bit by bit, for comparison: the rules of core/errortest/Capture.h written
// with registers, arrays and plain loops, without words, tables of words, or algebra. Slow, and
// shares nothing with the analysis but the table of patterns.

#include "core/errortest/CaptureResult.h"

#include <QByteArray>

#include <algorithm>
#include <map>
#include <memory>

namespace loopwright::bitwise {

/// One period of a pattern's plain bits from n ones on, and where each n bits stand in it.
struct Sequence
{
    explicit Sequence(const Pattern &pattern)
        : n(pattern.stages)
        , period(pattern.period())
        , plain(period)
        , sent(period)
        , place(std::size_t(period) + 1)
    {
        Pattern bare = pattern;
        bare.inverted = bare.zeroSuppressed = false;
        PatternRegister source(bare, period);
        for (auto &bit : plain)
            bit = source.next();
        sent = plain;
        if (pattern.zeroSuppressed) {
            int zeros = 0; // how many zeros follow
            for (qint64 at = 2 * qint64(period) - 1; at >= 0; --at) {
                const quint32 i = quint32(at) % period;
                if (plain[i] == 0 && zeros >= 14)
                    sent[i] = 1;
                zeros = plain[i] ? 0 : zeros + 1;
            }
        }
        for (quint32 at = 0; at < period; ++at) {
            quint32 bits = 0;
            for (int i = 0; i < n; ++i)
                bits = bits << 1 | plain[(at + quint32(i)) % period];
            place[bits] = at;
        }
    }

    static const Sequence &of(const Pattern &pattern)
    {
        static std::map<PatternKey, std::unique_ptr<Sequence>> all;
        auto &one = all[pattern.key];
        if (!one)
            one = std::make_unique<Sequence>(pattern);
        return *one;
    }

    int n;
    quint32 period;
    std::vector<quint8> plain; ///< before inversion and zero suppression
    std::vector<quint8> sent;  ///< before inversion
    std::vector<quint32> place;
};

inline std::vector<quint8> bitsOf(const QByteArray &octets, BitOrder order, bool seven)
{
    std::vector<quint8> bits;
    bits.reserve(std::size_t(octets.size()) * 8);
    for (const char octet : octets)
        for (int i = 0; i < (seven ? 7 : 8); ++i)
            bits.push_back((uchar(octet) >> (order == BitOrder::MsbFirst ? 7 - i : i)) & 1);
    return bits;
}

/// Looks for the end of the first 64 bits in a row that follow from those before them.
struct Hunter
{
    Hunter(const Pattern &pattern, qint64 from)
        : pattern(&pattern)
        , from(from)
    {
    }

    /// Takes the bit at `at`; says whether synchronisation is acquired with it.
    bool take(const std::vector<quint8> &bits, qint64 at)
    {
        const int n = pattern->stages;
        if (at - n < from)
            return false;
        const auto bit = [&](qint64 i) { return int(bits[std::size_t(i)]); };
        const int sum = bit(at) ^ bit(at - pattern->tap) ^ bit(at - n);
        for (const int wanted : {0, 1}) {
            run[wanted] = sum == wanted ? run[wanted] + 1 : 0;
            if (run[wanted] != 64)
                continue;
            quint32 bitsBefore = 0;
            for (int i = 0; i < n; ++i)
                bitsBefore = bitsBefore << 1 | quint32(bit(at + 1 - n + i) ^ wanted);
            if (bitsBefore == 0)
                continue;
            state = bitsBefore;
            complement = wanted;
            end = at + 1;
            return true;
        }
        return false;
    }

    const Pattern *pattern;
    qint64 from;
    qint64 run[2] = {0, 0};
    quint32 state = 0;
    int complement = 0;
    qint64 end = 0;
};

class Analysis
{
public:
    Analysis(const QByteArray &octets, const CaptureOptions &options)
        : m_octets(octets)
        , m_options(options)
    {
    }

    CaptureResult run();

private:
    static constexpr qint64 trouble = 32;
    static constexpr qint64 doubt = 1;
    static constexpr qint64 octetsAhead = 1024;

    bool search();
    void followFrom(qint64 end, quint32 state);
    void oneSecond(qint64 second);
    void compare(qint64 from, qint64 secondStart);
    bool jump(qint64 group, qint64 start, qint64 secondStart, qint64 known);
    void judge(qint64 second, qint64 from, bool counts);

    quint8 expected(qint64 at, qint64 phase) const // phase: of bit 0 of the capture
    {
        const qint64 period = m_sequence->period;
        return m_sequence->sent[std::size_t(((phase + at) % period + period) % period)] ^
               quint8(m_complement);
    }
    int wrong(qint64 at, qint64 phase) const
    {
        return m_bits[std::size_t(at)] ^ expected(at, phase);
    }
    qint64 errors(qint64 from, qint64 to, qint64 phase) const
    {
        const qint64 period = m_sequence->period;
        qint64 place = ((phase + from) % period + period) % period;
        qint64 count = 0;
        for (qint64 at = from; at < to; ++at) {
            count += m_bits[std::size_t(at)] ^ m_sequence->sent[std::size_t(place)] ^
                     quint8(m_complement);
            place = place + 1 == period ? 0 : place + 1;
        }
        return count;
    }
    qint64 phaseFrom(qint64 end, quint32 state) const
    {
        const qint64 period = m_sequence->period;
        const qint64 phase = qint64(m_sequence->place[state]) - (end - m_sequence->n);
        return (phase % period + period) % period;
    }
    void slip(qint64 to, qint64 from, qint64 second)
    {
        const qint64 period = m_sequence->period;
        qint64 bits = ((to - from) % period + period) % period;
        if (bits > period / 2)
            bits -= period;
        m_result.slips.push_back({second, bits});
    }

    QByteArray m_octets;
    CaptureOptions m_options;
    CaptureResult m_result;

    const Pattern *m_pattern = nullptr;
    const Sequence *m_sequence = nullptr;
    int m_complement = 0;
    std::vector<quint8> m_bits;
    qint64 m_secondBits = 0;
    qint64 m_groupBits = 0;
    qint64 m_lockEnd = 0; ///< of the first lock
    quint32 m_lockState = 0;

    qint64 m_phase = 0; ///< of bit 0 of the capture
    bool m_inSync = false;
    qint64 m_count = 0; ///< errors of this second
    bool m_troubledAtStart = false;
    bool m_troubledAtEnd = false;
    qint64 m_lastLock = 0;
    qint64 m_stretch = 0; ///< beginning of the stretch at this phase
    bool m_lastTroubled = false;
    qint64 m_lastBits = 0;
};

inline bool Analysis::search()
{
    struct Way
    {
        BitOrder order;
        bool seven;
        std::vector<quint8> bits;
        std::vector<Hunter> hunters;
    };
    std::vector<Way> ways;
    for (const bool seven : {false, true}) {
        if (m_options.rate && (*m_options.rate % 56000 == 0) != seven)
            continue;
        for (const BitOrder order : {BitOrder::MsbFirst, BitOrder::LsbFirst}) {
            if (m_options.order.value_or(order) != order)
                continue;
            Way way{order, seven, bitsOf(m_octets, order, seven), {}};
            for (const Pattern &pattern : patterns())
                if (m_options.pattern.value_or(pattern.key) == pattern.key)
                    way.hunters.emplace_back(pattern, 0);
            ways.push_back(std::move(way));
        }
    }
    for (qint64 octet = 0; octet < m_octets.size(); ++octet) {
        for (Way &way : ways) {
            const int bits = way.seven ? 7 : 8;
            const Hunter *best = nullptr;
            for (Hunter &hunter : way.hunters) {
                bool found = false;
                for (int i = 0; i < bits && !found; ++i)
                    found = hunter.take(way.bits, octet * bits + i);
                if (found && (!best || hunter.end < best->end))
                    best = &hunter;
            }
            if (!best)
                continue;
            m_pattern = best->pattern;
            m_sequence = &Sequence::of(*m_pattern);
            m_complement = best->complement;
            m_lockEnd = best->end;
            m_lockState = best->state;
            m_bits = std::move(way.bits);
            const qint64 octets = m_options.rate.value_or(64000) > 64000 ? 16000 : 8000;
            m_secondBits = octets * bits;
            m_groupBits = 64 * bits;
            m_result.found = PatternSeen{m_pattern->key, m_complement != int(m_pattern->inverted),
                                         m_secondBits, way.order};
            m_result.synchronisedAtBit = m_lockEnd;
            return true;
        }
    }
    return false;
}

/// A group in trouble: tries to go over to another phase.
inline bool Analysis::jump(qint64 group, qint64 start, qint64 secondStart, qint64 known)
{
    const qint64 back = std::max(m_stretch, secondStart + (group - 1) * m_groupBits);
    qint64 limit = known;
    for (qint64 at = secondStart + (group + 1) * m_groupBits; at + m_groupBits <= known;
         at += m_groupBits) {
        if (errors(at, at + m_groupBits, m_phase) < trouble) {
            limit = at;
            break;
        }
    }
    Hunter hunter(*m_pattern, std::max(back, m_lastLock + 1 - 64 - m_pattern->stages));
    for (qint64 at = hunter.from; at < limit; ++at) {
        if (!hunter.take(m_bits, at) || hunter.complement != m_complement)
            continue;
        const qint64 phase = phaseFrom(hunter.end, hunter.state);
        if (phase == m_phase)
            continue;
        const qint64 to = hunter.end - m_pattern->stages - 64;
        qint64 best = back;
        qint64 cost = errors(back, to, phase);
        qint64 fewest = cost;
        for (qint64 split = back; split < to; ++split) {
            cost += wrong(split, m_phase) - wrong(split, phase);
            if (cost < fewest) {
                fewest = cost;
                best = split + 1;
            }
        }
        if (best >= secondStart + m_secondBits)
            return false;
        m_count -= errors(back, start, m_phase);
        m_count += errors(back, best, m_phase);
        slip(phase, m_phase, secondStart / m_secondBits);
        m_phase = phase;
        m_lastLock = hunter.end;
        m_stretch = best;
        return true;
    }
    return false;
}

inline void Analysis::compare(qint64 from, qint64 secondStart)
{
    const qint64 secondEnd = secondStart + m_secondBits;
    const qint64 known =
        std::min<qint64>(qint64(m_bits.size()), secondEnd + octetsAhead * (m_groupBits / 64));
    m_count = 0;
    m_troubledAtStart = m_troubledAtEnd = false;
    m_lastLock = m_stretch = from;
    bool slipped = false;
    for (qint64 at = from; at < secondEnd;) {
        const qint64 group = (at - secondStart) / m_groupBits;
        qint64 end = secondStart + (group + 1) * m_groupBits;
        const qint64 count = errors(at, end, m_phase);
        const bool intoNext = end == secondEnd && count >= doubt && end + m_groupBits <= known &&
                              errors(end, end + m_groupBits, m_phase) >= trouble;
        if (count < trouble && intoNext && jump(group, at, secondStart, known)) {
            slipped = true;
            at = m_stretch;
            continue;
        }
        if (count < trouble) {
            m_count += count;
            at = end;
            m_troubledAtEnd = false;
            continue;
        }
        if (at == secondStart && !slipped)
            m_troubledAtStart = true;
        if (jump(group, at, secondStart, known)) {
            slipped = true;
            at = m_stretch;
            continue;
        }
        // Noise: goes on to the next group that is not in trouble.
        while (end < secondEnd && errors(end, end + m_groupBits, m_phase) >= trouble)
            end += m_groupBits;
        m_count += errors(at, end, m_phase);
        at = end;
        m_troubledAtEnd = end == secondEnd;
    }
}

inline void Analysis::judge(qint64 second, qint64 from, bool counts)
{
    const bool lost = 5 * m_count >= m_secondBits;
    qint64 &bits = m_result.summary.bits;
    qint64 &bitErrors = m_result.summary.bitErrors;
    if (lost) {
        if (m_lastTroubled && m_troubledAtStart) {
            bits -= m_lastBits;
            bitErrors -= m_result.seconds.back().bitErrors();
            m_result.seconds.back() = std::nullopt;
        }
        m_result.losses.push_back({second, ChannelState::Unknown});
        m_inSync = !m_troubledAtEnd;
    }
    m_lastTroubled = counts && !lost && m_troubledAtEnd;
    if (lost || !counts) {
        m_result.seconds.push_back(std::nullopt);
        m_lastBits = 0;
        return;
    }
    m_result.seconds.push_back(m_count);
    m_lastBits = (second + 1) * m_secondBits - from;
    bits += m_lastBits;
    bitErrors += m_count;
}

inline void Analysis::oneSecond(qint64 second)
{
    const qint64 start = second * m_secondBits;
    const qint64 end = start + m_secondBits;
    if (m_lockEnd > end) {
        m_result.seconds.push_back(std::nullopt);
    } else if (m_lockEnd > start) {
        m_phase = phaseFrom(m_lockEnd, m_lockState);
        m_inSync = true;
        compare(m_lockEnd, start);
        judge(second, m_lockEnd, m_lockEnd < end);
    } else if (m_inSync) {
        compare(start, start);
        judge(second, start, true);
    } else {
        const int n = m_pattern->stages;
        const qint64 before = m_groupBits / 4; // sixteen octets
        Hunter hunter(*m_pattern,
                      std::max(start + 1 - 64 - n, std::max<qint64>(0, start - before)));
        for (qint64 at = hunter.from; at < end; ++at) {
            if (!hunter.take(m_bits, at) || hunter.complement != m_complement)
                continue;
            const qint64 phase = phaseFrom(hunter.end, hunter.state);
            if (phase != m_phase)
                slip(phase, m_phase, second);
            m_phase = phase;
            m_inSync = true;
            compare(hunter.end, start);
            judge(second, hunter.end, false);
            return;
        }
        m_result.seconds.push_back(std::nullopt);
        m_lastTroubled = false;
    }
}

/// Reports the pattern, the bit at which it was found, slips, the seconds of the losses, the
/// seconds, and of the summary the bits and bit errors; nothing else.
inline CaptureResult Analysis::run()
{
    const qint64 octets = m_options.rate.value_or(64000) > 64000 ? 16000 : 8000;
    if (!search()) {
        m_result.seconds.assign(std::size_t(m_octets.size() / octets), std::nullopt);
        return m_result;
    }
    for (qint64 second = 0; (second + 1) * octets <= m_octets.size(); ++second)
        oneSecond(second);
    return m_result;
}

} // namespace loopwright::bitwise
