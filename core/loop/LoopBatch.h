#pragma once
// The loss of very many loops at one frequency. The loops lie in flat arrays, the chain matrices
// of a block of them are worked out side by side (LoopKernel.h), and each loop is walked as a
// single one is. Agrees with insertionLossDb() to 1e-9 dB.

#include "core/loop/LoopKernel.h"
#include "core/loop/LoopLoss.h"

namespace loopwright {

class LoopBatch
{
public:
    void reserve(std::size_t loops, std::size_t elements);
    void add(const LoopMakeup &makeup);
    std::size_t size() const { return m_ends.size(); }

    /// Losses in dB of the loops from `first` on, as many as `losses` is long. Reads only, so that
    /// threads may share the batch and divide the loops.
    void lossesDb(double frequencyHz, const Terminations &between, std::size_t first,
                  std::span<double> losses) const;

private:
    struct Cable
    {
        Wire wire;
        std::optional<double> capacitanceNfPerKm;
        bool operator==(const Cable &) const = default;
    };
    std::int32_t cableNumber(const Cable &cable);
    void addElement(const LoopElement &element, const LoopMakeup &makeup);

    std::vector<Cable> m_cables; ///< each kind of cable once
    // One entry per element, customer first.
    std::vector<std::int32_t> m_types;
    std::vector<std::int32_t> m_cableNumbers; ///< 0 for a coil
    std::vector<double> m_warmths;            ///< resistance over that of the published set
    std::vector<double> m_logWarmths;
    std::vector<double> m_amounts;      ///< km, or henry
    std::vector<double> m_ohms;         ///< of a coil
    std::vector<std::uint8_t> m_isLast; ///< of its loop
    std::vector<std::size_t> m_ends;    ///< per loop: where its elements end
};

} // namespace loopwright
