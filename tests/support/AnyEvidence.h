#pragma once
// Orders and histories that nobody planned, for property tests: every variant, scope and kind of
// line, evidence good and bad, of any instrument, pair and visit, in any order of time, struck out
// and overtaken. The same seed gives the same.

#include "core/acceptance/DecisionInput.h"
#include "core/identifiers/ProtocolVariant.h"
#include "tests/support/Jobs.h"

#include <random>

namespace loopwright::jobs {

class AnyEvidence
{
public:
    explicit AnyEvidence(quint64 seed)
        : m_random(seed)
    {
    }

    int below(int limit) { return int(m_random() % quint64(limit)); }
    bool chance(int percent) { return below(100) < percent; }
    template<class T>
    T one(std::initializer_list<T> list)
    {
        return *(list.begin() + below(int(list.size())));
    }

    /// An order whose identifiers are in order.
    ServiceOrder order()
    {
        for (;;) {
            ServiceOrder made = chance(30) ? analogOrder() : basicRateOrder();
            made.feederPair = chance(15) ? "F-12" : "";
            if (findVariant(made.variant) && worst(checkOrderIdentifiers(made)) != Severity::Error)
                return made;
        }
    }

    OrderScope scope()
    {
        return one({OrderScope::Full, OrderScope::Full, OrderScope::Full, OrderScope::MoveWithin,
                    OrderScope::Repair, OrderScope::NumbersOnly, OrderScope::RecordOnly,
                    OrderScope::Nothing});
    }

    /// An order with up to `most` facts behind it, none later than 2026-03-09T18:00.
    DecisionInput input(int most)
    {
        DecisionInput made;
        made.order = order();
        made.scope = scope();
        made.limitSet = "2026-1";
        Instrument second = instrument();
        second.key = "TS-5";
        made.instruments = {instrument(),
                            second,
                            {"OLD", "S-7", "meter", {{QDate(2020, 1, 1), QDate(2021, 1, 1)}}}};
        made.takenIn = Moment::parse(u"2026-03-01T08:00:00-06:00");
        const int count = below(most + 1);
        for (int i = 0; i < count; ++i)
            addFact(made);
        if (chance(10))
            addHazardOfOtherOrder(chance(50) ? made.pairCards : made.premisesCards);
        for (int i = 0; i < below(3); ++i)
            made.changes.push_back(
                {one({ChangedWhat::Pair, ChangedWhat::Identifiers, ChangedWhat::LineEquipment}),
                 moment()});
        return made;
    }

    QString id() { return uuid(++m_ids); }

private:
    ServiceOrder analogOrder()
    {
        ServiceOrder made = loopwright::jobs::order(analogFields());
        return made;
    }

    ServiceOrder basicRateOrder()
    {
        ServiceOrder made = loopwright::jobs::order(briFields());
        const auto variants = allVariants();
        const ProtocolVariant &variant = variants[std::size_t(below(int(variants.size())))];
        made.variant = variant.key;
        made.b1 = one(
            {Services(Service::Voice), Service::Voice | Service::Data, Services(Service::Data)});
        made.b2 =
            one({Services(), Services(Service::Data), Services(Service::Voice | Service::Data)});
        made.d = chance(20) ? Services(Service::Packet) : Services();
        made.dataRate = chance(20) ? 56000 : 64000;
        made.ntSupplied = chance(50);
        if (chance(10))
            made.line = one({LineMode::Multipoint, LineMode::PointToPoint});
        made.terminals.clear();
        const int terminals = 1 + below(variant.pointToPoint ? 1 : 3);
        for (int n = 1; n <= terminals; ++n) {
            const QString local = QString("555%1").arg(142 + n, 4, 10, QChar('0'));
            const QString digits = "217" + local;
            const QString spid =
                !variant.hasSpid()
                    ? QString()
                    : one<QString>({digits + "0101", digits + "01", "01" + local + "0",
                                    "01" + local + QString::number(n), digits + QString::number(n),
                                    QString()});
            made.terminals.push_back(
                {n, digits, spid, chance(70) ? "auto" : one({QString("0"), QString("5")}), {}});
        }
        return made;
    }

    Moment moment()
    {
        // Days of work, whole minutes: two things may be at the same time.
        return *Moment::parse(QString("2026-03-0%1T%2:%3:00-06:00")
                                  .arg(2 + below(8))
                                  .arg(8 + below(9), 2, 10, QChar('0'))
                                  .arg(below(60), 2, 10, QChar('0')));
    }

    void addHazardOfOtherOrder(std::vector<Fact> &cards)
    {
        SafetyFact card;
        card.acV = Voltages{0, 120, 120};
        cards.push_back({id(), moment(), "26-0999", "K7", {}, {}, card});
        if (chance(50))
            cards.push_back({id(),
                             moment(),
                             "26-0999",
                             "K7",
                             {},
                             {},
                             HazardClosedFact{cards.back().id, HazardSource::Power, "Dana", {}}});
    }

    QJsonObject voltages()
    {
        // Of one wire, so that they fit; now and then they do not, or one is missing.
        const double volts = chance(80) ? 0.3 : one({3.0, 12.0, 55.0, 80.0, 130.0});
        QJsonObject made{{"tip_ground", 0}, {"ring_ground", -volts}, {"tip_ring", volts}};
        if (chance(5))
            made.insert("tip_ring", 7);
        if (chance(10))
            made.remove(one({"tip_ground", "ring_ground", "tip_ring"}));
        return made;
    }

    QJsonArray channels()
    {
        return one({QJsonArray{"B1"}, QJsonArray{"B2"}, QJsonArray{"B1", "B2"}});
    }

    QJsonObject body(const DecisionInput &made)
    {
        const ServiceOrder &order = made.order;
        const int terminal =
            order.terminals.empty()
                ? 1
                : order.terminals[std::size_t(below(int(order.terminals.size())))].number;
        const QString dn =
            order.terminals.empty() ? QString("2175550143") : order.terminal(terminal)->dn;
        const Moment at = moment();
        switch (below(15)) {
        case 0:
            return {{"kind", "visit"},
                    {"arrived", at.text()},
                    {"at", at.text()},
                    {"left", at.plusSeconds(3600.0 * (1 + below(6))).text()}};
        case 1:
        case 2:
            return {{"kind", "safety"},
                    {"office_connected", chance(50)},
                    {"ac_v", voltages()},
                    {"dc_v", voltages()},
                    {"confirmed", chance(85) ? QJsonArray{"foreign_voltage", "bonding_ground",
                                                          "storm", "work_position"}
                                             : QJsonArray{"storm"}}};
        case 3:
            if (chance(20))
                return {{"kind", "changed"}, {"what", "pair"}, {"to", "88-1"}};
            return {{"kind", "changed"},
                    {"what", one({"pair", "line_equipment", "nt", "identifiers", "feed"})}};
        case 4:
            return {{"kind", "self_test"}, {"outcome", one({"passed", "failed"})}};
        case 5:
            return {{"kind", "loop"},
                    {"dc_resistance_ohm", one({300, 900, 1290, 1900})},
                    {"loss_db", one({20.0, 41.9, 48.0})},
                    {"frequency_hz", one({40000, 1004})}};
        case 6:
            return {
                {"kind", "loop"},
                {"makeup",
                 QJsonObject{{"elements",
                              QJsonArray{QJsonObject{{"type", "section"},
                                                     {"gauge_awg", 26},
                                                     {"length_ft", one({3000, 9000, 19000})}},
                                         QJsonObject{{"type", "bridged_tap"},
                                                     {"gauge_awg", 24},
                                                     {"length_ft", one({100, 1500, 7000})}}}}}}};
        case 7:
        case 8: {
            const int layer = 1 + below(3);
            QJsonObject made{
                {"kind", "layer"}, {"layer", layer}, {"outcome", chance(75) ? "up" : "down"}};
            if (layer == 1)
                made.insert("interface", one({"u", "st"}));
            else
                made.insert("terminal", terminal);
            if (layer == 2 && chance(90))
                made.insert("tei", one({64, 65, 66, 0, 5, 12}));
            return made;
        }
        case 9:
        case 10: {
            QJsonObject made{{"kind", "call"},
                             {"channel", one({"B1", "B2"})},
                             {"direction", one({"out", "in"})},
                             {"service", one({"voice", "data"})},
                             {"outcome", chance(75) ? "ok" : "failed"}};
            if (chance(80))
                made.insert("dn", dn);
            if (made["outcome"] == "failed")
                made.insert("cause", one({17, 18, 31, 58, 88}));
            if (chance(15))
                made.insert("announced_dn", one({dn, QString("2175550199")}));
            return made;
        }
        case 11:
            return {{"kind", "detector"},
                    {"path", one({"self_call", "test_line"})},
                    {"channels", channels()},
                    {"quiet_seconds", one({12, 9})},
                    {"quiet_bit_errors", 0},
                    {"injections", 3},
                    {"seen_bit_errors", one({3, 3, 2})},
                    {"seen_errored_seconds", 3},
                    {"cleared", chance(90)}};
        case 12: {
            const int seconds = one({900, 900, 300, 950});
            const int errors = one({0, 0, 1, 5, 60});
            return {{"kind", "run"},
                    {"path", one({"self_call", "self_call", "test_line", "nt_loop"})},
                    {"channels", channels()},
                    {"from_dn", dn},
                    {"to_dn", one({dn, QString("2175550144")})},
                    {"interface", one({"u", "st"})},
                    {"rate", chance(80) ? order.dataRate : 56000},
                    {"at", at.plusSeconds(seconds).text()},
                    {"started", at.text()},
                    {"ended", at.plusSeconds(seconds).text()},
                    {"stopped_early", seconds == 300},
                    {"bit_errors", errors},
                    {"errored_seconds", std::min(errors, one({1, 5, 60}))},
                    {"severely_errored_seconds", 0},
                    {"sync_losses", chance(90) ? 0 : 1}};
        }
        case 13: {
            const auto quantities = analogQuantities();
            const AnalogQuantityInfo &about =
                quantities[std::size_t(below(int(quantities.size())))];
            const double value = about.min + (about.max - about.min) * below(100) / 100.0;
            return {{"kind", "analog"},
                    {"quantity", toText(about.quantity)},
                    {"value", about.yesOrNo ? QJsonValue(chance(70)) : QJsonValue(value)}};
        }
        default:
            return {{"kind", "cleared"},
                    {"what", one({"contact", "nothing_found"})},
                    {"text", "joint re-made"}};
        }
    }

    void addFact(DecisionInput &made)
    {
        if (!made.facts.empty() && chance(6)) {
            const Fact &struck = made.facts[std::size_t(below(int(made.facts.size())))];
            made.facts.push_back({id(),
                                  moment(),
                                  made.order.number,
                                  {},
                                  {},
                                  {},
                                  VoidFact{struck.id, "typing error", "Dana"}});
            return;
        }
        QJsonObject fact = body(made);
        if (!fact.contains("at"))
            fact.insert("at", moment().text());
        fact.insert("id", id());
        fact.insert("installer", one({"K7", "K7", "M2"}));
        if (const QString key =
                one({QString("TS-4"), QString("TS-4"), QString("OLD"), QString("XX"), QString()});
            !key.isEmpty())
            fact.insert("instrument", key);
        if (const QString pair =
                one({QString(), made.order.pair, made.order.pair, QString("99-9")});
            !pair.isEmpty())
            fact.insert("pair", pair);
        const auto read = readJobRecord({{"order", made.order.number}, {"facts", QJsonArray{fact}}},
                                        "record", [] { return QString(); });
        if (read && checkFits(read->facts.front(), made.order, "record"))
            made.facts.push_back(read->facts.front());
    }

    std::mt19937_64 m_random;
    int m_ids = 0;
};

} // namespace loopwright::jobs
