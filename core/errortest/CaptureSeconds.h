#pragma once
// Takes the seconds of a capture one after the other and keeps what is known from one to the next:
// whether a pattern is found and followed. Capture.h says by which rules.

#include "core/errortest/CaptureReference.h"
#include "core/errortest/CaptureSecond.h"
#include "core/errortest/ChannelWatch.h"

#include <memory>
#include <optional>
#include <vector>

namespace loopwright {

class CaptureSeconds
{
public:
    explicit CaptureSeconds(const CaptureOptions &options);
    ~CaptureSeconds();

    qint64 octetsPerSecond() const { return m_octetsPerSecond; }

    /// A whole second with what is known before and after it.
    void second(const OctetView &view);
    /// What is left at the end and is no whole second: only searched, not counted.
    void rest(const OctetView &view);
    CaptureResult result() const;

private:
    /// A pattern in one way of lying in the octets.
    struct Candidate
    {
        const Pattern *pattern;
        OctetUse use;
        bool wanted; ///< asked for; otherwise only worth reporting
    };
    struct Finding
    {
        const Candidate *candidate;
        Lock lock;
    };
    struct Followed; ///< the pattern that was found

    std::optional<Finding> search(const OctetView &view, bool wanted, qint64 octets) const;
    PatternSeen seen(const Finding &finding) const;
    void searchSecond(const OctetView &view);
    void followSecond(const OctetView &view);
    bool slipsIntoNext(const OctetView &view, const quint64 *ahead) const;
    void regainSecond(const OctetView &view);
    void lookFurther(const OctetView &view);
    void lockIn(const PackedBits &bits, const Lock &lock, bool first);
    void take(const SecondFindings &findings, qint64 bits, bool counts);
    void count(qint64 bitErrors, qint64 bits);
    void leaveOut();
    bool searchFor(const OctetView &view, qint64 octets);
    std::vector<SyncLoss> lossesWithCause() const;
    ChannelState insteadOf(const PatternSeen &other) const;
    ChannelState channel() const;

    qint64 m_octetsPerSecond;
    std::vector<Candidate> m_candidates;
    std::unique_ptr<Followed> m_followed;
    bool m_inSync = false;
    ChannelWatch m_watch;
    std::optional<PatternSeen> m_other; ///< before anything is followed, or since the last loss
    int m_looks = 0;                    ///< seconds since the loss that were searched for it

    SecondList m_seconds;
    std::vector<Slip> m_slips;
    std::vector<SyncLoss> m_losses;
    std::optional<qint64> m_synchronisedAtBit;
    qint64 m_bits = 0;
    qint64 m_bitErrors = 0;
    qint64 m_lastBits = 0;       ///< compared in the last second
    bool m_lastTroubled = false; ///< the last second was counted and ended in trouble
    qint64 m_closeErrors = 0;    ///< in seconds that were looked at closely
    qint64 m_eighthBitErrors = 0;
};

} // namespace loopwright
