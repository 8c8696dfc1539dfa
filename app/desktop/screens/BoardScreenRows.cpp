// The rows of the board: which are selected, how they stay so when rows change, and what can be
// done with them.

#include "app/desktop/Keys.h"
#include "app/desktop/Language.h"
#include "app/desktop/screens/BoardScreen.h"
#include "app/desktop/screens/BoardSide.h"
#include "app/desktop/screens/RowActions.h"
#include "app/desktop/vans/ConflictsDialog.h"
#include "app/desktop/widgets/Table.h"

#include <QAction>
#include <QHeaderView>
#include <QLocale>
#include <QMenu>

#include <algorithm>

namespace loopwright {

namespace {

int firstShownColumn(const Table &table)
{
    const QHeaderView *header = table.horizontalHeader();
    for (int place = 0; place < header->count(); ++place)
        if (!header->isSectionHidden(header->logicalIndex(place)))
            return header->logicalIndex(place);
    return 0;
}

} // namespace

void BoardScreen::makeRowActions()
{
    m_actions = new RowActions(workplace(), this);
    connect(m_actions, &RowActions::done, this, &Screen::stepDone);
    connect(m_actions, &RowActions::said, this, &Screen::said);
    connect(m_actions, &RowActions::recordsChanged, this, [this] {
        refresh();
        emit recordsChanged();
    });
    auto *open = new QAction(tr("&Open the job   Enter"), this);
    open->setObjectName(QStringLiteral("rows.open"));
    connect(open, &QAction::triggered, this, &BoardScreen::openSelected);
    setWhyOff(open, tr("No order is selected."));
    m_actions->menu()->insertAction(m_actions->menu()->actions().front(), open);
    addAction(open);
    m_actions->menu()->addSeparator();
    m_table->addCopying(m_actions->menu(), [this] { return QModelIndex(m_menuAt); });
    m_table->setCellText([this](int row, int column) {
        const BoardRow *here = known(row);
        return here ? m_model->cell(*here, column) : QString();
    });
    connect(m_table, &Table::allWanted, this, &BoardScreen::selectAll);
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &BoardScreen::showRowActions);
    m_table->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(m_table, &QWidget::customContextMenuRequested, this, [this](QPoint at) {
        if (m_actions->rows().empty())
            return;
        m_menuAt = m_table->menuIndex(at);
        // By the menu key it opens at the current row, wherever the mouse is.
        const QRect row = m_table->visualRect(m_table->currentIndex());
        const bool onRow = m_table->indexAt(at).isValid();
        m_actions->menu()->popup(m_table->viewport()->mapToGlobal(onRow ? at : row.bottomLeft()));
    });
}

/// Of a page that is here, or of those that were read to be selected; null where it is neither.
const BoardRow *BoardScreen::known(int row) const
{
    if (m_model->isHere(row))
        return &m_model->row(row);
    return std::size_t(row) < m_first.size() ? &m_first[std::size_t(row)] : nullptr;
}

/// All rows of the view, those too that were never looked at; too many are a filter's matter.
void BoardScreen::selectAll()
{
    const int all = m_model->rowCount();
    std::vector<int> here = m_model->rowsHere(0, all - 1);
    if (int(here.size()) < all || all > m_mostSelected)
        return readToSelect(std::nullopt);
    m_table->selectionModel()->select(selectionOf(here), QItemSelectionModel::ClearAndSelect);
}

/// Reads the first rows beside the window's thread and selects these orders of them, or all.
void BoardScreen::readToSelect(const Wanted &orders)
{
    m_awaited.emplace(orders);
    BoardFilter filter = m_filter;
    filter.limit = m_mostSelected;
    m_finder.ask<std::vector<BoardRow>>(
        [filter](Records &records, const Progress &) { return boardRows(records, filter); },
        [this, orders](const Result<std::vector<BoardRow>> &found) {
            m_awaited.reset();
            if (!found) {
                emit said(localized(found.error()));
                return;
            }
            m_first = *found;
            m_model->setTotal(std::max(m_model->rowCount(), int(m_first.size())));
            std::vector<int> rows;
            for (int row = 0; row < int(m_first.size()); ++row)
                if (!orders || orders->contains(m_first[std::size_t(row)].order))
                    rows.push_back(row);
            m_table->selectionModel()->select(selectionOf(rows),
                                              QItemSelectionModel::ClearAndSelect);
            showRowActions();
            if (!orders && m_model->rowCount() > m_mostSelected)
                emit said(
                    tr("The first %1 of %2 orders are selected; a filter leads to the others.")
                        .arg(QLocale().toString(m_mostSelected),
                             QLocale().toString(m_model->rowCount())));
        });
}

/// Those that are selected and known; and whether others are selected too.
std::pair<std::vector<int>, bool> BoardScreen::selectedRows() const
{
    std::vector<int> rows;
    qint64 all = 0;
    for (const QItemSelectionRange &range : m_table->selectionModel()->selection()) {
        all += range.height();
        const std::vector<int> here = m_model->rowsHere(range.top(), range.bottom());
        rows.insert(rows.end(), here.begin(), here.end());
        const int read = std::min(range.bottom() + 1, int(m_first.size()));
        for (int row = range.top(); row < read; ++row)
            if (!m_model->isHere(row))
                rows.push_back(row);
    }
    std::ranges::sort(rows);
    return {rows, all > qint64(rows.size())};
}

QItemSelection BoardScreen::selectionOf(const std::vector<int> &rows) const
{
    QItemSelection selection;
    for (std::size_t i = 0; i < rows.size();) {
        std::size_t end = i + 1;
        while (end < rows.size() && rows[end] == rows[end - 1] + 1)
            ++end;
        selection.select(m_model->index(rows[i], 0),
                         m_model->index(rows[end - 1], m_model->columnCount() - 1));
        i = end;
    }
    return selection;
}

/// What was not read cannot be acted on: it is selected no longer, so that nobody takes it for
/// selected.
void BoardScreen::showRowActions()
{
    const auto [rows, others] = selectedRows();
    const bool cut = others && !rows.empty();
    if (cut) {
        const QSignalBlocker quiet(m_table->selectionModel());
        m_table->selectionModel()->select(selectionOf(rows), QItemSelectionModel::ClearAndSelect);
        m_table->viewport()->update();
    }
    std::vector<BoardRow> selected;
    selected.reserve(rows.size());
    for (const int row : rows)
        selected.push_back(*known(row));
    const bool further =
        rows.size() == std::size_t(m_mostSelected) && m_model->rowCount() > m_mostSelected;
    m_actions->setRows(std::move(selected), cut || further);
}

BoardScreen::Selection BoardScreen::selection() const
{
    Selection now;
    for (const int row : selectedRows().first)
        now.orders.insert(known(row)->order);
    now.row = m_table->currentIndex().row();
    if (m_model->rowCount() > 0)
        now.topRow = std::max(0, m_table->firstInView());
    if (m_model->isHere(now.topRow))
        now.top = m_model->row(now.topRow).order;
    return now;
}

/// The rows may be others now: an order that is still there is selected still, the current one is
/// the same or stands where it stood, and what was in view is.
void BoardScreen::selectAgain(const Selection &before)
{
    if (m_model->rowCount() == 0) {
        m_side->show(QString());
        return m_actions->setRows({});
    }
    const int found = m_model->rowOf(m_selected);
    const int last = m_model->rowCount() - 1;
    const int row = found >= 0 ? found : std::clamp(before.row, 0, last);
    if (m_table->currentIndex().row() != row || selectedOrder() != m_selected)
        m_table->setCurrentIndex(m_model->index(row, firstShownColumn(*m_table)));
    selectOrders(before.orders);
    showRowActions(); // their rows may say something else
    if (before.topRow < 0)
        return;
    const int top = before.top.isEmpty() ? -1 : m_model->rowOf(before.top);
    m_table->bringToTop(top >= 0 ? top : before.topRow);
}

/// Those of them that are there; where none is, what is selected stays.
void BoardScreen::selectOrders(const QSet<QString> &orders)
{
    std::vector<int> rows;
    for (const int row : m_model->rowsHere(0, m_model->rowCount() - 1))
        if (orders.contains(m_model->row(row).order))
            rows.push_back(row);
    const QItemSelection selection = selectionOf(rows);
    if (!selection.isEmpty())
        m_table->selectionModel()->select(selection, QItemSelectionModel::ClearAndSelect);
}

bool BoardScreen::letGoOfRows()
{
    if (m_actions->rows().size() < 2)
        return false;
    m_table->selectionModel()->select(m_table->currentIndex(), QItemSelectionModel::ClearAndSelect |
                                                                   QItemSelectionModel::Rows);
    return true;
}

QString BoardScreen::selectedOrder() const
{
    const QModelIndex index = m_table->currentIndex();
    return index.isValid() ? m_model->row(index.row()).order : QString();
}

void BoardScreen::selectionChanged()
{
    const QString order = selectedOrder();
    if (order.isEmpty())
        return;
    m_selected = order;
    m_side->show(order);
    emit placeChanged();
}

void BoardScreen::openSelected()
{
    if (const QString order = selectedOrder(); !order.isEmpty())
        emit openOrder(order);
}

void BoardScreen::settle(const QString &order)
{
    connect(showConflicts(workplace(), order, window()), &ConflictsDialog::recordsChanged, this,
            [this] {
                refresh();
                emit recordsChanged();
            });
}

} // namespace loopwright
