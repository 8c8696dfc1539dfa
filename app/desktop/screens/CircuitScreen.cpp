#include "app/desktop/screens/CircuitScreen.h"

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/models/CircuitRows.h"
#include "app/desktop/models/EventRows.h"
#include "app/desktop/screens/TroubleEntry.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/Table.h"
#include "app/desktop/widgets/TrendView.h"

#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QTabWidget>

namespace loopwright {

namespace {

constexpr int mostCandidates = 200;

QString searchHint()
{
    return CircuitScreen::tr("Enter shows the circuit with its whole life");
}

template<class Rows, class MakeRow>
std::vector<TextRow> rowsOf(const Rows &list, MakeRow make)
{
    std::vector<TextRow> rows;
    rows.reserve(list.size());
    for (const auto &each : list)
        rows.push_back(make(each));
    return rows;
}

} // namespace

CircuitScreen::CircuitScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_worker(workplace.questions())
    , m_exporter(workplace.longWork())
    , m_life(new TextTable({tr("When"), tr("Order"), tr("Kind"), tr("What")}, 2, {0, 1}, this))
    , m_orders(new TextTable({tr("Order"), tr("Type"), tr("Due"), tr("State"), tr("Customer"),
                              tr("Premises"), tr("Variant"), tr("Pair"), tr("Numbers")},
                             -1, {0, 7, 8}, this))
    , m_events(new TextTable(eventHeader(), -1, {2}, this))
    , m_neighbours(new TextTable(
          {tr("Pair"), tr("Circuit"), tr("Why"), tr("Customer"), tr("Order")}, 0, {0, 1, 4}, this))
    , m_spares(new TextTable({tr("Pair"), tr("Away"), tr("Last order"), tr("Predicted"),
                              tr("Make-up of"), tr("Against it")},
                             0, {0, 1, 2, 3, 4}, this))
    , m_figureRows(new TextTable(
          {tr("Figure"), tr("Turn-up"), tr("Newest"), tr("Change"), tr("Unit"), tr("Read")}, 2,
          {1, 2, 3}, this))
    , m_candidates(new TextTable(
          {tr("Circuit"), tr("Customer"), tr("Premises"), tr("Office"), tr("Pair"), tr("Order")},
          -1, {0, 4, 5}, this))
    , m_number(new QLineEdit)
    , m_mark(new FieldMark(tr("Circuit, or any part of a number or name"), m_number))
    , m_heading(makeHeading({}, 1.5))
    , m_summary(new SignLine)
    , m_found(new QWidget)
    , m_tabs(new QTabWidget)
    , m_figureTable(new Table(QStringLiteral("circuit.figures"), tr("Figures then and today")))
    , m_candidateTable(new Table(QStringLiteral("circuit.candidates"), tr("Circuits found")))
    , m_chosen(new SignLine)
    , m_trend(new TrendView)
    , m_trouble(new TroubleEntry(workplace))
    , m_export(makeButton(tr("Export the circuit…"), QStringLiteral("circuit.export"),
                          [this] { exportOrStop(); }))
{
    m_number->setObjectName(QStringLiteral("circuit.number"));
    m_summary->setObjectName(QStringLiteral("circuit.summary"));
    connect(m_number, &QLineEdit::returnPressed, this,
            [this] { open(m_number->text().trimmed()); });
    auto *splitter = new QSplitter(Qt::Horizontal);
    splitter->addWidget(makeTabs());
    splitter->addWidget(makeFigures());
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    splitter->setChildrenCollapsible(false);
    auto *found = new QVBoxLayout(m_found);
    found->setContentsMargins(0, 0, 0, 0);
    found->addWidget(makeSummary());
    found->addWidget(splitter, 1);
    found->addWidget(m_trouble);
    connect(m_trouble, &TroubleEntry::opened, this, [this](const QString &sentence) {
        emit said(sentence);
        emit recordsChanged();
        refresh();
    });
    m_candidateTable->setModel(m_candidates);
    m_candidateTable->setColumnEms({10, 14, 16, 8, 8, 8});
    connect(m_candidateTable, &Table::opened, this,
            [this](const QModelIndex &index) { open(m_candidates->row(index.row()).key); });

    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(m_heading);
    layout->addWidget(m_mark);
    layout->addWidget(m_candidateTable, 1);
    layout->addWidget(m_found, 1);
    layout->addStretch(0);
    whenThemed(m_number, [this] {
        m_number->setFont(digitsFont());
        m_number->setMaximumWidth(em(24));
    });
    m_heading->setText(title());
    m_mark->setHint(searchHint());
    m_candidateTable->hide();
    m_found->hide();
    layout->setAlignment(Qt::AlignTop);
}

Table *CircuitScreen::addTab(const QString &name, const QString &title, TextTable *model,
                             std::vector<double> ems)
{
    auto *table = new Table(name, title);
    table->setModel(model);
    table->setColumnEms(std::move(ems));
    m_tabs->addTab(table, title);
    return table;
}

QWidget *CircuitScreen::makeTabs()
{
    m_tabs->setObjectName(QStringLiteral("circuit.tabs"));
    m_tabs->setAccessibleName(tr("Parts of the circuit's page"));
    m_tabs->setDocumentMode(true);
    m_lifeTable = addTab(QStringLiteral("circuit.life"), tr("Life"), m_life, {12, 6.5, 6.5, 20});
    Table *orders = addTab(QStringLiteral("circuit.orders"), tr("Orders"), m_orders,
                           {8, 7, 8, 9, 12, 13, 12, 7, 18});
    Table *events =
        addTab(QStringLiteral("circuit.events"), tr("Events"), m_events, eventColumnEms());
    Table *near = addTab(QStringLiteral("circuit.neighbours"), tr("Neighbours"), m_neighbours,
                         {7, 9, 24, 10, 7});
    addTab(QStringLiteral("circuit.spares"), tr("Spare pairs"), m_spares, {6, 4, 7, 10, 7, 20});
    for (Table *table : {m_lifeTable, orders, events})
        connect(table, &Table::opened, this, [this, table](const QModelIndex &index) {
            const auto *model = static_cast<const TextTable *>(table->model());
            if (const QString order = model->row(index.row()).key; !order.isEmpty())
                emit openOrder(order);
        });
    connect(near, &Table::opened, this,
            [this](const QModelIndex &index) { open(m_neighbours->row(index.row()).key); });
    connect(m_lifeTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &now) { showChosen(now.row()); });
    m_chosen->setObjectName(QStringLiteral("circuit.chosen"));
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_tabs, 1);
    column->addWidget(m_chosen);
    connect(m_tabs, &QTabWidget::currentChanged, this,
            [this](int tab) { m_chosen->setVisible(tab == 0); });
    return box;
}

QWidget *CircuitScreen::makeFigures()
{
    m_figureTable->setModel(m_figureRows);
    m_figureTable->setColumnEms({11.5, 5, 6, 5, 4, 8});
    connect(m_figureTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &now) { showTrend(now.row()); });
    connect(m_figureTable, &Table::opened, this, [this](const QModelIndex &index) {
        emit openOrder(m_figureRows->row(index.row()).key);
    });
    auto *box = new QSplitter(Qt::Vertical);
    box->addWidget(m_figureTable);
    box->addWidget(m_trend);
    box->setStretchFactor(0, 1);
    box->setStretchFactor(1, 1);
    box->setChildrenCollapsible(false);
    return box;
}

QString CircuitScreen::title() const
{
    return m_circuit.isEmpty() ? tr("Circuit") : tr("Circuit %1").arg(m_circuit);
}

void CircuitScreen::open(const QString &circuit)
{
    if (circuit.isEmpty())
        return;
    m_circuit = circuit;
    m_number->setText(circuit);
    m_heading->setText(title());
    emit titleChanged();
    emit placeChanged();
    refresh();
}

void CircuitScreen::refresh()
{
    if (m_circuit.isEmpty())
        return;
    m_worker.supersede();
    m_worker.ask<CircuitView>(
        [circuit = m_circuit](Records &records, const Progress &) {
            return showCircuit(records, circuit);
        },
        [this](Result<CircuitView> view) { showView(std::move(view)); });
}

void CircuitScreen::say(const QString &trouble)
{
    m_mark->setFindings({{.severity = Severity::Error,
                          .code = "circuit",
                          .reason = Text::verbatim(trouble),
                          .repair = {},
                          .field = {}}});
}

void CircuitScreen::showView(Result<CircuitView> view)
{
    m_mark->clearFindings();
    m_candidateTable->hide();
    const bool wasThere = m_found->isVisible();
    const bool hadKeyboard = m_number->hasFocus() || m_candidateTable->hasFocus();
    m_found->setVisible(view.has_value());
    m_mark->setHint(view ? QString() : searchHint());
    if (!view) {
        if (view.error().code == ErrorCode::NotFound)
            askForCandidates(view.error());
        else
            say(localizedSentence(view.error().message));
        return;
    }
    showSummary(*view);
    m_trouble->setCircuit(view->inService ? view->circuit : QString());
    showLists(*view);
    showFigures(*view);
    if (!wasThere && hadKeyboard)
        m_lifeTable->setFocus();
}

void CircuitScreen::showSummary(const CircuitView &view)
{
    const OrderView &newest = view.newest();
    QStringList parts{newest.order.customer, newest.order.premises};
    if (!newest.order.pair.isEmpty())
        parts << tr("pair %1").arg(newest.order.pair);
    parts << tr("office %1").arg(newest.order.office);
    const auto turnUp = std::ranges::find(view.orders, view.turnUp,
                                          [](const OrderView &one) { return one.order.number; });
    parts << (turnUp == view.orders.end() ? tr("not in service yet")
              : turnUp->status == OrderStatus::Completed
                  ? tr("in service by order %1").arg(view.turnUp)
                  : tr("accepted by order %1").arg(view.turnUp));
    for (auto order = view.orders.rbegin(); order != view.orders.rend(); ++order)
        if (!order->certificates.empty()) {
            parts << tr("certificate %1").arg(order->certificates.back().number);
            break;
        }
    parts.removeAll(QString());
    const auto hazards = newest.judged.cards.open();
    if (!hazards.empty())
        m_summary->show(Status::Failed,
                        localized(hazardText(hazards.front(), newest.order.number)));
    else
        m_summary->show(Status::None, parts.join(QStringLiteral(" · ")));
}

void CircuitScreen::showLists(const CircuitView &view)
{
    auto life = rowsOf(view.life, lifeRow);
    std::ranges::reverse(life);
    m_life->show(std::move(life));
    auto orders = rowsOf(view.orders, orderRow);
    std::ranges::reverse(orders);
    m_orders->show(std::move(orders));
    m_events->show(eventRows(view.events, view.people));
    m_neighbours->show(rowsOf(view.neighbours, neighbourRow));
    m_spares->show(rowsOf(view.spares, spareRow));
    const int place = m_tabs->indexOf(m_tabs->findChild<QWidget *>("circuit.neighbours"));
    m_tabs->setTabText(
        place, view.cable.isEmpty()
                   ? tr("Neighbours")
                   : tr("Cable %1 (%2 in trouble)").arg(view.cable).arg(view.neighbours.size()));
    for (Table *table : m_tabs->findChildren<Table *>())
        if (table->model()->rowCount() > 0)
            table->setCurrentIndex(table->model()->index(0, 0));
}

void CircuitScreen::showFigures(const CircuitView &view)
{
    const int before = m_figureTable->currentIndex().row();
    m_figures = view.figures;
    m_figureRows->show(rowsOf(m_figures, [&view](const CircuitFigure &figure) {
        return figureRow(figure, view.turnUp);
    }));
    if (!m_figures.empty())
        m_figureTable->setCurrentIndex(
            m_figureRows->index(std::clamp(before, 0, int(m_figures.size()) - 1), 0));
    showTrend(m_figureTable->currentIndex().row());
}

void CircuitScreen::showChosen(int row)
{
    if (row >= 0 && row < m_life->rowCount())
        m_chosen->show(m_life->row(row).sign, m_life->row(row).cells.last());
}

void CircuitScreen::showTrend(int row)
{
    const bool any = row >= 0 && row < int(m_figures.size());
    m_trend->show(any ? std::optional(m_figures[std::size_t(row)]) : std::nullopt);
}

void CircuitScreen::askForCandidates(const Error &none)
{
    m_worker.ask<std::vector<BoardRow>>(
        [text = m_circuit](Records &records, const Progress &) {
            return circuitsWith(records, text, mostCandidates);
        },
        [this, none](Result<std::vector<BoardRow>> rows) {
            if (!rows)
                say(localizedSentence(rows.error().message));
            else if (rows->empty())
                say(none.message);
            else if (rows->size() == 1)
                open(rows->front().circuit);
            else
                showCandidates(*rows);
        });
}

void CircuitScreen::showCandidates(const std::vector<BoardRow> &rows)
{
    m_candidates->show(rowsOf(rows, candidateRow));
    m_candidateTable->show();
    m_candidateTable->setCurrentIndex(m_candidates->index(0, 0));
    m_candidateTable->setFocus();
    m_heading->setText(int(rows.size()) < mostCandidates
                           ? tr("%1 circuits with “%2”").arg(rows.size()).arg(m_circuit)
                           : tr("%1 circuits and more with “%2”").arg(rows.size()).arg(m_circuit));
}

void CircuitScreen::takeFocus()
{
    if (m_circuit.isEmpty())
        m_number->setFocus();
    else if (m_candidateTable->isVisible())
        m_candidateTable->setFocus();
    else
        m_tabs->currentWidget()->setFocus();
}

bool CircuitScreen::letGo()
{
    return m_trouble->fold();
}

bool CircuitScreen::startSearch()
{
    m_number->setFocus();
    m_number->selectAll();
    return true;
}

} // namespace loopwright
