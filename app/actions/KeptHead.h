#pragma once
// The newest head that this machine signed for the station, which it keeps beside the keys: by it
// an older copy of the records, put back in the place of newer ones, is known as one. It would give
// numbers again that are on paper already.

#include "app/actions/Records.h"
#include "core/history/SignedHead.h"

namespace loopwright {

/// Keeps where the log ends now, unless a later one is kept. DiskTrouble if it cannot be written.
/// Nothing is kept for a station that has no key here.
Result<void> keepHead(Records &records);
/// Of the station as it is called now; nothing if none was kept on this machine. BadInput if the
/// file does not hold one.
Result<std::optional<SignedHead>> keptHead(Records &records);
/// Refused, with what to do, if the log does not contain the head that is kept.
Result<void> checkNotOlder(Records &records);

} // namespace loopwright
