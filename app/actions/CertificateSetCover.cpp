#include "app/actions/CertificateSetCover.h"

#include "app/actions/EvidenceStore.h"
#include "app/print/SheetBuilder.h"
#include "core/acceptance/JobLine.h"
#include "core/certificate/NumberGuard.h"
#include "core/certificate/PlainWords.h"
#include "core/order/OrderIdentifiers.h"
#include "db/OfficeStore.h"
#include "db/PersonStore.h"

namespace loopwright {

namespace {

QString kindText(LineKind kind)
{
    return kind == LineKind::Bri ? QString("ISDN basic-rate line") : QString("Analog line");
}

QString numbersOf(const ServiceOrder &order)
{
    const NumberKey key(order);
    QStringList numbers;
    for (const OrderedTerminal &terminal : order.terminals)
        if (!terminal.dn.isEmpty())
            numbers << key.shown(terminal.dn);
    numbers.removeDuplicates();
    return numbers.join(", ");
}

/// "08:02 to 09:40", of the last visit of that installer on that day; empty if none is recorded.
QString hoursText(const std::vector<Visit> &visits, const LastWork &last)
{
    QString hours;
    for (const Visit &visit : visits)
        if (LastWork{visit.installer, visit.arrived.localDate()} == last)
            hours =
                visit.left
                    ? QString("%1 to %2").arg(visit.arrived.localClock(), visit.left->localClock())
                    : QString("from %1").arg(visit.arrived.localClock());
    return hours;
}

/// "4 March 2026, 08:02 to 09:40, Kim Carver"
Result<QString> visitText(Records &records, const Certifying &about)
{
    const auto work = workOn(about.input.facts);
    if (work.empty())
        return QString();
    const LastWork &last = work.back();
    LOOPWRIGHT_ASSIGN(const auto visits,
                      EvidenceStore(records.database())
                          .visitsTo(about.stored.order, about.input.facts, last.day));
    LOOPWRIGHT_ASSIGN(const auto person, PersonStore(records.database()).find(last.installer));
    QStringList parts{longDate(last.day), hoursText(visits, last),
                      person ? person->name : last.installer};
    parts.removeAll(QString());
    return parts.join(", ");
}

} // namespace

Result<void> putHead(Records &records, const Certifying &about, CoverContent &cover)
{
    const ServiceOrder &order = about.stored.order;
    LOOPWRIGHT_ASSIGN(const auto guard, guardOf(records.database(), order.office));
    LOOPWRIGHT_ASSIGN(auto visit, visitText(records, about));
    cover.customer = guard.cover(order.customer);
    cover.premises = guard.cover(order.premises);
    cover.visit = std::move(visit);
    return {};
}

Result<CoverLine> coverLine(Records &records, const SetLine &line, const Certifying &about,
                            const MadeIssue *made)
{
    LOOPWRIGHT_ASSIGN(const auto guard, guardOf(records.database(), about.stored.order.office));
    CoverLine cover;
    cover.order = line.order;
    cover.circuit = line.circuit;
    cover.kind = kindText(line.kind);
    cover.numbers = numbersOf(about.stored.order);
    cover.outcome = line.outcome;
    if (made) {
        const IssuedCertificate &issued = made->issued;
        cover.certificate = issued.number;
        cover.code = issued.code;
        cover.pages = issued.pages;
        cover.copy = issued.copy;
        cover.tested = longDates(issued.content.testedFrom, issued.content.testedTo);
    } else {
        cover.stage = stageName(line.stage);
        // In the customer's words: the trade's may name the circuit of somebody else.
        const CriterionResult *open = about.decision.firstOpen();
        cover.reason = open ? plainMeaning(*open) : guard.cover(line.why);
    }
    return cover;
}

} // namespace loopwright
