#include "db/FirstBytes.h"

#include <QFileInfo>

#include <algorithm>
#include <memory>
#include <sqlite3.h>

namespace loopwright {

namespace {

struct FreeFileName
{
    void operator()(const char *name) const { sqlite3_free_filename(name); }
};

/// A file that SQLite's operating system layer has open.
class OpenFile
{
public:
    explicit OpenFile(const QString &path)
        : m_vfs(sqlite3_vfs_find(nullptr))
        , m_memory(std::make_unique<std::max_align_t[]>(
              std::size_t(m_vfs->szOsFile) / sizeof(std::max_align_t) + 1))
        , m_file(reinterpret_cast<sqlite3_file *>(m_memory.get()))
    {
        QByteArray full(m_vfs->mxPathname + 1, '\0');
        const int found = m_vfs->xFullPathname(m_vfs, QFile::encodeName(path).constData(),
                                               int(full.size()), full.data());
        if (found != SQLITE_OK && found != SQLITE_OK_SYMLINK)
            return;
        m_name.reset(sqlite3_create_filename(full.constData(), "", "", 0, nullptr));
        m_isOpen = m_name &&
                   m_vfs->xOpen(m_vfs, m_name.get(), m_file,
                                SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_READONLY, nullptr) == SQLITE_OK;
    }
    ~OpenFile()
    {
        if (m_file->pMethods)
            m_file->pMethods->xClose(m_file);
    }
    OpenFile(const OpenFile &) = delete;
    OpenFile &operator=(const OpenFile &) = delete;

    Result<QByteArray> read(const QString &path, int count)
    {
        // SQLite takes a file of one byte for an empty one; the folder's entry does not.
        QByteArray bytes(std::min<qsizetype>(count, QFileInfo(path).size()), '\0');
        const bool read = m_isOpen && m_file->pMethods->xRead(m_file, bytes.data(),
                                                              int(bytes.size()), 0) == SQLITE_OK;
        if (!read)
            return failure(ErrorCode::DatabaseTrouble, "cannot be read", path);
        return bytes;
    }

private:
    sqlite3_vfs *m_vfs;
    std::unique_ptr<std::max_align_t[]> m_memory;
    sqlite3_file *m_file;
    std::unique_ptr<const char, FreeFileName> m_name;
    bool m_isOpen = false;
};

} // namespace

Result<QByteArray> firstBytes(const QString &path, int count)
{
    sqlite3_initialize(); // nothing if a connection was opened before
    return OpenFile(path).read(path, count);
}

} // namespace loopwright
