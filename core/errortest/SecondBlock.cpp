#include "core/errortest/SecondBlock.h"

#include <algorithm>

#ifdef __SSE2__
#include <emmintrin.h>
#endif

namespace loopwright {

SecondBlock SecondBlock::plainly(const Second *seconds, qint32 severeFrom)
{
    SecondBlock block;
    for (int i = 0; i < size; ++i) {
        const Second second = seconds[i];
        block.errored |= Mask(second.code() != 0) << i;
        block.severe |= Mask(!second.inSync() || second.code() >= severeFrom) << i;
        block.lost |= Mask(!second.inSync()) << i;
        block.bitErrors += second.bitErrors();
        block.worst = std::max(block.worst, second.code());
    }
    return block;
}

#ifdef __SSE2__ // on every x86-64; four seconds at a time

namespace {

constexpr int lanes = 4;

__m128i load(const Second *seconds)
{
    static_assert(sizeof(Second) == sizeof(qint32));
    return _mm_loadu_si128(reinterpret_cast<const __m128i *>(seconds));
}

/// One bit for each second whose lane `test` fills with ones.
template<class Test>
SecondBlock::Mask maskWhere(const Second *seconds, Test test)
{
    SecondBlock::Mask mask = 0;
    for (int i = 0; i < SecondBlock::size; i += 4 * lanes) {
        const __m128i low = _mm_packs_epi32(test(load(seconds + i)), test(load(seconds + i + 4)));
        const __m128i high =
            _mm_packs_epi32(test(load(seconds + i + 8)), test(load(seconds + i + 12)));
        mask |= SecondBlock::Mask(quint32(_mm_movemask_epi8(_mm_packs_epi16(low, high)))) << i;
    }
    return mask;
}

qint32 largest(__m128i values)
{
    alignas(16) qint32 each[lanes];
    _mm_store_si128(reinterpret_cast<__m128i *>(each), values);
    return *std::max_element(each, each + lanes);
}

/// Sum and maximum of the bit errors of an errored block.
void countErrors(const Second *seconds, SecondBlock &block)
{
    const __m128i zero = _mm_setzero_si128();
    __m128i low = zero;
    __m128i high = zero;
    __m128i worst = zero;
    for (int i = 0; i < SecondBlock::size; i += lanes) {
        const __m128i codes = load(seconds + i);
        const __m128i errors = _mm_andnot_si128(_mm_cmplt_epi32(codes, zero), codes);
        low = _mm_add_epi64(low, _mm_unpacklo_epi32(errors, zero));
        high = _mm_add_epi64(high, _mm_unpackhi_epi32(errors, zero));
        const __m128i larger = _mm_cmpgt_epi32(errors, worst);
        worst = _mm_or_si128(_mm_and_si128(larger, errors), _mm_andnot_si128(larger, worst));
    }
    alignas(16) qint64 sums[2];
    _mm_store_si128(reinterpret_cast<__m128i *>(sums), _mm_add_epi64(low, high));
    block.bitErrors = sums[0] + sums[1];
    block.worst = largest(worst);
}

} // namespace

SecondBlock SecondBlock::of(const Second *seconds, qint32 severeFrom)
{
    const __m128i zero = _mm_setzero_si128();
    SecondBlock block;
    block.errored =
        ~maskWhere(seconds, [&](__m128i codes) { return _mm_cmpeq_epi32(codes, zero); });
    if (block.errored == 0)
        return block;
    countErrors(seconds, block);
    block.lost = maskWhere(seconds, [&](__m128i codes) { return _mm_cmplt_epi32(codes, zero); });
    block.severe = block.lost;
    if (block.worst >= severeFrom) {
        const __m128i below = _mm_set1_epi32(severeFrom - 1);
        block.severe |=
            maskWhere(seconds, [&](__m128i codes) { return _mm_cmpgt_epi32(codes, below); });
    }
    return block;
}

#else

SecondBlock SecondBlock::of(const Second *seconds, qint32 severeFrom)
{
    return plainly(seconds, severeFrom);
}

#endif

} // namespace loopwright
