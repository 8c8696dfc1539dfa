#pragma once
// The per-second strip of a run: time along, bit errors up on a logarithmic scale. An errored
// second is a thin bar, a severely errored one a bar with a triangle on top, a second out of sync
// an open bar of full height, unavailable time is hatched, and while the run goes on the seconds
// that may yet change class lie under a dotted bracket. If the plan is longer than the run, a
// mark stands at the run's end, and after it the plot is left empty, without scale and base line.
// Seconds that nobody watched are left empty too, between dotted lines, with a question mark.
// All of it can be read without colour.

#include "app/print/PictureStyle.h"
#include "core/errortest/G821.h"
#include "core/errortest/WatchedTime.h"

#include <QPainter>

#include <span>

namespace loopwright {

struct StripData
{
    std::span<const Second> seconds;
    std::span<const SecondMark> marks; ///< one per second, from classify()
    qint64 bitsPerSecond = 64000;
    qint64 plannedSeconds = 0; ///< length of the axis at least; 0: as long as the run
    bool running = false; ///< the last seconds may yet change class, and planned ones will come
    std::span<const Stretch> notWatched = {}; ///< what they hold there means nothing
    QString title = {};   ///< above the plot: order, date; empty: no room is taken
    QString verdict = {}; ///< below the title
};

/// With axis and legend; what only a running run or one that was cut short has, the legend names
/// only if it is drawn. If there are more seconds than room, whole bins of them (2 s, 5 s, … 10
/// min) share a bar that shows the worst, and the legend says how many. No mark leaves the plot.
void paintStrip(QPainter &painter, const QRectF &rect, const StripData &data,
                const PictureStyle &style);

/// 900 by 260 pixels at `scale` 1, on white.
QByteArray stripPng(const StripData &data, double scale = 2);
QByteArray stripSvg(const StripData &data);

} // namespace loopwright
