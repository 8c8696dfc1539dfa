#pragma once
// Whether the records still say what the history says: every chain is computed anew, every sealed
// row is compared with its content and with the event that sealed it, and rows without event and
// events without row are named. Finds what was edited with another program, triggers dropped.

#include "db/Database.h"

#include <functional>
#include <vector>

namespace loopwright {

struct HistoryFault
{
    QString subject;  ///< chain: "circuit:…" or "register"; empty if no event says
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

Result<HistoryFindings> checkHistory(const Database &database, const CheckProgress &progress = {});

} // namespace loopwright
