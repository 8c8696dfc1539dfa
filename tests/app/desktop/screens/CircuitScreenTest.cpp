#include "app/desktop/screens/CircuitScreen.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldMark.h"
#include "tests/support/DeskRecords.h"

#include <QApplication>
#include <QSignalSpy>
#include <QTableView>

using namespace loopwright;

class CircuitScreenTest : public QObject
{
    Q_OBJECT

private slots:
    void showsOrdersAndEvents()
    {
        DeskRecords records;
        CircuitScreen screen(records.workplace());
        screen.resize(em(100), em(50));
        screen.show();
        screen.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&screen));
        screen.open("C-502");
        QCOMPARE(screen.title(), "Circuit C-502");
        auto *orders = screen.findChild<QTableView *>("circuit.orders");
        QTRY_COMPARE(orders->model()->rowCount(), 1);
        QCOMPARE(orders->model()->index(0, 0).data().toString(), "O-1002");
        const auto *events = screen.findChild<QTableView *>("circuit.events")->model();
        QVERIFY(events->rowCount() >= 2); // taken in, and evidence recorded
        QCOMPARE(events->index(0, 2).data().toString(), "O-1002");
        QCOMPARE(events->index(0, 3).data().toString(), "S. Lind");
        QSignalSpy opened(&screen, &Screen::openOrder);
        screen.takeFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QCOMPARE(opened.first().first().toString(), "O-1002");
    }

    void anUnknownCircuitIsTold()
    {
        DeskRecords records;
        CircuitScreen screen(records.workplace());
        screen.show();
        screen.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&screen));
        screen.takeFocus();
        QTest::keyClicks(QApplication::focusWidget(), "C-999");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        auto *mark = screen.findChild<FieldMark *>();
        QTRY_VERIFY(mark->isInError());
        QVERIFY2(mark->sentence().contains("C-999"), qPrintable(mark->sentence()));
        QVERIFY(!screen.findChild<QTableView *>("circuit.orders")->isVisible());
    }
};

QTEST_MAIN(CircuitScreenTest)
#include "CircuitScreenTest.moc"
