#include "app/actions/OutFile.h"

#include "tests/support/Records.h"
#include "tests/support/SmallDisk.h"

#include <QProcess>
#include <QTemporaryDir>

#include <csignal>
#include <future>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

using namespace loopwright;

namespace {

constexpr const char *pdf = "%PDF-1.6\nsomething\n";

QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("unreadable");
}

void put(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
        qFatal("cannot write %s", qPrintable(path));
}

QByteArray awaited;          // a file
bool namedAndSynced = false; // its folder was synced when it was there
bool isSwift = false;        // nothing is synced

} // namespace

// What a program defines itself its libraries call too.
extern "C" int fsync(int file)
{
    struct stat synced = {}, folder = {};
    const QByteArray above = awaited.left(awaited.lastIndexOf('/'));
    if (::fstat(file, &synced) == 0 && ::stat(above.constData(), &folder) == 0 &&
        synced.st_ino == folder.st_ino && ::access(awaited.constData(), F_OK) == 0)
        namedAndSynced = true;
    return isSwift ? 0 : int(::syscall(SYS_fsync, file));
}

class OutFileTest : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    QString path(const QString &name) const { return m_folder.filePath(name); }
    QStringList there() const
    {
        return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden | QDir::System);
    }

private slots:
    void cleanup()
    {
        isSwift = false;
        for (const QString &name : there())
            QFile::remove(path(name));
    }

    /// What stands there, and whether a PDF may take its place.
    void replaces_data()
    {
        QTest::addColumn<QByteArray>("before");
        QTest::addColumn<bool>("may");
        const auto row = [](const char *name, const QByteArray &before, bool may) {
            QTest::newRow(name) << before << may;
        };
        row("a PDF", "%PDF-1.4\nold", true);
        row("an empty file", "", true);
        row("a database", QByteArray("SQLite format 3\0rest", 20), false);
        row("a letter", "Dear Madam,\n", false);
        row("a program",
            QByteArray("\x7f"
                       "ELF\2\1",
                       6),
            false);
        row("a picture", "\x89PNG\r\n", false);
        row("JSON", "{\"a\":1}", false);
    }
    void replaces()
    {
        QFETCH(QByteArray, before);
        QFETCH(bool, may);
        put(path("f.pdf"), before);
        const auto written = writeOut(path("f.pdf"), FileKind::Pdf, pdf);
        QCOMPARE(bool(written), may);
        QCOMPARE(bool(checkOut(path("f.pdf"), FileKind::Pdf)), may || bool(written));
        QCOMPARE(contentOf(path("f.pdf")), may ? QByteArray(pdf) : before);
        if (!may)
            QCOMPARE(written.error().code, ErrorCode::Usage);
        QCOMPARE(there(), QStringList{"f.pdf"});
    }

    /// What was said to be written is there after a power cut, under its name.
    void theNameIsOnTheDiskToo()
    {
        awaited = QFile::encodeName(path("f.pdf"));
        namedAndSynced = false;
        auto out = OutFile::open(path("f.pdf"), FileKind::Pdf);
        QVERIFY(out && out->write(pdf));
        QVERIFY(!namedAndSynced);
        QVERIFY_RESULT(out->commit());
        QVERIFY(namedAndSynced);
    }

    /// The other one's file comes while this one looks what is there.
    void twoWriteTheSameForTheFirstTime()
    {
        isSwift = true;
        for (int turn = 0; turn < 1500; ++turn) {
            QFile::remove(path("f.pdf"));
            auto other = std::async(std::launch::async,
                                    [this] { return writeOut(path("f.pdf"), FileKind::Pdf, pdf); });
            const auto own = writeOut(path("f.pdf"), FileKind::Pdf, pdf);
            const auto others = other.get();
            QVERIFY2(own, qPrintable(own ? QString() : own.error().text()));
            QVERIFY2(others, qPrintable(others ? QString() : others.error().text()));
        }
    }

    void eachKindTakesItsOwnPlace_data()
    {
        QTest::addColumn<int>("kind");
        QTest::addColumn<QByteArray>("bytes");
        QTest::newRow("png") << int(FileKind::Png) << QByteArray("\x89PNG\r\n");
        QTest::newRow("svg") << int(FileKind::Svg) << QByteArray("<?xml version='1.0'?>\n<svg/>");
        QTest::newRow("csv") << int(FileKind::Csv) << QByteArray("a,b\r\n1,2\r\n");
        QTest::newRow("json") << int(FileKind::Json) << QByteArray("{\"a\":1}");
    }
    void eachKindTakesItsOwnPlace()
    {
        QFETCH(int, kind);
        QFETCH(QByteArray, bytes);
        QVERIFY_RESULT(writeOut(path("f"), FileKind(kind), bytes));
        QVERIFY_RESULT(writeOut(path("f"), FileKind(kind), bytes));
        QVERIFY(!writeOut(path("f"), FileKind::Pdf, pdf));
        put(path("g"), pdf);
        QVERIFY(!writeOut(path("g"), FileKind(kind), bytes));
    }

    /// Tables and JSON have no mark: what else has a comma or a bracket is not replaced.
    void tablesAndJsonAreTold_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QByteArray>("before");
        QTest::addColumn<bool>("may");
        const auto row = [](const char *tag, const char *name, const QByteArray &before, bool may) {
            QTest::newRow(tag) << QString(name) << before << may;
        };
        const QByteArray header = "order_number,customer,dn_1\r\n";
        row("table", "f.csv", header + "1,\"Bell, Ada\",2\r\n", true);
        row("table of another name", "t.out", header, true);
        row("table with a mark in front", "t.out", "\xef\xbb\xbf" + header, true);
        row("table from a spreadsheet", "f.csv", "\"order_number\";\"customer\"\n1;2\n", true);
        row("table with tabs", "t.out", "order_number\tcustomer\n", true);
        row("wide table", "t.out", QByteArray("column_of_a_wide_table,").repeated(100) + "x\n",
            true);
        row("their refused rows", "t.out", "Auftrag Nr,\"Kunde, Ort\",reason\r\n1,2,3\r\n", true);
        row("their wide refused rows", "t.out",
            QByteArray("Spalte mit Namen,").repeated(100) + "reason\r\n", true);
        row("one column", "f.csv", "order_number\r\n", true);
        row("one word", "t.out", "order_number\r\n", false);
        row("letter", "t.out", "Dear Madam, dear Sir,\nyour line is dead.\n", false);
        row("letter that is called a table", "f.csv", "Dear Madam, dear Sir,\nyours\n", false);
        row("their table", "f.csv", "Order No,Customer\n1,Bell\n", false);
        row("program", "t.out", "import os, sys\nprint(1, 2)\n", false);
        row("list that goes on", "t.out", "milk,\nbread\n", false);
        row("blank lines", "f.csv", "\n\n", false);
        row("object for a table", "f.csv", "{\"a\":1,\"b\":2}\n", false);

        row("object", "f.json", "{\"a\":1}", true);
        row("object over lines", "j.out.json", "{\n  \"a \\\" b\" : 1\n}\n", true);
        row("list of objects", "f.json", "[{\"a\":1},{}]", true);
        row("empty list", "f.json", "[]\n", true);
        row("empty object", "f.json", "{}\n", true);
        row("list of an empty object", "f.json", "[{}]", true);
        row("settings", "f.json", "[Desktop Entry]\nName=x\n", false);
        row("footnote", "f.json", "[1] a footnote\n", false);
        row("to do", "f.json", "[ ] call the customer\n", false);
        row("note in braces", "f.json", "{ a note }\n", false);
        row("quotation in braces", "f.json", "{\"a note\" of mine}\n", false);
        row("program in braces", "f.json", "{}; int main() {}\n", false);
        row("table for JSON", "f.json", header, false);
    }
    void tablesAndJsonAreTold()
    {
        QFETCH(QString, name);
        QFETCH(QByteArray, before);
        QFETCH(bool, may);
        put(path(name), before);
        const bool json = name.endsWith(".json");
        const QByteArray bytes = json ? "{\"b\":2}" : "a,b\r\n";
        const auto written = writeOut(path(name), json ? FileKind::Json : FileKind::Csv, bytes);
        QCOMPARE(bool(written), may);
        QCOMPARE(contentOf(path(name)), may ? bytes : before);
        if (!may)
            QCOMPARE(written.error().code, ErrorCode::Usage);
        QCOMPARE(there(), QStringList{name});
    }

    void whatSqliteKeepsBesideADatabase()
    {
        put(path("r.sqlite"), QByteArray("SQLite format 3\0rest", 20));
        for (const char *end : {"-wal", "-shm", "-journal"}) {
            QVERIFY(!writeOut(path("r.sqlite") + end, FileKind::Pdf, pdf)); // not there yet
            QVERIFY(!QFile::exists(path("r.sqlite") + end));
        }
        QVERIFY_RESULT(writeOut(path("other-wal"), FileKind::Pdf, pdf));
        QVERIFY(!makeFolder(path("r.sqlite-journal")));
        QVERIFY(!makeFolder(path("./r.sqlite-wal/")));
        QVERIFY(!QFileInfo::exists(path("r.sqlite-journal")));
    }

    /// A wrong path is refused without letting go of what this program holds of its own records.
    void recordsThatAreOpenStayHeld()
    {
        const QString records = path("r.sqlite");
        const auto window = Database::open(records);
        QVERIFY_RESULT(window);
        QVERIFY(!writeOut(records, FileKind::Pdf, pdf));
        QVERIFY(!checkOut(records + "-wal", FileKind::Csv));
        QCOMPARE(QProcess::execute("sqlite3", {records, "SELECT count(*) FROM meta"}), 0);
        QVERIFY2(QFileInfo::exists(records + "-wal"),
                 "another program took the log away from under the open records");
    }

    void noPipeAndNoFolder()
    {
        QCOMPARE(mkfifo(QFile::encodeName(path("pipe")).constData(), 0600), 0);
        const auto onto = writeOut(path("pipe"), FileKind::Pdf, pdf);
        QVERIFY(!onto);
        QCOMPARE(onto.error().code, ErrorCode::Usage);
        QVERIFY2(onto.error().message.contains("device or a pipe"),
                 qPrintable(onto.error().text()));
        QCOMPARE(writeOut(m_folder.path(), FileKind::Pdf, pdf).error().code,
                 ErrorCode::DiskTrouble);
        QCOMPARE(writeOut(path("no/f.pdf"), FileKind::Pdf, pdf).error().code,
                 ErrorCode::DiskTrouble);
    }

    void aLinkStaysALink()
    {
        put(path("real.pdf"), "%PDF-1.4\nold");
        QVERIFY(QFile::link(path("real.pdf"), path("link.pdf")));
        QVERIFY_RESULT(writeOut(path("link.pdf"), FileKind::Pdf, pdf));
        QVERIFY(QFileInfo(path("link.pdf")).isSymLink());
        QVERIFY(QFile::link(path("nowhere"), path("dangling.pdf")));
        QCOMPARE(writeOut(path("dangling.pdf"), FileKind::Pdf, pdf).error().code, ErrorCode::Usage);
        QCOMPARE(contentOf(path("real.pdf")), QByteArray(pdf));
    }

    void halfWrittenIsGivenUp()
    {
        put(path("f.pdf"), "%PDF-1.4\nold");
        {
            auto out = OutFile::open(path("f.pdf"), FileKind::Pdf);
            QVERIFY(out);
            QVERIFY(out->write("%PDF-half"));
            QCOMPARE(there().size(), 2);
        }
        QCOMPARE(there(), QStringList{"f.pdf"});
        QCOMPARE(contentOf(path("f.pdf")), QByteArray("%PDF-1.4\nold"));
    }

    /// What a killed process left goes; what a running one has begun stays.
    void leftOvers()
    {
        QProcess gone;
        gone.start("true", QStringList());
        const qint64 dead = gone.processId();
        QVERIFY(gone.waitForFinished());
        QVERIFY(kill(pid_t(dead), 0) != 0);
        put(path(QString(".f.pdf.loopwright-part-%1-1").arg(dead)), "half");
        put(path(QString(".f.pdf.loopwright-part-%1-9").arg(getppid())), "at work");
        put(path(QString(".g.pdf.loopwright-part-%1-1").arg(dead)), "another file's");
        QVERIFY_RESULT(writeOut(path("f.pdf"), FileKind::Pdf, pdf));
        QCOMPARE(there(), (QStringList{QString(".f.pdf.loopwright-part-%1-9").arg(getppid()),
                                       QString(".g.pdf.loopwright-part-%1-1").arg(dead), "f.pdf"}));
    }

    /// A folder of one's own is not listed for each file; what may stand there is held as else.
    void inAFolderOfOnesOwn()
    {
        QProcess gone;
        gone.start("true", QStringList());
        const QString left = QString(".f.pdf.loopwright-part-%1-1").arg(gone.processId());
        QVERIFY(gone.waitForFinished());
        put(path(left), "half");
        auto out = OutFile::openInOwnFolder(path("f.pdf"), FileKind::Pdf);
        QVERIFY_RESULT(out);
        QVERIFY(out->write(pdf) && out->commit());
        QCOMPARE(there(), (QStringList{left, "f.pdf"}));
        QCOMPARE(contentOf(path("f.pdf")), QByteArray(pdf));
        QVERIFY(!OutFile::openInOwnFolder(path("f.pdf"), FileKind::Json));
        QCOMPARE(there(), (QStringList{left, "f.pdf"}));
    }

    void aFullDiskIsNamed()
    {
        SmallDisk disk("64k");
        if (!disk.mounted())
            QSKIP("needs root, to mount a small disk");
        // More than is buffered, and only a part of it fits.
        const auto full =
            writeOut(disk.file("f.pdf"), FileKind::Pdf, QByteArray(pdf) + QByteArray(100'000, ' '));
        QVERIFY(!full);
        QCOMPARE(full.error().code, ErrorCode::DiskTrouble);
        QVERIFY2(full.error().message.contains("No space left"), qPrintable(full.error().text()));
        QVERIFY(QDir(QFileInfo(disk.file("f.pdf")).path()).isEmpty(QDir::Files | QDir::Hidden));
    }

    void modes()
    {
        const mode_t before = umask(022);
        QVERIFY_RESULT(writeOut(path("f.pdf"), FileKind::Pdf, pdf));
        auto secret = OutFile::open(path("s.csv"), FileKind::Csv, true);
        QVERIFY(secret && secret->write("a,b\n") && secret->commit());
        umask(before);
        struct stat paper, kept;
        QCOMPARE(stat(QFile::encodeName(path("f.pdf")).constData(), &paper), 0);
        QCOMPARE(stat(QFile::encodeName(path("s.csv")).constData(), &kept), 0);
        QCOMPARE(paper.st_mode & 0777, 0644u);
        QCOMPARE(kept.st_mode & 0777, 0600u);
    }
};

QTEST_APPLESS_MAIN(OutFileTest)
#include "OutFileTest.moc"
