#include "app/actions/InFile.h"

#include <QFileInfo>
#include <QTemporaryDir>
#include <QTest>

#include <fcntl.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

using namespace loopwright;

class InFileTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    QString path(const QString &name) const { return m_folder.filePath(name); }
    QString file(const QString &name, const QByteArray &bytes) const
    {
        QFile out(path(name));
        if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size())
            qFatal("the temporary folder cannot be written");
        return path(name);
    }
    static void verifyRefused(const QString &path, const char *words)
    {
        const auto read = readFile(path);
        QVERIFY2(!read, words);
        QCOMPARE(read.error().code, ErrorCode::BadInput);
        QCOMPARE(read.error().place, path);
        QVERIFY2(read.error().message.contains(words), qPrintable(read.error().text()));
        const auto mapped = MappedFile::open(path);
        QVERIFY(!mapped);
        QCOMPARE(mapped.error().text(), read.error().text());
    }

private slots:
    /// None of them is opened: that alone would wait, or make it act.
    void whatIsNoFileIsRefusedByItsName()
    {
        QCOMPARE(::mkfifo(QFile::encodeName(path("pipe")).constData(), 0600), 0);
        verifyRefused(path("pipe"), "is a pipe");
        QVERIFY(QFile::link("/dev/null", path("link")));
        verifyRefused(path("link"), "is a device");
        verifyRefused(m_folder.path(), "is a folder");
        verifyRefused(path("missing"), "cannot be read");

        const int socket = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
        sockaddr_un address{};
        address.sun_family = AF_UNIX;
        const QByteArray name = QFile::encodeName(path("socket"));
        QVERIFY(name.size() < qsizetype(sizeof address.sun_path));
        std::copy(name.begin(), name.end(), address.sun_path);
        QCOMPARE(::bind(socket, reinterpret_cast<sockaddr *>(&address), sizeof address), 0);
        verifyRefused(path("socket"), "is a socket");
        ::close(socket);
    }

    void filesAreReadUpToTheirBound()
    {
        const QString ten = file("ten", "0123456789");
        QCOMPARE(*readFile(ten, 10), "0123456789");
        const auto above = readFile(ten, 9);
        QVERIFY(!above);
        QVERIFY2(above.error().message.contains("too long: at most 9 bytes"),
                 qPrintable(above.error().text()));
        QCOMPARE(MappedFile::open(ten)->bytes().toByteArray(), "0123456789");
        QCOMPARE(MappedFile::open(file("empty", {}))->bytes().size(), 0);
    }

    /// A hole of a terabyte takes no room on the disk, and none in memory either.
    void aVastFileIsRefusedUnread()
    {
        const QString vast = file("vast", {});
        QCOMPARE(::truncate(QFile::encodeName(vast).constData(), off_t(1) << 40), 0);
        const auto read = readFile(vast, largestCertificate);
        QVERIFY(!read);
        QVERIFY2(read.error().message.contains("at most 20 MB"), qPrintable(read.error().text()));
    }

    /// As a shell hands it over: <(…).
    void aPipeThatAShellHandsOverIsRead()
    {
        int ends[2];
        QCOMPARE(::pipe2(ends, O_CLOEXEC), 0);
        QCOMPARE(::write(ends[1], "said", 4), 4);
        ::close(ends[1]);
        QCOMPARE(*readFile(QString("/dev/fd/%1").arg(ends[0])), "said");
        ::close(ends[0]);
    }
};

QTEST_APPLESS_MAIN(InFileTest)
#include "InFileTest.moc"
