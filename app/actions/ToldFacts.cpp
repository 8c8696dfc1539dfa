#include "app/actions/ToldFacts.h"

#include "db/ConflictStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"

namespace loopwright {

Result<ToldFacts> ToldFacts::read(const Database &database, const QString &order)
{
    ToldFacts told;
    LOOPWRIGHT_ASSIGN(told.facts, FactStore(database).ofOrder(order));
    LOOPWRIGHT_ASSIGN(told.tellers, ForeignStore(database).tellersOf(order));
    LOOPWRIGHT_ASSIGN(told.conflicts, ConflictStore(database).ofOrder(order));
    return told;
}

QSet<QString> ToldFacts::aside() const
{
    QSet<QString> ids;
    for (const SetAside &each : setAside(facts, tellers, conflicts))
        ids.insert(each.fact);
    return ids;
}

QSet<QString> ToldFacts::differing() const
{
    QSet<QString> ids;
    for (const SetAside &each : setAside(facts, tellers, conflicts))
        if (each.code == ConflictCode::FactDiffers)
            ids.insert(each.fact);
    return ids;
}

} // namespace loopwright
