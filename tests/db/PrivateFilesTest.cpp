#include "db/PrivateFiles.h"

#include "db/Backup.h"
#include "db/Connection.h"
#include "db/Database.h"
#include "tests/support/Records.h"

#include <QTemporaryDir>
#include <QTest>

#include <sys/stat.h>

using namespace loopwright;

namespace {

mode_t modeOf(const QString &path)
{
    struct stat there;
    return ::stat(QFile::encodeName(path).constData(), &there) == 0 ? there.st_mode & 07777 : 0;
}

void setMode(const QString &path, mode_t mode)
{
    if (::chmod(QFile::encodeName(path).constData(), mode) != 0)
        qFatal("the mode of %s cannot be set", qPrintable(path));
}

/// Takes nothing from anybody while it lives.
class OpenUmask
{
public:
    OpenUmask()
        : m_before(::umask(0))
    {
    }
    ~OpenUmask() { ::umask(m_before); }
    OpenUmask(const OpenUmask &) = delete;
    OpenUmask &operator=(const OpenUmask &) = delete;

private:
    mode_t m_before;
};

} // namespace

class PrivateFilesTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    QString path(const QString &name) const { return m_folder.filePath(name); }

private slots:
    void recordsAndTheirFoldersUnderAnyUmask()
    {
        const OpenUmask open;
        auto database = Database::open(path("a/b/records.sqlite"));
        QVERIFY2(database, database ? "" : qPrintable(database.error().text()));
        QVERIFY(database->connection().run("CREATE TABLE trial (x)", "trial"));
        for (const char *folder : {"a", "a/b"})
            QCOMPARE(modeOf(path(folder)), 0700u);
        for (const char *file : {"", "-wal", "-shm"})
            QCOMPARE(modeOf(path("a/b/records.sqlite") + file), 0600u);
        QVERIFY(!database->wasOpenToOthers());
    }

    /// From its first byte: what is still being made is read by nobody either.
    void aCopyInTheMaking()
    {
        const OpenUmask open;
        const auto database = Database::open(path("copied.sqlite"));
        QVERIFY(database);
        QList<mode_t> modes;
        const auto done = backUp(*database, path("copy.sqlite"), [&](qint64, qint64) {
            for (const QString &name :
                 QDir(m_folder.path()).entryList({"copy.sqlite*"}, QDir::Files))
                modes << modeOf(path(name));
            return true;
        });
        QVERIFY2(done, done ? "" : qPrintable(done.error().text()));
        QVERIFY(!modes.isEmpty());
        for (const mode_t mode : modes)
            QCOMPARE(mode, 0600u);
        QCOMPARE(modeOf(path("copy.sqlite")), 0600u);
        QVERIFY(restore(path("copy.sqlite"), path("c/d/restored.sqlite"), sampleEvent()));
        for (const char *folder : {"c", "c/d"})
            QCOMPARE(modeOf(path(folder)), 0700u);
        QCOMPARE(modeOf(path("c/d/restored.sqlite")), 0600u);
    }

    void recordsThatOthersCouldReadAreClosedToThem()
    {
        const QString file = path("wide.sqlite");
        QVERIFY(Database::open(file));
        setMode(file, 0644);
        {
            const auto read = Database::open(file, Database::Access::ReadOnly);
            QVERIFY(read && !read->wasOpenToOthers());
            QCOMPARE(modeOf(file), 0644u); // who only reads changes nothing
        }
        const auto written = Database::open(file);
        QVERIFY(written && written->wasOpenToOthers());
        QCOMPARE(modeOf(file), 0600u);
        QCOMPARE(modeOf(file + "-wal"), 0600u);
        QVERIFY(!Database::open(file)->wasOpenToOthers());
    }

    /// The folder is somebody's own: it stays as it is.
    void aFolderThatIsThereIsNotChanged()
    {
        QVERIFY(QDir(m_folder.path()).mkdir("shared"));
        setMode(path("shared"), 0755);
        QVERIFY(makePrivateFolder(path("shared/in")));
        QCOMPARE(modeOf(path("shared")), 0755u);
        QCOMPARE(modeOf(path("shared/in")), 0700u);
        QVERIFY(makePrivateFolder(path("shared/in")));
        QVERIFY(makePrivateFile(path("shared/file")));
        QVERIFY(!makePrivateFile(path("shared/file")));
        QVERIFY(!makePrivateFolder(path("shared/file/below")));
    }
};

QTEST_APPLESS_MAIN(PrivateFilesTest)
#include "PrivateFilesTest.moc"
