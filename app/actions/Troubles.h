#pragma once
// Troubles of circuits in service. A trouble is an order to repair, so that visit, safety card,
// assignment, hold and day list come with it; it is opened with a symptom and closed with what was
// found, what cleared it, and the cause. It changes nothing of the line, and holds no numbers.

#include "app/actions/Records.h"
#include "core/base/Finding.h"
#include "core/order/JobFacts.h"
#include "core/order/ServiceOrder.h"

#include <QJsonObject>

namespace loopwright {

struct Trouble
{
    QString order; ///< number of the repair: the trouble's name
    QString circuit, customer, premises, installer;
    QString symptom, deskTest;
    OrderStatus status = OrderStatus::Open;
    Moment opened;
    std::optional<Moment> closed;
    std::optional<ClearedWhat> cause; ///< set if it was closed
    QString found, cleared;
    QString previous;                  ///< the trouble that it repeats; empty if it repeats none
    qint64 openedAs = 0, closedAs = 0; ///< places in the chain of the circuit; 0: not yet

    bool isOpen() const { return status == OrderStatus::Open; }
    /// "C-77-R1 of 3 May 2026: no dial tone. Closed 4 May 2026: contact, joint remade"
    QString sentence() const;
    QJsonObject toJson() const;
};

struct OpeningTrouble
{
    QString circuit;
    QString symptom;
    QString deskTest = {};
    QString installer = {};
    QDate due = {}; ///< invalid: today
};
struct OpenedTrouble
{
    Trouble trouble;
    Findings findings; ///< another open one on the circuit; why the order is held
};
/// A repair like the order by which the circuit works. NotFound for an unknown circuit, Refused if
/// it is not in service, Usage without a symptom.
Result<OpenedTrouble> openTrouble(Records &records, const OpeningTrouble &opening);

struct ClosingTrouble
{
    QString order;
    QString found;
    QString cleared; ///< at least two words, unless nothing was found
    ClearedWhat cause = ClearedWhat::NothingFound;
};
struct ClosedTrouble
{
    Trouble trouble;
    QStringList lacks; ///< what the decision still asks for, a sentence each
};
/// Completes the repair whatever its decision, and records what was done as a fact; the circuit
/// goes on as it was. Refused for an order that is no repair or ended already, before it was
/// opened, and while the line is on a pair that the records do not have.
Result<ClosedTrouble> closeTrouble(Records &records, const ClosingTrouble &closing);

/// Oldest first.
Result<std::vector<Trouble>> troubles(Records &records, bool openOnly);
/// Likewise of one circuit; NotFound if there is none.
Result<std::vector<Trouble>> troublesOf(Records &records, const QString &circuit);

} // namespace loopwright
