#include "core/certificate/MakeCertificate.h"

#include "core/acceptance/Evidence.h"
#include "core/certificate/ContentParts.h"
#include "core/certificate/PlainWords.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr auto dayFormat = "yyyy-MM-dd";

struct NamedType
{
    OrderType type;
    const char *name;
};
constexpr NamedType typeNames[] = {{OrderType::New, "new line"},
                                   {OrderType::Change, "change of a line"},
                                   {OrderType::Move, "move of a line"},
                                   {OrderType::Disconnect, "disconnection"},
                                   {OrderType::RecordOnly, "correction of the record"},
                                   {OrderType::Repair, "repair of a line"}};

QString typeName(OrderType type)
{
    for (const NamedType &entry : typeNames)
        if (entry.type == type)
            return QString::fromLatin1(entry.name);
    return {};
}

/// Facts that the decision counts, oldest first.
std::vector<const Fact *> countedFacts(const CertificateSources &sources)
{
    QSet<QString> ids;
    for (const CriterionResult &criterion : sources.decision.criteria)
        for (const QString &id : criterion.evidence)
            ids.insert(id);
    std::vector<const Fact *> counted;
    for (const Fact &fact : sources.input.facts)
        if (ids.contains(fact.id))
            counted.push_back(&fact);
    std::stable_sort(counted.begin(), counted.end(),
                     [](const Fact *a, const Fact *b) { return a->at < b->at; });
    return counted;
}

/// With the calibration that held on the day it was used last, else with the newest before that.
CertificateInstrument instrumentLine(const QList<Instrument> &registered, const QString &key,
                                     QDate day)
{
    CertificateInstrument line{key, {}, {}};
    for (const Instrument &instrument : registered) {
        if (instrument.key != key)
            continue;
        line.kind = instrument.kind;
        line.serial = instrument.serial;
        line.asLabelled = instrument.asLabelled;
        for (const Calibration &calibration : instrument.calibrations) {
            const bool holds = calibration.holdsOn(day);
            const bool newer = !line.calibration || calibration.on > line.calibration->on;
            if (holds ? !line.held || newer : !line.held && newer && calibration.on <= day)
                line.calibration = calibration;
            line.held = line.held || holds;
        }
    }
    return line;
}

void addEvidence(CertificateContent &content, const CertificateSources &sources)
{
    const Evidence evidence(sources.input, sources.limits);
    QMap<QString, QDate> lastUse;
    for (const Fact *fact : countedFacts(sources)) {
        const QDate day = fact->at.localDate();
        if (content.testedFrom.isEmpty())
            content.testedFrom = day.toString(dayFormat);
        content.testedTo = day.toString(dayFormat);
        const QString installer = nameOf(sources.people, fact->installer);
        if (!installer.isEmpty() && !content.installers.contains(installer))
            content.installers << installer;
        if (const QString instrument = evidence.instrumentOf(*fact); !instrument.isEmpty())
            lastUse.insert(instrument, day);
    }
    for (auto it = lastUse.begin(); it != lastUse.end(); ++it)
        content.instruments.push_back(instrumentLine(sources.instruments, it.key(), it.value()));
}

/// With the person's name, and what was typed covered as such.
StruckOut covered(const StruckOut &struckOut, const CertificateSources &sources,
                  const NumberGuard &guard)
{
    return {struckOut.began, nameOf(sources.people, struckOut.by),
            guard.coverTyped(struckOut.because)};
}

QString reasonLine(const CriterionResult &criterion, const CertificateSources &sources,
                   const NumberGuard &guard)
{
    QString reason = criterion.reason.english();
    for (const RunMade &made : sources.decision.runs)
        if (made.struckOut)
            reason.replace(made.struckOut->sentence(),
                           covered(*made.struckOut, sources, guard).sentence());
    return guard.cover(reason);
}

CertificateCriterion criterionLine(const CriterionResult &criterion,
                                   const CertificateSources &sources, const NumberGuard &guard)
{
    CertificateCriterion line{criterion.key,
                              criterion.name.english(),
                              criterion.station,
                              criterion.outcome,
                              guard.cover(criterion.measuredText.english()),
                              criterion.limitText.english(),
                              criterion.source,
                              guard.cover(plainMeaning(criterion)),
                              reasonLine(criterion, sources, guard),
                              criterion.grade ? toText(*criterion.grade) : QString(),
                              readingsOf(criterion, sources),
                              {}};
    if (criterion.excepted)
        line.excepted = CertificateException{nameOf(sources.people, criterion.excepted->by),
                                             guard.coverTyped(criterion.excepted->because),
                                             criterion.excepted->at};
    return line;
}

void addDecision(CertificateContent &content, const CertificateSources &sources,
                 const NumberGuard &guard)
{
    const Decision &decision = sources.decision;
    content.outcome = decision.outcome;
    content.decision = decision.id;
    content.limitSet = decision.limitSet;
    for (const CriterionResult &criterion : decision.criteria)
        content.criteria.push_back(criterionLine(criterion, sources, guard));
    const CriterionResult *run = decision.criterion("run");
    content.runNeeded = run && run->outcome != CriterionOutcome::NotNeeded;
    content.runs = runLines(sources, guard);
    content.decisionRule =
        "A figure is met when it is within the limit as read; the uncertainty of "
        "the instrument is stated where it is known and is not added to it.";
    content.proves = guard.cover(decision.proves.english());
    content.provesPlainly = plainProof(decision.proven);
    content.proven = decision.proven;
    for (const QString &note : decision.notesInEnglish())
        content.notes << inPlainWords(note);
}

void addOrder(CertificateContent &content, const CertificateSources &sources,
              const NumberGuard &guard)
{
    const ServiceOrder &order = sources.input.order;
    content.order = order.number;
    content.orderType = typeName(order.type);
    content.customer = guard.coverTyped(order.customer);
    content.premises = guard.coverTyped(order.premises);
    content.contact = guard.coverTyped(order.contact);
    content.circuit = order.circuit;
    content.office = sources.office.name;
    content.kind = order.kind;
    content.variant = order.variant;
    const ProtocolVariant *variant = findVariant(order.variant);
    content.variantName = variant ? variant->name : order.variant;
    content.service = serviceLines(order);
    content.terminals = terminalLines(order);
    for (const CertificateLine &line : terminalSettings(order))
        content.settings.push_back({line.name, guard.coverTyped(line.value)});
    content.delivery = deliveryOf(sources);
    content.issuer = sources.issuer.value_or(Issuer());
    content.call = callOf(order, sources.office, sources.issuer);
}

void addNotes(CertificateContent &content, const CertificateSources &sources,
              const NumberGuard &guard)
{
    ServiceOrder safe = sources.input.order;
    safe.premises = guard.coverTyped(safe.premises);
    safe.ntPower = guard.coverTyped(safe.ntPower);
    content.hazards = hazardLines(sources, guard);
    content.late = lateLines(sources);
    content.notCovered = notCoveredLines(sources);
    content.mustKnow = mustKnowLines(safe);
    for (Signature signature : sources.signatures) {
        signature.name = guard.coverTyped(signature.name);
        content.signatures.push_back(signature);
    }
    if (!sources.replaces)
        return;
    CertificateReplaced replaced{sources.replaces->number, sources.replaces->issuedAt,
                                 sources.replacedBecause};
    replaced.because += changesBetween(*sources.replaces, content);
    for (QString &reason : replaced.because)
        reason = guard.coverTyped(reason);
    content.replaces = replaced;
}

/// Every text covered: whatever was joined to make one, no unpublished number is left in it.
QJsonValue coveredValue(const QJsonValue &value, const NumberGuard &guard)
{
    if (value.isString())
        return guard.cover(value.toString());
    if (value.isArray()) {
        QJsonArray array;
        for (const QJsonValue &each : value.toArray())
            array << coveredValue(each, guard);
        return array;
    }
    if (!value.isObject())
        return value;
    // The program's own, which may hold any digits.
    static const QStringList own{"certificate", "decision", "issued_at", "at"};
    QJsonObject object = value.toObject();
    for (auto it = object.begin(); it != object.end(); ++it)
        if (!own.contains(it.key()))
            *it = coveredValue(*it, guard);
    return object;
}

} // namespace

Result<CertificateContent> makeCertificate(const CertificateSources &sources,
                                           const NumberGuard &guard)
{
    const OrderOutcome outcome = sources.decision.outcome;
    if (!isAccepted(outcome))
        return failure(ErrorCode::Refused,
                       QString("order %1 is %2: a certificate is issued for an accepted order")
                           .arg(sources.input.order.number, toText(outcome).replace(u'_', u' ')));
    const std::vector<const Fact *> counted = countedFacts(sources);
    const bool installed =
        std::ranges::any_of(counted, [](const Fact *fact) { return !fact->installer.isEmpty(); });
    LOOPWRIGHT_TRY(checkForPaper(sources.input.order, installed));
    CertificateContent content;
    content.number = sources.number;
    content.issuedAt = sources.issuedAt;
    addOrder(content, sources, guard);
    addDecision(content, sources, guard);
    addEvidence(content, sources);
    addNotes(content, sources, guard);
    return CertificateContent::fromJson(coveredValue(content.toJson(), guard).toObject(),
                                        "certificate");
}

QStringList lacksForPaper(const ServiceOrder &order, bool installed)
{
    QStringList lacks;
    if (order.customer.isEmpty())
        lacks << "customer";
    if (order.premises.isEmpty())
        lacks << "premises";
    if (order.installer.isEmpty() && !installed)
        lacks << "installer";
    return lacks;
}

Result<void> checkForPaper(const ServiceOrder &order, bool installed)
{
    const QStringList lacks = lacksForPaper(order, installed);
    if (lacks.isEmpty())
        return {};
    return failure(ErrorCode::Refused,
                   QString("order %1 names no %2: a paper for a customer names customer, premises "
                           "and installer")
                       .arg(order.number, lacks.join(" and no ")));
}

Result<void> checkForPaper(const DecisionInput &input)
{
    return checkForPaper(input.order, std::ranges::any_of(input.facts, [](const Fact &fact) {
                             return !fact.installer.isEmpty();
                         }));
}

} // namespace loopwright
