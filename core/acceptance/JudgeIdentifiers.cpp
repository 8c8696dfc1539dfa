// Criteria identifiers and safety.

#include "core/acceptance/Judging.h"
#include "core/base/PaperTime.h"
#include "core/identifiers/TerminalIdentifiers.h"

#include <QMap>

#include <algorithm>

namespace loopwright {

void needIdentifiers(std::vector<Need> &needs, const ServiceOrder &, OrderScope, const LimitSet &)
{
    Need need{"identifiers", "identifiers", StepGroup::Settings, Station::Identifiers};
    need.label = Text(QT_TRANSLATE_NOOP("core", "Identifiers of the order"));
    needs.push_back(std::move(need));
}

void judgeIdentifiers(Judging &judging, CriterionResult &result)
{
    const Need &need = *judging.needsFor(result.key).front();
    const ProtocolVariant *variant = findVariant(judging.order.variant);
    if (!variant) {
        judging.settle(
            need, result, CriterionOutcome::NotMet,
            Text(QT_TRANSLATE_NOOP("core", "The protocol variant \"%1\" is not known."))
                .arg(judging.order.variant),
            Text(QT_TRANSLATE_NOOP("core", "Correct the protocol variant of the order.")));
        return;
    }
    int errors = 0, warnings = 0;
    for (const Finding &finding : checkOrderIdentifiers(judging.order)) {
        errors += finding.severity == Severity::Error;
        warnings += finding.severity == Severity::Warning;
        if (finding.severity == Severity::Error)
            judging.settle(
                need, result, CriterionOutcome::NotMet,
                Text(QT_TRANSLATE_NOOP("core", "%1: %2")).arg(finding.field).arg(finding.reason),
                Text(QT_TRANSLATE_NOOP("core",
                                       "Correct the identifiers of the order with the provider.")));
    }
    for (const Conflict &conflict : judging.input.conflicts)
        judging.settle(
            need, result, CriterionOutcome::NotMet, conflict.reason(),
            Text(QT_TRANSLATE_NOOP(
                "core", "Have the office assign another, or release the one that is in use.")));
    if (errors == 0 && judging.input.conflicts.empty() && warnings > 0)
        addRemark(result,
                  {Text::counted("One is to be confirmed with the "
                                 "provider.",
                                 QT_TRANSLATE_N_NOOP("core", "%n are to be confirmed with the "
                                                             "provider."),
                                 warnings),
                   Text(QT_TRANSLATE_NOOP("core", "What is unusual in them is to be confirmed with "
                                                  "the provider."))});
    result.measured = errors + int(judging.input.conflicts.size());
    result.measuredText = Text(QT_TRANSLATE_NOOP("core", "%1 in error"))
                              .arg(errors + int(judging.input.conflicts.size()));
    result.limit = 0;
    result.limitText = QT_TRANSLATE_NOOP("core", "none in error or in use elsewhere");
    result.source = "rules of the protocol variant";
    judging.settle(
        need, result, CriterionOutcome::Met,
        warnings == 0
            ? Text(QT_TRANSLATE_NOOP("core", "Every identifier fits the variant %1."))
                  .arg(Text::message(variant->name))
            : Text(QT_TRANSLATE_NOOP("core",
                                     "No identifier is in error; %1 to confirm with the provider."))
                  .arg(warnings));
}

void needSafety(std::vector<Need> &needs, const ServiceOrder &, OrderScope, const LimitSet &)
{
    Need closed{"hazard_closed", "safety", StepGroup::Safety, Station::Safety,
                FactKind::HazardClosed};
    closed.fields = {"source", "by", "reference"};
    closed.optional = {"reference"};
    closed.label = Text(QT_TRANSLATE_NOOP("core", "How the hazard was closed"));
    closed.hint = Text(QT_TRANSLATE_NOOP("core", "who says so, and under which reference"));
    closed.matches = [](const Fact &fact) { return fact.as<HazardClosedFact>() != nullptr; };
    needs.push_back(std::move(closed));

    Need card{"safety", "safety", StepGroup::Safety, Station::Safety, FactKind::Safety};
    card.fields << "office_connected";
    for (const char *kind : {"ac_v", "dc_v"})
        for (const QString &wires : allWords<WirePair>())
            card.fields << QString("%1.%2").arg(kind, wires);
    card.fields << "confirmed"
                << "place"
                << "meter_proved"
                << "wet";
    card.optional = {"place", "meter_proved", "wet"};
    card.after = {"hazard_closed"};
    card.label = Text(QT_TRANSLATE_NOOP("core", "Safety card of this pair"));
    card.hint = Text(QT_TRANSLATE_NOOP("core", "before the pair is touched"));
    card.matches = [](const Fact &fact) { return fact.as<SafetyFact>() != nullptr; };
    needs.push_back(std::move(card));
}

namespace {

/// A hazard that was read stands before everything else, until it is said how it was closed and a
/// later card is clear.
void judgeHazards(Judging &judging, CriterionResult &result)
{
    const Need &closing = *judging.need("hazard_closed"), &card = *judging.need("safety");
    for (const Hazard &hazard : judging.evidence.cards().hazards()) {
        const Text when = Text::message(paperTime(hazard.card->at));
        result.evidence << hazard.card->id;
        if (!hazard.closing) {
            judging.settle(
                closing, result, CriterionOutcome::NotMet, hazardText(hazard, judging.order.number),
                Text(QT_TRANSLATE_NOOP(
                    "core", "Keep away and have the foreign voltage reported. When its source "
                            "is found and cleared, record how, and make a new card.")));
            if (hazard.refused)
                judging.settle(closing, result, CriterionOutcome::NotMet,
                               Text(hazard.whyRefused()));
            continue;
        }
        result.evidence << hazard.closing->id;
        judging.settle(
            closing, result, CriterionOutcome::Met,
            hazard.clear
                ? Text(QT_TRANSLATE_NOOP("core", "The hazard read on %1 was closed; the card after "
                                                 "it is clear."))
                      .arg(when)
                : Text(QT_TRANSLATE_NOOP("core",
                                         "It was said how the hazard read on %1 was closed."))
                      .arg(when));
        if (!hazard.clear)
            judging.settle(
                card, result, CriterionOutcome::Missing,
                Text(QT_TRANSLATE_NOOP(
                         "core",
                         "The hazard read on %1 is said to be closed; no clear card was made "
                         "since."))
                    .arg(when),
                Text(QT_TRANSLATE_NOOP("core",
                                       "Make a new safety card before the pair is touched.")));
        explainPlainly(
            result, CriterionOutcome::Missing,
            Text(QT_TRANSLATE_NOOP("core", "A dangerous voltage was read on the pair; the check "
                                           "that it is gone is still to be made.")));
        explainPlainly(
            result, CriterionOutcome::Met,
            Text(QT_TRANSLATE_NOOP("core", "A dangerous voltage was read on the pair, and its "
                                           "cause was closed; after that no reading was above the "
                                           "stop limits.")));
    }
}

/// What a card that is not clear means to the customer; the words of the row, if it only lacks
/// something.
Text plainOf(const SafetyVerdict &verdict)
{
    if (verdict.outcome == SafetyOutcome::ForeignBattery)
        return Text(QT_TRANSLATE_NOOP("core", "A voltage from elsewhere is on the pair: it is not "
                                              "worked on until that is cleared."));
    if (verdict.misfits.empty())
        return {};
    return Text(QT_TRANSLATE_NOOP("core", "The voltages read on the pair do not fit each other: "
                                          "the check for dangerous voltage is to be made again."));
}

/// Of the newest card at each place.
void tellRemarks(const std::vector<const Card *> &cards, CriterionResult &result)
{
    QMap<QString, const Card *> newest;
    for (const Card *card : cards)
        newest[card->fact->as<SafetyFact>()->place.value_or(QString()).trimmed()] = card;
    for (const Card *card : newest)
        for (const Remark &remark : card->verdict.remarks())
            addRemark(result, remark);
}

/// Each measurement that counts has its card: else it would not count.
void judgeCards(Judging &judging, CriterionResult &result)
{
    const Need &need = *judging.need("safety");
    const Evidence &evidence = judging.evidence;
    std::vector<const Card *> holding;
    for (const Fact *fact : evidence.facts()) {
        if (!isMeasurement(*fact) || !evidence.counts(*fact))
            continue;
        const Card *card = evidence.cards().holdingAt(timeOf(*fact), evidence.visitOf(*fact));
        if (!card || result.evidence.contains(card->fact->id))
            continue;
        holding.push_back(card);
        result.evidence << card->fact->id;
        judging.settle(need, result, CriterionOutcome::Met,
                       card->verdict.text(card->fact->at.localClock()));
    }
    if (!holding.empty()) {
        tellRemarks(holding, result);
        return;
    }
    // Nobody measured yet: the newest card speaks for itself.
    const Fact *newest = judging.newest(need);
    if (!newest) {
        judging.settle(
            need, result, CriterionOutcome::Missing,
            Text(QT_TRANSLATE_NOOP("core", "No safety card was made for this pair.")),
            Text(QT_TRANSLATE_NOOP("core", "Make the safety card before the pair is touched.")));
        return;
    }
    const Card *card = judging.evidence.cards().cardOf(*newest);
    const SafetyVerdict &verdict = card->verdict;
    result.evidence << newest->id;
    if (verdict.outcome == SafetyOutcome::Clear) {
        judging.settle(need, result, CriterionOutcome::Met, verdict.text(newest->at.localClock()));
        tellRemarks({card}, result);
    } else if (verdict.outcome == SafetyOutcome::ForeignBattery)
        judging.settle(need, result, CriterionOutcome::Missing, verdict.text(),
                       verdict.batteries.front().toDo);
    else if (verdict.outcome == SafetyOutcome::Incomplete)
        judging.settle(need, result, CriterionOutcome::Missing, verdict.text(),
                       verdict.misfits.empty()
                           ? Text(QT_TRANSLATE_NOOP(
                                 "core", "Complete the safety card before the first measurement."))
                           : Text(QT_TRANSLATE_NOOP(
                                 "core", "Prove the ground lead and make the safety card again.")));
    explainPlainly(result, CriterionOutcome::Missing, plainOf(verdict));
    if (verdict.outcome == SafetyOutcome::ForeignBattery)
        result.part = LinePart::Loop;
}

} // namespace

void judgeSafety(Judging &judging, CriterionResult &result)
{
    const auto &facts = judging.evidence.facts();
    const bool needed = std::ranges::any_of(facts, [&judging](const Fact *fact) {
        return judging.evidence.needsCard(judging.evidence.visitOf(*fact));
    });
    if (judging.input.scope == OrderScope::NumbersOnly && !needed &&
        judging.evidence.cards().hazards().empty()) {
        mergeOutcome(
            result, CriterionOutcome::NotNeeded,
            Text(QT_TRANSLATE_NOOP(
                "core", "A change of numbers alone needs a card only if somebody goes there.")));
        return;
    }
    result.limitText = QT_TRANSLATE_NOOP(
        "core", "a complete card before each measurement that counts, no hazard open");
    result.source = "common practice; local codes and licensed practice prevail";
    judgeHazards(judging, result);
    judgeCards(judging, result);
    result.measured = result.outcome == CriterionOutcome::Met ? QJsonValue("clear") : QJsonValue();
    if (result.outcome == CriterionOutcome::Met)
        result.measuredText = QT_TRANSLATE_NOOP("core", "clear");
}

} // namespace loopwright
