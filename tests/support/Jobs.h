#pragma once
// Jobs for tests: an order and the facts of a job that is accepted, as JSON that a test then
// changes.

#include "core/acceptance/Judge.h"

#include <QFile>

namespace loopwright::jobs {

inline LimitSet limits()
{
    QFile file(LOOPWRIGHT_SOURCE_DIR "/resources/limits/2026-1.json");
    if (!file.open(QIODevice::ReadOnly))
        qFatal("the shipped limits are missing");
    return *LimitSet::fromJson(*parseJsonObject(file.readAll(), "limits"), "limits");
}

/// The shipped set with another value.
inline LimitSet limitsWith(const QString &key, double value)
{
    QJsonObject object = limits().toJson();
    QJsonArray list;
    for (const QJsonValue &each : object["limits"].toArray()) {
        QJsonObject limit = each.toObject();
        if (limit["key"] == key)
            limit.insert("value", value);
        list << limit;
    }
    object.insert("limits", list);
    return *LimitSet::fromJson(object, "limits");
}

inline OrderFields briFields()
{
    return {{"order_number", "A-1001"},
            {"order_type", "new"},
            {"due_date", "2026-03-06"},
            {"customer", "Bright Bakery"},
            {"premises", "12 Mill Lane"},
            {"circuit_number", "C-77"},
            {"kind", "bri"},
            {"office", "NORTH"},
            {"protocol_variant", "ni2"},
            {"pair", "17-204"},
            {"b1_services", "voice+data"},
            {"b2_services", "data"},
            {"dn_1", "217-555-0143"},
            {"spid_1", "21755501430101"},
            {"tei_1", "auto"},
            {"dn_2", "217-555-0144"},
            {"spid_2", "21755501440101"},
            {"tei_2", "auto"},
            {"dn_1_services", "voice+data"},
            {"dn_2_services", "data"},
            {"nt_supplied", "yes"}};
}

/// A basic-rate order with numbers and a pair of its own.
inline OrderFields otherBriFields(const QString &number, const QString &circuit,
                                  const QString &pair, const QString &dn1, const QString &dn2)
{
    const auto spidOf = [](QString dn) -> QString { return dn.remove(u'-') + "0101"; };
    OrderFields fields = briFields();
    fields["order_number"] = number;
    fields["circuit_number"] = circuit;
    fields["pair"] = pair;
    fields["dn_1"] = dn1;
    fields["spid_1"] = spidOf(dn1);
    fields["dn_2"] = dn2;
    fields["spid_2"] = spidOf(dn2);
    return fields;
}

inline OrderFields analogFields()
{
    return {{"order_number", "A-2001"}, {"order_type", "new"},         {"due_date", "2026-03-06"},
            {"customer", "Quiet Cafe"}, {"premises", "3 Quay Street"}, {"circuit_number", "C-90"},
            {"kind", "analog"},         {"office", "NORTH"},           {"pair", "17-205"},
            {"b1_services", "voice"},   {"dn_1", "217-555-0150"},      {"nt_supplied", "no"}};
}

inline ServiceOrder order(const OrderFields &fields)
{
    return readOrder(fields, [](const QString &) { return std::optional<QString>("ni2"); }).order;
}

inline QString uuid(int n)
{
    return QString("00000000-0000-4000-8000-%1").arg(n, 12, 10, QChar('0'));
}

/// A fact with the header filled in; `minute` counts from 08:00 local time on the day of the visit.
inline QJsonObject fact(int n, const QString &kind, int minute, QJsonObject body)
{
    body.insert("id", uuid(n));
    body.insert("kind", kind);
    body.insert("at", QString("2026-03-04T%1:%2:00-06:00")
                          .arg(8 + minute / 60, 2, 10, QChar('0'))
                          .arg(minute % 60, 2, 10, QChar('0')));
    return body;
}

inline QJsonObject voltages(double volts)
{
    return {{"tip_ground", volts}, {"ring_ground", volts}, {"tip_ring", volts}};
}

inline QJsonObject safety(int n, int minute, double acVolts = 0.2)
{
    return fact(
        n, "safety", minute,
        {{"office_connected", false},
         {"ac_v", voltages(acVolts)},
         {"dc_v", voltages(0.1)},
         {"confirmed", QJsonArray{"foreign_voltage", "bonding_ground", "storm", "work_position"}}});
}

inline QJsonObject call(int n, int minute, const char *channel, const char *direction,
                        const char *service, const char *dn, const char *outcome = "ok")
{
    return fact(n, "call", minute,
                {{"channel", channel},
                 {"direction", direction},
                 {"service", service},
                 {"dn", dn},
                 {"outcome", outcome}});
}

inline QJsonObject detector(int n, int minute)
{
    return fact(n, "detector", minute,
                {{"path", "self_call"},
                 {"channels", QJsonArray{"B1", "B2"}},
                 {"quiet_seconds", 12},
                 {"quiet_bit_errors", 0},
                 {"injections", 3},
                 {"injected", 3},
                 {"seen_bit_errors", 3},
                 {"seen_errored_seconds", 3},
                 {"cleared", true}});
}

inline QJsonObject run(int n, int minute, int bitErrors = 0, int erroredSeconds = 0,
                       int seconds = 900)
{
    const int end = minute * 60 + seconds;
    return fact(n, "run", minute + seconds / 60,
                {{"path", "self_call"},
                 {"channels", QJsonArray{"B1", "B2"}},
                 {"from_dn", "2175550143"},
                 {"to_dn", "2175550144"},
                 {"interface", "st"},
                 {"pattern", "prbs11"},
                 {"rate", 64000},
                 {"started", fact(0, "", minute, {})["at"]},
                 {"ended", QString("2026-03-04T%1:%2:%3-06:00")
                               .arg(8 + end / 3600, 2, 10, QChar('0'))
                               .arg(end / 60 % 60, 2, 10, QChar('0'))
                               .arg(end % 60, 2, 10, QChar('0'))},
                 {"stopped_early", false},
                 {"bit_errors", bitErrors},
                 {"errored_seconds", erroredSeconds},
                 {"severely_errored_seconds", 0},
                 {"sync_losses", 0}});
}

/// What the program writes when somebody voids fact `voided`.
inline QJsonObject voiding(int n, int minute, int voided, const QString &because)
{
    return fact(n, "void", minute, {{"fact", uuid(voided)}, {"because", because}, {"by", "Dana"}});
}

inline QList<QJsonObject> briFacts()
{
    return {safety(1, 5),
            fact(2, "self_test", 8, {{"outcome", "passed"}}),
            fact(3, "loop", 10,
                 {{"dc_resistance_ohm", 612}, {"loss_db", 28.4}, {"frequency_hz", 40000}}),
            fact(4, "layer", 15, {{"layer", 1}, {"interface", "u"}, {"outcome", "up"}}),
            fact(5, "layer", 16, {{"layer", 1}, {"interface", "st"}, {"outcome", "up"}}),
            fact(6, "layer", 17, {{"layer", 2}, {"terminal", 1}, {"outcome", "up"}, {"tei", 64}}),
            fact(7, "layer", 18, {{"layer", 2}, {"terminal", 2}, {"outcome", "up"}, {"tei", 65}}),
            fact(8, "layer", 19, {{"layer", 3}, {"terminal", 1}, {"outcome", "up"}}),
            fact(9, "layer", 20, {{"layer", 3}, {"terminal", 2}, {"outcome", "up"}}),
            call(10, 22, "B1", "out", "voice", "2175550143"),
            call(11, 23, "B1", "in", "voice", "2175550143"),
            call(12, 24, "B1", "in", "data", "2175550143"),
            call(13, 25, "B2", "out", "data", "2175550144"),
            detector(14, 30),
            run(15, 32)};
}

inline QJsonObject analog(int n, int minute, const char *quantity, QJsonValue value,
                          const char *unit = nullptr)
{
    QJsonObject body{{"quantity", quantity}, {"value", value}};
    if (unit)
        body.insert("unit", unit);
    return fact(n, "analog", minute, body);
}

inline QList<QJsonObject> analogFacts()
{
    return {safety(1, 5),
            fact(2, "loop", 8, {{"dc_resistance_ohm", 700}}),
            analog(3, 10, "loop_current", 31.5, "mA"),
            analog(4, 11, "loss_1004", 6.2, "dB"),
            analog(5, 12, "noise", 14, "dBrnC"),
            analog(6, 13, "power_influence", 78, "dBrnC"),
            analog(7, 14, "polarity", true),
            analog(8, 15, "dial_tone", true),
            analog(9, 16, "ringing", true),
            call(10, 18, "B1", "out", "voice", "2175550150"),
            call(11, 19, "B1", "in", "voice", "2175550150")};
}

/// The same facts with other ids; run and call name the numbers of the order.
inline QList<QJsonObject> factsFor(const OrderFields &order, QList<QJsonObject> facts, int from)
{
    for (QJsonObject &fact : facts) {
        fact["id"] = uuid(from++);
        for (const auto &[was, column] :
             {std::pair("2175550143", "dn_1"), std::pair("2175550144", "dn_2"),
              std::pair("2175550150", "dn_1")})
            for (const char *key : {"dn", "from_dn", "to_dn"})
                if (fact.value(QLatin1StringView(key)).toString() == QLatin1StringView(was))
                    fact[key] = QString(order.value(column)).remove('-');
    }
    return facts;
}

/// One of each kind that no order needs, and the keys that are seldom written.
inline QList<QJsonObject> seldomFacts()
{
    QJsonObject card = safety(50, 1);
    card["place"] = "terminal 4";
    card["meter_proved"] = true;
    card["wet"] = false;
    card["named_by_office"] = QJsonObject{{"by", "Lee"}, {"what", "span power"}, {"volts", 130}};
    card["pair"] = "17-206";
    QJsonObject slipped = run(51, 2);
    slipped["slips"] = 1;
    return {card,
            slipped,
            fact(52, "visit", 1,
                 {{"arrived", "2026-03-04T08:00:00-06:00"},
                  {"left", "2026-03-04T10:00:00-06:00"},
                  {"result", "worked"}}),
            fact(53, "changed", 2, {{"what", "pair"}, {"to", "17-206"}, {"text", "cut over"}}),
            fact(54, "layer", 3,
                 {{"layer", 3},
                  {"terminal", 1},
                  {"outcome", "down"},
                  {"cause", 27},
                  {"cause_location", "public_local"}}),
            fact(55, "loop", 3, {{"from", "office"}, {"dc_resistance_ohm", 600}}),
            fact(56, "cleared", 4, {{"what", "contact"}, {"text", "joint remade"}}),
            fact(57, "hazard_closed", 5,
                 {{"hazard", uuid(50)}, {"source", "power"}, {"by", "Lee"}, {"reference", "7"}}),
            fact(58, "referred", 6,
                 {{"to", "cable desk"}, {"reference", "7"}, {"waiting_on", "plant"}}),
            fact(59, "made_with", 7,
                 {{"facts", QJsonArray{uuid(50), uuid(51)}}, {"instrument", "TS-4"}}),
            fact(60, "desk", 8, {{"what", "jumper_run"}, {"by", "Lee"}, {"text", "frame 3"}}),
            fact(61, "note", 9, {{"text", "wet cable"}})};
}

inline QJsonObject record(const ServiceOrder &order, const QList<QJsonObject> &facts)
{
    QJsonArray list;
    for (const QJsonObject &fact : facts)
        list << fact;
    return {{"order", order.number}, {"installer", "K7"}, {"instrument", "TS-4"}, {"facts", list}};
}

inline Instrument instrument()
{
    return {"TS-4", "S-1021", "basic-rate test set", {{QDate(2025, 9, 1), QDate(2026, 9, 1)}}};
}

inline DecisionInput input(const OrderFields &fields, const QList<QJsonObject> &facts)
{
    DecisionInput input;
    input.order = order(fields);
    input.scope = scopeOf(input.order, {});
    input.instruments = {instrument()};
    input.limitSet = "2026-1";
    QList<QJsonObject> recorded;
    std::vector<Fact> voids; // no record holds them
    for (const QJsonObject &each : facts)
        if (each["kind"] == "void")
            voids.push_back({each["id"].toString(),
                             *Moment::parse(each["at"].toString()),
                             input.order.number,
                             {},
                             {},
                             {},
                             VoidFact{each["fact"].toString(), each["because"].toString(),
                                      each["by"].toString()}});
        else
            recorded << each;
    auto read = readJobRecord(record(input.order, recorded), "record", [] { return QString(); });
    if (!read)
        qFatal("%s", qPrintable(read.error().text()));
    input.facts = read->facts;
    input.facts.insert(input.facts.end(), voids.begin(), voids.end());
    return input;
}

} // namespace loopwright::jobs
