#include "app/actions/HazardRegister.h"

#include "app/actions/Acceptance.h"
#include "app/actions/LimitSets.h"
#include "app/actions/Register.h"
#include "core/acceptance/Evidence.h"
#include "core/acceptance/Referral.h"
#include "core/base/PaperTime.h"
#include "core/office/Office.h"
#include "db/HazardStore.h"
#include "db/OrderStore.h"

#include <algorithm>

namespace loopwright {

namespace {

QString stateOf(const Hazard &hazard, const QList<Person> &people)
{
    if (hazard.closing) {
        const auto *closing = hazard.closing->as<HazardClosedFact>();
        QString how =
            QString("%1, by word of %2")
                .arg(toText(closing->source).replace(u'_', u' '), nameOf(people, closing->by));
        if (closing->reference)
            how += ", reference " + *closing->reference;
        how += ", " + paperTime(hazard.closing->at);
        return hazard.isClosed()
                   ? QString("Closed: %1; clear card of %2.").arg(how, paperTime(hazard.clear->at))
                   : QString("Said to be closed: %1. A clear card is still to come.").arg(how);
    }
    if (hazard.refused)
        return "Open. " + QString::fromLatin1(hazard.whyRefused());
    return "Open: nobody has said yet how it was closed.";
}

RegisteredHazard registered(const ServiceOrder &order, const Hazard &hazard,
                            const QList<Person> &people)
{
    const auto *card = hazard.card->as<SafetyFact>();
    RegisteredHazard row;
    row.card = hazard.card->id;
    row.order = order.number;
    row.circuit = order.circuit;
    row.office = order.office;
    row.premises = order.premises;
    row.customer = order.customer;
    row.pair = hazard.card->pair.isEmpty() ? order.pair : hazard.card->pair;
    row.place = card->place.value_or(QString());
    row.wet = card->wet ? (*card->wet ? "wet" : "dry") : "";
    row.volts = hazardVolts(hazard);
    if (const auto &named = card->namedByOffice)
        row.volts << QString("named by %1: %2").arg(named->by, named->what);
    row.readAt = hazard.card->at;
    row.readBy = nameOf(people, hazard.card->installer);
    row.state = stateOf(hazard, people);
    row.isOpen = !hazard.isClosed();
    return row;
}

/// To whom the job was handed on since the hazard was read, by whom, and under which reference.
void addTold(RegisteredHazard &row, const Evidence &evidence, const QList<Person> &people)
{
    const Fact *referral = hazardReferral(evidence.facts(), row.readAt);
    if (!referral)
        return;
    const auto *referred = referral->as<ReferredFact>();
    row.told = referred->to;
    row.toldReference = referred->reference.value_or(QString());
    row.toldBy = nameOf(people, referral->installer);
    row.toldAt = referral->at;
}

/// The orders that hold a hazard, with those of which a van knows by the office alone: their
/// number, office and pair.
Result<std::vector<StoredOrder>> ordersOfHazards(const Database &database)
{
    std::vector<StoredOrder> orders;
    LOOPWRIGHT_ASSIGN(const auto here, HazardStore(database).orders());
    for (const QString &number : here) {
        LOOPWRIGHT_ASSIGN(auto stored, OrderStore(database).get(number));
        orders.push_back(std::move(stored));
    }
    LOOPWRIGHT_ASSIGN(const auto elsewhere, HazardStore(database).toldElsewhere());
    for (const QString &number : elsewhere) {
        LOOPWRIGHT_ASSIGN(const auto told, HazardStore(database).told(number));
        StoredOrder known;
        known.order.number = number;
        known.order.office = told->office;
        known.order.pair = told->pairs.value(0);
        orders.push_back(std::move(known));
    }
    return orders;
}

} // namespace

Result<std::vector<RegisteredHazard>> hazardRegister(Records &records, bool openOnly,
                                                     const Progress &progress)
{
    const Database &database = records.database();
    LOOPWRIGHT_ASSIGN(const auto orders, ordersOfHazards(database));
    LOOPWRIGHT_ASSIGN(const auto registeredPeople, people(records));
    std::vector<RegisteredHazard> found;
    qint64 done = 0;
    for (const StoredOrder &stored : orders) {
        LOOPWRIGHT_ASSIGN(const auto input, evidenceOf(records, stored));
        LOOPWRIGHT_ASSIGN(const auto limits, limitSet(records, input.limitSet));
        const Evidence evidence(input, limits);
        // What was read for another order stands with that one.
        for (const Hazard &hazard : evidence.cards().hazards())
            if (hazard.card->order == stored.order.number && !(openOnly && hazard.isClosed())) {
                found.push_back(registered(stored.order, hazard, registeredPeople));
                addTold(found.back(), evidence, registeredPeople);
            }
        if (progress && !progress(++done, qint64(orders.size())))
            return failure(ErrorCode::Refused, "was cancelled");
    }
    std::ranges::stable_sort(found, [](const RegisteredHazard &a, const RegisteredHazard &b) {
        return a.isOpen != b.isOpen ? a.isOpen : b.readAt < a.readAt;
    });
    return found;
}

QJsonObject RegisteredHazard::toJson() const
{
    return {{"card", card},
            {"order_number", order},
            {"circuit_number", circuit},
            {"office", office},
            {"premises", premises},
            {"customer", customer},
            {"pair", pair},
            {"place", place},
            {"wet", wet},
            {"volts", QJsonArray::fromStringList(volts)},
            {"read_at", readAt.text()},
            {"read_by", readBy},
            {"told", told},
            {"told_reference", toldReference},
            {"told_by", toldBy},
            {"told_at", toldAt ? QJsonValue(toldAt->text()) : QJsonValue()},
            {"state", state},
            {"open", isOpen}};
}

} // namespace loopwright
