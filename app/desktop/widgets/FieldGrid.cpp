#include "app/desktop/widgets/FieldGrid.h"

#include "app/desktop/Theme.h"

#include <algorithm>

namespace loopwright {

FieldGrid::FieldGrid(double columnEm, QWidget *parent)
    : QLayout(parent)
    , m_columnEm(columnEm)
{
    setContentsMargins(0, 0, 0, 0);
}

FieldGrid::~FieldGrid()
{
    for (const Place &place : m_places)
        delete place.item;
}

void FieldGrid::add(QWidget *widget, int span, bool newRow)
{
    addWidget(widget);
    m_places.back().span = span;
    m_places.back().newRow = newRow;
}

void FieldGrid::change(const QWidget *widget, int span, bool newRow)
{
    for (Place &place : m_places)
        if (place.item->widget() == widget) {
            place.span = span;
            place.newRow = newRow;
            invalidate();
        }
}

void FieldGrid::addItem(QLayoutItem *item)
{
    m_places.push_back({item});
}

QLayoutItem *FieldGrid::itemAt(int index) const
{
    return index >= 0 && index < count() ? m_places[std::size_t(index)].item : nullptr;
}

QLayoutItem *FieldGrid::takeAt(int index)
{
    QLayoutItem *item = itemAt(index);
    if (item)
        m_places.erase(m_places.begin() + index);
    return item;
}

QSize FieldGrid::sizeHint() const
{
    const int width = em(m_columnEm * 3);
    return {width, heightForWidth(width)};
}

QSize FieldGrid::minimumSize() const
{
    int width = 0;
    for (const Place &place : m_places)
        if (!place.item->isEmpty())
            width = std::max(width, place.item->minimumSize().width());
    return {width, 0};
}

void FieldGrid::setGeometry(const QRect &rect)
{
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

int FieldGrid::arrange(const QRect &rect, bool apply) const
{
    const int gap = em(0.9);
    const int columns = std::max(1, (rect.width() + gap) / (em(m_columnEm) + gap));
    const int step = (rect.width() + gap) / columns;
    int y = rect.top(), column = 0;
    std::vector<std::pair<QLayoutItem *, QRect>> row;
    const auto endRow = [&] {
        if (!row.empty())
            y += arrangeRow(row, apply) + gap;
        row.clear();
        column = 0;
    };
    for (const Place &place : m_places) {
        if (place.item->isEmpty())
            continue;
        const int least = (place.item->minimumSize().width() + gap + step - 1) / step;
        const int span = place.span == 0 ? columns : std::min(std::max(place.span, least), columns);
        if (column + span > columns || place.newRow)
            endRow();
        row.push_back({place.item, QRect(rect.left() + column * step, y, span * step - gap, 0)});
        column += span;
    }
    endRow();
    return std::max(0, y - gap - rect.top());
}

int FieldGrid::arrangeRow(const std::vector<std::pair<QLayoutItem *, QRect>> &row, bool apply) const
{
    int height = 0;
    for (const auto &[item, place] : row)
        height = std::max(height, item->hasHeightForWidth() ? item->heightForWidth(place.width())
                                                            : item->sizeHint().height());
    if (apply)
        for (const auto &[item, place] : row)
            item->setGeometry({place.topLeft(), QSize(place.width(), height)});
    return height;
}

} // namespace loopwright
