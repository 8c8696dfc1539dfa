#pragma once
// The rows of the board as a table, however many there are: it holds the few pages that were looked
// at last, and asks for a page when the view comes to it; it never reads the records itself. What
// changed under it is marked for a moment.

#include "app/actions/Board.h"

#include <QAbstractTableModel>
#include <QSet>
#include <QTimer>

#include <deque>
#include <map>
#include <span>

namespace loopwright {

/// A column of the board: one row of the table in BoardColumns.cpp, in the order in which they
/// stand at first.
struct BoardColumn
{
    const char *key; ///< kept in the settings
    const char *name;
    double ems;     ///< its width at first
    bool shown;     ///< at first
    BoardSort sort; ///< by a click on its head
    QString (*text)(const BoardRow &, QDate today);
};
std::span<const BoardColumn> boardColumns();
/// Its place in the table; -1 for an unknown key.
int boardColumn(QStringView key);

/// Rows of a page.
inline constexpr int boardRowsAtOnce = 400;
/// The model holds so many pages.
inline constexpr int boardPagesHeld = 6;

class BoardModel : public QAbstractTableModel
{
    Q_OBJECT
public:
    explicit BoardModel(QObject *parent = nullptr);

    enum class Mark
    {
        Nothing,
        Changes ///< rows that are new or say something else
    };
    /// What was read anew from the row `first` on, which begins a page; all other pages are read
    /// again when they are looked at. There are `atLeast` rows, if that is more than these say.
    void show(std::vector<BoardRow> rows, QDate today, Mark mark = Mark::Nothing, int first = 0,
              int atLeast = 0);
    /// A page that was wanted. Nothing else than this changes under the view.
    void put(int first, std::vector<BoardRow> rows);
    /// It could not be read: it may be wanted again.
    void putNothing(int first) { m_asked.remove(first / boardRowsAtOnce); }
    /// The number of rows that the search has in all, once it has been counted.
    void setTotal(int total);
    /// One that says nothing as long as its page is not here.
    const BoardRow &row(int row) const;
    bool isHere(int row) const;
    /// Those from `first` to `last` that are here, in their order.
    std::vector<int> rowsHere(int first, int last) const;
    /// -1 if no row that is here has that order.
    int rowOf(const QString &order) const;
    /// What a cell of a row says, here or not.
    QString cell(const BoardRow &row, int column) const { return text(row, column); }
    bool isMarked(const QString &order) const { return m_marked.contains(order); }

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    /// Qt::UserRole: the key of the column.
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

signals:
    void pageWanted(int first); ///< boardRowsAtOnce rows from there on

private:
    QString text(const BoardRow &row, int column) const;
    QString spoken(const BoardRow &row, int column) const;
    QString tip(const BoardRow &row, int column) const;
    QVariant sign(const BoardRow &row, int column) const;
    bool holds(int first, const std::vector<BoardRow> &rows) const;
    void markChanges(int first, const std::vector<BoardRow> &rows);
    void unmark();
    void keep(int first, std::vector<BoardRow> rows);
    void changed(int first, int count, const QList<int> &roles = {});
    void want(int page) const;
    void askForPages();

    std::map<int, std::vector<BoardRow>> m_pages; ///< by number: each of boardRowsAtOnce rows
    mutable std::deque<int> m_seen;               ///< pages, the one that was looked at last behind
    mutable QSet<int> m_wanted, m_asked;          ///< pages to ask for; asked for, and not here
    mutable QTimer m_asking;   ///< runs until the view has painted: it may have gone on by then
    bool m_passedOver = false; ///< a page that was wanted was not asked for
    QSet<QString> m_marked;
    QTimer m_marking; ///< runs until the marks go
    int m_total = 0;
    QDate m_today;
};

/// A changed row is marked so long.
inline constexpr int boardMarkMs = 4000;

} // namespace loopwright
