#include "app/actions/Acceptance.h"
#include "app/actions/Acting.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/History.h"
#include "app/actions/Issuing.h"
#include "app/actions/LimitSets.h"
#include "app/actions/Orders.h"
#include "app/actions/Plans.h"
#include "app/actions/TakeAlong.h"
#include "app/trust/KeyFolder.h"
#include "db/PostgresConnection.h"
#include "db/PostgresSql.h"
#include "db/SqlCatalog.h"
#include "tests/support/Office.h"
#include "tests/support/Records.h"
#include "tests/support/StatementParts.h"

#include <QTemporaryDir>

using namespace loopwright;

// Logins of a server, which belong to its groups: who may open the records, as whom he acts, what
// he may write there, whatever program he uses.
class ServerRolesTest : public QObject
{
    Q_OBJECT

    QString m_address = newServerRecords();
    QTemporaryDir m_home;

    /// "postgresql://kim@/t0?host=…" of "postgresql://tester@/t0?host=…"
    QString as(const QString &login) const
    {
        return QString(m_address).replace("//tester@", "//" + login + '@');
    }
    std::unique_ptr<Records> recordsOf(const QString &login)
    {
        auto opened = Records::open(as(login));
        if (!opened)
            qFatal("%s", qPrintable(opened.error().text()));
        (*opened)->setKeys(KeyFolder(m_home.filePath("keys"))); // of one machine
        (*opened)->setNow(Moment::parse(u"2026-03-05T12:00:00-06:00"));
        return std::move(*opened);
    }
    Result<void> past(const QString &login, const QByteArray &sql)
    {
        const auto opened = Database::open(as(login));
        if (!opened)
            return failure(opened.error());
        return editPast(*opened, sql);
    }

private slots:
    void initTestCase()
    {
        for (const char *login : {"k7", "d4", "s1", "nobody"})
            runOnTestServer(QByteArray("DO $$ BEGIN CREATE ROLE ") + login +
                            " LOGIN; EXCEPTION WHEN duplicate_object THEN NULL; END $$");
        runOnTestServer("GRANT installer TO k7; GRANT dispatcher TO d4; GRANT supervisor TO s1");
        auto office = jobs::office(m_address);
        const auto taken = importOrders(*office, jobs::csv({jobs::briFields()}), {"o.csv"});
        QVERIFY(taken && taken->accepted == 1);
        QVERIFY_RESULT(importInstallers(*office,
                                        "installer,name,role\nk7,Kim Carver,installer\n"
                                        "d4,Lee Ward,dispatcher\ns1,Sam Holt,supervisor\n",
                                        {"i.csv"}));
    }

    void aLoginWithoutARoleIsRefused()
    {
        const auto opened = Database::open(as("nobody"));
        QVERIFY(!opened);
        QCOMPARE(opened.error().code, ErrorCode::DatabaseTrouble);
        QVERIFY2(opened.error().message.contains("no role"), qPrintable(opened.error().message));
    }
    void aLoginActsAsItself()
    {
        auto records = recordsOf("k7");
        QCOMPARE(records->by(), QString("k7"));
        QVERIFY_RESULT(actFor(*records, {}));
        QVERIFY_RESULT(actFor(*records, "k7"));
        const auto other = actFor(*records, "s1");
        QVERIFY(!other);
        QCOMPARE(other.error().code, ErrorCode::Refused);
        QCOMPARE(records->by(), QString("k7"));
        // The owner may name anybody, and stands beside him.
        auto owners = recordsOf("tester");
        QVERIFY_RESULT(actFor(*owners, "s1"));
        QCOMPARE(owners->by(), QString("s1"));
    }
    /// What the register says of him counts for nothing against the server's groups.
    void theGroupIsTheRole()
    {
        auto records = recordsOf("d4");
        QCOMPARE(actorOf(*records)->person->role, Role::Dispatcher);
        QVERIFY(!acceptWithException(*records, "A-1001", {"loop"}, "it works"));
        auto supervisor = recordsOf("s1");
        QCOMPARE(actorOf(*supervisor)->person->role, Role::Supervisor);
    }

    /// The main job by three logins, none of which owns anything.
    void threeLoginsBringALineIntoService()
    {
        auto installer = recordsOf("k7");
        QVERIFY_RESULT(recordFile(
            *installer,
            jobs::recordBytes(jobs::briFields(), jobs::briFacts()).replace("\"K7\"", "\"k7\""),
            "job.json"));
        QVERIFY_RESULT(decideOrder(*installer, "A-1001"));
        auto dispatcher = recordsOf("d4");
        QVERIFY_RESULT(changePlans(*dispatcher, {{"A-1001", {{"due_date", "2026-03-09"}}}}));
        QVERIFY_RESULT(completeOrder(*dispatcher, "A-1001"));
        auto supervisor = recordsOf("s1");
        QVERIFY_RESULT(importOrders(
            *supervisor,
            jobs::csv(
                {jobs::otherBriFields("A-1002", "C-78", "17-299", "217-555-0161", "217-555-0162")}),
            {"o.csv"}));
        const auto history = verifyHistory(*supervisor);
        QVERIFY_RESULT(history);
        QVERIFY(history->broken.empty());
        const auto events = orderHistory(*supervisor, "A-1001");
        QVERIFY_RESULT(events);
        QStringList actors;
        for (const Event &event : *events) {
            actors << event.by;
            const bool byOwner = event.by == u"Dana";
            QCOMPARE(event.detail.value("session_user").toString(),
                     byOwner ? QString("tester") : QString());
        }
        for (const char *who : {"Dana", "k7", "d4"})
            QVERIFY2(actors.contains(who), who);
    }

    /// With another program, or by hand.
    void theServerRefusesWhatIsNotOnes_data()
    {
        QTest::addColumn<QString>("login");
        QTest::addColumn<QByteArray>("sql");
        const auto row = [](const char *name, const char *login, const char *sql) {
            QTest::newRow(name) << QString(login) << QByteArray(sql);
        };
        row("trigger off", "s1", "ALTER TABLE fact DISABLE TRIGGER ALL");
        row("replica", "s1", "SET session_replication_role = replica");
        row("drop", "s1", "DROP TABLE draft");
        row("new table", "s1", "CREATE TABLE mine (id integer)");
        row("fact", "s1", "UPDATE fact SET kind = kind");
        row("decision", "s1", "DELETE FROM decision");
        row("event", "s1", "UPDATE event SET actor = 's1'");
        row("truncate", "s1", "TRUNCATE draft");
        row("people", "d4", "UPDATE installer SET role = 'supervisor'");
        row("limits", "d4", "UPDATE limit_set SET version = 'x'");
        row("office", "k7", "UPDATE office SET name = 'mine'");
        row("vans", "k7",
            "INSERT INTO station (station, tag, lost, log)"
            " VALUES ('v', 'ABCDEF', 0, '')");
        row("hazard", "k7", "UPDATE hazard_order SET pair = 'elsewhere'");
        row("form", "s1", "UPDATE meta SET value = '9999' WHERE key = 'readable_from'");
        row("station", "s1", "UPDATE meta SET key = 'board_limits' WHERE key = 'station'");
        row("lost van", "d4", "UPDATE station SET lost = 0");
        row("catalogue of one's own", "k7",
            "CREATE TEMP TABLE pg_class (oid oid, relowner oid);"
            " INSERT INTO pg_temp.pg_class SELECT 'public.event'::regclass, 'k7'::regrole;"
            " INSERT INTO event SELECT log_position + 1000, subject, sequence + 1000, order_number,"
            " 's1', at_utc, at_offset, recorded_utc, recorded_offset, kind,"
            " '{\"session_user\":\"k7\"}', previous, digest, station, sealed, log_digest"
            " FROM event WHERE log_position = 1");
        row("role", "k7", "SET ROLE supervisor");
        row("another's name", "k7",
            "INSERT INTO event SELECT log_position + 1000, subject, sequence + 1000, order_number,"
            " 's1', at_utc, at_offset, recorded_utc, recorded_offset, kind, detail, previous,"
            " digest, station, sealed, log_digest FROM event WHERE log_position = 1");
        row("as the owner's", "k7",
            "INSERT INTO event SELECT log_position + 1000, subject, sequence + 1000, order_number,"
            " 's1', at_utc, at_offset, recorded_utc, recorded_offset, kind,"
            " '{\"session_user\":\"k7\"}', previous, digest, station, sealed, log_digest FROM event"
            " WHERE log_position = 1");
    }
    void theServerRefusesWhatIsNotOnes()
    {
        QFETCH(QString, login);
        QFETCH(QByteArray, sql);
        const auto done = past(login, sql);
        QVERIFY(!done);
        const QString why = done.error().message;
        QVERIFY2(why.contains("may not do that") || why.contains("another than") ||
                     why.contains("for their owner to change"),
                 qPrintable(why));
    }

    /// Every statement of the program that writes, by the group that may write most.
    void aSupervisorMayWriteWhatTheProgramWrites_data()
    {
        QTest::addColumn<std::string>("label");
        for (const std::string &label : postgresCatalog().statementLabels())
            if (toPostgres(postgresCatalog().compose(label, partsOf(label))).changesRows)
                QTest::newRow(label.c_str()) << label;
    }
    void aSupervisorMayWriteWhatTheProgramWrites()
    {
        QFETCH(std::string, label);
        static Database database = *Database::open(as("s1"));
        auto &connection = dynamic_cast<PostgresConnection &>(database.connection());
        const std::string sql = postgresCatalog().compose(label, partsOf(label));
        const PostgresSql made = toPostgres(sql);
        const auto name = prepared(connection.session(), label, sql);
        QVERIFY_RESULT(name);
        QByteArray values;
        for (std::size_t i = 0; i < made.parameters.size(); ++i)
            values += i == 0 ? "(NULL" : ",NULL";
        if (!values.isEmpty())
            values += ')';
        // Rights are looked at before anything is run.
        const auto may = connection.run("BEGIN READ WRITE; EXPLAIN EXECUTE " +
                                            QByteArray::fromStdString(*name) + values,
                                        "test");
        connection.rollBack();
        QVERIFY2(may || !may.error().message.contains("may not do that"),
                 may ? "" : qPrintable(may.error().message));
    }

    /// A dump that was restored elsewhere has no groups: the owner's next opening makes them.
    void whatIsMissingIsMadeAnew()
    {
        QVERIFY_RESULT(past("tester", "REVOKE INSERT ON event FROM installer"));
        QVERIFY(!past("k7", "INSERT INTO event SELECT * FROM event WHERE false"));
        QVERIFY(Database::open(m_address));
        QVERIFY_RESULT(past("k7", "INSERT INTO event SELECT * FROM event WHERE false"));
    }
    /// As of a program before this one, whose script gave other rights.
    void whatAnotherProgramGaveIsGivenAnew()
    {
        QVERIFY_RESULT(past("tester", "REVOKE INSERT ON told_hazard FROM installer"));
        QVERIFY(Database::open(m_address)); // the owner took it from them, and it stays so
        QVERIFY(!past("k7", "INSERT INTO told_hazard SELECT * FROM told_hazard WHERE false"));
        QVERIFY_RESULT(past("tester", "COMMENT ON FUNCTION masked_test_lines() IS 'older'"));
        QVERIFY(Database::open(m_address));
        QVERIFY_RESULT(past("k7", "INSERT INTO told_hazard SELECT * FROM told_hazard WHERE false"));
    }
    void anUnpublishedNumberIsMaskedForReports()
    {
        auto records = recordsOf("k7");
        const auto masked =
            records->database().connection().texts("SELECT number FROM masked_test_lines()");
        QVERIFY_RESULT(masked);
        QCOMPARE(masked->size(), 1);
        QVERIFY(masked->front().startsWith("**") &&
                masked->front().endsWith(jobs::sentinel.right(2)));
        QVERIFY(!masked->front().contains(jobs::sentinel.left(4)));
    }
};

QTEST_MAIN(ServerRolesTest)
#include "ServerRolesTest.moc"
