#pragma once
// Evidence in: facts from a record file or from the job page, corrections and voids.

#include "app/actions/RecordReport.h"
#include "app/actions/Records.h"
#include "core/acceptance/Fact.h"

namespace loopwright {

/// Records the content of a record file. BadInput with its place if any fact is malformed,
/// speaks of an unknown order, terminal or channel, lies more than a day ahead of the clock, or has
/// the id of another fact: nothing is taken then.
/// `corrects`: as correctFact(); empty: it corrects nothing.
Result<RecordReport> recordFile(Records &records, const QByteArray &json, const QString &fileName,
                                const QString &corrects = {});
/// The same for facts that were entered on the job page. Missing ids are made.
Result<RecordReport> recordFacts(Records &records, JobRecord record, const QString &place);

/// Keys of those who recorded facts of the order and are not in the register.
Result<QStringList> unregisteredInstallers(Records &records, const QString &order);

/// Records that a fact no longer counts. Refused if it is void already, is a void itself, or the
/// reason is empty.
Result<QString> voidFact(Records &records, const QString &factId, const QString &because);

/// Records facts in the place of one that was entered wrongly: that one no longer counts, with the
/// reason "corrected". Both are done or neither. Refused as voidFact() and recordFacts(), if the
/// record holds no fact of that kind, and if it says nothing new.
Result<RecordReport> correctFact(Records &records, const QString &factId, JobRecord record,
                                 const QString &place);

} // namespace loopwright
