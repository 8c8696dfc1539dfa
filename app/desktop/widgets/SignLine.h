#pragma once
// One sentence with a sign before it: the sign says by its shape what the word beside it says, the
// colour only repeats it.

#include "app/desktop/widgets/Glyph.h"
#include "core/base/Finding.h"

#include <QLabel>

namespace loopwright {

/// What a sign means; each has its own shape and colour.
enum class Sign
{
    None,
    Done,
    Failed,
    Open,
    NotNeeded,
    Doubtful,
    Note
};

Sign signOf(Severity severity);
GlyphShape shapeOf(Sign sign);
QColor colourOf(Sign sign);

class SignLine : public QWidget
{
    Q_OBJECT
public:
    explicit SignLine(QWidget *parent = nullptr);

    using QWidget::show;
    void show(Sign sign, const QString &text);
    Sign sign() const { return m_sign; }
    QString text() const { return m_text->text(); }
    /// Muted text where there is no sign.
    /// On unless set: off where the line stands in a row and must keep its width.
    void setWrapping(bool on);
    void setSelectable(bool on);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    void layOut();

    Sign m_sign = Sign::None;
    QLabel *m_text;
};

} // namespace loopwright
