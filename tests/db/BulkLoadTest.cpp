#include "db/BulkLoad.h"

#include "db/Connection.h"
#include "tests/support/StoredJobs.h"

#include <QFileInfo>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

class BulkLoadTest : public QObject
{
    Q_OBJECT
    QTemporaryDir m_folder;
    QString m_path;

    Database opened() const
    {
        auto database = Database::open(m_path);
        if (!database)
            qFatal("%s", qPrintable(database.error().text()));
        return std::move(*database);
    }
    static QString journalOf(const Database &database)
    {
        return *database.connection().text("PRAGMA journal_mode");
    }

private slots:
    void init() { m_path = m_folder.filePath(QString(QTest::currentTestFunction()) + ".sqlite"); }
    void whatIsCommittedIsThere()
    {
        Database database = opened();
        {
            const BulkLoad load(database);
            QVERIFY_RESULT(load.result());
            QCOMPARE(journalOf(database), "delete");
            QVERIFY_RESULT(jobs::addOffice(database));
        }
        QCOMPARE(journalOf(database), "wal");
        QCOMPARE(OfficeStore(opened()).all()->size(), 1U);
    }
    void whatIsBrokenOffLeavesNothing()
    {
        Database database = opened();
        {
            const BulkLoad load(database);
            QVERIFY_RESULT(load.result());
            auto transaction = Transaction::begin(database);
            QVERIFY_RESULT(transaction);
            QVERIFY_RESULT(OfficeStore::put(*transaction, {"NORTH", "North exchange", "ni2"}, {}));
        }
        QCOMPARE(journalOf(database), "wal");
        QVERIFY(OfficeStore(database).all()->empty());
        QVERIFY(!QFileInfo::exists(m_path + "-journal"));
    }
    void anotherProgramsDatabaseIsLeftAlone()
    {
        const Database other = opened();
        QVERIFY_RESULT(OfficeStore(other).all());
        Database database = opened();
        database.setPatience(50);
        {
            const BulkLoad load(database);
            QVERIFY(!load.result());
            QCOMPARE(load.result().error().code, ErrorCode::Busy);
        }
        QCOMPARE(journalOf(database), "wal");
        QVERIFY_RESULT(jobs::addOffice(database)); // as ever
        QCOMPARE(OfficeStore(other).all()->size(), 1U);
    }
    /// Statistics are counted once a table has outgrown them, and not before.
    void statisticsAreKept()
    {
        Database database = opened();
        const auto counted = [&database] {
            return database.connection().number("SELECT count(*) FROM sqlite_stat1").value_or(-1);
        };
        QVERIFY_RESULT(database.keepStatistics());
        QVERIFY_RESULT(jobs::addOffice(database));
        for (int i = 0; i < 40; ++i) {
            const QString n = QString::number(100 + i);
            QVERIFY_RESULT(jobs::addOrder(
                database, jobs::changed(jobs::briFields(), {{"order_number", "A-" + n},
                                                            {"circuit_number", "C-" + n}})));
        }
        QVERIFY_RESULT(database.keepStatistics());
        QVERIFY(counted() > 0);
        const auto version = database.dataVersion();
        QVERIFY_RESULT(database.keepStatistics());
        QCOMPARE(*database.dataVersion(), *version);
        QVERIFY_RESULT(database.keepStatistics(Database::Statistics::All));
        QVERIFY_RESULT(database.checkIntegrity());
    }
};

QTEST_GUILESS_MAIN(BulkLoadTest)
#include "BulkLoadTest.moc"
