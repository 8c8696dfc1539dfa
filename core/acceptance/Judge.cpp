#include "core/acceptance/Judge.h"

#include "core/acceptance/Judging.h"
#include "core/base/PaperTime.h"

#include <algorithm>

namespace loopwright {

namespace {

/// A content of an id that was known then is nothing new.
bool isNewTo(const DecisionInput &input, const Fact &exception, const Fact &fact)
{
    const QStringList &known = exception.as<ExceptionFact>()->known;
    return !known.contains(fact.id) && !known.contains(input.toldUnder.value(fact.id));
}

/// A new fact for the criterion ends the exception; so does a run for its detector check, and a
/// check for its run.
bool ends(const Judging &judging, const Fact &fact, const Criterion &criterion)
{
    for (const Need &need : judging.needs)
        if (need.matches(fact) &&
            (need.criterion == QLatin1StringView(criterion.key) ||
             (need.group == StepGroup::ErrorTest && criterion.station == Station::ErrorTest)))
            return true;
    return false;
}

void applyExceptions(const Judging &judging, const Criterion &criterion, CriterionResult &result)
{
    if (!criterion.mayBeExcepted ||
        (result.outcome != CriterionOutcome::NotMet && result.outcome != CriterionOutcome::Missing))
        return;
    for (const Fact *fact : judging.evidence.all<ExceptionFact>()) {
        const auto *exception = fact->as<ExceptionFact>();
        const bool ended = std::ranges::any_of(judging.evidence.facts(), [&](const Fact *other) {
            return isNewTo(judging.input, *fact, *other) && ends(judging, *other, criterion);
        });
        if (exception->criteria.contains(result.key) && !ended)
            result.excepted = Excepted{exception->by, exception->because, fact->at};
    }
}

OrderOutcome overall(const std::vector<CriterionResult> &results)
{
    bool notMet = false, missing = false, excepted = false;
    for (const CriterionResult &result : results) {
        notMet = notMet || (result.open() && result.outcome == CriterionOutcome::NotMet);
        missing = missing || (result.open() && result.outcome == CriterionOutcome::Missing);
        excepted = excepted || result.excepted;
    }
    return notMet     ? OrderOutcome::NotAccepted
           : missing  ? OrderOutcome::Incomplete
           : excepted ? OrderOutcome::AcceptedWithException
                      : OrderOutcome::Accepted;
}

void note(Decision &decision, const Text &sentence)
{
    if (!sentence.isEmpty() && std::ranges::find(decision.notes, sentence) == decision.notes.end())
        decision.notes.push_back(sentence);
}

void sayPath(const RunFact &run, const ServiceOrder &order, Decision &decision)
{
    note(decision,
         run.path == Path::SelfCall
             ? Text(QT_TRANSLATE_NOOP("core",
                                      "A self-call covers this loop and its serving switch only."))
         : run.path == Path::TestLine
             ? Text(QT_TRANSLATE_NOOP(
                   "core",
                   "A call to the serving office's loopback covers this loop and the way to it."))
             : Text(QT_TRANSLATE_NOOP("core",
                                      "A call to the far end covers the whole path of the call.")));
    if (run.path != Path::SelfCall && run.channels.size() > 1)
        note(decision, Text(QT_TRANSLATE_NOOP(
                           "core", "The run over two channels is two calls, one on each.")));
    const LineInterface usual = order.ntSupplied ? LineInterface::St : LineInterface::U;
    note(decision, run.interface.value_or(usual) == LineInterface::U
                       ? Text(QT_TRANSLATE_NOOP("core", "The run was made at the U interface."))
                       : Text(QT_TRANSLATE_NOOP(
                             "core", "The run was made at the S/T interface, through the NT.")));
}

/// A hazard of another pair at the premises closes nothing, and is told before everything else.
void sayHazardsNearby(const Judging &judging, Decision &decision)
{
    for (const Hazard &hazard : judging.evidence.cards().open())
        if (!hazard.isOfPair)
            decision.hazardsNearby.push_back(hazardText(hazard, judging.order.number));
    for (const Text &hazard : decision.hazardsNearby)
        note(decision, hazard);
}

/// What the counted runs prove: of several channels the one that proves least speaks.
void sayWhatIsProven(const Judging &judging, Decision &decision)
{
    double worst = -1;
    for (const ChannelRuns &channel : judging.runs) {
        const JudgedRun *run = channel.deciding();
        if (!run || run->standing != RunStanding::Passed)
            continue;
        sayPath(*run->fact->as<RunFact>(), judging.order, decision);
        const double upper = run->evaluation.berUpper.value_or(1);
        if (upper <= worst)
            continue;
        worst = upper;
        decision.proves = run->evaluation.sentence;
        decision.proven = run->evaluation.summary.toJson();
        if (run->evaluation.confidence != usualConfidence)
            decision.proven.insert("ber_upper", upper);
        for (const char *computed : {"ber_upper_95", "ber_upper", "ber", "esr", "sesr"})
            if (const QJsonValue found = decision.proven.value(QLatin1StringView(computed));
                found.isDouble())
                decision.proven.insert(QLatin1StringView(computed),
                                       roundForRecord(found.toDouble()));
        decision.proven.insert("rate", double(run->fact->as<RunFact>()->bitsPerSecond()));
        decision.proven.insert("confidence", run->evaluation.confidence);
    }
    if (!judging.isAnalog() && judging.input.scope == OrderScope::Full && judging.runs.empty())
        note(decision,
             Text(QT_TRANSLATE_NOOP(
                 "core",
                 "The line carries no circuit-switched data: no error-rate run is needed.")));
    if (!judging.runs.empty() && !mayCallItself(judging.order))
        note(decision,
             Text(QT_TRANSLATE_NOOP(
                 "core", "With one channel or one number a self-call is not possible; the path "
                         "is the test line or the far end.")));
}

/// A layer that was first seen up after what needs it.
void sayLateLayers(const Judging &judging, Decision &decision)
{
    for (const Need &need : judging.needs) {
        if (need.kind != FactKind::Layer)
            continue;
        const Fact *first = nullptr;
        for (const Fact *fact : judging.evidence.of<LayerFact>())
            if (!first && need.matches(*fact) && fact->as<LayerFact>()->outcome == LayerOutcome::Up)
                first = fact;
        for (const ChannelRuns &channel : judging.runs)
            if (const JudgedRun *run = channel.deciding();
                run && first && first->at > timeOf(*run->fact))
                note(decision,
                     Text(QT_TRANSLATE_NOOP("core", "%1 was first recorded up after the run."))
                         .arg(need.label));
    }
}

/// A layer that went down and came up again retires nothing, and is noted.
void sayInterruptions(const Judging &judging, Decision &decision)
{
    for (const Need &need : judging.needs) {
        if (need.kind != FactKind::Layer)
            continue;
        bool wasUp = false;
        const Fact *down = nullptr;
        for (const Fact *fact : judging.evidence.of<LayerFact>()) {
            if (!need.matches(*fact))
                continue;
            const bool up = fact->as<LayerFact>()->outcome == LayerOutcome::Up;
            if (up && down)
                note(decision,
                     Text(QT_TRANSLATE_NOOP("core", "%1 was down on %2 and up again on %3."))
                         .arg(need.label)
                         .arg(Text::message(paperTime(down->at)))
                         .arg(Text::message(paperTime(fact->at))));
            if (up)
                down = nullptr;
            else if (wasUp && !down)
                down = fact;
            wasUp = wasUp || up;
        }
    }
}

/// By its size: the leads may be held the other way round.
std::optional<double> newestFigure(const Judging &judging, AnalogQuantity quantity)
{
    std::optional<double> figure;
    for (const Fact *fact : judging.evidence.of<AnalogFact>())
        if (const auto *analog = fact->as<AnalogFact>(); analog->quantity == quantity)
            if (const auto number = analog->number())
                figure = std::abs(*number);
    return figure;
}

/// By Ohm's law the loop alone takes current times resistance of the voltage that the office feeds.
void sayCurrentAgainstVoltage(const Judging &judging, Decision &decision)
{
    const auto current = newestFigure(judging, AnalogQuantity::LoopCurrent),
               voltage = newestFigure(judging, AnalogQuantity::OnHookVoltage);
    std::optional<double> resistance;
    for (const Fact *fact : judging.evidence.of<LoopFact>())
        if (const auto &measured = fact->as<LoopFact>()->dcResistanceOhm)
            resistance = measured;
    if (current && voltage && resistance && *current / 1000 * *resistance > *voltage)
        note(decision,
             Text(QT_TRANSLATE_NOOP("core",
                                    "%1 mA through %2 ohm take %3 V, more than the %4 V measured "
                                    "on-hook: one of the three readings is wrong, or the feed "
                                    "rises with the load."))
                 .arg(*current)
                 .arg(*resistance)
                 .arg(figure(*current / 1000 * *resistance))
                 .arg(*voltage));
}

/// One installer is at one place at a time.
void sayOverlappingVisits(const Judging &judging, Decision &decision)
{
    const std::vector<Visit> visits = visitsOf(judging.input.facts);
    for (std::size_t i = 0; i < visits.size(); ++i)
        for (std::size_t j = i + 1; j < visits.size(); ++j)
            if (visits[i].overlaps(visits[j]))
                note(decision, Text(QT_TRANSLATE_NOOP(
                                        "core", "The visits of %1 from %2 and from %3 overlap."))
                                   .arg(visits[i].installer)
                                   .arg(Text::message(paperTime(visits[i].arrived)))
                                   .arg(Text::message(paperTime(visits[j].arrived))));
}

/// What was recorded and does not count, and what is older than the order.
void sayDiscounted(const Judging &judging, Decision &decision)
{
    constexpr double earliest = 30.0 * 86400;
    const auto &takenIn = judging.input.takenIn;
    for (const Discounted &each : judging.evidence.discounted())
        note(decision, Text(each.sentence.english().endsWith(u'.')
                                ? QT_TRANSLATE_NOOP("core", "%1 of %2 does not count: %3")
                                : QT_TRANSLATE_NOOP("core", "%1 of %2 does not count: %3."))
                           .arg(Text(factName(each.fact->kind())))
                           .arg(Text::message(paperTime(timeOf(*each.fact))))
                           .arg(each.sentence));
    if (!takenIn)
        return;
    for (const Fact *fact : judging.evidence.facts())
        if (judging.decidedBy.contains(fact->id) && timeOf(*fact).secondsUntil(*takenIn) > earliest)
            note(decision,
                 Text(QT_TRANSLATE_NOOP(
                          "core",
                          "%1 of %2 was made more than 30 days before the order was taken in."))
                     .arg(Text(factName(fact->kind())))
                     .arg(Text::message(paperTime(timeOf(*fact)))));
}

QString decisionId(const DecisionInput &input)
{
    // The digest of the input as a UUID: the same input is the same decision.
    const QString hex = digestOf(input.toJson());
    return QString("%1-%2-%3-%4-%5")
        .arg(hex.mid(0, 8), hex.mid(8, 4), hex.mid(12, 4), hex.mid(16, 4), hex.mid(20, 12));
}

/// A reading that cannot be true, and that none followed: its criterion waits for another one.
void waitForReadings(Judging &judging, CriterionResult &result)
{
    for (const Need *need : judging.needsFor(result.key)) {
        const Standing &standing = judging.standings[need->key];
        const auto doubtful =
            std::ranges::find(standing.before, Discount::Contradiction, &Discounted::why);
        // A run whose totals contradict each other is told of by its own criterion.
        if (doubtful == standing.before.end() || doubtful->fact->as<RunFact>() ||
            (standing.counts && isEarlier(*doubtful->fact, *standing.counts)))
            continue;
        result.evidence << doubtful->fact->id;
        judging.settle(*need, result, CriterionOutcome::Missing, doubtful->sentence,
                       Text(QT_TRANSLATE_NOOP("core", "Read again: %1.")).arg(need->label));
    }
}

CriterionResult resultOf(Judging &judging, const Criterion &criterion)
{
    CriterionResult result;
    result.key = QString::fromLatin1(criterion.key);
    result.name = Text(criterion.name);
    result.station = criterion.station;
    result.outcome = CriterionOutcome::NotNeeded;
    if (isNeeded(criterion, judging.order, judging.input.scope)) {
        criterion.judge(judging, result);
        waitForReadings(judging, result);
        applyExceptions(judging, criterion, result);
    } else {
        result.reason = whyNotNeeded(criterion, judging.input.scope);
    }
    result.evidence.removeDuplicates();
    judging.decidedBy << result.evidence;
    return result;
}

} // namespace

Judged judge(const DecisionInput &input, const LimitSet &limits)
{
    Judging judging(input, limits);
    Judged judged;
    Decision &decision = judged.decision;
    decision.id = decisionId(input);
    decision.order = input.order.number;
    decision.limitSet = limits.version();
    for (const Criterion &criterion : criteria())
        if (belongs(criterion, input.order.kind))
            decision.criteria.push_back(resultOf(judging, criterion));
    decision.outcome = overall(decision.criteria);
    decision.runs = runsMade(judging);
    sayHazardsNearby(judging, decision);
    sayWhatIsProven(judging, decision);
    sayLateLayers(judging, decision);
    sayInterruptions(judging, decision);
    sayCurrentAgainstVoltage(judging, decision);
    sayOverlappingVisits(judging, decision);
    sayDiscounted(judging, decision);
    judged.pair = judging.evidence.pair();
    judged.cards = judging.evidence.cards();
    judged.standings = judging.standings;
    judged.needs = judging.needs;
    return judged;
}

Decision decide(const DecisionInput &input, const LimitSet &limits)
{
    return judge(input, limits).decision;
}

Stage stageOf(const Decision &decision, const DecisionInput &input, bool finished)
{
    if (finished)
        return Stage::Done;
    if (const CriterionResult *open = decision.firstOpen())
        return stageAt(open->station);
    return stageAt(getsCertificate(input.scope) ? Station::Certificate : Station::Acceptance);
}

} // namespace loopwright
