#pragma once
// What was typed in a part of a page and is not confirmed yet.

#include "app/actions/Records.h"

#include <QJsonObject>
#include <QMap>

namespace loopwright {

/// Saved as each field is left. `order` is empty for what belongs to none.
Result<void> saveDraft(Records &records, const QString &order, const QString &part,
                       const QJsonObject &content);
Result<void> dropDraft(Records &records, const QString &order, const QString &part);
/// Part to content.
Result<QMap<QString, QJsonObject>> drafts(Records &records, const QString &order);
/// The drafts of one part in all orders, by order.
Result<QMap<QString, QJsonObject>> draftsOfPart(Records &records, const QString &part);

} // namespace loopwright
