#include "tests/soak/UnsyncedWrites.h"

#include <QFile>

#include <algorithm>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace loopwright::soak {

namespace {

qint64 sizeOf(sqlite3_file *file)
{
    sqlite3_int64 size = 0;
    return file->pMethods->xFileSize(file, &size) == SQLITE_OK ? qint64(size) : 0;
}

void require(bool done, const std::string &path)
{
    if (!done)
        qFatal("cannot make %s look like a power cut", path.c_str());
}

} // namespace

void UnsyncedWrites::created(const std::string &path)
{
    m_changed[path].isNew = true;
}

UnsyncedWrites::Changed &UnsyncedWrites::changed(const std::string &path, sqlite3_file *file)
{
    const auto [entry, isFirst] = m_changed.try_emplace(path);
    if (isFirst)
        entry->second.size = sizeOf(file);
    return entry->second;
}

void UnsyncedWrites::willChange(const std::string &path, sqlite3_file *file, qint64 from, qint64 to)
{
    Changed &file_ = changed(path, file);
    for (qint64 sector = from / m_sector; sector * m_sector < to; ++sector) {
        QByteArray content(m_sector, '\0'); // what lies past the end stays zero
        file->pMethods->xRead(file, content.data(), int(m_sector), sector * m_sector);
        file_.earlier[sector].push_back(content);
    }
}

void UnsyncedWrites::willDelete(const std::string &path)
{
    QFile file(QFile::decodeName(QByteArray::fromStdString(path)));
    if (file.open(QIODevice::ReadOnly))
        m_deleted[path] = file.readAll();
    m_changed.erase(path);
}

void UnsyncedWrites::synced(const std::string &path)
{
    m_changed.erase(path);
    m_deleted.erase(path); // SQLite syncs the folder too when it syncs a new file
}

void UnsyncedWrites::loseFrom(int file, const Changed &changed, Chance &chance) const
{
    struct stat now = {};
    ::fstat(file, &now);
    const qint64 size = now.st_size;
    const qint64 shorter = std::min(changed.size, size), longer = std::max(changed.size, size);
    const qint64 sizes[] = {changed.size, size, shorter + upTo(longer - shorter, chance)};
    for (const auto &[sector, contents] : changed.earlier) {
        const auto pick = std::size_t(upTo(qint64(contents.size()), chance));
        if (pick < contents.size()) // else the newest stays
            require(::pwrite(file, contents[pick].constData(), std::size_t(m_sector),
                             sector * m_sector) == m_sector,
                    "a file");
    }
    require(::ftruncate(file, sizes[upTo(2, chance)]) == 0, "a file");
}

void UnsyncedWrites::lose(Chance &chance)
{
    for (const auto &[path, changed] : m_changed) {
        if (changed.isNew && oneIn(2, chance)) {
            ::unlink(path.c_str());
            continue;
        }
        const int file = ::open(path.c_str(), O_RDWR | O_CLOEXEC);
        if (file < 0)
            continue; // deleted past SQLite, with what belonged to it
        loseFrom(file, changed, chance);
        ::close(file);
    }
    for (const auto &[path, content] : m_deleted) {
        QFile file(QFile::decodeName(QByteArray::fromStdString(path)));
        if (oneIn(2, chance) && file.open(QIODevice::WriteOnly | QIODevice::NewOnly))
            require(file.write(content) == content.size(), path);
    }
}

} // namespace loopwright::soak
