#include "core/certificate/MakeCertificate.h"

#include "core/certificate/PlainWords.h"
#include "core/identifiers/Tei.h"
#include "core/order/OrderIdentifiers.h"

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
                                   {OrderType::RecordOnly, "correction of the record"}};

QString typeName(OrderType type)
{
    for (const NamedType &entry : typeNames)
        if (entry.type == type)
            return QString::fromLatin1(entry.name);
    return {};
}

QString servicesInWords(Services services)
{
    QStringList words;
    for (const Service service : each(services))
        words << toText(service);
    return words.join(", ");
}

QString channelText(const ServiceOrder &order, Services services)
{
    if (!services)
        return "not ordered";
    QString text = servicesInWords(services);
    if (services.testFlag(Service::Data))
        text += QString(" at %1 kbit/s").arg(order.dataRate / 1000);
    return text;
}

CertificateTerminal terminalLine(const ServiceOrder &order, const ProtocolVariant *variant,
                                 const OrderedTerminal &terminal)
{
    CertificateTerminal line{terminal.number,
                             terminal.dn,
                             terminal.dn,
                             terminal.spid,
                             terminal.spid,
                             terminal.tei,
                             servicesInWords(order.servicesOf(terminal))};
    if (!variant)
        return line;
    const NumberHome home = homeOf(*variant, identifiersOf(order));
    const DirectoryNumber number = checkDirectoryNumber(*variant, terminal.dn, home).number;
    if (!number.isNull()) {
        line.dn = number.shown();
        line.dnGrouped = number.shown().replace(u'-', u' ');
    }
    const SpidCheck spid = checkSpid(*variant, terminal.spid, terminal.dn);
    if (!spid.digits.isEmpty()) {
        line.spid = spid.digits;
        line.spidGrouped = spid.grouped();
    }
    if (!variant->hasLayer2())
        line.tei.clear();
    else if (isAutomaticTei(terminal.tei))
        line.tei = "automatic";
    return line;
}

/// Facts that the decision counts, oldest first.
std::vector<const Fact *> countedFacts(const CertificateSources &sources)
{
    QSet<QString> ids;
    for (const CriterionResult &criterion : sources.decision.criteria)
        for (const QString &id : criterion.evidence)
            ids.insert(id);
    std::vector<const Fact *> counted;
    for (const Fact &fact : sources.facts)
        if (ids.contains(fact.id))
            counted.push_back(&fact);
    std::stable_sort(counted.begin(), counted.end(),
                     [](const Fact *a, const Fact *b) { return a->at < b->at; });
    return counted;
}

QString personName(const QList<Person> &people, const QString &key)
{
    for (const Person &person : people)
        if (person.key == key && !person.name.isEmpty())
            return person.name;
    return key;
}

/// With the calibration that held on the day it was used last.
CertificateInstrument instrumentLine(const QList<Instrument> &registered, const QString &key,
                                     QDate day)
{
    CertificateInstrument line{key, {}, {}, {}};
    for (const Instrument &instrument : registered) {
        if (instrument.key != key)
            continue;
        line.kind = instrument.kind;
        line.serial = instrument.serial;
        for (const Calibration &calibration : instrument.calibrations)
            if (calibration.holdsOn(day))
                line.calibration = calibration;
    }
    return line;
}

void addEvidence(CertificateContent &content, const CertificateSources &sources)
{
    QMap<QString, QDate> lastUse;
    for (const Fact *fact : countedFacts(sources)) {
        const QDate day = fact->at.localDate();
        if (content.testedFrom.isEmpty())
            content.testedFrom = day.toString(dayFormat);
        content.testedTo = day.toString(dayFormat);
        const QString installer = personName(sources.people, fact->installer);
        if (!installer.isEmpty() && !content.installers.contains(installer))
            content.installers << installer;
        if (!fact->instrument.isEmpty())
            lastUse.insert(fact->instrument, day);
    }
    for (auto it = lastUse.begin(); it != lastUse.end(); ++it)
        content.instruments.push_back(instrumentLine(sources.instruments, it.key(), it.value()));
}

/// With the person's name, and what was typed covered as such.
StruckOut covered(const StruckOut &struckOut, const CertificateSources &sources,
                  const NumberGuard &guard)
{
    return {struckOut.began, personName(sources.people, struckOut.by),
            guard.coverTyped(struckOut.because)};
}

CertificateRun runLine(const RunMade &made, const CertificateSources &sources,
                       const NumberGuard &guard)
{
    RunMade told = made;
    if (made.struckOut)
        told.struckOut = covered(*made.struckOut, sources, guard);
    return {guard.cover(told.text), guard.cover(told.resultInWords()), told.struckOut.has_value(),
            told.outcome};
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
                              criterion.name,
                              criterion.station,
                              criterion.outcome,
                              guard.cover(criterion.measuredText),
                              criterion.limitText,
                              criterion.source,
                              guard.cover(plainMeaning(criterion)),
                              reasonLine(criterion, sources, guard),
                              {}};
    if (criterion.excepted)
        line.excepted = CertificateException{personName(sources.people, criterion.excepted->by),
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
    for (const RunMade &made : decision.runs)
        content.runs.push_back(runLine(made, sources, guard));
    content.proves = guard.cover(decision.proves);
    content.provesPlainly = plainProof(decision.proven);
    content.proven = decision.proven;
    for (const QString &note : decision.notes)
        content.notes << guard.cover(note);
}

void addOrder(CertificateContent &content, const CertificateSources &sources,
              const NumberGuard &guard)
{
    const ServiceOrder &order = sources.order;
    content.order = order.number;
    content.orderType = typeName(order.type);
    content.customer = guard.cover(order.customer);
    content.premises = guard.cover(order.premises);
    content.circuit = order.circuit;
    content.office = guard.cover(sources.office.name);
    content.kind = order.kind;
    content.variant = order.variant;
    const ProtocolVariant *variant = findVariant(order.variant);
    content.variantName = variant ? variant->name : order.variant;
    content.service = serviceLines(order);
    content.terminals = terminalLines(order);
    for (const CertificateLine &line : terminalSettings(order))
        content.settings.push_back({line.name, guard.coverTyped(line.value)});
}

} // namespace

std::vector<CertificateLine> serviceLines(const ServiceOrder &order)
{
    if (order.kind == LineKind::Analog)
        return {{"Line", channelText(order, order.bServices())}};
    std::vector<CertificateLine> lines{{"B1", channelText(order, order.b1)},
                                       {"B2", channelText(order, order.b2)}};
    if (order.d)
        lines.push_back({"D", channelText(order, order.d)});
    lines.push_back({"NT", order.ntSupplied ? "supplied with the line" : "customer's own"});
    return lines;
}

std::vector<CertificateTerminal> terminalLines(const ServiceOrder &order)
{
    const ProtocolVariant *variant = findVariant(order.variant);
    std::vector<CertificateTerminal> lines;
    for (const OrderedTerminal &terminal : order.terminals)
        lines.push_back(terminalLine(order, variant, terminal));
    return lines;
}

std::vector<CertificateLine> terminalSettings(const ServiceOrder &order)
{
    std::vector<CertificateLine> lines;
    if (const ProtocolVariant *variant = findVariant(order.variant))
        for (const TerminalSetting &setting : variant->settings)
            lines.push_back({setting.name, setting.value});
    if (order.bServices().testFlag(Service::Data))
        lines.push_back({"Data rate", QString("%1 kbit/s").arg(order.dataRate / 1000)});
    if (!order.dialPrefix.isEmpty())
        lines.push_back({"Prefix to dial", order.dialPrefix});
    return lines;
}

Result<CertificateContent> makeCertificate(const CertificateSources &sources,
                                           const NumberGuard &guard)
{
    const OrderOutcome outcome = sources.decision.outcome;
    if (outcome != OrderOutcome::Accepted && outcome != OrderOutcome::AcceptedWithException)
        return failure(ErrorCode::Refused,
                       QString("order %1 is %2: a certificate is issued for an accepted order")
                           .arg(sources.order.number, toText(outcome).replace(u'_', u' ')));
    CertificateContent content;
    content.number = sources.number;
    content.issuedAt = sources.issuedAt;
    addOrder(content, sources, guard);
    addDecision(content, sources, guard);
    addEvidence(content, sources);
    content.signatures = sources.signatures;
    return content;
}

} // namespace loopwright
