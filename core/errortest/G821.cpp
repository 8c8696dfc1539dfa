#include "core/errortest/G821.h"

#include "core/errortest/Bounds.h"
#include "core/errortest/SecondBlock.h"

#include <bit>

namespace loopwright {

namespace {

constexpr int stateChange = 10; ///< seconds in a row that change the state (G.821 Annex A)

using Mask = SecondBlock::Mask;

/// Whether so many ones (1 to 64) stand in a row.
bool hasInARow(Mask mask, int length)
{
    int known = 1; // a one now stands for so many from it on
    for (; 2 * known <= length; known *= 2)
        mask &= mask >> known;
    return (mask & (mask >> (length - known))) != 0;
}

} // namespace

TenSecondRule::Step TenSecondRule::push(bool severe)
{
    // A second that fits the state settles all that waited for a change of it; one that does not
    // fit waits, until ten of them have changed the state from the first of them on.
    if (severe != m_available) {
        const int settled = m_pending + 1;
        m_pending = 0;
        return {settled, m_available};
    }
    if (++m_pending < stateChange)
        return {0, m_available};
    m_pending = 0;
    m_available = !m_available;
    return {stateChange, m_available};
}

G821::G821(qint64 bitsPerSecond)
    : m_bitsPerSecond(std::max<qint64>(bitsPerSecond, 1))
    , m_severeFrom(qint32(std::min<qint64>(severelyErroredFrom(m_bitsPerSecond),
                                           std::numeric_limits<qint32>::max())))
{
}

void G821::settle(TenSecondRule::Step step)
{
    if (step.settled == 0)
        return;
    if (step.available) {
        m_settled.availableSeconds += step.settled;
        m_settled.erroredSeconds += m_pendingErrored;
        m_settled.severelyErroredSeconds += m_pendingSevere;
    } else {
        m_settled.unavailableSeconds += step.settled;
        m_unavailableInSync += m_pendingInSync;
        m_unavailableBitErrors += m_pendingBitErrors;
    }
    m_pendingErrored = m_pendingSevere = m_pendingInSync = m_pendingBitErrors = 0;
}

void G821::countSyncLosses(bool inSync)
{
    m_settled.outOfSyncSeconds += !inSync;
    m_settled.syncLosses += m_inSync && !inSync;
    m_inSync = inSync;
}

void G821::pushClass(Second second, bool severe)
{
    m_pendingErrored += second.code() != 0;
    m_pendingSevere += severe;
    m_pendingInSync += second.inSync();
    m_pendingBitErrors += second.bitErrors();
    settle(m_rule.push(severe));
}

void G821::push(Second second)
{
    const bool errored = second.code() != 0;
    countSyncLosses(second.inSync());
    ++m_settled.seconds;
    m_settled.bitErrors += second.bitErrors();
    m_settled.secondsWithErrors += second.bitErrors() > 0;
    m_settled.worstSecond = std::max(m_settled.worstSecond, second.bitErrors());
    m_errorFreeNow = errored ? 0 : m_errorFreeNow + 1;
    m_settled.longestErrorFree = std::max(m_settled.longestErrorFree, m_errorFreeNow);
    pushClass(second, quint32(second.code()) >= quint32(m_severeFrom));
}

void G821::pushErrorFreeStretches(quint64 errored)
{
    qint64 &longest = m_settled.longestErrorFree;
    if (errored == 0) {
        m_errorFreeNow += SecondBlock::size;
    } else {
        longest = std::max(longest, m_errorFreeNow + std::countr_zero(errored));
        m_errorFreeNow = std::countl_zero(errored);
        // Stretches inside the block are hardly ever longer than all before them.
        while (longest < SecondBlock::size && hasInARow(~errored, int(longest) + 1))
            ++longest;
    }
    longest = std::max(longest, m_errorFreeNow);
}

void G821::pushSyncLosses(quint64 lost)
{
    const Mask before = (lost << 1) | Mask(!m_inSync);
    m_settled.syncLosses += std::popcount(lost & ~before);
    m_settled.outOfSyncSeconds += std::popcount(lost);
    m_settled.secondsWithErrors -= std::popcount(lost);
    m_inSync = (lost >> (SecondBlock::size - 1)) == 0;
}

void G821::pushBlock(const Second *seconds)
{
    const SecondBlock block = SecondBlock::of(seconds, m_severeFrom);
    const int errored = std::popcount(block.errored);
    pushErrorFreeStretches(block.errored);
    m_settled.seconds += SecondBlock::size;
    m_settled.bitErrors += block.bitErrors;
    m_settled.worstSecond = std::max<qint64>(m_settled.worstSecond, block.worst);
    m_settled.secondsWithErrors += errored;
    if (block.lost != 0)
        pushSyncLosses(block.lost);
    else
        m_inSync = true;

    int settled = 0;
    if (m_rule.available() && m_rule.pending() == 0 && !hasInARow(block.severe, stateChange)) {
        // Nothing but the severely errored seconds at the very end can still become unavailable,
        // and each of those is errored.
        const int open = std::countl_one(block.severe);
        settled = SecondBlock::size - open;
        m_settled.availableSeconds += settled;
        m_settled.erroredSeconds += errored - open;
        if (block.severe != 0)
            m_settled.severelyErroredSeconds += std::popcount(block.severe) - open;
    }
    for (int i = settled; i < SecondBlock::size; ++i)
        pushClass(seconds[i], (block.severe >> i) & 1);
}

void G821::push(std::span<const Second> seconds)
{
    for (; seconds.size() >= SecondBlock::size; seconds = seconds.subspan(SecondBlock::size))
        pushBlock(seconds.data());
    for (const Second second : seconds)
        push(second);
}

ErrorCounts G821::counts() const
{
    ErrorCounts counts = m_settled;
    const int pending = m_rule.pending();
    qint64 unavailableInSync = m_unavailableInSync;
    qint64 unavailableBitErrors = m_unavailableBitErrors;
    if (m_rule.available()) {
        counts.availableSeconds += pending;
        counts.erroredSeconds += m_pendingErrored;
        counts.severelyErroredSeconds += m_pendingSevere;
    } else {
        counts.unavailableSeconds += pending;
        unavailableInSync += m_pendingInSync;
        unavailableBitErrors += m_pendingBitErrors;
    }
    counts.errorFreeSeconds = counts.availableSeconds - counts.erroredSeconds;
    counts.bits = (counts.seconds - counts.outOfSyncSeconds) * m_bitsPerSecond;
    counts.availableBits = counts.bits - unavailableInSync * m_bitsPerSecond;
    counts.availableBitErrors = counts.bitErrors - unavailableBitErrors;
    counts.provisionalSeconds = pending;
    return counts;
}

ErrorSummary summarise(const ErrorCounts &counts)
{
    ErrorSummary summary;
    static_cast<ErrorCounts &>(summary) = counts;
    const auto ratio = [](qint64 part, qint64 whole) -> std::optional<double> {
        return whole > 0 ? std::optional(double(part) / double(whole)) : std::nullopt;
    };
    summary.esr = ratio(counts.erroredSeconds, counts.availableSeconds);
    summary.sesr = ratio(counts.severelyErroredSeconds, counts.availableSeconds);
    summary.ber = ratio(counts.availableBitErrors, counts.availableBits);
    summary.berAll = ratio(counts.bitErrors, counts.bits);
    summary.errorsPerErroredSecond = ratio(counts.bitErrors, counts.secondsWithErrors);
    if (counts.bits > 0)
        summary.berUpper95 =
            std::min(1.0, poissonUpper({counts.bitErrors, counts.bits, usualConfidence}));
    return summary;
}

QJsonObject ErrorSummary::toJson() const
{
    const auto orNull = [](std::optional<double> value) {
        return value ? QJsonValue(*value) : QJsonValue(QJsonValue::Null);
    };
    return {{"seconds", seconds},
            {"available_seconds", availableSeconds},
            {"unavailable_seconds", unavailableSeconds},
            {"errored_seconds", erroredSeconds},
            {"severely_errored_seconds", severelyErroredSeconds},
            {"error_free_seconds", errorFreeSeconds},
            {"esr", orNull(esr)},
            {"sesr", orNull(sesr)},
            {"bits", bits},
            {"bit_errors", bitErrors},
            {"available_bits", availableBits},
            {"available_bit_errors", availableBitErrors},
            {"ber", orNull(ber)},
            {"ber_all", orNull(berAll)},
            {"ber_upper_95", orNull(berUpper95)},
            {"sync_losses", syncLosses},
            {"out_of_sync_seconds", outOfSyncSeconds},
            {"longest_error_free_seconds", longestErrorFree},
            {"seconds_with_errors", secondsWithErrors},
            {"worst_second_bit_errors", worstSecond},
            {"errors_per_errored_second", orNull(errorsPerErroredSecond)}};
}

ErrorSummary evaluateSeconds(std::span<const Second> seconds, qint64 bitsPerSecond)
{
    G821 evaluator(bitsPerSecond);
    evaluator.push(seconds);
    return evaluator.summary();
}

std::vector<SecondMark> classify(std::span<const Second> seconds, qint64 bitsPerSecond)
{
    const qint64 severeFrom = severelyErroredFrom(bitsPerSecond);
    std::vector<SecondMark> marks;
    marks.reserve(seconds.size());
    TenSecondRule rule;
    const auto settle = [&marks](std::size_t from, std::size_t to, bool available) {
        for (std::size_t i = from; i < to && !available; ++i)
            marks[i].kind = SecondClass::Unavailable;
    };
    for (const Second second : seconds) {
        const bool severe = !second.inSync() || second.bitErrors() >= severeFrom;
        marks.push_back({severe                   ? SecondClass::SeverelyErrored
                         : second.bitErrors() > 0 ? SecondClass::Errored
                                                  : SecondClass::ErrorFree,
                         false, second.inSync()});
        const auto step = rule.push(severe);
        settle(marks.size() - std::size_t(step.settled), marks.size(), step.available);
    }
    const std::size_t open = marks.size() - std::size_t(rule.pending());
    settle(open, marks.size(), rule.available());
    for (std::size_t i = open; i < marks.size(); ++i)
        marks[i].provisional = true;
    return marks;
}

} // namespace loopwright
