// Every exit status of the contract, provoked on the real program: bad input, a database that
// cannot be used, a disk that refuses; and that nothing has changed afterwards.

#include "tests/support/CommandRun.h"
#include "tests/support/OtherProgram.h"
#include "tests/support/SmallDisk.h"

#include <QTemporaryDir>

#include <sqlite3.h>

using namespace loopwright;

namespace {

const QString scenario = LOOPWRIGHT_SOURCE_DIR "/demo/scenario/";

void runSql(const QString &database, const char *sql)
{
    sqlite3 *handle = nullptr;
    if (sqlite3_open(database.toUtf8().constData(), &handle) != SQLITE_OK ||
        sqlite3_exec(handle, sql, nullptr, nullptr, nullptr) != SQLITE_OK)
        qFatal("%s: %s", sql, sqlite3_errmsg(handle));
    sqlite3_close(handle);
}

/// JSON with single quotes for double ones, and AT for a time.
QByteArray quoted(QByteArray json)
{
    return json.replace("AT", "'at':'2026-03-10T09:00:00Z'").replace('\'', '"');
}

} // namespace

class ExitStatusTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_database;

    QString path(const QString &name) const { return m_folder.filePath(name); }
    QString file(const QString &name, const QByteArray &content) const
    {
        return written(path(name), content);
    }
    static Answered run(const QStringList &words, const QString &database)
    {
        return callProgram(
            words + QStringList{"--json", "--db", database, "--now", "2026-03-12T17:00:00-06:00"});
    }
    Answered run(const QStringList &words) const { return run(words, m_database); }
    static qint64 eventsIn(const QString &database)
    {
        const Answered verified = run({"history", "verify"}, database);
        return verified.status == 0 ? verified.object()["events"].toInteger() : -1;
    }
    static void fillWithOrders(const QString &database)
    {
        COMPARE_STATUS(run({"office", "import", scenario + "offices.csv"}, database),
                       ExitStatus::Yes);
        COMPARE_STATUS(run({"order", "import", scenario + "orders.csv"}, database), ExitStatus::No);
        COMPARE_STATUS(run({"record", scenario + "records/26-0007.json"}, database),
                       ExitStatus::Yes);
    }
    /// The error stands in both places, as the contract says.
    static void verifyError(const Answered &answered, ExitStatus status, const char *code)
    {
        COMPARE_STATUS(answered, status);
        QCOMPARE(answered.errorCode(), QString(code));
        QVERIFY(!answered.error()["message"].toString().isEmpty());
        QVERIFY(answered.error().contains("place"));
        QVERIFY(answered.messages.startsWith("loopwright-cli: "));
        QVERIFY(!answered.messages.contains("terminate") &&
                !answered.messages.contains("Sanitizer"));
    }

private slots:
    void initTestCase()
    {
        m_database = path("records.sqlite");
        fillWithOrders(m_database);
    }

    void yesAndNo()
    {
        COMPARE_STATUS(run({"check", "cause", "17"}), ExitStatus::Yes);
        COMPARE_STATUS(run({"order", "list"}), ExitStatus::Yes);
        COMPARE_STATUS(run({"decide", "26-0007"}), ExitStatus::No); // instrument not registered
        COMPARE_STATUS(run({"decide", "26-0008"}), ExitStatus::No);
        verifyError(run({"certificate", "issue", "26-0008", "--out", path("n.pdf")}),
                    ExitStatus::No, "refused");
        QVERIFY(!QFile::exists(path("n.pdf")));
    }

    void usage()
    {
        verifyError(run({"order", "show"}), ExitStatus::Usage, "usage");
        verifyError(run({"frobnicate"}), ExitStatus::Usage, "usage");
    }

    void namesThatAreNotThere_data()
    {
        QTest::addColumn<QStringList>("words");
        const auto row = [](const char *name, const QStringList &words) {
            QTest::newRow(name) << words;
        };
        row("order", {"order", "show", "none"});
        row("order to decide", {"decide", "none"});
        row("order to accept",
            {"accept", "none", "--except", "loop", "--because", "x", "--by", "y"});
        row("order to complete", {"order", "complete", "none"});
        row("order to cancel", {"order", "cancel", "none", "--because", "x"});
        row("order to certify", {"certificate", "issue", "none", "--out", "/tmp/none.pdf"});
        row("order to hand on", {"handoff", "none"});
        row("order to look back on", {"history", "none"});
        row("fact", {"void", "none", "--because", "x"});
        row("decision", {"decide", "--again", "none"});
        row("record file", {"record", "/no/such/file.json"});
        row("order file", {"order", "import", "/no/such/file.csv"});
        row("folder as order file", {"order", "import", "/"});
        row("certificate file", {"certificate", "verify", "/no/such/file.pdf"});
        row("loop file", {"qualify", "loop", "/no/such/file.json"});
    }
    void namesThatAreNotThere()
    {
        QFETCH(QStringList, words);
        const Answered answered = run(words);
        COMPARE_STATUS(answered, ExitStatus::BadInput);
        QVERIFY(answered.errorCode() == "not_found" || answered.errorCode() == "bad_input");
    }

    void badRecords_data()
    {
        QTest::addColumn<QByteArray>("content");
        QTest::addColumn<QString>("place");
        const auto facts = [](const char *name, const char *fact, const char *place,
                              const char *order = "26-0007") {
            const QByteArray record = QByteArray("{'order':'") + order +
                                      "','facts':[{'kind':'note',AT,'text':'good'}," + fact + "]}";
            QTest::newRow(name) << quoted(record) << QString(place);
        };
        facts("unknown order", "{'kind':'note',AT,'text':'x'}", "order", "none");
        facts("wrong type", "{'kind':'note',AT,'text':7}", "facts[1].text");
        facts("fact that is no object", "7", "facts[1]");
        facts("unknown kind", "{'kind':'tea',AT}", "facts[1].kind");
        facts("unknown key", "{'kind':'note',AT,'text':'x','colour':1}", "facts[1].colour");
        facts("no time", "{'kind':'note','text':'x'}", "facts[1].at");
        facts("time without offset", "{'kind':'note','at':'2026-03-10T09:00:00','text':'x'}",
              "facts[1].at");
        facts("two days ahead", "{'kind':'note','at':'2026-03-14T23:00:00Z','text':'x'}",
              "facts[1].at");
        facts("id that is no UUID", "{'id':'7','kind':'note',AT,'text':'x'}", "facts[1].id");
        facts("run that ends before it starts",
              "{'kind':'run',AT,'path':'self_call','channels':['B1'],"
              "'started':'2026-03-10T09:00:00Z','ended':'2026-03-10T08:00:00Z','bit_errors':0}",
              "facts[1].ended");
        facts("negative count",
              "{'kind':'run',AT,'path':'self_call','channels':['B1'],"
              "'started':'2026-03-10T09:00:00Z','ended':'2026-03-10T09:15:00Z','bit_errors':-1}",
              "facts[1].bit_errors");
        facts("negative count in a second",
              "{'kind':'run',AT,'path':'self_call','channels':['B1'],'started':"
              "'2026-03-10T09:00:00Z','ended':'2026-03-10T09:15:00Z','seconds':[0,-1]}",
              "facts[1].seconds[1]");
        facts("channel that the order does not have",
              "{'kind':'call',AT,'channel':'D','direction':'out','service':'packet',"
              "'outcome':'ok'}",
              "facts[1].channel");
        facts("terminal that the order does not have",
              "{'kind':'layer',AT,'layer':3,'terminal':8,'outcome':'up'}", "facts[1].terminal");
        facts("cause out of range", "{'kind':'layer',AT,'layer':3,'outcome':'down','cause':128}",
              "facts[1].cause");
        QTest::newRow("not JSON") << QByteArray("order: 26-0007") << "";
        QTest::newRow("truncated") << quoted("{'order':'26-0007','facts':[") << "";
        QTest::newRow("a list") << QByteArray("[]") << "";
        QTest::newRow("empty") << QByteArray() << "";
        QTest::newRow("not UTF-8") << QByteArray("{\"order\":\"\xff\",\"facts\":[]}") << "";
        QTest::newRow("deeply nested") << QByteArray(200'000, '[') << "";
        QTest::newRow("too long") << QByteArray(70'000'000, ' ') << "";
    }
    void badRecords()
    {
        QFETCH(QByteArray, content);
        QFETCH(QString, place);
        const qint64 events = eventsIn(m_database);
        const Answered answered = run({"record", file("bad.json", content)});
        COMPARE_STATUS(answered, ExitStatus::BadInput);
        QVERIFY2(answered.errorPlace().startsWith("bad.json"), answered.all().constData());
        QVERIFY2(answered.errorPlace().endsWith(place), answered.all().constData());
        QCOMPARE(eventsIn(m_database), events);
    }

    void otherContentUnderTheSameId()
    {
        QByteArray record = contentOf(scenario + "records/26-0007.json");
        record.replace("\"loss_db\":", "\"loss_db\":1");
        verifyError(run({"record", file("other.json", record)}), ExitStatus::BadInput, "bad_input");
    }

    void badOrderFiles_data()
    {
        QTest::addColumn<QByteArray>("content");
        const QByteArray good = contentOf(scenario + "orders.csv");
        QTest::newRow("empty") << QByteArray();
        QTest::newRow("unknown column") << QByteArray(good).replace("remarks", "colour");
        QTest::newRow("column twice") << QByteArray(good).replace("remarks", "pair");
        QTest::newRow("missing column") << QByteArray(good).replace("due_date,", "");
        QTest::newRow("not UTF-8") << QByteArray(good).replace("Quarry", "Qu\xffrry");
    }
    void badOrderFiles()
    {
        QFETCH(QByteArray, content);
        const qint64 events = eventsIn(m_database);
        verifyError(run({"order", "import", file("bad.csv", content)}), ExitStatus::BadInput,
                    "bad_input");
        QCOMPARE(eventsIn(m_database), events);
    }

    void databasesThatCannotBeUsed_data()
    {
        QTest::addColumn<QString>("damage");
        for (const char *damage :
             {"not a database", "truncated", "newer", "overwritten", "a folder", "in a file"})
            QTest::newRow(damage) << damage;
    }
    void databasesThatCannotBeUsed()
    {
        QFETCH(QString, damage);
        COMPARE_STATUS(run({"backup", path("copy.sqlite")}), ExitStatus::Yes);
        QString database = path("copy.sqlite");
        QByteArray bytes = contentOf(database);
        if (damage == "not a database")
            file("copy.sqlite", "This is a letter, and no database.\n");
        else if (damage == "truncated")
            file("copy.sqlite", bytes.left(bytes.size() / 2));
        else if (damage == "newer")
            runSql(database, "PRAGMA user_version = 9999");
        else if (damage == "overwritten")
            file("copy.sqlite", bytes.replace(4096, 8192, QByteArray(8192, '\x55')));
        else if (damage == "a folder")
            database = m_folder.path();
        else
            database = path("copy.sqlite/records.sqlite");
        const QByteArray before = contentOf(database);
        verifyError(run({"record", scenario + "records/26-0003.json"}, database),
                    ExitStatus::DatabaseTrouble, "database");
        QCOMPARE(contentOf(database), before);
        QFile::remove(path("copy.sqlite"));
    }

    /// Records that something cut to nothing do not silently become new ones.
    void anEmptyFileIsNoNewDatabase()
    {
        const QString database = file("cut.sqlite", {});
        for (const QStringList &words :
             {QStringList{"order", "list"}, {"order", "import", scenario + "orders.csv"}}) {
            const Answered refused = run(words, database);
            verifyError(refused, ExitStatus::DatabaseTrouble, "database");
            QVERIFY2(refused.messages.contains("remove it to begin anew, or restore a backup"),
                     refused.all().constData());
            QVERIFY(QFile::exists(database));
            QCOMPARE(QFileInfo(database).size(), 0);
        }
        COMPARE_STATUS(run({"backup", path("spare.sqlite")}), ExitStatus::Yes);
        COMPARE_STATUS(run({"restore", path("spare.sqlite")}, database), ExitStatus::Yes);
        QVERIFY(eventsIn(database) > 0);
    }

    void aLockedDatabase()
    {
        const qint64 events = eventsIn(m_database);
        COMPARE_STATUS(run({"backup", path("spare.sqlite")}), ExitStatus::Yes);
        {
            const Lock lock(m_database);
            verifyError(run({"record", scenario + "records/26-0003.json"}),
                        ExitStatus::DatabaseTrouble, "busy");
            verifyError(run({"restore", path("spare.sqlite")}), ExitStatus::DatabaseTrouble,
                        "database");
        }
        QCOMPARE(eventsIn(m_database), events);
    }

    /// A backup that cannot be written says nothing against the records.
    void aBackupOntoAReadOnlyFolder()
    {
        SmallDisk disk("16M");
        if (!disk.mounted())
            QSKIP("only root can mount a small disk");
        COMPARE_STATUS(run({"backup", disk.file("old.sqlite")}), ExitStatus::Yes);
        QVERIFY(disk.makeReadOnly());
        for (const char *name : {"new.sqlite", "old.sqlite"}) {
            const Answered refused = run({"backup", disk.file(name)});
            verifyError(refused, ExitStatus::DiskTrouble, "disk");
            QVERIFY2(refused.messages.contains("name another place"), refused.all().constData());
        }
    }

    void aFullDiskUnderTheRecords()
    {
        SmallDisk disk("8M");
        if (!disk.mounted())
            QSKIP("only root can mount a small disk");
        const QString database = disk.file("records.sqlite");
        fillWithOrders(database);
        const qint64 events = eventsIn(database);
        QVERIFY(events > 0);
        disk.fill("ballast");
        verifyError(run({"record", scenario + "records/26-0002.json"}, database),
                    ExitStatus::DiskTrouble, "disk");
        QVERIFY(QFile::remove(disk.file("ballast")));
        QCOMPARE(eventsIn(database), events);
        COMPARE_STATUS(run({"record", scenario + "records/26-0002.json"}, database),
                       ExitStatus::Yes);
    }

    void aFullDiskUnderTheOutput()
    {
        SmallDisk disk("64k");
        if (!disk.mounted())
            QSKIP("only root can mount a small disk");
        COMPARE_STATUS(run({"instrument", "import", scenario + "instruments.csv"}),
                       ExitStatus::Yes);
        disk.fill("ballast");
        const qint64 events = eventsIn(m_database);
        QByteArray list = "variant,spid,dn\n";
        for (int i = 0; i < 5000; ++i)
            list += "ni2,21755501430101,217-555-0143\n";
        const QList<QStringList> commands{
            {"check", "identifiers", "--in", file("list.csv", list), "--out", disk.file("out.csv")},
            {"certificate", "issue", "26-0007", "--out", disk.file("out.pdf")},
            {"card", "26-0007", "--out", disk.file("card.pdf")},
            {"day", "--out", disk.file("day.pdf")},
            {"strip", scenario + "run-seconds.csv", "--out", disk.file("out.png")},
            {"backup", disk.file("backup.sqlite")},
            {"export", "--out", disk.file("tables")},
        };
        for (const QStringList &words : commands) {
            const Answered refused = run(words);
            verifyError(refused, ExitStatus::DiskTrouble, "disk");
            QVERIFY2(!refused.all().contains("Unknown error"), refused.all().constData());
            QVERIFY2(!QFile::exists(words.last()) || words.contains("export"),
                     qPrintable(words.join(' ')));
        }
        // First the records, then the paper: the certificate is in them, with the keys that were
        // made for it, and the same command makes the same paper when there is a place for it.
        QCOMPARE(eventsIn(m_database), events + 2);
        const QString later = path("out.pdf");
        const Answered again = run({"certificate", "issue", "26-0007", "--out", later});
        COMPARE_STATUS(again, ExitStatus::Yes);
        QCOMPARE(again.object()["copy"], false);
        QCOMPARE(eventsIn(m_database), events + 2);
        COMPARE_STATUS(run({"certificate", "verify", later}), ExitStatus::Yes);
    }

    void outputFoldersThatAreNotThere()
    {
        verifyError(run({"card", "26-0007", "--out", "/no/such/folder/card.pdf"}),
                    ExitStatus::DiskTrouble, "disk");
        verifyError(run({"order", "import", scenario + "bad-orders.csv", "--rejects",
                         "/no/such/folder/rejects.csv"}),
                    ExitStatus::DiskTrouble, "disk");
        COMPARE_STATUS(run({"order", "show", "26-0301"}), ExitStatus::BadInput); // nothing came in
    }
};

QTEST_GUILESS_MAIN(ExitStatusTest)
#include "ExitStatusTest.moc"
