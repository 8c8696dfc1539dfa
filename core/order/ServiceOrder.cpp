#include "core/order/ServiceOrder.h"

#include "core/order/Claims.h"

#include <algorithm>

namespace loopwright {

namespace {

/// The free texts of an order, by column.
constexpr std::pair<const char *, QString ServiceOrder::*> texts[] = {
    {"order_number", &ServiceOrder::number},
    {"customer", &ServiceOrder::customer},
    {"premises", &ServiceOrder::premises},
    {"circuit_number", &ServiceOrder::circuit},
    {"office", &ServiceOrder::office},
    {"protocol_variant", &ServiceOrder::variant},
    {"pair", &ServiceOrder::pair},
    {"installer", &ServiceOrder::installer},
    {"remarks", &ServiceOrder::remarks},
    {"contact", &ServiceOrder::contact},
    {"access_notes", &ServiceOrder::accessNotes},
    {"appointment", &ServiceOrder::appointment},
    {"terminal_location", &ServiceOrder::terminalLocation},
    {"feeder_pair", &ServiceOrder::feederPair},
    {"dial_prefix", &ServiceOrder::dialPrefix},
    {"related_order", &ServiceOrder::relatedOrder},
};

constexpr std::pair<const char *, Services ServiceOrder::*> channels[] = {
    {"b1_services", &ServiceOrder::b1},
    {"b2_services", &ServiceOrder::b2},
    {"d_services", &ServiceOrder::d},
};

} // namespace

OrderFields ServiceOrder::fields() const
{
    OrderFields map;
    const auto put = [&map](const QString &column, const QString &text) {
        if (!text.isEmpty())
            map.insert(column, text);
    };
    for (const auto &[column, member] : texts)
        put(QString::fromLatin1(column), this->*member);
    for (const auto &[column, member] : channels)
        put(QString::fromLatin1(column), servicesText(this->*member));
    put("order_type", toText(type));
    put("kind", toText(kind));
    put("due_date", dueDate.toString("yyyy-MM-dd"));
    put("data_rate", QString::number(dataRate));
    put("nt_supplied", ntSupplied ? "yes" : "no");
    for (const OrderedTerminal &terminal : terminals) {
        const QString n = QString::number(terminal.number);
        put("dn_" + n, terminal.dn);
        put("spid_" + n, terminal.spid);
        put("tei_" + n, terminal.tei);
        if (terminal.dnServices)
            put("dn_" + n + "_services", servicesText(*terminal.dnServices));
    }
    return map;
}

QJsonObject ServiceOrder::toJson() const
{
    QJsonObject object;
    const OrderFields map = fields();
    for (auto it = map.begin(); it != map.end(); ++it)
        object.insert(it.key(), it.value());
    return object;
}

Result<ServiceOrder> ServiceOrder::fromJson(const QJsonObject &object, const QString &place)
{
    OrderFields map;
    for (auto it = object.begin(); it != object.end(); ++it)
        map.insert(it.key(), it.value().toString());
    const auto anyOffice = [](const QString &) { return std::optional<QString>(QString()); };
    OrderReading reading = readOrder(map, anyOffice);
    for (const Finding &finding : reading.malformed)
        if (finding.severity == Severity::Error)
            return failure(ErrorCode::BadInput, finding.reason, place + "." + finding.field);
    return reading.order;
}

const OrderedTerminal *ServiceOrder::terminal(int number) const
{
    const auto found =
        std::find_if(terminals.begin(), terminals.end(),
                     [number](const OrderedTerminal &t) { return t.number == number; });
    return found == terminals.end() ? nullptr : &*found;
}

Services ServiceOrder::servicesOf(const OrderedTerminal &terminal) const
{
    return terminal.dnServices.value_or(bServices());
}

const QStringList &requiredOrderColumns()
{
    static const QStringList columns{
        "order_number",   "order_type",  "due_date", "customer",         "premises",
        "circuit_number", "kind",        "office",   "protocol_variant", "pair",
        "b1_services",    "b2_services", "dn_1",     "spid_1",           "tei_1",
        "nt_supplied"};
    return columns;
}

const QStringList &optionalOrderColumns()
{
    static const QStringList columns{"d_services",   "data_rate",     "installer",
                                     "remarks",      "dn_#",          "spid_#",
                                     "tei_#",        "dn_#_services", "contact",
                                     "access_notes", "appointment",   "terminal_location",
                                     "feeder_pair",  "dial_prefix",   "related_order"};
    return columns;
}

OrderScope scopeOf(const ServiceOrder &order, const std::optional<ServiceOrder> &working)
{
    switch (order.type) {
    case OrderType::Disconnect:
        return OrderScope::Nothing;
    case OrderType::RecordOnly:
        return OrderScope::RecordOnly;
    case OrderType::New:
        return OrderScope::Full;
    case OrderType::Move:
    case OrderType::Change:
        break;
    }
    if (!working)
        return OrderScope::Full;
    const bool sameLine =
        pairKey(order.pair) == pairKey(working->pair) && order.variant == working->variant &&
        order.kind == working->kind && order.office == working->office && order.b1 == working->b1 &&
        order.b2 == working->b2 && order.d == working->d && order.dataRate == working->dataRate;
    const bool samePremises = premisesKey(order.premises) == premisesKey(working->premises);
    if (order.type == OrderType::Move)
        return samePremises && sameLine ? OrderScope::MoveWithin : OrderScope::Full;
    return sameLine && samePremises ? OrderScope::NumbersOnly : OrderScope::Full;
}

QString whatChanged(const ServiceOrder &before, const ServiceOrder &after)
{
    if (pairKey(before.pair) != pairKey(after.pair) || before.office != after.office ||
        before.kind != after.kind)
        return "pair";
    const auto identifiers = [](const ServiceOrder &order) {
        QStringList list{order.variant};
        for (const OrderedTerminal &terminal : order.terminals)
            list << QString::number(terminal.number) << terminal.dn << terminal.spid
                 << terminal.tei;
        return list;
    };
    return identifiers(before) == identifiers(after) ? QString() : QString("identifiers");
}

} // namespace loopwright
