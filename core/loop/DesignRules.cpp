#include "core/loop/DesignRules.h"

#include <algorithm>

namespace loopwright {

namespace {

RuleResult coilRule(const LimitSet &limits, int coils)
{
    RuleResult rule = atMost("bri_load_coils", limits.limit("bri_load_coils_max"), coils,
                             Suitability::NotSuitable);
    if (rule.verdict != Suitability::Suitable)
        rule.reason = Text(QT_TRANSLATE_NOOP(
                               "core", "Load coils: %1; a load coil stops basic rate altogether"))
                          .arg(coils);
    return rule;
}

RuleResult resistanceRule(const LoopQualification &loop, const LimitSet &limits)
{
    RuleResult rule = atMost("bri_resistance", limits.limit("bri_resistance_max"),
                             loop.hotDcResistanceOhm, Suitability::NotSuitable);
    rule.reason = whenHot(rule.reason, loop.hottestF);
    return rule;
}

RuleResult lossRule(const LoopQualification &loop, const LimitSet &limits)
{
    const Limit &limit = limits.limit("bri_loss_max");
    const double loss = loop.hotLossDb;
    RuleResult rule = atMost("bri_loss", limit, loss, Suitability::NotSuitable);
    rule.verdict = loss > limit.value + loop.marginDb    ? Suitability::NotSuitable
                   : loss <= limit.value - loop.marginDb ? Suitability::Suitable
                                                         : Suitability::Marginal;
    const QString margin = figureText(loop.marginDb, limit.unit);
    const Text told =
        Text(rule.verdict == Suitability::Marginal
                 ? QT_TRANSLATE_NOOP("core", "%1 by less than the error of the prediction (%2)")
                 : QT_TRANSLATE_NOOP("core", "%1 by more than the error of the prediction (%2)"))
            .arg(rule.reason)
            .arg(margin);
    rule.reason = whenHot(told, loop.hottestF);
    return rule;
}

} // namespace

double lossMarginDb(double lossDb, const LimitSet &limits)
{
    return std::max(limits.value("loop_model_error_relative") * lossDb,
                    limits.value("loop_model_error_absolute"));
}

LoopQualification qualify(const LoopMakeup &makeup, const LimitSet &limits)
{
    LoopQualification loop;
    loop.frequencyHz = limits.value("bri_loss_frequency");
    loop.between = {limits.value("bri_termination"), limits.value("bri_termination")};
    loop.insertionLossDb = insertionLossDb(makeup, loop.frequencyHz, loop.between);
    loop.dcResistanceOhm = dcResistanceOhm(makeup);
    loop.workingLengthFt = makeup.workingLengthFt();
    loop.bridgedTapFt = makeup.bridgedTapFt();
    loop.loadCoils = makeup.loadCoils();
    loop.temperatureF = makeup.temperatureF();

    LoopMakeup hot = makeup;
    loop.hottestF = std::max(limits.value("loop_hottest_f"), loop.temperatureF);
    hot.temperature = Temperature{loop.hottestF, false};
    loop.hotLossDb = insertionLossDb(hot, loop.frequencyHz, loop.between);
    loop.hotDcResistanceOhm = dcResistanceOhm(hot);
    loop.marginDb = lossMarginDb(loop.hotLossDb, limits);

    loop.rules = {
        coilRule(limits, loop.loadCoils),
        resistanceRule(loop, limits),
        lossRule(loop, limits),
        atMost("bri_length_with_taps", limits.limit("bri_length_with_taps_max"),
               loop.workingLengthFt + loop.bridgedTapFt, Suitability::Marginal),
        atMost("bri_tap_total", limits.limit("bri_tap_total_max"), loop.bridgedTapFt,
               Suitability::Marginal),
    };
    loop.verdict = worstOf(loop.rules);
    loop.reasons = reasonsOf(loop.rules);
    loop.designs = {resistanceDesign(makeup, limits), revisedResistanceDesign(makeup, limits),
                    carrierServingArea(makeup, limits)};
    return loop;
}

QJsonObject LoopQualification::toJson() const
{
    QJsonArray sets;
    for (const RuleSet &design : designs)
        sets << design.toJson();
    return {{"verdict", toText(verdict)},
            {"reasons", englishJson(reasons)},
            {"insertion_loss_db", insertionLossDb},
            {"frequency_hz", frequencyHz},
            {"source_ohm", between.sourceOhm},
            {"load_ohm", between.loadOhm},
            {"margin_db", marginDb},
            {"dc_resistance_ohm", dcResistanceOhm},
            {"working_length_ft", workingLengthFt},
            {"bridged_tap_ft", bridgedTapFt},
            {"load_coils", loadCoils},
            {"temperature_f", temperatureF},
            {"hottest_f", hottestF},
            {"hot_insertion_loss_db", hotLossDb},
            {"hot_dc_resistance_ohm", hotDcResistanceOhm},
            {"rules", rulesJson(rules)},
            {"designs", sets}};
}

} // namespace loopwright
