// A hazard stays with its pair and its premises, whatever order it was read for and whoever looks
// away.

#include "app/actions/Acceptance.h"
#include "app/actions/Board.h"
#include "app/actions/Evidence.h"
#include "app/actions/HazardRegister.h"
#include "app/actions/History.h"
#include "tests/support/Office.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class HazardsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;

    static OrderFields fields(const char *number, const char *circuit, const char *pair,
                              const char *premises, const char *dn)
    {
        OrderFields made = analogFields();
        made["order_number"] = number;
        made["circuit_number"] = circuit;
        made["pair"] = pair;
        made["premises"] = premises;
        made["dn_1"] = dn;
        return made;
    }
    void take(const OrderFields &fields)
    {
        const auto report = importOrders(*m_records, csv({fields}), {"orders.csv"});
        QVERIFY2(report, report ? "" : qPrintable(report.error().text()));
        QVERIFY2(report->refused == 0, report->rejects.constData());
    }
    /// Codes of what was told.
    QStringList record(const OrderFields &fields, const QList<QJsonObject> &facts)
    {
        const auto report = recordFile(*m_records, recordBytes(fields, facts), "job.json");
        if (!report)
            qFatal("%s", qPrintable(report.error().text()));
        QStringList codes;
        for (const auto &told : report->told)
            codes << told.code;
        return codes;
    }
    BoardRow row(const QString &order)
    {
        const auto rows = boardRows(*m_records, {});
        for (const BoardRow &each : *rows)
            if (each.order == order)
                return each;
        qFatal("no such order");
    }
    QString safety(const QString &order)
    {
        return toText(decisionNow(*m_records, order)->criterion("safety")->outcome);
    }

    const OrderFields m_first = fields("A-1", "C-1", "17-205", "3 Quay Street", "217-555-0150");
    const OrderFields m_samePair = fields("A-2", "C-2", "17 205", "9 Hill Road", "217-555-0151");
    const OrderFields m_samePremises =
        fields("A-3", "C-3", "17-300", "3 Quay Street", "217-555-0152");
    const OrderFields m_elsewhere = fields("A-4", "C-4", "17-301", "1 Far Lane", "217-555-0153");

private slots:
    void init()
    {
        m_records = office();
        for (const OrderFields &each : {m_first, m_samePair, m_samePremises, m_elsewhere})
            take(each);
        QCOMPARE(record(m_first, {jobs::safety(1, 5, 118)}).value(0), QString("hazard"));
    }

    /// A card that is clear may leave something to clear: it is said at once.
    void aTroubleOfAClearCardIsTold()
    {
        QCOMPARE(record(m_elsewhere, {jobs::safety(20, 5)}), QStringList());
        QCOMPARE(record(m_elsewhere, {jobs::safety(21, 7, 4)}), QStringList{"to_mend"});
    }

    void aClosingThatClosesNothingIsTold()
    {
        const auto closing = [](int n, int minute, const QString &card) {
            return fact(n, "hazard_closed", minute,
                        {{"hazard", card}, {"source", "meter"}, {"by", "Lee"}});
        };
        // Dated before the hazard was read: it stays open, also after a clear card.
        QCOMPARE(record(m_first, {closing(30, 1, uuid(1))}), QStringList("closes_nothing"));
        record(m_first, {jobs::safety(31, 20)});
        QVERIFY(row("A-1").hazard);
        // A card that read no hazard.
        QCOMPARE(record(m_first, {closing(32, 30, uuid(31))}), QStringList("closes_nothing"));
        // The hazard of a line elsewhere is not closed from here.
        QCOMPARE(record(m_elsewhere, {closing(33, 31, uuid(1))}), QStringList("closes_nothing"));
        QVERIFY(row("A-1").hazard);
        QCOMPARE(record(m_samePair, {closing(34, 32, uuid(1))}), QStringList());
        record(m_first, {jobs::safety(35, 40)});
        QVERIFY(!row("A-1").hazard);
    }

    void standsFirstForEveryOrderThatItConcerns()
    {
        for (const char *order : {"A-1", "A-2", "A-3"}) {
            QVERIFY2(row(order).hazard, order);
            QVERIFY2(row(order).reason.contains("118 V AC"), qPrintable(row(order).reason));
        }
        QVERIFY(row("A-2").reason.contains("for order A-1"));
        QVERIFY(row("A-3").reason.startsWith("On another pair at these premises"));
        QVERIFY(!row("A-4").hazard);
        QCOMPARE(safety("A-1"), QString("not_met"));
        QCOMPARE(safety("A-2"), QString("not_met"));
        QCOMPARE(safety("A-3"), QString("missing")); // another pair: told, and no more
    }
    void itsAgeIsKnownToEveryOrderThatItConcerns()
    {
        const QDate today(2026, 3, 7);
        for (const char *order : {"A-1", "A-2", "A-3"}) {
            QCOMPARE(row(order).hazardAt, Moment::parse(u"2026-03-04T08:05:00-06:00"));
            QCOMPARE(row(order).hazardDays(today), 3);
            QCOMPARE(row(order).toJson(today)["hazard_at"].toString(), "2026-03-04T08:05:00-06:00");
        }
        QVERIFY(!row("A-4").hazardAt && !row("A-4").hazardDays(today));
        QVERIFY(row("A-4").toJson(today)["hazard_at"].isNull());
        record(m_first, {fact(11, "hazard_closed", 20,
                              {{"hazard", uuid(1)}, {"source", "meter"}, {"by", "Lee"}}),
                         jobs::safety(12, 25)});
        QVERIFY(!row("A-1").hazardAt); // none is open any more
    }
    void isNotVoidedAway()
    {
        QVERIFY(voidFact(*m_records, uuid(1), "mistyped"));
        QCOMPARE(safety("A-1"), QString("not_met"));
        QVERIFY(row("A-2").hazard);
    }
    void isNotLostByAnotherNameOfThePair()
    {
        OrderFields corrected = m_first;
        corrected["pair"] = "18-900";
        QVERIFY(
            importOrders(*m_records, csv({corrected}), {.fileName = "orders.csv", .update = true}));
        QCOMPARE(safety("A-1"), QString("not_met")); // the order it was read for keeps it
        QVERIFY(row("A-2").hazard);                  // and so does the pair
        const OrderFields there = fields("A-5", "C-5", "18-900", "2 New Road", "217-555-0154");
        take(there);
        QVERIFY(row("A-5").hazard); // the pair that the order is for now may be the one
    }
    void isClosedOnAnyOrderOfThePair()
    {
        record(m_samePair, {fact(11, "hazard_closed", 20,
                                 {{"hazard", uuid(1)},
                                  {"source", "power"},
                                  {"by", "Lee of the power company"},
                                  {"reference", "ticket 7"}})});
        QVERIFY(row("A-1").hazard); // no clear card yet
        record(m_samePair, {jobs::safety(12, 25)});
        for (const char *order : {"A-1", "A-2", "A-3"})
            QVERIFY2(!row(order).hazard, order);
        QCOMPARE(safety("A-2"), QString("met"));
    }
    void isInTheRegisterUntilAndAfterItIsClosed()
    {
        const auto open = hazardRegister(*m_records, true);
        QVERIFY2(open, open ? "" : qPrintable(open.error().text()));
        QCOMPARE(open->size(), 1u); // once, however many orders it concerns
        QCOMPARE(open->front().order, "A-1");
        QCOMPARE(open->front().pair, "17-205");
        QVERIFY(open->front().volts.join(' ').contains("118 V AC"));
        QVERIFY(open->front().state.startsWith("Open: "));
        record(m_samePair, {fact(11, "hazard_closed", 20,
                                 {{"hazard", uuid(1)},
                                  {"source", "power"},
                                  {"by", "Lee of the power company"},
                                  {"reference", "ticket 7"}})});
        QVERIFY(hazardRegister(*m_records, true)->front().state.startsWith("Said to be closed: "));
        record(m_samePair, {jobs::safety(12, 25)});
        QVERIFY(hazardRegister(*m_records, true)->empty());
        record(m_elsewhere, {jobs::safety(13, 30, 90)});
        const auto all = hazardRegister(*m_records, false);
        QCOMPARE(all->size(), 2u);
        QCOMPARE((*all)[0].order, "A-4"); // open ones first
        QVERIFY2((*all)[1].state.startsWith("Closed: power, by word of Lee of the power company, "
                                            "reference ticket 7, "),
                 qPrintable((*all)[1].state));
        QVERIFY(!(*all)[1].toJson()["open"].toBool());
        int told = 0;
        const auto stopped = hazardRegister(*m_records, false, [&told](qint64, qint64) {
            ++told;
            return false;
        });
        QVERIFY(!stopped && told == 1);
    }
    /// The utility before whoever else it was handed on to, and nobody who was told before.
    void theRegisterSaysWhoWasToldByWhom()
    {
        const auto referred = [](int n, int minute, QJsonObject body) {
            return fact(n, "referred", minute, std::move(body));
        };
        record(m_first, {referred(40, 2, {{"to", "early desk"}})});
        auto row = hazardRegister(*m_records, false)->front();
        QVERIFY(row.told.isEmpty() && row.toldBy.isEmpty() && !row.toldAt);
        QVERIFY(row.toJson()["told_at"].isNull());
        record(m_first, {referred(41, 10,
                                  {{"to", "power company"},
                                   {"reference", "P-7"},
                                   {"waiting_on", "power_utility"}}),
                         referred(42, 15, {{"to", "cable desk"}, {"waiting_on", "plant"}})});
        row = hazardRegister(*m_records, false)->front();
        QCOMPARE(row.told, "power company");
        QCOMPARE(row.toldReference, "P-7");
        QCOMPARE(row.toldBy, "Kim Carver");
        QCOMPARE(row.toldAt, Moment::parse(u"2026-03-04T08:10:00-06:00"));
        QCOMPARE(row.toJson()["told_reference"].toString(), "P-7");
        QCOMPARE(row.toJson()["told_by"].toString(), "Kim Carver");
        QCOMPARE(row.toJson()["told_at"].toString(), "2026-03-04T08:10:00-06:00");
    }
    void contactWithPowerNeedsASupervisor()
    {
        const QJsonObject closing = fact(11, "hazard_closed", 20,
                                         {{"hazard", uuid(1)}, {"source", "power"}, {"by", "Lee"}});
        m_records->actAs("K7");
        record(m_first, {closing, jobs::safety(12, 25)});
        QCOMPARE(safety("A-1"), QString("not_met"));
        const auto decision = decisionNow(*m_records, "A-1");
        QVERIFY(decision->criterion("safety")->reason.english().contains("registered supervisor"));
        m_records->actAs("S1");
        QJsonObject again = closing;
        again["id"] = uuid(13);
        record(m_first, {again, jobs::safety(14, 40)});
        QCOMPARE(safety("A-1"), QString("met"));
        QVERIFY(!row("A-2").hazard); // by the other order's history
    }
    void whatIsStoredRepeats()
    {
        record(m_samePair, {fact(11, "hazard_closed", 20,
                                 {{"hazard", uuid(1)}, {"source", "meter"}, {"by", "Kim"}})});
        const auto decided = decideOrder(*m_records, "A-2");
        QVERIFY(decided);
        const auto again = decideAgain(*m_records, decided->id);
        QVERIFY2(again, again ? "" : qPrintable(again.error().text()));
    }
    void readingsThatDoNotFitAreToldAndKept()
    {
        QJsonObject card = jobs::safety(21, 5);
        card["office_connected"] = true;
        card["dc_v"] = QJsonObject{{"tip_ground", 0}, {"ring_ground", -48}, {"tip_ring", 2}};
        QCOMPARE(record(m_elsewhere, {card}), QStringList{"contradiction"});
        QCOMPARE(safety("A-4"), QString("missing"));
        card["id"] = uuid(22);
        card["at"] = fact(0, "", 6, {})["at"];
        QCOMPARE(record(m_elsewhere, {card}), QStringList{"to_mend"});
        QCOMPARE(safety("A-4"), QString("met"));
        QJsonObject foreign = jobs::safety(23, 7);
        foreign["dc_v"] = QJsonObject{{"tip_ground", 0}, {"ring_ground", -24}, {"tip_ring", 24}};
        QCOMPARE(record(m_elsewhere, {foreign}), QStringList{"foreign_battery"});
        QCOMPARE(record(m_elsewhere, {fact(24, "loop", 8, {{"dc_resistance_ohm", 700}})}),
                 QStringList{"closed_step"});
    }
};

QTEST_GUILESS_MAIN(HazardsTest)
#include "HazardsTest.moc"
