#include "app/desktop/StartOptions.h"

#include <QProcess>
#include <QTest>

using namespace loopwright;

class StartOptionsTest : public QObject
{
    Q_OBJECT

private slots:
    void init() { qunsetenv("LOOPWRIGHT_DB"); }

    void readsAll()
    {
        const auto options = StartOptions::read(
            {"loopwright", "--db", "/a/b.sqlite", "--by", "A. Rivera", "--now",
             "2026-03-04T09:15:00+01:00", "--order", "O-1001", "--look", "dark", "--size", "150"});
        QVERIFY(options);
        QCOMPARE(options->database, "/a/b.sqlite");
        QCOMPARE(options->by, "A. Rivera");
        QCOMPARE(options->now->text(), "2026-03-04T09:15:00+01:00");
        QCOMPARE(options->order, "O-1001");
        QCOMPARE(options->look, "dark");
        QCOMPARE(options->size, 150);
    }

    void databaseComesFromOptionThenEnvironmentThenDefault()
    {
        QVERIFY(
            StartOptions::read({"loopwright"})->database.endsWith("/loopwright/records.sqlite"));
        qputenv("LOOPWRIGHT_DB", "/env.sqlite");
        QCOMPARE(StartOptions::read({"loopwright"})->database, "/env.sqlite");
        QCOMPARE(StartOptions::read({"loopwright", "--db", "/arg.sqlite"})->database,
                 "/arg.sqlite");
    }

    void refuses_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QString>("says");
        QTest::newRow("unknown option") << QStringList{"--colour", "red"} << "colour";
        QTest::newRow("stray word") << QStringList{"O-1001"} << "O-1001";
        QTest::newRow("time without offset") << QStringList{"--now", "2026-03-04"} << "2026-03-04";
        QTest::newRow("look") << QStringList{"--look", "pink"} << "high_contrast";
        QTest::newRow("size") << QStringList{"--size", "300"} << "300";
        QTest::newRow("size that is no number") << QStringList{"--size", "big"} << "big";
    }
    void refuses()
    {
        QFETCH(QStringList, arguments);
        QFETCH(QString, says);
        const auto options = StartOptions::read(QStringList{"loopwright"} + arguments);
        QVERIFY(!options);
        QCOMPARE(options.error().code, ErrorCode::Usage);
        QVERIFY2(options.error().text().contains(says), qPrintable(options.error().text()));
    }

    // The program itself, where it could open no window.
    void answersWithoutADisplay_data()
    {
        QTest::addColumn<QString>("option");
        QTest::addColumn<QString>("says");
        QTest::newRow("help") << "--help"
                              << "--order <number>";
        QTest::newRow("help, short") << "-h"
                                     << "--order <number>";
        QTest::newRow("version") << "--version"
                                 << "loopwright " LOOPWRIGHT_VERSION;
    }
    void answersWithoutADisplay()
    {
        QFETCH(QString, option);
        QFETCH(QString, says);
        QProcess program;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert("QT_QPA_PLATFORM", "xcb");
        environment.insert("DISPLAY", ":no-such-display");
        environment.insert("LSAN_OPTIONS", "detect_leaks=0");
        program.setProcessEnvironment(environment);
        program.start(LOOPWRIGHT_BIN_DIR "/loopwright", {option});
        QVERIFY(program.waitForFinished(60'000));
        QCOMPARE(program.exitStatus(), QProcess::NormalExit);
        QCOMPARE(program.exitCode(), 0);
        const QString told = QString::fromUtf8(program.readAllStandardOutput());
        QVERIFY2(told.contains(says), qPrintable(told));
    }
};

QTEST_MAIN(StartOptionsTest)
#include "StartOptionsTest.moc"
