#pragma once
// The demo: two hundred orders of one invented office with eight weeks of work, in records of their
// own, as `demo/run` takes them in.

#include "app/actions/Records.h"

namespace loopwright {

/// `demo.sqlite` in the XDG data directory of the program.
QString demoDatabasePath();
/// Who works in the demo, and the day on which it stands.
QString demoPerson();
Moment demoNow();

/// Makes the demo's records at the path, unless they are there. Stopped or failed, there is
/// nothing.
Result<void> makeDemo(const QString &path, const Progress &progress = {});

} // namespace loopwright
