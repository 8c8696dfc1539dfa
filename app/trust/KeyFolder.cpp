#include "app/trust/KeyFolder.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace loopwright {

namespace {

const QByteArray firstLine = "Loopwright secret key: keep it to yourself\n";
constexpr qint64 longestFile = 1000;

auto trouble(const QString &what, const QString &path)
{
    return failure(ErrorCode::DiskTrouble,
                   QString("%1 (%2)").arg(what, QString::fromLocal8Bit(std::strerror(errno))),
                   path);
}

/// Closed, and removed unless it is whole.
class NewFile
{
public:
    explicit NewFile(const QString &path)
        : m_path(QFile::encodeName(path))
        , m_file(::open(m_path.constData(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW,
                        0600))
    {
    }
    ~NewFile()
    {
        if (m_file >= 0)
            ::close(m_file);
        if (m_file >= 0 && !m_whole)
            ::unlink(m_path.constData());
    }
    NewFile(const NewFile &) = delete;
    NewFile &operator=(const NewFile &) = delete;

    bool isOpen() const { return m_file >= 0; }
    bool write(const QByteArray &bytes)
    {
        // Whatever the umask: nobody else reads it.
        m_whole = ::fchmod(m_file, 0600) == 0 &&
                  ::write(m_file, bytes.constData(), std::size_t(bytes.size())) == bytes.size() &&
                  ::fsync(m_file) == 0;
        return m_whole;
    }

private:
    QByteArray m_path;
    int m_file;
    bool m_whole = false;
};

/// Whatever the umask, nobody else looks into what is made here, nor into folders above it that
/// were missing too.
bool makeOwnFolder(const QString &path)
{
    if (QFileInfo(path).isDir())
        return true;
    if (!makeOwnFolder(QFileInfo(path).absolutePath()))
        return false;
    return ::mkdir(QFile::encodeName(path).constData(), 0700) == 0 || QFileInfo(path).isDir();
}

/// The name of a new file must survive a power cut too.
void syncFolder(const QString &path)
{
    const int folder = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_DIRECTORY);
    if (folder < 0)
        return;
    ::fsync(folder);
    ::close(folder);
}

} // namespace

QString KeyFolder::defaultPath()
{
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
           "/loopwright/keys";
}

QString KeyFolder::fileOf(const QString &fingerprint) const
{
    return QDir(m_path).filePath(fingerprint + ".key");
}

QString KeyFolder::headPath(const QString &station) const
{
    return QDir(m_path).filePath(station + ".head");
}

Result<void> KeyFolder::make() const
{
    if (!makeOwnFolder(m_path))
        return trouble("the folder of keys cannot be made", m_path);
    if (::chmod(QFile::encodeName(m_path).constData(), 0700) != 0)
        return trouble("the folder of keys cannot be kept from others", m_path);
    return {};
}

Result<void> KeyFolder::put(const SigningKey &key, const QString &holder) const
{
    LOOPWRIGHT_TRY(make());
    const QString path = fileOf(key.fingerprint());
    NewFile file(path);
    if (!file.isOpen() ||
        !file.write(firstLine + holder.toUtf8() + '\n' + key.seed().toHex() + '\n'))
        return trouble("the key cannot be written", path);
    syncFolder(m_path);
    return {};
}

Result<void> KeyFolder::keepHead(const QString &station, const QByteArray &json) const
{
    LOOPWRIGHT_TRY(make());
    const QString path = headPath(station);
    const QByteArray now = QFile::encodeName(path), next = now + ".new";
    ::unlink(next.constData()); // of a program that was killed here
    NewFile file(QFile::decodeName(next));
    if (!file.isOpen() || !file.write(json) || ::rename(next.constData(), now.constData()) != 0)
        return trouble("the head of the log cannot be kept", path);
    syncFolder(m_path);
    return {};
}

Result<std::optional<QByteArray>> KeyFolder::keptHead(const QString &station) const
{
    const QString path = headPath(station);
    if (!QFileInfo::exists(path))
        return std::optional<QByteArray>();
    QFile file(path);
    if (!QFileInfo(path).isFile() || !file.open(QIODevice::ReadOnly))
        return trouble("the head of the log that was kept cannot be read", path);
    return std::optional(file.read(longestFile));
}

Result<std::optional<SigningKey>> KeyFolder::find(const QString &fingerprint) const
{
    const QString path = fileOf(fingerprint);
    QFile file(path);
    struct stat now = {};
    if (::stat(QFile::encodeName(path).constData(), &now) != 0)
        return errno == ENOENT ? Result<std::optional<SigningKey>>(std::nullopt)
                               : trouble("the key cannot be read", path);
    if (!S_ISREG(now.st_mode)) // a pipe would be waited for
        return failure(ErrorCode::BadInput, "is no file; take it away", path);
    if ((now.st_mode & 077) != 0)
        return failure(ErrorCode::BadInput,
                       "can be read by others; keep it from them (chmod 600), and if somebody may "
                       "have read it, have a supervisor make a new one: key renew --revoke",
                       path);
    if (!file.open(QIODevice::ReadOnly))
        return trouble("the key cannot be read", path);
    const QList<QByteArray> lines = file.read(longestFile).split('\n');
    const auto altered = [&path] {
        return failure(ErrorCode::BadInput,
                       "is not the key of this name any more; put the true one back, or have a "
                       "supervisor make a new one: key renew",
                       path);
    };
    if (lines.size() != 4 || lines[0] + '\n' != firstLine)
        return altered();
    auto key = SigningKey::fromSeed(QByteArray::fromHex(lines[2]));
    if (!key || key->fingerprint() != fingerprint)
        return altered();
    return std::optional(std::move(*key));
}

} // namespace loopwright
