#pragma once
// One command: what it may be given and how it is done. A command is a file pair under commands/
// and one line in Commands.cpp.

#include "app/cli/Answer.h"
#include "app/cli/CommandContext.h"
#include "app/cli/Options.h"

#include <memory>

namespace loopwright {

class Command
{
public:
    virtual ~Command() = default;
    /// Names the options; they are bound to members of the command.
    virtual void declare(Options &options) = 0;
    /// Called once, after the members were filled.
    virtual Result<Answer> run(CommandContext &context) = 0;
};

/// What a command does to the world around it.
enum class Effect
{
    Reads,   ///< leaves the records as they are
    Paints,  ///< likewise, and paints a page or picture
    Changes, ///< changes the records
    ChangesAndPaints
};

/// One line of the register.
struct CommandEntry
{
    const char *words; ///< "order import"
    const char *summary;
    Effect effect;
    std::unique_ptr<Command> (*make)();
};

inline bool changes(Effect effect)
{
    return effect == Effect::Changes || effect == Effect::ChangesAndPaints;
}
inline bool paints(Effect effect)
{
    return effect == Effect::Paints || effect == Effect::ChangesAndPaints;
}

} // namespace loopwright
