#pragma once
// Opens a trouble of a circuit in service: a button, and behind it the form.

#include "app/desktop/DesktopContext.h"

#include <QWidget>

class QPushButton;

namespace loopwright {

class Form;

class TroubleEntry : public QWidget
{
    Q_OBJECT
public:
    explicit TroubleEntry(DesktopContext &workplace, QWidget *parent = nullptr);

    /// None for a circuit that is not in service: nothing is offered then.
    void setCircuit(const QString &circuit);
    /// What was typed stays. False if the form is not open.
    bool fold();

signals:
    void opened(const QString &sentence); ///< a trouble was

private:
    void unfold();
    bool confirm();

    DesktopContext &m_workplace;
    QString m_circuit;
    QPushButton *m_begin;
    Form *m_form;
};

} // namespace loopwright
