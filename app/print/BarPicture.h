#pragma once
// Figures as bars, one below the other: what is counted, a bar of its size, and the figure in words
// beside it.

#include "app/print/PictureStyle.h"

#include <QPainter>

namespace loopwright {

struct Bar
{
    QString label;
    QString text;      ///< the figure
    double length = 0; ///< of the longest there can be, 0 to 1
};

struct BarPicture
{
    QString title;
    QString sum; ///< below the title
    std::vector<Bar> bars;
    bool inTime = false; ///< the last bars are the newest

    /// Keeps the first bars, or the newest, and says of how many.
    void keep(std::size_t most);
};

/// What it needs in that width.
double barPictureHeight(double width, const BarPicture &picture, const PictureStyle &style);
void paintBars(QPainter &painter, const QRectF &rect, const BarPicture &picture,
               const PictureStyle &style);
QByteArray barsSvg(const BarPicture &picture);

} // namespace loopwright
