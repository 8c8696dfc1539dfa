#include "app/print/Sheet.h"

namespace loopwright {

namespace {

QPageSize pageSize(Paper paper)
{
    return QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter);
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

Result<void> Sheet::paint(QPagedPaintDevice &device) const
{
    device.setPageLayout(paperLayout(paper));
    QPainter painter;
    if (!painter.begin(&device))
        return failure(ErrorCode::DiskTrouble, "the page could not be begun", title);
    const double scale = device.logicalDpiX() / unitsPerInch;
    for (std::size_t page = 0; page < pages.size(); ++page) {
        if (page > 0 && !device.newPage())
            return failure(ErrorCode::DiskTrouble,
                           QString("page %1 could not be begun").arg(page + 1), title);
        painter.save();
        painter.scale(scale, scale);
        paintPage(painter, page);
        painter.restore();
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
