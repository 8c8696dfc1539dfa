#pragma once
// A premises with a basic-rate and an analog line for one customer, and a third order there of
// which nothing is done yet.

#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "tests/support/Office.h"

namespace loopwright::jobs {

/// A-2001, analog, at the bakery.
inline OrderFields secondLine()
{
    OrderFields fields = analogFields();
    fields["customer"] = "Bright Bakery";
    fields["premises"] = "12  mill lane"; // as somebody else typed it
    return fields;
}
/// A-3001, analog, at the bakery, due later.
inline OrderFields thirdLine()
{
    OrderFields fields = secondLine();
    fields["order_number"] = "A-3001";
    fields["due_date"] = "2026-03-09";
    fields["circuit_number"] = "C-91";
    fields["pair"] = "17-206";
    fields["dn_1"] = "217-555-0151";
    return fields;
}

/// The facts of the second line: an hour after the first, with ids of their own.
inline QList<QJsonObject> secondFacts()
{
    QList<QJsonObject> facts = analogFacts();
    int id = 101;
    for (QJsonObject &each : facts) {
        each["id"] = uuid(id++);
        each["at"] = Moment::parse(each["at"].toString())->plusSeconds(3600).text();
    }
    return facts;
}

inline QJsonObject arrival(int n, int minute)
{
    return fact(n, "visit", minute, {{"arrived", fact(0, "", minute, {})["at"]}});
}
inline QJsonObject leaving(int n, int arrived, int left)
{
    return fact(n, "visit", left,
                {{"arrived", fact(0, "", arrived, {})["at"]},
                 {"left", fact(0, "", left, {})["at"]},
                 {"result", "worked"}});
}

inline void take(Records &records, const OrderFields &fields, const QList<QJsonObject> &facts)
{
    const auto report =
        recordFile(records, canonicalJson(record(order(fields), facts)), "job.json");
    if (!report)
        qFatal("%s", qPrintable(report.error().text()));
}

inline void takeOrders(Records &records, const QList<OrderFields> &orders)
{
    const auto report = importOrders(records, csv(orders), {"orders.csv"});
    if (!report || !report->clean())
        qFatal("the orders were not taken in");
}

} // namespace loopwright::jobs
