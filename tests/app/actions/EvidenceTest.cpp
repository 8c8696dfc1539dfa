// What a job record adds, and what it is refused for.

#include "app/actions/Evidence.h"

#include "app/actions/History.h"
#include "app/actions/Orders.h"
#include "tests/support/Office.h"
#include "tests/support/Records.h"

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
    void aCorrectionIsRecordedAndTheOldOneVoided()
    {
        auto records = officeWithOrder();
        QVERIFY(recordFile(*records, recordBytes(briFacts()), "job.json"));
        const qint64 events = verifyHistory(*records)->events;
        QJsonObject right = briFacts()[2];
        right["id"] = uuid(90);
        right["loss_db"] = 27.5;
        const auto report = recordFile(*records, recordBytes({right}), "right.json", uuid(3));
        QVERIFY2(report, report ? "" : qPrintable(report.error().text()));
        QCOMPARE(report->added, QStringList(uuid(90)));
        QVERIFY(report->told.empty());                         // the new one counts
        QCOMPARE(verifyHistory(*records)->events, events + 1); // one event says both
        QCOMPARE(verifyHistory(*records)->broken.size(), 0U);
        const auto view = showOrder(*records, "A-1001");
        QCOMPARE(view->events.back().kind, "fact_corrected");
        QCOMPARE(view->events.back().detail.value("fact").toString(), uuid(3));
        const auto old = std::ranges::find(view->facts, uuid(3),
                                           [](const FactView &each) { return each.fact.id; });
        QVERIFY(old->voided);
        QCOMPARE(old->voidedBecause, "corrected");
        QCOMPARE(toText(view->decision.outcome), "accepted");
        QVERIFY(view->decision.criterion("loop")->evidence.contains(uuid(90)));
    }
    void aCorrectionThatFailsLeavesNothing_data()
    {
        QTest::addColumn<QString>("corrects");
        QTest::addColumn<QJsonObject>("fact");
        QJsonObject right = briFacts()[2];
        right["id"] = uuid(90);
        const auto with = [&right](const char *key, const QJsonValue &value) {
            QJsonObject other = right;
            other[key] = value;
            return other;
        };
        // The old one is voided first: each of these fails after that.
        QTest::newRow("far ahead of the clock") << uuid(3) << with("at", "2031-01-01T00:00:00Z");
        QTest::newRow("the id of another fact") << uuid(3) << with("id", uuid(5));
        QTest::newRow("no terminal of that number")
            << uuid(5) << fact(90, "layer", 9, {{"layer", 2}, {"terminal", 8}, {"outcome", "up"}});
        QTest::newRow("another kind") << uuid(5) << right;
        QTest::newRow("the same again") << uuid(3) << briFacts()[2];
        // And these before it.
        QTest::newRow("no such fact") << uuid(99) << right;
        QTest::newRow("no id at all") << "the third" << right;
    }
    void aCorrectionThatFailsLeavesNothing()
    {
        QFETCH(const QString, corrects);
        QFETCH(const QJsonObject, fact);
        auto records = officeWithOrder();
        QVERIFY(recordFile(*records, recordBytes(briFacts()), "job.json"));
        const qint64 events = verifyHistory(*records)->events;
        const QByteArray before = canonicalJson(showOrder(*records, "A-1001")->toJson());
        const auto report = recordFile(*records, recordBytes({fact}), "wrong.json", corrects);
        QVERIFY(!report);
        QCOMPARE(canonicalJson(showOrder(*records, "A-1001")->toJson()), before);
        QCOMPARE(verifyHistory(*records)->events, events);
        QVERIFY(voidFact(*records, uuid(3), "can still be voided"));
        const auto twice = recordFile(*records, recordBytes({fact}), "wrong.json", uuid(3));
        QVERIFY(!twice); // void already
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
        const QString noCard = "job.json.facts[0].hazard: names no safety card of these records; "
                               "the id of the card that read the hazard is expected";
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
    void severeSecondsBeyondTheErroredOnesAreKeptAndTold()
    {
        auto records = officeWithOrder();
        QList<QJsonObject> facts = briFacts();
        for (const auto &[key, value] : {std::pair("bit_errors", 1),
                                         {"errored_seconds", 0},
                                         {"severely_errored_seconds", 1},
                                         {"sync_losses", 1}})
            facts.last()[key] = value;
        facts.last().remove("seconds");
        const auto report = recordFile(*records, recordBytes(facts), "job.json");
        QVERIFY_RESULT(report);
        QCOMPARE(report->added.size(), facts.size());
        QCOMPARE(report->told.back().code, "contradiction");
        QCOMPARE(report->told.back().fact, uuid(15));
        const auto view = showOrder(*records, "A-1001"); // over its limits: it has failed as well
        QCOMPARE(toText(view->decision.criterion("run")->outcome), "not_met");
    }

    void nothingFoundBesideWhatWasDoneIsTold()
    {
        auto records = officeWithOrder();
        const QJsonObject both =
            fact(31, "cleared", 60, {{"what", "nothing_found"}, {"text", "joint remade"}});
        const QJsonObject right = fact(32, "cleared", 61, {{"what", "nothing_found"}});
        const auto report = recordFile(*records, recordBytes({both, right}), "job.json");
        QVERIFY_RESULT(report);
        QCOMPARE(report->added.size(), 2);
        QCOMPARE(report->told.size(), 1U);
        QCOMPARE(report->told.front().code, "nothing_found");
        QCOMPARE(report->told.front().fact, uuid(31));
        // A later card does not tell it again.
        QCOMPARE(recordFile(*records, recordBytes({safety(33, 62)}), "card.json")->told.size(), 0U);
    }

    void aCardThatSaysDisconnectedBesideALayerThatIsUpIsTold()
    {
        auto records = officeWithOrder();
        QJsonObject card = safety(1, 5);
        card["office_connected"] = false;
        card["dc_v"] = voltages(0.1);
        const QJsonObject up = briFacts()[3];
        const auto told = [&](const QList<QJsonObject> &facts) {
            QStringList codes;
            const auto report = recordFile(*records, recordBytes(facts), "job.json");
            for (const auto &each : report->told)
                codes << each.code + ' ' + each.fact;
            return codes.join(' ');
        };
        QCOMPARE(told({card, up, briFacts()[4]}), "office_connected " + uuid(1)); // once
        const Decision decision = showOrder(*records, "A-1001")->decision;        // stays as it is
        QVERIFY(decision.criterion("layer1")->evidence.contains(uuid(4)));
        // The card may come in after what it stands before.
        records = officeWithOrder();
        QCOMPARE(told({up}), "closed_step " + uuid(4));
        QCOMPARE(told({card}), "office_connected " + uuid(1));
        // Who says that the feed was switched is asked for a card, and no more.
        records = officeWithOrder();
        QCOMPARE(
            told({card, fact(40, "changed", 6, {{"what", "feed"}, {"text", "fed again"}}), up}),
            "closed_step " + uuid(4));
    }

    void aClosingNamesTheCardThatItCloses()
    {
        auto records = officeWithOrder();
        const QJsonObject none =
            fact(90, "hazard_closed", 60, {{"source", "meter"}, {"by", "Lee"}});
        const auto refused = recordFile(*records, recordBytes({none}), "job.json");
        QVERIFY(!refused);
        QCOMPARE(
            refused.error().text(),
            "job.json.facts[0].hazard: is required and missing: the id of the safety card that "
            "read the hazard");
    }
};

QTEST_GUILESS_MAIN(EvidenceTest)
#include "EvidenceTest.moc"
