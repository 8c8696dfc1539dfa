// Which pair to take where one must be swapped. That 25 pairs make a binder group is common
// practice; what speaks against a pair is the project's own rule.

#include "app/actions/SparePairs.h"

#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "tests/support/Loops.h"
#include "tests/support/Office.h"
#include "tests/support/Records.h"

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

OrderFields lineOn(int pair)
{
    OrderFields fields = analogFields();
    const QString n = QString::number(pair);
    fields["order_number"] = "L-" + n;
    fields["circuit_number"] = "L-" + n;
    fields["pair"] = "8-" + n;
    fields["dn_1"] = "217-555-01" + n.rightJustified(2, u'0');
    fields["premises"] = n + " Quay Street";
    return fields;
}

} // namespace

class SparePairsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;

    QStringList pairs(const QString &order, int limit = 100) const
    {
        const auto found = sparePairs(*m_records, order, limit);
        if (!found)
            qFatal("%s", qPrintable(found.error().text()));
        QStringList names;
        for (const SparePair &spare : found->spares)
            names << spare.pair;
        return names;
    }
    SparePair spare(const QString &order, const QString &pair) const
    {
        const auto found = sparePairs(*m_records, order, 100);
        for (const SparePair &each : found->spares)
            if (each.pair == pair)
                return each;
        return {};
    }
    void take(const OrderFields &fields, const QList<QJsonObject> &facts)
    {
        QVERIFY_RESULT(recordFile(*m_records, recordBytes(fields, facts), "job.json"));
    }

private slots:
    /// Pairs 3, 5, 8, 24 and 30 of cable 8 are held.
    void init()
    {
        m_records = office();
        QList<OrderFields> orders;
        for (const int pair : {3, 5, 8, 24, 30})
            orders << lineOn(pair);
        const auto report = importOrders(*m_records, csv(orders), {"o.csv"});
        QVERIFY(report && report->clean());
    }

    void nearestFirstWithinTheGroup()
    {
        QCOMPARE(pairs("L-24", 6), (QStringList{"8-23", "8-25", "8-22", "8-21", "8-20", "8-19"}));
        QCOMPARE(pairs("L-5", 4), (QStringList{"8-4", "8-6", "8-7", "8-9"}));
        QVERIFY(!pairs("L-5").contains("8-3"));
        QVERIFY(!pairs("L-5").contains("8-5"));
        QVERIFY(!pairs("L-5").contains("8-2"));  // before the first that was ever in use
        QVERIFY(!pairs("L-5").contains("8-31")); // behind the last
        QVERIFY(spare("L-5", "8-4").lastOrder.isEmpty());
    }

    void aPairThatWasGivenUpSpeaksForItself()
    {
        QVERIFY_RESULT(cancelOrder(*m_records, "L-8", "not wanted any more"));
        QCOMPARE(spare("L-5", "8-8").lastOrder, "L-8");
        QVERIFY(spare("L-5", "8-8").against.isEmpty());

        OrderFields moved = lineOn(3);
        moved["pair"] = "8-10";
        QVERIFY_RESULT(putOrder(*m_records, moved, true, false));
        const SparePair left = spare("L-5", "8-3");
        QCOMPARE(left.against, QStringList{"Order L-3 gave it up for pair 8-10."});
        QCOMPARE(pairs("L-5").last(), "8-3");
        QVERIFY(spare("L-5", "8-4").against.join(' ').contains("Beside it, 8-3: Order L-3 gave"));
    }

    void aHazardBesideIsTold()
    {
        OrderFields sameHouse = lineOn(8); // of another pair there nothing was read
        sameHouse["premises"] = lineOn(5)["premises"];
        QVERIFY_RESULT(putOrder(*m_records, sameHouse, true, false));
        take(lineOn(5), {safety(1, 5, 118)});
        const SparePair beside = spare("L-24", "8-6");
        QVERIFY2(beside.against.join(' ').contains("dangerous voltage"),
                 qPrintable(beside.against.join(' ')));
        QVERIFY(spare("L-24", "8-7").against.isEmpty());
    }

    void theNearestMakeupSaysWhatToExpect()
    {
        QVERIFY(spare("L-5", "8-4").makeupOf.isEmpty());
        const LoopMakeup makeup = loops::makeup({loops::section(26, 9000)});
        take(lineOn(8), {fact(1, "loop", 5, {{"makeup", makeup.toJson()}})});
        const SparePair near = spare("L-5", "8-4");
        QCOMPARE(near.makeupOf, "8-8");
        QCOMPARE(near.lossDb, qualify(makeup, limits()).insertionLossDb);
        QVERIFY(spare("L-5", "8-26").makeupOf.isEmpty()); // of another group
        // Of a pair that was given up, what its order measured later is another pair's.
        OrderFields moved = lineOn(8);
        moved["pair"] = "8-12";
        QVERIFY_RESULT(putOrder(*m_records, moved, true, false));
        QVERIFY(spare("L-5", "8-8").makeupOf != "8-8");
        QCOMPARE(spare("L-5", "8-4").makeupOf, "8-12");
        QVERIFY_RESULT(voidFact(*m_records, uuid(1), "of another pair"));
        QVERIFY(spare("L-5", "8-4").makeupOf.isEmpty());
    }

    void whatNamesNoCable()
    {
        OrderFields bare = lineOn(9);
        bare["pair"] = "9";
        QVERIFY_RESULT(putOrder(*m_records, bare, false, false));
        const auto refused = sparePairs(*m_records, "L-9");
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QCOMPARE(sparePairs(*m_records, "L-0").error().code, ErrorCode::NotFound);
    }
};

QTEST_GUILESS_MAIN(SparePairsTest)
#include "SparePairsTest.moc"
