#pragma once
// How DeskStyle draws the single controls. Each function draws one of them into its rectangle;
// `unit` is one pixel at 100 percent.

#include <Qt>

class QPainter;
class QRect;
class QStyleOption;
class QStyleOptionComboBox;
class QStyleOptionHeader;
class QStyleOptionSlider;
class QStyleOptionTab;

namespace loopwright {

void paintField(QPainter &painter, const QRect &rect, bool filled, double unit);
void paintButton(QPainter &painter, const QStyleOption &option, double unit);
void paintCheckBox(QPainter &painter, const QStyleOption &option, double unit);
void paintRadioButton(QPainter &painter, const QStyleOption &option, double unit);
void paintComboFrame(QPainter &painter, const QStyleOptionComboBox &option, const QRect &arrow,
                     double unit);
void paintHeader(QPainter &painter, const QStyleOptionHeader &option);
void paintTab(QPainter &painter, const QStyleOptionTab &option, double unit);
void paintScrollBar(QPainter &painter, const QStyleOptionSlider &option, const QRect &handle,
                    double unit);
/// Around a menu: without it there is no edge where menu and window have one colour.
void paintMenuFrame(QPainter &painter, const QRect &rect, double unit);
void paintMenuSeparator(QPainter &painter, const QRect &rect, double unit);
void paintArrow(QPainter &painter, const QStyleOption &option, Qt::ArrowType to, double unit);
void paintFocusFrame(QPainter &painter, const QRect &rect, double unit);

} // namespace loopwright
