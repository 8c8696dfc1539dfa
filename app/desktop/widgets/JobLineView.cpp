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

constexpr double besideEm = 5.4; ///< a station needs so much where all names stand in one row
constexpr double rowHeightEm = 4.6;
constexpr double lowHeightEm = 4.1;
constexpr double staggeredHeightEm = 7.8;

bool hasRoomBeside(int width, std::size_t stations)
{
    return width >= em(besideEm) * int(stations);
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
    policy.setHeightForWidth(true); // two rows of names where one has no room
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
    return {em(besideEm * 9), heightForWidth(width())};
}

QSize JobLineView::minimumSizeHint() const
{
    return {em(18), heightForWidth(width())};
}

int JobLineView::heightForWidth(int width) const
{
    if (!hasRoomBeside(width, m_line.size()))
        return em(staggeredHeightEm);
    return em(m_low ? lowHeightEm : rowHeightEm);
}

QRectF JobLineView::room() const
{
    return QRectF(rect()).adjusted(em(0.2), em(0.2), -em(0.2), -em(0.2));
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
    if (hasRoomBeside(width(), m_line.size()))
        paintJobLine(painter, room(), m_line,
                     screenPictureStyle(palette().color(backgroundRole()), m_low ? 0.85 : 0.92));
    else
        paintStaggered(painter);
    if (m_pointed >= 0 && hasFocus()) {
        const double width = room().width() / double(m_line.size());
        const QRectF mark(room().x() + m_pointed * width, room().y(), width, room().height());
        painter.setPen(QPen(colours().accent, em(0.12), Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(mark, em(0.3), em(0.3));
    }
}

void JobLineView::paintStaggered(QPainter &painter) const
{
    const PictureStyle style = screenPictureStyle(palette().color(backgroundRole()), 0.85);
    const QRectF rect = room();
    const double step = rect.width() / double(std::max<std::size_t>(1, m_line.size()));
    const double y = rect.top() + em(3.2);
    const double radius = em(0.62);
    QFont font = style.font;
    const std::vector<QRectF> words = staggeredWords(font);
    for (std::size_t i = 0; i < m_line.size(); ++i) {
        const QPointF centre(rect.x() + (double(i) + 0.5) * step, y);
        if (i + 1 < m_line.size()) {
            painter.setPen(QPen(style.muted, em(0.1)));
            painter.drawLine(centre + QPointF(radius * 1.6, 0),
                             centre + QPointF(step - radius * 1.6, 0));
        }
        paintStationMark(painter, centre, radius, m_line[i], style);
        paintWords(painter, i, words[i], font, style);
    }
}

std::vector<QRectF> JobLineView::staggeredWords(QFont &font) const
{
    const QRectF rect = room();
    const double step = rect.width() / double(std::max<std::size_t>(1, m_line.size()));
    std::vector<QRectF> words;
    for (std::size_t i = 0; i < m_line.size(); ++i) {
        const bool above = i % 2 != 0;
        const double half = step * 0.98;
        QRectF place(rect.x() + (double(i) + 0.5) * step - half,
                     above ? rect.top() : rect.top() + em(4.1), 2 * half,
                     above ? em(2.3) : em(3.4));
        if (i == 0)
            place.setLeft(rect.left());
        if (i + 1 == m_line.size())
            place.setRight(rect.right());
        words.push_back(place.intersected(rect.adjusted(0, 0, 0, em(10))));
    }
    double tightest = 1;
    for (std::size_t i = 0; i < m_line.size(); ++i) {
        QFont strong = font;
        strong.setBold(m_line[i].next);
        // Above, a name stands on one line; below, one of two words on two.
        const QString name = localizedWord(m_line[i].name());
        const QStringList lines = i % 2 != 0 ? QStringList{name} : name.split(u' ');
        for (const QString &text : lines + QStringList{localizedWord(m_line[i].word())}) {
            const double needed = QFontMetricsF(strong).horizontalAdvance(text);
            tightest = std::min(tightest, words[i].width() / std::max(1.0, needed));
        }
    }
    if (tightest < 1)
        font.setPixelSize(std::max(1, int(QFontInfo(font).pixelSize() * tightest)));
    return words;
}

void JobLineView::paintWords(QPainter &painter, std::size_t i, const QRectF &place,
                             const QFont &font, const PictureStyle &style) const
{
    const StationState &state = m_line[i];
    const Qt::Alignment side = i == 0                   ? Qt::AlignLeft
                               : i + 1 == m_line.size() ? Qt::AlignRight
                                                        : Qt::AlignHCenter;
    QFont named = font;
    named.setBold(state.next);
    painter.setFont(named);
    painter.setPen(state.next ? style.accent : style.text);
    // Below stand five names: one of two words takes two lines, so that none runs into the next.
    QString name = localizedWord(state.name());
    if (i % 2 == 0)
        name.replace(u' ', u'\n');
    painter.drawText(place, int(side | Qt::AlignTop), name);
    QRectF below = place;
    below.setTop(place.top() + QFontMetricsF(named).height() * double(name.count(u'\n') + 1));
    painter.setFont(font);
    painter.setPen(state.mark == StationMark::Failed ? style.bad : style.muted);
    painter.drawText(below, int(side | Qt::AlignTop), localizedWord(state.word()));
}

void JobLineView::mousePressEvent(QMouseEvent *event)
{
    const int station = stationAt(room(), m_line.size(), event->position());
    if (m_choosable && station >= 0)
        emit chosen(m_line[std::size_t(station)].station);
}

QString JobLineView::partName(int part) const
{
    return spoken(m_line[std::size_t(part)]);
}

QRect JobLineView::partRect(int part) const
{
    const double step = double(width()) / double(m_line.size());
    return QRectF(step * part, 0, step, height()).toRect();
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
        const int station = stationAt(room(), m_line.size(), help->pos());
        if (station >= 0)
            QToolTip::showText(help->globalPos(), spoken(m_line[std::size_t(station)]), this);
        return true;
    }
    return QWidget::event(event);
}

} // namespace loopwright
