#include "app/desktop/job/ContextLine.h"

#include "app/actions/Register.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/FactText.h"
#include "app/desktop/widgets/FlowLayout.h"
#include "app/desktop/widgets/SignLine.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>

#include <algorithm>

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
    , m_installer(makeBox("context.installer", tr("Installer"), 11))
    , m_instrument(makeBox("context.instrument", tr("Instrument"), 9))
    , m_state(new SignLine)
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    for (QComboBox *box : {m_installer, m_instrument}) {
        auto *label = new QLabel(box->accessibleName());
        label->setBuddy(box);
        layout->addWidget(label);
        layout->addWidget(box, 2);
    }
    layout->addWidget(m_state, 3, Qt::AlignVCenter);
}

QComboBox *ContextLine::makeBox(const QString &name, const QString &accessibleName, int leastEm)
{
    auto *box = new QComboBox;
    box->setEditable(true);
    box->setInsertPolicy(QComboBox::NoInsert);
    box->setObjectName(name);
    box->setAccessibleName(accessibleName);
    box->lineEdit()->setObjectName(name + ".edit");
    box->installEventFilter(this);
    box->lineEdit()->installEventFilter(this);
    whenThemed(box, [box, leastEm] {
        box->setMinimumHeight(em(2.2));
        box->setMinimumWidth(em(leastEm));
    });
    connect(box, &QComboBox::activated, this, [this] { take(); });
    return box;
}

void ContextLine::showOrder()
{
    const auto people = loopwright::people(m_desk.records());
    const auto instruments = loopwright::instruments(m_desk.records());
    m_installer->clear();
    m_instrument->clear();
    if (people)
        for (const Person &person : *people)
            m_installer->addItem(person.name.isEmpty()
                                     ? person.key
                                     : QString("%1 (%2)").arg(person.name, person.key),
                                 person.key);
    m_instruments = instruments ? *instruments : QList<Instrument>();
    for (const Instrument &each : std::as_const(m_instruments))
        m_instrument->addItem(QString("%1 (%2)").arg(each.key, each.kind), each.key);
    showKey(*m_installer, m_desk.installer());
    showKey(*m_instrument, m_desk.instrument());
    const QString warning = instrumentWarning();
    const auto visit = m_desk.visit();
    if (!warning.isEmpty())
        m_state->show(Status::Doubtful, warning);
    else
        m_state->show(visit ? Status::Done : Status::Open,
                      visit ? tr("on site since %1").arg(visit->arrived.localClock())
                            : tr("not arrived yet"));
}

QString ContextLine::instrumentWarning() const
{
    const QString key = m_desk.instrument();
    if (key.isEmpty())
        return {};
    const auto found = std::ranges::find(m_instruments, key, &Instrument::key);
    if (found == m_instruments.end())
        return tr("%1 is not registered").arg(key);
    if (!found->calibratedOn(m_desk.now().localDate()))
        return tr("%1 is not within its calibration today").arg(key);
    return {};
}

void ContextLine::take()
{
    m_desk.setInstaller(keyOf(*m_installer));
    m_desk.setInstrument(keyOf(*m_instrument));
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
