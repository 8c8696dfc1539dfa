#pragma once
// What the program is, its version, where the records lie, and whose work is in it.

class QWidget;
class QString;

namespace loopwright {

void showAbout(QWidget *window, const QString &databasePath);

} // namespace loopwright
