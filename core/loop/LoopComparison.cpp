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

LoopDifference difference(const Text &name, const QString &unit, double measured, double predicted,
                          double tolerance)
{
    LoopDifference result{name,      unit,      measured,
                          predicted, tolerance, std::abs(measured - predicted) <= tolerance,
                          {}};
    const double off = std::abs(measured - predicted);
    result.reason =
        Text(measured >= predicted
                 ? QT_TRANSLATE_NOOP("core", "%1: measured %2, predicted %3; more by %4, where %5 "
                                             "is within the error")
                 : QT_TRANSLATE_NOOP("core", "%1: measured %2, predicted %3; less by %4, where %5 "
                                             "is within the error"))
            .arg(name)
            .arg(figureText(measured, unit))
            .arg(figureText(predicted, unit))
            .arg(figureText(off, unit))
            .arg(figureText(tolerance, unit));
    return result;
}

std::vector<LoopDifference> differencesOf(const LoopMakeup &makeup, const MeasuredLoop &measured,
                                          const LimitSet &limits)
{
    std::vector<LoopDifference> differences;
    if (measured.dcResistanceOhm) {
        const double predicted = dcResistanceOhm(makeup);
        differences.push_back(difference(QT_TRANSLATE_NOOP("core", "DC resistance"), "ohm",
                                         *measured.dcResistanceOhm, predicted,
                                         resistanceTolerance(predicted, limits)));
    }
    for (const LossReading &reading : measured.losses) {
        const double predicted = insertionLossDb(makeup, reading.frequencyHz, reading.between);
        differences.push_back(difference(
            Text(QT_TRANSLATE_NOOP("core", "loss at %1")).arg(hertz(reading.frequencyHz)), "dB",
            reading.lossDb, predicted, lossMarginDb(predicted, limits)));
    }
    return differences;
}

Text forecastOf(const LoopMakeup &makeup, const MeasuredLoop &measured, const LimitSet &limits)
{
    std::vector<Text> figures;
    for (const LoopDifference &each : differencesOf(makeup, measured, limits))
        figures.push_back(Text(QT_TRANSLATE_NOOP("core", "%1 %2 (measured %3)"))
                              .arg(each.name)
                              .arg(figureText(each.predicted, each.unit))
                              .arg(figureText(each.measured, each.unit)));
    return Text::joined(figures, ", ");
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
    {LoopCause::Length, QT_TRANSLATE_NOOP("core", "resistance and loss go together with length")},
    {LoopCause::HiddenTap, QT_TRANSLATE_NOOP("core", "a tap adds loss and no resistance")},
    {LoopCause::TapGone,
     QT_TRANSLATE_NOOP("core", "without the tap there is less loss and the same resistance")},
    {LoopCause::HiddenCoil,
     QT_TRANSLATE_NOOP("core", "a coil changes the loss far more than the resistance, up at high "
                               "frequencies and down in the voice band")},
    {LoopCause::CoilGone,
     QT_TRANSLATE_NOOP("core", "without the coil the loss changes far more than the resistance, "
                               "down at high frequencies and up in the voice band")},
    {LoopCause::Gauge,
     QT_TRANSLATE_NOOP("core", "another gauge changes resistance and loss, the resistance more")},
    {LoopCause::Temperature,
     QT_TRANSLATE_NOOP("core", "warmth raises resistance and loss by a few hundredths")},
};

Text signOf(LoopCause cause)
{
    for (const CauseWords &row : causeWords)
        if (row.cause == cause)
            return row.sign;
    return {};
}

/// One more to choose from.
void addChoice(Text &choices, const Text &next)
{
    choices = choices.isEmpty()
                  ? next
                  : Text(QT_TRANSLATE_NOOP("core", "%1; or %2")).arg(choices).arg(next);
}

Text whyOf(const LoopComparison &comparison, const MeasuredLoop &measured, const LimitSet &limits)
{
    const LoopCandidate &first = comparison.candidates.front();
    Text why = Text(QT_TRANSLATE_NOOP("core", "Most likely %1: %2. It would give %3."))
                   .arg(first.text)
                   .arg(signOf(first.cause))
                   .arg(first.forecast);
    Text near, possible;
    for (std::size_t i = 1; i < comparison.candidates.size(); ++i) {
        const LoopCandidate &other = comparison.candidates[i];
        if (other.score() < first.score() + clearLead)
            addChoice(near, other.text);
        else if (other.score() < first.score() + possibleLead &&
                 explainsAll(other, measured, limits))
            addChoice(possible, other.text);
    }
    if (!near.isEmpty())
        why += Text(QT_TRANSLATE_NOOP("core", "Nearly as likely: %1.")).arg(near);
    if (!possible.isEmpty())
        why += Text(QT_TRANSLATE_NOOP("core", "Possible too: %1.")).arg(possible);
    if (!measured.dcResistanceOhm)
        why += QT_TRANSLATE_NOOP("core", "A measured resistance would tell length from taps.");
    else if (measured.losses.empty())
        why += QT_TRANSLATE_NOOP("core", "A measured loss would tell more.");
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
        comparison.why =
            comparison.differences.empty()
                ? QT_TRANSLATE_NOOP("core", "Nothing was measured that could be compared.")
                : QT_TRANSLATE_NOOP("core", "What was measured agrees with the record.");
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
        comparison.why = QT_TRANSLATE_NOOP(
            "core", "No single error of the record explains what was measured: measure again, "
                    "then look for a bad joint, the wrong pair, or several errors together.");
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
        figures << QJsonObject{{"name", each.name.english()},    {"unit", each.unit},
                               {"measured", each.measured},      {"predicted", each.predicted},
                               {"tolerance", each.tolerance},    {"agrees", each.agrees},
                               {"reason", each.reason.english()}};
    QJsonArray list;
    for (const LoopCandidate &each : candidates)
        list << QJsonObject{{"cause", toText(each.cause)},
                            {"text", each.text.english()},
                            {"forecast", each.forecast.english()},
                            {"misfit", each.misfit},
                            {"stretch", each.stretch},
                            {"makeup", each.makeup.toJson()}};
    return {{"agrees", agrees},
            {"most_likely", toText(mostLikely)},
            {"why", why.english()},
            {"differences", figures},
            {"candidates", list}};
}

} // namespace loopwright
