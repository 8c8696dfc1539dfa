#pragma once
// Whether the records still say what was recorded: the pages of the file, the schema, every chain,
// the log of the station, and every row against its seal, all over the stored bytes. Finds what was
// edited with another program. What is derived from the records is the audit's question.

#include "core/history/StationLog.h"
#include "db/Database.h"

#include <functional>
#include <vector>

namespace loopwright {

struct HistoryFault
{
    QString subject;  ///< chain: "circuit:…" or "register"; "database", "schema" or "log" of the
                      ///< whole; empty if no event tells of a row
    qint64 event = 0; ///< place in the chain, from 1; 0 if there is none to name
    QString what;     ///< one sentence

    bool operator==(const HistoryFault &) const = default;
};

struct HistoryFindings
{
    qint64 events = 0;
    /// Of each chain the first broken link, then each row; no more than maxFaults.
    std::vector<HistoryFault> faults;

    static constexpr std::size_t maxFaults = 1000;
};

/// Called with how many of all events were read; returns false to stop, which is Refused.
using CheckProgress = std::function<bool(qint64 done, qint64 all)>;

/// The log must contain each of the heads.
Result<HistoryFindings> checkHistory(const Database &database, const CheckProgress &progress = {},
                                     const std::vector<LogHead> &heads = {});

} // namespace loopwright
