#include "app/desktop/screens/AskDialog.h"

#include "app/desktop/Theme.h"
#include "app/desktop/screens/RowDeed.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/WorkBar.h"

#include <QHBoxLayout>
#include <QTimer>

namespace loopwright {

AskDialog::AskDialog(const QString &name, const Deed &deed, const QString &about,
                     std::function<Moment()> now, QWidget *parent)
    : QDialog(parent)
{
    setObjectName(name);
    setWindowTitle(deed.title);
    setAttribute(Qt::WA_DeleteOnClose);
    FormUse use;
    use.now = std::move(now);
    use.check = deed.check;
    use.confirm = [this] {
        if (m_form->check())
            emit confirmed(m_form->values());
        return false; // the dialog goes when it is done
    };
    m_form = new Form(name, deed.confirm, {{{}, deed.fields}}, use);
    m_form->propose(deed.proposed);
    QPushButton *cancel = makeButton(deed.letGo.isEmpty() ? tr("Cancel   Esc") : deed.letGo,
                                     name + ".cancel", [this] { reject(); });
    cancel->setAutoDefault(false);
    auto *row = new QHBoxLayout;
    m_buttons = row;
    row->addWidget(m_form->button());
    row->addStretch(1);
    row->addWidget(cancel);
    auto *column = new QVBoxLayout(this);
    QLabel *orders = makeMuted(about);
    column->addWidget(orders);
    column->addWidget(m_form);
    column->addLayout(row);
    whenThemed(this, [orders, column, row, cancel] {
        column->setContentsMargins(em(1.2), em(1), em(1.2), em(1));
        column->setSpacing(em(0.8));
        row->setSpacing(em(0.7));
        cancel->setMinimumHeight(em(2.5));
        orders->setMinimumWidth(em(34));
    });
    connect(m_form, &Form::edited, this, &AskDialog::grow, Qt::QueuedConnection);
    QTimer::singleShot(0, this, &AskDialog::grow); // once the fields know their heights
    m_form->fields().front()->goTo();              // also if it is proposed
}

void AskDialog::addButton(QPushButton *button)
{
    m_buttons->insertWidget(1, button);
}

void AskDialog::addWorkBar(WorkBar *bar)
{
    static_cast<QVBoxLayout *>(layout())->addWidget(bar);
}

void AskDialog::setBusy(bool busy)
{
    m_busy = busy;
    m_form->setEnabled(!busy);
    for (int i = 0; i < m_buttons->count(); ++i)
        if (QWidget *button = m_buttons->itemAt(i)->widget())
            button->setEnabled(!busy);
    QTimer::singleShot(0, this, &AskDialog::grow); // once the bar is there
}

void AskDialog::reject()
{
    if (!m_busy)
        QDialog::reject();
}

void AskDialog::refuse(const QString &sentence)
{
    setBusy(false);
    m_form->tell(Status::Failed, sentence);
    m_form->button()->setFocus();
    grow();
}

/// What is asked further, or told, has room.
void AskDialog::grow()
{
    layout()->activate();
    const int needed = layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(width())
                                                     : layout()->totalSizeHint().height();
    if (needed > height())
        resize(width(), needed);
}

} // namespace loopwright
