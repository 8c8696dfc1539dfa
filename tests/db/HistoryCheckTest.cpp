// Longer than 400 lines: one edit for each column and table, and what finds it.

#include "db/HistoryCheck.h"

#include "db/Connection.h"
#include "db/EventStore.h"
#include "db/SqlCatalog.h"
#include "tests/support/StoredJobs.h"
#include "tests/support/Tamper.h"

#include <QTemporaryDir>

using namespace loopwright;

class HistoryCheckTest : public QObject
{
    Q_OBJECT
    QTemporaryDir m_folder;
    QString m_path;
    Database m_database = recordsInMemory();

    static HistoryFindings findingsOf(const QString &path, const std::vector<LogHead> &heads = {})
    {
        const auto database = Database::open(path, Database::Access::ReadOnly);
        if (!database)
            qFatal("%s", qPrintable(database.error().text()));
        const auto findings = checkHistory(*database, {}, heads);
        if (!findings)
            qFatal("%s", qPrintable(findings.error().text()));
        return *findings;
    }
    static QString told(const HistoryFindings &findings)
    {
        QStringList said;
        for (const HistoryFault &fault : findings.faults)
            said << QString("%1 %2 %3").arg(fault.subject).arg(fault.event).arg(fault.what);
        return said.join("; ");
    }
    static bool names(const HistoryFindings &findings, const QString &subject, qint64 event,
                      const QString &what)
    {
        return std::ranges::any_of(findings.faults, [&](const HistoryFault &fault) {
            return fault.subject == subject && fault.event == event && fault.what.contains(what);
        });
    }

private slots:
    void init()
    {
        m_database = recordsInMemory();
        m_path = m_folder.filePath("r.sqlite");
        const QString original = m_folder.filePath("original.sqlite");
        if (!QFile::exists(original)) {
            auto database = Database::open(original);
            QVERIFY_RESULT(database);
            QVERIFY_RESULT(jobs::addWholeJob(*database));
            QVERIFY_RESULT(jobs::addMoreRows(*database));
        }
        QFile::remove(m_path);
        QVERIFY(QFile::copy(original, m_path));
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
        QCOMPARE(told(findingsOf(m_path)), QString());
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
        const QByteArray changed = "was changed after it was recorded";
        const auto changes = [&](const char *sql, const char *subject, qint64 event,
                                 const QByteArray &name) {
            row(sql, subject, event, name + ' ' + changed);
        };
        const QByteArray loop = QByteArray("fact ") + jobs::uuid(3).toUtf8();
        changes("UPDATE fact SET content = replace(content, '28.4', '18.4')", c, 2, loop);
        changes("UPDATE fact SET content = content || ' ' WHERE kind = 'loop'", c, 2, loop);
        changes("UPDATE fact SET kind = 'note' WHERE kind = 'loop'", c, 2, loop);
        changes("UPDATE fact SET digest = hex(zeroblob(32)) WHERE kind = 'loop'", c, 2, loop);
        row("DELETE FROM fact WHERE kind = 'loop'", c, 2, loop + " is gone from the records");
        row("INSERT INTO fact SELECT 99, replace(uuid, '4000', '4001'), service_order, kind,"
            " at_utc, at_offset, installer, instrument, voids,"
            " replace(content, uuid, replace(uuid, '4000', '4001')), digest FROM fact"
            " WHERE kind = 'loop'",
            "", 0,
            "fact 00000000-0000-4001-8000-000000000003 is in the records, but no event tells of "
            "it");
        changes("UPDATE fact SET at_utc = '2026-03-03T14:10:00.000Z' WHERE kind = 'loop'", c, 2,
                loop);
        changes("UPDATE fact SET at_offset = 0 WHERE kind = 'loop'", c, 2, loop);
        changes("UPDATE fact SET installer = 'K8' WHERE kind = 'loop'", c, 2, loop);
        changes("UPDATE fact SET instrument = 'TS-5' WHERE kind = 'loop'", c, 2, loop);
        row("UPDATE decision SET outcome = 'not_accepted'", c, 3, changed);
        row("UPDATE decision SET result = replace(result, '\"met\"', '\"not_met\"')", c, 3,
            changed);
        row("UPDATE decision SET input = replace(input, '28.4', '18.4')", c, 3, changed);
        row("UPDATE decision SET at_utc = '2026-03-03T14:10:00.000Z'", c, 3, changed);
        row("UPDATE decision SET at_utc = ''", c, 3, changed);
        row("DELETE FROM decision", c, 3, "is gone from the records");
        changes("UPDATE certificate SET content = '{}'", c, 3, "certificate 26-K7M4QP-00001-43");
        changes("UPDATE certificate SET at_utc = '2026-03-03T14:10:00.000Z'", c, 3,
                "certificate 26-K7M4QP-00001-43");
        changes("UPDATE certificate SET decision = 99", c, 3, "certificate 26-K7M4QP-00001-43");
        changes("UPDATE certificate SET claims = 'accepted'", c, 3,
                "certificate 26-K7M4QP-00001-43");
        row("UPDATE certificate SET number = '26-K7M4QP-00002-99'", "", 0, "");
        changes("UPDATE certificate_issue SET file_sha256 = hex(zeroblob(32))", c, 3,
                "certificate_issue 26-K7M4QP-00001-43/1");
        changes("UPDATE certificate_issue SET at_utc = '2026-03-03T14:10:00.000Z'", c, 3,
                "certificate_issue 26-K7M4QP-00001-43/1");
        changes("UPDATE service_order SET content = replace(content, 'Bright', 'Dark')", c, 1,
                "order A-1001");
        changes("UPDATE service_order SET status = 'cancelled'", c, 1, "order A-1001");
        changes("UPDATE service_order SET held = 1", c, 1, "order A-1001");
        changes("UPDATE service_order SET due_date = '2027-01-01'", c, 1, "order A-1001");
        changes("UPDATE service_order SET installer = 'K8'", c, 1, "order A-1001");
        changes("UPDATE service_order SET office = 9999", c, 1, "order A-1001");
        changes("UPDATE service_order SET circuit = 9999", c, 1, "order A-1001");
        changes("UPDATE service_order SET premises_key = 'elsewhere'", c, 1, "order A-1001");
        changes("UPDATE service_order SET uuid = replace(uuid, '-4', '-5')", c, 1, "order A-1001");
        changes("UPDATE circuit SET uuid = replace(uuid, '-4', '-5')", c, 1, "circuit C-77");
        changes("UPDATE circuit SET circuit_number = 'C-78'", c, 1, "circuit C-78");
        changes("UPDATE order_terminal SET dn = '2175550177' WHERE number = 1", c, 1,
                "order_terminal A-1001/1");
        changes("UPDATE order_terminal SET spid = '1' WHERE number = 1", c, 1,
                "order_terminal A-1001/1");
        changes("UPDATE order_terminal SET dn_key = '1' WHERE number = 2", c, 1,
                "order_terminal A-1001/2");
        row("DELETE FROM order_terminal WHERE number = 2", c, 1,
            "order_terminal row 2 is gone from the records");
        changes("UPDATE assignment SET state = 'released' WHERE kind = 'pair'", c, 4,
                "assignment pair 17-204");
        row("DELETE FROM assignment WHERE kind = 'pair'", c, 4, "is gone from the records");
        row("INSERT INTO assignment (kind, scope, value, circuit, service_order, state)"
            " VALUES ('pair', 'NORTH', '8', 1, 1, 'planned')",
            "", 0, "assignment pair 8 is in the records, but no event tells of it");
        changes("UPDATE order_state SET outcome = 'accepted'", c, 4, "order_state A-1001");
        changes("UPDATE order_state SET search = ''", c, 4, "order_state A-1001");
        changes("UPDATE hazard_order SET pair = '8'", c, 4, "hazard_order A-1001/8");
        row("DELETE FROM hazard_order", c, 4, "hazard_order row 1 is gone from the records");
        changes("UPDATE office_test_line SET number = '217-555-0177'", r, 1,
                "office_test_line NORTH/loopback");
        changes("UPDATE issuer SET telephone = '217-555-0177'", r, 3, "issuer issuer");
        row("DELETE FROM issuer", r, 3, "issuer issuer is gone from the records");
        changes("UPDATE meta SET value = 'ABCDEF' WHERE key = 'station'", r, 1, "meta station");
        row("UPDATE meta SET value = 'ABCDEF' WHERE key = 'station'", "log", 0,
            "the records call themselves station ABCDEF");
        row("INSERT INTO public_key (holder, fingerprint, public_key, endorsed_by, endorsement, "
            "at_utc,"
            " at_offset, digest) VALUES ('issuer', 'aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa', "
            "hex(zeroblob(32)),"
            " '', '', '', 0, hex(zeroblob(32)))",
            "", 0,
            "public_key aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa is in the records, but no event tells of "
            "it");
        changes("UPDATE meta SET value = '0' WHERE key = 'readable_from'", r, 1,
                "meta readable_from");
        row("INSERT INTO meta (key, value) VALUES ('mine', '1')", "", 0,
            "meta mine is in the records, but no event tells of it");
        changes("UPDATE office SET name = 'South exchange'", r, 1, "office NORTH");
        changes("UPDATE installer SET role = 'supervisor'", r, 2, "installer K7");
        changes("UPDATE instrument SET serial = 'X'", r, 2, "instrument TS-4");
        row("UPDATE calibration SET calibration_due = '2099-01-01'", r, 2, changed);
        row("DELETE FROM calibration", r, 2, "is gone from the records");
        changes("UPDATE limit_set SET content = replace(content, '900', '90')", r, 2,
                "limit_set 2026-1");
        row("UPDATE event SET actor = 'B. Ode' WHERE subject <> 'register' AND sequence = 2", c, 2,
            "event was changed after it was recorded");
        row("UPDATE event SET detail = '{}' WHERE subject = 'register' AND sequence = 1", r, 1,
            "event was changed after it was recorded");
        row("UPDATE event SET at_utc = 'x' WHERE subject = 'register' AND sequence = 1", r, 1,
            "event was changed after it was recorded");
        row("UPDATE event SET sealed = '' WHERE subject = 'register' AND sequence = 2", r, 2,
            "event does not continue the log of the station");
        row("UPDATE event SET log_digest = hex(zeroblob(32)) WHERE log_position = 2", r, 2,
            "event does not continue the log of the station");
        row("UPDATE event SET station = 'ABCDEF' WHERE log_position = 2", r, 2,
            "event does not continue the log of the station");
        row("UPDATE event SET log_position = 99 WHERE log_position = 2", r, 3,
            "event 2 was expected here");
        row("UPDATE event SET log_position = 99 WHERE log_position = 3;"
            "UPDATE event SET log_position = 3 WHERE log_position = 4;"
            "UPDATE event SET log_position = 4 WHERE log_position = 99",
            c, 2, "event 1 was expected here");
        row("INSERT INTO event SELECT 99, subject, 9, order_number, actor, at_utc, at_offset,"
            " recorded_utc, recorded_offset, kind, detail, digest, digest, station, sealed,"
            " log_digest FROM event WHERE log_position = 5",
            c, 9, "event 5 was expected here");
        row("DELETE FROM event WHERE subject <> 'register' AND sequence = 2", c, 3,
            "event 2 was expected here");
        row("DELETE FROM event WHERE subject <> 'register' AND sequence = 4", c, 3,
            "the chain should end with event 4");
        row("DELETE FROM event WHERE subject <> 'register'", c, 0,
            "all events of the chain are missing");
        row("DELETE FROM chain_head WHERE subject = 'register'", r, 3,
            "nothing says that the chain should end with this event");
        row("UPDATE chain_head SET digest = hex(zeroblob(32)) WHERE subject = 'register'", r, 3,
            "the chain should end");
    }
    void editsAreNamed()
    {
        QFETCH(QByteArray, sql);
        QFETCH(QString, subject);
        QFETCH(qint64, event);
        QFETCH(QString, what);
        tamper(m_path, sql);
        const HistoryFindings findings = findingsOf(m_path);
        QVERIFY(!findings.faults.empty());
        QVERIFY2(names(findings, subject, event, what) || what.isEmpty(),
                 qPrintable(told(findings)));
    }
    void oneEditIsNamedOnce()
    {
        tamper(m_path, "UPDATE fact SET content = replace(content, '28.4', '18.4')");
        QCOMPARE(findingsOf(m_path).faults.size(), 1u);
    }
    void everyTableIsHeldAgainstTheLog()
    {
        // One edit for each table that the program has, so that none is forgotten.
        ForeignProgram program(m_path);
        QStringList seen;
        for (const QByteArray &table :
             program.column("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT GLOB"
                            " 'order_search*' AND name NOT IN ('draft', 'chain_head', 'paper_due',"
                            " 'board_tally')")) {
            const QByteArray column =
                program
                    .column("SELECT name FROM pragma_table_info('" + table +
                            "') WHERE type = 'TEXT' ORDER BY cid DESC LIMIT 1")
                    .value(0);
            QVERIFY2(!program.column("SELECT count(*) FROM " + table + " LIMIT 1").contains("0"),
                     table.constData());
            const QString copy = m_folder.filePath("t.sqlite");
            QFile::remove(copy);
            QVERIFY(QFile::copy(m_path, copy));
            // The first text that may be any: a digest, a key.
            tamper(copy,
                   "UPDATE OR IGNORE " + table + " SET " + column + " = " + column + " || 'x'");
            QVERIFY2(!findingsOf(copy).faults.empty(), table.constData());
            seen << QString::fromUtf8(table);
        }
        QVERIFY(seen.size() >= 19);
    }
    void aChangedSchemaIsNamed_data()
    {
        QTest::addColumn<QByteArray>("sql");
        QTest::addColumn<QString>("what");
        const auto row = [](const char *sql, const char *what) {
            QTest::newRow(sql) << QByteArray(sql) << QString(what);
        };
        row("DROP TRIGGER fact_no_update", "the trigger fact_no_update is missing");
        row("DROP TRIGGER event_no_delete; CREATE TRIGGER event_no_delete BEFORE DELETE ON event"
            " BEGIN SELECT 1; END",
            "the trigger event_no_delete was changed");
        row("CREATE TRIGGER mine AFTER INSERT ON fact BEGIN DELETE FROM draft; END",
            "the trigger mine was put in");
        row("DROP INDEX fact_order", "the index fact_order is missing");
        row("DROP INDEX fact_order; CREATE INDEX fact_order ON fact (at_utc)",
            "the index fact_order was changed");
        row("CREATE INDEX mine ON fact (kind)", "the index mine was put in");
        row("DROP TABLE draft", "the table draft is missing");
        row("CREATE TABLE mine (x)", "the table mine was put in");
        row("ALTER TABLE draft ADD COLUMN mine TEXT", "the table draft was changed");
        row("DROP VIEW wanted_value", "the view wanted_value is missing");
        row("PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql,"
            " 'CHECK (sequence > 0)', '') WHERE name = 'event'",
            "the table event was changed");
        row("PRAGMA writable_schema = ON; INSERT INTO sqlite_schema VALUES ('trigger',"
            " 'sqlite_stat_x', 'fact', 0, 'CREATE TRIGGER sqlite_stat_x AFTER INSERT ON fact"
            " BEGIN DELETE FROM draft; END')",
            "the trigger sqlite_stat_x was put in");
        row("ANALYZE; PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql ="
            " 'CREATE TABLE sqlite_stat1(tbl,idx,stat,mine)' WHERE name = 'sqlite_stat1'",
            "the table sqlite_stat1 was put in");
    }
    void aChangedSchemaIsNamed()
    {
        QFETCH(QByteArray, sql);
        QFETCH(QString, what);
        ForeignProgram(m_path).run(sql);
        const HistoryFindings findings = findingsOf(m_path);
        QVERIFY2(names(findings, "schema", 0, what), qPrintable(told(findings)));
    }
    void aDamagedPageIsNamed()
    {
        // The page of a table of facts is overwritten, as a bad disk does it.
        const qint64 page =
            ForeignProgram(m_path)
                .column("SELECT pageno FROM dbstat WHERE name = 'fact' AND pagetype = 'leaf'")
                .value(0, "0")
                .toLongLong();
        const qint64 size = 4096;
        QVERIFY(page > 1);
        const auto open = Database::open(m_path, Database::Access::ReadOnly);
        QVERIFY_RESULT(open);
        QFile file(m_path);
        QVERIFY(file.open(QIODevice::ReadWrite));
        QVERIFY(file.seek((page - 1) * size));
        QCOMPARE(file.write(QByteArray(size, 'x')), size);
        file.close();
        const auto findings = checkHistory(*open);
        QVERIFY_RESULT(findings);
        QVERIFY2(names(*findings, "database", 0, "damaged"), qPrintable(told(*findings)));
        const auto later = Database::open(m_path, Database::Access::ReadOnly);
        QVERIFY(!later); // a small file is read through when it is opened
        QVERIFY2(later.error().message.contains("damaged"), qPrintable(later.error().text()));
    }
    void aRebuiltChainIsNamed()
    {
        // One who knows the rules computes every digest of the circuit anew, and its head.
        {
            auto forged = recordsInMemory();
            QVERIFY_RESULT(jobs::addWholeJob(forged));
            const auto events =
                EventStore(*Database::open(m_path, Database::Access::ReadOnly)).ofCircuit("C-77");
            QVERIFY_RESULT(events);
            HistoryChain chain("circuit:C-77");
            QByteArray sql;
            for (Event event : *events) {
                event.by = "B. Ode";
                event = chain.append(event);
                sql += QString("UPDATE event SET actor = 'B. Ode', previous = '%1', digest = '%2'"
                               " WHERE log_position = %3;")
                           .arg(event.previous, event.digest)
                           .arg(event.logPosition)
                           .toUtf8();
            }
            sql += QString("UPDATE chain_head SET digest = '%1' WHERE subject = 'circuit:C-77'")
                       .arg(chain.head())
                       .toUtf8();
            tamper(m_path, sql);
        }
        const HistoryFindings findings = findingsOf(m_path);
        QVERIFY2(
            names(findings, "circuit:C-77", 1, "event does not continue the log of the station"),
            qPrintable(told(findings)));
    }
    void aCircuitRemovedWholeIsNamed()
    {
        tamper(m_path, "DELETE FROM certificate_issue; DELETE FROM certificate;"
                       "DELETE FROM decision; DELETE FROM fact; DELETE FROM assignment;"
                       "DELETE FROM order_terminal; DELETE FROM order_state;"
                       "DELETE FROM hazard_order; DELETE FROM service_order; DELETE FROM circuit;"
                       "DELETE FROM event WHERE subject = 'circuit:C-77';"
                       "DELETE FROM chain_head WHERE subject = 'circuit:C-77'");
        const HistoryFindings findings = findingsOf(m_path);
        QVERIFY2(names(findings, "register", 3, "of the log is missing before this one"),
                 qPrintable(told(findings)));
    }
    void aCutTailIsNamedByAHeadThatWentOut()
    {
        const auto head = EventStore(*Database::open(m_path, Database::Access::ReadOnly)).logHead();
        QVERIFY_RESULT(head);
        QCOMPARE(told(findingsOf(m_path, {*head})), QString());
        // Everything that the last event wrote, the event, and the head of its chain set back.
        tamper(m_path, "DELETE FROM issuer; DELETE FROM event WHERE log_position ="
                       " (SELECT max(log_position) FROM event);"
                       "UPDATE chain_head SET events = 2, digest = (SELECT digest FROM event"
                       " WHERE subject = 'register' AND sequence = 2) WHERE subject = 'register'");
        QCOMPARE(told(findingsOf(m_path)), QString()); // nothing in the file can tell
        const HistoryFindings findings = findingsOf(m_path, {*head});
        QVERIFY2(names(findings, "log", 0, "the log is shorter now"), qPrintable(told(findings)));
    }
    void anotherLogIsNamedByAHead()
    {
        auto head = EventStore(*Database::open(m_path, Database::Access::ReadOnly)).logHead();
        QVERIFY_RESULT(head);
        head->digest = QString(64, 'a');
        QVERIFY(names(findingsOf(m_path, {*head}), "log", 0, "was another than the one"));
        head = EventStore(*Database::open(m_path, Database::Access::ReadOnly)).logHead();
        head->station = "ABCDEF";
        QVERIFY(names(findingsOf(m_path, {*head}), "log", 0, "was another than the one"));
        head = EventStore(*Database::open(m_path, Database::Access::ReadOnly)).logHead();
        head->at = head->at.plusSeconds(-60);
        QVERIFY(names(findingsOf(m_path, {*head}), "log", 0, "was recorded at "));
    }
    void aFileWithoutItsJournalIsNamedByAHead()
    {
        auto database = Database::open(m_path);
        QVERIFY_RESULT(database);
        QVERIFY_RESULT(jobs::addOffice(*database, "WEST"));
        const auto head = EventStore(*database).logHead();
        QVERIFY_RESULT(head);
        QVERIFY(QFileInfo(m_path + "-wal").size() > 0);
        const QString copy = m_folder.filePath("copy.sqlite");
        QFile::remove(copy);
        QVERIFY(QFile::copy(m_path, copy)); // and not the -wal beside it
        QCOMPARE(told(findingsOf(copy)), QString());
        QVERIFY(names(findingsOf(copy, {*head}), "log", 0, "the log is shorter now"));
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
                     {"", 0,
                      "fact " + jobs::uuid(50) + " is in the records, but no event tells of it"}}));
    }
    void tellsNoMoreThanItsMost()
    {
        QVERIFY_RESULT(m_database.connection().run(
            "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 3000)"
            " INSERT INTO installer SELECT NULL, 'X' || i, '', 'installer', '', '', "
            "hex(zeroblob(32))"
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
