// What was recorded under a part: its signs, and the two things that can be done with an entry.

#include "app/desktop/job/AttemptList.h"

#include "app/actions/Orders.h"
#include "app/desktop/form/Form.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

#include <QSignalSpy>

using namespace loopwright;
using namespace loopwright::jobs;

class AttemptListTest : public QObject
{
    Q_OBJECT

    static std::vector<Attempt> six()
    {
        std::vector<Attempt> attempts;
        for (int i = 1; i <= 6; ++i)
            attempts.push_back({QString("f%1").arg(i), i == 1 ? Status::Failed : Status::Done,
                                QString("entry %1").arg(i), i != 2, i == 1});
        return attempts;
    }
    static void show(AttemptList &list)
    {
        list.resize(600, 400);
        list.QWidget::show();
        list.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&list));
        list.setFocus();
    }
    static Status signOf(JobBench &bench, const char *list, int row)
    {
        return bench.find<SignList>(list)->items()[std::size_t(row)].status;
    }

private slots:
    void theKeysWalkAndAct()
    {
        AttemptList list("part");
        list.show(six());
        show(list);
        QSignalSpy corrected(&list, &AttemptList::correctWished);
        QSignalSpy voided(&list, &AttemptList::voidWished);
        QCOMPARE(list.chosen(), "f1");
        JobBench::key(Qt::Key_C);
        QCOMPARE(corrected.count(), 1);
        QCOMPARE(corrected.first().first().toString(), "f1");
        JobBench::key(Qt::Key_Down);
        QCOMPARE(list.chosen(), "f2");
        JobBench::key(Qt::Key_C);      // may not be corrected
        JobBench::key(Qt::Key_Delete); // nor voided
        QCOMPARE(corrected.count(), 1);
        QCOMPARE(JobBench::focus(), "part.recorded");
        JobBench::key(Qt::Key_Down);
        JobBench::key(Qt::Key_Delete);
        QCOMPARE(JobBench::focus(), "part.why");
        JobBench::enter("wrong pair");
        QCOMPARE(voided.count(), 1);
        QCOMPARE(voided.first(), (QList<QVariant>{"f3", "wrong pair"}));
        JobBench::key(Qt::Key_Escape);
        QCOMPARE(JobBench::focus(), "part.recorded");
    }

    void earlierOnesAreShownOnRequest()
    {
        AttemptList list("part");
        list.show(six());
        show(list);
        auto *view = list.findChild<SignList *>("part.recorded");
        QCOMPARE(view->items().size(), 5U);
        QVERIFY(view->items().back().text.contains("2 earlier"));
        const int before = view->heightForWidth(600);
        for (int i = 0; i < 4; ++i)
            JobBench::key(Qt::Key_Down);
        JobBench::key(Qt::Key_Return);
        QCOMPARE(view->items().size(), 6U);
        QVERIFY(view->heightForWidth(600) > before);
        AttemptList other("other");
        other.show(six());
        QVERIFY(other.goTo("f6")); // opens them too
        QCOMPARE(other.chosen(), "f6");
        QVERIFY(!other.goTo("f7"));
    }

    void noFailingValueBearsATick()
    {
        JobBench bench({briFields()});
        bench.at(100);
        take(bench.records(), briFields(), briFacts());
        bench.openJob("A-1001");
        QCOMPARE(signOf(bench, "pair.recorded", 0), Status::Done);
        bench.go("pair.loop.measured.dc_resistance_ohm");
        JobBench::enter("612");
        JobBench::enter("55"); // more than the limit of 42 dB
        QCOMPARE(signOf(bench, "pair.recorded", 0), Status::Failed);
        bench.go("turnup.layer.1.u.outcome");
        JobBench::keys("d");
        JobBench::enter();
        QCOMPARE(signOf(bench, "turnup.recorded", 0), Status::Failed);
    }

    void correctFillsTheFormAndVoidsWhatWasWrong()
    {
        JobBench bench({briFields()});
        bench.at(10);
        take(bench.records(), briFields(), {safety(1, 5)});
        bench.openJob("A-1001");
        bench.go("pair.loop.measured.dc_resistance_ohm");
        JobBench::enter("6120");
        JobBench::enter("28,4");
        bench.at(11);
        bench.go("pair.recorded");
        JobBench::key(Qt::Key_C);
        QCOMPARE(JobBench::focus(), "pair.loop.measured.dc_resistance_ohm");
        QCOMPARE(bench.find<QLineEdit>("pair.loop.measured.dc_resistance_ohm")->text(), "6120");
        QCOMPARE(bench.find<QLineEdit>("pair.loop.measured.loss_db")->text(), "28.4");
        // The program is killed here; what was begun is a correction still.
        bench.close();
        bench.open();
        bench.openJob("A-1001");
        bench.go("pair.loop.measured.dc_resistance_ohm");
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        JobBench::keys("612");
        JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        const auto view = showOrder(bench.records(), "A-1001");
        QVERIFY(view);
        const auto loops = [&](bool voided) {
            std::vector<const FactView *> found;
            for (const FactView &each : view->facts)
                if (each.fact.as<LoopFact>() && each.voided == voided)
                    found.push_back(&each);
            return found;
        };
        QCOMPARE(loops(true).size(), 1U);
        QCOMPARE(loops(true).front()->voidedBecause, "corrected");
        QCOMPARE(loops(true).front()->fact.as<LoopFact>()->dcResistanceOhm, 6120.0);
        QCOMPARE(loops(false).size(), 1U);
        QCOMPARE(loops(false).front()->fact.as<LoopFact>()->dcResistanceOhm, 612.0);
        QCOMPARE(loops(false).front()->fact.as<LoopFact>()->lossDb, 28.4);
        // The next entry corrects nothing.
        bench.at(12);
        bench.go("pair.loop.measured.dc_resistance_ohm");
        JobBench::enter("613");
        JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        QCOMPARE(showOrder(bench.records(), "A-1001")->facts.back().fact.as<VoidFact>(), nullptr);
    }

    void aSafetyCardIsFilledWithItsConfirmations()
    {
        JobBench bench({briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        bench.go("safety.office_connected");
        JobBench::keys("n");
        for (int i = 0; i < 6; ++i)
            JobBench::enter("0.2");
        JobBench::keys("yyny");
        JobBench::enter();
        bench.go("safety.recorded");
        JobBench::key(Qt::Key_C);
        const QJsonObject typed = bench.find<Form>("safety")->typed();
        QCOMPARE(typed.value("office_connected").toString(), "false");
        QCOMPARE(typed.value("ac_v.tip_ground").toString(), "0.2");
        QCOMPARE(typed.value("confirmed.foreign_voltage").toString(), "true");
        QCOMPARE(typed.value("confirmed.storm").toString(), "false");
    }
};

QTEST_MAIN(AttemptListTest)
#include "AttemptListTest.moc"
