// The board as a dispatcher's desk, in the whole window: what it opens on, what comes back, boards
// under names, sort, keys, and what another program changes under it. Longer than 400 lines: the
// helpers that work the window serve all of it.

#include "app/actions/Certificates.h"
#include "app/actions/Orders.h"
#include "app/actions/Plans.h"
#include "app/desktop/screens/BoardScreen.h"
#include "app/desktop/widgets/ChipRow.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskWindow.h"
#include "tests/support/Office.h"

#include <QAction>
#include <QComboBox>
#include <QHeaderView>
#include <QInputDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>

using namespace loopwright;

class BoardDeskTest : public QObject, private DeskWindow
{
    Q_OBJECT

    QString cell(const QString &order, QStringView column) const
    {
        const qsizetype row = orders().indexOf(order);
        return table()->model()->index(int(row), boardColumn(column)).data().toString();
    }
    QString found() const { return named<QLabel>("found")->text(); }
    void choose(const QString &name, const QString &value) const
    {
        auto *combo = named<QComboBox>("filter." + name);
        combo->setFocus();
        const int place = combo->findData(value);
        QVERIFY2(place > 0, qPrintable(name + " " + value));
        combo->setCurrentIndex(place);
        emit combo->activated(place);
    }
    void clickHead(QStringView column) const
    {
        const QHeaderView *head = table()->horizontalHeader();
        const int section = boardColumn(column);
        QTest::mouseClick(head->viewport(), Qt::LeftButton, {},
                          {head->sectionViewportPosition(section) + 20, head->height() / 2});
    }
    void select(const QString &order) const
    {
        table()->setCurrentIndex(
            table()->model()->index(int(orders().indexOf(order)), boardColumn(u"order")));
    }
    /// The entry of a menu, as it is filled when it is shown.
    QAction *entry(const QString &menuName, const QString &name) const
    {
        auto *menu = named<QMenu>(menuName);
        emit menu->aboutToShow();
        return menu->findChild<QAction *>(name) ? menu->findChild<QAction *>(name)
                                                : m_window->findChild<QAction *>(name);
    }
    /// Types a name into the dialog that a menu's entry opens, and takes it.
    void withName(const QString &menuEntry, const QString &name) const
    {
        QTimer::singleShot(0, m_window.get(), [this, name] {
            auto *dialog = m_window->findChild<QInputDialog *>("boards.name");
            QVERIFY(dialog);
            auto *field = dialog->findChild<QLineEdit *>();
            field->selectAll();
            QTest::keyClicks(field, name);
            QTest::keyClick(field, Qt::Key_Return);
        });
        entry("boards.menu", menuEntry)->trigger();
        m_window->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
    }
    /// So many more orders, due on one day each.
    void takeMore(Records &records, int count, const QDate &first) const
    {
        QByteArray rows = DeskRecords::orderHeader();
        for (int i = 0; i < count; ++i) {
            const QByteArray n = QByteArray::number(1000 + i);
            rows += "P-" + n + ",new," + first.addDays(i).toString(Qt::ISODate).toUtf8() +
                    ",Long Row,1 Long Row,L-" + n + ",analog,NORTH,,55-" + n + ",voice,,217-556-" +
                    n + ",,,,,,no,,\n";
        }
        m_records->take(importOrders(records, rows, {}));
    }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        QVERIFY(cancelOrder(m_records->records(), "O-1003", "the customer moved"));
        openWindow();
        QTRY_COMPARE(found(), "7 orders");
    }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
    }

    void opensOnWhatIsOpenByDueDate()
    {
        QCOMPARE(orders(), (QStringList{"O-1001", "O-1002", "O-1004", "O-1008", "O-1006", "O-1005",
                                        "O-1007"}));
        QVERIFY(named<QAbstractButton>("chip.open.1")->isChecked());
        const QHeaderView *head = table()->horizontalHeader();
        QVERIFY(head->isSortIndicatorShown());
        QCOMPARE(head->sortIndicatorSection(), boardColumn(u"due"));
        QCOMPARE(head->sortIndicatorOrder(), Qt::AscendingOrder);
        named<QAbstractButton>("chip.open.1")->click(); // the others too
        QTRY_COMPARE(found(), "8 orders");
        QVERIFY(orders().contains("O-1003"));
    }

    void whyItIsNotAcceptedStandsInView()
    {
        const int column = boardColumn(u"why");
        const QHeaderView *head = table()->horizontalHeader();
        QCOMPARE(m_window->width(), 1300);
        QVERIFY(named<QWidget>("side")->isVisible()); // and beside it the selected order
        const int left = head->sectionViewportPosition(column);
        QVERIFY(left >= 0);
        QVERIFY2(left + head->sectionSize(column) <= table()->viewport()->width(),
                 qPrintable(QString("%1 + %2 of %3")
                                .arg(left)
                                .arg(head->sectionSize(column))
                                .arg(table()->viewport()->width())));
        QVERIFY(head->sectionSize(column) >= em(20));
        QVERIFY(cell("O-1002", u"why").startsWith("Layer 3: "));
    }

    /// Circuits and people that the search names stand beside the filters, and lead there.
    void aSearchFindsCircuitsAndPeople()
    {
        const auto *board = m_window->findChild<BoardScreen *>();
        QSignalSpy circuits(board, &Screen::openCircuit);
        auto *search = named<QLineEdit>("search");
        search->setFocus();
        QTest::keyClicks(search, "C-502");
        auto *first = named<QPushButton>("found.1");
        QTRY_VERIFY(first->isVisible());
        QCOMPARE(first->text(), "Circuit C-502");
        QTest::mouseClick(first, Qt::LeftButton);
        QCOMPARE(circuits.size(), 1);
        QCOMPARE(circuits.front().front().toString(), "C-502");
        search->selectAll();
        QTest::keyClicks(search, "rivera");
        QTRY_COMPARE(first->text(), "Orders of A. Rivera");
        QVERIFY(!named<QPushButton>("found.2")->isVisible());
        first->setFocus();
        QTest::keyClick(first, Qt::Key_Space);
        QTRY_VERIFY(search->text().isEmpty() && !first->isVisible());
        QCOMPARE(named<QComboBox>("filter.installer")->currentData().toString(), "rivera");
        QTRY_VERIFY(!orders().isEmpty());
        QVERIFY(table()->hasFocus());
    }

    void anOpenHazardIsToldWithItsAge()
    {
        QJsonObject card = jobs::safety(901, 5, 118);
        card["at"] = "2026-03-01T08:05:00-06:00";
        const QJsonObject file{
            {"order", "O-1001"}, {"installer", "rivera"}, {"facts", QJsonArray{card}}};
        QVERIFY(recordFile(m_records->records(), canonicalJson(file), "hazard.json"));
        QTest::keyClick(m_window.get(), Qt::Key_F5);
        QTRY_VERIFY(cell("O-1001", u"why").startsWith("Open for 3 days. Hazard: 118 V AC"));
        select("O-1002");
        select("O-1001");
        auto *hazard = named<SignLine>("side.hazard");
        QTRY_VERIFY2(hazard->isVisible() &&
                         hazard->text().startsWith("Open for 3 days. Hazard: 118 V AC"),
                     qPrintable(hazard->text()));
        QCOMPARE(hazard->sign(), Status::Failed);
        select("O-1002");
        QTRY_VERIFY(!hazard->isVisible());
    }

    void whenAndWhomToMeetStandsAtTheSelectedOrder()
    {
        QVERIFY(changePlans(m_records->records(), {{"O-1001",
                                                    {{"appointment", "09:00-11:00"},
                                                     {"contact", "Ada Kestrel"},
                                                     {"access_notes", "key at the bakery"}}},
                                                   {"O-1004", {{"contact", "Ben Holt"}}}}));
        QTest::keyClick(m_window.get(), Qt::Key_F5);
        select("O-1004");
        const auto *meeting = named<QLabel>("side.meeting");
        QTRY_COMPARE(meeting->text(), "Contact: Ben Holt");
        select("O-1001");
        QTRY_COMPARE(meeting->text(), "Appointment: 09:00-11:00\nContact: Ada Kestrel\n"
                                      "Access: key at the bakery");
        QVERIFY(meeting->isVisible());
        select("O-1002"); // nothing was typed
        QTRY_COMPARE(meeting->text(), "");
        QVERIFY(!meeting->isVisible());
    }

    void inASmallWindowTheTableScrollsAndNotThePage()
    {
        m_window->resize(1024, 560); // a screen of 600, less the frame
        const auto *page =
            qobject_cast<QScrollArea *>(m_window->screen("board")->parentWidget()->parentWidget());
        QTRY_VERIFY(page->verticalScrollBar()->maximum() == 0);
        QVERIFY2(table()->viewport()->height() >= 6 * table()->rowHeight(0),
                 qPrintable(QString::number(table()->viewport()->height())));
    }

    // Each chip and each line of each choice: what it promises is what it shows.
    void everyCountIsWhatItShows()
    {
        const QString all = found();
        const auto words = [](int count) {
            return count == 1 ? QString("1 order") : QString("%1 orders").arg(count);
        };
        for (const ChipRow *row : m_window->screen("board")->findChildren<ChipRow *>()) {
            for (QAbstractButton *chip : row->findChildren<QAbstractButton *>()) {
                if (chip->objectName() == u"chip.open.1")
                    continue; // above
                const int promised = row->count(chip->objectName().section('.', 2));
                chip->click();
                QTRY_COMPARE(found(), words(promised));
                QTRY_COMPARE(orders().size(), promised);
                chip->click();
                QTRY_COMPARE(found(), all);
            }
        }
        int tried = 0;
        for (const char *name : {"outcome", "criterion", "office", "installer", "waiting_on"}) {
            auto *combo = named<QComboBox>(QString("filter.") + name);
            QStringList values;
            for (int i = 1; i < combo->count(); ++i)
                values << combo->itemData(i).toString();
            for (const QString &value : values) {
                const int promised =
                    combo->itemText(combo->findData(value)).section("   ", 1).toInt();
                choose(name, value);
                QTRY_VERIFY2(found() == words(promised),
                             qPrintable(QString("%1 %2: %3 promised, %4 found")
                                            .arg(name, value)
                                            .arg(promised)
                                            .arg(found())));
                QTRY_COMPARE(orders().size(), promised);
                combo->setCurrentIndex(0);
                emit combo->activated(0);
                QTRY_COMPARE(found(), all);
                ++tried;
            }
        }
        QVERIFY(tried >= 8);
    }
    void installersAreFoundByTheirNames()
    {
        auto *installers = named<QComboBox>("filter.installer");
        QStringList lines;
        for (int i = 0; i < installers->count(); ++i)
            lines << installers->itemText(i);
        QCOMPARE(lines, (QStringList{"Every installer", "A. Rivera   3", "N. Okafor   2",
                                     "Nobody assigned   2"}));
        QCOMPARE(cell("O-1001", u"installer"), "A. Rivera");
        choose("installer", "");
        QTRY_COMPARE(orders(), (QStringList{"O-1006", "O-1005"}));
    }
    void aFailingCriterionIsAFilter()
    {
        choose("criterion", "layer3");
        QTRY_COMPARE(orders(), QStringList{"O-1002"});
        QVERIFY(named<QComboBox>("filter.criterion")->currentText().endsWith("   1"));
    }

    void aClickOnAHeadSorts()
    {
        clickHead(u"customer");
        QTRY_COMPARE(orders(), (QStringList{"O-1001", "O-1007", "O-1002", "O-1005", "O-1006",
                                            "O-1004", "O-1008"}));
        const QHeaderView *head = table()->horizontalHeader();
        QCOMPARE(head->sortIndicatorSection(), boardColumn(u"customer"));
        clickHead(u"customer");
        QTRY_COMPARE(orders().first(), "O-1008");
        QCOMPARE(head->sortIndicatorOrder(), Qt::DescendingOrder);
        // By keyboard, from the menu.
        entry("sort.menu", "sort.order")->trigger();
        QTRY_COMPARE(orders().first(), "O-1001");
        QCOMPARE(head->sortIndicatorSection(), boardColumn(u"order"));
        entry("sort.menu", "sort.due")->trigger();
        entry("sort.menu", "sort.due")->trigger();
        QTRY_COMPARE(orders().first(), "O-1007");
    }

    void whatWasChosenComesBack()
    {
        clickHead(u"customer");
        clickHead(u"customer");
        choose("installer", "rivera");
        QTRY_COMPARE(orders(), (QStringList{"O-1002", "O-1007", "O-1001"}));
        QHeaderView *head = table()->horizontalHeader();
        head->moveSection(head->visualIndex(boardColumn(u"office")), 0);
        head->resizeSection(boardColumn(u"customer"), em(17));
        entry("columns.menu", "column.stage")->setChecked(false);
        const QJsonObject place = m_window->place();
        m_window.reset();
        openWindow(place);
        QTRY_COMPARE(orders(), (QStringList{"O-1002", "O-1007", "O-1001"}));
        head = table()->horizontalHeader();
        QCOMPARE(head->sortIndicatorSection(), boardColumn(u"customer"));
        QCOMPARE(head->sortIndicatorOrder(), Qt::DescendingOrder);
        QCOMPARE(head->visualIndex(boardColumn(u"office")), 0);
        QCOMPARE(head->sectionSize(boardColumn(u"customer")), em(17));
        QVERIFY(head->isSectionHidden(boardColumn(u"stage")));
        QVERIFY(!head->isSectionHidden(boardColumn(u"why")));
    }

    void boardsAreKeptUnderNames()
    {
        auto *button = named<QPushButton>("boards");
        QCOMPARE(button->text(), "Boards");
        choose("installer", "rivera");
        clickHead(u"customer");
        withName("boards.keep", "Rivera & co");
        QCOMPARE(button->accessibleName(), "Board: Rivera & co");
        QTest::keyClick(m_window.get(), Qt::Key_Escape); // the filters go
        QTRY_COMPARE(found(), "7 orders");
        QCOMPARE(button->accessibleName(), "Board: Rivera & co, changed");
        named<QAbstractButton>("chip.due.late")->click();
        QTRY_COMPARE(orders(), QStringList{"O-1001"});
        withName("boards.keep", "Late");
        entry("boards.menu", "boards.go.Rivera & co")->trigger();
        QTRY_COMPARE(orders(), (QStringList{"O-1001", "O-1007", "O-1002"}));
        withName("boards.rename", "South");
        QCOMPARE(button->accessibleName(), "Board: South");

        const QJsonObject place = m_window->place();
        m_window.reset();
        openWindow(place);
        button = named<QPushButton>("boards");
        QCOMPARE(button->accessibleName(), "Board: South");
        entry("boards.menu", "boards.go.Late")->trigger();
        QTRY_COMPARE(orders(), QStringList{"O-1001"});
        QVERIFY(!entry("boards.menu", "boards.keep_change")->isEnabled());
        named<QAbstractButton>("chip.due.late")->click();
        entry("boards.menu", "boards.keep_change")->trigger();
        QCOMPARE(button->accessibleName(), "Board: Late");
        entry("boards.menu", "boards.delete")->trigger();
        QCOMPARE(button->accessibleName(), "Boards");
        emit named<QMenu>("boards.menu")->aboutToShow();
        QVERIFY(!m_window->findChild<QAction *>("boards.go.Late"));
        QVERIFY(m_window->findChild<QAction *>("boards.go.South"));
    }

    void whatIsAcceptedWaitsForItsPaperAlone()
    {
        Records &records = m_records->records();
        m_records->take(
            importInstallers(records, "installer,name,role\nK7,Kim Carver,installer\n", {}));
        m_records->take(importInstruments(records,
                                          "instrument,serial,kind,calibrated_on,calibration_due\n"
                                          "TS-4,S-1021,basic-rate test set,2025-09-01,2026-09-01\n",
                                          {}));
        OrderFields accepted = jobs::briFields();
        accepted["due_date"] = "2026-03-02";
        accepted["pair"] = "30-1";
        m_records->take(importOrders(records, jobs::csv({accepted}), {}));
        QList<QJsonObject> facts = jobs::briFacts();
        for (QJsonObject &fact : facts) // with ids of their own
            fact.insert("id", QString("11111111" + fact["id"].toString().mid(8)));
        const auto recorded = recordFile(records, jobs::recordBytes(accepted, facts), "job.json");
        QVERIFY2(recorded, recorded ? "" : qPrintable(recorded.error().text()));
        QTest::keyClick(m_window.get(), Qt::Key_F5);
        QTRY_COMPARE(cell("A-1001", u"why"), "Accepted; its certificate is not issued");
        QCOMPARE(cell("A-1001", u"due"), "2 Mar"); // and nothing of late
        named<QAbstractButton>("chip.due.late")->click();
        QTRY_COMPARE(orders(), QStringList{"O-1001"});
        named<QAbstractButton>("chip.due.late")->click();
        named<QAbstractButton>("chip.paper.1")->click();
        QTRY_COMPARE(orders(), QStringList{"A-1001"});
        const auto issued = issueCertificate(records, {"A-1001", Paper::A4, {}, {}});
        QVERIFY2(issued, issued ? "" : qPrintable(issued.error().text()));
        QTest::keyClick(m_window.get(), Qt::Key_F5);
        QTRY_COMPARE(found(), "0 orders");
    }

    void anotherProgramsChangeIsThereWithinASecond()
    {
        takeMore(m_records->records(), 200, QDate(2026, 5, 1));
        QTest::keyClick(m_window.get(), Qt::Key_F5);
        QTRY_COMPARE(found(), "207 orders");
        QTRY_COMPARE(orders().size(), 207);
        table()->setCurrentIndex(table()->model()->index(100, boardColumn(u"order")));
        const QString selected = orders()[100];
        table()->verticalScrollBar()->setValue(90);
        const QString top = orders()[table()->firstInView()];
        auto *model = qobject_cast<BoardModel *>(table()->model());
        QTRY_VERIFY_WITH_TIMEOUT(!model->isMarked(selected), 3 * boardMarkMs);

        const auto records = m_records->elsewhere();
        QElapsedTimer since;
        since.start();
        m_records->take(importOrders(*records,
                                     DeskRecords::orderHeader() +
                                         "O-0900,new,2026-03-01,Early Bird,1 First Street,C-590,"
                                         "analog,NORTH,,17-290,voice,,217-555-0190,,,,,,no,,\n",
                                     {}));
        QVERIFY(cancelOrder(*records, "P-1003", "the customer moved"));
        QTRY_COMPARE_WITH_TIMEOUT(orders().size(), 207, 1000);
        QTRY_VERIFY_WITH_TIMEOUT(orders().contains("O-0900") && !orders().contains("P-1003"), 1000);
        qInfo("seen after %lld ms", since.elapsed());
        // The selection and what is in view have stayed, though a row came before and one went.
        QCOMPARE(orders()[table()->currentIndex().row()], selected);
        QCOMPARE(orders()[table()->firstInView()], top);
        QVERIFY(model->isMarked("O-0900"));
        QVERIFY(!model->isMarked(selected));
        QTRY_VERIFY_WITH_TIMEOUT(!model->isMarked("O-0900"), 2 * boardMarkMs);
    }
    void theSelectionGoesToTheNextRowIfItsOrderIsGone()
    {
        table()->setCurrentIndex(table()->model()->index(2, boardColumn(u"order")));
        QCOMPARE(orders()[2], "O-1004");
        const auto records = m_records->elsewhere();
        QVERIFY(cancelOrder(*records, "O-1004", "the customer moved"));
        QTRY_COMPARE_WITH_TIMEOUT(orders().size(), 6, 1000);
        QCOMPARE(table()->currentIndex().row(), 2);
    }
    void everyPlaceOfALongListIsReached()
    {
        takeMore(m_records->records(), 1300, QDate(2026, 5, 1));
        QTest::keyClick(m_window.get(), Qt::Key_F5);
        QTRY_COMPARE(found(), "1,307 orders");
        QCOMPARE(table()->model()->rowCount(), 1307);
        const auto numberIn = [this](int row) {
            return table()->model()->index(row, boardColumn(u"order")).data().toString();
        };
        table()->setFocus();
        QTest::keyClick(table(), Qt::Key_End, Qt::ControlModifier);
        QTRY_COMPARE(numberIn(1306), "P-2299");
        const auto *board = m_window->findChild<BoardScreen *>();
        QTRY_COMPARE(board->place()["order"].toString(), "P-2299");
        table()->verticalScrollBar()->setValue(600);
        QTRY_COMPARE(numberIn(607), "P-1600");
        QStringList numbers;
        for (int row = 0; row < 1307; row += 100) {
            QTRY_VERIFY(!numberIn(row).isEmpty());
            numbers << numberIn(row);
        }
        QCOMPARE(numbers.removeDuplicates(), 0);
        QTest::keyClick(table(), Qt::Key_Home, Qt::ControlModifier);
        QTRY_COMPARE(table()->currentIndex().row(), 0);
        QTRY_VERIFY(!numberIn(0).isEmpty());
    }

    void slashLeadsToTheSearchFromEverywhere()
    {
        auto *search = named<QLineEdit>("search");
        for (QWidget *from :
             QList<QWidget *>{table(), named<QWidget>("chip.stage.loop"),
                              named<QWidget>("filter.office"), named<QWidget>("boards"), search}) {
            from->setFocus();
            QTRY_COMPARE(QApplication::focusWidget(), from);
            QTest::keyClick(from, Qt::Key_Slash);
            QCOMPARE(QApplication::focusWidget(), search);
            QCOMPARE(search->text(), "");
        }
        QTest::keyClicks(search, "17/2");
        QCOMPARE(search->text(), "17/2"); // within a number it is a part of it
        QTest::keyClick(m_window.get(), Qt::Key_F, Qt::ControlModifier); // selects what is there
        QTest::keyClick(search, Qt::Key_Slash);
        QCOMPARE(search->text(), "17/2");
    }
    void aSearchSaysWhereItsWordsAre()
    {
        const auto tip = [this] {
            return table()->model()->index(0, boardColumn(u"stage")).data(Qt::ToolTipRole);
        };
        QVERIFY(!tip().toString().contains("Found in"));
        auto *search = named<QLineEdit>("search");
        search->setFocus();
        QTest::keyClicks(search, "ring tw"); // of its remarks
        QTRY_COMPARE(orders(), QStringList{"O-1002"});
        QTRY_VERIFY2(tip().toString().contains("Found in: Remarks."), qPrintable(tip().toString()));
        QTest::keyClick(search, Qt::Key_Escape);
        QTRY_COMPARE(orders().size(), 7);
        QVERIFY(!tip().toString().contains("Found in"));
    }
    void escapeLetsGoOfTheSearchThenOfTheFilters()
    {
        choose("office", "SOUTH");
        QTRY_COMPARE(found(), "1 order");
        auto *search = named<QLineEdit>("search");
        search->setFocus();
        QTest::keyClicks(search, "zzz");
        QTRY_COMPARE(found(), "0 orders");
        QTest::keyClick(search, Qt::Key_Escape);
        QCOMPARE(search->text(), "");
        QTRY_COMPARE(found(), "1 order");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        QTRY_COMPARE(found(), "7 orders");
        QVERIFY(named<QAbstractButton>("chip.open.1")->isChecked());
        QCOMPARE(m_window->current()->key(), "board");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape); // nothing is left: back
        QCOMPARE(m_window->current()->key(), "job");
    }
    void completedOrdersAreFoundToo()
    {
        auto *search = named<QLineEdit>("search");
        search->setFocus();
        QTest::keyClicks(search, "elm road");
        auto *all = named<QPushButton>("empty.all");
        QTRY_VERIFY(all->isVisible());
        all->click();
        QTRY_COMPARE(orders(), QStringList{"O-1003"});
    }
    void theViewIsExportedBesideTheWindow()
    {
        choose("office", "SOUTH");
        QTRY_COMPARE(found(), "1 order");
        auto *board = qobject_cast<BoardScreen *>(m_window->current());
        QSignalSpy said(board, &Screen::said);
        QTemporaryDir folder;
        const QString path = folder.filePath("view.csv");
        board->exportView(path);
        QTRY_COMPARE(said.size(), 1);
        QCOMPARE(said.first().first().toString(), QString("1 order is in %1.").arg(path));
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray bytes = file.readAll();
        QVERIFY(bytes.contains("\r\nO-1005,"));
        QCOMPARE(bytes.count("\r\n"), 2);
        QVERIFY(board->findChild<QAction *>("view.export")->text().contains("xport view"));
        board->exportView(folder.filePath("none/view.csv"));
        QTRY_COMPARE(said.size(), 2);
        QVERIFY2(said.last().first().toString().contains("none/view.csv"),
                 qPrintable(said.last().first().toString()));
    }
    void theDayListIsWrittenBesideTheWindowAndCanBeStopped()
    {
        auto *board = qobject_cast<BoardScreen *>(m_window->current());
        auto *work = named<QWidget>("day_list.work");
        QSignalSpy said(board, &Screen::said);
        QTemporaryDir folder;
        const QString path = folder.filePath("day.pdf");
        QVERIFY(!work->isVisible());
        board->saveDayList(path);
        QVERIFY(work->isVisible()); // the window goes on
        QVERIFY(!QFile::exists(path));
        named<QAbstractButton>("day_list.work.stop")->click();
        QTRY_COMPARE(said.size(), 1);
        QCOMPARE(said.first().first().toString(), "It was stopped; nothing was written.");
        QVERIFY(!work->isVisible());
        QVERIFY(
            QDir(folder.path()).isEmpty(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden));
        board->saveDayList(path);
        QTRY_COMPARE(said.size(), 2);
        QCOMPARE(said.last().first().toString(), QString("Saved as %1.").arg(path));
        QVERIFY(!work->isVisible());
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY(file.readAll().startsWith("%PDF"));
    }
};

QTEST_MAIN(BoardDeskTest)
#include "BoardDeskTest.moc"
