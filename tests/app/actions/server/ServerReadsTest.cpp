#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "db/MetaStore.h"
#include "db/PersonStore.h"
#include "db/PostgresConnection.h"
#include "db/Statement.h"
#include "db/Transaction.h"
#include "tests/support/Office.h"
#include "tests/support/Records.h"

using namespace loopwright;

// What is read within a change on a server: once, together, and anew where something was written.
class ServerReadsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;

    Database &database() { return m_records->database(); }
    qint64 trips()
    {
        return dynamic_cast<PostgresConnection &>(database().connection()).session().trips();
    }
    std::optional<Person> person(const QString &key)
    {
        const auto found = PersonStore(database()).find(key);
        if (!found)
            qFatal("%s", qPrintable(found.error().text()));
        return *found;
    }

private slots:
    void init()
    {
        m_records = jobs::office(newServerRecords());
        const auto taken = importOrders(*m_records, jobs::csv({jobs::briFields()}), {"o.csv"});
        QVERIFY(taken && taken->accepted == 1);
    }

    /// "At most 15 for the record of one fact."
    void aRecordOfOneFactTakesFewTrips()
    {
        m_records->actAs("K7");
        m_records->setNow(Moment::parse(u"2026-03-04T10:00:00-06:00"));
        const qint64 before = trips();
        QVERIFY_RESULT(recordFile(
            *m_records, jobs::recordBytes(jobs::briFields(), {jobs::briFacts()[0]}), "job.json"));
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
