#pragma once
// The keys of the program by where they hold, as the actions have them; and below, those that no
// action knows.

#include <QList>

class QMainWindow;
class QWidget;

namespace loopwright {

/// `screens` in the order of the window.
void showKeys(QMainWindow *window, const QList<QWidget *> &screens);

} // namespace loopwright
