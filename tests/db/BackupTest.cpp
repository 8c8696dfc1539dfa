#include "db/Backup.h"

#include "db/Connection.h"
#include "db/EventStore.h"
#include "db/HistoryCheck.h"
#include "db/MetaStore.h"
#include "tests/support/SmallDisk.h"
#include "tests/support/StoredJobs.h"
#include "tests/support/Tamper.h"

#include <QDir>
#include <QProcess>
#include <QTemporaryDir>

#include <unistd.h>

using namespace loopwright;

class BackupTest : public QObject
{
    Q_OBJECT
    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_records, m_backup;

    QStringList files() const { return QDir(m_folder->path()).entryList(QDir::Files, QDir::Name); }
    static QByteArray read(const QString &path)
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    static void write(const QString &path, const QByteArray &bytes)
    {
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        QCOMPARE(file.write(bytes), bytes.size());
    }
    static qint64 orders(const QString &path)
    {
        const auto database = Database::open(path, Database::Access::ReadOnly);
        return database ? *OrderStore(*database).count() : -1;
    }
    void addSecondOrder(Database &database)
    {
        QVERIFY_RESULT(
            jobs::addOrder(database, jobs::changed(jobs::briFields(), {{"order_number", "A-2"}})));
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_records = m_folder->filePath("records.sqlite");
        m_backup = m_folder->filePath("backup.sqlite");
        auto database = Database::open(m_records);
        QVERIFY_RESULT(database);
        QVERIFY_RESULT(jobs::addWholeJob(*database));
    }
    void aBackupIsWholeAndOneFile()
    {
        auto database = Database::open(m_records);
        QVERIFY_RESULT(database);
        qint64 last = 0, all = -1;
        QVERIFY_RESULT(backUp(*database, m_backup, [&](qint64 done, qint64 total) {
            last = done;
            all = total;
            return true;
        }));
        QCOMPARE(last, all);
        QCOMPARE(files().filter("backup"), QStringList{"backup.sqlite"});
        const auto copy = Database::open(m_backup, Database::Access::ReadOnly);
        QVERIFY_RESULT(copy);
        QVERIFY_RESULT(copy->checkIntegrity());
        QCOMPARE(checkHistory(*copy)->events, 5);
        QVERIFY(checkHistory(*copy)->faults.empty());
    }
    void isTakenWhileAnotherConnectionWrites()
    {
        auto database = Database::open(m_records);
        auto other = Database::open(m_records);
        QVERIFY_RESULT(database);
        QVERIFY_RESULT(other);
        int written = 0;
        QVERIFY_RESULT(backUp(*database, m_backup, [&](qint64, qint64) {
            written += jobs::addOffice(*other, QString("W%1").arg(written)) ? 1 : 0;
            return true;
        }));
        QVERIFY(written > 0);
        QCOMPARE(orders(m_backup), 1);
    }
    void aCancelledBackupLeavesTheEarlierOne()
    {
        auto database = Database::open(m_records);
        QVERIFY_RESULT(database);
        QVERIFY_RESULT(backUp(*database, m_backup));
        const QByteArray earlier = read(m_backup);
        addSecondOrder(*database);
        const auto done = backUp(*database, m_backup, [](qint64, qint64) { return false; });
        if (done) // so small that it was done in the first step
            return;
        QCOMPARE(done.error().code, ErrorCode::Refused);
        QCOMPARE(read(m_backup), earlier);
        QCOMPARE(files().filter("unfinished"), QStringList());
    }
    /// What a killed process left goes; what a running one has begun stays.
    void leftOvers()
    {
        QProcess gone;
        gone.start("true", QStringList());
        const QString dead = QString(".unfinished-%1-1").arg(gone.processId());
        QVERIFY(gone.waitForFinished());
        const QString working = QString(".unfinished-%1-1").arg(getppid());
        for (const QString &left : QStringList{m_backup + dead, m_backup + dead + "-journal",
                                               m_records + dead, m_backup + working})
            write(left, "half");
        auto database = Database::open(m_records);
        QVERIFY_RESULT(database);
        QVERIFY_RESULT(backUp(*database, m_backup));
        QCOMPARE(files().filter("unfinished"),
                 (QStringList{"backup.sqlite" + working, "records.sqlite" + dead}));
        database = failure(ErrorCode::Usage, "closed"); // restore() needs it for itself
        QVERIFY_RESULT(restore(m_backup, m_records, sampleEvent()));
        QCOMPARE(files().filter("unfinished"), QStringList{"backup.sqlite" + working});
    }
    void aBrokenHistoryIsNotBackedUpOverAGoodOne()
    {
        auto database = Database::open(m_records);
        QVERIFY_RESULT(database);
        QVERIFY_RESULT(backUp(*database, m_backup));
        const QByteArray good = read(m_backup);
        tamper(m_records, "UPDATE fact SET content = replace(content, '28.4', '18.4')");
        const auto done = backUp(*database, m_backup);
        QVERIFY(!done);
        QCOMPARE(done.error().code, ErrorCode::DatabaseTrouble);
        QVERIFY2(done.error().message.contains("circuit:C-77 event 2"),
                 qPrintable(done.error().text()));
        QCOMPARE(read(m_backup), good);
        QCOMPARE(files().filter("unfinished"), QStringList());
    }
    void placesThatCannotBe()
    {
        auto database = Database::open(m_records);
        QVERIFY_RESULT(database);
        QCOMPARE(backUp(*database, m_records).error().code, ErrorCode::Usage);
        QCOMPARE(backUp(*database, m_folder->filePath("no/such/b.sqlite")).error().code,
                 ErrorCode::DiskTrouble);
    }
    void onlyABackupIsReplaced_data()
    {
        QTest::addColumn<QString>("there");
        for (const char *there : {"empty", "text", "records", "database"})
            QTest::newRow(there) << there;
    }
    void onlyABackupIsReplaced()
    {
        QFETCH(QString, there);
        auto database = Database::open(m_records);
        QVERIFY_RESULT(database);
        if (there == "records")
            QVERIFY_RESULT(Database::open(m_backup));
        else if (there == "database")
            ForeignProgram(m_backup).run("CREATE TABLE t (x)");
        else
            write(m_backup, there == "empty" ? "" : "my notes");
        const QByteArray before = read(m_backup);
        const auto done = backUp(*database, m_backup);
        QVERIFY(!done);
        QCOMPARE(errorName(done.error().code), errorName(ErrorCode::Usage));
        QCOMPARE(read(m_backup), before);
        QVERIFY(QFile::remove(m_backup));
        QVERIFY_RESULT(backUp(*database, m_backup));
        QVERIFY_RESULT(backUp(*database, m_backup));
    }
    void nobodyWorksInABackup()
    {
        auto database = Database::open(m_records);
        QVERIFY_RESULT(database);
        QVERIFY_RESULT(backUp(*database, m_backup));
        const auto opened = Database::open(m_backup);
        QVERIFY(!opened);
        QVERIFY(opened.error().message.contains("is a backup"));
    }
    void aFullDiskLeavesNothing()
    {
        SmallDisk disk("128k");
        if (!disk.mounted())
            QSKIP("needs root, to mount a small disk");
        auto database = Database::open(m_records);
        QVERIFY_RESULT(database);
        const auto done = backUp(*database, disk.file("b.sqlite"));
        QVERIFY(!done);
        QCOMPARE(errorName(done.error().code), errorName(ErrorCode::DiskTrouble));
        QCOMPARE(done.error().place, disk.file("b.sqlite"));
        QVERIFY(QDir(QFileInfo(disk.file("b.sqlite")).path()).isEmpty());
    }
    void restoresAndKeepsThePresent()
    {
        {
            auto database = Database::open(m_records);
            QVERIFY_RESULT(database);
            QVERIFY_RESULT(backUp(*database, m_backup));
            addSecondOrder(*database);
        }
        QCOMPARE(orders(m_records), 2);
        const auto kept = restore(m_backup, m_records, sampleEvent());
        QVERIFY_RESULT(kept);
        QCOMPARE(*kept, m_records + ".before-restore");
        QCOMPARE(orders(m_records), 1);
        QCOMPARE(orders(*kept), 2);
        QCOMPARE(*restore(m_backup, m_records, sampleEvent()), m_records + ".before-restore-2");
        QCOMPARE(files(),
                 (QStringList{"backup.sqlite", "records.sqlite", "records.sqlite.before-restore",
                              "records.sqlite.before-restore-2"}));
        QVERIFY_RESULT(Database::open(m_records));
    }
    void theRestoredRecordsAreAStationOfTheirOwn()
    {
        LogHead head;
        {
            auto database = Database::open(m_records);
            QVERIFY_RESULT(database);
            head = *EventStore(*database).logHead();
            QVERIFY_RESULT(backUp(*database, m_backup));
        }
        QVERIFY_RESULT(restore(m_backup, m_records, sampleEvent()));
        auto restored = Database::open(m_records);
        QVERIFY_RESULT(restored);
        const LogHead now = *EventStore(*restored).logHead();
        QVERIFY(now.station != head.station);
        QCOMPARE(now.position, head.position + 1);
        const auto findings = checkHistory(*restored, {}, {head}); // witnessed before
        QVERIFY_RESULT(findings);
        QCOMPARE(findings->faults, std::vector<HistoryFault>());
        const QString told = *restored->connection().text(
            "SELECT kind || ' ' || actor || ' ' || (detail ->> '$.head.station') || ' ' ||"
            " (detail ->> '$.station') FROM event ORDER BY log_position DESC LIMIT 1");
        QCOMPARE(told, QString("restored A. Rivera %1 %2").arg(head.station, now.station));
        // Both go on: their heads are not taken for each other's.
        QVERIFY_RESULT(jobs::addOffice(*restored, "WEST"));
        QVERIFY(checkHistory(*restored)->faults.empty());
    }
    void aPoisonedBackupIsNotRestored_data()
    {
        QTest::addColumn<QByteArray>("sql");
        for (const char *sql :
             {"CREATE TRIGGER poison AFTER INSERT ON fact BEGIN DELETE FROM draft; END",
              "DROP TRIGGER fact_no_delete", "DROP INDEX fact_order",
              "CREATE VIEW extra AS SELECT * FROM fact", "CREATE TABLE extra (x)",
              "DROP TRIGGER fact_no_update; CREATE TRIGGER fact_no_update BEFORE UPDATE ON fact"
              " BEGIN SELECT 1; END"})
            QTest::newRow(sql) << QByteArray(sql);
    }
    void aPoisonedBackupIsNotRestored()
    {
        QFETCH(QByteArray, sql);
        {
            auto database = Database::open(m_records);
            QVERIFY_RESULT(database);
            QVERIFY_RESULT(backUp(*database, m_backup));
        }
        ForeignProgram(m_backup).run(sql);
        const QByteArray before = read(m_records);
        const auto done = restore(m_backup, m_records, sampleEvent());
        QVERIFY(!done);
        QVERIFY2(done.error().message.contains("was changed by another program"),
                 qPrintable(done.error().text()));
        QCOMPARE(read(m_records), before);
        QCOMPARE(files().filter("unfinished"), QStringList());
    }
    void restoresWhereThereIsNothing()
    {
        {
            const auto database = Database::open(m_records);
            QVERIFY_RESULT(database);
            QVERIFY_RESULT(backUp(*database, m_backup));
        }
        const QString place = m_folder->filePath("new/place.sqlite");
        QCOMPARE(*restore(m_backup, place, sampleEvent()), QString());
        QCOMPARE(orders(place), 1);
    }
    void restoresOverADamagedOne()
    {
        {
            const auto database = Database::open(m_records);
            QVERIFY_RESULT(database);
            QVERIFY_RESULT(backUp(*database, m_backup));
        }
        const QByteArray damaged = read(m_records).left(5000);
        QVERIFY(QFile::remove(m_records));
        write(m_records, damaged);
        write(m_records + "-wal", "left behind");
        const auto kept = restore(m_backup, m_records, sampleEvent());
        QVERIFY_RESULT(kept);
        QVERIFY(!QFile::exists(m_records + "-wal"));
        QCOMPARE(orders(m_records), 1);
        QCOMPARE(read(*kept), damaged);
    }
    void restoresOverAnEmptyOne()
    {
        {
            const auto database = Database::open(m_records);
            QVERIFY_RESULT(database);
            QVERIFY_RESULT(backUp(*database, m_backup));
        }
        QVERIFY(QFile::remove(m_records));
        write(m_records, {});
        write(m_records + "-wal", "left behind");
        QVERIFY(!Database::open(m_records));
        const auto kept = restore(m_backup, m_records, sampleEvent());
        QVERIFY_RESULT(kept);
        QVERIFY(!QFile::exists(m_records + "-wal"));
        QCOMPARE(orders(m_records), 1);
        QVERIFY(QFile::exists(*kept));
        QCOMPARE(read(*kept), QByteArray());
        QCOMPARE(read(*kept + "-wal"), QByteArray("left behind"));
    }
    void doesNotRestoreUnderAProgramThatHasItOpen()
    {
        auto database = Database::open(m_records);
        QVERIFY_RESULT(database);
        QVERIFY_RESULT(backUp(*database, m_backup));
        addSecondOrder(*database);
        const auto done = restore(m_backup, m_records, sampleEvent());
        QVERIFY(!done);
        QVERIFY2(done.error().message.contains("open in a program"),
                 qPrintable(done.error().text()));
        QCOMPARE(*OrderStore(*database).count(), 2);
        QVERIFY_RESULT(jobs::addOffice(*database, "WEST"));
        QCOMPARE(files().filter("unfinished"), QStringList());
        QCOMPARE(files().filter("before"), QStringList());
    }
    void aBackupThatIsNotWholeIsNotRestored_data()
    {
        QTest::addColumn<QString>("damage");
        for (const char *damage : {"missing", "empty", "text", "truncated", "history"})
            QTest::newRow(damage) << damage;
    }
    void aBackupThatIsNotWholeIsNotRestored()
    {
        QFETCH(QString, damage);
        {
            auto database = Database::open(m_records);
            QVERIFY_RESULT(database);
            QVERIFY_RESULT(backUp(*database, m_backup));
        }
        const QByteArray good = read(m_backup);
        if (damage == "history") {
            tamper(m_backup, "DELETE FROM event WHERE log_position = 2");
        } else {
            QVERIFY(QFile::remove(m_backup));
            const QMap<QString, QByteArray> left{
                {"empty", ""}, {"text", "hello"}, {"truncated", good.left(50'000)}};
            if (left.contains(damage))
                write(m_backup, left[damage]);
        }
        const QByteArray before = read(m_records);
        const auto done = restore(m_backup, m_records, sampleEvent());
        QVERIFY(!done);
        QVERIFY(done.error().code == ErrorCode::DatabaseTrouble || damage == "missing");
        QCOMPARE(read(m_records), before);
        QCOMPARE(files().filter("unfinished"), QStringList());
        QCOMPARE(files().filter("before"), QStringList());
    }
};

QTEST_GUILESS_MAIN(BackupTest)
#include "BackupTest.moc"
