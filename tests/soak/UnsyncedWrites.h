#pragma once
// What was written to files and not synced yet, so that a power cut can lose it: every sector ends
// as one of the contents that it had since the last sync, in any mixture; a file that grew may have
// its old length, a new file may be gone, a deleted one back. The sectors around a write keep
// what was synced, as SQLite expects of a disk (SQLITE_IOCAP_POWERSAFE_OVERWRITE).

#include "tests/soak/Chance.h"

#include <QByteArray>

#include <map>
#include <sqlite3.h>
#include <string>
#include <vector>

namespace loopwright::soak {

class UnsyncedWrites
{
public:
    explicit UnsyncedWrites(qint64 sector)
        : m_sector(sector)
    {
    }

    void created(const std::string &path);
    /// Called before these bytes are written or cut off.
    void willChange(const std::string &path, sqlite3_file *file, qint64 from, qint64 to);
    void willDelete(const std::string &path);
    void synced(const std::string &path);
    /// The power is cut: the files on the disk are made to look like it.
    void lose(Chance &chance);

private:
    struct Changed
    {
        bool isNew = false;
        qint64 size = 0;                                   ///< when it was synced
        std::map<qint64, std::vector<QByteArray>> earlier; ///< by sector, oldest first
    };
    Changed &changed(const std::string &path, sqlite3_file *file);
    void loseFrom(int file, const Changed &changed, Chance &chance) const;

    qint64 m_sector;
    std::map<std::string, Changed> m_changed;
    std::map<std::string, QByteArray> m_deleted;
};

} // namespace loopwright::soak
