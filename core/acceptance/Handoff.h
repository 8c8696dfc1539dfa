#pragma once
// What is handed on when a job is not accepted: a hazard before everything, which layer or part
// failed, with which cause and readings, what was only not tried, whose part it is, whom to call,
// and to whom it was handed on. To read aloud on the telephone, or to print.

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
    /// Of a criterion; none for a figure behind the criterion above it.
    std::optional<CriterionOutcome> outcome = {};

    QString word() const; ///< "met", "not met", "missing"; empty for a figure

    bool operator==(const HandoffReading &) const = default;
};

/// As it was recorded: to whom it was handed on.
struct HandoffReferral
{
    QString to, reference, waitingOn;
    QString by; ///< name
    Moment at;
};

/// A dangerous voltage that is not closed.
struct HandoffHazard
{
    QStringList volts; ///< "214 V AC, tip to ground (stop above 50 V)"
    QString pair;      ///< that it is on
    QString order;     ///< that it was read for; empty: this one
    QString place;     ///< empty if the card does not say
    QString wet;       ///< "wet", "dry", or that it was not said
    Moment at;
    QString readBy;                           ///< name
    QString namedByOffice;                    ///< what the office said of it; empty if nothing
    QString state;                            ///< what it waits for
    std::optional<HandoffReferral> told = {}; ///< who was told of it since, by whom
};

/// One row for each interface and terminal: its newest state.
struct HandoffLayer
{
    QString where; ///< "layer 1 at U", "layer 3, terminal 2"
    QString state; ///< "up", "down"
    QString cause; ///< with its location; empty if none was recorded
    Moment at;
};

struct Handoff
{
    QString order, customer, contact, premises, circuit, office, pair;
    QString numbers; ///< as ordered, joined by commas
    QString variant; ///< name of the protocol variant
    QString access;  ///< access notes and the terminal's place
    QString trouble; ///< of a repair: what the customer says, and what the desk found

    std::vector<HandoffHazard> hazards; ///< open ones
    QStringList closedHazards;          ///< of the pair: what was read and how it was closed

    QString criterion;      ///< key of what failed; empty if nothing is open
    bool isMissing = false; ///< nothing failed: it was not shown yet
    QString failed;         ///< its name
    QString where;      ///< "layer 3, terminal 2", "layer 1 at U", "B1, data, out"; may be empty
    QString reason;     ///< the decision's sentence
    QString cause;      ///< "88, incompatible destination"; empty if none was recorded
    QString causeWhere; ///< "from the serving switch"; empty if that was not recorded
    QString meaning;    ///< what it says about the line
    QString part;       ///< whose part it is
    QString call;       ///< whom to call
    QString telephone;  ///< of that desk; empty if the register has none
    QStringList check;  ///< what to check, first things first
    QString next;       ///< the next step of the plan; empty if nothing is to be done
    std::vector<HandoffReading> readings;
    std::vector<HandoffLayer> layers;
    QStringList done;       ///< what was done already: runs, changes
    QStringList toMend;     ///< told of criteria that are met all the same
    QStringList alsoFailed; ///< further criteria that are not met
    QStringList notTried;   ///< criteria of which only the evidence lacks
    QString recordedBy;     ///< name of the installer of the last fact
    std::optional<Moment> lastFact;
    std::optional<HandoffReferral> referred; ///< the newest

    /// "Layer 3, terminal 2": the place says the name again if it begins with it.
    QString whatFailed() const;
};

/// What a handoff is made from.
struct HandoffSources
{
    const DecisionInput &input;
    const Decision &decision;
    const LimitSet &limits;
    std::vector<Step> steps = {}; ///< of the plan
    ServingOffice office = {};
    std::optional<Issuer> issuer = {};
    QList<Person> people = {};
};

/// Always made, whatever is open. A criterion that is not met goes before one that lacks evidence,
/// an open hazard before every other.
Handoff makeHandoff(const HandoffSources &sources);

} // namespace loopwright
