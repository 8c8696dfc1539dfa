#pragma once
// Which facts of an order still count, and for what: voided ones do not, nor those that are older
// than a change of what they prove, nor those of an instrument whose self-test had failed on that
// visit.

#include "core/acceptance/Decide.h"

#include <QSet>

namespace loopwright {

/// What a fact proves, by what a change makes old. A change of pair or line equipment retires all
/// three; of the NT the latter two; of identifiers the last.
enum class Proves
{
    Loop,   ///< safety, loop, analog quantities
    Layer1, ///< synchronisation
    Upper,  ///< layers 2 and 3, calls, detector check, run
};

/// A fact that counts for nothing, and what says so.
struct Voided
{
    const Fact *fact;
    const VoidFact *by;
};

class Evidence
{
public:
    /// The input must outlive it.
    explicit Evidence(const DecisionInput &input);

    /// Counting facts that hold a T, oldest first.
    template<class T>
    std::vector<const Fact *> of(Proves proof) const
    {
        std::vector<const Fact *> list;
        for (const Fact *fact : m_facts)
            if (fact->as<T>() && counts(*fact, proof))
                list.push_back(fact);
        return list;
    }
    /// Facts of a T that are not voided, whether they still count or not, oldest first.
    template<class T>
    std::vector<const Fact *> all() const
    {
        std::vector<const Fact *> list;
        for (const Fact *fact : m_facts)
            if (fact->as<T>())
                list.push_back(fact);
        return list;
    }
    const std::vector<const Fact *> &facts() const { return m_facts; }
    /// Facts of a T that are voided, oldest first: that they were recorded is told.
    template<class T>
    std::vector<Voided> voided() const
    {
        std::vector<Voided> list;
        for (const Voided &voided : m_voided)
            if (voided.fact->as<T>())
                list.push_back(voided);
        return list;
    }

    bool counts(const Fact &fact, Proves proof) const
    {
        return isNewer(fact, proof) && selfTestStands(fact);
    }
    /// Newer than the last change of what it proves.
    bool isNewer(const Fact &fact, Proves proof) const;
    /// The instrument had not failed its last self-test on that visit.
    bool selfTestStands(const Fact &fact) const;
    /// The instrument failed a self-test later on that visit and none was passed after it.
    bool selfTestFailedLater(const Fact &fact) const;

    /// Name of the visit on which a fact was made: the visits of the input where it has any, else
    /// the visit fact that spans it, else its local day.
    QString visitOf(const Fact &fact) const;
    /// A `changed` fact or a note lies at `from` or later, and before `to`.
    bool somethingDoneBetween(const Moment &from, const Moment &to) const;

private:
    std::vector<const Fact *> m_facts;                 ///< not voided, by time
    std::vector<Voided> m_voided;                      ///< by time
    std::vector<const Fact *> m_selfTests;             ///< those of other orders on the visit too
    const std::vector<Visit> &m_visits;                ///< of the input
    std::vector<std::pair<QString, Moment>> m_changes; ///< what, when
};

} // namespace loopwright
