#include "core/errortest/CaptureKernel.h"

#include <algorithm>
#include <cstring>

// Debian builds for processors without the popcnt instruction; where it is there, this one function
// uses it.
#if defined(__x86_64__) && defined(__GNUC__)
#define LOOPWRIGHT_POPCNT __attribute__((target_clones("popcnt", "default")))
#else
#define LOOPWRIGHT_POPCNT
#endif

namespace loopwright {

LOOPWRIGHT_POPCNT
WordErrors countErrors(const uchar *octets, const quint64 *reference, quint64 mask, int groups)
{
    WordErrors errors;
    for (int group = 0; group < groups; ++group) {
        qint64 inGroup = 0;
        for (int i = 0; i < wordsPerGroup; ++i) {
            quint64 word;
            std::memcpy(&word, octets + 8 * i, sizeof word);
            inGroup += __builtin_popcountll((word ^ reference[i]) & mask);
        }
        errors.total += inGroup;
        errors.worstGroup = std::max(errors.worstGroup, inGroup);
        octets += 8 * wordsPerGroup;
        reference += wordsPerGroup;
    }
    return errors;
}

} // namespace loopwright
