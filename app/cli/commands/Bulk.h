#pragma once
// `bulk area_code`, `bulk variant`, `bulk undo`, `bulk cards`.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeBulkAreaCode();
std::unique_ptr<Command> makeBulkVariant();
std::unique_ptr<Command> makeBulkUndo();
std::unique_ptr<Command> makeBulkCards();

} // namespace loopwright
