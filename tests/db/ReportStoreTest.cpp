// The plans of the reports as they are composed: none reads all orders but out of an index that is
// made for it. What they count is tested in tests/app/actions/ReportsTest.cpp.

#include "db/ReportStore.h"

#include "db/SqlCatalog.h"
#include "db/SqliteConnection.h"
#include "tests/support/StoredJobs.h"

#include <sqlite3.h>

using namespace loopwright;

class ReportStoreTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();

    /// The steps that read a table, each as "SCAN s USING INDEX x".
    QStringList planOf(std::string_view label, const std::vector<std::string_view> &parts)
    {
        const std::string sql =
            "EXPLAIN QUERY PLAN " + SqlCatalog::embedded().compose(label, parts);
        sqlite3_stmt *handle = nullptr;
        if (sqlite3_prepare_v2(m_database.file().handle(), sql.c_str(), -1, &handle, nullptr) !=
            SQLITE_OK)
            qFatal("%s", sqlite3_errmsg(m_database.file().handle()));
        QStringList steps;
        while (sqlite3_step(handle) == SQLITE_ROW) {
            const QString step =
                QString::fromUtf8(reinterpret_cast<const char *>(sqlite3_column_text(handle, 3)));
            if (step.startsWith("SCAN") || step.startsWith("SEARCH"))
                steps << step;
        }
        sqlite3_finalize(handle);
        return steps;
    }

private slots:
    void plans_data()
    {
        QTest::addColumn<QString>("lines");
        QTest::addColumn<QString>("figures"); ///< the first step
        QTest::addColumn<QString>("orders");
        const auto row = [](const char *lines, const char *figures, const char *orders) {
            QTest::newRow(lines) << lines << figures << orders;
        };
        row("first_visit",
            "SEARCH s USING COVERING INDEX order_state_accepted (accepted_on>? AND accepted_on<?)",
            "SEARCH s USING INDEX order_state_accepted (accepted_on>? AND accepted_on<?)");
        const char *due = "SEARCH s USING INDEX order_state_open (due_date>? AND due_date<?)";
        row("failing", due, due);
        row("open_age", "SCAN s USING INDEX order_state_open",
            "SCAN s USING INDEX order_state_open");
        const char *outcome = "SEARCH s USING INDEX order_state_outcome (outcome=?)";
        row("exceptions", outcome, outcome);
        const char *repairs = "SCAN o USING INDEX service_order_repair";
        row("troubles", repairs, repairs);
    }
    void plans()
    {
        if (!m_database.isFile())
            QSKIP("plans are made by each engine in its own way");
        QFETCH(QString, lines);
        QFETCH(QString, figures);
        QFETCH(QString, orders);
        const std::string part = "report." + lines.toStdString();
        for (const auto &[label, end, first] :
             {std::tuple("report.figures", "report.by_key", figures),
              std::tuple("report.orders", "report.behind", orders)}) {
            const QStringList steps = planOf(label, {part, end});
            QVERIFY(!steps.isEmpty());
            QCOMPARE(steps.first(), first);
            for (const QString &step : steps.mid(1))
                QVERIFY2(step.startsWith("SEARCH"), qPrintable(steps.join("; ")));
        }
    }
    /// The register of instruments is small; of the facts an index alone is read.
    void instrumentsReadTheRegisterAndAnIndex()
    {
        if (!m_database.isFile())
            QSKIP("plans are made by each engine in its own way");
        const QStringList walks{"SCAN i USING INDEX sqlite_autoindex_instrument_1", "SCAN i",
                                "SCAN fact USING COVERING INDEX fact_instrument", "SCAN n",
                                "SCAN f"};
        for (const QStringList &steps :
             {planOf("report.instruments", {}),
              planOf("report.orders", {"report.calibration", "report.behind"})})
            for (const QString &step : steps)
                QVERIFY2(step.startsWith("SEARCH") || walks.contains(step),
                         qPrintable(steps.join("; ")));
    }
};

QTEST_GUILESS_MAIN(ReportStoreTest)
#include "ReportStoreTest.moc"
