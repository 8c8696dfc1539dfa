#pragma once
// Notices within a second that somebody else changed the records: another program, or a lane of
// this one. It asks SQLite for a number, and reads nothing.

#include <QObject>
#include <QTimer>

namespace loopwright {

class DesktopContext;

class ChangeWatch : public QObject
{
    Q_OBJECT
public:
    explicit ChangeWatch(DesktopContext &workplace, QObject *parent = nullptr);

    /// What changed until now is known.
    void start();
    void stop() { m_timer.stop(); }

signals:
    void changed();

private:
    void look();

    DesktopContext &m_workplace;
    QTimer m_timer;
    qint64 m_version = -1;
};

} // namespace loopwright
