#include "db/Migrator.h"

#include "core/base/Json.h"
#include "db/Connection.h"
#include "db/Database.h"
#include "db/SqlCatalog.h"
#include "tests/support/Records.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

using namespace loopwright;
using Outcome = Migrator::Outcome;
using Access = Database::Access;

namespace {

const Migration first{1, 1, "0001_first.sql",
                      "CREATE TABLE meta (key TEXT PRIMARY KEY, value TEXT);"
                      "CREATE TABLE a (x TEXT);"};
const Migration second{2, 2, "0002_second.sql",
                       "CREATE TABLE b (x TEXT);\nINSERT INTO b VALUES (';');"};
const Migration wrong{2, 2, "0002_wrong.sql", "CREATE TABLE b (x TEXT);\nSELECT nothing;"};
const Migration mild{2, 1, "0002_mild.sql", "CREATE TABLE b (x TEXT);"};
const Migration orphaning{2, 2, "0002_orphaning.sql",
                          "CREATE TABLE p (id INTEGER PRIMARY KEY);"
                          "CREATE TABLE c (p INTEGER REFERENCES p (id));"
                          "INSERT INTO c VALUES (7);"};

Migrator migratorOf(const std::vector<Migration> &migrations)
{
    return *Migrator::of(migrations);
}

} // namespace

class MigratorTest : public QObject
{
    Q_OBJECT
    QTemporaryDir m_folder;
    QString m_path;

    Result<Outcome> open(const std::vector<Migration> &migrations,
                         Access access = Access::ReadWrite)
    {
        const auto opened = Database::open(m_path, access, migratorOf(migrations));
        if (!opened)
            return failure(opened.error());
        return opened->outcome();
    }
    QByteArray bytes()
    {
        QFile file(m_path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

private slots:
    void init()
    {
        QDir(m_folder.path()).removeRecursively();
        QDir().mkpath(m_folder.path());
        m_path = m_folder.filePath("records.sqlite");
    }
    void createsThenFindsItCurrent()
    {
        QCOMPARE(*open({first, second}), Outcome::Created);
        QCOMPARE(*open({first, second}), Outcome::Current);
    }
    void upgradesAndKeepsACopy()
    {
        QCOMPARE(*open({first}), Outcome::Created);
        QCOMPARE(*open({first, second}), Outcome::Upgraded);
        QCOMPARE(*open({first, second}), Outcome::Current);
        const auto copy =
            Database::open(m_path + ".before-0002", Access::ReadOnly, migratorOf({first}));
        QVERIFY_RESULT(copy);
        QCOMPARE(copy->outcome(), Outcome::Current);
        QVERIFY_RESULT(copy->checkIntegrity());
    }
    void aStatementThatFailsRollsBackAndIsNamed()
    {
        QVERIFY_RESULT(open({first}));
        const auto failed = open({first, wrong});
        QVERIFY(!failed);
        QVERIFY2(failed.error().message.contains("0002_wrong.sql line 2"),
                 qPrintable(failed.error().message));
        QCOMPARE(*open({first}), Outcome::Current);
        QCOMPARE(*open({first, second}), Outcome::Upgraded); // its table b is not there yet
    }
    void rowsWithoutWhatTheyReferToAreRefused()
    {
        QVERIFY_RESULT(open({first}));
        const auto failed = open({first, orphaning});
        QVERIFY(!failed);
        QVERIFY(failed.error().message.contains("0002_orphaning.sql would leave rows of c"));
        QCOMPARE(*open({first}), Outcome::Current);
    }
    void aNewerDatabaseIsRefusedUnharmed()
    {
        QVERIFY_RESULT(open({first, second}));
        const QByteArray before = bytes();
        for (const Access access : {Access::ReadWrite, Access::ReadOnly}) {
            const auto refused = open({first}, access);
            QVERIFY(!refused);
            QCOMPARE(refused.error().code, ErrorCode::DatabaseTrouble);
            QVERIFY(refused.error().message.contains("newer version"));
        }
        QCOMPARE(bytes(), before);
    }
    void aNewerDatabaseMayStillBeReadable()
    {
        QVERIFY_RESULT(open({first, mild}));
        QVERIFY(!open({first}));
        QCOMPARE(*open({first}, Access::ReadOnly), Outcome::NewerReadable);
    }
    void anOlderDatabaseIsNotChangedForReading()
    {
        QVERIFY_RESULT(open({first}));
        const QByteArray before = bytes();
        const auto refused = open({first, second}, Access::ReadOnly);
        QVERIFY(!refused);
        QVERIFY(refused.error().message.contains("older form"));
        QCOMPARE(bytes(), before);
    }
    void numbersHaveNoGaps()
    {
        QVERIFY(!Migrator::of({second}));
        QVERIFY(Migrator::embedded());
    }

    // A released migration never changes. A new one is added to the list with
    // `sha256sum db/migrations/*.sql`.
    void releasedMigrationsAreUnchanged()
    {
        QFile list(LOOPWRIGHT_SOURCE_DIR "/tests/data/migrations.sha256");
        QVERIFY(list.open(QIODevice::ReadOnly));
        QStringList names;
        for (const QByteArray &line : list.readAll().trimmed().split('\n')) {
            const QString name = QFileInfo(QString::fromUtf8(line.mid(66))).fileName();
            names << name;
            QCOMPARE(sha256Hex(embeddedSql("migrations/" + name)),
                     QString::fromUtf8(line.left(64)));
        }
        QCOMPARE(names, embeddedSqlFiles("migrations"));
    }
};

QTEST_GUILESS_MAIN(MigratorTest)
#include "MigratorTest.moc"
