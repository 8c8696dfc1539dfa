#pragma once
// What the dialogs of vans have alike: they say what is about to happen, do it beside the window's
// thread, and say what happened, in a list that can be copied. While it is done they stay.

#include "app/desktop/DesktopContext.h"
#include "app/desktop/widgets/SignList.h"

#include <QDialog>

class QHBoxLayout;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

namespace loopwright {

class VanDialog : public QDialog
{
    Q_OBJECT
public:
    VanDialog(const QString &name, const QString &title, const QString &confirmText,
              DesktopContext &workplace, QWidget *window);

    /// Not while something is being done.
    void reject() override;

signals:
    void recordsChanged();

protected:
    void showEvent(QShowEvent *event) override;
    /// What the button of that name does.
    virtual void confirm() = 0;
    DesktopContext &workplace() const { return m_workplace; }
    Asker &asker() { return m_asker; }
    /// For what is asked, above the list. Gone when it is done.
    QVBoxLayout *asked() const { return m_asked; }
    /// Beside the button that confirms.
    void addButton(QPushButton *button);
    void tell(Status sign, const QString &sentence);
    void setItems(std::vector<SignItem> items) { m_list->setItems(std::move(items)); }
    void setReady(bool ready);
    void goToConfirm();
    /// While it is done nothing can be changed; it can be stopped.
    void setWorking(bool working);
    /// It is done: what came of it, to be read and copied.
    void finish(Status sign, const QString &sentence, std::vector<SignItem> items);

private:
    void copyAll() const;
    QLayout *makeButtons(const QString &confirmText);

    DesktopContext &m_workplace;
    Asker m_asker;
    QWidget *m_question;
    QVBoxLayout *m_asked;
    SignList *m_list;
    SignLine *m_told;
    QProgressBar *m_progress;
    QPushButton *m_confirm = nullptr;
    QPushButton *m_copy = nullptr;
    QPushButton *m_stop = nullptr;
    QPushButton *m_close = nullptr;
    QHBoxLayout *m_buttons = nullptr;
    bool m_working = false;
};

/// "3 orders: O-1001, O-1002, O-1003"; many are not all named.
QString ordersText(const QStringList &orders);

} // namespace loopwright
