#pragma once
// A loop drawn to scale from the serving office to the customer: sections as a line, thicker for
// coarser wire, bridged taps hanging from where they join, load coils as coils, a scale below.

#include "app/print/PictureStyle.h"
#include "core/loop/LoopMakeup.h"

#include <QPainter>

namespace loopwright {

void paintLoop(QPainter &painter, const QRectF &rect, const LoopMakeup &makeup,
               const PictureStyle &style);

} // namespace loopwright
