#include "app/desktop/widgets/FieldGrid.h"

#include "app/desktop/Theme.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

int gap()
{
    return em(0.9);
}

int heightOf(const QLayoutItem &item, int width)
{
    return item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
}

/// Of the label above the first field in it; nothing where no label stands at its very top.
std::optional<int> labelIn(QLayoutItem &item, int width)
{
    const QWidget *widget = item.widget();
    const auto *label = widget ? widget->findChild<QLabel *>(QLatin1StringView(fieldLabelName),
                                                             Qt::FindDirectChildrenOnly)
                               : nullptr;
    if (label && !label->isHidden()) {
        const int wrapped = label->heightForWidth(width);
        return wrapped >= 0 ? wrapped : label->sizeHint().height();
    }
    QLayout *layout = widget ? widget->layout() : item.layout();
    if (const auto *grid = qobject_cast<const FieldGrid *>(layout))
        return grid->labelHeight(width);
    const auto *column = qobject_cast<const QVBoxLayout *>(layout);
    if (!column || !column->contentsMargins().isNull()) // a card is in line by its frame
        return {};
    for (int i = 0; i < column->count(); ++i)
        if (QLayoutItem *first = column->itemAt(i); !first->isEmpty())
            return labelIn(*first, width);
    return {};
}

} // namespace

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

int FieldGrid::columnsIn(int width) const
{
    return std::max(1, (width + gap()) / (em(m_columnEm) + gap()));
}

std::optional<int> FieldGrid::labelHeight(int width) const
{
    const auto first =
        std::ranges::find_if(m_places, [](const Place &place) { return !place.item->isEmpty(); });
    if (first == m_places.end())
        return {};
    const int columns = columnsIn(width);
    const int span = first->span == 0 ? columns : std::min(first->span, columns);
    return labelIn(*first->item, span * ((width + gap()) / columns) - gap());
}

int FieldGrid::arrange(const QRect &rect, bool apply) const
{
    const int between = gap();
    const int columns = columnsIn(rect.width());
    const int step = (rect.width() + between) / columns;
    int y = rect.top(), column = 0;
    std::vector<std::pair<QLayoutItem *, QRect>> row;
    const auto endRow = [&] {
        if (!row.empty())
            y += arrangeRow(row, apply) + between;
        row.clear();
        column = 0;
    };
    for (const Place &place : m_places) {
        if (place.item->isEmpty())
            continue;
        const int least = (place.item->minimumSize().width() + between + step - 1) / step;
        const int span = place.span == 0 ? columns : std::min(std::max(place.span, least), columns);
        if (column + span > columns || place.newRow)
            endRow();
        row.push_back(
            {place.item, QRect(rect.left() + column * step, y, span * step - between, 0)});
        column += span;
    }
    endRow();
    return std::max(0, y - between - rect.top());
}

int FieldGrid::arrangeRow(const std::vector<std::pair<QLayoutItem *, QRect>> &row, bool apply) const
{
    int label = 0;
    for (const auto &[item, place] : row)
        label = std::max(label, labelIn(*item, place.width()).value_or(0));
    const auto lower = [label](QLayoutItem &item, int width) {
        return label - labelIn(item, width).value_or(label);
    };
    int height = 0;
    for (const auto &[item, place] : row)
        height = std::max(height, lower(*item, place.width()) + heightOf(*item, place.width()));
    if (apply)
        for (const auto &[item, place] : row)
            item->setGeometry(
                place.adjusted(0, lower(*item, place.width()), 0, height - place.height()));
    return height;
}

} // namespace loopwright
