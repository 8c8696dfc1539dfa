#include "core/acceptance/Evidence.h"

#include <algorithm>

namespace loopwright {

namespace {

bool retires(const QString &what, Proves proof)
{
    if (what == toText(ChangedWhat::Pair) || what == toText(ChangedWhat::LineEquipment))
        return true;
    if (what == toText(ChangedWhat::Nt))
        return proof != Proves::Loop;
    return proof == Proves::Upper;
}

} // namespace

Evidence::Evidence(const DecisionInput &input)
{
    QSet<QString> voided;
    for (const Fact &fact : input.facts)
        if (const auto *voiding = fact.as<VoidFact>())
            voided.insert(voiding->fact);
    for (const Fact &fact : input.facts)
        if (!voided.contains(fact.id) && !fact.as<VoidFact>())
            m_facts.push_back(&fact);
    // The id settles ties, so that the order of recording never changes a decision.
    std::sort(m_facts.begin(), m_facts.end(), [](const Fact *a, const Fact *b) {
        const Moment atA = timeOf(*a), atB = timeOf(*b);
        return atA != atB ? atA < atB : a->id < b->id;
    });
    for (const Fact *fact : m_facts)
        if (const auto *changed = fact->as<ChangedFact>())
            m_changes.emplace_back(toText(changed->what), fact->at);
    for (const OrderChange &change : input.changes)
        m_changes.emplace_back(change.what, change.at);
}

Moment Evidence::timeOf(const Fact &fact)
{
    const auto *run = fact.as<RunFact>();
    return run ? run->started : fact.at;
}

bool Evidence::isNewer(const Fact &fact, Proves proof) const
{
    return std::all_of(m_changes.begin(), m_changes.end(), [&](const auto &change) {
        return !retires(change.first, proof) || timeOf(fact) > change.second;
    });
}

QString Evidence::visitOf(const Moment &moment) const
{
    for (const Fact *fact : m_facts) {
        const auto *visit = fact->as<VisitFact>();
        if (!visit)
            continue;
        const Moment arrived = visit->arrived.value_or(fact->at);
        const bool before = moment < arrived;
        const bool after =
            visit->left ? moment > *visit->left : moment.localDate() != arrived.localDate();
        if (!before && !after)
            return "visit " + arrived.utcText();
    }
    return "day " + moment.localDate().toString(Qt::ISODate);
}

bool Evidence::selfTestStands(const Fact &fact) const
{
    if (fact.instrument.isEmpty())
        return true;
    const QString visit = visitOf(timeOf(fact));
    bool stands = true;
    for (const Fact *other : m_facts) {
        const auto *test = other->as<SelfTestFact>();
        if (test && other->instrument == fact.instrument && visitOf(other->at) == visit &&
            other->at <= timeOf(fact))
            stands = test->outcome == SelfTestOutcome::Passed;
    }
    return stands;
}

bool Evidence::selfTestFailedLater(const Fact &fact) const
{
    const QString visit = visitOf(timeOf(fact));
    bool failed = false;
    for (const Fact *other : m_facts) {
        const auto *test = other->as<SelfTestFact>();
        if (test && other->instrument == fact.instrument && visitOf(other->at) == visit &&
            other->at > timeOf(fact))
            failed = test->outcome == SelfTestOutcome::Failed;
    }
    return failed;
}

bool Evidence::somethingDoneBetween(const Moment &from, const Moment &to) const
{
    return std::any_of(m_facts.begin(), m_facts.end(), [&](const Fact *fact) {
        return (fact->as<ChangedFact>() || fact->as<NoteFact>()) && fact->at > from &&
               fact->at < to;
    });
}

} // namespace loopwright
