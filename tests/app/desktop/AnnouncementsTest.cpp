// What came of what a person did is said by a screen reader too: once, and again only when it is
// done again.

#include "app/actions/Certificates.h"
#include "app/desktop/form/Form.h"
#include "app/desktop/job/StationPanel.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskWindow.h"
#include "tests/support/Heard.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

#include <QPushButton>

using namespace loopwright;

class AnnouncementsTest : public QObject, DeskWindow
{
    Q_OBJECT

    QPushButton *button(const char *name) const { return named<QPushButton>(name); }
    QString line(const char *name) const { return named<SignLine>(name)->text(); }
    /// Clicks on what works beside the window, and waits until it is done.
    void work(const char *name)
    {
        button(name)->click();
        QVERIFY(!button(name)->isEnabled());
        QTRY_VERIFY(button(name)->isEnabled());
    }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        openWindow();
    }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
    }

    void theSummaryOfAnAudit()
    {
        m_window->showScreen("audit");
        Heard heard;
        work("audit.start");
        QCOMPARE(heard.take(), QStringList(line("audit.summary")));
        QVERIFY(line("audit.summary").contains("finding"));
        m_window->showScreen("register");
        heard.take();
        m_window->showScreen("audit");
        QCOMPARE(heard.take(), QStringList());
        work("audit.start");
        QCOMPARE(heard.take(), QStringList(line("audit.summary")));
    }
    void theSummaryOfLoops()
    {
        m_window->showScreen("loops");
        Heard heard;
        work("loops.start");
        QCOMPARE(heard.take(), QStringList(line("loops.summary")));
    }
    void theSummaryOfAnImport()
    {
        const QString path =
            m_records->file("installers.csv", "installer,name,role\nmarsh,K. Marsh,installer\n");
        m_window->showScreen("import", path);
        Heard heard;
        work("import.start");
        QCOMPARE(heard.take(), QStringList("Everything in installers.csv is in the records."));
    }
    /// Carried out, it is told once: by the notice with the way back.
    void theSummaryOfABulkChange()
    {
        m_window->showScreen("bulk", "NORTH");
        named<QLineEdit>("bulk.from")->setText("217");
        named<QLineEdit>("bulk.to")->setText("447");
        Heard heard;
        work("bulk.preview");
        QCOMPARE(heard.take(), QStringList(line("bulk.summary")));
        button("bulk.apply")->click();
        QTRY_VERIFY(button("bulk.preview")->isEnabled());
        QCOMPARE(heard.take(), QStringList(line("undo.words")));
    }
    void theVerdictOnAnOrder()
    {
        Heard heard;
        m_window->showScreen("order", "O-1003");
        QCOMPARE(heard.take(), QStringList("In the records as it stands here"));
        auto *customer = named<QLineEdit>("order.customer");
        customer->setFocus();
        QTest::keyClicks(customer, "!");
        QTRY_COMPARE(line("order.verdict"), "Ready to be taken in");
        QCOMPARE(heard.take(), QStringList("Ready to be taken in"));
        QTest::keyClicks(customer, "!");
        QTest::qWait(Form::checkAfterMs + 200);
        QCOMPARE(heard.take(), QStringList());
    }
    void theCopiedSettings()
    {
        m_window->openOrder("O-1002");
        named<StationPanel>("panel.settings")->unfold();
        Heard heard;
        button("settings.copy")->click();
        QStringList told = heard.take();
        QCOMPARE(told.size(), 1);
        QVERIFY2(told.first().startsWith("Copied: "), qPrintable(told.first()));
        button("settings.copy")->click();
        QCOMPARE(heard.take(), told);
    }
    void aCertificateThatIsNotIssued()
    {
        jobs::JobBench bench({jobs::briFields()});
        bench.at(100);
        jobs::take(bench.records(), jobs::briFields(), jobs::briFacts());
        QVERIFY(issueCertificate(bench.records(), {"A-1001", Paper::A4, {}, {}}));
        bench.window().openOrder("A-1001");
        bench.go("certificate.path");
        jobs::JobBench::key(Qt::Key_A, Qt::ControlModifier);
        Heard heard;
        jobs::JobBench::enter("/no/such/folder/c.pdf");
        const auto refusal = [&bench] {
            for (const SignLine *each : bench.find<Form>("certificate")->findChildren<SignLine *>())
                if (each->isVisible() && each->sign() == Status::Failed)
                    return each->text();
            return QString();
        };
        QVERIFY(!refusal().isEmpty());
        QCOMPARE(heard.take().count(refusal()), 1);
        jobs::JobBench::enter();
        QCOMPARE(heard.take().count(refusal()), 1);
    }
    /// The page is read anew with every entry; a warning that goes on is not said each time.
    void aHazardThatGoesOn()
    {
        jobs::JobBench bench({jobs::briFields()});
        bench.at(5);
        bench.openJob("A-1001");
        Heard heard;
        bench.go("safety.office_connected");
        jobs::JobBench::keys("n");
        jobs::JobBench::keys("61"); // volts AC, tip to ground
        const auto *stop = bench.find<SignLine>("head.said");
        QVERIFY(stop && stop->isVisible());
        QCOMPARE(heard.take().count(stop->text()), 1);
        bench.window().current()->refresh();
        bench.window().current()->refresh();
        QCOMPARE(heard.take(), QStringList());
    }
};

QTEST_MAIN(AnnouncementsTest)
#include "AnnouncementsTest.moc"
