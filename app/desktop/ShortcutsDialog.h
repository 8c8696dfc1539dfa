#pragma once
// The keys of the program, as a small window that any key closes.

class QWidget;

namespace loopwright {

void showKeys(QWidget *parent);

} // namespace loopwright
