#include "app/cli/CommandContext.h"

#include "app/actions/Acting.h"
#include "app/actions/LimitChanges.h"
#include "app/cli/PinInput.h"

#include <QElapsedTimer>

namespace loopwright {

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
        m_records = std::move(opened);
    }
    return m_records.get();
}

Records::PinSource CommandContext::pinSource() const
{
    return [this](const Person &person) -> std::optional<QString> {
        if (m_common.pinFile.isEmpty())
            return pinFromTerminal(QString("PIN of %1:").arg(person.name));
        const auto pin = pinFromFile(m_common.pinFile);
        return pin ? std::optional(*pin) : std::nullopt;
    };
}

Progress CommandContext::progress(const QString &what)
{
    if (!m_terminal)
        return {};
    auto timer = std::make_shared<QElapsedTimer>();
    timer->start();
    return [this, what, timer](qint64 done, qint64 total) {
        const bool finished = total > 0 && done >= total;
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
