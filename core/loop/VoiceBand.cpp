#include "core/loop/VoiceBand.h"

#include "core/loop/AnalogQuantity.h"
#include "core/loop/PlantDesign.h"

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

/// Spacing of load coils by their inductance: 88 mH from textbook pages, the others from memory.
struct Spacing
{
    double millihenry;
    double feet;
};
constexpr Spacing spacings[] = {{88, 6000}, {66, 4500}, {44, 3000}};

/// What lies along the pair between one coil and the next.
struct Span
{
    double feet = 0;
    bool hasTap = false;
};

/// Spans between coils alone: neither the one at the office nor the one at the customer.
std::vector<Span> spansBetweenCoils(const LoopMakeup &makeup)
{
    std::vector<Span> spans;
    Span span;
    bool afterCoil = false;
    for (const LoopElement &element : makeup.elements) {
        if (element.type == ElementType::LoadCoil) {
            if (afterCoil)
                spans.push_back(span);
            afterCoil = true;
            span = {};
        } else if (element.type == ElementType::Section) {
            span.feet += element.length.feet();
        } else {
            span.hasTap = true;
        }
    }
    return spans;
}

double spacingFt(const LoopMakeup &makeup)
{
    for (const LoopElement &element : makeup.elements)
        for (const Spacing &spacing : spacings)
            if (element.type == ElementType::LoadCoil && element.millihenry == spacing.millihenry)
                return spacing.feet;
    return 0;
}

/// The largest departure of a span between coils from the due spacing, as a share of it.
RuleResult spacingRule(const std::vector<Span> &spans, double dueFt, const LimitSet &limits)
{
    const Limit &limit = limits.limit("voice_coil_spacing_error_max");
    double worst = 0;
    for (const Span &span : spans)
        worst = std::max(worst, std::abs(span.feet / dueFt - 1));
    RuleResult rule = atMost("voice_coil_spacing", limit, worst, Suitability::Marginal);
    rule.reason =
        Text(QT_TRANSLATE_NOOP(
                 "core", "Load coils due every %1: the farthest off is %2 % away, at most %3 %"))
            .arg(figureText(dueFt, "ft"))
            .arg(QString::number(100 * worst, 'f', 1))
            .arg(QString::number(100 * limit.value, 'f', 1));
    return rule;
}

/// The first coil stands half a spacing from the office: 3000 ft for 88 mH.
RuleResult officeEndRule(const LoopMakeup &makeup, double dueFt, const LimitSet &limits)
{
    const Limit &limit = limits.limit("voice_coil_spacing_error_max");
    double feet = 0;
    for (const LoopElement &element : makeup.elements) {
        if (element.type == ElementType::LoadCoil)
            break;
        if (element.type == ElementType::Section)
            feet += element.length.feet();
    }
    RuleResult rule = atMost("voice_office_end_section", limit, std::abs(feet - dueFt / 2) / dueFt,
                             Suitability::Marginal);
    rule.reason = Text(QT_TRANSLATE_NOOP(
                           "core", "First load coil due at %1: it stands at %2, at most %3 away"))
                      .arg(figureText(dueFt / 2, "ft"))
                      .arg(figureText(feet, "ft"))
                      .arg(figureText(limit.value * dueFt, "ft"));
    return rule;
}

RuleResult tapsBetweenCoils(const std::vector<Span> &spans)
{
    const auto count =
        std::count_if(spans.begin(), spans.end(), [](const Span &span) { return span.hasTap; });
    const Limit none{{}, 0, {}, {}, "common practice"};
    return atMost("voice_tap_between_coils", none, double(count), Suitability::Marginal,
                  QT_TRANSLATE_NOOP("core", "Spans between load coils with a bridged tap"));
}

void addCoilRules(std::vector<RuleResult> &rules, const LoopMakeup &makeup, const LimitSet &limits)
{
    const auto spans = spansBetweenCoils(makeup);
    if (const double due = spacingFt(makeup); due > 0 && !spans.empty())
        rules.push_back(spacingRule(spans, due, limits));
    if (const double due = spacingFt(makeup); due > 0)
        rules.push_back(officeEndRule(makeup, due, limits));
    rules.push_back(tapsBetweenCoils(spans));
    rules.push_back(atLeast("voice_end_section_min", limits.limit("rrd_end_section_min"),
                            endSectionFt(makeup), Suitability::Marginal));
    rules.push_back(atMost("voice_end_section_max", limits.limit("rrd_end_section_max"),
                           endSectionFt(makeup), Suitability::Marginal));
}

} // namespace

const Limit &voiceResistanceLimit(const LoopMakeup &makeup, const LimitSet &limits)
{
    const double feet = makeup.workingLengthFt();
    const bool revised = feet > limits.value("rrd_unloaded_length_max") &&
                         feet <= limits.value("rrd_long_length_max") && makeup.loadCoils() > 0;
    return limits.limit(revised ? "rrd_long_resistance_max" : "rd_resistance_max");
}

VoiceBandQualification qualifyVoiceBand(const LoopMakeup &makeup, const LimitSet &limits)
{
    const AnalogPrediction prediction = predictAnalog(makeup);
    VoiceBandQualification loop;
    loop.dcResistanceOhm = prediction.dcResistanceOhm;
    loop.workingLengthFt = makeup.workingLengthFt();
    loop.bridgedTapFt = makeup.bridgedTapFt();
    loop.loadCoils = makeup.loadCoils();
    loop.loss1004Db = prediction.loss1004Db;
    loop.slopeDb = prediction.slopeDb;
    loop.loopCurrentMa = prediction.loopCurrentMa;

    LoopMakeup hot = makeup;
    hot.temperature =
        Temperature{std::max(limits.value("loop_hottest_f"), makeup.temperatureF()), false};
    loop.rules.push_back(atMost("voice_resistance", voiceResistanceLimit(makeup, limits),
                                dcResistanceOhm(hot), Suitability::NotSuitable));
    loop.rules.back().reason = whenHot(loop.rules.back().reason, hot.temperatureF());
    loop.rules.push_back(
        coilsByLength("voice_load_coils", makeup, limits.limit("rd_unloaded_length_max")));
    if (loop.loadCoils > 0)
        addCoilRules(loop.rules, makeup, limits);
    else
        loop.rules.push_back(atMost("voice_tap_total", limits.limit("rrd_tap_total_max"),
                                    loop.bridgedTapFt, Suitability::Marginal));
    loop.verdict = worstOf(loop.rules);
    loop.reasons = reasonsOf(loop.rules);
    return loop;
}

QJsonObject VoiceBandQualification::toJson() const
{
    return {{"verdict", toText(verdict)},           {"reasons", englishJson(reasons)},
            {"dc_resistance_ohm", dcResistanceOhm}, {"working_length_ft", workingLengthFt},
            {"bridged_tap_ft", bridgedTapFt},       {"load_coils", loadCoils},
            {"loss_1004_db", loss1004Db},           {"slope_db", slopeDb},
            {"loop_current_ma", loopCurrentMa},     {"rules", rulesJson(rules)}};
}

} // namespace loopwright
