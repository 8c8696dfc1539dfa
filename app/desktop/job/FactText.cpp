#include "app/desktop/job/FactText.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"

#include <QCoreApplication>

#include <algorithm>

namespace loopwright {

bool hasFailed(const Fact &fact, const LimitSet &limits)
{
    if (const auto *layer = fact.as<LayerFact>())
        return layer->outcome == LayerOutcome::Down;
    if (const auto *call = fact.as<CallFact>())
        return call->outcome != CallOutcome::Ok;
    if (const auto *test = fact.as<SelfTestFact>())
        return test->outcome != SelfTestOutcome::Passed;
    if (const auto *card = fact.as<SafetyFact>())
        return judge(*card, limits).outcome >= SafetyOutcome::ForeignBattery;
    return false;
}

namespace {

/// Why a card or a closing that stands does not open the work; empty if it does.
Text whyNotClear(const Fact &fact, const OrderView &view)
{
    for (const Card &card : view.judged.cards.cards())
        if (card.fact->id == fact.id && card.verdict.outcome != SafetyOutcome::Clear)
            return card.verdict.text();
    for (const Hazard &hazard : view.judged.cards.open())
        if (hazard.refused && hazard.refused->id == fact.id)
            return Text(hazard.whyRefused());
    return {};
}

} // namespace

std::pair<Status, QString> standingOf(const FactView &entry, const OrderView &view)
{
    const Fact &fact = entry.fact;
    if (entry.voided)
        return {Status::NotNeeded, QCoreApplication::translate("FactText", "voided by %1: %2")
                                       .arg(entry.voidedBy, entry.voidedBecause)};
    bool failed = hasFailed(fact, view.limits), counts = false;
    QString words;
    for (const Standing &standing : view.judged.standings) {
        if (standing.counts && standing.counts->id == fact.id) {
            counts = true;
            failed = failed || standing.state == NeedState::Failed;
        }
        for (const Discounted &each : standing.before)
            if (each.fact->id == fact.id && words.isEmpty())
                words = localized(each.sentence);
    }
    // A card that does not clear the pair, and a closing that closes nothing, stand as they are.
    if (const Text why = whyNotClear(fact, view); !why.isEmpty())
        return {failed ? Status::Failed : Status::Doubtful, localized(why)};
    if (counts)
        words = QCoreApplication::translate("FactText", "counts");
    const auto run = std::ranges::find(view.decision.runs, fact.id, &RunMade::fact);
    if (run != view.decision.runs.end()) {
        words = localizedSentence(run->resultInWords());
        failed = failed || run->outcome == RunOutcome::Failed;
    }
    return {failed ? Status::Failed : counts ? Status::Done : Status::Note, words};
}

QString timeText(const Moment &moment, QDate today)
{
    const QString time = moment.localClock();
    return moment.localDate() == today ? time : dayText(moment.localDate(), today) + u' ' + time;
}

} // namespace loopwright
