#pragma once
// An office with two vans and three orders, for tests of hazards: A-1001, A-1002 on the same pair,
// which waits for it, and A-1003 at the same premises.

#include "app/actions/Board.h"
#include "tests/support/Vans.h"

#include <algorithm>

namespace loopwright::jobs {

class OfficeOfHazards : protected OfficeWithTwoVans
{
protected:
    void startWithOrders()
    {
        start();
        const OrderFields samePremises =
            otherBriFields("A-1003", "C-79", "17-300", "217-555-0163", "217-555-0164");
        good(importOrders(*office().records, csv({briFields(), samePairFields(), samePremises}),
                          {"o.csv"}));
    }
    static QJsonObject closing(int n, int minute, const char *source = "meter", int card = 1)
    {
        return fact(n, "hazard_closed", minute,
                    {{"hazard", uuid(card)}, {"source", source}, {"by", "Lee"}});
    }
    /// The office gives the order another pair while the van has it.
    void swapInOffice(const QString &pair)
    {
        OrderFields fields = briFields();
        fields["pair"] = pair;
        office().records->changeWhatIsOut(true);
        good(putOrder(*office().records, fields, true));
    }
    static OrderFields samePairFields()
    {
        return otherBriFields("A-1002", "C-78", "17-204", "217-555-0161", "217-555-0162");
    }
    bool hazardOnBoard(const QString &order)
    {
        const auto rows = good(boardRows(*office().records, {}));
        return std::ranges::find(rows, order, &BoardRow::order)->hazard;
    }
};

} // namespace loopwright::jobs
