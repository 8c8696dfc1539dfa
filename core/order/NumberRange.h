#pragma once
// The numbers of a point-to-point line: its head number and the range that is dialled in. Two
// habits are read. Where every number has one length, the range stands for the last digits of the
// head number (217-555-0140, 00-49: 217-555-0100 to 0149); elsewhere it may also be dialled behind
// it, without its last 0 if it ends in one (+49 30 23125 0, 00-49: +49 30 23125 00 to 49).

#include "core/order/ServiceOrder.h"

namespace loopwright {

/// What is wrong with head number and range, each with its column in `field`: errors
/// `head_number_…` as checkDirectoryNumber() has them, `number_range_malformed` (not two groups of
/// digits of one length, ascending, shorter than the head number); warnings `head_number_missing`,
/// `head_number_outside`, `dn_outside_range`, and `not_point_to_point` on another line.
Findings checkNumberRange(const ServiceOrder &order);

} // namespace loopwright
