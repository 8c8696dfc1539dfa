#include "app/desktop/vans/VanDialog.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLocale>
#include <QProgressBar>
#include <QScrollArea>

namespace loopwright {

namespace {

constexpr qsizetype ordersNamed = 6;

} // namespace

VanDialog::VanDialog(const QString &name, const QString &title, const QString &confirmText,
                     DesktopContext &workplace, QWidget *window)
    : QDialog(window)
    , m_workplace(workplace)
    , m_asker(workplace.longWork())
    , m_question(new QWidget)
    , m_asked(new QVBoxLayout(m_question))
    , m_told(new SignLine)
{
    setObjectName(name);
    setWindowTitle(title);
    setAttribute(Qt::WA_DeleteOnClose);
    m_list = new SignList(name + ".list", tr("What it is about"));
    m_progress = makeProgress(name + ".progress", tr("Progress"), m_asker);
    m_progress->hide();
    m_told->setObjectName(name + ".told");
    m_told->setSelectable(true);
    m_asked->setContentsMargins(0, 0, 0, 0);
    auto *column = new QVBoxLayout(this);
    column->addWidget(m_question);
    column->addWidget(makeListArea(m_list), 1);
    column->addWidget(m_told);
    column->addWidget(m_progress);
    column->addLayout(makeButtons(confirmText));
    whenThemed(this, [this, column, window] {
        column->setContentsMargins(em(1.2), em(1), em(1.2), em(1));
        column->setSpacing(em(0.8));
        m_asked->setSpacing(em(0.6));
        m_buttons->setSpacing(em(0.7));
        m_confirm->setMinimumHeight(em(2.3));
        resize(sizeWithin(*window->window(), 50, 36));
    });
}

QLayout *VanDialog::makeButtons(const QString &confirmText)
{
    const QString name = objectName();
    m_confirm = makeButton(confirmText, name + ".confirm", [this] { confirm(); });
    m_confirm->setDefault(true);
    m_copy = makeButton(tr("Copy the list"), name + ".copy", [this] { copyAll(); });
    m_copy->setAutoDefault(false);
    m_copy->hide();
    m_stop = makeButton(tr("Stop"), name + ".stop", [this] { m_asker.stop(); });
    m_stop->setAutoDefault(false);
    m_stop->hide();
    m_close = makeButton(tr("Cancel   Esc"), name + ".close", [this] { reject(); });
    m_close->setAutoDefault(false);
    m_buttons = new QHBoxLayout;
    m_buttons->addWidget(m_confirm);
    m_buttons->addStretch(1);
    m_buttons->addWidget(m_stop);
    m_buttons->addWidget(m_copy);
    m_buttons->addWidget(m_close);
    return m_buttons;
}

void VanDialog::addButton(QPushButton *button)
{
    button->setAutoDefault(false);
    m_buttons->insertWidget(1, button);
}

/// Tab goes from what is asked to the list and the buttons, which were made before.
void VanDialog::showEvent(QShowEvent *event)
{
    QWidget *last = previousInFocusChain();
    QWidgetList behind{m_list};
    for (int i = 0; i < m_buttons->count(); ++i)
        if (QWidget *button = m_buttons->itemAt(i)->widget())
            behind << button;
    for (QWidget *each : std::as_const(behind))
        if (each != last) {
            setTabOrder(last, each);
            last = each;
        }
    m_question->setVisible(m_asked->count() > 0 && m_confirm->isVisibleTo(this));
    QDialog::showEvent(event);
}

void VanDialog::reject()
{
    if (!m_working)
        QDialog::reject();
}

void VanDialog::tell(Status sign, const QString &sentence)
{
    m_told->tellIfNew(sign, sentence);
}

void VanDialog::setReady(bool ready)
{
    m_confirm->setEnabled(ready);
}

void VanDialog::goToConfirm()
{
    m_confirm->setFocus();
}

void VanDialog::setWorking(bool working)
{
    m_working = working;
    m_question->setEnabled(!working);
    m_confirm->setEnabled(!working);
    m_close->setEnabled(!working);
    m_stop->setVisible(working);
    m_progress->setRange(0, 0);
    m_progress->setVisible(working);
}

void VanDialog::finish(Status sign, const QString &sentence, std::vector<SignItem> items)
{
    setWorking(false);
    m_question->hide();
    m_confirm->hide();
    m_copy->setVisible(!items.empty());
    setItems(std::move(items));
    tell(sign, sentence);
    m_close->setText(tr("Close   Esc"));
    m_close->setDefault(true);
    m_close->setFocus();
}

void VanDialog::copyAll() const
{
    QStringList lines{m_told->text()};
    for (const SignItem &item : m_list->items())
        lines << QStringList{item.title, item.text}.join(QStringLiteral(": "));
    QGuiApplication::clipboard()->setText(lines.join(u'\n'));
}

QString ordersText(const QStringList &orders)
{
    if (orders.size() == 1)
        return VanDialog::tr("Order %1").arg(orders.front());
    QString named = orders.mid(0, ordersNamed).join(QStringLiteral(", "));
    if (orders.size() > ordersNamed)
        named = VanDialog::tr("%1 and %2 more").arg(named).arg(orders.size() - ordersNamed);
    return VanDialog::tr("%1 orders: %2").arg(QLocale().toString(orders.size()), named);
}

} // namespace loopwright
