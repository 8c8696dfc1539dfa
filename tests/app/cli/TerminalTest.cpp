// What a person at a terminal sees, and who asked not to be told.

#include "app/cli/Commands.h"
#include "app/cli/Examples.h"
#include "app/cli/Layout.h"
#include "tests/support/CommandRun.h"

#include <QTemporaryDir>

using namespace loopwright;

namespace {

const QString scenario = LOOPWRIGHT_SOURCE_DIR "/demo/scenario/";

struct Shown
{
    QString text;
    bool whileRunning = false;
    int status = -1;
};

/// Of the program on a terminal so wide, which gets Ctrl-C once it shows `until`.
Shown atTerminal(int columns, const QString &until, const QStringList &words,
                 const QMap<QString, QString> &environment = {})
{
    QProcess python;
    QProcessEnvironment around = QProcessEnvironment::systemEnvironment();
    around.remove("COLUMNS");
    for (auto it = environment.begin(); it != environment.end(); ++it)
        around.insert(it.key(), it.value());
    python.setProcessEnvironment(around);
    python.start("python3", QStringList{LOOPWRIGHT_SOURCE_DIR "/tests/app/cli/terminal.py",
                                        QString::number(columns), until,
                                        LOOPWRIGHT_BIN_DIR "/loopwright-cli"} +
                                words);
    if (!python.waitForFinished(90'000))
        return {};
    const QJsonObject told = QJsonDocument::fromJson(python.readAllStandardOutput()).object();
    return {told["shown"].toString(), told["while_running"].toBool(), told["status"].toInt(-1)};
}

int longestLine(const QString &text)
{
    qsizetype longest = 0;
    for (const QString &line : QString(text).remove('\r').split('\n'))
        longest = std::max(longest, line.size());
    return int(longest);
}

} // namespace

class TerminalTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    QString path(const QString &name) const { return m_folder.filePath(name); }

private slots:
    void cleanup() { setTerminalWidth(std::nullopt); }

    void progressIsSeenWhileTheWorkRuns()
    {
        const QStringList words{"fill", "--circuits", "1000000", "--db", path("filled.sqlite")};
        const Shown shown = atTerminal(80, " of 1000000", words, {{"NO_COLOR", "1"}});
        QVERIFY2(shown.whileRunning, qPrintable(shown.text));
        QCOMPARE(shown.status, int(ExitStatus::Interrupted));
        // Neither colour nor anything else that a plain terminal would print as rubbish.
        QVERIFY2(!shown.text.contains(QChar(0x1b)), qPrintable(shown.text));
    }

    void aDayListShowsHowFarItIsAndCtrlCLeavesNothing()
    {
        const QString database = path("day.sqlite");
        COMPARE_STATUS(call({"office", "import", scenario + "offices.csv", "--db", database}),
                       ExitStatus::Yes);
        QByteArray orders = "order_number,order_type,due_date,customer,premises,circuit_number,"
                            "kind,office,protocol_variant,pair,b1_services,b2_services,dn_1,"
                            "spid_1,tei_1,nt_supplied\n";
        for (int i = 0; i < 600; ++i) {
            const QByteArray n = QByteArray::number(1000 + i);
            orders += "P-" + n + ",new,2026-03-02,Long Row," + n + " Long Row,L-" + n +
                      ",analog,hollow,,55-" + n + ",voice,,217-556-" + n + ",,,no\n";
        }
        COMPARE_STATUS(
            call({"order", "import", written(path("many.csv"), orders), "--db", database}),
            ExitStatus::Yes);
        QDir(m_folder.path()).mkdir("papers");
        const QString list = path("papers/day.pdf");
        const Shown shown = atTerminal(
            80, " of 600", {"day", "--on", "2026-03-09", "--out", list, "--db", database});
        QVERIFY2(shown.whileRunning, qPrintable(shown.text));
        QVERIFY2(shown.text.contains("reading orders: "), qPrintable(shown.text));
        QCOMPARE(shown.status, int(ExitStatus::Interrupted));
        QVERIFY(
            QDir(path("papers")).isEmpty(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden));
    }

    void aListOfIdentifiersShowsHowFarItIsAndCtrlCLeavesNothing()
    {
        QDir(m_folder.path()).mkdir("lists");
        const QByteArray row = "ni1-5ess,O15550143000,217-555-0143\n"; // each has a finding
        const QString list =
            written(path("lists/many.csv"), "variant,spid,dn\n" + row.repeated(1'500'000));
        for (const QStringList &more :
             {QStringList{"--out", path("lists/verdicts.csv")}, QStringList{"--json"}}) {
            const Shown shown =
                atTerminal(80, " of ", QStringList{"check", "identifiers", "--in", list} + more);
            QVERIFY2(shown.whileRunning && shown.text.contains("checking: "),
                     qPrintable(shown.text));
            QCOMPARE(shown.status, int(ExitStatus::Interrupted));
            QCOMPARE(QDir(path("lists"))
                         .entryList(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden),
                     QStringList("many.csv"));
        }
    }

    void anAnalysisEndsAtCtrlC()
    {
        QFile capture(path("silence.raw"));
        QVERIFY(capture.open(QIODevice::WriteOnly) && capture.resize(600'000'000));
        const Shown shown = atTerminal(
            80, " of 600000000", {"analyse", "capture", capture.fileName(), "--pattern", "auto"});
        QVERIFY2(shown.whileRunning, qPrintable(shown.text));
        QCOMPARE(shown.status, int(ExitStatus::Interrupted));
        QVERIFY2(shown.text.contains("stopped"), qPrintable(shown.text));
    }

    void quietSaysNothingButAnswersAndErrors()
    {
        const QString database = path("quiet.sqlite");
        const Shown quiet =
            atTerminal(80, {}, {"fill", "--quiet", "--circuits", "40", "--db", database, "--json"});
        QCOMPARE(quiet.status, 0);
        QVERIFY2(quiet.text.startsWith('{') && !quiet.text.contains("filling") &&
                     QJsonDocument::fromJson(quiet.text.toUtf8()).isObject(),
                 qPrintable(quiet.text));

        const QString list =
            written(path("spids.csv"), "variant,spid,dn\nni1-5ess,015550143001,5550143\n");
        const Answered told = call({"check", "identifiers", "--in", list});
        QVERIFY(!told.messages.isEmpty()); // how many there are
        const Answered silent = call({"check", "identifiers", "--in", list, "--quiet"});
        QCOMPARE(silent.status, told.status);
        QCOMPARE(silent.out, told.out);
        QCOMPARE(silent.messages, QByteArray());

        // What is in error is told all the same, and so is a failure.
        const QString orders = path("orders.sqlite");
        COMPARE_STATUS(call({"office", "import", scenario + "offices.csv", "--db", orders}),
                       ExitStatus::Yes);
        const Answered refused =
            call({"order", "import", scenario + "bad-orders.csv", "--quiet", "--db", orders});
        COMPARE_STATUS(refused, ExitStatus::No);
        QVERIFY2(refused.messages.contains("bad-orders.csv: row "), refused.messages);
        QVERIFY2(!refused.messages.contains(": warning: "), refused.messages);
        const Answered unknown = call({"order", "show", "none", "--quiet", "--db", orders});
        COMPARE_STATUS(unknown, ExitStatus::BadInput);
        QCOMPARE(unknown.messages.count('\n'), 1);
    }

    void theFileAloneStandsOnStandardOutput()
    {
        const QString database = path("heads.sqlite");
        COMPARE_STATUS(
            callProgram({"office", "import", scenario + "offices.csv", "--db", database}),
            ExitStatus::Yes);
        const QStringList words{"history", "head", "--out", "-", "--db", database};
        const Answered told = callProgram(words);
        COMPARE_STATUS(told, ExitStatus::Yes);
        QVERIFY(!told.messages.isEmpty());
        const Answered quiet = callProgram(words + QStringList("--quiet"));
        QVERIFY(!quiet.out.isEmpty());
        QCOMPARE(quiet.messages, QByteArray());
    }

    void tablesTakeTheWidthOfTheTerminal()
    {
        const QString database = path("wide.sqlite");
        for (const char *kind : {"office", "order"})
            callProgram({kind, "import", scenario + kind + "s.csv", "--db", database});
        const QStringList words{"order", "list", "--limit", "20", "--db", database};
        const int narrow = longestLine(atTerminal(110, {}, words).text);
        const int wide = longestLine(atTerminal(200, {}, words).text);
        QVERIFY2(narrow > 80 && narrow <= 110, qPrintable(QString::number(narrow)));
        QVERIFY2(wide > 120 && wide <= 200, qPrintable(QString::number(wide)));
        // Whoever says how wide is believed, in a pipe too.
        QVERIFY(longestLine(callProgram(words, {{"COLUMNS", "160"}}).out) > 120);
        QVERIFY(longestLine(callProgram(words, {{"COLUMNS", "160"}}).out) <= 160);
        QCOMPARE(callProgram(words, {{"COLUMNS", "nonsense"}}).out, callProgram(words).out);
    }

    void narrowColumnsAreWrappedAndNoWordIsLost()
    {
        ColumnLayout table({"order", "customer", ">age", "why"});
        table.add({"26-0001", "Kestrel Hill Bakery and Mill", "12",
                   "the run has more bit errors than the limit allows"});
        const QString wide = table.text();
        setTerminalWidth(44);
        const QString text = table.text();
        QVERIFY2(longestLine(text) <= 44, qPrintable(text));
        QCOMPARE(text.split('\n')[2].left(16), QString("26-0001  Kestrel"));
        QStringList words = text.simplified().split(' '), before = wide.simplified().split(' ');
        words.removeIf([](const QString &word) { return word.startsWith('-'); });
        before.removeIf([](const QString &word) { return word.startsWith('-'); });
        words.sort();
        before.sort();
        QCOMPARE(words, before);
        setTerminalWidth(3); // no terminal is so narrow
        QVERIFY(tableWidth() >= 40);
    }

    /// Each example is read as a shell would hand it over; what it names need not be there.
    void everyCommandHasExamplesThatAreUnderstood()
    {
        for (const CommandEntry &entry : allCommands()) {
            const QStringList examples = commandExamples(entry.words);
            QVERIFY2(!examples.isEmpty(), entry.words);
            const QByteArray help = call(QString(entry.words).split(' ') << "--help").out;
            for (const QString &example : examples) {
                QVERIFY2(help.contains(example.toUtf8()), help);
                QStringList words = QProcess::splitCommand(QString(example).replace('\'', '"'));
                for (const char *redirection : {"<", ">"})
                    if (const qsizetype at = words.indexOf(redirection); at >= 0)
                        words.resize(at);
                CommandLine line;
                line.read(words);
                const auto wrong = line.wrong();
                QVERIFY2(!wrong, qPrintable(example + ": " + (wrong ? wrong->text() : "")));
            }
        }
        QCOMPARE(commandExamples("frobnicate"), QStringList());
    }

    void helpSaysWhatMayBeGiven()
    {
        const auto help = [](const QStringList &words) {
            return QString::fromUtf8(call(words + QStringList("--help")).out).simplified();
        };
        QVERIFY(help({"trouble", "close"}).contains("[contact, wiring, pair, terminal,"));
        QVERIFY(help({"order", "list"}).contains("--due-before DAY"));
        QVERIFY(help({"order", "list"}).contains("YYYY-MM-DD"));
        QVERIFY(help({"pair", "spare"}).contains("[1 to 1000]"));
        QVERIFY(help({"analyse", "bound"}).contains("[0 or more]"));
        QVERIFY(help({"check", "cause"}).contains("[1 to 127]"));
        setTerminalWidth(64);
        const QString narrow = QString::fromUtf8(call({"order", "list", "--help"}).out);
        QVERIFY2(longestLine(narrow.section("Options:", 1).section("Examples:", 0, 0)) <= 64,
                 qPrintable(narrow));
    }

    void aNameThatIsNotUtf8IsRefusedInClearWords_data()
    {
        QTest::addColumn<QByteArray>("name");
        QTest::addColumn<QString>("place");
        QTest::newRow("Latin-1") << QByteArray("caf\xe9.csv") << "caf%E9.csv";
        QTest::newRow("cut off") << QByteArray("caf\xc3") << "caf%C3";
        QTest::newRow("a surrogate") << QByteArray("\xed\xa0\x80") << "%ED%A0%80";
    }
    void aNameThatIsNotUtf8IsRefusedInClearWords()
    {
        QFETCH(QByteArray, name);
        QFETCH(QString, place);
        QByteArray out, messages;
        QBuffer toOut(&out), toMessages(&messages);
        toOut.open(QIODevice::WriteOnly);
        toMessages.open(QIODevice::WriteOnly);
        CommandLine line;
        line.readBytes({"check", "identifiers", "--in", name, "--json"});
        QCOMPARE(line.run(toOut, toMessages, false), ExitStatus::BadInput);
        const QJsonObject error = QJsonDocument::fromJson(out).object()["error"].toObject();
        QCOMPARE(error["place"].toString(), place);
        QVERIFY(error["message"].toString().contains("not UTF-8"));
        QVERIFY(messages.contains("standard input"));
        CommandLine good;
        good.readBytes({"check", "identifiers", "--in", "caf\xc3\xa9.csv"});
        QVERIFY(!good.wrong());
    }
    void theProgramRefusesSuchANameToo()
    {
        QProcess shell;
        shell.start("sh", {"-c", "exec \"$0\" order list --db \"$(printf 'caf\\351.sqlite')\"",
                           LOOPWRIGHT_BIN_DIR "/loopwright-cli"});
        QVERIFY(shell.waitForFinished());
        QCOMPARE(shell.exitCode(), int(ExitStatus::BadInput));
        QVERIFY(shell.readAllStandardError().contains("not UTF-8"));
    }
};

QTEST_MAIN(TerminalTest)
#include "TerminalTest.moc"
