#include "app/desktop/screens/HandoffScreen.h"

#include "app/actions/HandOn.h"
#include "app/desktop/Theme.h"
#include "app/desktop/form/Form.h"
#include "app/desktop/widgets/SheetView.h"
#include "tests/support/DeskRecords.h"
#include "tests/support/PrintDialog.h"

#include <QPushButton>
#include <QTextBrowser>

using namespace loopwright;

class HandoffScreenTest : public QObject
{
    Q_OBJECT

private:
    QString words(const HandoffScreen &screen) const
    {
        return screen.findChild<QTextBrowser *>("handoff.words")->toPlainText();
    }

private slots:
    void saysWhatFailedAndWhomToCall()
    {
        DeskRecords records;
        HandoffScreen screen(records.workplace());
        screen.resize(em(100), em(60));
        screen.show();
        screen.open("O-1002"); // layer 3 down with cause 88
        screen.refresh();
        QTRY_VERIFY(screen.findChild<SheetView *>()->pages() > 0);
        QTRY_VERIFY2(words(screen).contains("88"), qPrintable(words(screen)));
        const QString said = words(screen);
        QVERIFY2(said.contains("Layer 3, terminal"), qPrintable(said));
        QVERIFY2(said.contains("C-502"), qPrintable(said));
        QVERIFY(screen.findChild<QPushButton *>("handoff.print")->isEnabled());
        // The page is handed on, to the office: but the unpublished numbers stay in the register.
        QVERIFY(!said.contains("555-0198"));
    }

    void whatIsNotKnownLeavesNoComma()
    {
        DeskRecords records;
        HandoffScreen screen(records.workplace());
        screen.resize(em(100), em(60));
        screen.show();
        for (const char *number : {"1001", "1002", "1004", "1005"}) {
            screen.open(QString("O-") + number);
            screen.refresh();
            QTRY_VERIFY2(words(screen).contains(QString("Order O-") + number + ", circuit C-5"),
                         number);
            for (const QString &line : words(screen).split('\n'))
                QVERIFY2(!line.contains(": ,") && !line.trimmed().endsWith(','), qPrintable(line));
        }
    }

    void printsOnThePageThatIsChosen()
    {
        DeskRecords records;
        HandoffScreen screen(records.workplace());
        screen.resize(em(100), em(60));
        screen.show();
        screen.open("O-1002");
        screen.refresh();
        auto *button = screen.findChild<QPushButton *>("handoff.print");
        QTRY_VERIFY(button->isEnabled());
        const QString path = records.path("handoff.pdf");
        printing::agree(path, printing::letterOnItsSide);
        button->click();
        const QString pages = printing::pagesOf(path);
        QVERIFY2(pages.endsWith("pages, 612 x 792 pts (letter)"), qPrintable(pages));
        const QByteArray text = certificates::run("pdftotext", {path, "-"}).text;
        QVERIFY2(text.contains("O-1002"), text);
    }

    void toWhomItIsHandedOnIsRecorded()
    {
        DeskRecords records;
        HandoffScreen screen(records.workplace());
        screen.resize(em(100), em(60));
        screen.show();
        screen.open("O-1002");
        screen.refresh();
        QTRY_VERIFY(words(screen).contains("C-502"));
        auto *form = screen.findChild<Form *>("handoff.refer");
        QVERIFY(!form->confirm()); // to nobody
        QTRY_VERIFY(form->isEnabled());
        form->setTyped({{"to", "cable desk"}, {"reference", "T-44"}, {"waiting_on", "plant"}});
        QVERIFY(form->confirm());
        QTRY_VERIFY2(words(screen).contains("cable desk") && words(screen).contains("T-44") &&
                         words(screen).contains("waits on plant"),
                     qPrintable(words(screen)));
        QCOMPARE(form->typed(), QJsonObject());
        const auto handoff = handoffOf(records.records(), "O-1002");
        QCOMPARE(handoff->referred->waitingOn, "plant");
    }

    void nothingOpenIsSaid()
    {
        DeskRecords records;
        HandoffScreen screen(records.workplace());
        screen.show();
        screen.open("no such order");
        screen.refresh();
        QTRY_VERIFY(words(screen).contains("no such order"));
        QVERIFY(!screen.findChild<QPushButton *>("handoff.print")->isEnabled());
    }
};

QTEST_MAIN(HandoffScreenTest)
#include "HandoffScreenTest.moc"
