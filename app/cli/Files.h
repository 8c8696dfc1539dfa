#pragma once
// Files that are read; those that are written go out through app/actions/OutFile.h.

#include "core/base/Result.h"

#include <QByteArray>
#include <QFile>

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

/// Usage if both name the same file, by whatever way: what is read must not be written over.
Result<void> checkNotInput(const QString &out, const QString &in);

/// The last part of a path, for messages.
QString fileNameOf(const QString &path);

} // namespace loopwright
