#include "app/desktop/UndoNotice.h"

#include "app/desktop/widgets/SignList.h"
#include "tests/support/DeskWindow.h"

#include <QAction>
#include <QClipboard>
#include <QComboBox>
#include <QContextMenuEvent>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSignalSpy>

using namespace loopwright;

class UndoNoticeTest : public QObject, DeskWindow
{
    Q_OBJECT

private:
    std::atomic<int> m_takenBack = 0;

    void tell()
    {
        DoneStep step{"Something was done.", {}, {}};
        step.takeBack = [this](Records &) -> Result<void> {
            ++m_takenBack;
            return {};
        };
        emit m_window->current()->stepDone(step);
    }
    static void undoByKey()
    {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Z, Qt::ControlModifier);
    }

private slots:
    void init()
    {
        m_takenBack = 0;
        m_records = std::make_unique<DeskRecords>();
        openWindow();
    }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
    }

    void onEveryScreen_data()
    {
        QTest::addColumn<QString>("key");
        for (const ScreenEntry &entry : allScreens())
            QTest::newRow(entry.key) << QString(entry.key);
    }
    /// Wherever the screen puts the keyboard, and in each of its fields where nothing was typed.
    void onEveryScreen()
    {
        QFETCH(QString, key);
        m_window->showScreen(key, key == "circuit" ? "C-501" : key == "job" ? "O-1002" : "");
        QSignalSpy told(named<UndoNotice>("undo"), &UndoNotice::takenBack);
        tell();
        QVERIFY(named<QPushButton>("undo.take_back")->isVisible());
        undoByKey();
        QTRY_COMPARE(told.count(), 1);
        int fields = 1;
        for (QLineEdit *field : m_window->current()->findChildren<QLineEdit *>()) {
            if (!field->isVisible() || !field->isEnabled() || field->isReadOnly() ||
                field->isUndoAvailable())
                continue;
            field->setFocus();
            tell();
            undoByKey();
            ++fields;
            QTRY_COMPARE(told.count(), fields);
            if (fields > 4)
                break;
        }
        QCOMPARE(m_takenBack, fields);
    }

    void whatIsTypedIsUndoneFirst()
    {
        auto *search = named<QLineEdit>("search");
        search->setFocus();
        tell();
        QTest::keyClicks(search, "mill");
        undoByKey();
        QCOMPARE(search->text(), "");
        QCOMPARE(m_takenBack, 0);
        undoByKey();
        QTRY_COMPARE(m_takenBack, 1);
    }

    void onceTakenBackOrDismissedItIsOff()
    {
        tell();
        undoByKey();
        QTRY_COMPARE(m_takenBack, 1);
        QTRY_VERIFY(!named<QAction>("action.undo")->isEnabled());
        undoByKey();
        tell();
        named<QPushButton>("undo.dismiss")->click();
        undoByKey();
        QTest::qWait(50);
        QCOMPARE(m_takenBack, 1);
    }

    /// Where no paper has the keyboard, the card of the job is printed.
    void printOnTheJob()
    {
        m_window->openOrder("O-1002");
        auto *print = m_window->screen("job")->findChild<QAction *>("print.key");
        QVERIFY(print);
        print->disconnect(); // no dialog of the system opens here
        int asked = 0;
        connect(print, &QAction::triggered, this, [&asked] { ++asked; });
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_P, Qt::ControlModifier);
        QCOMPARE(asked, 1);
    }

    void aSentenceOfAListIsCopied()
    {
        SignList list("sentences", "Sentences");
        list.setItems(
            {{"a", Status::Failed, "Loop", "is too long"}, {"b", Status::Done, "", "fine"}});
        list.show();
        list.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&list));
        list.setFocus();
        QTest::keyClick(&list, Qt::Key_C, Qt::ControlModifier);
        QCOMPARE(QGuiApplication::clipboard()->text(), "Loop is too long");
        list.choose("b");
        QContextMenuEvent event(QContextMenuEvent::Keyboard, {1, 1}, {1, 1});
        QApplication::sendEvent(list.viewport(), &event);
        auto *menu = list.findChild<QMenu *>("sentences.menu");
        QVERIFY(menu);
        menu->findChild<QAction *>("copy.row")->trigger();
        QCOMPARE(QGuiApplication::clipboard()->text(), "fine");
    }
};

QTEST_MAIN(UndoNoticeTest)
#include "UndoNoticeTest.moc"
