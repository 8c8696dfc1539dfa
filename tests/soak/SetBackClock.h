#pragma once
// The clock of the machine, set back for this process: the program asks the system as always.

namespace loopwright::soak {

void setClockBack(int days);

} // namespace loopwright::soak
