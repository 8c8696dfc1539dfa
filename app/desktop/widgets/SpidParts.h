#pragma once
// A SPID drawn in its parts: each part a box with its digits, and below it what they mean. A part
// whose meaning is not known has a broken outline.

#include "core/identifiers/Spid.h"

#include <QWidget>

namespace loopwright {

/// As SpidCheck::inWords(), digits and what they mean, in the language of the window.
QString localizedParts(const SpidCheck &check);

class SpidParts : public QWidget
{
    Q_OBJECT
public:
    explicit SpidParts(QWidget *parent = nullptr);

    void setCheck(const SpidCheck &check);
    /// `times` the size of the text; 1 at first.
    void setTimes(double times);
    /// What the parts are, as a screen reader says them.
    QString spoken() const { return accessibleDescription(); }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    struct Box
    {
        QRectF rect;
        const SpidPart *part;
    };
    std::vector<Box> boxes() const;
    double partWidth(const SpidPart &part) const;

    std::vector<SpidPart> m_parts;
    double m_times = 1;
};

} // namespace loopwright
