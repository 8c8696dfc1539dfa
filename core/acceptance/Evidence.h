#pragma once
// Which facts of an order count, and why the others do not: struck out, measured on another pair,
// older than a change, made without a safety card, by an instrument that had failed its self-test,
// overtaken by another layer. Reads no limit but those of the card.

#include "core/acceptance/DecisionInput.h"
#include "core/acceptance/PairInForce.h"
#include "core/acceptance/SafetyCards.h"
#include "core/base/LimitSet.h"
#include "core/base/Text.h"

#include <QHash>

namespace loopwright {

/// What kind of reason a fact has for counting for nothing.
enum class Discount
{
    StruckOut,     ///< voided
    OrderEnded,    ///< recorded when the order was completed or cancelled
    Disputed,      ///< stations disagree about it
    OtherPair,     ///< measured on another pair than the order's
    Retired,       ///< older than a change of what it proves
    NoCard,        ///< no complete card of that pair stands before it on that visit
    Hazard,        ///< a hazard was open when it was made
    SelfTest,      ///< its instrument failed its self-test on that visit
    NewTei,        ///< the terminal has another TEI since
    LayerDown,     ///< a layer went down while it lasted
    Elsewhere,     ///< busy or unanswered elsewhere: says nothing of this line
    NothingDone,   ///< a run after a failed one, with nothing said of what was done
    NoCheck,       ///< a run without the detector check that belongs to it
    NoResult,      ///< a run that neither passes nor fails
    Contradiction, ///< its figures cannot all be true
    Newer,         ///< a newer one counts
};

struct Discounted
{
    const Fact *fact = nullptr;
    Discount why = Discount::Newer;
    Text sentence;
};

/// What was said to have been done between two runs.
enum class WhatWasDone
{
    Nothing,
    NothingFound, ///< it was looked for, and nothing was found
    Something,
};

class Evidence
{
public:
    /// The input must outlive it.
    Evidence(const DecisionInput &input, const LimitSet &limits);

    /// Counting facts that hold a T, oldest first.
    template<class T>
    std::vector<const Fact *> of() const
    {
        std::vector<const Fact *> list;
        for (const Fact *fact : m_facts)
            if (fact->as<T>() && counts(*fact))
                list.push_back(fact);
        return list;
    }
    /// Facts of a T that are not struck out, whether they count or not, oldest first.
    template<class T>
    std::vector<const Fact *> all() const
    {
        std::vector<const Fact *> list;
        for (const Fact *fact : m_facts)
            if (fact->as<T>())
                list.push_back(fact);
        return list;
    }
    /// Those that are not struck out, by time.
    const std::vector<const Fact *> &facts() const { return m_facts; }
    /// Those that are, by time: that they were recorded is reported.
    const std::vector<Discounted> &struckOut() const { return m_struckOut; }
    const VoidFact &voidOf(const Fact &fact) const { return *m_voids.value(&fact); }

    /// Those of them that count.
    std::vector<const Fact *> counting() const;

    bool counts(const Fact &fact) const { return !whyNot(fact); }
    /// Nothing if the fact counts.
    const Discounted *whyNot(const Fact &fact) const;
    /// All that count for nothing and are not struck out, by time.
    std::vector<Discounted> discounted() const;

    /// The pair in force: the order's, or what was said on site to have taken its place.
    const QString &pair() const { return m_pairs.front(); }
    const SafetyCards &cards() const { return m_cards; }
    /// The instrument of the reading: named with it, or afterwards; empty if neither.
    QString instrumentOf(const Fact &fact) const;
    /// The instrument's newest self-test on the visit of the fact failed.
    bool selfTestFailed(const Fact &fact) const;
    /// Name of the visit on which a fact was made: the visits of the input if it has any, else the
    /// visit fact that spans it, else its local day.
    QString visitOf(const Fact &fact) const;
    /// A card is needed on that visit: always, but for a change of numbers alone, which needs one
    /// only if somebody went there.
    bool needsCard(const QString &visit) const;
    WhatWasDone doneBetween(const Moment &from, const Moment &to) const;

private:
    void discount(const Fact &fact, Discount why, Text sentence);
    void discountByOrder(const DecisionInput &input);
    void discountByChanges(const DecisionInput &input);
    void discountWithoutCard();
    void discountBySelfTests();
    void discountByLayers();
    void discountCallsElsewhere(const ServiceOrder &order);
    void discountContradictions();

    const DecisionInput &m_input;
    std::vector<const Fact *> m_facts; ///< not struck out, by time
    QStringList m_pairs;               ///< names of the pair in force
    std::vector<Discounted> m_struckOut;
    QHash<const Fact *, const VoidFact *> m_voids;
    std::vector<const Fact *> m_selfTests; ///< those of other orders on the visit too
    QHash<QString, QString> m_madeWith;    ///< fact to instrument
    SafetyCards m_cards;
    QHash<const Fact *, Discounted> m_discounts;
};

} // namespace loopwright
