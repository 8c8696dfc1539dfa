#include "app/desktop/DeskStyle.h"

#include "app/desktop/DeskPaint.h"

#include <QFontDatabase>
#include <QPainter>
#include <QStyleOption>
#include <QToolTip>

#include <algorithm>

namespace loopwright {

namespace {

/// Counts, flags and shifts, which a size factor must not touch, widths of lines that are thin on
/// purpose, and widths that Qt takes from PM_DefaultFrameWidth, which is scaled.
constexpr QStyle::PixelMetric unscaledMetrics[] = {
    QStyle::PM_SpinBoxFrameWidth,      QStyle::PM_ComboBoxFrameWidth,
    QStyle::PM_ButtonShiftHorizontal,  QStyle::PM_ButtonShiftVertical,
    QStyle::PM_MaximumDragDistance,    QStyle::PM_TabBarTabShiftHorizontal,
    QStyle::PM_TabBarTabShiftVertical, QStyle::PM_TabBarBaseOverlap,
    QStyle::PM_MdiSubWindowFrameWidth, QStyle::PM_DockWidgetFrameWidth,
    QStyle::PM_ToolBarFrameWidth,      QStyle::PM_MenuBarPanelWidth,
    QStyle::PM_TextCursorWidth,        QStyle::PM_ScrollView_ScrollBarOverlap,
    QStyle::PM_SubMenuOverlap,         QStyle::PM_ToolTipLabelFrameWidth,
    QStyle::PM_MenuDesktopFrameWidth,  QStyle::PM_ScrollView_ScrollBarSpacing};

bool isHitWithGloves(const QWidget *widget)
{
    for (; widget; widget = widget->parentWidget())
        if (widget->property(hitWithGloves).toBool())
            return true;
    return false;
}

/// Where the sign points; NoArrow where it is none.
Qt::ArrowType arrowOf(QStyle::PrimitiveElement element, const QStyleOption *option)
{
    switch (element) {
    case QStyle::PE_IndicatorArrowUp:
        return Qt::UpArrow;
    case QStyle::PE_IndicatorArrowDown:
        return Qt::DownArrow;
    case QStyle::PE_IndicatorArrowLeft:
        return Qt::LeftArrow;
    case QStyle::PE_IndicatorArrowRight:
        return Qt::RightArrow;
    case QStyle::PE_IndicatorHeaderArrow:
        if (const auto *header = qstyleoption_cast<const QStyleOptionHeader *>(option))
            return header->sortIndicator == QStyleOptionHeader::SortUp     ? Qt::UpArrow
                   : header->sortIndicator == QStyleOptionHeader::SortDown ? Qt::DownArrow
                                                                           : Qt::NoArrow;
        return Qt::NoArrow;
    default:
        return Qt::NoArrow;
    }
}

/// A scroll bar without arrows: the handle has the whole length of its bar.
QRect scrollBarPart(const QStyleOptionSlider &bar, QStyle::SubControl part, int leastHandle)
{
    const bool level = bar.orientation == Qt::Horizontal;
    const QRect whole = bar.rect;
    const int length = level ? whole.width() : whole.height();
    const qint64 range = qint64(bar.maximum) - bar.minimum;
    const int least = std::min(leastHandle, length);
    const int handle = range <= 0 ? length
                                  : std::clamp(int(qint64(length) * bar.pageStep /
                                                   std::max<qint64>(1, range + bar.pageStep)),
                                               least, length);
    const int from = QStyle::sliderPositionFromValue(bar.minimum, bar.maximum, bar.sliderPosition,
                                                     length - handle, bar.upsideDown);
    const auto stretch = [&](int start, int end) {
        const QRect rect = level ? QRect(whole.x() + start, whole.y(), end - start, whole.height())
                                 : QRect(whole.x(), whole.y() + start, whole.width(), end - start);
        return QStyle::visualRect(bar.direction, whole, rect);
    };
    switch (part) {
    case QStyle::SC_ScrollBarGroove:
        return whole;
    case QStyle::SC_ScrollBarSlider:
        return stretch(from, from + handle);
    case QStyle::SC_ScrollBarSubPage:
        return stretch(0, from);
    case QStyle::SC_ScrollBarAddPage:
        return stretch(from + handle, length);
    default:
        return {};
    }
}

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
    if (metric == PM_MenuPanelWidth) // Fusion leaves no room for the frame, and so paints none
        return scaled(1);
    const int usual = QProxyStyle::pixelMetric(metric, option, widget);
    if (usual <= 0 || std::ranges::find(unscaledMetrics, metric) != std::end(unscaledMetrics))
        return usual;
    return qRound(usual * m_factor);
}

int DeskStyle::styleHint(StyleHint hint, const QStyleOption *option, const QWidget *widget,
                         QStyleHintReturn *answer) const
{
    if (hint == SH_FocusFrame_AboveWidget)
        return 1;
    if (hint == SH_UnderlineShortcut)
        return 1;
    if (hint == SH_DialogButtonBox_ButtonsHaveIcons)
        return 0; // words say it, and are seen in every look
    return QProxyStyle::styleHint(hint, option, widget, answer);
}

QSize DeskStyle::sizeFromContents(ContentsType type, const QStyleOption *option, const QSize &size,
                                  const QWidget *widget) const
{
    const QSize usual = QProxyStyle::sizeFromContents(type, option, size, widget);
    const QSize least(0, isHitWithGloves(widget) ? em(hitEm) : 0);
    switch (type) {
    case CT_PushButton:
        return (usual + QSize(scaled(10), scaled(4))).expandedTo(least);
    case CT_LineEdit:
    case CT_ComboBox:
        return (usual + QSize(0, scaled(5))).expandedTo(least);
    case CT_HeaderSection:
    case CT_TabBarTab:
        return usual + QSize(type == CT_HeaderSection ? em(0.8) : 0, scaled(6));
    case CT_MenuItem:
        return usual + QSize(scaled(8), scaled(4));
    case CT_ToolButton: // the arrow of its menu stands beside the text, not on it
        if (const auto *tool = qstyleoption_cast<const QStyleOptionToolButton *>(option);
            tool && tool->features & QStyleOptionToolButton::HasMenu)
            return usual + QSize(scaled(14), 0);
        return usual;
    default:
        return usual;
    }
}

QRect DeskStyle::subControlRect(ComplexControl control, const QStyleOptionComplex *option,
                                SubControl part, const QWidget *widget) const
{
    const auto *bar = qstyleoption_cast<const QStyleOptionSlider *>(option);
    if (control == CC_ScrollBar && bar)
        return scrollBarPart(*bar, part, scaled(26));
    if (control == CC_ComboBox && (part == SC_ComboBoxArrow || part == SC_ComboBoxEditField))
        return visualRect(option->direction, option->rect, comboPart(option->rect, part));
    return QProxyStyle::subControlRect(control, option, part, widget);
}

/// The sign at the end, the text before it; neither touches the frame.
QRect DeskStyle::comboPart(const QRect &whole, SubControl part) const
{
    const int line = scaled(2), sign = scaled(20);
    const int start = whole.right() + 1 - sign - line;
    if (part == SC_ComboBoxArrow)
        return {start, whole.top() + line, sign, whole.height() - 2 * line};
    const int left = whole.left() + scaled(5);
    return {left, whole.top() + line, start - left, whole.height() - 2 * line};
}

void DeskStyle::drawControl(ControlElement element, const QStyleOption *option, QPainter *painter,
                            const QWidget *widget) const
{
    if (element == CE_FocusFrame)
        return paintFocusFrame(*painter, option->rect, m_factor);
    if (element == CE_HeaderSection)
        if (const auto *header = qstyleoption_cast<const QStyleOptionHeader *>(option))
            return paintHeader(*painter, *header);
    if (element == CE_MenuItem)
        if (const auto *item = qstyleoption_cast<const QStyleOptionMenuItem *>(option);
            item && item->menuItemType == QStyleOptionMenuItem::Separator && item->text.isEmpty())
            return paintMenuSeparator(*painter, option->rect, m_factor);
    if (element == CE_ComboBoxLabel)
        if (const auto *combo = qstyleoption_cast<const QStyleOptionComboBox *>(option)) {
            QStyleOptionComboBox shortened = *combo;
            const QRect room = subControlRect(CC_ComboBox, combo, SC_ComboBoxEditField, widget);
            shortened.currentText = combo->fontMetrics.elidedText(
                combo->currentText, Qt::ElideRight, room.width() - scaled(2));
            return QProxyStyle::drawControl(element, &shortened, painter, widget);
        }
    if (element == CE_TabBarTabShape)
        if (const auto *tab = qstyleoption_cast<const QStyleOptionTab *>(option))
            return paintTab(*painter, *tab, m_factor);
    QProxyStyle::drawControl(element, option, painter, widget);
}

void DeskStyle::drawPrimitive(PrimitiveElement element, const QStyleOption *option,
                              QPainter *painter, const QWidget *widget) const
{
    if (const Qt::ArrowType to = arrowOf(element, option); to != Qt::NoArrow)
        return paintArrow(*painter, *option, to, m_factor);
    switch (element) {
    case PE_FrameFocusRect: // the focus frame around the control says it, and says it better
        return;
    case PE_PanelLineEdit: {
        const auto *frame = qstyleoption_cast<const QStyleOptionFrame *>(option);
        if (frame && frame->lineWidth == 0)
            painter->fillRect(option->rect, option->palette.brush(QPalette::Base));
        else
            paintField(*painter, option->rect, true, m_factor);
        return;
    }
    case PE_FrameLineEdit:
    case PE_Frame:
        return paintField(*painter, option->rect, false, m_factor);
    case PE_FrameMenu:
        return paintMenuFrame(*painter, option->rect, m_factor);
    case PE_PanelButtonCommand:
        return paintButton(*painter, *option, m_factor);
    case PE_IndicatorCheckBox:
        return paintCheckBox(*painter, *option, m_factor);
    case PE_IndicatorRadioButton:
        return paintRadioButton(*painter, *option, m_factor);
    default:
        QProxyStyle::drawPrimitive(element, option, painter, widget);
    }
}

void DeskStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex *option,
                                   QPainter *painter, const QWidget *widget) const
{
    if (control == CC_ComboBox)
        if (const auto *combo = qstyleoption_cast<const QStyleOptionComboBox *>(option))
            return paintComboFrame(*painter, *combo,
                                   subControlRect(control, option, SC_ComboBoxArrow, widget),
                                   m_factor);
    if (control == CC_ScrollBar)
        if (const auto *bar = qstyleoption_cast<const QStyleOptionSlider *>(option))
            return paintScrollBar(*painter, *bar,
                                  subControlRect(control, option, SC_ScrollBarSlider, widget),
                                  m_factor);
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

void applyTheme(QApplication &application, Look look, int percent)
{
    const double factor = std::clamp(percent, 100, 200) / 100.0;
    QFont font = QFontDatabase::systemFont(QFontDatabase::GeneralFont);
    font.setPointSizeF(std::max(font.pointSizeF(), 10.0) * factor);
    application.setStyle(new DeskStyle(factor)); // the application owns it
    application.setPalette(paletteOf(look));
    application.setFont(font);
    QToolTip::setPalette(paletteOf(look));
    QToolTip::setFont(font);
}

} // namespace loopwright
