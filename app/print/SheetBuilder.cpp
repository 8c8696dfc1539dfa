#include "app/print/SheetBuilder.h"

#include "app/print/PaperLanguage.h"

#include <QFontMetricsF>
#include <QTextLayout>

#include <algorithm>

namespace loopwright {

namespace {

constexpr double leading = 1.28; ///< distance of base lines over the font's size
constexpr double rise = 0.95;    ///< from the top of a line to its base line over the font's size

double aligned(double x, double width, double textWidth, Align align)
{
    switch (align) {
    case Align::Left:
        break;
    case Align::Right:
        return x + width - textWidth;
    }
    return x;
}

/// From the top of a row to the base line that its cells share.
double firstBaseline(const std::vector<Cell> &cells)
{
    double first = 0;
    for (const Cell &cell : cells)
        if (!cell.text.isEmpty())
            first = std::max(first, cell.style.size * rise);
    return first;
}

} // namespace

QStringList wrapped(const QString &text, const QFont &font, double width)
{
    QStringList lines;
    for (const QString &part : text.split(u'\n')) {
        QTextLayout layout(part, font);
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            lines << part.mid(line.textStart(), line.textLength()).trimmed();
        }
        layout.endLayout();
    }
    return lines;
}

SheetBuilder::SheetBuilder(Paper paper, const QString &title)
    : m_size(paperSize(paper))
    , m_margins(Margins::of(paper))
    , m_left(m_margins.left)
    , m_right(m_size.width() - m_margins.right)
{
    m_sheet.paper = paper;
    m_sheet.title = title;
    newPage();
}

void SheetBuilder::newPage()
{
    m_sheet.pages.push_back({});
    y = m_margins.top;
    if (m_onNewPage && !m_endless) {
        const double left = m_left, right = m_right;
        setFrame(m_margins.left, m_size.width() - m_margins.right);
        m_onNewPage(*this);
        setFrame(left, right);
    }
    m_contentTop = y;
}

bool SheetBuilder::ensure(double height)
{
    if (m_endless || y + height <= bottom())
        return false;
    newPage();
    return true;
}

SheetBuilder SheetBuilder::endless() const
{
    SheetBuilder builder = *this;
    builder.m_sheet.pages = {{}};
    builder.m_endless = true;
    return builder;
}

void SheetBuilder::clearFold(double height)
{
    for (const double fold : m_folds)
        if (!m_endless && y < fold && y + height > fold)
            y = fold;
}

void SheetBuilder::draw(SheetMark mark)
{
    drawOn(m_sheet.pages.size() - 1, std::move(mark));
}

void SheetBuilder::drawOn(std::size_t page, SheetMark mark)
{
    m_sheet.pages.at(page).marks.push_back(std::move(mark));
}

void SheetBuilder::textAt(double x, double baseline, const QString &text, const TextStyle &style,
                          Align align)
{
    if (text.isEmpty())
        return;
    const double from = aligned(x, 0, textWidth(text, style), align);
    m_sheet.texts << text;
    draw([=](QPainter &painter) {
        painter.setFont(style.font());
        painter.setPen(style.colour);
        painter.drawText(QPointF(from, baseline), text);
    });
}

void SheetBuilder::rule(double x1, double x2, double atY, const QColor &colour, double weight)
{
    draw([=](QPainter &painter) {
        painter.setPen(QPen(colour, weight, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(x1, atY), QPointF(x2, atY));
    });
}

double SheetBuilder::lineHeight(const TextStyle &style)
{
    return style.size * leading;
}

double SheetBuilder::textWidth(const QString &text, const TextStyle &style)
{
    return QFontMetricsF(style.font()).horizontalAdvance(text);
}

double SheetBuilder::paragraphHeight(const QString &text, const TextStyle &style, double width)
{
    return text.isEmpty() ? 0
                          : double(wrapped(text, style.font(), width).size()) * lineHeight(style);
}

double SheetBuilder::rowHeight(const std::vector<Cell> &cells)
{
    const double first = firstBaseline(cells);
    double height = 0;
    for (const Cell &cell : cells)
        if (!cell.text.isEmpty())
            height = std::max(height, first - cell.style.size * rise +
                                          paragraphHeight(cell.text, cell.style, cell.width));
    return height;
}

void SheetBuilder::row(const std::vector<Cell> &cells)
{
    for (const Cell &cell : cells) {
        if (cell.text.isEmpty())
            continue;
        double baseline = y + firstBaseline(cells);
        for (const QString &line : wrapped(cell.text, cell.style.font(), cell.width)) {
            textAt(aligned(cell.x, cell.width, textWidth(line, cell.style), cell.align), baseline,
                   line, cell.style);
            baseline += lineHeight(cell.style);
        }
    }
    y += rowHeight(cells);
}

void SheetBuilder::paragraph(const QString &text, const TextStyle &style, double indent,
                             std::optional<double> width)
{
    row({Cell{left() + indent, width.value_or(this->width() - indent), text, style}});
}

Sheet SheetBuilder::finish(const QString &foot, const QString &end, const TextStyle &style)
{
    const std::size_t count = m_sheet.pages.size();
    const double baseline = m_size.height() - m_margins.bottom + mm(8);
    const double left = m_margins.left, right = m_size.width() - m_margins.right;
    for (std::size_t i = 0; i < count; ++i) {
        const QString page = onPaper(QString("Page %1 of %2").arg(i + 1).arg(count));
        QStringList words{foot, i + 1 == count ? end : QString()};
        words.removeAll(QString());
        const QString text = words.join("  ·  ");
        const double x = right - textWidth(page, style);
        drawOn(i, [=](QPainter &painter) {
            painter.setFont(style.font());
            painter.setPen(style.colour);
            painter.drawText(QPointF(left, baseline), text);
            painter.drawText(QPointF(x, baseline), page);
        });
    }
    m_sheet.texts << foot << end;
    return m_sheet;
}

} // namespace loopwright
