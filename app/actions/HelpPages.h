#pragma once
// The help of the window as parts of a page of the manual.

#include "app/actions/ManualPage.h"

namespace loopwright {

/// What each station of a job is for, and what to do when it fails.
void describeStations(ManualPage &page);
/// The words that the programs show.
void describeWords(ManualPage &page);
/// The columns of the files that are read.
void describeFiles(ManualPage &page);

} // namespace loopwright
