// Longer than 400 lines: what works window and dialogs serves all of its steps.
// A dispatcher's morning in the real window, by keys, over the records of a whole region: it is
// searched, filtered, sorted and scrolled; twenty orders are assigned and put on hold, their day
// lists printed, and both taken back; another program writes meanwhile; a question supersedes
// another; each page is opened. Of each step is told how long it took until it stood there, and the
// longest time for which the window's thread did nothing else. A step that does not do what it is
// to do ends the program.
//
//   bench.morning DATABASE      one that bench.records made; a copy of it is worked in

#include "app/actions/Orders.h"
#include "app/actions/Plans.h"
#include "app/actions/Register.h"
#include "app/desktop/DesktopContext.h"
#include "app/desktop/MainWindow.h"
#include "app/desktop/models/BoardModel.h"
#include "app/desktop/screens/AskDialog.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/Table.h"
#include "tests/bench/Measured.h"
#include "tests/bench/Stalls.h"

#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>

#include <unistd.h>

using namespace loopwright;

namespace {

constexpr int waitMs = 60'000;
constexpr int keyMs = 60; ///< between two keys of somebody who types fast
const QString supervisor = QStringLiteral("P020");
const Moment morning = *Moment::parse(u"2026-12-01T07:30:00-06:00");

/// Of this process, in MB.
double memory()
{
    QFile file("/proc/self/statm");
    if (!file.open(QIODevice::ReadOnly))
        stop({ErrorCode::DiskTrouble, "cannot be read", file.fileName()});
    const QList<QByteArray> pages = file.readAll().split(' ');
    return pages.at(1).toDouble() * double(::sysconf(_SC_PAGESIZE)) / 1e6;
}

std::unique_ptr<MainWindow> shownWindow(DesktopContext &workplace)
{
    auto window = std::make_unique<MainWindow>(workplace);
    window->restore({});
    window->resize(1366, 768);
    window->show();
    window->activateWindow();
    return window;
}

/// What a window takes over records that hold nothing.
double memoryOfEmptyWindow(const QString &path)
{
    const auto workplace = good(DesktopContext::open(path, "hale", morning));
    const auto window = shownWindow(*workplace);
    QTest::qWait(1000);
    return memory();
}

class Morning
{
public:
    Morning(WatchedApplication &application, DesktopContext &workplace, QString folder,
            double emptyMb)
        : m_application(application)
        , m_workplace(workplace)
        , m_folder(std::move(folder))
        , m_emptyMb(emptyMb)
    {
    }

    void work()
    {
        open();
        search();
        filter();
        scroll();
        sort();
        plan();
        elsewhere();
        makeWay();
        openPages();
    }

private:
    template<class Widget>
    Widget *named(const QString &name) const
    {
        auto *found = m_window->findChild<Widget *>(name);
        if (!found)
            stop({ErrorCode::NotFound, "is not in the window", name});
        return found;
    }
    Table *table() const { return named<Table>("orders"); }
    int shown() const { return table()->model()->rowCount(); }
    QString cell(int row, QStringView column) const
    {
        return table()->model()->index(row, boardColumn(column)).data().toString();
    }
    QString found() const { return named<QLabel>("found")->text(); }
    /// The board has shown what was asked for last.
    bool isRead() const { return named<QLabel>("found")->isEnabled(); }
    AskDialog *dialog() const { return m_window->findChild<AskDialog *>(); }
    QString notice() const
    {
        return m_window->findChild<QWidget *>("undo")->isVisible()
                   ? named<SignLine>("undo.words")->text()
                   : QString();
    }

    /// `act`, and then events until `done`.
    void step(const QString &name, const std::function<void()> &act,
              const std::function<bool()> &done)
    {
        QTest::qWait(200); // what the step before began is over
        m_application.take();
        bool ended = false;
        const double ms = msOf([&] {
            act();
            ended = QTest::qWaitFor(done, waitMs);
        });
        QTest::qWait(100); // what it painted last
        if (!ended)
            stop({ErrorCode::Refused, "did not come to its end (" + found() + ")", name});
        const auto longest = m_application.take();
        std::printf("%-46s %9.0f ms  longest piece %7.1f ms, of its own %7.1f ms\n",
                    qPrintable(name), ms, longest.byClock, longest.ofItsOwn);
        std::fflush(stdout);
    }
    /// One key after the other, as a person types: the events between them are dealt with.
    static void type(QWidget *widget, const QString &text)
    {
        for (const QChar letter : text) {
            QTest::keyClick(widget, letter.toLatin1());
            QTest::qWait(keyMs);
        }
    }
    static void press(QWidget *widget, Qt::Key key, int times,
                      Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        for (int i = 0; i < times; ++i) {
            QTest::keyClick(widget, key, with);
            QTest::qWait(keyMs);
        }
    }

    void open()
    {
        step(
            "the window, with what is open", [this] { m_window = shownWindow(m_workplace); },
            [this] { return shown() > 0 && isRead() && found().contains("orders"); });
        std::printf("%46s %s\n", "", qPrintable(found()));
    }

    void search()
    {
        auto *field = named<QLineEdit>("search");
        const QString all = found();
        step(
            "a search, typed",
            [&] { press(m_window.get(), Qt::Key_Slash, 1), type(field, "mill lane kestrel"); },
            [&] { return isRead() && shown() > 0 && found() != all; });
        step(
            "Esc", [&] { press(field, Qt::Key_Escape, 1); },
            [&] { return field->text().isEmpty() && isRead() && shown() > 400; });
        const QString number = cell(100, u"order");
        step(
            "an order's number, typed", [&] { field->setFocus(), type(field, number); },
            [&] { return isRead() && shown() == 1 && cell(0, u"order") == number; });
        step(
            "Esc", [&] { press(field, Qt::Key_Escape, 1); },
            [&] { return field->text().isEmpty() && isRead() && shown() > 400; });
    }

    void filter()
    {
        const QString all = found();
        auto *offices = named<QComboBox>("filter.office");
        step(
            "another office, chosen",
            [&] {
                offices->setFocus();
                press(offices, Qt::Key_Down, 3);
            },
            [&] { return isRead() && found() != all && offices->currentIndex() == 3; });
        step(
            "a stage beside it", [&] { named<QAbstractButton>("chip.stage.calls")->click(); },
            [this] {
                return isRead() && shown() > 0 && cell(0, u"stage") == cell(shown() - 1, u"stage");
            });
        step(
            "Esc, all of them again",
            [&] {
                table()->setFocus();
                press(table(), Qt::Key_Escape, 1);
            },
            [&] { return isRead() && offices->currentIndex() == 0 && shown() > 400; });
        step(
            "the closed ones too", [&] { named<QAbstractButton>("chip.open.1")->click(); },
            [&] { return isRead() && found() != all && shown() > 10'000; });
    }

    void scroll()
    {
        table()->setFocus();
        const int rows = shown();
        step(
            "Page Down, thirty times", [&] { press(table(), Qt::Key_PageDown, 30); },
            [this] {
                return isRead() && !cell(table()->currentIndex().row(), u"order").isEmpty();
            });
        step(
            "Ctrl+End", [&] { press(table(), Qt::Key_End, 1, Qt::ControlModifier); },
            [&] { return isRead() && !cell(rows - 1, u"order").isEmpty(); });
        step(
            "Ctrl+Home", [&] { press(table(), Qt::Key_Home, 1, Qt::ControlModifier); },
            [this] { return isRead() && !cell(0, u"order").isEmpty(); });
        std::printf("%46s %.0f MB, an empty window %.0f MB: %.2f times\n", "memory after that",
                    memory(), m_emptyMb, memory() / m_emptyMb);
    }

    void sort()
    {
        for (const QStringView column : {u"customer", u"office", u"due"})
            step(
                "sorted by " + column,
                [&] {
                    auto *head = table()->horizontalHeader();
                    const int section = boardColumn(column);
                    QTest::mouseClick(
                        head->viewport(), Qt::LeftButton, {},
                        {head->sectionViewportPosition(section) + 20, head->height() / 2});
                },
                [&] {
                    return isRead() && table()->horizontalHeader()->sortIndicatorSection() ==
                                           boardColumn(column);
                });
        step(
            "the open ones again", [&] { named<QAbstractButton>("chip.open.1")->click(); },
            [this] { return isRead() && shown() > 400 && !cell(0, u"order").isEmpty(); });
    }

    /// The window has the keyboard again when a dialog is gone; not every platform sees to that.
    void backToRows()
    {
        if (!QTest::qWaitFor([this] { return !dialog(); }, waitMs))
            stop({ErrorCode::Refused, "the dialog stays", {}});
        m_window->activateWindow();
        table()->setFocus();
        QTest::qWait(keyMs);
    }
    void ask(Qt::Key key)
    {
        backToRows();
        QTest::keyClick(table(), key, Qt::ControlModifier);
        if (!QTest::qWaitFor([this] { return dialog(); }, waitMs))
            stop({ErrorCode::NotFound, "no dialog came", {}});
        dialog()->activateWindow();
        QTest::qWait(keyMs);
    }
    void fill(const QString &name, const QString &text)
    {
        auto *edit = dialog()->findChild<QLineEdit *>(name);
        if (!edit)
            stop({ErrorCode::NotFound, "is not in the dialog", name});
        edit->setFocus();
        edit->selectAll();
        type(edit, text);
    }
    void confirm()
    {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    }
    void selectTwenty()
    {
        table()->setFocus();
        press(table(), Qt::Key_Home, 1, Qt::ControlModifier);
        press(table(), Qt::Key_Down, 19, Qt::ShiftModifier);
    }
    QStringList selected() const
    {
        QStringList numbers;
        for (const QModelIndex &row : table()->selectionModel()->selectedRows())
            numbers << row.siblingAtColumn(boardColumn(u"order")).data().toString();
        return numbers;
    }

    QDate dayOf(const QString &order) const
    {
        return good(showOrder(m_workplace.records(), order)).order.dueDate;
    }

    void plan()
    {
        step(
            "twenty orders, selected", [this] { selectTwenty(); },
            [this] { return selected().size() == 20; });
        const QString first = selected().front();
        const QDate before = dayOf(first);
        assign();
        if (dayOf(first) != QDate(2026, 12, 2))
            stop({ErrorCode::Refused, "has not the new day", first});
        hold();
        saveDayLists();
        backToRows();
        takeBack("the hold, taken back");
        takeBack("the assignment, taken back");
        if (dayOf(first) != before)
            stop({ErrorCode::Refused, "has not the day before again", first});
    }
    void assign()
    {
        step(
            "assigned to an installer for another day",
            [this] {
                ask(Qt::Key_T);
                auto *list = dialog()->findChild<QComboBox *>("assign.installer");
                list->setFocus();
                press(list, Qt::Key_Down, 5);
                fill("assign.due_date", "20261202");
                fill("assign.due_because", "a van is in the workshop");
                confirm();
            },
            [this] { return notice().startsWith("20 orders assigned to ") && isRead(); });
    }
    void hold()
    {
        step(
            "put on hold",
            [this] {
                ask(Qt::Key_H);
                QTest::keyClick(QApplication::focusWidget(), Qt::Key_P); // plant
                fill("hold.because", "the cable is being spliced");
                confirm();
            },
            [this] { return notice().startsWith("20 orders on hold") && isRead(); });
    }
    void saveDayLists()
    {
        const QString pdf = m_folder + "/day.pdf";
        step(
            "the day lists of their installers, saved",
            [&] {
                ask(Qt::Key_P);
                QTest::keyClick(dialog()->findChild<QWidget *>("print.what"), Qt::Key_D);
                fill("print.day", "20261202");
                auto *path = dialog()->findChild<QLineEdit *>("print.path");
                path->setFocus();
                path->setText(pdf);
                confirm();
            },
            [&] { return notice().contains(pdf); });
    }
    void takeBack(const QString &what)
    {
        const QString before = notice();
        step(
            what, [this] { press(table(), Qt::Key_Z, 1, Qt::ControlModifier); },
            [&] { return notice() != before && notice().startsWith("Taken back: ") && isRead(); });
    }

    /// Another program writes; the row is another one within a second.
    void elsewhere()
    {
        auto other = good(Records::open(m_workplace.databasePath()));
        other->actAs(supervisor);
        other->setNow(morning);
        table()->setFocus();
        press(table(), Qt::Key_Home, 1, Qt::ControlModifier);
        const QString number = cell(0, u"order");
        step(
            "another desk's change, seen",
            [&] { good(cancelOrder(*other, number, "the customer moved")); },
            [&] { return isRead() && cell(0, u"order") != number; });
    }

    /// What is superseded makes way: how long the question after it waits for its answer.
    void makeWay()
    {
        Asker asker(m_workplace.questions());
        std::vector<double> waits;
        int tooEarly = 0; // the long one had answered already
        for (int times = 0; times < 40; ++times) {
            asker.ask<std::vector<AuditFinding>>(&auditIdentifiers,
                                                 [&tooEarly](const auto &) { ++tooEarly; });
            QTest::qWait(20 + 7 * times); // each time in another place of it
            bool answered = false;
            waits.push_back(msOf([&] {
                asker.supersede();
                asker.ask<int>([](Records &, const Progress &) -> Result<int> { return 1; },
                               [&answered](const auto &) { answered = true; });
                if (!QTest::qWaitFor([&answered] { return answered; }, waitMs))
                    stop({ErrorCode::Refused, "does not make way", "auditIdentifiers"});
            }));
        }
        std::printf("%46s %.1f ms, the longest %.1f ms, of %zu (%d ended before)\n",
                    "a question after a superseded one waits", median(waits),
                    *std::ranges::max_element(waits), waits.size(), tooEarly);
    }

    void openPages()
    {
        table()->setFocus();
        press(table(), Qt::Key_Home, 1, Qt::ControlModifier);
        const QString number = cell(0, u"order");
        const QString circuit = good(showOrder(m_workplace.records(), number)).order.circuit;
        // As an event of its own, so that it is timed as a piece.
        const auto page = [this](const QString &key, const QString &subject = {}) {
            step(
                "page: " + key,
                [&] {
                    QMetaObject::invokeMethod(
                        m_window.get(), [&] { m_window->showScreen(key, subject); },
                        Qt::QueuedConnection);
                },
                [&] { return m_window->current()->key() == key; });
        };
        const QString second = cell(1, u"order");
        page("job", number);
        page("board");
        page("job", second);
        page("circuit", circuit);
        page("order", number);
        for (const char *key : {"identifiers", "audit", "import", "register", "certificate",
                                "hazards", "loops", "reports", "bulk", "board"})
            page(key);
    }

    WatchedApplication &m_application;
    DesktopContext &m_workplace;
    QString m_folder;
    double m_emptyMb;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace

int main(int argc, char *argv[])
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    WatchedApplication application(argc, argv);
    const QStringList words = QApplication::arguments();
    if (words.size() != 2) {
        std::fprintf(stderr, "usage: bench.morning DATABASE\n");
        return 2;
    }
    static const QTemporaryDir folder(QFileInfo(words[1]).absolutePath() + "/morning-XXXXXX");
    const QString path = folder.filePath("records.sqlite");
    if (!folder.isValid() || !QFile::copy(words[1], path))
        stop({ErrorCode::DiskTrouble, "cannot be copied", words[1]});
    const double emptyMb = memoryOfEmptyWindow(folder.filePath("empty.sqlite"));
    const auto workplace = good(DesktopContext::open(path, supervisor, morning));
    Morning(application, *workplace, folder.path(), emptyMb).work();
    return 0;
}
