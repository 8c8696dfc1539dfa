#pragma once
// The dispatcher's home: every order with the circuit it is for, found while typing, filtered with
// counts, and beside it what stands in the way of the selected one. Reading goes on beside
// the window's thread; the window never waits for it.

#include "app/actions/DayList.h"
#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"
#include "app/desktop/models/BoardModel.h"

#include <QLineEdit>
#include <QStackedWidget>
#include <QTimer>

class QLabel;
class QPushButton;

namespace loopwright {

class BoardSide;
class BoardFilterBar;
class EmptyState;
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
    QJsonObject place() const override;
    void restore(const QJsonObject &place) override;

    const BoardFilter &filter() const { return m_filter; }

protected:
    void resizeEvent(QResizeEvent *event) override;
    bool eventFilter(QObject *object, QEvent *event) override;

private:
    QWidget *makeHead();
    QWidget *makeMiddle();
    void makeTable();

    void filterChanged();
    bool isFiltered() const;
    void clearFilters();
    void find(int limit);
    void showRows(const Result<std::vector<BoardRow>> &rows);
    void showCounts(const Result<BoardCounts> &counts);
    void showEmptiness();
    void selectAgain();
    void selectionChanged();
    void openSelected();
    QString selectedOrder() const;
    void makeDayList();
    void saveDayList(const Result<DaySheet> &list);

    BoardFilter m_filter;
    Asker m_finder;
    Asker m_lister; ///< of the day list: a search must not drop it
    BoardModel *m_model;
    QTimer m_typing; ///< runs until typing rests
    QString m_selected;
    int m_rows = 0; ///< so many were there at the last start

    QLineEdit *m_search = nullptr;
    QLabel *m_found = nullptr;
    BoardFilterBar *m_bar = nullptr;
    QStackedWidget *m_list = nullptr; ///< the table, or what to do first
    Table *m_table = nullptr;
    EmptyState *m_empty = nullptr;
    QPushButton *m_emptyImport = nullptr;
    QPushButton *m_emptyNew = nullptr;
    QPushButton *m_emptyClear = nullptr;
    BoardSide *m_side = nullptr;
};

} // namespace loopwright
