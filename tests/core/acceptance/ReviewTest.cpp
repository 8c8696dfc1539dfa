#include "core/acceptance/Review.h"

#include "core/acceptance/Criteria.h"
#include "tests/support/Job.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class ReviewTest : public QObject
{
    Q_OBJECT

    const LimitSet m_limits = limits();

    Findings said(const OrderFields &fields, const QString &key, const QJsonObject &typed)
    {
        const DecisionInput in = input(fields, {});
        for (const Need &need : needsOf(in.order, in.scope, m_limits))
            if (need.key == key)
                return review(need, typed, in, m_limits);
        qFatal("no such need");
    }

private slots:
    void says_data()
    {
        QTest::addColumn<bool>("analog");
        QTest::addColumn<QString>("need");
        QTest::addColumn<QJsonObject>("typed");
        QTest::addColumn<QString>("codes");
        const auto row = [](const char *name, bool analog, const char *need,
                            const QJsonObject &typed, const char *codes) {
            QTest::newRow(name) << analog << QString(need) << typed << QString(codes);
        };
        row("an empty card", false, "safety", {}, "");
        row("one dangerous reading alone", false, "safety",
            {{"ac_v", QJsonObject{{"tip_ring", 80}}}}, "hazard ac_v.tip_ring");
        row("beside a slip", false, "safety",
            {{"ac_v", QJsonObject{{"tip_ring", "8o"}, {"tip_ground", 51}}}},
            "hazard ac_v.tip_ground");
        row("battery of a connected office", false, "safety",
            {{"office_connected", true}, {"dc_v", QJsonObject{{"tip_ring", -52}}}}, "");
        row("foreign battery", false, "safety",
            {{"office_connected", false}, {"dc_v", QJsonObject{{"tip_ring", 24}}}},
            "foreign_battery dc_v.tip_ring");
        row("a trouble on a dead pair", false, "safety",
            {{"office_connected", false}, {"ac_v", QJsonObject{{"tip_ring", 3}}}},
            "trouble ac_v.tip_ring");
        row("26 V where it is wet", false, "safety",
            {{"wet", true}, {"ac_v", QJsonObject{{"tip_ring", 26}}}}, "hazard ac_v.tip_ring");
        row("voltages that do not fit", false, "safety",
            {{"office_connected", true},
             {"dc_v", QJsonObject{{"tip_ground", 0}, {"ring_ground", -48}, {"tip_ring", 2}}}},
            "contradiction dc_v.tip_ring");
        row("a hazard before what does not fit", false, "safety",
            {{"office_connected", true},
             {"ac_v", QJsonObject{{"tip_ground", 0}, {"ring_ground", 120}, {"tip_ring", 6}}}},
            "hazard ac_v.ring_ground contradiction ac_v.tip_ring");
        row("no resistance", false, "loop.measured", {{"dc_resistance_ohm", 0}},
            "contradiction dc_resistance_ohm");
        row("a pair that amplifies", false, "loop.measured", {{"loss_db", -1}},
            "contradiction loss_db");
        row("a telephone line that amplifies", true, "analog.loss_1004", {{"value", -1}},
            "contradiction value");
        row("ringing beyond belief", true, "analog.ringing_voltage", {{"value", 151}},
            "contradiction value");
        row("an analog resistance without coils", true, "loop.measured",
            {{"dc_resistance_ohm", 1400}}, "over_limit dc_resistance_ohm");
        row("a cause from the far end", false, "call.out.B1.voice",
            {{"outcome", "failed"}, {"cause", 88}, {"cause_location", "private_remote"}},
            "cause cause cause_location cause_location");
        row("more errors than were sent", false, "detector.B1",
            {{"injections", 3}, {"seen_bit_errors", 10}}, "over_limit seen_bit_errors");
        row("more errored seconds than injections make", false, "detector.B1",
            {{"injections", 3}, {"seen_errored_seconds", 7}}, "over_limit seen_errored_seconds");
        row("no errored second", false, "detector.B1",
            {{"injections", 3}, {"seen_errored_seconds", 0}}, "not_seen seen_errored_seconds");
        row("counters left as they were", false, "detector.B1", {{"cleared", false}},
            "not_cleared cleared");
        row("who closes a contact with power", false, "hazard_closed",
            {{"source", "power"}, {"by", "Lee"}}, "supervisor reference");
        row("with the utility's reference", false, "hazard_closed",
            {{"source", "power"}, {"by", "Lee"}, {"reference", "7"}}, "");
        row("resistance too high", false, "loop.measured", {{"dc_resistance_ohm", 1301}},
            "over_limit dc_resistance_ohm");
        row("resistance at the limit", false, "loop.measured", {{"dc_resistance_ohm", 1300}}, "");
        row("loss too high", false, "loop.measured", {{"loss_db", 42.1}}, "over_limit loss_db");
        row("loss at another frequency", false, "loop.measured",
            {{"loss_db", 60}, {"frequency_hz", 1004}}, "");
        row("errors in the quiet seconds", false, "detector.B1", {{"quiet_bit_errors", 2}},
            "over_limit quiet_bit_errors");
        row("a layer down", false, "layer.1.u", {{"outcome", "down"}}, "first_check outcome");
        row("a layer down by a cause", false, "layer.3.1", {{"outcome", "down"}, {"cause", 88}},
            "cause cause first_check outcome");
        const QJsonObject run{{"started", "2026-03-04T08:30:00-06:00"},
                              {"ended", "2026-03-04T08:45:00-06:00"},
                              {"bit_errors", 2},
                              {"errored_seconds", 9},
                              {"sync_losses", 0}};
        row("totals that cannot be true", false, "run.B1", run, "contradiction errored_seconds");
        QJsonObject over = run;
        over["bit_errors"] = 60;
        row("a run over its limits", false, "run.B1", over, "over_limit bit_errors");
        QJsonObject slipped = run;
        slipped["bit_errors"] = slipped["errored_seconds"] = 0;
        slipped["slips"] = 1;
        row("a run with a slip", false, "run.B1", slipped, "over_limit slips");
        row("a layer up", false, "layer.1.u", {{"outcome", "up"}}, "");
        row("a failed call", false, "call.out.B1.voice", {{"outcome", "failed"}, {"cause", 17}},
            "cause cause");
        row("a good call", false, "call.out.B1.voice", {{"outcome", "ok"}}, "");
        row("quiet too short", false, "detector.B1", {{"quiet_seconds", 9}},
            "over_limit quiet_seconds");
        row("not every error seen", false, "detector.B1",
            {{"injections", 3}, {"seen_bit_errors", 2}}, "not_seen seen_bit_errors");
        row("good current", true, "analog.loop_current", {{"value", 32}}, "good value");
        row("poor noise", true, "analog.noise", {{"value", 40}}, "poor value");
        row("no dial tone", true, "analog.dial_tone", {{"value", false}}, "poor value");
        row("nothing found, and what was done", false, "cleared",
            {{"what", "nothing_found"}, {"text", "joint remade"}}, "nothing_found text");
        row("nothing found", false, "cleared", {{"what", "nothing_found"}}, "");
        row("what was done", false, "cleared", {{"what", "contact"}, {"text", "joint remade"}}, "");
        row("no value", true, "analog.noise", {{"value", "1x"}}, "");
    }
    void says()
    {
        QFETCH(bool, analog);
        QFETCH(QString, need);
        QFETCH(QJsonObject, typed);
        QFETCH(QString, codes);
        QStringList found;
        for (const Finding &each : said(analog ? analogFields() : briFields(), need, typed)) {
            found << each.code << each.field;
            QVERIFY(each.reason.english().size() > 8);
        }
        QCOMPARE(found.join(' '), codes);
    }
    /// What is typed is compared with the record, as the decision does it.
    void theRecordThatDoesNotExplainWhatIsTypedIsTold()
    {
        const QJsonObject makeup{
            {"elements",
             QJsonArray{QJsonObject{{"type", "section"}, {"gauge_awg", 26}, {"length_ft", 6000}}}}};
        const auto in = input(briFields(), {fact(40, "loop", 1, {{"makeup", makeup}})});
        const auto codes = [&](double ohms) {
            QStringList found;
            for (const Need &each : needsOf(in.order, in.scope, m_limits))
                if (each.key == u"loop.measured")
                    for (const Finding &one :
                         review(each, {{"dc_resistance_ohm", ohms}}, in, m_limits))
                        found << one.code << one.field;
            return found.join(' ');
        };
        QCOMPARE(codes(1250), "record_wrong dc_resistance_ohm");
        QCOMPARE(codes(500), ""); // 6000 ft of 26 AWG are about 83 ohm for each 1000 ft of pair
    }
    void theCardSaysThatTheOfficeIsDisconnected_data()
    {
        QTest::addColumn<bool>("analog");
        QTest::addColumn<QString>("need");
        QTest::addColumn<QJsonObject>("typed");
        QTest::addColumn<bool>("told");
        const QJsonObject up{{"outcome", "up"}}, ok{{"outcome", "ok"}};
        QTest::newRow("a layer up") << false << "layer.1.u" << up << true;
        QTest::newRow("a layer down")
            << false << "layer.1.u" << QJsonObject{{"outcome", "down"}} << false;
        QTest::newRow("a call") << false << "call.out.B1.voice" << ok << true;
        QTest::newRow("a failed call")
            << false << "call.out.B1.voice" << QJsonObject{{"outcome", "failed"}} << false;
        QTest::newRow("current") << true << "analog.loop_current" << QJsonObject{{"value", 32}}
                                 << true;
        QTest::newRow("no current")
            << true << "analog.loop_current" << QJsonObject{{"value", 0}} << false;
        QTest::newRow("dial tone")
            << true << "analog.dial_tone" << QJsonObject{{"value", true}} << true;
        QTest::newRow("noise") << true << "analog.noise" << QJsonObject{{"value", 12}} << false;
    }
    void theCardSaysThatTheOfficeIsDisconnected()
    {
        QFETCH(bool, analog);
        QFETCH(QString, need);
        QFETCH(QJsonObject, typed);
        QFETCH(bool, told);
        const QJsonObject feed = changed(2, 6, "feed");
        for (const QJsonValue &connected : {QJsonValue(false), QJsonValue(true), QJsonValue()}) {
            QJsonObject card = safety(1, 5);
            card["office_connected"] = connected.isNull() ? QJsonValue(false) : connected;
            card["dc_v"] = voltages(0.1);
            const auto in = input(analog ? analogFields() : briFields(),
                                  connected.isNull() ? QList{card, feed} : QList{card});
            bool doubted = false;
            for (const Need &each : needsOf(in.order, in.scope, m_limits))
                if (each.key == need)
                    for (const Finding &found : review(each, typed, in, m_limits))
                        doubted = doubted || found.code == "office_connected";
            QCOMPARE(doubted, told && connected == QJsonValue(false));
        }
    }

    // At the field, when it is recorded, and in the decision.
    void saysTheSameWordsEverywhere_data()
    {
        QTest::addColumn<bool>("analog");
        QTest::addColumn<QString>("need");
        QTest::addColumn<QString>("criterion");
        QTest::addColumn<QJsonObject>("typed");
        QTest::newRow("no resistance") << false << "loop.measured"
                                       << "loop" << QJsonObject{{"dc_resistance_ohm", 0}};
        QTest::newRow("a pair that amplifies")
            << false << "loop.measured"
            << "loop" << QJsonObject{{"loss_db", -4}, {"frequency_hz", 40000}};
        QTest::newRow("a line that amplifies") << true << "analog.loss_1004"
                                               << "loss_1004" << QJsonObject{{"value", -4}};
        QTest::newRow("ringing") << true << "analog.ringing_voltage"
                                 << "ringing_voltage" << QJsonObject{{"value", 300}};
        QTest::newRow("voltages")
            << false << "safety"
            << "safety"
            << QJsonObject{
                   {"office_connected", true},
                   {"ac_v", voltages(0.2)},
                   {"dc_v", QJsonObject{{"tip_ground", 0}, {"ring_ground", -48}, {"tip_ring", 2}}},
                   {"confirmed",
                    QJsonArray{"foreign_voltage", "bonding_ground", "storm", "work_position"}}};
    }
    void saysTheSameWordsEverywhere()
    {
        QFETCH(bool, analog);
        QFETCH(QString, need);
        QFETCH(QString, criterion);
        QFETCH(QJsonObject, typed);
        const OrderFields fields = analog ? analogFields() : briFields();
        const Findings found = said(fields, need, typed);
        QVERIFY(!found.empty());
        QCOMPARE(found.front().code, QString("contradiction"));
        QJsonObject body = typed;
        const DecisionInput empty = input(fields, {});
        for (const Need &each : needsOf(empty.order, empty.scope, m_limits))
            if (each.key == need)
                for (auto it = each.preset.begin(); it != each.preset.end(); ++it)
                    if (!body.contains(it.key()) && it.key() != u"frequency_hz")
                        body.insert(it.key(), it.value());
        const QString kind = need == u"safety" ? "safety" : analog ? "analog" : "loop";
        QList<QJsonObject> facts;
        if (kind != u"safety")
            facts << safety(1, 5);
        facts << fact(2, kind, 10, body);
        const Decision decision = decide(input(fields, facts), m_limits);
        const QString sentence = found.front().reason.english().chopped(1); // its full stop
        QVERIFY2(decision.criterion(criterion)->reason.english().contains(sentence),
                 qPrintable(decision.criterion(criterion)->reason.english()));
    }
    void namesNoCauseWithoutAList()
    {
        OrderFields fields = briFields();
        fields["protocol_variant"] = "1tr6";
        const Findings found =
            said(fields, "call.out.B1.voice", {{"outcome", "failed"}, {"cause", 17}});
        QCOMPARE(found.size(), 1U);
        QVERIFY(!found.front().reason.english().contains("busy", Qt::CaseInsensitive));
    }
};

QTEST_APPLESS_MAIN(ReviewTest)
#include "ReviewTest.moc"
