// The log that a van tells with its bundle: where two sets of records part that were one.

#include "core/history/Bundle.h"

#include <QTest>

using namespace loopwright;

class BundleTest : public QObject
{
    Q_OBJECT

    /// A letter for each event.
    QString log(const char *events)
    {
        QString digests;
        for (const char *event = events; *event; ++event)
            digests += QString(ToldLog::digits, QChar(*event));
        return digests;
    }

private slots:
    void theFirstOtherEventIsFound_data()
    {
        QTest::addColumn<QString>("known");
        QTest::addColumn<qint64>("from");
        QTest::addColumn<QString>("told");
        QTest::addColumn<qint64>("parts");
        QTest::newRow("nothing known") << log("") << 1LL << log("abc") << 0LL;
        QTest::newRow("the same") << log("abc") << 1LL << log("abc") << 0LL;
        QTest::newRow("shorter") << log("abc") << 1LL << log("ab") << 0LL;
        QTest::newRow("longer") << log("abc") << 1LL << log("abcd") << 0LL;
        QTest::newRow("goes on") << log("abc") << 3LL << log("cd") << 0LL;
        QTest::newRow("a gap") << log("abc") << 5LL << log("e") << 0LL;
        QTest::newRow("another last") << log("abc") << 1LL << log("abx") << 3LL;
        QTest::newRow("another first") << log("abc") << 1LL << log("xyzu") << 1LL;
        QTest::newRow("goes on from another") << log("abc") << 3LL << log("xd") << 3LL;
    }
    void theFirstOtherEventIsFound()
    {
        QFETCH(QString, known);
        QFETCH(qint64, from);
        QFETCH(QString, told);
        QFETCH(qint64, parts);
        QCOMPARE((ToldLog{from, told}.partsFrom(known)), parts);
    }

    void whatIsToldGoesOn()
    {
        QCOMPARE((ToldLog{1, log("ab")}.continuing(log(""))), log("ab"));
        QCOMPARE((ToldLog{2, log("bcd")}.continuing(log("ab"))), log("abcd"));
        QCOMPARE((ToldLog{3, log("cd")}.continuing(log("ab"))), log("abcd"));
        QCOMPARE((ToldLog{1, log("a")}.continuing(log("ab"))), log("ab"));
        QCOMPARE((ToldLog{4, log("d")}.continuing(log("ab"))), log("ab")); // a gap
    }

    void itTravelsAndIsRead()
    {
        Bundle bundle;
        bundle.kind = BundleKind::Back;
        bundle.station = "ABC234";
        QVERIFY(!bundle.toJson().contains("log")); // of a program that did not tell it
        bundle.log = {2, log("bc")};
        const auto read = Bundle::fromJson(bundle.toJson(), "b");
        QVERIFY2(read, read ? "" : qPrintable(read.error().text()));
        QCOMPARE(read->log.from, 2LL);
        QCOMPARE(read->log.digests, log("bc"));
        bundle.log.digests.chop(1);
        const auto cut = Bundle::fromJson(bundle.toJson(), "b");
        QCOMPARE(cut.error().text(), QString("b.log.digests: is cut"));
    }

    /// A UUID in capitals names the same order, and would make another bundle when it is written.
    void anIdIsAsProgramsWriteIt()
    {
        Bundle bundle;
        bundle.kind = BundleKind::Back;
        bundle.station = "ABC234";
        BundledOrder order;
        order.number = "A-1001";
        order.circuit = "C-77";
        order.uuid = "00000000-0000-4000-8000-00000000000d";
        order.circuitUuid = "00000000-0000-4000-8000-00000000000e";
        order.status = "open";
        bundle.orders = {order};
        QVERIFY(Bundle::fromJson(bundle.toJson(), "b"));
        bundle.orders.front().uuid = order.uuid.toUpper();
        QCOMPARE(Bundle::fromJson(bundle.toJson(), "b").error().text(),
                 QString("b.orders[0].uuid: is not in small letters"));
    }
};

QTEST_APPLESS_MAIN(BundleTest)
#include "BundleTest.moc"
