#pragma once
// What recording facts answers: which were added, and what is said of them.

#include "core/base/Finding.h"

#include <QJsonObject>
#include <QStringList>

#include <vector>

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

} // namespace loopwright
