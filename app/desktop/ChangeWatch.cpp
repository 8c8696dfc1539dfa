#include "app/desktop/ChangeWatch.h"

#include "app/desktop/DesktopContext.h"

namespace loopwright {

namespace {

constexpr int lookEveryMs = 400;

} // namespace

ChangeWatch::ChangeWatch(DesktopContext &workplace, QObject *parent)
    : QObject(parent)
    , m_workplace(workplace)
{
    m_timer.setInterval(lookEveryMs);
    connect(&m_timer, &QTimer::timeout, this, &ChangeWatch::look);
}

void ChangeWatch::start()
{
    m_version = m_workplace.records().database().dataVersion().value_or(m_version);
    m_timer.start();
}

void ChangeWatch::look()
{
    const auto version = m_workplace.records().database().dataVersion();
    if (!version || *version == m_version)
        return; // what cannot be read now is told where it is read
    m_version = *version;
    emit changed();
}

} // namespace loopwright
