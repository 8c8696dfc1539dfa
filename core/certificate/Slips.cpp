#include "core/certificate/Slips.h"

#include "core/acceptance/Evidence.h"
#include "core/base/PaperTime.h"
#include "core/certificate/CertificateNumber.h"
#include "core/certificate/ContentParts.h"
#include "core/certificate/MakeCertificate.h"
#include "core/certificate/PlainWords.h"

namespace loopwright {

namespace {

/// Days of the facts made on site, and the names of who made them.
QString workText(const CertificateSources &sources)
{
    QDate first, last;
    QStringList names;
    for (const Fact *fact : standingFacts(sources.input.facts)) {
        if (!isMadeOnSite(*fact) && !fact->as<VisitFact>())
            continue;
        last = timeOf(*fact).localDate();
        first = first.isValid() ? first : last;
        const QString name = nameOf(sources.people, fact->installer);
        if (!name.isEmpty() && !names.contains(name))
            names << name;
    }
    if (!last.isValid())
        return {};
    return names.isEmpty() ? paperDays(first, last)
                           : paperDays(first, last) + ", by " + names.join(", ");
}

QString waitingInWords(WaitingOn what)
{
    switch (what) {
    case WaitingOn::Office:
        return "the serving office";
    case WaitingOn::Plant:
        return "the cable crew";
    case WaitingOn::Customer:
        return "you";
    case WaitingOn::Installer:
        return "an installer";
    case WaitingOn::PowerUtility:
        return "the power company";
    case WaitingOn::Weather:
        return "better weather";
    case WaitingOn::Permit:
        return "a permit";
    case WaitingOn::Other:
        break;
    }
    return "something else";
}

bool isHazardOpen(const CertificateSources &sources)
{
    const Evidence evidence(sources.input, sources.limits);
    return std::ranges::any_of(evidence.cards().hazards(),
                               [](const Hazard &hazard) { return !hazard.isClosed(); });
}

/// What was accepted although it is not met or not shown.
QStringList exceptionLines(const CertificateSources &sources, const NumberGuard &guard)
{
    QStringList lines;
    for (const CriterionResult &criterion : sources.decision.criteria)
        if (const auto &excepted = criterion.excepted) {
            const QString reason = criterion.reason.english();
            lines << QString("%1, %2: %3 Accepted by %4 on %5: “%6”")
                         .arg(
                             criterion.name.english(), plainOutcome(criterion.outcome),
                             guard.cover(criterion.key == u"run" ? groupedNumbers(reason) : reason),
                             nameOf(sources.people, excepted->by), paperTime(excepted->at),
                             guard.coverTyped(excepted->because));
        }
    return lines;
}

/// Rests on the pair itself, and not on numbers, papers or test sets.
bool isOfThePair(const CriterionResult &criterion)
{
    return criterion.key != u"identifiers" && criterion.key != u"instrument";
}

QStringList whatIsNext(const CertificateSources &sources, const NumberGuard &guard, bool isHeld)
{
    const ServiceOrder &order = sources.input.order;
    QStringList next;
    if (isHeld)
        next << "A dangerous voltage was read on the pair of wires. Leave the jack, the NT and "
                "the wires alone until you are told that it is gone.";
    const Fact *referral = nullptr;
    for (const Fact *fact : standingFacts(sources.input.facts))
        if (fact->as<ReferredFact>())
            referral = fact;
    if (referral) {
        const auto *referred = referral->as<ReferredFact>();
        QString text = QString("On %1 your order was handed on to: %2")
                           .arg(paperTime(referral->at), guard.coverTyped(referred->to));
        if (referred->reference)
            text += QString(", reference %1").arg(guard.coverTyped(*referred->reference));
        if (referred->waitingOn == WaitingOn::Customer)
            text += "; it waits for you: please call the number below";
        else if (referred->waitingOn)
            text += "; it waits for " + waitingInWords(*referred->waitingOn);
        next << text + '.';
    }
    if (order.dueDate.isValid() && order.dueDate > sources.issuedAt.localDate())
        next << QString(order.type == OrderType::Repair ? "The repair is due on %1%2."
                                                        : "The line is due on %1%2.")
                    .arg(paperDay(order.dueDate), order.appointment.isEmpty()
                                                      ? QString()
                                                      : ", " + guard.coverTyped(order.appointment));
    else
        next << "No day is fixed yet for the next visit.";
    return next;
}

} // namespace

Result<LeaveBehindSlip> leaveBehindSlip(const CertificateSources &sources, const NumberGuard &guard)
{
    const ServiceOrder &order = sources.input.order;
    LOOPWRIGHT_TRY(checkForPaper(sources.input));
    if (isAccepted(sources.decision.outcome))
        return failure(ErrorCode::Refused,
                       QString(order.type == OrderType::Repair
                                   ? "the line of order %1 works again: nothing is left behind"
                                   : "order %1 is accepted: it gets a certificate")
                           .arg(order.number));
    LeaveBehindSlip slip;
    slip.order = order.number;
    slip.customer = guard.coverTyped(order.customer);
    slip.premises = guard.coverTyped(order.premises);
    slip.circuit = order.circuit;
    slip.visited = workText(sources);
    slip.symptom = guard.coverTyped(order.symptom);
    const bool isHeld = isHazardOpen(sources);
    for (const CriterionResult &criterion : sources.decision.criteria) {
        // Of wires that nobody may touch no slip says that they are fit.
        if (isHeld && criterion.outcome == CriterionOutcome::Met && isOfThePair(criterion))
            continue;
        if (criterion.outcome == CriterionOutcome::Met)
            slip.done << guard.cover(plainMeaning(criterion));
        else if (isHeld && criterion.key == u"safety")
            slip.missing.prepend(guard.cover(plainMeaning(criterion)));
        else if (criterion.outcome != CriterionOutcome::NotNeeded)
            slip.missing << guard.cover(plainMeaning(criterion));
    }
    slip.hazards = hazardLines(sources, guard);
    slip.next = whatIsNext(sources, guard, isHeld);
    slip.call = callOf(order, sources.office, sources.issuer);
    slip.call.name = QString("order %1").arg(order.number);
    slip.issuer = sources.issuer.value_or(Issuer());
    return slip;
}

Result<CloseOutSlip> closeOutSlip(const CertificateSources &sources, const NumberGuard &guard)
{
    const ServiceOrder &order = sources.input.order;
    LOOPWRIGHT_TRY(checkForPaper(sources.input));
    if (!isAccepted(sources.decision.outcome)) {
        const CriterionResult *open = sources.decision.firstOpen();
        return failure(
            ErrorCode::Refused,
            QString("order %1 is not accepted%2")
                .arg(order.number, open ? ": " + open->sentence().english() : QString()));
    }
    CloseOutSlip slip;
    slip.order = order.number;
    slip.customer = guard.coverTyped(order.customer);
    slip.premises = guard.coverTyped(order.premises);
    slip.circuit = order.circuit;
    slip.office = sources.office.name;
    slip.completionNumber = completionNumber(sources.decision);
    slip.outcome =
        sources.decision.outcome == OrderOutcome::Accepted ? "Accepted" : "Accepted by exception";
    slip.tested = workText(sources);
    slip.desk = sources.office.telephone;
    for (const CriterionResult &criterion : sources.decision.criteria)
        for (CertificateReading &reading : readingsOf(criterion, sources)) {
            reading.value = guard.cover(reading.value);
            slip.readings.emplace_back(criterion.name.english(), reading);
        }
    slip.delivery = deliveryOf(sources);
    slip.hazards = hazardLines(sources, guard);
    slip.exceptions = exceptionLines(sources, guard);
    slip.terminals = terminalLines(order);
    return slip;
}

QString completionNumber(const Decision &decision)
{
    QJsonObject rests{{"order", decision.order}, {"outcome", toText(decision.outcome)}};
    for (const CriterionResult &criterion : decision.criteria) {
        QStringList evidence = criterion.evidence;
        evidence.sort();
        if (criterion.excepted)
            evidence << criterion.excepted->by << criterion.excepted->at.text();
        rests.insert(criterion.key, QJsonArray::fromStringList(evidence));
    }
    const quint64 value = digestOf(rests).left(12).toULongLong(nullptr, 16) % 100'000'000;
    const QString digits = QString("%1").arg(value, 8, 10, QChar('0'));
    return QString("%1 %2 %3")
        .arg(digits.left(4), digits.mid(4), mod97CheckDigits(digits).value_or(QString()));
}

} // namespace loopwright
