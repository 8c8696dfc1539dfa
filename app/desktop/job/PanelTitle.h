#pragma once
// The title of a part of the job page, which folds and unfolds it: a click, Enter or Space. Folded
// it says in the same line how the part stands.

#include "app/desktop/widgets/SignLine.h"

#include <QAbstractButton>

namespace loopwright {

class PanelTitle : public QAbstractButton
{
    Q_OBJECT
public:
    explicit PanelTitle(const QString &title, QWidget *parent = nullptr);

    bool isFolded() const { return m_folded; }
    void setFolded(bool folded);
    void say(Status sign, const QString &standing);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    void tellName();
    int titleWidth() const;

    bool m_folded = false;
    Status m_sign = Status::None;
    QString m_standing;
};

} // namespace loopwright
