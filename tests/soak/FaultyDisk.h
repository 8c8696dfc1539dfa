#pragma once
// A disk under SQLite that fails when it is told to: it kills the process at a call, loses power
// and with it what was not synced, or refuses calls. It is a layer over SQLite's own, and what
// a process opens after it was put there lies on it. Of files beside SQLite's their syncing and
// renaming counts, and may fail.

#include <QtGlobal>

namespace loopwright::soak {

struct Fault
{
    enum class What
    {
        None,
        Kill,
        CutPower,
        Refuse
    };
    enum class Count
    {
        Changes, ///< writes, syncs, truncations, deletions, renaming
        Syncs,   ///< where a commit begins to count
        Calls    ///< opening, reading and locking too
    };
    What what = What::None;
    Count count = Count::Changes;
    qint64 at = 0;           ///< strikes at this call, counted from 1; 0: never
    bool afterwards = false; ///< the call is done first; not of refusing
    bool lasting = false;    ///< refuses every later call too
    bool full = false;       ///< refuses a write because the disk is full
    qint64 sector = 512;
    quint32 seed = 0; ///< which unsynced sectors are lost
};

/// For the rest of this process; once.
void putFaultyDisk(const Fault &fault);
/// So many calls so far.
qint64 countedCalls(Fault::Count count);
/// Refuses nothing from now on.
void repairDisk();
[[noreturn]] void cutPower();

} // namespace loopwright::soak
