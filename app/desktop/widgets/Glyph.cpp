#include "app/desktop/widgets/Glyph.h"

#include "app/desktop/Theme.h"

#include <QIconEngine>
#include <QPainterPath>

namespace loopwright {

namespace {

/// A painter that works in a square of 14 by 14, whatever its size on the screen.
class Drawing
{
public:
    Drawing(QPainter &painter, const QRectF &square, const QColor &colour, const QColor &inner)
        : m_painter(painter)
        , m_colour(colour)
        , m_inner(inner)
    {
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing);
        painter.translate(square.topLeft());
        painter.scale(square.width() / 14, square.height() / 14);
        stroke(colour);
    }
    ~Drawing() { m_painter.restore(); }
    Drawing(const Drawing &) = delete;
    Drawing &operator=(const Drawing &) = delete;

    void stroke(const QColor &colour, double width = 1.3)
    {
        m_painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        m_painter.setBrush(Qt::NoBrush);
    }
    void fill(const QColor &colour)
    {
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(colour);
    }
    void cut(double width = 1.6) { stroke(m_inner, width); }
    void line(double x1, double y1, double x2, double y2)
    {
        m_painter.drawLine(QPointF(x1, y1), QPointF(x2, y2));
    }
    void disc(double x, double y, double radius)
    {
        m_painter.drawEllipse(QPointF(x, y), radius, radius);
    }
    void box(double x, double y, double width, double height, double round = 1)
    {
        m_painter.drawRoundedRect(QRectF(x, y, width, height), round, round);
    }
    void shape(std::initializer_list<QPointF> points)
    {
        m_painter.drawPolygon(QPolygonF(QList<QPointF>(points)));
    }
    void lines(std::initializer_list<QPointF> points)
    {
        m_painter.drawPolyline(QPolygonF(QList<QPointF>(points)));
    }
    const QColor &colour() const { return m_colour; }
    QPainter &painter() { return m_painter; }

private:
    QPainter &m_painter;
    QColor m_colour, m_inner;
};

void board(Drawing &d)
{
    d.box(1.5, 2, 11, 10);
    d.line(1.5, 5.2, 12.5, 5.2);
    d.line(4, 7.5, 10, 7.5);
    d.line(4, 9.8, 8, 9.8);
}

void job(Drawing &d)
{
    d.line(3.4, 7, 5.3, 7);
    d.line(8.7, 7, 10, 7);
    d.disc(7, 7, 1.7);
    d.disc(11.7, 7, 1.6);
    d.fill(d.colour());
    d.disc(2.3, 7, 1.8);
}

void form(Drawing &d)
{
    d.lines({{7, 12.5}, {2.5, 12.5}, {2.5, 1.5}, {9.5, 1.5}, {9.5, 5}});
    d.line(4.8, 4.5, 7.2, 4.5);
    d.line(4.8, 7.2, 6.2, 7.2);
    d.shape({{7.6, 11.4}, {8, 9.4}, {11.4, 6}, {13, 7.6}, {9.6, 11}});
}

void circuit(Drawing &d)
{
    d.box(1, 4.5, 3, 5);
    d.box(10, 4.5, 3, 5);
    d.line(4, 6, 10, 6);
    d.line(4, 8, 10, 8);
}

void identifiers(Drawing &d)
{
    d.box(1, 4, 12, 6);
    d.line(5, 4, 5, 10);
    d.line(9.5, 4, 9.5, 10);
}

void audit(Drawing &d)
{
    d.disc(6, 6, 4);
    d.line(9, 9, 12.5, 12.5);
}

void import(Drawing &d)
{
    d.lines({{1.5, 8}, {1.5, 12.3}, {12.5, 12.3}, {12.5, 8}});
    d.line(7, 1.5, 7, 8.8);
    d.lines({{4.3, 6.2}, {7, 8.9}, {9.7, 6.2}});
}

void book(Drawing &d)
{
    d.box(2.5, 1.5, 9, 11);
    d.line(5, 1.5, 5, 12.5);
    d.line(7, 4.5, 9.5, 4.5);
    d.line(7, 7, 9.5, 7);
}

void done(Drawing &d)
{
    d.fill(d.colour());
    d.disc(7, 7, 6);
    d.cut();
    d.lines({{4.2, 7.2}, {6.2, 9.2}, {9.9, 5}});
}

void failed(Drawing &d)
{
    d.fill(d.colour());
    d.shape({{7, 0.4}, {13.6, 7}, {7, 13.6}, {0.4, 7}});
    d.cut();
    d.line(5, 5, 9, 9);
    d.line(9, 5, 5, 9);
}

void open(Drawing &d)
{
    d.stroke(d.colour(), 1.6);
    d.disc(7, 7, 5);
}

void notNeeded(Drawing &d)
{
    d.stroke(d.colour(), 1.8);
    d.line(4, 7, 10, 7);
}

void doubtful(Drawing &d)
{
    d.fill(d.colour());
    d.shape({{7, 1}, {13.5, 12.8}, {0.5, 12.8}});
    d.cut();
    d.line(7, 5.5, 7, 8.5);
    d.line(7, 10.8, 7, 10.9);
}

void note(Drawing &d)
{
    d.box(2, 2, 10, 10, 1.5);
    d.line(7, 6.5, 7, 9.5);
    d.line(7, 4.4, 7, 4.5);
}

struct Row
{
    GlyphShape shape;
    void (*draw)(Drawing &);
};
constexpr Row rows[] = {{GlyphShape::Board, &board},
                        {GlyphShape::Job, &job},
                        {GlyphShape::Form, &form},
                        {GlyphShape::Circuit, &circuit},
                        {GlyphShape::Identifiers, &identifiers},
                        {GlyphShape::Audit, &audit},
                        {GlyphShape::Import, &import},
                        {GlyphShape::Register, &book},
                        {GlyphShape::Done, &done},
                        {GlyphShape::Failed, &failed},
                        {GlyphShape::Open, &open},
                        {GlyphShape::NotNeeded, &notNeeded},
                        {GlyphShape::Doubtful, &doubtful},
                        {GlyphShape::Note, &note}};

class GlyphEngine : public QIconEngine
{
public:
    GlyphEngine(GlyphShape shape, const QColor &colour, const QColor &inner)
        : m_shape(shape)
        , m_colour(colour)
        , m_inner(inner)
    {
    }

    void paint(QPainter *painter, const QRect &rect, QIcon::Mode mode, QIcon::State) override
    {
        const Colours &c = colours();
        // On a selection as strong as that of high contrast a sign has the colour of the text.
        const bool strong = mode == QIcon::Selected && c.selected == c.accent;
        const int side = qMin(rect.width(), rect.height());
        QRectF square(0, 0, side, side);
        square.moveCenter(QRectF(rect).center());
        drawGlyph(*painter, m_shape, square, strong ? c.onSelected : m_colour,
                  strong ? c.selected : m_inner);
    }
    QPixmap pixmap(const QSize &size, QIcon::Mode mode, QIcon::State state) override
    {
        QPixmap picture(size);
        picture.fill(Qt::transparent);
        QPainter painter(&picture);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return picture;
    }
    QIconEngine *clone() const override { return new GlyphEngine(m_shape, m_colour, m_inner); }

private:
    GlyphShape m_shape;
    QColor m_colour, m_inner;
};

} // namespace

void drawGlyph(QPainter &painter, GlyphShape shape, const QRectF &square, const QColor &colour,
               const QColor &inner)
{
    Drawing drawing(painter, square, colour, inner);
    for (const Row &row : rows)
        if (row.shape == shape)
            row.draw(drawing);
}

QIcon glyphIcon(GlyphShape shape, const QColor &colour, const QColor &inner)
{
    return QIcon(new GlyphEngine(shape, colour, inner));
}

} // namespace loopwright
