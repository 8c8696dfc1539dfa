// A trouble in the real window: from the customer's call on the circuit's page to the restored line
// on the job page.

#include "app/desktop/screens/TroubleEntry.h"

#include "app/actions/Troubles.h"
#include "app/desktop/widgets/OneLine.h"
#include "tests/support/JobBench.h"
#include "tests/support/SmallRecords.h"

#include <QPushButton>
#include <QTableView>

using namespace loopwright;
using namespace loopwright::jobs;

class TroubleEntryTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    std::unique_ptr<JobBench> m_bench;

    void openCircuit(const char *circuit)
    {
        m_bench->window().openCircuit(circuit);
        QTRY_VERIFY(m_bench->find<QTableView>("circuit.life")->isVisible());
    }
    QPushButton *report() { return m_bench->find<QPushButton>("circuit.trouble"); }

private slots:
    void init()
    {
        const QString path = m_folder.filePath(QTest::currentTestFunction() + QString(".sqlite"));
        makeSmallRecords(path);
        m_bench = std::make_unique<JobBench>(path, 60 * 24 * 20);
        m_bench->actAs("D4"); // a dispatcher
    }
    void cleanup() { m_bench.reset(); }

    void fromTheCallToTheRestoredLine()
    {
        openCircuit("C-77");
        QTRY_VERIFY(report()->isVisible());
        report()->click();
        QCOMPARE(JobBench::focus(), "trouble.symptom");
        JobBench::enter("noise on B1");
        QCOMPARE(JobBench::focus(), "trouble.desk_test");
        JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        QTRY_VERIFY(report()->isVisible());
        const auto opened = troubles(m_bench->records(), true);
        QCOMPARE(opened->size(), 1u);
        QCOMPARE(opened->front().symptom, "noise on B1");
        QCOMPARE(opened->front().order, "C-77-R1");

        m_bench->window().openOrder("C-77-R1");
        QTRY_VERIFY(m_bench->find<QWidget>("certificate.closing.found"));
        QVERIFY(!m_bench->find<QPushButton>("certificate.complete")->isVisible());
        QVERIFY(m_bench->find<OneLine>("head.remarks")->text().contains("Trouble: noise on B1"));
        m_bench->go("certificate.closing.found");
        JobBench::enter("wet splice");
        JobBench::enter("splice made anew");
        QVERIFY2(JobBench::focus().startsWith("certificate.closing.cause"),
                 qPrintable(JobBench::focus()));
        JobBench::keys("c"); // contact
        if (troubles(m_bench->records(), true)->size() == 1)
            JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        const auto closed = troubles(m_bench->records(), false);
        QCOMPARE(closed->front().status, OrderStatus::Completed);
        QCOMPARE(*closed->front().cause, ClearedWhat::Contact);
        QCOMPARE(closed->front().found, "wet splice");
        QTRY_VERIFY(!m_bench->find<QWidget>("certificate.closing.found")->isVisible());
    }

    /// Nothing is lost, and nothing is opened, by Esc.
    void escFoldsTheFormAndKeepsWhatWasTyped()
    {
        openCircuit("C-77");
        QTRY_VERIFY(report()->isVisible());
        report()->click();
        JobBench::keys("dead");
        JobBench::key(Qt::Key_Escape);
        QTRY_VERIFY(report()->isVisible());
        QVERIFY(troubles(m_bench->records(), false)->empty());
        report()->click();
        QCOMPARE(m_bench->find<QLineEdit>("trouble.symptom")->text(), "dead");
    }

    void aTroubleWithoutSymptomIsRefusedAtTheField()
    {
        openCircuit("C-77");
        QTRY_VERIFY(report()->isVisible());
        report()->click();
        JobBench::key(Qt::Key_Return, Qt::ControlModifier);
        QVERIFY(!report()->isVisible());
        QVERIFY(troubles(m_bench->records(), false)->empty());
    }

    /// Its order is open: there is nothing yet that could be in trouble.
    void aPlannedLineOffersNone()
    {
        openCircuit("C-66");
        QVERIFY(!report()->isVisible());
    }
};

QTEST_MAIN(TroubleEntryTest)
#include "TroubleEntryTest.moc"
