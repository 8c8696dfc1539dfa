#pragma once
// Work that must not block the window goes in two lanes, each a thread with its own connection to
// the records: one for questions, whose answers are wanted now, one for long work (imports,
// printing, exports). In a lane tasks run one after the other.
//
// Each part of the window that asks has an Asker. What it asked before can be superseded: what
// waits is dropped, what runs is interrupted in the database, and no answer of it arrives any more,
// not even one that was ready. Answers come in the window's thread.

#include "app/actions/Records.h"

#include <QElapsedTimer>
#include <QMutex>
#include <QThread>
#include <QWaitCondition>

#include <atomic>
#include <deque>

namespace loopwright {

/// What one asker asked together: it is superseded or stopped as one.
struct Ticket
{
    std::atomic<bool> superseded = false;
    std::atomic<bool> stopped = false;
};
using TicketPtr = std::shared_ptr<Ticket>;

class Lane
{
public:
    using OpenRecords = std::function<Result<std::unique_ptr<Records>>()>;
    /// What a task leaves to be done in the window's thread.
    using Answer = std::function<void()>;
    using Task = std::function<Answer(Result<Records *>)>;

    /// The thread starts, and `open` is called in it, when the first task comes.
    /// `prepare` is called in it before each task.
    explicit Lane(OpenRecords open, std::function<void(Records &)> prepare = {});
    /// Interrupts what runs and waits for it; no answer comes any more.
    ~Lane();
    Lane(const Lane &) = delete;
    Lane &operator=(const Lane &) = delete;

    void put(const TicketPtr &ticket, Task task);
    /// Drops what waits under the ticket and interrupts it where it runs.
    void supersede(const TicketPtr &ticket);
    /// From the lane's thread: runs `say` in the window's, unless the ticket is superseded by then.
    /// At most every 50 ms; others are left out.
    void report(const TicketPtr &ticket, Answer say);

private:
    struct Job
    {
        TicketPtr ticket;
        Task task;
    };
    class Thread : public QThread
    {
    public:
        explicit Thread(Lane &lane)
            : m_lane(lane)
        {
        }
        void run() override { m_lane.work(); }

    private:
        Lane &m_lane;
    };
    void work();
    std::optional<Job> take();
    Result<Records *> openedRecords();
    void deliver(const TicketPtr &ticket, Answer answer);

    OpenRecords m_open;
    std::function<void(Records &)> m_prepare;
    QMutex m_mutex; ///< of the five below
    QWaitCondition m_wake;
    std::deque<Job> m_waiting;
    TicketPtr m_running;
    std::unique_ptr<Records> m_records; ///< used in the thread; from others only to interrupt it
    bool m_ending = false;
    QElapsedTimer m_sinceReport; ///< used in the thread only
    QObject m_window;            ///< lives in the window's thread, where answers are called
    Thread m_thread;
};

class Asker : public QObject
{
    Q_OBJECT
public:
    explicit Asker(Lane &lane, QObject *parent = nullptr);
    /// Supersedes what it asked; waits for nothing.
    ~Asker() override;

    /// Runs `task` in the lane and hands its Result to `done` in this thread. `task` must touch
    /// nothing of the window, and nothing that may go before it has run. Where the records cannot
    /// be opened `done` gets that error.
    template<class T>
    void ask(std::function<Result<T>(Records &, const Progress &)> task,
             std::function<void(Result<T>)> done)
    {
        begin();
        m_lane.put(m_ticket,
                   [this, progress = progressOf(m_ticket), task = std::move(task),
                    done = std::move(done)](Result<Records *> records) -> Lane::Answer {
                       auto answer = std::make_shared<Result<T>>(
                           records ? task(**records, progress)
                                   : Result<T>(failure(records.error())));
                       return [this, answer, done] {
                           end();
                           done(std::move(*answer));
                       };
                   });
    }

    /// Forgets everything that it asked.
    void supersede();
    /// Asks what runs to stop; it answers with what its action says to that.
    void stop() { m_ticket->stopped = true; }
    bool isBusy() const { return m_waiting > 0; }

signals:
    void progressed(qint64 done, qint64 total);
    void busyChanged(bool busy);

private:
    void begin();
    void end();
    Progress progressOf(const TicketPtr &ticket);

    Lane &m_lane;
    TicketPtr m_ticket;
    int m_waiting = 0; ///< tasks whose answer has not come
};

} // namespace loopwright
