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
    QString by;      ///< empty: the person whose login it is, else the login name
    QString pinFile; ///< empty: asked on the terminal
    std::optional<Moment> now;
};

class CommandContext
{
public:
    /// `messages` is standard error; `terminal` says whether a person watches it.
    CommandContext(CommonOptions common, QIODevice &messages, bool terminal);

    const CommonOptions &common() const { return m_common; }
    QString databasePath() const;
    /// The open records; the same ones on every call.
    Result<Records *> records();
    /// Likewise, but nothing is brought into them on the way: for commands that ask what is stored.
    Result<Records *> recordsAsTheyAre(Database::Access access = Database::Access::ReadOnly);
    /// From --pin-file, else from the terminal.
    Records::PinSource pinSource() const;
    /// Shows on a terminal how much of `what` is done, at most ten times a second.
    Progress progress(const QString &what);

private:
    CommonOptions m_common;
    QIODevice &m_messages;
    bool m_terminal;
    std::unique_ptr<Records> m_records;
};

} // namespace loopwright
