#include "db/PageCheck.h"

#include "db/Connection.h"
#include "db/HistoryCheck.h"

#include <QElapsedTimer>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

class PageCheckTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_path;

    static Database opened(const QString &path, Database::Access access)
    {
        auto database = Database::open(path, access);
        if (!database)
            qFatal("%s", qPrintable(database.error().text()));
        return std::move(*database);
    }
    /// Page by page, so that a few of them can be written over.
    static void overwrite(const QString &path, qint64 from, qint64 bytes)
    {
        QFile file(path);
        if (!file.open(QIODevice::ReadWrite) || !file.seek(from) ||
            file.write(QByteArray(bytes, '\x55')) != bytes)
            qFatal("the file cannot be damaged");
    }

private slots:
    /// 60 MB of drafts: no event seals them, so that only the pages can tell of damage there.
    void init()
    {
        m_path = m_folder.filePath("large.sqlite");
        if (QFile::exists(m_path))
            return;
        const Database database = opened(m_path, Database::Access::ReadWrite);
        QVERIFY(database.connection().run(
            "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 6000)"
            "INSERT INTO draft (order_number, part, content)"
            "SELECT 'A-' || i, 'note', '{\"text\":\"' || hex(zeroblob(5000)) || '\"}' FROM n",
            "fill"));
    }

    void aLargeDatabaseThatIsWhole()
    {
        const Database database = opened(m_path, Database::Access::ReadOnly);
        QVERIFY(QFileInfo(m_path).size() > 32'000'000); // looked through beside
        const auto found = PageCheck(database).take();
        QVERIFY(found);
        QCOMPARE(*found, QStringList());
        QVERIFY(checkHistory(database)->faults.empty());
    }

    void damageInALargeDatabaseIsTheFirstFault()
    {
        const QString path = m_folder.filePath("damaged.sqlite");
        QVERIFY(QFile::copy(m_path, path));
        overwrite(path, 30'000'000, 40'000);
        const Database database = opened(path, Database::Access::ReadOnly);
        const auto found = PageCheck(database).take();
        QVERIFY(!found || !found->isEmpty()); // it may not even be readable
        const auto findings = checkHistory(database);
        QVERIFY(findings && !findings->faults.empty());
        QCOMPARE(findings->faults.front().subject, "database");
    }

    /// Of a large database and of a small one.
    void rowsThatReferToNoneAreTheFirstFault()
    {
        const QString copy = m_folder.filePath("references.sqlite");
        QVERIFY(QFile::copy(m_path, copy));
        for (const QString &path : {copy, QString(":memory:")}) {
            const Database database = opened(path, Database::Access::ReadWrite);
            QVERIFY(database.connection().run(
                "PRAGMA foreign_keys = OFF;"
                "INSERT INTO order_terminal (service_order, number, dn, dn_key, spid, tei)"
                "VALUES (99, 1, '', '', '', '')",
                "break"));
            const QString told = "rows of order_terminal refer to something that is not there";
            QCOMPARE(*database.damage(), QStringList{told});
            QCOMPARE(*database.damagedPages(), QStringList());
            const auto findings = checkHistory(database);
            QVERIFY(findings && !findings->faults.empty());
            QCOMPARE(findings->faults.front(), (HistoryFault{"database", 0, told}));
        }
    }

    void aSmallOneInMemory()
    {
        const Database database = opened(":memory:", Database::Access::ReadWrite);
        QCOMPARE(*PageCheck(database).take(), QStringList());
    }

    /// Whoever breaks the check off does not wait for the pages.
    void whatNobodyWaitsForIsBrokenOff()
    {
        const Database database = opened(m_path, Database::Access::ReadOnly);
        QElapsedTimer timer;
        timer.start();
        QVERIFY(PageCheck(database).take());
        const qint64 whole = timer.restart();
        for (int i = 0; i < 20; ++i)
            const PageCheck unwanted(database);
        QVERIFY2(timer.elapsed() < 10 * whole + 500, qPrintable(QString::number(timer.elapsed())));
    }
};

QTEST_APPLESS_MAIN(PageCheckTest)
#include "PageCheckTest.moc"
