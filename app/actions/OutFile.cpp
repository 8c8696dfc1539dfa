#include "app/actions/OutFile.h"

#include <QDir>
#include <QFileInfo>

#include <atomic>
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <sys/stat.h>
#include <unistd.h>

namespace loopwright {

namespace {

constexpr qint64 firstBytes = 512;

QByteArray beginningOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.read(firstBytes) : QByteArray();
}

const char *nameOf(FileKind kind)
{
    switch (kind) {
    case FileKind::Pdf:
        return "a PDF";
    case FileKind::Png:
        return "a PNG picture";
    case FileKind::Svg:
        return "an SVG picture";
    case FileKind::Csv:
        return "a CSV table";
    case FileKind::Json:
        break;
    }
    return "a JSON file";
}

bool isOfKind(const QByteArray &beginning, const QString &path, FileKind kind)
{
    const QByteArray text = beginning.trimmed();
    switch (kind) {
    case FileKind::Pdf:
        return beginning.startsWith("%PDF-");
    case FileKind::Png:
        return beginning.startsWith("\x89PNG");
    case FileKind::Svg:
        return text.startsWith("<svg") || (text.startsWith("<?xml") && text.contains("<svg"));
    case FileKind::Csv: // it has no mark: text that its name calls so, or whose first line has a
                        // comma
        return !beginning.contains('\0') && !text.startsWith('{') && !text.startsWith('<') &&
               !text.startsWith('%') && !text.startsWith('#') &&
               (path.endsWith(".csv", Qt::CaseInsensitive) ||
                text.left(text.indexOf('\n')).contains(','));
    case FileKind::Json:
        return text.startsWith('{') || text.startsWith('[');
    }
    return false;
}

/// One of the files that SQLite keeps beside a database: it is lost with them.
bool isBesideDatabase(const QString &path)
{
    for (const char *end : {"-wal", "-shm", "-journal"})
        if (path.endsWith(QLatin1StringView(end)) &&
            beginningOf(path.chopped(qsizetype(qstrlen(end)))).startsWith("SQLite format 3"))
            return true;
    return false;
}

Result<void> checkPlace(const QString &path, FileKind kind)
{
    const QFileInfo there(path);
    if (there.isSymLink() && !there.exists())
        return failure(ErrorCode::Usage, "is a link to something that is not there", path);
    if (there.isDir())
        return failure(ErrorCode::DiskTrouble, "is a folder; give the name of a file", path);
    if (there.exists() && !there.isFile())
        return failure(ErrorCode::Usage, "is a device or a pipe, and nothing is written onto one",
                       path);
    const QByteArray beginning = beginningOf(path);
    if (beginning.startsWith("SQLite format 3") || isBesideDatabase(there.canonicalFilePath()) ||
        isBesideDatabase(there.absoluteFilePath()))
        return failure(ErrorCode::Usage, "belongs to a database and is not replaced", path);
    if (there.size() > 0 && !isOfKind(beginning, path, kind))
        return failure(ErrorCode::Usage,
                       QString("is there and is not %1: it is not replaced; give another name")
                           .arg(QLatin1StringView(nameOf(kind))),
                       path);
    return {};
}

tl::unexpected<Error> refusedBy(const QFile &part, const QString &path)
{
    return failure(ErrorCode::DiskTrouble, "cannot be written: " + part.errorString(), path);
}

constexpr const char *partMark = ".loopwright-part-"; // then the process

/// What killed processes left of this file; that of one that still runs is its own.
void removeLeftOvers(const QFileInfo &target)
{
    const QString pattern = '.' + target.fileName() + QLatin1StringView(partMark);
    const QStringList parts = target.dir().entryList({"*" + QString::fromLatin1(partMark) + "*"},
                                                     QDir::Files | QDir::Hidden | QDir::NoSymLinks);
    for (const QString &name : parts) {
        bool isNumber = false;
        const int process = name.startsWith(pattern)
                                ? name.sliced(pattern.size()).section('-', 0, 0).toInt(&isNumber)
                                : 0;
        if (isNumber && process > 0 && kill(process, 0) != 0 && errno == ESRCH)
            QFile::remove(target.dir().filePath(name));
    }
}

/// A name of its own for each file that this process writes.
QString partOf(const QFileInfo &target)
{
    static std::atomic<int> count = 0;
    return target.dir().filePath(QString(".%1%2%3-%4")
                                     .arg(target.fileName(), QLatin1StringView(partMark))
                                     .arg(getpid())
                                     .arg(++count));
}

} // namespace

void OutFile::giveUp(QFile *part)
{
    if (part && !part->fileName().isEmpty())
        part->remove();
    delete part;
}

Result<OutFile> OutFile::open(const QString &path, FileKind kind, bool secret)
{
    LOOPWRIGHT_TRY(checkPlace(path, kind));
    // A link stays one: what it points at is replaced.
    const QFileInfo given(path);
    const QFileInfo target(given.isSymLink() ? given.canonicalFilePath() : path);
    removeLeftOvers(target);
    OutFile out;
    out.m_path = target.filePath();
    out.m_part.reset(new QFile(partOf(target)));
    const mode_t before = secret ? umask(077) : 0;
    const bool isOpen = out.m_part->open(QIODevice::WriteOnly | QIODevice::NewOnly);
    if (secret)
        umask(before);
    if (!isOpen) {
        const auto refused = refusedBy(*out.m_part, path);
        out.m_part->setFileName({}); // not ours
        return refused;
    }
    return out;
}

Result<void> OutFile::write(QByteArrayView bytes)
{
    if (m_part->write(bytes.data(), bytes.size()) != bytes.size())
        return refusedBy(*m_part, m_path);
    return {};
}

Result<void> OutFile::commit()
{
    // On the disk before it bears the name: a power cut leaves the old file or the new one.
    if (!m_part->flush() || fsync(m_part->handle()) != 0)
        return refusedBy(*m_part, m_path);
    const QString part = m_part->fileName();
    m_part->close();
    if (std::rename(QFile::encodeName(part).constData(), QFile::encodeName(m_path).constData()) !=
        0)
        return failure(ErrorCode::DiskTrouble, "cannot be written: " + qt_error_string(errno),
                       m_path);
    m_part->setFileName({});
    return {};
}

Result<void> writeOut(const QString &path, FileKind kind, const QByteArray &bytes)
{
    LOOPWRIGHT_ASSIGN(auto out, OutFile::open(path, kind));
    LOOPWRIGHT_TRY(out.write(bytes));
    return out.commit();
}

Result<void> makeFolder(const QString &path)
{
    const QString clean = QDir::cleanPath(QFileInfo(path).absoluteFilePath());
    if (isBesideDatabase(clean))
        return failure(ErrorCode::Usage, "is a name that a database keeps for itself", path);
    if (!QDir().mkpath(path))
        return failure(ErrorCode::DiskTrouble, "the folder cannot be made", path);
    return {};
}

Result<void> checkOut(const QString &path, FileKind kind)
{
    if (path.isEmpty())
        return {};
    return OutFile::open(path, kind).map([](const OutFile &) {}); // given up unwritten
}

} // namespace loopwright
