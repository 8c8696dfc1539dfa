#include "app/desktop/widgets/ChipRow.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FlowLayout.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QPainter>

namespace loopwright {

namespace {

class ChipButton : public QAbstractButton
{
public:
    explicit ChipButton(const QString &name)
    {
        setText(name);
        setCheckable(true);
        setFocusPolicy(Qt::StrongFocus);
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }

    void setCount(int count, const QString &counted)
    {
        m_count = count;
        setAccessibleName(QStringLiteral("%1, %2 %3").arg(text()).arg(count).arg(counted));
        updateGeometry();
        update();
    }
    int count() const { return m_count; }

    QSize sizeHint() const override
    {
        const QFontMetrics name(sized(0.95, QFont::DemiBold));
        const QFontMetrics digits(sized(0.85));
        return {name.horizontalAdvance(text()) + digits.horizontalAdvance(countText()) + em(3.1),
                em(1.9)};
    }
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent *) override
    {
        const Colours &c = colours();
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const bool on = isChecked();
        painter.setPen(QPen(on ? c.accent : c.line, 1));
        painter.setBrush(on ? c.accent : (underMouse() ? c.raised : c.base));
        const QRectF pill = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
        painter.drawRoundedRect(pill, pill.height() / 2, pill.height() / 2);
        int x = em(0.8);
        painter.setPen(on ? c.onAccent : (m_count == 0 ? c.muted : c.text));
        if (on) {
            painter.setPen(QPen(c.onAccent, em(0.13), Qt::SolidLine, Qt::RoundCap));
            const double y = height() / 2.0;
            painter.drawPolyline(
                QPolygonF({QPointF(x - em(0.1), y + em(0.05)), QPointF(x + em(0.15), y + em(0.28)),
                           QPointF(x + em(0.6), y - em(0.28))}));
            painter.setPen(c.onAccent);
        }
        x += em(on ? 0.9 : 0.3);
        painter.setFont(sized(0.95, on ? QFont::DemiBold : QFont::Normal));
        painter.drawText(QRect(x, 0, width() - x, height()), Qt::AlignVCenter | Qt::AlignLeft,
                         text());
        painter.setFont(sized(0.85));
        painter.setPen(on ? c.onAccent : c.muted);
        painter.drawText(rect().adjusted(0, 0, -em(0.8), 0), Qt::AlignVCenter | Qt::AlignRight,
                         countText());
    }

private:
    QString countText() const { return QLocale().toString(m_count); }

    int m_count = 0;
};

} // namespace

ChipRow::ChipRow(const QString &row, const QString &title, const QList<Chip> &chips,
                 QWidget *parent)
    : QWidget(parent)
{
    setAccessibleName(title);
    m_one = tr("order");
    m_many = tr("orders");
    auto *layout = new FlowLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    QLabel *name = chips.size() > 1 ? new QLabel(title) : nullptr; // one alone says it itself
    if (name) {
        name->setForegroundRole(QPalette::PlaceholderText);
        layout->addWidget(name);
    }
    whenThemed(this, [layout, name] {
        layout->setSpacing(em(0.4));
        if (!name)
            return;
        name->setFont(sized(0.92));
        name->setFixedHeight(em(1.9));
        name->setMinimumWidth(em(3.2));
    });
    for (const Chip &chip : chips) {
        auto *button = new ChipButton(chip.name);
        button->setObjectName(QStringLiteral("chip.%1.%2").arg(row, chip.key));
        button->installEventFilter(this);
        connect(button, &QAbstractButton::clicked, this, [this, key = chip.key] {
            choose(m_chosen == key ? QString() : key);
            emit changed(m_chosen);
        });
        layout->addWidget(button);
        m_buttons << button;
        m_keys << chip.key;
    }
    setCounts({});
}

void ChipRow::choose(const QString &key)
{
    m_chosen = m_keys.contains(key) ? key : QString();
    for (int i = 0; i < m_buttons.size(); ++i)
        m_buttons[i]->setChecked(m_keys[i] == m_chosen && !m_chosen.isEmpty());
}

void ChipRow::setCounted(const QString &one, const QString &many)
{
    m_one = one;
    m_many = many;
    setCounts({});
}

void ChipRow::setCounts(const QMap<QString, int> &counts)
{
    for (int i = 0; i < m_buttons.size(); ++i) {
        const int count = counts.value(m_keys[i]);
        static_cast<ChipButton *>(m_buttons[i])->setCount(count, count == 1 ? m_one : m_many);
    }
    layout()->invalidate();
}

int ChipRow::count(const QString &key) const
{
    const qsizetype place = m_keys.indexOf(key);
    return place < 0 ? 0 : static_cast<ChipButton *>(m_buttons[place])->count();
}

bool ChipRow::eventFilter(QObject *object, QEvent *event)
{
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent *>(event)->key();
        const int step = key == Qt::Key_Right ? 1 : key == Qt::Key_Left ? -1 : 0;
        const auto place = m_buttons.indexOf(static_cast<QAbstractButton *>(object));
        if (step != 0 && place >= 0) {
            const auto count = m_buttons.size();
            m_buttons[(place + step + count) % count]->setFocus(Qt::TabFocusReason);
            return true;
        }
        if ((key == Qt::Key_Return || key == Qt::Key_Enter) && place >= 0) {
            m_buttons[place]->click();
            return true;
        }
    }
    return QWidget::eventFilter(object, event);
}

} // namespace loopwright
