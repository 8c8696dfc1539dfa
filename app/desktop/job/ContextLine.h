#pragma once
// Who makes the entries, and on which visit: set once at the head of the page and carried by every
// new entry. With which instrument is a step of its own.

#include "app/desktop/job/JobSession.h"

#include <QComboBox>

namespace loopwright {

class SignLine;

class ContextLine : public QWidget
{
    Q_OBJECT
public:
    explicit ContextLine(JobSession &desk, QWidget *parent = nullptr);

    /// Fills the list from the register and shows the session's context.
    void showOrder();
    QComboBox *installer() const { return m_installer; }

protected:
    bool eventFilter(QObject *object, QEvent *event) override;

private:
    void take();

    JobSession &m_desk;
    QComboBox *m_installer;
    SignLine *m_state;
};

} // namespace loopwright
