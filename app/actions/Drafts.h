#pragma once
// What was typed in a part of a page and is not confirmed yet.

#include "app/actions/Records.h"
#include "db/Connection.h"

#include <QJsonObject>
#include <QMap>

namespace loopwright {

struct Draft
{
    QString order; ///< empty for what belongs to none
    QString part;
    QJsonObject content; ///< empty: there is none any more
};
/// All of them or none. Another program's lock is waited for no longer than `patienceMs`.
Result<void> saveDrafts(Records &records, const std::vector<Draft> &drafts,
                        int patienceMs = Connection::usualPatienceMs);

/// Keeps in a file of this process beside the records what they do not take now; no draft, no file.
/// DiskTrouble if that cannot be written either.
Result<void> setDraftsAside(const QString &databasePath, const std::vector<Draft> &drafts);
/// What this process and those that are gone have set aside; it is of this process from now on.
std::vector<Draft> takeDraftsSetAside(const QString &databasePath);

/// Part to content.
Result<QMap<QString, QJsonObject>> drafts(Records &records, const QString &order);
/// The drafts of one part in all orders, by order.
Result<QMap<QString, QJsonObject>> draftsOfPart(Records &records, const QString &part);

} // namespace loopwright
