#pragma once
// The safety cards of an order and the hazards that they read. A card holds for one pair, one visit
// and one state of the feed. A hazard stays open, whoever looks away: until it is said how it was
// closed and a later card reads clear. Striking its card out does not close it.

#include "core/acceptance/DecisionInput.h"
#include "core/base/LimitSet.h"
#include "core/safety/SafetyFact.h"

namespace loopwright {

struct Hazard
{
    const Fact *card = nullptr;
    SafetyVerdict verdict;
    const Fact *closing = nullptr; ///< says how it was closed; none: nobody did yet
    const Fact *clear = nullptr;   ///< the first clear card after that

    bool isClosed() const { return closing && clear; }
    bool isOpenAt(const Moment &moment) const
    {
        return card->at <= moment && !(isClosed() && clear->at <= moment);
    }
};

/// A card that counts, with what it reads.
struct Card
{
    const Fact *fact = nullptr;
    SafetyVerdict verdict;
    QString visit;
};

class SafetyCards
{
public:
    SafetyCards() = default;
    /// `read` are all cards that were ever recorded, by time, struck out or not; `counting` those
    /// that count, with the names of their visits; `standing` the facts that are not struck out.
    SafetyCards(const std::vector<const Fact *> &read,
                const std::vector<std::pair<const Fact *, QString>> &counting,
                const std::vector<const Fact *> &standing, const LimitSet &limits);

    const std::vector<Card> &cards() const { return m_cards; }
    const std::vector<Hazard> &hazards() const { return m_hazards; }
    /// The first hazard that is not closed at the moment; none if there is none.
    const Hazard *openAt(const Moment &moment) const;
    /// The first hazard of which nobody said how it was closed, and the first that waits for a
    /// clear card; whenever they were read.
    const Hazard *unexplained() const;
    const Hazard *awaitingCard() const;
    bool hasCardUpTo(const Moment &moment, const QString &visit) const;
    /// The newest card of the visit up to the moment, unless the feed was switched since.
    const Card *holdingAt(const Moment &moment, const QString &visit) const;
    /// A clear card holds.
    bool isClearAt(const Moment &moment, const QString &visit) const;

private:
    std::vector<Card> m_cards; ///< by time
    std::vector<Hazard> m_hazards;
    std::vector<Moment> m_feedChanges;
};

} // namespace loopwright
