#include "app/print/Sheet.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace loopwright {

namespace {

QPageSize pageSize(Paper paper)
{
    return QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter);
}

/// How many times its size a paper has on a page, at most 1.
double fitOf(const QSizeF &paper, const QSizeF &page)
{
    return std::min({1.0, page.width() / paper.width(), page.height() / paper.height()});
}

} // namespace

QSizeF paperSize(Paper paper)
{
    return pageSize(paper).size(QPageSize::Point) * (unitsPerInch / 72);
}

QPageLayout paperLayout(Paper paper)
{
    return QPageLayout(pageSize(paper), QPageLayout::Portrait, QMarginsF(0, 0, 0, 0),
                       QPageLayout::Point);
}

Paper paperFor(const QSizeF &page)
{
    const QSizeF upright = page.width() > page.height() ? page.transposed() : page;
    const auto lack = [&upright](Paper paper) {
        const QSizeF own = pageSize(paper).size(QPageSize::Point);
        const QSizeF apart = own - upright;
        return std::pair(1 - fitOf(own, upright),
                         std::abs(apart.width()) + std::abs(apart.height()));
    };
    return lack(Paper::Letter) < lack(Paper::A4) ? Paper::Letter : Paper::A4;
}

void Sheet::paintPage(QPainter &painter, std::size_t page) const
{
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    for (const SheetMark &mark : pages.at(page).marks) {
        painter.save();
        mark(painter);
        painter.restore();
    }
}

QImage Sheet::image(std::size_t page, double dotsPerInch) const
{
    const double scale = dotsPerInch / unitsPerInch;
    QImage image((paperSize(paper) * scale).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(scale, scale);
    paintPage(painter, page);
    return image;
}

Result<void> Sheet::paint(QPagedPaintDevice &device, const PageProgress &progress) const
{
    device.setPageLayout(paperLayout(paper));
    std::vector<std::size_t> all(pages.size());
    std::iota(all.begin(), all.end(), 0);
    return paintPages(device, all, progress);
}

Result<void> Sheet::paintPages(QPagedPaintDevice &device, const std::vector<std::size_t> &order,
                               const PageProgress &progress) const
{
    if (order.empty())
        return failure(ErrorCode::Refused, "The paper has none of the pages that were chosen.",
                       title);
    QPainter painter;
    if (!painter.begin(&device))
        return failure(ErrorCode::DiskTrouble, "the page could not be begun", title);
    const QSizeF room = device.pageLayout().fullRectPoints().size();
    const QSizeF own = pageSize(paper).size(QPageSize::Point);
    const double fit = fitOf(own, room);
    const double dots = device.logicalDpiX() / 72.0;
    const QSizeF beside = (room - own * fit) / 2 * dots;
    const double scale = device.logicalDpiX() / unitsPerInch * fit;
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (i > 0 && !device.newPage())
            return failure(ErrorCode::DiskTrouble, QString("page %1 could not be begun").arg(i + 1),
                           title);
        painter.save();
        painter.translate(beside.width(), beside.height());
        painter.scale(scale, scale);
        paintPage(painter, order[i]);
        painter.restore();
        if (progress && !progress(qint64(i) + 1, qint64(order.size())))
            return failure(
                ErrorCode::Refused,
                QString("It was stopped; pages printed: %1 of %2.").arg(i + 1).arg(order.size()));
    }
    if (!painter.end())
        return failure(ErrorCode::DiskTrouble, "the last page could not be ended", title);
    return {};
}

Result<void> checkCharacters(const Sheet &sheet)
{
    const QStringList missing = missingCharacters(sheet.texts.join(u' '));
    if (missing.isEmpty())
        return {};
    constexpr qsizetype mostNamed = 12;
    QStringList names, packages;
    for (const QString &character : missing) {
        const QString package = fontPackageFor(character.toUcs4().value(0));
        if (!packages.contains(package))
            packages << package;
        if (names.size() < mostNamed)
            names << characterName(character);
    }
    if (missing.size() > mostNamed)
        names << QString("and %1 more").arg(missing.size() - mostNamed);
    return failure(
        ErrorCode::Refused,
        QString("no font here has %1; the Debian package %2 has %3")
            .arg(names.join(", "), packages.join(" and "), missing.size() == 1 ? "it" : "them"),
        "fonts");
}

} // namespace loopwright
