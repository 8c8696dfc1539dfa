#pragma once
// Watches the runs that go on in any order of the records, whether their page is open or not: how
// much of each is left, and which are over and not recorded yet. It says in the records every few
// seconds that it looks on, so that the time after a kill is known as not watched.

#include "app/desktop/DesktopContext.h"
#include "core/errortest/RunLog.h"

#include <QMap>
#include <QTimer>

namespace loopwright {

class RunWatch : public QObject
{
    Q_OBJECT
public:
    explicit RunWatch(DesktopContext &workplace, QObject *parent = nullptr);

    /// Looks at the runs now; otherwise it does so every few seconds, and when one should end.
    void look();
    /// Those that go on, by order.
    const QMap<QString, RunLog> &running() const { return m_running; }
    /// Those that lasted as long as planned and are not recorded yet, by order.
    const QMap<QString, RunLog> &ended() const { return m_ended; }

signals:
    /// A run that was seen going on has lasted as long as it was planned.
    void over(const QString &order);
    void looked();

private:
    void keepWatched(const QString &order, const RunLog &log, const QJsonObject &kept);

    DesktopContext &m_workplace;
    QMap<QString, RunLog> m_running;
    QMap<QString, RunLog> m_ended;
    /// Start of the run, and the second of it since which this program looks on; by order.
    QMap<QString, std::pair<Moment, qint64>> m_since;
    QTimer m_timer;
};

} // namespace loopwright
