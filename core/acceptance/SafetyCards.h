#pragma once
// The safety cards of an order and the hazards of its pair, whatever order they were read for. A
// card holds for one pair, one visit, one place and one state of the feed. A hazard stays open,
// whoever looks away: until it is said how it was closed and a later card reads clear. Striking its
// card out does not close it.

#include "core/acceptance/DecisionInput.h"
#include "core/base/LimitSet.h"
#include "core/safety/SafetyVerdict.h"

namespace loopwright {

struct Hazard
{
    const Fact *card = nullptr;
    SafetyVerdict verdict;
    QString told = {}; ///< the id by which it is closed: its card's, or that under which stations
                       ///< told several contents
    const Fact *closing = nullptr; ///< says how it was closed; none: nobody did yet
    const Fact *refused = nullptr; ///< a closing that does not count
    const Fact *clear = nullptr;   ///< the first clear card after the closing

    bool isDisputed = false; ///< stations tell otherwise what its card read: nothing closes it
    bool isOfPair = true;    ///< of the order's; else of another pair at the premises

    /// One sentence.
    const char *whyRefused() const;
    bool isClosed() const { return closing && clear; }
    bool isOpenAt(const Moment &moment) const
    {
        return card->at <= moment && !(isClosed() && clear->at <= moment);
    }
};

/// "Hazard: … Stop, move away, report. Read 2026-03-04 09:15." and for which order, if for another
/// one than this.
Text hazardText(const Hazard &hazard, const QString &thisOrder);

/// "72 V AC, tip to ground", "71 V AC, tip to ring": what was read above the stop limits.
QStringList hazardVolts(const Hazard &hazard);
/// How it went, for paper: what was read when, its cause, who said so under which reference, and
/// the clear card after it. `by` and `reference` of the closing as they may be shown.
QString hazardStory(const Hazard &hazard, const QString &by, const QString &reference);

/// A card that counts, with what it reads in the light of the one before it.
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
    /// `pairs` are the names of the pair in force, `counting` are the order's cards that count, by
    /// time, with the names of their visits; `standing` its facts that are not struck out. The
    /// input must outlive it.
    SafetyCards(const DecisionInput &input, const QStringList &pairs,
                const std::vector<std::pair<const Fact *, QString>> &counting,
                const std::vector<const Fact *> &standing, const LimitSet &limits);

    const std::vector<Card> &cards() const { return m_cards; }
    /// Of the pair, by time.
    const std::vector<Hazard> &hazards() const { return m_hazards; }
    /// Those that nobody closed, of the pair and then of the premises: they stand before all else.
    std::vector<Hazard> open() const;
    /// The hazard that the card of that id read, of the pair or the premises; null if it read none.
    const Hazard *hazardOf(const QString &card) const;
    /// The first hazard that is not closed at the moment; none if there is none.
    const Hazard *openAt(const Moment &moment) const;
    /// The first hazard of which nobody said how it was closed, and the first that waits for a
    /// clear card; whenever they were read.
    const Hazard *unexplained() const;
    const Hazard *awaitingCard() const;
    bool hasCardUpTo(const Moment &moment, const QString &visit) const;
    /// The newest card of the visit up to the moment, unless the feed was switched since.
    const Card *holdingAt(const Moment &moment, const QString &visit) const;
    /// The card that this fact is; null if it does not count.
    const Card *cardOf(const Fact &fact) const;
    /// A clear card holds.
    bool isClearAt(const Moment &moment, const QString &visit) const;

private:
    void addCards(const std::vector<std::pair<const Fact *, QString>> &counting,
                  const LimitSet &limits);
    static std::optional<Hazard> readHazard(const DecisionInput &input, const QStringList &pairs,
                                            const Fact &card, const LimitSet &limits,
                                            const std::vector<const Fact *> &standing);

    std::vector<Card> m_cards; ///< by time
    std::vector<Hazard> m_hazards;
    std::vector<Hazard> m_nearby; ///< of other pairs at the premises
    std::vector<Moment> m_feedChanges;
};

} // namespace loopwright
