#include "app/actions/Joining.h"

#include "db/ConflictStore.h"

namespace loopwright {

Result<QStringList> tagsOf(const Database &database, const PeerStation &van)
{
    LOOPWRIGHT_ASSIGN(const auto all, StationStore(database).all());
    QStringList tags;
    for (const PeerStation &each : all) {
        if (each.name == van.name)
            tags << each.tag;
        if (each.tag == van.tag) // later ones are of whoever was restored after it
            break;
    }
    return tags;
}

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
