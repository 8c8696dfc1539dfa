// Criteria identifiers and safety.

#include "core/acceptance/Judging.h"
#include "core/identifiers/TerminalIdentifiers.h"

#include <algorithm>

namespace loopwright {

void judgeIdentifiers(const Judging &judging, CriterionResult &result)
{
    const ProtocolVariant *variant = findVariant(judging.order.variant);
    if (!variant) {
        mergeOutcome(
            result, CriterionOutcome::NotMet,
            QString("The protocol variant \"%1\" is not known.").arg(judging.order.variant),
            "Correct the protocol variant of the order.");
        return;
    }
    int errors = 0, warnings = 0;
    for (const Finding &finding : checkOrderIdentifiers(judging.order)) {
        errors += finding.severity == Severity::Error;
        warnings += finding.severity == Severity::Warning;
        if (finding.severity == Severity::Error)
            mergeOutcome(result, CriterionOutcome::NotMet, finding.field + ": " + finding.reason,
                         "Correct the identifiers of the order with the provider.");
    }
    for (const Conflict &conflict : judging.input.conflicts)
        mergeOutcome(result, CriterionOutcome::NotMet, conflict.reason(),
                     "Have the office assign another, or release the one that is in use.");
    result.measured = errors + int(judging.input.conflicts.size());
    result.measuredText = QString("%1 in error").arg(errors + judging.input.conflicts.size());
    result.limit = 0;
    result.limitText = "none in error or in use elsewhere";
    result.source = "rules of the protocol variant";
    mergeOutcome(
        result, CriterionOutcome::Met,
        warnings == 0
            ? QString("Every identifier fits the variant %1.").arg(variant->name)
            : QString("No identifier is in error; %1 to confirm with the provider.").arg(warnings));
}

namespace {

struct VisitAtPair
{
    QString name;
    const Fact *firstMeasurement = nullptr;
    std::vector<const Fact *> cards;
};

std::vector<VisitAtPair> visitsAtPair(const Judging &judging)
{
    std::vector<VisitAtPair> visits;
    for (const Fact *fact : judging.evidence.facts()) {
        const bool card = fact->as<SafetyFact>();
        if (!(card || isMeasurement(*fact)) || !judging.evidence.isNewer(*fact, Proves::Loop))
            continue;
        const QString name = judging.evidence.visitOf(*fact);
        auto visit = std::find_if(visits.begin(), visits.end(),
                                  [&name](const VisitAtPair &v) { return v.name == name; });
        if (visit == visits.end())
            visit = visits.insert(visits.end(), VisitAtPair{name, nullptr, {}});
        if (card)
            visit->cards.push_back(fact);
        else if (!visit->firstMeasurement)
            visit->firstMeasurement = fact;
    }
    return visits;
}

void judgeCard(const Judging &judging, const Fact &card, CriterionResult &result)
{
    const SafetyVerdict verdict = judge(*card.as<SafetyFact>(), judging.limits);
    result.evidence << card.id;
    switch (verdict.outcome) {
    case SafetyOutcome::Clear:
        mergeOutcome(result, CriterionOutcome::Met, verdict.text());
        break;
    case SafetyOutcome::Incomplete:
        mergeOutcome(result, CriterionOutcome::Missing, verdict.text(),
                     "Complete the safety card before the first measurement.");
        break;
    case SafetyOutcome::Hazard:
        mergeOutcome(result, CriterionOutcome::NotMet, verdict.text(),
                     "Stop, move away, and report the foreign voltage.");
        break;
    }
}

void judgeVisit(const Judging &judging, const VisitAtPair &visit, CriterionResult &result)
{
    const Fact *before = nullptr;
    for (const Fact *card : visit.cards)
        if (!visit.firstMeasurement || card->at <= timeOf(*visit.firstMeasurement))
            before = card;
    if (before)
        judgeCard(judging, *before, result);
    else if (visit.cards.empty())
        mergeOutcome(result, CriterionOutcome::Missing,
                     QString("No safety card was made for this pair on the %1.").arg(visit.name),
                     "Make the safety card: read the foreign voltages and confirm the cautions.");
    else
        mergeOutcome(result, CriterionOutcome::NotMet,
                     QString("The safety card of the %1 was made after the first measurement.")
                         .arg(visit.name),
                     "Void the measurements that came before the card and take them again.");
    // A hazard that was found later on the same visit stands until a later card is clear.
    if (before && visit.cards.back() != before)
        judgeCard(judging, *visit.cards.back(), result);
}

} // namespace

void judgeSafety(const Judging &judging, CriterionResult &result)
{
    result.limitText = "a complete card before the first measurement of each visit, no hazard";
    result.source = "common practice; local codes and licensed practice prevail";
    const auto visits = visitsAtPair(judging);
    if (visits.empty())
        mergeOutcome(result, CriterionOutcome::Missing, "No safety card was made for this pair.",
                     "Make the safety card before the pair is touched.");
    // Who found a hazard and left without measuring did right: the card of a later visit follows.
    for (const VisitAtPair &visit : visits)
        if (visit.firstMeasurement || &visit == &visits.back())
            judgeVisit(judging, visit, result);
    result.measured = result.outcome == CriterionOutcome::Met ? QJsonValue("clear") : QJsonValue();
    result.measuredText = result.outcome == CriterionOutcome::Met ? "clear" : "";
}

} // namespace loopwright
