#include "core/acceptance/CircuitFigures.h"

#include "core/errortest/RunEvaluation.h"

#include <QJsonArray>

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

/// Where a figure stands in the order of the work.
enum Place
{
    OfCard,
    OfLoop,
    OfLoss,
    OfQuantity, ///< the first quantity; the others follow in the order of their table
    OfRun = 1000
};

/// A quantity that a fact may tell, and its figure in the fact.
struct Told
{
    int place = 0;
    QString criterion;
    CircuitFigure head;
    double value = 0;
};

Told told(int place, const QString &criterion, const QString &key, const Text &name,
          const QString &unit, double value)
{
    Told one{place, criterion, {}, value};
    one.head.key = key;
    one.head.name = name;
    one.head.unit = unit;
    return one;
}

void limitAt(Told &one, double limit)
{
    one.head.limit = limit;
    one.head.limitText = Text(QT_TRANSLATE_NOOP("core", "at most %1 %2"))
                             .arg(QString::number(limit, 'g', 6))
                             .arg(one.head.unit);
}

/// The largest magnitude between any two of the wires and ground.
std::optional<double> largest(const std::optional<Voltages> &volts)
{
    std::optional<double> most;
    if (volts)
        for (const auto &[pair, word] : EnumCodes<WirePair>::table)
            if (const auto read = volts->at(pair))
                most = std::max(most.value_or(0), std::abs(*read));
    return most;
}

std::vector<Told> figuresOf(const SafetyFact &card, const LimitSet &limits)
{
    std::vector<Told> list;
    if (const auto volts = largest(card.acV)) {
        list.push_back(told(OfCard, "safety", "ac_v",
                            QT_TRANSLATE_NOOP("core", "highest AC voltage"), "V", *volts));
        limitAt(list.back(),
                limits.value(card.wet.value_or(false) ? "hazard_ac_wet_v" : "hazard_ac_v"));
    }
    if (const auto volts = largest(card.dcV)) {
        list.push_back(told(OfCard, "safety", "dc_v",
                            QT_TRANSLATE_NOOP("core", "highest DC voltage"), "V", *volts));
        limitAt(list.back(), limits.value("hazard_dc_v"));
    }
    return list;
}

std::vector<Told> figuresOf(const LoopFact &loop, const LimitSet &limits, LineKind kind)
{
    std::vector<Told> list;
    if (loop.dcResistanceOhm) {
        list.push_back(told(OfLoop, "loop", "dc_resistance",
                            QT_TRANSLATE_NOOP("core", "DC resistance"), "ohm",
                            *loop.dcResistanceOhm));
        if (kind == LineKind::Bri)
            limitAt(list.back(), limits.value("bri_resistance_max"));
    }
    if (loop.lossDb && loop.frequencyHz) {
        list.push_back(told(OfLoss, "loop", "loss_" + QString::number(*loop.frequencyHz, 'f', 0),
                            Text(QT_TRANSLATE_NOOP("core", "loss at %1 kHz"))
                                .arg(QString::number(*loop.frequencyHz / 1000, 'g', 7)),
                            "dB", *loop.lossDb));
        if (kind == LineKind::Bri && *loop.frequencyHz == limits.value("bri_loss_frequency"))
            limitAt(list.back(), limits.value("bri_loss_max"));
    }
    return list;
}

std::vector<Told> figuresOf(const RunFact &run, const LimitSet &limits)
{
    const RunEvaluation evaluation = evaluateRun(run, limits.value("run_confidence"));
    const ErrorSummary &sum = evaluation.summary;
    std::vector<Told> list;
    if (sum.bits > 0) {
        list.push_back(told(OfRun, "run", "bit_error_ratio",
                            QT_TRANSLATE_NOOP("core", "bit error ratio"), {},
                            double(sum.bitErrors) / double(sum.bits)));
        limitAt(list.back(), limits.value("run_ber_max"));
    }
    if (sum.availableSeconds > 0) {
        list.push_back(told(OfRun, "run", "errored_seconds",
                            QT_TRANSLATE_NOOP("core", "errored seconds"), "%",
                            100 * double(sum.erroredSeconds) / double(sum.availableSeconds)));
        limitAt(list.back(), 100 * limits.value("run_esr_max"));
    }
    return list;
}

std::vector<Told> figuresOf(const AnalogFact &analog, const LimitSet &limits)
{
    const auto value = analog.number();
    if (!value)
        return {};
    const AnalogQuantityInfo &row = info(analog.quantity);
    Told one = told(OfQuantity + int(analog.quantity), toText(analog.quantity),
                    toText(analog.quantity), row.name, QString::fromUtf8(row.unit), *value);
    one.head.limit = goodLimit(analog.quantity, *value, limits);
    one.head.limitText = limitText(analog.quantity, limits);
    return {one};
}

std::vector<Told> figuresOf(const Fact &fact, const LimitSet &limits, LineKind kind)
{
    if (const auto *card = fact.as<SafetyFact>())
        return figuresOf(*card, limits);
    if (const auto *loop = fact.as<LoopFact>())
        return figuresOf(*loop, limits, kind);
    if (const auto *run = fact.as<RunFact>())
        return figuresOf(*run, limits);
    if (const auto *analog = fact.as<AnalogFact>())
        return figuresOf(*analog, limits);
    return {};
}

ReadingState stateOf(const Fact &fact, const QString &key, const Decision &decision)
{
    const CriterionResult *criterion = decision.criterion(key);
    if (!criterion || !criterion->evidence.contains(fact.id))
        return ReadingState::Aside;
    switch (criterion->outcome) {
    case CriterionOutcome::Met:
        return criterion->grade == QuantityClass::Marginal ? ReadingState::NearLimit
                                                           : ReadingState::Met;
    case CriterionOutcome::NotMet:
        return ReadingState::NotMet;
    default:
        return ReadingState::Aside;
    }
}

QJsonValue readingJson(const CircuitReading *reading)
{
    if (!reading)
        return {};
    return QJsonObject{{"at", reading->at.text()}, {"order", reading->order},
                       {"fact", reading->fact},    {"pair", reading->pair},
                       {"value", reading->value},  {"state", toText(reading->state)}};
}

} // namespace

const CircuitReading *CircuitFigure::of(const QString &order) const
{
    const CircuitReading *found = nullptr;
    for (const CircuitReading &reading : readings)
        if (reading.order == order &&
            (!found || reading.state != ReadingState::Aside || found->state == ReadingState::Aside))
            found = &reading;
    return found;
}

QJsonObject CircuitFigure::toJson(const QString &turnUp) const
{
    QJsonArray all;
    for (const CircuitReading &reading : readings)
        all << readingJson(&reading);
    return {{"key", key},
            {"name", name.english()},
            {"unit", unit},
            {"limit", limit ? QJsonValue(*limit) : QJsonValue()},
            {"limit_text", limitText.english()},
            {"turn_up", readingJson(of(turnUp))},
            {"newest", readingJson(&newest())},
            {"readings", all}};
}

void CircuitFigures::add(const DecisionInput &input, const LimitSet &limits, const Judged &judged)
{
    for (const Fact *fact : standingFacts(input.facts))
        for (const Told &one : figuresOf(*fact, limits, input.order.kind)) {
            CircuitFigure &figure = m_figures[{one.place, one.head.key}];
            auto readings = std::move(figure.readings);
            figure = one.head;
            figure.readings = std::move(readings);
            figure.readings.push_back({timeOf(*fact), input.order.number, fact->id, judged.pair,
                                       one.value, stateOf(*fact, one.criterion, judged.decision)});
        }
}

std::vector<CircuitFigure> CircuitFigures::take()
{
    std::vector<CircuitFigure> list;
    for (CircuitFigure &figure : m_figures) {
        std::ranges::stable_sort(figure.readings, {},
                                 [](const CircuitReading &reading) { return reading.at.msUtc; });
        list.push_back(std::move(figure));
    }
    m_figures.clear();
    return list;
}

} // namespace loopwright
