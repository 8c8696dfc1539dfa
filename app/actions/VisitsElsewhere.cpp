#include "app/actions/VisitsElsewhere.h"

#include "app/actions/ToldFacts.h"
#include "core/acceptance/Proof.h"
#include "core/order/Claims.h"
#include "db/ConflictStore.h"
#include "db/FactStore.h"

#include <algorithm>

namespace loopwright {

namespace {

void extend(FactStore::Span &days, QDate day)
{
    if (!day.isValid())
        return;
    days.first = days.first.isValid() ? std::min(days.first, day) : day;
    days.last = days.last.isValid() ? std::max(days.last, day) : day;
}

FactStore::Span daysOnSite(const std::vector<Fact> &facts)
{
    FactStore::Span days;
    for (const Fact &fact : facts)
        if (isMadeOnSite(fact))
            extend(days, timeOf(fact).localDate());
    return days;
}

/// Whose visits and self-tests are asked for.
struct WhoAndWhen
{
    QStringList installers; ///< none: everybody's
    FactStore::Span days;

    bool asksFor(const Fact &fact) const
    {
        const QDate day = fact.at.localDate();
        return (fact.as<VisitFact>() || (fact.as<SelfTestFact>() && !installers.isEmpty())) &&
               (installers.isEmpty() || installers.contains(fact.installer)) && days.first <= day &&
               day <= days.last;
    }
};

/// Of orders that stations disagree about only what is not in dispute: a void that is strikes out
/// nothing here either.
Result<std::vector<Fact>> undisputed(const Database &database, const ServiceOrder &order,
                                     const WhoAndWhen &wanted, std::vector<Fact> facts)
{
    LOOPWRIGHT_ASSIGN(const auto disputed, ConflictStore(database).otherOrdersAtPremises(order));
    for (const QString &number : disputed) {
        std::erase_if(facts, [&number](const Fact &fact) { return fact.order == number; });
        LOOPWRIGHT_ASSIGN(auto told, ToldFacts::read(database, number));
        const QSet<QString> aside = told.aside();
        std::erase_if(told.facts, [&aside](const Fact &fact) { return aside.contains(fact.id); });
        for (const Fact *fact : standingFacts(told.facts))
            if (wanted.asksFor(*fact))
                facts.push_back(*fact);
    }
    return facts;
}

} // namespace

Result<std::vector<Fact>> visitsInOtherOrders(const Database &database, const ServiceOrder &order,
                                              const std::vector<Fact> &facts)
{
    std::vector<Fact> others;
    const FactStore::Span days = daysOnSite(facts);
    if (!days.first.isValid() || premisesKey(order.premises).isEmpty())
        return others;
    QStringList installers;
    for (const Fact &fact : facts)
        if (isMadeOnSite(fact) && !installers.contains(fact.installer))
            installers << fact.installer;
    for (const QString &installer : installers) {
        LOOPWRIGHT_ASSIGN(const auto found,
                          FactStore(database).visitsAtPremises(order, installer, days));
        others.insert(others.end(), found.begin(), found.end());
    }
    return undisputed(database, order, {installers, days}, std::move(others));
}

Result<std::vector<Visit>> visitsToPremises(const Database &database, const ServiceOrder &order,
                                            const std::vector<Fact> &facts, QDate today)
{
    FactStore::Span days = daysOnSite(facts);
    extend(days, today);
    std::vector<Fact> all = facts;
    if (days.first.isValid() && !premisesKey(order.premises).isEmpty()) {
        LOOPWRIGHT_ASSIGN(auto found, FactStore(database).visitsAtPremises(order, days));
        LOOPWRIGHT_ASSIGN(const auto others,
                          undisputed(database, order, {{}, days}, std::move(found)));
        all.insert(all.end(), others.begin(), others.end());
    }
    return visitsOf(all);
}

} // namespace loopwright
