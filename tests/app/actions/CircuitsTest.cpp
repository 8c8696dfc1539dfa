// A circuit over all its orders: its life, its figures, its neighbours in the cable.

#include "app/actions/Circuits.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Evidence.h"
#include "tests/support/Office.h"
#include "tests/support/Records.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class CircuitsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;

    void take(const OrderFields &fields)
    {
        const auto report = importOrders(*m_records, csv({fields}), {"orders.csv"});
        QVERIFY2(report && report->refused == 0, qPrintable(fields["order_number"]));
    }
    void record(const OrderFields &fields, const QList<QJsonObject> &facts)
    {
        const auto report = recordFile(*m_records, recordBytes(fields, facts), "job.json");
        QVERIFY2(report.has_value(), qPrintable(report ? QString() : report.error().text()));
    }
    static QStringList texts(const CircuitView &view, LifeKind kind)
    {
        QStringList texts;
        for (const LifeEntry &entry : view.life)
            if (entry.kind == kind)
                texts << entry.text;
        return texts;
    }
    /// A basic-rate order on a pair of cable 17 whose run, or instrument, fails.
    void neighbour(const QString &number, const QString &pair, const QString &lines,
                   const char *instrument, int bitErrors)
    {
        const OrderFields fields =
            otherBriFields(number, "C-" + number, pair, "217-555-01" + lines,
                           "217-555-01" + QString::number(lines.toInt() + 1));
        take(fields);
        QList<QJsonObject> facts;
        int n = 0;
        for (QJsonObject fact : briFacts()) {
            fact["id"] = uuid(lines.toInt() * 100 + ++n);
            if (fact["kind"] == "run") {
                fact["bit_errors"] = bitErrors;
                fact["errored_seconds"] = bitErrors > 0 ? 1 : 0;
            }
            if (instrument)
                fact["instrument"] = instrument;
            for (const char *key : {"from_dn", "to_dn"})
                fact.remove(key);
            if (fact["kind"] == "call")
                fact["dn"] = fields["dn_" + QString(fact["channel"] == "B1" ? "1" : "2")];
            facts << fact;
        }
        record(fields, facts);
    }

private slots:
    void init()
    {
        m_records = office();
        take(briFields());
    }

    void theLifeIsOneLine()
    {
        QList<QJsonObject> facts = briFacts();
        facts << fact(40, "visit", 1,
                      {{"arrived", "2026-03-04T08:01:00-06:00"},
                       {"left", "2026-03-04T09:10:00-06:00"},
                       {"result", "worked"}});
        record(briFields(), facts);
        QVERIFY(decideOrder(*m_records, "A-1001").has_value());
        QVERIFY(completeOrder(*m_records, "A-1001").has_value());
        const auto view = showCircuit(*m_records, "C-77");
        QVERIFY(view.has_value());
        QVERIFY(std::ranges::is_sorted(view->life, {}, [](const auto &e) { return e.at.msUtc; }));
        QCOMPARE(texts(*view, LifeKind::Visit),
                 QStringList("Visit by Kim Carver, until 09:10, worked"));
        QCOMPARE(texts(*view, LifeKind::Readings),
                 QStringList("Loop: 612 ohm, 28.4 dB at 40 kHz; Layers: 6 up; Calls: 4 through"));
        QCOMPARE(texts(*view, LifeKind::Run).size(), 1);
        QVERIFY(texts(*view, LifeKind::Run).first().endsWith(": counted"));
        QCOMPARE(texts(*view, LifeKind::Order),
                 QStringList({"Order taken in: new, due 6 March 2026", "Order completed"}));
        QCOMPARE(view->turnUp, QString("A-1001"));
        QCOMPARE(view->cable, QString("17"));
    }

    void aHazardIsToldWhereItWasRead()
    {
        record(briFields(), {safety(1, 5, 118)});
        const auto view = showCircuit(*m_records, "C-77");
        QCOMPARE(texts(*view, LifeKind::Hazard).size(), 1);
        QVERIFY2(texts(*view, LifeKind::Hazard).first().contains("118 V AC"),
                 qPrintable(texts(*view, LifeKind::Hazard).first()));
        QVERIFY(texts(*view, LifeKind::Hazard).first().endsWith("It is OPEN."));
        QVERIFY(view->turnUp.isEmpty());
    }

    /// The nearest pair first; what failed for want of a calibration says nothing of the cable, and
    /// another cable's pair is none of it.
    void neighboursAreThoseWhosePlantFailed()
    {
        neighbour("N-1", "17-290", "20", nullptr, 400);
        neighbour("N-2", "17 - 199", "30", nullptr, 400);
        neighbour("N-3", "17-203", "40", "none", 0);
        neighbour("N-4", "171-204", "50", nullptr, 400);
        const auto view = showCircuit(*m_records, "C-77");
        QStringList pairs;
        for (const BoardRow &row : view->neighbours)
            pairs << row.circuit;
        QCOMPARE(pairs, QStringList({"C-N-2", "C-N-1"}));
    }

    void isFoundByAFragment()
    {
        take(otherBriFields("A-1002", "C-78", "17-300", "217-555-0161", "217-555-0162"));
        const auto all = circuitsWith(*m_records, "bright", 10);
        QCOMPARE(all->size(), 2u);
        QCOMPARE(circuitsWith(*m_records, "bright", 1)->size(), 1u);
        QCOMPARE(circuitsWith(*m_records, "0161", 10)->front().circuit, QString("C-78"));
        QVERIFY(circuitsWith(*m_records, " ", 10)->empty());
        const auto none = showCircuit(*m_records, "0161");
        QCOMPARE(none.error().code, ErrorCode::NotFound);
        QVERIFY2(none.error().message.contains("C-78"), qPrintable(none.error().message));
        QCOMPARE(showCircuit(*m_records, "nowhere").error().message,
                 QString("There is no circuit \"nowhere\"."));
    }
};

QTEST_GUILESS_MAIN(CircuitsTest)
#include "CircuitsTest.moc"
