#pragma once
// Work that must not block the window: a thread with its own connection to the records. Tasks run
// one after the other; a newer one may take the place of those before it (a search while typing),
// and a running one can be asked to stop. Answers come back in the thread that asked.

#include "app/desktop/DesktopContext.h"

#include <QElapsedTimer>
#include <QObject>
#include <QThread>

#include <atomic>

namespace loopwright {

class Worker : public QObject
{
    Q_OBJECT
public:
    /// Uses `workplace` only to open the records once more, when the first task needs them.
    explicit Worker(DesktopContext &workplace, QObject *parent = nullptr);
    /// Stops what runs and waits for it.
    ~Worker() override;

    /// Runs `task` in the worker's thread and hands its Result to `done` in this one. `task` must
    /// touch nothing of the window. Where the records cannot be opened `done` gets that error.
    template<class T>
    void run(std::function<Result<T>(Records &, const Progress &)> task,
             std::function<void(Result<T>)> done)
    {
        const int ticket = m_ticket.load();
        begin();
        post([this, ticket, task = std::move(task), done = std::move(done)] {
            auto answer = std::make_shared<Result<T>>(answerOf<T>(ticket, task));
            deliver([this, ticket, answer, done] {
                end();
                if (ticket == m_ticket.load())
                    done(std::move(*answer));
            });
        });
    }

    /// Drops every task that waits, asks the running one to stop, and forgets their answers.
    void supersede() { ++m_ticket; }
    /// Asks the running task to stop; it answers with what its action says to that.
    void cancel() { m_cancelled = true; }
    bool isBusy() const { return m_waiting > 0; }

signals:
    void progressed(qint64 done, qint64 total);
    void busyChanged(bool busy);

private:
    template<class T>
    Result<T> answerOf(int ticket,
                       const std::function<Result<T>(Records &, const Progress &)> &task)
    {
        if (ticket != m_ticket.load())
            return failure(ErrorCode::Refused, tr("Superseded."));
        LOOPWRIGHT_ASSIGN(auto records, openedRecords());
        return task(*records, [this, ticket](qint64 done, qint64 total) {
            return report(ticket, done, total);
        });
    }

    void begin();
    void end();
    void post(std::function<void()> run);
    void deliver(std::function<void()> run);
    Result<Records *> openedRecords();
    bool report(int ticket, qint64 done, qint64 total);

    DesktopContext &m_workplace;
    QThread m_thread;
    QObject *m_inside;                  ///< lives in the thread
    std::unique_ptr<Records> m_records; ///< used in the thread only
    QElapsedTimer m_sinceReport;        ///< likewise
    std::atomic<int> m_ticket = 0;
    std::atomic<bool> m_cancelled = false;
    int m_waiting = 0; ///< tasks whose answer has not come back
};

} // namespace loopwright
