#include "app/desktop/widgets/SpidParts.h"

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QPainter>

#include <algorithm>

namespace loopwright {

namespace {

QString meaningOf(const SpidPart &part)
{
    return part.kind == SpidPartKind::Other ? SpidParts::tr("not known")
                                            : localizedWord(part.meaning);
}

} // namespace

QString localizedParts(const SpidCheck &check)
{
    const QString between = QStringLiteral(" · ");
    QStringList parts = check.inWords().split(between, Qt::SkipEmptyParts);
    for (QString &part : parts)
        part = part.section(u' ', 0, 0) + ' ' + localizedWord(part.section(u' ', 1));
    return parts.join(between);
}

SpidParts::SpidParts(QWidget *parent)
    : QWidget(parent)
{
    setObjectName(QStringLiteral("spidParts"));
    setAccessibleName(tr("SPID taken apart"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    whenThemed(this, [this] { updateGeometry(); });
}

void SpidParts::setCheck(const SpidCheck &check)
{
    m_parts = check.parts;
    setAccessibleDescription(m_parts.empty() ? tr("nothing to take apart") : localizedParts(check));
    setToolTip(asTip(localizedParts(check)));
    updateGeometry();
    update();
}

void SpidParts::setTimes(double times)
{
    m_times = times;
    updateGeometry();
}

double SpidParts::partWidth(const SpidPart &part) const
{
    const QFontMetricsF digits(digitsFont(1.2 * m_times, QFont::DemiBold));
    const QFontMetricsF words(sized(0.78 * m_times));
    return std::max(digits.horizontalAdvance(part.digits),
                    words.horizontalAdvance(meaningOf(part)) - em(0.8 * m_times)) +
           em(0.9 * m_times);
}

QSize SpidParts::sizeHint() const
{
    double width = em(0.4);
    for (const SpidPart &part : m_parts)
        width += partWidth(part) + em(0.35 * m_times);
    return {int(width), em(3.3 * m_times)};
}

QSize SpidParts::minimumSizeHint() const
{
    return {em(8), em(3.3 * m_times)};
}

std::vector<SpidParts::Box> SpidParts::boxes() const
{
    std::vector<Box> all;
    const double gap = em(0.35 * m_times);
    double needed = 0;
    for (const SpidPart &part : m_parts)
        needed += partWidth(part) + gap;
    const double shrink = std::min(1.0, (width() - 2) / std::max(1.0, needed));
    double x = 1;
    for (const SpidPart &part : m_parts) {
        const double wide = partWidth(part) * shrink;
        all.push_back({QRectF(x, 1, wide, em(1.9 * m_times)), &part});
        x += wide + gap * shrink;
    }
    return all;
}

void SpidParts::paintEvent(QPaintEvent *)
{
    const Colours &c = colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const Box &box : boxes()) {
        const bool known = box.part->kind != SpidPartKind::Other;
        painter.setPen(
            QPen(known ? c.accent : c.muted, em(0.08), known ? Qt::SolidLine : Qt::DashLine));
        painter.setBrush(c.base);
        painter.drawRoundedRect(box.rect, em(0.25), em(0.25));
        painter.setPen(c.text);
        painter.setFont(digitsFont(1.2 * m_times, QFont::DemiBold));
        painter.drawText(box.rect, Qt::AlignCenter, box.part->digits);
        painter.setPen(c.muted);
        painter.setFont(sized(0.78 * m_times));
        const QRectF below(box.rect.x() - em(0.2), box.rect.bottom() + 1,
                           box.rect.width() + em(0.4), em(1.25 * m_times));
        painter.drawText(below, Qt::AlignHCenter | Qt::AlignTop,
                         painter.fontMetrics().elidedText(meaningOf(*box.part), Qt::ElideRight,
                                                          int(below.width())));
    }
}

} // namespace loopwright
