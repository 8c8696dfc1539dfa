// Where people went wrong at the job page, in the real window: each of these is a trap that is
// shut.

#include "app/actions/Register.h"
#include "app/desktop/Language.h"
#include "app/desktop/form/Field.h"
#include "app/desktop/job/JobHead.h"
#include "app/desktop/widgets/JobLineView.h"
#include "app/desktop/widgets/KeyedChoice.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QScopeGuard>
#include <QScreen>

using namespace loopwright;
using namespace loopwright::jobs;

#define AT(name) QCOMPARE(JobBench::focus(), QString(name))

class JobTrapsTest : public QObject
{
    Q_OBJECT

    static void enter(const QString &text = {}) { JobBench::enter(text); }
    static void next() { JobBench::key(Qt::Key_F2); }
    static Field *fieldOf(JobBench &bench, const QString &name)
    {
        return qobject_cast<Field *>(bench.find<QWidget>(name)->parentWidget());
    }
    static std::size_t facts(JobBench &bench, const char *order = "A-1001")
    {
        return showOrder(bench.records(), order)->facts.size();
    }
    static QString sentence(JobBench &bench) { return bench.find<QLabel>("head.sentence")->text(); }
    static void fillCard()
    {
        JobBench::keys("n");
        for (int i = 0; i < 6; ++i)
            enter("0.1");
    }
    static void typeCounts(const QStringList &counts)
    {
        for (const QString &count : counts)
            enter(count);
    }
    /// All that comes before the error test, and a good check.
    static QList<QJsonObject> upToTheRun()
    {
        return briFacts().mid(0, 14) + QList{call(20, 26, "B1", "out", "data", "2175550143"),
                                             call(21, 27, "B2", "in", "data", "2175550144")};
    }

private slots:
    void theInstrumentIsAskedBeforeTheFirstReadingAndRemembered()
    {
        JobBench bench({briFields(), analogFields()});
        bench.at(10);
        take(bench.records(), briFields(), {safety(1, 5)});
        take(bench.records(), analogFields(), {safety(101, 6)});
        bench.window().openOrder("A-1001");
        QVERIFY(!bench.find<QWidget>("pair.loop.measured.dc_resistance_ohm")->isEnabled());
        next();
        AT("instrument.instrument");
        const auto *list = bench.find<QComboBox>("instrument.instrument");
        QCOMPARE(list->itemText(0), "TS-4 · basic-rate test set · calibrated until 1 Sep");
        enter("TS-4");
        AT("pair.loop.measured.dc_resistance_ohm");
        bench.close();
        bench.open();
        bench.window().openOrder("A-2001");
        QVERIFY(fieldOf(bench, "instrument.instrument")->sentence().contains("TS-4"));
        next();
        AT("pair.loop.measured.dc_resistance_ohm");
        enter("700");
        QCOMPARE(showOrder(bench.records(), "A-2001")->facts.back().fact.instrument, "TS-4");
    }

    void anUnknownInstrumentIsEnteredFromItsLabel()
    {
        JobBench bench({analogFields()});
        bench.at(10);
        take(bench.records(), analogFields(), {safety(101, 5)});
        bench.window().openOrder("A-2001");
        next();
        AT("instrument.instrument");
        QVERIFY(!bench.find<QWidget>("instrument.serial")->isVisible());
        enter("TS-9");
        AT("instrument.serial");
        enter("S-900");
        enter("loss set");
        AT("instrument.calibrated_on");
        enter("20260305"); // tomorrow
        enter("20260901");
        AT("instrument.calibrated_on");
        QVERIFY(fieldOf(bench, "instrument.calibrated_on")->sentence().contains("in the future"));
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        enter("20250901");
        JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        const auto known = instruments(bench.records());
        QCOMPARE(known->size(), 2);
        QVERIFY(known->back().asLabelled);
        QVERIFY2(fieldOf(bench, "instrument.instrument")->sentence().contains("as labelled"),
                 qPrintable(fieldOf(bench, "instrument.instrument")->sentence()));
        QVERIFY(!bench.find<QWidget>("instrument.serial")->isVisible());
        AT("pair.loop.measured.dc_resistance_ohm");
        enter("700");
        QCOMPARE(showOrder(bench.records(), "A-2001")->facts.back().fact.instrument, "TS-9");
    }

    void aForgottenInstrumentIsSaidAfterwards()
    {
        JobBench bench({briFields()});
        bench.at(100);
        QJsonObject job = record(order(briFields()), briFacts());
        job.remove("instrument");
        QVERIFY(recordFile(bench.records(), canonicalJson(job), "job.json"));
        QVERIFY(bench.decision("A-1001")["outcome"].toString() != "accepted");
        bench.window().openOrder("A-1001");
        next();
        AT("instrument.instrument");
        enter("TS-4");
        QVERIFY(showOrder(bench.records(), "A-1001")->facts.back().fact.as<MadeWithFact>());
        QCOMPARE(bench.decision("A-1001")["outcome"].toString(), "accepted");
        AT("next");
    }

    void afterAFailedRunItIsSaidWhatWasDone()
    {
        JobBench bench({briFields()});
        bench.at(31);
        take(bench.records(), briFields(), upToTheRun());
        bench.openJob("A-1001");
        next();
        AT("error_test.start");
        enter();
        bench.at(46);
        QTRY_COMPARE(JobBench::focus(), QString("error_test.counts.bit_errors"));
        typeCounts({"900", "500", "0", "0"});
        AT("error_test.cleared.what");
        QVERIFY(!bench.find<QWidget>("error_test.start")->isEnabled());
        QVERIFY(!bench.find<QWidget>("error_test.detector.quiet_seconds")->isEnabled());
        JobBench::keys("c");
        enter("joint remade");
        AT("error_test.detector.quiet_seconds");
        QVERIFY(!bench.find<QWidget>("error_test.start")->isEnabled());
        bench.at(50);
        for (const char *value : {"12", "0", "3", "3", "3", "3"})
            enter(value);
        JobBench::keys("y");
        AT("error_test.start");
        QVERIFY(bench.find<QWidget>("error_test.start")->isEnabled());
    }

    void countsFillOnlyFromWhatWasSeen()
    {
        JobBench bench({briFields()});
        bench.at(31);
        take(bench.records(), briFields(), upToTheRun());
        bench.openJob("A-1001");
        const auto count = [&bench](const char *key) {
            return bench.find<QLineEdit>(QString("error_test.counts.") + key)->text();
        };
        next();
        enter();
        bench.at(46);
        QTRY_COMPARE(JobBench::focus(), QString("error_test.counts.bit_errors"));
        for (const char *key :
             {"bit_errors", "errored_seconds", "severely_errored_seconds", "sync_losses"})
            QCOMPARE(count(key), QString());
        enter();
        enter();
        enter();
        enter(); // nothing was read: nothing is recorded
        AT("error_test.counts.bit_errors");
        QCOMPARE(facts(bench), upToTheRun().size());
        typeCounts({"0", "0", "0", "0"});
        QCOMPARE(facts(bench), upToTheRun().size() + 1);
        // Another run: what was keyed stands there.
        bench.at(60);
        bench.go("error_test.detector.quiet_seconds");
        for (const char *value : {"12", "0", "3", "3", "3", "3"})
            enter(value);
        JobBench::keys("y");
        bench.go("error_test.start");
        enter();
        bench.at(65);
        JobBench::keys("3");
        bench.at(75);
        QTRY_COMPARE(JobBench::focus(), QString("error_test.counts.bit_errors"));
        QCOMPARE(count("bit_errors"), QString("3"));
        QCOMPARE(count("sync_losses"), QString("0"));
    }

    void aCardWithEmptyFieldsIsNotRecordedAndKept()
    {
        JobBench bench({briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        bench.go("safety.office_connected");
        JobBench::keys("n");
        enter("0.2");
        JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        QCOMPARE(facts(bench), 0u);
        AT("safety.ac_v.ring_ground");
        QVERIFY(fieldOf(bench, "safety.ac_v.ring_ground")->isInError());
        QCOMPARE(bench.find<QLineEdit>("safety.ac_v.tip_ground")->text(), "0.2");
        bench.close();
        bench.open();
        bench.window().openOrder("A-1001");
        QCOMPARE(bench.find<QLineEdit>("safety.ac_v.tip_ground")->text(), "0.2");
        QCOMPARE(bench.find<KeyedChoice>("safety.office_connected")->code(), "false");
    }

    void aFullCardThatDoesNotFitIsRecordedAndAskedAgain()
    {
        JobBench bench({briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        bench.go("safety.office_connected");
        fillCard();
        JobBench::keys("yyyn"); // the place of work is not safe
        enter();
        QCOMPARE(facts(bench), 1u);
        AT("safety.office_connected");
        QVERIFY(sentence(bench).contains("safety card"));
        QVERIFY(!bench.find<QWidget>("turnup.layer.1.u.outcome")->isEnabled());
        bench.at(6);
        fillCard();
        JobBench::keys("yyyy");
        enter();
        QVERIFY(bench.find<QWidget>("turnup.layer.1.u.outcome")->isEnabled());
    }

    void f2AndTheButtonDoTheSameAndPassOverNone()
    {
        JobBench bench({briFields()});
        bench.at(31);
        QList<QJsonObject> seen = briFacts().mid(0, 13);
        seen.removeAt(9); // voice out on B1
        seen.removeAt(6); // layer 2 of terminal 2
        take(bench.records(), briFields(), seen);
        bench.openJob("A-1001");
        next();
        AT("turnup.layer.2.2.outcome");
        bench.go("next");
        enter();
        AT("turnup.layer.2.2.outcome");
        next();
        AT("calls.call.out.B1.voice.outcome");
        next();
        AT("calls.call.out.B1.data.outcome"); // also shown by no run yet
        for (int i = 0; i < 20 && JobBench::focus().startsWith("calls."); ++i)
            next();
        AT("error_test.detector.quiet_seconds");
        next(); // the run waits for the check: round to the first
        AT("turnup.layer.2.2.outcome");
    }

    void anotherNameOfTheSameWiresKeepsWhatWasMeasured_data()
    {
        QTest::addColumn<bool>("same");
        QTest::newRow("the same wires") << true;
        QTest::newRow("another pair") << false;
    }
    void anotherNameOfTheSameWiresKeepsWhatWasMeasured()
    {
        QFETCH(const bool, same);
        JobBench bench({briFields()});
        bench.at(100);
        take(bench.records(), briFields(), briFacts());
        bench.actAs("D4"); // the desk changes orders
        bench.window().editOrder("A-1001");
        auto *tick = bench.find<QCheckBox>("order.same_wires");
        QVERIFY(!tick->isVisible());
        bench.go("order.pair");
        bench.find<QLineEdit>("order.pair")->selectAll();
        JobBench::keys("17-299");
        QVERIFY(tick->isVisible());
        tick->setChecked(same);
        QTest::keyClick(&bench.window(), Qt::Key_S, Qt::ControlModifier);
        QTRY_COMPARE(bench.window().current()->key(), QString("job"));
        QCOMPARE(showOrder(bench.records(), "A-1001")->order.pair, "17-299");
        QCOMPARE(bench.decision("A-1001")["outcome"].toString() == u"accepted", same);
    }

    void whomToMeetStandsInTheHead()
    {
        OrderFields fields = briFields();
        fields["remarks"] = "dog in the yard";
        fields["contact"] = "Pat, 217-555-0199";
        fields["access_notes"] = "key at the bakery";
        fields["appointment"] = "2026-03-06 am";
        fields["crew"] = "two people, bucket truck";
        JobBench bench({fields});
        bench.window().openOrder("A-1001");
        const auto *line = bench.find<QLabel>("head.remarks");
        QVERIFY(line->isVisible());
        for (const char *column : {"remarks", "contact", "access_notes", "appointment", "crew"})
            QVERIFY2(line->text().contains(fields[column]), column);
    }

    void theHeadLeavesRoomOnALowScreen()
    {
        OrderFields fields = secondLine();
        fields["remarks"] = "dog in the yard";
        JobBench bench({briFields(), fields});
        bench.at(5);
        bench.window().resize(1024, 600);
        bench.window().openOrder("A-2001");
        auto *head = bench.find<QWidget>("head");
        QTRY_VERIFY2(head->height() * 4 <= 600, qPrintable(QString::number(head->height())));
        const auto *line = bench.find<QLabel>("head.remarks");
        QVERIFY(line->isVisible());
        QVERIFY2(line->text().startsWith("pair 17-205 · " + fields["premises"]),
                 qPrintable(line->text()));
        QVERIFY(line->text().contains("dog in the yard"));
    }

    /// Nor are they too small to be read: the line takes further rows.
    void noNamesOfTheJobLineRunIntoOneAnother_data()
    {
        QTest::addColumn<QString>("language");
        QTest::newRow("en") << "en";
        QTest::newRow("de") << "de";
    }
    void noNamesOfTheJobLineRunIntoOneAnother()
    {
        QFETCH(QString, language);
        JobBench bench({briFields()});
        const auto view = showOrder(bench.records(), "A-1001");
        const auto states = jobLine(view->decision, view->stage);
        speak(language);
        const auto english = qScopeGuard([] { speak("en"); });
        JobLineView line;
        line.setLine(states);
        QFont small = QApplication::font();
        small.setPixelSize(em(0.7));
        const QFontMetricsF metrics(small);
        for (int width = em(20); width < em(70); width += em(1)) {
            line.resize(width, line.heightForWidth(width));
            for (int i = 0; i < line.partCount(); ++i) {
                const QRect place = line.partRect(i);
                QVERIFY2(line.rect().contains(place), qPrintable(QString::number(width)));
                QVERIFY(place.height() >= em(3.8)); // mark, name and word
                for (int j = 0; j < i; ++j)         // they are rounded to pixels
                    QVERIFY2(!place.adjusted(1, 1, -1, -1).intersects(line.partRect(j)),
                             qPrintable(QString::number(width)));
                const QString name = localizedWord(states[std::size_t(i)].name());
                QVERIFY2(metrics.horizontalAdvance(name) <= place.width() + 1, qPrintable(name));
            }
        }
        line.resize(em(70), line.heightForWidth(em(70)));
        QCOMPARE(line.partRect(8).y(), line.partRect(0).y()); // one row where there is room
    }

    void aStationOfAFurtherRowIsChosenByAClick()
    {
        JobBench bench({briFields()});
        const auto view = showOrder(bench.records(), "A-1001");
        const auto states = jobLine(view->decision, view->stage);
        JobLineView line;
        line.setLine(states);
        line.resize(em(20), line.heightForWidth(em(20)));
        QList<Station> chosen;
        connect(&line, &JobLineView::chosen, this, [&](Station each) { chosen << each; });
        for (int i = 0; i < line.partCount(); ++i)
            QTest::mouseClick(&line, Qt::LeftButton, {}, line.partRect(i).center());
        QCOMPARE(chosen.size(), int(states.size()));
        for (std::size_t i = 0; i < states.size(); ++i)
            QCOMPARE(chosen[int(i)], states[i].station);
    }

    void theWindowOpensInsideItsScreen()
    {
        JobBench bench({briFields()});
        bench.close();
        auto workplace = DesktopContext::open(bench.path(), "K7", {});
        QVERIFY(workplace);
        MainWindow window(**workplace);
        window.show();
        QVERIFY(QTest::qWaitForWindowExposed(&window));
        const QRect room = window.QWidget::screen()->availableGeometry();
        QVERIFY2(room.contains(window.frameGeometry()),
                 qPrintable(QString("%1 x %2 on %3 x %4")
                                .arg(window.frameGeometry().width())
                                .arg(window.frameGeometry().height())
                                .arg(room.width())
                                .arg(room.height())));
    }
};

QTEST_MAIN(JobTrapsTest)
#include "JobTrapsTest.moc"
