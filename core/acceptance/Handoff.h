#pragma once
// What is handed on when a job is not accepted: which layer or part failed, with which cause and
// readings, whose part it is and whom to call. To read aloud on the telephone, or to print.

#include "core/acceptance/Decision.h"
#include "core/acceptance/DecisionInput.h"
#include "core/acceptance/Plan.h"
#include "core/turnup/FirstCheck.h"

namespace loopwright {

struct HandoffReading
{
    QString name;
    QString value;
    QString limit; ///< empty if there is none
    CriterionOutcome outcome = CriterionOutcome::Missing;

    QString word() const; ///< "met", "not met", "missing"

    bool operator==(const HandoffReading &) const = default;
};

struct Handoff
{
    QString order, customer, contact, premises, circuit, office, pair;
    QString variant; ///< name of the protocol variant

    QString criterion; ///< key of what failed
    QString failed;    ///< its name
    QString where;     ///< "layer 3, terminal 2", "layer 1 at U", "B1, data, out"; may be empty
    QString reason;    ///< the decision's sentence
    QString cause;     ///< "88, incompatible destination"; empty if none was recorded
    QString meaning;   ///< what it says about the line
    QString part;      ///< whose part it is
    QString call;      ///< whom to call
    QStringList check; ///< what to check, first things first
    QString next;      ///< the next step of the plan; empty if nothing is to be done
    std::vector<HandoffReading> readings;
    QStringList done;     ///< what was done already: runs, changes
    QStringList alsoOpen; ///< further criteria that are not met or lack evidence
    QString recordedBy;   ///< key of the installer of the last fact
    std::optional<Moment> lastFact;

    /// "Layer 3, terminal 2": the place says the name again if it begins with it.
    QString whatFailed() const;
};

/// Nothing if no criterion is open. A criterion that is not met goes before one that lacks
/// evidence, an open hazard before every other. `steps` are the plan's, `officeName` is the serving
/// office's name.
std::optional<Handoff> makeHandoff(const DecisionInput &input, const Decision &decision,
                                   const std::vector<Step> &steps, const QString &officeName);

} // namespace loopwright
