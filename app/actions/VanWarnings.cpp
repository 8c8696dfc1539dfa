#include "app/actions/VanWarnings.h"

#include "app/actions/Acceptance.h"
#include "app/actions/LimitSets.h"
#include "core/acceptance/Evidence.h"
#include "core/base/PaperTime.h"
#include "core/order/OrderScope.h"

#include <algorithm>

namespace loopwright {

namespace {

Finding warning(const char *code, Text reason, const char *field = "")
{
    return {Severity::Warning, code, std::move(reason), {}, field, 0};
}

} // namespace

Result<HazardsAround> hazardsAround(Records &records, const StoredOrder &stored)
{
    LOOPWRIGHT_ASSIGN(const auto input, evidenceOf(records, stored));
    LOOPWRIGHT_ASSIGN(const auto limits, limitSet(records, input.limitSet));
    const Evidence evidence(input, limits);
    HazardsAround around;
    for (const Hazard &hazard : evidence.cards().open())
        around.open.push_back(hazardText(hazard, stored.order.number));
    for (const auto *cards : {&input.pairCards, &input.premisesCards})
        for (const Fact &card : *cards)
            around.orders << card.order;
    return around;
}

Findings hazardWarnings(const std::vector<Text> &open)
{
    Findings warnings;
    for (const Text &hazard : open)
        warnings.push_back(warning("hazard_open", hazard));
    return warnings;
}

Findings changeWarnings(const ServiceOrder &before, const ServiceOrder &now)
{
    Findings warnings;
    if (before.pair != now.pair)
        warnings.push_back(warning("pair_changed",
                                   Text(QT_TRANSLATE_NOOP("core", "The pair was %1 and is %2 now."))
                                       .arg(before.pair.isEmpty() ? QString("-") : before.pair)
                                       .arg(now.pair.isEmpty() ? QString("-") : now.pair),
                                   "pair"));
    const auto changed = whatChanged(before, now);
    if (std::ranges::find(changed, ChangedWhat::Identifiers) != changed.end())
        warnings.push_back(
            warning("identifiers_changed",
                    QT_TRANSLATE_NOOP("core", "The numbers or identifiers of the line are others "
                                              "than they were.")));
    return warnings;
}

Finding outWarning(const QStringList &stations)
{
    return warning("order_out",
                   Text(QT_TRANSLATE_NOOP("core", "Station %1 has this order too: agree who works "
                                                  "on it."))
                       .arg(stations.join(QStringLiteral(", "))));
}

Finding undecidedWarning()
{
    return warning("conflict_open",
                   QT_TRANSLATE_NOOP("core",
                                     "The van worked on it as it was before, and nobody has "
                                     "decided: until then it stays in the van as it is "
                                     "there. Settle that first."));
}

Finding fileReplacedWarning(const QString &order, const QString &file, const QString &station)
{
    return warning("file_replaced",
                   Text(QT_TRANSLATE_NOOP("core", "%1 held a bundle with order %2, which is out at "
                                                  "%3, and is written over: if that was not opened "
                                                  "yet, hand the order out again."))
                       .arg(file)
                       .arg(order)
                       .arg(station));
}

Finding clockBehindWarning(const Moment &now)
{
    return warning("clock_behind",
                   Text(QT_TRANSLATE_NOOP("core", "The office wrote this after %1, which the clock "
                                                  "here says it is: set the clock right before "
                                                  "anything is measured."))
                       .arg(paperTime(now)));
}

} // namespace loopwright
