#pragma once
// Fusion, with every measure multiplied by the size factor, and with what it draws faintly drawn
// plainly: outlines of 3:1 around whatever can be pressed or typed in, in every look, and a frame
// around what has the keyboard.

#include "app/desktop/Theme.h"

#include <QProxyStyle>

namespace loopwright {

class DeskStyle : public QProxyStyle
{
    Q_OBJECT
public:
    explicit DeskStyle(double factor);

    int pixelMetric(PixelMetric metric, const QStyleOption *option,
                    const QWidget *widget) const override;
    int styleHint(StyleHint hint, const QStyleOption *option, const QWidget *widget,
                  QStyleHintReturn *answer) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption *option, const QSize &size,
                           const QWidget *widget) const override;
    QRect subControlRect(ComplexControl control, const QStyleOptionComplex *option, SubControl part,
                         const QWidget *widget) const override;
    void drawControl(ControlElement element, const QStyleOption *option, QPainter *painter,
                     const QWidget *widget) const override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption *option, QPainter *painter,
                       const QWidget *widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex *option,
                            QPainter *painter, const QWidget *widget) const override;

private:
    QRect comboPart(const QRect &whole, SubControl part) const;
    int scaled(double pixels) const { return qRound(pixels * m_factor); }

    double m_factor;
};

/// Sets style, palette and font of the whole program; may be called again at any time. `percent` is
/// kept within 100 to 200.
void applyTheme(QApplication &application, Look look, int percent);

} // namespace loopwright
