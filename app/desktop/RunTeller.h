#pragma once
// Tells of the runs on every page: what is left of each in the rail, the end of one by a notice
// below the page. What was dismissed is remembered with the place of the window.

#include "app/desktop/DesktopContext.h"

#include <QJsonObject>
#include <QTimer>

namespace loopwright {

class RunNotices;
class RunWatch;
class Sidebar;

class RunTeller : public QObject
{
    Q_OBJECT
public:
    /// `rail` outlives it.
    RunTeller(DesktopContext &workplace, Sidebar &rail, QObject *parent);

    /// To be laid out by the window.
    RunNotices *notices() const { return m_notices; }
    /// Start of the run whose end need not be told any more, by order.
    QJsonObject dismissed() const { return m_dismissed; }
    void setDismissed(const QJsonObject &dismissed);
    void dismiss(const QString &order);
    /// Order of a run that is over, else of one that goes on; empty if there is none.
    QString toOpen() const;
    /// A run was started, stopped or keyed to.
    void look();

signals:
    void openWished(const QString &order);
    void over(); ///< one that was seen going on
    void dismissedChanged();

private:
    void tell();

    DesktopContext &m_workplace;
    Sidebar &m_rail;
    RunWatch *m_runs;
    RunNotices *m_notices;
    QJsonObject m_dismissed;
    QTimer m_counting; ///< while a run goes on
};

} // namespace loopwright
