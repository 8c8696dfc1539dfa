#include "app/actions/Audit.h"
#include "app/actions/History.h"
#include "app/actions/Import.h"
#include "app/actions/Orders.h"
#include "db/MetaStore.h"
#include "db/OrderStore.h"
#include "db/Statement.h"
#include "db/Transaction.h"
#include "tests/support/ServerOffice.h"

using namespace loopwright;

// What is written within a change on a server goes with what is asked next, and nothing of it is
// lost on the way or half kept.
class ServerWritesTest : public QObject, jobs::ServerOffice
{
    Q_OBJECT

    QString m_before; ///< what write() changes

    Result<Transaction> begin() { return Transaction::begin(database()); }
    /// Written without being read.
    static Result<void> write(Transaction &transaction, const QString &limits)
    {
        return MetaStore::putBoardLimits(transaction, limits);
    }
    QString written()
    {
        const auto limits = MetaStore(database()).boardLimits();
        if (!limits)
            qFatal("%s", qPrintable(limits.error().text()));
        return limits->value_or(QString());
    }
    /// The server finds that its content is no JSON.
    static Result<void> writeNonsense(Transaction &transaction)
    {
        Statement tell(transaction, "hazard.tell");
        tell.bind("order_number", QString("A-1"))
            .bind("pair", QString())
            .bind("office", QString("NORTH"))
            .bind("premises_key", QString())
            .bind("events", 1)
            .bindBytes("content", "no json");
        return tell.write();
    }
    /// `rows` new orders, from number `first`.
    static QByteArray orders(int first, int rows)
    {
        QList<OrderFields> fields;
        for (int n = first; n < first + rows; ++n) {
            const auto number = [n](int last) { return QString("217-555-01%1").arg(2 * n + last); };
            fields << jobs::otherBriFields(QString("B-%1").arg(n), QString("D-%1").arg(n),
                                           QString("18-%1").arg(n), number(0), number(1));
        }
        return jobs::csv(fields);
    }

    static QByteArray people(int rows)
    {
        QByteArray csv = "installer,name\n";
        for (int n = 0; n < rows; ++n)
            csv += QString("P%1,Person %1\n").arg(n).toUtf8();
        return csv;
    }
    /// `then` is called once, after 600 rows: in the second portion.
    static ImportOptions inTheSecondPortion(const std::function<bool()> &then)
    {
        ImportOptions options{"p.csv"};
        options.progress = [then](qint64 done, qint64) { return done != 600 || then(); };
        return options;
    }
    qint64 peopleKept()
    {
        return *connection().number("SELECT count(*) FROM installer WHERE name LIKE 'Person %'");
    }

private slots:
    void init()
    {
        startOffice();
        m_before = written();
    }

    /// "At most 5 for a row of an import."
    void aRowOfAnImportTakesFewTrips()
    {
        const auto tripsFor = [this](const QByteArray &csv, int rows) {
            const qint64 before = trips();
            const auto taken = importOrders(records(), csv, {"o.csv"});
            if (!taken || taken->accepted != rows || taken->held != 0)
                qFatal("the rows are not taken in");
            return trips() - before;
        };
        const qint64 few = tripsFor(orders(10, 5), 5), many = tripsFor(orders(15, 25), 25);
        QVERIFY2(many - few <= 5 * 20, qPrintable(QString("%1, %2").arg(few).arg(many)));
        QVERIFY(verifyHistory(records())->broken.empty());
        QVERIFY(auditDerived(records())->empty());
    }
    void itGoesWithWhatIsAskedNext()
    {
        auto transaction = begin();
        QVERIFY_RESULT(transaction);
        const qint64 before = trips();
        for (int i = 0; i < 10; ++i) // often enough to be prepared
            QVERIFY_RESULT(write(*transaction, QString("set %1").arg(i)));
        QCOMPARE(trips(), before);
        QCOMPARE(written(), QString("set 9"));
        QCOMPARE(trips(), before + 1);
        QVERIFY_RESULT(transaction->commit(sampleEvent()));
        QCOMPARE(written(), QString("set 9"));
    }
    /// What waits fills no memory.
    void muchGoesInBetween()
    {
        auto transaction = begin();
        QVERIFY_RESULT(transaction);
        const qint64 before = trips();
        for (int i = 0; i < 1000; ++i)
            QVERIFY_RESULT(write(*transaction, QString("set %1").arg(i)));
        QVERIFY(trips() > before);
        QVERIFY(trips() < before + 20);
        QVERIFY_RESULT(transaction->commit(sampleEvent()));
        QCOMPARE(written(), QString("set 999"));
    }
    void whatFailsIsToldAtTheNextQuestionAndThenAlways()
    {
        {
            auto transaction = begin();
            QVERIFY_RESULT(transaction);
            QVERIFY_RESULT(write(*transaction, "lost"));
            QVERIFY_RESULT(writeNonsense(*transaction));
            for (int i = 0; i < 5; ++i) // prepared after it
                QVERIFY_RESULT(write(*transaction, "lost"));
            for (int i = 0; i < 5; ++i) { // often enough to be prepared
                const auto asked = MetaStore(database()).boardLimits();
                QVERIFY(!asked);
                QVERIFY2(asked.error().message.contains("hazard.tell"),
                         qPrintable(asked.error().text()));
                // What comes after it is not to blame.
                QCOMPARE(asked.error().code,
                         i == 0 ? ErrorCode::BadInput : ErrorCode::DatabaseTrouble);
            }
        }
        QCOMPARE(written(), m_before);
        auto transaction = begin();
        QVERIFY_RESULT(transaction);
        QVERIFY_RESULT(write(*transaction, "mended"));
        QVERIFY_RESULT(transaction->commit(sampleEvent()));
        QCOMPARE(written(), QString("mended"));
    }
    void whatFailsWithTheCommitKeepsNothing()
    {
        QVERIFY_RESULT(editPast(database(),
                                "CREATE FUNCTION boom() RETURNS trigger LANGUAGE plpgsql AS"
                                " $$BEGIN RAISE EXCEPTION 'boom'; END $$;"
                                "CREATE TRIGGER boom BEFORE INSERT ON event FOR EACH ROW"
                                " WHEN (NEW.kind = 'boom') EXECUTE FUNCTION boom()"));
        const auto events = [this] { return *connection().number("SELECT count(*) FROM event"); };
        const qint64 before = events();
        {
            auto transaction = begin();
            QVERIFY_RESULT(transaction);
            QVERIFY_RESULT(write(*transaction, "lost"));
            const auto kept = transaction->commit(sampleEvent(registerSubject(), "boom"));
            QVERIFY(!kept);
            QVERIFY2(kept.error().message.contains("boom"), qPrintable(kept.error().text()));
        }
        QCOMPARE(events(), before);
        QCOMPARE(written(), m_before);
        auto transaction = begin();
        QVERIFY_RESULT(transaction);
        QVERIFY_RESULT(write(*transaction, "mended"));
        QVERIFY_RESULT(transaction->commit(sampleEvent()));
        QCOMPARE(written(), QString("mended"));
    }
    void whatFailsAtTheEndKeepsNothing()
    {
        const auto events = [this] { return *connection().number("SELECT count(*) FROM event"); };
        const qint64 before = events();
        {
            auto transaction = begin();
            QVERIFY_RESULT(transaction);
            QVERIFY_RESULT(write(*transaction, "lost"));
            QVERIFY_RESULT(transaction->record(sampleEvent()));
            QVERIFY_RESULT(writeNonsense(*transaction));
            QVERIFY(!transaction->commit(sampleEvent()));
        }
        QCOMPARE(events(), before);
        QCOMPARE(written(), m_before);
    }
    /// What is foreseen meets it first, and hides nothing.
    void whatFailsBeforeWhatIsForeseenIsTold()
    {
        auto transaction = begin();
        QVERIFY_RESULT(transaction);
        QVERIFY_RESULT(writeNonsense(*transaction));
        connection().foresee([this] { (void)MetaStore(database()).station(); });
        const auto asked = MetaStore(database()).station();
        QVERIFY(!asked);
        QVERIFY2(asked.error().message.contains("hazard.tell"), qPrintable(asked.error().text()));
    }
    void whatWaitsIsUndoneWithTheRest()
    {
        {
            auto transaction = begin();
            QVERIFY_RESULT(transaction);
            QVERIFY_RESULT(write(*transaction, "lost"));
        }
        QVERIFY(!connection().inTransaction());
        QCOMPARE(written(), m_before);
        auto transaction = begin();
        QVERIFY_RESULT(transaction);
        QCOMPARE(written(), m_before);
    }
    void whatWaitsIsLostWithTheConnection()
    {
        const QString backend = *connection().text("SELECT pg_backend_pid()");
        {
            auto transaction = begin();
            QVERIFY_RESULT(transaction);
            QVERIFY_RESULT(write(*transaction, "lost"));
            runOnTestServer("SELECT pg_terminate_backend(" + backend.toLatin1() + ", 5000)");
            QVERIFY_RESULT(write(*transaction, "lost too"));
            const auto kept = transaction->commit(sampleEvent());
            QVERIFY(!kept);
            QCOMPARE(kept.error().code, ErrorCode::ConnectionLost);
        }
        QCOMPARE(written(), m_before);
        auto transaction = begin();
        QVERIFY_RESULT(transaction);
        QVERIFY_RESULT(write(*transaction, "mended"));
        QVERIFY_RESULT(transaction->commit(sampleEvent()));
        QCOMPARE(written(), QString("mended"));
    }

    void aLongImportThatIsCutKeepsItsPortions()
    {
        records().actAs("S1");
        const auto cut = importInstallers(
            records(), people(700), inTheSecondPortion([this] {
                runOnTestServer("SELECT pg_terminate_backend(pid, 5000) FROM pg_stat_activity"
                                " WHERE application_name = 'loopwright' AND datname = '" +
                                connection().text("SELECT current_database()")->toLatin1() + "'");
                return true;
            }));
        QVERIFY(!cut);
        QCOMPARE(cut.error().code, ErrorCode::ConnectionLost);
        QCOMPARE(cut.error().rowsDone, 500);
        QVERIFY2(!cut.error().message.contains("nothing"), qPrintable(cut.error().message));
        QCOMPARE(peopleKept(), 500);
        const auto rest = importInstallers(records(), people(700), {"p.csv"});
        QVERIFY_RESULT(rest);
        QCOMPARE(rest->accepted, 200);
        QCOMPARE(rest->unchanged, 500);
        QVERIFY(rest->findings.empty());
        QVERIFY(verifyHistory(records())->broken.empty());
    }
    void whoStopsALongImportReadsWhatIsIn()
    {
        records().actAs("S1");
        const auto stopped =
            importInstallers(records(), people(700), inTheSecondPortion([] { return false; }));
        QVERIFY(!stopped);
        QCOMPARE(stopped.error().code, ErrorCode::Refused);
        QCOMPARE(stopped.error().message, QString("The import was stopped."));
        QCOMPARE(stopped.error().rowsDone, 500);
        QCOMPARE(peopleKept(), 500);
    }
    /// What a portion frees is claimed with it, for the next may never come.
    void whatAPortionFreesIsClaimedWithIt()
    {
        OrderFields first = jobs::briFields(),
                    second = jobs::otherBriFields("A-1002", "C-78", "17-204", "217-555-0161",
                                                  "217-555-0162");
        const auto taken = importOrders(records(), jobs::csv({first, second}), {"o.csv"});
        QVERIFY(taken && taken->held == 1);
        first["pair"] = "17-205";
        QList<OrderFields> moved{first};
        for (int n = 0; n < 599; ++n) // refused: their office is nowhere
            moved << jobs::otherBriFields(QString("B-%1").arg(n), QString("D-%1").arg(n),
                                          QString("18-%1").arg(n), "217-555-0171", "217-555-0172");
        for (OrderFields &each : moved)
            if (each["order_number"] != first["order_number"])
                each["office"] = "NOWHERE";
        ImportOptions options = inTheSecondPortion([] { return false; });
        options.update = true;
        const auto stopped = importOrders(records(), jobs::csv(moved), options);
        QVERIFY(!stopped);
        QCOMPARE(stopped.error().rowsDone, 1);
        QVERIFY(!OrderStore(database()).get("A-1002")->held);
        QVERIFY(auditDerived(records())->empty());
    }
    /// A further calibration in the second portion is of an instrument of this file.
    void aFileOfInstrumentsThatWasCutIsTakenInAgain()
    {
        QByteArray csv = "instrument,serial,kind,calibrated_on,calibration_due\n"
                         "tdr-1,S-1,reflectometer,2024-01-10,2025-01-10\n";
        for (int n = 0; n < 600; ++n)
            csv += QString("x-%1,S-x%1,meter,2025-01-10,2027-01-10\n").arg(n).toUtf8();
        csv += "tdr-1,S-1,reflectometer,2025-01-10,2026-01-10\n";
        QVERIFY(!importInstruments(records(), csv, inTheSecondPortion([] { return false; })));
        const auto rest = importInstruments(records(), csv, {"i.csv"});
        QVERIFY_RESULT(rest);
        QCOMPARE(rest->refused, 0);
        QCOMPARE(rest->accepted, 102);
        QCOMPARE(rest->unchanged, 500);
    }
    /// Who takes in a file again reads of what waits as who took it in first.
    void whatIsHeldIsToldAgain()
    {
        const QByteArray csv =
            jobs::csv({jobs::briFields(), jobs::otherBriFields("A-1002", "C-78", "17-204",
                                                               "217-555-0161", "217-555-0162")});
        QVERIFY(importOrders(records(), csv, {"o.csv"})->held == 1);
        const auto again = importOrders(records(), csv, {"o.csv"});
        QVERIFY_RESULT(again);
        QCOMPARE(again->unchanged, 2);
        QCOMPARE(again->findings.size(), 1u);
        QCOMPARE(again->findings[0].code, QString("order_held"));
        QCOMPARE(again->findings[0].row, 3);
    }
    void allOrNothingIsOneChangeAndSaysSo()
    {
        records().actAs("S1");
        ImportOptions whole = inTheSecondPortion([] { return false; });
        whole.allOrNothing = true;
        const auto stopped = importInstallers(records(), people(700), whole);
        QVERIFY(!stopped);
        QCOMPARE(stopped.error().rowsDone, 0);
        QCOMPARE(peopleKept(), 0);
        whole.progress = {};
        const auto taken = importInstallers(records(), people(700), whole);
        QVERIFY_RESULT(taken);
        QCOMPARE(taken->accepted, 700);
        QCOMPARE(taken->findings.size(), 1u);
        QCOMPARE(taken->findings[0].code, QString("long_change"));
    }
};

QTEST_MAIN(ServerWritesTest)
#include "ServerWritesTest.moc"
