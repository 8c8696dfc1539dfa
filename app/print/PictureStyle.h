#pragma once
// Colours and font of a picture. A picture is a function of painter, rectangle, data and style, the
// same for widget, page, PNG and SVG; nothing in it is shown by colour alone.

#include <QColor>
#include <QFont>
#include <QRectF>

class QPainter;

namespace loopwright {

struct PictureStyle
{
    QColor ground; ///< what it is drawn on; also cut out of filled signs
    QColor text;
    QColor muted;
    QColor line; ///< hairlines
    QColor accent;
    QColor good, bad, doubtful;
    QFont font; ///< with a pixel size, in the painter's units
    /// A word of the picture in the reader's language; none: as it is.
    QString (*word)(const QString &) = nullptr;

    QString say(const QString &text) const { return word ? word(text) : text; }
};

/// Black on white, for paper. `size` in the painter's units.
PictureStyle paperStyle(int size);

/// Slanted muted lines all over the area, in the scale of `em`. Cut by hand: an SVG file that Qt
/// writes knows no clipping.
void hatch(QPainter &painter, const QRectF &area, const PictureStyle &style, double em);

/// Room that a title and a verdict take above a picture; 0 without either. A long verdict has two
/// lines.
double pictureHeadHeight(double width, const QString &title, const QString &verdict,
                         const PictureStyle &style);
void paintPictureHead(QPainter &painter, const QRectF &rect, const QString &title,
                      const QString &verdict, const PictureStyle &style);

} // namespace loopwright
