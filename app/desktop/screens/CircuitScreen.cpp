#include "app/desktop/screens/CircuitScreen.h"

#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/models/EventRows.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/Table.h"
#include "core/identifiers/ProtocolVariant.h"

#include <QLineEdit>
#include <QSplitter>

namespace loopwright {

namespace {

TextRow orderRow(const ServiceOrder &order)
{
    QStringList numbers;
    for (const OrderedTerminal &terminal : order.terminals)
        if (!numbers.contains(terminal.dn))
            numbers << terminal.dn;
    const ProtocolVariant *variant = findVariant(order.variant);
    return {{order.number, eventName(toText(order.type)), dayText(order.dueDate), order.customer,
             order.premises, variant ? variant->name : order.variant, order.pair,
             numbers.join(QStringLiteral(", "))},
            Status::None,
            order.number,
            false};
}

} // namespace

CircuitScreen::CircuitScreen(DesktopContext &workplace, QWidget *parent)
    : Screen(workplace, parent)
    , m_worker(workplace.questions())
    , m_orders(new TextTable({tr("Order"), tr("Type"), tr("Due"), tr("Customer"), tr("Premises"),
                              tr("Variant"), tr("Pair"), tr("Numbers")},
                             -1, {0, 6, 7}, this))
    , m_events(new TextTable(eventHeader(), -1, {2}, this))
    , m_number(new QLineEdit)
    , m_mark(new FieldMark(tr("Circuit number"), m_number))
    , m_heading(makeHeading({}, 1.5))
    , m_found(new QWidget)
    , m_orderTable(new Table(QStringLiteral("circuit.orders"), tr("Orders of the circuit")))
    , m_eventTable(new Table(QStringLiteral("circuit.events"), tr("Events of the circuit")))
{
    m_number->setObjectName(QStringLiteral("circuit.number"));
    m_mark->setHint(tr("Enter shows the circuit with its whole history"));
    connect(m_number, &QLineEdit::returnPressed, this,
            [this] { open(m_number->text().trimmed()); });
    auto *found = new QVBoxLayout(m_found);
    found->setContentsMargins(0, 0, 0, 0);
    found->addWidget(makeTables());

    auto *layout = new QVBoxLayout(this);
    setPageMargins(layout, this);
    layout->addWidget(m_heading);
    layout->addWidget(m_mark);
    layout->addWidget(m_found, 1);
    layout->addStretch(0);
    whenThemed(m_number, [this] {
        m_number->setFont(digitsFont());
        m_number->setMaximumWidth(em(24));
    });
    m_heading->setText(title());
    m_found->hide();
    layout->setAlignment(Qt::AlignTop);
}

QWidget *CircuitScreen::makeTables()
{
    m_orderTable->setModel(m_orders);
    m_orderTable->setColumnEms({8, 7.5, 8, 12, 13, 12, 7, 18});
    connect(m_orderTable, &Table::opened, this,
            [this](const QModelIndex &index) { emit openOrder(m_orders->row(index.row()).key); });
    m_eventTable->setModel(m_events);
    m_eventTable->setColumnEms(eventColumnEms());
    connect(m_eventTable, &Table::opened, this, [this](const QModelIndex &index) {
        if (const QString order = m_events->row(index.row()).key; !order.isEmpty())
            emit openOrder(order);
    });

    auto *orders = new QWidget;
    auto *upper = new QVBoxLayout(orders);
    upper->setContentsMargins(0, 0, 0, 0);
    upper->addWidget(makeHeading(tr("Orders; Enter opens one"), 1.1));
    upper->addWidget(m_orderTable, 1);
    auto *events = new QWidget;
    auto *lower = new QVBoxLayout(events);
    lower->setContentsMargins(0, 0, 0, 0);
    lower->addWidget(makeHeading(tr("What happened, newest first"), 1.1));
    lower->addWidget(m_eventTable, 1);
    auto *splitter = new QSplitter(Qt::Vertical);
    splitter->addWidget(orders);
    splitter->addWidget(events);
    splitter->setStretchFactor(0, 2);
    splitter->setStretchFactor(1, 3);
    splitter->setChildrenCollapsible(false);
    return splitter;
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
        [this](const Result<CircuitView> &view) { showView(view); });
}

void CircuitScreen::showView(const Result<CircuitView> &view)
{
    m_found->setVisible(view.has_value());
    m_mark->clearFindings();
    if (!view) {
        m_mark->setFindings({{.severity = Severity::Error,
                              .code = "circuit",
                              .reason = Text::verbatim(view.error().message),
                              .repair = {},
                              .field = {}}});
        return;
    }
    std::vector<TextRow> orders;
    for (auto order = view->orders.rbegin(); order != view->orders.rend(); ++order)
        orders.push_back(orderRow(*order));
    m_orders->show(std::move(orders));
    m_events->show(eventRows(view->events, view->people));
    if (m_orders->rowCount() > 0)
        m_orderTable->setCurrentIndex(m_orders->index(0, 0));
}

void CircuitScreen::takeFocus()
{
    if (m_circuit.isEmpty())
        m_number->setFocus();
    else
        m_orderTable->setFocus();
}

bool CircuitScreen::startSearch()
{
    m_number->setFocus();
    m_number->selectAll();
    return true;
}

} // namespace loopwright
