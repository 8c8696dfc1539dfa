#pragma once
// Fusion, with every measure multiplied by the size factor, with our own focus frame, and with
// fields and buttons whose outline has a contrast of 3:1.

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
    void drawControl(ControlElement element, const QStyleOption *option, QPainter *painter,
                     const QWidget *widget) const override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption *option, QPainter *painter,
                       const QWidget *widget) const override;

private:
    double m_factor;
};

} // namespace loopwright
