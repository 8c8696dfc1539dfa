#include "db/PrivateFiles.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace loopwright {

bool makePrivateFolder(const QString &path)
{
    const QString whole = QDir::cleanPath(QFileInfo(path).absoluteFilePath());
    const QString above = QFileInfo(whole).path();
    if (QFileInfo(whole).isDir())
        return true;
    if (above != whole && !makePrivateFolder(above))
        return false;
    const QByteArray name = QFile::encodeName(whole);
    if (::mkdir(name.constData(), 0700) == 0)
        return ::chmod(name.constData(), 0700) == 0;    // a umask may have taken from the owner
    return errno == EEXIST && QFileInfo(whole).isDir(); // another program was first
}

bool makePrivateFile(const QString &path)
{
    const int file = ::open(QFile::encodeName(path).constData(),
                            O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0600);
    if (file < 0)
        return false;
    const bool mine = ::fchmod(file, 0600) == 0;
    return ::close(file) == 0 && mine;
}

bool closeToOthers(const QString &path)
{
    const QByteArray name = QFile::encodeName(path);
    constexpr mode_t others = S_IRWXG | S_IRWXO;
    struct stat there;
    return ::stat(name.constData(), &there) == 0 && (there.st_mode & others) != 0 &&
           ::chmod(name.constData(), there.st_mode & ~others & 07777) == 0;
}

} // namespace loopwright
