// Reads an order from its fields, saying of every field that is malformed what is wrong with it.

#include "core/base/TextForm.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/identifiers/Tei.h"
#include "core/order/JobFacts.h"
#include "core/order/ServiceOrder.h"

#include <algorithm>

namespace loopwright {

namespace {

class FieldReader
{
public:
    FieldReader(const OrderFields &fields, OrderReading &reading)
        : m_fields(fields)
        , m_reading(reading)
    {
    }

    QString text(const QString &column) const { return m_fields.value(column).trimmed(); }
    void say(const QString &column, const QString &code, const Text &reason,
             Severity severity = Severity::Error)
    {
        m_reading.malformed.push_back({severity, code, reason, {}, column, 0});
    }
    QString needed(const QString &column, const QString &code, const Text &reason)
    {
        const QString found = text(column);
        if (found.isEmpty())
            say(column, code, reason);
        return found;
    }
    template<class E>
    E word(const QString &column, E fallback)
    {
        const QString found = text(column);
        if (const auto value = fromText<E>(found))
            return *value;
        say(column, column + "_unknown",
            found.isEmpty() ? Text(QT_TRANSLATE_NOOP("core", "is empty; it must be one of %1"))
                                  .arg(allWords<E>().join(", "))
                            : Text(QT_TRANSLATE_NOOP("core", "\"%1\" is not one of %2"))
                                  .arg(found.left(40))
                                  .arg(allWords<E>().join(", ")));
        return fallback;
    }
    Services services(const QString &column, Services allowed)
    {
        const QString found = text(column);
        const auto value = servicesFromText(found);
        if (!value)
            say(column, "services_unknown",
                Text(QT_TRANSLATE_NOOP("core",
                                       "\"%1\" is not made of voice, data and packet joined by +"))
                    .arg(found.left(40)));
        else if (*value & ~allowed)
            say(column, "services_impossible",
                Text(QT_TRANSLATE_NOOP("core", "%1 cannot carry %2"))
                    .arg(column.section('_', 0, 0).toUpper())
                    .arg(servicesText(*value & ~allowed)));
        else
            return *value;
        return {};
    }

private:
    const OrderFields &m_fields;
    OrderReading &m_reading;
};

void readHead(FieldReader &in, ServiceOrder &order)
{
    order.number = in.needed("order_number", "order_number_missing",
                             QT_TRANSLATE_NOOP("core", "The order has no number."));
    order.type = in.word<OrderType>("order_type", OrderType::New);
    order.kind = in.word<LineKind>("kind", LineKind::Bri);
    const QString due = in.text("due_date");
    order.dueDate = QDate::fromString(due, "yyyy-MM-dd");
    if (due.isEmpty())
        in.say("due_date", "date_missing",
               QT_TRANSLATE_NOOP("core", "The order has no due date (YYYY-MM-DD)."));
    else if (!order.dueDate.isValid())
        in.say("due_date", "date_malformed",
               Text(QT_TRANSLATE_NOOP("core", "\"%1\" is not a day of the calendar as YYYY-MM-DD"))
                   .arg(due.left(20)));
    order.circuit = in.needed("circuit_number", "circuit_missing",
                              QT_TRANSLATE_NOOP("core", "The order names no circuit."));
    order.customer = in.text("customer");
    order.premises = in.text("premises");
    if (order.customer.isEmpty())
        in.say("customer", "customer_missing",
               QT_TRANSLATE_NOOP("core", "The order names no customer."), Severity::Warning);
    order.pair = in.text("pair");
    if (!in.text("line").isEmpty())
        order.line = in.word<LineMode>("line", LineMode::Multipoint);
    const QString nt = in.text("nt_supplied");
    order.ntSupplied = nt == "yes";
    if (nt != "yes" && nt != "no" && !(nt.isEmpty() && order.kind == LineKind::Analog))
        in.say("nt_supplied", "nt_supplied_unknown",
               Text(QT_TRANSLATE_NOOP("core", "\"%1\" is neither yes nor no")).arg(nt.left(20)));
}

void readOffice(FieldReader &in, ServiceOrder &order,
                const std::function<std::optional<QString>(const QString &)> &officeVariant)
{
    order.office = in.needed("office", "office_missing",
                             QT_TRANSLATE_NOOP("core", "The order names no serving office."));
    const auto habit = officeVariant(order.office);
    if (!order.office.isEmpty() && !habit)
        in.say(
            "office", "office_unknown",
            Text(QT_TRANSLATE_NOOP("core", "There is no serving office \"%1\"; import it first."))
                .arg(order.office.left(40)));
    order.variant = in.text("protocol_variant");
    if (order.kind == LineKind::Analog) {
        order.variant = "analog"; // whatever the switch speaks on its digital lines
        return;
    }
    if (order.variant.isEmpty())
        order.variant = habit.value_or(QString());
    const ProtocolVariant *variant = findVariant(order.variant);
    if (!variant || variant->isAnalog)
        in.say("protocol_variant", "variant_unknown",
               order.variant.isEmpty()
                   ? Text(QT_TRANSLATE_NOOP(
                         "core", "No protocol variant is given and the office has none."))
                   : Text(QT_TRANSLATE_NOOP(
                              "core", "\"%1\" is not a protocol variant of a basic-rate line."))
                         .arg(order.variant.left(40)));
}

void readServices(FieldReader &in, ServiceOrder &order)
{
    const Services any = Service::Voice | Service::Data | Service::Packet;
    order.b1 =
        in.services("b1_services", order.kind == LineKind::Analog ? Services(Service::Voice) : any);
    order.b2 = in.services("b2_services", order.kind == LineKind::Analog ? Services() : any);
    order.d = in.services("d_services",
                          order.kind == LineKind::Analog ? Services() : Services(Service::Packet));
    const QString rate = in.text("data_rate");
    order.dataRate = rate.isEmpty() ? 64000 : rate.toInt();
    if (order.dataRate != 64000 && order.dataRate != 56000)
        in.say("data_rate", "data_rate_unknown",
               Text(QT_TRANSLATE_NOOP("core", "\"%1\" is neither 64000 nor 56000"))
                   .arg(rate.left(20)));
}

void readTerminals(FieldReader &in, ServiceOrder &order)
{
    for (int number = 1; number <= mostTerminals; ++number) {
        const QString n = QString::number(number);
        OrderedTerminal terminal{
            number, in.text("dn_" + n), in.text("spid_" + n), in.text("tei_" + n), {}};
        const QString services = "dn_" + n + "_services";
        if (!in.text(services).isEmpty())
            terminal.dnServices =
                in.services(services, Service::Voice | Service::Data | Service::Packet);
        if (!terminal.dn.isEmpty() || !terminal.spid.isEmpty() ||
            (number == 1 ? !terminal.tei.isEmpty() : !isAutomaticTei(terminal.tei)) ||
            (number == 1 && order.type != OrderType::Disconnect))
            order.terminals.push_back(terminal);
    }
}

void readPlan(FieldReader &in)
{
    if (!in.text("waiting_on").isEmpty())
        in.word<WaitingOn>("waiting_on", WaitingOn::Other);
    const QString first = in.text("first_due_date");
    if (!first.isEmpty() && !QDate::fromString(first, "yyyy-MM-dd").isValid())
        in.say("first_due_date", "date_malformed",
               Text(QT_TRANSLATE_NOOP("core", "\"%1\" is not a day of the calendar as YYYY-MM-DD"))
                   .arg(first.left(20)));
}

} // namespace

OrderReading readOrder(const OrderFields &fields,
                       const std::function<std::optional<QString>(const QString &)> &officeVariant)
{
    OrderReading reading;
    FieldReader in(fields, reading);
    ServiceOrder &order = reading.order;
    readHead(in, order);
    readOffice(in, order, officeVariant);
    readServices(in, order);
    readTerminals(in, order);
    readPlan(in);
    for (const OrderText &text : orderTexts())
        order.*text.member = in.text(QString::fromLatin1(text.column));
    for (const char *name :
         {"order_number", "circuit_number", "pair", "feeder_pair", "related_order"})
        if (const Text trouble = identifierTrouble(in.text(name)); !trouble.isEmpty())
            in.say(name, "identifier_malformed", trouble);
    for (auto it = fields.begin(); it != fields.end(); ++it) {
        const bool isName = it.key() == "order_number" || it.key() == "circuit_number";
        const int longest = isName ? longestOrderName : longestOrderText;
        if (const Text trouble = textTrouble(*it, longest); !trouble.isEmpty())
            in.say(it.key(), it->size() > longest ? "text_too_long" : "control_character", trouble);
    }
    return reading;
}

} // namespace loopwright
