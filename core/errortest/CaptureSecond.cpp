#include "core/errortest/CaptureSecond.h"

#include <algorithm>

namespace loopwright {

qint64 smallestDifference(quint32 a, quint32 b, quint32 period)
{
    const qint64 difference = (qint64(a) - qint64(b) + period) % period;
    return difference > period / 2 ? difference - period : difference; // the period is odd
}

CaptureSecond::CaptureSecond(const PackedBits &bits, OctetUse use, const PatternPhase &pattern,
                             bool complement, qint64 secondBits)
    : m_bits(bits)
    , m_use(use)
    , m_pattern(pattern)
    , m_complement(complement)
    , m_secondBits(secondBits)
    , m_groupBits(wordsPerGroup * use.bitsPerWord())
{
}

BitErrors CaptureSecond::errorsAt(quint32 phase) const
{
    const quint32 period = m_pattern.period();
    BitErrors errors(std::size_t(m_bits.end() + 63) / 64);
    m_pattern.fill(phase, errors.data(), qsizetype(errors.size()));
    for (const quint32 suppressed : m_pattern.suppressed()) {
        for (qint64 at = (suppressed + period - phase) % period; at < m_bits.end(); at += period)
            errors[std::size_t(at >> 6)] ^= quint64(1) << (63 - (at & 63));
    }
    const quint64 complement = m_complement ? ~quint64(0) : 0;
    for (std::size_t i = 0; i < errors.size(); ++i)
        errors[i] ^= m_bits.word(qint64(i)) ^ complement;
    return errors;
}

/// Counts the errors of these positions at the present phase.
void CaptureSecond::add(qint64 from, qint64 to)
{
    m_findings.bitErrors += countOnes(m_errors, from, to);
    if (m_use.seven)
        return;
    for (qint64 at = from | 7; at < to; at += 8)
        m_findings.eighthBitErrors += isError(m_errors, at);
}

/// Whether this is the last group, with an error in it, and all after it is in trouble: a slip
/// just before the end of a second makes few errors there, and is seen in what follows.
bool CaptureSecond::slipsIntoNext(qint64 group) const
{
    const qint64 end = (group + 1) * m_groupBits;
    return end == m_secondBits && end + m_groupBits <= m_bits.end() &&
           countOnes(m_errors, m_at, end) > 0 &&
           countOnes(m_errors, end, end + m_groupBits) >= troubleFrom;
}

/// The beginning of the first group after this one that is whole and not in trouble, or the end of
/// what is known.
qint64 CaptureSecond::endOfTrouble(qint64 group) const
{
    for (qint64 at = (group + 1) * m_groupBits; at + m_groupBits <= m_bits.end(); at += m_groupBits)
        if (countOnes(m_errors, at, at + m_groupBits) < troubleFrom)
            return at;
    return m_bits.end();
}

/// Where the errors of the present phase before the split and of the other one after it are
/// fewest; the earliest such place.
qint64 CaptureSecond::bestSplit(const BitErrors &after, qint64 from, qint64 to) const
{
    qint64 errors = countOnes(after, from, to);
    qint64 fewest = errors;
    qint64 best = from;
    for (qint64 at = from; at < to; ++at) {
        errors += int(isError(m_errors, at)) - int(isError(after, at));
        if (errors < fewest) {
            fewest = errors;
            best = at + 1;
        }
    }
    return best;
}

std::optional<CaptureSecond::Jump> CaptureSecond::findJump(qint64 from, qint64 to) const
{
    const int n = m_pattern.pattern().stages;
    const quint32 period = m_pattern.period();
    const qint64 searchFrom = std::max(from, m_lastLock + 1 - lockBits - n);
    CaptureHunt hunt(m_bits, m_pattern.pattern(), {searchFrom, to, m_complement});
    while (const auto lock = hunt.next()) {
        if (countOnes(m_errors, lock->end - lockBits, lock->end) == 0)
            continue; // the present phase
        const qint64 begin = lock->end - n;
        const quint32 phase =
            quint32((m_pattern.phaseOf(lock->state) + period - begin % period) % period);
        if (phase == m_findings.phase)
            continue;
        BitErrors errors = errorsAt(phase);
        const qint64 at = bestSplit(errors, from, lock->end - n - lockBits);
        return Jump{at, lock->end, phase, std::move(errors)};
    }
    return std::nullopt;
}

/// A group in trouble: goes over to another phase, if the bits around it are at one.
bool CaptureSecond::followJump(qint64 group)
{
    const qint64 back = std::max(m_from, (group - 1) * m_groupBits);
    auto jump = findJump(back, endOfTrouble(group));
    if (!jump || jump->at >= m_secondBits)
        return false;
    // What was counted after `back` is counted anew.
    const qint64 errorsBefore = m_findings.bitErrors;
    const qint64 eighthBefore = m_findings.eighthBitErrors;
    m_findings.bitErrors = m_findings.eighthBitErrors = 0;
    add(back, m_at);
    m_findings.bitErrors = errorsBefore - m_findings.bitErrors;
    m_findings.eighthBitErrors = eighthBefore - m_findings.eighthBitErrors;
    add(back, jump->at);
    m_findings.slips.push_back(
        smallestDifference(jump->phase, m_findings.phase, m_pattern.period()));
    m_findings.phase = jump->phase;
    m_errors = std::move(jump->errors);
    m_lastLock = jump->lockEnd;
    m_from = m_at = jump->at;
    return true;
}

SecondFindings CaptureSecond::compare(qint64 from, quint32 phase)
{
    m_findings = {};
    m_findings.phase = phase;
    m_errors = errorsAt(phase);
    m_from = m_at = from;
    m_lastLock = from;
    while (m_at < m_secondBits) {
        const qint64 group = m_at / m_groupBits;
        const qint64 groupEnd = (group + 1) * m_groupBits;
        const bool trouble = countOnes(m_errors, m_at, groupEnd) >= troubleFrom;
        if (trouble && m_at == 0 && m_findings.slips.empty())
            m_findings.troubledAtStart = true;
        if ((trouble || slipsIntoNext(group)) && followJump(group))
            continue;
        const qint64 end = trouble ? std::min(endOfTrouble(group), m_secondBits) : groupEnd;
        add(m_at, end);
        m_at = end;
        m_findings.troubledAtEnd = trouble && end == m_secondBits;
    }
    return m_findings;
}

} // namespace loopwright
