#pragma once
// Whether what is derived from the records still follows from them: the columns beside an order's
// content, what the board shows, the search index, the ranks of completed orders, who holds which
// number and pair. Each is computed anew. What is stored for its own sake is verifyHistory's.

#include "app/actions/Records.h"

#include <QJsonObject>

namespace loopwright {

struct DerivedFault
{
    QString subject; ///< "circuit:…", "search" or "meta"
    QString what;    ///< one sentence

    QJsonObject toJson() const; ///< {"subject","what"}
};
/// Nothing is changed. An order that is closed is held to its content alone: what it was judged by
/// then (instruments, people) may have changed since, and its row is sealed.
Result<std::vector<DerivedFault>> auditDerived(Records &records, const Progress &progress = {});

} // namespace loopwright
