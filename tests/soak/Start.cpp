#include "tests/soak/Start.h"

#include "app/trust/KeyFolder.h"
#include "tests/soak/VanTasks.h"

#include <QElapsedTimer>
#include <QFile>

#include <algorithm>

namespace loopwright::soak {

namespace {

void copyFiles(const QDir &from, const QDir &to)
{
    QDir().mkpath(to.path());
    for (const QString &name : from.entryList(QDir::Files))
        if (!QFile::copy(from.filePath(name), to.filePath(name)))
            qFatal("cannot copy %s", qPrintable(name));
}

} // namespace

const Start &Start::made(const QString &folder)
{
    static const Start start(folder);
    return start;
}

Start::Start(const QString &folder)
    : m_folder(folder)
{
    for (const bool certified : {false, true}) {
        QDir().mkpath(placeOf(certified).stick().path());
        makeStart(placeOf(certified), certified);
    }
    for (int work = 0; work < works; ++work)
        measure(Work(work));
}

Place Start::placeOf(bool certified) const
{
    return {QDir(m_folder.filePath(certified ? "certified" : "uncertified"))};
}

void Start::begin(const Place &place, bool certified) const
{
    // The rounds begin with the same records: to the machine that went on with them in the round
    // before they are an older copy.
    for (QDir keys : {QDir(KeyFolder::defaultPath()), QDir(vanKeys().path())})
        for (const QString &name : keys.entryList({"*.head"}, QDir::Files))
            if (!keys.remove(name))
                qFatal("cannot remove %s", qPrintable(name));
    copyFiles(placeOf(certified).folder, place.folder);
    copyFiles(placeOf(certified).stick(), place.stick());
}

void Start::measure(Work work)
{
    Place place{m_folder.filePath("measured")};
    begin(place, true);
    Cost &cost = m_costs[int(work)];
    const Told told = Worker::within({place, {{work, 1}}}).wait();
    if (told.done.size() != 1)
        qFatal("a task fails undisturbed: %s",
               qPrintable(told.failed.empty() ? told.wrong : told.failed[0].why));
    std::copy(std::begin(told.calls), std::end(told.calls), cost.calls);
    const Task task{work, 2};
    QElapsedTimer timer;
    timer.start();
    if (Worker::program(wordsFor(place, task), task).wait().done.size() != 1)
        qFatal("the program fails undisturbed");
    cost.programUs = timer.nsecsElapsed() / 1000;
    place.folder.removeRecursively();
}

} // namespace loopwright::soak
