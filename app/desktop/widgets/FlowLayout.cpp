#include "app/desktop/widgets/FlowLayout.h"

#include <QWidget>

#include <algorithm>

namespace loopwright {

FlowLayout::FlowLayout(QWidget *parent)
    : QLayout(parent)
{
}

FlowLayout::~FlowLayout()
{
    qDeleteAll(m_items);
}

void FlowLayout::addItem(QLayoutItem *item)
{
    m_items << item;
}

QLayoutItem *FlowLayout::takeAt(int index)
{
    return index >= 0 && index < m_items.size() ? m_items.takeAt(index) : nullptr;
}

int FlowLayout::heightForWidth(int width) const
{
    return flow(QRect(0, 0, width, 0), false);
}

QSize FlowLayout::sizeHint() const
{
    QSize size;
    int width = 0;
    for (const QLayoutItem *item : m_items) {
        if (item->isEmpty())
            continue;
        size = size.expandedTo(item->sizeHint());
        width += item->sizeHint().width() + spacing();
    }
    const QMargins margins = contentsMargins();
    return QSize(width, size.height()).grownBy(margins);
}

QSize FlowLayout::minimumSize() const
{
    QSize size;
    for (const QLayoutItem *item : m_items)
        if (!item->isEmpty())
            size = size.expandedTo(item->minimumSize());
    return size.grownBy(contentsMargins());
}

void FlowLayout::setGeometry(const QRect &rect)
{
    QLayout::setGeometry(rect);
    flow(rect, true);
}

int FlowLayout::flow(const QRect &rect, bool place) const
{
    const QMargins margins = contentsMargins();
    const QRect room = rect.marginsRemoved(margins);
    int x = room.x();
    int y = room.y();
    int rowHeight = 0;
    for (QLayoutItem *item : m_items) {
        if (item->isEmpty())
            continue;
        QSize size = item->sizeHint();
        const int most = std::max(room.width(), item->minimumSize().width());
        if (size.width() > most)
            size = QSize(most, item->hasHeightForWidth() ? item->heightForWidth(most)
                                                         : size.height()); // it wraps itself
        if (x > room.x() && x + size.width() > room.right() + 1) {
            x = room.x();
            y += rowHeight + spacing();
            rowHeight = 0;
        }
        if (place)
            item->setGeometry(QRect(QPoint(x, y), size));
        x += size.width() + spacing();
        rowHeight = std::max(rowHeight, size.height());
    }
    return y + rowHeight - rect.y() + margins.bottom();
}

} // namespace loopwright
