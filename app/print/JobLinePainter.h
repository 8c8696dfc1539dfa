#pragma once
// The job line: the stations of a job from left to right, each with its name, a mark that differs
// by shape, and the mark's word.

#include "app/print/PictureStyle.h"
#include "core/acceptance/JobLine.h"

#include <QPainter>

namespace loopwright {

/// Done is a disc with a tick, failed a diamond with a cross, open a ring, not needed a short bar;
/// done by exception is a disc with a bar. `centre` and `radius` in the painter's units.
void paintStationMark(QPainter &painter, const QPointF &centre, double radius,
                      const StationState &state, const PictureStyle &style);

/// Draws the line into the rectangle, the next station underlined. Needs about four heights of the
/// font, without the marks' words three; if the names do not fit side by side they are set
/// smaller.
void paintJobLine(QPainter &painter, const QRectF &rect, const std::vector<StationState> &line,
                  const PictureStyle &style, bool withWords = true);

} // namespace loopwright
