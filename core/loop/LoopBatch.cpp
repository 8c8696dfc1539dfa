#include "core/loop/LoopBatch.h"

#include "core/loop/LoopKernel.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstring>
#include <numbers>
#include <utility>

namespace loopwright {

namespace {

/// Constants of all cables at one frequency and 70 °F, in the columns that the kernel reads.
class CableColumns
{
public:
    CableColumns(std::span<const BatchCable> cables, double frequencyHz)
        : m_w(2 * std::numbers::pi * frequencyHz)
    {
        for (auto &column : m_values)
            column.reserve(cables.size());
        for (const BatchCable &cable : cables)
            add(lineConstants(cable.wire, 70, cable.capacitanceNfPerKm), frequencyHz);
    }
    kernel::Cables columns() const
    {
        const auto column = [this](std::size_t number) { return m_values[number].data(); };
        return {column(0), column(1), column(2), column(3), column(4), column(5), column(6), m_w};
    }

private:
    void add(const LineConstants &constants, double frequencyHz)
    {
        const double values[] = {constants.r * constants.r,
                                 constants.a * frequencyHz * frequencyHz,
                                 std::pow(frequencyHz / constants.fm, constants.b),
                                 constants.b,
                                 m_w * constants.l0,
                                 m_w * constants.lInf,
                                 0.5 * m_w * constants.c};
        for (std::size_t column = 0; column < std::size(values); ++column)
            m_values[column].push_back(values[column]);
    }

    double m_w;
    std::array<std::vector<double>, 7> m_values;
};

/// Asks for a value that will soon be read, so that the arithmetic need not wait for it.
void fetch([[maybe_unused]] const void *value)
{
#if defined(__GNUC__)
    __builtin_prefetch(value, 0, 2);
#endif
}

/// How many of `count` kinds are left when nothings at the end are left off; eight at a time.
std::size_t usedOf(const BatchKind *kinds, std::size_t count)
{
    constexpr std::size_t word = sizeof(std::uint64_t);
    while (count >= word) {
        std::uint64_t last = 0;
        std::memcpy(&last, kinds + count - word, word);
        if (last != 0) {
            const int empty = std::endian::native == std::endian::little ? std::countl_zero(last)
                                                                         : std::countr_zero(last);
            return count - std::size_t(empty) / 8;
        }
        count -= word;
    }
    while (count > 0 && kinds[count - 1] == BatchKind::Nothing)
        --count;
    return count;
}

/// The loops that are walked together, those with most elements first: at each step the loops that
/// have a further element are the first lanes.
class LaneBlock
{
    static_assert(std::int32_t(BatchKind::Nothing) == kernel::nothing &&
                  std::int32_t(BatchKind::Section) == kernel::section &&
                  std::int32_t(BatchKind::Tap) == kernel::tap &&
                  std::int32_t(BatchKind::Coil) == kernel::coil);

public:
    explicit LaneBlock(const LoopColumns &loops)
        : m_loops(loops)
    {
    }
    /// Takes `count` loops from `first` on in.
    void take(std::size_t first, std::size_t count);
    void walk(const kernel::Cables &cables, const kernel::Ohms &between, double *losses);

private:
    static constexpr std::size_t sorted = 31; ///< longer loops are in no order among themselves

    /// Lanes that are worked on when this many are in use.
    static std::size_t grouped(std::size_t count)
    {
        return (count + kernel::laneGroup - 1) / kernel::laneGroup * kernel::laneGroup;
    }
    void order(std::size_t first);
    /// Element `step` from the customer of the first `count` lanes.
    void fill(std::size_t step, std::size_t count);
    void makeCoil(std::size_t lane, std::size_t element);
    void leaveEmpty(std::size_t lane);

    const LoopColumns &m_loops;
    std::size_t m_count = 0;
    std::size_t m_longest = 0;
    std::array<std::size_t, sorted + 1> m_longer{}; ///< loops of more elements than this
    kernel::Lanes<std::size_t> m_used;              ///< elements of each loop
    kernel::Lanes<std::size_t> m_loopOf;            ///< by lane, counted from the first
    kernel::Lanes<std::size_t> m_start;             ///< by lane: the element at the office
    kernel::Lanes<std::size_t> m_end;               ///< by lane: after the one at the customer
    kernel::Lanes<double> m_fahrenheit;
    kernel::Elements m_elements;
    kernel::Waves m_waves;
    kernel::Lanes<double> m_losses;
};

void LaneBlock::take(std::size_t first, std::size_t count)
{
    m_count = count;
    m_longest = 0;
    m_longer.fill(0);
    const std::size_t last = m_loops.size() - 1;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t start = m_loops.start(first + i);
        const std::size_t used =
            usedOf(m_loops.kinds.data() + start, m_loops.start(first + i + 1) - start);
        const std::size_t later = m_loops.start(std::min(first + i + kernel::laneCount, last));
        fetch(m_loops.kilometres.data() + later);
        fetch(m_loops.millihenry.data() + later);
        fetch(m_loops.cables.data() + later);
        m_used[i] = used;
        m_longest = std::max(m_longest, used);
        ++m_longer[std::min(used, sorted)];
    }
    order(first);
}

void LaneBlock::order(std::size_t first)
{
    std::size_t before = 0; // from counts to where the loops of each length begin
    for (std::size_t used = m_longer.size(); used-- > 0;)
        before += std::exchange(m_longer[used], before);
    auto next = m_longer;
    for (std::size_t i = 0; i < m_count; ++i) {
        const std::size_t lane = next[std::min(m_used[i], sorted)]++;
        const std::size_t loop = first + i;
        m_loopOf[lane] = i;
        m_start[lane] = m_loops.start(loop);
        m_end[lane] = m_start[lane] + m_used[i];
        m_fahrenheit[lane] = m_loops.fahrenheit[loop];
    }
    for (std::size_t lane = m_count; lane < grouped(m_count); ++lane)
        m_fahrenheit[lane] = 70;
}

void LaneBlock::leaveEmpty(std::size_t lane)
{
    m_elements.type[lane] = kernel::nothing;
    m_elements.cable[lane] = 0;
    m_elements.amount[lane] = 0;
    m_elements.ohms[lane] = 0;
}

void LaneBlock::makeCoil(std::size_t lane, std::size_t element)
{
    const double millihenry = m_loops.millihenry[element];
    m_elements.amount[lane] = 1e-3 * millihenry;
    m_elements.ohms[lane] =
        m_loops.ohms.empty() ? LoopElement::usualCoilOhms(millihenry) : m_loops.ohms[element];
}

void LaneBlock::fill(std::size_t step, std::size_t count)
{
    // The compiler cannot know that writing a lane leaves the columns where they are.
    const BatchKind *const kinds = m_loops.kinds.data();
    const std::int32_t *const cables = m_loops.cables.data();
    const double *const kilometres = m_loops.kilometres.data();
    for (std::size_t lane = 0; lane < count; ++lane) {
        if (step >= sorted && m_start[lane] + step >= m_end[lane]) [[unlikely]] {
            leaveEmpty(lane);
            continue;
        }
        const std::size_t element = m_end[lane] - 1 - step;
        m_elements.type[lane] = std::int32_t(kinds[element]);
        m_elements.cable[lane] = cables[element];
        m_elements.amount[lane] = kilometres[element];
        m_elements.ohms[lane] = 0;
        if (kinds[element] == BatchKind::Coil) [[unlikely]]
            makeCoil(lane, element);
    }
    for (std::size_t lane = count; lane < grouped(count); ++lane)
        leaveEmpty(lane);
}

void LaneBlock::walk(const kernel::Cables &cables, const kernel::Ohms &between, double *losses)
{
    kernel::start(m_fahrenheit, grouped(m_count), between, m_waves);
    for (std::size_t step = 0; step < m_longest; ++step) {
        // Those of more than `step` elements come before those of just as many.
        const std::size_t count = m_longer[std::min(step, sorted - 1)];
        fill(step, count);
        kernel::pass(cables, m_elements, grouped(count), m_waves);
    }
    kernel::finish(m_waves, grouped(m_count), between, m_losses);
    for (std::size_t lane = 0; lane < m_count; ++lane)
        losses[m_loopOf[lane]] = m_losses[lane];
}

} // namespace

std::vector<BatchCable> knownCables()
{
    std::vector<BatchCable> cables;
    for (const int gauge : knownGauges())
        cables.push_back({Wire::awg(gauge), {}});
    for (const double diameter : knownDiameters())
        cables.push_back({Wire::millimetres(diameter), {}});
    return cables;
}

void lossesDb(const LoopColumns &loops, std::span<const BatchCable> cables, double frequencyHz,
              const Terminations &between, std::size_t first, std::span<double> losses)
{
    Q_ASSERT(first + losses.size() <= loops.size());
    const CableColumns constants(cables, frequencyHz);
    const kernel::Ohms ohms{between.sourceOhm, between.loadOhm};
    LaneBlock block(loops);
    for (std::size_t at = 0; at < losses.size(); at += kernel::laneCount) {
        block.take(first + at, std::min(kernel::laneCount, losses.size() - at));
        block.walk(constants.columns(), ohms, losses.data() + at);
    }
}

void LoopBatch::reserve(std::size_t loops, std::size_t elements)
{
    m_starts.reserve(loops + 1);
    m_fahrenheit.reserve(loops);
    m_kinds.reserve(elements);
    m_cableNumbers.reserve(elements);
    m_kilometres.reserve(elements);
    m_millihenry.reserve(elements);
    m_ohms.reserve(elements);
}

std::int32_t LoopBatch::cableNumber(const BatchCable &cable)
{
    const auto found = std::find(m_cables.begin(), m_cables.end(), cable);
    if (found != m_cables.end())
        return std::int32_t(found - m_cables.begin());
    m_cables.push_back(cable);
    return std::int32_t(m_cables.size() - 1);
}

void LoopBatch::add(const LoopMakeup &makeup)
{
    for (const LoopElement &element : makeup.elements) {
        const bool isCoil = element.type == ElementType::LoadCoil;
        const auto &capacitance =
            element.capacitanceNfPerKm ? element.capacitanceNfPerKm : makeup.capacitanceNfPerKm;
        m_kinds.push_back(isCoil                                    ? BatchKind::Coil
                          : element.type == ElementType::BridgedTap ? BatchKind::Tap
                                                                    : BatchKind::Section);
        m_cableNumbers.push_back(isCoil ? 0 : cableNumber({element.wire, capacitance}));
        m_kilometres.push_back(element.length.kilometres());
        m_millihenry.push_back(element.millihenry);
        m_ohms.push_back(isCoil ? element.coilOhms() : 0);
    }
    m_starts.push_back(m_kinds.size());
    m_fahrenheit.push_back(makeup.temperatureF());
}

void LoopBatch::lossesDb(double frequencyHz, const Terminations &between, std::size_t first,
                         std::span<double> losses) const
{
    const LoopColumns columns{m_starts,     0,      m_kinds,     m_cableNumbers, m_kilometres,
                              m_millihenry, m_ohms, m_fahrenheit};
    loopwright::lossesDb(columns, m_cables, frequencyHz, between, first, losses);
}

} // namespace loopwright
