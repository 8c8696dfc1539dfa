#pragma once
// Whether the records still say what was recorded: the pages of the file, the schema, every chain,
// the log of the station, and every row against its seal, all over the stored bytes. Finds what was
// edited with another program. What is derived from the records is the audit's question.

#include "core/history/StationLog.h"
#include "db/Database.h"
#include "db/HistoryFault.h"

#include <vector>

namespace loopwright {

struct HistoryFindings
{
    qint64 events = 0;
    /// Of each chain the first broken link, then each row; no more than maxFaults.
    std::vector<HistoryFault> faults;

    static constexpr std::size_t maxFaults = 1000;
};

/// The log must contain each of the heads.
Result<HistoryFindings> checkHistory(const Database &database, const CheckProgress &progress = {},
                                     const std::vector<LogHead> &heads = {});

} // namespace loopwright
