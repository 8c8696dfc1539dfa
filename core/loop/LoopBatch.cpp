#include "core/loop/LoopBatch.h"

#include <algorithm>
#include <numbers>

namespace loopwright {

namespace {

/// Temperature at which the constants of a wire were published, °F.
double publishedAt(const Wire &wire)
{
    return wire.gaugeAwg != 0 ? 70 : 68;
}

double warmthOf(const Wire &wire, double fahrenheit)
{
    return temperatureFactor(fahrenheit) / temperatureFactor(publishedAt(wire));
}

/// Constants of all cables at one frequency in the columns that the kernel reads.
class CableColumns
{
public:
    CableColumns(std::size_t count, double frequencyHz)
        : m_count(count)
        , m_frequencyHz(frequencyHz)
        , m_values(8 * count)
    {
    }
    void set(std::size_t cable, const LineConstants &constants)
    {
        const double w = 2 * std::numbers::pi * m_frequencyHz;
        const double values[] = {constants.r * constants.r,
                                 constants.a * m_frequencyHz * m_frequencyHz,
                                 std::pow(m_frequencyHz / constants.fm, constants.b),
                                 constants.b,
                                 w * constants.l0,
                                 w * constants.lInf,
                                 0.5 * w * constants.c,
                                 1 / (w * constants.c)};
        for (std::size_t column = 0; column < 8; ++column)
            m_values[column * m_count + cable] = values[column];
    }
    kernel::Cables columns() const
    {
        const auto column = [this](std::size_t number) {
            return m_values.data() + number * m_count;
        };
        return {column(0), column(1), column(2),
                column(3), column(4), column(5),
                column(6), column(7), 2 * std::numbers::pi * m_frequencyHz};
    }

private:
    std::size_t m_count;
    double m_frequencyHz;
    std::vector<double> m_values;
};

std::int32_t kernelType(ElementType type)
{
    return type == ElementType::Section      ? kernel::section
           : type == ElementType::BridgedTap ? kernel::tap
                                             : kernel::coil;
}

} // namespace

std::int32_t LoopBatch::cableNumber(const Cable &cable)
{
    const auto found = std::find(m_cables.begin(), m_cables.end(), cable);
    if (found != m_cables.end())
        return std::int32_t(found - m_cables.begin());
    m_cables.push_back(cable);
    return std::int32_t(m_cables.size() - 1);
}

void LoopBatch::reserve(std::size_t loops, std::size_t elements)
{
    m_types.reserve(elements);
    m_cableNumbers.reserve(elements);
    m_warmths.reserve(elements);
    m_logWarmths.reserve(elements);
    m_amounts.reserve(elements);
    m_ohms.reserve(elements);
    m_isLast.reserve(elements);
    m_ends.reserve(loops);
}

void LoopBatch::addElement(const LoopElement &element, const LoopMakeup &makeup)
{
    const bool isCoil = element.type == ElementType::LoadCoil;
    const auto &capacitance =
        element.capacitanceNfPerKm ? element.capacitanceNfPerKm : makeup.capacitanceNfPerKm;
    m_types.push_back(kernelType(element.type));
    m_cableNumbers.push_back(isCoil ? 0 : cableNumber({element.wire, capacitance}));
    m_warmths.push_back(isCoil ? 1 : warmthOf(element.wire, makeup.temperatureF()));
    m_logWarmths.push_back(std::log(m_warmths.back()));
    m_amounts.push_back(isCoil ? 1e-3 * element.millihenry : element.length.kilometres());
    m_ohms.push_back(isCoil ? element.coilOhms() : 0);
    m_isLast.push_back(0);
}

void LoopBatch::add(const LoopMakeup &makeup)
{
    if (m_cables.empty()) // so that a coil has a cable to name
        m_cables.push_back({Wire::awg(24), {}});
    for (auto element = makeup.elements.rbegin(); element != makeup.elements.rend(); ++element)
        addElement(*element, makeup);
    if (makeup.elements.empty()) // a coil of nothing, so that every loop has an end
        addElement(LoopElement::coil(0, 0), makeup);
    m_isLast.back() = 1;
    m_ends.push_back(m_types.size());
}

void LoopBatch::lossesDb(double frequencyHz, const Terminations &between, std::size_t first,
                         std::span<double> losses) const
{
    Q_ASSERT(first + losses.size() <= size());
    CableColumns constants(m_cables.size(), frequencyHz);
    for (std::size_t i = 0; i < m_cables.size(); ++i)
        constants.set(i, lineConstants(m_cables[i].wire, publishedAt(m_cables[i].wire),
                                       m_cables[i].capacitanceNfPerKm));
    const kernel::Cables cables = constants.columns();
    const kernel::Ohms ohms{between.sourceOhm, between.loadOhm};

    kernel::Block block;
    kernel::Walk walk = kernel::Walk::from(between.loadOhm);
    std::size_t at = first > 0 ? m_ends[first - 1] : 0;
    const std::size_t end = losses.empty() ? at : m_ends[first + losses.size() - 1];
    double *loss = losses.data();
    while (at < end) {
        const std::size_t count = std::min(kernel::blockSize, end - at);
        kernel::workOut(cables,
                        {&m_types[at], &m_cableNumbers[at], &m_warmths[at], &m_logWarmths[at],
                         &m_amounts[at], &m_ohms[at]},
                        count, block);
        loss += kernel::walk(block, &m_isLast[at], count, ohms, walk, loss);
        at += count;
    }
}

} // namespace loopwright
