#include "app/actions/InFile.h"

#include <QFileInfo>

#include <sys/stat.h>
#include <unistd.h>

namespace loopwright {

namespace {

/// Nothing if it is a file.
const char *whatElse(mode_t mode)
{
    if (S_ISDIR(mode))
        return "is a folder, not a file";
    if (S_ISFIFO(mode))
        return "is a pipe, not a file; - reads standard input";
    if (S_ISSOCK(mode))
        return "is a socket, not a file";
    return S_ISREG(mode) ? nullptr : "is a device, not a file";
}

bool isHandedOver(const QString &path, mode_t mode)
{
    return S_ISFIFO(mode) && (path.startsWith("/dev/fd/") || path.startsWith("/proc/self/fd/") ||
                              path == "/dev/stdin");
}

tl::unexpected<Error> unreadable(const QFile &file, const QString &path)
{
    return failure(ErrorCode::BadInput, "cannot be read: " + file.errorString(), path);
}

Result<QByteArray> readAtMost(QFile &file, const QString &path, qint64 maxBytes)
{
    const auto tooLong = failure(
        ErrorCode::BadInput,
        maxBytes < 1'000'000 ? QString("is too long: at most %1 bytes").arg(maxBytes)
                             : QString("is too long: at most %1 MB").arg(maxBytes / 1'000'000),
        path);
    if (file.size() > maxBytes)
        return tooLong;
    // What says nothing of its size, a pipe, is read piece by piece.
    constexpr qint64 piece = 1 << 20;
    QByteArray bytes;
    for (;;) {
        const QByteArray more = file.read(std::min(piece, maxBytes + 1 - bytes.size()));
        if (more.isEmpty())
            break;
        bytes += more;
        if (bytes.size() > maxBytes)
            return tooLong;
    }
    if (file.error() != QFileDevice::NoError)
        return unreadable(file, path);
    return bytes;
}

} // namespace

Result<void> openInput(QFile &file, const QString &path)
{
    if (path == standardStream) {
        if (!file.open(STDIN_FILENO, QIODevice::ReadOnly))
            return unreadable(file, path);
        return {};
    }
    // Before it is opened: that alone waits for a writer of a pipe, and makes some devices act.
    file.setFileName(path);
    struct stat what;
    if (stat(QFile::encodeName(path).constData(), &what) == 0 && whatElse(what.st_mode) &&
        !isHandedOver(path, what.st_mode))
        return failure(ErrorCode::BadInput, whatElse(what.st_mode), path);
    if (!file.open(QIODevice::ReadOnly))
        return unreadable(file, path);
    return {};
}

Result<QByteArray> readFile(const QString &path, qint64 maxBytes)
{
    QFile file;
    LOOPWRIGHT_TRY(openInput(file, path));
    return readAtMost(file, path, maxBytes);
}

Result<MappedFile> MappedFile::open(const QString &path)
{
    MappedFile mapped;
    mapped.m_file = std::make_unique<QFile>();
    LOOPWRIGHT_TRY(openInput(*mapped.m_file, path));
    const qint64 size = mapped.m_file->size();
    if (const uchar *at = size > 0 ? mapped.m_file->map(0, size) : nullptr) {
        mapped.m_bytes = QByteArrayView(at, size);
        return mapped;
    }
    LOOPWRIGHT_ASSIGN(auto read, readAtMost(*mapped.m_file, path, largestFile));
    mapped.m_read = std::move(read);
    mapped.m_bytes = mapped.m_read;
    return mapped;
}

QString fileNameOf(const QString &path)
{
    return path == standardStream ? QString("standard input") : QFileInfo(path).fileName();
}

} // namespace loopwright
