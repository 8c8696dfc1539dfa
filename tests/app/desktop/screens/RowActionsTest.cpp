// The dispatcher plans from the board, in the whole window: rows are selected by keys, planned by
// dialogs, and what was done is taken back by one key. Longer than 400 lines: the helpers that work
// window and dialog serve all of it.

#include "app/desktop/screens/RowActions.h"

#include "app/actions/History.h"
#include "app/actions/Orders.h"
#include "app/actions/Plans.h"
#include "app/desktop/screens/AskDialog.h"
#include "app/desktop/screens/BoardScreen.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskWindow.h"
#include "tests/support/FileDialog.h"
#include "tests/support/Heard.h"
#include "tests/support/PrintDialog.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QClipboard>
#include <QComboBox>
#include <QContextMenuEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>
#include <QPrinter>
#include <QPushButton>
#include <QScrollBar>
#include <QThread>

#include <atomic>

using namespace loopwright;

class RowActionsTest : public QObject, private DeskWindow
{
    Q_OBJECT

    QStringList selected() const
    {
        QStringList numbers;
        for (const QModelIndex &row : table()->selectionModel()->selectedRows())
            numbers << row.data().toString();
        numbers.sort();
        return numbers;
    }
    QString current() const { return orders().value(table()->currentIndex().row()); }
    ServiceOrder order(const QString &number) const
    {
        const auto view = showOrder(m_records->records(), number);
        return view ? view->order : ServiceOrder();
    }
    std::size_t events(const QString &number) const
    {
        return orderHistory(m_records->records(), number)->size();
    }
    /// The first rows of the board, by Shift and Down.
    void select(int rows) const
    {
        table()->setFocus();
        QTest::keyClick(table(), Qt::Key_Home, Qt::ControlModifier);
        for (int i = 1; i < rows; ++i)
            QTest::keyClick(table(), Qt::Key_Down, Qt::ShiftModifier);
    }
    AskDialog *dialog() const { return m_window->findChild<AskDialog *>(); }
    /// Opens the dialog by its key.
    void ask(Qt::Key key) const
    {
        QTest::keyClick(table(), key, Qt::ControlModifier);
        QTRY_VERIFY(dialog());
        dialog()->activateWindow();
        QTRY_COMPARE(QApplication::activeWindow(), dialog());
    }
    void type(const QString &field, const QString &text) const
    {
        auto *edit = dialog()->findChild<QLineEdit *>(field);
        QVERIFY2(edit && edit->isVisible(), qPrintable(field));
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, text);
    }
    void chooseInstaller(const QString &name) const
    {
        auto *list = dialog()->findChild<QComboBox *>("assign.installer");
        list->setFocus();
        QTest::keyClicks(list, name);
    }
    void confirm() const
    {
        QCOMPARE(QApplication::activeWindow(), dialog());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    }
    QString notice() const
    {
        return named<QWidget>("undo")->isVisible() ? named<SignLine>("undo.words")->text()
                                                   : QString();
    }
    /// The window has the keyboard again when a dialog is gone.
    void dialogGone() const
    {
        QTRY_VERIFY(!dialog());
        m_window->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
    }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        openWindow();
        QTRY_COMPARE(named<QLabel>("found")->text(), "8 orders");
        QCOMPARE(orders().mid(0, 4), (QStringList{"O-1001", "O-1002", "O-1003", "O-1004"}));
    }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
    }

    void rowsAreSelectedByKeys()
    {
        select(3);
        QCOMPARE(selected(), (QStringList{"O-1001", "O-1002", "O-1003"}));
        QVERIFY(named<QWidget>("rows")->isVisible());
        QCOMPARE(named<QLabel>("rows.count")->text(), "3 orders selected");
        QTest::keyClick(table(), Qt::Key_A, Qt::ControlModifier);
        QCOMPARE(selected().size(), 8);
        QCOMPARE(named<QLabel>("rows.count")->text(), "8 orders selected");
        // Esc lets go of all but the current one, and then of nothing more.
        QTest::keyClick(table(), Qt::Key_Escape);
        QCOMPARE(selected(), QStringList{"O-1003"});
        QCOMPARE(m_window->current()->key(), "board");
        // One here, one there.
        QTest::keyClick(table(), Qt::Key_Down, Qt::ControlModifier);
        QTest::keyClick(table(), Qt::Key_Down, Qt::ControlModifier);
        QTest::keyClick(table(), Qt::Key_Space, Qt::ControlModifier);
        QCOMPARE(selected().size(), 2);
        QCOMPARE(table()->currentIndex().row(), 4);
    }
    void aBoardWithoutRowsOffersNothing()
    {
        named<QLineEdit>("search")->setFocus();
        QTest::keyClicks(named<QLineEdit>("search"), "zzz");
        QTRY_COMPARE(orders().size(), 0);
        QVERIFY(!named<QWidget>("rows")->isVisible());
        QTest::keyClick(m_window.get(), Qt::Key_T, Qt::ControlModifier);
        QVERIFY(!dialog());
    }

    void assignsAndTakesBack()
    {
        select(3);
        const std::size_t before = events("O-1002");
        ask(Qt::Key_T);
        chooseInstaller("N.");
        type("assign.due_date", "20260309");
        type("assign.due_because", "the customer is away");
        confirm();
        dialogGone();
        QTRY_COMPARE(notice(), "3 orders assigned to N. Okafor for Mon 9 Mar.");
        for (const char *number : {"O-1001", "O-1002", "O-1003"}) {
            QCOMPARE(order(number).installer, "okafor");
            QCOMPARE(order(number).dueDate, QDate(2026, 3, 9));
            QCOMPARE(order(number).dueBecause, "the customer is away");
        }
        QCOMPARE(order("O-1001").firstDueDate, "2026-03-02");
        QCOMPARE(events("O-1002"), before + 1);
        // They stand elsewhere now and are selected still.
        QTRY_COMPARE(orders().first(), "O-1004");
        QCOMPARE(selected(), (QStringList{"O-1001", "O-1002", "O-1003"}));
        QCOMPARE(current(), "O-1003");

        QTest::keyClick(table(), Qt::Key_Z, Qt::ControlModifier);
        QTRY_COMPARE(notice(), "Taken back: 3 orders assigned to N. Okafor for Mon 9 Mar.");
        QCOMPARE(order("O-1001").installer, "rivera");
        QCOMPARE(order("O-1001").dueDate, QDate(2026, 3, 2));
        QCOMPARE(order("O-1001").firstDueDate, "");
        QCOMPARE(events("O-1002"), before + 2); // as a further event
        QTRY_COMPARE(orders().first(), "O-1001");
        QCOMPARE(selected(), (QStringList{"O-1001", "O-1002", "O-1003"}));
        QVERIFY(!named<QAction>("action.undo")->isEnabled());
    }
    void theListOfInstallersTellsWhatEachHasOnTheDay()
    {
        select(1);
        ask(Qt::Key_T);
        const auto *list = dialog()->findChild<QComboBox *>("assign.installer");
        const auto label = [list](const QString &key) {
            return list->itemText(list->findData(key));
        };
        QTRY_COMPARE(label("rivera"), "A. Rivera · 1 on Mon 2 Mar"); // O-1001 itself
        QCOMPARE(label("okafor"), "N. Okafor · 0 on Mon 2 Mar");
        QCOMPARE(list->currentData().toString(), "rivera");
        type("assign.due_date", "20260305");
        QTRY_COMPARE(label("okafor"), "N. Okafor · 1 on Thu 5 Mar");
        QCOMPARE(label("rivera"), "A. Rivera · 0 on Thu 5 Mar");
        // What is cancelled is no load.
        QVERIFY(cancelOrder(*m_records->elsewhere(), "O-1003", "the customer moved"));
        type("assign.due_date", "20260306");
        QTRY_COMPARE(label("okafor"), "N. Okafor · 1 on Fri 6 Mar");
        type("assign.due_date", "20260305");
        QTRY_COMPARE(label("okafor"), "N. Okafor · 0 on Thu 5 Mar");
        auto *day = dialog()->findChild<QLineEdit *>("assign.due_date");
        day->selectAll();
        QTest::keyClick(day, Qt::Key_Delete); // each keeps its day
        QTRY_COMPARE(label("okafor"), "N. Okafor");
        QCOMPARE(list->currentData().toString(), "rivera");
    }
    void assigningOffersTheOthersAtThePremises()
    {
        select(1);
        ask(Qt::Key_T);
        QVERIFY(!dialog()->findChild<QWidget *>("assign.premises")->isVisible());
        QTest::keyClick(dialog(), Qt::Key_Escape);
        dialogGone();
        QVERIFY(changePlans(m_records->records(), {{"O-1003", {{"premises", "12 Mill Lane"}}}}));
        select(1);
        ask(Qt::Key_T);
        auto *others = dialog()->findChild<QWidget *>("assign.premises");
        QVERIFY(others->isVisible());
        QCOMPARE(dialog()->form()->field("premises")->sentence(), "O-1003");
        auto *because = dialog()->findChild<QLineEdit *>("assign.due_because");
        QVERIFY(!because->isVisible()); // O-1001 keeps its day
        chooseInstaller("N.");
        others->setFocus();
        QTest::keyClick(others, Qt::Key_Y);
        QVERIFY(because->isVisible()); // the other one does not
        confirm();
        QVERIFY(dialog());
        QCOMPARE(order("O-1003").dueDate, QDate(2026, 3, 5));
        type("assign.due_because", "one way for both");
        confirm();
        dialogGone();
        QTRY_COMPARE(notice(), "2 orders assigned to N. Okafor for Mon 2 Mar.");
        for (const char *number : {"O-1001", "O-1003"}) {
            QCOMPARE(order(number).installer, "okafor");
            QCOMPARE(order(number).dueDate, QDate(2026, 3, 2));
        }
        QTest::keyClick(table(), Qt::Key_Z, Qt::ControlModifier);
        QTRY_COMPARE(notice(), "Taken back: 2 orders assigned to N. Okafor for Mon 2 Mar.");
        QCOMPARE(order("O-1001").installer, "rivera");
        QCOMPARE(order("O-1003").dueDate, QDate(2026, 3, 5));
    }
    void aDayThatMovesAsksForItsReason()
    {
        select(1);
        ask(Qt::Key_D);
        auto *because = dialog()->findChild<QLineEdit *>("redate.due_because");
        QVERIFY(!because->isVisible());
        QCOMPARE(dialog()->findChild<QLineEdit *>("redate.due_date")->text(), "2026-03-02");
        type("redate.due_date", "2026-03-06");
        QVERIFY(because->isVisible());
        confirm();
        QVERIFY(dialog());
        QVERIFY(dialog()->isEnabled());
        QCOMPARE(QApplication::focusWidget(), because);
        QCOMPARE(order("O-1001").dueDate, QDate(2026, 3, 2));
        type("redate.due_because", "snow");
        confirm();
        dialogGone();
        QTRY_COMPARE(notice(), "Order O-1001 moved to Fri 6 Mar.");
        QTRY_COMPARE(named<SignLine>("side.plan")->text(),
                     "The first day was 2 Mar 2026; moved because: snow.");
    }
    void aRefusalNamesTheOrdersAndLeavesEverything()
    {
        select(3);
        ask(Qt::Key_T);
        chooseInstaller("N.");
        const auto records = m_records->elsewhere();
        QVERIFY(cancelOrder(*records, "O-1001", "the customer moved"));
        QVERIFY(cancelOrder(*records, "O-1003", "the customer moved"));
        named<QAbstractButton>("chip.open.1")->click(); // so that they stay on the board
        QTRY_COMPARE(orders().size(), 8);
        confirm();
        auto *told = dialog()->form()->findChild<SignLine *>();
        QTRY_COMPARE(told->text(), "Order O-1001 is cancelled and cannot be changed. "
                                   "Order O-1003 is cancelled and cannot be changed.");
        QVERIFY(dialog()->isVisible() && dialog()->isEnabled());
        QCOMPARE(dialog()->findChild<QComboBox *>("assign.installer")->currentText(), "N. Okafor");
        QCOMPARE(selected(), (QStringList{"O-1001", "O-1002", "O-1003"}));
        QCOMPARE(order("O-1002").installer, "rivera");
        QCOMPARE(notice(), "");
    }
    void holdsAndResumes()
    {
        select(2);
        ask(Qt::Key_H);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_P); // plant
        type("hold.because", "the drop wire is down");
        confirm();
        dialogGone();
        QTRY_COMPARE(notice(), "2 orders on hold, waiting on plant.");
        QCOMPARE(order("O-1002").waitingBecause, "the drop wire is down");
        QTRY_COMPARE(named<SignLine>("side.plan")->text(),
                     "On hold, waits on plant: the drop wire is down.");
        // One of three is not on hold: none is resumed, and it is said where one looks.
        select(3);
        Heard heard;
        QTest::keyClick(table(), Qt::Key_H, Qt::ControlModifier | Qt::ShiftModifier);
        QTRY_COMPARE(named<SignLine>("rows.told")->text(), "Order O-1003 is not on hold.");
        QCOMPARE(heard.take(), QStringList("Order O-1003 is not on hold."));
        QVERIFY(named<SignLine>("rows.told")->isVisible());
        QCOMPARE(selected().size(), 3);
        QVERIFY(order("O-1001").isOnHold());
        select(2);
        QVERIFY(!named<SignLine>("rows.told")->isVisible());
        QTest::keyClick(table(), Qt::Key_H, Qt::ControlModifier | Qt::ShiftModifier);
        QTRY_COMPARE(notice(), "2 orders resumed.");
        QVERIFY(!order("O-1001").isOnHold());
        // Two steps back, one after the other.
        QTest::keyClick(table(), Qt::Key_Z, Qt::ControlModifier);
        QTRY_COMPARE(notice(), "Taken back: 2 orders resumed.");
        QVERIFY(order("O-1001").isOnHold());
        QTest::keyClick(table(), Qt::Key_Z, Qt::ControlModifier);
        QTRY_COMPARE(notice(), "Taken back: 2 orders on hold, waiting on plant.");
        QVERIFY(!order("O-1001").isOnHold());
    }
    void cancelsWithAReasonAndForGood()
    {
        const auto askToCancel = [this] {
            named<QAction>("rows.cancel_order")->trigger();
            QTRY_VERIFY(dialog());
            dialog()->activateWindow();
            QTRY_COMPARE(QApplication::activeWindow(), dialog());
        };
        const auto status = [this](const char *number) {
            return showOrder(m_records->records(), number)->status;
        };
        select(2);
        askToCancel();
        confirm(); // without a reason
        QVERIFY(dialog()->isVisible());
        QCOMPARE(status("O-1001"), OrderStatus::Open);
        type("cancel_order.because", "the customer moved");
        // All or none: one of them was completed or cancelled meanwhile.
        QVERIFY(cancelOrder(*m_records->elsewhere(), "O-1002", "nobody wants it"));
        confirm();
        auto *told = dialog()->form()->findChild<SignLine *>();
        QTRY_COMPARE(told->text(), "Order O-1002 is cancelled already.");
        QCOMPARE(status("O-1001"), OrderStatus::Open);
        QTest::keyClick(dialog(), Qt::Key_Escape);
        dialogGone();
        QTRY_COMPARE(orders().mid(0, 2), (QStringList{"O-1001", "O-1003"}));
        select(2);
        askToCancel();
        type("cancel_order.because", "the customer moved");
        confirm();
        dialogGone();
        QTRY_COMPARE(notice(), "2 orders cancelled.");
        QVERIFY(!named<QAbstractButton>("undo.take_back")->isVisible());
        for (const char *number : {"O-1001", "O-1003"}) {
            QCOMPARE(status(number), OrderStatus::Cancelled);
            const auto history = orderHistory(m_records->records(), number);
            QCOMPARE(history->back().kind, "order_cancelled");
            QCOMPARE(history->back().detail["because"].toString(), "the customer moved");
        }
        QTRY_VERIFY(!orders().contains("O-1001"));
        // What is not open cannot be cancelled.
        named<QAbstractButton>("chip.open.1")->click();
        QTRY_COMPARE(orders().size(), 8);
        QTRY_VERIFY(orders().contains("O-1001"));
        const QModelIndex row =
            table()->model()->index(int(orders().indexOf("O-1001")), boardColumn(u"order"));
        QTest::mouseClick(table()->viewport(), Qt::LeftButton, {},
                          table()->visualRect(row).center());
        const auto shown = [this] { return named<QLabel>("rows.count")->text(); };
        QTRY_COMPARE(shown(), "Order O-1001");
        QTRY_VERIFY(!named<QAction>("rows.cancel_order")->isEnabled());
        select(8); // some among them are
        QTRY_VERIFY(named<QAction>("rows.cancel_order")->isEnabled());
    }
    void onlyTheDeskCancels()
    {
        m_records->workplace().actAs("okafor");
        select(1);
        named<QAction>("rows.cancel_order")->trigger();
        QTRY_VERIFY(dialog());
        dialog()->activateWindow();
        QTRY_COMPARE(QApplication::activeWindow(), dialog());
        type("cancel_order.because", "no time");
        confirm();
        auto *told = dialog()->form()->findChild<SignLine *>();
        QTRY_VERIFY2(told->text().contains("needs a dispatcher"), qPrintable(told->text()));
        QCOMPARE(showOrder(m_records->records(), "O-1001")->status, OrderStatus::Open);
    }
    void undoIsRefusedOverAnothersChange()
    {
        select(2);
        ask(Qt::Key_T);
        chooseInstaller("N.");
        confirm();
        dialogGone();
        QTRY_COMPARE(notice(), "2 orders assigned to N. Okafor.");
        const auto records = m_records->elsewhere();
        QVERIFY(assignOrders(*records, {{"O-1002"}, "lind"}));
        named<QAbstractButton>("undo.take_back")->click();
        QTRY_COMPARE(notice(),
                     "Not taken back: 2 orders assigned to N. Okafor. Order O-1002 was changed "
                     "again since then: its installer is \"lind\" now. Nothing was taken back.");
        QCOMPARE(named<SignLine>("undo.words")->sign(), Status::Failed);
        QCOMPARE(order("O-1001").installer, "okafor");
        QVERIFY(!named<QAbstractButton>("undo.take_back")->isVisible());
    }
    void onlyTheDeskPlans()
    {
        m_records->workplace().actAs("okafor");
        select(2);
        ask(Qt::Key_T);
        chooseInstaller("N.");
        confirm();
        auto *told = dialog()->form()->findChild<SignLine *>();
        QTRY_VERIFY2(told->text().contains("needs a dispatcher"), qPrintable(told->text()));
        QCOMPARE(order("O-1001").installer, "rivera");
        // Esc lets go of the dialog alone.
        QTest::keyClick(dialog(), Qt::Key_Escape);
        dialogGone();
        QCOMPARE(selected().size(), 2);
    }

    void deskWorkIsRecordedForAllOfThem()
    {
        Records &records = m_records->records();
        QVERIFY(changePlans(records, {{"O-1003", {{"related_order", "O-1001"}}}}));
        QTest::keyClick(m_window.get(), Qt::Key_F5);
        select(2);
        ask(Qt::Key_K);
        auto *related = dialog()->findChild<QWidget *>("desk.related");
        QVERIFY(!related->isVisible());
        QCOMPARE(dialog()->findChild<QLineEdit *>("desk.by")->text(), "S. Lind");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_R); // released
        QVERIFY(related->isVisible());
        QCOMPARE(QApplication::focusWidget(), related); // O-1003 is offered
        QTest::keyClick(related, Qt::Key_Y);
        type("desk.at", "0805");
        confirm();
        dialogGone();
        QTRY_COMPARE(notice(), "3 orders: released.");
        const auto released = [&records](const QString &number) {
            const auto view = showOrder(records, number);
            return std::ranges::count_if(view->facts, [](const FactView &each) {
                const auto *desk = each.fact.as<DeskFact>();
                return desk && !each.voided && desk->what == DeskWhat::Released &&
                       desk->by == "S. Lind" &&
                       each.fact.at == *Moment::parse(u"2026-03-04T08:05:00-06:00");
            });
        };
        for (const char *number : {"O-1001", "O-1002", "O-1003"})
            QCOMPARE(released(number), 1);
        QTRY_VERIFY2(named<SignLine>("side.desk")->text().startsWith("Released, "),
                     qPrintable(named<SignLine>("side.desk")->text()));
        QTest::keyClick(table(), Qt::Key_Z, Qt::ControlModifier);
        QTRY_COMPARE(notice(), "Taken back: 3 orders: released.");
        for (const char *number : {"O-1001", "O-1002", "O-1003"})
            QCOMPARE(released(number), 0);
    }
    void papersOfAllOfThemInOneFile()
    {
        select(3);
        ask(Qt::Key_P);
        QVERIFY(dialog()->findChild<QPushButton *>("print.print"));
        const QString path = m_records->path("cards.pdf");
        filing::answer(path);
        dialog()->findChild<QPushButton *>("print.path.choose")->click();
        dialog()->activateWindow();
        QTRY_COMPARE(QApplication::activeWindow(), dialog());
        QVERIFY(!dialog()->findChild<QPushButton *>("print.folder.choose")->isVisible());
        dialog()->findChild<QLineEdit *>("print.path")->setFocus();
        confirm();
        dialogGone();
        QFile pdf(path);
        QVERIFY(pdf.open(QIODevice::ReadOnly));
        QVERIFY(pdf.read(5) == "%PDF-");
        QTRY_COMPARE(notice(), "3 settings cards saved: " + path + ".");
        QVERIFY(!named<QAbstractButton>("undo.take_back")->isVisible()); // of nothing
        // Of certificates there is none yet: it is told, and the dialog stays.
        ask(Qt::Key_P);
        dialog()->findChild<QWidget *>("print.what")->setFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_C);
        type("print.folder", m_records->path("certificates"));
        confirm();
        auto *told = dialog()->form()->findChild<SignLine *>();
        QTRY_VERIFY2(told->text().startsWith("None of these has such a paper. O-1001: "),
                     qPrintable(told->text()));
        QVERIFY(dialog()->isVisible());
    }
    void slipsAreAmongThePapers()
    {
        select(2);
        ask(Qt::Key_P);
        dialog()->findChild<QWidget *>("print.what")->setFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_L);
        const QString path = m_records->path("slips.pdf");
        type("print.path", path);
        confirm();
        dialogGone();
        QTRY_COMPARE(notice(), "2 slips for customers saved: " + path + ".");
        QVERIFY(certificates::run("pdftotext", {path, "-"}).text.contains("O-1002"));
        // For the desk there is none before they are accepted.
        ask(Qt::Key_P);
        dialog()->findChild<QWidget *>("print.what")->setFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_O);
        type("print.path", path);
        confirm();
        auto *told = dialog()->form()->findChild<SignLine *>();
        QTRY_VERIFY2(told->text().contains("O-1001: order O-1001 is not accepted"),
                     qPrintable(told->text()));
    }
    void papersArePrintedOnThePageThatIsChosen()
    {
        select(2);
        ask(Qt::Key_P);
        const QString path = m_records->path("printed.pdf");
        printing::agree(path, printing::letterOnItsSide);
        dialog()->findChild<QPushButton *>("print.print")->click();
        dialogGone();
        QTRY_COMPARE(notice(), "2 settings cards printed.");
        const QString pages = printing::pagesOf(path);
        QVERIFY2(pages.endsWith("pages, 612 x 792 pts (letter)"), qPrintable(pages));
    }
    void papersThatAreMadeCanBeStopped()
    {
        select(3);
        ask(Qt::Key_P);
        const QString path = m_records->path("cards.pdf");
        type("print.path", path);
        auto *work = dialog()->findChild<QWidget *>("print.work");
        QVERIFY(work && !work->isVisible());
        confirm();
        QVERIFY(work->isVisible());
        QVERIFY(!dialog()->form()->isEnabled());
        dialog()->reject(); // it stays until it is done or stopped
        QVERIFY(dialog()->isVisible());
        work->findChild<QPushButton *>("print.work.stop")->click();
        auto *told = dialog()->form()->findChild<SignLine *>();
        QTRY_COMPARE(told->text(), "It was stopped; nothing was written.");
        QVERIFY(!work->isVisible() && dialog()->form()->isEnabled());
        QVERIFY(!QFile::exists(path));
        confirm(); // the same once more
        dialogGone();
        QVERIFY(QFile::exists(path));
    }
    /// On a printer too, or the window would stand still.
    void papersArePaintedBesideTheWindow()
    {
        struct WatchedPrinter : QPrinter
        {
            QPaintEngine *paintEngine() const override
            {
                painting = QThread::currentThread();
                return QPrinter::paintEngine();
            }
            mutable std::atomic<QThread *> painting = nullptr;
        };
        select(3);
        auto *actions = named<RowActions>("rows");
        const auto printer = std::make_shared<WatchedPrinter>();
        printer->setOutputFormat(QPrinter::PdfFormat);
        printer->setOutputFileName(m_records->path("printed.pdf"));
        printer->painting = nullptr;
        actions->printOn(printer, {actions->rows(), {}, {}, m_records->records().now()},
                         {{"what", "settings"}});
        QTRY_COMPARE(notice(), "3 settings cards printed.");
        QVERIFY(printer->painting && printer->painting != QThread::currentThread());
        QVERIFY(QFile::exists(m_records->path("printed.pdf")));
    }
    void whatTheFormOfAnOrderChangesIsTakenBackToo()
    {
        m_window->editOrder("O-1002");
        auto *remarks = m_window->screen("order")->findChild<QPlainTextEdit *>("order.remarks");
        QVERIFY(remarks);
        remarks->setFocus();
        remarks->selectAll();
        QTest::keyClicks(remarks, "side door");
        QTest::keyClick(remarks, Qt::Key_S, Qt::ControlModifier);
        QTRY_COMPARE(notice(), "Order O-1002 is changed.");
        QCOMPARE(order("O-1002").remarks, "side door");
        named<QAbstractButton>("undo.take_back")->click();
        QTRY_COMPARE(notice(), "Taken back: Order O-1002 is changed.");
        QCOMPARE(order("O-1002").remarks, "ring twice");
    }

    void selectionAndPlaceStayWhenRowsChange()
    {
        QAbstractItemModelTester tester(table()->model(),
                                        QAbstractItemModelTester::FailureReportingMode::QtTest);
        QByteArray rows = DeskRecords::orderHeader();
        for (int i = 0; i < 200; ++i) {
            const QByteArray n = QByteArray::number(1000 + i);
            rows += "P-" + n + ",new," +
                    QDate(2026, 5, 1).addDays(i).toString(Qt::ISODate).toUtf8() +
                    ",Long Row,1 Long Row,L-" + n + ",analog,NORTH,,55-" + n + ",voice,,217-556-" +
                    n + ",,,,,,no,,\n";
        }
        m_records->take(importOrders(m_records->records(), rows, {}));
        QTest::keyClick(m_window.get(), Qt::Key_F5);
        QTRY_COMPARE(orders().size(), 208);
        table()->setFocus();
        table()->setCurrentIndex(table()->model()->index(100, boardColumn(u"order")));
        for (int i = 0; i < 3; ++i)
            QTest::keyClick(table(), Qt::Key_Down, Qt::ShiftModifier);
        const QStringList chosen = selected();
        QCOMPARE(chosen.size(), 4);
        const QString now = current();
        table()->verticalScrollBar()->setValue(95);
        const QString top = orders()[table()->firstInView()];

        // Before them a row comes, one of them goes, one moves.
        const auto records = m_records->elsewhere();
        m_records->take(importOrders(*records,
                                     DeskRecords::orderHeader() +
                                         "O-0900,new,2026-03-01,Early Bird,1 First Street,C-590,"
                                         "analog,NORTH,,17-290,voice,,217-555-0190,,,,,,no,,\n",
                                     {}));
        QVERIFY(cancelOrder(*records, chosen[1], "the customer moved"));
        QVERIFY(moveOrders(*records, {chosen[0]}, QDate(2027, 1, 1), "snow"));
        QTRY_VERIFY_WITH_TIMEOUT(orders().contains("O-0900") && !orders().contains(chosen[1]),
                                 2000);
        QTRY_COMPARE(orders().last(), chosen[0]);
        QCOMPARE(selected(), (QStringList{chosen[0], chosen[2], chosen[3]}));
        QCOMPARE(current(), now);
        QCOMPARE(orders()[table()->firstInView()], top);
        // And the keys go on from the current row.
        const QString next = orders()[table()->currentIndex().row() + 1];
        QTest::keyClick(table(), Qt::Key_Down, Qt::ShiftModifier);
        QCOMPARE(current(), next);
        QCOMPARE(selected(), (QStringList{now, next}));
    }
    /// Ctrl+A means the rows of the view, those too that nobody has looked at.
    void allRowsOfTheViewAreSelected()
    {
        QByteArray rows = DeskRecords::orderHeader();
        const int more = 2 * boardRowsAtOnce; // so many F5 reads
        for (int i = 0; i < more; ++i) {
            const QByteArray n = QByteArray::number(1000 + i);
            rows += "P-" + n + ",new,2026-05-01,Long Row,1 Long Row,L-" + n + ",analog,NORTH,,55-" +
                    n + ",voice,,217-556-" + n + ",,,,,,no,,\n";
        }
        m_records->take(importOrders(m_records->records(), rows, {}));
        QTest::keyClick(m_window.get(), Qt::Key_F5);
        QTRY_COMPARE(named<QLabel>("found")->text(), QString("%1 orders").arg(more + 8));
        table()->setFocus();
        QTest::keyClick(table(), Qt::Key_A, Qt::ControlModifier);
        const auto *actions = named<RowActions>("rows");
        QTRY_COMPARE(actions->rows().size(), std::size_t(more + 8));
        QCOMPARE(named<QLabel>("rows.count")->text(), QString("%1 orders selected").arg(more + 8));
        QCOMPARE(actions->rows().back().order, "P-1799");
        QTest::keyClick(table(), Qt::Key_C, Qt::ControlModifier);
        const QStringList lines = QGuiApplication::clipboard()->text().trimmed().split('\n');
        QCOMPARE(lines.size(), more + 8);
        QVERIFY(lines.last().startsWith("P-1799\t"));
        // They stay selected while rows change under them.
        const auto records = m_records->elsewhere();
        QVERIFY(moveOrders(*records, {"P-1799"}, QDate(2026, 1, 2), "asked for"));
        QTRY_COMPARE_WITH_TIMEOUT(orders().first(), "P-1799", 5000);
        QTRY_COMPARE(actions->rows().size(), std::size_t(more + 8));

        // Too many for one step are not taken, and that is said.
        m_window->findChild<BoardScreen *>()->setMostSelected(500);
        QTest::keyClick(table(), Qt::Key_A, Qt::ControlModifier);
        QTRY_COMPARE(named<QLabel>("rows.count")->text(), "The first 500 orders selected");
        QCOMPARE(table()->selectionModel()->selectedRows().size(), 500);
        // Another row alone is what is selected then.
        QTest::keyClick(table(), Qt::Key_Down);
        QTRY_COMPARE(actions->rows().size(), std::size_t(1));
    }
    /// What the own step takes out of the filter goes, and what stays is selected still.
    void whatLeavesTheFilterLeavesTheSelection()
    {
        auto *combo = named<QComboBox>("filter.installer");
        combo->setCurrentIndex(combo->findData("rivera"));
        emit combo->activated(combo->currentIndex());
        QTRY_COMPARE(orders(), (QStringList{"O-1001", "O-1002", "O-1007"}));
        select(2);
        ask(Qt::Key_T);
        chooseInstaller("N.");
        confirm();
        dialogGone();
        QTRY_COMPARE(orders(), QStringList{"O-1007"});
        QCOMPARE(selected(), QStringList{"O-1007"});
        QTest::keyClick(table(), Qt::Key_Z, Qt::ControlModifier);
        QTRY_COMPARE(orders(), (QStringList{"O-1001", "O-1002", "O-1007"}));
    }
    void theMenuOpensByKeyAtTheRow()
    {
        select(2);
        auto *menu = named<QMenu>("rows.menu");
        QTimer::singleShot(0, menu, [this, menu] {
            QTRY_VERIFY(menu->isVisible());
            QVERIFY(menu->actions().size() >= 4);
            QVERIFY(named<QAction>("rows.assign")->isEnabled());
            QCOMPARE(menu->actions().first()->objectName(), "rows.open");
            menu->findChild<QAction *>("copy.cell")->trigger();
            menu->close();
        });
        const QPoint middle = table()->viewport()->rect().center();
        QContextMenuEvent event(QContextMenuEvent::Keyboard, middle,
                                table()->viewport()->mapToGlobal(middle));
        QApplication::sendEvent(table()->viewport(), &event);
        QTRY_VERIFY(!menu->isVisible());
        QCOMPARE(selected().size(), 2);
        QCOMPARE(QGuiApplication::clipboard()->text(), "O-1002"); // the current one
        menu->findChild<QAction *>("copy.rows")->trigger();
        const QString rows = QGuiApplication::clipboard()->text();
        QCOMPARE(rows.count('\n'), 2);
        QVERIFY2(rows.startsWith("O-1001\t") && rows.contains("\nO-1002\t"), qPrintable(rows));
    }
    void aMissedDateIsAFilter()
    {
        named<QAbstractButton>("chip.due.missed")->click();
        QTRY_COMPARE(orders(), QStringList{"O-1001"});
        select(1);
        QVERIFY(moveOrders(m_records->records(), {"O-1001"}, QDate(2026, 6, 1), "no access"));
        QTest::keyClick(m_window.get(), Qt::Key_F5);
        const QModelIndex due = table()->model()->index(0, boardColumn(u"due"));
        QTRY_VERIFY(due.data(Qt::ToolTipRole).toString().contains("First promised for 2 Mar"));
        QTRY_COMPARE(named<QLabel>("found")->text(), "1 order"); // it stays missed
        QCOMPARE(m_window->findChild<BoardScreen *>()
                     ->place()
                     .value("filters")
                     .toObject()
                     .value("due")
                     .toString(),
                 "missed");
    }
    void whatIsDueSoonIsAtRisk()
    {
        // Wednesday, 4 March, to Friday; O-1001 was due before.
        named<QAbstractButton>("chip.due.at_risk")->click();
        QTRY_COMPARE(orders(), (QStringList{"O-1002", "O-1003", "O-1004"}));
        const QModelIndex due = table()->model()->index(0, boardColumn(u"due"));
        QVERIFY(!due.data(Qt::DecorationRole).isNull());
        QVERIFY(due.data(Qt::AccessibleTextRole).toString().endsWith(", at risk"));
        QVERIFY(due.data(Qt::ToolTipRole).toString().startsWith("At risk: "));
    }
};

QTEST_MAIN(RowActionsTest)
#include "RowActionsTest.moc"
