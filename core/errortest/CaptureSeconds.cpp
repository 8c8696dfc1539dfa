#include "core/errortest/CaptureSeconds.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr qint64 octetsPerChannelSecond = 8000;
constexpr qint64 octetsToBeginWith = 256;
constexpr int looksAfterLoss = 3; ///< whole seconds that are searched for another pattern
constexpr int lossFraction = 5;   ///< synchronisation is lost at one error in five bits

/// Enough errors, nearly all of them in the eighth bit: that bit is stuck. (Common practice.)
bool eighthBitStuck(qint64 eighth, qint64 close, qint64 all)
{
    return eighth >= 1000 && 20 * eighth >= 19 * close && 2 * close >= all;
}

} // namespace

struct CaptureSeconds::Followed
{
    Followed(const Finding &finding, int words)
        : phase(*finding.candidate->pattern)
        , use(finding.candidate->use)
        , complement(finding.lock.complement)
        , secondBits(qint64(words) * use.bitsPerWord())
        , reference(phase, use, complement, words)
    {
    }

    quint32 after(quint32 from, qint64 bits) const
    {
        const qint64 period = phase.period();
        return quint32(((from + bits) % period + period) % period);
    }

    PatternPhase phase;
    OctetUse use;
    bool complement;
    qint64 secondBits;
    CaptureReference reference;
    quint32 next = 0; ///< phase of the next second's first bit
    PatternSeen seen;
    Lock lock; ///< the first one
};

CaptureSeconds::CaptureSeconds(const CaptureOptions &options)
    : m_octetsPerSecond(options.rate.value_or(64000) > 64000 ? 2 * octetsPerChannelSecond
                                                             : octetsPerChannelSecond)
{
    const auto sevenTold = options.rate ? std::optional(*options.rate % 56000 == 0) : std::nullopt;
    for (const bool seven : {false, true})
        for (const BitOrder order : {BitOrder::MsbFirst, BitOrder::LsbFirst})
            for (const Pattern &pattern : patterns())
                m_candidates.push_back({&pattern,
                                        {order, seven},
                                        options.pattern.value_or(pattern.key) == pattern.key &&
                                            options.order.value_or(order) == order &&
                                            sevenTold.value_or(seven) == seven});
}

/// The candidate that locks first in this many octets.
std::optional<CaptureSeconds::Finding> CaptureSeconds::search(const OctetView &view, bool wanted,
                                                              qint64 octets) const
{
    const OctetView searched{view.octets, octets, view.before, view.countBefore};
    std::optional<Finding> best;
    qint64 bestOctet = 0;
    std::optional<OctetUse> use;
    std::optional<PackedBits> bits;
    for (const Candidate &candidate : m_candidates) {
        if (candidate.wanted != wanted)
            continue;
        if (use != candidate.use)
            bits.emplace(searched, *(use = candidate.use));
        const int perOctet = candidate.use.bitsPerOctet();
        CaptureHunt hunt(*bits, *candidate.pattern,
                         {1 - lockBits - candidate.pattern->stages, octets * perOctet, {}});
        const auto lock = hunt.next();
        if (!lock)
            continue;
        const qint64 octet = (lock->end - 1) / perOctet;
        if (!best || octet < bestOctet) {
            best = Finding{&candidate, *lock};
            bestOctet = octet;
        }
    }
    return best;
}

PatternSeen CaptureSeconds::seen(const Finding &finding) const
{
    const Candidate &candidate = *finding.candidate;
    return {candidate.pattern->key, finding.lock.complement != candidate.pattern->inverted,
            m_octetsPerSecond * candidate.use.bitsPerOctet(), candidate.use.order};
}

CaptureSeconds::~CaptureSeconds() = default;

void CaptureSeconds::second(const OctetView &view)
{
    if (!m_followed)
        searchSecond(view);
    else if (m_inSync)
        followSecond(view);
    else
        regainSecond(view);
}

/// Looks for the patterns that were asked for; if there is none, for others that are worth
/// reporting.
bool CaptureSeconds::searchFor(const OctetView &view, qint64 octets)
{
    // A pattern that is there is found in a few octets, and the other ways need not be tried.
    std::optional<Finding> finding;
    for (const qint64 searched : {std::min(octets, octetsToBeginWith), octets})
        if (!finding)
            finding = search(view, true, searched);
    if (finding) {
        m_followed = std::make_unique<Followed>(*finding, int(m_octetsPerSecond / 8));
        m_followed->seen = seen(*finding);
        m_followed->lock = finding->lock;
        m_other.reset();
        m_synchronisedAtBit = qint64(m_seconds.size()) * m_followed->secondBits + finding->lock.end;
        return true;
    }
    if (!m_other)
        if (const auto other = search(view, false, octets))
            m_other = seen(*other);
    m_watch.feed(view.octets, octets);
    return false;
}

void CaptureSeconds::searchSecond(const OctetView &view)
{
    if (searchFor(view, m_octetsPerSecond))
        lockIn(PackedBits(view, m_followed->use), m_followed->lock, true);
    else
        leaveOut();
}

void CaptureSeconds::rest(const OctetView &view)
{
    if (!m_followed)
        searchFor(view, view.count);
}

/// Synchronisation is acquired in this second.
void CaptureSeconds::lockIn(const PackedBits &bits, const Lock &lock, bool first)
{
    Followed &followed = *m_followed;
    const int n = followed.phase.pattern().stages;
    const quint32 phase = followed.after(followed.phase.phaseOf(lock.state), n - lock.end);
    if (!first && phase != followed.next)
        m_slips.push_back({qint64(m_seconds.size()),
                           smallestDifference(phase, followed.next, followed.phase.period())});
    m_inSync = true;
    CaptureSecond close(bits, followed.use, followed.phase, followed.complement,
                        followed.secondBits);
    const qint64 compared = followed.secondBits - lock.end;
    take(close.compare(lock.end, phase), compared, first && compared > 0);
    followed.reference.seek(followed.next);
}

/// Whether what follows the second may be in trouble. Half of what trouble is will do: the words
/// ahead lack suppressed zeros, and a close look harms nothing.
bool CaptureSeconds::slipsIntoNext(const OctetView &view, const quint64 *ahead) const
{
    static_assert(CaptureReference::wordsAhead >= wordsPerGroup);
    if (view.count < m_octetsPerSecond + 8 * wordsPerGroup)
        return false;
    const WordErrors next =
        countErrors(view.octets + m_octetsPerSecond, ahead, m_followed->use.nativeMask(), 1);
    return 2 * next.total >= troubleFrom;
}

void CaptureSeconds::followSecond(const OctetView &view)
{
    Followed &followed = *m_followed;
    const quint64 *reference = followed.reference.nextSecond();
    const WordErrors errors = countErrors(view.octets, reference, followed.use.nativeMask(),
                                          int(m_octetsPerSecond / (8 * wordsPerGroup)));
    const bool plain =
        errors.worstGroup < troubleFrom &&
        (errors.lastGroup == 0 || !slipsIntoNext(view, reference + m_octetsPerSecond / 8));
    if (plain) {
        count(errors.total, followed.secondBits);
        m_lastTroubled = false;
        followed.next = followed.reference.phase();
        return;
    }
    const PackedBits bits(view, followed.use);
    CaptureSecond close(bits, followed.use, followed.phase, followed.complement,
                        followed.secondBits);
    take(close.compare(0, followed.next), followed.secondBits, true);
    if (followed.next != followed.reference.phase())
        followed.reference.seek(followed.next);
}

void CaptureSeconds::regainSecond(const OctetView &view)
{
    Followed &followed = *m_followed;
    const PackedBits bits(view, followed.use);
    CaptureHunt hunt(
        bits, followed.phase.pattern(),
        {1 - lockBits - followed.phase.pattern().stages, followed.secondBits, followed.complement});
    if (const auto lock = hunt.next()) {
        m_losses = lossesWithCause();
        lockIn(bits, *lock, false);
        return;
    }
    lookFurther(view);
    m_watch.feed(view.octets, m_octetsPerSecond);
    followed.next = followed.after(followed.next, followed.secondBits);
    leaveOut();
}

/// Whether another pattern, or the same one otherwise, came in place of the one that was followed.
void CaptureSeconds::lookFurther(const OctetView &view)
{
    if (m_other || ++m_looks > looksAfterLoss)
        return;
    for (const bool wanted : {true, false})
        if (!m_other)
            if (const auto other = search(view, wanted, m_octetsPerSecond))
                m_other = seen(*other);
}

/// What a close look at a second finds; `bits` were compared. A second that does not count has
/// come back from loss of synchronisation.
void CaptureSeconds::take(const SecondFindings &findings, qint64 bits, bool counts)
{
    Followed &followed = *m_followed;
    for (const qint64 slip : findings.slips)
        m_slips.push_back({qint64(m_seconds.size()), slip});
    followed.next = followed.after(findings.phase, followed.secondBits);
    m_closeErrors += findings.bitErrors;
    m_eighthBitErrors += findings.eighthBitErrors;
    const bool lost = lossFraction * findings.bitErrors >= followed.secondBits;
    if (lost) {
        if (m_lastTroubled && findings.troubledAtStart) { // it began in the second before
            m_bits -= m_lastBits;
            m_bitErrors -= m_seconds.back().bitErrors();
            m_seconds.back() = std::nullopt;
        }
        m_losses.push_back({qint64(m_seconds.size()), ChannelState::Unknown});
        m_inSync = !findings.troubledAtEnd;
        m_watch.reset();
        m_other.reset();
        m_looks = 0;
    }
    if (lost || !counts)
        leaveOut();
    else
        count(findings.bitErrors, bits);
    m_lastTroubled = counts && !lost && findings.troubledAtEnd;
}

void CaptureSeconds::count(qint64 bitErrors, qint64 bits)
{
    m_seconds.push_back(bitErrors);
    m_bits += bits;
    m_bitErrors += bitErrors;
    m_lastBits = bits;
}

void CaptureSeconds::leaveOut()
{
    m_seconds.push_back(std::nullopt);
    m_lastBits = 0;
    m_lastTroubled = false;
}

/// The losses; the last one with what the channel held since.
std::vector<SyncLoss> CaptureSeconds::lossesWithCause() const
{
    std::vector<SyncLoss> losses = m_losses;
    if (!m_followed || m_inSync || losses.empty())
        return losses;
    SyncLoss &last = losses.back();
    if (m_other) {
        last.channel = insteadOf(*m_other);
        last.other = m_other;
    } else if (const ChannelState state = m_watch.state(); state != ChannelState::Empty) {
        last.channel = state;
        last.fixedOctets = m_watch.repeated();
    }
    return losses;
}

ChannelState CaptureSeconds::insteadOf(const PatternSeen &other) const
{
    const PatternSeen &was = m_followed->seen;
    if (other.pattern != was.pattern)
        return ChannelState::OtherPattern;
    return other.rate == was.rate && other.order == was.order ? ChannelState::Inverted
                                                              : ChannelState::OtherRate;
}

ChannelState CaptureSeconds::channel() const
{
    if (m_followed)
        return eighthBitStuck(m_eighthBitErrors, m_closeErrors, m_bitErrors)
                   ? ChannelState::EighthBitStuck
                   : ChannelState::Pattern;
    if (!m_other)
        return m_watch.state();
    const bool asked =
        std::any_of(m_candidates.begin(), m_candidates.end(), [&](const Candidate &candidate) {
            return candidate.wanted && candidate.pattern->key == m_other->pattern;
        });
    return asked ? ChannelState::OtherRate : ChannelState::OtherPattern;
}

CaptureResult CaptureSeconds::result() const
{
    CaptureResult result;
    result.channel = channel();
    if (m_followed)
        result.found = m_followed->seen;
    else if (m_other)
        result.other = m_other;
    else
        result.fixedOctets = m_watch.repeated();
    result.synchronisedAtBit = m_synchronisedAtBit;
    result.slips = m_slips;
    result.losses = lossesWithCause();
    result.seconds = m_seconds;
    G821 evaluator(m_followed ? m_followed->secondBits : 8 * m_octetsPerSecond);
    // Seconds before the first synchronisation are no part of the test.
    const qint64 waited = m_synchronisedAtBit ? *m_synchronisedAtBit / m_followed->secondBits : 0;
    evaluator.push(std::span(m_seconds).subspan(
        std::size_t(std::min<qint64>(waited, qint64(m_seconds.size())))));
    ErrorCounts counts = evaluator.counts();
    // Of the seconds that were in sync in part alone, no more is known than that they were bad.
    counts.availableBits = std::min(counts.availableBits, m_bits);
    counts.bits = m_bits;
    counts.syncLosses = qint64(m_losses.size());
    counts.provisionalSeconds = 0;
    result.summary = summarise(counts);
    return result;
}

} // namespace loopwright
