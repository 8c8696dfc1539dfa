#pragma once
// Evaluation of a run second by second by the method of ITU-T G.821: errored seconds, severely
// errored seconds, and unavailable time by the ten-second rule, which looks back. A run of fifteen
// minutes is no G.821 compliance test; say "evaluated by the G.821 method".
//
// An errored second has at least one bit error or is out of sync. A severely errored second has a
// bit error ratio of 1e-3 or more, or is out of sync. Unavailable time begins with the first of ten
// severely errored seconds in a row and ends with the first of ten in a row that are none; errored
// seconds are counted in available time only. (G.821 Annex A, known from texts that report it.)
// Where the standard is silent: a run begins available, and up to nine seconds that wait for a
// change of state at its end stay in the state they were in.

#include "core/base/EnumCodes.h"
#include "core/errortest/Second.h"

#include <QJsonObject>

#include <algorithm>
#include <optional>
#include <span>
#include <vector>

namespace loopwright {

enum class SecondClass : quint8
{
    ErrorFree,
    Errored,
    SeverelyErrored,
    Unavailable,
};
template<>
struct EnumCodes<SecondClass>
{
    static constexpr std::pair<SecondClass, const char *> table[] = {
        {SecondClass::ErrorFree, "error_free"},
        {SecondClass::Errored, "errored"},
        {SecondClass::SeverelyErrored, "severely_errored"},
        {SecondClass::Unavailable, "unavailable"}};
};

/// Bit errors in a second from which it is severely errored: a ratio of 1e-3 or more.
constexpr qint64 severelyErroredFrom(qint64 bitsPerSecond)
{
    return (std::max<qint64>(bitsPerSecond, 1) - 1) / 1000 + 1;
}

/// How one second counts as things stand, for the strip.
struct SecondMark
{
    SecondClass kind = SecondClass::ErrorFree;
    bool provisional = false; ///< may yet change by hindsight
    bool inSync = true;

    bool operator==(const SecondMark &) const = default;
};

/// Whole numbers counted so far. Available + unavailable = seconds; severely errored <= errored <=
/// available.
struct ErrorCounts
{
    qint64 seconds = 0;
    qint64 availableSeconds = 0;
    qint64 unavailableSeconds = 0;
    qint64 erroredSeconds = 0;
    qint64 severelyErroredSeconds = 0;
    qint64 errorFreeSeconds = 0; ///< available seconds that are not errored
    qint64 bits = 0;             ///< compared: seconds in sync alone
    qint64 bitErrors = 0;        ///< in seconds in sync alone
    qint64 availableBits = 0;    ///< of these, those of available time
    qint64 availableBitErrors = 0;
    qint64 syncLosses = 0; ///< stretches out of sync
    qint64 outOfSyncSeconds = 0;
    qint64 longestErrorFree = 0;   ///< seconds in a row, in sync and without a bit error
    qint64 secondsWithErrors = 0;  ///< in sync, with at least one bit error, available or not
    qint64 worstSecond = 0;        ///< most bit errors in one second
    qint64 provisionalSeconds = 0; ///< the last seconds that may yet change class, 0 to 9

    bool operator==(const ErrorCounts &) const = default;
};

/// The counts with the ratios that follow from them. A ratio over nothing is undefined: no value.
struct ErrorSummary : ErrorCounts
{
    std::optional<double> esr;                    ///< errored over available seconds
    std::optional<double> sesr;                   ///< severely errored over available seconds
    std::optional<double> ber;                    ///< over available time, as G.821 counts
    std::optional<double> berAll;                 ///< over everything in sync
    std::optional<double> berUpper95;             ///< Poisson, one-sided, 95 %, at most 1
    std::optional<double> errorsPerErroredSecond; ///< bit errors over secondsWithErrors

    bool operator==(const ErrorSummary &) const = default;
    /// The fields of `analyse seconds`, and the burst figures; numbers are not rounded.
    QJsonObject toJson() const;
};

ErrorSummary summarise(const ErrorCounts &counts);

/// The ten-second rule alone: says for each second which seconds are now settled.
class TenSecondRule
{
public:
    struct Step
    {
        int settled = 0;       ///< how many of the latest seconds (this one last) settle now
        bool available = true; ///< the state in which they settle
    };
    Step push(bool severe);
    bool available() const { return m_available; }
    int pending() const { return m_pending; } ///< 0 to 9

private:
    bool m_available = true;
    int m_pending = 0;
};

/// Counts second after second; the result does not depend on how the run is cut into calls.
class G821
{
public:
    /// `bitsPerSecond` at least 1: 56000, 64000, 128000, or any other rate.
    explicit G821(qint64 bitsPerSecond);

    void push(Second second);
    void push(std::span<const Second> seconds);

    /// As the run would count if it ended now.
    ErrorCounts counts() const;
    ErrorSummary summary() const { return summarise(counts()); }
    qint64 bitsPerSecond() const { return m_bitsPerSecond; }

private:
    void settle(TenSecondRule::Step step);
    void pushClass(Second second, bool severe);
    void countSyncLosses(bool inSync);
    void pushErrorFreeStretches(quint64 errored);
    void pushSyncLosses(quint64 lost);
    void pushBlock(const Second *seconds);

    qint64 m_bitsPerSecond;
    qint32 m_severeFrom; ///< bit errors in a second from which it is severely errored
    TenSecondRule m_rule;
    ErrorCounts m_settled; ///< without the pending seconds' classes
    qint64 m_pendingErrored = 0;
    qint64 m_pendingSevere = 0;
    qint64 m_pendingInSync = 0;
    qint64 m_pendingBitErrors = 0;
    qint64 m_unavailableInSync = 0; ///< seconds
    qint64 m_unavailableBitErrors = 0;
    qint64 m_errorFreeNow = 0; ///< length of the error-free stretch that ends with the last second
    bool m_inSync = true;
};

ErrorSummary evaluateSeconds(std::span<const Second> seconds, qint64 bitsPerSecond);
/// One mark per second.
std::vector<SecondMark> classify(std::span<const Second> seconds, qint64 bitsPerSecond);

} // namespace loopwright
