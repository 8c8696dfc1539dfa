#include "app/actions/DailyBackups.h"

#include "app/actions/Maintenance.h"
#include "db/Backup.h"
#include "tests/support/Office.h"
#include "tests/support/Tamper.h"

#include <QDir>
#include <QTest>

#include <sys/stat.h>

using namespace loopwright;

class DailyBackupsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<Records> m_records;

    QString path() const { return m_folder->filePath("records.sqlite"); }
    QDir backups() const { return QDir(dailyBackupFolder(path())); }
    QStringList files() const { return backups().entryList({"*.sqlite"}, QDir::Files, QDir::Name); }
    static QDate day(const char *text) { return QDate::fromString(text, Qt::ISODate); }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_records = jobs::office(path());
    }
    void oneOfEachDay()
    {
        QVERIFY(!newestDailyBackup(path()));
        const auto made = backUpDaily(*m_records, day("2026-03-04"));
        QVERIFY2(made && *made, made ? "" : qPrintable(made.error().text()));
        const auto again = backUpDaily(*m_records, day("2026-03-04"));
        QVERIFY(again && !*again);
        QVERIFY(backUpDaily(*m_records, day("2026-03-05")).value_or(false));
        QCOMPARE(files(), (QStringList{"2026-03-04.sqlite", "2026-03-05.sqlite"}));
        QCOMPARE(newestDailyBackup(path()), backups().filePath("2026-03-05.sqlite"));
        struct stat info = {};
        QCOMPARE(::stat(QFile::encodeName(backups().path()).constData(), &info), 0);
        QCOMPARE(int(info.st_mode & 07777), 0700);
    }
    void itCanBeRestored()
    {
        QVERIFY(backUpDaily(*m_records, day("2026-03-04")).value_or(false));
        m_records.reset();
        const auto kept = restoreFrom(*newestDailyBackup(path()), path(), {"S1"});
        QVERIFY2(kept, kept ? "" : qPrintable(kept.error().text()));
    }
    void generations_data()
    {
        QTest::addColumn<int>("daysAgo");
        QTest::addColumn<bool>("kept");
        // A backup on each of 500 days up to Wednesday, 4 March 2026.
        for (int i = 0; i < 7; ++i)
            QTest::addRow("%d days ago", i) << i << true;
        QTest::newRow("Monday of the week before last") << 9 << true; // 23 February
        QTest::newRow("the Tuesday after it") << 8 << false;
        QTest::newRow("16 February") << 16 << true;
        QTest::newRow("9 February") << 23 << true;
        QTest::newRow("2 February") << 30 << true;
        QTest::newRow("26 January, the fifth week") << 37 << false;
        QTest::newRow("1 February") << 31 << true;
        QTest::newRow("1 January") << 62 << true;
        QTest::newRow("2 January") << 61 << false;
        QTest::newRow("1 March 2025, the twelfth month") << 368 << true;
        QTest::newRow("1 February 2025, the thirteenth") << 396 << false;
    }
    void generations()
    {
        QFETCH(int, daysAgo);
        const QDate today = day("2026-03-04");
        QList<QDate> all;
        for (int i = 0; i < 500; ++i)
            all << today.addDays(-i);
        const QList<QDate> kept = keptBackups(all);
        QTEST(kept.contains(today.addDays(-daysAgo)), "kept");
        QVERIFY(kept.size() <= 7 + 4 + 12);
        QCOMPARE(keptBackups(kept), kept); // nothing more goes the next time on the same day
    }
    void whatIsRarelyOpenKeepsWhatItHas()
    {
        QList<QDate> few{day("2025-01-10"), day("2025-06-11"), day("2026-03-04")};
        QCOMPARE(keptBackups(few), few);
        QCOMPARE(keptBackups({}), QList<QDate>());
    }
    void oldOnesGoAndOtherFilesStay()
    {
        for (int i = 12; i >= 0; --i)
            QVERIFY(backUpDaily(*m_records, day("2026-03-04").addDays(-i)).value_or(false));
        QFile mine(backups().filePath("2026-02-20.sqlite")); // 12 days ago; not a backup any more
        QVERIFY(files().contains("2026-02-20.sqlite"));
        QVERIFY(mine.open(QIODevice::WriteOnly) && mine.write("mine") == 4);
        mine.close();
        QVERIFY(backUpDaily(*m_records, day("2026-03-05")).value_or(false));
        QVERIFY(files().contains("2026-02-20.sqlite"));
        QVERIFY(files().contains("2026-03-05.sqlite") && files().contains("2026-02-27.sqlite"));
        QVERIFY(!files().contains("2026-02-26.sqlite"));
        QVERIFY(backups().exists("2026-02-27.sqlite.head")); // each with its own
        QVERIFY(!backups().exists("2026-02-26.sqlite.head"));
    }
    void theFolderIsItsOwnersAlone()
    {
        const auto modeOf = [](const QString &path) {
            struct stat there;
            return ::stat(QFile::encodeName(path).constData(), &there) == 0 ? there.st_mode & 0777
                                                                            : 0;
        };
        const QString folder = backups().path();
        const mode_t before = ::umask(0);
        QVERIFY(backUpDaily(*m_records, day("2026-03-04")).value_or(false));
        QCOMPARE(modeOf(folder), 0700u);
        QCOMPARE(modeOf(backups().filePath("2026-03-04.sqlite")), 0600u);
        QCOMPARE(::chmod(QFile::encodeName(folder).constData(), 0755), 0);
        QVERIFY(backUpDaily(*m_records, day("2026-03-05")).value_or(false));
        ::umask(before);
        QCOMPARE(modeOf(folder), 0700u);
    }
    /// A broken history is not copied over good backups.
    void brokenRecordsAreNotBackedUp()
    {
        QVERIFY(backUpDaily(*m_records, day("2026-03-04")).value_or(false));
        m_records.reset();
        tamper(path(), "UPDATE office SET name = 'elsewhere'");
        m_records = std::move(*Records::open(path()));
        const auto made = backUpDaily(*m_records, day("2026-03-05"));
        QVERIFY(!made);
        QCOMPARE(made.error().code, ErrorCode::DatabaseTrouble);
        QCOMPARE(files(), QStringList{"2026-03-04.sqlite"});
    }
};

QTEST_GUILESS_MAIN(DailyBackupsTest)
#include "DailyBackupsTest.moc"
