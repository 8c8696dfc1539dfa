#include "tests/soak/Worker.h"

#include "db/Connection.h"
#include "tests/soak/SetBackClock.h"
#include "tests/soak/VanTasks.h"

#include <QElapsedTimer>
#include <QFile>

#include <csignal>
#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

namespace loopwright::soak {

namespace {

void say(int tell, const QString &line)
{
    const QByteArray bytes = line.toUtf8() + '\n';
    if (::write(tell, bytes.constData(), std::size_t(bytes.size())) != bytes.size())
        _exit(3);
}

void sayFailed(int tell, const Task &task, const QElapsedTimer &timer, const Error &error)
{
    say(tell, QString("failed %1 %2 %3")
                  .arg(task.number)
                  .arg(timer.elapsed())
                  .arg(error.text().simplified()));
}

Result<std::unique_ptr<Records>> openedFor(const Worker::Job &job, Work work)
{
    LOOPWRIGHT_ASSIGN(auto records, isInVan(work) ? openVan(job.place.van())
                                                  : Records::open(job.place.records()));
    if (job.often)
        LOOPWRIGHT_TRY(
            records->database().connection().run("PRAGMA wal_autocheckpoint = 8", "soak"));
    return records;
}

/// The records of a process, each once a task needs them.
struct OpenRecords
{
    std::unique_ptr<Records> office, van;
};

/// Opens the records if they are not, so that an error at opening is tried again as a person would.
Result<Acknowledged> attempt(OpenRecords &open, const Worker::Job &job, const Task &task)
{
    setClockBack(task.clockDaysBack);
    std::unique_ptr<Records> &records = isInVan(task.work) ? open.van : open.office;
    if (!records) {
        LOOPWRIGHT_ASSIGN(records, openedFor(job, task.work));
    }
    return doTask(*records, job.place, task);
}

int workThrough(const Worker::Job &job, int tell)
{
    putFaultyDisk(job.fault);
    OpenRecords records;
    for (const Task &task : job.tasks) {
        QElapsedTimer timer;
        timer.start();
        if (const auto done = attempt(records, job, task))
            say(tell, QString("done %1 %2 %3 %4")
                          .arg(done->number)
                          .arg(done->position)
                          .arg(done->copied)
                          .arg(done->file.isEmpty() ? QString("-") : done->file));
        else
            sayFailed(tell, task, timer, done.error());
    }
    const bool cut = job.fault.what == Fault::What::CutPower;
    if (cut && job.fault.seed % 2 == 0)
        cutPower(); // the records are open; else they are closed first
    records = {};
    if (cut)
        cutPower();
    say(tell, QString("calls %1 %2 %3")
                  .arg(countedCalls(Fault::Count::Changes))
                  .arg(countedCalls(Fault::Count::Syncs))
                  .arg(countedCalls(Fault::Count::Calls)));
    return 0;
}

int runProgram(const QStringList &words, const QString &home, int tell)
{
    if (!home.isEmpty())
        qputenv("XDG_DATA_HOME", QFile::encodeName(home));
    ::dup2(tell, STDOUT_FILENO);
    ::dup2(tell, STDERR_FILENO);
    const QByteArray program = LOOPWRIGHT_BIN_DIR "/loopwright-cli";
    std::vector<QByteArray> kept{program};
    for (const QString &word : words)
        kept.push_back(word.toUtf8());
    std::vector<char *> arguments;
    arguments.reserve(kept.size() + 1);
    for (QByteArray &word : kept)
        arguments.push_back(word.data());
    arguments.push_back(nullptr);
    ::execv(program.constData(), arguments.data());
    return 127;
}

void read(Told &told, const QByteArray &line)
{
    const QList<QByteArray> words = line.split(' ');
    if (words[0] == "done" && words.size() == 5)
        told.done.push_back({words[1].toInt(), words[2].toLongLong(), words[3].toLongLong(),
                             words[4] == "-" ? QString() : QString::fromLatin1(words[4])});
    else if (words[0] == "failed" && words.size() > 3)
        told.failed.push_back({words[1].toInt(), words[2].toLongLong(),
                               QString::fromUtf8(words.sliced(3).join(' '))});
    else if (words[0] == "calls" && words.size() == 4)
        for (int i = 0; i < 3; ++i)
            told.calls[i] = words[i + 1].toLongLong();
    else if (!line.isEmpty())
        told.wrong += QString::fromUtf8(line) + ' '; // a sanitizer, an assertion
}

} // namespace

Worker Worker::start(const std::function<int(int tell)> &work)
{
    int ends[2] = {};
    if (::pipe2(ends, O_CLOEXEC) != 0)
        qFatal("no pipe");
    Worker worker;
    worker.m_process = ::fork();
    if (worker.m_process < 0)
        qFatal("no process");
    if (worker.m_process == 0) {
        ::dup2(ends[1], STDERR_FILENO);
        _exit(work(ends[1])); // nothing of this process is taken down in the other one
    }
    ::close(ends[1]);
    worker.m_told = ends[0];
    return worker;
}

Worker Worker::within(const Job &job)
{
    return start([&job](int tell) { return workThrough(job, tell); });
}

Worker Worker::program(const QStringList &words, const Task &task)
{
    const QString home = isInVan(task.work) ? vanHome() : QString();
    Worker worker = start([&](int tell) { return runProgram(words, home, tell); });
    worker.m_number = task.number;
    return worker;
}

void Worker::kill()
{
    ::kill(m_process, SIGKILL);
}

Told Worker::wait()
{
    QFile pipe;
    if (!pipe.open(m_told, QIODevice::ReadOnly, QFileDevice::AutoCloseHandle))
        qFatal("the pipe cannot be read");
    const QByteArray all = pipe.readAll();
    int status = 0;
    ::waitpid(m_process, &status, 0);
    Told told;
    told.killed = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    const int code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    if (m_number == 0)
        for (const QByteArray &line : all.split('\n'))
            read(told, line);
    else if (code == 0)
        told.done.push_back({m_number, 0, 0, {}});
    else if (code > 0 && code < 6)
        told.failed.push_back({m_number, 0, QString::fromUtf8(all).simplified()});
    if (!told.killed && (m_number == 0 ? code != 0 : code < 0 || code > 5))
        told.wrong += QString("ended with status %1: %2").arg(status).arg(QString::fromUtf8(all));
    return told;
}

} // namespace loopwright::soak
