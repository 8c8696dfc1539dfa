#include "app/actions/ForeseenRecord.h"

#include "app/actions/BoardRefresh.h"
#include "app/actions/LimitSets.h"
#include "db/Connection.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/InstrumentStore.h"
#include "db/MetaStore.h"
#include "db/OrderStore.h"
#include "db/PersonStore.h"

namespace loopwright {

void foreseeRecord(Records &records, const JobRecord &record)
{
    const Database &database = records.database();
    database.connection().foresee([&] {
        const auto stored = OrderStore(database).find(record.order);
        (void)OrderStore(database).subjectOf(record.order);
        for (const Fact &fact : record.facts) {
            (void)FactStore(database).digestOf(fact.id);
            (void)PersonStore(database).find(fact.installer);
            (void)InstrumentStore(database).find(fact.instrument);
        }
        const auto limits = limitsInForce(records);
        (void)EventStore(database).logHead();
        (void)MetaStore(database).boardLimits();
        if (!stored || !*stored || !limits)
            return;
        (void)EventStore(database).chainOf(circuitSubject((*stored)->order.circuit));
        (void)limitSet(records, limits->version());
        (void)derivedState(database, **stored, *limits);
    });
}

} // namespace loopwright
