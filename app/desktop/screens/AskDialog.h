#pragma once
// A small dialog around a form: what is asked of the orders that are selected. It stays as it is
// until what was asked is done; a refusal is told in it. Esc lets go.

#include "app/desktop/form/Form.h"

#include <QDialog>

class QHBoxLayout;

namespace loopwright {

struct Deed;
class WorkBar;

class AskDialog : public QDialog
{
    Q_OBJECT
public:
    /// `about` says which orders it is about; `now` is the clock of the form.
    AskDialog(const QString &name, const Deed &deed, const QString &about,
              std::function<Moment()> now, QWidget *parent);

    Form *form() const { return m_form; }
    /// A further button beside the one of the form.
    void addButton(QPushButton *button);
    /// How far it is, below all else.
    void addWorkBar(WorkBar *bar);
    /// While it is done nothing can be changed, and the dialog stays.
    void setBusy(bool busy);
    void reject() override;
    void refuse(const QString &sentence);

signals:
    void confirmed(const QJsonObject &values);

private:
    void grow();

    Form *m_form;
    QHBoxLayout *m_buttons;
    bool m_busy = false;
};

} // namespace loopwright
