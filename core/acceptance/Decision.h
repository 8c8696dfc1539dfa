#pragma once
// What was decided about an order, criterion by criterion. Board, stage, job page, command line and
// certificate read this; nothing else compares a measurement with a limit.

#include "core/acceptance/Stage.h"
#include "core/base/Json.h"
#include "core/base/Remark.h"
#include "core/base/Text.h"
#include "core/loop/AnalogQuantity.h"
#include "core/turnup/FirstCheck.h"

#include <vector>

namespace loopwright {

enum class CriterionOutcome
{
    Met,
    NotMet,
    Missing,
    NotNeeded
};
template<>
struct EnumCodes<CriterionOutcome>
{
    static constexpr std::pair<CriterionOutcome, const char *> table[] = {
        {CriterionOutcome::Met, "met"},
        {CriterionOutcome::NotMet, "not_met"},
        {CriterionOutcome::Missing, "missing"},
        {CriterionOutcome::NotNeeded, "not_needed"}};
};

enum class OrderOutcome
{
    Accepted,
    AcceptedWithException,
    NotAccepted,
    Incomplete
};
template<>
struct EnumCodes<OrderOutcome>
{
    static constexpr std::pair<OrderOutcome, const char *> table[] = {
        {OrderOutcome::Accepted, "accepted"},
        {OrderOutcome::AcceptedWithException, "accepted_with_exception"},
        {OrderOutcome::NotAccepted, "not_accepted"},
        {OrderOutcome::Incomplete, "incomplete"}};
};
/// As it is, or by exception.
inline bool isAccepted(OrderOutcome outcome)
{
    return outcome == OrderOutcome::Accepted || outcome == OrderOutcome::AcceptedWithException;
}

struct Excepted
{
    QString by;
    QString because;
    Moment at;
};

struct CriterionResult
{
    QString key; ///< "safety", "loop", "loop_current", …
    Text name;   ///< for a person
    Station station = Station::Acceptance;
    CriterionOutcome outcome = CriterionOutcome::Missing;
    QJsonValue measured; ///< number or text as measured; null if there is none
    Text measuredText;   ///< the same for a person, with its unit
    QJsonValue limit;    ///< number or text; null if there is none
    Text limitText;      ///< the limit for a person
    QString unit;
    QString source;                          ///< of the limit
    Text reason;                             ///< one sentence: why this outcome
    Text next;                               ///< one sentence: what to do next; empty if nothing is
    std::optional<QuantityClass> grade = {}; ///< good, marginal or poor, of what has classes
    QStringList evidence;                    ///< ids of the facts that count for it
    std::optional<Excepted> excepted;

    /// What it means to the customer if the words of its row do not fit these figures; empty if
    /// they do. Like the two below it is said on paper and screen; the record has the reason.
    Text plain = {};
    std::optional<LinePart> part = {}; ///< whose part it is if that is another than its row's
    std::vector<Remark> remarks = {};  ///< what is told of it even if it is met

    /// Of a figure that is words: the record keeps the English.
    void setMeasured(const Text &words)
    {
        measuredText = words;
        measured = words.english();
    }
    bool open() const
    {
        return (outcome == CriterionOutcome::NotMet || outcome == CriterionOutcome::Missing) &&
               !excepted;
    }
    /// "Safety card: No safety card was made for this pair."
    Text sentence() const
    {
        return Text(QT_TRANSLATE_NOOP("core", "%1: %2")).arg(name).arg(reason);
    }
};

/// A run was voided: it counts for nothing, and is listed all the same.
struct StruckOut
{
    Moment began; ///< of the run
    QString by;
    QString because; ///< as a person typed it

    /// "typing error (by S. Hale)"; a long reason is cut short.
    QString words() const;
    /// "A run of 10 March 2026, 08:53 (UTC-06:00) was struck out: typing error (by S. Hale)."
    QString sentence() const;
};

/// What became of a run, by its kind; RunMade::result says it in words.
enum class RunOutcome
{
    Counted, ///< a channel's run that passed and decides
    Failed,  ///< over the limits
    Other    ///< decides nothing
};
template<>
struct EnumCodes<RunOutcome>
{
    static constexpr std::pair<RunOutcome, const char *> table[] = {
        {RunOutcome::Counted, "counted"},
        {RunOutcome::Failed, "failed"},
        {RunOutcome::Other, "other"}};
};

/// A run as the certificate lists it: "N runs were made", and which failed.
struct RunMade
{
    QString fact;
    QString head;   ///< for a person: when, path, channels, length
    QString counts; ///< likewise: its errors
    QString result; ///< "counted", "failed", "stopped early", "broken", "for diagnosis", …
    RunOutcome outcome = RunOutcome::Other;
    std::optional<StruckOut> struckOut = {};

    QString text() const { return head + ": " + counts; }
    /// The result, and of a run that was struck out why and by whom.
    QString resultInWords() const;
};

struct Decision
{
    QString id; ///< made from the input, so that the same input has the same decision
    QString order;
    OrderOutcome outcome = OrderOutcome::Incomplete;
    QString limitSet;
    std::vector<CriterionResult> criteria;
    std::vector<RunMade> runs;
    Text proves;        ///< what the counted run proves, in plain words; empty without one
    QJsonObject proven; ///< figures behind it: bits, bit_errors, ber_upper_95, …; ber_upper at the
                        ///< limit set's confidence if that is another
    /// Hazards of other pairs at the premises, told before everything; the notes begin with them.
    std::vector<Text> hazardsNearby = {};
    /// What else must be said: what the path covers, where the run was made.
    std::vector<Text> notes;

    const CriterionResult *criterion(const QString &key) const;
    QStringList notesInEnglish() const;
    QJsonObject toJson() const;
    QString digest() const { return digestOf(toJson()); }
    /// The first criterion that is open, in the order of the job.
    const CriterionResult *firstOpen() const;
};

} // namespace loopwright
