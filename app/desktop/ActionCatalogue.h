#pragma once
// What can be done in the window now: the actions of its menus, the actions, buttons and filters of
// the screen that is shown, what the menus of its buttons hold. Nothing is listed by hand.

#include <QPointer>
#include <QString>

#include <vector>

class QMainWindow;
class QWidget;

namespace loopwright {

struct CataloguedAction
{
    QPointer<QObject> thing; ///< a QAction or a QAbstractButton
    QString name;
    QString where; ///< its menu, or its screen
    QString key;   ///< empty: none
    QString whyOff;
    bool on = true;

    void run() const;
};

/// One that is off has a reason; one that is off without a reason is not there. Of what each form
/// and each table has, that of the one that has the keyboard.
std::vector<CataloguedAction> actionsOf(const QMainWindow &window, const QWidget *screen);

struct KeyRow
{
    QString keys;
    QString does;
};
struct KeyGroup
{
    QString where;
    std::vector<KeyRow> rows;
};

/// The one of that name; a new one at the end if there is none yet.
KeyGroup &groupOf(std::vector<KeyGroup> &groups, const QString &where);
/// The keys of all actions of the window by where they hold: everywhere, then `screens` in their
/// order, then places that several of them have. What is not shown now has its keys too.
std::vector<KeyGroup> keysOf(const QMainWindow &window, const QList<QWidget *> &screens);

} // namespace loopwright
