#include "app/actions/CertificateSetCover.h"

#include "app/actions/VisitsElsewhere.h"
#include "core/acceptance/JobLine.h"
#include "core/base/PaperTime.h"
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

/// "4 March 2026, 08:02 to 09:40 (UTC-06:00), Kim Carver: no access"
Result<QString> visitText(Records &records, const Visit &visit)
{
    LOOPWRIGHT_ASSIGN(const auto person, PersonStore(records.database()).find(visit.installer));
    QString text =
        (visit.left ? paperTimes(visit.arrived, *visit.left) : "from " + paperTime(visit.arrived)) +
        ", " + (person ? person->name : visit.installer);
    if (visit.result)
        text += ": " + toText(*visit.result).replace(u'_', u' ');
    return text;
}

/// Every visit to the premises that is recorded; of a day of work without one, the day.
Result<QStringList> visitTexts(Records &records, const Certifying &about)
{
    QStringList texts;
    const auto work = workOn(about.input.facts);
    for (const LastWork &day : work) {
        LOOPWRIGHT_ASSIGN(
            const auto visits,
            visitsToPremises(records.database(), about.stored.order, about.input.facts, day.day));
        bool told = false;
        for (const Visit &visit : visits) {
            LOOPWRIGHT_ASSIGN(const auto text, visitText(records, visit));
            told |= LastWork{visit.installer, visit.arrived.localDate()} == day;
            if (!texts.contains(text))
                texts << text;
        }
        if (told)
            continue;
        LOOPWRIGHT_ASSIGN(const auto person, PersonStore(records.database()).find(day.installer));
        const QString text = paperDay(day.day) + ", " + (person ? person->name : day.installer);
        if (!texts.contains(text))
            texts << text;
    }
    return texts;
}

} // namespace

Result<void> putHead(Records &records, const Certifying &about, CoverContent &cover)
{
    const ServiceOrder &order = about.stored.order;
    LOOPWRIGHT_ASSIGN(const auto guard, guardOf(records.database(), order.office));
    LOOPWRIGHT_ASSIGN(auto visits, visitTexts(records, about));
    cover.customer = guard.coverTyped(order.customer);
    cover.premises = guard.coverTyped(order.premises);
    cover.visits = std::move(visits);
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
        cover.tested = paperDays(QDate::fromString(issued.content.testedFrom, Qt::ISODate),
                                 QDate::fromString(issued.content.testedTo, Qt::ISODate));
    } else {
        cover.stage = stageName(line.stage);
        // In the customer's words: the trade's may name the circuit of somebody else.
        const CriterionResult *open = about.decision.firstOpen();
        cover.reason = open ? plainMeaning(*open) : guard.cover(line.why);
    }
    return cover;
}

} // namespace loopwright
