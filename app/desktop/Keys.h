#pragma once
// A key is the shortcut of an action, and the action says what it does: the list of all actions and
// the list of keys are made from the actions alone.

#include <QKeySequence>
#include <QList>

#include <functional>

class QAction;
class QWidget;

namespace loopwright {

struct KeySpec
{
    QString name; ///< object name of the action
    QString text; ///< what it does
    QList<QKeySequence> keys;
    QString where = {}; ///< where it holds; empty: on the screen that it is on
};

/// An action that holds while `place`, or something in it, has the keyboard.
QAction *addKey(QWidget *place, const KeySpec &spec, std::function<void()> run);

/// Why the action is off, told where it is looked for; one without a reason is left out there.
void setWhyOff(QAction *action, const QString &sentence);
QString whyOff(const QAction *action);
QString whereItHolds(const QAction *action);

/// What an action or a button says, without the marks of a menu and without a key written behind.
QString actionName(const QString &text);

} // namespace loopwright
