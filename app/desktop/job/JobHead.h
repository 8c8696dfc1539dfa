#pragma once
// The head of the job page, which never scrolls away: the order with its remarks and whom to meet,
// the job line, what is next with the one key that goes there, and who makes the entries. While a
// dangerous voltage is typed or open, "Stop" stands in the place of what is next.

#include "app/desktop/job/JobSession.h"
#include "app/desktop/widgets/SignLine.h"

#include <QFrame>
#include <QLabel>
#include <QPushButton>

namespace loopwright {

class ContextLine;
class HeadRows;
class JobLineView;
class OneLine;

class JobHead : public QFrame
{
    Q_OBJECT
public:
    explicit JobHead(JobSession &desk, QWidget *parent = nullptr);

    void showOrder();
    /// The sentence anew: of the plan, or that nobody touches the pair.
    void showNext();
    /// What was done, or could not be done, last.
    void say(Status sign, const QString &sentence);
    /// What was said last goes; a warning that goes on comes again, and is not told anew.
    void clear();
    QPushButton *next() const { return m_next; }
    QPushButton *circuit() const { return m_circuit; }
    ContextLine *context() const { return m_context; }

signals:
    void nextWished();
    void stationWished(loopwright::Station station);
    void circuitWished(const QString &circuit);
    void settleWished(const QString &order); ///< what stations say otherwise of it

protected:
    bool event(QEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void layOutRows();
    void showStations();
    QString sentence() const;
    QString whereText() const;
    QString remarksText(bool low) const;
    void showLines();
    void showRows();

    JobSession &m_desk;
    OneLine *m_order;
    OneLine *m_where;
    OneLine *m_remarks;
    OneLine *m_alsoHere;
    SignLine *m_stations; ///< that a van has it, or stations disagree about it
    SignLine *m_outcome;
    HeadRows *m_rows;
    JobLineView *m_line;
    QLabel *m_sentence;
    QPushButton *m_settle;
    QPushButton *m_circuit;
    QPushButton *m_next;
    SignLine *m_said;
    ContextLine *m_context;
    bool m_warned = false; ///< of a hazard at the premises
    bool m_stopped = false;
};

} // namespace loopwright
