// Whole jobs entered by key events alone in the real window: what is decided of them equals what is
// decided of the same job recorded from a file.

#include "app/desktop/screens/JobScreen.h"

#include "app/actions/Certificates.h"
#include "app/actions/Orders.h"
#include "app/actions/VerifyCertificate.h"
#include "app/desktop/job/StationPanel.h"
#include "tests/support/JobBench.h"

#include <QClipboard>
#include <QLabel>

using namespace loopwright;
using namespace loopwright::jobs;

#define AT(name) QCOMPARE(JobBench::focus(), QString(name))

class JobScreenTest : public QObject
{
    Q_OBJECT

    static void enter(const QString &text = {}) { JobBench::enter(text); }
    static void next() { JobBench::key(Qt::Key_F2); }

    /// From the board: the number in the search field, Enter opens the job.
    static void openByKeys(JobBench &bench, const QString &number)
    {
        QTest::keyClick(&bench.window(), Qt::Key_F, Qt::ControlModifier);
        JobBench::keys(number);
        // The board searches beside the window; Enter opens what it has found.
        for (int tries = 0; bench.window().current()->key() != "job" && tries < 100; ++tries) {
            JobBench::key(Qt::Key_Return);
            QTest::qWait(20);
        }
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
        enter();
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
        enter();
        AT("next");
    }
    static void layers()
    {
        for (const char *interface : {"u", "st"}) {
            AT(QString("turnup.1.%1.outcome").arg(interface));
            JobBench::keys("u");
            enter();
        }
        for (int terminal = 1; terminal <= 2; ++terminal) {
            AT(QString("turnup.2.%1.outcome").arg(terminal));
            JobBench::keys("u");
            AT(QString("turnup.2.%1.tei").arg(terminal));
            enter(QString::number(63 + terminal));
        }
        for (int terminal = 1; terminal <= 2; ++terminal) {
            AT(QString("turnup.3.%1.outcome").arg(terminal));
            JobBench::keys("u");
            enter();
        }
        AT("next");
    }
    static void selfCall(JobBench &bench)
    {
        AT("error_test.setup.path");
        enter();
        AT("error_test.setup.channel");
        enter();
        AT("error_test.setup.call");
        JobBench::keys("o");
        AT("error_test.detector.quiet_seconds");
        for (const char *value : {"12", "0", "3", "3", "3", "3"})
            enter(value);
        AT("error_test.detector.cleared");
        JobBench::keys("y");
        AT("error_test.start");
        bench.at(32);
        enter();
        AT("error_test.clock");
        bench.at(47);
        QTRY_COMPARE(JobBench::focus(), QString("error_test.counts.bit_errors"));
        for (const char *key : {"bit_errors", "errored_seconds", "severely_errored_seconds"}) {
            AT(QString("error_test.counts.") + key);
            enter();
        }
        AT("error_test.counts.sync_losses");
        enter();
        AT("next");
    }
    static void basicRateJob(JobBench &bench)
    {
        bench.at(2);
        openByKeys(bench, "A-1001");
        arrive();
        bench.at(5);
        next();
        AT("makeup.1.what");
        next(); // the make-up is not known; F2 again goes on to the next open part
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
        layers();
        bench.at(22);
        next();
        AT("calls.out.B1.voice.outcome");
        JobBench::keys("o");
        AT("calls.out.B1.data.outcome");
        bench.at(30);
        next();
        selfCall(bench);
        // The self-call filled one call out and one in; only the others are still asked for.
        bench.at(50);
        next();
        AT("calls.out.B2.data.outcome");
        JobBench::keys("o");
        AT("calls.in.1.voice.outcome");
        JobBench::keys("oo");
        AT("next");
    }

private slots:
    void basicRateByKeys()
    {
        JobBench bench({briFields()});
        basicRateJob(bench);
        QCOMPARE(bench.decision("A-1001"), decisionFromFile(briFields(), briFacts()));
        QCOMPARE(bench.decision("A-1001")["outcome"].toString(), "accepted");
    }

    void certificateByKeys()
    {
        JobBench bench({briFields()});
        basicRateJob(bench);
        next();
        AT("certificate.confirm"); // all is proposed; this one goes elsewhere
        JobBench::key(Qt::Key_Backtab, Qt::ShiftModifier);
        AT("certificate.path");
        const QString path = QFileInfo(bench.path()).absolutePath() + "/certificate.pdf";
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        enter(path);
        AT("next");
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const auto check = verifyCertificateFile(bench.records(), file.readAll());
        QVERIFY(check);
        QCOMPARE(toText(check->verdict), "genuine");
        next();
        AT("certificate.complete");
        enter();
        QCOMPARE(showOrder(bench.records(), "A-1001")->status, OrderStatus::Completed);
    }

    void analogByKeys()
    {
        JobBench bench({analogFields()});
        bench.at(2);
        openByKeys(bench, "A-2001");
        arrive();
        bench.at(5);
        next();
        next();
        safetyCard();
        bench.at(8);
        next();
        next();
        AT("pair.dc_resistance_ohm");
        enter("700");
        bench.at(10);
        next();
        for (const auto &[key, value] : {std::pair("loop_current", "31.5"),
                                         {"loss_1004", "6.2"},
                                         {"noise", "14"},
                                         {"power_influence", "78"}}) {
            AT(QString("analog.") + key);
            enter(value);
        }
        AT("analog.balance");
        enter();
        AT("analog.polarity");
        JobBench::keys("yyy");
        AT("analog.slope");
        JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        AT("next");
        bench.at(18);
        next();
        AT("calls.out.B1.voice.outcome");
        JobBench::keys("o");
        AT("calls.in.1.voice.outcome");
        JobBench::keys("o");
        AT("next");
        QCOMPARE(bench.decision("A-2001"), decisionFromFile(analogFields(), analogFacts()));
        QCOMPARE(bench.decision("A-2001")["outcome"].toString(), "accepted");
    }

    void aHazardStopsThePage()
    {
        JobBench bench({briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        auto *page = bench.window().findChild<JobScreen *>();
        bench.go("safety.office_connected");
        JobBench::keys("n");
        enter("61");
        auto *alarm = bench.find<QLabel>("safety.alarm");
        QVERIFY2(alarm->isVisible(), "the alarm comes while it is typed, before it is recorded");
        QVERIFY(
            alarm->text().startsWith("HAZARD. 61 V AC between tip and ground is more than 50 V"));
        for (int i = 0; i < 5; ++i)
            enter("0.1");
        JobBench::keys("yyyy");
        enter();
        for (const char *key : {"pair", "turnup", "calls", "error_test"})
            QVERIFY2(!bench
                          .find<QWidget>(QString(key) + (key == QString("pair")     ? ".confirm"
                                                         : key == QString("turnup") ? ".1.u.outcome"
                                                         : key == QString("calls")
                                                             ? ".out.B1.voice.outcome"
                                                             : ".setup.path"))
                          ->isEnabled(),
                     key);
        QVERIFY(bench.find<QWidget>("safety.office_connected")->isEnabled());
        // The source was found: a new card opens the page again.
        bench.at(30);
        bench.go("safety.office_connected");
        JobBench::keys("n");
        for (int i = 0; i < 6; ++i)
            enter("0.1");
        JobBench::keys("yyyy");
        enter();
        QVERIFY(bench.find<QWidget>("turnup.1.u.outcome")->isEnabled());
        QVERIFY(page->panel("turnup"));
    }

    void aCallThatFailsSaysItsCauseAtOnce()
    {
        JobBench bench({briFields()});
        bench.openJob("A-1001");
        bench.go("calls.out.B1.data.outcome");
        JobBench::keys("f");
        AT("calls.out.B1.data.cause");
        JobBench::keys("58");
        bool told = false;
        for (const SignLine *line :
             bench.find<QWidget>("calls.out.B1.data")->findChildren<SignLine *>())
            told = told || (line->isVisible() && line->text().contains("Check first"));
        QVERIFY(told);
        enter();
        const auto view = showOrder(bench.records(), "A-1001");
        const auto *call = view->facts.back().fact.as<CallFact>();
        QVERIFY(call);
        QCOMPARE(call->cause, std::optional<int>(58));
        QCOMPARE(toText(call->outcome), "failed");
    }

    void aSupervisorExcepts()
    {
        JobBench bench({briFields()});
        bench.at(60);
        QVERIFY(recordFile(bench.records(),
                           canonicalJson(record(order(briFields()), briFacts().mid(0, 13))),
                           "job"));
        bench.openJob("A-1001");
        bench.go("acceptance.exception.criteria");
        enter("9 10");
        enter("the test line is out of order until Monday");
        AT("acceptance.exception.by");
        enter("K7");
        QCOMPARE(bench.decision("A-1001")["outcome"].toString(), "incomplete");
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        bench.go("acceptance.exception.by");
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        enter("S1");
        const auto decision = decisionNow(bench.records(), "A-1001");
        for (const char *key : {"detector", "run"}) {
            QVERIFY(decision->criterion(key)->excepted);
            QCOMPARE(decision->criterion(key)->excepted->by, "S1");
            QCOMPARE(toText(decision->criterion(key)->outcome), "missing");
        }
        QCOMPARE(bench.records().by(), "Kim Carver"); // acted for the supervisor only for that
    }

    void stationsHaveTheirKeys()
    {
        JobBench bench({briFields()});
        bench.openJob("A-1001");
        const std::pair<Qt::Key, const char *> keys[] = {
            {Qt::Key_1, "visit."},  {Qt::Key_3, "makeup."}, {Qt::Key_4, "safety."},
            {Qt::Key_5, "turnup."}, {Qt::Key_6, "calls."},  {Qt::Key_7, "error_test."},
            {Qt::Key_8, "remarks."}};
        for (const auto &[key, begins] : keys) {
            JobBench::key(key, Qt::AltModifier);
            QVERIFY2(JobBench::focus().startsWith(begins), qPrintable(JobBench::focus()));
        }
    }

    void testLinesAreShownToTheInstallerOnly()
    {
        JobBench bench({briFields()});
        bench.openJob("A-1001");
        QString all;
        for (const QLabel *label : bench.find<QWidget>("panel.settings")->findChildren<QLabel *>())
            all += label->text() + '\n';
        QVERIFY(all.contains(sentinel));
        JobBench::key(Qt::Key_F6);
        QVERIFY(!QApplication::clipboard()->text().contains(sentinel));
        QVERIFY(QApplication::clipboard()->text().contains("217 555 0143"));
    }

    void noJob()
    {
        JobBench bench({briFields()});
        bench.window().openOrder("NO-SUCH");
        QCOMPARE(bench.window().current()->key(), "job");
        bool told = false;
        for (const QLabel *label : bench.window().current()->findChildren<QLabel *>())
            told = told || label->text().contains("NO-SUCH");
        QVERIFY(told);
    }
};

QTEST_MAIN(JobScreenTest)
#include "JobScreenTest.moc"
