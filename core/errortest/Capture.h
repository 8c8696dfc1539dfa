#pragma once
// Analyses a capture of a B channel: raw octets in the order received. Finds the test pattern,
// compares every bit with it, and tells bit errors per second, slips, and losses of
// synchronisation. Feed any number of octets at a time: the result does not depend on how the
// capture is cut, and memory does not grow with it but for four bytes per second of result.
//
// Seconds lie on the grid of the first octet. Synchronisation is acquired where 64 bits in a row
// follow from the bits before them (common practice asks for 32 or more). It is lost where a fifth
// of a second's bits or more are in error (O.150 4.2). A slip is seen in the error stream: the
// received bits are the pattern at another phase, beyond doubt (64 bits in a row). A second that is
// wholly or partly out of synchronisation has no bit errors of its own; the second in which
// synchronisation is first acquired counts from there on.

#include "core/errortest/CaptureResult.h"

#include <QByteArrayView>

#include <memory>

namespace loopwright {

class CaptureAnalyser
{
public:
    /// Usage where the rate is none of 56000, 64000, 112000, 128000.
    static Result<CaptureAnalyser> make(const CaptureOptions &options);
    CaptureAnalyser(CaptureAnalyser &&) noexcept;
    CaptureAnalyser &operator=(CaptureAnalyser &&) noexcept;
    ~CaptureAnalyser();

    void feed(QByteArrayView octets);
    /// Ends the capture; the incomplete last second is dropped. Once.
    CaptureResult finish();

private:
    class Worker;
    explicit CaptureAnalyser(std::unique_ptr<Worker> worker);
    std::unique_ptr<Worker> m_worker;
};

/// The whole of a capture that lies in memory.
Result<CaptureResult> analyseCapture(QByteArrayView octets, const CaptureOptions &options);

} // namespace loopwright
