#include "core/errortest/Capture.h"

#include "core/errortest/CaptureSeconds.h"

#include <algorithm>

namespace loopwright {

namespace {

/// Octets after a second that are looked at with it: far more than a slip takes to be seen.
constexpr qint64 octetsAhead = 1024;

} // namespace

/// Cuts what is fed into seconds, each with some octets before and after it.
class CaptureAnalyser::Worker
{
public:
    explicit Worker(const CaptureOptions &options)
        : m_seconds(options)
        , m_needed(m_seconds.octetsPerSecond() + octetsAhead)
    {
    }

    void feed(QByteArrayView octets)
    {
        // What waits is completed, until the next second begins among the new octets.
        qsizetype taken = 0;
        while (!m_waiting.isEmpty()) {
            const qsizetype missing =
                std::min<qsizetype>(octets.size() - taken, m_needed - m_waiting.size());
            m_waiting.append(octets.data() + taken, missing);
            taken += missing;
            if (m_waiting.size() < m_needed)
                return;
            second(m_waiting);
            const qsizetype left = m_waiting.size() - m_seconds.octetsPerSecond();
            if (left <= taken) {
                m_waiting.clear();
                taken -= left;
            } else {
                m_waiting.remove(0, m_seconds.octetsPerSecond());
            }
        }
        QByteArrayView rest = octets.sliced(taken);
        for (; rest.size() >= m_needed; rest = rest.sliced(m_seconds.octetsPerSecond()))
            second(rest);
        m_waiting = rest.toByteArray();
    }

    CaptureResult finish()
    {
        QByteArrayView rest = m_waiting;
        for (; rest.size() >= m_seconds.octetsPerSecond();
             rest = rest.sliced(m_seconds.octetsPerSecond()))
            second(rest);
        if (!rest.isEmpty())
            m_seconds.rest(view(rest));
        m_waiting.clear();
        return m_seconds.result();
    }

private:
    OctetView view(QByteArrayView octets) const
    {
        return {reinterpret_cast<const uchar *>(octets.data()),
                std::min<qint64>(octets.size(), m_needed), m_before, m_countBefore};
    }

    /// The second at the beginning of `octets`.
    void second(QByteArrayView octets)
    {
        m_seconds.second(view(octets));
        const char *end = octets.data() + m_seconds.octetsPerSecond();
        std::copy(end - PackedBits::octetsBefore, end, m_before);
        m_countBefore = PackedBits::octetsBefore;
    }

    CaptureSeconds m_seconds;
    qsizetype m_needed;   ///< octets of a second and those after it
    QByteArray m_waiting; ///< fewer than that
    uchar m_before[PackedBits::octetsBefore] = {};
    int m_countBefore = 0;
};

CaptureAnalyser::CaptureAnalyser(const CaptureOptions &options)
    : m_worker(std::make_unique<Worker>(options))
{
}

CaptureAnalyser::CaptureAnalyser(CaptureAnalyser &&) noexcept = default;
CaptureAnalyser &CaptureAnalyser::operator=(CaptureAnalyser &&) noexcept = default;
CaptureAnalyser::~CaptureAnalyser() = default;

Result<CaptureAnalyser> CaptureAnalyser::make(const CaptureOptions &options)
{
    constexpr qint64 rates[] = {56000, 64000, 112000, 128000};
    if (options.rate &&
        std::find(std::begin(rates), std::end(rates), *options.rate) == std::end(rates))
        return failure(ErrorCode::Usage,
                       "the rate of a capture must be 56000, 64000, 112000 or 128000", "rate");
    return CaptureAnalyser(options);
}

void CaptureAnalyser::feed(QByteArrayView octets)
{
    m_worker->feed(octets);
}

CaptureResult CaptureAnalyser::finish()
{
    return m_worker->finish();
}

Result<CaptureResult> analyseCapture(QByteArrayView octets, const CaptureOptions &options)
{
    LOOPWRIGHT_ASSIGN(auto analyser, CaptureAnalyser::make(options));
    analyser.feed(octets);
    return analyser.finish();
}

} // namespace loopwright
