#pragma once
// How long the window's thread is away from its events: every piece of work that Qt hands to it (a
// key, a paint, a timer, an answer from a lane) is timed, by the clock and by the processor time of
// that thread, which other work of the machine does not lengthen.

#include <QApplication>
#include <QThread>

#include <algorithm>
#include <chrono>
#include <ctime>
#include <utility>

namespace loopwright {

class WatchedApplication : public QApplication
{
public:
    using QApplication::QApplication;

    /// The longest pieces since the last call, in milliseconds.
    struct Longest
    {
        double byClock = 0, ofItsOwn = 0;
    };
    Longest take() { return std::exchange(m_longest, {}); }

    bool notify(QObject *receiver, QEvent *event) override
    {
        if (m_depth > 0 || QThread::currentThread() != thread())
            return QApplication::notify(receiver, event);
        ++m_depth;
        const auto clock = std::chrono::steady_clock::now();
        const double own = ownMs();
        const bool taken = QApplication::notify(receiver, event);
        m_longest.ofItsOwn = std::max(m_longest.ofItsOwn, ownMs() - own);
        m_longest.byClock = std::max(
            m_longest.byClock,
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - clock)
                .count());
        --m_depth;
        return taken;
    }

private:
    static double ownMs()
    {
        timespec time = {};
        ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
        return double(time.tv_sec) * 1e3 + double(time.tv_nsec) / 1e6;
    }

    int m_depth = 0;
    Longest m_longest;
};

} // namespace loopwright
