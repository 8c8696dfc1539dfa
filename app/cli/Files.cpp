#include "app/cli/Files.h"

#include <QFileInfo>

#include <sys/stat.h>

namespace loopwright {

namespace {

Result<void> openToRead(QFile &file)
{
    if (QFileInfo(file.fileName()).isDir())
        return failure(ErrorCode::BadInput, "is a folder, not a file", file.fileName());
    // A named pipe without a writer would be waited for without end.
    struct stat what;
    if (stat(QFile::encodeName(file.fileName()).constData(), &what) == 0 &&
        S_ISFIFO(what.st_mode) && !file.fileName().startsWith("/dev/fd/") &&
        !file.fileName().startsWith("/proc/"))
        return failure(ErrorCode::BadInput, "is a pipe, not a file", file.fileName());
    if (!file.open(QIODevice::ReadOnly))
        return failure(ErrorCode::BadInput, "cannot be read: " + file.errorString(),
                       file.fileName());
    return {};
}

Result<QByteArray> readAtMost(QFile &file, qint64 maxBytes)
{
    QByteArray bytes = file.read(maxBytes + 1);
    if (bytes.size() > maxBytes)
        return failure(ErrorCode::BadInput,
                       QString("is too long: at most %1 MB").arg(maxBytes / 1'000'000),
                       file.fileName());
    if (file.error() != QFileDevice::NoError)
        return failure(ErrorCode::BadInput, "cannot be read: " + file.errorString(),
                       file.fileName());
    return bytes;
}

} // namespace

Result<QByteArray> readFile(const QString &path, qint64 maxBytes)
{
    QFile file(path);
    LOOPWRIGHT_TRY(openToRead(file));
    return readAtMost(file, maxBytes);
}

Result<MappedFile> MappedFile::open(const QString &path)
{
    MappedFile mapped;
    mapped.m_file = std::make_unique<QFile>(path);
    LOOPWRIGHT_TRY(openToRead(*mapped.m_file));
    const qint64 size = mapped.m_file->size();
    if (const uchar *at = size > 0 ? mapped.m_file->map(0, size) : nullptr) {
        mapped.m_bytes = QByteArrayView(at, size);
        return mapped;
    }
    LOOPWRIGHT_ASSIGN(auto read, readAtMost(*mapped.m_file, largestFile));
    mapped.m_read = std::move(read);
    mapped.m_bytes = mapped.m_read;
    return mapped;
}

Result<void> checkNotInput(const QString &out, const QString &in)
{
    const QString read = QFileInfo(in).canonicalFilePath();
    if (!out.isEmpty() && !read.isEmpty() && read == QFileInfo(out).canonicalFilePath())
        return failure(ErrorCode::Usage, "is the file that is read", out);
    return {};
}

QString fileNameOf(const QString &path)
{
    return QFileInfo(path).fileName();
}

} // namespace loopwright
