#pragma once
// The job line on the screen. A click, or Enter on the station that the arrow keys chose, goes to
// its part of the page. Where the names have no room side by side, the line goes on in a further
// row, like words.

#include "app/desktop/AccessibleParts.h"
#include "core/acceptance/JobLine.h"

#include <QWidget>

namespace loopwright {

class JobLineView : public QWidget, public AccessibleParts
{
    Q_OBJECT
public:
    explicit JobLineView(QWidget *parent = nullptr);

    void setLine(const std::vector<StationState> &line);
    /// Whether stations can be chosen; on at first. Without it the line takes no focus.
    void setChoosable(bool choosable);
    /// On a low screen the names stand without the marks' words, which the tool tip still says.
    void setLow(bool low);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

    Kind kind() const override { return Kind::List; }
    int partCount() const override { return int(m_line.size()); }
    QString partName(int part) const override;
    QRect partRect(int part) const override;
    bool isPartChosen(int part) const override { return part == m_pointed; }
    void choosePart(int part) override;

signals:
    void chosen(loopwright::Station station);

protected:
    void paintEvent(QPaintEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;
    bool event(QEvent *event) override;

private:
    /// How wide the longest name or word is.
    double longestName(const QFont &font) const;
    std::size_t perRow(int width) const;
    QRectF stationRect(std::size_t station) const;
    int stationUnder(const QPointF &point) const; ///< -1 where there is none
    void point(int station);

    std::vector<StationState> m_line;
    int m_pointed = -1; ///< the station that the arrow keys chose
    bool m_choosable = true;
    bool m_low = false;
};

} // namespace loopwright
