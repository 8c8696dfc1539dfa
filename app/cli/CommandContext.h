#pragma once
// What surrounds a command: the options that all commands share, the records, which are opened when
// they are first asked for, and the line on a terminal that shows how far the work is.

#include "app/actions/Records.h"

#include <QIODevice>

namespace loopwright {

struct CommonOptions
{
    QString database; ///< as given; empty: LOOPWRIGHT_DB, else the usual place
    bool json = false;
    bool quiet = false;              ///< answers and errors alone
    QString by;                      ///< empty: the person whose login it is, else the login name
    QString pinFile;                 ///< empty: asked on the terminal
    std::optional<QString> pin = {}; ///< what it holds; read once, for a pipe gives it once
    std::optional<Moment> now;
};

class CommandContext
{
public:
    /// `messages` is standard error; `terminal` says whether a person watches it.
    CommandContext(CommonOptions common, QIODevice &messages, bool terminal);

    /// The command leaves the records as they are: they are then opened for reading alone, so that
    /// a medium that cannot be written, or a full disk, is no hindrance.
    void setReadsOnly(bool on) { m_readsOnly = on; }

    const CommonOptions &common() const { return m_common; }
    QString databasePath() const;
    /// The open records; the same ones on every call. Where the limits in force are newer than what
    /// the records were last decided by, these are brought up to date first, if they can be.
    Result<Records *> records();
    /// Likewise, and open for writing if the medium allows that, whatever the command does: for one
    /// that may be refused to somebody, which the history keeps.
    Result<Records *> recordsThatKeepRefusals();
    /// As records(), but nothing is brought into them on the way: for commands that ask what is
    /// stored.
    Result<Records *> recordsAsTheyAre(Database::Access access = Database::Access::ReadOnly);
    /// As they are, for writing if the medium allows that, else for reading: SQLite looks through
    /// its index of words only if it may write, and keys are made only if there are none.
    Result<Records *> recordsWritableOrNot();
    /// From --pin-file, else from the terminal.
    Records::PinSource pinSource() const;
    void tellWaiting();
    /// Shows on a terminal how much of `what` is done, at most ten times a second; answers false
    /// once the program was asked to stop by Ctrl-C or SIGTERM.
    Progress progress(const QString &what);
    /// Whether Ctrl-C or SIGTERM came while something was watching for it.
    static bool isInterrupted();

private:
    Result<Records *> recordsToChange();

    CommonOptions m_common;
    QIODevice &m_messages;
    bool m_terminal;
    bool m_readsOnly = false;
    std::unique_ptr<Records> m_records;
};

} // namespace loopwright
