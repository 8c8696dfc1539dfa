#pragma once
// Readings of one quantity one after the other, with the limit they are held against: what became
// of a line between its turn-up and today. Readings stand at equal distances, for they come in a
// cluster on one day and then not for years; each day is named once, and a hairline parts the
// orders. A filled disc is met, a disc with a hole near the limit, a cross not met, a ring counts
// for nothing.

#include "app/print/PictureStyle.h"
#include "core/acceptance/CircuitFigures.h"

#include <QPainter>

namespace loopwright {

/// The newest readings for which there is room.
void paintTrend(QPainter &painter, const QRectF &rect, const CircuitFigure &figure,
                const PictureStyle &style);

} // namespace loopwright
