// Longer than 400 lines: one row for each way in which a criterion can end.

#include "core/acceptance/Judge.h"
#include "tests/support/Jobs.h"

#include <QTest>

#include <algorithm>
#include <cmath>
#include <random>

using namespace loopwright;
using namespace loopwright::jobs;

Q_DECLARE_METATYPE(std::function<void(QList<QJsonObject> &)>)
using Change = std::function<void(QList<QJsonObject> &)>;

namespace {

QJsonObject &at(QList<QJsonObject> &facts, int n)
{
    return *std::find_if(facts.begin(), facts.end(),
                         [n](const QJsonObject &f) { return f["id"] == uuid(n); });
}

void drop(QList<QJsonObject> &facts, int n)
{
    facts.removeIf([n](const QJsonObject &f) { return f["id"] == uuid(n); });
}

void set(QList<QJsonObject> &facts, int n, const QString &key, const QJsonValue &value)
{
    at(facts, n).insert(key, value);
}

/// Three load coils, each with a section of 22 AWG behind it.
QJsonObject loadedPair(double sectionFt, int gauge = 22)
{
    const auto section = [gauge](double feet) {
        return QJsonObject{{"type", "section"}, {"gauge_awg", gauge}, {"length_ft", feet}};
    };
    QJsonArray elements{section(3000)};
    for (int i = 0; i < 3; ++i)
        elements << QJsonObject{{"type", "load_coil"}, {"millihenry", 88}} << section(sectionFt);
    return {{"elements", elements}};
}

} // namespace

class DecideTest : public QObject
{
    Q_OBJECT

    const LimitSet m_limits = limits();

    Decision decided(const OrderFields &fields, const QList<QJsonObject> &facts)
    {
        return decide(input(fields, facts), m_limits);
    }
    void row(const char *name, const char *key, const char *outcome, const char *overall,
             const Change &change)
    {
        QTest::newRow(name) << QString(key) << QString(outcome) << QString(overall) << change;
    }
    void columns()
    {
        QTest::addColumn<QString>("key");
        QTest::addColumn<QString>("outcome");
        QTest::addColumn<QString>("overall");
        QTest::addColumn<Change>("change");
    }
    void check(const OrderFields &fields, QList<QJsonObject> facts)
    {
        QFETCH(QString, key);
        QFETCH(QString, outcome);
        QFETCH(QString, overall);
        QFETCH(Change, change);
        change(facts);
        const Decision decision = decided(fields, facts);
        const CriterionResult *criterion = decision.criterion(key);
        QVERIFY(criterion);
        const QByteArray said =
            QString(key + ": " + toText(criterion->outcome) + ": " + criterion->reason.english())
                .toUtf8();
        QVERIFY2(toText(criterion->outcome) == outcome, said);
        QVERIFY2(!criterion->reason.english().isEmpty(), said);
        QVERIFY2(outcome == "met" || outcome == "not_needed" ||
                     !criterion->next.english().isEmpty(),
                 said);
        QVERIFY2(toText(decision.outcome) == overall, said);
    }

private slots:
    void acceptsAGoodBasicRateJob()
    {
        const Decision decision = decided(briFields(), briFacts());
        for (const CriterionResult &result : decision.criteria)
            QVERIFY2(!result.open(), qPrintable(result.key + ": " + result.reason.english()));
        QCOMPARE(toText(decision.outcome), "accepted");
        QCOMPARE(decision.runs.size(), 1U);
        QCOMPARE(decision.runs[0].result, "counted");
        QVERIFY(decision.proves.contains("95 %"));
    }
    void acceptsAGoodAnalogJob()
    {
        const Decision decision = decided(analogFields(), analogFacts());
        for (const CriterionResult &result : decision.criteria)
            QVERIFY2(!result.open(), qPrintable(result.key + ": " + result.reason.english()));
        QCOMPARE(toText(decision.outcome), "accepted");
        // Quiet, and little disturbs it: the subtraction means nothing.
        QCOMPARE(toText(decision.criterion("balance")->outcome), "not_needed");
        QVERIFY(!decision.criterion("run"));
    }

    void judgesBasicRate_data()
    {
        columns();
        using F = QList<QJsonObject>;
        row("no card", "safety", "missing", "incomplete", [](F &f) { drop(f, 1); });
        row("hazard", "safety", "not_met", "not_accepted", [](F &f) { f[0] = safety(1, 5, 50.1); });
        // The check stands: for a run that is still to come.
        row("check after the run, detector", "detector", "met", "incomplete",
            [](F &f) { at(f, 14) = detector(14, 33); });
        row("card not confirmed", "safety", "missing", "incomplete",
            [](F &f) { set(f, 1, "confirmed", QJsonArray{"storm"}); });
        row("resistance high", "loop", "not_met", "not_accepted",
            [](F &f) { set(f, 3, "dc_resistance_ohm", 1300.5); });
        row("resistance at the limit", "loop", "met", "accepted",
            [](F &f) { set(f, 3, "dc_resistance_ohm", 1300); });
        row("loss high", "loop", "not_met", "not_accepted",
            [](F &f) { set(f, 3, "loss_db", 42.1); });
        row("loss a little high", "loop", "not_met", "not_accepted",
            [](F &f) { set(f, 3, "loss_db", 42.004); });
        row("loss at the limit", "loop", "met", "accepted", [](F &f) { set(f, 3, "loss_db", 42); });
        row("loss at another frequency", "loop", "met", "accepted", [](F &f) {
            set(f, 3, "frequency_hz", 1004); // the resistance and the clean run stand for it
        });
        row("loop unknown", "loop", "missing", "incomplete", [](F &f) { drop(f, 3); });
        row("resistance and a run with an error", "loop", "missing", "incomplete", [](F &f) {
            at(f, 3) = fact(3, "loop", 10, {{"dc_resistance_ohm", 612}});
            f.last() = run(15, 32, 1, 1);
        });
        const QJsonObject coiled{
            {"makeup", QJsonObject{{"elements", QJsonArray{QJsonObject{{"type", "section"},
                                                                       {"gauge_awg", 24},
                                                                       {"length_ft", 9000}},
                                                           QJsonObject{{"type", "load_coil"},
                                                                       {"millihenry", 88}}}}}}};
        row("load coil", "loop", "not_met", "not_accepted",
            [coiled](F &f) { at(f, 3) = fact(3, "loop", 11, coiled); });
        // 28 dB at 40 kHz, where the coil on record would take more than a hundred.
        row("load coil on record alone", "loop", "met", "accepted",
            [coiled](F &f) { f << fact(31, "loop", 11, coiled); });
        row("U down", "layer1", "not_met", "not_accepted",
            [](F &f) { set(f, 4, "outcome", "down"); });
        row("U down, then up", "layer1", "met", "accepted", [](F &f) {
            set(f, 4, "outcome", "down");
            f << fact(31, "layer", 21, {{"layer", 1}, {"interface", "u"}, {"outcome", "up"}});
        });
        row("S/T not seen", "layer1", "missing", "incomplete", [](F &f) { drop(f, 5); });
        row("no TEI said", "layer2", "missing", "incomplete", [](F &f) { at(f, 6).remove("tei"); });
        row("TEI out of range", "layer2", "not_met", "not_accepted",
            [](F &f) { set(f, 6, "tei", 12); });
        row("TEI at the top", "layer2", "met", "accepted", [](F &f) { set(f, 6, "tei", 126); });
        row("TEI twice", "layer2", "not_met", "not_accepted", [](F &f) { set(f, 7, "tei", 64); });
        row("layer 2 not seen", "layer2", "missing", "incomplete", [](F &f) { drop(f, 7); });
        row("SPID refused", "layer3", "not_met", "not_accepted", [](F &f) {
            set(f, 8, "outcome", "down");
            set(f, 8, "cause", 100);
        });
        row("SPID not tried", "layer3", "missing", "incomplete", [](F &f) { drop(f, 9); });
        row("voice out missing", "calls", "missing", "incomplete", [](F &f) { drop(f, 10); });
        row("voice in missing", "calls", "missing", "incomplete", [](F &f) { drop(f, 11); });
        row("data out failed", "calls", "not_met", "not_accepted", [](F &f) {
            set(f, 13, "outcome", "failed");
            set(f, 13, "cause", 58);
        });
        row("self-call fills B1 out and the second number in", "calls", "met", "accepted",
            [](F &) {});
        row("without the self-call's numbers", "calls", "missing", "incomplete", [](F &f) {
            at(f, 15).remove("from_dn");
            at(f, 15).remove("to_dn");
        });
        row("right number announced", "readback", "met", "accepted",
            [](F &f) { set(f, 10, "announced_dn", "2175550143"); });
        row("other number announced", "readback", "not_met", "not_accepted",
            [](F &f) { set(f, 10, "announced_dn", "217-555-0199"); });
        row("another number of the order announced", "readback", "not_met", "not_accepted",
            [](F &f) {
                set(f, 10, "announced_dn", "2175550144"); // the call was for the first
            });
        row("a service announced that is not granted", "readback", "not_met", "not_accepted",
            [](F &f) {
                set(f, 10, "announced_dn", "2175550143");
                set(f, 10, "announced_service", "packet");
            });
        row("announced without a word for which", "readback", "met", "accepted", [](F &f) {
            at(f, 10).remove("dn");
            set(f, 10, "announced_dn", "2175550144");
        });
        row("another number first, then the right one", "readback", "met", "accepted", [](F &f) {
            set(f, 10, "announced_dn", "2175550199");
            f << call(31, 60, "B1", "out", "voice", "2175550143");
            f.last()["announced_dn"] = "2175550143";
        });
        const auto stranger = [](F &f) {
            at(f, 10).remove("dn"); // or the far number that was called
            set(f, 10, "announced_dn", "2175550199");
        };
        row("a stranger's number", "readback", "not_met", "not_accepted", stranger);
        row("a stranger's number, then one of the order", "readback", "met", "accepted",
            [stranger](F &f) {
                stranger(f);
                f << call(31, 60, "B1", "out", "voice", "3095550100");
                f.last()["announced_dn"] = "2175550143";
            });
        row("a stranger's number after one of the order", "readback", "not_met", "not_accepted",
            [stranger](F &f) {
                stranger(f);
                f << call(31, 7, "B1", "out", "voice", "3095550100");
                f.last()["announced_dn"] = "2175550143";
            });
        row("none announced", "readback", "not_needed", "accepted", [](F &) {});
        row("no check", "detector", "missing", "incomplete", [](F &f) { drop(f, 14); });
        row("check after the run", "run", "missing", "incomplete",
            [](F &f) { at(f, 14) = detector(14, 33); });
        row("a bad check after a run that counts", "detector", "met", "accepted", [](F &f) {
            f << detector(31, 60);
            f.last()["cleared"] = false;
        });
        row("a bad check before a good one", "run", "met", "accepted", [](F &f) {
            f << detector(31, 29);
            f.last()["cleared"] = false;
        });
        row("no number of injections", "detector", "missing", "incomplete",
            [](F &f) { at(f, 14).remove("injections"); });
        row("fewer bits seen than sent", "detector", "not_met", "not_accepted", [](F &f) {
            set(f, 14, "injected", 5);
            set(f, 14, "seen_bit_errors", 4);
        });
        row("nine quiet seconds", "detector", "not_met", "not_accepted",
            [](F &f) { set(f, 14, "quiet_seconds", 9); });
        row("ten quiet seconds", "detector", "met", "accepted",
            [](F &f) { set(f, 14, "quiet_seconds", 10); });
        row("not quiet", "detector", "not_met", "not_accepted",
            [](F &f) { set(f, 14, "quiet_bit_errors", 1); });
        row("one injection not seen", "detector", "not_met", "not_accepted",
            [](F &f) { set(f, 14, "seen_bit_errors", 2); });
        row("no errored second", "detector", "not_met", "not_accepted",
            [](F &f) { set(f, 14, "seen_errored_seconds", 0); });
        row("not cleared", "detector", "not_met", "not_accepted",
            [](F &f) { set(f, 14, "cleared", false); });
        row("other instrument", "detector", "missing", "incomplete",
            [](F &f) { set(f, 14, "instrument", "TS-5"); });
        row("other path", "detector", "missing", "incomplete",
            [](F &f) { set(f, 14, "path", "test_line"); });
        row("other channels", "detector", "missing", "incomplete",
            [](F &f) { set(f, 14, "channels", QJsonArray{"B1"}); });
        row("no run", "run", "missing", "incomplete", [](F &f) { drop(f, 15); });
        row("run of 899 s", "run", "missing", "incomplete",
            [](F &f) { f.last() = run(15, 32, 0, 0, 899); });
        row("five errors", "run", "met", "accepted", [](F &f) { f.last() = run(15, 32, 5, 5); });
        row("six errors", "run", "not_met", "not_accepted",
            [](F &f) { f.last() = run(15, 32, 6, 1); });
        row("severely errored", "run", "not_met", "not_accepted", [](F &f) {
            f.last() = run(15, 32, 5, 1);
            set(f, 15, "severely_errored_seconds", 1);
        });
        row("sync lost", "run", "not_met", "not_accepted",
            [](F &f) { set(f, 15, "sync_losses", 1); });
        row("looped at the NT", "run", "missing", "incomplete",
            [](F &f) { set(f, 15, "path", "nt_loop"); });
        row("at 56 kbit/s", "run", "missing", "incomplete",
            [](F &f) { set(f, 15, "rate", 56000); });
        row("one channel alone", "run", "missing", "incomplete", [](F &f) {
            set(f, 15, "path", "test_line");
            set(f, 15, "channels", QJsonArray{"B1"});
        });
        row("not registered", "instrument", "not_met", "not_accepted",
            [](F &f) { set(f, 3, "instrument", "TS-9"); });
    }
    void judgesBasicRate() { check(briFields(), briFacts()); }

    void judgesAnalog_data()
    {
        columns();
        using F = QList<QJsonObject>;
        row("low current", "loop_current", "not_met", "not_accepted",
            [](F &f) { set(f, 3, "value", 19.9); });
        row("marginal current", "loop_current", "met", "accepted",
            [](F &f) { set(f, 3, "value", 20); });
        row("noise poor", "noise", "not_met", "not_accepted",
            [](F &f) { set(f, 5, "value", 30.5); });
        row("influence not recorded", "balance", "missing", "incomplete", [](F &f) { drop(f, 6); });
        const auto disturbed = [](F &f, double balance) {
            f << analog(31, 14, "power_influence", 82, "dBrnC")
              << analog(32, 14, "noise", 30, "dBrnC") << analog(33, 14, "balance", balance, "dB");
        };
        row("balance poor", "balance", "not_met", "not_accepted",
            [disturbed](F &f) { disturbed(f, 49.9); });
        row("balance marginal", "balance", "met", "accepted",
            [disturbed](F &f) { disturbed(f, 52); });
        row("balance that is not the difference", "balance", "missing", "incomplete",
            [disturbed](F &f) { disturbed(f, 56); });
        row("balance of a quiet line", "balance", "not_needed", "accepted",
            [](F &f) { f << analog(31, 14, "balance", 62, "dB"); });
        row("a loss that amplifies", "loss_1004", "missing", "incomplete",
            [](F &f) { f << analog(31, 14, "loss_1004", -1, "dB"); });
        row("a loss near nothing", "loss_1004", "met", "accepted",
            [](F &f) { f << analog(31, 14, "loss_1004", -0.9, "dB"); });
        row("ringing beyond belief", "ringing_voltage", "missing", "incomplete",
            [](F &f) { f << analog(31, 14, "ringing_voltage", 151, "V"); });
        row("reversed", "polarity", "not_met", "not_accepted",
            [](F &f) { set(f, 7, "value", false); });
        row("no ringing recorded", "ringing", "missing", "incomplete", [](F &f) { drop(f, 9); });
        row("slope not recorded", "slope", "not_needed", "accepted", [](F &) {});
        row("slope poor", "slope", "not_met", "not_accepted",
            [](F &f) { f << analog(31, 14, "slope", 10.1, "dB"); });
        row("no call in", "calls", "missing", "incomplete", [](F &f) { drop(f, 11); });
        row("no loop", "loop", "missing", "incomplete", [](F &f) { drop(f, 2); });
        row("resistance high", "loop", "not_met", "not_accepted",
            [](F &f) { set(f, 2, "dc_resistance_ohm", 1301); });
        // A coil allows more resistance only on a loop that is long enough to want it.
        row("resistance high, coil on a short loop", "loop", "not_met", "not_accepted", [](F &f) {
            set(f, 2, "dc_resistance_ohm", 1400);
            set(f, 2, "makeup", loadedPair(4000));
        });
        row("resistance high, loaded as due", "loop", "met", "accepted", [](F &f) {
            set(f, 2, "dc_resistance_ohm", 1340);
            set(f, 2, "makeup", loadedPair(6000, 24));
        });
        row("resistance that the record cannot have", "loop", "not_met", "not_accepted", [](F &f) {
            set(f, 2, "dc_resistance_ohm", 1400);
            set(f, 2, "makeup", loadedPair(6000));
        });
        row("no resistance", "loop", "missing", "incomplete",
            [](F &f) { set(f, 2, "dc_resistance_ohm", 0); });
        row("no card", "safety", "missing", "incomplete", [](F &f) { drop(f, 1); });
    }
    void judgesAnalog() { check(analogFields(), analogFacts()); }

    void tellsACurrentThatTheVoltageCannotDrive()
    {
        const auto notes = [this](double milliamperes, double volts) {
            QList<QJsonObject> facts = analogFacts();
            set(facts, 3, "value", milliamperes);
            facts << analog(31, 14, "on_hook_voltage", volts, "V");
            return decided(analogFields(), facts).notesInEnglish().filter("on-hook");
        };
        // 700 ohm: 50 V drive 71.4 mA.
        QCOMPARE(notes(71, 50), QStringList());
        QCOMPARE(
            notes(72, 50),
            QStringList{"72 mA through 700 ohm take 50.4 V, more than the 50 V measured on-hook: "
                        "one of the three readings is wrong, or the feed rises with the load."});
        QCOMPARE(notes(72, -50).size(), 1); // by size: the leads may be the other way round
    }
    void tellsVisitsThatOverlap()
    {
        const auto visit = [](int n, const char *arrived, const char *left, const char *who) {
            return fact(n, "visit", 1,
                        {{"arrived", QString("2026-03-04T%1:00-06:00").arg(arrived)},
                         {"left", QString("2026-03-04T%1:00-06:00").arg(left)},
                         {"installer", who}});
        };
        const auto notes = [&](const QList<QJsonObject> &visits) {
            return decided(briFields(), briFacts() + visits).notesInEnglish().filter("overlap");
        };
        QCOMPARE(notes({visit(31, "07:00", "09:00", "K7"), visit(32, "08:30", "10:00", "K7")}),
                 QStringList{"The visits of K7 from 4 March 2026, 07:00 (UTC-06:00) and from 4 "
                             "March 2026, 08:30 (UTC-06:00) "
                             "overlap."});
        QCOMPARE(notes({visit(31, "07:00", "09:00", "K7"), visit(32, "09:00", "10:00", "K7")}),
                 QStringList());
        QCOMPARE(notes({visit(31, "07:00", "09:00", "K7"), visit(32, "08:30", "10:00", "K8")}),
                 QStringList());
    }
    void numbersOfOneTerminalShareItsTei()
    {
        OrderFields fields = briFields();
        fields["spid_2"] = fields["spid_1"];
        QList<QJsonObject> facts = briFacts();
        set(facts, 7, "tei", 64);
        QCOMPARE(toText(decided(fields, facts).criterion("layer2")->outcome), "met");
    }
    void onePacketSessionIsNeeded()
    {
        OrderFields fields = briFields();
        fields["d_services"] = "packet";
        QList<QJsonObject> facts = briFacts();
        QCOMPARE(toText(decided(fields, facts).criterion("calls")->outcome), "missing");
        facts << call(31, 60, "D", "in", "packet", "2175550143", "failed");
        QCOMPARE(toText(decided(fields, facts).criterion("calls")->outcome), "not_met");
        facts << call(32, 61, "D", "in", "packet", "2175550143"); // whoever sets it up
        QCOMPARE(toText(decided(fields, facts).criterion("calls")->outcome), "met");
    }
    void theLimitSetMayAskForTheAnnouncedNumber()
    {
        const LimitSet asking = limitsWith("readback_required", 1);
        QList<QJsonObject> facts = briFacts();
        QCOMPARE(toText(decide(input(briFields(), facts), asking).criterion("readback")->outcome),
                 "missing");
        set(facts, 10, "announced_dn", "2175550143");
        QCOMPARE(toText(decide(input(briFields(), facts), asking).criterion("readback")->outcome),
                 "met");
    }
    void tellsIdentifiersAndConflicts()
    {
        OrderFields fields = briFields();
        fields["spid_1"] = "2";
        QCOMPARE(toText(decided(fields, briFacts()).criterion("identifiers")->outcome), "not_met");
        DecisionInput in = input(briFields(), briFacts());
        in.conflicts.push_back({"pair", ClaimKind::Pair, "17-204", "C-12"});
        const Decision decision = decide(in, m_limits);
        QCOMPARE(decision.criterion("identifiers")->reason.english(),
                 "Pair 17-204 is in use on circuit C-12.");
        QCOMPARE(toText(decision.outcome), "not_accepted");
        QCOMPARE(stageOf(decision, in, false), stageAt(Station::Identifiers));
    }
    void calibrationCountsOnTheDay()
    {
        DecisionInput in = input(briFields(), briFacts());
        in.instruments = {{"TS-4", "S", "k", {{QDate(2025, 3, 1), QDate(2026, 3, 3)}}}};
        QCOMPARE(toText(decide(in, m_limits).criterion("instrument")->outcome), "not_met");
        in.instruments = {{"TS-4", "S", "k", {{QDate(2025, 3, 1), QDate(2026, 3, 4)}}}};
        QCOMPARE(toText(decide(in, m_limits).criterion("instrument")->outcome), "met");
        in.instruments = {{"TS-4", "S", "k", {{QDate(2020, 3, 1), {}}}}};
        QCOMPARE(toText(decide(in, m_limits).criterion("instrument")->outcome), "met");
    }
    void changedOrderRetiresEvidence()
    {
        DecisionInput in = input(briFields(), briFacts());
        in.changes.push_back({ChangedWhat::Identifiers, *Moment::parse(u"2026-03-05T08:00:00Z")});
        const Decision decision = decide(in, m_limits);
        QCOMPARE(toText(decision.criterion("layer1")->outcome), "met");
        for (const char *key : {"layer2", "layer3", "calls", "run", "detector"})
            QCOMPARE(toText(decision.criterion(key)->outcome), "missing");
    }
    void voidedFactsDoNotCount()
    {
        DecisionInput in = input(briFields(), briFacts());
        Fact voiding{uuid(90), *Moment::parse(u"2026-03-05T08:00:00Z"), in.order.number, {}, {},
                     {},       VoidFact{uuid(4), "wrong pair", "K7"}};
        in.facts.push_back(voiding);
        QCOMPARE(toText(decide(in, m_limits).criterion("layer1")->outcome), "missing");
    }
    void exceptionsLetPassAndEnd()
    {
        QList<QJsonObject> facts = briFacts();
        drop(facts, 5);
        DecisionInput in = input(briFields(), facts);
        in.facts.push_back(
            {uuid(80),
             *Moment::parse(u"2026-03-04T18:00:00Z"),
             in.order.number,
             {},
             {},
             {},
             ExceptionFact{
                 {"layer1", "safety"}, "NT is delivered next week", "Dana", idsOf(in.facts)}});
        Decision decision = decide(in, m_limits);
        QCOMPARE(toText(decision.outcome), "accepted_with_exception");
        QCOMPARE(toText(decision.criterion("layer1")->outcome), "missing");
        QCOMPARE(decision.criterion("layer1")->excepted->by, "Dana");
        // A newer record for the criterion ends the exception.
        QJsonObject down =
            fact(81, "layer", 0, {{"layer", 1}, {"interface", "st"}, {"outcome", "down"}});
        down["at"] = "2026-03-04T20:00:00Z";
        down["order"] = in.order.number;
        in.facts.push_back(*Fact::fromJson(down, "fact"));
        decision = decide(in, m_limits);
        QVERIFY(!decision.criterion("layer1")->excepted);
        QCOMPARE(toText(decision.outcome), "not_accepted");
    }
    void lateEntryEndsAnExceptionToo()
    {
        QList<QJsonObject> facts = briFacts();
        drop(facts, 5);
        DecisionInput in = input(briFields(), facts);
        const ExceptionFact exception{
            {"layer1"}, "NT is delivered next week", "Dana", idsOf(in.facts)};
        in.facts.push_back({uuid(80),
                            *Moment::parse(u"2026-03-06T18:00:00Z"),
                            in.order.number,
                            {},
                            {},
                            {},
                            exception});
        QCOMPARE(toText(decide(in, m_limits).outcome), "accepted_with_exception");
        // Older than the exception, but the supervisor did not know of it.
        QJsonObject late = fact(81, "layer", 0, {{"layer", 3}, {"terminal", 1}, {"outcome", "up"}});
        late["at"] = "2026-03-04T20:00:00Z";
        late["order"] = in.order.number;
        in.facts.push_back(*Fact::fromJson(late, "fact"));
        QCOMPARE(toText(decide(in, m_limits).outcome), "accepted_with_exception"); // another layer
        late["id"] = uuid(82);
        late["layer"] = 1;
        late.remove("terminal");
        late["outcome"] = "down";
        in.facts.push_back(*Fact::fromJson(late, "fact"));
        QCOMPARE(toText(decide(in, m_limits).outcome), "not_accepted");
    }
    void aRunEndsTheExceptionOfItsCheck()
    {
        QList<QJsonObject> facts = briFacts();
        set(facts, 14, "cleared", false);
        DecisionInput in = input(briFields(), facts);
        in.facts.push_back(
            {uuid(80),
             *Moment::parse(u"2026-03-05T08:00:00Z"),
             in.order.number,
             {},
             {},
             {},
             ExceptionFact{{"detector", "run"}, "the set is old", "Dana", idsOf(in.facts)}});
        QCOMPARE(toText(decide(in, m_limits).outcome), "accepted_with_exception");
        DecisionInput later = in;
        const DecisionInput again = input(briFields(), {call(81, 60, "B1", "out", "voice", "x")});
        later.facts.push_back(again.facts.front());
        QCOMPARE(toText(decide(later, m_limits).outcome), "accepted_with_exception");
        later.facts.push_back(input(briFields(), {run(82, 62)}).facts.front());
        QVERIFY(!decide(later, m_limits).criterion("detector")->excepted);
        QCOMPARE(toText(decide(later, m_limits).outcome), "not_accepted");
    }
    void safetyCannotBeExcepted()
    {
        QList<QJsonObject> facts = briFacts();
        drop(facts, 1);
        DecisionInput in = input(briFields(), facts);
        in.facts.push_back({uuid(80),
                            *Moment::parse(u"2026-03-05T08:00:00Z"),
                            in.order.number,
                            {},
                            {},
                            {},
                            ExceptionFact{{"safety"}, "in a hurry", "Dana", idsOf(in.facts)}});
        QCOMPARE(toText(decide(in, m_limits).outcome), "incomplete");
    }
    void restrictedPathIsNotTheLine()
    {
        QList<QJsonObject> facts = briFacts();
        set(facts, 13, "outcome", "failed");
        facts << run(31, 60, 0, 0, 30);
        facts.last()["rate"] = 56000;
        facts.last()["path"] = "test_line";
        facts.last()["channels"] = QJsonArray{"B2"};
        const auto isRestricted = [this](const QList<QJsonObject> &facts) {
            const Decision decision = decided(briFields(), facts);
            if (toText(decision.criterion("calls")->outcome) != "not_met")
                qFatal("the failed call is forgotten");
            return decision.criterion("calls")->reason.contains(
                "the path is restricted, not the line");
        };
        QVERIFY(!isRestricted(facts)); // the self-call carried 64 kbit/s
        set(facts, 15, "bit_errors", 1000);
        QVERIFY(isRestricted(facts));
        QList<QJsonObject> doubtful = facts;
        doubtful.last() = run(31, 60, 0, 0, 29);
        QVERIFY(!isRestricted(doubtful));
        for (const char *key : {"bit_errors", "errored_seconds", "sync_losses"}) {
            doubtful = facts;
            doubtful.last()[QLatin1StringView(key)] = 1;
            QVERIFY2(!isRestricted(doubtful), key);
        }
        doubtful = facts;
        doubtful.last()["channels"] = QJsonArray{"B1"};
        QVERIFY(!isRestricted(doubtful));
    }
    void selfCallAt56DoesNotStandForACallAt64()
    {
        QList<QJsonObject> facts = briFacts();
        drop(facts, 15);
        set(facts, 13, "outcome", "failed");
        facts << run(31, 60);
        facts.last()["rate"] = 56000;
        facts.last()["channels"] = QJsonArray{"B2", "B1"};
        const Decision decision = decided(briFields(), facts);
        QCOMPARE(toText(decision.criterion("calls")->outcome), "not_met");
        QVERIFY(decision.criterion("calls")->reason.english().contains(
            "the path is restricted, not the line"));
    }
    void orderTypesNeedWhatTheyNeed()
    {
        DecisionInput in = input(briFields(), {});
        in.scope = OrderScope::Nothing;
        QCOMPARE(toText(decide(in, m_limits).outcome), "accepted");
        in.scope = OrderScope::RecordOnly;
        Decision decision = decide(in, m_limits);
        QCOMPARE(toText(decision.outcome), "accepted");
        QCOMPARE(toText(decision.criterion("identifiers")->outcome), "met");
        in.scope = OrderScope::Repair; // as a new line, but its numbers are assigned already
        decision = decide(in, m_limits);
        for (const CriterionResult &result : decision.criteria) {
            const bool assigned = QStringList({"identifiers", "readback"}).contains(result.key);
            QCOMPARE(result.outcome == CriterionOutcome::NotNeeded, assigned);
        }
        in.scope = OrderScope::NumbersOnly;
        decision = decide(in, m_limits);
        for (const CriterionResult &result : decision.criteria)
            QCOMPARE(result.open(), QStringList({"layer3", "calls"}).contains(result.key));
        QCOMPARE(toText(decision.criterion("instrument")->outcome), "not_needed");
        in.scope = OrderScope::MoveWithin;
        decision = decide(in, m_limits);
        QCOMPARE(toText(decision.criterion("loop")->outcome), "not_needed");
        QCOMPARE(toText(decision.criterion("layer1")->outcome), "missing");
    }
    void voiceAloneNeedsNoRun()
    {
        OrderFields fields = briFields();
        fields["b1_services"] = fields["b2_services"] = "voice";
        fields.remove("dn_1_services");
        fields.remove("dn_2_services");
        const Decision decision = decided(fields, {});
        QCOMPARE(toText(decision.criterion("run")->outcome), "not_needed");
        QCOMPARE(toText(decision.criterion("detector")->outcome), "not_needed");
        QVERIFY(decision.notesInEnglish().join(' ').contains("no error-rate run is needed"));
    }
    void aFigureIsShownOnItsSideOfTheLimit()
    {
        QList<QJsonObject> facts = briFacts();
        set(facts, 3, "loss_db", 42.004);
        QVERIFY(decided(briFields(), facts)
                    .criterion("loop")
                    ->reason.contains("42.004 dB is above the limit of 42 dB"));
    }
    void theLimitSetSaysTheFrequencyAndTheConfidence()
    {
        const DecisionInput in = input(briFields(), briFacts());
        const Decision usual = decide(in, m_limits);
        QCOMPARE(usual.criterion("loop")->limitText,
                 "at most 42 dB at 40 kHz and 1300 ohm, no load coil");
        QVERIFY(!usual.proven.contains("ber_upper"));
        const Decision at96 = decide(in, limitsWith("bri_loss_frequency", 96000));
        QCOMPARE(at96.criterion("loop")->limitText,
                 "at most 42 dB at 96 kHz and 1300 ohm, no load coil");
        const Decision at99 = decide(in, limitsWith("run_confidence", 0.99));
        QVERIFY2(at99.proves.english().contains("99 % confidence"),
                 qPrintable(at99.proves.english()));
        // -ln 0.01 over the bits of a run without errors
        const double bits = at99.proven["bits"].toDouble();
        QVERIFY(std::abs(at99.proven["ber_upper"].toDouble() * bits + std::log(0.01)) < 1e-4);
    }
    void runsThatCannotCountSayWhy()
    {
        OrderFields fields = briFields();
        fields["b2_services"] = "voice";
        QList<QJsonObject> facts = briFacts();
        for (const auto &[id, channel, rate] :
             {std::tuple(31, "B2", 64000), std::tuple(32, "B1", 56000)}) {
            facts << run(id, 60);
            facts.last()["path"] = "test_line";
            facts.last()["channels"] = QJsonArray{channel};
            facts.last()["rate"] = rate;
        }
        QStringList results;
        for (const RunMade &made : decided(fields, facts).runs)
            if (made.fact != uuid(15))
                results << made.result;
        QCOMPARE(results, (QStringList{"on a channel that carries no data",
                                       "at 56000 bit/s, not the ordered rate"}));
    }
    void aRunThatWasStruckOutIsTold()
    {
        QList<QJsonObject> facts = briFacts();
        facts << run(31, 14, 100, 30) << voiding(41, 120, 31, "typing error");
        const Decision decision = decided(briFields(), facts);
        QCOMPARE(toText(decision.outcome), "accepted");
        QCOMPARE(decision.runs.size(), 2U);
        const RunMade &struck = decision.runs.front();
        QCOMPARE(struck.fact, uuid(31));
        QVERIFY2(struck.text().contains("100 bit errors"), qPrintable(struck.text()));
        QCOMPARE(struck.result, "failed, struck out");
        QCOMPARE(struck.resultInWords(), "failed, struck out: typing error (by Dana)");
        QCOMPARE(decision.runs.back().result, "counted");
        const CriterionResult *criterion = decision.criterion("run");
        QVERIFY2(
            criterion->reason.english().endsWith(
                "A run of 4 March 2026, 08:14 (UTC-06:00) was struck out: typing error (by Dana)."),
            qPrintable(criterion->reason.english()));
        QVERIFY(!criterion->evidence.contains(uuid(31)));
        const QJsonArray runs = decision.toJson()["runs"].toArray();
        QCOMPARE(runs[0]["struck_out"]["because"].toString(), "typing error");
        QCOMPARE(runs[0]["struck_out"]["by"].toString(), "Dana");
        QVERIFY(!runs[1].toObject().contains("struck_out"));

        const DecisionInput in = input(briFields(), facts);
        const auto again = DecisionInput::fromJson(in.toJson(), "input");
        QVERIFY2(again, again ? "" : qPrintable(again.error().text()));
        QCOMPARE(canonicalJson(decide(*again, m_limits).toJson()),
                 canonicalJson(decision.toJson()));
    }
    void theOnlyRunStruckOutIsTold()
    {
        QList<QJsonObject> facts = briFacts();
        facts << voiding(41, 60, 15, "wrong\nline, " + QString(300, u'x'));
        const Decision decision = decided(briFields(), facts);
        const CriterionResult *criterion = decision.criterion("run");
        QCOMPARE(toText(criterion->outcome), "missing");
        QVERIFY2(criterion->reason.english().contains("No run on B1 at 64000 bit/s counts."),
                 qPrintable(criterion->reason.english()));
        QVERIFY2(criterion->reason.english().contains(
                     "08:32 (UTC-06:00) was struck out: wrong line, xxx"),
                 qPrintable(criterion->reason.english()));
        QVERIFY(criterion->reason.english().endsWith(u"x… (by Dana)."));
        QCOMPARE(decision.runs.size(), 1U);
        QCOMPARE(decision.runs[0].result, "struck out");
    }
    void ofSeveralRunsStruckOutTheLastSaysWhy()
    {
        QList<QJsonObject> facts = briFacts();
        for (int i = 0; i < 3; ++i)
            facts << run(31 + i, 60 + 20 * i, 0, 0)
                  << voiding(41 + i, 150 - i, 31 + i, QString("reason %1").arg(i));
        const Decision decision = decided(briFields(), facts);
        QVERIFY2(decision.criterion("run")->reason.english().endsWith(
                     "3 runs were struck out. A run of 4 March 2026, 09:40 (UTC-06:00) was struck "
                     "out: reason 2 "
                     "(by Dana)."),
                 qPrintable(decision.criterion("run")->reason.english()));
        QStringList told;
        for (const RunMade &made : decision.runs)
            told << made.fact;
        QCOMPARE(told, (QStringList{uuid(15), uuid(31), uuid(32), uuid(33)}));
    }
    void contradictoryTotalsDoNotCount()
    {
        QList<QJsonObject> facts = briFacts();
        at(facts, 15) = run(15, 32, 2, 9);
        Decision decision = decided(briFields(), facts);
        const CriterionResult *criterion = decision.criterion("run");
        QCOMPARE(toText(criterion->outcome), "missing");
        QVERIFY2(criterion->reason.english().contains(
                     "The totals contradict each other: 2 bit errors cannot make 9 errored "
                     "seconds without a loss of synchronisation."),
                 qPrintable(criterion->reason.english()));
        QCOMPARE(criterion->next.english(), "Read the test set again and record the run anew.");
        QCOMPARE(criterion->evidence, QStringList{uuid(15)});
        QCOMPARE(decision.runs[0].result, "totals contradict each other");
        QVERIFY(decision.proves.isEmpty());

        // Read again, it is the same run, whichever of the two records comes first by its id.
        for (const int anew : {9, 31}) {
            QList<QJsonObject> mended = facts;
            drop(mended, 15);
            mended << run(anew == 9 ? 31 : 15, 32, 2, 9) << run(anew == 9 ? 15 : 31, 32, 2, 2);
            decision = decided(briFields(), mended);
            QCOMPARE(toText(decision.criterion("run")->outcome), "met");
            QCOMPARE(decision.runs.size(), 2U);
        }
        // A run that began later counts by itself; a doubtful one after a good one is in doubt.
        QCOMPARE(toText(decided(briFields(), QList(facts) << detector(32, 50) << run(31, 52))
                            .criterion("run")
                            ->outcome),
                 "met");
        QCOMPARE(
            toText(decided(briFields(), briFacts() << run(31, 52, 0, 9)).criterion("run")->outcome),
            "missing");
    }
    void contradictoryTotalsOverTheLimitsHaveFailed()
    {
        QList<QJsonObject> facts = briFacts();
        at(facts, 15) = run(15, 32, 100, 0);
        const Decision decision = decided(briFields(), facts << detector(30, 50) << run(31, 52));
        QCOMPARE(toText(decision.criterion("run")->outcome), "not_met");
        QCOMPARE(decision.runs[0].result, "failed");
        QVERIFY2(decision.criterion("run")->reason.english().contains(
                     "Its totals contradict each other: 100 bit errors cannot come without an "
                     "errored second."),
                 qPrintable(decision.criterion("run")->reason.english()));
    }
    void anEarlyStopIsInDoubtForNobody()
    {
        QList<QJsonObject> facts = briFacts() << run(31, 52, 0, 5, 60);
        facts.last()["stopped_early"] = true;
        const Decision decision = decided(briFields(), facts);
        QCOMPARE(toText(decision.criterion("run")->outcome), "met");
        QCOMPARE(decision.runs[1].result, "stopped early");
    }
    void aSelfCallNeedsTwoNumbersOfTheOrder_data()
    {
        QTest::addColumn<QString>("from");
        QTest::addColumn<QString>("to");
        QTest::addColumn<QString>("why"); // empty if it counts
        const auto row = [](const char *name, const char *from, const char *to, const char *why) {
            QTest::newRow(name) << QString(from) << QString(to) << QString(why);
        };
        row("as ordered", "217-555-0144", "2175550143", "");
        row("without the area code", "555-0144", "5550143", "");
        row("with the country code", "+1 217 555 0144", "1 (217) 555-0143", "");
        row("no numbers at all", "line 1", "line 1", "");
        row("both of another line", "2175559999", "2175559998",
            "The self-call was made from 217-555-9999 to 217-555-9998, and 217-555-9999 is no "
            "number of this order.");
        row("from another line", "2175550199", "2175550143",
            "The self-call was made from 217-555-0199 to 217-555-0143, and 217-555-0199 is no "
            "number of this order.");
        row("to another line", "2175550143", "2175550199",
            "The self-call was made from 217-555-0143 to 217-555-0199, and 217-555-0199 is no "
            "number of this order.");
        row("to itself", "2175550143", "(217) 555-0143",
            "The self-call was made from 217-555-0143 to itself; it needs two numbers that may "
            "call each other.");
    }
    void aSelfCallNeedsTwoNumbersOfTheOrder()
    {
        QFETCH(QString, from);
        QFETCH(QString, to);
        QFETCH(QString, why);
        QList<QJsonObject> facts = briFacts();
        set(facts, 15, "from_dn", from);
        set(facts, 15, "to_dn", to);
        const Decision decision = decided(briFields(), facts);
        const CriterionResult *run = decision.criterion("run");
        QCOMPARE(toText(run->outcome), why.isEmpty() ? "met" : "missing");
        QVERIFY2(run->reason.english().contains(why), qPrintable(run->reason.english()));
        QCOMPARE(decision.runs[0].result,
                 why.isEmpty() ? "counted" : "no self-call between two numbers of the order");
        if (!why.isEmpty())
            QCOMPARE(toText(decision.criterion("calls")->outcome), "missing");

        // By a test line it is a call to anywhere; over its limits it has failed all the same.
        for (const int n : {14, 15}) {
            set(facts, n, "path", "test_line");
            set(facts, n, "channels", QJsonArray{"B1"});
        }
        QCOMPARE(decided(briFields(), facts).runs[0].result, "counted");
        set(facts, 15, "path", "self_call");
        set(facts, 15, "bit_errors", 100);
        QCOMPARE(decided(briFields(), facts).runs[0].result, "failed");
    }
    void aSelfCallMayNameNumbersWithoutAreaCode()
    {
        OrderFields fields = briFields();
        fields["protocol_variant"] = "dss1";
        fields["spid_1"] = fields["spid_2"] = "";
        fields["dn_1"] = "030 5550143";
        fields["dn_2"] = "030 5550144";
        QList<QJsonObject> facts = briFacts();
        const auto result = [&](const char *from, const char *to) {
            set(facts, 15, "from_dn", from);
            set(facts, 15, "to_dn", to);
            return decided(fields, facts).runs[0].result;
        };
        QCOMPARE(result("5550143", "030 5550144"), "counted");
        QCOMPARE(result("5550143", "5550199"), "no self-call between two numbers of the order");
        QCOMPARE(result("5550143", "5550143"), "no self-call between two numbers of the order");
    }
    void sameInputSameBytes()
    {
        const DecisionInput in = input(briFields(), briFacts());
        const QByteArray first = canonicalJson(decide(in, m_limits).toJson());
        const auto again = DecisionInput::fromJson(in.toJson(), "input");
        QVERIFY2(again, again ? "" : qPrintable(again.error().text()));
        QCOMPARE(canonicalJson(again->toJson()), canonicalJson(in.toJson()));
        QCOMPARE(canonicalJson(decide(*again, m_limits).toJson()), first);
    }
    void orderOfRecordingDoesNotMatter()
    {
        QList<QJsonObject> facts = briFacts();
        facts << fact(30, "note", 49, {{"text", "remade the joint"}}) << detector(31, 50)
              << run(32, 52, 50, 20) << run(33, 52, 60, 20) << voiding(34, 80, 33, "twice")
              << voiding(35, 81, 33, "again");
        const auto outcomes = [this](const QList<QJsonObject> &list) {
            Decision decision = decided(briFields(), list);
            decision.id.clear(); // the input differs in the order of its facts
            return canonicalJson(decision.toJson());
        };
        const QByteArray expected = outcomes(facts);
        std::mt19937 random(7);
        for (int i = 0; i < 30; ++i) {
            std::shuffle(facts.begin(), facts.end(), random);
            QCOMPARE(outcomes(facts), expected);
        }
    }
    void everyStageIsReachable()
    {
        QList<QJsonObject> facts = briFacts();
        const DecisionInput whole = input(briFields(), facts);
        QCOMPARE(stageOf(decide(whole, m_limits), whole, false), stageAt(Station::Certificate));
        QCOMPARE(stageOf(decide(whole, m_limits), whole, true), Stage::Done);
        const std::pair<int, Station> open[] = {{14, Station::ErrorTest},
                                                {10, Station::Calls},
                                                {8, Station::TurnUp},
                                                {1, Station::Safety}};
        for (const auto &[n, station] : open) {
            drop(facts, n);
            const DecisionInput in = input(briFields(), facts);
            QCOMPARE(stageOf(decide(in, m_limits), in, false), stageAt(station));
        }
        // If nobody knows the make-up, the pair is measured on site: the desk's station is passed.
        drop(facts, 3);
        const DecisionInput unknown = input(briFields(), facts);
        QCOMPARE(stageOf(decide(unknown, m_limits), unknown, false), stageAt(Station::Safety));
        facts << fact(31, "loop", 1, {{"makeup", loadedPair(6000)}});
        const DecisionInput loaded = input(briFields(), facts);
        QCOMPARE(stageOf(decide(loaded, m_limits), loaded, false), stageAt(Station::Loop));
    }

    /// The English is what is stored; another language says each word of it.
    void anotherLanguageSaysEveryWord()
    {
        const Text::Catalogue german([](const char *source, std::optional<qint64>) {
            const QString text = QString::fromUtf8(source);
            return text == u"good"        ? QString("gut")
                   : text == u"%1 and %2" ? QString("%1 und %2")
                                          : text;
        });
        const Decision line = decided(analogFields(), analogFacts());
        const Text &current = line.criterion("loop_current")->reason;
        QCOMPARE(current.english(), "The loop current of 31.5 mA is good.");
        QCOMPARE(current.in(german), "The loop current of 31.5 mA is gut.");
        QList<QJsonObject> facts = briFacts();
        facts.back() = run(15, 32, 900, 120);
        const Decision failed = decided(briFields(), facts);
        const Text &why = failed.criterion("run")->reason;
        QVERIFY2(why.english().startsWith("B1 and B2: "), qPrintable(why.english()));
        QVERIFY2(why.in(german).startsWith("B1 und B2: "), qPrintable(why.in(german)));
    }
};

QTEST_APPLESS_MAIN(DecideTest)
#include "DecideTest.moc"
