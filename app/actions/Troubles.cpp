#include "app/actions/Troubles.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Acting.h"
#include "app/actions/Events.h"
#include "app/actions/OrderEnd.h"
#include "app/actions/OrderIntake.h"
#include "app/actions/RecordCheck.h"
#include "app/actions/Register.h"
#include "core/acceptance/PairInForce.h"
#include "core/base/PaperTime.h"
#include "core/order/Claims.h"
#include "db/EventStore.h"
#include "db/FactStore.h"

#include <QHash>
#include <QJsonArray>

#include <algorithm>

namespace loopwright {

namespace {

/// What a repair does not take over of the order by which the circuit works.
constexpr const char *ownColumns[] = {
    "remarks",    "symptom",         "desk_test",      "appointment", "related_order",
    "waiting_on", "waiting_because", "first_due_date", "due_because", "installer",
    "crew"};

Result<Trouble> troubleOf(const Database &database, const StoredOrder &stored)
{
    const ServiceOrder &order = stored.order;
    Trouble trouble;
    trouble.order = order.number;
    trouble.circuit = order.circuit;
    trouble.customer = order.customer;
    trouble.premises = order.premises;
    trouble.installer = order.installer;
    trouble.symptom = order.symptom;
    trouble.deskTest = order.deskTest;
    trouble.status = stored.status;
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database).ofOrder(order.number));
    for (const Event &event : events) {
        if (event.kind == "order_taken") {
            trouble.opened = event.at;
            trouble.openedAs = event.sequence;
        }
        if (event.kind != "order_completed")
            continue;
        trouble.closed = event.at;
        trouble.closedAs = event.sequence;
        trouble.cause = fromText<ClearedWhat>(event.detail.value("cause").toString());
        trouble.found = event.detail.value("found").toString();
        trouble.cleared = event.detail.value("cleared").toString();
    }
    return trouble;
}

/// Marks those that repeat one: the last of the circuit that was closed when they were opened, by
/// the order in which it was recorded, for clocks may stand still.
void markRepeats(std::vector<Trouble> &list)
{
    QHash<QString, std::vector<const Trouble *>> closed; // by circuit
    for (const Trouble &trouble : list)
        if (trouble.closed)
            closed[trouble.circuit].push_back(&trouble);
    for (Trouble &trouble : list) {
        const Trouble *last = nullptr;
        for (const Trouble *other : closed.value(trouble.circuit))
            if (other->closedAs < trouble.openedAs && (!last || last->closedAs < other->closedAs))
                last = other;
        if (last && trouble.opened <= last->closed->plusSeconds(repeatDays * 86400.0))
            trouble.previous = last->order;
    }
}

Result<std::vector<Trouble>> troublesIn(Records &records, const std::vector<StoredOrder> &orders)
{
    std::vector<Trouble> list;
    for (const StoredOrder &stored : orders) {
        if (stored.order.type != OrderType::Repair)
            continue;
        LOOPWRIGHT_ASSIGN(auto trouble, troubleOf(records.database(), stored));
        list.push_back(std::move(trouble));
    }
    return list;
}

/// The circuit's name and the next number that no order has.
Result<QString> newNumber(Records &records, const QString &circuit)
{
    for (int n = 1;; ++n) {
        const QString number = QString("%1-R%2").arg(circuit).arg(n);
        LOOPWRIGHT_ASSIGN(const auto there, OrderStore(records.database()).find(number));
        if (!there)
            return number;
    }
}

Result<OrderReading> repairOf(Records &records, const ServiceOrder &working,
                              const OpeningTrouble &opening)
{
    OrderFields fields = working.fields();
    for (const char *column : ownColumns)
        fields.remove(column);
    LOOPWRIGHT_ASSIGN(const auto number, newNumber(records, opening.circuit));
    const QDate due = opening.due.isValid() ? opening.due : records.now().localDate();
    fields.insert("order_number", number);
    fields.insert("order_type", toText(OrderType::Repair));
    fields.insert("due_date", due.toString(Qt::ISODate));
    fields.insert("symptom", opening.symptom.trimmed());
    for (const auto &[column, text] :
         {std::pair("desk_test", opening.deskTest), std::pair("installer", opening.installer)})
        if (!text.trimmed().isEmpty())
            fields.insert(column, text.trimmed());
    return readFields(records, fields);
}

/// On site the line was put on another pair than the records have: that pair must not be lost.
Result<void> checkPair(Records &records, const StoredOrder &stored)
{
    LOOPWRIGHT_ASSIGN(const auto input, evidenceOf(records, stored));
    const QString inForce = pairInForce(input, standingFacts(input.facts)).front();
    LOOPWRIGHT_ASSIGN(const auto working,
                      OrderStore(records.database()).workingOn(stored.order.circuit));
    const auto isIt = [&inForce](const QString &pair) { return pairKey(pair) == pairKey(inForce); };
    if (isIt(stored.order.pair) || (working && isIt(working->order.pair)))
        return {};
    return failure(ErrorCode::Refused,
                   QString("On site the line was put on pair %1, and the records have %2. Take an "
                           "order of the type change in for that pair and complete it; then the "
                           "trouble can be closed.")
                       .arg(inForce, working ? working->order.pair : stored.order.pair));
}

Result<ServiceOrder> workingOrder(Records &records, const QString &circuit)
{
    LOOPWRIGHT_ASSIGN(const auto all, OrderStore(records.database()).ofCircuit(circuit));
    if (all.empty())
        return failure(ErrorCode::NotFound,
                       QString("There is no circuit \"%1\".").arg(circuit.left(60)));
    return orderInService(records.database(), circuit);
}

/// What was done, by the rules of a job record.
Result<Fact> clearedFact(const Records &records, const StoredOrder &stored,
                         const ClosingTrouble &closing)
{
    QJsonObject fact{{"kind", "cleared"},
                     {"at", records.now().text()},
                     {"what", toText(closing.cause)},
                     {"found", closing.found.trimmed()}};
    if (!closing.cleared.trimmed().isEmpty())
        fact.insert("text", closing.cleared.trimmed());
    const QJsonObject record{{"order", stored.order.number}, {"facts", QJsonArray{fact}}};
    auto read = readJobRecord(record, "trouble", newFactId);
    if (!read)
        return failure(ErrorCode::Usage, read.error().message,
                       read.error().place.endsWith("text") ? "cleared" : "found");
    return read->facts.front();
}

Result<StoredOrder> openRepair(Records &records, const QString &number)
{
    LOOPWRIGHT_ASSIGN(auto stored, openOrder(records, number));
    if (stored.order.type != OrderType::Repair)
        return failure(ErrorCode::Refused, QString("Order %1 is no repair.").arg(number));
    return stored;
}

} // namespace

Result<OpenedTrouble> openTrouble(Records &records, const OpeningTrouble &opening)
{
    LOOPWRIGHT_TRY(allow(records, Act::TakeOrderOnSite));
    LOOPWRIGHT_TRY(
        checkReason(opening.symptom, "A trouble is opened with its symptom.", "symptom"));
    if (!opening.installer.isEmpty())
        LOOPWRIGHT_TRY(registeredPerson(records, opening.installer));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const auto working, workingOrder(records, opening.circuit));
    LOOPWRIGHT_ASSIGN(const auto reading, repairOf(records, working, opening));
    for (const Finding &finding : reading.malformed)
        if (finding.severity == Severity::Error)
            return failure(ErrorCode::Refused, finding.reason.english(), finding.field);
    LOOPWRIGHT_ASSIGN(const auto taken,
                      takeOrder(records, transaction, reading.order, std::nullopt));
    LOOPWRIGHT_TRY(transaction.commit({taken.event}));
    LOOPWRIGHT_ASSIGN(const auto all, troublesOf(records, opening.circuit));
    OpenedTrouble opened;
    opened.findings = taken.findings;
    for (const Trouble &each : all)
        if (each.order == reading.order.number)
            opened.trouble = each;
        else if (each.isOpen())
            opened.findings.push_back(
                {Severity::Warning,
                 "trouble_open",
                 Text(QT_TRANSLATE_NOOP("core", "Trouble %1 is open on this circuit: %2"))
                     .arg(each.order)
                     .arg(each.symptom),
                 {},
                 "circuit",
                 0});
    return opened;
}

Result<ClosedTrouble> closeTrouble(Records &records, const ClosingTrouble &closing)
{
    LOOPWRIGHT_TRY(allow(records, Act::KeepOrders, closing.order));
    LOOPWRIGHT_TRY(checkReason(closing.found, "A trouble is closed with what was found.", "found"));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const auto stored, openRepair(records, closing.order));
    LOOPWRIGHT_ASSIGN(const auto before, troubleOf(records.database(), stored));
    if (records.now() < before.opened)
        return failure(ErrorCode::Refused, QString("Trouble %1 was opened later, %2.")
                                               .arg(closing.order, paperTime(before.opened)));
    LOOPWRIGHT_TRY(checkPair(records, stored));
    LOOPWRIGHT_ASSIGN(const auto fact, clearedFact(records, stored, closing));
    LOOPWRIGHT_TRY(FactStore::add(transaction, fact));
    // Kept with the order: it is judged by the limits of this day from now on.
    Decision decision;
    LOOPWRIGHT_TRY(storeDecision(records, transaction, closing.order, decision));
    const QJsonObject detail{{"decision", decision.id},
                             {"outcome", toText(decision.outcome)},
                             {"cause", toText(closing.cause)},
                             {"found", closing.found.trimmed()},
                             {"cleared", closing.cleared.trimmed()},
                             {"fact", fact.id}};
    LOOPWRIGHT_TRY(endOrder(
        records, stored, OrderStatus::Completed, "order_completed", detail,
        [](Transaction &) { return Result<void>(); }, // the circuit goes on as it was
        transaction));
    ClosedTrouble closed;
    for (const CriterionResult &criterion : decision.criteria)
        if (criterion.open())
            closed.lacks << criterion.sentence().english();
    LOOPWRIGHT_ASSIGN(const auto all, troublesOf(records, stored.order.circuit));
    closed.trouble = *std::ranges::find(all, closing.order, &Trouble::order);
    return closed;
}

Result<std::vector<Trouble>> troubles(Records &records, bool openOnly)
{
    LOOPWRIGHT_ASSIGN(const auto repairs, OrderStore(records.database()).repairs());
    LOOPWRIGHT_ASSIGN(auto list, troublesIn(records, repairs));
    markRepeats(list);
    if (openOnly)
        std::erase_if(list, [](const Trouble &trouble) { return !trouble.isOpen(); });
    return list;
}

Result<std::vector<Trouble>> troublesOf(Records &records, const QString &circuit)
{
    LOOPWRIGHT_ASSIGN(const auto orders, OrderStore(records.database()).ofCircuit(circuit));
    if (orders.empty())
        return failure(ErrorCode::NotFound,
                       QString("There is no circuit \"%1\".").arg(circuit.left(60)));
    LOOPWRIGHT_ASSIGN(auto list, troublesIn(records, orders));
    markRepeats(list);
    return list;
}

QString Trouble::sentence() const
{
    QString text = QString("%1 of %2: %3").arg(order, paperDay(opened.localDate()), symptom);
    if (isOpen())
        return text + ". It is open.";
    if (!closed)
        return text + ". " + toText(status) + '.';
    return text + QString(". It was closed on %1: %2")
                      .arg(paperDay(closed->localDate()),
                           QStringList{cause ? toText(*cause).replace('_', ' ') : QString(),
                                       cleared.isEmpty() ? found : cleared}
                               .join(", "));
}

QJsonObject Trouble::toJson() const
{
    const auto orNull = [](const QString &text) {
        return text.isEmpty() ? QJsonValue() : QJsonValue(text);
    };
    return {{"trouble", order},
            {"circuit", circuit},
            {"customer", customer},
            {"premises", premises},
            {"installer", orNull(installer)},
            {"symptom", symptom},
            {"desk_test", orNull(deskTest)},
            {"status", toText(status)},
            {"opened", opened.text()},
            {"closed", closed ? QJsonValue(closed->text()) : QJsonValue()},
            {"cause", cause ? QJsonValue(toText(*cause)) : QJsonValue()},
            {"found", orNull(found)},
            {"cleared", orNull(cleared)},
            {"repeat", !previous.isEmpty()},
            {"previous", orNull(previous)}};
}

} // namespace loopwright
