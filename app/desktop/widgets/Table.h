#pragma once
// A table as every screen shows it: whole rows, no grid, no editing, Tab leaves it, Enter and
// double-click open the row.

#include <QTableView>

namespace loopwright {

class Table : public QTableView
{
    Q_OBJECT
public:
    Table(const QString &objectName, const QString &spoken, QWidget *parent = nullptr);

    /// Widths of the columns in em; the last column takes what is left.
    void setColumnEms(std::vector<double> ems);

signals:
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

    std::vector<double> m_ems;
};

} // namespace loopwright
