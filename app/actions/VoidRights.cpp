#include "app/actions/VoidRights.h"

#include "app/actions/LimitSets.h"
#include "core/acceptance/Evidence.h"
#include "core/safety/SafetyVerdict.h"
#include "db/EventStore.h"
#include "db/FactStore.h"

#include <QUuid>

#include <algorithm>

namespace loopwright {

namespace {

/// Whether who acts recorded the fact, and the visit or the day on which he did is not over.
Result<bool> isOwnStill(Records &records, const Fact &fact)
{
    if (records.now().localDate() != fact.at.localDate())
        return false;
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(records.database()).ofOrder(fact.order));
    const auto recorded = std::ranges::find_if(events, [&fact](const Event &event) {
        return std::ranges::any_of(event.seals(), [&fact](const Seal &seal) {
            return seal.row == u"fact" && seal.id == fact.id;
        });
    });
    if (recorded == events.end() || recorded->by != records.by() ||
        // Whatever time is given.
        Records::realNow().localDate() != recorded->recordedAt.localDate())
        return false;
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(records.database()).ofOrder(fact.order));
    return std::ranges::none_of(standingFacts(facts), [&](const Fact *each) {
        const auto *visit = each->as<VisitFact>();
        return visit && visit->left && each->id != fact.id && fact.at <= *visit->left &&
               *visit->left <= records.now();
    });
}

Result<Act> actOf(Records &records, const Fact &fact, bool corrected)
{
    if (const auto *card = fact.as<SafetyFact>(); card && !corrected) {
        LOOPWRIGHT_ASSIGN(const auto limits, limitsInForce(records));
        if (judge(*card, limits).outcome == SafetyOutcome::Hazard)
            return Act::VoidAnothersFact;
    }
    LOOPWRIGHT_ASSIGN(const bool own, isOwnStill(records, fact));
    return own ? Act::VoidOwnFact : Act::VoidAnothersFact;
}

} // namespace

Result<void> allowVoid(Records &records, const QString &factId, bool corrected)
{
    const QString id = QUuid::fromString(factId).toString(QUuid::WithoutBraces);
    LOOPWRIGHT_ASSIGN(const auto fact, FactStore(records.database()).find(id));
    if (!fact)
        return {};
    LOOPWRIGHT_ASSIGN(const Act act, actOf(records, *fact, corrected));
    return allow(records, act, fact->order);
}

} // namespace loopwright
