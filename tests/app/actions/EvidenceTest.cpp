// What a job record adds, and what it is refused for.

#include "app/actions/Evidence.h"

#include "app/actions/History.h"
#include "tests/support/Office.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

std::unique_ptr<Records> officeWithOrder()
{
    auto records = office();
    if (!importOrders(*records, csv({briFields()}), {"orders.csv"}))
        qFatal("the order was not taken in");
    return records;
}

QByteArray recordBytes(const QList<QJsonObject> &facts)
{
    return canonicalJson(jobs::record(jobs::order(briFields()), facts));
}

} // namespace

class EvidenceTest : public QObject
{
    Q_OBJECT
private slots:
    void theSameRecordTwiceAddsNothing()
    {
        auto records = officeWithOrder();
        QVERIFY(recordFile(*records, recordBytes(briFacts()), "job.json"));
        const qint64 events = verifyHistory(*records)->events;
        const auto again = recordFile(*records, recordBytes(briFacts()), "job.json");
        QVERIFY(again);
        QCOMPARE(again->added.size(), 0);
        QCOMPARE(again->alreadyThere.size(), briFacts().size());
        QCOMPARE(verifyHistory(*records)->events, events);
        QList<QJsonObject> other = briFacts();
        other[2]["loss_db"] = 1.5;
        const auto refused = recordFile(*records, recordBytes(other), "job.json");
        QVERIFY(!refused);
        QCOMPARE(refused.error().place, "job.json.facts[2].id");
    }
    void theSameRecordWithoutIdsAddsNothingEither()
    {
        auto records = officeWithOrder();
        QList<QJsonObject> facts = briFacts();
        for (QJsonObject &fact : facts)
            fact.remove("id");
        const QByteArray bytes = recordBytes(facts);
        const auto first = recordFile(*records, bytes, "job.json");
        QVERIFY2(first, first ? "" : qPrintable(first.error().text()));
        QCOMPARE(first->added.size(), facts.size());
        const auto second = recordFile(*records, bytes, "job.json");
        QCOMPARE(second->added.size(), 0);
        QCOMPARE(second->alreadyThere, first->added);
    }
    void everyMomentOfAFactIsComparedWithTheClock_data()
    {
        QTest::addColumn<QString>("fact");
        QTest::addColumn<QString>("place");
        const QString run = R"({"kind":"run","at":"2026-03-05T10:00:00Z","path":"self_call",
            "channels":["B1"],"bit_errors":0,"started":"%1","ended":"%2"})";
        QTest::newRow("start") << run.arg("2026-03-08T10:00:00Z", "2026-03-08T10:15:00Z")
                               << "started";
        QTest::newRow("end") << run.arg("2026-03-05T10:00:00Z", "2026-03-08T10:15:00Z") << "ended";
        QTest::newRow("left")
            << R"({"kind":"visit","at":"2026-03-05T10:00:00Z","left":"2026-04-05T10:00:00Z"})"
            << "left";
        QTest::newRow("arrived")
            << R"({"kind":"visit","at":"2026-03-05T10:00:00Z","arrived":"2026-04-05T10:00:00Z"})"
            << "arrived";
    }
    void everyMomentOfAFactIsComparedWithTheClock()
    {
        QFETCH(QString, fact);
        QFETCH(QString, place);
        auto records = officeWithOrder();
        const auto done = recordFile(
            *records, QString(R"({"order":"A-1001","facts":[%1]})").arg(fact).toUtf8(), "job.json");
        QVERIFY(!done);
        QCOMPARE(done.error().code, ErrorCode::BadInput);
        QCOMPARE(done.error().place, "job.json.facts[0]." + place);
    }
    void whatAFactNamesMustBeThere_data()
    {
        QTest::addColumn<QList<QJsonObject>>("facts");
        QTest::addColumn<QString>("error");
        const auto closed = [](int hazard) {
            return fact(70, "hazard_closed", 50,
                        {{"hazard", uuid(hazard)}, {"source", "meter"}, {"by", "Lee"}});
        };
        const auto made = [](int first, int second) {
            return fact(71, "made_with", 51,
                        {{"facts", QJsonArray{uuid(first), uuid(second)}}, {"instrument", "TS-4"}});
        };
        const QString noCard = "job.json.facts[0].hazard: names no safety card of these records";
        QTest::newRow("a card on record") << QList<QJsonObject>{closed(1)} << QString();
        QTest::newRow("no card on record") << QList<QJsonObject>{closed(99)} << noCard;
        QTest::newRow("no card") << QList<QJsonObject>{closed(3)} << noCard;
        QTest::newRow("a card of the same record")
            << QList<QJsonObject>{closed(72), safety(72, 40, 80)} << QString();
        QTest::newRow("a card of another order") << QList<QJsonObject>{closed(81)} << QString();
        QTest::newRow("readings on record") << QList<QJsonObject>{made(3, 4)} << QString();
        QTest::newRow("a reading that is not there")
            << QList<QJsonObject>{made(3, 99)}
            << "job.json.facts[0].facts[1]: names no fact of order A-1001";
        QTest::newRow("a reading of another order")
            << QList<QJsonObject>{made(81, 3)}
            << "job.json.facts[0].facts[0]: names no fact of order A-1001";
    }
    void whatAFactNamesMustBeThere()
    {
        QFETCH(QList<QJsonObject>, facts);
        QFETCH(QString, error);
        auto records = office();
        QVERIFY(importOrders(*records, csv({briFields(), analogFields()}), {"orders.csv"}));
        QVERIFY(recordFile(*records, recordBytes(briFacts()), "job.json"));
        QVERIFY(recordFile(
            *records, canonicalJson(jobs::record(jobs::order(analogFields()), {safety(81, 5, 80)})),
            "job.json"));
        const auto done = recordFile(*records, recordBytes(facts), "job.json");
        QCOMPARE(done ? QString() : done.error().text(), error);
        if (!done)
            QCOMPARE(done.error().code, ErrorCode::BadInput);
    }
};

QTEST_GUILESS_MAIN(EvidenceTest)
#include "EvidenceTest.moc"
