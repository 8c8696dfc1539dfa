#include "app/desktop/Sidebar.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QLabel>
#include <QPaintEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyleOption>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

constexpr double narrowEm = 3.2;
/// Beside the buttons, for the frame around the one that has the keyboard.
constexpr double marginEm = 0.25;

/// A flat button with its sign and its name; the shown screen has a bar at its left edge. Its key
/// stands in its tip alone: on the rail a digit would look like a count.
class RailButton : public QToolButton
{
public:
    RailButton(GlyphShape glyph, QScrollArea &area)
        : m_area(area)
        , m_glyph(glyph)
    {
        setCheckable(true);
        setAutoExclusive(true);
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
    }

    void setNarrow(bool narrow)
    {
        m_narrow = narrow;
        updateGeometry();
    }

    void bringIntoView() { m_area.ensureWidgetVisible(this, 0, em(0.4)); }

    QSize sizeHint() const override { return {em(m_narrow ? 1.6 : 9), em(2.7)}; }
    QSize minimumSizeHint() const override { return {sizeHint().width(), em(2)}; }

protected:
    void focusInEvent(QFocusEvent *event) override
    {
        QToolButton::focusInEvent(event);
        bringIntoView();
    }
    void paintEvent(QPaintEvent *) override
    {
        const Colours &c = colours();
        QPainter painter(this);
        if (isChecked() || underMouse())
            painter.fillRect(rect(), isChecked() ? c.selected : c.window);
        const QColor ink = isChecked() ? c.onSelected : c.text;
        if (isChecked())
            painter.fillRect(0, 0, em(0.25), height(), c.accent);
        const double side = em(1.25);
        const double left = m_narrow ? (width() - side) / 2 : em(0.95 - marginEm);
        drawGlyph(painter, m_glyph, QRectF(left, (height() - side) / 2, side, side), ink, c.raised);
        if (m_narrow)
            return;
        painter.setPen(ink);
        painter.setFont(sized(1, isChecked() ? QFont::DemiBold : QFont::Normal));
        const QRect words = rect().adjusted(em(2.9 - marginEm), 0, -em(0.3), 0);
        const QFontMetrics metrics = painter.fontMetrics();
        QString name = text();
        if (metrics.horizontalAdvance(name) > words.width())
            name = name.section(u' ', -1); // "Job 26-0006": the number tells more
        painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft,
                         metrics.elidedText(name, Qt::ElideRight, words.width()));
    }

private:
    QScrollArea &m_area;
    GlyphShape m_glyph;
    bool m_narrow = false;
};

/// A run that goes on: its order, and large what is left of it.
class RunButton : public QToolButton
{
public:
    explicit RunButton(const QString &order)
        : m_order(order)
    {
        setObjectName("rail.run." + order);
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        setAccessibleName(Sidebar::tr("Run, %1").arg(m_order));
    }

    void setNarrow(bool narrow)
    {
        m_narrow = narrow;
        updateGeometry();
    }
    /// "12:34". Painted each second, and told to a screen reader once a minute: so it is no text of
    /// the button, for that would be its name.
    void setLeft(const QString &left)
    {
        const QString words = Sidebar::tr("Run of order %1: %2 left").arg(m_order, left);
        if (left.section(u':', 0, -2) != m_left.section(u':', 0, -2))
            setAccessibleDescription(words);
        setToolTip(asTip(words));
        m_left = left;
        update();
    }

    QSize sizeHint() const override
    {
        return {em(m_narrow ? narrowEm : 9.5), em(m_narrow ? 2.2 : 3.8)};
    }
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent *) override
    {
        const Colours &c = colours();
        QPainter painter(this);
        if (underMouse())
            painter.fillRect(rect(), c.window);
        painter.fillRect(0, 0, width(), std::max(1, em(0.07)), c.frame);
        const QRect room = rect().adjusted(em(m_narrow ? 0.15 : 0.95), em(0.2), -em(0.15), 0);
        painter.setPen(c.text);
        QFont digits = digitsFont(m_narrow ? 0.9 : 1.6, QFont::Bold);
        while (QFontMetrics(digits).horizontalAdvance(m_left) > room.width() &&
               digits.pixelSize() > 6)
            digits.setPixelSize(digits.pixelSize() - 1);
        painter.setFont(digits);
        if (m_narrow) {
            painter.drawText(room, Qt::AlignCenter, m_left);
            return;
        }
        painter.drawText(room.adjusted(0, em(1.2), 0, 0), Qt::AlignVCenter | Qt::AlignLeft, m_left);
        painter.setPen(c.muted);
        painter.setFont(sized(0.85));
        painter.drawText(room.adjusted(0, em(0.2), 0, 0), Qt::AlignTop | Qt::AlignLeft,
                         painter.fontMetrics().elidedText(Sidebar::tr("Run, %1").arg(m_order),
                                                          Qt::ElideRight, room.width()));
    }

private:
    QString m_order, m_left;
    bool m_narrow = false;
};

} // namespace

Sidebar::Sidebar(std::span<const ScreenEntry> screens, QWidget *parent)
    : QFrame(parent)
    , m_layout(new QVBoxLayout(this))
{
    setObjectName(QStringLiteral("rail"));
    setAccessibleName(tr("Screens"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    m_layout->setSpacing(0);
    m_layout->setContentsMargins(0, 0, 0, 0);
    auto *sheet = new QWidget;
    m_buttons = new QVBoxLayout(sheet);
    m_buttons->setSpacing(0);
    m_area = inScrollArea(sheet);
    m_area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_layout->addWidget(m_area, 1);
    connect(m_area->verticalScrollBar(), &QScrollBar::rangeChanged, this, &Sidebar::showChecked);
    int place = 0;
    for (const ScreenEntry &entry : screens)
        if (!entry.under)
            addButton(entry, ++place);
    m_buttons->addStretch(1);
    whenThemed(this, [this] { dress(); });
}

void Sidebar::addButton(const ScreenEntry &entry, int place)
{
    auto *button = new RailButton(entry.glyph, *m_area);
    const QString key = QString::fromLatin1(entry.key);
    button->setObjectName("rail." + key);
    button->setText(tr(entry.name));
    m_names << button->text();
    button->setAccessibleName(tr(entry.name));
    button->setAccessibleDescription(tr(entry.hint));
    button->setToolTip(
        place <= 10 ? tr("%1 (Ctrl+%2)\n%3").arg(tr(entry.name)).arg(place % 10).arg(tr(entry.hint))
                    : tr(entry.hint));
    connect(button, &QToolButton::clicked, this, [this, key] { emit chosen(key); });
    m_buttons->addWidget(button);
    m_places.insert(key, {button, entry.glyph});
}

void Sidebar::dress()
{
    m_layout->setContentsMargins(0, 0, 0, em(0.6));
    m_buttons->setContentsMargins(em(marginEm), em(0.6), em(marginEm), em(marginEm));
    m_area->setMinimumSize(em(1), em(6));
    // As wide as the longest name where it is the shown one; a job's number may be longer still.
    const QFontMetrics bold(sized(1, QFont::DemiBold));
    int wide = em(11.8);
    for (const QString &name : std::as_const(m_names))
        wide = std::max(wide, bold.horizontalAdvance(name) + em(3.4 + 2 * marginEm));
    setFixedWidth(m_narrow ? em(narrowEm) : wide);
    for (const Place &place : std::as_const(m_places))
        static_cast<RailButton *>(place.button)->setNarrow(m_narrow);
    for (QToolButton *run : std::as_const(m_runs))
        static_cast<RunButton *>(run)->setNarrow(m_narrow);
}

void Sidebar::showRuns(const QMap<QString, QString> &left)
{
    for (auto it = m_runs.begin(); it != m_runs.end();) {
        if (left.contains(it.key())) {
            ++it;
            continue;
        }
        it.value()->hide();
        it.value()->deleteLater(); // it may be speaking
        it = m_runs.erase(it);
    }
    for (auto it = left.begin(); it != left.end(); ++it) {
        QToolButton *&run = m_runs[it.key()];
        if (!run) {
            auto *button = new RunButton(it.key());
            button->setNarrow(m_narrow);
            connect(button, &QToolButton::clicked, this,
                    [this, order = it.key()] { emit runChosen(order); });
            m_layout->addWidget(button);
            button->show();
            run = button;
        }
        static_cast<RunButton *>(run)->setLeft(it.value());
    }
}

void Sidebar::setCurrent(const QString &key)
{
    if (const auto found = m_places.constFind(key); found != m_places.constEnd()) {
        found->button->setChecked(true);
        showChecked();
    }
}

void Sidebar::showChecked() const
{
    for (const Place &place : m_places)
        if (place.button->isChecked())
            static_cast<RailButton *>(place.button)->bringIntoView();
}

void Sidebar::setName(const QString &key, const QString &name)
{
    if (const auto found = m_places.constFind(key); found != m_places.constEnd()) {
        found->button->setText(name);
        found->button->setAccessibleName(name);
        found->button->update();
    }
}

void Sidebar::setNarrow(bool narrow)
{
    if (m_narrow == narrow)
        return;
    m_narrow = narrow;
    dress();
}

} // namespace loopwright
