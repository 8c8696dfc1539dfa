// All of an order.

#include "app/actions/Acceptance.h"
#include "app/actions/IssuePaper.h"
#include "app/actions/Issuing.h"
#include "app/actions/LimitSets.h"
#include "app/actions/Orders.h"
#include "app/actions/Register.h"
#include "app/actions/VisitsElsewhere.h"
#include "core/acceptance/JobLine.h"
#include "core/certificate/CertificateNumber.h"
#include "core/certificate/Slips.h"
#include "db/CertificateStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"
#include "db/OfficeStore.h"
#include "db/OrderStore.h"
#include "db/StationStore.h"

#include <QHash>

#include <algorithm>

namespace loopwright {

namespace {

/// `counting`: those that the decision knows; a void whose content is in doubt strikes nothing out.
std::vector<FactView> factViews(const std::vector<Fact> &facts, const std::vector<Fact> &counting)
{
    QHash<QString, const Fact *> voids;
    for (const Fact &fact : counting)
        if (const auto *voiding = fact.as<VoidFact>())
            voids.insert(voiding->fact, &fact);
    std::vector<FactView> views;
    for (const Fact &fact : facts) {
        FactView view{fact, {}, false, {}, {}};
        if (const Fact *voiding = voids.value(fact.id)) {
            view.voided = true;
            view.voidedBy = voiding->as<VoidFact>()->by;
            view.voidedBecause = voiding->as<VoidFact>()->because;
        }
        views.push_back(std::move(view));
    }
    std::stable_sort(views.begin(), views.end(),
                     [](const FactView &a, const FactView &b) { return a.fact.at < b.fact.at; });
    return views;
}

Result<std::vector<CertificateView>> certificateViews(const Database &database,
                                                      const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto stored, CertificateStore(database).ofOrder(order));
    std::vector<CertificateView> views;
    for (const StoredCertificate &certificate : stored) {
        LOOPWRIGHT_ASSIGN(const auto issues,
                          CertificateStore(database).issuesOf(certificate.number));
        LOOPWRIGHT_ASSIGN(const auto later, laterSignatures(database, order, certificate.number));
        const auto content =
            CertificateContent::fromJson(certificate.content, "certificate " + certificate.number);
        Signatures signatures = content ? content->signatures : Signatures();
        signatures.insert(signatures.end(), later.begin(), later.end());
        views.push_back({certificate.number, certificate.digest, shortCode(certificate.digest),
                         certificate.at, std::max(0, int(issues.size()) - 1),
                         std::move(signatures)});
    }
    return views;
}

/// Where the order is, what came from elsewhere, and what stations say otherwise.
Result<void> addStations(Records &records, OrderView &view)
{
    const Database &database = records.database();
    LOOPWRIGHT_ASSIGN(auto out, StationStore(database).outAt(view.order.number));
    view.out = std::move(out);
    LOOPWRIGHT_ASSIGN(const auto origins, ForeignStore(database).originsOf(view.order.number));
    for (FactView &fact : view.facts) {
        const auto origin = std::ranges::find(origins, fact.fact.id, &FactOrigin::fact);
        if (origin != origins.end())
            fact.station = origin->name.isEmpty() ? origin->station : origin->name;
    }
    LOOPWRIGHT_ASSIGN(auto conflicts, stationConflicts(records, view.order.number));
    view.conflicts = std::move(conflicts);
    return {};
}

/// The other lines at the premises, and the visits that they share with this one.
Result<void> addPremises(Records &records, OrderView &view)
{
    LOOPWRIGHT_ASSIGN(auto rows, rowsAtPremises(records, view.order.premises));
    std::erase_if(rows, [&view](const BoardRow &row) {
        return row.order == view.order.number || row.status != OrderStatus::Open;
    });
    view.alsoHere = std::move(rows);
    LOOPWRIGHT_ASSIGN(auto visits, visitsToPremises(records.database(), view.order,
                                                    view.input.facts, records.now().localDate()));
    view.visits = std::move(visits);
    return {};
}

Result<void> addRegister(Records &records, OrderView &view)
{
    const Database &database = records.database();
    LOOPWRIGHT_ASSIGN(const auto office, OfficeStore(database).find(view.order.office));
    view.office = office.value_or(ServingOffice{view.order.office, {}, {}});
    LOOPWRIGHT_ASSIGN(auto lines, OfficeStore(database).testLines(view.order.office));
    view.testLines = std::move(lines);
    LOOPWRIGHT_ASSIGN(view.people, people(records));
    view.installerName = nameOf(view.people, view.order.installer);
    return {};
}

} // namespace

Result<OrderView> judgedOrder(Records &records, const StoredOrder &stored)
{
    const Database &database = records.database();
    OrderView view;
    view.order = stored.order;
    view.status = stored.status;
    view.held = stored.held;
    LOOPWRIGHT_ASSIGN(auto input, evidenceOf(records, stored));
    view.input = std::move(input);
    LOOPWRIGHT_ASSIGN(view.limits, limitSet(records, view.input.limitSet));
    view.judged = judge(view.input, view.limits);
    view.decision = view.judged.decision;
    view.now = records.now();
    view.facts = factViews(view.input.facts, view.input.facts);
    if (!view.input.setAside.empty()) { // some may be no part of the decision
        LOOPWRIGHT_ASSIGN(const auto all, FactStore(database).ofOrder(view.order.number));
        view.facts = factViews(all, view.input.facts);
    }
    LOOPWRIGHT_ASSIGN(auto events, EventStore(database).ofOrder(stored.order.number));
    view.events = std::move(events);
    LOOPWRIGHT_ASSIGN(auto certificates, certificateViews(database, stored.order.number));
    view.certificates = std::move(certificates);
    const bool finished = stored.status != OrderStatus::Open || !view.certificates.empty();
    view.stage = stageOf(view.decision, view.input, finished);
    return view;
}

Result<OrderView> showOrder(Records &records, const QString &number)
{
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).get(number));
    LOOPWRIGHT_ASSIGN(auto view, judgedOrder(records, stored));
    LOOPWRIGHT_TRY(addRegister(records, view));
    LOOPWRIGHT_TRY(addPremises(records, view));
    LOOPWRIGHT_TRY(addStations(records, view));
    return view;
}

namespace {

QJsonArray terminalsJson(const ServiceOrder &order)
{
    QJsonArray terminals;
    for (const OrderedTerminal &terminal : order.terminals)
        terminals << QJsonObject{{"terminal", terminal.number},
                                 {"dn", terminal.dn},
                                 {"spid", terminal.spid},
                                 {"tei", terminal.tei},
                                 {"services", servicesText(order.servicesOf(terminal))}};
    return terminals;
}

/// What may be entered for a field of a step; null if a bound says nothing.
QJsonObject fieldJson(const Step &step, const QString &key)
{
    const auto *found = findField(fieldsOf(*step.need.kind), key);
    FactField field = found ? *found : FactField{""};
    if (field.type == FieldType::Value)
        field =
            valueFieldOf(*fromText<AnalogQuantity>(step.need.preset.value("quantity").toString()));
    const bool bounded = field.type == FieldType::Number || field.type == FieldType::Whole;
    QJsonArray words;
    if (field.words)
        words = QJsonArray::fromStringList(field.words());
    return {{"key", key},
            {"type", toText(field.type)},
            {"unit", QString::fromUtf8(field.unit)},
            {"minimum", bounded ? QJsonValue(field.minimum) : QJsonValue()},
            {"maximum", bounded ? QJsonValue(field.maximum) : QJsonValue()},
            {"words", words},
            {"required", !step.need.optional.contains(key)}};
}

QJsonObject stepJson(const Step &step)
{
    QJsonArray fields, before;
    for (const QString &key : step.need.fields)
        fields << fieldJson(step, key);
    for (const Discounted &each : step.before)
        before << QJsonObject{{"fact", each.fact->id}, {"why", each.sentence.english()}};
    return {{"need", step.need.key},
            {"criterion", step.need.criterion},
            {"station", toText(step.need.station)},
            {"group", toText(step.need.group)},
            {"label", step.need.label.english()},
            {"hint", step.need.hint.english()},
            {"kind", step.need.kind ? QJsonValue(toText(*step.need.kind)) : QJsonValue()},
            {"preset", step.need.preset},
            {"fields", fields},
            {"after", QJsonArray::fromStringList(step.need.after)},
            {"before", before},
            {"state", toText(step.state)},
            {"counts", step.counts ? QJsonValue(step.counts->id) : QJsonValue()},
            {"because", step.because.english()},
            {"next", step.next.english()}};
}

/// Without the offers: nobody needs them.
QJsonArray planJson(const OrderView &view)
{
    QJsonArray list;
    for (const Step &step : stepsOf(view, {view.now, {}}))
        if (!step.need.isOffer())
            list << stepJson(step);
    return list;
}

QJsonObject factJson(const FactView &fact, const QList<Person> &people)
{
    QJsonObject object = fact.fact.toJson();
    if (!fact.fact.installer.isEmpty())
        object.insert("installer_registered", isRegistered(people, fact.fact.installer));
    object.insert("station", fact.station.isEmpty() ? QJsonValue() : QJsonValue(fact.station));
    object.insert("voided", fact.voided);
    if (fact.voided) {
        object.insert("voided_by", fact.voidedBy);
        object.insert("voided_because", fact.voidedBecause);
    }
    return object;
}

} // namespace

std::vector<Step> stepsOf(const OrderView &view, Situation situation)
{
    situation.orderIsOpen = view.status == OrderStatus::Open;
    return plan(view.input, view.limits, view.judged, situation);
}

Text nextSentenceOf(const OrderView &view)
{
    return nextSentence(stepsOf(view, {view.now, {}}), view.decision, view.stage);
}

QJsonObject OrderView::toJson() const
{
    QJsonArray evidence, happened, issued, here, visited;
    QJsonArray vans, disputed;
    for (const OutAt &each : out)
        vans << each.toJson();
    for (const ShownConflict &each : conflicts)
        disputed << each.toJson();
    for (const BoardRow &row : alsoHere)
        here << row.toJson(now.localDate());
    for (const Visit &visit : visits)
        visited << visit.toJson();
    for (const FactView &fact : facts)
        evidence << factJson(fact, people);
    for (const Event &event : events)
        happened << event.toJson();
    for (const CertificateView &certificate : certificates)
        issued << QJsonObject{{"certificate", certificate.number},
                              {"digest", certificate.digest},
                              {"code", certificate.code},
                              {"issued_at", certificate.issuedAt.text()},
                              {"copies", certificate.copies}};
    return {{"order", order.toJson()},
            {"order_number", order.number},
            {"completion_number",
             isAccepted(decision.outcome) ? QJsonValue(completionNumber(decision)) : QJsonValue()},
            {"status", toText(status)},
            {"held", held},
            {"stage", toText(stage)},
            {"circuit", QJsonObject{{"circuit_number", order.circuit},
                                    {"kind", toText(order.kind)},
                                    {"office", order.office},
                                    {"office_name", office.name},
                                    {"protocol_variant", order.variant},
                                    {"pair", order.pair}}},
            {"terminals", terminalsJson(order)},
            {"facts", evidence},
            {"decision", decision.toJson()},
            {"plan", planJson(*this)},
            {"events", happened},
            {"certificates", issued},
            {"also_here", here},
            {"out", vans},
            {"conflicts", disputed},
            {"visits", visited}};
}

} // namespace loopwright
