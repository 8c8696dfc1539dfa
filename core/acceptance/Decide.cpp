#include "core/acceptance/Decide.h"

#include "core/acceptance/Judging.h"
#include "core/order/OrderIdentifiers.h"

#include <algorithm>

namespace loopwright {

Findings checkOrderIdentifiers(const ServiceOrder &order)
{
    const ProtocolVariant *variant = findVariant(order.variant);
    if (!variant || order.type == OrderType::Disconnect)
        return {};
    return checkTerminals(*variant, identifiersOf(order), order.bothChannelsOrdered());
}

Judging::Judging(const DecisionInput &decisionInput, const LimitSet &limitSet)
    : input(decisionInput)
    , order(decisionInput.order)
    , limits(limitSet)
    , evidence(decisionInput)
{
    runs = judgeRuns(*this);
}

namespace {

QString whyNotNeeded(const Judging &judging, const QString &key)
{
    switch (judging.input.scope) {
    case OrderScope::Nothing:
        return "A disconnect needs no evidence.";
    case OrderScope::RecordOnly:
        return "A record-only order needs its identifiers alone.";
    case OrderScope::NumbersOnly:
        if (key == "layer3" && !judging.isAnalog())
            return "The circuit has no SPID.";
        return "A change of numbers alone does not need it.";
    case OrderScope::MoveWithin:
        if (key == "loop")
            return "A move within the premises leaves the loop as it is.";
        break;
    case OrderScope::Full:
        break;
    }
    if (key == "layer3")
        return "The circuit has no SPID.";
    return "The line carries no circuit-switched data.";
}

/// Whether the order's kind of line has the criterion at all; one that it has not is left out.
bool belongs(const Criterion &criterion, LineKind kind)
{
    const QString key = QString::fromLatin1(criterion.key);
    const bool quantity = fromText<AnalogQuantity>(key).has_value();
    const bool digitalOnly = key.startsWith("layer") || key == "detector" || key == "run";
    return kind == LineKind::Analog ? !digitalOnly : !quantity;
}

/// Whether a fact speaks of the criterion.
bool concerns(const Fact &fact, const Criterion &criterion, const CriterionResult &result)
{
    if (!criterion.endsException().contains(fact.kind()))
        return false;
    if (const auto *analog = fact.as<AnalogFact>())
        return toText(analog->quantity) == result.key;
    if (const auto *layer = fact.as<LayerFact>())
        return QString("layer%1").arg(layer->layer) == result.key;
    return true;
}

bool isNewTo(const Fact &exception, const Fact &fact)
{
    return !exception.as<ExceptionFact>()->known.contains(fact.id);
}

void applyExceptions(const Judging &judging, const Criterion &criterion, CriterionResult &result)
{
    if (result.outcome != CriterionOutcome::NotMet && result.outcome != CriterionOutcome::Missing)
        return;
    if (result.key == "safety") // cannot be excepted
        return;
    const auto &facts = judging.evidence.facts();
    for (const Fact *fact : judging.evidence.all<ExceptionFact>()) {
        const auto *exception = fact->as<ExceptionFact>();
        const auto ends = [&](const Fact *other) {
            return concerns(*other, criterion, result) && isNewTo(*fact, *other);
        };
        if (exception->criteria.contains(result.key) &&
            std::none_of(facts.begin(), facts.end(), ends))
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

void saySelfCall(const RunFact &run, QStringList &notes)
{
    const QString where = run.interface.value_or(LineInterface::U) == LineInterface::U
                              ? QString("at the U interface")
                              : QString("at the S/T interface, through the NT");
    const QString covers =
        run.path == Path::SelfCall
            ? QString("A self-call covers this loop and its serving switch only.")
        : run.path == Path::TestLine
            ? QString("A call to the serving office's loopback covers this loop and the way to it.")
            : QString("A call to the far end covers the whole path of the call.");
    for (const QString &note :
         {covers, run.interface ? QString("The run was made %1.").arg(where) : QString()})
        if (!note.isEmpty() && !notes.contains(note))
            notes << note;
}

/// What the counted runs prove: of several channels the one that proves least speaks.
void sayWhatIsProven(const Judging &judging, Decision &decision)
{
    double worst = -1;
    for (const ChannelRuns &channel : judging.runs) {
        const JudgedRun *run = channel.deciding();
        if (!run || run->standing != RunStanding::Passed)
            continue;
        saySelfCall(*run->fact->as<RunFact>(), decision.notes);
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
        decision.notes << "The line carries no circuit-switched data: no error-rate run is needed.";
    if (judging.runs.size() == 1 && judging.order.terminals.size() < 2)
        decision.notes << "With one channel or one number a self-call is not possible; the path is "
                          "the test line or the far end.";
}

QString decisionId(const DecisionInput &input)
{
    // The digest of the input as a UUID: the same input is the same decision.
    const QString hex = digestOf(input.toJson());
    return QString("%1-%2-%3-%4-%5")
        .arg(hex.mid(0, 8), hex.mid(8, 4), hex.mid(12, 4), hex.mid(16, 4), hex.mid(20, 12));
}

} // namespace

Decision decide(const DecisionInput &input, const LimitSet &limits)
{
    const Judging judging(input, limits);
    Decision decision;
    decision.id = decisionId(input);
    decision.order = input.order.number;
    decision.limitSet = limits.version();
    QStringList counted;
    for (const Criterion &criterion : criteria()) {
        if (!belongs(criterion, input.order.kind))
            continue;
        CriterionResult result;
        result.key = QString::fromLatin1(criterion.key);
        result.name = QString::fromLatin1(criterion.name);
        result.station = criterion.station;
        result.outcome = CriterionOutcome::NotNeeded;
        if (!criterion.needed(judging)) {
            result.reason = whyNotNeeded(judging, result.key);
        } else {
            if (result.key == "instrument")
                result.evidence = counted; // it judges what the others counted
            criterion.judge(judging, result);
            applyExceptions(judging, criterion, result);
        }
        result.evidence.removeDuplicates();
        counted << result.evidence;
        decision.criteria.push_back(std::move(result));
    }
    decision.outcome = overall(decision.criteria);
    decision.runs = runsMade(judging);
    sayWhatIsProven(judging, decision);
    return decision;
}

QString stageOf(const Decision &decision, const DecisionInput &input, bool finished)
{
    if (finished)
        return "done";
    if (const CriterionResult *open = decision.firstOpen())
        return toText(open->station);
    const bool needsCertificate =
        input.scope != OrderScope::Nothing && input.scope != OrderScope::RecordOnly;
    return toText(needsCertificate ? Station::Certificate : Station::Acceptance);
}

} // namespace loopwright
