#include "app/actions/OutFile.h"

#include "app/actions/InFile.h"
#include "core/base/Csv.h"
#include "db/FirstBytes.h"
#include "db/LeftOvers.h"
#include "db/SqliteCopy.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <unistd.h>

namespace loopwright {

namespace {

constexpr int bytesThatTell = 4096; // what kind of file it is: the header of a wide table too
constexpr qsizetype mostInMemory = 4'000'000;

QByteArray beginningOf(const QString &path)
{
    // Only what is a file: a pipe would be waited for.
    return QFileInfo(path).isFile() ? firstBytes(path, bytesThatTell).value_or(QByteArray())
                                    : QByteArray();
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
        return "a CSV table of this program";
    case FileKind::Json:
        return "a JSON file of this program";
    case FileKind::PublicKeys:
        break;
    }
    return "a file of public keys";
}

/// The name of a column, as every table of this program has them.
bool isHeaderWord(std::string_view field)
{
    return !field.empty() && std::ranges::all_of(field, [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
               c == '_';
    });
}

/// A table has no mark but its header: names of columns (a spreadsheet may have changed what stands
/// between them), or those of somebody else's with the reason behind them, as refused rows have.
/// One name alone is a header only if the file is called a table.
bool isTable(const QByteArray &beginning, const QString &path)
{
    for (const char separator : {',', ';', '\t'}) {
        CsvScanner rows(beginning, separator);
        if (!rows.next() || !rows.trouble().isEmpty())
            continue;
        const auto &header = rows.fields();
        if (header.size() < 2 && !path.endsWith(".csv", Qt::CaseInsensitive))
            continue;
        if (header.back() == "reason" || std::ranges::all_of(header, isHeaderWord))
            return true;
    }
    return false;
}

/// The start of an object with a key, or of a list of objects; not a line in brackets.
bool isJson(const QByteArray &beginning)
{
    static const QRegularExpression form(
        R"(\A\s*(\[\s*\]\s*\z|(\[\s*)?\{\s*("([^"\\]|\\.)*+"\s*:|\}\s*([],]|\z))))");
    return form.match(QString::fromLatin1(beginning)).hasMatch();
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
    case FileKind::Csv:
        return isTable(beginning, path);
    case FileKind::Json:
        return isJson(beginning);
    case FileKind::PublicKeys:
        return text.startsWith("issuer ") || text.startsWith("station ");
    }
    return false;
}

/// One of the files that SQLite keeps beside a database: it is lost with them.
bool isBesideDatabase(const QString &path)
{
    const auto database = databaseBeside(path);
    return database && beginningOf(*database).startsWith("SQLite format 3");
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
    const qint64 size = there.size(); // first: another process may just be putting a file there
    const QByteArray beginning = beginningOf(path);
    if (beginning.startsWith("SQLite format 3") || isBesideDatabase(there.canonicalFilePath()) ||
        isBesideDatabase(there.absoluteFilePath()))
        return failure(ErrorCode::Usage, "belongs to a database and is not replaced", path);
    if (size > 0 && !isOfKind(beginning, path, kind))
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

tl::unexpected<Error> refusedByStandardOutput(const QFile &out)
{
    return failure(ErrorCode::DiskTrouble, "cannot be written: " + out.errorString(),
                   "standard output");
}

/// What waits in a file, if something does, then the rest.
Result<void> toStandardOutput(QFile *waiting, const QByteArray &rest)
{
    QFile out;
    if (!out.open(stdout, QIODevice::WriteOnly))
        return refusedByStandardOutput(out);
    if (waiting && !waiting->seek(0))
        return refusedBy(*waiting, waiting->fileName());
    while (waiting && !waiting->atEnd()) {
        const QByteArray piece = waiting->read(mostInMemory);
        if (piece.isEmpty())
            return refusedBy(*waiting, waiting->fileName());
        if (out.write(piece) != piece.size())
            return refusedByStandardOutput(out);
    }
    if (out.write(rest) != rest.size() || !out.flush())
        return refusedByStandardOutput(out);
    return {};
}

/// Beside its target, before the process.
QString stemOf(const QFileInfo &target)
{
    return target.dir().filePath('.' + target.fileName() + ".loopwright-part-");
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
    if (path == standardStream) {
        OutFile out;
        out.m_path = path;
        return out;
    }
    LOOPWRIGHT_TRY(checkPlace(path, kind));
    // A link stays one: what it points at is replaced.
    const QFileInfo given(path);
    const QFileInfo target(given.isSymLink() ? given.canonicalFilePath() : path);
    removeLeftOvers(stemOf(target));
    LOOPWRIGHT_ASSIGN(auto out, openPart(path, target, secret));
    out.m_folder = target.absolutePath();
    return out;
}

Result<OutFile> OutFile::openInOwnFolder(const QString &path, FileKind kind, bool secret)
{
    LOOPWRIGHT_TRY(checkPlace(path, kind));
    return openPart(path, QFileInfo(path), secret);
}

Result<OutFile> OutFile::openPart(const QString &path, const QFileInfo &target, bool secret)
{
    OutFile out;
    out.m_path = target.filePath();
    out.m_part.reset(new QFile(nameInTheMaking(stemOf(target))));
    constexpr auto mode = QIODevice::WriteOnly | QIODevice::NewOnly;
    constexpr auto ownersAlone = QFileDevice::ReadOwner | QFileDevice::WriteOwner;
    if (!(secret ? out.m_part->open(mode, ownersAlone) : out.m_part->open(mode))) {
        const auto refused = refusedBy(*out.m_part, path);
        out.m_part->setFileName({}); // not ours
        return refused;
    }
    return out;
}

Result<void> OutFile::write(QByteArrayView bytes)
{
    if (m_path == standardStream) {
        m_forStandardOutput += bytes;
        return m_forStandardOutput.size() > mostInMemory ? letWait() : Result<void>();
    }
    // A disk that fills up takes a part without a word; it says why when it is given the rest.
    while (!bytes.isEmpty()) {
        const qint64 taken = m_part->write(bytes.data(), bytes.size());
        if (taken <= 0)
            return refusedBy(*m_part, m_path);
        bytes = bytes.sliced(taken);
    }
    return {};
}

/// A table of a million rows waits on the disk, not in memory.
Result<void> OutFile::letWait()
{
    if (!m_waiting) {
        m_waiting = std::make_unique<QTemporaryFile>();
        if (!m_waiting->open())
            return refusedBy(*m_waiting, "standard output");
    }
    if (m_waiting->write(m_forStandardOutput) != m_forStandardOutput.size())
        return refusedBy(*m_waiting, m_waiting->fileName());
    m_forStandardOutput.clear();
    return {};
}

Result<void> OutFile::commit()
{
    if (m_path == standardStream)
        return toStandardOutput(m_waiting.get(), m_forStandardOutput);
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
    // Then the name too. A folder that may not be read cannot be waited for.
    if (m_folder.isEmpty())
        return {};
    auto wait = DiskWait::begin(m_folder);
    return wait ? wait->finish() : Result<void>();
}

Result<void> writeOut(const QString &path, FileKind kind, const QByteArray &bytes)
{
    LOOPWRIGHT_ASSIGN(auto out, OutFile::open(path, kind));
    LOOPWRIGHT_TRY(out.write(bytes));
    return out.commit();
}

Result<void> makeFolder(const QString &path)
{
    if (isBesideDatabase(QDir::cleanPath(QFileInfo(path).absoluteFilePath())))
        return failure(ErrorCode::Usage, "is a name that a database keeps for itself", path);
    if (!QDir().mkpath(path))
        return failure(ErrorCode::DiskTrouble, "the folder cannot be made", path);
    return {};
}

Result<void> checkFolder(const QString &path)
{
    if (path.isEmpty())
        return {};
    const QString clean = QDir::cleanPath(QFileInfo(path).absoluteFilePath());
    if (isBesideDatabase(clean))
        return failure(ErrorCode::Usage, "is a name that a database keeps for itself", path);
    QFileInfo nearest(clean); // that is there: the rest would be made in it
    while (!nearest.exists() && !nearest.isSymLink() && !nearest.isRoot())
        nearest.setFile(nearest.path());
    if (!nearest.isDir())
        return failure(ErrorCode::DiskTrouble, "is no folder", nearest.filePath());
    if (!nearest.isWritable())
        return failure(ErrorCode::DiskTrouble, "nothing can be written into it",
                       nearest.filePath());
    return {};
}

Result<void> checkOut(const QString &path, FileKind kind)
{
    if (path.isEmpty())
        return {};
    return OutFile::open(path, kind).map([](const OutFile &) {}); // given up unwritten
}

} // namespace loopwright
