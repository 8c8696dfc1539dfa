#pragma once
// What the board's head can do with the mouse, by menu: which columns are shown, and the sort.

#include <functional>

class QMenu;
class QWidget;

namespace loopwright {

class Table;

/// Ticks what is shown; the last column that is shown stays.
QMenu *makeColumnsMenu(Table *table, QWidget *parent);

struct SortChoice
{
    int column;
    bool descending;
};
/// `now` says what it is sorted by, `sortBy` is called with the column that was chosen.
QMenu *makeSortMenu(std::function<SortChoice()> now, std::function<void(int column)> sortBy,
                    QWidget *parent);

} // namespace loopwright
