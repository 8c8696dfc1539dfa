// What the board is made of: its head, its table, what stands in the table's place.

#include "app/desktop/Theme.h"
#include "app/desktop/screens/BoardFilterBar.h"
#include "app/desktop/screens/BoardMenus.h"
#include "app/desktop/screens/BoardScreen.h"
#include "app/desktop/screens/BoardSide.h"
#include "app/desktop/screens/BoardsButton.h"
#include "app/desktop/screens/FirstRun.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/Table.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSplitter>

namespace loopwright {

namespace {

std::vector<double> columnWidths()
{
    std::vector<double> ems;
    for (const BoardColumn &column : boardColumns())
        ems.push_back(column.ems);
    return ems;
}

constexpr double lowEm = 11;

/// Asks for little height: in a small window table and side scroll, not the page. But it asks for
/// as much as it takes at least, or the page would be too low and cut the filters off.
class LowSplitter : public QSplitter
{
public:
    QSize sizeHint() const override { return {QSplitter::sizeHint().width(), em(lowEm)}; }
};

} // namespace

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
    auto *day =
        makeButton(tr("Day list…"), QStringLiteral("day_list"), [this] { askForDayList(); });
    day->setToolTip(
        tr("What is due by today, for the installer chosen below or for all, as a PDF"));
    m_boards = new BoardsButton;
    layout->addWidget(m_search, 1);
    layout->addWidget(m_found);
    layout->addWidget(m_boards);
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
    m_table->setColumnEms(columnWidths());
    QHeaderView *header = m_table->horizontalHeader();
    header->setSectionsMovable(true);
    header->setSectionsClickable(true);
    header->setSortIndicatorShown(true);
    for (int column = 0; column < m_model->columnCount(); ++column)
        header->setSectionHidden(column, !boardColumns()[std::size_t(column)].shown);
    connect(header, &QHeaderView::sectionClicked, this, &BoardScreen::sortBy);
    connect(m_table, &Table::columnsChanged, this, &BoardScreen::placeChanged);
    connect(m_table, &Table::opened, this, [this] { openSelected(); });
    connect(m_table, &Table::typed, this, [this](const QString &text) {
        if (text == u"/") {
            startSearch();
            return;
        }
        m_search->setFocus(Qt::OtherFocusReason);
        m_search->setText(text);
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this] { selectionChanged(); });
}

QWidget *BoardScreen::makeEmpty()
{
    m_empty = new EmptyState;
    m_firstRun = new FirstRun(workplace(), *m_empty, this);
    connect(m_firstRun, &FirstRun::importWished, this,
            [this] { emit openScreen(QStringLiteral("import"), {}); });
    connect(m_firstRun, &FirstRun::orderWished, this, [this] { emit editOrder({}); });
    connect(m_firstRun, &FirstRun::officeMade, this, [this] {
        emit recordsChanged();
        emit editOrder({});
    });
    connect(m_firstRun, &FirstRun::demoReady, this, &Screen::demoReady);
    connect(m_firstRun, &FirstRun::serverWished, this, &Screen::serverWished);
    connect(m_firstRun, &FirstRun::said, this, &Screen::said);
    m_emptyAll =
        makeButton(tr("Look among completed orders too"), QStringLiteral("empty.all"), [this] {
            QJsonObject chosen = m_bar->chosen();
            chosen.remove(toText(BoardFacet::Open));
            m_bar->choose(chosen);
            filterChanged();
        });
    m_emptyClear = makeButton(tr("Clear search and filters   Esc"), QStringLiteral("empty.clear"),
                              [this] { clearFilters(); });
    for (QPushButton *button : {m_emptyAll, m_emptyClear})
        m_empty->addButton(button);
    return inScrollArea(m_empty); // in a small window it takes no more room than the table
}

void BoardScreen::makeBoards()
{
    QMenu *columns = makeColumnsMenu(m_table, m_boards);
    m_boards->addMenu(makeSortMenu(
        [this] {
            return SortChoice{m_sortColumn, m_descending};
        },
        [this](int column) { sortBy(column); }, m_boards));
    m_boards->addMenu(columns);
    connect(m_boards, &BoardsButton::boardChosen, this, [this](const QJsonObject &kept) {
        m_search->clear();
        setState(kept);
        filterChanged();
    });
    connect(m_boards, &BoardsButton::boardsChanged, this, &BoardScreen::placeChanged);
    QHeaderView *header = m_table->horizontalHeader();
    header->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(header, &QHeaderView::customContextMenuRequested, this,
            [header, columns](QPoint at) { columns->popup(header->mapToGlobal(at)); });
    showSort();
    m_boards->setState(state());
}

QWidget *BoardScreen::makeMiddle()
{
    makeTable();
    m_list = new QStackedWidget;
    m_list->addWidget(m_table);
    m_list->addWidget(makeEmpty());
    m_side = new BoardSide(workplace());
    connect(m_side, &BoardSide::openOrder, this, &Screen::openOrder);
    connect(m_side, &BoardSide::openCircuit, this, &Screen::openCircuit);
    connect(m_side, &BoardSide::editOrder, this, &Screen::editOrder);
    connect(m_side, &BoardSide::openHandoff, this,
            [this](const QString &order) { emit openScreen(QStringLiteral("handoff"), order); });
    connect(m_side, &BoardSide::settleWished, this, &BoardScreen::settle);

    auto *splitter = new LowSplitter;
    splitter->addWidget(m_list);
    splitter->addWidget(m_side);
    splitter->setStretchFactor(0, 5);
    splitter->setStretchFactor(1, 3);
    splitter->setChildrenCollapsible(false);
    splitter->setSizes({700, 300}); // shares, not pixels
    splitter->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    whenThemed(splitter, [splitter] { splitter->setMinimumHeight(em(lowEm)); });
    return splitter;
}

} // namespace loopwright
