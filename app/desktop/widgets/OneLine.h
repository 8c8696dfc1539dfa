#pragma once
// Muted text in one line, shortened at its end where there is no room; whole in the tool tip.

#include <QLabel>

namespace loopwright {

class OneLine : public QLabel
{
    Q_OBJECT
public:
    explicit OneLine(const QString &objectName, QWidget *parent = nullptr);

    QSize minimumSizeHint() const override;
    void setText(const QString &text);

protected:
    void paintEvent(QPaintEvent *event) override;
};

} // namespace loopwright
