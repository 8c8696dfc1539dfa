#pragma once
// What enters one step of the plan, or several that are entered together. It knows no rule: what is
// open, closed or done stands in the steps of the session.

#include "app/desktop/job/JobSession.h"
#include "app/desktop/widgets/SignLine.h"

#include <QWidget>

namespace loopwright {

class Form;

class StepEditor : public QWidget
{
    Q_OBJECT
public:
    explicit StepEditor(JobSession &desk, QWidget *parent = nullptr)
        : QWidget(parent)
        , m_desk(desk)
    {
    }

    /// Keys of the needs that it enters.
    virtual QStringList needs() const = 0;
    /// The steps were made anew; what is typed stays.
    virtual void showSteps() = 0;
    /// Where the need is entered next.
    virtual QWidget *entry(const QString &need) = 0;
    /// Whether the widget, which is one of it, belongs to the entry of the need.
    virtual bool enters(const QString &need, const QWidget *) const
    {
        return needs().contains(need);
    }
    /// The form in which a recorded fact can be corrected; null if it is none of this editor.
    virtual Form *formOf(const Fact &) const { return nullptr; }

signals:
    void recorded(const QString &need);

protected:
    JobSession &desk() const { return m_desk; }

private:
    JobSession &m_desk;
};

Status statusOf(StepState state);
/// "done", "failed", "open", "waits", "not needed".
QString stateName(StepState state);
/// How a step stands, with its sign: the word, since when, and the one sentence why; what is
/// expected where nothing was recorded yet.
std::pair<Status, QString> standingOf(const Step &step, const Moment &now);

} // namespace loopwright
