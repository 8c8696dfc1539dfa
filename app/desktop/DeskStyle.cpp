#include "app/desktop/DeskStyle.h"

#include "app/desktop/Theme.h"

#include <QPainter>
#include <QStyleOption>

#include <algorithm>

namespace loopwright {

namespace {

/// Counts, flags and shifts, which a size factor must not touch, and widths of lines that are thin
/// on purpose.
constexpr QStyle::PixelMetric unscaledMetrics[] = {
    QStyle::PM_DefaultFrameWidth,      QStyle::PM_SpinBoxFrameWidth,
    QStyle::PM_ComboBoxFrameWidth,     QStyle::PM_MenuPanelWidth,
    QStyle::PM_ButtonShiftHorizontal,  QStyle::PM_ButtonShiftVertical,
    QStyle::PM_MaximumDragDistance,    QStyle::PM_TabBarTabShiftHorizontal,
    QStyle::PM_TabBarTabShiftVertical, QStyle::PM_TabBarBaseOverlap,
    QStyle::PM_MdiSubWindowFrameWidth, QStyle::PM_DockWidgetFrameWidth,
    QStyle::PM_ToolBarFrameWidth,      QStyle::PM_MenuBarPanelWidth,
    QStyle::PM_TextCursorWidth,        QStyle::PM_ScrollView_ScrollBarOverlap,
    QStyle::PM_SubMenuOverlap,         QStyle::PM_ToolTipLabelFrameWidth,
    QStyle::PM_MenuDesktopFrameWidth,  QStyle::PM_ScrollView_ScrollBarSpacing};

} // namespace

DeskStyle::DeskStyle(double factor)
    : QProxyStyle(QStringLiteral("Fusion"))
    , m_factor(factor)
{
}

int DeskStyle::pixelMetric(PixelMetric metric, const QStyleOption *option,
                           const QWidget *widget) const
{
    if (metric == PM_FocusFrameHMargin || metric == PM_FocusFrameVMargin)
        return int(3 * m_factor);
    const int usual = QProxyStyle::pixelMetric(metric, option, widget);
    if (usual <= 0 || std::ranges::find(unscaledMetrics, metric) != std::end(unscaledMetrics))
        return usual;
    return int(usual * m_factor + 0.5);
}

int DeskStyle::styleHint(StyleHint hint, const QStyleOption *option, const QWidget *widget,
                         QStyleHintReturn *answer) const
{
    if (hint == SH_FocusFrame_AboveWidget)
        return 1;
    if (hint == SH_UnderlineShortcut)
        return 1;
    return QProxyStyle::styleHint(hint, option, widget, answer);
}

void DeskStyle::drawControl(ControlElement element, const QStyleOption *option, QPainter *painter,
                            const QWidget *widget) const
{
    if (element == CE_FocusFrame) {
        const double width = 2 * m_factor;
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setPen(QPen(colours().accent, width));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(
            QRectF(option->rect).adjusted(width / 2, width / 2, -width / 2, -width / 2),
            3 * m_factor, 3 * m_factor);
        painter->restore();
        return;
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

void DeskStyle::drawPrimitive(PrimitiveElement element, const QStyleOption *option,
                              QPainter *painter, const QWidget *widget) const
{
    if (element == PE_FrameFocusRect)
        return; // the focus frame around the control says it, and says it better
    if (element == PE_PanelLineEdit || element == PE_FrameLineEdit) {
        const auto *frame = qstyleoption_cast<const QStyleOptionFrame *>(option);
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setBrush(element == PE_PanelLineEdit ? option->palette.brush(QPalette::Base)
                                                      : QBrush(Qt::NoBrush));
        const bool framed = element == PE_FrameLineEdit || (frame && frame->lineWidth > 0);
        painter->setPen(framed ? QPen(colours().frame, 1) : QPen(Qt::NoPen));
        painter->drawRoundedRect(QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5), 3 * m_factor,
                                 3 * m_factor);
        painter->restore();
        return;
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
}

} // namespace loopwright
