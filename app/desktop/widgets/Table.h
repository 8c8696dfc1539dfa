#pragma once
// A table as every screen shows it: whole rows, no grid, no editing, Tab leaves it, Enter and
// double-click open the row. What is selected can be copied, by key and by the menu of each row.

#include <QJsonArray>
#include <QTableView>
#include <QTimer>

#include <functional>
#include <map>
#include <set>

class QMenu;

namespace loopwright {

class Table : public QTableView
{
    Q_OBJECT
public:
    Table(const QString &objectName, const QString &spoken, QWidget *parent = nullptr);

    /// Widths of the columns in em, and more where a heading needs it. Room that is to spare goes
    /// to what the rows in view would elide, unless the columns can be arranged and so are a
    /// person's; the last column takes what is left.
    void setColumnEms(std::vector<double> ems);
    /// What a person made of the columns: each with its key (the header's Qt::UserRole), width in
    /// em and whether it is shown, in the order in which they stand.
    QJsonArray columns() const;
    /// Unknown keys are passed over; a column that is not named keeps its place and width.
    void setColumns(const QJsonArray &columns);
    void showColumn(int column, bool shown);
    /// The place of the first row in view, and to have that row there again.
    int firstInView() const;
    void bringToTop(int row);

    /// What a cell says when it is copied, for a model that does not hold all that is selected;
    /// else what it shows.
    void setCellText(std::function<QString(int row, int column)> text);
    /// Into the clipboard: one cell; the selected rows, a line each, the cells that are shown in
    /// their order with tabs between them.
    void copyCell(const QModelIndex &index) const;
    void copyRows() const;
    /// "Copy the cell", "Copy the row"; `at` says which cell when one of them is chosen.
    void addCopying(QMenu *menu, std::function<QModelIndex()> at) const;
    /// The row that the menu of an event is about: by the menu key the current one.
    QModelIndex menuIndex(QPoint at) const;

    void selectAll() override;
    void setModel(QAbstractItemModel *model) override;

signals:
    void columnsChanged();
    void opened(const QModelIndex &index); ///< Enter or double-click
    /// Letters or digits typed while a row has the keyboard; where nobody listens they look for a
    /// row of the first column.
    void typed(const QString &text);
    /// Ctrl+A; where nobody listens all rows are selected.
    void allWanted();

public:
    void keyboardSearch(const QString &text) override;

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void showEvent(QShowEvent *event) override;
    void contextMenuEvent(QContextMenuEvent *event) override;

private:
    void fit();
    void measure();
    void spread();
    int leastWidth(int column) const;
    std::map<int, int> extraWidths() const;
    void fitLast();
    int lastShown() const;
    void keepWidth(int column, int width);
    QString cellText(int row, int column) const;

    std::function<QString(int row, int column)> m_cellText;
    std::vector<double> m_ems;
    /// Widths that the contents of rows asked for, by column. They only grow, so that columns do
    /// not jump when rows come and go.
    std::map<int, int> m_wanted;
    QTimer m_measuring;     ///< once, after rows came, went or moved into view
    std::set<int> m_byHand; ///< columns that a person made as wide as they are
    bool m_fitting = false; ///< widths change, and not by hand
};

} // namespace loopwright
