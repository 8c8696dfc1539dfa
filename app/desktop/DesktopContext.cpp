#include "app/desktop/DesktopContext.h"

#include "app/actions/LimitChanges.h"

namespace loopwright {

namespace {

Result<std::unique_ptr<Records>> openRecords(const QString &path, const QString &by,
                                             std::optional<Moment> given)
{
    auto records = Records::open(path);
    if (!records)
        return failure(records.error());
    if (!by.isEmpty())
        (*records)->actAs(by);
    (*records)->setNow(given);
    return records;
}

} // namespace

DesktopContext::DesktopContext(std::unique_ptr<Records> records, QString databasePath, QString by,
                               std::optional<Moment> given)
    : m_records(std::move(records))
    , m_databasePath(std::move(databasePath))
    , m_by(std::move(by))
    , m_given(given)
    , m_questions([this] { return another(); })
    , m_longWork([this] { return another(); })
{
}

Result<std::unique_ptr<DesktopContext>>
DesktopContext::open(const QString &databasePath, const QString &by, std::optional<Moment> given)
{
    LOOPWRIGHT_ASSIGN(auto records, openRecords(databasePath, by, given));
    LOOPWRIGHT_TRY(bringShippedLimits(*records));
    return std::make_unique<DesktopContext>(std::move(records), databasePath, by, given);
}

Result<std::unique_ptr<Records>> DesktopContext::another() const
{
    auto records = openRecords(m_databasePath, m_by, m_given);
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
