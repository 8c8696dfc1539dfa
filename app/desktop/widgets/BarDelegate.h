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

    /// The bar says it; a screen reader is told in words.
    QString displayText(const QVariant &, const QLocale &) const override { return {}; }
    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
};

} // namespace loopwright
