#pragma once
// Pages as lists of things to draw, in tenths of a point from the upper left corner. A sheet is
// laid out once and painted to a PDF, a printer or an image; what is drawn first is read first, so
// text taken out of the PDF comes in the order in which it was laid out.

#include "app/print/Fonts.h"
#include "app/print/Paper.h"
#include "app/print/PictureStyle.h"
#include "core/base/Result.h"

#include <QImage>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QStringList>

#include <functional>
#include <vector>

namespace loopwright {

inline constexpr double unitsPerInch = 720;
constexpr double mm(double millimetres)
{
    return millimetres * unitsPerInch / 25.4;
}
/// Of the whole page, upright.
QSizeF paperSize(Paper paper);
QPageLayout paperLayout(Paper paper);
/// What to lay out for a page of any size, upright or not, in points: the paper that has to be made
/// smaller the least to fit on it; of two that fit, the one that is nearer in size.
Paper paperFor(const QSizeF &page);

struct TextStyle
{
    Face face = Face::Text;
    int size = 90; ///< tenths of a point
    QColor colour;

    QFont font() const { return printFont(face, size); }
};

using SheetMark = std::function<void(QPainter &)>;
/// Told after each page how many of how many are painted; answers false to stop.
using PageProgress = std::function<bool(qint64 done, qint64 total)>;

struct SheetPage
{
    std::vector<SheetMark> marks;
};

struct Sheet
{
    Paper paper = Paper::A4;
    QString title;
    std::vector<SheetPage> pages;
    QStringList texts; ///< all that is written on it

    /// Paints one page with a painter that stands at the page's corner and whose unit is a tenth of
    /// a point.
    void paintPage(QPainter &painter, std::size_t page) const;
    /// For preview and tests.
    QImage image(std::size_t page, double dotsPerInch) const;
    /// Sets paper and margins of the device and paints every page. DiskTrouble if the device
    /// cannot be painted on; Refused, with the number of pages that are on it, if it was stopped.
    Result<void> paint(QPagedPaintDevice &device, const PageProgress &progress = {}) const;
    /// Paints these pages, counted from 0, one after the other on the page that the device has: in
    /// its middle, and made smaller where it does not fit. The device's page begins at the corner
    /// of its paper. Refused where there is no page to paint, before the device is painted on;
    /// DiskTrouble and Refused as above.
    Result<void> paintPages(QPagedPaintDevice &device, const std::vector<std::size_t> &order,
                            const PageProgress &progress = {}) const;
};

/// Refused, naming the characters of the sheet that no font at hand has and the package that would
/// help.
Result<void> checkCharacters(const Sheet &sheet);

} // namespace loopwright
