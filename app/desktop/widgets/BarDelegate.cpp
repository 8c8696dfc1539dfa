#include "app/desktop/widgets/BarDelegate.h"

#include "app/desktop/Theme.h"
#include "app/desktop/models/TextTable.h"

#include <QPainter>

#include <algorithm>

namespace loopwright {

void BarDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option,
                        const QModelIndex &index) const
{
    QStyledItemDelegate::paint(painter, option, index); // ground and selection
    const Colours &c = colours();
    const bool chosen = option.state & QStyle::State_Selected;
    const QRect whole = option.rect.adjusted(em(0.4), option.rect.height() / 4, -em(0.4),
                                             -option.rect.height() / 4);
    QRect bar = whole;
    bar.setWidth(
        int(whole.width() * std::clamp(index.data(TextTable::BarRole).toDouble(), 0.0, 1.0)));
    painter->fillRect(bar, chosen && c.selected == c.accent ? c.onSelected : c.accent);
    painter->setPen(chosen ? c.onSelected : c.line);
    painter->drawRect(whole.adjusted(0, 0, -1, -1));
}

} // namespace loopwright
