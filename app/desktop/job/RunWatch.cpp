#include "app/desktop/job/RunWatch.h"

#include "app/actions/Evidence.h"

namespace loopwright {

namespace {

constexpr qint64 lookEverySeconds = 5; // a run that was just begun, here or in another program

}

RunWatch::RunWatch(DesktopContext &workplace, QObject *parent)
    : QObject(parent)
    , m_workplace(workplace)
{
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &RunWatch::look);
    look();
}

void RunWatch::look()
{
    Records &records = m_workplace.records();
    const Moment now = records.now();
    qint64 next = lookEverySeconds;
    // Records that cannot be read now are told of by whoever needs them; the runs stay as known.
    if (const auto drafts = draftsOfPart(records, runPart)) {
        const auto before = std::exchange(m_running, {});
        for (auto each = drafts->begin(); each != drafts->end(); ++each) {
            const RunLog log = RunLog::fromJson(each.value());
            if (!log.isStarted())
                continue;
            if (!log.isOver(now)) {
                m_running.insert(each.key(), log);
                next = std::clamp<qint64>(log.remaining(now), 1, next);
            } else if (before.contains(each.key()) && !log.stoppedEarly()) {
                emit over(each.key());
            }
        }
    }
    m_timer.start(int(next * 1000));
}

} // namespace loopwright
