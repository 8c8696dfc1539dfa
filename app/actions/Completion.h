#pragma once
// A completion number told by telephone: whether it is the order's, and whether it stands.

#include "app/actions/Records.h"

namespace loopwright {

enum class SpokenNumber
{
    Stands,     ///< of the order as it is accepted now
    Superseded, ///< of an earlier acceptance of the order; what that rested on has changed
    Misheard,   ///< not ten digits, or its check digits do not fit
    Another     ///< well formed, and never the order's
};
template<>
struct EnumCodes<SpokenNumber>
{
    static constexpr std::pair<SpokenNumber, const char *> table[] = {
        {SpokenNumber::Stands, "stands"},
        {SpokenNumber::Superseded, "superseded"},
        {SpokenNumber::Misheard, "misheard"},
        {SpokenNumber::Another, "another"}};
};

/// `spoken` with any spaces and hyphens. NotFound if there is no such order. An earlier acceptance
/// is known as far as a decision was stored of it.
Result<SpokenNumber> checkCompletion(Records &records, const QString &order, const QString &spoken);

} // namespace loopwright
