#include "app/actions/Maintenance.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Board.h"
#include "app/actions/Evidence.h"
#include "app/actions/History.h"
#include "app/actions/LimitChanges.h"
#include "app/actions/Register.h"
#include "db/OfficeStore.h"
#include "tests/support/Office.h"

#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class MaintenanceTest : public QObject
{
    Q_OBJECT
private slots:
    void filledRecordsAreSoundAndRepeat()
    {
        QList<QByteArray> boards;
        for (int i = 0; i < 2; ++i) {
            auto records = Records::open(":memory:");
            QVERIFY(records && bringShippedLimits(**records));
            const auto filled = fillWithInvented(**records, 300, 7);
            QVERIFY2(filled, filled ? "" : qPrintable(filled.error().text()));
            const auto rows = boardRows(**records, {});
            QCOMPARE(rows->size(), 300U);
            QJsonArray board;
            for (const BoardRow &row : *rows) {
                QVERIFY2(!row.held, qPrintable(row.order + ": " + row.reason));
                board << row.toJson();
            }
            boards << canonicalJson(board);
            QVERIFY(auditIdentifiers(**records)->empty());
            QCOMPARE(verifyHistory(**records)->broken.size(), 0U);
            QCOMPARE(fillWithInvented(**records, 1, 7).error().code, ErrorCode::Refused);
        }
        QCOMPARE(boards[0], boards[1]);
    }
    void stoppedFillingChangesNothing()
    {
        auto records = Records::open(":memory:");
        QVERIFY(records && bringShippedLimits(**records));
        const auto filled =
            fillWithInvented(**records, 2000, 7, [](qint64 done, qint64) { return done < 1000; });
        QVERIFY(!filled);
        QCOMPARE(boardRows(**records, {})->size(), 0U);
        QVERIFY(OfficeStore((*records)->database()).all()->empty());
    }
    void exportIsWholeAndHidesTheUnpublished()
    {
        auto records = office();
        QVERIFY(importOrders(*records, csv({briFields()}), {"orders.csv"}));
        QTemporaryDir folder;
        const auto files = exportTables(*records, folder.filePath("out"), false);
        QVERIFY(files);
        bool found = false;
        for (const QString &path : *files) {
            QFile file(path);
            QVERIFY(file.open(QIODevice::ReadOnly));
            const QByteArray bytes = file.readAll();
            QVERIFY2(!bytes.contains(sentinel.toUtf8()), qPrintable(path));
            found = found || bytes.contains("Bright Bakery");
        }
        QVERIFY(found);
        const auto all = exportTables(*records, folder.filePath("all"), true);
        QCOMPARE(all->size(), files->size() + 1);
    }
    void exportHidesTheUnpublishedWhereTheyWereDialled()
    {
        auto records = office();
        OrderFields order = briFields();
        order["remarks"] = "the loopback is at " + sentinel;
        QVERIFY(importOrders(*records, csv({order}), {"orders.csv"}));
        const QString record = QString(R"({"order":"%1","facts":[
            {"kind":"call","at":"2026-03-05T10:00:00-06:00","channel":"B1","direction":"out",
             "service":"data","outcome":"ok","dn":"%2"},
            {"kind":"note","at":"2026-03-05T10:01:00-06:00","text":"called %2 twice"}]})")
                                   .arg(order["order_number"], sentinel);
        QVERIFY(recordFile(*records, record.toUtf8(), "job.json"));
        QVERIFY(decideOrder(*records, order["order_number"]));
        QTemporaryDir folder;
        for (const bool internal : {false, true}) {
            const auto files = exportTables(*records, folder.filePath("out"), internal);
            QVERIFY(files);
            int told = 0;
            for (const QString &path : *files) {
                QFile file(path);
                QVERIFY(file.open(QIODevice::ReadOnly));
                told += file.readAll().contains(sentinel.toUtf8()) ? 1 : 0;
            }
            QVERIFY2(internal ? told >= 4 : told == 0, qPrintable(QString::number(told)));
        }
    }
    void backupRestores()
    {
        QTemporaryDir folder;
        const QString path = folder.filePath("records.sqlite"),
                      backup = folder.filePath("backup.sqlite");
        {
            auto records = office(path);
            QVERIFY(importOrders(*records, csv({briFields()}), {"orders.csv"}));
            const auto done = backupTo(*records, backup);
            QVERIFY2(done, done ? "" : qPrintable(done.error().text()));
            QVERIFY(importOrders(*records, csv({analogFields()}), {"orders.csv"}));
        }
        // What is there says who may put something else in its place; a file that can be read no
        // more leaves it to the backup's register.
        const auto notHe = restoreFrom(backup, path, {"K7"});
        QVERIFY(!notHe);
        QCOMPARE(notHe.error().code, ErrorCode::Refused);
        const QString damaged = folder.filePath("damaged.sqlite");
        QVERIFY(QFile::copy(path, damaged));
        QFile file(damaged);
        QVERIFY(file.open(QIODevice::ReadWrite) && file.write(QByteArray(4096, 'x')) == 4096);
        file.close();
        QVERIFY(!restoreFrom(backup, damaged, {"K7"}));
        QVERIFY(restoreFrom(backup, damaged, {"S1"}));
        const auto restored = restoreFrom(backup, path, {"S1"});
        QVERIFY2(restored, restored ? "" : qPrintable(restored.error().text()));
        QCOMPARE(*restored, path + ".before-restore");
        auto records = Records::open(path);
        QVERIFY(records);
        QCOMPARE(boardRows(**records, {})->size(), 1U);
    }
};

QTEST_MAIN(MaintenanceTest)
#include "MaintenanceTest.moc"
