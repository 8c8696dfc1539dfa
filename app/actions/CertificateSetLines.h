#pragma once
// The lines at one premises whose certificates go together.

#include "app/actions/Issuing.h"

namespace loopwright {

/// A line at the premises as it stands.
struct SetLine
{
    QString order, circuit, customer;
    LineKind kind = LineKind::Bri;
    OrderOutcome outcome = OrderOutcome::Incomplete;
    Stage stage = stageAt(Station::Identifiers);
    bool mayHave = false; ///< a certificate can be issued now
    QString why;          ///< one sentence if it cannot
};

/// What a set for the order would hold: the order, every other open order at its premises, and the
/// completed ones that the same installer worked for on the day of the order's last work on site.
/// The order first, then by due date. NotFound if there is no such order.
Result<std::vector<SetLine>> linesOfSet(Records &records, const QString &order);

/// One line with all that its certificate is made from.
struct SetMember
{
    SetLine line;
    Certifying about;
};

/// The same with what the certificates are made from.
Result<std::vector<SetMember>> membersOfSet(Records &records, const QString &order);

/// Who was there last for an order, and on which day.
struct LastWork
{
    QString installer;
    QDate day;

    bool operator==(const LastWork &) const = default;
};

/// By time; the last one is the newest.
std::vector<LastWork> workOn(const std::vector<Fact> &facts);

} // namespace loopwright
