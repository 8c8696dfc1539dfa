#include "app/actions/ExportFolder.h"

#include "app/actions/InFile.h"
#include "core/base/Csv.h"
#include "db/LeftOvers.h"
#include "db/OfficeStore.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QUrl>
#include <QUuid>

namespace loopwright {

namespace {

/// The longest that every file system takes, with room for what stands behind it.
constexpr int longestFileName = 120;
const QString manifestName = QStringLiteral("manifest.json");
const QString partStem = QStringLiteral(".export-");
constexpr qint64 longestManifest = 200'000'000; // bytes; a line for each record of a job

/// A name by which rows and facts are told apart, or a digest: digits in it are no number that
/// somebody dialled.
bool isMachineName(const QString &text)
{
    static const QRegularExpression hex(R"(\A[0-9a-f]{64}\z)");
    return !QUuid::fromString(text).isNull() || hex.match(text).hasMatch();
}

/// The guard tells what was dialled by the key before it.
QString coveredValue(const QString &key, const QString &text, const NumberGuard &guard)
{
    if (isMachineName(text))
        return text;
    const QString before = '"' + key + "\":\"";
    const QString covered = guard.coverStored(before + text + '"');
    return covered.startsWith(before) ? covered.mid(before.size()).chopped(1)
                                      : guard.coverStored(text);
}

QJsonValue coveredUnder(const QString &key, const QJsonValue &value, const NumberGuard &guard)
{
    if (value.isString())
        return coveredValue(key, value.toString(), guard);
    if (value.isArray()) {
        QJsonArray list;
        const QJsonArray items = value.toArray();
        for (const QJsonValue &item : items)
            list << coveredUnder(key, item, guard);
        return list;
    }
    if (!value.isObject())
        return value;
    QJsonObject covered;
    const QJsonObject object = value.toObject();
    for (auto it = object.begin(); it != object.end(); ++it)
        covered.insert(it.key(), coveredUnder(it.key(), it.value(), guard));
    return covered;
}

} // namespace

Result<NumberGuard> guardOfAllOffices(Records &records)
{
    const OfficeStore store(records.database());
    LOOPWRIGHT_ASSIGN(const auto offices, store.all());
    QList<TestLine> lines;
    for (const ServingOffice &office : offices) {
        LOOPWRIGHT_ASSIGN(const auto some, store.testLines(office.key));
        lines += some;
    }
    return NumberGuard(lines);
}

QJsonValue coveredJson(const QJsonValue &value, const NumberGuard &guard)
{
    return coveredUnder({}, value, guard);
}

QString asFileName(const QString &name)
{
    QString safe = QString::fromLatin1(QUrl::toPercentEncoding(name, {}, "~"));
    if (safe.startsWith('.'))
        safe.replace(0, 1, "%2E");
    if (safe.size() > longestFileName)
        safe = safe.left(longestFileName - 17) + '~' + sha256Hex(name.toUtf8()).left(16);
    return safe;
}

namespace {

/// The files that a whole earlier export put there. Usage if the folder holds anything else: it is
/// not ours to fill.
Result<QStringList> filesOfEarlier(const QString &path)
{
    const QDir folder(path);
    if (folder.isEmpty())
        return QStringList();
    const QString manifest = folder.filePath(manifestName);
    const auto bytes = readFile(manifest, longestManifest);
    const auto object = bytes ? parseJsonObject(*bytes, manifest) : failure(bytes.error());
    if (!object || object->value("form").toInt() != 1 || !object->value("files").isArray())
        return failure(ErrorCode::Usage,
                       "holds files that no whole export left there: name an empty folder", path);
    QStringList names{manifestName}; // it goes first: without it the folder is not whole
    const QJsonArray files = object->value("files").toArray();
    for (const QJsonValue &file : files) {
        const QString name = file["file"].toString();
        const QFileInfo old(folder.filePath(name));
        if (QDir::isRelativePath(name) && !name.split('/').contains("..") && !old.isSymLink() &&
            old.isFile())
            names << name;
    }
    return names;
}

} // namespace

ExportFolder::Making::Making(const QString &path)
    : folder(path)
    , isNew(!QFileInfo::exists(path))
    , part(nameInTheMaking(QDir(path).filePath(partStem)))
{
}

ExportFolder::Making::~Making()
{
    QDir(part).removeRecursively();
    if (isNew)
        QDir().rmdir(folder); // if nothing is there
}

Result<ExportFolder> ExportFolder::open(const QString &path, ExportForm form)
{
    ExportFolder folder;
    folder.m_form = std::move(form);
    folder.m_making = std::make_unique<Making>(path);
    LOOPWRIGHT_TRY(makeFolder(path));
    removeLeftOvers(QDir(path).filePath(partStem));
    LOOPWRIGHT_ASSIGN(folder.m_earlier, filesOfEarlier(path));
    LOOPWRIGHT_TRY(makeFolder(folder.m_making->part));
    return folder;
}

Result<void> ExportFolder::Writing::add(const QByteArray &bytes)
{
    hash->addData(bytes);
    size += bytes.size();
    return file.write(bytes);
}

Result<ExportFolder::Writing> ExportFolder::begin(const QString &name, FileKind kind)
{
    const QString path = QDir(m_making->part).filePath(name);
    if (name.contains('/'))
        LOOPWRIGHT_TRY(makeFolder(QFileInfo(path).path()));
    LOOPWRIGHT_ASSIGN(auto file, OutFile::openInOwnFolder(path, kind, m_form.internal));
    return Writing{std::move(file),
                   std::make_unique<QCryptographicHash>(QCryptographicHash::Sha256)};
}

Result<void> ExportFolder::end(const QString &name, Writing &writing)
{
    LOOPWRIGHT_TRY(writing.file.commit());
    m_files << QJsonObject{{"file", name},
                           {"bytes", writing.size},
                           {"sha256", QString::fromLatin1(writing.hash->result().toHex())}};
    m_names << name;
    return {};
}

Result<void> ExportFolder::table(const QString &name,
                                 const std::function<Result<void>(const TakeCells &)> &fill)
{
    LOOPWRIGHT_ASSIGN(auto writing, begin(name, FileKind::Csv));
    LOOPWRIGHT_TRY(fill([&](const QStringList &row) {
        QStringList cells;
        for (const QString &cell : row) {
            const QString covered = isMachineName(cell) ? cell : m_form.guard.coverStored(cell);
            cells << (m_form.spreadsheet ? spreadsheetSafe(covered) : covered);
        }
        return writing.add(csvRecord(cells));
    }));
    return end(name, writing);
}

Result<void> ExportFolder::document(const QString &name, const QJsonValue &value)
{
    return bytes(name, FileKind::Json, canonicalJson(coveredJson(value, m_form.guard)) + '\n');
}

Result<void> ExportFolder::bytes(const QString &name, FileKind kind, const QByteArray &bytes)
{
    LOOPWRIGHT_ASSIGN(auto writing, begin(name, kind));
    LOOPWRIGHT_TRY(writing.add(bytes));
    return end(name, writing);
}

Result<void> ExportFolder::close(QJsonObject about)
{
    about.insert("form", 1);
    about.insert("unpublished_numbers",
                 m_form.internal ? QJsonValue("contained") : QJsonValue(NumberGuard::covered()));
    about.insert("files", m_files);
    LOOPWRIGHT_TRY(writeOut(QDir(m_making->part).filePath(manifestName), FileKind::Json,
                            canonicalJson(about) + '\n'));
    m_names << manifestName;
    return putInPlace();
}

/// All of it is written: what was there goes, and the new comes, its manifest last.
Result<void> ExportFolder::putInPlace()
{
    const QDir folder(m_making->folder), part(m_making->part);
    for (const QString &name : m_earlier)
        if (!QFile::remove(folder.filePath(name)))
            return failure(ErrorCode::DiskTrouble, "cannot be replaced", folder.filePath(name));
    for (const QString &name : m_names) {
        const QString path = folder.filePath(name);
        if (name.contains('/'))
            LOOPWRIGHT_TRY(makeFolder(QFileInfo(path).path()));
        if (!QFile::rename(part.filePath(name), path))
            return failure(ErrorCode::DiskTrouble, "cannot be put in its place", path);
        m_paths << path;
    }
    return {};
}

} // namespace loopwright
