#include "core/errortest/CaptureKernel.h"

#include <algorithm>
#include <cstring>

// Debian builds for processors without the popcnt instruction; if it is there, this one function
// uses it.
#if defined(__x86_64__) && defined(__GNUC__)
#define LOOPWRIGHT_POPCNT __attribute__((target_clones("popcnt", "default")))
#else
#define LOOPWRIGHT_POPCNT
#endif

namespace loopwright {

namespace {

// How far ahead of the count octets are called for, in octets; measured. From memory into the
// second cache far ahead, since a page that was not touched yet takes long, and from there shortly
// before.
constexpr int nearAhead = 512;
constexpr int farAhead = 8192;

template<bool masked>
[[gnu::always_inline]] inline WordErrors count(const uchar *octets, const quint64 *reference,
                                               quint64 mask, int groups)
{
    WordErrors errors;
    for (int group = 0; group < groups; ++group) {
        qint64 inGroup = 0;
        // May point past the end: nothing is read.
        __builtin_prefetch(octets + farAhead, 0, 2);
        __builtin_prefetch(octets + nearAhead, 0, 3);
        for (int i = 0; i < wordsPerGroup; ++i) {
            quint64 word;
            std::memcpy(&word, octets + 8 * i, sizeof word);
            word ^= reference[i];
            inGroup += __builtin_popcountll(masked ? word & mask : word);
        }
        errors.total += inGroup;
        errors.worstGroup = std::max(errors.worstGroup, inGroup);
        errors.lastGroup = inGroup;
        octets += 8 * wordsPerGroup;
        reference += wordsPerGroup;
    }
    return errors;
}

} // namespace

LOOPWRIGHT_POPCNT
WordErrors countErrors(const uchar *octets, const quint64 *reference, quint64 mask, int groups)
{
    return mask == ~quint64(0) ? count<false>(octets, reference, mask, groups)
                               : count<true>(octets, reference, mask, groups);
}

} // namespace loopwright
