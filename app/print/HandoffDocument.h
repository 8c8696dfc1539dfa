#pragma once
// The page that hands on a job that is not accepted.

#include "app/print/Document.h"
#include "core/acceptance/Handoff.h"

namespace loopwright {

/// A character that no font at hand has stands as its number: a handoff is never refused.
Sheet handoffPage(const Handoff &handoff, Paper paper);

/// Puts its number in the place of each character that no font at hand has, and says so at the end
/// of the document.
void spellMissingCharacters(doc::Document &document);

} // namespace loopwright
