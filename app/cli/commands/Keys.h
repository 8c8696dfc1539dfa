#pragma once
// key show, key export, key renew: the public keys by which certificates are checked.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeKeyShow();
std::unique_ptr<Command> makeKeyExport();
std::unique_ptr<Command> makeKeyRenew();

} // namespace loopwright
