// Criterion loop: of a basic-rate line by resistance, loss at the frequency of the limit set and
// make-up; of an analog line by resistance and the voice-band rules.

#include "core/acceptance/Judging.h"
#include "core/loop/DesignRules.h"
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
};

PairFigures newestFigures(const Judging &judging)
{
    PairFigures figures;
    QString resistanceId, lossId, makeupId;
    const double frequency = judging.limits.value("bri_loss_frequency");
    for (const Fact *fact : judging.evidence.of<LoopFact>(Proves::Loop)) {
        const auto *loop = fact->as<LoopFact>();
        if (loop->dcResistanceOhm) {
            figures.resistanceOhm = loop->dcResistanceOhm;
            resistanceId = fact->id;
        }
        // A loss at another frequency says nothing of the one that is limited.
        if (loop->lossDb &&
            std::abs(loop->frequencyHz.value_or(frequency) - frequency) <= 0.01 * frequency) {
            figures.lossDb = loop->lossDb;
            lossId = fact->id;
        }
        if (loop->makeup) {
            figures.makeup = loop->makeup;
            makeupId = fact->id;
        }
    }
    figures.evidence = {resistanceId, lossId, makeupId};
    figures.evidence.removeAll(QString());
    figures.evidence.removeDuplicates();
    return figures;
}

void judgeFigure(CriterionResult &result, const QString &what, double measured, const Limit &limit)
{
    const bool within = measured <= limit.value;
    // As many decimals as it takes to see on which side it is.
    QString shown = figure(measured);
    for (int decimals = 3; !within && shown == figure(limit.value) && decimals <= 9; ++decimals)
        shown = figure(measured, decimals);
    mergeOutcome(
        result, within ? CriterionOutcome::Met : CriterionOutcome::NotMet,
        QString("%1 of %2 %3 is %4 the limit of %5 %3.")
            .arg(what, shown, limit.unit, within ? "within" : "above", figure(limit.value)),
        within ? QString()
               : QString(
                     "Have the pair mended or another assigned, then record that it was changed."));
}

/// Rules of the make-up, leaving out those whose figure was measured.
void judgeMakeup(const Judging &judging, const PairFigures &figures, CriterionResult &result)
{
    const LoopQualification qualification = qualify(*figures.makeup, judging.limits);
    for (const RuleResult &rule : qualification.rules) {
        if ((rule.key == "bri_loss" && figures.lossDb) ||
            (rule.key == "bri_resistance" && figures.resistanceOhm))
            continue;
        const bool predicted = rule.key == "bri_loss" || rule.key == "bri_resistance";
        const QString reason = predicted ? "Predicted: " + rule.reason : rule.reason;
        if (rule.verdict == Suitability::NotSuitable)
            mergeOutcome(
                result, CriterionOutcome::NotMet, reason,
                "Have the pair mended or another assigned, then record that it was changed.");
        else
            mergeOutcome(result, CriterionOutcome::Met,
                         rule.verdict == Suitability::Marginal ? "Marginal: " + reason : reason);
    }
    if (!figures.lossDb) {
        result.measured = roundForRecord(qualification.insertionLossDb);
        result.measuredText = QString("%1 dB predicted").arg(figure(qualification.insertionLossDb));
    }
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

void judgeWithoutMakeup(const Judging &judging, const PairFigures &figures, CriterionResult &result)
{
    if (figures.lossDb) {
        mergeOutcome(result, CriterionOutcome::Met,
                     "The make-up is not known; the measured loss decides.");
    } else if (figures.resistanceOhm && runWithoutErrors(judging)) {
        mergeOutcome(
            result, CriterionOutcome::Met,
            "The make-up is not known; the measured resistance and a run without errors stand "
            "for the loss.");
    } else if (figures.resistanceOhm) {
        mergeOutcome(
            result, CriterionOutcome::Missing,
            QString("The make-up and the loss at %1 are not known; a resistance alone needs a "
                    "run without errors beside it.")
                .arg(lossFrequency(judging)),
            QString("Measure the loss at %1, enter the make-up, or make the error-rate run.")
                .arg(lossFrequency(judging)));
    } else {
        mergeOutcome(result, CriterionOutcome::Missing, "Nothing is known of the loop yet.",
                     "Enter the make-up of the pair, or measure its resistance and loss.");
    }
}

void judgeBasicRate(const Judging &judging, const PairFigures &figures, CriterionResult &result)
{
    const Limit &loss = judging.limits.limit("bri_loss_max");
    result.limit = loss.value;
    result.unit = loss.unit;
    result.limitText = QString("at most %1 dB at %2 and %3 ohm, no load coil")
                           .arg(figure(loss.value), lossFrequency(judging),
                                figure(judging.limits.value("bri_resistance_max")));
    result.source = loss.source;
    if (figures.lossDb) {
        judgeFigure(result, "The measured loss at " + lossFrequency(judging), *figures.lossDb,
                    loss);
        result.measured = *figures.lossDb;
        result.measuredText = QString("%1 dB measured").arg(figure(*figures.lossDb));
    }
    if (figures.resistanceOhm)
        judgeFigure(result, "The measured resistance", *figures.resistanceOhm,
                    judging.limits.limit("bri_resistance_max"));
    if (figures.makeup)
        judgeMakeup(judging, figures, result);
    else
        judgeWithoutMakeup(judging, figures, result);
    if (result.measured.isNull() && figures.resistanceOhm) {
        result.measured = *figures.resistanceOhm;
        result.measuredText = QString("%1 ohm measured").arg(figure(*figures.resistanceOhm));
        result.limit = judging.limits.value("bri_resistance_max");
        result.unit = "ohm";
    }
}

void judgeAnalog(const Judging &judging, const PairFigures &figures, CriterionResult &result)
{
    const Limit &limit = figures.makeup ? voiceResistanceLimit(*figures.makeup, judging.limits)
                                        : judging.limits.limit("rd_resistance_max");
    result.limit = limit.value;
    result.unit = limit.unit;
    result.limitText = QString("at most %1 ohm, load coils where the design rule wants them")
                           .arg(figure(limit.value));
    result.source = limit.source;
    if (figures.resistanceOhm) {
        judgeFigure(result, "The measured resistance", *figures.resistanceOhm, limit);
        result.measured = *figures.resistanceOhm;
        result.measuredText = QString("%1 ohm measured").arg(figure(*figures.resistanceOhm));
    }
    if (!figures.makeup) {
        if (!figures.resistanceOhm)
            mergeOutcome(result, CriterionOutcome::Missing, "Nothing is known of the loop yet.",
                         "Enter the make-up of the pair, or measure its resistance.");
        return;
    }
    const VoiceBandQualification qualification = qualifyVoiceBand(*figures.makeup, judging.limits);
    for (const RuleResult &rule : qualification.rules) {
        if (figures.resistanceOhm && rule.unit == "ohm")
            continue;
        if (rule.verdict == Suitability::NotSuitable)
            mergeOutcome(result, CriterionOutcome::NotMet, rule.reason,
                         "Have the pair mended, then record that it was changed.");
        else
            mergeOutcome(result, CriterionOutcome::Met,
                         rule.verdict == Suitability::Marginal ? "Marginal: " + rule.reason
                                                               : rule.reason);
    }
    if (!figures.resistanceOhm) {
        result.measured = roundForRecord(qualification.dcResistanceOhm);
        result.measuredText =
            QString("%1 ohm predicted").arg(figure(qualification.dcResistanceOhm));
    }
}

} // namespace

void judgeLoop(const Judging &judging, CriterionResult &result)
{
    const PairFigures figures = newestFigures(judging);
    result.evidence = figures.evidence;
    if (judging.isAnalog())
        judgeAnalog(judging, figures, result);
    else
        judgeBasicRate(judging, figures, result);
}

} // namespace loopwright
