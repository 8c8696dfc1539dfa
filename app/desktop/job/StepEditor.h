#pragma once
// What enters one step of the plan, or several that are entered together. It knows no rule: what is
// open, closed or done stands in the steps of the session.

#include "app/desktop/job/JobSession.h"
#include "app/desktop/widgets/SignLine.h"

#include <QWidget>

namespace loopwright {

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
    /// What the panel says above it, which need not be read again at each field.
    void setSaidAbove(const QString &said) { m_saidAbove = said; }
    /// Where the need is entered next.
    virtual QWidget *entry(const QString &need) = 0;
    /// One question: several of them stand side by side.
    virtual bool isShort() const { return false; }
    /// Whether the widget, which is one of it, belongs to the entry of the need.
    virtual bool enters(const QString &need, const QWidget *) const
    {
        return needs().contains(need);
    }
    /// Whether a recorded fact can be corrected here.
    virtual bool corrects(const Fact &) const { return false; }
    /// Fills the entry with a recorded fact, whose place is taken by what is recorded next. Returns
    /// what takes the keyboard.
    virtual QWidget *refill(const Fact &) { return nullptr; }

signals:
    void recorded(const QString &need);

protected:
    JobSession &desk() const { return m_desk; }
    /// Whether a step waits for what the panel says that it waits for.
    bool isSaidAbove(const Step &step) const;

private:
    JobSession &m_desk;
    QString m_saidAbove;
};

Status statusOf(StepState state);
/// "done", "failed", "open", "waits", "not needed".
QString stateName(StepState state);
/// How a step stands, with its sign: the word, since when, and the one sentence why; what is
/// expected where nothing was recorded yet.
std::pair<Status, QString> standingOf(const Step &step, const Moment &now);

} // namespace loopwright
