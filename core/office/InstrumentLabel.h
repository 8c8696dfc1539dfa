#pragma once
// What stands on a test set or meter that the register does not know: entered by whoever holds it,
// and told "as labelled" wherever it is named until the office confirms it.

#include "core/base/Finding.h"
#include "core/base/Result.h"
#include "core/office/Office.h"

namespace loopwright {

/// As it was typed.
struct InstrumentLabel
{
    QString key;
    QString serial;
    QString kind;
    QString calibratedOn;   ///< YYYY-MM-DD
    QString calibrationDue; ///< likewise, or "not_required"
};

/// What keeps a text from being the key of an office, a person or an instrument; empty: nothing.
Text registerKeyTrouble(const QString &key);

/// Of two days as they stand in a file or on a label; the field of what is wrong is "calibrated_on"
/// or "calibration_due".
tl::expected<Calibration, Finding> calibrationFrom(const QString &on, const QString &due);

/// Everything that is wrong with a label on that day, at "instrument", "serial", "kind" and the two
/// days; empty: instrumentFrom() makes an instrument of it.
Findings checkLabel(const InstrumentLabel &label, QDate today);

/// As labelled, with the one calibration that the label tells. The label has no findings.
Instrument instrumentFrom(const InstrumentLabel &label);

} // namespace loopwright
