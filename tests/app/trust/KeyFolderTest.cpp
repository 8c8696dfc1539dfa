#include "app/trust/KeyFolder.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include <sys/stat.h>

using namespace loopwright;

namespace {

int modeOf(const QString &path)
{
    struct stat info = {};
    return ::stat(QFile::encodeName(path).constData(), &info) == 0 ? int(info.st_mode & 07777) : -1;
}

} // namespace

class KeyFolderTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    const KeyFolder m_keys{m_folder.filePath("data/keys")};

private slots:
    void keptFromOthers()
    {
        const mode_t before = ::umask(0);
        const auto key = SigningKey::make();
        QVERIFY(key);
        const auto put = m_keys.put(*key, issuerHolder);
        ::umask(before);
        QVERIFY2(put, put ? "" : qPrintable(put.error().text()));
        QCOMPARE(modeOf(m_keys.path()), 0700);
        QCOMPARE(modeOf(m_folder.filePath("data")), 0700);
        const QString path = m_keys.path() + '/' + key->fingerprint() + ".key";
        QCOMPARE(modeOf(path), 0600);
        const auto found = m_keys.find(key->fingerprint());
        QVERIFY2(found && *found, found ? "none" : qPrintable(found.error().text()));
        QCOMPARE((*found)->seed(), key->seed());
    }
    void noneIsNoTrouble()
    {
        const auto none = m_keys.find(QString(32, '0'));
        QVERIFY(none && !*none);
        const auto nowhere = KeyFolder(m_folder.filePath("nowhere")).find(QString(32, '0'));
        QVERIFY(nowhere && !*nowhere);
    }
    void whatOthersCanReadIsRefused()
    {
        const auto key = SigningKey::make();
        QVERIFY(key && m_keys.put(*key, issuerHolder));
        const QString path = m_keys.path() + '/' + key->fingerprint() + ".key";
        for (const auto mode : {0640, 0604, 0644}) {
            QVERIFY(::chmod(QFile::encodeName(path).constData(), mode_t(mode)) == 0);
            const auto found = m_keys.find(key->fingerprint());
            QVERIFY(!found);
            QVERIFY2(found.error().message.contains("chmod 600"), qPrintable(found.error().text()));
        }
        QVERIFY(::chmod(QFile::encodeName(path).constData(), 0600) == 0);
        QVERIFY(*m_keys.find(key->fingerprint()));
    }
    /// What cannot be looked at is not as if it were not there.
    void aFolderThatCannotBeReadIsTrouble()
    {
        QFile file(m_folder.filePath("flat"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        const auto found = KeyFolder(file.fileName()).find(QString(32, '0'));
        QVERIFY(!found);
        QCOMPARE(found.error().code, ErrorCode::DiskTrouble);
    }
    void theNewestHeadIsKept()
    {
        const auto none = m_keys.keptHead("K7M4QP");
        QVERIFY(none && !*none);
        for (const char *head : {"{\"position\":1}", "{}"}) {
            QVERIFY(m_keys.keepHead("K7M4QP", head));
            const auto kept = m_keys.keptHead("K7M4QP");
            QVERIFY(kept);
            QCOMPARE(*kept, QByteArray(head));
            QCOMPARE(modeOf(m_keys.headPath("K7M4QP")), 0600);
        }
        QVERIFY(!*m_keys.keptHead("ABC234"));
        QVERIFY(QFile::remove(m_keys.headPath("K7M4QP")));
        QVERIFY(QDir().mkpath(m_keys.headPath("K7M4QP")));
        QVERIFY(!m_keys.keptHead("K7M4QP"));
        QVERIFY(!m_keys.keepHead("K7M4QP", "{}"));
        QVERIFY(QDir().rmdir(m_keys.headPath("K7M4QP")));
    }
    void anAlteredFileIsNamed()
    {
        const auto key = SigningKey::make();
        QVERIFY(key && m_keys.put(*key, issuerHolder));
        const QString path = m_keys.path() + '/' + key->fingerprint() + ".key";
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadWrite));
        const QByteArray good = file.readAll();
        for (const QByteArray &bad :
             QByteArrayList{QByteArray(), QByteArray("hello"), good.chopped(2),
                            QByteArray(good).replace(good.size() - 10, 4, "0000"), good + "more\n",
                            QByteArray(100000, 'x')}) {
            if (bad == good)
                continue;
            QVERIFY(file.resize(0) && file.seek(0) && file.write(bad) == bad.size() &&
                    file.flush());
            const auto found = m_keys.find(key->fingerprint());
            QVERIFY2(!found, bad.left(100));
            QCOMPARE(found.error().code, ErrorCode::BadInput);
            QCOMPARE(found.error().place, path);
        }
    }
    void aPlaceThatCannotBeWritten()
    {
        QFile file(m_folder.filePath("file"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        const auto key = SigningKey::make();
        const auto put = KeyFolder(m_folder.filePath("file/keys")).put(*key, issuerHolder);
        QVERIFY(!put);
        QCOMPARE(put.error().code, ErrorCode::DiskTrouble);
    }
    /// A key is never written over another file, nor through a link.
    void nothingIsReplaced()
    {
        const auto key = SigningKey::make();
        QVERIFY(m_keys.put(*key, issuerHolder));
        QVERIFY(!m_keys.put(*key, issuerHolder));
        const auto other = SigningKey::make();
        const QString path = m_keys.path() + '/' + other->fingerprint() + ".key";
        QVERIFY(QFile::link(m_folder.filePath("elsewhere"), path));
        QVERIFY(!m_keys.put(*other, issuerHolder));
        QVERIFY(!QFile::exists(m_folder.filePath("elsewhere")));
    }
};

QTEST_APPLESS_MAIN(KeyFolderTest)
#include "KeyFolderTest.moc"
