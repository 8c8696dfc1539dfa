#include "core/loop/LoopCandidates.h"

#include "core/loop/LoopPlace.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>

namespace loopwright {

namespace {

// Stretch: how far a record must be off before the supposition is as unlikely as a reading that is
// one tolerance away. Convention of this program, after what is usual on records of outside plant.
constexpr double lengthStretchPerShare = 1 / 0.20; // a fifth of the length
constexpr double lengthStretch = 0.5;
constexpr double temperatureStretchPerF = 1 / 30.0;
constexpr double tapStretch = 1.5;
constexpr double tapStretchPerFoot = 1 / 4000.0;
constexpr double tapGoneStretch = 2;
constexpr double gaugeStretch = 2.5; // to the next gauge
constexpr double gaugeStretchPerStep = 1.5;
constexpr double coilStretch = 3;
constexpr double coilGoneStretch = 3;

constexpr double coilMillihenry[] = {88, 66, 44};

/// Where `cost` is least between `from` and `to`: the best of 40 samples, then golden section.
double leastBetween(double from, double to, const std::function<double(double)> &cost)
{
    constexpr int samples = 40;
    const double step = (to - from) / samples;
    double best = from;
    double least = cost(from);
    for (int i = 1; i <= samples; ++i) {
        const double at = from + i * step;
        if (const double found = cost(at); found < least) {
            least = found;
            best = at;
        }
    }
    double low = std::max(from, best - step);
    double high = std::min(to, best + step);
    constexpr double golden = 0.6180339887498949;
    for (int i = 0; i < 30; ++i) {
        const double a = high - golden * (high - low);
        const double b = low + golden * (high - low);
        if (cost(a) < cost(b))
            high = b;
        else
            low = a;
    }
    const double middle = 0.5 * (low + high);
    return cost(middle) < least ? middle : best;
}

class Fitter
{
public:
    Fitter(const LoopMakeup &makeup, const MeasuredLoop &measured, const LimitSet &limits)
        : m_makeup(makeup)
        , m_measured(measured)
        , m_limits(limits)
    {
    }
    void tryLength();
    void tryTemperature();
    void tryHiddenTaps();
    void tryHiddenCoils();
    void tryGone(ElementType type, LoopCause cause, double stretch);
    void tryGauges();
    std::vector<LoopCandidate> take() { return std::move(m_best); }

private:
    void offer(LoopCause cause, LoopMakeup makeup, const Text &text, double stretch)
    {
        LoopCandidate candidate{cause, std::move(makeup), text, 0, stretch, {}};
        candidate.misfit = misfit(candidate.makeup);
        const auto same = std::find_if(m_best.begin(), m_best.end(),
                                       [cause](const auto &other) { return other.cause == cause; });
        if (same == m_best.end())
            m_best.push_back(std::move(candidate));
        else if (candidate.score() < same->score())
            *same = std::move(candidate);
    }
    double misfit(const LoopMakeup &makeup) const
    {
        return loopMisfit(makeup, m_measured, m_limits);
    }
    LoopMakeup stretched(double share) const;
    std::pair<LoopMakeup, std::size_t> withCoil(const LoopPlace &place, double millihenry) const;
    void offerCoil(const LoopPlace &place, double millihenry);
    void tryHiddenCoilWithin(std::size_t section);
    void tryLoadedLoop();
    void tryOtherWires(const std::vector<std::size_t> &sections, const Text &what, double stretch);

    const LoopMakeup &m_makeup;
    const MeasuredLoop &m_measured;
    const LimitSet &m_limits;
    std::vector<LoopCandidate> m_best; ///< one of each cause
};

double square(double value)
{
    return value * value;
}

double lengthStretchOf(double share)
{
    return lengthStretch + square(std::log(share) * lengthStretchPerShare);
}

Text hiddenText(const LoopMakeup &makeup, std::size_t position)
{
    return Text(QT_TRANSLATE_NOOP("core", "there is a %1")).arg(makeup.textAt(position));
}

LoopMakeup Fitter::stretched(double share) const
{
    LoopMakeup longer = m_makeup;
    for (LoopElement &element : longer.elements)
        if (element.type == ElementType::Section)
            element.length.value *= share;
    return longer;
}

void Fitter::tryLength()
{
    const double logShare = leastBetween(std::log(0.25), std::log(4), [this](double log) {
        return misfit(stretched(std::exp(log))) + lengthStretchOf(std::exp(log));
    });
    const double share = std::exp(logShare);
    // In the unit of the record.
    const bool metric = m_makeup.isMetric();
    const double recorded = m_makeup.workingLengthFt() * (metric ? metresPerFoot : 1);
    offer(LoopCause::Length, stretched(share),
          Text(share > 1
                   ? QT_TRANSLATE_NOOP("core", "the pair is about %1 %4 long, %2 % longer than "
                                               "the %3 %4 on record")
                   : QT_TRANSLATE_NOOP("core", "the pair is about %1 %4 long, %2 % shorter than "
                                               "the %3 %4 on record"))
              .arg(QString::number(share * recorded, 'f', 0))
              .arg(QString::number(100 * std::abs(share - 1), 'f', 0))
              .arg(QString::number(recorded, 'f', 0))
              .arg(metric ? QString("m") : QString("ft")),
          lengthStretchOf(share));
}

void Fitter::tryTemperature()
{
    const double recorded = m_makeup.temperatureF();
    const auto at = [this](double fahrenheit) {
        LoopMakeup makeup = m_makeup;
        makeup.temperature = Temperature{fahrenheit, false};
        return makeup;
    };
    const auto stretch = [recorded](double fahrenheit) {
        return square((fahrenheit - recorded) * temperatureStretchPerF);
    };
    const double fahrenheit =
        leastBetween(-20, 140, [&](double f) { return misfit(at(f)) + stretch(f); });
    offer(LoopCause::Temperature, at(fahrenheit),
          Text(QT_TRANSLATE_NOOP("core", "the cable is at about %1 °F, not %2 °F"))
              .arg(QString::number(fahrenheit, 'f', 0))
              .arg(QString::number(recorded, 'f', 0)),
          stretch(fahrenheit));
}

void Fitter::tryHiddenTaps()
{
    for (const LoopPlace &place : loopPlaces(m_makeup)) {
        const LoopElement cable = cableAt(m_makeup, place);
        const auto tapped = [&](double feet) {
            LoopElement tap = cable;
            tap.type = ElementType::BridgedTap;
            const bool metric = cable.length.unit == LengthUnit::Metre;
            tap.length.value = metric ? feet * metresPerFoot : feet;
            LoopMakeup makeup = m_makeup;
            const std::size_t position = insertAt(makeup, place, tap);
            return std::pair(makeup, position);
        };
        const auto stretch = [](double feet) {
            return tapStretch + square(feet * tapStretchPerFoot);
        };
        const double feet =
            leastBetween(50, 8000, [&](double f) { return misfit(tapped(f).first) + stretch(f); });
        const auto [makeup, position] = tapped(10 * std::round(feet / 10));
        offer(LoopCause::HiddenTap, makeup, hiddenText(makeup, position), stretch(feet));
    }
}

std::pair<LoopMakeup, std::size_t> Fitter::withCoil(const LoopPlace &place, double millihenry) const
{
    LoopMakeup makeup = m_makeup;
    const std::size_t position = insertAt(makeup, place, LoopElement::coil(millihenry));
    return {std::move(makeup), position};
}

void Fitter::offerCoil(const LoopPlace &place, double millihenry)
{
    const auto [makeup, position] = withCoil(place, millihenry);
    offer(LoopCause::HiddenCoil, makeup, hiddenText(makeup, position), coilStretch);
}

/// A coil anywhere within a section, of each usual inductance.
void Fitter::tryHiddenCoilWithin(std::size_t section)
{
    for (const double millihenry : coilMillihenry) {
        const double share = leastBetween(0.02, 0.98, [&](double at) {
            return misfit(withCoil({section, at}, millihenry).first);
        });
        offerCoil({section, share}, millihenry);
    }
}

/// Coils of 88 mH at 3000 ft from the office and each 6000 ft on, as a loaded loop has them.
void Fitter::tryLoadedLoop()
{
    LoopMakeup loaded = m_makeup;
    loaded.elements.clear();
    double next = 3000;
    double walked = 0;
    int coils = 0;
    for (LoopElement element : m_makeup.elements) {
        while (element.type == ElementType::Section && walked + element.length.feet() > next) {
            LoopElement front = element;
            const double share = (next - walked) / element.length.feet();
            front.length.value *= share;
            element.length.value *= 1 - share;
            loaded.elements.push_back(front);
            loaded.elements.push_back(LoopElement::coil(88));
            walked = next;
            next += 6000;
            ++coils;
        }
        if (element.type == ElementType::Section)
            walked += element.length.feet();
        loaded.elements.push_back(element);
    }
    if (coils > 1)
        offer(LoopCause::HiddenCoil, loaded,
              Text(QT_TRANSLATE_NOOP(
                       "core",
                       "the pair is loaded: %1 coils of 88 mH, the first 3000 ft from the office, "
                       "then each 6000 ft"))
                  .arg(coils),
              coilStretch + 0.5);
}

void Fitter::tryHiddenCoils()
{
    LoopPlace best;
    double least = HUGE_VAL;
    for (const LoopPlace &place : loopPlaces(m_makeup)) {
        for (const double millihenry : coilMillihenry) {
            offerCoil(place, millihenry);
            const double left = misfit(withCoil(place, millihenry).first);
            if (left < least) {
                least = left;
                best = place;
            }
        }
    }
    // The places tried are coarse: on either side of the best one, wherever it fits.
    const std::size_t first = best.before > 0 ? best.before - 1 : 0;
    for (std::size_t i = first; i <= best.before && i < m_makeup.elements.size(); ++i)
        if (m_makeup.elements[i].type == ElementType::Section)
            tryHiddenCoilWithin(i);
    tryLoadedLoop();
}

void Fitter::tryGone(ElementType type, LoopCause cause, double stretch)
{
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < m_makeup.elements.size(); ++i) {
        if (m_makeup.elements[i].type != type)
            continue;
        all.push_back(i);
        offer(cause, m_makeup.without({i}),
              Text(QT_TRANSLATE_NOOP("core", "the %1, on record is not there"))
                  .arg(m_makeup.textAt(i)),
              stretch);
    }
    if (all.size() > 1)
        offer(cause, m_makeup.without(all),
              type == ElementType::LoadCoil
                  ? QT_TRANSLATE_NOOP("core", "none of the load coils on record is there")
                  : QT_TRANSLATE_NOOP("core", "none of the bridged taps on record is there"),
              stretch + 0.5);
}

void Fitter::tryOtherWires(const std::vector<std::size_t> &sections, const Text &what,
                           double stretch)
{
    const Wire recorded = m_makeup.elements[sections.front()].wire;
    const auto tryWire = [&](const Wire &wire) {
        if (wire == recorded)
            return;
        LoopMakeup makeup = m_makeup;
        for (const std::size_t section : sections)
            makeup.elements[section].wire = wire;
        const int steps = std::abs(wireNumber(wire) - wireNumber(recorded));
        offer(LoopCause::Gauge, makeup,
              Text(QT_TRANSLATE_NOOP("core", "%1 is of %2")).arg(what).arg(wire.text()),
              stretch + (steps - 1) * gaugeStretchPerStep);
    };
    if (recorded.gaugeAwg != 0)
        for (const int gauge : knownGauges())
            tryWire(Wire::awg(gauge));
    else
        for (const double diameter : knownDiameters())
            tryWire(Wire::millimetres(diameter));
}

/// One section alone, then all that are recorded of one wire.
void Fitter::tryGauges()
{
    std::array<std::vector<std::size_t>, wireCount> sections;
    std::size_t tried = 0;
    for (std::size_t i = 0; i < m_makeup.elements.size(); ++i) {
        if (m_makeup.elements[i].type != ElementType::Section)
            continue;
        sections[std::size_t(wireNumber(m_makeup.elements[i].wire))].push_back(i);
        if (++tried <= mostLoopPlaces)
            tryOtherWires({i}, Text(QT_TRANSLATE_NOOP("core", "the %1,")).arg(m_makeup.textAt(i)),
                          gaugeStretch);
    }
    for (const auto &same : sections)
        if (same.size() > 1)
            tryOtherWires(same,
                          Text(QT_TRANSLATE_NOOP("core", "every section of %1"))
                              .arg(m_makeup.elements[same.front()].wire.text()),
                          gaugeStretch + 0.5);
}

} // namespace

double resistanceTolerance(double predictedOhm, const LimitSet &limits)
{
    return std::max(limits.value("loop_resistance_error_relative") * predictedOhm,
                    limits.value("loop_resistance_error_absolute"));
}

double loopMisfit(const LoopMakeup &makeup, const MeasuredLoop &measured, const LimitSet &limits)
{
    double sum = 0;
    if (measured.dcResistanceOhm) {
        const double predicted = dcResistanceOhm(makeup);
        sum += square((*measured.dcResistanceOhm - predicted) /
                      resistanceTolerance(predicted, limits));
    }
    for (const LossReading &reading : measured.losses) {
        const double predicted = insertionLossDb(makeup, reading.frequencyHz, reading.between);
        sum += square((reading.lossDb - predicted) / lossMarginDb(predicted, limits));
    }
    return sum;
}

std::vector<LoopCandidate> loopCandidates(const LoopMakeup &makeup, const MeasuredLoop &measured,
                                          const LimitSet &limits)
{
    Fitter fitter(makeup, measured, limits);
    if (makeup.workingLengthFt() > 0) {
        fitter.tryLength();
        fitter.tryGauges();
        fitter.tryTemperature();
    }
    fitter.tryHiddenTaps();
    fitter.tryHiddenCoils();
    fitter.tryGone(ElementType::BridgedTap, LoopCause::TapGone, tapGoneStretch);
    fitter.tryGone(ElementType::LoadCoil, LoopCause::CoilGone, coilGoneStretch);
    return fitter.take();
}

} // namespace loopwright
