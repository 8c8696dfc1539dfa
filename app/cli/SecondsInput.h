#pragma once
// A file of errors per second as commands take it in.

#include "app/cli/Answer.h"
#include "core/errortest/SecondsFile.h"

namespace loopwright {

/// What a command answers to a file with odd rows: each on its own line of standard error, up to a
/// hundred of them; as JSON {"error":{…},"findings":[…],"further_findings":N}, where N were too
/// many to be listed. Ends like a malformed input.
Answer refusedSeconds(const SecondsFile &file, const QString &fileName);

} // namespace loopwright
