#include "app/desktop/screens/AuditScreen.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskRecords.h"

#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

using namespace loopwright;

class AuditScreenTest : public QObject
{
    Q_OBJECT

private slots:
    void namesTheHeldOrderAndOpensItsCircuit()
    {
        DeskRecords records;
        AuditScreen screen(records.workplace());
        screen.resize(em(100), em(50));
        screen.show();
        auto *start = screen.findChild<QPushButton *>("audit.start");
        start->click();
        QVERIFY(!start->isEnabled());
        QTRY_VERIFY(start->isEnabled());
        auto *table = screen.findChild<QTableView *>("audit.findings");
        int held = -1;
        for (int row = 0; row < table->model()->rowCount(); ++row)
            if (table->model()->index(row, 3).data().toString().contains("O-1008"))
                held = row;
        QVERIFY2(held >= 0, "the audit does not name the held order");
        table->setCurrentIndex(table->model()->index(held, 0));
        QCOMPARE(screen.findChild<SignLine *>("audit.reason")->text(),
                 table->model()->index(held, 4).data().toString());
        QSignalSpy opened(&screen, &Screen::openCircuit);
        auto *first = screen.findChild<QPushButton *>("audit.circuit.0");
        QVERIFY(first->isVisible());
        first->click();
        QCOMPARE(opened.count(), 1);
        QVERIFY(first->text().endsWith(opened.takeFirst().first().toString()));
        QVERIFY(!screen.findChild<QPushButton *>("audit.circuit.11")->isVisible());
        table->setCurrentIndex(table->model()->index(held, 0));
        QTest::keyClick(table, Qt::Key_Return);
        QCOMPARE(opened.count(), 1);
        QVERIFY(opened.first().first().toString().startsWith("C-50"));
    }

    void wholeRecordsAreSaidToBeWhole()
    {
        DeskRecords records(false);
        AuditScreen screen(records.workplace());
        screen.show();
        screen.start();
        auto *summary = screen.findChild<SignLine *>("audit.summary");
        QTRY_COMPARE(summary->sign(), Status::Done);
        QVERIFY(!screen.findChild<QTableView *>("audit.findings")->isVisible());
    }
};

QTEST_MAIN(AuditScreenTest)
#include "AuditScreenTest.moc"
