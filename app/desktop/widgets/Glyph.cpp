#include "app/desktop/widgets/Glyph.h"

#include "app/desktop/Theme.h"

#include <QFile>
#include <QIconEngine>
#include <QSvgRenderer>

#include <map>
#include <memory>
#include <tuple>

static void initIcons()
{
    Q_INIT_RESOURCE(icons);
}

namespace loopwright {

namespace {

constexpr const char *names[] = {"board",    "job",    "form",     "circuit",     "identifiers",
                                 "audit",    "import", "register", "certificate", "loops",
                                 "reports",  "done",   "failed",   "open",        "not-needed",
                                 "doubtful", "away",   "note"};
static_assert(std::size(names) == std::size_t(GlyphShape::Note) + 1);

/// The drawing with its two colours put in: black is that of the sign, white that of what is cut
/// out of it.
QByteArray drawingOf(GlyphShape shape, const QColor &colour, const QColor &inner)
{
    QFile file(QStringLiteral(":/icons/%1.svg").arg(QLatin1StringView(names[std::size_t(shape)])));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    return file.readAll()
        .replace("#000000", "#sign")
        .replace("#ffffff", inner.name().toLatin1())
        .replace("#sign", colour.name().toLatin1());
}

/// Signs are painted often, in few colours.
QSvgRenderer &rendererOf(GlyphShape shape, const QColor &colour, const QColor &inner)
{
    using Key = std::tuple<GlyphShape, QRgb, QRgb>;
    static std::map<Key, std::unique_ptr<QSvgRenderer>> known;
    auto &renderer = known[Key(shape, colour.rgb(), inner.rgb())];
    if (!renderer) {
        initIcons();
        renderer = std::make_unique<QSvgRenderer>(drawingOf(shape, colour, inner));
    }
    return *renderer;
}

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
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    rendererOf(shape, colour, inner).render(&painter, square);
    painter.restore();
}

QIcon glyphIcon(GlyphShape shape, const QColor &colour, const QColor &inner)
{
    return QIcon(new GlyphEngine(shape, colour, inner));
}

} // namespace loopwright
