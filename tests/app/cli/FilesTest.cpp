// What a command is given to read and to write that is no file: standard streams, and what must
// never be opened.

#include "app/cli/Files.h"

#include "tests/support/CommandRun.h"

#include <QDir>
#include <QTemporaryDir>

#include <sys/stat.h>

using namespace loopwright;

namespace {

const QString scenario = LOOPWRIGHT_SOURCE_DIR "/demo/scenario/";

} // namespace

class FilesTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_database;

    QString path(const QString &name) const { return m_folder.filePath(name); }
    Answered run(const QStringList &words, const QByteArray &input = {}, bool json = false) const
    {
        QProcess program;
        program.setWorkingDirectory(m_folder.path());
        program.start(LOOPWRIGHT_BIN_DIR "/loopwright-cli",
                      words +
                          QStringList{"--db", m_database, "--now", "2026-03-12T17:00:00-06:00"} +
                          (json ? QStringList{"--json"} : QStringList{}));
        program.write(input);
        program.closeWriteChannel();
        Answered answered;
        if (program.waitForFinished(60'000) && program.exitStatus() == QProcess::NormalExit)
            answered.status = program.exitCode();
        program.kill();
        answered.out = program.readAllStandardOutput();
        answered.messages = program.readAllStandardError();
        return answered;
    }
    bool nothingBearsTheNameOfAStream() const
    {
        return !QFile::exists(path("-")) &&
               QDir(m_folder.path())
                   .entryList({"*.loopwright-part-*"}, QDir::AllEntries | QDir::Hidden)
                   .isEmpty();
    }

private slots:
    void initTestCase()
    {
        m_database = path("records.sqlite");
        COMPARE_STATUS(run({"office", "import", scenario + "offices.csv"}), ExitStatus::Yes);
        COMPARE_STATUS(run({"order", "import", scenario + "orders.csv"}), ExitStatus::No);
        COMPARE_STATUS(run({"record", scenario + "records/26-0007.json"}), ExitStatus::Yes);
        COMPARE_STATUS(run({"instrument", "import", scenario + "instruments.csv"}),
                       ExitStatus::Yes);
        COMPARE_STATUS(run({"certificate", "issue", "26-0007", "--out", path("c.pdf")}),
                       ExitStatus::Yes);
        COMPARE_STATUS(run({"key", "export", "--out", path("keys.txt")}), ExitStatus::Yes);
        QCOMPARE(::mkfifo(QFile::encodeName(path("pipe")).constData(), 0600), 0);
        QVERIFY(QFile::link("/dev/null", path("device")));
    }

    /// Every command that reads a file that it is told, with NAME in its place.
    void whatIsNoFileIsNotOpened_data()
    {
        QTest::addColumn<QStringList>("words");
        const QList<QStringList> commands{
            {"check", "identifiers", "--in", "NAME"},
            {"analyse", "seconds", "NAME", "--rate", "64000"},
            {"analyse", "capture", "NAME", "--pattern", "auto"},
            {"qualify", "loop", "NAME"},
            {"qualify", "loop", path("loop.json"), "--limits", "NAME"},
            {"loop", "curve", "NAME"},
            {"strip", "NAME", "--out", path("s.png")},
            {"limits", "add", "NAME"},
            {"office", "import", "NAME"},
            {"issuer", "import", "NAME"},
            {"installer", "import", "NAME"},
            {"instrument", "import", "NAME"},
            {"order", "import", "NAME"},
            {"record", "NAME"},
            {"certificate", "verify", "NAME"},
            {"certificate", "verify", "NAME", "--key", path("keys.txt")},
            {"certificate", "verify", path("c.pdf"), "--key", "NAME"},
            {"history", "verify", "--head", "NAME"},
            {"restore", "NAME"},
        };
        written(path("loop.json"),
                R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":9000}]})");
        for (const QStringList &words : commands)
            QTest::newRow(
                qPrintable(words.mid(0, 2).join(' ') +
                           (words.size() > 3 ? ' ' + words.at(words.size() - 2) : QString())))
                << words;
    }
    void whatIsNoFileIsNotOpened()
    {
        QFETCH(QStringList, words);
        for (const auto &[name, what] :
             {std::pair{"pipe", "pipe"}, std::pair{"device", "device"}}) {
            QStringList given = words;
            given.replaceInStrings("NAME", path(name));
            const Answered refused = run(given);
            COMPARE_STATUS(refused, ExitStatus::BadInput);
            QVERIFY2(refused.messages.contains(QFile::encodeName(path(name))) &&
                         refused.messages.contains(what),
                     refused.all().constData());
        }
    }

    void aCertificateOfManyMegabytesIsNotRead()
    {
        QByteArray vast = contentOf(path("c.pdf"));
        vast += QByteArray(20'000'001 - vast.size(), ' ');
        written(path("vast.pdf"), vast);
        for (const QStringList &more : {QStringList{}, QStringList{"--key", path("keys.txt")}}) {
            const Answered refused =
                run(QStringList{"certificate", "verify", path("vast.pdf")} + more);
            COMPARE_STATUS(refused, ExitStatus::BadInput);
            QVERIFY2(refused.messages.contains("vast.pdf: is too long: at most 20 MB"),
                     refused.all().constData());
        }
        QVERIFY(QFile::remove(path("vast.pdf")));
    }

    void aHyphenReadsStandardInput()
    {
        const Answered recorded =
            run({"record", "-"}, contentOf(scenario + "records/26-0003.json"), true);
        COMPARE_STATUS(recorded, ExitStatus::Yes);
        QVERIFY(!recorded.object()["added"].toArray().isEmpty());
        COMPARE_STATUS(run({"certificate", "verify", "-"}, contentOf(path("c.pdf"))),
                       ExitStatus::Yes);
        COMPARE_STATUS(run({"qualify", "loop", "-"}, contentOf(path("loop.json"))),
                       ExitStatus::Yes);
        const Answered bad = run({"record", "-"}, "[]");
        COMPARE_STATUS(bad, ExitStatus::BadInput);
        QVERIFY2(bad.messages.contains("standard input"), bad.all().constData());
    }

    /// The file alone; what is said for a person goes to standard error.
    void aHyphenWritesToStandardOutput_data()
    {
        QTest::addColumn<QStringList>("words");
        QTest::addColumn<QByteArray>("begins");
        const auto row = [](const QStringList &words, const char *begins) {
            QTest::newRow(qPrintable(words.mid(0, 2).join(' '))) << words << QByteArray(begins);
        };
        row({"card", "26-0007", "--out", "-"}, "%PDF-");
        row({"day", "--out", "-"}, "%PDF-");
        row({"certificate", "issue", "26-0007", "--out", "-"}, "%PDF-");
        row({"handoff", "26-0003", "--out", "-"}, "%PDF-");
        row({"key", "export", "--out", "-"}, "issuer ");
        row({"export", "view", "--out", "-"}, "order_number,");
        row({"history", "head", "--out", "-"}, "{\"");
        row({"strip", scenario + "run-seconds.csv", "--out", "-", "--format", "svg"}, "<?xml");
        row({"loop", "curve", path("loop.json"), "--out", "-", "--format", "png"}, "\x89PNG");
        row({"check", "identifiers", "--in", path("list.csv"), "--out", "-"}, "variant,spid,dn");
        written(path("list.csv"), "variant,spid,dn\nni2,21755501430101,217-555-0143\n");
    }
    void aHyphenWritesToStandardOutput()
    {
        QFETCH(QStringList, words);
        QFETCH(QByteArray, begins);
        const Answered answered = run(words);
        COMPARE_STATUS(answered, ExitStatus::Yes);
        QVERIFY2(answered.out.startsWith(begins), answered.all().constData());
        QVERIFY(!answered.messages.isEmpty());
        if (begins == "%PDF-")
            QVERIFY(answered.out.endsWith("%%EOF\n"));
        QVERIFY(nothingBearsTheNameOfAStream());
        const Answered both = run(words, {}, true); // two documents on one stream are none
        COMPARE_STATUS(both, ExitStatus::Usage);
        QCOMPARE(both.errorCode(), "usage");
    }

    /// Every kind of file that is written, with NAME in its place.
    void aForeignPlaceIsLeftAsItIs_data()
    {
        QTest::addColumn<QStringList>("words");
        written(path("drawn.json"),
                R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":9000}]})");
        written(path("spids.csv"), "variant,spid,dn\nni2,21755501100101,2175550110\n");
        for (const QStringList &words : QList<QStringList>{
                 {"certificate", "issue", "26-0007", "--out", "NAME"},
                 {"card", "26-0007", "--out", "NAME"},
                 {"key", "export", "--out", "NAME"},
                 {"history", "head", "--out", "NAME"},
                 {"van", "bring", "--out", "NAME"},
                 {"export", "view", "--out", "NAME"},
                 {"report", "first_visit", "--format", "csv", "--out", "NAME"},
                 {"qualify", "office", "hollow", "--out", "NAME"},
                 {"check", "identifiers", "--in", path("spids.csv"), "--out", "NAME"},
                 {"order", "import", scenario + "bad-orders.csv", "--rejects", "NAME"},
                 {"loop", "curve", path("drawn.json"), "--format", "svg", "--out", "NAME"},
                 {"backup", "NAME"}})
            QTest::newRow(qPrintable(words.mid(0, 2).join(' '))) << words;
    }
    void aForeignPlaceIsLeftAsItIs()
    {
        QFETCH(QStringList, words);
        const auto events = [this] {
            return run({"history", "verify"}, {}, true).object()["events"].toInteger(-1);
        };
        const qint64 before = events();
        QVERIFY(before > 0);
        const QByteArray letter = "Dear Sir, dear Madam,\nthe line of 2 May, is dead.\n";
        const QByteArray notes = "[notes] of May, and of June\n{ more }\n";
        written(path("letter.txt"), letter);
        written(path("notes.txt"), notes);
        for (const QString &name :
             {path("pipe"), m_database, path("letter.txt"), path("notes.txt")}) {
            QStringList given = words;
            given.replaceInStrings("NAME", name);
            const Answered refused = run(given);
            COMPARE_STATUS(refused, ExitStatus::Usage);
            QVERIFY2(refused.messages.contains(QFile::encodeName(name)), refused.all().constData());
        }
        QCOMPARE(contentOf(path("letter.txt")), letter);
        QCOMPARE(contentOf(path("notes.txt")), notes);
        struct stat pipe;
        QCOMPARE(::lstat(QFile::encodeName(path("pipe")).constData(), &pipe), 0);
        QVERIFY(S_ISFIFO(pipe.st_mode));
        QCOMPARE(events(), before); // whole, and nothing was recorded on the way
        QVERIFY(nothingBearsTheNameOfAStream());
    }

    void aHyphenIsRefusedIfItCannotBeWrittenSo()
    {
        for (const QStringList &words : QList<QStringList>{
                 {"backup", "-"},
                 {"restore", "-"},
                 {"export", "--out", "-"},
                 {"certificate", "issue", "--premises-of", "26-0007", "--out-folder", "-"},
                 {"strip", scenario + "run-seconds.csv", "--out", "-"}}) {
            COMPARE_STATUS(run(words), ExitStatus::Usage);
            QVERIFY(nothingBearsTheNameOfAStream());
        }
    }

    /// Whoever holds the paper needs the issuer's public key and nothing else: no records, no keys
    /// of his own; and none are made on the way.
    void aCertificateIsVerifiedWhereThereIsOnlyTheKey()
    {
        const QTemporaryDir far, elsewhere;
        COMPARE_STATUS(callProgram({"key", "export", "--out", elsewhere.filePath("keys.txt"),
                                    "--db", elsewhere.filePath("records.sqlite")},
                                   {{"XDG_DATA_HOME", elsewhere.path()}}),
                       ExitStatus::Yes);
        const auto issuersLine = [](const QString &file) -> QByteArray {
            return contentOf(file).split('\n').first() + '\n';
        };
        const QByteArray pdf = contentOf(path("c.pdf")), issuer = issuersLine(path("keys.txt")),
                         stranger = issuersLine(elsewhere.filePath("keys.txt"));
        QVERIFY(issuer.startsWith("issuer ") && stranger.startsWith("issuer ") &&
                issuer != stranger);
        const QString home = far.filePath("home"), database = far.filePath("none/records.sqlite");
        QVERIFY(QDir().mkpath(home));
        const auto verified = [&](const QByteArray &file, const QByteArray &key) {
            return callProgram(
                {"certificate", "verify", written(far.filePath("c.pdf"), file), "--key",
                 written(far.filePath("key.txt"), key), "--json"},
                {{"HOME", home}, {"XDG_DATA_HOME", home}, {"LOOPWRIGHT_DB", database}});
        };
        const Answered genuine = verified(pdf, issuer);
        COMPARE_STATUS(genuine, ExitStatus::Yes);
        QCOMPARE(genuine.object()["verdict"].toString(), "genuine");
        QCOMPARE(genuine.object()["record"].toString(), "genuine");
        QVERIFY(genuine.object()["stands"].isNull()); // only records can tell
        QVERIFY(!genuine.object()["claims"].toObject().isEmpty());
        const Answered unknown = verified(pdf, stranger);
        COMPARE_STATUS(unknown, ExitStatus::No);
        QCOMPARE(unknown.object()["verdict"].toString(), "unknown");
        QByteArray changed = pdf;
        changed[changed.size() / 2] = char(changed[changed.size() / 2] ^ 1);
        const Answered altered = verified(changed, issuer);
        COMPARE_STATUS(altered, ExitStatus::No);
        QCOMPARE(altered.object()["verdict"].toString(), "altered");
        QVERIFY(QDir(home).isEmpty(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot));
        QVERIFY(!QFile::exists(QFileInfo(database).path()));
    }

    /// As it comes from the telephone of whoever holds the paper.
    void theTextOfASquareIsReadAsAReaderOfCodesSavesIt()
    {
        const Answered verified = run({"certificate", "verify", path("c.pdf")}, {}, true);
        const QString number = verified.object()["certificate"].toString();
        QVERIFY(!number.isEmpty());
        QProcess qpdf;
        qpdf.start("qpdf", {path("c.pdf"), "--show-attachment=claims.txt"});
        QVERIFY(qpdf.waitForFinished());
        const QByteArray claims = qpdf.readAllStandardOutput();
        QCOMPARE(claims.count('\n'), 8);
        QVERIFY(claims.startsWith(number.toLatin1()));
        QByteArray windows = claims;
        windows.replace("\n", "\r\n");
        for (const QByteArray &text : QByteArrayList{
                 claims, windows, "\xef\xbb\xbf" + windows + "\r\n\r\n", claims + "\n\n"}) {
            written(path("square.txt"), text);
            for (const QStringList &more :
                 {QStringList{}, QStringList{"--key", path("keys.txt")}}) {
                const Answered read =
                    run(QStringList{"certificate", "verify", path("square.txt")} + more, {}, true);
                COMPARE_STATUS(read, ExitStatus::Yes);
                QCOMPARE(read.object()["verdict"], "genuine");
            }
        }
    }
};

QTEST_GUILESS_MAIN(FilesTest)
#include "FilesTest.moc"
