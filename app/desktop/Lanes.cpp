#include "app/desktop/Lanes.h"

namespace loopwright {

namespace {

constexpr qint64 reportEveryMs = 50;

} // namespace

Lane::Lane(OpenRecords open, std::function<void(Records &)> prepare)
    : m_open(std::move(open))
    , m_prepare(std::move(prepare))
    , m_thread(*this)
{
    m_thread.setObjectName("lane");
}

Lane::~Lane()
{
    {
        const QMutexLocker lock(&m_mutex);
        m_ending = true;
        m_waiting.clear();
        if (m_running)
            m_running->superseded = true;
        if (m_running && m_records)
            m_records->database().interrupt();
        m_wake.wakeAll();
    }
    m_thread.wait();
}

void Lane::put(const TicketPtr &ticket, Task task)
{
    const QMutexLocker lock(&m_mutex);
    m_waiting.push_back({ticket, std::move(task)});
    m_wake.wakeAll();
    if (!m_thread.isRunning())
        m_thread.start();
}

void Lane::supersede(const TicketPtr &ticket)
{
    const QMutexLocker lock(&m_mutex);
    ticket->superseded = true;
    std::erase_if(m_waiting, [&ticket](const Job &job) { return job.ticket == ticket; });
    if (m_running == ticket && m_records)
        m_records->database().interrupt();
}

std::optional<Lane::Job> Lane::take()
{
    const QMutexLocker lock(&m_mutex);
    m_running.reset();
    while (m_waiting.empty() && !m_ending)
        m_wake.wait(&m_mutex);
    if (m_ending)
        return std::nullopt;
    Job job = std::move(m_waiting.front());
    m_waiting.pop_front();
    m_running = job.ticket;
    if (m_records)
        m_records->database().resume(); // an interrupt was for the task before
    return job;
}

void Lane::work()
{
    m_sinceReport.start();
    while (auto job = take()) {
        const auto records = openedRecords();
        if (records && m_prepare)
            m_prepare(**records);
        if (!job->ticket->superseded)
            deliver(job->ticket, job->task(records));
    }
    const QMutexLocker lock(&m_mutex);
    m_records.reset(); // a connection is closed in the thread that opened it
}

Result<Records *> Lane::openedRecords()
{
    if (m_records)
        return m_records.get();
    LOOPWRIGHT_ASSIGN(auto opened, m_open());
    const QMutexLocker lock(&m_mutex);
    m_records = std::move(opened);
    return m_records.get();
}

void Lane::deliver(const TicketPtr &ticket, Answer answer)
{
    QMetaObject::invokeMethod(
        &m_window,
        [ticket, answer = std::move(answer)] {
            if (!ticket->superseded)
                answer();
        },
        Qt::QueuedConnection);
}

void Lane::report(const TicketPtr &ticket, Answer say)
{
    if (m_sinceReport.elapsed() < reportEveryMs)
        return;
    m_sinceReport.restart();
    deliver(ticket, std::move(say));
}

Asker::Asker(Lane &lane, QObject *parent)
    : QObject(parent)
    , m_lane(lane)
    , m_ticket(std::make_shared<Ticket>())
{
}

Asker::~Asker()
{
    m_lane.supersede(m_ticket);
}

void Asker::supersede()
{
    m_lane.supersede(m_ticket);
    m_ticket = std::make_shared<Ticket>();
    if (std::exchange(m_waiting, 0) > 0)
        emit busyChanged(false);
}

void Asker::begin()
{
    if (m_waiting == 0)
        m_ticket->stopped = false;
    if (++m_waiting == 1)
        emit busyChanged(true);
}

void Asker::end()
{
    if (--m_waiting == 0)
        emit busyChanged(false);
}

Progress Asker::progressOf(const TicketPtr &ticket)
{
    // The lane outlives its askers, and the asker may go while this is called in the lane's thread.
    return [this, lane = &m_lane, ticket](qint64 done, qint64 total) {
        lane->report(ticket, [this, done, total] { emit progressed(done, total); });
        return !ticket->superseded && !ticket->stopped;
    };
}

} // namespace loopwright
