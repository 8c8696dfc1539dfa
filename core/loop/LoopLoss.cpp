#include "core/loop/LoopLoss.h"

#include "core/loop/LoopWave.h"

#include <array>
#include <cmath>
#include <numbers>

namespace loopwright {

namespace {

using Complex = std::complex<double>;

constexpr double decibelPerNeper = 20 / std::numbers::ln10;
constexpr double turn = 2 * std::numbers::pi;

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
        const double kilometres = element->length.kilometres();
        switch (element->type) {
        case ElementType::Section:
            wave.pass(ChainMatrix::section(cables.of(*element, makeup), kilometres));
            break;
        case ElementType::BridgedTap:
            wave.pass(ChainMatrix::tap(cables.of(*element, makeup), kilometres));
            break;
        case ElementType::LoadCoil:
            wave.pass(ChainMatrix::coil(element->coilOhms(),
                                        turn * frequencyHz * element->millihenry * 1e-3));
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

double insertionLossDb(const LoopMakeup &makeup, double frequencyHz, const Terminations &between)
{
    const LoopWave wave = waveInto(makeup, frequencyHz, between.loadOhm);
    const double ohms = between.sourceOhm + between.loadOhm;
    return decibelPerNeper *
           (0.5 * std::log(wave.power(between.sourceOhm) / (ohms * ohms)) + wave.neper());
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
