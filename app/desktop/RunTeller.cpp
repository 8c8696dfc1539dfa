#include "app/desktop/RunTeller.h"

#include "app/desktop/RunNotices.h"
#include "app/desktop/Sidebar.h"
#include "app/desktop/job/RunWatch.h"
#include "core/errortest/Bounds.h"

namespace loopwright {

RunTeller::RunTeller(DesktopContext &workplace, Sidebar &rail, QObject *parent)
    : QObject(parent)
    , m_workplace(workplace)
    , m_rail(rail)
    , m_runs(new RunWatch(workplace, this))
    , m_notices(new RunNotices)
{
    connect(m_runs, &RunWatch::looked, this, &RunTeller::tell);
    connect(m_runs, &RunWatch::over, this, &RunTeller::over);
    connect(&rail, &Sidebar::runChosen, this, &RunTeller::openWished);
    connect(m_notices, &RunNotices::openWished, this, &RunTeller::openWished);
    connect(m_notices, &RunNotices::dismissed, this, &RunTeller::dismiss);
    m_counting.setInterval(1000);
    connect(&m_counting, &QTimer::timeout, this, &RunTeller::tell);
    tell();
}

void RunTeller::setDismissed(const QJsonObject &dismissed)
{
    m_dismissed = dismissed;
    tell();
}

void RunTeller::look()
{
    m_runs->look();
}

void RunTeller::tell()
{
    const Moment now = m_workplace.records().now();
    QMap<QString, QString> left;
    for (auto it = m_runs->running().begin(); it != m_runs->running().end(); ++it)
        left.insert(it.key(), durationText(it->remaining(now)));
    m_rail.showRuns(left);
    QStringList told;
    for (auto it = m_runs->ended().begin(); it != m_runs->ended().end(); ++it)
        if (m_dismissed.value(it.key()).toString() != it->started().text())
            told << it.key();
    m_notices->show(told);
    if (left.isEmpty())
        m_counting.stop();
    else if (!m_counting.isActive())
        m_counting.start();
}

void RunTeller::dismiss(const QString &order)
{
    QJsonObject dismissed; // of runs that are recorded since nothing is remembered
    for (auto it = m_runs->ended().begin(); it != m_runs->ended().end(); ++it)
        if (it.key() == order || m_dismissed.contains(it.key()))
            dismissed.insert(it.key(), it->started().text());
    m_dismissed = dismissed;
    tell();
    emit dismissedChanged();
}

/// One that is over before one that goes on.
QString RunTeller::toOpen() const
{
    if (!m_runs->ended().isEmpty())
        return m_runs->ended().firstKey();
    return m_runs->running().isEmpty() ? QString() : m_runs->running().firstKey();
}

} // namespace loopwright
