#include "app/desktop/MainWindow.h"

#include "app/desktop/Sidebar.h"
#include "app/desktop/WhoWorks.h"
#include "tests/support/DeskRecords.h"

#include <QAbstractItemView>
#include <QAccessible>
#include <QDialog>
#include <QFocusFrame>
#include <QInputDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTimer>
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

bool isFramed(const QWidget &field)
{
    return std::ranges::any_of(QApplication::allWidgets(), [&field](QWidget *widget) {
        const auto *ring = qobject_cast<QFocusFrame *>(widget);
        return ring && ring->isVisible() && ring->widget() == &field;
    });
}

/// What a person may type as a name, and as the number of an order.
const QString markedName = QStringLiteral("<b>Bold</b><img src=file:///etc/hostname> Ltd");
const QString markedNumber = QStringLiteral("<b>O</b><img src=file:///etc/hostname>");

bool isTyped(const QString &text)
{
    return text.contains(u"<img");
}

bool showsTyped(const QWidget &widget)
{
    return std::ranges::any_of(widget.findChildren<QLabel *>(),
                               [](const QLabel *label) { return isTyped(label->text()); });
}

} // namespace

class MainWindowTest : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DeskRecords> m_records;
    std::unique_ptr<MainWindow> m_window;

    QString shown() const { return m_window->current()->key(); }

    /// What was typed stands in the window and its dialogs as it is, in tips too.
    void verifyNoPage(const QString &where) const
    {
        for (const QLabel *label : m_window->findChildren<QLabel *>())
            QVERIFY2(!isTyped(label->text()) || label->textFormat() == Qt::PlainText,
                     qPrintable(where + ": " + label->objectName() + " " + label->text()));
        for (const QWidget *widget : m_window->findChildren<QWidget *>())
            QVERIFY2(!isTyped(widget->toolTip()), qPrintable(where + ": " + widget->objectName()));
        for (const QAbstractItemView *view : m_window->findChildren<QAbstractItemView *>()) {
            if (!view->model())
                continue;
            for (int row = 0; row < view->model()->rowCount(); ++row)
                for (int column = 0; column < view->model()->columnCount(); ++column)
                    QVERIFY2(
                        !isTyped(
                            view->model()->index(row, column).data(Qt::ToolTipRole).toString()),
                        qPrintable(where + ": " + view->objectName()));
        }
    }
    QDialog *openDialog() const
    {
        for (QDialog *dialog : m_window->findChildren<QDialog *>())
            if (dialog->isVisible())
                return dialog;
        return nullptr;
    }
    /// Opens the dialogs that ask about the selected order.
    void verifyNoPageInDialogs() const
    {
        for (const char *key : {"assign", "redate", "hold", "print", "take_along"}) {
            auto *action = m_window->findChild<QAction *>(QString("rows.") + key);
            QVERIFY2(action && action->isEnabled(), key);
            action->trigger();
            QTRY_VERIFY2(openDialog(), key);
            QTRY_VERIFY2(showsTyped(*openDialog()) || QString(key) == "take_along", key);
            verifyNoPage(key);
            openDialog()->reject();
            QTRY_VERIFY2(!openDialog(), key);
        }
    }

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
        const QString orders =
            DeskRecords::orderHeader() +
            QString("%2,new,2026-03-04,%1,%1,C-602,bri,NORTH,,17-905,voice+data,data,217-555-0123,"
                    "21755501230101,auto,217-555-0124,21755501240101,auto,yes,rivera,%1\n")
                .arg(markedName, markedNumber);
        m_records->take(importOrders(m_records->records(), orders.toUtf8(), {"typed.csv"}));
        m_window->showScreen("board");
        auto *table = m_window->findChild<QAbstractItemView *>("orders");
        int place = -1;
        QTRY_VERIFY(table->model()->rowCount() == 9);
        for (int row = 0; row < 9; ++row)
            if (table->model()->index(row, 0).data().toString() == markedNumber)
                place = row;
        QVERIFY(place >= 0);
        table->setCurrentIndex(table->model()->index(place, 0));
        auto *count = m_window->findChild<QLabel *>("rows.count");
        QTRY_COMPARE(count->text(), "Order " + markedNumber);
        QTest::qWait(300);
        verifyNoPage("board");
        verifyNoPageInDialogs();
        for (const ScreenEntry &entry : allScreens()) {
            m_window->showScreen(entry.key,
                                 QString(entry.key) == "circuit" ? "C-602" : markedNumber);
            QTest::qWait(150);
            verifyNoPage(entry.key);
        }
        QVERIFY(showsTyped(*m_window)); // else nothing was tried
        auto *rail = m_window->findChild<Sidebar *>("rail");
        rail->showRuns({{markedNumber, "12:34"}});
        auto *run = m_window->findChild<QWidget *>("rail.run." + markedNumber);
        QVERIFY(run && run->toolTip().contains("12:34"));
        verifyNoPage("a run");
    }

    /// Nor in what is asked while all else waits, whose labels are Qt's.
    void typedTextIsNoPageInQuestions()
    {
        Person person;
        person.name = markedName;
        bool asked = false;
        QTimer::singleShot(0, m_window.get(), [&] {
            auto *dialog = m_window->findChild<QInputDialog *>("pin");
            QVERIFY(dialog);
            asked = showsTyped(*dialog);
            verifyNoPage("pin");
            dialog->reject();
        });
        QVERIFY(!askForPin(person, m_window.get()));
        QVERIFY(asked);

        // A name that is there already is said in the question for another.
        asked = false;
        QTimer answers;
        connect(&answers, &QTimer::timeout, this, [&] {
            auto *dialog = m_window->findChild<QInputDialog *>("boards.name");
            if (!dialog || !dialog->isVisible())
                return;
            if (isTyped(dialog->labelText())) {
                asked = true;
                verifyNoPage("boards.name");
                return dialog->reject();
            }
            dialog->setTextValue(markedName);
            dialog->accept();
        });
        answers.start(20);
        auto *menu = m_window->findChild<QMenu *>("boards.menu");
        for (int turn = 0; turn < 2; ++turn) {
            QVERIFY(!asked);
            emit menu->aboutToShow();
            menu->findChild<QAction *>("boards.keep")->trigger();
        }
        QVERIFY(asked);
        verifyNoPage("boards");
    }

    void theFocusIsSeen()
    {
        m_window->showScreen("order");
        QTRY_VERIFY(QApplication::focusWidget() && isFramed(*QApplication::focusWidget()));
        QVERIFY(m_window->current()->isAncestorOf(QApplication::focusWidget()));
    }

    /// The dialog takes the frame that it was given with it.
    void theFocusIsSeenAfterADialogToo()
    {
        auto *search = m_window->findChild<QLineEdit *>("search");
        search->setFocus();
        QTRY_VERIFY(isFramed(*search));
        for (int turn = 0; turn < 2; ++turn) {
            auto dialog = std::make_unique<QDialog>(m_window.get());
            auto *field = new QLineEdit(dialog.get());
            dialog->show();
            dialog->activateWindow();
            QVERIFY(QTest::qWaitForWindowActive(dialog.get()));
            field->setFocus();
            QTRY_VERIFY(isFramed(*field));
            QVERIFY(!isFramed(*search));
            dialog.reset();
            m_window->activateWindow();
            QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
            search->setFocus();
            QTRY_VERIFY(isFramed(*search));
        }
    }
};

QTEST_MAIN(MainWindowTest)
#include "MainWindowTest.moc"
