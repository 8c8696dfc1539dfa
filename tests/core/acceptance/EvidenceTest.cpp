// Which facts count, and why the others do not.
// Longer than 400 lines: one row for each sentence of the rules.

#include "core/acceptance/Evidence.h"

#include "core/acceptance/Judge.h"
#include "tests/support/Job.h"

#include <QTest>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

QJsonObject layer(int n, int minutes, int layer, const QJsonObject &place, const char *outcome)
{
    QJsonObject body = place;
    body.insert("layer", layer);
    body.insert("outcome", outcome);
    return fact(n, "layer", minutes, body);
}

QJsonObject layer1(int n, int minutes, const char *outcome)
{
    return layer(n, minutes, 1, {{"interface", "u"}}, outcome);
}

QJsonObject cleared(int n, int minutes, const char *what = "contact")
{
    QJsonObject body{{"what", what}};
    if (QString(what) != "nothing_found")
        body.insert("text", "joint remade");
    return fact(n, "cleared", minutes, body);
}

QJsonObject selfTest(int n, int minutes, const char *outcome)
{
    return fact(n, "self_test", minutes, {{"outcome", outcome}});
}

QJsonObject closed(int n, int minutes, int hazard)
{
    return fact(n, "hazard_closed", minutes,
                {{"hazard", uuid(hazard)}, {"source", "power"}, {"by", "Lee"}, {"reference", "7"}});
}

QJsonObject atInterface(QJsonObject run, const char *interface)
{
    run["interface"] = interface;
    return run;
}

QJsonObject with(QJsonObject fact, const QString &key, const QJsonValue &value)
{
    fact[key] = value;
    return fact;
}

/// The failed run of the job, and what follows it.
void fail(Job &job, const QList<QJsonObject> &then)
{
    job.at(15) = run(15, 32, 50, 20);
    job.facts << then;
}

} // namespace

Q_DECLARE_METATYPE(std::function<void(Job &)>)
using Change = std::function<void(Job &)>;

class EvidenceTest : public QObject
{
    Q_OBJECT

    const LimitSet m_limits = limits();

    DecisionInput inputOf(const Job &job)
    {
        DecisionInput input = jobs::input(job.fields, job.facts);
        input.changes = job.changes;
        job.then(input);
        return input;
    }
    QString state(const Job &job, const char *need)
    {
        const DecisionInput input = inputOf(job);
        return toText(judge(input, m_limits).standings[need].state);
    }
    /// `expected`: "run:missing layer1:met", and the order's outcome under its own name. `said`: in
    /// a note or a reason; empty: nothing particular.
    void row(const char *name, const char *expected, const char *said, Change change)
    {
        QTest::newRow(name) << QString(expected) << QString(said) << change;
    }
    void columns()
    {
        QTest::addColumn<QString>("expected");
        QTest::addColumn<QString>("said");
        QTest::addColumn<Change>("change");
    }
    void check()
    {
        QFETCH(QString, expected);
        QFETCH(QString, said);
        QFETCH(Change, change);
        Job job;
        change(job);
        const Decision decision = decide(inputOf(job), m_limits);
        QStringList told = decision.notesInEnglish();
        for (const CriterionResult &result : decision.criteria)
            told << result.key + ' ' + toText(result.outcome) + ": " + result.reason.english();
        for (const QString &each : expected.split(' ')) {
            const QString key = each.section(':', 0, 0), outcome = each.section(':', 1);
            const CriterionResult *result = decision.criterion(key);
            const QString found = outcome.isEmpty() ? toText(decision.outcome)
                                  : result          ? toText(result->outcome)
                                                    : QString("no such criterion");
            QVERIFY2(found == (outcome.isEmpty() ? key : outcome),
                     qPrintable(each + " is " + found + "\n" + told.join('\n')));
        }
        QVERIFY2(told.join('\n').contains(said), qPrintable(told.join('\n')));
    }

private slots:
    void thePair_data()
    {
        columns();
        row("named without separators", "accepted", "", [](Job &j) { j.name("17 204"); });
        row("named in small letters", "accepted", "", [](Job &j) {
            j.fields["pair"] = "C7-101";
            j.name("c7101");
        });
        row("another pair's", "safety:missing loop:missing layer1:missing run:missing incomplete",
            "Run of 4 March 2026, 08:32 (UTC-06:00) does not count: measured on C7-101, the order "
            "is for C7-990.",
            [](Job &j) {
                j.fields["pair"] = "C7-990";
                j.name("C7-101");
            });
        row("the order changed between two records",
            "safety:met loop:missing layer1:missing layer3:missing calls:met run:met incomplete",
            "Loop reading of 4 March 2026, 08:10 (UTC-06:00) does not count: measured on C7-101, "
            "the order is for "
            "C7-990.",
            [](Job &j) {
                j.fields["pair"] = "C7-990";
                j.changes = {{ChangedWhat::Pair, minute(21)}};
                j.facts << safety(31, 21);
                j.name("C7-101", 1, 9);
                j.name("C7-990", 10);
            });
        row("the order changed, and nobody made a card for the new pair",
            "safety:missing calls:missing run:missing incomplete", "before the safety card",
            [](Job &j) {
                j.fields["pair"] = "C7-990";
                j.changes = {{ChangedWhat::Pair, minute(21)}};
                j.name("C7-101", 1, 9);
                j.name("C7-990", 10);
            });
        row("measured on the new pair before the order said so", "accepted", "", [](Job &j) {
            j.changes = {{ChangedWhat::Pair, minute(100)}};
            j.name("17-204");
        });
        row("the feeder pair", "accepted", "", [](Job &j) {
            j.fields["feeder_pair"] = "F3-12";
            j.name("F3/12");
        });
        row("a feeder pair that the order does not name", "run:missing incomplete",
            "measured on F3/12, the order is for 17-204", [](Job &j) { j.name("F3/12"); });
        row("another pair said on site", "safety:missing loop:missing run:missing incomplete",
            "measured on 17-204, the order is for 18-1", [](Job &j) {
                j.facts << changed(31, 100, "pair", "18-1");
                j.name("17-204");
            });
        row("provisionally certified as the other pair", "accepted", "", [](Job &j) {
            j.facts << changed(31, 2, "pair", "18-1");
            j.name("18 1");
        });
        row("what names the other pair is not dated by the clock", "accepted", "", [](Job &j) {
            j.facts << changed(31, 100, "pair", "18-1");
            j.name("18-1");
        });
        row("the last that was said", "run:missing incomplete", "the order is for 18-2",
            [](Job &j) {
                j.facts << changed(31, 2, "pair", "18-1") << changed(32, 3, "pair", "18-2");
                j.name("18-1");
            });
        row("said on site, then the order changed to it", "accepted", "", [](Job &j) {
            j.facts << changed(31, 2, "pair", "18-1");
            j.fields["pair"] = "18-1";
            j.changes = {{ChangedWhat::Pair, minute(200)}};
            j.name("18-1");
        });
        row("said on site, then the order changed to a third", "run:missing incomplete",
            "measured on 18-1, the order is for 18-3", [](Job &j) {
                j.facts << changed(31, 2, "pair", "18-1");
                j.fields["pair"] = "18-3";
                j.changes = {{ChangedWhat::Pair, minute(200)}};
                j.name("18-1");
            });
        row("changed without a word to which", "safety:missing loop:missing run:missing incomplete",
            "made before the pair was changed, 4 March 2026, 09:40 (UTC-06:00)", [](Job &j) {
                j.facts << changed(31, 100, "pair");
                j.name("17-204");
            });
        row("no pair named, and the pair changed", "safety:missing loop:missing run:missing",
            "made before the pair was changed, 4 March 2026, 09:40 (UTC-06:00)",
            [](Job &j) { j.facts << changed(31, 100, "pair", "18-1"); });
        row("the same wires by another name", "accepted", "", [](Job &j) {
            j.fields["pair"] = "17-240";
            j.changes = {{std::nullopt, minute(100), "17-204"}};
            j.name("17-204");
        });
        row("the same wires, no pair named", "accepted", "", [](Job &j) {
            j.fields["pair"] = "17-240";
            j.changes = {{std::nullopt, minute(100), "17-204"}};
        });
        row("the same wires, and later other ones", "loop:missing run:missing incomplete",
            "measured on 17-204, the order is for 18-1", [](Job &j) {
                j.fields["pair"] = "18-1";
                j.changes = {{std::nullopt, minute(100), "17-204"},
                             {ChangedWhat::Pair, minute(101)}};
                j.name("17-204");
            });
        row("other wires, and later the same by another name", "accepted", "", [](Job &j) {
            j.fields["pair"] = "17-240";
            j.changes = {{ChangedWhat::Pair, minute(1)}, {std::nullopt, minute(100), "17-204"}};
            j.name("17-204");
        });
        row("no pair named: older than the order's change", "loop:missing layer1:met incomplete",
            "Loop reading of 4 March 2026, 08:10 (UTC-06:00) does not count: made before the pair "
            "was changed",
            [](Job &j) {
                j.changes = {{ChangedWhat::Pair, minute(12)}};
                j.facts << safety(31, 13);
            });
    }
    void thePair() { check(); }

    void changes_data()
    {
        columns();
        row("NT", "safety:met loop:met layer1:missing layer2:missing calls:missing run:missing",
            "made before the NT was changed", [](Job &j) { j.facts << changed(31, 100, "nt"); });
        row("identifiers", "layer1:met layer2:missing layer3:missing calls:missing run:missing",
            "made before the identifiers were changed",
            [](Job &j) { j.facts << changed(31, 100, "identifiers"); });
        row("identifiers of the order", "layer1:met layer2:missing layer3:missing run:missing",
            "made before the identifiers were changed", [](Job &j) {
                j.changes = {{ChangedWhat::Identifiers, minute(100)}};
            });
        row("identifiers, of the very moment",
            "layer2:missing layer3:met calls:met run:met incomplete",
            "Layer record of 4 March 2026, 08:17 (UTC-06:00) does not count", [](Job &j) {
                j.changes = {{ChangedWhat::Identifiers, minute(17)}};
            });
        row("line equipment", "safety:missing loop:missing layer1:missing run:missing",
            "made before the line equipment was changed", [](Job &j) {
                j.facts << changed(31, 100, "line_equipment");
                j.name("17-204");
            });
        row("line equipment, before everything", "accepted", "",
            [](Job &j) { j.facts << changed(31, 1, "line_equipment"); });
        row("feed, afterwards", "accepted", "",
            [](Job &j) { j.facts << changed(31, 100, "feed"); });
        row("feed, in between", "safety:met loop:met layer1:missing run:missing incomplete",
            "made after the feed was switched, without a new safety card",
            [](Job &j) { j.facts << changed(31, 12, "feed"); });
        row("feed, and a new card", "accepted", "",
            [](Job &j) { j.facts << changed(31, 12, "feed") << safety(32, 13); });
        row("struck out", "accepted", "", [](Job &j) {
            j.facts << changed(31, 100, "line_equipment") << voiding(32, 101, 31, "other line");
        });
    }
    void changes() { check(); }

    void layers_data()
    {
        columns();
        const auto tei = [](int n, int minutes, int tei) {
            return layer(n, minutes, 2, {{"terminal", 1}, {"tei", tei}}, "up");
        };
        row("a new TEI", "layer2:met layer3:missing calls:met run:met incomplete",
            "Layer 3 of terminal 1: nothing that counts was recorded.",
            [=](Job &j) { j.facts << tei(31, 60, 70); });
        row("a new TEI, and the SPID accepted again", "accepted",
            "made before the terminal had TEI 70", [=](Job &j) {
                j.facts << tei(31, 60, 70) << layer(32, 61, 3, {{"terminal", 1}}, "up");
            });
        row("the same TEI again", "accepted", "", [=](Job &j) { j.facts << tei(31, 60, 64); });
        row("down inside the run", "layer1:met run:missing incomplete",
            "Run of 4 March 2026, 08:32 (UTC-06:00) does not count: layer 1 went down while it "
            "lasted, at 08:40",
            [](Job &j) { j.facts << layer1(31, 40, "down") << layer1(32, 41, "up"); });
        row("another layer down inside the run", "run:missing incomplete",
            "layer 3 went down while it lasted", [](Job &j) {
                j.facts << layer(31, 40, 3, {{"terminal", 2}}, "down")
                        << layer(32, 48, 3, {{"terminal", 2}}, "up");
            });
        row("down inside the run, then a new TEI", "layer3:met run:missing incomplete",
            "layer 3 went down while it lasted", [=](Job &j) {
                j.facts << layer(31, 40, 3, {{"terminal", 1}}, "down") << tei(32, 50, 70)
                        << layer(33, 51, 3, {{"terminal", 1}}, "up");
            });
        row("down when the run ended", "run:met accepted", "",
            [](Job &j) { j.facts << layer1(31, 47, "down") << layer1(32, 48, "up"); });
        row("down in the check's quiet seconds", "detector:missing run:missing incomplete",
            "layer 1 went down while it lasted, at 08:29", [](Job &j) {
                j.facts << with(layer1(31, 29, "down"), "at", "2026-03-04T08:29:50-06:00")
                        << layer1(32, 31, "up");
            });
        row("down before the check", "accepted", "", [](Job &j) {
            j.facts << with(layer1(31, 29, "down"), "at", "2026-03-04T08:29:47-06:00")
                    << layer1(32, 31, "up");
        });
        row("down and up between check and run", "accepted",
            "Layer 1 at U was down on 4 March 2026, 08:30 (UTC-06:00) and up again on 4 March "
            "2026, 08:31 (UTC-06:00).",
            [](Job &j) { j.facts << layer1(31, 30, "down") << layer1(32, 31, "up"); });
        row("a set unplugged and plugged in again", "accepted",
            "Layer 2 of terminal 2 was down on 4 March 2026, 09:00 (UTC-06:00) and up again",
            [](Job &j) {
                j.facts << layer(31, 60, 2, {{"terminal", 2}}, "down")
                        << layer(32, 62, 2, {{"terminal", 2}, {"tei", 65}}, "up");
            });
        row("down ever since", "layer1:not_met run:met not_accepted", "",
            [](Job &j) { j.facts << layer1(31, 60, "down"); });
        row("first up after the run", "layer1:met run:met accepted",
            "Layer 1 at U was first recorded up after the run.",
            [](Job &j) { j.at(4) = layer1(4, 60, "up"); });
    }
    void layers() { check(); }

    void runs_data()
    {
        columns();
        row("failed, cleared, clean", "run:met accepted", "", [](Job &j) {
            fail(j, {cleared(30, 49), detector(31, 50), run(32, 52)});
        });
        row("failed, cleared, clean without another check", "run:met accepted", "", [](Job &j) {
            fail(j, {cleared(30, 49), run(32, 52)});
        });
        row("failed, something changed, clean", "run:met accepted", "", [](Job &j) {
            fail(j, {changed(30, 48, "feed"), safety(33, 49), detector(31, 50), run(32, 52)});
        });
        row("failed, clean without a word", "run:not_met not_accepted",
            "nothing between them says what was done", [](Job &j) {
                fail(j, {detector(31, 50), run(32, 52)});
            });
        row("failed, a note, clean", "run:not_met not_accepted", "", [](Job &j) {
            fail(j, {fact(30, "note", 49, {{"text", "remade the joint at the terminal"}}),
                     detector(31, 50), run(32, 52)});
        });
        row("cleared while the failed one went on", "run:not_met not_accepted", "", [](Job &j) {
            fail(j, {cleared(30, 46), detector(31, 50), run(32, 52)});
        });
        row("cleared at its end", "run:met accepted", "", [](Job &j) {
            fail(j, {cleared(30, 47), detector(31, 50), run(32, 52)});
        });
        row("cleared when the next had begun", "run:not_met not_accepted", "", [](Job &j) {
            fail(j, {detector(31, 50), run(32, 52), cleared(30, 53)});
        });
        row("nothing found, clean", "run:met accepted", "", [](Job &j) {
            fail(j, {cleared(30, 49, "nothing_found"), detector(31, 50), run(32, 52)});
        });
        row("nothing found, one error", "run:not_met not_accepted",
            "then only a run without any error counts", [](Job &j) {
                fail(j, {cleared(30, 49, "nothing_found"), detector(31, 50), run(32, 52, 1, 1)});
            });
        row("nothing found, one error, then none", "run:met accepted", "", [](Job &j) {
            fail(j, {cleared(30, 49, "nothing_found"), detector(31, 50), run(32, 52, 1, 1),
                     detector(33, 70), run(34, 72)});
        });
        row("nothing found at first, then the joint", "run:met accepted", "", [](Job &j) {
            fail(j, {cleared(30, 48, "nothing_found"), cleared(33, 49), detector(31, 50),
                     run(32, 52, 1, 1)});
        });
        row("clean, then failed", "run:not_met not_accepted", "",
            [](Job &j) { j.facts << detector(31, 50) << run(32, 52, 50, 20); });
        row("failed on the pair that was before", "run:met accepted", "", [](Job &j) {
            j.facts << run(31, 14, 50, 20);
            j.name("17-204", 1, 30);
            j.name("17-203", 31);
        });
        row("stopped early", "run:missing incomplete", "it neither passes nor fails",
            [](Job &j) { j.at(15)["stopped_early"] = true; });
        row("stopped early, over the allowance of a full run", "run:not_met not_accepted",
            "over its limits",
            [](Job &j) { j.at(15) = with(run(15, 32, 6, 1, 60), "stopped_early", true); });
        row("stopped early behind a good one", "run:met accepted", "",
            [](Job &j) { j.facts << with(run(31, 52, 0, 0, 60), "stopped_early", true); });
        row("a break in its clock", "run:missing incomplete", "The clock of the run shows a break",
            [](Job &j) {
                for (const char *key :
                     {"bit_errors", "errored_seconds", "severely_errored_seconds", "sync_losses"})
                    j.at(15).remove(QLatin1StringView(key));
                QJsonArray seconds;
                for (int i = 0; i < 890; ++i)
                    seconds << 0;
                j.at(15)["seconds"] = seconds;
            });
        row("a fixed pattern", "run:missing incomplete", "it can fail a line, never pass it",
            [](Job &j) { j.at(15)["pattern"] = "All ones"; });
        row("a fixed pattern with errors", "run:not_met not_accepted", "over its limits",
            [](Job &j) { j.at(15) = with(run(15, 32, 50, 20), "pattern", "1:1"); });
        row("failed at S/T, clean at U", "run:not_met not_accepted", "the customer gets S/T",
            [](Job &j) {
                fail(j, {cleared(30, 49), detector(31, 50), atInterface(run(32, 52), "u")});
            });
        row("failed at S/T and at U, clean at U", "run:not_met not_accepted",
            "the customer gets S/T", [](Job &j) {
                fail(j, {cleared(30, 49), detector(31, 50), atInterface(run(32, 52, 50, 20), "u"),
                         cleared(33, 69), detector(34, 70), atInterface(run(35, 72), "u")});
            });
        row("failed at S/T, clean at U and at S/T", "run:met accepted", "", [](Job &j) {
            fail(j, {cleared(30, 49), detector(31, 50), atInterface(run(32, 52), "u"),
                     detector(33, 70), run(34, 72)});
        });
        row("failed at U, clean at U", "run:met accepted", "", [](Job &j) {
            fail(j, {cleared(30, 49), detector(31, 50), atInterface(run(32, 52), "u")});
            j.at(15)["interface"] = "u";
        });
        row("failed at S/T of the customer's own NT, clean at U", "run:met accepted", "",
            [](Job &j) {
                j.fields["nt_supplied"] = "no";
                fail(j, {cleared(30, 49), detector(31, 50), atInterface(run(32, 52), "u")});
            });
        row("over two channels by a loopback", "run:met",
            "The run over two channels is two calls, one on each.",
            [](Job &j) { j.at(14)["path"] = j.at(15)["path"] = "test_line"; });
    }
    void runs() { check(); }

    void everyRunIsTold()
    {
        Job job;
        fail(job, {cleared(30, 49), detector(31, 50), run(32, 52)});
        const Decision decision = decide(inputOf(job), m_limits);
        QStringList results;
        for (const RunMade &made : decision.runs)
            results << made.result;
        QCOMPARE(results, (QStringList{"failed", "counted"}));
    }
    void aSelfCallOverTwoChannelsIsOneCall()
    {
        const QString notes = decide(inputOf({}), m_limits).notesInEnglish().join('\n');
        QVERIFY2(!notes.contains("two calls"), qPrintable(notes));
    }

    void instruments_data()
    {
        columns();
        const auto unnamed = [](DecisionInput &input) {
            for (Fact &fact : input.facts)
                if (fact.id == uuid(3))
                    fact.instrument.clear();
        };
        const auto madeWith = [](const char *instrument) {
            return fact(31, "made_with", 90,
                        {{"facts", QJsonArray{uuid(3)}}, {"instrument", instrument}});
        };
        row("none named", "loop:met instrument:missing incomplete",
            "Loop reading was recorded without an instrument.", [=](Job &j) { j.then = unnamed; });
        row("said afterwards", "loop:met instrument:met accepted", "", [=](Job &j) {
            j.then = unnamed;
            j.facts << madeWith("TS-4");
        });
        row("said afterwards, and unknown", "instrument:not_met not_accepted",
            "Instrument TS-9 is not registered.", [=](Job &j) {
                j.then = unnamed;
                j.facts << madeWith("TS-9");
            });
        row("said afterwards, its self-test failed", "loop:missing incomplete",
            "made with TS-9, which failed its self-test", [=](Job &j) {
                j.then = unnamed;
                j.facts << madeWith("TS-9")
                        << with(selfTest(32, 50, "failed"), "instrument", "TS-9");
            });
        row("what was named is not said otherwise", "instrument:met accepted", "",
            [=](Job &j) { j.facts << madeWith("TS-9"); });
        row("self-test failed", "loop:missing layer1:missing run:missing incomplete",
            "made with TS-4, which failed its self-test on that visit",
            [](Job &j) { j.facts << selfTest(31, 59, "failed"); });
        row("self-test failed, the card stands", "safety:met", "",
            [](Job &j) { j.facts << selfTest(31, 59, "failed"); });
        row("self-test failed, then passed", "accepted", "",
            [](Job &j) { j.facts << selfTest(31, 59, "failed") << selfTest(32, 70, "passed"); });
        row("self-test failed on another visit", "accepted", "", [](Job &j) {
            j.facts << with(selfTest(31, 59, "failed"), "at", "2026-03-05T08:00:00-06:00");
        });
        row("another one's self-test", "accepted", "",
            [](Job &j) { j.facts << with(selfTest(31, 59, "failed"), "instrument", "TS-5"); });
    }
    void instruments() { check(); }

    void calls_data()
    {
        columns();
        const auto busy = [](int n, int cause, const char *dn = "2175550199",
                             const char *direction = "out") {
            return with(call(n, 60, "B1", direction, "voice", dn, "failed"), "cause", cause);
        };
        row("a self-call of ten seconds", "calls:met run:missing", "",
            [](Job &j) { j.at(15) = run(15, 32, 0, 0, 10); });
        row("a self-call of nine seconds", "calls:missing run:missing",
            "No data call out on B1 was recorded.",
            [](Job &j) { j.at(15) = run(15, 32, 0, 0, 9); });
        for (const int outOfSync : {2, 3})
            row(outOfSync == 2 ? "ten seconds in sync of twelve" : "nine seconds in sync of twelve",
                outOfSync == 2 ? "calls:met" : "calls:missing", "", [outOfSync](Job &j) {
                    QJsonObject &run = j.at(15) = jobs::run(15, 32, 0, 0, 12);
                    for (const char *key : {"bit_errors", "errored_seconds",
                                            "severely_errored_seconds", "sync_losses"})
                        run.remove(QLatin1StringView(key));
                    QJsonArray seconds;
                    for (int i = 0; i < 12; ++i)
                        seconds << (i < outOfSync ? QJsonValue() : QJsonValue(0));
                    run["seconds"] = seconds;
                });
        row("a self-call to a stranger", "calls:missing", "",
            [](Job &j) { j.at(15)["to_dn"] = "2175550199"; });
        row("a self-call between no numbers", "calls:missing", "",
            [](Job &j) { j.at(15)["from_dn"] = j.at(15)["to_dn"] = "line 1"; });
        row("a self-call that names one number", "calls:missing", "",
            [](Job &j) { j.at(15).remove("from_dn"); });
        for (const int cause : {17, 18, 19})
            row(qPrintable(QString("cause %1 elsewhere").arg(cause)), "calls:met accepted",
                "busy or not answered elsewhere", [=](Job &j) { j.facts << busy(31, cause); });
        row("rejected elsewhere", "calls:not_met not_accepted", "",
            [=](Job &j) { j.facts << busy(31, 21); });
        row("busy elsewhere and nothing else", "calls:missing incomplete",
            "No voice call out on B1 counts.", [=](Job &j) {
                j.drop(10);
                j.facts << busy(31, 17);
            });
        row("busy at a number of the order", "calls:not_met not_accepted", "",
            [=](Job &j) { j.facts << busy(31, 17, "(217) 555-0144"); });
        row("an incoming cause 18", "calls:not_met not_accepted", "",
            [=](Job &j) { j.facts << busy(31, 18, "2175550143", "in"); });
        row("an answered call elsewhere", "calls:met accepted", "",
            [=](Job &j) { j.facts << with(busy(31, 17), "outcome", "ok"); });
    }
    void calls() { check(); }

    void aLoopbackThatCallsBackIsACallIn()
    {
        Job job;
        job.at(15)["path"] = "test_line";
        job.at(15)["channels"] = QJsonArray{"B1"};
        QCOMPARE(state(job, "call.in.2.data"), "done");
        QCOMPARE(state(job, "call.out.B1.data"), "open");
        job.at(15) = with(job.at(15), "ended", "2026-03-04T08:32:09-06:00");
        QCOMPARE(state(job, "call.in.2.data"), "open");
    }
    /// Where the length of a number is not known, what ends one of the order's may be that number.
    void noNumberIsNoneOfTheOrder()
    {
        Job job;
        job.fields["protocol_variant"] = "dss1";
        job.fields["spid_1"] = job.fields["spid_2"] = "";
        job.fields["dn_1"] = "030 5550143";
        job.fields["dn_2"] = "030 5550144";
        job.at(15)["from_dn"] = "5550143";
        job.at(15)["to_dn"] = "030 5550144";
        QCOMPARE(state(job, "call.out.B1.data"), "done");
        job.at(15)["from_dn"] = "set one";
        QCOMPARE(state(job, "call.out.B1.data"), "open");
    }

    void datesAndEnds_data()
    {
        columns();
        const auto takenIn = [](const char *at) {
            return [at](DecisionInput &input) {
                input.takenIn = *Moment::parse(QString::fromLatin1(at));
            };
        };
        const auto afterEnd = [](int n) {
            return [n](DecisionInput &input) { input.afterEnd = {uuid(n)}; };
        };
        row("more than 30 days before the order", "run:met accepted",
            "Run of 4 March 2026, 08:32 (UTC-06:00) was made more than 30 days before the order "
            "was taken in.",
            [=](Job &j) { j.then = takenIn("2026-04-03T08:33:00-06:00"); });
        row("recorded when the order had ended", "run:missing incomplete",
            "Run of 4 March 2026, 08:32 (UTC-06:00) does not count: recorded when the order was no "
            "longer open.",
            [=](Job &j) { j.then = afterEnd(15); });
        row("changed when the order had ended", "accepted",
            "does not count: recorded when the order was no longer open", [=](Job &j) {
                j.facts << changed(31, 100, "line_equipment");
                j.then = afterEnd(31);
            });
        row("another pair when the order had ended", "accepted", "", [=](Job &j) {
            j.facts << changed(31, 100, "pair", "18-1");
            j.name("17-204");
            j.then = afterEnd(31);
        });
        row("self-test failed when the order had ended", "accepted", "", [=](Job &j) {
            j.facts << selfTest(31, 59, "failed");
            j.then = afterEnd(31);
        });
        row("cleared when the order had ended", "run:not_met not_accepted", "", [=](Job &j) {
            fail(j, {cleared(30, 49), detector(31, 50), run(32, 52)});
            j.then = afterEnd(30);
        });
    }
    void datesAndEnds() { check(); }

    void thirtyDaysAreNotTooLong()
    {
        Job job;
        job.then = [](DecisionInput &input) {
            input.takenIn = *Moment::parse(u"2026-04-03T08:05:00-06:00");
        };
        const QString notes = decide(inputOf(job), m_limits).notesInEnglish().join('\n');
        QVERIFY2(!notes.contains("30 days"), qPrintable(notes));
    }

    void cards_data()
    {
        columns();
        const auto onNextDay = [](QJsonObject fact) {
            return with(fact, "at", fact["at"].toString().replace("2026-03-04", "2026-03-05"));
        };
        row("none", "safety:missing loop:missing run:missing incomplete",
            "Loop reading of 4 March 2026, 08:10 (UTC-06:00) does not count: made before the "
            "safety card of that "
            "visit.",
            [](Job &j) { j.drop(1); });
        row("a reading from the office needs none", "safety:missing loop:met layer1:missing", "",
            [](Job &j) {
                j.drop(1);
                j.at(3)["from"] = "office";
            });
        row("after some readings", "safety:met loop:missing layer1:met run:met incomplete",
            "Loop reading of 4 March 2026, 08:10 (UTC-06:00) does not count: made before the "
            "safety card of that "
            "visit.",
            [](Job &j) { j.at(1) = safety(1, 12); });
        row("after all readings", "safety:met loop:missing run:missing incomplete", "",
            [](Job &j) { j.at(1) = safety(1, 50); });
        row("a second visit without one", "layer1:met accepted",
            "Layer record of 5 March 2026, 08:20 (UTC-06:00) does not count: made before the "
            "safety card of that "
            "visit.",
            [=](Job &j) { j.facts << onNextDay(layer1(31, 20, "down")); });
        row("a second visit with one", "layer1:not_met not_accepted", "", [=](Job &j) {
            j.facts << onNextDay(safety(32, 10)) << onNextDay(layer1(31, 20, "down"));
        });
        row("incomplete", "safety:missing loop:missing run:missing incomplete",
            "made when the safety card of that visit was incomplete",
            [](Job &j) { j.at(1)["confirmed"] = QJsonArray{"storm"}; });
        row("incomplete, then whole", "safety:met loop:missing layer1:met incomplete", "",
            [](Job &j) {
                j.at(1)["confirmed"] = QJsonArray{"storm"};
                j.facts << safety(31, 12);
            });
        row("of another place, incomplete", "safety:met loop:met layer1:missing incomplete", "",
            [](Job &j) {
                j.facts << with(with(safety(31, 12), "place", "terminal 4"), "confirmed",
                                QJsonArray{"storm"});
            });
        row("struck out", "safety:missing loop:missing incomplete", "",
            [](Job &j) { j.facts << voiding(31, 60, 1, "other pair"); });
    }
    void cards() { check(); }

    void numbersAloneNeedACardIfSomebodyGoesThere()
    {
        Job job;
        job.then = [](DecisionInput &input) { input.scope = OrderScope::NumbersOnly; };
        job.drop(1);
        job.drop(2); // a self-test is made there
        Decision decision = decide(inputOf(job), m_limits);
        QCOMPARE(toText(decision.outcome), "accepted");
        QCOMPARE(toText(decision.criterion("safety")->outcome), "not_needed");
        job.facts << fact(31, "visit", 2, {{"arrived", "2026-03-04T08:02:00-06:00"}});
        decision = decide(inputOf(job), m_limits);
        QCOMPARE(toText(decision.criterion("safety")->outcome), "missing");
        QCOMPARE(toText(decision.criterion("layer3")->outcome), "missing");
        job.facts << safety(1, 5);
        QCOMPARE(toText(decide(inputOf(job), m_limits).outcome), "accepted");
    }

    void insulationIsMeasuredOnADeadPair_data()
    {
        QTest::addColumn<bool>("connected");
        QTest::addColumn<QString>("quantity");
        for (const char *quantity : {"insulation", "foreign_voltage"})
            for (const bool connected : {false, true})
                QTest::addRow("%s, %d", quantity, connected) << connected << QString(quantity);
    }
    void insulationIsMeasuredOnADeadPair()
    {
        QFETCH(bool, connected);
        QFETCH(QString, quantity);
        Job job{analogFields(), analogFacts()};
        job.at(1)["office_connected"] = connected;
        const bool insulation = quantity == "insulation";
        job.facts << analog(31, 17, insulation ? "insulation" : "foreign_voltage",
                            insulation ? 5 : 0.5, insulation ? "Mohm" : "V");
        const Decision decision = decide(inputOf(job), m_limits);
        QCOMPARE(toText(decision.criterion(quantity)->outcome), connected ? "not_needed" : "met");
        QCOMPARE(toText(decision.criterion("loop_current")->outcome), "met");
        QCOMPARE(decision.notesInEnglish().join('\n').contains("the office was connected"),
                 connected);
    }

    void hazards_data()
    {
        columns();
        // The hazard is read at 08:02; card 1 of 08:05 is clear.
        const auto hazard = safety(40, 2, 80);
        row("clear afterwards, and nobody says why", "safety:not_met not_accepted",
            "Hazard: 80 V AC", [=](Job &j) { j.facts << hazard; });
        row("closed, and a clear card", "safety:met accepted",
            "The hazard read on 4 March 2026, 08:02 (UTC-06:00) was closed; the card after it is "
            "clear.",
            [=](Job &j) { j.facts << hazard << closed(41, 3, 40); });
        row("closed after the clear card", "safety:missing loop:missing incomplete",
            "no clear card was made since",
            [=](Job &j) { j.facts << hazard << closed(41, 60, 40); });
        row("closed before it was read", "safety:not_met not_accepted", "",
            [=](Job &j) { j.facts << hazard << closed(41, 1, 40); });
        row("another one closed", "safety:not_met not_accepted", "",
            [=](Job &j) { j.facts << hazard << safety(42, 3, 90) << closed(41, 4, 42); });
        row("the card after it is incomplete", "safety:missing incomplete",
            "no clear card was made since", [=](Job &j) {
                j.facts << hazard << closed(41, 3, 40);
                j.at(1)["confirmed"] = QJsonArray{"storm"};
            });
        row("its card struck out", "safety:not_met not_accepted", "Hazard: 80 V AC",
            [=](Job &j) { j.facts << hazard << voiding(43, 60, 40, "typing error"); });
        row("the closing struck out", "safety:not_met not_accepted", "", [=](Job &j) {
            j.facts << hazard << closed(41, 3, 40) << voiding(43, 60, 41, "not so");
        });
        row("the clear card struck out", "safety:missing incomplete",
            "no clear card was made since", [=](Job &j) {
                j.facts << hazard << closed(41, 3, 40) << voiding(43, 60, 1, "not so");
            });
        row("measured beside it", "safety:met loop:missing layer1:met incomplete",
            "made while a hazard was open, read on 4 March 2026, 08:07 (UTC-06:00)",
            [=](Job &j) { j.facts << safety(40, 7, 80) << closed(41, 11, 40) << safety(42, 12); });
        row("found at the end", "safety:not_met loop:met run:met not_accepted", "",
            [=](Job &j) { j.facts << safety(40, 60, 80); });
        row("on another pair since", "safety:not_met not_accepted", "", [=](Job &j) {
            j.facts << hazard << changed(44, 3, "pair", "18-1");
            j.name("18-1", 1, 39);
            j.name("17-204", 40);
        });
        row("at the stop limit", "safety:met accepted", "",
            [=](Job &j) { j.facts << safety(40, 2, 50); });
        row("struck out on a change of numbers", "safety:not_met not_accepted", "", [=](Job &j) {
            j.facts = {hazard, voiding(43, 60, 40, "typing error")};
            j.then = [](DecisionInput &input) { input.scope = OrderScope::NumbersOnly; };
        });
    }
    void hazards() { check(); }
};

QTEST_APPLESS_MAIN(EvidenceTest)
#include "EvidenceTest.moc"
