#include "app/desktop/ActionPalette.h"

#include "app/desktop/widgets/PageElements.h"
#include "tests/support/DeskWindow.h"

#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QSignalSpy>

#include <algorithm>

using namespace loopwright;

class ActionPaletteTest : public QObject, DeskWindow
{
    Q_OBJECT

private:
    QDialog *palette() const { return named<QDialog>("palette"); }
    Table *list() const { return palette()->findChild<Table *>("palette.actions"); }
    QLineEdit *asked() const { return palette()->findChild<QLineEdit *>("palette.asked"); }
    QStringList cells(int column) const
    {
        QStringList names;
        for (int row = 0; row < list()->model()->rowCount(); ++row)
            names << list()->model()->index(row, column).data().toString();
        return names;
    }
    QStringList names() const { return cells(0); }

    void openPalette()
    {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_P,
                        Qt::ControlModifier | Qt::ShiftModifier);
        QTRY_VERIFY(palette() && palette()->isVisible());
        QTRY_COMPARE(QApplication::focusWidget(), asked());
    }
    void press(Qt::Key key) { QTest::keyClick(asked(), key); }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        openWindow();
        QTRY_VERIFY(table()->model()->rowCount() > 0);
    }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
    }

    void lettersFindAndEnterDoes()
    {
        openPalette();
        QTest::keyClicks(asked(), "hazrd");
        QCOMPARE(names().first(), "Hazards");
        press(Qt::Key_Return);
        QTRY_COMPARE(m_window->current()->key(), "hazards");
        QTRY_VERIFY(!palette());
    }

    void escapeLeadsBackToWhereOneWas()
    {
        m_window->showScreen("order");
        QPointer<QWidget> before = QApplication::focusWidget();
        QVERIFY(before);
        openPalette();
        QTest::keyClicks(asked(), "quit");
        press(Qt::Key_Escape);
        QTRY_VERIFY(!palette());
        QTRY_COMPARE(QApplication::focusWidget(), before.data());
        QCOMPARE(m_window->current()->key(), "order");
    }

    void theKeysOfTheListWorkWhileOneTypes()
    {
        openPalette();
        QTest::keyClicks(asked(), "e");
        QVERIFY(names().size() > 2);
        press(Qt::Key_Down);
        QCOMPARE(list()->currentIndex().row(), 1);
        press(Qt::Key_Up);
        QCOMPARE(list()->currentIndex().row(), 0);
        QVERIFY(asked()->accessibleDescription().contains(names().first()));
    }

    void nothingIsCalledSo()
    {
        openPalette();
        QTest::keyClicks(asked(), "qqqxxx");
        auto *none = palette()->findChild<EmptyState *>();
        QVERIFY(none->isVisible());
        QCOMPARE(none->title(), "Nothing is called so.");
        press(Qt::Key_Return); // does nothing, and stays
        QVERIFY(palette()->isVisible());
        asked()->clear();
        QVERIFY(list()->isVisible());
    }

    /// Each entry that the menus have and that is on; it is made from them, so a new one is there.
    void everyEntryOfTheMenusIsInIt()
    {
        m_window->menuBar()->actions().last()->menu()->addAction("Brand new &entry…");
        openPalette();
        const QStringList all = names();
        QVERIFY(all.contains("Brand new entry"));
        int counted = 0;
        for (const QAction *action : m_window->findChildren<QAction *>())
            if (action->objectName().startsWith("action.") && action->isEnabled()) {
                const QString name = action->text().remove('&').remove("…");
                QVERIFY2(all.contains(name), qPrintable(name));
                ++counted;
            }
        QVERIFY(counted > 25);
        const qsizetype quit = all.indexOf("Quit");
        QCOMPARE(cells(2)[quit], QKeySequence(Qt::CTRL | Qt::Key_Q).toString());
        QCOMPARE(cells(1)[quit], "Records");
        QVERIFY(all.contains("150 %") || all.contains("Size 150 %"));
    }

    void theActionsOfTheScreenAreInIt()
    {
        openPalette();
        QCOMPARE(names().count("Export view"), 1); // in the menu of a button too
        QVERIFY(names().contains("Desk work"));
        QVERIFY(!names().contains("Save the order"));
        press(Qt::Key_Escape);
        QTRY_VERIFY(!palette());
        m_window->showScreen("order");
        openPalette();
        QVERIFY(names().contains("Save the order"));
        QVERIFY(!names().contains("Desk work"));
    }

    void theFiltersOfTheBoardAreInIt()
    {
        openPalette();
        QVERIFY(cells(1).contains("Board ▸ Stage"));
        QTest::keyClicks(asked(), "late");
        QCOMPARE(names().first(), "Late");
        QCOMPARE(cells(1).first(), "Board ▸ Due");
        press(Qt::Key_Return);
        QTRY_VERIFY(named<QAbstractButton>("chip.due.late")->isChecked());
        QTRY_COMPARE(orders(), QStringList("O-1001"));
        QTRY_VERIFY(!palette());
        openPalette();
        QTest::keyClicks(asked(), "hazard");
        const QStringList found = names();
        QVERIFY(found.contains("Hazards") && found.contains("Hazard"));
        QCOMPARE(cells(1)[found.indexOf("Hazard")], "Board");
    }

    void whatIsOffSaysWhy()
    {
        table()->clearSelection();
        openPalette();
        QTest::keyClicks(asked(), "undo");
        QCOMPARE(names().first(), "Undo");
        QCOMPARE(cells(1).first(), "Nothing was done that can be taken back.");
        press(Qt::Key_Return);
        QVERIFY(palette()->isVisible()); // it cannot be done
        asked()->setText("assign");
        QCOMPARE(cells(1).first(), "No order is selected.");
    }

    void aDeedActsOnWhatIsSelected()
    {
        table()->selectRow(0);
        openPalette();
        QTest::keyClicks(asked(), "assign");
        press(Qt::Key_Return);
        QTRY_VERIFY(named<QDialog>("assign"));
        QVERIFY(named<QDialog>("assign")->isVisible());
        named<QDialog>("assign")->reject();
    }

    void jobsThatWereOpened()
    {
        m_window->openOrder("O-1002");
        m_window->openOrder("O-1003");
        m_window->showScreen("board");
        openPalette();
        QTest::keyClicks(asked(), "1002");
        QCOMPARE(names(), QStringList("Job O-1002"));
        press(Qt::Key_Return);
        QTRY_COMPARE(m_window->current()->title(), "Job O-1002");
        const QJsonObject place = m_window->place();
        openWindow(place);
        QMenu *recent = named<QMenu>("recent");
        emit recent->aboutToShow();
        QCOMPARE(recent->actions().first()->text(), "Job O-1002");
        QCOMPARE(recent->actions().size(), 2);
    }

    /// What a form or a table has is meant for the one that has the keyboard.
    void theTableThatHasTheKeyboardIsCopied()
    {
        table()->setFocus();
        table()->selectRow(1);
        openPalette();
        QTest::keyClicks(asked(), "copy the rows");
        press(Qt::Key_Return);
        QTRY_VERIFY(!palette());
        QTRY_VERIFY(QGuiApplication::clipboard()->text().contains(orders()[1]));
    }

    void fitsASmallWindow()
    {
        m_window->resize(1024, 600);
        openPalette();
        QVERIFY(m_window->size().width() >= palette()->width());
        QVERIFY(m_window->size().height() >= palette()->height());
    }
};

QTEST_MAIN(ActionPaletteTest)
#include "ActionPaletteTest.moc"
