#include "tests/soak/FaultyDisk.h"

#include "tests/soak/UnsyncedWrites.h"

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <optional>
#include <sqlite3.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace loopwright::soak {

namespace {

struct Disk
{
    Fault fault;
    sqlite3_vfs *real = nullptr;
    sqlite3_vfs faulty = {};
    qint64 calls[3] = {}; ///< by Fault::Count
    bool struck = false;
    bool within = false;                    ///< a call of SQLite's is counted already
    std::optional<UnsyncedWrites> unsynced; ///< if the power will be cut
};
Disk disk; // one for the process, as SQLite's register of layers is

struct File
{
    sqlite3_file base; // first: SQLite knows no more of it
    const char *name;  ///< null of a temporary file
    sqlite3_file *real;
};
File *fileOf(sqlite3_file *file)
{
    return reinterpret_cast<File *>(file);
}
sqlite3_file *realOf(sqlite3_file *file)
{
    return fileOf(file)->real;
}

[[noreturn]] void killMyself()
{
    std::raise(SIGKILL);
    _exit(1); // not reached
}

void strike()
{
    if (disk.fault.what == Fault::What::Kill)
        killMyself();
    if (disk.fault.what == Fault::What::CutPower)
        cutPower();
}

/// Counts a call, and does it or what the fault makes of it.
template<class Call>
int counted(Fault::Count what, int refusal, Call call)
{
    bool now = false;
    for (const auto count : {Fault::Count::Changes, Fault::Count::Syncs, Fault::Count::Calls}) {
        const bool counts = count == Fault::Count::Calls || count == what ||
                            (count == Fault::Count::Changes && what == Fault::Count::Syncs);
        if (counts && ++disk.calls[int(count)] == disk.fault.at && count == disk.fault.count)
            now = true;
    }
    const bool refused =
        disk.fault.what == Fault::What::Refuse && (now || (disk.struck && disk.fault.lasting));
    disk.struck = disk.struck || now;
    if (refused)
        return refusal;
    if (now && !disk.fault.afterwards)
        strike();
    const int code = call();
    if (now && disk.fault.afterwards)
        strike();
    return code;
}

void willChange(sqlite3_file *file, qint64 from, qint64 to)
{
    if (disk.unsynced && fileOf(file)->name)
        disk.unsynced->willChange(fileOf(file)->name, realOf(file), from, to);
}

int closeFile(sqlite3_file *file)
{
    return realOf(file)->pMethods->xClose(realOf(file));
}
int readFile(sqlite3_file *file, void *to, int count, sqlite3_int64 offset)
{
    return counted(Fault::Count::Calls, SQLITE_IOERR_READ,
                   [=] { return realOf(file)->pMethods->xRead(realOf(file), to, count, offset); });
}
int writeFile(sqlite3_file *file, const void *from, int count, sqlite3_int64 offset)
{
    return counted(Fault::Count::Changes, disk.fault.full ? SQLITE_FULL : SQLITE_IOERR_WRITE, [=] {
        willChange(file, offset, offset + count);
        return realOf(file)->pMethods->xWrite(realOf(file), from, count, offset);
    });
}
int truncateFile(sqlite3_file *file, sqlite3_int64 size)
{
    return counted(Fault::Count::Changes, SQLITE_IOERR_TRUNCATE, [=] {
        sqlite3_int64 before = 0;
        realOf(file)->pMethods->xFileSize(realOf(file), &before);
        willChange(file, size, before);
        return realOf(file)->pMethods->xTruncate(realOf(file), size);
    });
}
int syncFile(sqlite3_file *file, int flags)
{
    return counted(Fault::Count::Syncs, SQLITE_IOERR_FSYNC, [=] {
        disk.within = true;
        const int code = realOf(file)->pMethods->xSync(realOf(file), flags);
        disk.within = false;
        if (code == SQLITE_OK && disk.unsynced && fileOf(file)->name)
            disk.unsynced->synced(fileOf(file)->name);
        return code;
    });
}
int sizeOfFile(sqlite3_file *file, sqlite3_int64 *size)
{
    return counted(Fault::Count::Calls, SQLITE_IOERR_FSTAT,
                   [=] { return realOf(file)->pMethods->xFileSize(realOf(file), size); });
}
int lockFile(sqlite3_file *file, int level)
{
    return counted(Fault::Count::Calls, SQLITE_IOERR_LOCK,
                   [=] { return realOf(file)->pMethods->xLock(realOf(file), level); });
}
int unlockFile(sqlite3_file *file, int level)
{
    return realOf(file)->pMethods->xUnlock(realOf(file), level); // giving a lock back does not fail
}
int isReserved(sqlite3_file *file, int *reserved)
{
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), reserved);
}
int controlFile(sqlite3_file *file, int what, void *with)
{
    return realOf(file)->pMethods->xFileControl(realOf(file), what, with);
}
int sectorSize(sqlite3_file *file)
{
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}
int characteristics(sqlite3_file *file)
{
    return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file));
}
int mapShared(sqlite3_file *file, int page, int size, int extend, void volatile **memory)
{
    return counted(Fault::Count::Calls, SQLITE_IOERR_SHMMAP, [=] {
        return realOf(file)->pMethods->xShmMap(realOf(file), page, size, extend, memory);
    });
}
int lockShared(sqlite3_file *file, int offset, int count, int flags)
{
    const auto lock = [=] {
        return realOf(file)->pMethods->xShmLock(realOf(file), offset, count, flags);
    };
    return flags & SQLITE_SHM_UNLOCK ? lock()
                                     : counted(Fault::Count::Calls, SQLITE_IOERR_SHMLOCK, lock);
}
void barrierOfShared(sqlite3_file *file)
{
    realOf(file)->pMethods->xShmBarrier(realOf(file));
}
int unmapShared(sqlite3_file *file, int remove)
{
    return realOf(file)->pMethods->xShmUnmap(realOf(file), remove);
}

// Version 2: no reading through mapped memory, past the layer.
const sqlite3_io_methods methods = {2,
                                    closeFile,
                                    readFile,
                                    writeFile,
                                    truncateFile,
                                    syncFile,
                                    sizeOfFile,
                                    lockFile,
                                    unlockFile,
                                    isReserved,
                                    controlFile,
                                    sectorSize,
                                    characteristics,
                                    mapShared,
                                    lockShared,
                                    barrierOfShared,
                                    unmapShared,
                                    nullptr,
                                    nullptr};

int openFile(sqlite3_vfs *, const char *name, sqlite3_file *file, int flags, int *outFlags)
{
    File *opened = fileOf(file);
    opened->base.pMethods = nullptr; // SQLite closes what has methods
    opened->name = name;
    opened->real = reinterpret_cast<sqlite3_file *>(opened + 1);
    std::memset(opened->real, 0, std::size_t(disk.real->szOsFile));
    const bool isNew = name && (flags & SQLITE_OPEN_CREATE) && ::access(name, F_OK) != 0;
    const int code = counted(Fault::Count::Calls, SQLITE_CANTOPEN, [=] {
        return disk.real->xOpen(disk.real, name, opened->real, flags, outFlags);
    });
    if (opened->real->pMethods)
        opened->base.pMethods = &methods;
    if (isNew && code == SQLITE_OK && disk.unsynced)
        disk.unsynced->created(name);
    return code;
}

int deleteFile(sqlite3_vfs *, const char *name, int syncFolder)
{
    return counted(Fault::Count::Changes, SQLITE_IOERR_DELETE, [=] {
        if (disk.unsynced && !syncFolder)
            disk.unsynced->willDelete(name);
        return disk.real->xDelete(disk.real, name, syncFolder);
    });
}

/// A call of the main thread's for a file that is not SQLite's.
template<class Call>
int countedBeside(Fault::Count what, Call call)
{
    if (!disk.real || disk.within || ::gettid() != ::getpid())
        return call();
    constexpr int refusal = -2; // what no such call answers
    const int code = counted(what, refusal, call);
    if (code != refusal)
        return code;
    errno = disk.fault.full ? ENOSPC : EIO;
    return -1;
}

} // namespace

void putFaultyDisk(const Fault &fault)
{
    sqlite3_initialize();
    disk.fault = fault;
    disk.real = sqlite3_vfs_find(nullptr);
    if (fault.what == Fault::What::CutPower)
        disk.unsynced.emplace(fault.sector);
    disk.faulty =
        *disk.real; // all but files goes straight to the real one, which finds itself there
    disk.faulty.zName = "faulty";
    disk.faulty.pNext = nullptr;
    disk.faulty.szOsFile = int(sizeof(File)) + disk.real->szOsFile;
    disk.faulty.xOpen = openFile;
    disk.faulty.xDelete = deleteFile;
    if (sqlite3_vfs_register(&disk.faulty, 1) != SQLITE_OK)
        qFatal("the faulty disk cannot be put under SQLite");
}

qint64 countedCalls(Fault::Count count)
{
    return disk.calls[int(count)];
}

void repairDisk()
{
    disk.fault.what = Fault::What::None;
}

void cutPower()
{
    Chance chance(disk.fault.seed);
    if (disk.unsynced)
        disk.unsynced->lose(chance);
    killMyself();
}

} // namespace loopwright::soak

// What a program defines itself its libraries call too.

extern "C" int fsync(int file)
{
    return loopwright::soak::countedBeside(loopwright::soak::Fault::Count::Syncs,
                                           [file] { return int(::syscall(SYS_fsync, file)); });
}

extern "C" int rename(const char *from, const char *to) noexcept
{
    return loopwright::soak::countedBeside(loopwright::soak::Fault::Count::Changes, [from, to] {
        return int(::syscall(SYS_renameat2, AT_FDCWD, from, AT_FDCWD, to, 0));
    });
}
