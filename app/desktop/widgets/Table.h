#pragma once
// A table as every screen shows it: whole rows, no grid, no editing, Tab leaves it, Enter and
// double-click open the row.

#include <QJsonArray>
#include <QTableView>

namespace loopwright {

class Table : public QTableView
{
    Q_OBJECT
public:
    Table(const QString &objectName, const QString &spoken, QWidget *parent = nullptr);

    /// Widths of the columns in em; the last column takes what is left.
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

signals:
    void columnsChanged();
    void opened(const QModelIndex &index); ///< Enter or double-click
    /// Letters or digits typed while a row has the keyboard; where nobody listens they look for a
    /// row of the first column.
    void typed(const QString &text);

public:
    void keyboardSearch(const QString &text) override;

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void fit();
    int lastShown() const;
    void keepWidth(int column, int width);

    std::vector<double> m_ems;
    bool m_fitting = false; ///< widths change, and not by hand
};

} // namespace loopwright
