#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "db/MetaStore.h"
#include "db/RawStatement.h"
#include "db/Statement.h"
#include "db/Transaction.h"
#include "tests/support/ServerOffice.h"

using namespace loopwright;

// What is read within a change on a server: once, together, and anew where something was written.
class ServerReadsTest : public QObject, jobs::ServerOffice
{
    Q_OBJECT

private slots:
    void init()
    {
        startOffice();
        const auto taken = importOrders(records(), jobs::csv({jobs::briFields()}), {"o.csv"});
        QVERIFY(taken && taken->accepted == 1);
    }

    /// "At most 15 for the record of one fact."
    void aRecordOfOneFactTakesFewTrips()
    {
        records().actAs("K7");
        records().setNow(Moment::parse(u"2026-03-04T10:00:00-06:00"));
        const qint64 before = trips();
        QVERIFY_RESULT(recordFile(
            records(), jobs::recordBytes(jobs::briFields(), {jobs::briFacts()[0]}), "job.json"));
        QVERIFY2(trips() - before <= 15, qPrintable(QString::number(trips() - before)));
    }
    void withinAChangeItIsAskedOnce()
    {
        auto transaction = Transaction::begin(database());
        QVERIFY_RESULT(transaction);
        QVERIFY(person("K7"));
        const qint64 before = trips();
        QCOMPARE(person("K7")->name, QString("Kim Carver"));
        QVERIFY(!person("no such") && !person("no such"));
        QCOMPARE(trips(), before + 1);
    }
    void whatIsWrittenIsAskedAnew()
    {
        auto transaction = Transaction::begin(database());
        QVERIFY_RESULT(transaction);
        Person kim = *person("K7");
        kim.name = "Kim Reed";
        QVERIFY_RESULT(PersonStore::put(*transaction, kim));
        QCOMPARE(person("K7")->name, QString("Kim Reed"));
    }
    /// Of another change nothing is remembered, nor outside of one.
    void outsideAChangeItIsAskedEachTime()
    {
        QVERIFY(person("K7"));
        qint64 before = trips();
        QVERIFY(person("K7"));
        QCOMPARE(trips(), before + 1);
        {
            auto transaction = Transaction::begin(database());
            QVERIFY_RESULT(transaction);
            QVERIFY(person("K7"));
        }
        QVERIFY_RESULT(
            editPast(database(), "UPDATE installer SET name = 'Kim Moss' WHERE installer = 'K7'"));
        QCOMPARE(person("K7")->name, QString("Kim Moss"));
        auto transaction = Transaction::begin(database());
        QVERIFY_RESULT(transaction);
        QCOMPARE(person("K7")->name, QString("Kim Moss"));
    }
    void whatIsForeseenIsAskedTogether()
    {
        auto transaction = Transaction::begin(database());
        QVERIFY_RESULT(transaction);
        const qint64 before = trips();
        int rounds = 0;
        database().connection().foresee([&] {
            ++rounds;
            const auto kim = person("K7");
            (void)person("S1");
            (void)person("D4");
            if (kim) // known in the second round alone
                (void)MetaStore(database()).station();
        });
        QCOMPARE(rounds, 3);
        QCOMPARE(trips(), before + 2);
        QVERIFY(person("K7") && person("S1") && person("D4"));
        QVERIFY_RESULT(MetaStore(database()).station());
        QCOMPARE(trips(), before + 2);
    }
    /// Of a walk over a whole table not all lies in the memory at once.
    void aWalkComesInPieces_data()
    {
        QTest::addColumn<int>("rows");
        QTest::addColumn<qint64>("asked");
        QTest::newRow("none") << 0 << qint64(1);
        QTest::newRow("one piece") << 1999 << qint64(1);
        QTest::newRow("whole pieces") << 4000 << qint64(3);
        QTest::newRow("a rest") << 4500 << qint64(3);
    }
    void aWalkComesInPieces()
    {
        QFETCH(int, rows);
        const ReadSnapshot snapshot(connection());
        QVERIFY_RESULT(snapshot.result());
        auto walk = RawStatement::of(connection(), "rows.numbers",
                                     "SELECT n FROM generate_series(1, " + std::to_string(rows) +
                                         ") AS n ORDER BY n");
        QVERIFY_RESULT(walk);
        const qint64 before = trips();
        qint64 asked = 0, last = 0;
        for (;;) {
            const auto more = walk->next();
            QVERIFY_RESULT(more);
            if (!*more)
                break;
            QCOMPARE(walk->integer(0), ++last);
            if (last % 1000 == 0) { // others are asked between two rows
                ++asked;
                QVERIFY(person("K7"));
            }
        }
        QCOMPARE(last, qint64(rows));
        QTEST(trips() - before - asked, "asked");
    }
    /// A question that the server refuses ends no change, and what changes something is not
    /// foreseen.
    void whatCannotBeForeseenDoesNoHarm()
    {
        auto transaction = Transaction::begin(database());
        QVERIFY_RESULT(transaction);
        database().connection().foresee([&] {
            Statement broken(database(), "report.figures"); // lacks its parts
            (void)broken.next();
            Person kim{.key = "K7", .name = "Nobody"};
            QVERIFY(!PersonStore::put(*transaction, kim));
            (void)person("S1");
        });
        QCOMPARE(person("K7")->name, QString("Kim Carver"));
        QCOMPARE(person("S1")->name, QString("Sam Holt"));
    }
};

QTEST_MAIN(ServerReadsTest)
#include "ServerReadsTest.moc"
