#pragma once
// van add, lost, known, take, recall, open, bring, receive, list: work that is done apart.

#include "app/cli/Command.h"

namespace loopwright {

std::unique_ptr<Command> makeVanAdd();
std::unique_ptr<Command> makeVanLost();
std::unique_ptr<Command> makeVanTake();
std::unique_ptr<Command> makeVanOpen();
std::unique_ptr<Command> makeVanBring();
std::unique_ptr<Command> makeVanReceive();
std::unique_ptr<Command> makeVanList();
std::unique_ptr<Command> makeVanRecall();
std::unique_ptr<Command> makeVanKnown();

} // namespace loopwright
