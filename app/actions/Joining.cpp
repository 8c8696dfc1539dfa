#include "app/actions/Joining.h"

#include "db/ConflictStore.h"

namespace loopwright {

Result<StationConflict> drawConflict(const Records &records, Transaction &transaction,
                                     const QString &order, ConflictCode code,
                                     const QString &station, const QJsonObject &content)
{
    const QString id = StationConflict::idOf(code, order, station, content);
    StationConflict drawn{id, order, code, station, content, records.now(), {}};
    LOOPWRIGHT_TRY(ConflictStore::add(transaction, drawn));
    return drawn;
}

} // namespace loopwright
