#pragma once
// Analyses a capture of a B channel: raw octets in the order received. Finds the test pattern,
// compares every bit with it, and reports bit errors per second, slips, and losses of
// synchronisation. Feed any number of octets at a time: the result does not depend on how the
// capture is cut, and memory does not grow with it but for four bytes per second of result.
//
// Seconds lie on the grid of the first octet.
// - Synchronisation is acquired when 64 bits in a row follow from the bits before them (common
//   practice asks for 32 or more). The second in which that happens first counts from there on.
// - It is lost when a fifth of a second's bits or more are in error (O.150 (05/96) 4.2, as it is
//   quoted). Such a second, those until synchronisation is back, and the one in which it comes back
//   have no bit errors of their own; nor has the second before if the trouble began in its last
//   groups of bits.
// - A slip is seen in the stream itself: bits in error close together, and 64 bits in a row that
//   fit the pattern at another phase. What lies before the slip is compared at the old phase, what
//   lies after it at the new one, so that the slip itself costs next to no bit errors; it is no
//   loss of synchronisation. If synchronisation comes back at another phase than the old one
//   would have reached, that is a slip too.

#include "core/errortest/CaptureResult.h"

#include <QByteArrayView>

#include <memory>

namespace loopwright {

class CaptureAnalyser
{
public:
    /// Usage if the rate is none of 56000, 64000, 112000, 128000.
    static Result<CaptureAnalyser> make(const CaptureOptions &options);
    CaptureAnalyser(CaptureAnalyser &&) noexcept;
    CaptureAnalyser &operator=(CaptureAnalyser &&) noexcept;
    ~CaptureAnalyser();

    void feed(QByteArrayView octets);
    /// Ends the capture; the incomplete last second is dropped. To be called once.
    CaptureResult finish();

private:
    explicit CaptureAnalyser(const CaptureOptions &options);

    class Worker;
    std::unique_ptr<Worker> m_worker;
};

/// The whole of a capture that lies in memory.
Result<CaptureResult> analyseCapture(QByteArrayView octets, const CaptureOptions &options);

} // namespace loopwright
