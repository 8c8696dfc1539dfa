#pragma once
// Tells below every page what was done last, with the key that takes it back: a notice, not a
// question. What is taken back leads to the step before it.

#include "app/desktop/DoneStep.h"
#include "app/desktop/Lanes.h"

#include <QFrame>

#include <vector>

class QAction;
class QPushButton;

namespace loopwright {

class DesktopContext;
class SignLine;

class UndoNotice : public QFrame
{
    Q_OBJECT
public:
    explicit UndoNotice(DesktopContext &workplace, QWidget *parent = nullptr);

    /// "Undo", Ctrl+Z; off if there is nothing to take back.
    QAction *action() const { return m_action; }
    void tell(const DoneStep &step);

    bool eventFilter(QObject *object, QEvent *event) override;

signals:
    void takenBack();

private:
    void undo();
    void showUndone(const DoneStep &step, const Result<void> &done);
    void showPossible(bool told);
    void dismiss();

    Asker m_asker;
    std::vector<DoneStep> m_steps; ///< oldest first
    QAction *m_action;
    SignLine *m_words;
    QPushButton *m_undo;
};

} // namespace loopwright
