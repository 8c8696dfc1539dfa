#include "app/desktop/order/OrderFieldTable.h"

#include <QCoreApplication>

namespace loopwright {

namespace {

#define TEXT(text) QT_TRANSLATE_NOOP("OrderForm", text)

constexpr OrderPartRow partRows[] = {{OrderPart::Order, TEXT("Order")},
                                     {OrderPart::Customer, TEXT("Customer and premises")},
                                     {OrderPart::Line, TEXT("Circuit and pair")},
                                     {OrderPart::Channels, TEXT("Service")}};

constexpr OrderFieldRow fieldRows[] = {
    {"order_number", TEXT("Order number"), "", OrderPart::Order, OrderEditor::Line},
    {"order_type", TEXT("Order type"), "", OrderPart::Order, OrderEditor::Type},
    {"due_date", TEXT("Due date"), TEXT("YYYY-MM-DD; up and down change the day"), OrderPart::Order,
     OrderEditor::Date},
    {"appointment", TEXT("Appointment"), TEXT("e.g. 09:00-11:00"), OrderPart::Order,
     OrderEditor::Line},
    {"installer", TEXT("Installer"), TEXT("may be left empty"), OrderPart::Order,
     OrderEditor::Installer},
    {"related_order", TEXT("Related order"), TEXT("may be left empty"), OrderPart::Order,
     OrderEditor::Line},
    {"remarks", TEXT("Remarks"), "", OrderPart::Order, OrderEditor::Lines, 0},

    {"customer", TEXT("Customer"), "", OrderPart::Customer, OrderEditor::Line, 2},
    {"contact", TEXT("Contact on site"), TEXT("may be left empty"), OrderPart::Customer,
     OrderEditor::Line},
    {"premises", TEXT("Premises"), TEXT("address as the installer needs it"), OrderPart::Customer,
     OrderEditor::Line, 2},
    {"terminal_location", TEXT("Terminal's place"), TEXT("may be left empty"), OrderPart::Customer,
     OrderEditor::Line},
    {"access_notes", TEXT("Access"), TEXT("keys, hours, dogs; may be left empty"),
     OrderPart::Customer, OrderEditor::Line, 0},

    {"circuit_number", TEXT("Circuit number"), "", OrderPart::Line, OrderEditor::Line},
    {"kind", TEXT("Kind of line"), "", OrderPart::Line, OrderEditor::Kind},
    {"office", TEXT("Serving office"), "", OrderPart::Line, OrderEditor::Office},
    {"protocol_variant", TEXT("Protocol variant"), "", OrderPart::Line, OrderEditor::Variant, 1},
    {"pair", TEXT("Pair"), TEXT("cable and pair in the office"), OrderPart::Line,
     OrderEditor::Line},
    {"feeder_pair", TEXT("Feeder pair"), TEXT("may be left empty"), OrderPart::Line,
     OrderEditor::Line},
    {"nt_supplied", TEXT("NT supplied"), "", OrderPart::Line, OrderEditor::YesNo, 1, true},
    {"dial_prefix", TEXT("Dial prefix"), TEXT("may be left empty"), OrderPart::Line,
     OrderEditor::Line},

    {"b1_services", TEXT("Channel B1"), "", OrderPart::Channels, OrderEditor::BServices},
    {"b2_services", TEXT("Channel B2"), "", OrderPart::Channels, OrderEditor::BServices, 1, true},
    {"d_services", TEXT("Channel D"), "", OrderPart::Channels, OrderEditor::DServices, 1, true},
    {"data_rate", TEXT("Data rate"), TEXT("bit/s"), OrderPart::Channels, OrderEditor::Rate, 1,
     true},
};

#undef TEXT

} // namespace

std::span<const OrderFieldRow> orderFieldRows()
{
    return fieldRows;
}

std::span<const OrderPartRow> orderParts()
{
    return partRows;
}

} // namespace loopwright
