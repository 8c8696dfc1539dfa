// Every kind of fact that the page records is corrected there: its entry is filled with what was
// recorded, and what is recorded next takes its place, with the time, person and instrument of the
// old one.

#include "app/desktop/form/Form.h"
#include "app/desktop/job/AttemptList.h"
#include "app/desktop/job/RunClock.h"
#include "app/desktop/job/StationPanel.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

using namespace loopwright;
using namespace loopwright::jobs;

class JobCorrectionsTest : public QObject
{
    Q_OBJECT

    static QJsonObject recorded(JobBench &bench, const QString &order, const QString &id)
    {
        const auto view = showOrder(bench.records(), order);
        for (const FactView &each : view->facts)
            if (each.fact.id == id)
                return each.fact.toJson();
        return {};
    }
    /// The facts that count and those that do not, without the voids.
    static std::vector<FactView> facts(JobBench &bench, const QString &order, bool voided)
    {
        std::vector<FactView> found;
        const auto view = showOrder(bench.records(), order);
        for (const FactView &each : view->facts)
            if (each.voided == voided && !each.fact.as<VoidFact>())
                found.push_back(each);
        return found;
    }
    /// C at the entry in the list of its part.
    static void correct(JobBench &bench, const QString &panel, const QString &id)
    {
        auto *part = bench.find<StationPanel>("panel." + panel);
        part->unfold();
        if (!part->attempts()->goTo(id))
            qFatal("%s does not list %s", qPrintable(panel), qPrintable(id));
        JobBench::key(Qt::Key_C);
    }

private slots:
    void everyKind_data()
    {
        QTest::addColumn<QString>("order");
        QTest::addColumn<QList<QJsonObject>>("before");
        QTest::addColumn<QJsonObject>("fact");
        QTest::addColumn<QString>("panel");
        QTest::addColumn<QString>("editor"); ///< that has what is wrong
        QTest::addColumn<QString>("keys");
        QTest::addColumn<QString>("key"); ///< of the fact, that is another one then
        QTest::addColumn<QJsonValue>("value");
        const auto row = [](const char *name, const QJsonObject &fact, const char *panel,
                            const char *editor, const char *keys, const char *key,
                            const QJsonValue &value, QList<QJsonObject> before = {safety(1, 5)},
                            const char *order = "A-1001") {
            QTest::newRow(name) << order << before << fact << panel << editor << keys << key
                                << value;
        };
        const QString visit = "2026-03-04T08:0%1:00-06:00";
        row("arrival", fact(90, "visit", 1, {{"arrived", visit.arg(1)}}), "visit",
            "visit.arrived.arrived", "0803", "arrived", visit.arg(3));
        row("leaving",
            fact(90, "visit", 9,
                 {{"arrived", visit.arg(1)}, {"left", visit.arg(9)}, {"result", "worked"}}),
            "leaving", "leaving.left.left", "0808", "left", visit.arg(8));
        row("safety card", safety(90, 5), "safety", "safety.place", "NT", "place", "NT", {});
        row("closed hazard",
            fact(90, "hazard_closed", 20,
                 {{"hazard", uuid(1)}, {"source", "meter"}, {"by", "Lea"}}),
            "safety", "safety.hazard_closed.by", "Lee", "by", "Lee", {safety(1, 5, 61)});
        row("instrument said afterwards",
            fact(90, "made_with", 20, {{"facts", QJsonArray{uuid(1)}}, {"instrument", "TS-9"}}),
            "instrument", "instrument.instrument", "TS-4", "instrument", "TS-4");
        row("make-up",
            fact(90, "loop", 4,
                 {{"makeup",
                   QJsonObject{{"elements", QJsonArray{QJsonObject{{"type", "section"},
                                                                   {"gauge_awg", 26},
                                                                   {"length_ft", 9000}}}}}}}),
            "makeup", "makeup.1.length", "8000", "makeup", QJsonValue());
        row("pair", briFacts()[2], "pair", "pair.loop.measured.loss_db", "27.4", "loss_db", 27.4);
        row("layer 1", briFacts()[3], "turnup", "turnup.layer.1.u.outcome", "d", "outcome", "down");
        row("layer 2", briFacts()[5], "turnup", "turnup.layer.2.1.tei", "66", "tei", 66);
        row("call", call(90, 22, "B1", "out", "voice", "2175550143"), "calls",
            "calls.call.out.B1.voice.outcome", "f", "outcome", "failed");
        row("detector check", detector(90, 30), "error_test", "error_test.detector.quiet_seconds",
            "33", "quiet_seconds", 33);
        row("run", run(90, 32, 2, 1), "error_test", "error_test.counts.bit_errors", "4",
            "bit_errors", 4, {safety(1, 5), detector(14, 30)});
        row("what was done", fact(90, "cleared", 50, {{"what", "other"}, {"text", "joint remaid"}}),
            "error_test", "error_test.cleared.text", "joint remade", "text", "joint remade",
            {safety(1, 5), detector(14, 30), run(15, 32, 900, 500)});
        row("change", fact(90, "changed", 20, {{"what", "pair"}, {"to", "17-299"}}), "remarks",
            "remarks.changed.to", "17-300", "to", "17-300");
        row("note", fact(90, "note", 20, {{"text", "dog in the yard"}}), "remarks",
            "remarks.note.text", "no dog", "text", "no dog");
        row("self-test", fact(90, "self_test", 8, {{"outcome", "passed"}}), "remarks",
            "remarks.self_test.outcome", "f", "outcome", "failed");
        row("analog quantity", analog(90, 10, "loop_current", 31.5, "mA"), "analog",
            "analog.loop_current", "32.5", "value", 32.5, {safety(1, 5)}, "A-2001");
        row("analog, yes or no", analog(90, 10, "dial_tone", true), "analog", "analog.dial_tone",
            "n", "value", false, {safety(1, 5)}, "A-2001");
    }
    void everyKind()
    {
        QFETCH(const QString, order);
        QFETCH(const QList<QJsonObject>, before);
        QFETCH(QJsonObject, fact);
        QFETCH(const QString, panel);
        QFETCH(const QString, editor);
        QFETCH(const QString, keys);
        QFETCH(const QString, key);
        QFETCH(const QJsonValue, value);
        JobBench bench({briFields(), analogFields()});
        bench.at(100);
        fact["id"] = uuid(90);
        take(bench.records(), order == u"A-1001" ? briFields() : analogFields(), before);
        take(bench.records(), order == u"A-1001" ? briFields() : analogFields(), {fact});
        const QJsonObject old = recorded(bench, order, uuid(90));
        const std::size_t count = facts(bench, order, false).size();
        bench.openJob(order);
        correct(bench, panel, uuid(90));
        auto *place = bench.find<QWidget>(editor);
        QVERIFY2(place && place->isVisible() && place->isEnabled(), qPrintable(editor));
        bench.go(editor);
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        JobBench::keys(keys);
        if (facts(bench, order, true).empty()) // a single answer by one key is recorded at once
            JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        const auto voided = facts(bench, order, true);
        QCOMPARE(voided.size(), 1U);
        QCOMPARE(voided.front().fact.id, uuid(90));
        QCOMPARE(voided.front().voidedBecause, "corrected");
        const auto stands = facts(bench, order, false);
        QCOMPARE(stands.size(), count);
        const auto made = std::ranges::find_if(stands, [&](const FactView &each) {
            return each.fact.kind() == voided.front().fact.kind() && each.fact.id != uuid(1) &&
                   std::ranges::none_of(before, [&](const QJsonObject &other) {
                       return other["id"].toString() == each.fact.id;
                   });
        });
        QVERIFY(made != stands.end());
        QJsonObject now = made->fact.toJson();
        if (!value.isNull())
            QCOMPARE(now[key], value);
        else
            QVERIFY(now[key] != old[key]);
        // All the rest is as it was recorded.
        for (const QString &each : {QString("id"), key})
            now[each] = old[each];
        if (panel == u"turnup" || panel == u"calls")
            now.remove("tei"), now.remove("dn");
        QJsonObject expected = old;
        if (panel == u"turnup" || panel == u"calls")
            expected.remove("tei"), expected.remove("dn");
        QCOMPARE(now, expected);
        QCOMPARE(showOrder(bench.records(), order)->events.back().kind, "fact_corrected");
    }

    void aRunWithItsSecondsKeepsThemWhileTheCountsAreTheirs()
    {
        JobBench bench({briFields()});
        bench.at(100);
        QJsonObject seconds = run(15, 32);
        for (const char *key :
             {"bit_errors", "errored_seconds", "severely_errored_seconds", "sync_losses"})
            seconds.remove(key);
        QJsonArray list;
        for (int i = 0; i < 900; ++i)
            list << (i == 40 ? 2 : 0);
        seconds["seconds"] = list;
        take(bench.records(), briFields(), {safety(1, 5), detector(14, 30), seconds});
        bench.openJob("A-1001");
        correct(bench, "error_test", uuid(15));
        auto *form = bench.find<Form>("error_test.counts");
        QCOMPARE(form->field("bit_errors")->typed(), "2");
        QCOMPARE(form->field("started")->typed(), "08:32:00");
        bench.go("error_test.counts.bit_errors");
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        JobBench::keys("3");
        JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        const auto stands = facts(bench, "A-1001", false);
        const auto *run = stands.back().fact.as<RunFact>();
        QVERIFY(run && !run->seconds); // they say something else
        QCOMPARE(run->bitErrors, 3);
    }

    void aRunThatCountsIsNotLost()
    {
        JobBench bench({briFields()});
        bench.at(100);
        take(bench.records(), briFields(), briFacts());
        bench.openJob("A-1001");
        bench.go("error_test.detector.quiet_seconds");
        bench.at(101);
        take(bench.records(), briFields(), {detector(40, 100)});
        bench.window().openOrder("A-1001");
        bench.go("error_test.start");
        JobBench::enter();
        correct(bench, "error_test", uuid(15));
        QCOMPARE(JobBench::focus(), "error_test.clock");
        QVERIFY(bench.find<RunClock>("error_test.clock")->log().isStarted());
        QVERIFY(facts(bench, "A-1001", true).empty());
    }

    void aChannelIsCorrectedUnderItsOwnName()
    {
        OrderFields fields = briFields();
        fields["dn_2"] = fields["dn_1"]; // no self-call: each channel has its own run
        fields["spid_2"] = fields["spid_1"];
        JobBench bench({briFields()});
        bench.at(100);
        QJsonObject check = detector(90, 30);
        check["path"] = "test_line";
        check["channels"] = QJsonArray{"B2"};
        check.remove("from_dn");
        check.remove("to_dn");
        take(bench.records(), briFields(), {safety(1, 5), check});
        bench.openJob("A-1001");
        correct(bench, "error_test", uuid(90));
        bench.go("error_test.detector.quiet_seconds");
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        JobBench::keys("44");
        JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        const auto stands = facts(bench, "A-1001", false);
        const auto *made = stands.back().fact.as<DetectorFact>();
        QVERIFY(made);
        QCOMPARE(made->quietSeconds, 44);
        QCOMPARE(made->channels, QList<Channel>{Channel::B2});
        QCOMPARE(made->path, Path::TestLine);
    }

    void aCardThatReadAHazardByASlipIsCorrected()
    {
        JobBench bench({briFields()});
        bench.at(100);
        take(bench.records(), briFields(), {safety(1, 5, 61)}); // 6.1 was read
        bench.openJob("A-1001");
        QVERIFY(!bench.find<QWidget>("safety.ac_v.tip_ground")->isEnabled());
        correct(bench, "safety", uuid(1));
        QVERIFY(bench.find<QWidget>("safety.ac_v.tip_ground")->isEnabled());
        auto *form = bench.find<Form>("safety");
        for (const char *wires : {"tip_ground", "ring_ground", "tip_ring"})
            form->field(QString("ac_v.%1").arg(wires))->setTyped("6.1");
        bench.go("safety.ac_v.tip_ground");
        JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        QCOMPARE(facts(bench, "A-1001", true).size(), 1U);
        QCOMPARE(facts(bench, "A-1001", false).size(), 1U);
        // That it was mistyped is to be said all the same: the pair stays closed until then.
        QVERIFY(bench.find<QWidget>("safety.hazard_closed")->isVisible());
        QVERIFY(!bench.find<QWidget>("turnup.layer.1.u.outcome")->isEnabled());
    }
};

QTEST_MAIN(JobCorrectionsTest)
#include "JobCorrectionsTest.moc"
