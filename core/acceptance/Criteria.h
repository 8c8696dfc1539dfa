#pragma once
// The table of criteria, one row each: its name, which orders have it, what must be shown for it,
// who judges it, what it means in plain words, whose part it is and what to check first. A new
// criterion is one row here and one function.

#include "core/acceptance/Need.h"
#include "core/turnup/FirstCheck.h"

#include <span>

namespace loopwright {

struct Judging;

/// What an outcome means to the person who ordered the line, without the trade's words.
struct PlainWords
{
    const char *met;
    const char *marginal; ///< met, and near the limit
    const char *failed;
    const char *notShown;
};

/// The kinds of line that have a criterion.
enum class LinesWith
{
    Both,
    BasicRate,
    Analog,
};

/// How much of the acceptance an order must need for a criterion to be asked.
enum class Scopes
{
    Full,
    FullOrMove,
    NumbersToo,
    NumbersAssigned, ///< likewise, but not a repair, which assigns none
    RecordToo,       ///< all but a disconnect
};

/// Appends needs of a criterion.
using AddNeeds = void (*)(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);

struct Criterion
{
    const char *key;
    const char *name;
    Station station;
    LinesWith lines;
    Scopes scopes;
    bool (*has)(const ServiceOrder &); ///< the order has it at all; null: always
    const char *lacking;               ///< why it is not needed if the order does not have it
    AddNeeds addNeeds;
    /// Fills outcome, figures, reason, next and evidence of a result that has key, name and
    /// station, and says of each need how it stands.
    void (*judge)(Judging &, CriterionResult &);
    bool mayBeExcepted;
    PlainWords words;
    std::optional<LinePart> part; ///< whose part it is if nothing says more; none: the installer's
    const char *check;            ///< what to check first
};

/// In the order of the job.
std::span<const Criterion> criteria();
QStringList criterionKeys(); ///< of all, in that order
/// Of all criteria, and the offers of a visit, in the order of the work.
std::vector<Need> needsOf(const ServiceOrder &order, OrderScope scope, const LimitSet &limits);
/// Null for a key without a row.
const Criterion *findCriterion(const QString &key);
/// Whether what it shows is of the plant, not of papers and instruments; false for an unknown key.
bool isOfThePlant(const QString &criterion);
/// Whether an order of this kind of line has the criterion.
bool belongs(const Criterion &criterion, LineKind kind);
bool isNeeded(const Criterion &criterion, const ServiceOrder &order, OrderScope scope);
/// One sentence for a criterion that belongs to the order and is not needed.
Text whyNotNeeded(const Criterion &criterion, OrderScope scope);

// In the files of the stations: what a criterion needs, and who judges it.
void needIdentifiers(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);
void needLoop(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);
void needSafety(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);
void needLayer1(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);
void needLayer2(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);
void needLayer3(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);
void needQuantities(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);
void needCalls(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);
void needReadback(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);
void needErrorTest(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);
void needInstrument(std::vector<Need> &, const ServiceOrder &, OrderScope, const LimitSet &);
void judgeIdentifiers(Judging &, CriterionResult &);
void judgeLoop(Judging &, CriterionResult &);
void judgeSafety(Judging &, CriterionResult &);
void judgeLayer1(Judging &, CriterionResult &);
void judgeLayer2(Judging &, CriterionResult &);
void judgeLayer3(Judging &, CriterionResult &);
void judgeQuantity(Judging &, CriterionResult &); ///< of the quantity that the key names
void judgeCalls(Judging &, CriterionResult &);
void judgeReadback(Judging &, CriterionResult &);
void judgeDetector(Judging &, CriterionResult &);
void judgeRun(Judging &, CriterionResult &);
void judgeInstrument(Judging &, CriterionResult &); ///< last: of what the others rest on

} // namespace loopwright
