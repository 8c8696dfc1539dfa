#include "app/desktop/job/VisitState.h"

#include "app/desktop/Names.h"
#include "core/safety/SafetyFact.h"

#include <QCoreApplication>

#include <algorithm>

namespace loopwright {

namespace {

constexpr std::size_t namedInHead = 3;

QString kindName(const BoardRow &row)
{
    return loopwright::kindName(row.kind);
}

} // namespace

std::optional<Visit> openVisit(const OrderView &view, const QString &installer, const Moment &now)
{
    std::optional<Visit> open;
    for (const Visit &visit : view.visits)
        if (!visit.left && visit.arrived.localDate() == now.localDate() &&
            (visit.orders.contains(view.order.number) || visit.installer == installer))
            open = visit;
    return open;
}

std::optional<SafetyVerdict> safetyOfVisit(const OrderView &view, const QString &installer,
                                           const LimitSet &limits, const Moment &now)
{
    const auto visit = openVisit(view, installer, now);
    std::optional<SafetyVerdict> verdict;
    for (const FactView &entry : view.facts) {
        const auto *card = entry.fact.as<SafetyFact>();
        const bool thisVisit =
            visit ? entry.fact.at >= visit->arrived : entry.fact.at.localDate() == now.localDate();
        if (card && !entry.voided && thisVisit)
            verdict = judge(*card, limits);
    }
    return verdict;
}

QString lineText(const BoardRow &row)
{
    return QCoreApplication::translate("Visit", "%1, due %2, at %3")
        .arg(kindName(row), dayText(row.due), stageName(row.stage));
}

QString alsoHereText(const OrderView &view)
{
    if (view.alsoHere.empty())
        return {};
    QStringList named;
    for (std::size_t i = 0; i < std::min(view.alsoHere.size(), namedInHead); ++i)
        named << QCoreApplication::translate("Visit", "%1, %2, due %3")
                     .arg(view.alsoHere[i].order, kindName(view.alsoHere[i]),
                          dayText(view.alsoHere[i].due));
    if (view.alsoHere.size() > namedInHead)
        named << QCoreApplication::translate("Visit", "%1 more")
                     .arg(view.alsoHere.size() - namedInHead);
    return QCoreApplication::translate("Visit", "Also at these premises (F7): %1")
        .arg(named.join(QStringLiteral("; ")));
}

} // namespace loopwright
