#pragma once
// The innermost loop of the capture analysis: bits that differ between octets and reference.

#include <QtGlobal>

namespace loopwright {

/// Words of eight octets that are judged together: bits in error among them tell a slip from noise.
inline constexpr int wordsPerGroup = 8;

struct WordErrors
{
    qint64 total = 0;
    qint64 worstGroup = 0; ///< most in a group of wordsPerGroup words
    qint64 lastGroup = 0;  ///< in the last group
};

/// Compares `groups` groups of octets with reference words as they lie in memory; bits outside
/// `mask` do not count. The octets need no alignment.
WordErrors countErrors(const uchar *octets, const quint64 *reference, quint64 mask, int groups);

} // namespace loopwright
