// Job records that mislead: each with what a program would say that reads them without thought, and
// what is right. As many are to be accepted as are not: honest work is refused nowhere.
// Longer than 400 lines: one row for each record.

#include "core/acceptance/Judge.h"
#include "tests/support/Job.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

using Alter = std::function<void(Job &)>;
Q_DECLARE_METATYPE(Alter)

namespace {

Job analogJob()
{
    Job job;
    job.fields = analogFields();
    job.facts = analogFacts();
    return job;
}

/// A card whose readings are these; the office is connected.
QJsonObject card(int n, int minute, const QList<double> &ac, const QList<double> &dc)
{
    QJsonObject made = safety(n, minute);
    const auto volts = [](const QList<double> &read) {
        return QJsonObject{
            {"tip_ground", read[0]}, {"ring_ground", read[1]}, {"tip_ring", read[2]}};
    };
    made["office_connected"] = true;
    made["ac_v"] = volts(ac);
    made["dc_v"] = volts(dc);
    return made;
}

QJsonObject closing(int n, int minute, int hazard, const char *source,
                    const QString &reference = {})
{
    QJsonObject body{{"hazard", uuid(hazard)}, {"source", source}, {"by", "Dana"}};
    if (!reference.isEmpty())
        body.insert("reference", reference);
    return fact(n, "hazard_closed", minute, body);
}

QJsonObject cleared(int n, int minute, const char *what)
{
    QJsonObject body{{"what", what}};
    if (qstrcmp(what, "nothing_found") != 0)
        body.insert("text", "joint made again");
    return fact(n, "cleared", minute, body);
}

QJsonObject sections(std::initializer_list<std::pair<int, double>> cable)
{
    QJsonArray elements;
    for (const auto &[gauge, feet] : cable)
        elements << QJsonObject{{"type", "section"}, {"gauge_awg", gauge}, {"length_ft", feet}};
    return {{"elements", elements}};
}

/// A second run an hour later, with its own check.
void runAgain(Job &job, int errors = 0, int seconds = 0)
{
    job.facts << detector(34, 94) << run(35, 96, errors, seconds);
}

/// Fact of another order, as the records hold it.
Fact ofOrder(const QString &order, const QJsonObject &json)
{
    QJsonObject whole = json;
    whole["order"] = order;
    return *Fact::fromJson(whole, "fact");
}

} // namespace

class JobRecordsTest : public QObject
{
    Q_OBJECT

    const LimitSet m_limits = limits();

    static void row(const char *name, const Job &job, const char *naive, const char *right,
                    const char *criterion, const Alter &alter)
    {
        QVERIFY2(qstrcmp(naive, "") != 0, name);
        Job changed = job;
        alter(changed);
        QTest::newRow(name) << changed.fields << changed.facts << QString(right)
                            << QString(criterion)
                            << Alter([then = changed.then](Job &each) { each.then = then; });
    }

    void accepted();
    void notAccepted();

private slots:
    void decides_data()
    {
        QTest::addColumn<OrderFields>("fields");
        QTest::addColumn<QList<QJsonObject>>("facts");
        QTest::addColumn<QString>("right");
        QTest::addColumn<QString>("criterion");
        QTest::addColumn<Alter>("then");
        accepted();
        notAccepted();
    }
    void decides()
    {
        QFETCH(OrderFields, fields);
        QFETCH(QList<QJsonObject>, facts);
        QFETCH(QString, right);
        QFETCH(QString, criterion);
        QFETCH(Alter, then);
        Job job;
        then(job);
        DecisionInput asked = input(fields, facts);
        job.then(asked);
        const Decision decision = decide(asked, m_limits);
        QStringList open;
        for (const CriterionResult &result : decision.criteria)
            if (result.open())
                open << result.key + ": " + result.reason.english();
        QVERIFY2(toText(decision.outcome) == right, qPrintable(open.join("\n")));
        if (right != u"accepted")
            QVERIFY2(decision.criterion(criterion)->open(), qPrintable(open.join("\n")));
    }
};

// What looks wrong and is right.
void JobRecordsTest::accepted()
{
    const Job bri, analog = analogJob();
    const auto ok = [](const char *name, const Job &job, const char *naive, const Alter &alter) {
        row(name, job, naive, "accepted", "", alter);
    };
    ok("battery reversed on the card", bri, "contradiction", [](Job &job) {
        job.facts[0] = card(1, 5, {0.2, 0.2, 0.2}, {-48, 0, -48});
    });
    ok("a meter that shows no minus", bri, "contradiction", [](Job &job) {
        job.facts[0] = card(1, 5, {0.2, 0.2, 0.2}, {24, 24, 48});
    });
    ok("induced alike on both wires", bri, "contradiction", [](Job &job) {
        job.facts[0] = card(1, 5, {9, 9, 0}, {0, -48, 48});
    });
    ok("an open wire read twice", bri, "contradiction", [](Job &job) {
        job.facts[0] = card(1, 4, {0.2, 0.2, 0.2}, {0, -48, 2});
        job.facts.insert(1, card(31, 5, {0.2, 0.2, 0.2}, {0, -48, 2}));
    });
    ok("a card with a missing reading, completed", bri, "safety incomplete", [](Job &job) {
        QJsonObject first = safety(31, 3);
        first.remove("ac_v");
        job.facts.prepend(first);
    });
    ok("a hazard closed, and a clear card after it", bri, "hazard", [](Job &job) {
        job.facts.prepend(safety(31, 1, 118));
        job.facts << closing(32, 3, 31, "power", "utility ticket 7");
    });
    ok("a hazard that was mistyped, closed by who typed it", bri, "hazard", [](Job &job) {
        job.facts.prepend(safety(31, 1, 118));
        job.facts << closing(32, 3, 31, "mistyped");
    });
    ok("a contact with power closed by a supervisor", bri, "hazard", [](Job &job) {
        job.facts.prepend(safety(31, 1, 118));
        job.facts << closing(32, 3, 31, "power");
        job.then = [](DecisionInput &asked) { asked.bySupervisor << uuid(32); };
    });
    ok("a hazard of another order on the pair, closed there", bri, "hazard", [](Job &job) {
        job.then = [](DecisionInput &asked) {
            asked.pairCards = {ofOrder("26-1", safety(41, 0, 118)),
                               ofOrder("26-1", closing(42, 1, 41, "ringing")),
                               ofOrder("26-1", safety(43, 2))};
        };
    });
    ok("a hazard on another pair at the premises", bri, "hazard", [](Job &job) {
        job.then = [](DecisionInput &asked) {
            asked.premisesCards = {ofOrder("26-1", safety(41, 0, 118))};
        };
    });
    ok("foreign battery, cleared by the next card", bri, "not clear", [](Job &job) {
        QJsonObject foreign = safety(31, 2);
        foreign["dc_v"] = QJsonObject{{"tip_ground", 0}, {"ring_ground", -24}, {"tip_ring", 24}};
        job.facts.prepend(foreign);
    });
    ok("a meter out of its calibration on the card alone", bri, "instrument",
       [](Job &job) { job.set(1, "instrument", "OLD"); });
    ok("a loss of nearly nothing", analog, "contradiction",
       [](Job &job) { job.set(4, "value", -0.9); });
    ok("gain, and a repeater in the pair", analog, "contradiction", [](Job &job) {
        QJsonObject makeup = sections({{24, 12000}});
        makeup["amplified"] = true;
        job.set(2, "makeup", makeup);
        job.set(4, "value", -3);
    });
    ok("a poor difference on a quiet line", analog, "balance poor", [](Job &job) {
        job.set(5, "value", 12);
        job.set(6, "value", 58);
    });
    ok("a typed balance three decibels off", analog, "contradiction", [](Job &job) {
        job.set(5, "value", 21);
        job.set(6, "value", 81);
        job.facts << jobs::analog(31, 17, "balance", 57, "dB");
    });
    ok("a record of the pair that the readings belie", bri, "loop not met", [](Job &job) {
        job.facts << fact(31, "loop", 9, {{"makeup", sections({{26, 17500}})}});
    });
    ok("a record that a warm cable explains", bri, "contradiction", [](Job &job) {
        // 612 ohm read; 26 AWG of 6,900 ft has 576 at 70 °F and 639 at 120.
        job.set(3, "loss_db", 20.0);
        job.facts << fact(31, "loop", 9, {{"makeup", sections({{26, 6900}})}});
    });
    ok("a marginal current", analog, "poor", [](Job &job) { job.set(3, "value", 20); });
    ok("a high current within 120 mA", analog, "poor", [](Job &job) { job.set(3, "value", 119); });
    ok("five errors in a run", bri, "errors",
       [](Job &job) { job.facts.last() = run(15, 32, 5, 5); });
    ok("a failed run, what was done, and a clean one", bri, "run failed", [](Job &job) {
        job.facts.last() = run(15, 32, 60, 12);
        job.facts << cleared(31, 60, "contact");
        runAgain(job);
    });
    ok("nothing found, and then no error at all", bri, "nothing done", [](Job &job) {
        job.facts.last() = run(15, 32, 60, 12);
        job.facts << cleared(31, 60, "nothing_found");
        runAgain(job);
    });
    ok("a run stopped early, then a whole one", bri, "run failed", [](Job &job) {
        job.facts.last() = run(15, 32, 1, 1, 100);
        job.at(15).insert("stopped_early", true);
        runAgain(job);
    });
    ok("a self-synchronising receiver shows each error as three", bri, "errors of the line",
       [](Job &job) {
           job.set(14, "seen_bit_errors", 9);
           job.set(14, "seen_errored_seconds", 6);
       });
    ok("the number of bits sent is not known", bri, "incomplete",
       [](Job &job) { job.at(14).remove("injected"); });
    ok("an idle line was deactivated and came up again", bri, "layer 1 down", [](Job &job) {
        job.facts << fact(31, "layer", 26, {{"layer", 1}, {"interface", "u"}, {"outcome", "down"}})
                  << fact(32, "layer", 27, {{"layer", 1}, {"interface", "u"}, {"outcome", "up"}});
    });
    ok("busy at the far end after a good call", bri, "call failed", [](Job &job) {
        QJsonObject busy = call(31, 26, "B1", "out", "voice", "2175550199", "failed");
        busy["cause"] = 17;
        job.facts << busy;
    });
    ok("numbers written otherwise than ordered", bri, "call to another number", [](Job &job) {
        job.set(11, "dn", "(217) 555-0143");
        job.set(12, "dn", "+1 217 555 0143");
    });
    ok("the pair written otherwise", bri, "other pair", [](Job &job) { job.name("17/204"); });
    ok("measured on the feeder pair", bri, "other pair", [](Job &job) {
        job.fields["feeder_pair"] = "F-12";
        job.name("f 12");
    });
    ok("the pair was changed on site and all was done on it", bri, "other pair", [](Job &job) {
        job.facts.prepend(changed(31, 1, "pair", "88-1"));
        job.name("88-1");
    });
    ok("a point-to-point line with one link for two numbers", bri, "layer 2 missing", [](Job &job) {
        job.fields["line"] = "point_to_point";
        job.fields["protocol_variant"] = "dss1-p2p";
        for (const char *key : {"spid_1", "spid_2"})
            job.fields.remove(key);
        job.fields["tei_1"] = job.fields["tei_2"] = "0";
        job.set(6, "tei", 0);
        for (const int n : {7, 8, 9})
            job.drop(n);
    });
    ok("a note that says the worst", bri, "trouble", [](Job &job) {
        job.facts << fact(31, "note", 40, {{"text", "failed failed failed, hazard 5000 V"}});
    });
}

// What looks right and is not.
void JobRecordsTest::notAccepted()
{
    const Job bri, analog = analogJob();
    const auto open = [](const char *name, const Job &job, const char *criterion,
                         const Alter &alter) {
        row(name, job, "accepted", "incomplete", criterion, alter);
    };
    const auto bad = [](const char *name, const Job &job, const char *criterion,
                        const Alter &alter) {
        row(name, job, "accepted", "not_accepted", criterion, alter);
    };
    bad("a hazard whose card was struck out", bri, "safety", [](Job &job) {
        job.facts.prepend(safety(31, 1, 118));
        job.facts << voiding(32, 3, 31, "mistyped");
    });
    bad("a hazard, and a clear card alone", bri, "safety",
        [](Job &job) { job.facts.prepend(safety(31, 1, 118)); });
    bad("a contact with power closed by anybody", bri, "safety", [](Job &job) {
        job.facts.prepend(safety(31, 1, 118));
        job.facts << closing(32, 3, 31, "power");
    });
    bad("a hazard read for another order on the pair", bri, "safety", [](Job &job) {
        job.then = [](DecisionInput &asked) {
            asked.pairCards = {ofOrder("26-1", safety(41, 0, 118))};
        };
    });
    bad("30 V where it is wet", bri, "safety", [](Job &job) {
        job.facts[0] = card(1, 5, {0, 30, 30}, {0, -48, 48});
        job.set(1, "wet", true);
    });
    bad("a deadly reading among readings that do not fit", bri, "safety", [](Job &job) {
        job.facts[0] = card(1, 5, {0, 120, 6}, {0, -48, 48});
    });
    bad("span power that the office names", bri, "safety", [](Job &job) {
        job.facts[0] = card(1, 5, {0, 0, 0}, {0, -130, 130});
        job.set(1, "named_by_office",
                QJsonObject{{"by", "frame"}, {"what", "span power"}, {"volts", -130}});
    });
    open("foreign battery on a dead pair", bri, "safety", [](Job &job) {
        job.set(1, "dc_v", QJsonObject{{"tip_ground", 0}, {"ring_ground", -24}, {"tip_ring", 24}});
    });
    open("voltages that do not fit", bri, "safety", [](Job &job) {
        job.facts[0] = card(1, 5, {0, 0, 0}, {0, -48, 2});
    });
    open("the meter read one wire twice", bri, "safety", [](Job &job) {
        job.facts[0] = card(1, 5, {0, 0, 0}, {-48, -48, 48});
    });
    open("the office was connected again without a card", bri, "loop",
         [](Job &job) { job.facts << changed(31, 7, "feed"); });
    open("a card after the first measurement", bri, "loop",
         [](Job &job) { job.facts[0] = safety(1, 12); });
    open("a resistance of nothing", bri, "loop",
         [](Job &job) { job.set(3, "dc_resistance_ohm", 0); });
    open("a pair that amplifies", bri, "loop", [](Job &job) { job.set(3, "loss_db", -2); });
    open("a loss at no frequency", bri, "loop", [](Job &job) { job.at(3).remove("frequency_hz"); });
    open("a telephone line that amplifies", analog, "loss_1004",
         [](Job &job) { job.set(4, "value", -1.5); });
    open("ringing of 400 V", analog, "ringing_voltage",
         [](Job &job) { job.facts << jobs::analog(31, 17, "ringing_voltage", 400, "V"); });
    open("a balance from elsewhere", analog, "balance", [](Job &job) {
        job.set(5, "value", 24);
        job.set(6, "value", 84);
        job.facts << jobs::analog(31, 17, "balance", 75, "dB");
    });
    bad("a noisy line with a good telephone", analog, "noise",
        [](Job &job) { job.set(5, "value", 31); });
    bad("a cable that is in order only when cold", bri, "loop", [](Job &job) {
        // 26 AWG: 1,294 ohm at 70 °F, 1,491 at 140.
        job.drop(3);
        job.facts << fact(31, "loop", 9, {{"makeup", sections({{26, 15500}})}});
    });
    bad("a detector check on a line that makes errors", bri, "detector",
        [](Job &job) { job.set(14, "seen_bit_errors", 10); });
    bad("a check with more errored seconds than injections make", bri, "detector", [](Job &job) {
        job.set(14, "seen_errored_seconds", 7);
        job.set(14, "seen_bit_errors", 9);
    });
    open("a check with more errored seconds than errors", bri, "detector",
         [](Job &job) { job.set(14, "seen_errored_seconds", 6); });
    bad("a hazard, closed, and a clear card of another pair", bri, "safety", [](Job &job) {
        job.facts.prepend(safety(31, 1, 118));
        job.facts << closing(32, 3, 31, "induced");
        job.set(1, "pair", "ZZ-9");
        job.facts << safety(33, 70, 60);
    });
    open("a hazard, closed, and a clear card of another place", bri, "safety", [](Job &job) {
        QJsonObject hazard = safety(31, 1, 118);
        hazard["place"] = "premises terminal";
        job.facts.prepend(hazard);
        job.facts << closing(32, 3, 31, "induced");
        job.set(1, "place", "cross-box");
    });
    bad("a contact with power, and a dash for its reference", bri, "safety", [](Job &job) {
        job.facts.prepend(safety(31, 1, 118));
        job.facts << closing(32, 3, 31, "power", "-");
    });
    bad("a check that saw less than was sent", bri, "detector", [](Job &job) {
        job.set(14, "seen_bit_errors", 2);
        job.set(14, "seen_errored_seconds", 2);
    });
    open("a run on an idle pattern", bri, "run",
         [](Job &job) { job.set(15, "pattern", "all_ones"); });
    open("a clean run one second short", bri, "run",
         [](Job &job) { job.facts.last() = run(15, 32, 0, 0, 899); });
    open("totals that cannot be true", bri, "run",
         [](Job &job) { job.facts.last() = run(15, 32, 5, 0); });
    bad("a slip in a run without errors", bri, "run", [](Job &job) { job.set(15, "slips", 1); });
    bad("ten seconds unavailable and no bit error", bri, "run", [](Job &job) {
        job.set(15, "severely_errored_seconds", 10);
        job.set(15, "errored_seconds", 10);
        job.set(15, "bit_errors", 640);
    });
    bad("a failed run, a note, and a clean one", bri, "run", [](Job &job) {
        job.facts.last() = run(15, 32, 60, 12);
        job.facts << fact(31, "note", 60, {{"text", "joint made again"}});
        runAgain(job);
    });
    bad("nothing found, and one error", bri, "run", [](Job &job) {
        job.facts.last() = run(15, 32, 60, 12);
        job.facts << cleared(31, 60, "nothing_found");
        runAgain(job, 1, 1);
    });
    bad("a failed run at S/T, a clean one at U", bri, "run", [](Job &job) {
        job.facts.last() = run(15, 32, 60, 12);
        job.facts << cleared(31, 60, "contact");
        runAgain(job);
        job.set(35, "interface", "u");
    });
    open("a run through a loop at the NT", bri, "run", [](Job &job) {
        job.set(15, "path", "nt_loop");
        job.set(14, "path", "nt_loop");
    });
    open("layer 1 down inside the run", bri, "run", [](Job &job) {
        job.facts << fact(31, "layer", 40, {{"layer", 1}, {"interface", "u"}, {"outcome", "down"}})
                  << fact(32, "layer", 41, {{"layer", 1}, {"interface", "u"}, {"outcome", "up"}});
    });
    open("everything measured on another pair", bri, "loop", [](Job &job) { job.name("17-990"); });
    open("a self-test that failed after the readings", bri, "loop", [](Job &job) {
        for (QJsonObject &each : job.facts)
            if (each["kind"] != "safety")
                each["instrument"] = "TS-4";
        job.facts << fact(31, "self_test", 70, {{"outcome", "failed"}});
        job.set(31, "instrument", "TS-4");
    });
    bad("the network announced another number", bri, "readback",
        [](Job &job) { job.set(10, "announced_dn", "2175550177"); });
    bad("one TEI on two terminals", bri, "layer2", [](Job &job) { job.set(7, "tei", 64); });
}

QTEST_APPLESS_MAIN(JobRecordsTest)
#include "JobRecordsTest.moc"
