#pragma once
// One thing that is broken in the records, as the check of the history names it.

#include <QString>

#include <functional>

namespace loopwright {

struct HistoryFault
{
    QString subject;  ///< chain: "circuit:…" or "register"; "database", "schema" or "log" of the
                      ///< whole; empty if no event tells of a row
    qint64 event = 0; ///< place in the chain, from 1; 0 if there is none to name
    QString what;     ///< one sentence

    bool operator==(const HistoryFault &) const = default;
};

/// Called with how many of all events were read; returns false to stop, which is Refused.
using CheckProgress = std::function<bool(qint64 done, qint64 all)>;

} // namespace loopwright
