#pragma once
// The dispatcher's home: every order with the circuit it is for, found while typing, filtered with
// counts, and beside it what stands in the way of the selected one. It opens on what is open, by
// due date; what was chosen comes back. Reading goes on beside the window's thread; the window
// never waits for it.

#include "app/actions/Board.h"
#include "app/desktop/ChangeWatch.h"
#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"
#include "app/desktop/models/BoardModel.h"

#include <QItemSelection>
#include <QLineEdit>
#include <QPersistentModelIndex>
#include <QStackedWidget>
#include <QTimer>

#include <optional>

class QLabel;
class QPushButton;

namespace loopwright {

class BoardSide;
class BoardFilterBar;
class BoardsButton;
class RowActions;
class EmptyState;
class FirstRun;
class Table;

class BoardScreen : public Screen
{
    Q_OBJECT
public:
    explicit BoardScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("board"); }
    QString title() const override { return tr("Board"); }
    void refresh() override;
    void takeFocus() override;
    bool startSearch() override;
    bool letGo() override;
    QJsonObject place() const override;
    void restore(const QJsonObject &place) override;

    const BoardFilter &filter() const { return m_filter; }
    /// Ctrl+A selects so many at the most: one step of the desk, and what a person can answer for.
    void setMostSelected(int rows) { m_mostSelected = rows; }
    /// Writes every order that it shows, beside the window's thread.
    void exportView(const QString &path);
    /// Writes the day list of the installer chosen below, or of all, beside the window's thread.
    void saveDayList(const QString &path);

protected:
    void resizeEvent(QResizeEvent *event) override;
    void showEvent(QShowEvent *event) override;
    void hideEvent(QHideEvent *event) override;
    bool eventFilter(QObject *object, QEvent *event) override;

private:
    QWidget *makeHead();
    QWidget *makeMiddle();
    void makeTable();

    QWidget *makeEmpty();
    void makeBoards();
    void makeExport();
    void exportOrStop();

    void filterChanged();
    bool isFiltered() const;
    void clearFilters();
    void showInstaller(const QString &key);
    void sortBy(int column);
    void showSort();
    QJsonObject state() const; ///< filters and sort: what a board is kept as
    void setState(const QJsonObject &state);
    /// Reads rows and counts anew.
    void read(bool again);
    void findPage(int first);
    void showRows(const Result<std::vector<BoardRow>> &rows, const BoardFilter &filter, bool again);
    void showCounts(const Result<BoardCounts> &counts);
    void showEmptiness();
    using Wanted = std::optional<QSet<QString>>; ///< orders to be selected; none: all
    /// What is selected and what is in view, by the numbers of the orders.
    struct Selection
    {
        QSet<QString> orders;
        int row = 0;     ///< of the current one
        QString top;     ///< the first in view; empty if it was not read
        int topRow = -1; ///< its place; -1: where the table stands
    };
    Selection selection() const;
    void selectAgain(const Selection &before);
    void selectOrders(const QSet<QString> &orders);
    std::pair<std::vector<int>, bool> selectedRows() const;
    void selectAll();
    void readToSelect(const Wanted &orders);
    const BoardRow *known(int row) const;
    QItemSelection selectionOf(const std::vector<int> &rows) const;
    bool letGoOfRows();
    void showRowActions();
    void makeRowActions();
    bool takesKey(int key, const QString &text);
    void selectionChanged();
    void settle(const QString &order);
    void openSelected();
    QString selectedOrder() const;
    void askForDayList();

    BoardFilter m_filter;
    Asker m_finder;
    Asker m_lister; ///< of the day list: a search must not drop it
    Asker m_exporter;
    QAction *m_export = nullptr;
    BoardModel *m_model;
    QTimer m_typing; ///< runs until typing rests
    QString m_selected;
    std::optional<Wanted> m_awaited; ///< while these are read to be selected
    std::vector<BoardRow> m_first;   ///< the first rows, where they were read to be selected
    int m_mostSelected = 2000;
    QPersistentModelIndex m_menuAt;
    int m_sortColumn; ///< of the model
    bool m_descending = false;
    ChangeWatch m_watch;
    int m_all = -1; ///< orders in the records, once they are counted
    int m_top = 0;  ///< the row that was the first in view at the last start

    QLineEdit *m_search = nullptr;
    QLabel *m_found = nullptr;
    BoardFilterBar *m_bar = nullptr;
    QStackedWidget *m_list = nullptr; ///< the table, or what to do first
    Table *m_table = nullptr;
    EmptyState *m_empty = nullptr;
    FirstRun *m_firstRun = nullptr; ///< where there is no order at all
    QPushButton *m_emptyClear = nullptr;
    QPushButton *m_emptyAll = nullptr;
    BoardsButton *m_boards = nullptr;
    BoardSide *m_side = nullptr;
    RowActions *m_actions = nullptr; ///< of the selected rows
};

} // namespace loopwright
