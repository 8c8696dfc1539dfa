#pragma once
// Watches the runs that go on in any order of the records, whether their page is open or not, and
// sounds at the end of each: while one line is tested, another job can be written.

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
    /// Orders whose run goes on.
    QStringList running() const { return m_running.keys(); }

signals:
    /// A run that was seen going on has lasted as long as it was planned.
    void over(const QString &order);

private:
    DesktopContext &m_workplace;
    QMap<QString, RunLog> m_running; ///< by order
    QTimer m_timer;
};

} // namespace loopwright
