#pragma once
// The readings of one figure of a circuit, drawn; said in words for those who hear it.

#include "core/acceptance/CircuitFigures.h"

#include <QWidget>

namespace loopwright {

class TrendView : public QWidget
{
    Q_OBJECT
public:
    explicit TrendView(QWidget *parent = nullptr);

    /// None: it says that a figure is to be chosen.
    void show(std::optional<CircuitFigure> figure);
    using QWidget::show;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    std::optional<CircuitFigure> m_figure;
};

} // namespace loopwright
