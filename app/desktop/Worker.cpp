#include "app/desktop/Worker.h"

namespace loopwright {

namespace {

constexpr qint64 reportEveryMs = 50;

} // namespace

Worker::Worker(DesktopContext &workplace, QObject *parent)
    : QObject(parent)
    , m_workplace(workplace)
    , m_inside(new QObject)
{
    m_inside->moveToThread(&m_thread);
    m_thread.start();
}

Worker::~Worker()
{
    supersede();
    // A connection is closed in the thread that opened it.
    QMetaObject::invokeMethod(
        m_inside,
        [this] {
            m_records.reset();
            m_thread.quit();
        },
        Qt::QueuedConnection);
    m_thread.wait();
    delete m_inside;
}

void Worker::begin()
{
    m_cancelled = false;
    if (++m_waiting == 1)
        emit busyChanged(true);
}

void Worker::end()
{
    if (--m_waiting == 0)
        emit busyChanged(false);
}

void Worker::post(std::function<void()> run)
{
    QMetaObject::invokeMethod(m_inside, std::move(run), Qt::QueuedConnection);
}

void Worker::deliver(std::function<void()> run)
{
    QMetaObject::invokeMethod(this, std::move(run), Qt::QueuedConnection);
}

Result<Records *> Worker::openedRecords()
{
    if (!m_records) {
        LOOPWRIGHT_ASSIGN(auto opened, m_workplace.another());
        m_records = std::move(opened);
        m_sinceReport.start();
    }
    return m_records.get();
}

bool Worker::report(int ticket, qint64 done, qint64 total)
{
    if (m_sinceReport.elapsed() >= reportEveryMs) {
        m_sinceReport.restart();
        deliver([this, ticket, done, total] {
            if (ticket == m_ticket.load())
                emit progressed(done, total);
        });
    }
    return !m_cancelled && ticket == m_ticket.load();
}

} // namespace loopwright
