// The last parts of the job page: what was decided and why, the certificate that is signed later;
// and the first one, which follows the order.

#include "app/actions/Certificates.h"
#include "app/actions/Orders.h"
#include "app/actions/VerifyCertificate.h"
#include "app/desktop/job/StationPanel.h"
#include "app/desktop/widgets/SignList.h"
#include "tests/support/FileDialog.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"
#include "tests/support/PrintDialog.h"

#include <QLabel>
#include <QPushButton>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

#define AT(name) QCOMPARE(JobBench::focus(), QString(name))

class JobEndTest : public QObject
{
    Q_OBJECT

    static void enter(const QString &text = {}) { JobBench::enter(text); }
    static void next() { JobBench::key(Qt::Key_F2); }
    static QString standing(JobBench &bench)
    {
        return bench.find<StationPanel>("panel.certificate")->findChild<SignLine *>()->text();
    }

private slots:
    void aCriterionLeadsToItsEvidence()
    {
        JobBench bench({briFields()});
        bench.at(100);
        take(bench.records(), briFields(), briFacts());
        bench.window().openOrder("A-1001");
        JobBench::key(Qt::Key_8, Qt::AltModifier); // the station of the job line
        AT("acceptance.decide");
        bench.go("acceptance.criteria");
        auto *list = bench.find<SignList>("acceptance.criteria");
        QCOMPARE(list->items().size(),
                 showOrder(bench.records(), "A-1001")->decision.criteria.size());
        QVERIFY(list->choose("identifiers")); // shown by no fact
        QVERIFY(!bench.find<QPushButton>("acceptance.evidence")->isVisible());
        QVERIFY(list->choose("loop"));
        QVERIFY(bench.find<QPushButton>("acceptance.evidence")->isVisible());
        enter();
        AT("pair.recorded");
        // What is shown changes in its place.
        const auto before = list->items();
        QVERIFY(voidFact(bench.records(), uuid(3), "wrong pair"));
        bench.window().current()->refresh();
        QVERIFY(list->items() != before);
        QCOMPARE(list->chosen(), "loop");
    }

    void theSettingsShowWhatTheOrderSaysNow()
    {
        JobBench bench({briFields()});
        bench.window().openOrder("A-1001");
        bench.go("settings.copy");
        const auto shown = [&bench] {
            QStringList texts;
            for (const QLabel *label :
                 bench.find<StationPanel>("panel.settings")->findChildren<QLabel *>())
                if (label->isVisible())
                    texts << label->text();
            return texts;
        };
        const qsizetype many = shown().size();
        QVERIFY(shown().contains("217 555 0144 01 01"));
        OrderFields fields = briFields();
        for (const char *column : {"dn_2", "spid_2", "tei_2"})
            fields[column].clear();
        bench.actAs("D4");
        QVERIFY(importOrders(bench.records(), csv({fields}), {"orders.csv", false, true}));
        bench.window().current()->refresh();
        bench.go("settings.copy");
        QTRY_VERIFY(!shown().contains("217 555 0144 01 01"));
        QVERIFY(shown().size() < many);
    }

    /// For the customer before the line is accepted, for the desk after it.
    void theSlipIsPrintedAndSaved()
    {
        JobBench bench({briFields()});
        const QString folder = QFileInfo(bench.path()).absolutePath();
        const auto slip = [&bench](const QString &name) {
            return bench.find<QPushButton>("certificate.slip." + name);
        };
        const auto told = [&bench] {
            return bench.find<SignLine>("certificate.slip.told")->text();
        };
        const auto words = [](const QString &path) {
            return QString::fromUtf8(certificates::run("pdftotext", {path, "-"}).text);
        };
        bench.at(10);
        take(bench.records(), briFields(), {arrival(50, 2)});
        bench.window().openOrder("A-1001");
        QTRY_COMPARE(slip("print")->text(), "Print the slip for the customer…");
        printing::agree(folder + "/left.pdf", printing::letterOnItsSide);
        slip("print")->click();
        QCOMPARE(told(), "Sent to the printer.");
        QVERIFY(words(folder + "/left.pdf").contains("A-1001"));
        QVERIFY(!words(folder + "/left.pdf").contains("Close-out"));

        bench.at(100);
        take(bench.records(), briFields(), briFacts());
        bench.window().current()->refresh();
        QTRY_COMPARE(slip("save")->text(), "Save the slip for the desk as PDF…");
        const QString path = folder + "/closed.pdf";
        filing::answer(path);
        slip("save")->click();
        QCOMPARE(told(), QString("Saved as %1.").arg(path));
        QVERIFY(words(path).contains("Close-out"));
    }

    void theCertificateComesWithItsSettingsCard()
    {
        JobBench bench({briFields()});
        const QString folder = QFileInfo(bench.path()).absolutePath();
        bench.at(100);
        take(bench.records(), briFields(), briFacts());
        QVERIFY(issueCertificate(bench.records(), {"A-1001", Paper::A4, {}, {}}));
        bench.window().openOrder("A-1001");
        const auto pages = [](const QString &path) {
            return printing::pagesOf(path).section(' ', 0, 0).toInt();
        };
        printing::agree(folder + "/alone.pdf", [](QPrinter &) {});
        bench.find<QPushButton>("certificate.print")->click();
        bench.window().activateWindow(); // not every platform does so when a dialog is gone
        QVERIFY(QTest::qWaitForWindowActive(&bench.window()));
        bench.go("certificate.card");
        JobBench::keys("y");
        printing::agree(folder + "/both.pdf", [](QPrinter &) {});
        bench.find<QPushButton>("certificate.print")->click();
        bench.window().activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&bench.window()));
        QVERIFY(pages(folder + "/alone.pdf") > 0);
        QVERIFY(pages(folder + "/both.pdf") > pages(folder + "/alone.pdf"));
        bench.go("certificate.path");
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        enter(folder + "/files/c.pdf"); // there is no such folder
        QVERIFY(!QFile::exists(folder + "/card-A-1001.pdf"));
        bench.go("certificate.path");
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        enter(folder + "/c.pdf");
        QFile certificate(folder + "/c.pdf");
        QVERIFY(certificate.open(QIODevice::ReadOnly));
        QCOMPARE(toText(verifyCertificateFile(bench.records(), certificate.readAll())->verdict),
                 "genuine"); // as it is sealed, and nothing behind it
        const auto lines =
            bench.find<StationPanel>("panel.certificate")->findChildren<SignLine *>();
        QVERIFY(std::ranges::any_of(lines, [&](const SignLine *line) {
            return line->text().contains(
                QString("Saved as %1, and its settings card beside it.").arg(folder + "/c.pdf"));
        }));
        const QString card = QString::fromUtf8(
            certificates::run("pdftotext", {folder + "/card-A-1001.pdf", "-"}).text);
        QVERIFY2(card.contains("A-1001"), qPrintable(card));
    }

    /// What is printed is what is issued: for the page that was chosen in the dialog.
    void theCertificateIsPrintedOnThePageThatIsChosen()
    {
        JobBench bench({briFields()});
        bench.at(100);
        take(bench.records(), briFields(), briFacts());
        QVERIFY(issueCertificate(bench.records(), {"A-1001", Paper::A4, {}, {}}));
        const auto before = showOrder(bench.records(), "A-1001")->certificates;
        bench.window().openOrder("A-1001");
        bench.go("certificate.path");
        const QString path = QFileInfo(bench.path()).absolutePath() + "/printed.pdf";
        printing::agree(path, printing::letterOnItsSide);
        bench.find<QPushButton>("certificate.print")->click();
        const QString pages = printing::pagesOf(path);
        QVERIFY2(pages.endsWith("pages, 612 x 792 pts (letter)"), qPrintable(pages));
        QVERIFY(certificates::run("pdftotext", {path, "-"})
                    .text.contains(before.front().number.toUtf8()));
        const auto issued = showOrder(bench.records(), "A-1001")->certificates;
        QCOMPARE(issued.size(), 1U); // the same certificate
        QCOMPARE(issued.front().digest, before.front().digest);
        QCOMPARE(issued.front().copies, 1);
    }

    void signingLaterMakesAFurtherIssue()
    {
        JobBench bench({briFields()});
        bench.at(100);
        take(bench.records(), briFields(), briFacts());
        QVERIFY(issueCertificate(bench.records(), {"A-1001", Paper::A4, {}, {}}));
        bench.window().openOrder("A-1001");
        next();
        AT("certificate.sign.installer");
        const auto pages = bench.window().findChildren<QLabel *>();
        const auto page =
            std::ranges::find(pages, QString("Preview, first page"), &QWidget::accessibleName);
        QVERIFY(page != pages.end());
        const auto shown = [&page] { return (*page)->pixmap(Qt::ReturnByValue).toImage(); };
        QTRY_VERIFY(!shown().isNull());
        const QImage asItWas = shown();
        auto *button = bench.find<QPushButton>("certificate.confirm");
        QCOMPARE(button->text(), "Save a copy as PDF");
        for (const char *role : {"installer", "customer"}) {
            auto *pad = bench.find<QWidget>(QString("certificate.sign.%1").arg(role));
            QTest::mousePress(pad, Qt::LeftButton, {}, QPoint(20, 20));
            QTest::mouseMove(pad, QPoint(80, 40));
            QTest::mouseRelease(pad, Qt::LeftButton, {}, QPoint(80, 40));
        }
        QCOMPARE(button->text(), "Issue it signed and save the PDF");
        QTRY_VERIFY(shown() != asItWas);
        bench.go("certificate.path");
        const QString path = QFileInfo(bench.path()).absolutePath() + "/signed.pdf";
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        enter(path);
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(toText(verifyCertificateFile(bench.records(), file.readAll())->verdict),
                 "genuine");
        const auto issued = showOrder(bench.records(), "A-1001")->certificates;
        QCOMPARE(issued.size(), 1U);
        QCOMPARE(issued.front().copies, 1);
        QCOMPARE(issued.front().signatures.size(), 2U);
        QVERIFY(bench.find<QWidget>("certificate.sign.installer")->isHidden());
        QCOMPARE(button->text(), "Save a copy as PDF");
        QVERIFY(!standing(bench).contains("Not signed"));
        next();
        AT("certificate.complete");
    }
};

QTEST_MAIN(JobEndTest)
#include "JobEndTest.moc"
