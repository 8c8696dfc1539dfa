#pragma once
// What a widget paints, read back: the words of pictures and axes, which no widget's text tells.

#include <QStringList>

class QWidget;

namespace loopwright {

QStringList paintedTexts(QWidget &widget);

} // namespace loopwright
