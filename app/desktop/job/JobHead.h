#pragma once
// The head of the job page, which never scrolls away: the order, the job line, what is next with
// the one key that goes there, and the context of the entries.

#include "app/desktop/job/JobSession.h"
#include "app/desktop/widgets/SignLine.h"

#include <QFrame>
#include <QLabel>
#include <QPushButton>

namespace loopwright {

class ContextLine;
class JobLineView;

class JobHead : public QFrame
{
    Q_OBJECT
public:
    explicit JobHead(JobSession &desk, QWidget *parent = nullptr);

    void showOrder();
    /// Says instead of the next step that the pair must not be touched; empty: it may.
    void setStopped(const QString &why);
    /// What was done, or could not be done, last.
    void say(Status sign, const QString &sentence);
    QPushButton *next() const { return m_next; }
    QPushButton *circuit() const { return m_circuit; }
    ContextLine *context() const { return m_context; }

signals:
    void nextWished();
    void stationWished(loopwright::Station station);
    void circuitWished(const QString &circuit);

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    QString sentence() const;

    JobSession &m_desk;
    QLabel *m_order;
    QLabel *m_where;
    QLabel *m_alsoHere;
    SignLine *m_outcome;
    JobLineView *m_line;
    QLabel *m_sentence;
    QPushButton *m_circuit;
    QPushButton *m_next;
    SignLine *m_said;
    ContextLine *m_context;
};

} // namespace loopwright
