// What is typed while another program has the records locked, in the real window: it is told, tried
// again, and comes back whatever becomes of the window meanwhile.

#include "app/desktop/DraftKeeper.h"

#include "app/desktop/form/Form.h"
#include "tests/support/JobBench.h"
#include "tests/support/OtherProgram.h"

#include <QElapsedTimer>
#include <QLineEdit>
#include <QProcess>
#include <QStatusBar>

#include <csignal>
#include <sys/stat.h>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

constexpr const char *victimOf = "LOOPWRIGHT_TEST_VICTIM";
const QString field = "safety.ac_v.tip_ground";

QStringList setAside(const QString &database)
{
    const QFileInfo info(database);
    QStringList found;
    for (const QString &name : info.dir().entryList({info.fileName() + ".drafts-*"}, QDir::Files))
        found << info.dir().filePath(name);
    return found;
}

QString said(JobBench &bench)
{
    QStringList all;
    for (const QLabel *label : bench.window().statusBar()->findChildren<QLabel *>())
        all << label->text();
    return all.join('\n');
}

QString typed(JobBench &bench)
{
    return bench.find<QLineEdit>(field)->text();
}

void typeInto(JobBench &bench)
{
    bench.window().openOrder("A-1001");
    bench.go(field);
    JobBench::keys("0.2");
    QTest::qWait(Form::keepAfterMs + 300); // the field is not left
}

void typeAndDie(const QString &path)
{
    JobBench bench(path, 30);
    typeInto(bench);
    std::raise(SIGKILL);
}

} // namespace

class DraftKeeperTest : public QObject
{
    Q_OBJECT

    static QString stored(JobBench &bench)
    {
        const auto kept = drafts(bench.records(), "A-1001");
        return kept ? kept->value("safety").value("ac_v.tip_ground").toString() : "unreadable";
    }

private slots:
    void typedWhileLockedIsToldAndSavedWhenTheLockGoes()
    {
        JobBench bench({briFields()});
        {
            const Lock lock(bench.path());
            typeInto(bench);
            QVERIFY2(said(bench).contains("waits to be saved"), qPrintable(said(bench)));
            QCOMPARE(stored(bench), "");
            QCOMPARE(typed(bench), "0.2");
            const QStringList aside = setAside(bench.path());
            QCOMPARE(aside.size(), 1);
            struct stat file;
            QCOMPARE(::stat(QFile::encodeName(aside.front()).constData(), &file), 0);
            QCOMPARE(file.st_mode & 0777, 0600u);
            // Another order and back: the page is made anew.
            bench.window().openOrder("none");
            bench.window().openOrder("A-1001");
            QCOMPARE(typed(bench), "0.2");
        }
        QTRY_COMPARE(stored(bench), "0.2");
        QTRY_VERIFY2(said(bench).contains("What you typed is saved"), qPrintable(said(bench)));
        QCOMPARE(setAside(bench.path()), QStringList());
    }

    /// The window does not stand still as long as somebody else works.
    void typingIsNotHeldUp()
    {
        JobBench bench({briFields()});
        bench.window().openOrder("A-1001");
        bench.go(field);
        const Lock lock(bench.path());
        QElapsedTimer timer;
        timer.start();
        for (const char *next : {"0.1", "0.3", "0.4"})
            JobBench::enter(next); // each field that is left is kept
        QVERIFY2(timer.elapsed() < 2000, qPrintable(QString::number(timer.elapsed())));
    }

    void typedWhileLockedComesBackAfterTheWindowIsClosed()
    {
        JobBench bench({briFields()});
        {
            const Lock lock(bench.path());
            typeInto(bench);
            QVERIFY(bench.window().close());
            bench.close();
            QCOMPARE(setAside(bench.path()).size(), 1);
        }
        bench.open();
        bench.window().openOrder("A-1001");
        QCOMPARE(typed(bench), "0.2");
        QTRY_COMPARE(stored(bench), "0.2");
        QTRY_COMPARE(setAside(bench.path()), QStringList());
    }

    void anOrderTypedWhileLockedComesBack()
    {
        JobBench bench({briFields()});
        {
            const Lock lock(bench.path());
            bench.window().editOrder({});
            bench.find<QLineEdit>("order.customer")->setFocus();
            JobBench::keys("Half Written");
            QTest::qWait(Form::keepAfterMs + 300);
            QVERIFY2(said(bench).contains("waits to be saved"), qPrintable(said(bench)));
            bench.close();
        }
        bench.open();
        bench.window().editOrder({});
        QCOMPARE(bench.find<QLineEdit>("order.customer")->text(), "Half Written");
    }

    void typedWhileLockedComesBackAfterTheProgramIsKilled()
    {
        JobBench bench({briFields()});
        bench.close();
        {
            const Lock lock(bench.path());
            QProcess victim;
            QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
            environment.insert(victimOf, bench.path());
            victim.setProcessEnvironment(environment);
            victim.start(QCoreApplication::applicationFilePath(), {});
            QVERIFY(victim.waitForFinished(60'000));
            QCOMPARE(victim.exitCode(), SIGKILL);
            QCOMPARE(setAside(bench.path()).size(), 1);
        }
        bench.open();
        bench.window().openOrder("A-1001");
        QCOMPARE(typed(bench), "0.2");
        QTRY_COMPARE(stored(bench), "0.2");
        QTRY_COMPARE(setAside(bench.path()), QStringList());
    }

    /// Locked, and no room for a file beside it: whoever closes the window is told first.
    void whatLiesInMemoryAloneIsNotClosedUnasked()
    {
        JobBench bench({briFields()});
        // A folder in the place of the file: nothing can be written there, by root either.
        const QString place =
            bench.path() + ".drafts-" + QString::number(QCoreApplication::applicationPid());
        QVERIFY(QDir().mkpath(place));
        {
            const Lock lock(bench.path());
            typeInto(bench);
            QVERIFY2(said(bench).contains("is only in this window"), qPrintable(said(bench)));
            QVERIFY(!bench.window().close());
            QVERIFY(bench.window().isVisible());
            QVERIFY2(said(bench).contains("close once more"), qPrintable(said(bench)));
        }
        QTRY_COMPARE(stored(bench), "0.2");
        QVERIFY(bench.window().close());
    }

    void aDraftThatIsDroppedWhileLockedDoesNotComeBack()
    {
        JobBench bench({briFields()});
        typeInto(bench);
        QCOMPARE(stored(bench), "0.2");
        {
            const Lock lock(bench.path());
            bench.find<QLineEdit>(field)->selectAll();
            JobBench::key(Qt::Key_Delete);
            QTest::qWait(Form::keepAfterMs + 300);
            bench.close();
        }
        bench.open();
        bench.window().openOrder("A-1001");
        QCOMPARE(typed(bench), "");
        QTRY_COMPARE(stored(bench), "");
    }
};

int main(int argc, char *argv[])
{
    QApplication application(argc, argv);
    if (qEnvironmentVariableIsSet(victimOf))
        typeAndDie(qEnvironmentVariable(victimOf));
    DraftKeeperTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "DraftKeeperTest.moc"
