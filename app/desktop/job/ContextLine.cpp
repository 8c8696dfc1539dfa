#include "app/desktop/job/ContextLine.h"

#include "app/actions/Register.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/SignLine.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>

namespace loopwright {

namespace {

/// The key of a list's entry that is chosen, or what was typed.
QString keyOf(const QComboBox &box)
{
    const QString text = box.currentText().trimmed();
    for (int row = 0; row < box.count(); ++row)
        if (text == box.itemText(row) || text == box.itemData(row).toString())
            return box.itemData(row).toString();
    return text;
}

void showKey(QComboBox &box, const QString &key)
{
    const int row = box.findData(key);
    box.setCurrentIndex(row);
    if (row < 0)
        box.setEditText(key);
    box.lineEdit()->setCursorPosition(0); // a name that does not fit shows its beginning
}

} // namespace

ContextLine::ContextLine(JobSession &desk, QWidget *parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_installer(new QComboBox)
    , m_state(new SignLine)
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    m_installer->setEditable(true);
    m_installer->setInsertPolicy(QComboBox::NoInsert);
    m_installer->setObjectName("context.installer");
    m_installer->setAccessibleName(tr("Installer"));
    m_installer->setToolTip(tr("Who makes the entries"));
    m_installer->lineEdit()->setPlaceholderText(tr("Installer"));
    m_installer->lineEdit()->setObjectName("context.installer.edit");
    m_installer->lineEdit()->setAccessibleName(tr("Installer"));
    m_installer->installEventFilter(this);
    m_installer->lineEdit()->installEventFilter(this);
    m_installer->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    whenThemed(m_installer, [this] { m_installer->setFixedWidth(em(13.5)); });
    connect(m_installer, &QComboBox::activated, this, [this] { take(); });
    m_state->setWrapping(false);
    layout->addWidget(m_installer);
    layout->addWidget(m_state, 0, Qt::AlignVCenter);
}

void ContextLine::showOrder()
{
    const auto people = loopwright::people(m_desk.records());
    m_installer->clear();
    if (people)
        for (const Person &person : *people)
            m_installer->addItem(person.name.isEmpty()
                                     ? person.key
                                     : QString("%1 (%2)").arg(person.name, person.key),
                                 person.key);
    showKey(*m_installer, m_desk.installer());
    const auto visit = m_desk.visit();
    m_state->show(visit ? Status::Done : Status::Open,
                  visit ? tr("on site since %1").arg(visit->arrived.localClock())
                        : tr("not arrived yet"));
}

void ContextLine::take()
{
    m_desk.setInstaller(keyOf(*m_installer));
}

bool ContextLine::eventFilter(QObject *object, QEvent *event)
{
    if (event->type() == QEvent::FocusOut) {
        take();
    } else if (event->type() == QEvent::KeyPress) {
        const auto *key = static_cast<QKeyEvent *>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (enter && key->modifiers() == Qt::NoModifier) {
            take();
            focusNextPrevChild(true);
            return true;
        }
    }
    return QWidget::eventFilter(object, event);
}

} // namespace loopwright
