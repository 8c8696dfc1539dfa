#pragma once
// What a criterion is judged from, and the table of criteria. A new criterion is one row here and
// one function.

#include "core/acceptance/Evidence.h"
#include "core/errortest/RunEvaluation.h"

#include <span>

namespace loopwright {

/// How one run stands towards the limits.
enum class RunStanding
{
    Passed,
    Failed,        ///< over its error limits, whenever it was stopped
    NoResult,      ///< stopped early, too short, with a break in its clock, or no self-call
    Contradictory, ///< within limits by totals that cannot all be true
    Blocked,       ///< within limits, but behind a failed run with nothing said of what was done
};

struct JudgedRun
{
    const Fact *fact = nullptr;
    RunEvaluation evaluation;
    RunStanding standing = RunStanding::NoResult;
    QString why;        ///< one sentence
    QString unresolved; ///< why there is no result, in few words
};

/// The runs that prove one channel, oldest first, and the one that decides.
struct ChannelRuns
{
    Channel channel = Channel::B1;
    std::vector<JudgedRun> runs;
    /// The newest that passed or failed, or whose totals contradict each other and were not read
    /// anew; null where there is none.
    const JudgedRun *deciding() const;
};

struct Judging
{
    Judging(const DecisionInput &input, const LimitSet &limits);

    const DecisionInput &input;
    const ServiceOrder &order;
    const LimitSet &limits;
    Evidence evidence;
    std::vector<ChannelRuns> runs; ///< of each B channel that carries data

    bool isAnalog() const { return order.kind == LineKind::Analog; }
};

/// Fills outcome, figures, reason, next and evidence of a result that has key, name and station.
using JudgeFunction = void (*)(const Judging &, CriterionResult &);

struct Criterion
{
    const char *key;
    const char *name;
    Station station;
    bool (*needed)(const Judging &); ///< false: `not_needed`, with the reason of the scope
    JudgeFunction judge;
    QList<FactKind> (*endsException)(); ///< kinds of fact that, when newer, end an exception for it
};

std::span<const Criterion> criteria();

// One function a criterion, in the file of its station.
void judgeIdentifiers(const Judging &, CriterionResult &);
void judgeLoop(const Judging &, CriterionResult &);
void judgeSafety(const Judging &, CriterionResult &);
void judgeLayer1(const Judging &, CriterionResult &);
void judgeLayer2(const Judging &, CriterionResult &);
void judgeLayer3(const Judging &, CriterionResult &);
void judgeCalls(const Judging &, CriterionResult &);
void judgeReadback(const Judging &, CriterionResult &);
void judgeDetector(const Judging &, CriterionResult &);
void judgeRun(const Judging &, CriterionResult &);
void judgeInstrument(const Judging &, CriterionResult &);
void judgeQuantity(const Judging &, CriterionResult &); ///< of the quantity that the key names

/// Why a self-call by its numbers is none between two numbers of the order, one sentence; empty for
/// another path, where a number is not said or cannot be read, and where all is well.
QString selfCallTrouble(const RunFact &run, const ServiceOrder &order);
/// Judges the runs of every B channel that carries data, for Judging and the list of runs made.
std::vector<ChannelRuns> judgeRuns(const Judging &judging);
/// Every run that was made, voided ones too, with what became of it, oldest first.
std::vector<RunMade> runsMade(const Judging &judging);
/// The sentence of the voided run that began last, and how many there are; empty without one.
QString struckOutRuns(const Judging &judging);

/// Sets outcome and reason, the worse outcome winning: not_met over missing over met over
/// not_needed, where a result starts. Reasons of equal outcome are joined; the first hint of what
/// is next stays.
void mergeOutcome(CriterionResult &result, CriterionOutcome outcome, const QString &reason,
                  const QString &next = {});
/// To nine significant digits: what a mathematical library gives beyond them differs from one
/// version to the next, and a decision repeats byte for byte. For figures that were computed.
double roundForRecord(double value);
/// "12.5", without trailing zeros.
QString figure(double value, int decimals = 2);

} // namespace loopwright
