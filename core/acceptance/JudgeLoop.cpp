// Criterion loop: of a basic-rate line by resistance, loss at the frequency of the limit set and
// make-up; of an analog line by resistance and the voice-band rules.

#include "core/acceptance/Judging.h"
#include "core/acceptance/LoopState.h"
#include "core/loop/DesignRules.h"
#include "core/loop/LoopComparison.h"
#include "core/loop/VoiceBand.h"

#include <cmath>

namespace loopwright {

namespace {

/// "40 kHz": where the loss of a basic-rate loop is limited.
QString lossFrequency(const Judging &judging)
{
    return figure(judging.limits.value("bri_loss_frequency") / 1000) + " kHz";
}

/// The newest counting figures of the pair.
struct PairFigures
{
    std::optional<double> resistanceOhm, lossDb;
    std::optional<LoopMakeup> makeup;
    QStringList evidence;
    bool recordIsWrong = false; ///< the make-up explains the measurement at no temperature
};

PairFigures newestFigures(const Judging &judging)
{
    PairFigures figures;
    QString resistanceId, lossId, makeupId;
    const double frequency = judging.limits.value("bri_loss_frequency");
    for (const Fact *fact : judging.evidence.of<LoopFact>()) {
        const auto *loop = fact->as<LoopFact>();
        if (loop->dcResistanceOhm) {
            figures.resistanceOhm = loop->dcResistanceOhm;
            resistanceId = fact->id;
        }
        // A loss at another frequency says nothing of the one that is limited.
        if (loop->lossDb &&
            std::abs(loop->frequencyHz.value_or(0) - frequency) <= 0.01 * frequency) {
            figures.lossDb = loop->lossDb;
            lossId = fact->id;
        }
        if (loop->makeup) {
            figures.makeup = loop->makeup;
            makeupId = fact->id;
        }
    }
    LoopState known{figures.makeup, {figures.resistanceOhm, {}}};
    if (figures.lossDb)
        known.measured.losses.push_back({frequency, *figures.lossDb, {}});
    figures.recordIsWrong = isRecordWrong(known, judging.order.kind, judging.limits);
    // A loss at that frequency says nothing of an analog line.
    figures.evidence = {resistanceId, judging.isAnalog() ? QString() : lossId, makeupId};
    figures.evidence.removeAll(QString());
    figures.evidence.removeDuplicates();
    return figures;
}

const Need &measuredNeed(const Judging &judging)
{
    return *judging.need("loop.measured");
}

const Need &makeupNeed(const Judging &judging)
{
    return *judging.need("loop.makeup");
}

constexpr const char *haveItMended = QT_TRANSLATE_NOOP(
    "core", "Have the pair mended or another assigned, then record that it was changed.");

void judgeFigure(Judging &judging, CriterionResult &result, const Text &what, double measured,
                 const Limit &limit)
{
    const bool within = measured <= limit.value;
    mergeGrade(result, within ? QuantityClass::Good : QuantityClass::Poor);
    // As many decimals as it takes to see on which side it is.
    QString shown = figure(measured);
    for (int decimals = 3; !within && shown == figure(limit.value) && decimals <= 9; ++decimals)
        shown = figure(measured, decimals);
    judging.settle(measuredNeed(judging), result,
                   within ? CriterionOutcome::Met : CriterionOutcome::NotMet,
                   Text(QT_TRANSLATE_NOOP("core", "%1 of %2 %3 is %4 the limit of %5 %3."))
                       .arg(what)
                       .arg(shown)
                       .arg(limit.unit)
                       .arg(within ? Text(QT_TRANSLATE_NOOP("core", "within"))
                                   : Text(QT_TRANSLATE_NOOP("core", "above")))
                       .arg(figure(limit.value)),
                   within ? Text() : Text(haveItMended));
}

QuantityClass gradeOf(Suitability verdict)
{
    switch (verdict) {
    case Suitability::Suitable:
        break;
    case Suitability::Marginal:
        return QuantityClass::Marginal;
    case Suitability::NotSuitable:
        return QuantityClass::Poor;
    }
    return QuantityClass::Good;
}

/// A rule of the make-up that a figure was computed by.
void judgeRule(Judging &judging, CriterionResult &result, const RuleResult &rule, bool predicted)
{
    const bool isSentence = rule.reason.english().endsWith(u'.');
    const Text told = isSentence ? rule.reason : Text("%1.").arg(rule.reason);
    const Text reason =
        predicted ? Text(QT_TRANSLATE_NOOP("core", "Predicted: %1")).arg(told) : told;
    mergeGrade(result, gradeOf(rule.verdict));
    if (rule.verdict == Suitability::NotSuitable)
        judging.settle(makeupNeed(judging), result, CriterionOutcome::NotMet, reason,
                       Text(haveItMended));
    else
        judging.settle(makeupNeed(judging), result, CriterionOutcome::Met,
                       rule.verdict == Suitability::Marginal
                           ? Text(QT_TRANSLATE_NOOP("core", "Marginal: %1")).arg(reason)
                           : reason);
}

/// Rules of the make-up, leaving out those whose figure was measured.
void judgeMakeup(Judging &judging, const PairFigures &figures, CriterionResult &result)
{
    const LoopQualification qualification = qualify(*figures.makeup, judging.limits);
    for (const RuleResult &rule : qualification.rules) {
        if ((rule.key == "bri_loss" && figures.lossDb) ||
            (rule.key == "bri_resistance" && figures.resistanceOhm))
            continue;
        judgeRule(judging, result, rule, rule.key == "bri_loss" || rule.key == "bri_resistance");
    }
    if (!figures.lossDb) {
        result.measured = roundForRecord(qualification.hotLossDb);
        result.measuredText = whenHot(
            Text(QT_TRANSLATE_NOOP("core", "%1 dB predicted")).arg(figure(qualification.hotLossDb)),
            qualification.hottestF);
    }
}

/// The measurement decides, and the order says so until the record is mended.
void sayRecordIsWrong(Judging &judging, PairFigures &figures, CriterionResult &result)
{
    if (!figures.recordIsWrong)
        return;
    const Text next(QT_TRANSLATE_NOOP("core", "Have the record of the pair mended."));
    Text told(recordIsWrongText);
    judging.settle(makeupNeed(judging), result, CriterionOutcome::Met, told, next);
    told += next;
    addRemark(
        result,
        {told, Text(QT_TRANSLATE_NOOP("core", "The record of the pair does not agree with what was "
                                              "measured, and is to be mended."))});
    figures.makeup.reset();
}

bool runWithoutErrors(const Judging &judging)
{
    for (const ChannelRuns &channel : judging.runs) {
        const JudgedRun *run = channel.deciding();
        if (run && run->standing == RunStanding::Passed && run->evaluation.summary.bitErrors == 0)
            return true;
    }
    return false;
}

Text nothingKnown(const Judging &judging)
{
    return judging.hasDiscounted(measuredNeed(judging))
               ? QT_TRANSLATE_NOOP("core", "Nothing that counts is known of the loop.")
               : QT_TRANSLATE_NOOP("core", "Nothing is known of the loop yet.");
}

void judgeWithoutMakeup(Judging &judging, const PairFigures &figures, CriterionResult &result)
{
    const Need &need = measuredNeed(judging);
    const QString frequency = lossFrequency(judging);
    if (figures.lossDb && figures.recordIsWrong)
        judging.settle(need, result, CriterionOutcome::Met, {}); // said already
    else if (figures.lossDb)
        judging.settle(need, result, CriterionOutcome::Met,
                       Text(QT_TRANSLATE_NOOP(
                           "core", "The make-up is not known; the measured loss decides.")));
    else if (figures.resistanceOhm && runWithoutErrors(judging))
        judging.settle(
            need, result, CriterionOutcome::Met,
            Text(QT_TRANSLATE_NOOP(
                "core", "The make-up is not known; the measured resistance and a run without "
                        "errors stand for the loss.")));
    else if (figures.resistanceOhm)
        judging.settle(
            need, result, CriterionOutcome::Missing,
            Text(QT_TRANSLATE_NOOP(
                     "core", "The make-up and the loss at %1 are not known; a resistance alone "
                             "needs a run without errors beside it."))
                .arg(frequency),
            Text(QT_TRANSLATE_NOOP(
                     "core", "Measure the loss at %1, enter the make-up, or make the error-rate "
                             "run."))
                .arg(frequency));
    else
        judging.settle(
            need, result, CriterionOutcome::Missing, nothingKnown(judging),
            Text(QT_TRANSLATE_NOOP(
                "core", "Enter the make-up of the pair, or measure its resistance and loss.")));
}

void judgeBasicRate(Judging &judging, const PairFigures &figures, CriterionResult &result)
{
    const Limit &loss = judging.limits.limit("bri_loss_max");
    result.limit = loss.value;
    result.unit = loss.unit;
    result.limitText =
        Text(QT_TRANSLATE_NOOP("core", "at most %1 dB at %2 and %3 ohm, no load coil"))
            .arg(figure(loss.value))
            .arg(lossFrequency(judging))
            .arg(figure(judging.limits.value("bri_resistance_max")));
    result.source = loss.source;
    if (figures.lossDb) {
        judgeFigure(
            judging, result,
            Text(QT_TRANSLATE_NOOP("core", "The measured loss at %1")).arg(lossFrequency(judging)),
            *figures.lossDb, loss);
        result.measured = *figures.lossDb;
        result.measuredText =
            Text(QT_TRANSLATE_NOOP("core", "%1 dB measured")).arg(figure(*figures.lossDb));
    }
    if (figures.resistanceOhm)
        judgeFigure(judging, result, QT_TRANSLATE_NOOP("core", "The measured resistance"),
                    *figures.resistanceOhm, judging.limits.limit("bri_resistance_max"));
    if (figures.makeup)
        judgeMakeup(judging, figures, result);
    else
        judgeWithoutMakeup(judging, figures, result);
    if (result.measured.isNull() && figures.resistanceOhm) {
        result.measured = *figures.resistanceOhm;
        result.measuredText =
            Text(QT_TRANSLATE_NOOP("core", "%1 ohm measured")).arg(figure(*figures.resistanceOhm));
        result.limit = judging.limits.value("bri_resistance_max");
        result.unit = "ohm";
    }
}

void judgeAnalogLoop(Judging &judging, const PairFigures &figures, CriterionResult &result)
{
    const Limit &limit = figures.makeup ? voiceResistanceLimit(*figures.makeup, judging.limits)
                                        : judging.limits.limit("rd_resistance_max");
    result.limit = limit.value;
    result.unit = limit.unit;
    result.limitText =
        Text(QT_TRANSLATE_NOOP("core",
                               "at most %1 ohm, load coils where the design rule wants them"))
            .arg(figure(limit.value));
    result.source = limit.source;
    if (figures.resistanceOhm) {
        judgeFigure(judging, result, QT_TRANSLATE_NOOP("core", "The measured resistance"),
                    *figures.resistanceOhm, limit);
        result.measured = *figures.resistanceOhm;
        result.measuredText =
            Text(QT_TRANSLATE_NOOP("core", "%1 ohm measured")).arg(figure(*figures.resistanceOhm));
    }
    if (!figures.makeup) {
        if (!figures.resistanceOhm)
            judging.settle(
                measuredNeed(judging), result, CriterionOutcome::Missing, nothingKnown(judging),
                Text(QT_TRANSLATE_NOOP(
                    "core", "Enter the make-up of the pair, or measure its resistance.")));
        return;
    }
    const VoiceBandQualification qualification = qualifyVoiceBand(*figures.makeup, judging.limits);
    for (const RuleResult &rule : qualification.rules)
        if (!(figures.resistanceOhm && rule.unit == "ohm"))
            judgeRule(judging, result, rule, false);
    if (!figures.resistanceOhm) {
        result.measured = roundForRecord(qualification.dcResistanceOhm);
        result.measuredText = Text(QT_TRANSLATE_NOOP("core", "%1 ohm predicted"))
                                  .arg(figure(qualification.dcResistanceOhm));
    }
}

} // namespace

void needLoop(std::vector<Need> &needs, const ServiceOrder &order, OrderScope,
              const LimitSet &limits)
{
    Need makeup{"loop.makeup", "loop", StepGroup::Makeup, Station::Loop, FactKind::Loop};
    makeup.fields = {"makeup"};
    makeup.label = Text(QT_TRANSLATE_NOOP("core", "Make-up of the pair"));
    makeup.hint = Text(QT_TRANSLATE_NOOP(
        "core", "each section with gauge and length, taps and load coils, from the office"));
    makeup.matches = [](const Fact &fact) {
        return fact.as<LoopFact>() && fact.as<LoopFact>()->makeup;
    };
    needs.push_back(std::move(makeup));

    Need measured{"loop.measured", "loop", StepGroup::Pair, Station::TurnUp, FactKind::Loop};
    measured.fields = {"dc_resistance_ohm"};
    if (order.kind == LineKind::Bri) {
        measured.fields << "loss_db"
                        << "frequency_hz";
        measured.optional = {"frequency_hz"};
        measured.preset.insert("frequency_hz", limits.value("bri_loss_frequency"));
    }
    measured.after = {"safety", "instrument"};
    measured.label = Text(QT_TRANSLATE_NOOP("core", "Measured on the pair"));
    measured.hint =
        order.kind == LineKind::Bri
            ? Text(QT_TRANSLATE_NOOP("core", "at most %1 ohm, and %2 dB at %3 kHz between %4 ohm"))
                  .arg(limits.value("bri_resistance_max"))
                  .arg(limits.value("bri_loss_max"))
                  .arg(limits.value("bri_loss_frequency") / 1000)
                  .arg(limits.value("bri_termination"))
            : Text(QT_TRANSLATE_NOOP("core", "at most %1 ohm, with load coils %2"))
                  .arg(limits.value("rd_resistance_max"))
                  .arg(limits.value("rrd_long_resistance_max"));
    measured.matches = [](const Fact &fact) {
        const auto *loop = fact.as<LoopFact>();
        return loop && (loop->dcResistanceOhm || loop->lossDb);
    };
    needs.push_back(std::move(measured));
}

void judgeLoop(Judging &judging, CriterionResult &result)
{
    PairFigures figures = newestFigures(judging);
    const bool noMakeup = !figures.makeup;
    result.evidence = figures.evidence;
    sayRecordIsWrong(judging, figures, result);
    if (judging.isAnalog())
        judgeAnalogLoop(judging, figures, result);
    else
        judgeBasicRate(judging, figures, result);
    // The desk's station is passed over if nobody knows the make-up: then the pair is measured, on
    // site.
    if (noMakeup && result.outcome != CriterionOutcome::Met)
        result.station = Station::TurnUp;
}

} // namespace loopwright
