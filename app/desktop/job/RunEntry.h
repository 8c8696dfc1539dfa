#pragma once
// The run of the error test: start, clock, and the counts that the test set shows at the end. The
// run itself is kept as a draft from its first second, so that a crash costs nothing.

#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/RunClock.h"

namespace loopwright {

class RunEntry : public QWidget
{
    Q_OBJECT
public:
    /// `panel`: key of the panel; the drafts are runPart and `panel`.counts.
    RunEntry(JobSession &desk, const QString &panel, QWidget *parent = nullptr);

    /// Step and head of the run that is made next, and how long it shall last.
    void setRun(const Step &step, const QJsonObject &head, qint64 plannedSeconds);
    bool isStarted() const { return m_clock->log().isStarted(); }
    /// Where the run stands: the button that starts it, the clock, or the counts.
    QWidget *entry() const;
    void takeFocus() { entry()->setFocus(Qt::TabFocusReason); }
    /// Reads errors per second from a test set's export; false, with the reason told, where the
    /// file is no such thing.
    bool takeFile(const QString &path);
    /// Fills the counts with a recorded run, whose place is taken by what is recorded next; while a
    /// run of its own goes on or waits to be recorded it tells so. Returns what takes the keyboard.
    QWidget *refill(const Fact &fact);

signals:
    void recorded();

private:
    void start();
    void keepLog();
    void showState();
    void fillCounts();
    void lookForGaps();
    void chooseFile();
    void enterTotals();
    bool confirm();
    FactObjects facts(const QJsonObject &values) const;
    const Fact *corrected() const;
    QJsonObject correction(const QJsonObject &values) const;
    bool sameAsSeen(const QJsonObject &values) const;
    std::vector<FieldSpec> asks() const;

    JobSession &m_desk;
    Need m_need = {};   ///< of the run that is made next
    QJsonObject m_head; ///< of the fact: everything but times and counts
    qint64 m_planned = 0;
    SignLine *m_state;
    QPushButton *m_start;
    QPushButton *m_totals;
    QPushButton *m_file;
    bool m_entering = false; ///< a run that was made without this clock
    RunClock *m_clock;
    Form *m_counts;
};

} // namespace loopwright
