#include "app/cli/Files.h"

#include <QFileInfo>
#include <QSaveFile>

namespace loopwright {

namespace {

Result<void> openToRead(QFile &file)
{
    if (QFileInfo(file.fileName()).isDir())
        return failure(ErrorCode::BadInput, "is a folder, not a file", file.fileName());
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

tl::unexpected<Error> refusedBy(const QFileDevice &file)
{
    return failure(ErrorCode::DiskTrouble, "cannot be written: " + file.errorString(),
                   file.fileName());
}

/// A pipe or a device cannot be replaced; it is written to as it is.
Result<void> writeDevice(const QString &path, const std::function<Result<void>(QIODevice &)> &write)
{
    QFile device(path);
    if (!device.open(QIODevice::WriteOnly))
        return refusedBy(device);
    LOOPWRIGHT_TRY(write(device));
    if (!device.flush() || device.error() != QFileDevice::NoError)
        return refusedBy(device);
    return {};
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

Result<void> writeFile(const QString &path, const std::function<Result<void>(QIODevice &)> &write)
{
    const QFileInfo there(path);
    if (there.isDir())
        return failure(ErrorCode::DiskTrouble, "is a folder; give the name of a file", path);
    if (there.exists() && !there.isFile())
        return writeDevice(path, write);
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return refusedBy(file);
    LOOPWRIGHT_TRY(write(file));
    if (!file.flush() || !file.commit()) // commit() alone forgets what the disk said
        return refusedBy(file);
    return {};
}

Result<void> writeFile(const QString &path, const QByteArray &bytes)
{
    return writeFile(path, [&bytes, &path](QIODevice &out) -> Result<void> {
        if (out.write(bytes) != bytes.size())
            return failure(ErrorCode::DiskTrouble, "cannot be written: " + out.errorString(), path);
        return {};
    });
}

Result<void> checkWritable(const QString &path)
{
    const QFileInfo there(path);
    if (path.isEmpty() || (there.exists() && !there.isFile() && !there.isDir()))
        return {};
    if (there.isDir())
        return failure(ErrorCode::DiskTrouble, "is a folder; give the name of a file", path);
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return refusedBy(file);
    file.cancelWriting();
    return {};
}

QString fileNameOf(const QString &path)
{
    return QFileInfo(path).fileName();
}

} // namespace loopwright
