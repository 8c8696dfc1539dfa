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

} // namespace

CommandContext::CommandContext(CommonOptions common, QIODevice &messages, bool terminal)
    : m_common(std::move(common))
    , m_messages(messages)
    , m_terminal(terminal)
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
    if (m_records || !m_readsOnly || !QFileInfo::exists(databasePath()))
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

Result<Records *> CommandContext::recordsAsTheyAre(Database::Access access)
{
    if (!m_records) {
        LOOPWRIGHT_ASSIGN(auto opened, Records::open(databasePath(), access));
        LOOPWRIGHT_TRY(actFor(*opened, m_common.by));
        opened->setPinSource(pinSource());
        opened->setNow(m_common.now);
        if (opened->database().wasOpenToOthers())
            m_messages.write(("loopwright-cli: " + oneLine(databasePath()) +
                              ": others had rights to the records; now their owner alone has\n")
                                 .toUtf8());
        m_records = std::move(opened);
    }
    return m_records.get();
}

Result<Records *> CommandContext::recordsWritableOrNot()
{
    const auto writable = recordsAsTheyAre(Database::Access::ReadWrite);
    if (writable || !QFileInfo::exists(databasePath()))
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

bool CommandContext::isInterrupted()
{
    return wasInterrupted != 0;
}

Progress CommandContext::progress(const QString &what)
{
    watchForInterrupts();
    if (!m_terminal)
        return [](qint64, qint64) { return wasInterrupted == 0; };
    auto timer = std::make_shared<QElapsedTimer>();
    timer->start();
    return [this, what, timer](qint64 done, qint64 total) {
        const bool finished = total > 0 && done >= total;
        if (wasInterrupted) {
            m_messages.write("\r\033[K");
            return false;
        }
        if (timer->elapsed() < 100 && !finished)
            return true;
        timer->restart();
        QString line = "\r" + what + ": " + QString::number(done);
        if (total > 0)
            line += QString(" of %1").arg(total);
        // "erase to the end of the line", then nothing is left of it when the work is done
        m_messages.write((finished ? QString("\r\033[K") : line + "\033[K").toUtf8());
        return true;
    };
}

} // namespace loopwright
