#pragma once
// Shows a test everything that the window has: each screen on something to show and with all its
// parts unfolded, and each dialog as a person opens it. One list for all tests that read or listen
// to everything; the pictures have theirs on the demo's records (tests/pictures/Scenes.cpp).

#include "app/desktop/MainWindow.h"
#include "app/desktop/WhoWorks.h"
#include "app/desktop/job/StationPanel.h"
#include "app/desktop/vans/ConflictsDialog.h"
#include "app/desktop/widgets/Table.h"
#include "tests/support/DeskRecords.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QMenu>
#include <QPushButton>
#include <QTimer>

namespace loopwright {

/// The window, or a dialog of it, with the name of what is to be seen.
using LookAt = std::function<void(const QString &place, QWidget &shown)>;

/// On the records of DeskRecords, or on empty ones.
class DeskWalk
{
public:
    DeskWalk(MainWindow &window, DeskRecords &records, LookAt look)
        : m_window(window)
        , m_records(records)
        , m_look(std::move(look))
    {
    }

    void screens()
    {
        for (const ScreenEntry &entry : allScreens())
            show(QString::fromLatin1(entry.key), DeskRecords::subjects().of(entry));
        show("job", "O-1004"); // an analog line has other parts
        show("order", "O-1002");
    }

    void dialogs()
    {
        m_window.showScreen("board");
        auto *orders = m_window.findChild<Table *>("orders");
        QTRY_VERIFY(orders->model()->rowCount() > 0);
        orders->selectRow(0);
        for (const char *deed : {"assign", "redate", "hold", "desk", "print", "take_along"})
            dialog(deed, [&] { trigger(QString("rows.%1").arg(deed)); });
        emit m_window.findChild<QMenu *>("boards.menu")->aboutToShow(); // it is filled then
        dialog("name", [&] { trigger("boards.keep"); });
        dialog("conflicts", [&] { showConflicts(m_records.workplace(), {}, &m_window); });
        for (const char *each : {"settings", "keys", "glossary", "about", "find_action"})
            dialog(each, [&] { trigger(QString("action.%1").arg(each)); });
        const Person person{.key = "lind", .name = "S. Lind", .role = Role::Supervisor};
        dialog("pin", [&] { askForPin(person, &m_window); });
        m_window.showScreen("import", m_records.file("theirs.csv", "A1,B2\n1,2\n"));
        dialog("map", [&] { click("import.columns"); });
        dialog("columns", [&] { click("import.help"); });
    }

    /// Of empty records.
    void firstRun()
    {
        m_window.showScreen("board");
        QTRY_VERIFY(m_window.findChild<QPushButton *>("empty.office")->isVisible());
        m_look("first run", m_window);
        dialog("office", [&] { click("empty.office"); });
        dialog("columns", [&] { click("empty.columns"); });
    }

private:
    void show(const QString &key, const QString &subject)
    {
        m_window.showScreen(key, subject);
        for (StationPanel *panel : m_window.findChildren<StationPanel *>())
            panel->unfold();
        QTest::qWait(100);
        m_look(subject.isEmpty() ? key : key + ' ' + subject, m_window);
    }

    void trigger(const QString &name)
    {
        auto *action = m_window.findChild<QAction *>(name);
        QTRY_VERIFY2(action && action->isEnabled(), qPrintable(name));
        action->trigger();
    }
    void click(const QString &name)
    {
        auto *button = m_window.findChild<QPushButton *>(name);
        QVERIFY2(button && button->isVisible(), qPrintable(name));
        button->click();
    }

    /// However it waits; it is closed again.
    void dialog(const QString &name, const std::function<void()> &open)
    {
        bool isSeen = false;
        int ticks = 0; // it fills itself while they pass
        QTimer waiting;
        QObject::connect(&waiting, &QTimer::timeout, &m_window, [&] {
            auto *shown = qobject_cast<QDialog *>(QApplication::activeModalWidget());
            if (!shown || !shown->isVisible() || ++ticks < 4)
                return;
            waiting.stop();
            isSeen = true;
            m_look(name, *shown);
            shown->reject();
        });
        waiting.start(50);
        open();
        QVERIFY2(
            QTest::qWaitFor([&] { return isSeen && !QApplication::activeModalWidget(); }, 20'000),
            qPrintable(name + ": no dialog, or one that does not go"));
    }

    MainWindow &m_window;
    DeskRecords &m_records;
    LookAt m_look;
};

} // namespace loopwright
