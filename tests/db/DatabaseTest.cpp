#include "db/Database.h"

#include "db/SqliteConnection.h"
#include "tests/support/Records.h"
#include "tests/support/SmallDisk.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QThread>

#include <iostream>
#include <sqlite3.h>
#include <sys/stat.h>
#include <thread>
#include <unistd.h>

using namespace loopwright;
using Access = Database::Access;

namespace {

/// Opens as somebody who is not root, to whom permissions apply; says what came of it.
int openAsNobody(const QString &path)
{
    if (::getuid() == 0 && (::setgid(65534) != 0 || ::setuid(65534) != 0))
        return 1;
    const auto opened = Database::open(path);
    std::cout << qPrintable(opened ? QString("opened")
                                   : errorName(opened.error().code) + ": " + opened.error().message)
              << std::endl;
    return 0;
}

/// The other program: takes the whole file for itself until its standard input ends.
int holdLock(const char *path)
{
    sqlite3 *handle = nullptr;
    if (sqlite3_open(path, &handle) != SQLITE_OK ||
        sqlite3_exec(handle, "PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE", nullptr, nullptr,
                     nullptr) != SQLITE_OK)
        return 1;
    std::cout << "locked" << std::endl;
    std::cin.get();
    sqlite3_close(handle);
    return 0;
}

} // namespace

class DatabaseTest : public QObject
{
    Q_OBJECT
    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_path;

    void write(const QByteArray &bytes)
    {
        QFile file(m_path);
        QVERIFY(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
        QCOMPARE(file.write(bytes), bytes.size());
    }
    QByteArray read()
    {
        QFile file(m_path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    void makeRecords()
    {
        QVERIFY_RESULT(Database::open(m_path));
        QVERIFY(!QFile::exists(m_path + "-wal")); // closed properly
    }
    void verifyRefused(const QString &message, Access access = Access::ReadWrite,
                       ErrorCode code = ErrorCode::DatabaseTrouble)
    {
        const QByteArray before = read();
        const auto opened = Database::open(m_path, access);
        QVERIFY(!opened);
        QCOMPARE(errorName(opened.error().code), errorName(code));
        QCOMPARE(opened.error().place, m_path);
        QVERIFY2(opened.error().message.contains(message), qPrintable(opened.error().message));
        QCOMPARE(read(), before);
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_path = m_folder->filePath("records.sqlite");
    }
    void makesFileAndFolder()
    {
        m_path = m_folder->filePath("a/b/records.sqlite");
        {
            const auto opened = Database::open(m_path);
            QVERIFY_RESULT(opened);
            QCOMPARE(opened->outcome(), Migrator::Outcome::Created);
            QCOMPARE(QDir(QFileInfo(m_path).path()).entryList({"*.unfinished*"}), QStringList());
            SqliteConnection &connection = opened->file();
            QCOMPARE(*connection.text("PRAGMA journal_mode"), "wal");
            QCOMPARE(*connection.number("PRAGMA synchronous"), 2);
            QCOMPARE(*connection.number("PRAGMA foreign_keys"), 1);
            QCOMPARE(connection.setPatience(1), 2500);
            QCOMPARE(*connection.number("PRAGMA application_id"), applicationId);
            QVERIFY_RESULT(opened->checkIntegrity());
        }
        const auto again = Database::open(m_path);
        QVERIFY_RESULT(again);
        QCOMPARE(again->outcome(), Migrator::Outcome::Current);
        QCOMPARE(*again->connection().number("PRAGMA foreign_keys"), 1);
    }
    void opensInMemory()
    {
        const Database database = recordsInMemory();
        QCOMPARE(database.outcome(), Migrator::Outcome::Created);
    }
    void moves()
    {
        Database database = recordsInMemory();
        Database other = std::move(database);
        QVERIFY_RESULT(other.checkIntegrity());
        database = std::move(other);
        QVERIFY_RESULT(database.checkIntegrity());
    }
    void anEmptyFileIsNotTakenForNew()
    {
        write({});
        const QString log = m_path + "-wal"; // SQLite removes that of a file of no bytes
        QVERIFY(QFile(log).open(QIODevice::WriteOnly));
        for (const Access access : {Access::ReadWrite, Access::ReadOnly})
            verifyRefused("is empty, and was not taken for new records", access);
        QCOMPARE(QFileInfo(m_path).size(), 0);
        QVERIFY(QFile::exists(log));
        QVERIFY(QFile::remove(log) && QFile::remove(m_path));
        QCOMPARE(Database::open(m_path)->outcome(), Migrator::Outcome::Created);
    }
    void aDatabaseWithoutTablesIsNotTakenForNew()
    {
        sqlite3 *handle = nullptr;
        QCOMPARE(sqlite3_open(QFile::encodeName(m_path).constData(), &handle), SQLITE_OK);
        QCOMPARE(sqlite3_exec(handle, "CREATE TABLE song (title TEXT); DROP TABLE song", nullptr,
                              nullptr, nullptr),
                 SQLITE_OK);
        sqlite3_close(handle);
        for (const Access access : {Access::ReadWrite, Access::ReadOnly})
            verifyRefused("is an empty database", access);
    }
    void aFolderIsNoDatabase()
    {
        QVERIFY(QDir().mkpath(m_path));
        verifyRefused("is not a file");
    }
    void notADatabase_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::newRow("text") << QByteArray("order_number,order_type\n");
        QTest::newRow("short") << QByteArray("x");
        QTest::newRow("long") << QByteArray(100'000, 'x');
        QTest::newRow("zeros") << QByteArray(8192, '\0');
    }
    void notADatabase()
    {
        QFETCH(QByteArray, bytes);
        write(bytes);
        verifyRefused("is not a database");
        verifyRefused("is not a database", Access::ReadOnly);
    }
    void truncated_data()
    {
        QTest::addColumn<int>("size");
        for (const int size : {10, 16, 50, 100, 2000, 4096, 8192, 20'000})
            QTest::newRow(qPrintable(QString::number(size))) << size;
    }
    void truncated()
    {
        QFETCH(int, size);
        makeRecords();
        write(read().left(size));
        const auto opened = Database::open(m_path);
        QVERIFY(!opened);
        QCOMPARE(errorName(opened.error().code), errorName(ErrorCode::DatabaseTrouble));
        QCOMPARE(read().size(), size);
    }
    void damageInTheMiddleIsFoundOnDemand()
    {
        makeRecords();
        QByteArray bytes = read();
        // The third page and all after it but the last.
        bytes.replace(2 * 4096, bytes.size() - 3 * 4096, QByteArray(bytes.size() - 3 * 4096, 'x'));
        write(bytes);
        const auto opened = Database::open(m_path);
        if (!opened) {
            QCOMPARE(errorName(opened.error().code), errorName(ErrorCode::DatabaseTrouble));
            return;
        }
        const auto checked = opened->checkIntegrity();
        QVERIFY(!checked);
        QVERIFY2(checked.error().message.contains("damaged"), qPrintable(checked.error().message));
    }
    void anotherProgramsDatabase()
    {
        sqlite3 *handle = nullptr;
        QCOMPARE(sqlite3_open(QFile::encodeName(m_path).constData(), &handle), SQLITE_OK);
        QCOMPARE(sqlite3_exec(handle, "CREATE TABLE song (title TEXT)", nullptr, nullptr, nullptr),
                 SQLITE_OK);
        sqlite3_close(handle);
        verifyRefused("another program");
    }
    void missingForReading() { verifyRefused("does not exist", Access::ReadOnly); }
    void lockedByAnotherProcess()
    {
        makeRecords();
        QProcess other;
        other.start(QCoreApplication::applicationFilePath(), {"hold-lock", m_path});
        QVERIFY(other.waitForReadyRead());
        QCOMPARE(other.readAll().trimmed(), QByteArray("locked"));
        for (const Access access : {Access::ReadWrite, Access::ReadOnly})
            verifyRefused("locked by another program", access, ErrorCode::Busy);
        other.write("\n");
        QVERIFY(other.waitForFinished());
        QVERIFY_RESULT(Database::open(m_path));
    }
    void anotherProgramLeavesTheLogOfAnOpenWindowAlone()
    {
        makeRecords();
        const auto window = Database::open(m_path);
        QVERIFY_RESULT(window);
        QVERIFY_RESULT(Database::open(m_path)); // as a search in a worker thread, and let go
        QVERIFY(QFileInfo::exists(m_path + "-wal"));
        QProcess other;
        other.start(QCoreApplication::applicationFilePath(), {"open", m_path});
        QVERIFY(other.waitForFinished());
        QCOMPARE(other.exitCode(), 0);
        QVERIFY2(QFileInfo::exists(m_path + "-wal"),
                 "what the window writes next would go into a log that nobody finds");
    }
    void throughALink()
    {
        makeRecords();
        QTemporaryDir elsewhere;
        const QString link = elsewhere.filePath("linked.sqlite");
        QVERIFY(QFile::link(m_path, link));
        for (const Access access : {Access::ReadWrite, Access::ReadOnly}) {
            const auto opened = Database::open(link, access);
            QVERIFY_RESULT(opened);
            QCOMPARE(opened->path(), m_path);
        }
        QVERIFY(QFileInfo(link).isSymLink());
        QVERIFY(QFile::remove(link) && QFile::link(elsewhere.filePath("gone"), link));
        QCOMPARE(Database::open(link, Access::ReadOnly).error().code, ErrorCode::DatabaseTrouble);
    }
    void readsOnly()
    {
        makeRecords();
        auto opened = Database::open(m_path, Access::ReadOnly);
        QVERIFY_RESULT(opened);
        const auto transaction = Transaction::begin(*opened);
        QVERIFY(!transaction);
        QVERIFY2(transaction.error().message.contains("read-only"),
                 qPrintable(transaction.error().message));
    }
    void permissionsAreToldApart_data()
    {
        QTest::addColumn<int>("file");
        QTest::addColumn<int>("folder");
        QTest::addColumn<QString>("said");
        QTest::newRow("all allowed") << 0666 << 0777 << "opened";
        QTest::newRow("file read-only")
            << 0444 << 0777 << "database: the database cannot be written: it is read-only";
        QTest::newRow("file not readable") << 0 << 0777 << "database: cannot be read";
        QTest::newRow("folder read-only")
            << 0666 << 0555 << "database: the folder of the database cannot be written";
    }
    void permissionsAreToldApart()
    {
        QFETCH(int, file);
        QFETCH(int, folder);
        QFETCH(QString, said);
        makeRecords();
        QCOMPARE(::chmod(QFile::encodeName(m_path).constData(), mode_t(file)), 0);
        QCOMPARE(::chmod(QFile::encodeName(m_folder->path()).constData(), mode_t(folder)), 0);
        QProcess other;
        other.start(QCoreApplication::applicationFilePath(), {"open-as-nobody", m_path});
        QVERIFY(other.waitForFinished());
        ::chmod(QFile::encodeName(m_folder->path()).constData(), 0700);
        if (other.exitCode() != 0 || other.readAllStandardError().contains("Permission denied"))
            QSKIP("the test program cannot be run by somebody else here");
        const QString answer = QString::fromUtf8(other.readAllStandardOutput()).trimmed();
        QVERIFY2(answer.startsWith(said), qPrintable(answer));
    }
    void readOnlyDisk()
    {
        SmallDisk disk("2m");
        if (!disk.mounted())
            QSKIP("needs root, to mount a small disk");
        m_path = disk.file("records.sqlite");
        makeRecords();
        QVERIFY(disk.makeReadOnly());
        verifyRefused("cannot be written");
        const auto opened = Database::open(m_path, Access::ReadOnly);
        QVERIFY_RESULT(opened);
        QVERIFY_RESULT(opened->checkIntegrity());
        m_path = disk.file("new/records.sqlite");
        verifyRefused("folder of the database cannot be made");
    }
    void fullDiskLeavesNothingBehind()
    {
        SmallDisk disk("1m");
        if (!disk.mounted())
            QSKIP("needs root, to mount a small disk");
        disk.fill("filler");
        m_path = disk.file("records.sqlite");
        const auto opened = Database::open(m_path);
        QVERIFY(!opened);
        QVERIFY2(opened.error().code == ErrorCode::DiskTrouble, qPrintable(opened.error().text()));
        QCOMPARE(QDir(QFileInfo(m_path).path()).entryList(QDir::Files), QStringList{"filler"});
    }
    void twoProgramsMakeItAtTheSameTime()
    {
        QList<QProcess *> others;
        for (int i = 0; i < 6; ++i) {
            others << new QProcess(this);
            others.last()->start(QCoreApplication::applicationFilePath(), {"open", m_path});
        }
        for (QProcess *other : others) {
            QVERIFY(other->waitForFinished());
            QCOMPARE(other->exitCode(), 0);
        }
        QCOMPARE(m_folder->isValid() ? QDir(m_folder->path()).entryList(QDir::Files)
                                     : QStringList(),
                 QStringList{"records.sqlite"});
    }

    void anInterruptEndsWhatRunsAndWhatComes()
    {
        auto database = Database::open(m_path);
        QVERIFY(database);
        SqliteConnection &connection = database->file();
        std::thread other([&] {
            QThread::msleep(100);
            database->interrupt();
        });
        // Would take hours.
        const auto counted = connection.number("WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT "
                                               "i + 1 FROM n) SELECT count(*) FROM n");
        other.join();
        QVERIFY(!counted);
        QCOMPARE(counted.error().code, ErrorCode::Refused);
        const auto started = connection.mayStart();
        QVERIFY(!started);
        QCOMPARE(started.error().code, ErrorCode::Refused);
        database->resume();
        QVERIFY(connection.mayStart());
        QCOMPARE(connection.number("SELECT 7").value_or(0), 7);
    }
};

int main(int argc, char **argv)
{
    const QByteArray task = argc == 3 ? argv[1] : "";
    if (task == "hold-lock")
        return holdLock(argv[2]);
    const QCoreApplication application(argc, argv);
    if (task == "open-as-nobody")
        return openAsNobody(QString::fromLocal8Bit(argv[2]));
    if (task == "open")
        return Database::open(QString::fromLocal8Bit(argv[2])) ? 0 : 1;
    DatabaseTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "DatabaseTest.moc"
