#pragma once
// The loss of very many loops at one frequency, from flat columns. Loops are walked side by side,
// an element of each at a time (LoopKernel.h). Agrees with insertionLossDb() to 1e-9 dB.

#include "core/loop/LoopLoss.h"

namespace loopwright {

/// A kind of cable of a batch.
struct BatchCable
{
    Wire wire;                                ///< a known one
    std::optional<double> capacitanceNfPerKm; ///< else that of the set

    bool operator==(const BatchCable &) const = default;
};

/// What an element is, in a column of a batch.
enum class BatchKind : std::int8_t
{
    Nothing, ///< best after all others of its loop
    Section,
    Tap,
    Coil,
};

/// Columns of many loops. Of the elements, office first, those of loop i are at starts[i] to
/// starts[i + 1]; without `starts` each loop has `places`. The ranges are those of LoopElement.
struct LoopColumns
{
    std::span<const std::size_t> starts; ///< one more than there are loops
    std::size_t places = 0;
    std::span<const BatchKind> kinds;
    std::span<const std::int32_t> cables; ///< number in the list of cables, of a coil any
    std::span<const double> kilometres;   ///< of a section or a tap
    std::span<const double> millihenry;   ///< of a coil
    std::span<const double> ohms;         ///< of a coil; empty if each has its usual one
    std::span<const double> fahrenheit;   ///< one for each loop

    std::size_t size() const { return fahrenheit.size(); }
    std::size_t start(std::size_t loop) const
    {
        return starts.empty() ? loop * places : starts[loop];
    }
};

/// Every known wire, by wireNumber(), with the capacitance of its set.
std::vector<BatchCable> knownCables();

/// Losses in dB of the loops from `first` on, as many as `losses` is long. Threads may divide the
/// loops among them.
void lossesDb(const LoopColumns &loops, std::span<const BatchCable> cables, double frequencyHz,
              const Terminations &between, std::size_t first, std::span<double> losses);

/// Columns made from make-ups.
class LoopBatch
{
public:
    void reserve(std::size_t loops, std::size_t elements);
    void add(const LoopMakeup &makeup);
    std::size_t size() const { return m_fahrenheit.size(); }

    /// As the function of that name.
    void lossesDb(double frequencyHz, const Terminations &between, std::size_t first,
                  std::span<double> losses) const;

private:
    std::int32_t cableNumber(const BatchCable &cable);

    std::vector<BatchCable> m_cables = knownCables();
    std::vector<std::size_t> m_starts{0};
    std::vector<BatchKind> m_kinds;
    std::vector<std::int32_t> m_cableNumbers;
    std::vector<double> m_kilometres;
    std::vector<double> m_millihenry;
    std::vector<double> m_ohms;
    std::vector<double> m_fahrenheit;
};

} // namespace loopwright
