#include "app/desktop/screens/CircuitScreen.h"

#include "app/actions/Orders.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskRecords.h"

#include <QApplication>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableView>

using namespace loopwright;

class CircuitScreenTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<DeskRecords> m_records;
    std::unique_ptr<CircuitScreen> m_screen;

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        m_screen = std::make_unique<CircuitScreen>(m_records->workplace());
        m_screen->resize(em(100), em(50));
        m_screen->show();
        m_screen->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_screen.get()));
    }
    void cleanup()
    {
        m_screen.reset();
        m_records.reset();
    }

    void namesThePairsThatNobodyHas()
    {
        QVERIFY(cancelOrder(m_records->workplace().records(), "O-1003", "not wanted any more"));
        m_screen->open("C-502");
        const auto *spares = m_screen->findChild<QTableView *>("circuit.spares")->model();
        QTRY_COMPARE(spares->rowCount(), 1);
        QCOMPARE(spares->index(0, 0).data().toString(), "17-206");
        QCOMPARE(spares->index(0, 1).data().toString(), "1");
        QCOMPARE(spares->index(0, 2).data().toString(), "O-1003");
    }

    void showsOrdersAndEvents()
    {
        CircuitScreen &screen = *m_screen;
        screen.open("C-502");
        QCOMPARE(screen.title(), "Circuit C-502");
        auto *orders = screen.findChild<QTableView *>("circuit.orders");
        QTRY_COMPARE(orders->model()->rowCount(), 1);
        QCOMPARE(orders->model()->index(0, 0).data().toString(), "O-1002");
        auto *tabs = screen.findChild<QTabWidget *>("circuit.tabs");
        QCOMPARE(tabs->currentWidget()->objectName(), "circuit.life");
        const auto *life = screen.findChild<QTableView *>("circuit.life")->model();
        QStringList lines;
        for (int row = 0; row < life->rowCount(); ++row)
            lines << life->index(row, 3).data().toString();
        QVERIFY2(lines.contains("Layers: 1 up, 1 down"), qPrintable(lines.join('\n')));
        QVERIFY(!screen.findChild<SignLine *>("circuit.chosen")->text().isEmpty());
        const auto *figures = screen.findChild<QTableView *>("circuit.figures")->model();
        QCOMPARE(figures->index(0, 0).data().toString(), "Highest AC voltage");
        QCOMPARE(figures->index(0, 2).data().toString(), "0.2");
        QVERIFY(screen.findChild<QWidget *>("circuit.trend")
                    ->accessibleDescription()
                    .contains("order O-1002: 0.2 V"));
        QVERIFY(screen.findChild<SignLine *>("circuit.summary")->text().contains("4 Quay Street"));
        const auto *events = screen.findChild<QTableView *>("circuit.events")->model();
        QVERIFY(events->rowCount() >= 2); // taken in, and evidence recorded
        QCOMPARE(events->index(0, 2).data().toString(), "O-1002");
        QCOMPARE(events->index(0, 3).data().toString(), "S. Lind");
        QSignalSpy opened(&screen, &Screen::openOrder);
        screen.takeFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QCOMPARE(opened.first().first().toString(), "O-1002");
    }

    /// Any part of a number or name; one circuit alone is opened at once.
    void isFoundByAFragment()
    {
        CircuitScreen &screen = *m_screen;
        screen.takeFocus();
        QTest::keyClicks(QApplication::focusWidget(), "mill lane");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        auto *candidates = screen.findChild<QTableView *>("circuit.candidates");
        QTRY_VERIFY(candidates->isVisible());
        QCOMPARE(candidates->model()->rowCount(), 4);
        QTRY_COMPARE(QApplication::focusWidget(), candidates);
        QTest::keyClick(candidates, Qt::Key_Down);
        QTest::keyClick(candidates, Qt::Key_Return);
        QTRY_VERIFY(screen.findChild<QTableView *>("circuit.life")->isVisible());
        QCOMPARE(screen.title(), "Circuit C-506");
        QVERIFY(!candidates->isVisible());
        screen.startSearch();
        QTest::keyClicks(QApplication::focusWidget(), "harbour");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QTRY_COMPARE(screen.title(), "Circuit C-502");
    }

    void anUnknownCircuitIsTold()
    {
        CircuitScreen &screen = *m_screen;
        screen.takeFocus();
        QTest::keyClicks(QApplication::focusWidget(), "C-999");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        auto *mark = screen.findChild<FieldMark *>();
        QTRY_VERIFY(mark->isInError());
        QVERIFY2(mark->sentence().contains("C-999"), qPrintable(mark->sentence()));
        QVERIFY(!screen.findChild<QTableView *>("circuit.life")->isVisible());
    }

    void itsFileIsExportedBesideTheWindow()
    {
        m_screen->open("C-502");
        auto *button = m_screen->findChild<QWidget *>("circuit.export");
        QTRY_VERIFY(button->isVisible());
        QSignalSpy said(m_screen.get(), &Screen::said);
        const QString folder = m_records->path("circuit-C-502");
        m_screen->exportTo(folder);
        QTRY_COMPARE(said.size(), 1);
        QVERIFY2(said.first().first().toString().contains(folder),
                 qPrintable(said.first().first().toString()));
        QVERIFY(QFile::exists(folder + "/manifest.json"));
        QVERIFY(QFile::exists(folder + "/records/O-1002@rivera.json"));
    }
};

QTEST_MAIN(CircuitScreenTest)
#include "CircuitScreenTest.moc"
