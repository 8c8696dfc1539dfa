#pragma once
// At least one way to say each command, for its help; tests read every one of them.

#include <QStringList>

namespace loopwright {

/// What stands behind the program's name, as a shell takes it; empty for words that are no command.
QStringList commandExamples(const QString &words);

} // namespace loopwright
