#pragma once
// Evidence in: facts from a record file or from the job page, voids, and the drafts of what is
// being typed.

#include "app/actions/Records.h"
#include "core/acceptance/Fact.h"

namespace loopwright {

/// What is said of a fact, or of the whole record.
struct RecordFinding : Finding
{
    QString fact = {}; ///< id; empty of the whole record
};

struct RecordReport
{
    QStringList added;        ///< ids
    QStringList alreadyThere; ///< ids that were recorded before with the same content
    /// A hazard that was read, what was recorded and does not count, who or what is not registered.
    std::vector<RecordFinding> told;

    QJsonObject toJson() const; ///< {"added","already_there","findings"}
};

/// Records the content of a record file. BadInput with its place if any fact is malformed,
/// speaks of an unknown order, terminal or channel, lies more than a day ahead of the clock, or has
/// the id of another fact: nothing is taken then.
Result<RecordReport> recordFile(Records &records, const QByteArray &json, const QString &fileName);
/// The same for facts that were entered on the job page. Missing ids are made.
Result<RecordReport> recordFacts(Records &records, JobRecord record, const QString &place);

/// Records that a fact no longer counts. Refused if it is void already, is a void itself, or the
/// reason is empty.
Result<QString> voidFact(Records &records, const QString &factId, const QString &because);

/// Drafts: what was typed in a part of the job page and not yet confirmed. Saved as each field is
/// left.
Result<void> saveDraft(Records &records, const QString &order, const QString &part,
                       const QJsonObject &content);
Result<void> dropDraft(Records &records, const QString &order, const QString &part);
/// Part to content.
Result<QMap<QString, QJsonObject>> drafts(Records &records, const QString &order);
/// The drafts of one part in all orders, by order.
Result<QMap<QString, QJsonObject>> draftsOfPart(Records &records, const QString &part);

} // namespace loopwright
