#pragma once
// Records with something to report: made on 5 March 2026 and later, in the office of Office.h.

#include "app/actions/Acceptance.h"
#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "app/actions/Troubles.h"
#include "tests/support/Office.h"

namespace loopwright::jobs {

inline QJsonObject laterFact(QJsonObject fact, const QString &day)
{
    for (const char *key : {"at", "started", "ended"})
        if (fact.contains(QLatin1StringView(key)))
            fact[key] = fact[key].toString().replace("2026-03-04", day);
    return fact;
}

/// A-1001 and A-2001 are accepted on one visit of 4 March, A-1002 (K7's) on two, the last of 6
/// March; A-1003 by exception; A-3001 is a record only; A-1004 has no evidence, A-1005 a run over
/// the limits; A-1006 was cancelled. C-77 had three troubles, the second a repeat. Today is 16 May.
inline std::unique_ptr<Records> reportRecords(const QString &path = ":memory:")
{
    const auto good = [](const auto &done) {
        if (!done)
            qFatal("%s", qPrintable(done.error().text()));
    };
    const auto other = [](int n, const char *pair) {
        const QString number = QString::number(n);
        return otherBriFields("A-10" + number, "C-" + number, pair, "217-555-01" + number,
                              "217-555-01" + QString::number(n + 40));
    };
    auto records = office(path);
    const auto at = [&](const char *time) { records->setNow(Moment::parse(QString(time))); };
    OrderFields second = other(2 + 10, "17-206"), third = other(13, "18-1"),
                fourth = other(14, "18-2"), fifth = other(15, "18-3"), sixth = other(16, "9"),
                recordOnly = other(17, "18-4");
    int number = 2;
    for (OrderFields *fields : {&second, &third, &fourth, &fifth, &sixth})
        (*fields)["order_number"] = QString("A-100%1").arg(number++);
    second["installer"] = "K7";
    recordOnly["order_number"] = "A-3001";
    recordOnly["order_type"] = "record_only";
    good(importOrders(
        *records,
        csv({briFields(), analogFields(), second, third, fourth, fifth, sixth, recordOnly}),
        {"o.csv"}));
    good(recordFile(*records, recordBytes(briFields(), briFacts()), "a"));
    good(recordFile(
        *records, recordBytes(analogFields(), factsFor(analogFields(), analogFacts(), 100)), "b"));
    QList<QJsonObject> facts = briFacts();
    facts.removeLast(); // the run is made two days later
    facts << laterFact(safety(0, 5), "2026-03-06") << laterFact(detector(0, 30), "2026-03-06")
          << laterFact(fact(0, "self_test", 8, {{"outcome", "passed"}}), "2026-03-06")
          << laterFact(run(0, 32), "2026-03-06");
    at("2026-03-06T12:00:00-06:00");
    good(recordFile(*records, recordBytes(second, factsFor(second, facts, 200)), "c"));
    QList<QJsonObject> overLimits = briFacts();
    overLimits.last() = run(15, 32, 100000, 700);
    good(recordFile(*records, recordBytes(third, factsFor(third, overLimits, 300)), "d"));
    good(acceptWithException(*records, "A-1003", {"run"}, "the customer takes it as it is"));
    good(recordFile(*records, recordBytes(fifth, factsFor(fifth, overLimits, 400)), "e"));
    good(recordFile(*records, recordBytes(sixth, factsFor(sixth, briFacts(), 500)), "f"));
    good(cancelOrder(*records, "A-1006", "the customer withdrew"));
    good(completeOrder(*records, "A-1001"));
    const auto trouble = [&](const char *opened, const char *closed) {
        at(opened);
        const auto made = openTrouble(*records, {"C-77", "no dial tone"});
        good(made);
        if (!closed)
            return;
        at(closed);
        good(closeTrouble(*records, {made->trouble.order, "wet splice", "splice made anew",
                                     ClearedWhat::Contact}));
    };
    trouble("2026-03-10T09:00:00-06:00", "2026-03-11T09:00:00-06:00");
    trouble("2026-04-10T09:00:00-06:00", "2026-04-11T09:00:00-06:00"); // the thirtieth day after
    trouble("2026-05-12T09:00:00-06:00", nullptr);                     // the thirty-first
    at("2026-05-16T12:00:00-06:00");
    return records;
}

} // namespace loopwright::jobs
