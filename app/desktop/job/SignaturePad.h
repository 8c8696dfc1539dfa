#pragma once
// A field to sign in with mouse, pen or finger. The strokes keep the scale of a certificate's
// signature (CertificateContent.h), whatever the size of the field.

#include <QJsonArray>
#include <QWidget>

#include <vector>

namespace loopwright {

class SignaturePad : public QWidget
{
    Q_OBJECT
public:
    explicit SignaturePad(const QString &name, QWidget *parent = nullptr);

    using Strokes = std::vector<std::vector<QPoint>>;
    const Strokes &strokes() const { return m_strokes; }
    void setStrokes(const Strokes &strokes);
    /// As a draft keeps them: of each stroke x and y in turn. What cannot be read is left out.
    QJsonArray strokesJson() const;
    static Strokes strokesOf(const QJsonValue &value);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override { return width / 4; }

signals:
    void drawn(); ///< a stroke was ended, or the field was wiped

protected:
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    QRectF field() const;
    QPoint scaled(const QPointF &at) const;

    Strokes m_strokes;
};

} // namespace loopwright
