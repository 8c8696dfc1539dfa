#pragma once
// Every file that a person names to be read comes in here: a file, and nothing that would be waited
// for, has no end, or does something when it is opened. `-` is standard input.

#include "core/base/Result.h"

#include <QByteArray>
#include <QFile>

#include <memory>

namespace loopwright {

/// The name of standard input and output.
inline const QString standardStream = QStringLiteral("-");

/// The most that is read into memory at once; no file of the contract comes near.
inline constexpr qint64 largestFile = 1'000'000'000;
/// The PDF of a certificate has less than 1 MB, the heads of a log a few hundred bytes.
inline constexpr qint64 largestCertificate = 20'000'000;

/// BadInput with the path if it is a folder, a device, a pipe or a socket, or cannot be read. A
/// pipe that a shell hands over as /dev/fd/N is taken.
Result<void> openInput(QFile &file, const QString &path);

/// BadInput likewise, or if it is longer than `maxBytes`.
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

/// The last part of a path, for messages.
QString fileNameOf(const QString &path);

} // namespace loopwright
