// Drafts, and a program that is killed: another process types, is killed by the system in the
// middle of it, and the window is opened again on the same file.

#include "app/desktop/job/JobSession.h"

#include "app/desktop/form/Form.h"
#include "app/desktop/job/RunClock.h"
#include "app/desktop/widgets/KeyedChoice.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

#include <QProcess>

#include <csignal>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

constexpr const char *victimOf = "LOOPWRIGHT_TEST_VICTIM";

/// What the killed program had done: a card half filled in, a run in its fifth minute.
void typeAndDie(const QString &path)
{
    JobBench bench(path, 30);
    take(bench.records(), briFields(), {safety(1, 5), detector(14, 29)});
    bench.openJob("A-1001");
    bench.go("safety.office_connected");
    JobBench::keys("n");
    JobBench::enter("0.2");
    JobBench::enter("0.3x");
    JobBench::keys("0.4"); // the field under the cursor
    bench.go("error_test.start");
    bench.at(32);
    JobBench::enter();
    bench.at(35);
    JobBench::keys("e3");
    bench.at(36);
    JobBench::keys("s");
    bench.at(36.5);
    JobBench::keys("s");
    std::raise(SIGKILL);
}

} // namespace

class JobSessionTest : public QObject
{
    Q_OBJECT

    static QString typed(JobBench &bench, const QString &name)
    {
        return bench.find<QLineEdit>(name)->text();
    }

private slots:
    void aKilledProgramShowsTheDraftAgain()
    {
        JobBench first({briFields()});
        first.close();
        QProcess victim;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(victimOf, first.path());
        victim.setProcessEnvironment(environment);
        victim.start(QCoreApplication::applicationFilePath(), {});
        QVERIFY(victim.waitForFinished(60000));
        QCOMPARE(victim.exitStatus(), QProcess::CrashExit);
        QCOMPARE(victim.exitCode(), SIGKILL);

        JobBench bench(first.path(), 37);
        bench.window().openOrder("A-1001");
        QCOMPARE(bench.find<KeyedChoice>("safety.office_connected")->code(), "false");
        QCOMPARE(typed(bench, "safety.ac_v.tip_ground"), "0.2");
        QCOMPARE(typed(bench, "safety.ac_v.ring_ground"), "0.3x"); // as it was typed, wrong or not
        QVERIFY(
            bench.find<QWidget>("instrument.instrument")->accessibleDescription().contains("TS-4"));

        auto *clock = bench.find<RunClock>("error_test.clock");
        QCOMPARE(clock->log().gaps(), (std::vector<Stretch>{{270, 300}}));
        QVERIFY(!clock->isHidden());
        QCOMPARE(clock->clockText(), "10:00"); // started at 8:32, now 8:37
        QVERIFY(bench.find<QWidget>("error_test.file")->isHidden());
        QCOMPARE(clock->summary().bitErrors, 4);
        QCOMPARE(clock->summary().syncLosses, 1);
        QCOMPARE(clock->summary().outOfSyncSeconds, 31); // both ends of the half minute
        bench.go("error_test.clock");
        bench.at(47);
        QTRY_COMPARE(JobBench::focus(), QString("error_test.counts.bit_errors"));
        QVERIFY(!bench.find<QWidget>("error_test.file")->isHidden());
        for (const char *count : {"4", "2", "1", "1"}) // half a minute was not watched
            JobBench::enter(count);
        const auto view = showOrder(bench.records(), "A-1001");
        const auto *run = view->facts.back().fact.as<RunFact>();
        QVERIFY(run && !run->seconds);
        QCOMPARE(run->started.text(), "2026-03-04T08:32:00-06:00");
        QCOMPARE(run->ended.text(), "2026-03-04T08:47:00-06:00");
        QCOMPARE(run->syncLosses, 1);
        QVERIFY(clock->isHidden());
    }

    void contradictoryTotalsAreToldBeforeTheyAreRecorded()
    {
        JobBench bench({briFields()});
        bench.at(31);
        take(bench.records(), briFields(), {safety(1, 5), detector(14, 30)});
        bench.openJob("A-1001");
        bench.at(55);
        bench.find<QPushButton>("error_test.totals")->click();
        QCOMPARE(JobBench::focus(), QString("error_test.counts.started"));
        for (const char *value : {"08:32:00", "08:47:00", "2", "9", "0", "0"})
            JobBench::enter(value);
        QCOMPARE(showOrder(bench.records(), "A-1001")->facts.size(), 2U); // what was there before
        QCOMPARE(JobBench::focus(), QString("error_test.counts.errored_seconds"));
        auto *form = bench.find<Form>("error_test.counts");
        QCOMPARE(form->field("errored_seconds")->findings().front().reason,
                 "The totals contradict each other: 2 bit errors cannot make 9 errored seconds "
                 "without a loss of synchronisation; read the test set again.");
        QCOMPARE(typed(bench, "error_test.counts.bit_errors"), "2"); // nothing typed is lost
        bench.find<QLineEdit>("error_test.counts.errored_seconds")->selectAll();
        JobBench::enter("2");
        JobBench::enter();
        JobBench::enter();
        const auto view = showOrder(bench.records(), "A-1001");
        QCOMPARE(view->facts.size(), 3U);
        QCOMPARE(view->facts.back().fact.as<RunFact>()->erroredSeconds, 2);
    }

    void aSelfCallToItsOwnNumberIsToldBeforeItIsMade()
    {
        JobBench bench({briFields()});
        bench.at(10);
        take(bench.records(), briFields(), {safety(1, 5)});
        bench.openJob("A-1001");
        bench.go("error_test.setup.to_dn");
        JobBench::keys("1");
        auto *field = bench.find<Form>("error_test.setup")->field("to_dn");
        QTRY_VERIFY(field->isInError());
        bench.go("error_test.setup.to_dn");
        JobBench::keys("2");
        QTRY_VERIFY(!field->isInError());
    }

    void aFieldThatIsLeftIsKept()
    {
        JobBench bench({briFields()});
        bench.at(10);
        take(bench.records(), briFields(), {safety(1, 5)});
        bench.openJob("A-1001");
        const QString part = "pair.loop.measured";
        bench.go(part + ".dc_resistance_ohm");
        JobBench::keys("61");
        QVERIFY(drafts(bench.records(), "A-1001")->value(part).isEmpty());
        JobBench::key(Qt::Key_Tab);
        QCOMPARE(drafts(bench.records(), "A-1001")->value(part),
                 (QJsonObject{{"dc_resistance_ohm", "61"}}));
        JobBench::key(Qt::Key_Tab, Qt::ShiftModifier);
        JobBench::enter("612");
        JobBench::enter();
        QVERIFY2(drafts(bench.records(), "A-1001")->value(part).isEmpty(),
                 "what became a fact is no draft any more");
        QCOMPARE(showOrder(bench.records(), "A-1001")->facts.size(), 2U);
    }

    void anotherJobHasItsOwnDrafts()
    {
        OrderFields second = briFields();
        for (const auto &[column, value] :
             {std::pair("order_number", "A-1002"), std::pair("circuit_number", "C-78"),
              std::pair("pair", "17-299"), std::pair("dn_1", "217-555-0145"),
              std::pair("spid_1", "21755501450101"), std::pair("dn_2", "217-555-0146"),
              std::pair("spid_2", "21755501460101")})
            second[column] = value;
        JobBench bench({briFields(), second});
        bench.openJob("A-1001");
        bench.go("remarks.note.text");
        JobBench::keys("half a thought");
        bench.window().openOrder("A-1002");
        QCOMPARE(typed(bench, "remarks.note.text"), "");
        bench.window().openOrder("A-1001");
        QCOMPARE(typed(bench, "remarks.note.text"), "half a thought");
    }

    void pageAndFileSayTheSame()
    {
        JobBench bench({briFields()});
        auto other =
            DesktopContext::open(bench.path(), "K7", Moment::parse(u"2026-03-04T08:00:00-06:00"));
        QVERIFY(other);
        JobSession desk(**other);
        QVERIFY(desk.open("A-1001"));
        const auto wrong = desk.read({{{"kind", "layer"}, {"layer", 4}, {"outcome", "up"}}});
        QVERIFY(!wrong);
        const auto fromFile =
            recordFile(bench.records(),
                       R"({"order":"A-1001","facts":[{"kind":"layer","layer":4,"outcome":"up",)"
                       R"("at":"2026-03-04T08:00:00-06:00"}]})",
                       "job.json");
        QVERIFY(!fromFile);
        QCOMPARE(wrong.error().message, fromFile.error().message);
        const auto noTerminal = desk.read(
            {{{"kind", "layer"}, {"layer", 2}, {"terminal", 3}, {"outcome", "up"}, {"tei", 64}}});
        QVERIFY(!noTerminal);
        QCOMPARE(noTerminal.error().place, "facts[0].terminal");
        QVERIFY(!desk.open("NO-SUCH"));
    }
};

int main(int argc, char *argv[])
{
    QApplication application(argc, argv);
    if (qEnvironmentVariableIsSet(victimOf))
        typeAndDie(qEnvironmentVariable(victimOf));
    JobSessionTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "JobSessionTest.moc"
