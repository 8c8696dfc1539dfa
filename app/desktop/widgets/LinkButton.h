#pragma once
// One sentence that leads somewhere: a sign, what it is about in bold, and the sentence, wrapped to
// the width that there is. A click, Enter or Space goes there.

#include "app/desktop/widgets/SignLine.h"

#include <QAbstractButton>

namespace loopwright {

class LinkButton : public QAbstractButton
{
    Q_OBJECT
public:
    LinkButton(Status sign, const QString &title, const QString &sentence,
               QWidget *parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    Status m_sign;
    QString m_sentence;
};

} // namespace loopwright
