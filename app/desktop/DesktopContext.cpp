#include "app/desktop/DesktopContext.h"

#include "app/actions/Acting.h"
#include "app/actions/LimitChanges.h"

namespace loopwright {

namespace {

Result<std::unique_ptr<Records>> openRecords(const QString &path, const QString &by,
                                             std::optional<Moment> given)
{
    auto records = Records::open(path);
    if (!records)
        return failure(records.error());
    LOOPWRIGHT_TRY(actFor(**records, by));
    (*records)->setNow(given);
    return records;
}

} // namespace

DesktopContext::DesktopContext(std::unique_ptr<Records> records, QString databasePath, QString by,
                               std::optional<Moment> given)
    : m_records(std::move(records))
    , m_drafts(m_records ? std::make_unique<DraftKeeper>(*m_records) : nullptr)
    , m_databasePath(std::move(databasePath))
    , m_by(m_records ? m_records->by() : std::move(by))
    , m_given(given)
    , m_questions(makeLane())
    , m_longWork(makeLane())
{
    if (m_records) // else of a window that shows why they cannot be opened
        m_records->setPinSource([this](const Person &person) { return pinOf(person); });
}

Lane DesktopContext::makeLane()
{
    // The window does not stand still while a lane waits for another program.
    const auto open = [this]() -> Result<std::unique_ptr<Records>> {
        LOOPWRIGHT_ASSIGN(auto records, another());
        records->database().setPatience(Database::longPatienceMs);
        return records;
    };
    return Lane(open, [this](Records &records) { records.actAs(by()); });
}

QString DesktopContext::by() const
{
    const QMutexLocker lock(&m_whoMutex);
    return m_by;
}

void DesktopContext::actAs(const QString &key)
{
    {
        const QMutexLocker lock(&m_whoMutex);
        m_by = key;
    }
    m_records->actAs(key);
}

std::optional<QString> DesktopContext::pinOf(const Person &person)
{
    if (!m_askPin)
        return std::nullopt;
    if (m_window.thread() == QThread::currentThread())
        return m_askPin(person);
    std::optional<QString> pin;
    QMetaObject::invokeMethod(
        &m_window, [&] { pin = m_askPin(person); }, Qt::BlockingQueuedConnection);
    return pin;
}

Result<std::unique_ptr<DesktopContext>>
DesktopContext::open(const QString &databasePath, const QString &by, std::optional<Moment> given)
{
    LOOPWRIGHT_ASSIGN(auto records, openRecords(databasePath, by, given));
    LOOPWRIGHT_TRY(bringShippedLimits(*records));
    return std::make_unique<DesktopContext>(std::move(records), databasePath, by, given);
}

Result<std::unique_ptr<Records>> DesktopContext::another()
{
    auto records = openRecords(m_databasePath, by(), m_given);
    if (records)
        (*records)->setPinSource([this](const Person &person) { return pinOf(person); });
    if (records && m_clockRuns)
        (*records)->startClock(m_records->now());
    return records;
}

void DesktopContext::letClockRun()
{
    if (!m_given)
        return;
    m_clockRuns = true;
    m_records->startClock(*m_given);
}

} // namespace loopwright
