#include "app/actions/Maintenance.h"

#include "app/actions/Audit.h"
#include "app/actions/Board.h"
#include "app/actions/History.h"
#include "app/actions/Keys.h"
#include "app/actions/LimitChanges.h"
#include "app/actions/Register.h"
#include "app/actions/Troubles.h"
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
            QVERIFY(records);
            (*records)->setNow(Moment::parse(u"2026-11-02T09:00:00-06:00")); // of one day
            QVERIFY(bringShippedLimits(**records));
            const auto filled = fillWithInvented(**records, 300, 7);
            QVERIFY2(filled, filled ? "" : qPrintable(filled.error().text()));
            const auto rows = boardRows(**records, {});
            QVERIFY(rows->size() > 300U); // some circuits have a second order
            QJsonArray board;
            for (const BoardRow &row : *rows) {
                QVERIFY2(!row.held, qPrintable(row.order + ": " + row.reason));
                board << row.toJson((*records)->now().localDate());
            }
            boards << canonicalJson(board);
            const auto calls = troubles(**records, false);
            QVERIFY(calls && calls->size() > 5U);
            for (const Trouble &each : *calls)
                QVERIFY2(each.isOpen() != each.cause.has_value() && each.opened.msUtc > 0 &&
                             (!each.closed || each.opened < *each.closed),
                         qPrintable(each.sentence()));
            QVERIFY(auditIdentifiers(**records)->empty());
            const auto faults = auditDerived(**records);
            QVERIFY(faults);
            for (const DerivedFault &fault : *faults)
                QFAIL(qPrintable(fault.subject + ": " + fault.what));
            QCOMPARE(verifyHistory(**records)->broken.size(), 0U);
            QCOMPARE(fillWithInvented(**records, 1, 7).error().code, ErrorCode::Refused);
        }
        QCOMPARE(boards[0], boards[1]);
    }
    /// Whoever keeps a backup witnesses what was recorded until then.
    void aBackupBearsTheSignedHeadOfItsLog()
    {
        QTemporaryDir folder;
        const QString path = folder.filePath("records.sqlite"),
                      backup = folder.filePath("b.sqlite");
        auto records = office(path);
        QVERIFY(publicKeyFile(*records)); // makes the keys
        QVERIFY(backupTo(*records, backup));
        const auto heads = witnessesOf(backup);
        QVERIFY2(heads, heads ? "" : qPrintable(heads.error().text()));
        QCOMPARE(heads->heads.size(), 1U);
        QCOMPARE(heads->heads.front(), *logHead(*records));
        QVERIFY(!heads->heads.front().signature.isEmpty());
        QVERIFY(importOrders(*records, csv({briFields()}), {"orders.csv"}));
        QVERIFY(verifyHistory(*records, {}, *heads)->broken.empty());

        auto altered = *heads;
        altered.heads.front().head.digest = QByteArray(64, '0');
        QVERIFY(!verifyHistory(*records, {}, altered)->broken.empty());
        // Records that are older than the backup, as a copy without its log would be.
        const QString older = folder.filePath("older.sqlite");
        QVERIFY(backupTo(*records, backup)); // replaces both
        QVERIFY(witnessesOf(backup)->heads.front().head.position >
                heads->heads.front().head.position);
        auto early = office(older);
        const auto shorter = verifyHistory(*early, {}, *witnessesOf(backup));
        QVERIFY(shorter && !shorter->broken.empty());

        QVERIFY(QFile::remove(headBesideBackup(backup)));
        const auto none = witnessesOf(backup);
        QVERIFY(!none);
        QCOMPARE(none.error().place, headBesideBackup(backup));
    }
    void aHeadThatCannotBeWrittenIsTold()
    {
        QTemporaryDir folder;
        const QString backup = folder.filePath("b.sqlite");
        auto records = office(folder.filePath("records.sqlite"));
        QVERIFY(QDir().mkpath(headBesideBackup(backup))); // a folder in its place
        const auto done = backupTo(*records, backup);
        QVERIFY(!done);
        QCOMPARE(done.error().code, ErrorCode::DiskTrouble);
        QVERIFY2(done.error().message.startsWith("the backup is made"),
                 qPrintable(done.error().message));
        QVERIFY(QFile::exists(backup));
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
