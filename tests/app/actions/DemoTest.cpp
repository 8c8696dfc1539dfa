#include "app/actions/Demo.h"

#include "app/actions/Board.h"
#include "app/actions/Register.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QSet>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

class DemoTest : public QObject
{
    Q_OBJECT

private slots:
    /// The records of the scenario, whole, with work of every kind in them.
    void theDemoIsMadeOnce()
    {
        QTemporaryDir folder;
        const QString path = folder.filePath("demo.sqlite");
        qint64 last = -1, all = 0;
        const auto made = makeDemo(path, [&](qint64 done, qint64 total) {
            all = total;
            return done > std::exchange(last, done);
        });
        QVERIFY2(made, made ? "" : qPrintable(made.error().text()));
        QVERIFY(all > 100 && last == all - 1);
        QCOMPARE(QDir(folder.path()).entryList(QDir::Files), QStringList{"demo.sqlite"});
        {
            const auto records = Records::open(path);
            QVERIFY(records);
            (*records)->setNow(demoNow());
            BoardFilter filter;
            filter.limit = 1000;
            const auto rows = boardRows(**records, filter);
            QVERIFY(rows && rows->size() == 200);
            QSet<QString> stages;
            for (const BoardRow &row : *rows)
                stages << toText(row.stage);
            QVERIFY2(stages.size() >= 6, qPrintable(QStringList(stages.values()).join(' ')));
            QVERIFY(registeredPerson(**records, demoPerson()));
        }
        const QDateTime changed = QFileInfo(path).lastModified();
        QVERIFY(makeDemo(path)); // it is there
        QCOMPARE(QFileInfo(path).lastModified(), changed);
    }
    void stoppedItLeavesNothing()
    {
        QTemporaryDir folder;
        const auto made =
            makeDemo(folder.filePath("demo.sqlite"), [](qint64 done, qint64) { return done < 3; });
        QVERIFY(!made && made.error().code == ErrorCode::Refused);
        QCOMPARE(QDir(folder.path()).entryList(QDir::Files), QStringList());
    }
    void aFolderThatCannotBeWritten()
    {
        const auto made = makeDemo("/proc/nowhere/demo.sqlite");
        QVERIFY(!made);
    }
};

QTEST_GUILESS_MAIN(DemoTest)
#include "DemoTest.moc"
