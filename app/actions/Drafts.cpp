#include "app/actions/Drafts.h"

#include "db/DraftStore.h"

namespace loopwright {

Result<void> saveDraft(Records &records, const QString &order, const QString &part,
                       const QJsonObject &content)
{
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_TRY(DraftStore::put(transaction, order, part, content));
    return transaction.commitDraft();
}

Result<void> dropDraft(Records &records, const QString &order, const QString &part)
{
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_TRY(DraftStore::remove(transaction, order, part));
    return transaction.commitDraft();
}

Result<QMap<QString, QJsonObject>> drafts(Records &records, const QString &order)
{
    return DraftStore(records.database()).ofOrder(order);
}

Result<QMap<QString, QJsonObject>> draftsOfPart(Records &records, const QString &part)
{
    return DraftStore(records.database()).ofPart(part);
}

} // namespace loopwright
