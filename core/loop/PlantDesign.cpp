#include "core/loop/PlantDesign.h"

#include "core/loop/LoopLoss.h"

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

RuleResult noCoils(const QString &key, int coils, const QString &source)
{
    const Limit none{{}, 0, {}, {}, source};
    return atMost(key, none, coils, Suitability::NotSuitable,
                  QT_TRANSLATE_NOOP("core", "Load coils"));
}

enum class Coarseness
{
    Finer, ///< than 26 AWG
    Like26,
    Like24, ///< or coarser
};

Coarseness coarseness(const Wire &wire)
{
    if (wire.gaugeAwg != 0)
        return wire.gaugeAwg == 26 ? Coarseness::Like26 : Coarseness::Like24;
    return wire.diameterMm < 0.36   ? Coarseness::Finer
           : wire.diameterMm < 0.45 ? Coarseness::Like26
                                    : Coarseness::Like24;
}

struct GaugeSummary
{
    double fineFt = 0; ///< sections of 26 AWG, without taps
    double finestMm = 1;
    bool hasFiner = false;
    int changes = 0;
    double longestTapFt = 0;
};

GaugeSummary summarise(const LoopMakeup &makeup)
{
    GaugeSummary summary;
    const LoopElement *before = nullptr;
    for (const LoopElement &element : makeup.elements) {
        if (element.type == ElementType::BridgedTap)
            summary.longestTapFt = std::max(summary.longestTapFt, element.length.feet());
        if (element.type != ElementType::Section)
            continue;
        if (coarseness(element.wire) == Coarseness::Like26)
            summary.fineFt += element.length.feet();
        if (coarseness(element.wire) == Coarseness::Finer) {
            summary.hasFiner = true;
            summary.finestMm = std::min(summary.finestMm, element.wire.diameterMm);
        }
        if (before && before->wire != element.wire)
            ++summary.changes;
        before = &element;
    }
    return summary;
}

/// Length with taps against 12 - 3 L26 / (9 - Ltap) kft; without 26 AWG that is 12 kft, and of 26
/// AWG alone it is 9 kft.
RuleResult servingAreaLength(const LoopMakeup &makeup, const GaugeSummary &gauges,
                             const LimitSet &limits)
{
    Limit limit = limits.limit("csa_length_24_max");
    const double fine = limits.value("csa_length_26_max");
    const double taps = makeup.bridgedTapFt();
    if (gauges.fineFt > 0) {
        const double room = fine - taps;
        limit.value = room > 0 ? limit.value - (limit.value - fine) * gauges.fineFt / room : 0;
        limit.value = std::max(limit.value, 0.0);
    }
    return atMost("csa_length", limit, makeup.workingLengthFt() + taps, Suitability::NotSuitable,
                  QT_TRANSLATE_NOOP("core", "Serving-area length with taps for its gauges"));
}

} // namespace

RuleResult coilsByLength(const QString &key, const LoopMakeup &makeup, const Limit &length)
{
    const int coils = makeup.loadCoils();
    const double feet = makeup.workingLengthFt();
    const bool due = feet > length.value + 1e-6;
    RuleResult rule{key,
                    QT_TRANSLATE_NOOP("core", "Load coils"),
                    Suitability::Suitable,
                    double(coils),
                    length.value,
                    length.unit,
                    length.source,
                    {}};
    if (due == (coils > 0))
        rule.reason =
            due ? QT_TRANSLATE_NOOP("core", "Load coils: %1 on %2, as the rule asks beyond %3")
                : QT_TRANSLATE_NOOP("core", "Load coils: %1 on %2, as the rule asks up to %3");
    else
        rule.reason = due ? QT_TRANSLATE_NOOP(
                                "core", "Load coils: %1 on %2; the rule asks for some beyond %3")
                          : QT_TRANSLATE_NOOP(
                                "core", "Load coils: %1 on %2; the rule asks for none up to %3");
    rule.reason = rule.reason.arg(coils)
                      .arg(due ? figureApart(feet, length.value, "ft") : figureText(feet, "ft"))
                      .arg(figureText(length.value, length.unit));
    if (due != (coils > 0))
        rule.verdict = due ? Suitability::NotSuitable : Suitability::Marginal;
    return rule;
}

double endSectionFt(const LoopMakeup &makeup)
{
    double feet = 0;
    for (auto element = makeup.elements.rbegin(); element != makeup.elements.rend(); ++element) {
        if (element->type == ElementType::LoadCoil)
            break;
        feet += element->length.feet();
    }
    return feet;
}

RuleSet resistanceDesign(const LoopMakeup &makeup, const LimitSet &limits)
{
    return {"resistance_design",
            QT_TRANSLATE_NOOP("core", "Resistance design"),
            {atMost("rd_resistance", limits.limit("rd_resistance_max"), dcResistanceOhm(makeup),
                    Suitability::NotSuitable),
             coilsByLength("rd_load_coils", makeup, limits.limit("rd_unloaded_length_max"))}};
}

RuleSet revisedResistanceDesign(const LoopMakeup &makeup, const LimitSet &limits)
{
    const double feet = makeup.workingLengthFt();
    const double ohms = dcResistanceOhm(makeup);
    const Limit &unloaded = limits.limit("rrd_unloaded_length_max");
    RuleSet set{
        "revised_resistance_design", QT_TRANSLATE_NOOP("core", "Revised resistance design"), {}};
    set.rules.push_back(
        atMost("rrd_length", limits.limit("rrd_long_length_max"), feet, Suitability::NotSuitable));
    set.rules.push_back(coilsByLength("rrd_load_coils", makeup, unloaded));
    if (feet <= unloaded.value + 1e-6) {
        set.rules.push_back(atMost("rrd_resistance", limits.limit("rrd_resistance_max"), ohms,
                                   Suitability::NotSuitable));
        set.rules.push_back(atMost("rrd_tap_total", limits.limit("rrd_tap_total_max"),
                                   makeup.bridgedTapFt(), Suitability::NotSuitable));
        return set;
    }
    set.rules.push_back(atMost("rrd_resistance", limits.limit("rrd_long_resistance_max"), ohms,
                               Suitability::NotSuitable));
    if (makeup.loadCoils() > 0) {
        set.rules.push_back(atLeast("rrd_end_section_min", limits.limit("rrd_end_section_min"),
                                    endSectionFt(makeup), Suitability::Marginal));
        set.rules.push_back(atMost("rrd_end_section_max", limits.limit("rrd_end_section_max"),
                                   endSectionFt(makeup), Suitability::Marginal));
    }
    return set;
}

RuleSet carrierServingArea(const LoopMakeup &makeup, const LimitSet &limits)
{
    const GaugeSummary gauges = summarise(makeup);
    const Suitability no = Suitability::NotSuitable;
    RuleSet set{
        "carrier_serving_area",
        QT_TRANSLATE_NOOP("core", "Carrier serving area"),
        {noCoils("csa_load_coils", makeup.loadCoils(), limits.limit("csa_length_24_max").source),
         servingAreaLength(makeup, gauges, limits),
         atMost("csa_tap_total", limits.limit("csa_tap_total_max"), makeup.bridgedTapFt(), no),
         atMost("csa_tap_single", limits.limit("csa_tap_single_max"), gauges.longestTapFt, no),
         atMost("csa_gauge_changes", limits.limit("csa_gauge_changes_max"), gauges.changes, no)}};
    if (gauges.hasFiner)
        set.rules.push_back(
            {"csa_finest_wire", QT_TRANSLATE_NOOP("core", "Finest wire"), Suitability::Marginal,
             gauges.finestMm, 0.4, "mm", "convention",
             Text(QT_TRANSLATE_NOOP(
                      "core",
                      "Finest wire: %1 mm; the rule has no figure for wire finer than 26 AWG"))
                 .arg(QString::number(gauges.finestMm, 'f', 2))});
    return set;
}

} // namespace loopwright
