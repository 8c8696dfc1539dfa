#pragma once
// Every file that the program writes for somebody goes out here. It takes the place of the old one
// only when it is whole, and never that of a database, a device, or a file of another kind: a wrong
// path costs nobody his records.

#include "core/base/Result.h"

#include <QFile>
#include <QTemporaryFile>

#include <memory>

class QFileInfo;

namespace loopwright {

enum class FileKind
{
    Pdf,
    Png,
    Svg,
    Csv,
    Json,
    PublicKeys, ///< readPublicKeys()
};

/// `-` is standard output: it gets the bytes when they are committed, and none before.
class OutFile
{
public:
    /// Usage if something stands there that must not be replaced, DiskTrouble if the disk or a
    /// right refuses. `secret`: for its owner's eyes only (mode 0600), whatever the umask.
    static Result<OutFile> open(const QString &path, FileKind kind, bool secret = false);
    /// Likewise, in a folder that this process has made for itself: no killed one left anything
    /// there, and it is neither listed nor waited for with each of many files.
    static Result<OutFile> openInOwnFolder(const QString &path, FileKind kind, bool secret = false);

    Result<void> write(QByteArrayView bytes);
    /// From now on it is there, after a power cut too.
    Result<void> commit();
    QString path() const { return m_path; }

private:
    static Result<OutFile> openPart(const QString &path, const QFileInfo &target, bool secret);
    Result<void> letWait();

    QString m_path;
    QByteArray m_forStandardOutput;            ///< if m_path is `-`: what is not in m_waiting yet
    std::unique_ptr<QTemporaryFile> m_waiting; ///< the rest of it, once it is long
    QString m_folder; ///< to be waited for once the file bears its name; empty: it is not
    /// What is written so far, beside its place; removed unless it is committed. What a killed
    /// process left there goes when the same file is written the next time.
    std::unique_ptr<QFile, void (*)(QFile *)> m_part{nullptr, giveUp};
    static void giveUp(QFile *part);
};

Result<void> writeOut(const QString &path, FileKind kind, const QByteArray &bytes);
/// Makes the folder if it is not there; Usage if its name is one that a database keeps for itself.
Result<void> makeFolder(const QString &path);
/// Whether files could go into such a folder, there or still to be made; makes none. An empty path
/// is none.
Result<void> checkFolder(const QString &path);
/// Whether it could be written as things stand, before work is done whose result it is to hold. An
/// empty path is none.
Result<void> checkOut(const QString &path, FileKind kind);

} // namespace loopwright
