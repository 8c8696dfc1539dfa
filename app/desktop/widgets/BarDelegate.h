#pragma once
// A cell that is a bar: its length says again what a figure beside it says.

#include <QStyledItemDelegate>

namespace loopwright {

/// Draws TextTable::BarRole of its cells.
class BarDelegate : public QStyledItemDelegate
{
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
};

} // namespace loopwright
