#include "core/acceptance/Review.h"

#include "core/acceptance/Criteria.h"
#include "tests/support/Jobs.h"

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
        row("resistance too high", false, "loop.measured", {{"dc_resistance_ohm", 1301}},
            "over_limit dc_resistance_ohm");
        row("resistance at the limit", false, "loop.measured", {{"dc_resistance_ohm", 1300}}, "");
        row("loss too high", false, "loop.measured", {{"loss_db", 42.1}}, "over_limit loss_db");
        row("loss at another frequency", false, "loop.measured",
            {{"loss_db", 60}, {"frequency_hz", 1004}}, "");
        row("a layer down", false, "layer.1.u", {{"outcome", "down"}}, "first_check outcome");
        row("a layer down by a cause", false, "layer.3.1", {{"outcome", "down"}, {"cause", 88}},
            "cause cause first_check outcome");
        const QJsonObject run{{"started", "2026-03-04T08:30:00-06:00"},
                              {"ended", "2026-03-04T08:45:00-06:00"},
                              {"bit_errors", 2},
                              {"errored_seconds", 9}};
        row("totals that cannot be true", false, "run.B1", run, "contradiction errored_seconds");
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
            QVERIFY(each.reason.size() > 8);
        }
        QCOMPARE(found.join(' '), codes);
    }
    void namesNoCauseWithoutAList()
    {
        OrderFields fields = briFields();
        fields["protocol_variant"] = "1tr6";
        const Findings found =
            said(fields, "call.out.B1.voice", {{"outcome", "failed"}, {"cause", 17}});
        QCOMPARE(found.size(), 1U);
        QVERIFY(!found.front().reason.contains("busy", Qt::CaseInsensitive));
    }
};

QTEST_APPLESS_MAIN(ReviewTest)
#include "ReviewTest.moc"
