#pragma once
// One order as the board shows it: store, model and command line share the value.

#include "core/acceptance/BoardQuery.h"
#include "core/acceptance/Decision.h"
#include "core/order/ServiceOrder.h"

namespace loopwright {

/// A van that has an order.
struct OutAt
{
    QString station; ///< its name, or its tag where it has none here
    Moment since;

    bool operator==(const OutAt &) const = default;
    QJsonObject toJson() const;
};
// As the board keeps them.
QString awayText(const std::vector<OutAt> &out);
std::vector<OutAt> awayFromText(const QString &text);

struct BoardRow
{
    QString order, circuit, pair, customer, premises, office, installer;
    QString installerName; ///< empty if the key is not registered
    QString criterion;     ///< key of the first open one: not met before missing; else empty
    QString reason;        ///< why it is not accepted yet; empty if it is
    QString waitingOn;     ///< a WaitingOn; empty if nobody is named
    LineKind kind = LineKind::Bri;
    Stage stage = stageAt(Station::Identifiers);
    OrderOutcome outcome = OrderOutcome::Incomplete;
    QDate due;
    QDate promised; ///< the first due date, or the present one where it never was another
    OrderStatus status = OrderStatus::Open;
    bool held = false;
    bool hazard = false;                 ///< one is open on its pair or at its premises
    std::optional<Moment> hazardAt = {}; ///< when the one that `reason` tells was read
    bool paper = false;                  ///< accepted, and its certificate is not issued
    int facts = 0;
    int runs = 0;
    std::vector<OutAt> out = {}; ///< the vans that have it
    int conflicts = 0;           ///< between stations, that nobody has settled
    QStringList foundIn = {};    ///< under a search: the columns of the order that hold its words

    bool operator==(const BoardRow &) const = default;

    /// Open, and not accepted: its due date matters.
    bool isPending() const { return status == OrderStatus::Open && !isAccepted(outcome); }
    bool isLate(QDate today) const { return isPending() && due < today; }
    /// The first date has passed, and it was moved or the order is not completed.
    bool isMissed(QDate today) const
    {
        return promised.isValid() && promised < today && status != OrderStatus::Cancelled &&
               (status == OrderStatus::Open || promised != due);
    }
    /// Due within the next working days, and a station is still open.
    bool isAtRisk(QDate today) const
    {
        return isPending() && due >= today && due <= workingDaysAfter(today, riskWorkingDays);
    }

    /// Days since the open hazard was read, none for today's; nothing where none is open.
    std::optional<qint64> hazardDays(QDate today) const
    {
        return hazardAt ? std::optional(std::max<qint64>(hazardAt->localDate().daysTo(today), 0))
                        : std::nullopt;
    }

    /// The contract's fields and more; `today` is the local date.
    QJsonObject toJson(QDate today) const;
};

} // namespace loopwright
