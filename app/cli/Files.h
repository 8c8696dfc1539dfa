#pragma once
// Files in and out. A file that is written takes the place of the old one only when it is whole.

#include "core/base/Result.h"

#include <QByteArray>
#include <QFile>

#include <functional>
#include <memory>

namespace loopwright {

/// The most that is read into memory at once; no file of the contract comes near.
inline constexpr qint64 largestFile = 1'000'000'000;

/// BadInput if the file cannot be read or is longer than `maxBytes`.
Result<QByteArray> readFile(const QString &path, qint64 maxBytes = largestFile);

/// A file that lies in memory as far as the system can do that, so that a huge one costs little.
class MappedFile
{
public:
    static Result<MappedFile> open(const QString &path);
    QByteArrayView bytes() const { return m_bytes; }

private:
    std::unique_ptr<QFile> m_file;
    QByteArray m_read; ///< if it cannot be mapped: a pipe, an empty file
    QByteArrayView m_bytes;
};

/// `write` is handed the device; what it reports leaves the old file as it was. DiskTrouble if
/// the disk refuses.
Result<void> writeFile(const QString &path, const std::function<Result<void>(QIODevice &)> &write);
Result<void> writeFile(const QString &path, const QByteArray &bytes);

/// Whether the file could be written as things stand, before work is done whose result it is to
/// hold. An empty path is none.
Result<void> checkWritable(const QString &path);

/// The last part of a path, for messages.
QString fileNameOf(const QString &path);

} // namespace loopwright
