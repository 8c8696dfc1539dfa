#pragma once
// What a count of bit errors proves about the true bit error ratio. Bounds are one-sided with a
// confidence between 0 and 1 and hold for errors that are independent of each other; those of a
// loop come in bursts, so that errored seconds belong beside every bound.
//
// Poisson: the p with P(Poisson(N p) <= E) = 1 - C, i.e. chi2inv(C, 2E+2) / 2N.
// Clopper-Pearson: the p with P(Binomial(N, p) <= E) = 1 - C, i.e. BetaInv(C; E+1, N-E).
// (Textbook statistics.) Good to ten significant digits.

#include "core/base/EnumCodes.h"
#include "core/base/Result.h"
#include "core/base/Text.h"

#include <QJsonObject>

#include <optional>

namespace loopwright {

/// Of a bound if nobody asks for another: 95 % (common practice).
inline constexpr double usualConfidence = 0.95;

/// E errors in N bits, asked at confidence C. All functions below need 0 <= errors <= bits, 1 <=
/// bits, 0 < confidence < 1; if a user gives these, `checkBoundInput` is asked first.
struct BoundInput
{
    qint64 errors = 0;
    qint64 bits = 1;
    double confidence = usualConfidence;
};
/// Usage, naming the number that is out of range.
Result<void> checkBoundInput(const BoundInput &input);

double poissonUpper(const BoundInput &input); ///< may exceed 1 for a handful of bits
double poissonLower(const BoundInput &input); ///< 0 for no errors
double clopperPearsonUpper(const BoundInput &input);
double clopperPearsonLower(const BoundInput &input);

struct Bounds
{
    double poissonUpper = 0;
    double clopperPearsonUpper = 0;

    /// {"poisson_upper", "clopper_pearson_upper"}
    QJsonObject toJson() const;
};
/// Both upper bounds; Usage if the numbers make no sense.
Result<Bounds> upperBounds(const BoundInput &input);

/// Whether a run proves that the true ratio is at most a target.
enum class Proof
{
    Proved,    ///< the upper bound is at most the target
    Refuted,   ///< the lower bound is above the target
    NotProved, ///< neither: go on
};
template<>
struct EnumCodes<Proof>
{
    static constexpr std::pair<Proof, const char *> table[] = {
        {Proof::Proved, "proved"}, {Proof::Refuted, "refuted"}, {Proof::NotProved, "not_proved"}};
};

struct ProofVerdict
{
    Proof proof = Proof::NotProved;
    double upper = 1;          ///< Poisson, at most 1
    double lower = 0;          ///< Poisson
    double furtherSeconds = 0; ///< with no more errors, until proved; 0 unless not proved

    bool operator==(const ProofVerdict &) const = default;
};
/// `target` above 0; `bitsPerSecond` at least 1. No bits at all prove nothing. With a `confidence`
/// below one half the lower bound lies above the upper one, and the verdict means nothing.
ProofVerdict prove(qint64 errors, qint64 bits, double bitsPerSecond, double target,
                   double confidence);

/// As a person writes it: "1e-7", not "1e-07".
QString ratioText(double ratio);
/// "1e-7 is proved", "1e-7 is refuted", "1e-7 is not proved yet: 0:52 more without an error".
QString proofText(const ProofVerdict &verdict, double target);

/// Seconds that a run with `errors` bit errors must last to prove `target`.
double secondsNeeded(double target, double bitsPerSecond, double confidence, qint64 errors = 0);

/// "no error in 9:40: BER below 8.1e-8 with 95 % confidence", or "3 errors in 15:00: …". The bound
/// is rounded up, so that the sentence is never more than what is proved. "nothing compared yet"
/// if there are no bits.
Text proofSentence(qint64 errors, qint64 bits, qint64 seconds, double confidence);

/// "95", "99.9999999": a confidence in percent, with as many digits as tell it from 100.
QString percentText(double confidence);

/// "9:40", "1:18:00"; minutes at least.
QString durationText(qint64 seconds);

} // namespace loopwright
