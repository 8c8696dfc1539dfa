#include "app/cli/CommandContext.h"

#include "app/actions/Acting.h"
#include "app/actions/LimitChanges.h"
#include "app/cli/Answer.h"
#include "app/cli/PinInput.h"

#include <QElapsedTimer>
#include <QFileInfo>

#include <csignal>

namespace loopwright {

namespace {

volatile std::sig_atomic_t wasInterrupted = 0;

/// The first Ctrl-C asks long work to stop, so that it takes back what it began; a second one ends
/// the program. Where the shell has the signal ignored it stays so.
void watchForInterrupts()
{
    for (const int signal : {SIGINT, SIGTERM}) {
        struct sigaction before = {};
        if (sigaction(signal, nullptr, &before) != 0 || before.sa_handler == SIG_IGN)
            continue;
        struct sigaction noted = {};
        noted.sa_handler = [](int) { wasInterrupted = 1; };
        noted.sa_flags = int(SA_RESTART | SA_RESETHAND);
        sigaction(signal, &noted, nullptr);
    }
}

/// One line that is written over and over. It is wiped with blanks, so that no kind of terminal and
/// no NO_COLOR has anything to object to.
class ProgressLine
{
public:
    ProgressLine(QIODevice &out, const QString &what)
        : m_out(out)
        , m_what(what)
    {
        m_since.start();
    }

    /// At most ten times a second; nothing is left of it when the work is done.
    void show(qint64 done, qint64 total)
    {
        if (total > 0 && done >= total)
            return clear();
        if (m_since.elapsed() < 100)
            return;
        m_since.restart();
        QString line = m_what + ": " + QString::number(done);
        if (total > 0)
            line += QString(" of %1").arg(total);
        write(line);
    }

    void clear()
    {
        if (m_length == 0)
            return;
        write({});
        m_out.write("\r");
    }

private:
    void write(const QString &line)
    {
        m_out.write(('\r' + line.leftJustified(m_length)).toUtf8());
        m_length = line.size();
    }

    QIODevice &m_out;
    QString m_what;
    QElapsedTimer m_since;
    qsizetype m_length = 0; ///< of what stands there
};

bool isThere(const QString &records)
{
    return isServerAddress(records) || QFileInfo::exists(records);
}

} // namespace

CommandContext::CommandContext(CommonOptions common, QIODevice &messages, bool terminal)
    : m_common(std::move(common))
    , m_messages(messages)
    , m_terminal(terminal && !m_common.quiet)
{
}

QString CommandContext::databasePath() const
{
    if (!m_common.database.isEmpty())
        return m_common.database;
    const QString fromEnvironment = qEnvironmentVariable("LOOPWRIGHT_DB");
    return fromEnvironment.isEmpty() ? defaultDatabasePath() : fromEnvironment;
}

Result<Records *> CommandContext::records()
{
    // Whoever opens the records of a server reads alone until a change begins.
    if (m_records || !m_readsOnly || !isThere(databasePath()) || isServerAddress(databasePath()))
        return recordsToChange();
    LOOPWRIGHT_TRY(recordsAsTheyAre(Database::Access::ReadOnly));
    LOOPWRIGHT_ASSIGN(const bool current, limitsAreCurrent(*m_records));
    if (current)
        return m_records.get();
    auto readable = std::move(m_records);
    if (!recordsToChange())
        m_records = std::move(readable); // as they were decided last
    return m_records.get();
}

Result<Records *> CommandContext::recordsToChange()
{
    if (!m_records) {
        LOOPWRIGHT_TRY(recordsAsTheyAre(Database::Access::ReadWrite));
        if (const auto brought = bringShippedLimits(*m_records); !brought) {
            m_records.reset();
            return failure(brought.error());
        }
    }
    return m_records.get();
}

Result<Records *> CommandContext::recordsThatKeepRefusals()
{
    const auto writable = recordsToChange();
    return writable || !isThere(databasePath()) ? writable : records();
}

Result<Records *> CommandContext::recordsAsTheyAre(Database::Access access)
{
    if (!m_records) {
        if (m_common.database.isEmpty() && !qgetenv("LOOPWRIGHT_DB").isValidUtf8())
            return failure(ErrorCode::BadInput, "the name of the database is not UTF-8",
                           "LOOPWRIGHT_DB");
        LOOPWRIGHT_ASSIGN(auto opened, Records::open(databasePath(), access));
        LOOPWRIGHT_TRY(actFor(*opened, m_common.by));
        opened->setPinSource(pinSource());
        opened->setNow(m_common.now);
        opened->database().setPatience(Database::longPatienceMs);
        opened->database().whenWaiting([this] { tellWaiting(); });
        if (opened->database().wasOpenToOthers() && !m_common.quiet)
            m_messages.write(("loopwright-cli: " + oneLine(shownPlace(databasePath())) +
                              ": others had rights to the records; now their owner alone has\n")
                                 .toUtf8());
        m_records = std::move(opened);
    }
    return m_records.get();
}

Result<Records *> CommandContext::recordsWritableOrNot()
{
    const auto writable = recordsAsTheyAre(Database::Access::ReadWrite);
    if (writable || !isThere(databasePath()))
        return writable;
    return recordsAsTheyAre(Database::Access::ReadOnly);
}

Records::PinSource CommandContext::pinSource() const
{
    return [this](const Person &person) {
        return m_common.pin ? m_common.pin
                            : pinFromTerminal(QString("PIN of %1:").arg(person.name));
    };
}

void CommandContext::tellWaiting()
{
    if (!m_common.quiet)
        m_messages.write(("loopwright-cli: " + oneLine(shownPlace(databasePath())) +
                          ": another program is writing; waiting for it\n")
                             .toUtf8());
}

bool CommandContext::isInterrupted()
{
    return wasInterrupted != 0;
}

Progress CommandContext::progress(const QString &what)
{
    watchForInterrupts();
    if (!m_terminal)
        return [](qint64, qint64) { return wasInterrupted == 0; };
    auto line = std::make_shared<ProgressLine>(m_messages, what);
    return [line](qint64 done, qint64 total) {
        if (wasInterrupted)
            line->clear();
        else
            line->show(done, total);
        return wasInterrupted == 0;
    };
}

} // namespace loopwright
