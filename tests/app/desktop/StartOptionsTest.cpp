#include "app/desktop/StartOptions.h"

#include <QProcess>
#include <QSettings>
#include <QTemporaryDir>
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
        QVERIFY(StartOptions::read({"loopwright", "--look", "system"}));
        QCOMPARE(options->size, 150);
    }

    void databaseComesFromOptionThenEnvironmentThenDefault()
    {
        QTemporaryDir folder;
        QSettings settings(folder.filePath("settings.ini"), QSettings::IniFormat);
        const auto opened = [&settings](const QStringList &arguments) {
            StartOptions options = *StartOptions::read(arguments);
            options.chooseRecords(settings);
            return options.database;
        };
        QVERIFY(opened({"loopwright"}).endsWith("/loopwright/records.sqlite"));
        settings.setValue("records", "postgresql://kim@hub/records");
        QCOMPARE(opened({"loopwright"}), "postgresql://kim@hub/records");
        qputenv("LOOPWRIGHT_DB", "/env.sqlite");
        QCOMPARE(opened({"loopwright"}), "/env.sqlite");
        QCOMPARE(opened({"loopwright", "--db", "/arg.sqlite"}), "/arg.sqlite");
    }

    void aFileIsKnownByWhatItHolds_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<bool>("isDatabase");
        QTest::addColumn<QString>("screen");
        const QByteArray database("SQLite format 3\0 and so on", 27);
        QTest::newRow("records") << "records.sqlite" << database << true << "";
        QTest::newRow("records, whatever the name") << "orders.csv" << database << true << "";
        QTest::newRow("certificate") << "c" << QByteArray("%PDF-1.4") << false << "certificate";
        QTest::newRow("text of a square")
            << "c.txt" << QByteArray("claims") << false << "certificate";
        QTest::newRow("table") << "orders.CSV" << QByteArray("order_number") << false << "import";
        QTest::newRow("nothing in it") << "orders.csv" << QByteArray() << false << "import";
        // The window takes a bundle in, on whichever screen.
        const QByteArray bundle(R"({"bundle":{"form":1}})");
        QTest::newRow("bundle") << "out.json" << bundle << false << "";
        QTest::newRow("bundle, whatever the name") << "out.csv" << bundle << false << "";
    }
    void aFileIsKnownByWhatItHolds()
    {
        QFETCH(QString, name);
        QFETCH(QByteArray, bytes);
        QFETCH(bool, isDatabase);
        QFETCH(QString, screen);
        QTemporaryDir folder;
        const QString path = folder.filePath(name);
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        file.close();
        const auto options = StartOptions::read({"loopwright", path});
        QVERIFY2(options, qPrintable(options ? QString() : options.error().text()));
        QCOMPARE(options->screen, screen);
        QCOMPARE(options->file, isDatabase ? QString() : path);
        QCOMPARE(options->database == path, isDatabase);
        QCOMPARE(options->wish().file, options->file);
        // Beside --db it is no second database.
        QCOMPARE(StartOptions::read({"loopwright", "--db", "/a.sqlite", path}).has_value(),
                 !isDatabase);
    }
    void aJobRecordIsNoBundle()
    {
        QTemporaryDir folder;
        QFile file(folder.filePath("job.json"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(R"({"order":"O-1001","facts":[]})");
        file.close();
        const auto options = StartOptions::read({"loopwright", file.fileName()});
        QVERIFY(!options);
        QVERIFY2(options.error().text().contains("loopwright-cli record"),
                 qPrintable(options.error().text()));
    }

    void refuses_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QString>("says");
        QTest::newRow("unknown option") << QStringList{"--colour", "red"} << "colour";
        QTest::newRow("stray word") << QStringList{"O-1001"} << "O-1001";
        QTest::newRow("two files") << QStringList{"a.csv", "b.csv"} << "b.csv";
        QTest::newRow("neither") << QStringList{"/etc/passwd"} << "neither records";
        QTest::newRow("a folder") << QStringList{"/etc"} << "/etc";
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
        QVERIFY(options.error().code == ErrorCode::Usage || arguments.first() == "/etc");
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
        QTest::newRow("manual") << "--manual"
                                << ".Dt LOOPWRIGHT 1";
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
