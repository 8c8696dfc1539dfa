#pragma once
// The pseudorandom test patterns of ITU-T O.150 (05/96) 5.1 to 5.6, as register and as table.
//
// An n-stage register Q1..Qn: each clock puts out Qn, then shifts, the new Q1 being Qk xor Qn. On
// the plain output a(t) = a(t-k) xor a(t-n); the period is 2^n - 1. Inverted patterns are sent as
// the complement. With zero suppression a one is sent in place of a zero whose next 14 bits are all
// zero; the register itself goes on unchanged.

#include "core/base/EnumCodes.h"

#include <span>

namespace loopwright {

enum class PatternKey
{
    Prbs9,
    Prbs11,
    Prbs15,
    Prbs20,
    Qrss20,
    Prbs23,
};
template<>
struct EnumCodes<PatternKey>
{
    static constexpr std::pair<PatternKey, const char *> table[] = {
        {PatternKey::Prbs9, "prbs9"},   {PatternKey::Prbs11, "prbs11"},
        {PatternKey::Prbs15, "prbs15"}, {PatternKey::Prbs20, "prbs20"},
        {PatternKey::Qrss20, "qrss20"}, {PatternKey::Prbs23, "prbs23"}};
};

struct Pattern
{
    PatternKey key;
    const char *name; ///< for a person: "511", "2047", "2^15-1", …
    int stages;       ///< n
    int tap;          ///< k
    bool inverted;    ///< sent as the complement of the register's output
    bool zeroSuppressed;
    const char *source; ///< clause of O.150

    quint32 period() const { return (1u << stages) - 1; }
};

/// All six, shortest first.
std::span<const Pattern> patterns();
const Pattern &patternOf(PatternKey key);

/// Whether a test set calls a fixed pattern so: all ones, all zeros, 1:1, single octets. Such a
/// pattern looks the same one bit later and on another channel.
bool isFixedPattern(const QString &name);

/// Puts the pattern out bit by bit: short, slow, and the measure for everything faster.
class PatternRegister
{
public:
    /// `q1ToQn`: the register before the first output, Q1 in the highest of n bits; not zero.
    PatternRegister(const Pattern &pattern, quint32 q1ToQn);

    /// The next bit as it is sent.
    bool next();

private:
    Pattern m_pattern;
    quint32 m_register;
};

} // namespace loopwright
