// Whole jobs entered by key events alone in the real window: what is decided of them equals what is
// decided of the same job recorded from a file.

#include "app/desktop/screens/JobScreen.h"

#include "app/actions/Certificates.h"
#include "app/actions/Orders.h"
#include "app/actions/VerifyCertificate.h"
#include "app/desktop/job/StationPanel.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

#include <QClipboard>
#include <QLabel>

using namespace loopwright;
using namespace loopwright::jobs;

#define AT(name) QCOMPARE(JobBench::focus(), QString(name))

namespace {

/// Counts the keys that reach the program: those that only move, and those that say something.
class KeyCount : public QObject
{
public:
    KeyCount() { qApp->installEventFilter(this); }

    bool eventFilter(QObject *object, QEvent *event) override
    {
        // Only as the window hands it over: a widget that passes it on is not another key.
        if (event->type() == QEvent::KeyPress && object == QApplication::focusWidget()) {
            const auto *key = static_cast<QKeyEvent *>(event);
            const bool says = !key->text().isEmpty() && key->text()[0].isPrint() &&
                              !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
            ++(says ? typed : moved);
        }
        return false;
    }

    int moved = 0;
    int typed = 0;
};

} // namespace

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
    /// The arrival; who works is known from the register.
    static void arrive()
    {
        JobBench::key(Qt::Key_1, Qt::AltModifier);
        AT("visit.arrived.arrived");
        enter();
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
    }
    static void instrument()
    {
        AT("instrument.instrument");
        enter("TS-4");
    }
    static void layers()
    {
        for (const char *interface : {"u", "st"}) {
            AT(QString("turnup.layer.1.%1.outcome").arg(interface));
            JobBench::keys("u");
        }
        for (int terminal = 1; terminal <= 2; ++terminal) {
            AT(QString("turnup.layer.2.%1.outcome").arg(terminal));
            JobBench::keys("u");
            AT(QString("turnup.layer.2.%1.tei").arg(terminal));
            enter(QString::number(63 + terminal));
        }
        for (int terminal = 1; terminal <= 2; ++terminal) {
            AT(QString("turnup.layer.3.%1.outcome").arg(terminal));
            JobBench::keys("u");
        }
    }
    static void calls()
    {
        for (const char *call : {"out.B1.voice", "out.B1.data", "out.B2.data", "in.1.voice",
                                 "in.1.data", "in.2.data"}) {
            AT(QString("calls.call.%1.outcome").arg(call));
            JobBench::keys("o");
        }
    }
    static void detectorCheck()
    {
        AT("error_test.detector.quiet_seconds");
        for (const char *value : {"12", "0", "3", "3", "3", "3"})
            enter(value);
        AT("error_test.detector.cleared");
        JobBench::keys("y");
        AT("error_test.start");
    }
    /// The counts as they are read from the test set when the time is up.
    static void run(JobBench &bench, double from, const QStringList &counts)
    {
        AT("error_test.start");
        bench.at(from);
        enter();
        AT("error_test.clock");
        bench.at(from + 15);
        QTRY_COMPARE(JobBench::focus(), QString("error_test.counts.bit_errors"));
        QVERIFY2(bench.find<QLineEdit>("error_test.counts.bit_errors")->text().isEmpty(),
                 "the counts are filled with what nobody saw");
        for (const QString &count : counts)
            enter(count);
    }
    static void upToTheRun(JobBench &bench)
    {
        bench.at(2);
        openByKeys(bench, "A-1001");
        arrive();
        bench.at(5);
        safetyCard();
        bench.at(10);
        instrument();
        AT("pair.loop.measured.dc_resistance_ohm");
        enter("612");
        AT("pair.loop.measured.loss_db");
        enter("28,4");
        bench.at(15);
        layers();
        bench.at(22);
        calls();
        bench.at(30);
        detectorCheck();
    }
    static void basicRateJob(JobBench &bench)
    {
        upToTheRun(bench);
        run(bench, 32, {"0", "0", "0", "0"});
        AT("next");
    }

    static QString standing(JobBench &bench)
    {
        return bench.find<StationPanel>("panel.certificate")->findChild<SignLine *>()->text();
    }

private slots:
    void basicRateByKeys()
    {
        JobBench bench({briFields()});
        KeyCount keys;
        upToTheRun(bench);
        qInfo("%d keys move, %d say something", keys.moved, keys.typed);
        QVERIFY2(keys.moved <= 32, qPrintable(QString::number(keys.moved)));
        run(bench, 32, {"0", "0", "0", "0"});
        AT("next");
        QCOMPARE(bench.decision("A-1001"), decisionFromFile(briFields(), briFacts()));
        QCOMPARE(bench.decision("A-1001")["outcome"].toString(), "accepted");
    }

    void certificateByKeys()
    {
        JobBench bench({briFields()});
        basicRateJob(bench);
        next();
        AT("certificate.sign.installer"); // first things first
        bench.go("certificate.path");
        const QString path = QFileInfo(bench.path()).absolutePath() + "/certificate.pdf";
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        enter(path);
        AT("certificate.sign.installer"); // asked once whether it is to stay unsigned
        enter();
        QVERIFY(!QFile::exists(path));
        QVERIFY(showOrder(bench.records(), "A-1001")->certificates.empty());
        bench.go("certificate.path");
        enter();
        AT("next");
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const auto check = verifyCertificateFile(bench.records(), file.readAll());
        QVERIFY(check);
        QCOMPARE(toText(check->verdict), "genuine");
        // It was issued unsigned: the first pad has the keyboard, once; and the page says why.
        next();
        AT("certificate.sign.installer");
        QVERIFY(standing(bench).contains("Not signed by the installer and the customer: signing "
                                         "makes a further issue"));
        next();
        AT("certificate.complete");
        bench.actAs("D4"); // the desk completes
        enter();
        QCOMPARE(showOrder(bench.records(), "A-1001")->status, OrderStatus::Completed);
    }

    void analogByKeys()
    {
        JobBench bench({analogFields()});
        KeyCount keys;
        bench.at(2);
        openByKeys(bench, "A-2001");
        arrive();
        bench.at(5);
        safetyCard();
        bench.at(8);
        instrument();
        AT("pair.loop.measured.dc_resistance_ohm");
        enter("700");
        bench.at(10);
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
        bench.at(18);
        AT("calls.call.out.B1.voice.outcome");
        JobBench::keys("o");
        AT("calls.call.in.1.voice.outcome");
        JobBench::keys("o");
        AT("next");
        qInfo("%d keys move, %d say something", keys.moved, keys.typed);
        QVERIFY2(keys.moved <= 25, qPrintable(QString::number(keys.moved)));
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
        JobBench::keys("61");
        auto *alarm = bench.find<QLabel>("safety.alarm");
        QVERIFY2(alarm->isVisible(), "the alarm comes while it is typed, before it is recorded");
        QVERIFY(
            alarm->text().startsWith("HAZARD. 61 V AC between tip and ground is more than 50 V"));
        enter(); // and is recorded at once, whatever else is empty
        QCOMPARE(showOrder(bench.records(), "A-1001")->facts.size(), 1u);
        QVERIFY(!alarm->isVisible());
        for (const char *name : {"pair.loop.measured.dc_resistance_ohm", "turnup.layer.1.u.outcome",
                                 "calls.call.out.B1.voice.outcome",
                                 "error_test.detector.quiet_seconds", "error_test.start"})
            QVERIFY2(!bench.find<QWidget>(name)->isEnabled(), name);
        QVERIFY(!bench.find<QWidget>("safety.office_connected")->isEnabled());
        // The source was found and somebody says so: then a new card opens the page again.
        bench.at(30);
        for (int pressed = 0; pressed < 3; ++pressed) { // nothing leads past it
            next();
            AT("safety.hazard_closed.source");
        }
        JobBench::keys("p");
        AT("safety.hazard_closed.by");
        next();
        AT("safety.hazard_closed.by"); // what is filled is passed over, the step is not
        enter("Lee at the power desk");
        enter(); // without the utility's reference a contact with power stays open
        AT("safety.hazard_closed.source");
        JobBench::keys("p");
        AT("safety.hazard_closed.by");
        enter("Lee at the power desk");
        AT("safety.hazard_closed.reference");
        enter("ticket 7");
        safetyCard();
        QVERIFY(bench.find<QWidget>("turnup.layer.1.u.outcome")->isEnabled());
        QVERIFY(page->panel("turnup"));
    }

    void aCallThatFailsSaysItsCauseAtOnce()
    {
        JobBench bench({briFields()});
        bench.at(10);
        take(bench.records(), briFields(), {safety(1, 5)});
        bench.openJob("A-1001");
        bench.go("calls.call.out.B1.data.outcome");
        JobBench::keys("f");
        AT("calls.call.out.B1.data.cause");
        JobBench::keys("58");
        bool told = false;
        for (const SignLine *line :
             bench.find<QWidget>("calls.call.out.B1.data")->findChildren<SignLine *>())
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
        QCOMPARE(bench.records().by(), "K7"); // acted for the supervisor only for that
    }

    void stationsHaveTheirKeys()
    {
        JobBench bench({briFields()});
        bench.openJob("A-1001");
        const std::pair<Qt::Key, const char *> keys[] = {
            {Qt::Key_1, "visit."},     {Qt::Key_3, "makeup."}, {Qt::Key_4, "safety."},
            {Qt::Key_5, "pair."},      {Qt::Key_6, "calls."},  {Qt::Key_7, "error_test."},
            {Qt::Key_8, "acceptance."}};
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
