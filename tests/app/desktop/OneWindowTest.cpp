#include "app/desktop/OneWindow.h"

#include "app/desktop/DesktopApplication.h"
#include "app/desktop/widgets/SignList.h"
#include "tests/support/DeskRecords.h"

#include <QDialog>
#include <QLocalSocket>
#include <QProcess>
#include <QSignalSpy>
#include <QThread>

#include <csignal>

using namespace loopwright;

namespace {

/// As a second program would: its start waits for the answer, which this thread gives.
bool handedOver(const QString &database, const Wish &wish = {})
{
    bool done = false;
    std::unique_ptr<QThread> other(
        QThread::create([&] { done = OneWindow::handOver(database, wish); }));
    other->start();
    return QTest::qWaitFor([&other] { return other->isFinished(); }, 20'000) && done;
}

} // namespace

class OneWindowTest : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_runtime; ///< private to its owner, as the system's is

    StartOptions options(const DeskRecords &records) const
    {
        StartOptions options;
        options.database = records.path();
        options.by = "A. Rivera";
        options.now = DeskRecords::now();
        return options;
    }

private slots:
    void init() { qputenv("XDG_RUNTIME_DIR", QFile::encodeName(m_runtime.path())); }

    void oneKeyForAllNames()
    {
        QTemporaryDir folder;
        QVERIFY(QFile::link(folder.path(), folder.filePath("link")));
        const QString path = folder.filePath("a.sqlite"), byLink = folder.filePath("link/a.sqlite");
        QCOMPARE(keyOfDatabase(byLink), keyOfDatabase(path)); // before it is made
        const QString before = keyOfDatabase(path);
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        QCOMPARE(keyOfDatabase(byLink), before);
        QCOMPARE(keyOfDatabase(QDir::current().relativeFilePath(path)), before);
        QVERIFY(keyOfDatabase(folder.filePath("b.sqlite")) != before);
    }

    void theFirstAnswersForItsRecordsAlone()
    {
        OneWindow first, second;
        QVERIFY(!handedOver("/x/a.sqlite"));
        first.answerFor("/x/a.sqlite");
        second.answerFor("/x/a.sqlite"); // too late
        QSignalSpy wished(&first, &OneWindow::wished), passedBy(&second, &OneWindow::wished);
        QVERIFY(handedOver("/x/a.sqlite", {"O-1001", "import", "/y/ä.csv"}));
        QCOMPARE(wished.count(), 1);
        const auto wish = wished.front().front().value<Wish>();
        QCOMPARE(wish.order, "O-1001");
        QCOMPARE(wish.screen, "import");
        QCOMPARE(wish.file, "/y/ä.csv");
        QVERIFY(!handedOver("/x/b.sqlite"));
        first.answerFor("/x/b.sqlite"); // other records were opened in its window
        QVERIFY(!handedOver("/x/a.sqlite"));
        QVERIFY(handedOver("/x/b.sqlite"));
        QCOMPARE(passedBy.count(), 0);
    }

    void whatAKilledOneLeftIsNoObstacle()
    {
        const QString name = m_runtime.filePath("loopwright-" + keyOfDatabase("/x/k.sqlite"));
        QProcess killed; // a socket that nobody listens to any more
        killed.start("python3", {"-c",
                                 "import socket,sys,os,signal\n"
                                 "s=socket.socket(socket.AF_UNIX)\ns.bind(sys.argv[1])\n"
                                 "s.listen()\nos.kill(os.getpid(),signal.SIGKILL)",
                                 name});
        QVERIFY(killed.waitForFinished());
        QVERIFY(QFileInfo::exists(name));
        OneWindow window;
        window.answerFor("/x/k.sqlite");
        QVERIFY(handedOver("/x/k.sqlite"));
    }

    void noAnswerToNonsense()
    {
        OneWindow window;
        window.answerFor("/x/n.sqlite");
        QSignalSpy wished(&window, &OneWindow::wished);
        QLocalSocket socket;
        socket.connectToServer(m_runtime.filePath("loopwright-" + keyOfDatabase("/x/n.sqlite")));
        QVERIFY(socket.waitForConnected());
        socket.write(QByteArray(100'000, 'x'));
        QTRY_COMPARE(socket.state(), QLocalSocket::UnconnectedState);
        QCOMPARE(wished.count(), 0);
        QVERIFY(handedOver("/x/n.sqlite"));
    }

    /// The program itself, started again.
    void aSecondStartBringsTheWindowForward()
    {
        DeskRecords records;
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        DesktopApplication desk(*qApp, options(records), settings);
        desk.start();
        QVERIFY(desk.window());
        desk.window()->showMinimized();
        const auto again = [&](const QStringList &arguments) {
            QProcess program;
            program.start(LOOPWRIGHT_BIN_DIR "/loopwright",
                          QStringList{records.path()} + arguments);
            return QTest::qWaitFor([&] { return program.state() == QProcess::NotRunning; }, 60'000)
                       ? program.readAllStandardError()
                       : QByteArray("does not end");
        };
        const QByteArray told = again({"--order", "O-1003"});
        QVERIFY2(told.contains("was brought forward"), told.constData());
        QVERIFY(!desk.window()->isMinimized());
        QCOMPARE(desk.window()->current()->key(), "job");
        QVERIFY(desk.window()->current()->title().contains("O-1003"));

        QDialog question(desk.window());
        question.setModal(true);
        question.show();
        QVERIFY(again({"--order", "O-1001"}).contains("was brought forward"));
        QVERIFY(desk.window()->current()->title().contains("O-1003")); // what it asks about stays
    }

    void aFileOpensOnItsScreen()
    {
        DeskRecords records;
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        StartOptions withFile = options(records);
        withFile.screen = "import";
        withFile.file = "/y/orders.csv";
        DesktopApplication desk(*qApp, withFile, settings);
        desk.start();
        QCOMPARE(desk.window()->current()->key(), "import");
        QVERIFY(handedOver(records.path(), {{}, "certificate", "/y/c.pdf"}));
        QCOMPARE(desk.window()->current()->key(), "certificate");
    }

    /// As one that is dropped on the window is.
    void aBundleIsOfferedToBeTakenIn()
    {
        DeskRecords records;
        const QString bundle = records.file("out.json", R"({"bundle":{"form":1}})");
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        StartOptions withBundle = options(records);
        withBundle.file = bundle;
        DesktopApplication desk(*qApp, withBundle, settings);
        desk.start();
        const auto offered = [&desk] {
            const auto *dialog = desk.window()->findChild<QDialog *>("take_in");
            const auto *list = dialog ? dialog->findChild<SignList *>("take_in.list") : nullptr;
            return list && !list->items().empty() ? list->items().front().title : QString();
        };
        QTRY_COMPARE(offered(), "out.json");
        desk.window()->findChild<QDialog *>("take_in")->close();
        QTRY_VERIFY(!desk.window()->findChild<QDialog *>("take_in"));

        // The program itself, started again with another one.
        const QString second = records.file("back.json", R"({"bundle":{"form":1}})");
        QProcess program;
        program.start(LOOPWRIGHT_BIN_DIR "/loopwright", {"--db", records.path(), second});
        QTRY_COMPARE_WITH_TIMEOUT(program.state(), QProcess::NotRunning, 60'000);
        QVERIFY(program.readAllStandardError().contains("was brought forward"));
        QTRY_COMPARE(offered(), "back.json");
    }
};

QTEST_MAIN(OneWindowTest)
#include "OneWindowTest.moc"
