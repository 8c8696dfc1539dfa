#include "core/loop/LoopComparison.h"

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

/// Candidates whose score is over the first one's by less are named too.
constexpr double clearLead = 1.0;
constexpr double possibleLead = 2.5; ///< if it explains every figure

QString hertz(double frequency)
{
    const bool kilo = frequency >= 10000;
    return QString("%1 %2")
        .arg(kilo ? frequency / 1000 : frequency, 0, 'g', 6)
        .arg(kilo ? QString("kHz") : QString("Hz"));
}

LoopDifference difference(const QString &name, const QString &unit, double measured,
                          double predicted, double tolerance)
{
    LoopDifference result{name,      unit,      measured,
                          predicted, tolerance, std::abs(measured - predicted) <= tolerance,
                          {}};
    const double off = std::abs(measured - predicted);
    result.reason = QString("%1: measured %2, predicted %3; %4 by %5, where %6 is within the error")
                        .arg(name, figureText(measured, unit), figureText(predicted, unit),
                             measured >= predicted ? QString("more") : QString("less"),
                             figureText(off, unit), figureText(tolerance, unit));
    return result;
}

std::vector<LoopDifference> differencesOf(const LoopMakeup &makeup, const MeasuredLoop &measured,
                                          const LimitSet &limits)
{
    std::vector<LoopDifference> differences;
    if (measured.dcResistanceOhm) {
        const double predicted = dcResistanceOhm(makeup);
        differences.push_back(difference("DC resistance", "ohm", *measured.dcResistanceOhm,
                                         predicted, resistanceTolerance(predicted, limits)));
    }
    for (const LossReading &reading : measured.losses) {
        const double predicted = insertionLossDb(makeup, reading.frequencyHz, reading.between);
        differences.push_back(difference("loss at " + hertz(reading.frequencyHz), "dB",
                                         reading.lossDb, predicted,
                                         lossMarginDb(predicted, limits)));
    }
    return differences;
}

QString forecastOf(const LoopMakeup &makeup, const MeasuredLoop &measured, const LimitSet &limits)
{
    QStringList figures;
    for (const LoopDifference &each : differencesOf(makeup, measured, limits))
        figures << QString("%1 %2 (measured %3)")
                       .arg(each.name, figureText(each.predicted, each.unit),
                            figureText(each.measured, each.unit));
    return figures.join(", ");
}

bool explainsAll(const LoopCandidate &candidate, const MeasuredLoop &measured,
                 const LimitSet &limits)
{
    const auto left = differencesOf(candidate.makeup, measured, limits);
    return std::all_of(left.begin(), left.end(),
                       [](const LoopDifference &each) { return each.agrees; });
}

struct CauseWords
{
    LoopCause cause;
    const char *sign; ///< by what it is known
};
constexpr CauseWords causeWords[] = {
    {LoopCause::Length, "resistance and loss go together with length"},
    {LoopCause::HiddenTap, "a tap adds loss and no resistance"},
    {LoopCause::TapGone, "without the tap there is less loss and the same resistance"},
    {LoopCause::HiddenCoil,
     "a coil changes the loss far more than the resistance, up at high frequencies and down in "
     "the voice band"},
    {LoopCause::CoilGone,
     "without the coil the loss changes far more than the resistance, down at high frequencies "
     "and up in the voice band"},
    {LoopCause::Gauge, "another gauge changes resistance and loss, the resistance more"},
    {LoopCause::Temperature, "warmth raises resistance and loss by a few hundredths"},
};

QString signOf(LoopCause cause)
{
    for (const CauseWords &row : causeWords)
        if (row.cause == cause)
            return QString::fromUtf8(row.sign);
    return {};
}

QString whyOf(const LoopComparison &comparison, const MeasuredLoop &measured,
              const LimitSet &limits)
{
    const LoopCandidate &first = comparison.candidates.front();
    QString why = QString("Most likely %1: %2. It would give %3.")
                      .arg(first.text, signOf(first.cause), first.forecast);
    QStringList near, possible;
    for (std::size_t i = 1; i < comparison.candidates.size(); ++i) {
        const LoopCandidate &other = comparison.candidates[i];
        if (other.score() < first.score() + clearLead)
            near << other.text;
        else if (other.score() < first.score() + possibleLead &&
                 explainsAll(other, measured, limits))
            possible << other.text;
    }
    if (!near.isEmpty())
        why += QString(" Nearly as likely: %1.").arg(near.join("; or "));
    if (!possible.isEmpty())
        why += QString(" Possible too: %1.").arg(possible.join("; or "));
    if (!measured.dcResistanceOhm)
        why += " A measured resistance would tell length from taps.";
    else if (measured.losses.empty())
        why += " A measured loss would tell more.";
    return why;
}

} // namespace

bool agreesAtSomeTemperature(const LoopMakeup &makeup, const MeasuredLoop &measured,
                             const LimitSet &limits)
{
    constexpr int coldest = -20, hottest = 140, step = 10;
    if (makeup.amplified)
        return true;
    const auto agrees = [&](const LoopMakeup &loop) {
        return std::ranges::all_of(differencesOf(loop, measured, limits), &LoopDifference::agrees);
    };
    if (agrees(makeup))
        return true;
    LoopMakeup at = makeup;
    for (int fahrenheit = coldest; fahrenheit <= hottest; fahrenheit += step) {
        at.temperature = Temperature{double(fahrenheit), false};
        if (agrees(at))
            return true;
    }
    return false;
}

LoopComparison compareLoop(const LoopMakeup &makeup, const MeasuredLoop &measured,
                           const LimitSet &limits)
{
    LoopComparison comparison;
    comparison.differences = differencesOf(makeup, measured, limits);
    comparison.agrees = std::all_of(comparison.differences.begin(), comparison.differences.end(),
                                    [](const LoopDifference &each) { return each.agrees; });
    if (comparison.agrees) {
        comparison.why = comparison.differences.empty()
                             ? "Nothing was measured that could be compared."
                             : "What was measured agrees with the record.";
        return comparison;
    }
    comparison.candidates = loopCandidates(makeup, measured, limits);
    for (LoopCandidate &candidate : comparison.candidates)
        candidate.forecast = forecastOf(candidate.makeup, measured, limits);
    // Those that leave a figure unexplained come last, however small their stretch.
    std::stable_sort(comparison.candidates.begin(), comparison.candidates.end(),
                     [&](const LoopCandidate &a, const LoopCandidate &b) {
                         const bool fullyA = explainsAll(a, measured, limits);
                         const bool fullyB = explainsAll(b, measured, limits);
                         return fullyA != fullyB ? fullyA : a.score() < b.score();
                     });
    if (comparison.candidates.empty() ||
        !explainsAll(comparison.candidates.front(), measured, limits)) {
        comparison.mostLikely = LoopCause::Unexplained;
        comparison.why = "No single error of the record explains what was measured: measure again, "
                         "then look for a bad joint, the wrong pair, or several errors together.";
        return comparison;
    }
    comparison.mostLikely = comparison.candidates.front().cause;
    comparison.why = whyOf(comparison, measured, limits);
    return comparison;
}

QJsonObject LoopComparison::toJson() const
{
    QJsonArray figures;
    for (const LoopDifference &each : differences)
        figures << QJsonObject{{"name", each.name},           {"unit", each.unit},
                               {"measured", each.measured},   {"predicted", each.predicted},
                               {"tolerance", each.tolerance}, {"agrees", each.agrees},
                               {"reason", each.reason}};
    QJsonArray list;
    for (const LoopCandidate &each : candidates)
        list << QJsonObject{{"cause", toText(each.cause)}, {"text", each.text},
                            {"forecast", each.forecast},   {"misfit", each.misfit},
                            {"stretch", each.stretch},     {"makeup", each.makeup.toJson()}};
    return {{"agrees", agrees},
            {"most_likely", toText(mostLikely)},
            {"why", why},
            {"differences", figures},
            {"candidates", list}};
}

} // namespace loopwright
