#include "db/SqlCatalog.h"
#include "db/SqliteConnection.h"
#include "tests/support/StoredJobs.h"

#include <sqlite3.h>

using namespace loopwright;

// A million circuits: a question about one order, number, SPID or pair goes by an index. Walks over
// everything are named here, each with its reason.
class QueryPlansTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();

    struct Prepared
    {
        Prepared(SqliteConnection &connection, const std::string &sql)
        {
            const int code = sqlite3_prepare_v2(connection.handle(), sql.c_str(), int(sql.size()),
                                                &handle, nullptr);
            if (code != SQLITE_OK)
                qFatal("%s: %s", sqlite3_errmsg(connection.handle()), sql.c_str());
        }
        ~Prepared() { sqlite3_finalize(handle); }
        void bind(const char *name, const char *text)
        {
            sqlite3_bind_text(handle, sqlite3_bind_parameter_index(handle, name), text, -1,
                              SQLITE_STATIC);
        }
        sqlite3_stmt *handle = nullptr;
    };

    /// The steps of a plan that read a whole table, e.g. "SCAN o".
    QStringList scansOf(const std::string &sql)
    {
        Prepared plan(m_database.file(), "EXPLAIN QUERY PLAN " + sql);
        QStringList scans;
        while (sqlite3_step(plan.handle) == SQLITE_ROW) {
            const QString step = QString::fromUtf8(
                reinterpret_cast<const char *>(sqlite3_column_text(plan.handle, 3)));
            if (step.startsWith("SCAN") && step != u"SCAN CONSTANT ROW")
                scans << step;
        }
        return scans;
    }

private slots:
    void onlyTheseWalkOverEverything()
    {
        // A search walks over what its words find, up to a bound. The audit, the export and the
        // check of the history read everything, the registers are small, held orders and repairs
        // have an index of their own. So are the stations, what went out and came back, and what an
        // office told a van of hazards.
        const QStringList walks{"assignment.doubles",
                                "assignment.unassigned",
                                "assignment.unwanted",
                                "order.all",
                                "order.wrong_ranks",
                                "board.check_tally",
                                "board.found",
                                "event.heads",
                                "hazard.orders",
                                "hazard.told_with_card",
                                "hazard.told_elsewhere",
                                "event.log",
                                "event.count",
                                "instrument.all",
                                "instrument.all_calibrations",
                                "limits.all",
                                "office.all",
                                "office.issuer",
                                "order.open",
                                "order.count_open",
                                "order.count",
                                "order.held",
                                "order.repairs",
                                "meta.draw_station",
                                "person.all",
                                "schema.all",
                                "key.all",
                                "report.instruments",
                                "station.all",
                                "station.carried",
                                "station.bundles_of_kind",
                                "conflict.all",
                                "foreign.all_events",
                                "foreign.joins",
                                "certificate.of_order"};
        for (const std::string &label : SqlCatalog::embedded().statementLabels()) {
            const QString name = QString::fromStdString(label);
            const std::string &sql = *SqlCatalog::embedded().statement(label);
            if (sql.find("FROM") == std::string::npos &&
                (name.startsWith("board.") || name.startsWith("report.")))
                continue; // its FROM is composed: BoardStatementTest, ReportStoreTest
            if (walks.contains(name) || name.startsWith("export.") || name.startsWith("history."))
                continue;
            const QStringList scans = scansOf(sql);
            QVERIFY2(scans.isEmpty(), qPrintable(name + ": " + scans.join("; ")));
        }
        QCOMPARE(scansOf(*SqlCatalog::embedded().statement("order.repairs")),
                 QStringList{"SCAN service_order USING INDEX service_order_repair"});
        QCOMPARE(scansOf(*SqlCatalog::embedded().statement("order.held")),
                 QStringList{"SCAN service_order USING INDEX service_order_held"});
        QVERIFY(!scansOf("SELECT 1 FROM service_order WHERE due_date = '2026-01-01'").isEmpty());
    }
    // Each costs more than the insertion itself, and an import makes many.
    void takingAnOrderInMakesNoTemporaryTable_data()
    {
        QTest::addColumn<QString>("label");
        for (const char *label :
             {"circuit.add", "order.put", "order.put_terminal", "assignment.plan", "fact.add",
              "event.add", "event.set_head", "board.put"})
            QTest::newRow(label) << label;
    }
    void takingAnOrderInMakesNoTemporaryTable()
    {
        QFETCH(QString, label);
        const std::string *sql = SqlCatalog::embedded().statement(label.toStdString());
        QVERIFY(sql != nullptr);
        Prepared program(m_database.file(), "EXPLAIN " + *sql);
        int steps = 0;
        for (; sqlite3_step(program.handle) == SQLITE_ROW; ++steps)
            QVERIFY(QByteArray(reinterpret_cast<const char *>(
                        sqlite3_column_text(program.handle, 1))) != "OpenEphemeral");
        QVERIFY(steps > 0);
    }
    // The plan of a trigger is not shown; what it read is counted.
    void theTableOfAssignmentsAsksItselfByTheIndex()
    {
        QVERIFY_RESULT(jobs::addOffice(m_database));
        for (int i = 0; i < 20; ++i) {
            const QString n = QString::number(100 + i);
            const ServiceOrder order =
                jobs::changed(jobs::briFields(), {{"order_number", "A-" + n},
                                                  {"circuit_number", "C-" + n},
                                                  {"pair", "9-" + n},
                                                  {"dn_1", "217-555-0" + n},
                                                  {"spid_1", "2175550" + n + "0101"},
                                                  {"dn_2", "312-555-0" + n},
                                                  {"spid_2", "3125550" + n + "0101"}});
            QVERIFY_RESULT(jobs::addOrder(m_database, order));
            QCOMPARE(jobs::claim(m_database, order), std::vector<Conflict>());
        }
        SqliteConnection &connection = m_database.file();
        QCOMPARE(*connection.number("SELECT count(*) FROM assignment"), 100);
        Prepared plan(connection, *SqlCatalog::embedded().statement("assignment.plan"));
        plan.bind(":kind", "pair");
        plan.bind(":scope", "NORTH");
        plan.bind(":value", "9-99");
        plan.bind(":order_number", "A-100");
        QCOMPARE(sqlite3_step(plan.handle), SQLITE_DONE);
        QCOMPARE(sqlite3_changes(connection.handle()), 1);
        QCOMPARE(sqlite3_stmt_status(plan.handle, SQLITE_STMTSTATUS_FULLSCAN_STEP, 0), 0);
        Prepared scan(connection, "SELECT sum(length(value)) FROM assignment");
        QCOMPARE(sqlite3_step(scan.handle), SQLITE_ROW);
        QVERIFY(sqlite3_stmt_status(scan.handle, SQLITE_STMTSTATUS_FULLSCAN_STEP, 0) > 90);
    }
};

QTEST_GUILESS_MAIN(QueryPlansTest)
#include "QueryPlansTest.moc"
