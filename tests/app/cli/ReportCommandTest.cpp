// Reports on the command line, by the contract's fields and statuses.

#include "tests/support/CommandRun.h"
#include "tests/support/ReportRecords.h"

#include <QTemporaryDir>

using namespace loopwright;
using namespace loopwright::jobs;

class ReportCommandTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

    QString path(const QString &name) const { return m_folder.filePath(name); }
    Answered report(const QStringList &words, bool json = true) const
    {
        return call(QStringList{"report"} + words +
                    QStringList{"--db", path("records.sqlite"), "--now",
                                "2026-05-16T12:00:00-06:00", "--by", "D4"} +
                    (json ? QStringList{"--json"} : QStringList()));
    }

private slots:
    void initTestCase() { reportRecords(path("records.sqlite")); }

    void rowsHaveTheirFields_data()
    {
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QStringList>("figure");
        QTest::addColumn<QStringList>("order");
        const auto row = [](const char *kind, const QStringList &figure, const QStringList &order) {
            QTest::newRow(kind) << kind << figure << order;
        };
        row("first_visit", {"per", "orders", "met", "share", "no_visit"},
            {"accepted_on", "visits", "met"});
        row("failing", {"per", "criterion", "orders", "not_met", "share"},
            {"criterion", "due_date", "not_met"});
        row("open_age", {"per", "orders", "age", "oldest", "late", "share"},
            {"taken_on", "age", "late"});
        row("exceptions",
            {"per", "orders", "order_number", "customer", "criteria", "by", "at", "because"},
            {"accepted_on"});
        row("calibration",
            {"per", "orders", "instrument", "kind", "serial", "calibrated_on", "calibration_due",
             "overdue"},
            {"instrument", "calibration_due", "overdue"});
        row("troubles", {"per", "orders", "troubles", "repeats", "share"}, {"opened_on", "repeat"});
    }
    void rowsHaveTheirFields()
    {
        QFETCH(QString, kind);
        QFETCH(QStringList, figure);
        QFETCH(QStringList, order);
        const Answered figures = report({kind, "--per", "month"});
        COMPARE_STATUS(figures, ExitStatus::Yes);
        QVERIFY(!figures.array().isEmpty());
        QCOMPARE(keysOf(figures.array().first().toObject()),
                 QSet<QString>(figure.begin(), figure.end()));
        const Answered rows = report({kind, "--per", "month", "--rows"});
        COMPARE_STATUS(rows, ExitStatus::Yes);
        order +=
            QStringList{"per", "order_number", "circuit_number", "customer", "office", "installer"};
        QCOMPARE(keysOf(rows.array().first().toObject()),
                 QSet<QString>(order.begin(), order.end()));
        COMPARE_STATUS(report({kind}, false), ExitStatus::Yes);
        COMPARE_STATUS(report({kind, "--rows"}, false), ExitStatus::Yes);
    }

    void daysAndKeys()
    {
        const QStringList march{"--from", "2026-03-06", "--to", "2026-03-06"};
        const QJsonObject row = report(QStringList{"first_visit"} + march).array()[0].toObject();
        QCOMPARE(row["per"].toString(), "NORTH");
        QCOMPARE(row["orders"].toInt(), 2);
        QCOMPARE(row["met"].toInt(), 1);
        QCOMPARE(row["share"].toDouble(), 0.5);
        const QStringList installers{"first_visit", "--per", "installer", "--rows", "--key"};
        QCOMPARE(report(installers + QStringList{"K7"}).array().size(), 1);
        QCOMPARE(report(installers + QStringList{""}).array().size(), 4);
        QCOMPARE(report(installers + QStringList{"nobody"}).array().size(), 0);
        COMPARE_STATUS(report({"first_visit", "--to", "2020-01-01"}), ExitStatus::Yes);
        QCOMPARE(report({"first_visit", "--to", "2020-01-01"}).array(), QJsonArray());
        const Answered text = report({"first_visit", "--per", "cable"}, false);
        QVERIFY(text.out.contains("66.7 %"));
        QVERIFY(text.out.contains("5 orders were accepted, 3 of them on one visit (60.0 %)"));
    }

    /// Every figure opens its own: by its key and what else tells it apart.
    void theOrdersBehindOneFigure()
    {
        const QStringList failing{"failing", "--per", "cable"};
        const QJsonArray figures = report(failing).array();
        QVERIFY(figures.size() > 2);
        for (const QJsonValue &figure : figures) {
            const QString criterion = figure["criterion"].toString();
            const QJsonArray orders =
                report(failing + QStringList{"--rows", "--key", figure["per"].toString(),
                                             "--criterion", criterion})
                    .array();
            QCOMPARE(orders.size(), figure["orders"].toInt());
            for (const QJsonValue &order : orders)
                QCOMPARE(order["criterion"].toString(), criterion);
        }
        const QJsonArray run =
            report(failing + QStringList{"--rows", "--key", "18", "--criterion", "run"}).array();
        QCOMPARE(run.size(), 1);
        QCOMPARE(run[0]["order_number"].toString(), "A-1005");
        QCOMPARE(report({"calibration", "--rows", "--instrument", "TS-4"}).array().size(), 4);
        QCOMPARE(report({"calibration", "--rows", "--instrument", "TS-0"}).array().size(), 0);
        for (const QStringList &wrong : {QStringList{"failing", "--criterion", "run"},
                                         QStringList{"open_age", "--rows", "--criterion", "run"},
                                         QStringList{"failing", "--rows", "--criterion", "weather"},
                                         QStringList{"failing", "--rows", "--instrument", "TS-4"}})
            COMPARE_STATUS(report(wrong), ExitStatus::Usage);
    }

    void whatIsWrongUsage()
    {
        COMPARE_STATUS(report({}), ExitStatus::Usage);
        COMPARE_STATUS(report({"nothing"}), ExitStatus::Usage);
        COMPARE_STATUS(report({"failing", "--per", "moon"}), ExitStatus::Usage);
        COMPARE_STATUS(report({"failing", "--from", "2026-02-30"}), ExitStatus::Usage);
        COMPARE_STATUS(report({"failing", "--from", "2026-03-02", "--to", "2026-03-01"}),
                       ExitStatus::Usage);
        COMPARE_STATUS(report({"failing", "--key", "18"}), ExitStatus::Usage);
        COMPARE_STATUS(report({"failing", "--out", path("r.doc")}), ExitStatus::Usage);
        COMPARE_STATUS(report({"failing", "--rows", "--out", path("r.pdf")}), ExitStatus::Usage);
        QCOMPARE(QDir(m_folder.path()).entryList({"r.*"}, QDir::Files), QStringList());
    }

    /// Over invented years, by a script that counts the exported rows and shares no code with us.
    void anotherProgramCountsTheSame()
    {
        const QString now = "2026-11-27T12:00:00Z", records = path("years.sqlite"),
                      rows = path("rows");
        COMPARE_STATUS(callProgram({"fill", "--circuits", "150", "--db", records, "--now", now}),
                       ExitStatus::Yes);
        COMPARE_STATUS(callProgram({"export", "--out", rows, "--db", records, "--now", now}),
                       ExitStatus::Yes);
        QProcess script;
        script.start("python3", {LOOPWRIGHT_SOURCE_DIR "/tests/app/cli/reports_over_rows.py",
                                 LOOPWRIGHT_BIN_DIR "/loopwright-cli", records, rows, now});
        QVERIFY(script.waitForFinished(120'000));
        QCOMPARE(script.readAllStandardError(), QByteArray());
        const QByteArray said = script.readAllStandardOutput();
        QVERIFY2(said.endsWith(" figures agree\n") && said.split(' ').first().toInt() > 50,
                 said.constData());
    }

    void files()
    {
        for (const char *name : {"r.csv", "r.svg", "r.pdf"}) {
            const Answered answered = report({"first_visit", "--out", path(name)});
            COMPARE_STATUS(answered, ExitStatus::Yes);
            QCOMPARE(answered.array(), report({"first_visit"}).array()); // the rows all the same
            QVERIFY(QFileInfo(path(name)).size() > 0);
        }
        QCOMPARE(contentOf(path("r.csv")), "per,orders,met,no_visit,share\r\nNORTH,5,3,1,0.6\r\n");
        QVERIFY(contentOf(path("r.pdf")).startsWith("%PDF-"));
        COMPARE_STATUS(report({"first_visit", "--rows", "--out", path("o.csv")}), ExitStatus::Yes);
        QCOMPARE(contentOf(path("o.csv")).count("\r\n"), 6);
        COMPARE_STATUS(report({"first_visit", "--out", "/no/such/folder/r.csv"}),
                       ExitStatus::DiskTrouble);
        COMPARE_STATUS(report({"first_visit", "--out", path("records.sqlite")}), ExitStatus::Usage);
    }
};

QTEST_MAIN(ReportCommandTest)
#include "ReportCommandTest.moc"
