#include "core/acceptance/Handoff.h"

#include "core/acceptance/Criteria.h"
#include "core/turnup/Cause.h"

#include <algorithm>

namespace loopwright {

namespace {

struct WhomToCall
{
    LinePart part;
    const char *call;
};
constexpr WhomToCall whomToCall[] = {
    {LinePart::PremisesWiring, "whoever looks after the wiring of the premises"},
    {LinePart::Terminal, "whoever supplied the terminal equipment"},
    {LinePart::Loop, "outside plant repair, with the pair and the readings below"},
    {LinePart::ServingOffice, "the serving office"}};

const CriterionResult *subjectOf(const Decision &decision)
{
    const CriterionResult *missing = nullptr;
    if (const CriterionResult *safety = decision.criterion("safety");
        safety && safety->open() && safety->outcome == CriterionOutcome::NotMet)
        return safety;
    for (const CriterionResult &criterion : decision.criteria) {
        if (!criterion.open())
            continue;
        if (criterion.outcome == CriterionOutcome::NotMet)
            return &criterion;
        if (!missing)
            missing = &criterion;
    }
    return missing;
}

/// The newest of the criterion's facts that shows the failure.
const Fact *failureOf(const DecisionInput &input, const CriterionResult &criterion)
{
    const Fact *newest = nullptr;
    for (const Fact &fact : input.facts) {
        const auto *layer = fact.as<LayerFact>();
        const auto *call = fact.as<CallFact>();
        const bool failed = (layer && layer->outcome == LayerOutcome::Down) ||
                            (call && call->outcome == CallOutcome::Failed);
        if (failed && criterion.evidence.contains(fact.id) && (!newest || newest->at < fact.at))
            newest = &fact;
    }
    return newest;
}

QString causeText(const DecisionInput &input, std::optional<int> number)
{
    if (!number)
        return {};
    const ProtocolVariant *variant = findVariant(input.order.variant);
    const auto cause = variant && usesQ850(*variant) ? causeOf(*number) : std::nullopt;
    return cause ? QString("%1, %2").arg(*number).arg(cause->name) : QString::number(*number);
}

void setPart(Handoff &handoff, std::optional<LinePart> part)
{
    if (!part) {
        handoff.part = "the installer's own work";
        handoff.call = "the dispatcher, to be sent again";
        return;
    }
    handoff.part = partName(*part);
    for (const WhomToCall &row : whomToCall)
        if (row.part == *part)
            handoff.call = QString::fromLatin1(row.call);
    if (*part == LinePart::ServingOffice && !handoff.office.isEmpty())
        handoff.call += ", " + handoff.office;
}

void explainLayer(Handoff &handoff, const DecisionInput &input, const LayerFact &layer)
{
    const FirstCheck check = firstCheck(layer);
    handoff.where =
        layer.layer == 1
            ? QString("layer 1 at %1")
                  .arg(layer.interfaceOrU() == LineInterface::U ? QString("U") : QString("S/T"))
            : QString("layer %1, terminal %2").arg(layer.layer).arg(layer.terminalOrFirst());
    handoff.cause = causeText(input, layer.cause);
    handoff.meaning = check.meaning;
    handoff.check = QStringList{check.check, check.then};
    setPart(handoff, check.part);
}

void explainCall(Handoff &handoff, const DecisionInput &input, const CallFact &call)
{
    handoff.where = QString("%1, %2, %3")
                        .arg(toText(call.channel), toText(call.service), toText(call.direction));
    handoff.cause = causeText(input, call.cause);
    const ProtocolVariant *variant = findVariant(input.order.variant);
    const auto cause =
        call.cause && variant && usesQ850(*variant) ? causeOf(*call.cause) : std::nullopt;
    if (cause && !cause->checkFirst.isEmpty())
        handoff.check.prepend(cause->checkFirst);
}

void explain(Handoff &handoff, const DecisionInput &input, const CriterionResult &criterion)
{
    if (const Criterion *row = findCriterion(criterion.key)) {
        setPart(handoff, row->part);
        handoff.check << QString::fromLatin1(row->check);
    }
    // What was not even tried is nobody's fault yet.
    if (criterion.outcome == CriterionOutcome::Missing) {
        setPart(handoff, {});
        const Text &what = criterion.next.isEmpty() ? criterion.reason : criterion.next;
        handoff.check = QStringList{what.english()};
        return;
    }
    const Fact *failure = failureOf(input, criterion);
    if (!failure)
        return;
    if (const auto *layer = failure->as<LayerFact>())
        explainLayer(handoff, input, *layer);
    else if (const auto *call = failure->as<CallFact>())
        explainCall(handoff, input, *call);
}

void addReadings(Handoff &handoff, const Decision &decision)
{
    for (const CriterionResult &criterion : decision.criteria) {
        if (criterion.open() && criterion.key != handoff.criterion)
            handoff.alsoOpen << criterion.sentence();
        if (criterion.outcome != CriterionOutcome::NotNeeded && !criterion.measuredText.isEmpty())
            handoff.readings.push_back(
                {criterion.name, criterion.measuredText, criterion.limitText, criterion.outcome});
    }
    for (const RunMade &run : decision.runs)
        handoff.done << "Run: " + run.text + " (" + run.resultInWords() + ')';
}

void addChanges(Handoff &handoff, const DecisionInput &input)
{
    QSet<QString> voided;
    for (const Fact &fact : input.facts)
        if (const auto *content = fact.as<VoidFact>())
            voided.insert(content->fact);
    for (const Fact &fact : input.facts) {
        if (voided.contains(fact.id) || fact.as<VoidFact>())
            continue;
        if (const auto *changed = fact.as<ChangedFact>())
            handoff.done << QString("Changed: %1%2")
                                .arg(toText(changed->what).replace(u'_', u' '),
                                     changed->text ? QString(", " + *changed->text) : QString());
        if (const auto *note = fact.as<NoteFact>())
            handoff.done << "Note: " + note->text;
        if (!handoff.lastFact || *handoff.lastFact < fact.at) {
            handoff.lastFact = fact.at;
            handoff.recordedBy = fact.installer;
        }
    }
}

} // namespace

QString HandoffReading::word() const
{
    return toText(outcome).replace('_', ' ');
}

QString Handoff::whatFailed() const
{
    if (where.startsWith(failed, Qt::CaseInsensitive))
        return failed + where.mid(failed.size());
    return where.isEmpty() ? failed : failed + ", " + where;
}

std::optional<Handoff> makeHandoff(const DecisionInput &input, const Decision &decision,
                                   const std::vector<Step> &steps, const QString &officeName)
{
    const CriterionResult *criterion = subjectOf(decision);
    if (!criterion)
        return std::nullopt;
    const ServiceOrder &order = input.order;
    Handoff handoff;
    handoff.order = order.number;
    handoff.customer = order.customer;
    handoff.contact = order.contact;
    handoff.premises = order.premises;
    handoff.circuit = order.circuit;
    handoff.office = officeName;
    handoff.pair = order.pair;
    const ProtocolVariant *variant = findVariant(order.variant);
    handoff.variant = variant ? variant->name : order.variant;
    handoff.criterion = criterion->key;
    handoff.failed = criterion->name;
    handoff.reason = criterion->reason.english();
    explain(handoff, input, *criterion);
    if (const Step *step = nextStep(steps))
        handoff.next = (step->next.isEmpty() ? step->because : step->next).english();
    addReadings(handoff, decision);
    addChanges(handoff, input);
    return handoff;
}

} // namespace loopwright
