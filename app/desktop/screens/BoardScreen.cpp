#include "app/desktop/screens/BoardScreen.h"

#include "app/desktop/PrintDialogs.h"
#include "app/desktop/Theme.h"
#include "app/desktop/screens/BoardFilterBar.h"
#include "app/desktop/screens/BoardSide.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/Table.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSplitter>

namespace loopwright {

namespace {

/// Typing must rest so long before the records are searched.
constexpr int typingRestMs = 120;
/// Below this width, in em, the table has the page to itself.
constexpr double sideFromEm = 64;

/// Widths of the columns in em; the last one takes what is left.
constexpr double columnEms[BoardModel::ColumnCount] = {7, 12.5, 7, 9.5, 8, 13, 5.5, 6.5, 20};

} // namespace

BoardScreen::BoardScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_finder(workplace.questions())
    , m_lister(workplace.longWork())
    , m_model(new BoardModel(this))
{
    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(makeHead());
    m_bar = new BoardFilterBar;
    connect(m_bar, &BoardFilterBar::changed, this, &BoardScreen::filterChanged);
    connect(m_bar, &BoardFilterBar::clearWanted, this, &BoardScreen::clearFilters);
    layout->addWidget(m_bar);
    layout->addWidget(makeMiddle(), 1);

    m_typing.setSingleShot(true);
    m_typing.setInterval(typingRestMs);
    connect(&m_typing, &QTimer::timeout, this, &BoardScreen::filterChanged);
    connect(m_model, &BoardModel::moreWanted, this, &BoardScreen::find);
    connect(&m_finder, &Asker::busyChanged, this,
            [this](bool busy) { m_found->setEnabled(!busy); });
}

QWidget *BoardScreen::makeHead()
{
    auto *head = new QWidget;
    auto *layout = new QHBoxLayout(head);
    layout->setContentsMargins(0, 0, 0, 0);
    m_search = new QLineEdit;
    m_search->setObjectName(QStringLiteral("search"));
    m_search->setPlaceholderText(tr("Find by any number or name   ( / )"));
    m_search->setAccessibleName(tr("Find orders by any number or name"));
    m_search->setClearButtonEnabled(true);
    m_search->installEventFilter(this);
    connect(m_search, &QLineEdit::textChanged, this, [this] { m_typing.start(); });
    m_found = new QLabel;
    m_found->setObjectName(QStringLiteral("found"));
    auto *day = makeButton(tr("Day list…"), QStringLiteral("day_list"), [this] { makeDayList(); });
    day->setToolTip(
        tr("What is due by today, for the installer chosen below or for all, as a PDF"));
    layout->addWidget(m_search, 1);
    layout->addWidget(m_found);
    layout->addWidget(day);
    whenThemed(head, [this] {
        m_search->setFont(sized(1.15));
        m_search->setMinimumHeight(em(2.4));
        m_found->setMinimumWidth(em(8));
        m_found->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    });
    return head;
}

void BoardScreen::makeTable()
{
    m_table = new Table(QStringLiteral("orders"), tr("Orders"));
    m_table->setModel(m_model);
    m_table->setColumnEms({std::begin(columnEms), std::end(columnEms)});
    m_table->horizontalHeader()->setSectionsMovable(true);
    connect(m_table, &Table::opened, this, [this] { openSelected(); });
    connect(m_table, &Table::typed, this, [this](const QString &text) {
        m_search->setFocus(Qt::OtherFocusReason);
        m_search->setText(text);
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this] { selectionChanged(); });
}

QWidget *BoardScreen::makeMiddle()
{
    makeTable();
    m_empty = new EmptyState;
    m_emptyImport = makeButton(tr("Import a file…   Ctrl+I"), QStringLiteral("empty.import"),
                               [this] { emit openScreen(QStringLiteral("import"), {}); });
    m_emptyNew = makeButton(tr("Add an order   Ctrl+N"), QStringLiteral("empty.new"),
                            [this] { emit editOrder({}); });
    m_emptyClear = makeButton(tr("Show all orders"), QStringLiteral("empty.clear"),
                              [this] { clearFilters(); });
    for (QPushButton *button : {m_emptyImport, m_emptyNew, m_emptyClear})
        m_empty->addButton(button);

    m_list = new QStackedWidget;
    m_list->addWidget(m_table);
    m_list->addWidget(m_empty);
    m_side = new BoardSide(workplace());
    connect(m_side, &BoardSide::openOrder, this, &Screen::openOrder);
    connect(m_side, &BoardSide::openCircuit, this, &Screen::openCircuit);
    connect(m_side, &BoardSide::editOrder, this, &Screen::editOrder);
    connect(m_side, &BoardSide::openHandoff, this,
            [this](const QString &order) { emit openScreen(QStringLiteral("handoff"), order); });

    auto *splitter = new QSplitter;
    splitter->addWidget(m_list);
    splitter->addWidget(m_side);
    splitter->setStretchFactor(0, 5);
    splitter->setStretchFactor(1, 3);
    splitter->setChildrenCollapsible(false);
    splitter->setSizes({700, 300}); // shares, not pixels
    return splitter;
}

void BoardScreen::refresh()
{
    filterChanged();
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

void BoardScreen::filterChanged()
{
    m_typing.stop();
    m_filter.text = m_search->text().trimmed();
    m_bar->writeTo(m_filter);
    m_bar->setClearVisible(isFiltered());
    m_finder.supersede();
    find(std::max({boardRowsAtOnce, m_model->rowCount(), std::exchange(m_rows, 0)}));
    m_finder.ask<BoardCounts>(
        [filter = m_filter](Records &records, const Progress &) {
            return boardCounts(records, filter);
        },
        [this](const Result<BoardCounts> &counts) { showCounts(counts); });
    emit placeChanged();
}

QJsonObject BoardScreen::place() const
{
    QJsonObject place = m_bar->chosen();
    place.insert("search", m_search->text());
    place.insert("order", m_selected);
    place.insert("rows", m_model->rowCount());
    return place;
}

void BoardScreen::restore(const QJsonObject &place)
{
    m_bar->choose(place);
    m_search->setText(place.value("search").toString());
    m_selected = place.value("order").toString();
    m_rows = place.value("rows").toInt();
    filterChanged();
}

bool BoardScreen::isFiltered() const
{
    return m_bar->isOn() || !m_search->text().trimmed().isEmpty();
}

void BoardScreen::clearFilters()
{
    m_bar->clear();
    m_search->clear();
    filterChanged();
    m_search->setFocus();
}

void BoardScreen::find(int limit)
{
    BoardFilter filter = m_filter;
    filter.limit = limit;
    m_finder.ask<std::vector<BoardRow>>(
        [filter](Records &records, const Progress &) { return boardRows(records, filter); },
        [this](const Result<std::vector<BoardRow>> &rows) { showRows(rows); });
}

void BoardScreen::showRows(const Result<std::vector<BoardRow>> &rows)
{
    if (!rows) {
        m_found->setText(tr("The search failed."));
        emit said(rows.error().text());
        return;
    }
    m_model->show(*rows, workplace().today());
    showEmptiness();
    selectAgain();
}

void BoardScreen::showCounts(const Result<BoardCounts> &counts)
{
    if (!counts) {
        emit said(counts.error().text());
        return;
    }
    m_model->setTotal(counts->total);
    m_bar->showCounts(*counts);
    m_found->setText(counts->total == 1 ? tr("1 order")
                                        : tr("%1 orders").arg(QLocale().toString(counts->total)));
}

void BoardScreen::showEmptiness()
{
    const bool empty = m_model->rowCount() == 0;
    const bool filtered = isFiltered();
    if (empty && filtered)
        m_empty->say(tr("No order matches"),
                     tr("The search looks through numbers, names, circuits and identifiers."));
    else if (empty)
        m_empty->say(tr("No orders yet"),
                     tr("Import a file of serving offices first, then one of orders; or add an "
                        "order by hand."));
    m_emptyImport->setVisible(!filtered);
    m_emptyNew->setVisible(!filtered);
    m_emptyClear->setVisible(filtered);
    const bool hadFocus = m_table->hasFocus();
    m_list->setCurrentIndex(empty ? 1 : 0);
    if (empty && hadFocus)
        m_search->setFocus();
    m_side->setVisible(!empty && width() >= em(sideFromEm));
}

void BoardScreen::selectAgain()
{
    const int row = std::max(0, m_model->rowOf(m_selected));
    if (m_model->rowCount() == 0)
        m_side->show(QString());
    else if (m_table->currentIndex().row() != row || selectedOrder() != m_selected)
        m_table->setCurrentIndex(m_model->index(row, 0));
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

void BoardScreen::makeDayList()
{
    m_lister.ask<DaySheet>(
        [installer = m_filter.installer, today = workplace().today(),
         paper = localPaper()](Records &records, const Progress &) {
            return daySheet(records, installer, today, paper);
        },
        [this](const Result<DaySheet> &list) { saveDayList(list); });
}

void BoardScreen::saveDayList(const Result<DaySheet> &list)
{
    if (!list) {
        emit said(list.error().text());
        return;
    }
    const auto saved =
        saveSheet(this, list->sheet,
                  QStringLiteral("jobs-%1.pdf").arg(workplace().today().toString(Qt::ISODate)),
                  records().now());
    if (!saved)
        emit said(saved.error().text());
    else if (!saved->isEmpty())
        emit said(tr("Saved as %1.").arg(*saved));
}

void BoardScreen::resizeEvent(QResizeEvent *event)
{
    Screen::resizeEvent(event);
    m_side->setVisible(m_model->rowCount() > 0 && width() >= em(sideFromEm));
}

bool BoardScreen::eventFilter(QObject *object, QEvent *event)
{
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent *>(event)->key();
        const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
        if (enter && object == m_search && m_typing.isActive()) {
            filterChanged(); // what is shown is not yet what was typed
            return true;
        }
        if (enter && object == m_search) {
            openSelected();
            return true;
        }
        if (object == m_search && key == Qt::Key_Down && m_model->rowCount() > 0) {
            m_table->setFocus(Qt::TabFocusReason);
            return true;
        }
    }
    return Screen::eventFilter(object, event);
}

} // namespace loopwright
