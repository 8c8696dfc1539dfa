#pragma once
// What tables and lists have alike: a key that copies, and a menu of the row.

#include <QAbstractItemView>

#include <functional>

class QContextMenuEvent;
class QMenu;

namespace loopwright {

/// Ctrl+C, in the view.
void addCopyKey(QAbstractItemView *view, std::function<void()> copy);
/// The row below the mouse, or the current one by the keyboard.
QModelIndex rowOfMenu(const QAbstractItemView &view, const QContextMenuEvent &event);
/// Empty, and gone with what is chosen.
QMenu *makeRowMenu(QAbstractItemView *view);
/// At the mouse, or below the row.
void showRowMenu(QMenu *menu, const QAbstractItemView &view, const QContextMenuEvent &event,
                 const QModelIndex &row);

} // namespace loopwright
