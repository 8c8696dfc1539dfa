#include "app/cli/Commands.h"
#include "tests/support/CommandRun.h"

#include <QTemporaryDir>

using namespace loopwright;

class CommandLineTest : public QObject
{
    Q_OBJECT

private slots:
    void everyCommandHasHelp()
    {
        QSet<QString> words;
        for (const CommandEntry &entry : allCommands()) {
            QVERIFY2(!words.contains(entry.words), entry.words);
            words << entry.words;
            const Answered help = call(QString(entry.words).split(' ') << "--help");
            COMPARE_STATUS(help, ExitStatus::Yes);
            QVERIFY2(help.out.contains(entry.summary), help.out.constData());
            QCOMPARE(help.messages, QByteArray());
            const QString first = QString(entry.words).section(' ', 0, 0);
            // A command that others begin with ("export", "export view") says itself what it is.
            QVERIFY2(words.contains(first) || !groupSummary(first).isEmpty(), entry.words);
        }
        // The list keeps the words of a command apart from what it does, however long they are.
        const QByteArray list = call({"--help"}).out;
        for (const CommandEntry &entry : allCommands()) {
            const QString line = QString("\n  %1 ").arg(entry.words);
            QVERIFY2(list.contains((line + ' ').toUtf8()), entry.words);
        }
        QVERIFY(call({"--version"}).out.startsWith("loopwright-cli "));
    }

    void wrongUsage_data()
    {
        QTest::addColumn<QStringList>("words");
        const auto row = [](const char *name, const QStringList &words) {
            QTest::newRow(name) << words;
        };
        row("nothing", {});
        row("an unknown command", {"frobnicate"});
        row("a group alone", {"order"});
        row("an unknown word behind a group", {"order", "frobnicate"});
        row("an unknown option", {"check", "cause", "17", "--colour"});
        row("a missing argument", {"check", "cause"});
        row("one argument too many", {"check", "cause", "17", "18"});
        row("a missing option", {"analyse", "bound", "--errors", "1"});
        row("an option without its value", {"check", "cause", "17", "--db"});
        row("no number", {"check", "cause", "busy"});
        row("a number out of range", {"check", "cause", "128"});
        row("a negative count", {"analyse", "bound", "--errors", "-1", "--bits", "10"});
        row("more errors than bits", {"analyse", "bound", "--errors", "11", "--bits", "10"});
        row("no confidence",
            {"analyse", "bound", "--errors", "1", "--bits", "10", "--confidence", "1"});
        row("not finite",
            {"analyse", "bound", "--errors", "1", "--bits", "10", "--confidence", "nan"});
        row("an unknown variant", {"check", "spid", "--variant", "ni9", "123"});
        row("an unknown pattern", {"analyse", "capture", "x.raw", "--pattern", "prbs10"});
        row("a bad time", {"check", "cause", "17", "--now", "yesterday"});
        row("a bad date", {"order", "list", "--due-before", "2026-02-30"});
        row("an unknown stage", {"order", "list", "--stage", "lunch"});
        row("a bad resistance", {"qualify", "loop", "x.json", "--ohms", "135,-1"});
        row("an option twice", {"check", "cause", "17", "--db", "a", "--db", "b"});
        row("an exception without a name", {"accept", "1", "--except", "loop", "--because", "x"});
        row("an exception without a reason", {"accept", "1", "--except", "loop", "--by", "x"});
        row("an exception of nothing", {"accept", "1", "--because", "x", "--by", "x"});
        row("two questions at once", {"decide", "1", "--again", "2"});
        row("no question", {"decide"});
        row("a number without its code", {"certificate", "verify", "--number", "1"});
    }
    void wrongUsage()
    {
        QFETCH(QStringList, words);
        const Answered plain = call(words);
        COMPARE_STATUS(plain, ExitStatus::Usage);
        QCOMPARE(plain.out, QByteArray());
        QVERIFY(plain.messages.startsWith("loopwright-cli: "));

        const Answered json = call(QStringList{"--json"} + words);
        COMPARE_STATUS(json, ExitStatus::Usage);
        QCOMPARE(json.errorCode(), QString("usage"));
        QVERIFY(!json.error()["message"].toString().isEmpty());
        QVERIFY(json.error().contains("place"));
        QVERIFY(json.messages.startsWith("loopwright-cli: "));
    }

    void commonOptionsStandAnywhere_data()
    {
        QTest::addColumn<QStringList>("words");
        QTest::newRow("before") << QStringList{"--json", "--by", "x", "check", "cause", "17"};
        QTest::newRow("between") << QStringList{"check", "--json", "--by", "x", "cause", "17"};
        QTest::newRow("among") << QStringList{"check", "cause", "--json", "--by", "x", "17"};
        QTest::newRow("after") << QStringList{"check", "cause", "17", "--json", "--by", "x"};
        QTest::newRow("on both sides") << QStringList{
            "--by", "x", "check", "cause", "17", "--json", "--now", "2026-03-04T09:15:00+01:00"};
        QTest::newRow("with an equals sign")
            << QStringList{"--by=x", "check", "cause", "17", "--json"};
    }
    void commonOptionsStandAnywhere()
    {
        QFETCH(QStringList, words);
        const Answered answered = call(words);
        COMPARE_STATUS(answered, ExitStatus::Yes);
        QCOMPARE(answered.object()["cause"].toInt(), 17);
        QCOMPARE(answered.messages, QByteArray());
    }

    void theDatabaseIsFoundByOptionThenEnvironment()
    {
        QTemporaryDir folder;
        const QString byOption = folder.filePath("a.sqlite");
        const QString byEnvironment = folder.filePath("b.sqlite");
        const QMap<QString, QString> environment{{"LOOPWRIGHT_DB", byEnvironment},
                                                 {"XDG_DATA_HOME", folder.path()}};
        COMPARE_STATUS(callProgram({"order", "list", "--db", byOption}, environment),
                       ExitStatus::Yes);
        QVERIFY(QFile::exists(byOption) && !QFile::exists(byEnvironment));
        COMPARE_STATUS(callProgram({"order", "list"}, environment), ExitStatus::Yes);
        QVERIFY(QFile::exists(byEnvironment));
        COMPARE_STATUS(callProgram({"order", "list"}, {{"XDG_DATA_HOME", folder.path()}}),
                       ExitStatus::Yes);
        QVERIFY(QFile::exists(folder.filePath("loopwright/records.sqlite")));
    }

    void nothingInAnArgumentRulesTheTerminal()
    {
        const Answered answered = call({"check", "spid", "--variant", "a\nb\x1b[31mc", "1"});
        COMPARE_STATUS(answered, ExitStatus::Usage);
        QCOMPARE(answered.messages.count('\n'), 2); // the message, and where help is
        QVERIFY(!answered.messages.contains('\x1b'));
    }

    void aFullStandardOutputIsNoSuccess()
    {
        if (!QFile::exists("/dev/full"))
            QSKIP("there is no /dev/full here");
        QProcess program;
        program.setStandardOutputFile("/dev/full");
        program.start(LOOPWRIGHT_BIN_DIR "/loopwright-cli", {"check", "cause", "17"});
        QVERIFY(program.waitForFinished());
        QCOMPARE(program.exitCode(), int(ExitStatus::DiskTrouble));
        QVERIFY(!program.readAllStandardError().isEmpty());
    }

    void standardErrorStaysCleanInAnyLocale()
    {
        for (const char *locale : {"C", "POSIX", "C.UTF-8", "xx_YY"}) {
            const Answered answered = callProgram({"check", "cause", "17"}, {{"LC_ALL", locale}});
            COMPARE_STATUS(answered, ExitStatus::Yes);
            QCOMPARE(answered.messages, QByteArray());
        }
    }
};

QTEST_MAIN(CommandLineTest)
#include "CommandLineTest.moc"
