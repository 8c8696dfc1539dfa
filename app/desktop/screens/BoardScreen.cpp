#include "app/desktop/screens/BoardScreen.h"

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/screens/BoardFilterBar.h"
#include "app/desktop/screens/BoardSide.h"
#include "app/desktop/screens/BoardsButton.h"
#include "app/desktop/screens/FirstRun.h"
#include "app/desktop/screens/RowActions.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/Table.h"
#include "app/desktop/widgets/WorkBar.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>

namespace loopwright {

namespace {

/// Typing must rest so long before the records are searched.
constexpr int typingRestMs = 120;
/// Below this width, in em, the table has the page to itself.
constexpr double sideFromEm = 64;

} // namespace

BoardScreen::BoardScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_finder(workplace.questions())
    , m_lister(workplace.longWork())
    , m_exporter(workplace.longWork())
    , m_model(new BoardModel(this))
    , m_sortColumn(boardColumn(u"due"))
    , m_watch(workplace)
{
    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(makeHead());
    m_bar = new BoardFilterBar;
    connect(m_bar, &BoardFilterBar::changed, this, &BoardScreen::filterChanged);
    connect(m_bar, &BoardFilterBar::clearWanted, this, &BoardScreen::clearFilters);
    connect(m_bar, &BoardFilterBar::circuitWanted, this, &Screen::openCircuit);
    connect(m_bar, &BoardFilterBar::installerWanted, this, &BoardScreen::showInstaller);
    layout->addWidget(m_bar);
    layout->addWidget(makeMiddle(), 1);
    makeBoards();
    makeExport();
    makeRowActions();
    // Below: the rows do not move when they come.
    layout->addWidget(
        new WorkBar(QStringLiteral("day_list.work"), tr("Progress of the day list"), m_lister));
    layout->addWidget(m_actions);

    m_typing.setSingleShot(true);
    m_typing.setInterval(typingRestMs);
    connect(&m_typing, &QTimer::timeout, this, &BoardScreen::filterChanged);
    connect(m_model, &BoardModel::pageWanted, this, &BoardScreen::findPage);
    connect(&m_watch, &ChangeWatch::changed, this, &BoardScreen::refresh);
    connect(&m_finder, &Asker::busyChanged, this,
            [this](bool busy) { m_found->setEnabled(!busy); });
}

void BoardScreen::refresh()
{
    m_typing.stop();
    read(true);
    m_side->refresh();
}

void BoardScreen::takeFocus()
{
    if (m_list->currentWidget() == m_table && m_model->rowCount() > 0)
        m_table->setFocus();
    else
        m_search->setFocus();
}

bool BoardScreen::startSearch()
{
    m_search->setFocus(Qt::ShortcutFocusReason);
    m_search->selectAll();
    return true;
}

/// Esc: first all rows but the current one, then the search, then the filters.
bool BoardScreen::letGo()
{
    if (letGoOfRows())
        return true;
    if (!m_search->text().isEmpty()) {
        m_search->clear();
        filterChanged();
        return true;
    }
    if (!isFiltered())
        return false;
    clearFilters();
    return true;
}

void BoardScreen::filterChanged()
{
    read(false);
    m_boards->setState(state());
    emit placeChanged();
}

/// `again`: what is in view; else the first page.
void BoardScreen::read(bool again)
{
    m_typing.stop();
    m_filter.text = m_search->text().trimmed();
    m_bar->writeTo(m_filter);
    m_filter.sort = boardColumns()[std::size_t(m_sortColumn)].sort;
    m_filter.descending = m_descending;
    if (m_descending && m_filter.sort == BoardSort::Urgency)
        m_filter.sort = BoardSort::Due; // hazards stand first only where the urgent does
    m_bar->setClearVisible(isFiltered());
    m_finder.supersede();
    BoardFilter filter = m_filter;
    const int top = again ? std::max(m_table->firstInView(), m_top) : 0;
    filter.place = top / boardRowsAtOnce * boardRowsAtOnce;
    filter.limit = again ? 2 * boardRowsAtOnce : boardRowsAtOnce;
    m_finder.ask<std::vector<BoardRow>>(
        [filter](Records &records, const Progress &) { return boardRows(records, filter); },
        [this, again, filter](const Result<std::vector<BoardRow>> &found) {
            if (found && found->empty() && filter.place > 0)
                read(false); // there are fewer now
            else
                showRows(found, filter, again);
        });
    m_finder.ask<BoardCounts>(
        [filter](Records &records, const Progress &) { return boardCounts(records, filter); },
        [this](const Result<BoardCounts> &counts) { showCounts(counts); });
    if (filter.text.isEmpty())
        return m_bar->showFound({});
    m_finder.ask<FoundKinds>(
        [filter](Records &records, const Progress &) { return foundKinds(records, filter.text); },
        [this](const Result<FoundKinds> &found) {
            m_bar->showFound(found.value_or(FoundKinds()));
        });
}

/// Whose name was searched for: his orders, and the search has done its work.
void BoardScreen::showInstaller(const QString &key)
{
    QJsonObject chosen = m_bar->chosen();
    chosen.insert(toText(BoardFacet::Installer), key);
    m_bar->choose(chosen);
    m_search->clear();
    filterChanged();
    m_table->setFocus();
}

void BoardScreen::findPage(int first)
{
    BoardFilter filter = m_filter;
    filter.limit = boardRowsAtOnce;
    filter.place = first;
    if (m_model->isHere(first - 1)) // by its key the page is found at once
        filter.after = m_model->row(first - 1).order;
    m_finder.ask<std::vector<BoardRow>>(
        [filter](Records &records, const Progress &) { return boardRows(records, filter); },
        [this, first](const Result<std::vector<BoardRow>> &found) {
            if (!found) {
                m_model->putNothing(first);
                emit said(localized(found.error()));
                return;
            }
            const int count = int(found->size());
            const bool fewer = count < boardRowsAtOnce && first + count < m_model->rowCount();
            if (fewer && m_actions->rows().size() > 1) // a row that goes must not be deselected
                return read(true);
            m_model->put(first, *found);
            if (selectedOrder() != m_selected)
                selectionChanged(); // what is selected was not here
            showRowActions();
        });
}

void BoardScreen::sortBy(int column)
{
    m_descending = column == m_sortColumn && !m_descending;
    m_sortColumn = column;
    showSort();
    filterChanged();
}

void BoardScreen::showSort()
{
    m_table->horizontalHeader()->setSortIndicator(m_sortColumn, m_descending ? Qt::DescendingOrder
                                                                             : Qt::AscendingOrder);
}

QJsonObject BoardScreen::state() const
{
    return {{"filters", m_bar->chosen()},
            {"sort", QString::fromLatin1(boardColumns()[std::size_t(m_sortColumn)].key)},
            {"descending", m_descending}};
}

void BoardScreen::setState(const QJsonObject &state)
{
    m_bar->choose(state.value("filters").toObject(BoardFilterBar::atFirst()));
    const int column = boardColumn(state.value("sort").toString());
    m_sortColumn = column < 0 ? boardColumn(u"due") : column;
    m_descending = state.value("descending").toBool();
    showSort();
}

QJsonObject BoardScreen::place() const
{
    QJsonObject place = state();
    place.insert("search", m_search->text());
    place.insert("order", m_selected);
    place.insert("top", m_table->firstInView());
    place.insert("columns", m_table->columns());
    place.insert("boards", m_boards->boards());
    place.insert("board", m_boards->current());
    return place;
}

void BoardScreen::restore(const QJsonObject &place)
{
    setState(place);
    m_search->setText(place.value("search").toString());
    m_table->setColumns(place.value("columns").toArray());
    m_boards->setBoards(place.value("boards").toArray(), place.value("board").toString());
    m_boards->setState(state());
    m_selected = place.value("order").toString();
    m_top = std::max(0, place.value("top").toInt());
    refresh();
}

bool BoardScreen::isFiltered() const
{
    return m_bar->chosen() != BoardFilterBar::atFirst() || !m_search->text().trimmed().isEmpty();
}

void BoardScreen::clearFilters()
{
    m_bar->choose(BoardFilterBar::atFirst());
    m_search->clear();
    filterChanged();
    m_search->setFocus();
}

/// `again`: of the same search; then what changed is marked, and what is in view stays.
void BoardScreen::showRows(const Result<std::vector<BoardRow>> &rows, const BoardFilter &filter,
                           bool again)
{
    if (!rows) {
        m_found->setText(tr("The search failed."));
        emit said(localized(rows.error()));
        return;
    }
    const bool known = again && m_model->rowCount() > 0;
    Selection before = known ? selection() : Selection();
    // The page that is shown took the place of what was being read.
    const auto awaited = std::exchange(m_awaited, {});
    const bool all = known && awaited && !*awaited;
    if (known && awaited && *awaited)
        before.orders = **awaited;
    if (const int restored = std::exchange(m_top, 0); !known && restored > 0)
        before.topRow = restored;
    const bool full = int(rows->size()) == filter.limit; // others may follow
    const bool wasRead = !std::exchange(m_first, {}).empty();
    m_model->show(*rows, workplace().today(),
                  known ? BoardModel::Mark::Changes : BoardModel::Mark::Nothing, int(filter.place),
                  full && again ? m_model->rowCount() : 0);
    showEmptiness();
    selectAgain(before);
    const bool lacks = before.orders.size() > qsizetype(m_actions->rows().size());
    if (all)
        readToSelect(std::nullopt);
    else if (lacks && (wasRead || awaited))
        readToSelect(before.orders);
}

void BoardScreen::showCounts(const Result<BoardCounts> &counts)
{
    if (!counts) {
        emit said(localized(counts.error()));
        return;
    }
    m_model->setTotal(counts->total);
    m_all = counts->all;
    showEmptiness();
    m_bar->showCounts(*counts);
    const QString total = QLocale().toString(counts->total);
    m_found->setText(counts->more         ? tr("%1 orders and more").arg(total)
                     : counts->total == 1 ? tr("1 order")
                                          : tr("%1 orders").arg(total));
}

void BoardScreen::showEmptiness()
{
    const bool empty = m_model->rowCount() == 0;
    if (empty && m_all < 0)
        return; // what to say is not known before they are counted
    const bool none = m_all == 0;
    m_firstRun->offer(empty && none);
    if (empty && !none && isFiltered())
        m_empty->say(tr("No order matches"),
                     tr("The search looks through numbers, names, circuits and identifiers."));
    else if (empty && !none)
        m_empty->say(tr("No order is open"), tr("All of them are completed or cancelled."));
    m_emptyAll->setVisible(!none && m_filter.facets.contains(BoardFacet::Open));
    m_emptyClear->setVisible(!none && isFiltered());
    const bool hadFocus = m_table->hasFocus();
    m_list->setCurrentIndex(empty ? 1 : 0);
    if (empty && hadFocus)
        m_search->setFocus();
    m_side->setVisible(!empty && width() >= em(sideFromEm));
}

void BoardScreen::resizeEvent(QResizeEvent *event)
{
    Screen::resizeEvent(event);
    m_side->setVisible(m_model->rowCount() > 0 && width() >= em(sideFromEm));
}

void BoardScreen::showEvent(QShowEvent *event)
{
    Screen::showEvent(event);
    m_watch.start(); // the window reads anew what it shows
}

void BoardScreen::hideEvent(QHideEvent *event)
{
    m_watch.stop();
    Screen::hideEvent(event);
}

/// Keys of the search field that are not typed into it.
bool BoardScreen::takesKey(int key, const QString &text)
{
    const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (enter && m_typing.isActive()) {
        filterChanged(); // what is shown is not yet what was typed
        return true;
    }
    if (enter) {
        openSelected();
        return true;
    }
    if (key == Qt::Key_Down && m_model->rowCount() > 0) {
        m_table->setFocus(Qt::TabFocusReason);
        return true;
    }
    // It leads here; within a number it is a part of it.
    return text == u"/" && m_search->selectedText() == m_search->text();
}

bool BoardScreen::eventFilter(QObject *object, QEvent *event)
{
    if (event->type() == QEvent::KeyPress && object == m_search) {
        const auto *press = static_cast<QKeyEvent *>(event);
        if (takesKey(press->key(), press->text()))
            return true;
    }
    return Screen::eventFilter(object, event);
}

} // namespace loopwright
