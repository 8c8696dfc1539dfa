// Longer than 400 lines: one class, and a short function for each kind of block.
//
// Lays a document out: one function for each kind of block, which draws it at the cursor. What must
// be known before it is drawn, how high it is, is asked of the same functions on a page without
// end.

#include "app/print/Document.h"
#include "app/print/JobLinePainter.h"
#include "app/print/PaperLanguage.h"

#include <QPainterPath>

#include <algorithm>

namespace loopwright::doc {

namespace {

const PictureStyle &ink()
{
    static const PictureStyle style = paperStyle(78);
    return style;
}

TextStyle styleOf(Tone role)
{
    switch (role) {
    case Tone::Title:
        return {Face::Title, 230, ink().text};
    case Tone::Verdict:
        return {Face::Strong, 190, ink().text};
    case Tone::Alarm:
        return {Face::Strong, 260, ink().bad};
    case Tone::Large:
        return {Face::Strong, 112, ink().text};
    case Tone::Heading:
        return {Face::Strong, 96, ink().accent};
    case Tone::Body:
        return {Face::Text, 92, ink().text};
    case Tone::Strong:
        return {Face::Strong, 92, ink().text};
    case Tone::Bad:
        return {Face::Strong, 92, ink().bad};
    case Tone::Small:
        return {Face::Text, 78, ink().text};
    case Tone::SmallBad:
        return {Face::Strong, 78, ink().bad};
    case Tone::Muted:
        return {Face::Text, 78, ink().muted};
    case Tone::Digits:
        return {Face::Digits, 92, ink().text};
    case Tone::BigDigits:
        return {Face::StrongDigits, 165, ink().text};
    case Tone::Number:
        return {Face::StrongDigits, 116, ink().accent};
    }
    return {};
}

const TextStyle footStyle{Face::Text, 72, paperStyle(72).muted};

constexpr double columnGap = mm(3);
constexpr double boxPad = mm(2.6);

class Layout
{
public:
    explicit Layout(SheetBuilder &sheet)
        : m_sheet(sheet)
    {
    }

    void draw(const Blocks &blocks)
    {
        for (const Block &block : blocks)
            std::visit(*this, block.body);
    }

    void operator()(const Paragraph &part);
    void operator()(const Table &part);
    void operator()(const Facts &part);
    void operator()(const Box &part);
    void operator()(const Together &part);
    void operator()(const SideBySide &part);
    void operator()(const SignatureFields &part);
    void operator()(const FillIn &part);
    void operator()(const Picture &part);
    void operator()(const Gap &part) { m_sheet.y += part.height; }
    void operator()(const Rule &);
    void operator()(const NewPage &) { m_sheet.newPage(); }

private:
    double heightOf(const Blocks &blocks, double left, double right) const
    {
        SheetBuilder endless = m_sheet.endless();
        endless.setFrame(left, right);
        endless.y = 0;
        Layout(endless).draw(blocks);
        return endless.y;
    }
    double heightOf(const Blocks &blocks) const
    {
        return heightOf(blocks, m_sheet.left(), m_sheet.right());
    }
    bool isFresh() const { return m_sheet.y <= m_sheet.contentTop() + 1; }
    void within(double left, double right, const Blocks &blocks)
    {
        const double oldLeft = m_sheet.left(), oldRight = m_sheet.right();
        m_sheet.setFrame(left, right);
        draw(blocks);
        m_sheet.setFrame(oldLeft, oldRight);
    }
    void mark(double x, double size, const std::optional<StationState> &state);
    std::vector<Cell> cellsOf(const Table &table, const std::vector<Words> &words) const;
    void drawHead(const Table &table);
    std::vector<double> sharesWithRoom(const Table &table) const;
    void drawTable(const Table &part);
    double heightOf(const Table &table, const TableRow &row) const;
    /// Of the row and all that stay on its page.
    double heightOfGroup(const Table &table, std::size_t first) const;

    SheetBuilder &m_sheet;
};

void Layout::mark(double x, double size, const std::optional<StationState> &state)
{
    if (!state)
        return;
    const QPointF centre(x + size * 0.5, m_sheet.y + size * 0.64);
    m_sheet.draw([=, state = *state](QPainter &painter) {
        paintStationMark(painter, centre, size * 0.44, state, ink());
    });
}

void Layout::operator()(const Paragraph &part)
{
    if (part.text.isEmpty())
        return;
    const TextStyle style = styleOf(part.role);
    const double indent = part.indent + (part.mark ? style.size * 1.6 : 0);
    m_sheet.ensure(SheetBuilder::paragraphHeight(part.text, style, m_sheet.width() - indent));
    mark(m_sheet.left() + part.indent, style.size, part.mark);
    m_sheet.paragraph(part.text, style, indent);
    m_sheet.y += part.after;
}

std::vector<Cell> Layout::cellsOf(const Table &table, const std::vector<Words> &words) const
{
    std::vector<Cell> cells;
    const double whole = m_sheet.width() - table.markWidth;
    double x = m_sheet.left() + table.markWidth;
    std::size_t column = 0;
    for (const Words &each : words) {
        double width = 0;
        for (int i = 0; i < each.span && column < table.shares.size(); ++i)
            width += table.shares[column++] * whole;
        const bool last = column >= table.shares.size();
        cells.push_back(
            {x, width - (last ? 0 : columnGap), each.text, styleOf(each.role), each.align});
        x += width;
    }
    return cells;
}

void Layout::drawHead(const Table &table)
{
    if (table.head.empty())
        return;
    m_sheet.rule(m_sheet.left(), m_sheet.right(), m_sheet.y, ink().text, 7);
    m_sheet.y += table.gap;
    m_sheet.row(cellsOf(table, table.head));
    m_sheet.y += table.gap;
}

double Layout::heightOf(const Table &table, const TableRow &row) const
{
    return SheetBuilder::rowHeight(cellsOf(table, row.cells)) + (row.rule ? 2 : 1) * table.gap;
}

double Layout::heightOfGroup(const Table &table, std::size_t first) const
{
    double height = heightOf(table, table.rows[first]);
    for (std::size_t i = first; table.rows[i].withNext && i + 1 < table.rows.size(); ++i)
        height += heightOf(table, table.rows[i + 1]);
    return height;
}

/// A column that is too narrow for one of its words takes what it lacks from the widest.
std::vector<double> Layout::sharesWithRoom(const Table &table) const
{
    const double whole = m_sheet.width() - table.markWidth;
    std::vector<double> shares = table.shares;
    std::vector<double> least(shares.size());
    const auto note = [&](const std::vector<Words> &words) {
        std::size_t column = 0;
        for (const Words &each : words) {
            const TextStyle style = styleOf(each.role);
            // No letter is wider than one and a quarter of its height: most words need no
            // measuring.
            const auto letters =
                qsizetype(shares[column] * whole - columnGap) * 4 / (5 * style.size);
            if (each.span == 1 && each.text.size() > letters)
                for (const QString &word : each.text.split(u' '))
                    if (word.size() > letters)
                        least[column] =
                            std::max(least[column], SheetBuilder::textWidth(word, style));
            column += std::size_t(each.span);
            if (column >= shares.size())
                break;
        }
    };
    note(table.head);
    for (const TableRow &row : table.rows)
        note(row.cells);
    for (std::size_t i = 0; i < least.size(); ++i) {
        const auto widest = std::ranges::max_element(shares);
        const double lacks =
            std::min((least[i] + columnGap + 1) / whole - shares[i], *widest * 0.25);
        if (least[i] == 0 || lacks <= 0 || widest == shares.begin() + std::ptrdiff_t(i))
            continue;
        *widest -= lacks;
        shares[i] += lacks;
    }
    return shares;
}

void Layout::operator()(const Table &part)
{
    std::vector<double> shares = sharesWithRoom(part);
    if (shares == part.shares)
        return drawTable(part);
    Table wider = part;
    wider.shares = std::move(shares);
    drawTable(wider);
}

void Layout::drawTable(const Table &part)
{
    Blocks heading;
    if (!part.heading.isEmpty())
        heading = {Gap{mm(2.5)}, Paragraph{part.heading, Tone::Heading, mm(1)}};
    if (!part.rows.empty()) {
        double needed = heightOf(heading) + 2 * part.gap + heightOfGroup(part, 0);
        if (!part.head.empty())
            needed += SheetBuilder::rowHeight(cellsOf(part, part.head));
        m_sheet.ensure(needed);
    }
    draw(heading);
    drawHead(part);
    bool held = false; // by the row above
    for (std::size_t i = 0; i < part.rows.size(); ++i) {
        const TableRow &row = part.rows[i];
        if (!held) {
            if (m_sheet.ensure(heightOfGroup(part, i)))
                drawHead(part);
        } else if (m_sheet.ensure(heightOf(part, row))) {
            drawHead(part);
        }
        held = row.withNext;
        m_sheet.clearFold(heightOf(part, row));
        if (row.rule) {
            m_sheet.rule(m_sheet.left() + part.markWidth, m_sheet.right(), m_sheet.y, ink().line);
            m_sheet.y += part.gap;
        }
        const std::vector<Cell> cells = cellsOf(part, row.cells);
        mark(m_sheet.left(), cells.empty() ? 90 : cells.front().style.size, row.mark);
        m_sheet.row(cells);
        m_sheet.y += part.gap;
    }
}

void Layout::operator()(const Facts &part)
{
    std::vector<CertificateLine> lines;
    double label = part.label; // wider where a language has longer words
    for (const CertificateLine &line : part.lines)
        if (!line.value.isEmpty()) {
            lines.push_back(line);
            label =
                std::max(label, SheetBuilder::textWidth(line.name, styleOf(Tone::Muted)) + mm(3));
        }
    const double width = (m_sheet.width() - (part.across - 1) * mm(6)) / part.across;
    for (std::size_t i = 0; i < lines.size(); i += std::size_t(part.across)) {
        std::vector<Cell> cells;
        for (std::size_t k = 0; k < std::size_t(part.across) && i + k < lines.size(); ++k) {
            const double x = m_sheet.left() + double(k) * (width + mm(6));
            cells.push_back(
                {x, label - mm(2), lines[i + k].name, styleOf(Tone::Muted), Align::Left});
            cells.push_back(
                {x + label, width - label, lines[i + k].value, styleOf(part.role), Align::Left});
        }
        m_sheet.ensure(SheetBuilder::rowHeight(cells) + mm(1.2));
        if (part.rules) {
            m_sheet.rule(m_sheet.left(), m_sheet.right(), m_sheet.y, ink().line);
            m_sheet.y += mm(1.2);
        }
        m_sheet.row(cells);
        m_sheet.y += mm(1.0);
    }
}

void Layout::operator()(const Box &part)
{
    const double left = m_sheet.left(), right = m_sheet.right();
    const double height = heightOf(part.inside, left + boxPad, right - boxPad) + 2 * boxPad;
    const bool fitsAPage = height <= m_sheet.bottom() - m_sheet.contentTop();
    m_sheet.ensure(fitsAPage ? height : mm(30));
    const std::size_t first = m_sheet.pageCount() - 1;
    double from = m_sheet.y;
    m_sheet.y += boxPad;
    within(left + boxPad, right - boxPad, part.inside);
    m_sheet.y += boxPad;
    const double weight = part.alarm ? 18 : 9;
    for (std::size_t page = first; page < m_sheet.pageCount(); ++page) {
        const double to = page + 1 == m_sheet.pageCount() ? m_sheet.y : m_sheet.bottom();
        m_sheet.drawOn(page, [=](QPainter &painter) {
            painter.setPen(QPen(ink().bad, weight, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(QRectF(QPointF(left, from), QPointF(right, to)));
        });
        from = m_sheet.contentTop() - mm(1);
    }
    m_sheet.y += mm(2.5);
}

void Layout::operator()(const Together &part)
{
    if (m_sheet.ensure(heightOf(part.inside)) || m_sheet.pageCount() > 1) {
        if (!part.ifLater.empty()) {
            Blocks both = part.ifLater;
            append(both, part.inside);
            m_sheet.ensure(heightOf(both));
            return draw(both);
        }
    }
    draw(part.inside);
}

void Layout::operator()(const SideBySide &part)
{
    const double left = m_sheet.left(), right = m_sheet.right();
    const double split = left + part.leftShare * (right - left - part.gap);
    const double from = std::max(m_sheet.y, part.leftFrom.value_or(m_sheet.y));
    const double leftHeight = heightOf(part.left, left, split);
    const double rightHeight = heightOf(part.right, split + part.gap, right);
    if (std::max(from - m_sheet.y + leftHeight, rightHeight) > m_sheet.bottom() - m_sheet.y) {
        draw(part.rightFirst ? part.right : part.left); // too much for two columns
        draw(part.rightFirst ? part.left : part.right);
        return;
    }
    const double top = m_sheet.y;
    const auto drawLeft = [&] {
        m_sheet.y = from;
        within(left, split, part.left);
    };
    if (!part.rightFirst)
        drawLeft();
    m_sheet.y = top;
    within(split + part.gap, right, part.right);
    if (part.rightFirst)
        drawLeft();
    m_sheet.y = std::max(from + leftHeight, top + rightHeight);
}

QPainterPath strokesIn(const std::vector<std::vector<QPoint>> &strokes, const QRectF &field)
{
    QPainterPath path;
    const double scale = std::min(field.width() / signatureWidth, field.height() / signatureHeight);
    const auto placed = [&](QPoint point) {
        return QPointF(field.left() + point.x() * scale,
                       field.bottom() - (signatureHeight - point.y()) * scale);
    };
    for (const std::vector<QPoint> &stroke : strokes) {
        if (stroke.empty())
            continue;
        path.moveTo(placed(stroke.front()));
        for (const QPoint point : stroke)
            path.lineTo(placed(point));
    }
    return path;
}

void Layout::operator()(const SignatureFields &part)
{
    const double fieldHeight = mm(15);
    const double gap = mm(8);
    const double width =
        (m_sheet.width() - gap * (double(part.fields.size()) - 1)) / double(part.fields.size());
    double words = 0, captions = 0;
    for (const SignatureField &field : part.fields) {
        words = std::max(words,
                         SheetBuilder::paragraphHeight(field.declares, styleOf(Tone::Body), width));
        captions = std::max(
            captions, SheetBuilder::paragraphHeight(field.caption, styleOf(Tone::Muted), width));
    }
    m_sheet.ensure(words + fieldHeight + captions + mm(3));
    const double top = m_sheet.y;
    double x = m_sheet.left();
    for (const SignatureField &field : part.fields) {
        m_sheet.y = top;
        m_sheet.row({{x, width, field.declares, styleOf(Tone::Body), Align::Left}});
        const QRectF rect(x, top + words, width, fieldHeight);
        const QPainterPath path = strokesIn(field.strokes, rect.adjusted(mm(2), 0, -mm(2), -mm(1)));
        m_sheet.draw([path](QPainter &painter) {
            painter.setPen(QPen(ink().text, 11, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
            painter.drawPath(path);
        });
        m_sheet.rule(rect.left(), rect.right(), rect.bottom(), ink().text);
        m_sheet.y = rect.bottom() + mm(1);
        m_sheet.row({{x, width, field.caption, styleOf(Tone::Muted), Align::Left}});
        x += width + gap;
    }
    m_sheet.y = top + words + fieldHeight + captions + mm(3);
}

void Layout::operator()(const FillIn &part)
{
    const double label = mm(44);
    const double x = m_sheet.left() + label;
    const std::vector<Cell> cells{
        {m_sheet.left(), label - mm(2), part.label, styleOf(Tone::Body), Align::Left},
        {x, m_sheet.right() - x, part.already, styleOf(Tone::Strong), Align::Left}};
    m_sheet.ensure(std::max(mm(6), SheetBuilder::rowHeight(cells)) + mm(2));
    m_sheet.y += mm(1.6);
    const double top = m_sheet.y;
    m_sheet.row(cells);
    m_sheet.y = std::max(m_sheet.y, top + mm(4.2)) + mm(0.6);
    m_sheet.rule(x, m_sheet.right(), m_sheet.y, ink().muted);
    m_sheet.y += mm(0.8);
}

void Layout::operator()(const Picture &part)
{
    m_sheet.ensure(part.height);
    const QRectF rect(m_sheet.left(), m_sheet.y, m_sheet.width(), part.height);
    m_sheet.draw([rect, paint = part.paint](QPainter &painter) { paint(painter, rect); });
    m_sheet.y += part.height;
}

void Layout::operator()(const Rule &)
{
    m_sheet.rule(m_sheet.left(), m_sheet.right(), m_sheet.y, ink().line);
    m_sheet.y += mm(1.5);
}

/// Where a letter is folded in three, with room for the fold itself.
std::vector<double> foldsOf(Paper paper)
{
    return paper == Paper::A4 ? std::vector<double>{mm(99), mm(198)}
                              : std::vector<double>{mm(93.1), mm(186.3)};
}

} // namespace

Sheet layOut(Document document, Paper paper)
{
    if (paperLanguage().say)
        eachText(document, [&document](QString &text) { text = onPaper(text, document.typed); });
    SheetBuilder sheet(paper, document.title);
    if (!document.continued.isEmpty())
        sheet.setOnNewPage([continued = document.continued](SheetBuilder &next) {
            next.row({{next.left(), next.width(), continued, styleOf(Tone::Muted), Align::Left}});
            next.y += mm(3);
        });
    if (document.folds)
        sheet.setFolds(foldsOf(paper));
    Layout(sheet).draw(document.blocks);
    return sheet.finish(document.foot, document.end, footStyle);
}

} // namespace loopwright::doc
