#pragma once
// Loss over frequency on a logarithmic axis from 200 Hz to 1 MHz, with the point at which a
// basic-rate loop is judged and its limit.

#include "app/print/PictureStyle.h"
#include "core/base/LimitSet.h"
#include "core/loop/LoopLoss.h"

#include <QPainter>
#include <QPointF>

namespace loopwright {

struct CurveData
{
    std::vector<QPointF> predicted; ///< Hz, dB
    double pointHz = 40000;         ///< where it is judged
    double pointDb = 0;             ///< predicted there
    double limitDb = 42;
    std::vector<QPointF> measured; ///< Hz, dB; readings to show beside the curve
    QString title = {};            ///< above the plot: order, date; empty: no room is taken
    QString verdict = {};          ///< below the title
};

/// Of a make-up between the terminations and at the frequency of the limits.
CurveData curveData(const LoopMakeup &makeup, const LimitSet &limits);

void paintCurve(QPainter &painter, const QRectF &rect, const CurveData &data,
                const PictureStyle &style);
QByteArray curvePng(const CurveData &data, double scale = 2);
QByteArray curveSvg(const CurveData &data);

} // namespace loopwright
