#include "app/desktop/Sidebar.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QLabel>
#include <QPaintEvent>
#include <QStyleOption>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

/// A flat button with its sign, its name and its key; the shown screen has a bar at its left edge.
class RailButton : public QToolButton
{
public:
    RailButton(GlyphShape glyph, int place)
        : m_glyph(glyph)
        , m_key(place <= 10 ? QString::number(place % 10) : QString())
    {
        setCheckable(true);
        setAutoExclusive(true);
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }

    void setNarrow(bool narrow)
    {
        m_narrow = narrow;
        updateGeometry();
    }

    QSize sizeHint() const override { return {em(m_narrow ? 3.2 : 9.5), em(2.7)}; }
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
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
        drawGlyph(painter, m_glyph, QRectF(em(0.95), (height() - side) / 2, side, side), ink,
                  c.raised);
        if (m_narrow)
            return;
        painter.setPen(ink);
        painter.setFont(sized(1, isChecked() ? QFont::DemiBold : QFont::Normal));
        const QRect words = rect().adjusted(em(2.9), 0, -em(m_key.isEmpty() ? 0.4 : 1.6), 0);
        const QFontMetrics metrics = painter.fontMetrics();
        QString name = text();
        if (metrics.horizontalAdvance(name) > words.width())
            name = name.section(u' ', -1); // "Job 26-0006": the number tells more
        painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft,
                         metrics.elidedText(name, Qt::ElideRight, words.width()));
        painter.setPen(isChecked() ? c.onSelected : c.muted);
        painter.setFont(sized(0.8));
        painter.drawText(rect().adjusted(0, 0, -em(0.7), 0), Qt::AlignVCenter | Qt::AlignRight,
                         m_key);
    }

private:
    GlyphShape m_glyph;
    QString m_key;
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

    QSize sizeHint() const override { return {em(m_narrow ? 3.2 : 9.5), em(m_narrow ? 2.2 : 3.8)}; }
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
    int place = 0;
    for (const ScreenEntry &entry : screens)
        if (!entry.under)
            addButton(entry, ++place);
    m_layout->addStretch(1);
    whenThemed(this, [this] { dress(); });
}

void Sidebar::addButton(const ScreenEntry &entry, int place)
{
    auto *button = new RailButton(entry.glyph, place);
    const QString key = QString::fromLatin1(entry.key);
    button->setObjectName("rail." + key);
    button->setText(tr(entry.name));
    m_names.insert(button->text(), place <= 10);
    button->setAccessibleName(tr(entry.name));
    button->setAccessibleDescription(tr(entry.hint));
    button->setToolTip(
        place <= 10 ? tr("%1 (Ctrl+%2)\n%3").arg(tr(entry.name)).arg(place % 10).arg(tr(entry.hint))
                    : tr(entry.hint));
    connect(button, &QToolButton::clicked, this, [this, key] { emit chosen(key); });
    m_layout->addWidget(button);
    m_places.insert(key, {button, entry.glyph});
}

void Sidebar::dress()
{
    m_layout->setContentsMargins(0, em(0.6), 0, em(0.6));
    // As wide as the longest name where it is the shown one; a job's number may be longer still.
    const QFontMetrics bold(sized(1, QFont::DemiBold));
    int wide = em(11.8);
    for (auto it = m_names.begin(); it != m_names.end(); ++it)
        wide = std::max(wide, bold.horizontalAdvance(it.key()) + em(it.value() ? 4.6 : 3.4));
    setFixedWidth(m_narrow ? em(3.2) : wide);
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
    if (const auto found = m_places.constFind(key); found != m_places.constEnd())
        found->button->setChecked(true);
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
