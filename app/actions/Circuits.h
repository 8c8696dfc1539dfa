#pragma once
// A circuit over all its orders: its life on one line, what was measured of it then and today, and
// which of its neighbours in the cable are in trouble.

#include "app/actions/CircuitLife.h"
#include "app/actions/SparePairs.h"
#include "core/acceptance/CircuitFigures.h"

namespace loopwright {

struct CircuitView
{
    CircuitView() = default;
    CircuitView(CircuitView &&) = default;
    CircuitView &operator=(CircuitView &&) = default;

    QString circuit;
    std::vector<OrderView> orders; ///< as judgedOrder(), oldest first; never empty
    std::vector<Event> events;     ///< of the circuit, oldest first
    QList<Person> people;          ///< of the register: events name who acted by key
    std::vector<LifeEntry> life;   ///< oldest first
    std::vector<CircuitFigure> figures;
    bool inService =
        false;      ///< an order of it was completed, and the last one did not disconnect it
    QString turnUp; ///< number of the order that brought it into service; empty if none did
    QString cable;  ///< of the newest order's pair; empty if none can be told from it
    std::vector<BoardRow> neighbours; ///< other circuits of the cable of which a measurement
                                      ///< failed, or with an open hazard; nearest pairs first

    std::vector<SparePair> spares; ///< pairs of the cable that nobody has, the best first

    const OrderView &newest() const { return orders.back(); }
    QJsonObject toJson() const;
};

/// NotFound if there is no such circuit; it names those whose orders have the text in a number or
/// name, if there are some.
Result<CircuitView> showCircuit(Records &records, const QString &circuit);

/// Circuits of which an order has the text in any number or name, each by one of its orders; by
/// number, at most `limit`. None for no text.
Result<std::vector<BoardRow>> circuitsWith(Records &records, const QString &text, int limit);

} // namespace loopwright
