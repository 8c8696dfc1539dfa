// What stands in each column of each file, and the words that one may have.
#include "app/actions/FileForms.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/loop/LoopMakeup.h"
#include "core/office/Office.h"
#include "core/order/JobFacts.h"
#include "core/order/ServiceOrder.h"

namespace loopwright {

namespace {

struct Meaning
{
    const char *form;
    const char *column;
    const char *meaning;
};

#define TEXT(text) QT_TRANSLATE_NOOP("core", text)

constexpr Meaning meanings[] = {
    {"offices", "office", TEXT("key of the office, as orders name it")},
    {"offices", "name", TEXT("name of the office, as papers print it")},
    {"offices", "protocol_variant", TEXT("what its switch speaks, where an order says nothing")},
    {"offices", "test_lines",
     TEXT("label=number joined by ; (unpublished: never on a customer's paper)")},
    {"offices", "address", TEXT("address, for papers")},
    {"offices", "telephone", TEXT("telephone, for papers")},
    {"offices", "trouble_telephone", TEXT("whom a customer calls when a line fails")},

    {"issuer", "name", TEXT("who issues the certificates, as they print it")},
    {"issuer", "address", TEXT("address, for papers")},
    {"issuer", "telephone", TEXT("telephone, for papers")},
    {"issuer", "trouble_telephone", TEXT("whom a customer calls when a line fails")},
    {"issuer", "trouble_hours", TEXT("when somebody answers there, in words")},

    {"installers", "installer", TEXT("key of the person, as orders and records name it")},
    {"installers", "name", TEXT("name, as papers print it")},
    {"installers", "role", TEXT("what the person may do; installer where it is empty")},
    {"installers", "login",
     TEXT("login name on this computer, by which the person is known without being named")},

    {"instruments", "instrument", TEXT("key of the instrument, as records name it")},
    {"instruments", "serial", TEXT("serial number")},
    {"instruments", "kind", TEXT("what it is, in words")},
    {"instruments", "calibrated_on", TEXT("day of the calibration, YYYY-MM-DD")},
    {"instruments", "calibration_due",
     TEXT("day on which the calibration ends, or not_required; a further row of the same "
          "instrument is a further calibration")},

    {"changes", "order_number", TEXT("the order that is changed")},
    {"changes", "column", TEXT("a column of an order file")},
    {"changes", "value", TEXT("what it shall be; empty clears it")},

    {"identifiers", "variant", TEXT("key of a protocol variant")},
    {"identifiers", "spid", TEXT("the SPID, digits and separators")},
    {"identifiers", "dn", TEXT("the number that belongs to it; may be empty")},

    {"makeup", "element", TEXT("one row each from the office to the customer")},
    {"makeup", "gauge_awg", TEXT("gauge of a section or tap; or diameter_mm")},
    {"makeup", "diameter_mm", TEXT("diameter of a section or tap; or gauge_awg")},
    {"makeup", "length_ft", TEXT("length of a section or tap; or length_m")},
    {"makeup", "length_m", TEXT("length of a section or tap; or length_ft")},
    {"makeup", "millihenry", TEXT("inductance of a load coil")},
    {"makeup", "ohms", TEXT("resistance of a load coil, if it is not the usual one")},
    {"makeup", "capacitance_nf_per_km",
     TEXT("capacitance of a section or tap, if it is not the usual one")},
    {"makeup", "temperature_f",
     TEXT("temperature of the cable, in one row; or "
          "temperature_c")},
    {"makeup", "temperature_c",
     TEXT("temperature of the cable, in one row; or "
          "temperature_f")},

    {"seconds", "second", TEXT("number of the second, or its time")},
    {"seconds", "bit_errors", TEXT("bit errors in it")},
    {"seconds", "sync_lost", TEXT("1 where the pattern was lost in it")},

    {"orders", "order_number", TEXT("number of the order, once in the records")},
    {"orders", "order_type", TEXT("what is ordered")},
    {"orders", "due_date", TEXT("day by which it is promised, YYYY-MM-DD")},
    {"orders", "customer", TEXT("name of the customer")},
    {"orders", "premises", TEXT("address of the premises; orders with the same one are one visit")},
    {"orders", "circuit_number", TEXT("number of the circuit that the order is for")},
    {"orders", "kind", TEXT("basic rate or analog")},
    {"orders", "office", TEXT("key of the serving office, which must be in the register")},
    {"orders", "protocol_variant", TEXT("empty: as the office has it")},
    {"orders", "pair", TEXT("name of the pair in its cable")},
    {"orders", "b1_services",
     TEXT("services of channel B1, joined by +; of an analog line: voice")},
    {"orders", "b2_services", TEXT("services of channel B2; empty: not ordered")},
    {"orders", "d_services", TEXT("packet, where packet data on the D channel is ordered")},
    {"orders", "data_rate", TEXT("bit/s of a data call; 64000 where it is empty")},
    {"orders", "line", TEXT("empty: as the protocol variant has it")},
    {"orders", "dn_1", TEXT("number of terminal 1, or of the analog line")},
    {"orders", "spid_1", TEXT("its SPID, where the protocol variant has one")},
    {"orders", "tei_1", TEXT("its TEI: auto, or a number of 0 to 63")},
    {"orders", "dn_#", TEXT("numbers of further terminals")},
    {"orders", "spid_#", TEXT("their SPIDs")},
    {"orders", "tei_#", TEXT("their TEIs")},
    {"orders", "dn_#_services",
     TEXT("services that this number answers; empty: all that a B channel has")},
    {"orders", "nt_supplied", TEXT("whether the order brings the NT")},
    {"orders", "installer", TEXT("key of who goes there")},
    {"orders", "remarks", TEXT("any text")},
    {"orders", "symptom", TEXT("of a repair: what the customer says")},
    {"orders", "desk_test", TEXT("of a repair: what a test from the desk showed")},
    {"orders", "contact", TEXT("whom to ask for at the premises")},
    {"orders", "access_notes", TEXT("keys, hours, dogs")},
    {"orders", "appointment", TEXT("hours that were agreed, e.g. 09:00-11:00")},
    {"orders", "crew", TEXT("what the work takes: people, ladder, vehicle")},
    {"orders", "terminal_location", TEXT("where the terminal stands")},
    {"orders", "feeder_pair", TEXT("pair in the main cable, before the cross-connect")},
    {"orders", "dial_prefix", TEXT("what is dialled before an outside number")},
    {"orders", "related_order", TEXT("number of an order that belongs to it")},
    {"orders", "head_number", TEXT("of a point-to-point line: its number without extension")},
    {"orders", "number_range", TEXT("of a point-to-point line: its extensions, e.g. 00-49")},
    {"orders", "nt_make", TEXT("make of the NT")},
    {"orders", "nt_serial", TEXT("serial number of the NT")},
    {"orders", "nt_power", TEXT("what feeds the NT, in words")},
    {"orders", "waiting_on", TEXT("of an order on hold: who has to act first")},
    {"orders", "waiting_because", TEXT("of an order on hold: what is missing")},
    {"orders", "first_due_date", TEXT("the day that was promised first, if it is another now")},
    {"orders", "due_because", TEXT("why it is another day")},
};

#undef TEXT

QStringList variantKeys()
{
    QStringList keys;
    for (const ProtocolVariant &variant : allVariants())
        if (!variant.isAnalog)
            keys << variant.key;
    return keys;
}

QStringList wordsOfOrder(const QString &column)
{
    if (column == u"order_type")
        return allWords<OrderType>();
    if (column == u"kind")
        return allWords<LineKind>();
    if (column == u"line")
        return allWords<LineMode>();
    if (column == u"nt_supplied")
        return {"yes", "no"};
    if (column == u"data_rate")
        return {"64000", "56000"};
    if (column == u"waiting_on")
        return allWords<WaitingOn>();
    if (column == u"protocol_variant")
        return variantKeys();
    if (column.endsWith(u"_services"))
        return {"voice", "data", "packet", "voice+data"};
    return {};
}

} // namespace

QStringList wordsOfColumn(const QString &form, const QString &column)
{
    if (form == u"orders")
        return wordsOfOrder(column);
    if (form == u"installers" && column == u"role")
        return allWords<Role>();
    if (form == u"makeup" && column == u"element")
        return allWords<ElementType>();
    if (column == u"protocol_variant" || column == u"variant")
        return variantKeys();
    return {};
}

Text meaningOfColumn(const QString &form, const QString &column)
{
    for (const Meaning &each : meanings)
        if (form == QLatin1StringView(each.form) && column == QLatin1StringView(each.column))
            return Text(each.meaning);
    return {};
}

} // namespace loopwright
