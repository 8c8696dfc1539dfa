#include "app/desktop/screens/BoardScreen.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/ChipRow.h"
#include "tests/support/DeskRecords.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

using namespace loopwright;

class BoardScreenTest : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DeskRecords> m_records;
    std::unique_ptr<BoardScreen> m_board;

    void show(bool filled)
    {
        m_records = std::make_unique<DeskRecords>(filled);
        m_board = std::make_unique<BoardScreen>(m_records->workplace());
        m_board->resize(em(110), em(50));
        m_board->show();
        m_board->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_board.get()));
        m_board->refresh();
    }
    QTableView *table() const { return m_board->findChild<QTableView *>("orders"); }
    int rows() const { return table()->model()->rowCount(); }
    QString found() const { return m_board->findChild<QLabel *>("found")->text(); }
    QAbstractButton *button(const QString &name) const
    {
        return m_board->findChild<QAbstractButton *>(name);
    }
    QString orderIn(int row) const { return table()->model()->index(row, 0).data().toString(); }

private slots:
    void cleanup()
    {
        m_board.reset();
        m_records.reset();
    }

    void typingOnARowSearches()
    {
        show(true);
        QTRY_COMPARE(rows(), 8);
        table()->setFocus();
        QTest::keyClick(table(), Qt::Key_B);
        auto *search = m_board->findChild<QLineEdit *>("search");
        QCOMPARE(search->text(), "b");
        QVERIFY(search->hasFocus());
    }

    void showsEveryOrderByItsDueDate()
    {
        show(true);
        QTRY_COMPARE(rows(), 8);
        QAbstractItemModelTester tester(table()->model(),
                                        QAbstractItemModelTester::FailureReportingMode::QtTest);
        QCOMPARE(orderIn(0), "O-1001");
        QCOMPARE(orderIn(7), "O-1007");
        QTRY_COMPARE(found(), "8 orders");
        QCOMPARE(table()->model()->index(0, boardColumn(u"due")).data().toString(),
                 "2 Mar · 2 days late");
    }

    void findsWhileTyping_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<int>("count");
        QTest::newRow("customer") << "bright" << 2;
        QTest::newRow("circuit") << "C-503" << 1;
        QTest::newRow("number as the trade writes it") << "217-555-0105" << 1;
        QTest::newRow("digits of a SPID") << "21755501070101" << 0;
        QTest::newRow("pair") << "17-206" << 1;
        QTest::newRow("two words") << "mill bright" << 2;
        QTest::newRow("nothing") << "zzz" << 0;
    }
    void findsWhileTyping()
    {
        QFETCH(QString, typed);
        QFETCH(int, count);
        show(true);
        QTRY_COMPARE(rows(), 8);
        QVERIFY(m_board->startSearch());
        QTest::keyClicks(QApplication::focusWidget(), typed);
        QTRY_COMPARE(rows(), count);
        QTRY_COMPARE(found(), count == 1 ? QString("1 order") : QString("%1 orders").arg(count));
    }

    void everyCountIsWhatItsChipShows()
    {
        show(true);
        QTRY_COMPARE(found(), "8 orders");
        for (ChipRow *row : m_board->findChildren<ChipRow *>()) {
            for (QAbstractButton *chip : row->findChildren<QAbstractButton *>()) {
                const QString key = chip->objectName().section('.', 2);
                const int promised = row->count(key);
                chip->click();
                QTRY_COMPARE(found(), promised == 1 ? QString("1 order")
                                                    : QString("%1 orders").arg(promised));
                QCOMPARE(rows(), promised);
                chip->click(); // lets go
                QTRY_COMPARE(found(), "8 orders");
            }
        }
    }

    void countsFollowTheOtherFilters()
    {
        show(true);
        QTRY_COMPARE(found(), "8 orders");
        auto *offices = m_board->findChild<QComboBox *>("filter.office");
        const int north = offices->findData("NORTH");
        QVERIFY(north > 0);
        QCOMPARE(offices->itemText(north), "NORTH   7");
        offices->setCurrentIndex(north);
        emit offices->activated(north);
        QTRY_COMPARE(found(), "7 orders");
        auto *installers = m_board->findChild<QComboBox *>("filter.installer");
        QTRY_COMPARE(installers->itemText(installers->findData("rivera")), "A. Rivera   3");
        button("clear")->click();
        QTRY_COMPARE(found(), "8 orders");
        QCOMPARE(offices->currentData().toString(), "");
    }

    void sidePaneSaysWhyAndWhatNext()
    {
        show(true);
        QTRY_COMPARE(rows(), 8);
        table()->setCurrentIndex(table()->model()->index(1, 0));
        QCOMPARE(orderIn(1), "O-1002");
        QTRY_COMPARE(m_board->findChild<QLabel *>("side.number")->text(), "O-1002");
        QVERIFY(m_board->findChild<QLabel *>("side.next")->text().startsWith("Next"));
        QVERIFY(m_board->findChild<QWidget *>("jobLine")->accessibleDescription().contains(
            "Turn-up: failed"));
        QVERIFY(button("side.handoff")->isVisible());
        QSignalSpy circuit(m_board.get(), &Screen::openCircuit);
        button("side.circuit")->click();
        QCOMPARE(circuit.first().first().toString(), "C-502");
        QSignalSpy handoff(m_board.get(), &Screen::openScreen);
        button("side.handoff")->click();
        QCOMPARE(handoff.first().at(0).toString(), "handoff");
        QCOMPARE(handoff.first().at(1).toString(), "O-1002");
    }

    void enterOpensTheJob()
    {
        show(true);
        QTRY_COMPARE(rows(), 8);
        QSignalSpy opened(m_board.get(), &Screen::openOrder);
        m_board->takeFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QCOMPARE(opened.count(), 1);
        QCOMPARE(opened.first().first().toString(), "O-1002");
        // From the search field: the first one found.
        m_board->startSearch();
        QTest::keyClicks(QApplication::focusWidget(), "hill farm");
        QTRY_COMPARE(rows(), 1);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QTRY_COMPARE(opened.count(), 2);
        QCOMPARE(opened.last().first().toString(), "O-1005");
    }

    void refreshKeepsTheSelection()
    {
        show(true);
        QTRY_COMPARE(rows(), 8);
        table()->setCurrentIndex(table()->model()->index(4, 0));
        const QString order = orderIn(4);
        m_records->take(importOrders(m_records->records(),
                                     DeskRecords::orderHeader() +
                                         "O-0900,record_only,2026-03-01,Early Bird,1 First "
                                         "Street,C-590,bri,NORTH,,17-290,voice,,217-555-0190,"
                                         "21755501900101,auto,,,,no,,\n",
                                     {}));
        m_board->refresh();
        QTRY_COMPARE(rows(), 9);
        QTRY_COMPARE(orderIn(table()->currentIndex().row()), order);
    }

    void emptyRecordsSayWhatToDoFirst()
    {
        show(false);
        QTRY_VERIFY(button("empty.import")->isVisible());
        QVERIFY(button("empty.demo")->isVisible());
        QVERIFY(button("empty.office")->isVisible());
        QVERIFY(!button("empty.new")->isVisible()); // there is no office yet
        QVERIFY(!table()->isVisible());
        QSignalSpy screen(m_board.get(), &Screen::openScreen);
        QSignalSpy edit(m_board.get(), &Screen::editOrder);
        button("empty.import")->click();
        button("empty.new")->click();
        QCOMPARE(screen.first().first().toString(), "import");
        QCOMPARE(edit.count(), 1);
    }

    void aSearchWithoutAnswerOffersTheWayBack()
    {
        show(true);
        QTRY_COMPARE(rows(), 8);
        m_board->startSearch();
        QTest::keyClicks(QApplication::focusWidget(), "zzz");
        QTRY_VERIFY(button("empty.clear")->isVisible());
        QVERIFY(!button("empty.import")->isVisible());
        button("empty.clear")->click();
        QTRY_COMPARE(rows(), 8);
    }
};

QTEST_MAIN(BoardScreenTest)
#include "BoardScreenTest.moc"
