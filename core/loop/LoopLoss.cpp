#include "core/loop/LoopLoss.h"

#include <array>
#include <cmath>
#include <numbers>

namespace loopwright {

namespace {

using Complex = std::complex<double>;

constexpr double decibelPerNeper = 20 / std::numbers::ln10;
constexpr double turn = 2 * std::numbers::pi;

// The product of std::complex looks for infinities that cannot arise here.
Complex product(const Complex &a, const Complex &b)
{
    return {a.real() * b.real() - a.imag() * b.imag(), a.real() * b.imag() + a.imag() * b.real()};
}

/// exp(-2 gamma l): what is left of a wave that went to the end of the cable and came back.
Complex roundTrip(const Propagation &cable, double kilometres)
{
    const double size = std::exp(-2 * kilometres * cable.gamma.real());
    const double angle = -2 * kilometres * cable.gamma.imag();
    return {size * std::cos(angle), size * std::sin(angle)};
}

/// The cables of one make-up at one frequency; each wire is worked out once for as long as
/// temperature and capacitance stay the same.
class Cables
{
public:
    explicit Cables(double frequencyHz)
        : m_frequencyHz(frequencyHz)
    {
    }
    const Propagation &of(const LoopElement &element, const LoopMakeup &makeup)
    {
        const double fahrenheit = makeup.temperatureF();
        const auto &capacitance =
            element.capacitanceNfPerKm ? element.capacitanceNfPerKm : makeup.capacitanceNfPerKm;
        Entry &entry = m_entries[std::size_t(wireNumber(element.wire))];
        if (entry.fahrenheit != fahrenheit || entry.capacitance != capacitance) {
            entry.fahrenheit = fahrenheit;
            entry.capacitance = capacitance;
            entry.cable =
                propagation(lineConstants(element.wire, fahrenheit, capacitance), m_frequencyHz);
        }
        return entry.cable;
    }

private:
    struct Entry
    {
        double fahrenheit = std::nan("");
        std::optional<double> capacitance;
        Propagation cable;
    };

    double m_frequencyHz;
    std::array<Entry, wireCount> m_entries;
};

LoopWave waveInto(const LoopMakeup &makeup, Cables &cables, double frequencyHz, double loadOhm)
{
    LoopWave wave(loadOhm);
    for (auto element = makeup.elements.rbegin(); element != makeup.elements.rend(); ++element) {
        switch (element->type) {
        case ElementType::Section:
            wave.passSection(cables.of(*element, makeup), element->length.kilometres());
            break;
        case ElementType::BridgedTap:
            wave.passTap(cables.of(*element, makeup), element->length.kilometres());
            break;
        case ElementType::LoadCoil:
            wave.passCoil(element->coilOhms(), turn * frequencyHz * element->millihenry * 1e-3);
            break;
        }
    }
    return wave;
}

LoopWave waveInto(const LoopMakeup &makeup, double frequencyHz, double loadOhm)
{
    Cables cables(frequencyHz);
    return waveInto(makeup, cables, frequencyHz, loadOhm);
}

/// The angle nearest to zero that differs from `angle` by whole turns.
double nearest(double angle)
{
    return angle - turn * std::round(angle / turn);
}

} // namespace

void LoopWave::passSection(const Propagation &cable, double kilometres)
{
    // cosh and sinh as a sum of the wave that goes and the one that comes back, exp(gamma l) taken
    // out in front.
    const Complex onward = product(cable.z0, m_current);
    const Complex going = 0.5 * (m_voltage + onward);
    const Complex coming = product(0.5 * (m_voltage - onward), roundTrip(cable, kilometres));
    m_voltage = going + coming;
    m_current = product(cable.y0, going - coming);
    m_scale += cable.gamma * kilometres;
    keepInRange();
}

void LoopWave::passTap(const Propagation &cable, double kilometres)
{
    const Complex echo = roundTrip(cable, kilometres);
    const Complex tangent = (1.0 - echo) / (1.0 + echo);
    m_current += product(product(cable.y0, tangent), m_voltage);
    keepInRange();
}

void LoopWave::passCoil(double ohms, double reactanceOhm)
{
    m_voltage += product({ohms, reactanceOhm}, m_current);
    keepInRange();
}

void LoopWave::keepInRange()
{
    constexpr double large = 1e100;
    if (std::norm(m_voltage) + std::norm(m_current) < large)
        return;
    const double size = std::abs(m_voltage) + std::abs(m_current);
    m_voltage /= size;
    m_current /= size;
    m_scale += std::log(size);
}

Complex LoopWave::logInsertion(double sourceOhm, double loadOhm) const
{
    return m_scale + std::log((m_voltage + sourceOhm * m_current) / (sourceOhm + loadOhm));
}

double LoopWave::lossDb(double sourceOhm, double loadOhm) const
{
    const double power = std::norm(m_voltage + sourceOhm * m_current);
    const double reference = (sourceOhm + loadOhm) * (sourceOhm + loadOhm);
    return 10 * std::log10(power / reference) + decibelPerNeper * m_scale.real();
}

double insertionLossDb(const LoopMakeup &makeup, double frequencyHz, const Terminations &between)
{
    return waveInto(makeup, frequencyHz, between.loadOhm)
        .lossDb(between.sourceOhm, between.loadOhm);
}

void insertionLossesDb(std::span<const LoopMakeup> makeups, double frequencyHz,
                       const Terminations &between, std::span<double> losses)
{
    Q_ASSERT(losses.size() == makeups.size());
    Cables cables(frequencyHz);
    for (std::size_t i = 0; i < makeups.size(); ++i)
        losses[i] = waveInto(makeups[i], cables, frequencyHz, between.loadOhm)
                        .lossDb(between.sourceOhm, between.loadOhm);
}

LoopResponse loopResponse(const LoopMakeup &makeup, double frequencyHz, const Terminations &between)
{
    constexpr double step = 1e-5; // of the frequency: small against every bend, large against noise
    const auto insertion = [&](double f) {
        return waveInto(makeup, f, between.loadOhm)
            .logInsertion(between.sourceOhm, between.loadOhm);
    };
    const Complex here = insertion(frequencyHz);
    const double change = nearest(insertion(frequencyHz * (1 + step)).imag() -
                                  insertion(frequencyHz * (1 - step)).imag());
    return {frequencyHz, decibelPerNeper * here.real(), here.imag(),
            change / (turn * frequencyHz * 2 * step)};
}

std::vector<LoopResponse> loopCurve(const LoopMakeup &makeup, double fromHz, double toHz,
                                    int points, const Terminations &between)
{
    std::vector<LoopResponse> curve;
    curve.reserve(points);
    for (int i = 0; i < points; ++i) {
        const double share = points > 1 ? double(i) / (points - 1) : 0;
        // The ends are hit exactly, not as powers of a ratio.
        const double f = i == 0            ? fromHz
                         : i == points - 1 ? toHz
                                           : fromHz * std::pow(toHz / fromHz, share);
        LoopResponse response = loopResponse(makeup, f, between);
        if (!curve.empty()) {
            const LoopResponse &before = curve.back();
            const double expected =
                before.phaseRad + turn * (f - before.frequencyHz) * 0.5 *
                                      (before.delaySeconds + response.delaySeconds);
            response.phaseRad = expected + nearest(response.phaseRad - expected);
        }
        curve.push_back(response);
    }
    return curve;
}

Complex inputImpedanceOhm(const LoopMakeup &makeup, double frequencyHz, double loadOhm)
{
    return waveInto(makeup, frequencyHz, loadOhm).inputOhm();
}

double dcResistanceOhm(const LoopMakeup &makeup)
{
    double ohms = 0;
    for (const LoopElement &element : makeup.elements) {
        if (element.type == ElementType::Section)
            ohms +=
                lineConstants(element.wire, makeup.temperatureF()).r * element.length.kilometres();
        else if (element.type == ElementType::LoadCoil)
            ohms += element.coilOhms();
    }
    return ohms;
}

} // namespace loopwright
