// Whole jobs entered by key events alone in the real window: what is decided of them equals what is
// decided of the same job recorded from a file.

#include "app/desktop/screens/JobScreen.h"

#include "tests/support/JobBench.h"

using namespace loopwright;
using namespace loopwright::jobs;

#define AT(name) QCOMPARE(JobBench::focus(), QString(name))

class JobScreenTest : public QObject
{
    Q_OBJECT

    static constexpr auto enter = &JobBench::enter;
    static void next() { JobBench::key(Qt::Key_F2); }

    static void openJob(JobBench &bench, const QString &number)
    {
        bench.window().openOrder(number);
        AT("next");
    }
    /// Installer and instrument, once for all entries; then the arrival.
    static void arrive()
    {
        JobBench::key(Qt::Key_Tab);
        AT("context.installer");
        enter("K7");
        AT("context.instrument");
        enter("TS-4");
        AT("visit.arrived");
        enter({});
        AT("next");
    }
    static void safetyCard()
    {
        AT("safety.office_connected");
        JobBench::keys("n");
        for (const char *place : {"ac_v.tip_ground", "ac_v.ring_ground", "ac_v.tip_ring"}) {
            AT(QString("safety.") + place);
            enter("0.2");
        }
        for (const char *place : {"dc_v.tip_ground", "dc_v.ring_ground", "dc_v.tip_ring"}) {
            AT(QString("safety.") + place);
            enter("0.1");
        }
        JobBench::keys("yyyy");
        AT("safety.confirm");
        enter({});
        AT("next");
    }

private slots:
    void basicRateByKeys()
    {
        JobBench bench({briFields()});
        bench.at(2);
        openJob(bench, "A-1001");
        arrive();
        bench.at(5);
        next();
        AT("makeup.1.what");
        next();
        safetyCard();

        bench.at(10);
        next();
        next();
        AT("pair.dc_resistance_ohm");
        enter("612");
        AT("pair.loss_db");
        enter("28,4");
        AT("pair.frequency_hz");
        enter("40000");
        AT("next");

        bench.at(15);
        next();
        AT("turnup.1.u.outcome");
        enter("u");
        AT("turnup.1.st.outcome");
        enter("u");
        AT("turnup.2.1.outcome");
        JobBench::keys("u");
        AT("turnup.2.1.tei");
        enter("64");
        AT("turnup.2.2.outcome");
        JobBench::keys("u");
        enter("65");
        AT("turnup.3.1.outcome");
        enter("u");
        AT("turnup.3.2.outcome");
        enter("u");
        AT("next");

        bench.at(22);
        next();
        AT("calls.out.B1.voice.outcome");
        JobBench::keys("o");
        AT("calls.out.B1.data.outcome");

        bench.at(30);
        next();
        AT("error_test.setup.path");
        enter({});
        AT("error_test.setup.channel");
        enter({});
        AT("error_test.setup.call");
        JobBench::keys("o");
        AT("error_test.detector.quiet_seconds");
        for (const char *value : {"12", "0", "3", "3", "3", "3"})
            enter(value);
        AT("error_test.detector.cleared");
        JobBench::keys("y");
        AT("error_test.start");
        bench.at(32);
        enter({});
        AT("error_test.clock");
        bench.at(47);
        QTRY_COMPARE(JobBench::focus(), QString("error_test.counts.bit_errors"));
        for (const char *key : {"bit_errors", "errored_seconds", "severely_errored_seconds"}) {
            AT(QString("error_test.counts.") + key);
            enter({});
        }
        AT("error_test.counts.sync_losses");
        enter({});
        AT("next");

        // The self-call filled one call out and one in; the others are still asked for.
        bench.at(50);
        next();
        AT("calls.out.B2.data.outcome");
        JobBench::keys("o");
        AT("calls.in.1.voice.outcome");
        JobBench::keys("oo");
        AT("next");
        QCOMPARE(bench.decision("A-1001"), decisionFromFile(briFields(), briFacts()));
        QCOMPARE(bench.decision("A-1001")["outcome"].toString(), "accepted");
        next();
        QVERIFY(JobBench::focus().startsWith("certificate."));
    }
};

QTEST_MAIN(JobScreenTest)
#include "JobScreenTest.moc"
