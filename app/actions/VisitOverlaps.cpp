#include "app/actions/VisitOverlaps.h"

#include "core/acceptance/Visits.h"
#include "core/base/PaperTime.h"
#include "core/order/Claims.h"
#include "db/FactStore.h"

#include <QMap>

#include <algorithm>

namespace loopwright {

namespace {

Text overlapText(const Visit &visit, const Visit &other, const QString &order)
{
    const auto filled = [&](const Text &source) {
        return source.arg(visit.installer)
            .arg(paperTime(visit.arrived))
            .arg(paperTime(other.arrived));
    };
    if (order.isEmpty())
        return filled(QT_TRANSLATE_NOOP("core", "The visits of %1 from %2 and from %3 overlap."));
    return filled(QT_TRANSLATE_NOOP("core", "The visits of %1 from %2 and, at the premises of "
                                            "order %4, from %3 overlap."))
        .arg(order);
}

/// The first visit of another order at other premises that overlaps this one, and that order.
Result<std::optional<std::pair<Visit, QString>>>
overlappedElsewhere(const Database &database, const ServiceOrder &order, const Visit &visit)
{
    LOOPWRIGHT_ASSIGN(const auto told,
                      FactStore(database).visitsOf(
                          visit.installer, {visit.arrived.localDate(), visit.left->localDate()}));
    QMap<QString, std::vector<Fact>> byOrder;
    for (const Fact &fact : told)
        byOrder[fact.order].push_back(fact);
    byOrder.remove(order.number);
    for (auto it = byOrder.begin(); it != byOrder.end(); ++it)
        for (const Visit &other : visitsOf(*it)) {
            if (!visit.overlaps(other))
                continue;
            LOOPWRIGHT_ASSIGN(const auto there, OrderStore(database).get(it.key()));
            if (premisesKey(there.order.premises) != premisesKey(order.premises))
                return std::pair(other, it.key());
        }
    return std::nullopt;
}

} // namespace

Result<void> tellOverlaps(const Database &database, const StoredOrder &stored, RecordReport &report)
{
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(database).ofOrder(stored.order.number));
    const std::vector<Visit> visits = visitsOf(facts);
    for (const Visit &visit : visits) {
        const auto added = std::ranges::find_if(
            visit.facts, [&report](const QString &id) { return report.added.contains(id); });
        if (added == visit.facts.end() || !visit.left)
            continue;
        const auto tell = [&](const Text &reason) {
            report.told.push_back(
                {{Severity::Warning, "visits_overlap", reason, {}, {}, 0}, *added});
        };
        for (const Visit &other : visits)
            if (visit.overlaps(other))
                tell(overlapText(visit, other, {}));
        LOOPWRIGHT_ASSIGN(const auto elsewhere, overlappedElsewhere(database, stored.order, visit));
        if (elsewhere)
            tell(overlapText(visit, elsewhere->first, elsewhere->second));
    }
    return {};
}

} // namespace loopwright
