#include "core/order/ServiceOrder.h"

#include "core/identifiers/ProtocolVariant.h"

#include <algorithm>

namespace loopwright {

namespace {

/// What must be there, each read and checked by a rule of its own.
constexpr OrderText checked[] = {
    {"order_number", &ServiceOrder::number, OrderPart::Own},
    {"customer", &ServiceOrder::customer, OrderPart::Own},
    {"premises", &ServiceOrder::premises, OrderPart::Own},
    {"circuit_number", &ServiceOrder::circuit, OrderPart::Own},
    {"office", &ServiceOrder::office, OrderPart::Own},
    {"protocol_variant", &ServiceOrder::variant, OrderPart::Own},
    {"pair", &ServiceOrder::pair, OrderPart::Own},
};

#define TEXT(text) QT_TRANSLATE_NOOP("core", text)

/// What may be left out: the columns of the contract in its order, and their places on the form.
constexpr OrderText texts[] = {
    {"installer", &ServiceOrder::installer, OrderPart::Own},
    {"remarks", &ServiceOrder::remarks, OrderPart::Order, TEXT("Remarks"), "", true},
    {"symptom", &ServiceOrder::symptom, OrderPart::Order, TEXT("Symptom"),
     TEXT("of a repair, as the customer says it"), true},
    {"desk_test", &ServiceOrder::deskTest, OrderPart::Order, TEXT("Test from the desk"),
     TEXT("of a repair; may be left empty"), true},
    {"contact", &ServiceOrder::contact, OrderPart::Customer, TEXT("Contact on site"),
     TEXT("may be left empty")},
    {"access_notes", &ServiceOrder::accessNotes, OrderPart::Customer, TEXT("Access"),
     TEXT("keys, hours, dogs; may be left empty"), true},
    {"appointment", &ServiceOrder::appointment, OrderPart::Order, TEXT("Appointment"),
     TEXT("e.g. 09:00-11:00")},
    {"crew", &ServiceOrder::crew, OrderPart::Order, TEXT("Crew and vehicle"),
     TEXT("e.g. two people, ladder, bucket truck")},
    {"terminal_location", &ServiceOrder::terminalLocation, OrderPart::Customer,
     TEXT("Terminal's place"), TEXT("may be left empty")},
    {"feeder_pair", &ServiceOrder::feederPair, OrderPart::Line, TEXT("Feeder pair"),
     TEXT("may be left empty")},
    {"dial_prefix", &ServiceOrder::dialPrefix, OrderPart::Line, TEXT("Dial prefix"),
     TEXT("may be left empty")},
    {"related_order", &ServiceOrder::relatedOrder, OrderPart::Order, TEXT("Related order"),
     TEXT("may be left empty")},
    {"head_number", &ServiceOrder::headNumber, OrderPart::Line, TEXT("Head number"),
     TEXT("of a point-to-point line")},
    {"number_range", &ServiceOrder::numberRange, OrderPart::Line, TEXT("Number range"),
     TEXT("of a point-to-point line, e.g. 00-49")},
    {"nt_make", &ServiceOrder::ntMake, OrderPart::Line, TEXT("Make of the NT"),
     TEXT("may be left empty")},
    {"nt_serial", &ServiceOrder::ntSerial, OrderPart::Line, TEXT("Serial of the NT"),
     TEXT("may be left empty")},
    {"nt_power", &ServiceOrder::ntPower, OrderPart::Line, TEXT("What feeds the NT"),
     TEXT("e.g. mains socket in the hall, no battery")},
    {"waiting_on", &ServiceOrder::waitingOn, OrderPart::Plan},
    {"waiting_because", &ServiceOrder::waitingBecause, OrderPart::Plan},
    {"first_due_date", &ServiceOrder::firstDueDate, OrderPart::Plan},
    {"due_because", &ServiceOrder::dueBecause, OrderPart::Plan},
};

#undef TEXT

constexpr std::pair<const char *, Services ServiceOrder::*> channels[] = {
    {"b1_services", &ServiceOrder::b1},
    {"b2_services", &ServiceOrder::b2},
    {"d_services", &ServiceOrder::d},
};

} // namespace

QString troubleText(const ServiceOrder &order)
{
    return order.deskTest.isEmpty() ? order.symptom
                                    : order.symptom + "; from the desk: " + order.deskTest;
}

void ServiceOrder::keepPlan(const ServiceOrder &before)
{
    for (const OrderText &text : texts)
        if (text.part == OrderPart::Plan && (this->*text.member).isEmpty())
            this->*text.member = before.*text.member;
}

OrderFields ServiceOrder::fields() const
{
    OrderFields map;
    const auto put = [&map](const QString &column, const QString &text) {
        if (!text.isEmpty())
            map.insert(column, text);
    };
    for (const std::span<const OrderText> table :
         {std::span<const OrderText>(checked), orderTexts()})
        for (const OrderText &text : table)
            put(QString::fromLatin1(text.column), this->*text.member);
    for (const auto &[column, member] : channels)
        put(QString::fromLatin1(column), servicesText(this->*member));
    put("order_type", toText(type));
    put("kind", toText(kind));
    put("due_date", dueDate.toString("yyyy-MM-dd"));
    put("data_rate", QString::number(dataRate));
    put("nt_supplied", ntSupplied ? "yes" : "no");
    if (line)
        put("line", toText(*line));
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
    return objectOf(fields());
}

Result<ServiceOrder> ServiceOrder::fromJson(const QJsonObject &object, const QString &place)
{
    const auto anyOffice = [](const QString &) { return std::optional<QString>(QString()); };
    OrderReading reading = readOrder(textsIn(object), anyOffice);
    for (const Finding &finding : reading.malformed)
        if (finding.severity == Severity::Error)
            return failure(ErrorCode::BadInput, finding.reason.english(),
                           place + "." + finding.field);
    return reading.order;
}

const OrderedTerminal *ServiceOrder::terminal(int number) const
{
    const auto found =
        std::find_if(terminals.begin(), terminals.end(),
                     [number](const OrderedTerminal &t) { return t.number == number; });
    return found == terminals.end() ? nullptr : &*found;
}

bool ServiceOrder::isPointToPoint() const
{
    const ProtocolVariant *known = findVariant(variant);
    return line == LineMode::PointToPoint || (known && known->pointToPoint);
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
    static const QStringList columns = [] {
        QStringList list{"d_services", "data_rate", "line",         "dn_#",
                         "spid_#",     "tei_#",     "dn_#_services"};
        for (const OrderText &text : texts)
            list << QString::fromLatin1(text.column);
        return list;
    }();
    return columns;
}

std::span<const OrderText> orderTexts()
{
    return texts;
}

} // namespace loopwright
