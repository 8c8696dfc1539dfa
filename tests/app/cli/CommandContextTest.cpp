// Commands that only read need nothing of the medium but to be read.

#include "app/cli/CommandContext.h"

#include "db/Transaction.h"
#include "tests/support/CommandRun.h"
#include "tests/support/Records.h"
#include "tests/support/SmallDisk.h"

#include <QTemporaryDir>

#include <csignal>
#include <sys/stat.h>

using namespace loopwright;

namespace {

const QString scenario = LOOPWRIGHT_SOURCE_DIR "/demo/scenario/";

Answered run(const QStringList &words, const QString &database)
{
    return callProgram(
        words + QStringList{"--json", "--db", database, "--now", "2026-03-12T17:00:00-06:00"});
}

void fillWithOrders(const QString &database)
{
    COMPARE_STATUS(run({"office", "import", scenario + "offices.csv"}, database), ExitStatus::Yes);
    COMPARE_STATUS(run({"order", "import", scenario + "orders.csv"}, database), ExitStatus::No);
    COMPARE_STATUS(run({"record", scenario + "records/26-0007.json"}, database), ExitStatus::Yes);
}

} // namespace

class CommandContextTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    QString path(const QString &name) const { return m_folder.filePath(name); }

private slots:
    /// It gives what it holds once.
    void aPinComesThroughAPipe()
    {
        const QString database = path("pins.sqlite");
        const QString people =
            written(path("people.csv"), "installer,name,role\nS1,Sam Holt,supervisor\n");
        COMPARE_STATUS(run({"installer", "import", people}, database), ExitStatus::Yes);
        const auto setPin = [&](const QStringList &more, const QByteArray &pin) {
            QProcess program;
            program.start(LOOPWRIGHT_BIN_DIR "/loopwright-cli",
                          QStringList{"person", "pin", "S1", "--by", "S1", "--db", database} +
                              more);
            program.write(pin + '\n');
            program.closeWriteChannel();
            return program.waitForFinished(60000) ? program.exitCode() : -1;
        };
        QCOMPARE(setPin({"--pin-file", "-"}, "4711"), 0);
        const QString next = written(path("next.txt"), "1234\n");
        QCOMPARE(setPin({"--pin-file", next, "--old-pin-file", "-"}, "0000"), 1);
        QCOMPARE(setPin({"--pin-file", next, "--old-pin-file", "-"}, "4711"), 0);
        QCOMPARE(setPin({"--pin-file", path("none.txt")}, {}), 3);
    }

    /// Whoever breaks it off finds the records as they were, and no keys that nobody needs.
    void longWorkStopsWhenItIsTold()
    {
        const QString database = path("stopped.sqlite");
        QProcess program;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert("XDG_DATA_HOME", path("home"));
        program.setProcessEnvironment(environment);
        program.start(LOOPWRIGHT_BIN_DIR "/loopwright-cli",
                      {"fill", "--circuits", "10000000", "--json", "--db", database});
        QTRY_VERIFY_WITH_TIMEOUT(QFileInfo::exists(database + "-journal"), 60000);
        ::kill(pid_t(program.processId()), SIGTERM);
        QVERIFY(program.waitForFinished(60000));
        QCOMPARE(program.exitStatus(), QProcess::NormalExit);
        QCOMPARE(program.exitCode(), int(ExitStatus::Interrupted));
        QVERIFY(program.readAllStandardOutput().contains("stopped"));
        QVERIFY(!QFileInfo::exists(database + "-journal"));
        QCOMPARE(run({"office", "list"}, database).array().size(), 0);
        COMPARE_STATUS(run({"history", "verify"}, database), ExitStatus::Yes);
        QCOMPARE(QDir(path("home")).entryList(QDir::NoDotAndDotDot | QDir::AllEntries).size(), 0);
    }
    void aReadOnlyDatabase()
    {
        SmallDisk disk("16M");
        if (!disk.mounted())
            QSKIP("only root can mount a small disk");
        const QString database = disk.file("records.sqlite");
        fillWithOrders(database);
        COMPARE_STATUS(run({"instrument", "import", scenario + "instruments.csv"}, database),
                       ExitStatus::Yes);
        COMPARE_STATUS(run({"certificate", "issue", "26-0007", "--out", path("c.pdf")}, database),
                       ExitStatus::Yes);
        const QString circuit = run({"order", "show", "26-0007"}, database)
                                    .object()["circuit"]
                                    .toObject()["circuit_number"]
                                    .toString();
        QVERIFY(disk.makeReadOnly());
        COMPARE_STATUS(run({"record", scenario + "records/26-0003.json"}, database),
                       ExitStatus::DatabaseTrouble);
        // Who only reads is not hindered.
        for (const QStringList &words :
             QList<QStringList>{{"order", "list"},
                                {"order", "show", "26-0001"},
                                {"limits", "show"},
                                {"office", "list"},
                                {"instrument", "list"},
                                {"history", "26-0001"},
                                {"history", "verify"},
                                {"key", "show"},
                                {"key", "export", "--out", path("k.txt")},
                                {"audit"},
                                {"history", "head"},
                                {"certificate", "verify", path("c.pdf")},
                                {"card", "26-0007", "--out", path("card.pdf")},
                                {"handoff", "26-0007", "--out", path("h.pdf")},
                                {"circuit", "show", circuit},
                                {"installer", "list"},
                                {"day", "--out", path("day.pdf")},
                                {"export", "--out", path("tables")},
                                {"export", "--internal", "--out", path("inside")},
                                {"backup", path("b.sqlite")}}) {
            const Answered read = run(words, database);
            // The scenario holds identifiers in error, which the audit tells.
            QVERIFY2(read.status == int(words.contains("audit") ? ExitStatus::No : ExitStatus::Yes),
                     read.all().constData());
        }
    }

    /// Who only reads needs no room.
    void readingOnAFullDisk()
    {
        SmallDisk disk("8M");
        if (!disk.mounted())
            QSKIP("only root can mount a small disk");
        const QString database = disk.file("records.sqlite");
        fillWithOrders(database);
        disk.fill("ballast");
        for (const QStringList &words : QList<QStringList>{{"order", "list"},
                                                           {"order", "show", "26-0001"},
                                                           {"history", "verify"},
                                                           {"audit"},
                                                           {"key", "show"},
                                                           {"backup", path("full.sqlite")}}) {
            const Answered read = run(words, database);
            // The scenario holds identifiers in error, which the audit tells.
            QVERIFY2(read.status == int(words.contains("audit") ? ExitStatus::No : ExitStatus::Yes),
                     read.all().constData());
        }
    }

    /// Who waits is told for what, and comes to his turn.
    void anotherProgramIsWaitedFor()
    {
        const QString database = path("held.sqlite");
        fillWithOrders(database);
        auto records = Database::open(database);
        QVERIFY_RESULT(records);
        QProcess program;
        {
            const auto held = Transaction::begin(*records);
            QVERIFY_RESULT(held);
            program.start(LOOPWRIGHT_BIN_DIR "/loopwright-cli",
                          {"record", scenario + "records/26-0004.json", "--db", database, "--now",
                           "2026-03-12T17:00:00-06:00"});
            program.setReadChannel(QProcess::StandardError);
            QVERIFY(program.waitForReadyRead(60'000));
            const QByteArray told = program.readAllStandardError();
            QVERIFY2(told.contains("another program is writing; waiting for it"), told.constData());
        }
        QVERIFY(program.waitForFinished(60'000));
        QCOMPARE(program.exitCode(), 0);
    }

    /// Nobody is turned away as long as he waits less than half a minute.
    void eightProgramsAtOnceAreAllServed()
    {
        const QString database = path("eight.sqlite");
        fillWithOrders(database);
        std::vector<std::unique_ptr<QProcess>> programs;
        for (int i = 0; i < 8; ++i) {
            const QString people =
                written(path(QString("crew-%1.csv").arg(i)),
                        QString("installer,name,role\nK%1,Kit %1,installer\n").arg(i).toUtf8());
            programs.push_back(std::make_unique<QProcess>());
            programs.back()->start(LOOPWRIGHT_BIN_DIR "/loopwright-cli",
                                   {"installer", "import", people, "--db", database});
        }
        for (const auto &program : programs) {
            QVERIFY(program->waitForFinished(120'000));
            QVERIFY2(program->exitCode() == 0, program->readAllStandardError().constData());
        }
        const Answered people = run({"installer", "list"}, database);
        COMPARE_STATUS(people, ExitStatus::Yes);
        for (int i = 0; i < 8; ++i)
            QVERIFY(people.all().contains(QString("Kit %1").arg(i).toUtf8()));
        COMPARE_STATUS(run({"history", "verify"}, database), ExitStatus::Yes);
    }

    void recordsThatOthersCouldReadAreTold()
    {
        const QString database = path("wide.sqlite");
        COMPARE_STATUS(run({"office", "import", scenario + "offices.csv"}, database),
                       ExitStatus::Yes);
        QCOMPARE(::chmod(QFile::encodeName(database).constData(), 0644), 0);
        const QStringList words{"office", "import", scenario + "offices.csv"};
        QVERIFY(run(words, database).messages.contains("others had rights to the records"));
        QCOMPARE(run(words, database).messages, QByteArray());
    }
};

QTEST_GUILESS_MAIN(CommandContextTest)
#include "CommandContextTest.moc"
