#pragma once
// What the criteria are judged from, and what their functions share.

#include "core/acceptance/Criteria.h"
#include "core/acceptance/Evidence.h"
#include "core/acceptance/Judged.h"
#include "core/errortest/RunEvaluation.h"

namespace loopwright {

/// How one run stands towards the limits.
enum class RunStanding
{
    Passed,
    Failed,        ///< over its error limits, whenever it was stopped
    NoResult,      ///< stopped early, too short, with a break in its clock, or no self-call
    Contradictory, ///< within limits by totals that cannot all be true
    Blocked,       ///< within limits, but after a failed run with nothing said of what was done
    Unchecked,     ///< within limits, but without the detector check that belongs to it
};

struct JudgedRun
{
    const Fact *fact = nullptr;
    RunEvaluation evaluation;
    RunStanding standing = RunStanding::NoResult;
    Text why = {};               ///< one sentence
    QString unresolved = {};     ///< why there is no result, in few words
    const Fact *check = nullptr; ///< the detector check before it; none if there is none
};

/// The runs that prove one channel, oldest first, and the one that decides.
struct ChannelRuns
{
    Channel channel = Channel::B1;
    std::vector<JudgedRun> runs;
    /// The newest that passed or failed, or whose totals contradict each other and were not read
    /// anew; null if there is none.
    const JudgedRun *deciding() const;
    /// The newest that failed and was not followed by one that passed; null if there is none.
    const JudgedRun *failed() const;
};

struct Judging
{
    Judging(const DecisionInput &input, const LimitSet &limits);

    const DecisionInput &input;
    const ServiceOrder &order;
    const LimitSet &limits;
    const Evidence evidence;
    const std::vector<Need> needs;
    std::vector<ChannelRuns> runs; ///< of each B channel that carries data
    QMap<QString, Standing> standings;
    QStringList decidedBy; ///< ids of the facts that the criteria judged so far rest on

    bool isAnalog() const { return order.kind == LineKind::Analog; }
    std::vector<const Need *> needsFor(const QString &criterion) const;
    const Need *need(const QString &key) const;
    /// The newest counting fact of the need; null if there is none.
    const Fact *newest(const Need &need) const;
    /// Whether something was recorded for the need that does not count.
    bool hasDiscounted(const Need &need) const;

    /// Says how a need stands and what that makes of the criterion: the worse outcome wins in both.
    void settle(const Need &need, CriterionResult &result, CriterionOutcome outcome,
                const Text &reason, const Text &next = {});
};

/// Why the numbers of a self-call are not two numbers of the order, one sentence; empty for
/// another path, if a number is not said or cannot be read, and if all is well.
Text selfCallTrouble(const RunFact &run, const ServiceOrder &order);
/// In sync for ten seconds, as a call is.
bool lastedAsCall(const RunFact &run);
/// A call in itself: a self-call between two numbers of the order in sync for ten seconds.
bool isSelfCall(const RunFact &run, const ServiceOrder &order);
/// A self-call at the ordered rate counts as a data call out on its first channel, and as one in to
/// the number that it called, as a loopback that calls back does; whatever its errors.
bool showsCallOut(const RunFact &run, const ServiceOrder &order, Channel channel);
bool showsCallIn(const RunFact &run, const ServiceOrder &order, const QString &number);
/// Why a run is over its limits of errors, losses of synchronisation and slips; empty if it is not.
/// A run that was stopped early is held against what a run of full length may have, so that one
/// error in its first minute has not failed it yet.
Text overLimits(const RunFact &run, const RunEvaluation &evaluation, const LimitSet &limits);
/// Judges the runs of every B channel that carries data, for Judging and the list of runs made.
std::vector<ChannelRuns> judgeRuns(const Judging &judging);
/// Every run that was made, voided ones too, with what became of it, oldest first.
std::vector<RunMade> runsMade(const Judging &judging);
/// The sentence of the voided run that began last, and how many there are; empty without one.
Text struckOutRuns(const Judging &judging);
/// What is wrong with the instrument of a reading that decides; empty if nothing is.
Text instrumentTrouble(const Judging &judging, const Fact &fact);
/// Facts that are readings of an instrument; without one named they prove nothing.
bool needsInstrument(const Fact &fact);

/// Sets outcome and reason, the worse outcome winning: not_met over missing over met over
/// not_needed, where a result starts. Reasons of equal outcome are joined; the first hint of what
/// is next stays.
void mergeOutcome(CriterionResult &result, CriterionOutcome outcome, const Text &reason,
                  const Text &next = {});
/// What the outcome just merged means to the customer; passed over if a worse one stands.
void explainPlainly(CriterionResult &result, CriterionOutcome outcome, const Text &plain);
/// Told once.
void addRemark(CriterionResult &result, const Remark &remark);
/// The worse class stays.
void mergeGrade(CriterionResult &result, QuantityClass grade);
/// To nine significant digits: what a mathematical library gives beyond them differs from one
/// version to the next, and a decision repeats byte for byte. For figures that were computed.
double roundForRecord(double value);
/// "12.5", without trailing zeros.
QString figure(double value, int decimals = 2);

} // namespace loopwright
