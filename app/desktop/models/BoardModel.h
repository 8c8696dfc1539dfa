#pragma once
// The rows of the board as a table. It holds the first rows of a search and asks for more when the
// view comes to their end; it never reads the records itself.

#include "app/actions/Board.h"

#include <QAbstractTableModel>

namespace loopwright {

class BoardModel : public QAbstractTableModel
{
    Q_OBJECT
public:
    enum Column
    {
        Order,
        Due,
        Stage,
        Outcome,
        Circuit,
        Customer,
        Office,
        Installer,
        Reason,
        ColumnCount
    };

    explicit BoardModel(QObject *parent = nullptr);

    void show(std::vector<BoardRow> rows, QDate today);
    /// The number of rows that the search has in all, where it has been counted.
    void setTotal(int total) { m_total = total; }
    const BoardRow &row(int row) const { return m_rows[std::size_t(row)]; }
    /// -1 where no row shown has that order.
    int rowOf(const QString &order) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    bool canFetchMore(const QModelIndex &parent) const override;
    void fetchMore(const QModelIndex &parent) override;

signals:
    void moreWanted(int rows); ///< so many rows in all

private:
    QString text(const BoardRow &row, int column) const;
    QString spoken(const BoardRow &row, int column) const;

    std::vector<BoardRow> m_rows;
    int m_total = 0;
    bool m_asked = false; ///< more rows were asked for and have not come
    QDate m_today;
};

/// Rows of the first answer of a search, and those that each further one adds.
inline constexpr int boardRowsAtOnce = 400;

} // namespace loopwright
