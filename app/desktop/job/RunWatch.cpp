#include "app/desktop/job/RunWatch.h"

#include "app/actions/Drafts.h"

namespace loopwright {

namespace {

constexpr qint64 lookEverySeconds = 5; // a run that was just begun, here or in another program
static_assert(lookEverySeconds < WatchedTime::mostBehind);

} // namespace

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
    const auto logs = draftsOfPart(records, runPart);
    const auto watched = draftsOfPart(records, watchedPart);
    if (logs && watched) {
        const auto before = std::exchange(m_running, {});
        m_ended.clear();
        QStringList recorded = watched->keys();
        QStringList over;
        for (auto each = logs->begin(); each != logs->end(); ++each) {
            const RunLog log = RunLog::fromJson(each.value());
            if (!log.isStarted())
                continue;
            const QString &order = each.key();
            recorded.removeAll(order);
            const bool wasRunning = before.contains(order);
            if (!log.isOver(now)) {
                m_running.insert(order, log);
                next = std::clamp<qint64>(log.remaining(now), 1, next);
            } else if (!log.stoppedEarly()) {
                m_ended.insert(order, log);
                if (wasRunning)
                    over << order;
            }
            if (wasRunning || !log.isOver(now))
                keepWatched(order, log, watched->value(order));
        }
        for (const QString &order : recorded)
            (void)saveDrafts(records, {{order, watchedPart, {}}}); // else the next look does it
        for (const QString &order : over)
            emit this->over(order);
        emit looked();
    }
    m_timer.start(int(next * 1000));
}

/// A failure costs nothing but a gap that is longer than it was.
void RunWatch::keepWatched(const QString &order, const RunLog &log, const QJsonObject &kept)
{
    Records &records = m_workplace.records();
    const qint64 elapsed = log.elapsed(records.now());
    WatchedTime watched = WatchedTime::fromJson(kept);
    if (!watched.isOf(log.started()))
        watched = WatchedTime(log.started());
    auto since = m_since.find(order);
    if (since == m_since.end() || since->first != log.started())
        since = m_since.insert(order, {log.started(), elapsed});
    watched.watch(since->second, elapsed);
    if (watched.toJson() != kept)
        (void)saveDrafts(records, {{order, watchedPart, watched.toJson()}});
}

} // namespace loopwright
