#include "app/desktop/MainWindow.h"

#include "tests/support/DeskRecords.h"

#include <QAbstractItemView>
#include <QAccessible>
#include <QFocusFrame>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <QSignalSpy>
#include <QToolButton>

using namespace loopwright;

namespace {

/// Everything that the keyboard can come to.
QList<QWidget *> controlsOf(QWidget *page)
{
    QList<QWidget *> controls;
    for (QWidget *widget : page->findChildren<QWidget *>())
        // A text that can be copied takes the focus of a click, and speaks for itself.
        if (widget->focusPolicy() != Qt::NoFocus && !qobject_cast<QScrollBar *>(widget) &&
            !qobject_cast<QLabel *>(widget))
            controls << widget;
    return controls;
}

/// A part of another control: the line of an editable list, the view behind a list, a corner.
bool isPart(const QWidget *widget)
{
    return widget->objectName().startsWith("qt_") ||
           (widget->parentWidget() && widget->parentWidget()->inherits("QComboBox")) ||
           widget->inherits("QComboBoxListView") || widget->inherits("QComboBoxPrivateContainer") ||
           widget->inherits("QHeaderView") || widget->inherits("QTabBar");
}

} // namespace

class MainWindowTest : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DeskRecords> m_records;
    std::unique_ptr<MainWindow> m_window;

    QString shown() const { return m_window->current()->key(); }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        m_window = std::make_unique<MainWindow>(m_records->workplace());
        m_window->show();
        m_window->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
    }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
    }

    void beginsOnTheBoard()
    {
        QCOMPARE(shown(), "board");
        QCOMPARE(m_window->windowTitle(), "Board — Loopwright");
    }

    void everyScreenOfTheRailHasItsKey()
    {
        int place = 0;
        for (const ScreenEntry &entry : allScreens()) {
            if (entry.under)
                continue;
            ++place;
            auto *button = m_window->findChild<QToolButton *>(QString("rail.") + entry.key);
            if (place <= 10) // there are no more digits
                QTest::keyClick(m_window.get(), Qt::Key(Qt::Key_0 + place % 10),
                                Qt::ControlModifier);
            else
                button->click();
            QCOMPARE(shown(), QString(entry.key));
            QVERIFY(button->isChecked());
            QVERIFY(!button->accessibleName().isEmpty());
        }
        QVERIFY(place >= 7);
    }

    void keysOfTheMenu()
    {
        QTest::keyClick(m_window.get(), Qt::Key_N, Qt::ControlModifier);
        QCOMPARE(shown(), "order");
        QTest::keyClick(m_window.get(), Qt::Key_I, Qt::ControlModifier);
        QCOMPARE(shown(), "import");
        QTest::keyClick(m_window.get(), Qt::Key_F, Qt::ControlModifier); // nothing to search here
        QCOMPARE(shown(), "board");
        QCOMPARE(QApplication::focusWidget()->objectName(), "search");
    }

    void slashSearchesButIsTypedWhereTextIs()
    {
        auto *table = m_window->findChild<QAbstractItemView *>("orders");
        QTRY_VERIFY(table->model()->rowCount() > 0);
        table->setFocus();
        QTest::keyClick(table, Qt::Key_Slash);
        auto *search = m_window->findChild<QLineEdit *>("search");
        QCOMPARE(QApplication::focusWidget(), search);
        QTest::keyClicks(search, "17/2");
        QCOMPARE(search->text(), "17/2");
    }

    void escapeGoesBack()
    {
        m_window->openCircuit("C-501");
        QCOMPARE(shown(), "circuit");
        QTest::keyClick(m_window.get(), Qt::Key_Escape);
        QCOMPARE(shown(), "board");
        m_window->showScreen("import");
        m_window->showScreen("register");
        QTest::keyClick(m_window.get(), Qt::Key_Escape);
        QCOMPARE(shown(), "import");
        QTest::keyClick(m_window.get(), Qt::Key_Escape);
        QCOMPARE(shown(), "board");
    }

    void unknownScreenChangesNothing()
    {
        m_window->showScreen("no such screen", "O-1001");
        QCOMPARE(shown(), "board");
    }

    void lookAndSizeAreAskedForByTheMenu()
    {
        QSignalSpy look(m_window.get(), &MainWindow::lookChosen);
        QSignalSpy size(m_window.get(), &MainWindow::sizeChosen);
        m_window->findChild<QAction *>("action.look.dark")->trigger();
        m_window->findChild<QAction *>("action.size.150")->trigger();
        QCOMPARE(look.count(), 1);
        QCOMPARE(size.first().first().toInt(), 150);
        m_window->markTheme(LookChoice::HighContrast, 125);
        QVERIFY(m_window->findChild<QAction *>("action.look.high_contrast")->isChecked());
        QVERIFY(!m_window->findChild<QAction *>("action.look.dark")->isChecked());
    }

    void railShrinksInANarrowWindow()
    {
        auto *rail = m_window->findChild<QWidget *>("rail");
        m_window->resize(em(110), em(60));
        QTRY_VERIFY(rail->width() > em(8));
        m_window->resize(em(60), em(50));
        QTRY_VERIFY(rail->width() < em(4));
    }

    void everyControlHasANameForAScreenReader()
    {
        for (const ScreenEntry &entry : allScreens()) {
            m_window->showScreen(entry.key, QString(entry.key) == "circuit" ? "C-501" : "O-1002");
            QTest::qWait(50);
            for (QWidget *control : controlsOf(m_window->current())) {
                if (isPart(control))
                    continue;
                QAccessibleInterface *spoken = QAccessible::queryAccessibleInterface(control);
                QVERIFY(spoken);
                const QString where =
                    QString("%1: %2 %3")
                        .arg(entry.key, control->metaObject()->className(), control->objectName());
                QVERIFY2(!spoken->text(QAccessible::Name).isEmpty(), qPrintable(where));
                QVERIFY2(!control->objectName().isEmpty(), qPrintable(where));
            }
        }
    }

    /// What a person typed is shown as it stands, and loads no picture from anywhere.
    void typedTextIsNoPage()
    {
        const QByteArray typed = "<b>Bold</b><img src=file:///etc/hostname> Ltd";
        const QByteArray orders =
            DeskRecords::orderHeader() + "O-2002,new,2026-03-04," + typed + "," + typed +
            ",C-602,bri,NORTH,,17-905,voice+data,data,217-555-0123,21755501230101,auto,"
            "217-555-0124,21755501240101,auto,yes,rivera," +
            typed + "\n";
        m_records->take(importOrders(m_records->records(), orders, {"typed.csv"}));
        const auto check = [&](const QString &where) {
            for (const QLabel *label : m_window->findChildren<QLabel *>())
                QVERIFY2(!label->text().contains("<img") || label->textFormat() == Qt::PlainText,
                         qPrintable(where + ": " + label->objectName() + " " + label->text()));
            for (const QWidget *widget : m_window->findChildren<QWidget *>())
                QVERIFY2(!widget->toolTip().contains("<img"),
                         qPrintable(where + ": " + widget->objectName()));
            for (const QAbstractItemView *view : m_window->findChildren<QAbstractItemView *>()) {
                if (!view->model())
                    continue;
                for (int row = 0; row < view->model()->rowCount(); ++row)
                    for (int column = 0; column < view->model()->columnCount(); ++column)
                        QVERIFY2(!view->model()
                                      ->index(row, column)
                                      .data(Qt::ToolTipRole)
                                      .toString()
                                      .contains("<img"),
                                 qPrintable(where + ": " + view->objectName()));
            }
        };
        m_window->showScreen("board");
        auto *table = m_window->findChild<QAbstractItemView *>("orders");
        int place = -1;
        QTRY_VERIFY(table->model()->rowCount() == 9);
        for (int row = 0; row < 9; ++row)
            if (table->model()->index(row, 0).data().toString() == "O-2002")
                place = row;
        QVERIFY(place >= 0);
        table->setCurrentIndex(table->model()->index(place, 0));
        QTest::qWait(300);
        check("board");
        for (const ScreenEntry &entry : allScreens()) {
            m_window->showScreen(entry.key, QString(entry.key) == "circuit" ? "C-602" : "O-2002");
            QTest::qWait(150);
            check(entry.key);
        }
        const bool shown =
            std::ranges::any_of(m_window->findChildren<QLabel *>(),
                                [](const QLabel *label) { return label->text().contains("<img"); });
        QVERIFY(shown); // else nothing was tried
    }

    void theFocusIsSeen()
    {
        auto *ring = m_window->findChild<QFocusFrame *>();
        QVERIFY(ring);
        m_window->showScreen("order");
        QCOMPARE(ring->widget(), QApplication::focusWidget());
        QVERIFY(ring->isVisible());
    }
};

QTEST_MAIN(MainWindowTest)
#include "MainWindowTest.moc"
