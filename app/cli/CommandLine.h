#pragma once
// The command line as a whole: reads the words, finds the command in the register, runs it, and
// writes its answer or its error. Tests call it in-process; the program is a main() around it.

#include "app/cli/Command.h"
#include "app/cli/ExitStatus.h"
#include "app/cli/ProgramSpec.h"

#include <memory>
#include <optional>

namespace loopwright {

class CommandLine
{
public:
    CommandLine();
    ~CommandLine();

    /// Reads the words after the program's name. Wrong usage, a call for help or for the version
    /// is kept and answered by run().
    void read(const QStringList &words);
    /// The same of words as the system hands them over; one that is not UTF-8 is refused.
    void readBytes(const QByteArrayList &words);
    /// What was wrong with the words, if anything was.
    std::optional<Error> wrong() const;
    /// True if the command that was read paints, and so needs a QGuiApplication.
    bool paints() const;
    /// Does what was read. Standard output gets the answer alone, `messages` all else.
    ExitStatus run(QIODevice &out, QIODevice &messages, bool terminal);
    /// All that can be said.
    const ProgramSpec &spec() const;

private:
    ExitStatus fail(const Error &error, QIODevice &out, QIODevice &messages) const;

    struct Reading;
    std::unique_ptr<Reading> m_reading;
};

} // namespace loopwright
