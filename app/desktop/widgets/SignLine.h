#pragma once
// One sentence with a sign before it: the sign says by its shape what the word beside it says, the
// colour only repeats it.

#include "app/desktop/widgets/Glyph.h"
#include "core/base/Finding.h"

#include <QLabel>

namespace loopwright {

/// What a sign means; each has its own shape and colour.
enum class Status
{
    None,
    Done,
    Failed,
    Open,
    NotNeeded,
    Doubtful,
    Away, ///< with a van
    Note
};

Status signOf(Severity severity);
GlyphShape shapeOf(Status sign);
QColor colourOf(Status sign);

class SignLine : public QWidget
{
    Q_OBJECT
public:
    explicit SignLine(QWidget *parent = nullptr);

    using QWidget::show;
    /// Silently: what stands here.
    void show(Status sign, const QString &text);
    /// What came of what somebody did: shown, and said by a screen reader; hidden where it is
    /// empty.
    void tell(Status sign, const QString &text);
    /// Likewise, but shown only where it is what was told last: of what is looked at again and
    /// again.
    void tellIfNew(Status sign, const QString &text);
    /// Somebody tries anew: what comes of it is told, even if it is the same.
    void forgetTold() { m_told.clear(); }
    Status sign() const { return m_sign; }
    QString text() const { return m_text->text(); }
    /// Muted text where there is no sign.
    /// On unless set: off where the line stands in a row and must keep its width.
    void setWrapping(bool on);
    void setSelectable(bool on);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    void layOut();

    Status m_sign = Status::None;
    QLabel *m_text;
    QString m_told; ///< last, while it could be seen
};

} // namespace loopwright
