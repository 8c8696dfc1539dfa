#include "app/desktop/widgets/JobLineView.h"

#include "app/desktop/Language.h"
#include "app/desktop/PictureLook.h"
#include "app/print/JobLinePainter.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QResizeEvent>
#include <QToolTip>

#include <algorithm>

namespace loopwright {

namespace {

constexpr double usualEm = 5.4; ///< a station has so much where nothing else is asked for
constexpr double rowHeightEm = 4.6;
constexpr double lowHeightEm = 4.1;
constexpr double marginEm = 0.2;
/// Where a name would have to be smaller, the line takes a further row; but no more than so many.
constexpr double leastNameEm = 0.75;
constexpr std::size_t mostRows = 3;
constexpr double shareOfNames = 0.94; ///< of the width of a station, as the painter has it

std::size_t rowsOf(std::size_t stations, std::size_t each)
{
    return (stations + each - 1) / each;
}

QString spoken(const StationState &state)
{
    return JobLineView::tr("%1: %2").arg(localizedWord(state.name()), localizedWord(state.word()));
}

} // namespace

JobLineView::JobLineView(QWidget *parent)
    : QWidget(parent)
{
    setObjectName(QStringLiteral("jobLine"));
    setAccessibleName(tr("Job line"));
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true); // further rows where one has no room
    setSizePolicy(policy);
    setChoosable(true);
    whenThemed(this, [this] { updateGeometry(); });
}

void JobLineView::setLine(const std::vector<StationState> &line)
{
    m_line = line;
    m_pointed = -1;
    QStringList words;
    for (const StationState &state : line)
        words << spoken(state);
    setAccessibleDescription(words.join(u", "));
    updateGeometry(); // the room for the names may have come since the last line
    update();
}

void JobLineView::setChoosable(bool choosable)
{
    m_choosable = choosable;
    setFocusPolicy(choosable ? Qt::StrongFocus : Qt::NoFocus);
    setCursor(choosable ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void JobLineView::setLow(bool low)
{
    if (low == m_low)
        return;
    m_low = low;
    updateGeometry();
    update();
}

QSize JobLineView::sizeHint() const
{
    return {em(usualEm * 9), heightForWidth(width())};
}

QSize JobLineView::minimumSizeHint() const
{
    return {em(18), heightForWidth(width())};
}

double JobLineView::longestName(const QFont &font) const
{
    const QFontMetricsF metrics(font);
    double longest = 1;
    for (const StationState &state : m_line)
        for (const QString &word : {state.name(), state.word()})
            longest = std::max(longest, metrics.horizontalAdvance(localizedWord(word)));
    return longest;
}

std::size_t JobLineView::perRow(int width) const
{
    const std::size_t all = std::max<std::size_t>(1, m_line.size());
    const double longest = longestName(screenPictureStyle({}, leastNameEm).font);
    const double room = width - 2 * em(marginEm);
    std::size_t each = all;
    for (std::size_t rows = 2; rows <= mostRows && room / double(each) * shareOfNames < longest;
         ++rows)
        each = rowsOf(all, rows);
    return each;
}

int JobLineView::heightForWidth(int width) const
{
    const std::size_t rows = rowsOf(std::max<std::size_t>(1, m_line.size()), perRow(width));
    return int(rows) * em(m_low ? lowHeightEm : rowHeightEm);
}

QRectF JobLineView::stationRect(std::size_t station) const
{
    const QRectF room =
        QRectF(rect()).adjusted(em(marginEm), em(marginEm), -em(marginEm), -em(marginEm));
    const std::size_t each = perRow(width());
    const double step = room.width() / double(each);
    const double high = room.height() / double(rowsOf(m_line.size(), each));
    const std::size_t row = station / each;
    return {room.x() + step * double(station % each), room.y() + high * double(row), step, high};
}

int JobLineView::stationUnder(const QPointF &point) const
{
    for (std::size_t i = 0; i < m_line.size(); ++i)
        if (stationRect(i).contains(point))
            return int(i);
    return -1;
}

void JobLineView::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    // The height hangs on the width; the layout may have asked at another one.
    if (event->oldSize().width() != width())
        updateGeometry();
}

void JobLineView::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const PictureStyle style =
        screenPictureStyle(palette().color(backgroundRole()), m_low ? 0.85 : 0.92);
    const std::size_t each = perRow(width());
    for (std::size_t first = 0; first < m_line.size(); first += each) {
        const std::size_t last = std::min(first + each, m_line.size()) - 1;
        const std::vector<StationState> row(m_line.begin() + std::ptrdiff_t(first),
                                            m_line.begin() + std::ptrdiff_t(last) + 1);
        paintJobLine(painter, stationRect(first).united(stationRect(last)), row, style);
    }
    if (m_pointed >= 0 && hasFocus()) {
        painter.setPen(QPen(colours().accent, em(0.12), Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(stationRect(std::size_t(m_pointed)), em(0.3), em(0.3));
    }
}

void JobLineView::mousePressEvent(QMouseEvent *event)
{
    const int station = stationUnder(event->position());
    if (m_choosable && station >= 0)
        emit chosen(m_line[std::size_t(station)].station);
}

QString JobLineView::partName(int part) const
{
    return spoken(m_line[std::size_t(part)]);
}

QRect JobLineView::partRect(int part) const
{
    return stationRect(std::size_t(part)).toRect();
}

void JobLineView::choosePart(int part)
{
    if (m_choosable)
        emit chosen(m_line[std::size_t(part)].station);
}

void JobLineView::point(int station)
{
    m_pointed = std::clamp(station, 0, int(m_line.size()) - 1);
    setAccessibleName(tr("Job line, %1").arg(spoken(m_line[std::size_t(m_pointed)])));
    update();
}

void JobLineView::keyPressEvent(QKeyEvent *event)
{
    const int key = event->key();
    if (m_line.empty())
        return event->ignore();
    if (key == Qt::Key_Left || key == Qt::Key_Right)
        return point(m_pointed + (key == Qt::Key_Right ? 1 : -1));
    if ((key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space) && m_pointed >= 0) {
        emit chosen(m_line[std::size_t(m_pointed)].station);
        return;
    }
    QWidget::keyPressEvent(event);
}

void JobLineView::focusInEvent(QFocusEvent *event)
{
    QWidget::focusInEvent(event);
    if (m_line.empty() || m_pointed >= 0)
        return;
    const auto next = std::ranges::find_if(m_line, &StationState::next);
    point(next == m_line.end() ? 0 : int(next - m_line.begin()));
}

void JobLineView::focusOutEvent(QFocusEvent *event)
{
    QWidget::focusOutEvent(event);
    update();
}

bool JobLineView::event(QEvent *event)
{
    if (event->type() == QEvent::ToolTip) {
        auto *help = static_cast<QHelpEvent *>(event);
        const int station = stationUnder(help->pos());
        if (station >= 0)
            QToolTip::showText(help->globalPos(), spoken(m_line[std::size_t(station)]), this);
        return true;
    }
    return QWidget::event(event);
}

} // namespace loopwright
