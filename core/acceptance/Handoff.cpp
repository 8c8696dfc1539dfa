#include "core/acceptance/Handoff.h"

#include "core/acceptance/Criteria.h"
#include "core/acceptance/Evidence.h"
#include "core/acceptance/Referral.h"
#include "core/base/PaperTime.h"
#include "core/order/OrderIdentifiers.h"
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

/// A hazard, else the first that failed, else what is to be shown next.
const CriterionResult *subjectOf(const Decision &decision)
{
    if (const CriterionResult *safety = decision.criterion("safety");
        safety && safety->open() && safety->outcome == CriterionOutcome::NotMet)
        return safety;
    for (const CriterionResult &criterion : decision.criteria)
        if (criterion.open() && criterion.outcome == CriterionOutcome::NotMet)
            return &criterion;
    return decision.firstOpen();
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
    return cause ? QString("%1, %2").arg(*number).arg(cause->name.english())
                 : QString::number(*number);
}

/// "from the serving switch", as the decision says it; empty if it was not recorded.
QString locationText(std::optional<CauseLocation> location)
{
    return location ? adviceOf(*location).from.english() : QString();
}

/// The desk of a part as far as the register knows one.
QString deskTelephone(std::optional<LinePart> part, const HandoffSources &sources)
{
    const Issuer issuer = sources.issuer.value_or(Issuer());
    const ServingOffice &office = sources.office;
    if (part == LinePart::ServingOffice)
        return office.troubleTelephone.isEmpty() ? office.telephone : office.troubleTelephone;
    if (part == LinePart::Loop)
        return issuer.troubleTelephone.isEmpty() ? issuer.telephone : issuer.troubleTelephone;
    return part ? QString() : issuer.telephone;
}

void setPart(Handoff &handoff, std::optional<LinePart> part, const HandoffSources &sources)
{
    handoff.telephone = deskTelephone(part, sources);
    if (!part) {
        handoff.part = "the installer's own work";
        handoff.call = "the dispatcher, to be sent again";
        return;
    }
    handoff.part = partName(*part).english();
    for (const WhomToCall &row : whomToCall)
        if (row.part == *part)
            handoff.call = QString::fromLatin1(row.call);
    if (*part == LinePart::ServingOffice && !handoff.office.isEmpty())
        handoff.call += ", " + handoff.office;
}

Text layerPlace(const LayerFact &layer)
{
    if (layer.layer == 1)
        return Text(QT_TRANSLATE_NOOP("core", "layer 1 at %1"))
            .arg(layer.interfaceOrU() == LineInterface::U ? QString("U") : QString("S/T"));
    return Text(QT_TRANSLATE_NOOP("core", "layer %1, terminal %2"))
        .arg(layer.layer)
        .arg(layer.terminalOrFirst());
}

void explainLayer(Handoff &handoff, const HandoffSources &sources, const LayerFact &layer)
{
    const FirstCheck check = firstCheck(layer);
    handoff.where = layerPlace(layer).english();
    handoff.causeWhere = locationText(layer.causeLocation);
    handoff.cause = causeText(sources.input, layer.cause);
    handoff.meaning = check.meaning.english();
    handoff.check = QStringList{check.check.english(), check.then.english()};
    setPart(handoff, check.part, sources);
}

void explainCall(Handoff &handoff, const DecisionInput &input, const CallFact &call)
{
    handoff.where = QString("%1, %2, %3")
                        .arg(toText(call.channel), toText(call.service), toText(call.direction));
    handoff.cause = causeText(input, call.cause);
    handoff.causeWhere = locationText(call.causeLocation);
    const ProtocolVariant *variant = findVariant(input.order.variant);
    const auto cause =
        call.cause && variant && usesQ850(*variant) ? causeOf(*call.cause) : std::nullopt;
    if (cause && !cause->checkFirst.isEmpty())
        handoff.check.prepend(cause->checkFirst.english());
}

void explain(Handoff &handoff, const HandoffSources &sources, const CriterionResult &criterion)
{
    const DecisionInput &input = sources.input;
    if (const Criterion *row = findCriterion(criterion.key)) {
        setPart(handoff, row->part, sources);
        handoff.check << QString::fromLatin1(row->check);
    }
    // What was not even tried is nobody's fault yet.
    if (criterion.outcome == CriterionOutcome::Missing) {
        setPart(handoff, criterion.part, sources);
        const Text &what = criterion.next.isEmpty() ? criterion.reason : criterion.next;
        handoff.check = QStringList{what.english()};
        return;
    }
    if (criterion.part) { // its figures say whose it is
        setPart(handoff, criterion.part, sources);
        handoff.check = QStringList{criterion.next.english()};
    }
    const Fact *failure = failureOf(input, criterion);
    if (!failure)
        return;
    if (const auto *layer = failure->as<LayerFact>())
        explainLayer(handoff, sources, *layer);
    else if (const auto *call = failure->as<CallFact>())
        explainCall(handoff, input, *call);
}

/// The counts of a run grouped; telephone numbers have their own rules.
QString inGroups(const CriterionResult &criterion, const Text &said)
{
    return criterion.key == u"run" ? groupedNumbers(said.english()) : said.english();
}

void addReadings(Handoff &handoff, const Decision &decision)
{
    for (const CriterionResult &criterion : decision.criteria) {
        if (criterion.open() && criterion.key != handoff.criterion)
            (criterion.outcome == CriterionOutcome::NotMet ? handoff.alsoFailed : handoff.notTried)
                << inGroups(criterion, criterion.sentence());
        for (const Remark &remark : criterion.remarks)
            handoff.toMend << QString("%1: %2").arg(criterion.name.english(),
                                                    remark.trade.english());
        // What was measured and failed has figures, also if no one figure speaks for it.
        const bool isMeasured = !criterion.measuredText.isEmpty() ||
                                (criterion.open() && !criterion.evidence.isEmpty());
        if (criterion.outcome != CriterionOutcome::NotNeeded && isMeasured)
            handoff.readings.push_back({criterion.name.english(), criterion.measuredText.english(),
                                        criterion.limitText.english(), criterion.outcome});
    }
    // The figures of a run that failed the line are told with what failed.
    const CriterionResult *failed = decision.criterion("run");
    if (failed && (!failed->open() || failed->outcome != CriterionOutcome::NotMet))
        failed = nullptr;
    for (const RunMade &run : decision.runs)
        handoff.done << (failed && failed->evidence.contains(run.fact)
                             ? QString("Run: %1: %2, as told above").arg(run.head, run.result)
                             : QString("Run: %1: %2 (%3)")
                                   .arg(run.head, groupedNumbers(run.counts), run.resultInWords()));
}

void addLayers(Handoff &handoff, const HandoffSources &sources)
{
    for (const Fact *fact : standingFacts(sources.input.facts)) {
        const auto *layer = fact->as<LayerFact>();
        if (!layer)
            continue;
        QStringList cause{causeText(sources.input, layer->cause),
                          locationText(layer->causeLocation)};
        cause.removeAll(QString());
        const QString place = layerPlace(*layer).english();
        std::erase_if(handoff.layers,
                      [&place](const HandoffLayer &each) { return each.where == place; });
        handoff.layers.push_back(
            {place,
             layer->tei ? QString("%1, TEI %2").arg(toText(layer->outcome)).arg(*layer->tei)
                        : toText(layer->outcome),
             cause.join(", "), fact->at});
    }
    std::ranges::sort(handoff.layers, {}, &HandoffLayer::where);
}

HandoffReferral referralOf(const Fact &fact, const QList<Person> &people)
{
    const auto *referred = fact.as<ReferredFact>();
    return {referred->to, referred->reference.value_or(QString()),
            referred->waitingOn ? toText(*referred->waitingOn).replace(u'_', u' ') : QString(),
            markedNameOf(people, fact.installer), fact.at};
}

void addHazards(Handoff &handoff, const HandoffSources &sources)
{
    const Evidence evidence(sources.input, sources.limits);
    for (const Hazard &hazard : evidence.cards().open()) {
        const auto *card = hazard.card->as<SafetyFact>();
        if (!card)
            continue;
        HandoffHazard told;
        for (const VoltageFinding &finding : hazard.verdict.hazards)
            told.volts << QString("%1 V %2, %3 (stop above %4 V)")
                              .arg(QString::number(finding.volts),
                                   finding.alternating ? QString("AC") : QString("DC"),
                                   wirePairName(finding.pair), QString::number(finding.limit));
        told.place = card->place.value_or(QString());
        told.wet = card->wet ? (*card->wet ? "wet" : "dry") : "not said whether wet or dry";
        told.at = hazard.card->at;
        told.readBy = markedNameOf(sources.people, hazard.card->installer);
        if (const auto &named = card->namedByOffice)
            told.namedByOffice =
                QString("%1, by word of %2%3; not thereby safe to touch")
                    .arg(named->what, named->by,
                         named->volts ? QString(", %1 V").arg(*named->volts) : QString());
        const Fact &read = *hazard.card;
        told.pair = !read.pair.isEmpty() ? read.pair
                    : hazard.isOfPair    ? sources.input.order.pair
                                         : QString("another pair at the premises");
        told.order = read.order == sources.input.order.number ? QString() : read.order;
        told.state =
            hazard.closing ? "It was said how it was closed; a clear card is still to come."
            : hazard.refused && hazard.isDisputed ? hazard.whyRefused()
            : hazard.refused
                ? "A closing was recorded that does not count: contact with power is closed by a "
                  "registered supervisor, or with the utility's reference."
                : "Nobody has said yet that it is closed.";
        if (const Fact *referral = hazardReferral(evidence.facts(), read.at))
            told.told = referralOf(*referral, sources.people);
        handoff.hazards.push_back(told);
    }
    for (const Hazard &hazard : evidence.cards().hazards())
        if (hazard.isClosed()) {
            const auto *closed = hazard.closing->as<HazardClosedFact>();
            handoff.closedHazards << hazardStory(hazard, closed->by,
                                                 closed->reference.value_or(QString()));
        }
}

void addReferral(Handoff &handoff, const HandoffSources &sources)
{
    for (const Fact *fact : standingFacts(sources.input.facts))
        if (fact->as<ReferredFact>())
            handoff.referred = referralOf(*fact, sources.people);
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
    return outcome ? toText(*outcome).replace('_', ' ') : QString();
}

QString Handoff::whatFailed() const
{
    if (where.startsWith(failed, Qt::CaseInsensitive))
        return failed + where.mid(failed.size());
    return where.isEmpty() ? failed : failed + ", " + where;
}

Handoff makeHandoff(const HandoffSources &sources)
{
    const ServiceOrder &order = sources.input.order;
    Handoff handoff;
    handoff.order = order.number;
    handoff.customer = order.customer;
    handoff.contact = order.contact;
    handoff.premises = order.premises;
    handoff.circuit = order.circuit;
    handoff.office = sources.office.name;
    handoff.pair = order.pair;
    QStringList numbers, access{order.accessNotes, order.terminalLocation};
    const NumberKey key(order);
    for (const OrderedTerminal &terminal : order.terminals)
        if (const QString dn = key.shown(terminal.dn); !dn.isEmpty() && !numbers.contains(dn))
            numbers << dn;
    handoff.numbers = numbers.join(", ");
    access.removeAll(QString());
    handoff.access = access.join("; ");
    handoff.trouble = troubleText(order);
    const ProtocolVariant *variant = findVariant(order.variant);
    handoff.variant = variant ? variant->name : order.variant;
    addHazards(handoff, sources);
    if (const CriterionResult *criterion = subjectOf(sources.decision)) {
        handoff.criterion = criterion->key;
        handoff.failed = criterion->name.english();
        handoff.isMissing = criterion->outcome == CriterionOutcome::Missing;
        handoff.reason = inGroups(*criterion, criterion->reason);
        explain(handoff, sources, *criterion);
    }
    if (const Step *step = nextStep(sources.steps))
        handoff.next = (step->next.isEmpty() ? step->because : step->next).english();
    addReadings(handoff, sources.decision);
    addLayers(handoff, sources);
    addChanges(handoff, sources.input);
    handoff.recordedBy = markedNameOf(sources.people, handoff.recordedBy);
    addReferral(handoff, sources);
    return handoff;
}

} // namespace loopwright
