// Longer than 400 lines: one picture, whose parts share its scale.

#include "app/print/SecondsStrip.h"

#include "app/print/PictureFile.h"
#include "app/print/StripSigns.h"
#include "core/errortest/Bounds.h"

#include <QFontMetricsF>

#include <algorithm>
#include <array>
#include <cmath>

namespace loopwright {

namespace {

constexpr QSizeF stripSize(900, 260);

/// What one bar shows: one second, or the worst of several that share it.
struct Column
{
    qint64 errors = 0;
    SecondClass kind = SecondClass::ErrorFree;
    bool outOfSync = false;
    bool provisional = false;
};

class Strip
{
public:
    Strip(QPainter &painter, const QRectF &rect, const StripData &data, const PictureStyle &style)
        : m_painter(painter)
        , m_data(data)
        , m_style(style)
        , m_metrics(style.font)
        , m_seconds(std::max<qint64>({qint64(data.seconds.size()), data.plannedSeconds, 1}))
    {
        const double left = m_metrics.horizontalAdvance("64 000 ");
        m_head = rect;
        m_plot =
            rect.adjusted(left,
                          m_metrics.height() * 1.3 +
                              pictureHeadHeight(rect.width(), data.title, data.verdict, style),
                          -m_metrics.horizontalAdvance("00:00") * 0.55, -m_metrics.height() * 3.4);
        const qint64 run = qint64(std::min(data.seconds.size(), data.marks.size()));
        m_whole = run >= m_seconds || m_data.plannedSeconds == 0;
        m_end = m_whole ? m_plot.right() : xOf(double(run));
        m_decades = std::max(1.0, std::ceil(std::log10(double(data.bitsPerSecond))));
    }

    void paint()
    {
        if (m_plot.width() < 4 || m_plot.height() < 4)
            return; // no room for anything that could be read
        gather();
        paintPictureHead(m_painter, m_head, m_data.title, m_data.verdict, m_style);
        paintUnavailable();
        paintGrid();
        paintBars();
        paintProvisional();
        paintTimeAxis();
        for (const Stretch &gap : m_data.notWatched)
            paintGap(gap);
        if (!m_whole)
            paintEnd();
        paintLegend();
    }

private:
    double em() const { return m_metrics.height(); }
    double xOf(double second) const
    {
        return m_plot.left() + m_plot.width() * second / double(m_seconds);
    }
    /// One error stands a step above the base line, so that it is seen.
    double yOf(double errors) const
    {
        const double share = errors < 1 ? 0 : (std::log10(errors) + 0.5) / (m_decades + 0.5);
        return m_plot.bottom() - m_plot.height() * std::min(share, 1.0);
    }

    /// One second if each has a bar of its own, else whole bins whose bars can be told apart.
    qint64 binSeconds() const
    {
        const double thinnest = std::max(0.5, em() * 0.1); // of a single second
        if (double(m_seconds) * thinnest <= m_plot.width())
            return 1;
        // A little more than there is room for: thin bars still; hours: bars that can be told
        // apart.
        const bool hours = double(m_seconds) * thinnest > 4 * m_plot.width();
        const double bar = hours ? em() * 0.4 : thinnest;
        static constexpr std::array<qint64, 14> bins{2,   5,   10,  15,  20,   30,   60,
                                                     120, 180, 300, 600, 1200, 1800, 3600};
        for (const qint64 bin : bins)
            if (m_plot.width() * double(bin) / double(m_seconds) >= bar)
                return bin;
        return qint64(std::ceil(double(m_seconds) * bar / m_plot.width()));
    }

    void gather()
    {
        m_perColumn = binSeconds();
        m_binText = QString("worst of %1 s each").arg(m_perColumn).toLatin1();
        const std::size_t count = std::min(m_data.seconds.size(), m_data.marks.size());
        for (std::size_t i = 0; i < count; ++i) {
            if (qint64(i) % m_perColumn == 0)
                m_columns.push_back({});
            Column &column = m_columns.back();
            column.errors = std::max(column.errors, m_data.seconds[i].bitErrors());
            column.kind = std::max(column.kind, m_data.marks[i].kind);
            column.outOfSync |= !m_data.marks[i].inSync;
            column.provisional |= m_data.running && m_data.marks[i].provisional;
        }
    }

    double columnX(std::size_t index) const { return xOf(double(index) * double(m_perColumn)); }
    double columnWidth() const { return m_plot.width() * double(m_perColumn) / double(m_seconds); }

    /// Calls `draw` with the first column of each stretch and the one after its last.
    template<class Test, class Draw>
    void stretches(Test test, Draw draw) const
    {
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            const std::size_t from = i;
            while (i < m_columns.size() && test(m_columns[i]))
                ++i;
            if (i > from)
                draw(from, i);
        }
    }

    void hatch(const QRectF &area) const { loopwright::hatch(m_painter, area, m_style, em()); }

    void paintUnavailable() const
    {
        stretches([](const Column &c) { return c.kind == SecondClass::Unavailable; },
                  [this](std::size_t from, std::size_t to) {
                      const QRectF area(QPointF(columnX(from), m_plot.top()),
                                        QPointF(std::min(columnX(to), m_end), m_plot.bottom()));
                      hatch(area);
                      m_painter.setPen(QPen(m_style.text, em() * 0.2, Qt::SolidLine, Qt::FlatCap));
                      m_painter.drawLine(area.topLeft(), area.topRight());
                  });
    }

    void paintGrid() const
    {
        m_painter.setFont(m_style.font);
        const double severe = std::ceil(double(m_data.bitsPerSecond) / 1000);
        for (double errors = 1; errors <= double(m_data.bitsPerSecond); errors *= 10) {
            const double y = yOf(errors);
            m_painter.setPen(QPen(m_style.line, em() * 0.05));
            m_painter.drawLine(QPointF(m_plot.left(), y), QPointF(m_end, y));
            const QString text = QString::number(errors, 'f', 0);
            m_painter.setPen(m_style.muted);
            m_painter.drawText(
                QPointF(m_plot.left() - m_metrics.horizontalAdvance(text) - em() * 0.35,
                        y + m_metrics.ascent() * 0.38),
                text);
        }
        QPen pen(m_style.doubtful, em() * 0.07);
        pen.setDashPattern({5, 3});
        m_painter.setPen(pen);
        m_painter.drawLine(QPointF(m_plot.left(), yOf(severe)), QPointF(m_end, yOf(severe)));
        m_painter.setPen(m_style.muted);
        m_painter.drawText(QPointF(m_plot.left(), m_plot.top() - em() * 0.35),
                           m_style.say("bit errors in a second"));
        const QString note = m_style.say(QString("severely errored from %1").arg(severe));
        m_painter.drawText(
            QPointF(m_plot.right() - m_metrics.horizontalAdvance(note), m_plot.top() - em() * 0.35),
            note);
    }

    void paintBar(std::size_t index) const
    {
        const Column &column = m_columns[index];
        const double width = std::max(columnWidth() * 0.8, em() * 0.09);
        const double x = columnX(index) + (columnWidth() - width) / 2;
        if (column.outOfSync) {
            m_painter.setPen(QPen(m_style.bad, em() * 0.07));
            if (column.kind == SecondClass::Unavailable)
                m_painter.setBrush(Qt::NoBrush); // the hatching shows through
            else
                m_painter.setBrush(m_style.ground);
            m_painter.drawRect(
                QRectF(QPointF(x, m_plot.top() + em() * 0.5), QPointF(x + width, m_plot.bottom())));
            paintCross(m_painter, m_style, em(), x + width / 2, m_plot.top() + em() * 0.25);
            return;
        }
        if (column.errors == 0)
            return;
        const bool severe = isSevere(column);
        const double top = yOf(double(column.errors));
        m_painter.fillRect(QRectF(QPointF(x, top), QPointF(x + width, m_plot.bottom())),
                           severe ? m_style.bad : m_style.text);
        if (severe) // a mark of the plot stays within it
            paintTriangle(m_painter, m_style, em(), x + width / 2,
                          std::max(top, m_plot.top() + em() * 0.51));
    }

    bool isSevere(const Column &column) const
    {
        return 1000 * column.errors >= m_data.bitsPerSecond;
    }

    void paintBars() const
    {
        for (std::size_t i = 0; i < m_columns.size(); ++i)
            paintBar(i);
    }

    QPen provisionalPen() const
    {
        QPen pen(m_style.accent, em() * 0.12);
        pen.setDashPattern({1.2, 1.6});
        return pen;
    }

    void paintProvisional() const
    {
        stretches([](const Column &c) { return c.provisional; },
                  [this](std::size_t from, std::size_t to) {
                      m_painter.setPen(provisionalPen());
                      m_painter.setBrush(Qt::NoBrush);
                      m_painter.drawRect(
                          QRectF(QPointF(columnX(from), m_plot.top()),
                                 QPointF(std::min(columnX(to), m_end), m_plot.bottom())));
                  });
    }

    void paintTimeAxis() const
    {
        m_painter.setPen(QPen(m_style.text, em() * 0.07));
        m_painter.drawLine(m_plot.bottomLeft(), QPointF(m_end, m_plot.bottom()));
        static constexpr std::array<qint64, 17> steps{
            1, 2, 5, 10, 30, 60, 120, 180, 300, 600, 900, 1800, 3600, 7200, 14400, 21600, 86400};
        const double room = m_metrics.horizontalAdvance("00:00:00") * 1.5;
        qint64 step = steps.back();
        for (const qint64 candidate : steps) {
            step = candidate;
            if (xOf(double(candidate)) - xOf(0) >= room)
                break;
        }
        for (qint64 second = 0; second <= m_seconds; second += step) {
            const double x = xOf(double(second));
            m_painter.setPen(QPen(m_style.text, em() * 0.07));
            m_painter.drawLine(QPointF(x, m_plot.bottom()),
                               QPointF(x, m_plot.bottom() + em() * 0.25));
            const QString text = durationText(second);
            m_painter.setPen(m_style.muted);
            m_painter.drawText(QPointF(x - m_metrics.horizontalAdvance(text) / 2,
                                       m_plot.bottom() + em() * 0.35 + m_metrics.ascent()),
                               text);
        }
    }

    void paintEnd() const
    {
        paintMast(m_painter, m_style, em(), m_end, m_plot.top(), m_plot.bottom(), em() * 0.6);
    }

    /// Nothing stands there, not even the base line; the words only if there is room.
    void paintGap(const Stretch &gap) const
    {
        const QRectF area(QPointF(xOf(double(gap.from)), m_plot.top()),
                          QPointF(std::max(xOf(double(gap.to)), xOf(double(gap.from)) + em() * 0.2),
                                  m_plot.bottom() + em() * 0.1));
        m_painter.fillRect(area, m_style.ground);
        m_painter.setPen(gapPen(m_style, em()));
        m_painter.drawLine(area.topLeft(), area.bottomLeft());
        m_painter.drawLine(area.topRight(), area.bottomRight());
        m_painter.setPen(m_style.text);
        m_painter.setFont(m_style.font);
        for (const QString &word : {m_style.say("not watched"), QStringLiteral("?")})
            if (m_metrics.horizontalAdvance(word) < area.width()) {
                m_painter.drawText(area, Qt::AlignCenter, word);
                break;
            }
    }

    struct LegendEntry
    {
        const char *text;
        void (Strip::*sign)(const QRectF &) const;
    };

    /// A bar as it stands in the plot, in the middle of a box of the legend.
    QRectF legendBar(const QRectF &box) const
    {
        const double width = box.height() * 0.22;
        return QRectF(box.center().x() - width / 2, box.top() + box.height() * 0.45, width,
                      box.height() * 0.55);
    }
    void signErrored(const QRectF &box) const { m_painter.fillRect(legendBar(box), m_style.text); }
    void signSevere(const QRectF &box) const
    {
        m_painter.fillRect(legendBar(box), m_style.bad);
        paintTriangle(m_painter, m_style, em(), box.center().x(), legendBar(box).top());
    }
    void signOutOfSync(const QRectF &box) const
    {
        m_painter.setPen(QPen(m_style.bad, em() * 0.07));
        m_painter.setBrush(m_style.ground);
        m_painter.drawRect(legendBar(box));
        paintCross(m_painter, m_style, em(), box.center().x(), box.top() + box.height() * 0.15);
    }
    void signUnavailable(const QRectF &box) const { hatch(box); }
    void signProvisional(const QRectF &box) const
    {
        m_painter.setPen(provisionalPen());
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(box);
    }

    void signBin(const QRectF &box) const
    {
        m_painter.setPen(QPen(m_style.muted, em() * 0.07));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(legendBar(box));
    }

    void signNotRun(const QRectF &box) const
    {
        paintMast(m_painter, m_style, em(), box.left() + box.width() * 0.25, box.top(),
                  box.bottom(), box.height() * 0.5);
    }

    void signNotWatched(const QRectF &box) const
    {
        m_painter.setPen(gapPen(m_style, em()));
        m_painter.drawLine(box.topLeft(), box.bottomLeft());
        m_painter.drawLine(box.topRight(), box.bottomRight());
        m_painter.setPen(m_style.text);
        m_painter.drawText(box, Qt::AlignCenter, QStringLiteral("?"));
    }

    std::vector<LegendEntry> legend() const
    {
        std::vector<LegendEntry> entries{{"errored", &Strip::signErrored},
                                         {"severely errored", &Strip::signSevere},
                                         {"out of sync", &Strip::signOutOfSync},
                                         {"unavailable", &Strip::signUnavailable}};
        if (std::any_of(m_columns.begin(), m_columns.end(),
                        [](const Column &column) { return column.provisional; }))
            entries.push_back({"may yet change", &Strip::signProvisional});
        if (m_perColumn > 1)
            entries.push_back({m_binText.constData(), &Strip::signBin});
        if (!m_data.notWatched.empty())
            entries.push_back({"not watched", &Strip::signNotWatched});
        if (!m_whole) {
            const bool toCome = m_data.running || m_data.seconds.empty();
            entries.push_back({toCome ? "not yet run" : "not run", &Strip::signNotRun});
        }
        return entries;
    }

    void paintLegend() const
    {
        const std::vector<LegendEntry> shown = legend();
        double total = 0;
        for (const LegendEntry &entry : shown)
            total += em() * 2.6 + m_metrics.horizontalAdvance(m_style.say(entry.text));
        const double shrink = std::min(1.0, m_plot.width() / total);
        QFont font = m_style.font;
        font.setPixelSize(std::max(1, int(font.pixelSize() * shrink)));
        const QFontMetricsF metrics(font);
        const double size = metrics.height();
        double x = m_plot.left();
        const double base = m_plot.bottom() + em() * 2.95;
        for (const LegendEntry &entry : shown) {
            const QString text = m_style.say(entry.text);
            (this->*entry.sign)(QRectF(x, base - size * 0.85, size * 0.9, size * 0.9));
            m_painter.setPen(m_style.muted);
            m_painter.setFont(font);
            m_painter.drawText(QPointF(x + size * 1.2, base), text);
            x += size * 2.6 + metrics.horizontalAdvance(text);
        }
    }

    QPainter &m_painter;
    const StripData &m_data;
    const PictureStyle &m_style;
    QFontMetricsF m_metrics;
    qint64 m_seconds;
    QRectF m_plot;
    bool m_whole = true; ///< nothing of what was planned is missing
    double m_end = 0;    ///< where the seconds that were run end
    double m_decades = 1;
    qint64 m_perColumn = 1;
    QByteArray m_binText; ///< for the legend
    QRectF m_head;
    std::vector<Column> m_columns;
};

} // namespace

void paintStrip(QPainter &painter, const QRectF &rect, const StripData &data,
                const PictureStyle &style)
{
    painter.save();
    Strip(painter, rect, data, style).paint();
    painter.restore();
}

QByteArray stripPng(const StripData &data, double scale)
{
    return picturePng(stripSize, scale, [&](QPainter &painter, const QRectF &rect) {
        paintStrip(painter, rect.adjusted(10, 8, -10, -8), data, paperStyle(12));
    });
}

QByteArray stripSvg(const StripData &data)
{
    return pictureSvg(stripSize, "Bit errors per second",
                      [&](QPainter &painter, const QRectF &rect) {
                          paintStrip(painter, rect.adjusted(10, 8, -10, -8), data, paperStyle(12));
                      });
}

} // namespace loopwright
