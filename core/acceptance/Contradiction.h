#pragma once
// Readings that cannot be true: by themselves, or beside another one that counts. Such a fact is
// kept and counts for nothing; its criterion waits for another reading. The same sentence is said
// while it is typed, when it is recorded, and in the decision. The readings of a safety card are
// held to each other in SafetyVerdict.h and the totals of a run in RunTotals.h.

#include "core/acceptance/Fact.h"
#include "core/base/Text.h"

namespace loopwright {

struct Contradiction
{
    QString field; ///< key of the fact that cannot be as it is
    Text what;     ///< what does not fit, and why: one sentence
    Text check;    ///< what to check, one sentence

    Text sentence() const;
};

/// A measured resistance is above nothing; wires do not amplify (a loss is above -1 dB); a loss
/// belongs to a frequency.
std::optional<Contradiction> contradictionIn(const LoopFact &loop);
/// Each errored second of a check that saw every error has an error.
std::optional<Contradiction> contradictionIn(const DetectorFact &check);
/// `amplified`: a repeater or carrier stands in the make-up. Ringing is at most 150 V (common
/// practice).
std::optional<Contradiction> contradictionIn(const AnalogFact &analog, bool amplified);
/// A typed balance is power influence less noise within 3 dB (S.C. Code Regs. 103-663.3 defines it
/// so; the 3 dB are common practice). What is not known is passed over.
std::optional<Contradiction> balanceContradiction(double balanceDb,
                                                  std::optional<double> influenceDbrnc,
                                                  std::optional<double> noiseDbrnc);

/// What the counting facts say of the line, against which a further one is held.
class Contradictions
{
public:
    /// `counting` by time.
    explicit Contradictions(const std::vector<const Fact *> &counting);

    /// None if the fact can be true.
    std::optional<Contradiction> in(const Fact &fact) const;

private:
    bool m_amplified = false;
    std::optional<double> m_influenceDbrnc, m_noiseDbrnc;
};

} // namespace loopwright
