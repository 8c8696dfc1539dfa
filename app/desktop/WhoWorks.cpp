#include "app/desktop/WhoWorks.h"

#include "app/actions/Acting.h"
#include "app/actions/Register.h"
#include "app/desktop/widgets/PageElements.h"

#include <QInputDialog>
#include <QMenu>

namespace loopwright {

namespace {

QString roleName(Role role)
{
    switch (role) {
    case Role::Installer:
        return WhoWorks::tr("installer");
    case Role::Dispatcher:
        return WhoWorks::tr("dispatcher");
    case Role::Supervisor:
        break;
    }
    return WhoWorks::tr("supervisor");
}

} // namespace

WhoWorks::WhoWorks(DesktopContext &workplace, QWidget *parent)
    : QToolButton(parent)
    , m_workplace(workplace)
{
    setObjectName(QStringLiteral("who"));
    setAutoRaise(true);
    setPopupMode(QToolButton::InstantPopup);
    setFocusPolicy(Qt::TabFocus);
    setToolTip(tr("Who works; goes into the history"));
    auto *menu = new QMenu(this);
    menu->setObjectName(QStringLiteral("who.menu"));
    connect(menu, &QMenu::aboutToShow, this, &WhoWorks::showPeople);
    setMenu(menu);
    refresh();
}

void WhoWorks::refresh()
{
    const auto known = people(m_workplace.records());
    const QString name = nameOf(known.value_or(QList<Person>()), m_workplace.records().by());
    setText(tr("%1 works").arg(name));
    setAccessibleName(tr("Who works: %1").arg(name));
}

void WhoWorks::showPeople()
{
    menu()->clear();
    const auto known = people(m_workplace.records());
    const bool asItself = actsAsItself(m_workplace.records());
    for (const Person &person : known.value_or(QList<Person>())) {
        if (asItself && person.key != m_workplace.records().login())
            continue;
        QAction *action =
            menu()->addAction(tr("%1, %2").arg(nameOf(person), roleName(person.role)));
        action->setObjectName("who." + person.key);
        action->setCheckable(true);
        action->setChecked(person.key == m_workplace.records().by());
        connect(action, &QAction::triggered, this, [this, person] { choose(person); });
    }
    if (menu()->isEmpty()) {
        QAction *none = menu()->addAction(
            tr("Nobody is registered; import the people first (Records, Import a file)"));
        none->setEnabled(false);
    }
}

void WhoWorks::choose(const Person &person)
{
    m_workplace.actAs(person.key);
    refresh();
    emit changed(nameOf(person));
}

std::optional<QString> askForPin(const Person &person, QWidget *parent)
{
    QInputDialog dialog(parent);
    dialog.setObjectName(QStringLiteral("pin"));
    dialog.setWindowTitle(WhoWorks::tr("PIN"));
    dialog.setLabelText(WhoWorks::tr("This needs the PIN of %1:").arg(person.name));
    keepPlain(dialog);
    dialog.setTextEchoMode(QLineEdit::Password);
    if (dialog.exec() != QDialog::Accepted)
        return std::nullopt;
    return dialog.textValue();
}

} // namespace loopwright
