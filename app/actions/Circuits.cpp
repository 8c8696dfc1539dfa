#include "app/actions/Circuits.h"

#include "app/actions/CircuitLife.h"
#include "app/actions/Register.h"
#include "core/acceptance/Criteria.h"
#include "core/order/Claims.h"
#include "db/BoardStore.h"
#include "db/EventStore.h"
#include "db/OrderStore.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr int mostCandidates = 20;
constexpr int mostSpares = 20;

/// The order that brought the circuit into service: the first that was completed, else the first
/// that is accepted.
QString turnUpOf(const std::vector<OrderView> &orders)
{
    for (const OrderView &view : orders)
        if (view.status == OrderStatus::Completed)
            return view.order.number;
    for (const OrderView &view : orders)
        if (view.status == OrderStatus::Open && isAccepted(view.decision.outcome))
            return view.order.number;
    return {};
}

Result<void> addNeighbours(Records &records, CircuitView &view)
{
    const ServiceOrder &order = view.newest().order;
    view.cable = cableOf(order.pair);
    if (view.cable.isEmpty())
        return {};
    LOOPWRIGHT_ASSIGN(
        auto rows,
        BoardStore(records.database()).inTroubleInCable(order.office, view.cable, view.circuit));
    std::erase_if(rows,
                  [](const BoardRow &row) { return !row.hazard && !isOfThePlant(row.criterion); });
    // A circuit may hold its pair as working and as planned.
    const auto again =
        std::unique(rows.begin(), rows.end(),
                    [](const BoardRow &a, const BoardRow &b) { return a.order == b.order; });
    rows.erase(again, rows.end());
    const qint64 own = pairNumber(order.pair);
    std::ranges::stable_sort(
        rows, {}, [own](const BoardRow &row) { return std::abs(pairNumber(row.pair) - own); });
    view.neighbours = std::move(rows);
    if (own == 0)
        return {};
    LOOPWRIGHT_ASSIGN(view.spares, sparesInCable(records, order, mostSpares));
    return {};
}

Result<CircuitView> noSuchCircuit(Records &records, const QString &circuit)
{
    LOOPWRIGHT_ASSIGN(const auto like, circuitsWith(records, circuit, mostCandidates + 1));
    QString sentence = QString("There is no circuit \"%1\".").arg(circuit.left(60));
    QStringList names;
    for (const BoardRow &row : like)
        names << row.circuit;
    if (names.size() > mostCandidates)
        names.back() = "more";
    if (!names.isEmpty())
        sentence += " It is in a number or name of " + names.join(", ") + '.';
    return failure(ErrorCode::NotFound, sentence);
}

} // namespace

Result<CircuitView> showCircuit(Records &records, const QString &circuit)
{
    const Database &database = records.database();
    LOOPWRIGHT_ASSIGN(const auto orders, OrderStore(database).ofCircuit(circuit));
    if (orders.empty())
        return noSuchCircuit(records, circuit);
    CircuitView view;
    view.circuit = circuit;
    CircuitFigures figures;
    for (const StoredOrder &stored : orders) {
        LOOPWRIGHT_ASSIGN(auto one, judgedOrder(records, stored));
        view.orders.push_back(std::move(one));
    }
    for (const OrderView &one : view.orders)
        figures.add(one.input, one.limits, one.judged);
    view.figures = figures.take();
    LOOPWRIGHT_ASSIGN(auto events, EventStore(database).ofCircuit(circuit));
    view.events = std::move(events);
    LOOPWRIGHT_ASSIGN(view.people, people(records));
    view.turnUp = turnUpOf(view.orders);
    LOOPWRIGHT_ASSIGN(const auto working, OrderStore(database).workingOn(circuit));
    view.inService = working.has_value();
    view.life = lifeOf(view.orders, view.people);
    LOOPWRIGHT_TRY(addNeighbours(records, view));
    return view;
}

Result<std::vector<BoardRow>> circuitsWith(Records &records, const QString &text, int limit)
{
    if (text.trimmed().isEmpty())
        return std::vector<BoardRow>();
    BoardFilter filter;
    filter.text = text;
    filter.sort = BoardSort::Circuit;
    filter.limit = limit * 5; // a circuit has a few orders
    LOOPWRIGHT_ASSIGN(auto rows, boardRows(records, filter));
    std::vector<BoardRow> circuits;
    for (BoardRow &row : rows)
        if (std::ranges::find(circuits, row.circuit, &BoardRow::circuit) == circuits.end() &&
            int(circuits.size()) < limit)
            circuits.push_back(std::move(row));
    return circuits;
}

QJsonObject CircuitView::toJson() const
{
    QJsonArray list, happened, lived, measured, near, free;
    for (const OrderView &view : orders) {
        QJsonObject order = view.order.toJson();
        order.insert("status", toText(view.status));
        order.insert("outcome", toText(view.decision.outcome));
        list << order;
    }
    for (const Event &event : events)
        happened << event.toJson();
    for (const LifeEntry &entry : life)
        lived << entry.toJson();
    for (const CircuitFigure &figure : figures)
        measured << figure.toJson(turnUp);
    for (const BoardRow &row : neighbours)
        near << row.toJson(newest().now.localDate());
    for (const SparePair &spare : spares)
        free << spare.toJson();
    return {{"circuit", circuit},
            {"orders", list},
            {"in_service", inService},
            {"turn_up", turnUp.isEmpty() ? QJsonValue() : QJsonValue(turnUp)},
            {"life", lived},
            {"figures", measured},
            {"cable", cable.isEmpty() ? QJsonValue() : QJsonValue(cable)},
            {"neighbours", near},
            {"spares", free},
            {"events", happened}};
}

} // namespace loopwright
