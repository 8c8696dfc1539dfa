#pragma once
// The words of the trade that the window shows, each with its meaning; a field finds among them.

class QWidget;

namespace loopwright {

void showGlossary(QWidget *parent);

} // namespace loopwright
