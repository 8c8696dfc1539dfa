#pragma once
// Text in one line, shortened at its end where there is no room; whole in the tool tip. Muted and
// small unless its font and its role are set.

#include <QLabel>

namespace loopwright {

class OneLine : public QLabel
{
    Q_OBJECT
public:
    explicit OneLine(const QString &objectName, QWidget *parent = nullptr);

    QSize minimumSizeHint() const override;
    void setText(const QString &text);
    /// The beginning of the text that is not shortened.
    void setKept(const QString &beginning);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    QString m_kept;
};

} // namespace loopwright
