#include "tests/soak/Rounds.h"

#include "tests/soak/Chance.h"
#include "tests/soak/LookingAtVans.h"
#include "tests/soak/Start.h"
#include "tests/soak/VanTasks.h"
#include "tests/support/SmallDisk.h"

#include <algorithm>
#include <fcntl.h>
#include <iterator>
#include <sys/statvfs.h>
#include <unistd.h>

namespace loopwright::soak {

namespace {

Worker programFor(const Place &place, const Task &task)
{
    return Worker::program(wordsFor(place, task), task);
}

/// Fills a disk with this file until there is only so much room.
void fillBut(qint64 room, const QString &path)
{
    QFile file(path);
    struct statvfs disk = {};
    const bool isThere = file.open(QIODevice::WriteOnly) && ::fstatvfs(file.handle(), &disk) == 0;
    const qint64 size = qint64(disk.f_bavail) * qint64(disk.f_bsize) - room;
    if (!isThere || size <= 0 || ::posix_fallocate(file.handle(), 0, size) != 0)
        qFatal("the small disk cannot be filled");
}

class Rounds
{
public:
    Rounds(const QString &kind, const Plan &plan)
        : m_kind(kind)
        , m_plan(plan)
        , m_folder(plan.folder)
        , m_start(Start::made(plan.folder))
    {
        m_tally.kind = kind;
    }
    Tally run();

private:
    using Disturbed = void (Rounds::*)(const Place &, Begun &, Chance &);
    Disturbed disturbed() const;
    void kills(const Place &place, Begun &begun, Chance &chance);
    void power(const Place &place, Begun &begun, Chance &chance);
    void disk(const Place &place, Begun &begun, Chance &chance);
    void io(const Place &place, Begun &begun, Chance &chance);
    void writers(const Place &place, Begun &begun, Chance &chance);
    void clock(const Place &place, Begun &begun, Chance &chance);

    void round(int number);
    void lookAtRecords(const Place &place, const Begun &begun, Database::Access access);
    void goOn(const Place &place, Begun &begun);
    std::vector<Task> someTasks(int first, int count, Chance &chance) const;
    qint64 someCall(const std::vector<Task> &tasks, Fault::Count count, Chance &chance) const;
    void killProgram(const Place &place, Begun &begun, Chance &chance);
    void mustNotFail(const Begun &begun);
    void wrong(const QString &what) { m_looking->count(m_tally.wrong, what); }

    QString m_kind;
    Plan m_plan;
    QDir m_folder;
    const Start &m_start;
    Tally m_tally;
    std::unique_ptr<SmallDisk> m_disk, m_stick;
    Looking *m_looking = nullptr; ///< of the round
    bool m_certified = true;      ///< the start of the round
};

Tally Rounds::run()
{
    if (m_kind == "disk") {
        m_disk = std::make_unique<SmallDisk>("16M");
        m_stick = std::make_unique<SmallDisk>("2M");
        if (!m_disk->mounted() || !m_stick->mounted()) {
            m_tally.skipped = "only root can mount a small disk";
            return m_tally;
        }
    }
    for (int i = 0; i < m_plan.rounds; ++i)
        round(m_plan.first + i);
    return m_tally;
}

void Rounds::round(int number)
{
    std::seed_seq seeds{m_plan.seed, quint32(number), quint32(kinds().indexOf(m_kind))};
    Chance chance(seeds);
    const QString name = QString("round-%1").arg(number);
    Place place{m_disk ? m_disk->file(name) : m_folder.filePath(name)};
    const int faultsBefore = m_tally.faults();
    Looking looking(m_tally, place,
                    QString("%1, seed %2, round %3").arg(m_kind).arg(m_plan.seed).arg(number));
    m_looking = &looking;
    m_certified = !oneIn(3, chance);
    if (m_stick) {
        QDir().mkpath(place.folder.path());
        QDir().mkpath(m_stick->file(name));
        QFile::link(m_stick->file(name), place.stick().path());
    }
    m_start.begin(place, m_certified);
    Begun begun;
    (this->*disturbed())(place, begun, chance);
    const auto access = oneIn(2, chance) ? Database::Access::ReadOnly : Database::Access::ReadWrite;
    lookAtRecords(place, begun, access);
    goOn(place, begun);
    LookingAtVans(looking, m_tally, place, begun).atWay();
    looking.atLeftOvers();
    for (const Told &told : begun.told)
        if (!told.wrong.isEmpty())
            wrong(told.wrong);
    ++m_tally.rounds;
    m_tally.acknowledged += int(begun.acknowledged().size());
    if (m_disk || m_tally.faults() == faultsBefore)
        place.folder.removeRecursively();
    if (m_stick)
        QDir(m_stick->file(name)).removeRecursively();
}

void Rounds::lookAtRecords(const Place &place, const Begun &begun, Database::Access access)
{
    m_looking->atRecords(begun, access);
    LookingAtVans(*m_looking, m_tally, place, begun).atRecords(access);
}

/// The next commands of the same kinds work, do what is due, and take away what was begun. What is
/// between van and office is first commanded again, which must end what was begun and change
/// nothing of what is done.
void Rounds::goOn(const Place &place, Begun &begun)
{
    std::vector<Task> tasks, next;
    std::ranges::copy_if(begun.tasks, std::back_inserter(tasks), isOfVans, &Task::work);
    for (int work = 0; work < works; ++work)
        if (std::ranges::count(begun.tasks, Work(work), &Task::work) > 0)
            next.push_back({Work(work), followUp + 1 + 2 * work}); // none concernsCertified()
    tasks.insert(tasks.end(), next.begin(), next.end());
    const auto before = m_looking->papers();
    const bool asBefore = std::ranges::none_of(begun.tasks, concernsCertified);
    begun.tasks.insert(begun.tasks.end(), next.begin(), next.end());
    begun.told.push_back(Worker::within({place, tasks}).wait());
    for (const Failed &failed : begun.told.back().failed)
        wrong("afterwards a task fails: " + failed.why);
    lookAtRecords(place, begun, Database::Access::ReadWrite);
    const auto after = m_looking->papers();
    if (!before || !after || std::ranges::count(tasks, Work::Issue, &Task::work) == 0)
        return;
    if (after->sums.isEmpty() || after->file != after->sums.back() || after->isDue)
        m_looking->count(m_tally.halfDone, "the last paper was not written");
    if (before->isDue && asBefore && before->sums != after->sums)
        m_looking->count(m_tally.halfDone, "a paper that was due was not made again");
}

/// Two writers do not restore: that asks for records that nobody has open. A power cut leaves names
/// as they are, and what makes or restores records depends on when names reach the disk. Vans are
/// only in the start that is certified.
std::vector<Task> Rounds::someTasks(int first, int count, Chance &chance) const
{
    static constexpr Work often[] = {Work::Take,   Work::Open,   Work::Bring,  Work::Receive,
                                     Work::Take,   Work::Open,   Work::Bring,  Work::Receive,
                                     Work::Record, Work::Record, Work::Import, Work::Issue,
                                     Work::BackUp, Work::Create, Work::Restore};
    const int from = m_certified ? 0 : 8;
    const int last = m_kind == "power" ? 12 : m_kind == "writers" ? 13 : 14;
    std::vector<Task> tasks;
    tasks.reserve(std::size_t(count));
    for (int i = 0; i < count; ++i)
        tasks.push_back({often[from + upTo(last - from, chance)], first + i});
    return tasks;
}

/// One of the calls that the tasks need, opening and closing among them; rarely one more.
qint64 Rounds::someCall(const std::vector<Task> &tasks, Fault::Count count, Chance &chance) const
{
    qint64 all = 0;
    for (const Task &task : tasks)
        all += m_start.cost(task.work).calls[int(count)];
    return 1 + upTo(std::max<qint64>(all - 1, 0), chance);
}

/// At a call of the disk, at the syncing of a commit among them, or at any time.
void Rounds::kills(const Place &place, Begun &begun, Chance &chance)
{
    if (oneIn(2, chance))
        return killProgram(place, begun, chance);
    begun.tasks = someTasks(1, int(1 + upTo(2, chance)), chance);
    Fault fault{Fault::What::Kill, oneIn(2, chance) ? Fault::Count::Syncs : Fault::Count::Changes};
    fault.at = someCall(begun.tasks, fault.count, chance);
    fault.afterwards = oneIn(2, chance);
    begun.told.push_back(Worker::within({place, begun.tasks, fault, oneIn(3, chance)}).wait());
    m_tally.struck += begun.told.back().killed;
    mustNotFail(begun);
}

void Rounds::killProgram(const Place &place, Begun &begun, Chance &chance)
{
    const int all = m_certified ? works : worksWithoutVans;
    const Task task{Work(upTo(all - 1, chance)), int(1 + upTo(1, chance))};
    begun.tasks = {task};
    Worker worker = programFor(place, task);
    ::usleep(useconds_t(upTo(m_start.cost(task.work).programUs, chance)));
    worker.kill();
    begun.told.push_back(worker.wait());
    m_tally.struck += begun.told.back().killed;
}

void Rounds::power(const Place &place, Begun &begun, Chance &chance)
{
    begun.tasks = someTasks(1, int(1 + upTo(2, chance)), chance);
    Fault fault{Fault::What::CutPower,
                oneIn(2, chance) ? Fault::Count::Syncs : Fault::Count::Changes};
    fault.at = someCall(begun.tasks, fault.count, chance);
    fault.afterwards = oneIn(2, chance);
    fault.sector = oneIn(2, chance) ? 512 : 4096;
    fault.seed = chance();
    begun.told.push_back(Worker::within({place, begun.tasks, fault, oneIn(3, chance)}).wait());
    m_tally.struck += begun.told.back().killed;
    mustNotFail(begun);
}

void Rounds::disk(const Place &place, Begun &begun, Chance &chance)
{
    const bool onStick = oneIn(3, chance);
    const int most = onStick ? 6 : 9; // up to 256 KB, or 2 MB
    const qint64 pages = upTo((qint64(1) << upTo(most, chance)) - 1, chance);
    const bool byProgram = oneIn(3, chance);
    begun.tasks = someTasks(1, byProgram ? 1 : int(1 + upTo(2, chance)), chance);
    static constexpr Work givenOut[] = {Work::Issue, Work::Take, Work::Bring};
    if (onStick)
        for (Task &task : begun.tasks)
            task.work = givenOut[upTo(m_certified ? 2 : 0, chance)];
    // What the program reads is written while there is room.
    const QStringList words = wordsFor(place, begun.tasks[0]);
    const QString ballast = (onStick ? *m_stick : *m_disk).file("ballast");
    fillBut(pages * 4096, ballast);
    Worker worker = byProgram ? Worker::program(words, begun.tasks[0])
                              : Worker::within({place, begun.tasks, {}, oneIn(3, chance)});
    begun.told.push_back(worker.wait());
    QFile::remove(ballast);
    m_tally.struck += !begun.told.back().failed.empty();
}

void Rounds::io(const Place &place, Begun &begun, Chance &chance)
{
    begun.tasks = someTasks(1, int(1 + upTo(2, chance)), chance);
    Fault fault{Fault::What::Refuse, Fault::Count(upTo(2, chance))};
    fault.at = someCall(begun.tasks, fault.count, chance);
    fault.lasting = oneIn(3, chance);
    fault.full = oneIn(3, chance);
    begun.told.push_back(Worker::within({place, begun.tasks, fault, oneIn(3, chance)}).wait());
    const Told &told = begun.told.back();
    m_tally.struck += !told.failed.empty();
    // The same open records go on when the disk does.
    if (!fault.lasting && told.failed.size() > 1)
        wrong("one error made two tasks fail: " + told.failed.back().why);
}

void Rounds::writers(const Place &place, Begun &begun, Chance &chance)
{
    const bool byProgram = oneIn(3, chance);
    begun.atOnce = true;
    std::vector<Worker> both;
    for (const int first : {1, 12}) {
        const auto tasks = someTasks(first, byProgram ? 1 : 3, chance);
        begun.tasks.insert(begun.tasks.end(), tasks.begin(), tasks.end());
        both.push_back(byProgram ? programFor(place, tasks[0])
                                 : Worker::within({place, tasks, {}, oneIn(2, chance)}));
    }
    for (Worker &worker : both)
        begun.told.push_back(worker.wait());
    ++m_tally.struck;
    mustNotFail(begun);
}

/// Whoever is not killed before does all.
void Rounds::mustNotFail(const Begun &begun)
{
    for (const Told &told : begun.told)
        for (const Failed &failed : told.failed)
            wrong(QString("task %1 fails after %2 ms: %3")
                      .arg(failed.number)
                      .arg(failed.ms)
                      .arg(failed.why));
}

/// The clock of the machine and the time that is told jump to and fro between the tasks.
void Rounds::clock(const Place &place, Begun &begun, Chance &chance)
{
    constexpr double day = 86'400;
    constexpr int days = 500; // into the next year and back
    begun.tasks = someTasks(1, 4, chance);
    for (Task &task : begun.tasks) {
        task.now = task.now.plusSeconds(double(upTo(days, chance)) * day);
        task.clockDaysBack = int(upTo(days, chance));
    }
    if (oneIn(3, chance))
        for (const Task &task : begun.tasks)
            begun.told.push_back(programFor(place, task).wait());
    else
        begun.told.push_back(Worker::within({place, begun.tasks}).wait());
    ++m_tally.struck;
    mustNotFail(begun);
    qint64 positions[2] = {}; // office, van
    for (const Acknowledged &each : begun.acknowledged()) {
        qint64 &position = positions[isInVan(begun.taskOf(each).work)];
        if (each.position != 0 && each.position < position)
            wrong("the log is out of order");
        position = std::max(position, each.position);
    }
}

Rounds::Disturbed Rounds::disturbed() const
{
    static constexpr Disturbed all[] = {&Rounds::kills, &Rounds::power,   &Rounds::disk,
                                        &Rounds::io,    &Rounds::writers, &Rounds::clock};
    return all[kinds().indexOf(m_kind)];
}

} // namespace

QStringList kinds()
{
    return {"kills", "power", "disk", "io", "writers", "clock"};
}

Tally runRounds(const QString &kind, const Plan &plan)
{
    return Rounds(kind, plan).run();
}

} // namespace loopwright::soak
