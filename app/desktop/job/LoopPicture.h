#pragma once
// The pair drawn to scale, and its loss over frequency, as it is typed.

#include "core/base/LimitSet.h"
#include "core/loop/LoopMakeup.h"

#include <QWidget>

namespace loopwright {

class LoopPicture : public QWidget
{
    Q_OBJECT
public:
    /// `withCurve`: the loss over frequency below the drawing, for basic-rate loops.
    LoopPicture(const LimitSet &limits, bool withCurve, QWidget *parent = nullptr);

    void setMakeup(std::optional<LoopMakeup> makeup);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    const LimitSet &m_limits;
    bool m_withCurve;
    std::optional<LoopMakeup> m_makeup;
};

} // namespace loopwright
