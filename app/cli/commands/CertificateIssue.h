#pragma once
// `certificate issue`: the certificate of an accepted order as PDF.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeCertificateIssue();

} // namespace loopwright
