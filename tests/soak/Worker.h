#pragma once
// A process that does tasks on the records of a round and tells of each when it is acknowledged. It
// may be killed at any moment; what it told before that counts.

#include "tests/soak/FaultyDisk.h"
#include "tests/soak/Tasks.h"

#include <functional>
#include <sys/types.h>
#include <vector>

namespace loopwright::soak {

struct Failed
{
    int number = 0;
    qint64 ms = 0; ///< so long it took
    QString why;
};

/// What a worker told, and how it ended.
struct Told
{
    std::vector<Acknowledged> done;
    std::vector<Failed> failed;
    bool killed = false;  ///< by SIGKILL
    QString wrong = {};   ///< how it ended else, if not well
    qint64 calls[3] = {}; ///< of the disk, by Fault::Count, if it came to its end
};

class Worker
{
public:
    struct Job
    {
        Place place;
        std::vector<Task> tasks;
        Fault fault = {};
        bool often = false; ///< writes the log of SQLite back into the file every few pages
    };
    /// This program, as another process that opens each records once.
    static Worker within(const Job &job);
    /// The command line program, for this task: wordsFor() it.
    static Worker program(const QStringList &words, const Task &task);

    void kill();
    Told wait();

private:
    static Worker start(const std::function<int(int tell)> &work);

    pid_t m_process = 0;
    int m_told = -1;  ///< a pipe, to be read
    int m_number = 0; ///< of the task, if it tells nothing itself
};

} // namespace loopwright::soak
