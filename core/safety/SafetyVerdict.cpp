#include "core/safety/SafetyVerdict.h"

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

constexpr WirePair wirePairs[] = {WirePair::TipGround, WirePair::RingGround, WirePair::TipRing};

QString voltsText(double value)
{
    return QString::number(value, 'g', 6) + " V";
}

Text kindText(bool alternating)
{
    return alternating ? Text(QT_TRANSLATE_NOOP("core", "AC"))
                       : Text(QT_TRANSLATE_NOOP("core", "DC"));
}

const std::optional<Voltages> &voltagesOf(const SafetyFact &card, bool alternating)
{
    return alternating ? card.acV : card.dcV;
}

/// What a voltage of one kind is held against on this card; a key is empty if nothing is.
struct Bounds
{
    QString hazard, battery, trouble;
};

Bounds boundsFor(const SafetyFact &card, bool alternating)
{
    const bool fed = card.officeConnected.value_or(false);
    if (alternating) {
        // A working pair picks up a few volts from the power lines; a dead one should show none.
        const QString trouble =
            fed ? QString("foreign_voltage_marginal_max") : QString("foreign_voltage_good_below");
        return {card.wet.value_or(false) ? "hazard_ac_wet_v" : "hazard_ac_v", {}, trouble};
    }
    if (card.officeConnected != false) // what the office feeds is no trouble
        return {"hazard_dc_v", {}, {}};
    return {"hazard_dc_v", "foreign_battery_dc_v", "foreign_voltage_good_below"};
}

Text hazardToDo(const SafetyFact &card, bool alternating)
{
    if (card.namedByOffice)
        return Text(QT_TRANSLATE_NOOP(
                        "core",
                        "Stop, move away, report. That %1 names it (%2) does not make it safe "
                        "to touch: have it turned off and tagged, and prove the pair dead; it "
                        "is restored hands off and measured at guarded points."))
            .arg(card.namedByOffice->by)
            .arg(card.namedByOffice->what);
    if (alternating && card.officeConnected.value_or(false))
        return Text(QT_TRANSLATE_NOOP(
            "core",
            "Stop, move away, report. Ringing is about 90 V: measure again only when the line "
            "is known not to ring."));
    return Text(QT_TRANSLATE_NOOP(
        "core", "Stop, move away, report. Nobody touches the pair until the source is found."));
}

Text wiresOf(WirePair pair)
{
    switch (pair) {
    case WirePair::TipGround:
        return Text(QT_TRANSLATE_NOOP("core", "tip and ground"));
    case WirePair::RingGround:
        return Text(QT_TRANSLATE_NOOP("core", "ring and ground"));
    case WirePair::TipRing:
        break;
    }
    return Text(QT_TRANSLATE_NOOP("core", "tip and ring"));
}

Text readingText(const VoltageFinding &finding)
{
    return Text(QT_TRANSLATE_NOOP("core", "%1 %2 between %3"))
        .arg(voltsText(std::abs(finding.volts)))
        .arg(kindText(finding.alternating))
        .arg(wiresOf(finding.pair));
}

void sayHazard(VoltageFinding &finding, const SafetyFact &card)
{
    finding.reason = Text(finding.limitKey == u"hazard_ac_wet_v"
                              ? QT_TRANSLATE_NOOP("core", "%1 is more than %2 where it is wet")
                              : QT_TRANSLATE_NOOP("core", "%1 is more than %2"))
                         .arg(readingText(finding))
                         .arg(voltsText(finding.limit));
    finding.toDo = hazardToDo(card, finding.alternating);
}

void sayBattery(VoltageFinding &finding, const SafetyFact &card)
{
    if (card.namedByOffice) { // no cross to look for
        finding.reason =
            Text(QT_TRANSLATE_NOOP("core",
                                   "%1 although the office is disconnected: %2 names it (%3)"))
                .arg(readingText(finding))
                .arg(card.namedByOffice->by)
                .arg(card.namedByOffice->what);
        finding.toDo = Text(QT_TRANSLATE_NOOP(
            "core",
            "Have it turned off and tagged and prove the pair dead, then make a new card."));
        return;
    }
    finding.reason =
        Text(QT_TRANSLATE_NOOP("core", "%1 although the office is disconnected: battery of another "
                                       "line"))
            .arg(readingText(finding));
    finding.toDo = Text(QT_TRANSLATE_NOOP(
        "core", "Find the cross with a working pair and have it cleared, then make a new card."));
}

void sayTrouble(VoltageFinding &finding)
{
    finding.reason =
        Text(QT_TRANSLATE_NOOP("core",
                               "%1: %2 or more on this pair is a trouble to clear, not a hazard"))
            .arg(readingText(finding))
            .arg(voltsText(finding.limit));
    finding.toDo =
        finding.alternating
            ? Text(QT_TRANSLATE_NOOP("core", "Look for power contact, a missing bond or an open "
                                             "shield; clear it before the line is handed over."))
            : Text(QT_TRANSLATE_NOOP("core",
                                     "Look for a cross with a working pair or wet "
                                     "insulation; clear it before the line is handed over."));
}

void judgeReading(SafetyVerdict &verdict, const SafetyFact &card, const LimitSet &limits,
                  WirePair pair, bool alternating, double reading)
{
    const Bounds bounds = boundsFor(card, alternating);
    const double size = std::abs(reading);
    const auto finding = [&](const QString &key) {
        return VoltageFinding{pair, alternating, reading, limits.value(key), key, {}, {}};
    };
    if (size > limits.value(bounds.hazard)) {
        verdict.hazards.push_back(finding(bounds.hazard));
        sayHazard(verdict.hazards.back(), card);
    } else if (!bounds.battery.isEmpty() && size >= limits.value(bounds.battery)) {
        verdict.batteries.push_back(finding(bounds.battery));
        sayBattery(verdict.batteries.back(), card);
    } else if (!bounds.trouble.isEmpty() && size >= limits.value(bounds.trouble)) {
        verdict.troubles.push_back(finding(bounds.trouble));
        sayTrouble(verdict.troubles.back());
    }
}

bool areAlike(double a, double b, double size)
{
    constexpr double volts = 2, share = 0.05;
    return std::abs(a - b) <= std::max(volts, share * size);
}

bool doesFit(const Voltages &read, bool alternating)
{
    const double tip = std::abs(*read.tipGround), ring = std::abs(*read.ringGround),
                 between = std::abs(*read.tipRing);
    const double largest = std::max({tip, ring, between});
    if (alternating) {
        const double others = tip + ring + between - largest;
        return largest <= others || areAlike(largest, others, largest);
    }
    const bool noMinus = *read.tipGround >= 0 && *read.ringGround >= 0 && *read.tipRing >= 0;
    return areAlike(between, std::abs(*read.tipGround - *read.ringGround), largest) ||
           (noMinus && areAlike(between, tip + ring, largest));
}

bool isWhole(const std::optional<Voltages> &read)
{
    return read && read->tipGround && read->ringGround && read->tipRing;
}

bool wasReadBefore(const Voltages &read, const SafetyFact *before, bool alternating)
{
    if (!before || !isWhole(voltagesOf(*before, alternating)))
        return false;
    return std::ranges::all_of(wirePairs, [&](WirePair pair) {
        const double a = *read.at(pair), b = *voltagesOf(*before, alternating)->at(pair);
        return areAlike(a, b, std::max(std::abs(a), std::abs(b)));
    });
}

void judgeFit(SafetyVerdict &verdict, const SafetyFact &card, bool alternating,
              const SafetyFact *before)
{
    const auto &read = voltagesOf(card, alternating);
    if (!isWhole(read) || doesFit(*read, alternating))
        return;
    const bool again = wasReadBefore(*read, before, alternating);
    verdict.readTwice = again && (verdict.misfits.empty() || verdict.readTwice);
    verdict.misfits.push_back(
        {alternating,
         Text(again ? QT_TRANSLATE_NOOP(
                          "core",
                          "Tip to ground %1, ring to ground %2 and tip to ring %3 (%4) do not "
                          "fit and were read twice: an open wire, leakage, a floating feed, or "
                          "an open ground lead. A meter loads each wire in turn; to be cleared")
                    : QT_TRANSLATE_NOOP(
                          "core",
                          "Tip to ground %1, ring to ground %2 and tip to ring %3 (%4) do not "
                          "fit: open wire, leakage, floating feed, or an open ground lead: "
                          "prove the ground lead, read again"))
             .arg(voltsText(*read->tipGround))
             .arg(voltsText(*read->ringGround))
             .arg(voltsText(*read->tipRing))
             .arg(kindText(alternating))});
}

void judgeVoltages(SafetyVerdict &verdict, const SafetyFact &card, const LimitSet &limits,
                   bool alternating, const SafetyFact *before)
{
    const Voltages voltages = voltagesOf(card, alternating).value_or(Voltages());
    for (const WirePair pair : wirePairs) {
        if (const auto reading = voltages.at(pair))
            judgeReading(verdict, card, limits, pair, alternating, *reading);
        else
            verdict.missing.push_back(Text(QT_TRANSLATE_NOOP("core", "%1 voltage, %2"))
                                          .arg(kindText(alternating))
                                          .arg(wirePairName(pair)));
    }
    judgeFit(verdict, card, alternating, before);
}

std::vector<Text> reasonsOf(const std::vector<VoltageFinding> &findings)
{
    std::vector<Text> reasons;
    for (const VoltageFinding &each : findings)
        reasons.push_back(each.reason);
    return reasons;
}

Text incompleteText(const SafetyVerdict &verdict)
{
    std::vector<Text> said;
    if (!verdict.readTwice)
        for (const VoltageMisfit &misfit : verdict.misfits)
            said.push_back(misfit.reason);
    if (!verdict.missing.empty())
        said.push_back(Text(QT_TRANSLATE_NOOP("core", "missing: %1"))
                           .arg(Text::joined(verdict.missing, "; ")));
    return Text(QT_TRANSLATE_NOOP("core", "The safety card is incomplete; %1."))
        .arg(Text::joined(said, "; "));
}

Text clearText(const SafetyVerdict &verdict, const QString &clock)
{
    Text text =
        clock.isEmpty()
            ? Text(QT_TRANSLATE_NOOP("core",
                                     "No reading above the stop limits; still treat it as live."))
            : Text(QT_TRANSLATE_NOOP("core", "No reading above the stop limits at %1; still "
                                             "treat it as live."))
                  .arg(clock);
    for (const Remark &remark : verdict.remarks())
        text += remark.trade;
    return text;
}

} // namespace

std::vector<Remark> SafetyVerdict::remarks() const
{
    std::vector<Remark> told;
    if (!troubles.empty())
        told.push_back(
            {Text(QT_TRANSLATE_NOOP("core", "A foreign voltage is to be cleared.")),
             Text(QT_TRANSLATE_NOOP("core", "A small voltage from elsewhere is on the pair and is "
                                            "to be cleared."))});
    for (const VoltageMisfit &misfit : misfits)
        told.push_back(
            {Text(QT_TRANSLATE_NOOP("core", "%1.")).arg(misfit.reason),
             Text(QT_TRANSLATE_NOOP("core", "The voltages do not fit each other: an open wire, a "
                                            "leak or an open ground is to be cleared."))});
    if (meterUnproved)
        told.push_back(
            {Text(QT_TRANSLATE_NOOP("core", "The meter was not proved on a known source.")),
             Text(QT_TRANSLATE_NOOP("core", "The meter was not proved on a known "
                                            "voltage before."))});
    return told;
}

Text SafetyVerdict::text(const QString &clock) const
{
    switch (outcome) {
    case SafetyOutcome::Hazard:
        return Text(QT_TRANSLATE_NOOP("core", "Hazard: %1. Stop, move away, report."))
            .arg(Text::joined(reasonsOf(hazards), "; "));
    case SafetyOutcome::ForeignBattery:
        return Text(QT_TRANSLATE_NOOP("core", "Foreign battery: %1."))
            .arg(Text::joined(reasonsOf(batteries), "; "));
    case SafetyOutcome::Incomplete:
        return incompleteText(*this);
    case SafetyOutcome::Clear:
        break;
    }
    return clearText(*this, clock);
}

SafetyVerdict judge(const SafetyFact &fact, const LimitSet &limits, const SafetyFact *before)
{
    SafetyVerdict verdict;
    if (!fact.officeConnected)
        verdict.missing.push_back(
            Text(QT_TRANSLATE_NOOP("core", "whether the office is connected")));
    judgeVoltages(verdict, fact, limits, true, before);
    judgeVoltages(verdict, fact, limits, false, before);
    for (const auto &[key, word] : EnumCodes<CardKey>::table)
        if (!fact.isConfirmed(key))
            verdict.missing.push_back(Text(QT_TRANSLATE_NOOP("core", "the confirmation of %1"))
                                          .arg(QString(word).replace('_', ' ')));
    verdict.meterUnproved = fact.meterProved == false;
    const bool incomplete =
        !verdict.missing.empty() || (!verdict.misfits.empty() && !verdict.readTwice);
    verdict.outcome = !verdict.hazards.empty()     ? SafetyOutcome::Hazard
                      : !verdict.batteries.empty() ? SafetyOutcome::ForeignBattery
                      : incomplete                 ? SafetyOutcome::Incomplete
                                                   : SafetyOutcome::Clear;
    return verdict;
}

} // namespace loopwright
