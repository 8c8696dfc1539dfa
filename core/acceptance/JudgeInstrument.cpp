// Criterion instrument, and the quantities of an analog line.

#include "core/acceptance/Judging.h"

#include <algorithm>

namespace loopwright {

namespace {

/// Facts that are readings of an instrument; without one named they prove nothing.
bool needsInstrument(const Fact &fact)
{
    if (const auto *loop = fact.as<LoopFact>())
        return loop->dcResistanceOhm || loop->lossDb;
    return fact.as<DetectorFact>() || fact.as<RunFact>() ||
           (fact.as<AnalogFact>() && !info(fact.as<AnalogFact>()->quantity).yesOrNo);
}

void judgeUse(const Judging &judging, const Fact &fact, CriterionResult &result)
{
    if (fact.instrument.isEmpty()) {
        if (needsInstrument(fact))
            mergeOutcome(
                result, CriterionOutcome::Missing,
                QString("A %1 was recorded without an instrument.").arg(toText(fact.kind())),
                "Record the measurement again with the instrument that made it.");
        return;
    }
    const QDate day = timeOf(fact).localDate();
    const auto found =
        std::find_if(judging.input.instruments.begin(), judging.input.instruments.end(),
                     [&fact](const Instrument &i) { return i.key == fact.instrument; });
    if (found == judging.input.instruments.end())
        mergeOutcome(result, CriterionOutcome::NotMet,
                     QString("Instrument %1 is not registered.").arg(fact.instrument),
                     "Register the instrument with its calibration.");
    else if (!found->calibratedOn(day))
        mergeOutcome(result, CriterionOutcome::NotMet,
                     QString("Instrument %1 was not within its calibration on %2.")
                         .arg(fact.instrument, day.toString(Qt::ISODate)),
                     "Measure again with an instrument within its calibration, or record its later "
                     "calibration.");
    else if (judging.evidence.selfTestFailedLater(fact))
        mergeOutcome(
            result, CriterionOutcome::NotMet,
            QString("Instrument %1 failed its self-test later on that visit.").arg(fact.instrument),
            "Have the instrument pass its self-test, then measure again.");
    else
        mergeOutcome(result, CriterionOutcome::Met,
                     QString("Instrument %1 was within its calibration on %2.")
                         .arg(fact.instrument, day.toString(Qt::ISODate)));
}

} // namespace

// Judged last: `result.evidence` comes in as the evidence that the other criteria counted.
void judgeInstrument(const Judging &judging, CriterionResult &result)
{
    result.limitText = "registered, within its calibration on the day, no failed self-test";
    result.source = "common practice";
    QStringList used;
    const QStringList counted = std::exchange(result.evidence, {});
    bool measured = false;
    for (const Fact *fact : judging.evidence.facts()) {
        if (!counted.contains(fact->id))
            continue;
        measured = measured || needsInstrument(*fact) || !fact->instrument.isEmpty();
        judgeUse(judging, *fact, result);
        if (!fact->instrument.isEmpty() && !used.contains(fact->instrument))
            used << fact->instrument;
        if (!fact->instrument.isEmpty())
            result.evidence << fact->id;
    }
    if (!measured && judging.input.scope == OrderScope::NumbersOnly)
        mergeOutcome(result, CriterionOutcome::NotNeeded,
                     "Nothing was measured with an instrument.");
    else if (!measured)
        mergeOutcome(result, CriterionOutcome::Missing, "Nothing was measured yet.",
                     "Record the measurements with their instrument.");
    if (measured && used.isEmpty() && result.reason.isEmpty())
        mergeOutcome(result, CriterionOutcome::Missing, "No instrument was named.",
                     "Name the instrument that was used.");
    result.measured = result.measuredText = used.join(", ");
    if (used.isEmpty())
        result.measured = QJsonValue();
}

namespace {

const Fact *newestQuantity(const Judging &judging, AnalogQuantity quantity)
{
    const Fact *newest = nullptr;
    for (const Fact *fact : judging.evidence.of<AnalogFact>(Proves::Loop))
        if (fact->as<AnalogFact>()->quantity == quantity)
            newest = fact;
    return newest;
}

/// The recorded value, or for balance the subtraction where both sides were recorded.
std::optional<AnalogValue> valueOf(const Judging &judging, AnalogQuantity quantity,
                                   CriterionResult &result)
{
    if (const Fact *fact = newestQuantity(judging, quantity)) {
        result.evidence << fact->id;
        return fact->as<AnalogFact>()->value();
    }
    if (quantity != AnalogQuantity::Balance)
        return std::nullopt;
    const Fact *influence = newestQuantity(judging, AnalogQuantity::PowerInfluence);
    const Fact *noise = newestQuantity(judging, AnalogQuantity::Noise);
    if (!influence || !noise)
        return std::nullopt;
    const AnalogValue a = influence->as<AnalogFact>()->value(),
                      b = noise->as<AnalogFact>()->value();
    if (!std::holds_alternative<double>(a) || !std::holds_alternative<double>(b))
        return std::nullopt;
    result.evidence << influence->id << noise->id;
    return balanceDb(std::get<double>(a), std::get<double>(b));
}

} // namespace

void judgeQuantity(const Judging &judging, CriterionResult &result)
{
    const AnalogQuantity quantity = *fromText<AnalogQuantity>(result.key);
    const AnalogQuantityInfo &about = info(quantity);
    result.unit = QString::fromUtf8(about.unit);
    result.limitText = limitText(quantity, judging.limits);
    result.source = limitSource(quantity, judging.limits);
    const auto value = valueOf(judging, quantity, result);
    const QString name = QString::fromUtf8(about.name);
    if (!value) {
        mergeOutcome(result, about.always ? CriterionOutcome::Missing : CriterionOutcome::NotNeeded,
                     QString("The %1 was not recorded.").arg(name),
                     about.always ? QString("Record the %1.").arg(name) : QString());
        return;
    }
    const QuantityClass kind = classify(quantity, *value, judging.limits);
    result.measuredText = valueText(quantity, *value);
    if (const auto *number = std::get_if<double>(&*value)) {
        result.measured = *number;
        result.limit = goodLimit(quantity, *number, judging.limits);
    } else {
        result.measured = std::get<bool>(*value);
        result.limit = true;
    }
    // Marginal is met and said so.
    mergeOutcome(result,
                 kind == QuantityClass::Poor ? CriterionOutcome::NotMet : CriterionOutcome::Met,
                 (std::holds_alternative<bool>(*value) ? QString("The %1 is %3 (%2).")
                                                       : QString("The %1 of %2 is %3."))
                     .arg(name, result.measuredText, toText(kind)),
                 kind == QuantityClass::Poor
                     ? QString("Clear the trouble and record the %1 again.").arg(name)
                     : QString());
}

} // namespace loopwright
