#pragma once
// What each part of a job is for, and what to do when it fails: one sentence each, written once for
// the job page, the command line and the manual. The words on dangerous voltage are those of the
// criteria and of Cautions.h; nobody writes them again.

#include "core/acceptance/Stage.h"
#include "core/base/Text.h"

#include <span>
#include <vector>

namespace loopwright {

struct PartHelp
{
    const char *key;  ///< of the part on the job page; "order" for the order itself
    const char *name; ///< as it stands above the part
    Station station;
    const char *purpose;
    const char *onFailure; ///< null: what the criterion of the same key says to check first

    Text whatFor() const { return Text(purpose); }
    Text whenItFails() const;
};

/// In the order of the work, each station with one part at least.
std::span<const PartHelp> partHelps();
/// Null for a key that is no part.
const PartHelp *findPartHelp(const QString &key);
/// The parts of a station, by its code ("error_test"), or the one part of that key; none if it is
/// neither.
std::vector<const PartHelp *> partHelpsOf(const QString &stationOrPart);

} // namespace loopwright
