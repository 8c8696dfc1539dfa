#include "core/acceptance/Evidence.h"

#include <QHash>

#include <algorithm>

namespace loopwright {

namespace {

bool retires(const QString &what, Proves proof)
{
    if (what == toText(ChangedWhat::Pair) || what == toText(ChangedWhat::LineEquipment))
        return true;
    if (what == toText(ChangedWhat::Nt))
        return proof != Proves::Loop;
    // A feed that was switched makes the card old and no measurement.
    return proof == Proves::Upper && what != toText(ChangedWhat::Feed);
}

std::vector<Voided> voidedFacts(const std::vector<Fact> &facts)
{
    QHash<QString, const Fact *> voids; // the first of each
    for (const Fact &fact : facts)
        if (const auto *voiding = fact.as<VoidFact>()) {
            const Fact *&first = voids[voiding->fact];
            if (!first || isEarlier(fact, *first))
                first = &fact;
        }
    std::vector<Voided> list;
    for (const Fact &fact : facts)
        if (const Fact *voiding = voids.value(fact.id))
            list.push_back({&fact, voiding->as<VoidFact>()});
    std::sort(list.begin(), list.end(),
              [](const Voided &a, const Voided &b) { return isEarlier(*a.fact, *b.fact); });
    return list;
}

} // namespace

Evidence::Evidence(const DecisionInput &input)
    : m_facts(standingFacts(input.facts))
    , m_voided(voidedFacts(input.facts))
    , m_visits(input.visits)
{
    for (const Fact *fact : m_facts) {
        if (const auto *changed = fact->as<ChangedFact>())
            m_changes.emplace_back(toText(changed->what), fact->at);
        if (fact->as<SelfTestFact>())
            m_selfTests.push_back(fact);
    }
    for (const OrderChange &change : input.changes)
        m_changes.emplace_back(change.what, change.at);
    for (const Fact &test : input.selfTests)
        m_selfTests.push_back(&test);
    std::sort(m_selfTests.begin(), m_selfTests.end(),
              [](const Fact *a, const Fact *b) { return isEarlier(*a, *b); });
}

bool Evidence::isNewer(const Fact &fact, Proves proof) const
{
    return std::all_of(m_changes.begin(), m_changes.end(), [&](const auto &change) {
        return !retires(change.first, proof) || timeOf(fact) > change.second;
    });
}

QString Evidence::visitOf(const Fact &fact) const
{
    return m_visits.empty() ? visitName(fact, m_facts) : visitName(fact, m_visits);
}

bool Evidence::selfTestStands(const Fact &fact) const
{
    if (fact.instrument.isEmpty())
        return true;
    const QString visit = visitOf(fact);
    bool stands = true;
    for (const Fact *test : m_selfTests)
        if (test->instrument == fact.instrument && visitOf(*test) == visit &&
            test->at <= timeOf(fact))
            stands = test->as<SelfTestFact>()->outcome == SelfTestOutcome::Passed;
    return stands;
}

bool Evidence::selfTestFailedLater(const Fact &fact) const
{
    const QString visit = visitOf(fact);
    bool failed = false;
    for (const Fact *test : m_selfTests)
        if (test->instrument == fact.instrument && visitOf(*test) == visit &&
            test->at > timeOf(fact))
            failed = test->as<SelfTestFact>()->outcome == SelfTestOutcome::Failed;
    return failed;
}

bool Evidence::somethingDoneBetween(const Moment &from, const Moment &to) const
{
    return std::any_of(m_facts.begin(), m_facts.end(), [&](const Fact *fact) {
        return (fact->as<ChangedFact>() || fact->as<NoteFact>()) && fact->at >= from &&
               fact->at < to;
    });
}

} // namespace loopwright
