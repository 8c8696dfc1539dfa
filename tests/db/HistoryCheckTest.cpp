#include "db/HistoryCheck.h"

#include "db/SqlCatalog.h"
#include "db/SqliteConnection.h"
#include "tests/support/StoredJobs.h"

using namespace loopwright;

class HistoryCheckTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();

    /// What another program does: drops the triggers and edits.
    void edit(const QByteArray &sql)
    {
        SqliteConnection &connection = m_database.connection();
        for (const char *table : {"fact", "event", "decision", "certificate", "certificate_issue",
                                  "limit_set", "calibration"})
            for (const char *what : {"update", "delete"})
                QVERIFY_RESULT(
                    connection.run(QByteArray("DROP TRIGGER ") + table + "_no_" + what, "test"));
        QVERIFY_RESULT(connection.run("DROP TRIGGER service_order_no_delete", "test"));
        QVERIFY_RESULT(connection.run("PRAGMA foreign_keys = OFF", "test"));
        QVERIFY_RESULT(connection.run(sql, "test"));
    }

private slots:
    void init()
    {
        m_database = recordsInMemory();
        QVERIFY_RESULT(jobs::addWholeJob(m_database));
    }
    void recordsAsTheyWereWrittenAreWhole()
    {
        const auto findings = checkHistory(m_database);
        QVERIFY_RESULT(findings);
        QVERIFY2(findings->faults.empty(),
                 findings->faults.empty() ? "" : qPrintable(findings->faults[0].what));
        QCOMPARE(findings->events, 5);
        // A change through the program leaves them whole.
        const ServiceOrder order = jobs::changed(jobs::briFields(), {{"customer", "Dark Bakery"}});
        QVERIFY_RESULT(jobs::addOrder(m_database, order));
        QVERIFY_RESULT(jobs::setStatus(m_database, order, OrderStatus::Completed));
        QVERIFY_RESULT(jobs::addOffice(m_database));
        QVERIFY(checkHistory(m_database)->faults.empty());
        QVERIFY(checkHistory(recordsInMemory())->faults.empty());
    }
    void editsAreNamed_data()
    {
        QTest::addColumn<QByteArray>("sql");
        QTest::addColumn<QString>("subject");
        QTest::addColumn<qint64>("event");
        QTest::addColumn<QString>("what");
        const auto row = [](const char *sql, const char *subject, qint64 event,
                            const QByteArray &what) {
            QTest::newRow(sql) << QByteArray(sql) << QString(subject) << event
                               << QString::fromUtf8(what);
        };
        const char *c = "circuit:C-77", *r = "register";
        const char *changed = "was changed after it was recorded";
        const QByteArray loop = QByteArray("fact ") + jobs::uuid(3).toUtf8() + ' ';
        row("UPDATE fact SET content = replace(content, '28.4', '18.4')", c, 2, loop + changed);
        row("UPDATE fact SET content = content || ' ' WHERE kind = 'loop'", c, 2, loop + changed);
        row("UPDATE fact SET kind = 'note' WHERE kind = 'loop'", c, 2, loop + changed);
        row("UPDATE fact SET digest = hex(zeroblob(32)) WHERE kind = 'loop'", c, 2, loop + changed);
        row("DELETE FROM fact WHERE kind = 'loop'", c, 2, loop + "is gone from the records");
        row("INSERT INTO fact SELECT 99, replace(uuid, '4000', '4001'), service_order, kind,"
            " at_utc, at_offset, installer, instrument, voids,"
            " replace(content, uuid, replace(uuid, '4000', '4001')), digest FROM fact"
            " WHERE kind = 'loop'",
            "", 0, "fact 00000000-0000-4001-8000-000000000003 was changed after it was recorded");
        row("UPDATE fact SET at_utc = '2026-03-03T14:10:00.000Z' WHERE kind = 'loop'", c, 2,
            loop + changed);
        row("UPDATE fact SET at_offset = 0 WHERE kind = 'loop'", c, 2, loop + changed);
        row("UPDATE fact SET installer = 'K8' WHERE kind = 'loop'", c, 2, loop + changed);
        row("UPDATE fact SET instrument = 'TS-5' WHERE kind = 'loop'", c, 2, loop + changed);
        row("UPDATE decision SET outcome = 'not_accepted'", c, 3, changed);
        row("UPDATE decision SET result = replace(result, '\"met\"', '\"not_met\"')", c, 3,
            changed);
        row("UPDATE decision SET input = replace(input, '28.4', '18.4')", c, 3, changed);
        row("UPDATE decision SET at_utc = '2026-03-03T14:10:00.000Z'", c, 3, changed);
        row("UPDATE decision SET at_utc = ''", c, 3, changed);
        row("DELETE FROM decision", c, 3, "is gone from the records");
        row("UPDATE certificate SET content = '{}'", c, 3,
            "certificate 26-007-00001-99 was changed after it was recorded");
        row("UPDATE certificate SET at_utc = '2026-03-03T14:10:00.000Z'", c, 3,
            "certificate 26-007-00001-99 was changed after it was recorded");
        row("UPDATE certificate SET decision = 99", c, 3,
            "certificate 26-007-00001-99 was changed after it was recorded");
        row("UPDATE certificate SET number = '26-007-00002-99'", "", 0, "");
        row("UPDATE certificate_issue SET file_sha256 = hex(zeroblob(32))", c, 3,
            "certificate_issue 26-007-00001-99/1 was changed after it was recorded");
        row("UPDATE certificate_issue SET at_utc = '2026-03-03T14:10:00.000Z'", c, 3,
            "certificate_issue 26-007-00001-99/1 was changed after it was recorded");
        row("UPDATE service_order SET content = replace(content, 'Bright', 'Dark')", c, 1,
            "order A-1001 was changed after it was recorded");
        row("UPDATE service_order SET status = 'cancelled'", c, 1,
            "order A-1001 was changed after it was recorded");
        row("UPDATE service_order SET held = 1", c, 1,
            "order A-1001 was changed after it was recorded");
        row("UPDATE service_order SET due_date = '2027-01-01'", c, 1,
            "order A-1001 was changed after it was recorded");
        row("UPDATE service_order SET installer = 'K8'", c, 1,
            "order A-1001 was changed after it was recorded");
        row("UPDATE order_terminal SET dn = '2175550177' WHERE number = 1", c, 1,
            "order A-1001 was changed after it was recorded");
        row("DELETE FROM order_terminal WHERE number = 2", c, 1,
            "order A-1001 was changed after it was recorded");
        row("UPDATE office SET name = 'South exchange'", r, 1,
            "office NORTH was changed after it was recorded");
        row("UPDATE installer SET role = 'supervisor'", r, 2,
            "installer K7 was changed after it was recorded");
        row("UPDATE instrument SET serial = 'X'", r, 2,
            "instrument TS-4 was changed after it was recorded");
        row("UPDATE calibration SET calibration_due = '2099-01-01'", r, 2, changed);
        row("DELETE FROM calibration", r, 2, "is gone from the records");
        row("UPDATE limit_set SET content = replace(content, '900', '90')", r, 2,
            "limit_set 2026-1 was changed after it was recorded");
        row("UPDATE event SET actor = 'B. Ode' WHERE subject <> 'register' AND sequence = 2", c, 2,
            "event was changed after it was recorded");
        row("UPDATE event SET detail = '{}' WHERE subject = 'register' AND sequence = 1", r, 1,
            "event was changed after it was recorded");
        row("UPDATE event SET at_utc = 'x' WHERE subject = 'register' AND sequence = 1", r, 1,
            "event cannot be read");
        row("DELETE FROM event WHERE subject <> 'register' AND sequence = 2", c, 3,
            "event event 2 was expected here");
        row("DELETE FROM event WHERE subject <> 'register' AND sequence = 3", c, 2,
            "the chain should end with event 3");
        row("DELETE FROM event WHERE subject <> 'register'", c, 0,
            "all events of the chain are missing");
        row("DELETE FROM chain_head WHERE subject = 'register'", r, 2, "the chain should end");
        row("UPDATE chain_head SET digest = hex(zeroblob(32)) WHERE subject = 'register'", r, 2,
            "the chain should end");
    }
    void editsAreNamed()
    {
        QFETCH(QByteArray, sql);
        QFETCH(QString, subject);
        QFETCH(qint64, event);
        QFETCH(QString, what);
        edit(sql);
        const auto findings = checkHistory(m_database);
        QVERIFY_RESULT(findings);
        QVERIFY(!findings->faults.empty());
        bool named = false;
        QStringList said;
        for (const HistoryFault &fault : findings->faults) {
            said << QString("%1 %2 %3").arg(fault.subject).arg(fault.event).arg(fault.what);
            named = named ||
                    (fault.subject == subject && fault.event == event && fault.what.contains(what));
        }
        QVERIFY2(named || what.isEmpty(), qPrintable(said.join("; ")));
    }
    void oneEditIsNamedOnce()
    {
        edit("UPDATE fact SET content = replace(content, '28.4', '18.4')");
        QCOMPARE(checkHistory(m_database)->faults.size(), 1u);
    }
    void aRowThatWasSmuggledInIsNamed()
    {
        // With a digest of its own that fits, and no event that names it.
        auto transaction = Transaction::begin(m_database);
        QVERIFY_RESULT(transaction);
        const auto fact = Fact::fromJson({{"id", jobs::uuid(50)},
                                          {"kind", "note"},
                                          {"at", "2026-03-04T16:00:00Z"},
                                          {"order", "A-1001"},
                                          {"text", "all well"}},
                                         "fact");
        QVERIFY(*FactStore::add(*transaction, *fact));
        QVERIFY_RESULT(m_database.connection().run("COMMIT", "test"));
        const auto findings = checkHistory(m_database);
        QCOMPARE(findings->faults,
                 (std::vector<HistoryFault>{
                     {"circuit:C-77", 0,
                      "fact " + jobs::uuid(50) + " is in the records, but no event tells of it"}}));
    }
    void tellsNoMoreThanItsMost()
    {
        QVERIFY_RESULT(m_database.connection().run(
            "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 3000)"
            " INSERT INTO installer SELECT NULL, 'X' || i, '', 'installer', hex(zeroblob(32))"
            " FROM n",
            "test"));
        QCOMPARE(checkHistory(m_database)->faults.size(), HistoryFindings::maxFaults);
    }
    void canBeStopped()
    {
        const auto copyEvents = [&] {
            for (int i = 0; i < 4100; ++i)
                if (!jobs::inTransaction(m_database, "circuit:C-1",
                                         [](Transaction &) { return Result<void>(); }))
                    return false;
            return true;
        };
        QVERIFY(copyEvents());
        qint64 seen = 0;
        const auto stopped = checkHistory(m_database, [&seen](qint64 done, qint64 all) {
            seen = all;
            return done > all;
        });
        QVERIFY(!stopped);
        QCOMPARE(stopped.error().code, ErrorCode::Refused);
        QCOMPARE(seen, 4105);
        QVERIFY(!m_database.connection().inTransaction());
    }
};

QTEST_GUILESS_MAIN(HistoryCheckTest)
#include "HistoryCheckTest.moc"
