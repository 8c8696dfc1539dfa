#include "core/errortest/G821.h"

#include "core/errortest/Bounds.h"

#include <bit>

namespace loopwright {

namespace {

constexpr int stateChange = 10; ///< seconds in a row that change the state (G.821 Annex A)

/// Seconds are taken 64 at a time where nothing can change the state: one bit for each.
constexpr int blockSize = 64;
using BlockMask = quint64;
/// Up to this threshold the bit errors of a block without a severe second fit 32 bits.
constexpr qint32 blockSevereLimit = std::numeric_limits<qint32>::max() / blockSize;

struct Block
{
    BlockMask errored = 0;
    BlockMask severe = 0;
    qint64 bitErrors = 0;
    qint32 worst = 0;
};

/// One bit for each of 64 bytes that are 0 or 1, the first lowest.
BlockMask gatherBits(const quint8 *flags)
{
    BlockMask mask = 0;
    for (int group = 0; group < blockSize / 8; ++group) {
        quint64 bytes = 0;
        for (int i = 0; i < 8; ++i)
            bytes |= quint64(flags[group * 8 + i]) << (8 * i);
        mask |= ((bytes * 0x0102040810204080) >> 56) << (8 * group);
    }
    return mask;
}

/// Written so that the compiler can work on several seconds at once.
Block summariseBlock(const Second *seconds, qint32 severeFrom)
{
    quint8 errored[blockSize];
    qint32 outside = 0; // its sign: a second is out of sync or severely errored
    quint32 sum = 0;
    for (int i = 0; i < blockSize; ++i) {
        const qint32 code = seconds[i].code();
        errored[i] = code != 0;
        outside |= code | (severeFrom - 1 - code);
        sum += quint32(code);
    }
    Block block;
    block.errored = gatherBits(errored);
    if (outside >= 0) {
        block.bitErrors = sum;
        if (block.errored != 0)
            for (int i = 0; i < blockSize; ++i)
                block.worst = std::max(block.worst, seconds[i].code());
        return block;
    }
    for (int i = 0; i < blockSize; ++i) {
        const qint32 code = seconds[i].code();
        block.severe |= BlockMask(quint32(code) >= quint32(severeFrom)) << i;
        block.bitErrors += std::max(code, 0);
        block.worst = std::max(block.worst, code);
    }
    return block;
}

bool hasTenInARow(BlockMask mask)
{
    const BlockMask two = mask & (mask >> 1);
    const BlockMask four = two & (two >> 2);
    const BlockMask eight = four & (four >> 4);
    return (eight & (two >> 8)) != 0;
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
    // Severe where 1000 * errors >= bits, in whole numbers.
    , m_severeFrom(qint32(
          std::min<qint64>((m_bitsPerSecond - 1) / 1000 + 1, std::numeric_limits<qint32>::max())))
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
    }
    m_pendingErrored = m_pendingSevere = 0;
}

void G821::countSyncLosses(bool inSync)
{
    m_settled.outOfSyncSeconds += !inSync;
    m_settled.syncLosses += m_inSync && !inSync;
    m_inSync = inSync;
}

void G821::pushClass(bool errored, bool severe)
{
    m_pendingErrored += errored;
    m_pendingSevere += severe;
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
    pushClass(errored, quint32(second.code()) >= quint32(m_severeFrom));
}

void G821::pushErrorFreeStretches(quint64 errored)
{
    int from = 0;
    for (BlockMask left = errored; left != 0; left &= left - 1) {
        const int at = std::countr_zero(left);
        m_settled.longestErrorFree =
            std::max(m_settled.longestErrorFree, m_errorFreeNow + at - from);
        m_errorFreeNow = 0;
        from = at + 1;
    }
    m_errorFreeNow += blockSize - from;
    m_settled.longestErrorFree = std::max(m_settled.longestErrorFree, m_errorFreeNow);
}

void G821::pushBlock(const Second *seconds)
{
    const Block block = summariseBlock(seconds, m_severeFrom);
    m_settled.seconds += blockSize;
    m_settled.bitErrors += block.bitErrors;
    m_settled.worstSecond = std::max<qint64>(m_settled.worstSecond, block.worst);
    m_settled.secondsWithErrors += std::popcount(block.errored);
    pushErrorFreeStretches(block.errored);
    if (block.severe == 0) {
        m_inSync = true;
    } else {
        const qint64 before = m_settled.outOfSyncSeconds;
        for (int i = 0; i < blockSize; ++i)
            countSyncLosses(seconds[i].inSync());
        m_settled.secondsWithErrors -= m_settled.outOfSyncSeconds - before;
    }
    int settled = 0;
    if (m_rule.available() && m_rule.pending() == 0 && !hasTenInARow(block.severe)) {
        // Nothing but the severely errored seconds at the very end can still become unavailable.
        settled = blockSize - std::countl_one(block.severe);
        const BlockMask now = settled == blockSize ? ~BlockMask(0) : (BlockMask(1) << settled) - 1;
        m_settled.availableSeconds += settled;
        m_settled.erroredSeconds += std::popcount(block.errored & now);
        m_settled.severelyErroredSeconds += std::popcount(block.severe & now);
    }
    for (int i = settled; i < blockSize; ++i)
        pushClass((block.errored >> i) & 1, (block.severe >> i) & 1);
}

void G821::push(std::span<const Second> seconds)
{
    if (m_severeFrom <= blockSevereLimit) {
        for (; seconds.size() >= blockSize; seconds = seconds.subspan(blockSize))
            pushBlock(seconds.data());
    }
    for (const Second second : seconds)
        push(second);
}

ErrorCounts G821::counts() const
{
    ErrorCounts counts = m_settled;
    const int pending = m_rule.pending();
    if (m_rule.available()) {
        counts.availableSeconds += pending;
        counts.erroredSeconds += m_pendingErrored;
        counts.severelyErroredSeconds += m_pendingSevere;
    } else {
        counts.unavailableSeconds += pending;
    }
    counts.errorFreeSeconds = counts.availableSeconds - counts.erroredSeconds;
    counts.bits = (counts.seconds - counts.outOfSyncSeconds) * m_bitsPerSecond;
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
    summary.ber = ratio(counts.bitErrors, counts.bits);
    summary.errorsPerErroredSecond = ratio(counts.bitErrors, counts.secondsWithErrors);
    if (counts.bits > 0)
        summary.berUpper95 = std::min(1.0, poissonUpper({counts.bitErrors, counts.bits, 0.95}));
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
            {"ber", orNull(ber)},
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
    const qint64 severeFrom = (std::max<qint64>(bitsPerSecond, 1) - 1) / 1000 + 1;
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
