#pragma once
// `certificate verify`: whether a certificate is genuine.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeCertificateVerify();

} // namespace loopwright
