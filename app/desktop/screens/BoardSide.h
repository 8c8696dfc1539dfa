#pragma once
// What stands beside the table: the selected order with its job line, what comes next, why it is
// not accepted, and what happened last. Read beside the window's thread, so that walking down the
// table stays quick.

#include "app/actions/Orders.h"
#include "app/desktop/Lanes.h"

#include <QScrollArea>
#include <QTimer>

class QLabel;
class QPushButton;

namespace loopwright {

class DesktopContext;
class JobLineView;
class SignLine;
class SignList;

class BoardSide : public QScrollArea
{
    Q_OBJECT
public:
    explicit BoardSide(DesktopContext &workplace, QWidget *parent = nullptr);

    using QScrollArea::show;
    /// Empty: nothing is selected.
    void show(const QString &order);
    void refresh();

signals:
    void openOrder(const QString &order);
    void openCircuit(const QString &circuit);
    void editOrder(const QString &order);
    void openHandoff(const QString &order);
    void settleWished(const QString &order); ///< what stations say otherwise of it

private:
    QWidget *makeButtons();
    void read();
    void fill(const Result<OrderView> &shown);
    void fillHead(const OrderView &view);
    void fillReasons(const OrderView &view);
    void fillEvents(const OrderView &view);

    Asker m_reader;
    QTimer m_rest; ///< runs until the selection rests
    QString m_order, m_circuit;
    QWidget *m_content;
    QLabel *m_number, *m_customer, *m_where;
    QLabel *m_meeting; ///< when, whom to meet, and how to get in
    SignLine *m_outcome;
    SignLine *m_hazard;    ///< the open hazard of its pair or premises, before all else
    SignLine *m_referred;  ///< who was handed the job, and on whom it waits
    SignLine *m_plan;      ///< that it is on hold; the first day, if it was moved
    SignLine *m_desk;      ///< what the office did
    SignLine *m_out;       ///< which vans have it
    SignLine *m_conflicts; ///< that stations disagree about it
    JobLineView *m_line;
    QLabel *m_next;
    QLabel *m_reasonsHead;
    SignList *m_reasons;
    QLabel *m_events;
    QPushButton *m_handoff;
    QPushButton *m_settle = nullptr;
};

} // namespace loopwright
