#pragma once
// The signs of the per-second strip, as they stand in its plot and in its legend. `em` is the
// height of a line of its text.

#include "app/print/PictureStyle.h"

#include <QPainter>

namespace loopwright {

/// Its tip at the point: a severely errored second.
void paintTriangle(QPainter &painter, const PictureStyle &style, double em, double x, double y);
/// Its middle at the point: a second out of sync.
void paintCross(QPainter &painter, const PictureStyle &style, double em, double x, double y);
/// A mast with a pennant that points into the time that is not run.
void paintMast(QPainter &painter, const PictureStyle &style, double em, double x, double top,
               double bottom, double size);
/// The dotted line beside a stretch that nobody watched.
QPen gapPen(const PictureStyle &style, double em);

} // namespace loopwright
