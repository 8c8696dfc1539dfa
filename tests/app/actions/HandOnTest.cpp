#include "app/actions/HandOn.h"

#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "tests/support/Office.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class HandOnTest : public QObject
{
    Q_OBJECT

private slots:
    void neverRefused()
    {
        auto records = office();
        OrderFields fields = briFields();
        fields["customer"] = fields["premises"] = "";
        QVERIFY(importOrders(*records, csv({fields}), {"orders.csv"}));
        const auto handoff = handoffOf(*records, "A-1001");
        QVERIFY(handoff);
        QVERIFY(!handoff->criterion.isEmpty());
        QCOMPARE(handoffOf(*records, "A-9").error().code, ErrorCode::NotFound);
    }

    void theRecordKeepsToWhom()
    {
        auto records = office();
        QVERIFY(importOrders(*records, csv({briFields()}), {"orders.csv"}));
        records->actAs("K7");
        QVERIFY(refer(*records, "A-1001", {"cable desk", "T-44", WaitingOn::Plant}));
        const auto handoff = handoffOf(*records, "A-1001");
        QVERIFY(handoff && handoff->referred);
        QCOMPARE(handoff->referred->to, "cable desk");
        QCOMPARE(handoff->referred->reference, "T-44");
        QCOMPARE(handoff->referred->waitingOn, "plant");
        QCOMPARE(handoff->referred->by, "Kim Carver");
        const auto view = showOrder(*records, "A-1001");
        QCOMPARE(view->facts.size(), 1u);
        QCOMPARE(view->facts.front().fact.kind(), FactKind::Referred);
        QCOMPARE(refer(*records, "A-1001", {" ", {}, {}}).error().code, ErrorCode::Usage);
        // A stranger may not; of one who recorded it for him the paper says what he is.
        records->actAs("K99");
        QCOMPARE(refer(*records, "A-1001", {"the frame", {}, {}}).error().code, ErrorCode::Refused);
        records->actAs("K7");
        QJsonObject later = fact(70, "referred", 0, {{"to", "the frame"}});
        later["at"] = records->now().plusSeconds(60).text();
        QJsonObject file = record(order(briFields()), {later});
        file["installer"] = "K99";
        QVERIFY(recordFile(*records, canonicalJson(file), "job.json"));
        QCOMPARE(handoffOf(*records, "A-1001")->referred->by, "K99 (not registered)");
    }

    void aRepeatRecordsNoSecondReferral()
    {
        auto records = office();
        QVERIFY(importOrders(*records, csv({briFields()}), {"orders.csv"}));
        records->actAs("K7");
        const auto referrals = [&records] {
            const auto view = showOrder(*records, "A-1001");
            return std::ranges::count_if(view->facts, [](const auto &each) {
                return each.fact.kind() == FactKind::Referred;
            });
        };
        int minute = 0;
        const auto later = [&] {
            records->setNow(
                Moment::parse(u"2026-11-04T09:00:00-06:00")->plusSeconds(60 * ++minute));
        };
        later();
        const ReferredFact first{"cable desk", "T-44", WaitingOn::Plant};
        QVERIFY(refer(*records, "A-1001", first));
        QVERIFY(refer(*records, "A-1001", first));
        QCOMPARE(referrals(), 1);
        later();
        QVERIFY(refer(*records, "A-1001", {"cable desk", "T-45", WaitingOn::Plant}));
        QCOMPARE(referrals(), 2);
        later();
        QVERIFY(refer(*records, "A-1001", first)); // said otherwise since: it is said anew
        QCOMPARE(referrals(), 3);
        later();
        const Fact visit{{}, records->now(), "A-1001", "K7", {}, {}, VisitFact{}};
        QVERIFY(recordFacts(*records, {"A-1001", {visit}}, "visit"));
        later();
        QVERIFY(refer(*records, "A-1001", first)); // after another visit
        QCOMPARE(referrals(), 4);
    }

    /// Below each criterion the figures that were read for it.
    void figuresWithLimits()
    {
        auto records = office();
        QVERIFY(importOrders(*records, csv({briFields()}), {"orders.csv"}));
        QVERIFY(recordFile(*records, canonicalJson(record(order(briFields()), briFacts().first(5))),
                           "job.json"));
        QStringList told;
        const auto handoff = handoffOf(*records, "A-1001");
        for (const HandoffReading &reading : handoff->readings)
            told << QString("%1|%2|%3|%4")
                        .arg(reading.name, reading.value, reading.limit, reading.word());
        QVERIFY2(told.contains("DC resistance|612 ohm|at most 1300 ohm|"),
                 qPrintable(told.join('\n')));
        QVERIFY(
            told.contains("AC voltage|tip to ground 0.2 V, ring to ground 0.2 V, tip to ring 0.2 "
                          "V|stop above 50 V|"));
    }
};

QTEST_GUILESS_MAIN(HandOnTest)
#include "HandOnTest.moc"
