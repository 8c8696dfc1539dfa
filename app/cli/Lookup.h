#pragma once
// Words on the command line that name something in a table of the program: wrong usage if there
// is none of that name, with the name that was probably meant.

#include "core/base/Result.h"
#include "core/identifiers/ProtocolVariant.h"

namespace loopwright {

Result<const ProtocolVariant *> variantOf(const QString &key);

} // namespace loopwright
