#include "tests/soak/SetBackClock.h"

#include <atomic>
#include <ctime>
#include <sys/syscall.h>
#include <sys/time.h>
#include <unistd.h>

namespace {

std::atomic<int> daysBack = 0;
constexpr time_t secondsOfDay = 86'400;

} // namespace

// What a program defines itself its libraries call too, Qt among them.

extern "C" int clock_gettime(clockid_t which, timespec *time) noexcept
{
    const long code = ::syscall(SYS_clock_gettime, which, time);
    if (code == 0 && which == CLOCK_REALTIME)
        time->tv_sec -= daysBack * secondsOfDay;
    return int(code);
}

extern "C" int gettimeofday(timeval *time, void *) noexcept
{
    timespec now = {};
    const int code = clock_gettime(CLOCK_REALTIME, &now);
    time->tv_sec = now.tv_sec;
    time->tv_usec = now.tv_nsec / 1000;
    return code;
}

void loopwright::soak::setClockBack(int days)
{
    daysBack = days;
}
