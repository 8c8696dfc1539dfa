#pragma once
// An instrument that the register does not know is entered from its label by whoever measures with
// it.

#include "app/actions/Records.h"
#include "core/office/InstrumentLabel.h"

namespace loopwright {

/// Enters the instrument as labelled, or corrects one that was entered so; the open orders it
/// measured on are decided anew. Nothing is written where everything is there already. BadInput
/// with the field as its place for what checkLabel() finds; Refused for one that the office has
/// registered: its calibration is the office's to record.
Result<Instrument> labelInstrument(Records &records, const InstrumentLabel &label);

} // namespace loopwright
