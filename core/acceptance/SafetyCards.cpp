#include "core/acceptance/SafetyCards.h"

#include <algorithm>

namespace loopwright {

SafetyCards::SafetyCards(const std::vector<const Fact *> &read,
                         const std::vector<std::pair<const Fact *, QString>> &counting,
                         const std::vector<const Fact *> &standing, const LimitSet &limits)
{
    for (const auto &[fact, visit] : counting)
        m_cards.push_back({fact, judge(*fact->as<SafetyFact>(), limits), visit});
    for (const Fact *fact : standing)
        if (const auto *changed = fact->as<ChangedFact>();
            changed && changed->what == ChangedWhat::Feed)
            m_feedChanges.push_back(fact->at);
    for (const Fact *card : read) {
        Hazard hazard{card, judge(*card->as<SafetyFact>(), limits)};
        if (hazard.verdict.outcome != SafetyOutcome::Hazard)
            continue;
        for (const Fact *fact : standing)
            if (const auto *closed = fact->as<HazardClosedFact>();
                closed && closed->hazard == card->id && fact->at >= card->at)
                hazard.closing = fact;
        for (const Card &later : m_cards)
            if (hazard.closing && !hazard.clear && later.fact != card &&
                later.fact->at >= hazard.closing->at &&
                later.verdict.outcome == SafetyOutcome::Clear)
                hazard.clear = later.fact;
        m_hazards.push_back(std::move(hazard));
    }
}

const Hazard *SafetyCards::openAt(const Moment &moment) const
{
    const auto found = std::ranges::find_if(
        m_hazards, [&moment](const Hazard &hazard) { return hazard.isOpenAt(moment); });
    return found == m_hazards.end() ? nullptr : &*found;
}

const Hazard *SafetyCards::unexplained() const
{
    const auto found =
        std::ranges::find_if(m_hazards, [](const Hazard &hazard) { return !hazard.closing; });
    return found == m_hazards.end() ? nullptr : &*found;
}

const Hazard *SafetyCards::awaitingCard() const
{
    const auto found = std::ranges::find_if(
        m_hazards, [](const Hazard &hazard) { return hazard.closing && !hazard.clear; });
    return found == m_hazards.end() ? nullptr : &*found;
}

bool SafetyCards::hasCardUpTo(const Moment &moment, const QString &visit) const
{
    return std::ranges::any_of(
        m_cards, [&](const Card &card) { return card.visit == visit && card.fact->at <= moment; });
}

const Card *SafetyCards::holdingAt(const Moment &moment, const QString &visit) const
{
    const Card *holding = nullptr;
    for (const Card &card : m_cards)
        if (card.visit == visit && card.fact->at <= moment)
            holding = &card;
    const bool switched = holding && std::ranges::any_of(m_feedChanges, [&](const Moment &change) {
                              return change > holding->fact->at && change <= moment;
                          });
    return switched ? nullptr : holding;
}

bool SafetyCards::isClearAt(const Moment &moment, const QString &visit) const
{
    const Card *card = holdingAt(moment, visit);
    return card && card->verdict.outcome == SafetyOutcome::Clear && !openAt(moment);
}

} // namespace loopwright
