#pragma once
// The words of the trade that the program shows, each with one sentence. Written once for window,
// command line and manual.

#include "core/base/Text.h"

#include <span>
#include <vector>

namespace loopwright {

struct Term
{
    const char *word; ///< as the program shows it
    const char *also; ///< what else it is called, or what its letters stand for; may be empty
    const char *meaning;

    /// Whether the word, or what else it is called, has this text in it, whatever its capitals.
    bool isCalled(const QString &text) const;
};

/// By alphabet.
std::span<const Term> glossary();
/// Those that are called so; those that have it in their name if none is. Empty: all.
std::vector<const Term *> termsCalled(const QString &text);

} // namespace loopwright
