#include "app/desktop/ActionCatalogue.h"

#include "app/desktop/Keys.h"

#include <QAbstractButton>
#include <QAction>
#include <QCoreApplication>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QToolButton>

#include <algorithm>

namespace loopwright {

namespace {

QString keysText(const QAction &action)
{
    return QKeySequence::listToString(action.shortcuts(), QKeySequence::NativeText)
        .replace(QStringLiteral("; "), QStringLiteral(",  "));
}

class Collector
{
public:
    std::vector<CataloguedAction> found;

    void addMenu(QMenu *menu, const QString &where)
    {
        emit menu->aboutToShow(); // some are filled then
        for (QAction *action : menu->actions()) {
            if (QMenu *further = action->menu())
                addMenu(further, where.isEmpty() ? actionName(action->text())
                                                 : where + " ▸ " + actionName(action->text()));
            else
                add(action, where);
        }
    }

    void add(QAction *action, const QString &where)
    {
        const QString name = actionName(action->text());
        const QString reason = action->isEnabled() ? QString() : whyOff(action);
        if (action->isSeparator() || name.isEmpty() || !action->isVisible() ||
            (!action->isEnabled() && reason.isEmpty()) || has(action, name, where))
            return;
        found.push_back({action, name, where, keysText(*action), reason, action->isEnabled()});
    }

    /// One that an action stands behind is there already. A filter or a box to tick stands in a
    /// group, and what it is called there may be the name of something else.
    void add(QAbstractButton *button, const QString &screen)
    {
        const QString name = nameOf(*button);
        const bool isPlain =
            qobject_cast<QPushButton *>(button) || qobject_cast<QToolButton *>(button);
        const QString where = isPlain ? screen : screen + groupOf(*button);
        const bool known = std::ranges::any_of(found, [&](const CataloguedAction &each) {
            return each.name == name && (isPlain || each.where == where);
        });
        if (!name.isEmpty() && !known && button->isEnabled())
            found.push_back({button, name, where, button->shortcut().toString(), {}, true});
    }

private:
    /// A sign alone ("?") says what it is to a screen reader.
    static QString nameOf(const QAbstractButton &button)
    {
        const QString name = actionName(button.text());
        return name.isEmpty() || std::ranges::any_of(name, &isLetter)
                   ? name
                   : actionName(button.accessibleName());
    }
    static bool isLetter(QChar each) { return each.isLetter(); }
    /// " ▸ Stage"; empty where it is alone there.
    static QString groupOf(const QAbstractButton &button)
    {
        const QWidget *around = button.parentWidget();
        const QString group = around ? around->accessibleName() : QString();
        return group.isEmpty() || group == button.text() ? QString() : " ▸ " + group;
    }
    bool has(const QAction *action, const QString &name, const QString &where) const
    {
        return std::ranges::any_of(found, [&](const CataloguedAction &each) {
            return each.thing == action || (each.name == name && each.where == where);
        });
    }
};

QMenu *menuOf(const QWidget *button)
{
    if (const auto *tool = qobject_cast<const QToolButton *>(button))
        return tool->menu();
    if (const auto *push = qobject_cast<const QPushButton *>(button))
        return push->menu();
    return nullptr;
}

void addScreen(Collector &collector, const QWidget *screen, const QWidget *focus)
{
    const QString where = screen->accessibleName();
    QList<const QWidget *> widgets{screen};
    for (const QWidget *each : screen->findChildren<QWidget *>())
        if (each->isVisible())
            widgets << each;
    for (const QWidget *each : std::as_const(widgets))
        for (QAction *action : each->actions())
            if (!qobject_cast<const QMenu *>(each)) {
                const QString place = whereItHolds(action);
                if (place.isEmpty() || each == focus || each->isAncestorOf(focus))
                    collector.add(action, place.isEmpty() ? where : place);
            }
    for (const QWidget *each : std::as_const(widgets))
        if (auto *button =
                const_cast<QAbstractButton *>(qobject_cast<const QAbstractButton *>(each));
            button && (!menuOf(each) || qobject_cast<const QPushButton *>(each)))
            collector.add(button, where); // what is in the menu of a sign is added by itself
}

/// Into the group of that name; a row that is there is not added again.
void addRow(std::vector<KeyGroup> &groups, const QString &where, const QAction &action)
{
    const KeyRow row{keysText(action), actionName(action.text())};
    if (row.keys.isEmpty() || row.does.isEmpty())
        return;
    KeyGroup &group = groupOf(groups, where);
    const bool known = std::ranges::any_of(group.rows, [&row](const KeyRow &each) {
        return each.keys == row.keys && each.does == row.does;
    });
    if (!known)
        group.rows.push_back(row);
}

} // namespace

void CataloguedAction::run() const
{
    if (auto *action = qobject_cast<QAction *>(thing))
        action->trigger();
    else if (auto *button = qobject_cast<QAbstractButton *>(thing))
        button->click();
}

std::vector<CataloguedAction> actionsOf(const QMainWindow &window, const QWidget *screen)
{
    Collector collector;
    for (const QAction *action : window.menuBar()->actions())
        if (action->menu())
            collector.addMenu(action->menu(), actionName(action->text()));
    if (screen)
        addScreen(collector, screen, window.focusWidget());
    for (const QWidget *each : window.findChildren<QWidget *>())
        if (QMenu *menu = menuOf(each); menu && each->isVisible())
            collector.addMenu(menu, each->accessibleName());
    return std::move(collector.found);
}

KeyGroup &groupOf(std::vector<KeyGroup> &groups, const QString &where)
{
    const auto group = std::ranges::find(groups, where, &KeyGroup::where);
    return group == groups.end() ? groups.emplace_back(KeyGroup{where, {}}) : *group;
}

std::vector<KeyGroup> keysOf(const QMainWindow &window, const QList<QWidget *> &screens)
{
    const QString everywhere = QCoreApplication::translate("Keys", "Everywhere");
    std::vector<KeyGroup> groups, shared;
    for (const QAction *action : window.menuBar()->actions())
        for (const QAction *each : action->menu() ? action->menu()->actions() : QList<QAction *>())
            addRow(groups, everywhere, *each);
    for (const QWidget *screen : screens)
        for (const QAction *action : screen->findChildren<QAction *>()) {
            const QString place = whereItHolds(action);
            if (place.isEmpty())
                addRow(groups, screen->accessibleName(), *action);
            else
                addRow(shared, place, *action);
        }
    groups.insert(groups.end(), shared.begin(), shared.end());
    return groups;
}

} // namespace loopwright
