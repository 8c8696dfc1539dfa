// An office and a van in two windows, each on records of its own: orders are taken along from the
// board, worked on, brought back and taken in, and what the two say otherwise is settled.
// Longer than 400 lines: the helpers that work windows and dialogs serve all of it.

#include "app/actions/BringBack.h"
#include "app/actions/Keys.h"
#include "app/actions/OpenBundles.h"
#include "app/actions/Orders.h"
#include "app/actions/ReceiveBundles.h"
#include "app/actions/StationConflicts.h"
#include "app/actions/TakeAlong.h"
#include "app/desktop/Keys.h"
#include "app/desktop/widgets/SignList.h"
#include "db/Transaction.h"
#include "tests/support/DeskWindow.h"

#include <QAction>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDialog>
#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMimeData>
#include <QPushButton>
#include <QRadioButton>
#include <QStatusBar>

using namespace loopwright;

namespace {

/// Done, or the test ends.
template<class T>
T need(Result<T> done)
{
    if (!done)
        qFatal("%s", qPrintable(done.error().text()));
    return *std::move(done);
}

QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

class VansTest : public QObject, private DeskWindow
{
    Q_OBJECT

    std::unique_ptr<DeskRecords> m_van;
    std::unique_ptr<MainWindow> m_vanWindow;

    Records &office() const { return m_records->records(); }
    Records &van() const { return m_van->records(); }
    QString keyOfVan() const
    {
        return m_van->file("key.txt", need(publicKeyFile(m_van->records())));
    }
    void addVanHere() const
    {
        need(addVan(office(), "van-7", contentOf(keyOfVan()), "key.txt", false));
    }
    void takeAlongHere(const QStringList &orders) const
    {
        TakingAlong wish;
        wish.orders = orders;
        wish.station = "van-7";
        wish.out = m_records->path("out.json");
        need(takeAlong(office(), wish));
    }
    /// What the van did with O-1001, on the pair that it knew.
    void workInVan() const
    {
        need(openBundles(van(), {{"out.json", contentOf(m_records->path("out.json"))}}));
        recordInVan();
        need(bringBack(van(), {m_van->path("back.json")}));
    }
    void recordInVan() const
    {
        need(recordFile(van(), R"({"order":"O-1001","installer":"rivera","facts":[
            {"id":"00000000-0000-4000-8000-000000000011","kind":"layer",
             "at":"2026-03-04T09:00:00-06:00","layer":1,"interface":"u","outcome":"up"}]})",
                        "work"));
    }
    void changePairInOffice() const
    {
        OrderFields fields = need(showOrder(office(), "O-1001")).order.fields();
        fields["pair"] = "17-301";
        office().changeWhatIsOut(true);
        need(putOrder(office(), fields, true));
        office().changeWhatIsOut(false);
    }
    QModelIndex cellOf(const QString &order) const
    {
        return table()->model()->index(int(orders().indexOf(order)), boardColumn(u"order"));
    }
    QAbstractButton *chip(BoardFacet facet) const
    {
        return named<QAbstractButton>("chip." + toText(facet) + ".1");
    }
    /// In the status line.
    bool isSaid(const QString &words) const
    {
        const QList<QLabel *> labels = m_window->statusBar()->findChildren<QLabel *>();
        return std::ranges::any_of(
            labels, [&](const QLabel *label) { return label->text().contains(words); });
    }
    SignLine *line(const char *name) const { return named<SignLine>(name); }

    void openVanWindow()
    {
        m_vanWindow = std::make_unique<MainWindow>(m_van->workplace());
        m_vanWindow->resize(1300, 750);
        m_vanWindow->show();
        QVERIFY(QTest::qWaitForWindowExposed(m_vanWindow.get()));
    }
    /// The dialog that is open before the window, once it has the keyboard.
    static QDialog *dialogOf(const MainWindow &window, const QString &name)
    {
        QDialog *dialog = nullptr;
        [&] { QTRY_VERIFY((dialog = window.findChild<QDialog *>(name))); }();
        [&] {
            dialog->activateWindow();
            QVERIFY(QTest::qWaitForWindowActive(dialog));
        }();
        return dialog;
    }
    static void type(const QDialog &dialog, const QString &field, const QString &text)
    {
        auto *edit = dialog.findChild<QLineEdit *>(field);
        QVERIFY2(edit && edit->isVisible(), qPrintable(field));
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, text);
    }
    static QString told(const QDialog &dialog)
    {
        return dialog.findChild<SignLine *>(dialog.objectName() + ".told")->text();
    }
    /// "O-1001 Bright Bakery: Due 2 Mar: goes along."
    static QStringList items(const QDialog &dialog)
    {
        QStringList lines;
        for (const SignItem &item :
             dialog.findChild<SignList *>(dialog.objectName() + ".list")->items())
            lines << item.title + ": " + item.text;
        return lines;
    }
    static QPushButton *button(const QDialog &dialog, const QString &name)
    {
        return dialog.findChild<QPushButton *>(name);
    }
    static void closeDialog(QDialog &dialog)
    {
        const QPointer<QDialog> gone(&dialog);
        QTest::keyClick(&dialog, Qt::Key_Escape);
        QTRY_VERIFY(!gone);
    }
    static void drop(QWidget *widget, const QStringList &paths)
    {
        QMimeData files;
        QList<QUrl> urls;
        for (const QString &path : paths)
            urls << QUrl::fromLocalFile(path);
        files.setUrls(urls);
        const QPoint middle = widget->rect().center();
        QDragEnterEvent enter(middle, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(widget, &enter);
        QVERIFY(enter.isAccepted());
        QDropEvent drop(middle, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(widget, &drop);
    }
    /// Selects the first rows of the board and opens the dialog by its key.
    QDialog *takeAlongByKey(int rows)
    {
        table()->setFocus();
        QTest::keyClick(table(), Qt::Key_Home, Qt::ControlModifier);
        for (int i = 1; i < rows; ++i)
            QTest::keyClick(table(), Qt::Key_Down, Qt::ShiftModifier);
        QTest::keyClick(table(), Qt::Key_L, Qt::ControlModifier);
        return dialogOf(*m_window, "take_along");
    }
    /// Confirms while somebody else writes to the records, and stops it while it waits.
    static void stopAtOnce(Records &records, QDialog &dialog, const QString &name)
    {
        auto other = Transaction::begin(records.database());
        QVERIFY(other);
        QVERIFY(!button(dialog, name + ".stop")->isVisible());
        button(dialog, name + ".confirm")->click();
        QVERIFY(button(dialog, name + ".stop")->isVisible());
        button(dialog, name + ".stop")->click();
    }
    void handOut()
    {
        openWindow();
        QTRY_COMPARE(orders().size(), 8);
        QDialog *dialog = takeAlongByKey(2);
        QCOMPARE(told(*dialog), "No van is known yet; add it by the file with its key.");
        QVERIFY(!button(*dialog, "take_along.confirm")->isEnabled());
        type(*dialog, "van.name", "office");
        type(*dialog, "van.key", keyOfVan());
        button(*dialog, "van.add")->click();
        QTRY_VERIFY(dialog->findChild<SignLine *>("van.told")->text().contains("another name"));
        type(*dialog, "van.name", "van-7");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QTRY_COMPARE(dialog->findChild<QComboBox *>("take_along.van")->currentText(), "van-7");
        QCOMPARE(items(*dialog), (QStringList{"O-1001 Bright Bakery: Due 2 Mar: goes along.",
                                              "O-1002 Harbour Dental: Due 4 Mar: goes along."}));
        QVERIFY(!dialog->findChild<QCheckBox *>("take_along.anyway")->isVisible());
        type(*dialog, "take_along.file", m_records->path("out.json"));
        QCOMPARE(told(*dialog), "Go along with van-7: 2. Stay: 0.");
        stopAtOnce(office(), *dialog, "take_along");
        QTRY_COMPARE(told(*dialog), "It was stopped; nothing was changed.");
        QVERIFY(!QFile::exists(m_records->path("out.json")));
        button(*dialog, "take_along.confirm")->setFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QTRY_COMPARE(told(*dialog), "2 orders: O-1001, O-1002 handed out to van-7. The van takes "
                                    "the file in.");
        QCOMPARE(items(*dialog).mid(1),
                 (QStringList{"O-1001: With van-7 now.", "O-1002: With van-7 now."}));
        QVERIFY(items(*dialog).front().endsWith("out.json"));
        button(*dialog, "take_along.copy")->click();
        QVERIFY(QGuiApplication::clipboard()->text().endsWith("\nO-1002: With van-7 now."));
        closeDialog(*dialog);
        QTRY_COMPARE(chip(BoardFacet::Away)->accessibleName(), "Out, 2 orders");
    }
    void takeInInVan()
    {
        openVanWindow();
        auto *bring = m_vanWindow->findChild<QAction *>("action.bring_back");
        QVERIFY(!bring->isEnabled() && !whyOff(bring).isEmpty());
        m_vanWindow->showScreen("import"); // which takes files of its own
        drop(m_vanWindow->screen("import"), {m_records->path("out.json")});
        QDialog *dialog = dialogOf(*m_vanWindow, "take_in");
        QTRY_VERIFY(told(*dialog).startsWith("About to be taken in: 2 orders: O-1001, O-1002."));
        QVERIFY(
            items(*dialog).front().startsWith("out.json: For a van, from the office (station "));
        QTest::keyClick(dialog, Qt::Key_Return);
        QTRY_COMPARE(told(*dialog), "Everything was taken in.");
        QCOMPARE(items(*dialog).mid(1),
                 (QStringList{"O-1001: New here.", "O-1002: New here, 3 new entries."}));
        closeDialog(*dialog);
        QTRY_VERIFY(bring->isEnabled());
    }
    void bringBackFromVan()
    {
        m_vanWindow->findChild<QAction *>("action.bring_back")->trigger();
        QDialog *dialog = dialogOf(*m_vanWindow, "bring_back");
        QCOMPARE(items(*dialog).size(), 2);
        dialog->findChild<QCheckBox *>("bring_back.keep")->click();
        QVERIFY(items(*dialog).front().endsWith("the order stays out."));
        dialog->findChild<QCheckBox *>("bring_back.keep")->click();
        type(*dialog, "bring_back.file", m_van->path("back.json"));
        stopAtOnce(van(), *dialog, "bring_back");
        QTRY_COMPARE(told(*dialog), "It was stopped; nothing was changed.");
        QVERIFY(!QFile::exists(m_van->path("back.json")));
        button(*dialog, "bring_back.confirm")->setFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QTRY_VERIFY2(told(*dialog).endsWith("The office takes the file in."),
                     qPrintable(told(*dialog)));
        QVERIFY(items(*dialog).contains("O-1001: Is in the file."));
        closeDialog(*dialog);
    }
    void settleForTheOffice(QDialog &dialog)
    {
        auto *card = dialog.findChild<QLabel *>("conflicts.about");
        QTRY_COMPARE(card->text(), "O-1001: the order was changed meanwhile");
        QCOMPARE(items(dialog),
                 QStringList{"O-1001: the order was changed meanwhile: van-7 · since "
                             "4 Mar · 1 entry hangs on it"});
        auto *side = dialog.findChild<QRadioButton *>("conflicts.side.office");
        QVERIFY(side->accessibleDescription().contains("17-301"));
        button(dialog, "conflicts.settle")->click();
        QCOMPARE(told(dialog), "Choose a side.");
        QTest::keyClick(side, Qt::Key_Space);
        button(dialog, "conflicts.settle")->click();
        QCOMPARE(told(dialog), "Say why it is settled so.");
        QCOMPARE(need(stationConflicts(office())).size(), 1U);
        type(dialog, "conflicts.because", "the pair was moved at the frame");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QTRY_COMPARE(told(dialog), "Order O-1001 is settled: The office.");
        QTRY_VERIFY(items(dialog).isEmpty() && !card->isVisible());
        closeDialog(dialog);
    }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        m_van = std::make_unique<DeskRecords>(false);
    }
    void cleanup()
    {
        m_vanWindow.reset();
        m_window.reset();
        m_records.reset();
        m_van.reset();
    }

    void theBoardSaysWhatIsOutAndSinceWhen()
    {
        addVanHere();
        openWindow();
        QTRY_COMPARE(orders().size(), 8);
        QCOMPARE(chip(BoardFacet::Away)->accessibleName(), "Out, 0 orders");
        QVERIFY(cellOf("O-1002").data(Qt::DecorationRole).isNull());
        takeAlongHere({"O-1001", "O-1002"});
        m_window->screen("board")->refresh();
        QTRY_COMPARE(chip(BoardFacet::Away)->accessibleName(), "Out, 2 orders");
        QVERIFY(cellOf("O-1002").data(Qt::DecorationRole).isValid());
        QVERIFY(cellOf("O-1003").data(Qt::DecorationRole).isNull());
        QCOMPARE(cellOf("O-1002").data(Qt::ToolTipRole).toString(), "With van-7 since 4 Mar");
        QCOMPARE(cellOf("O-1002").data(Qt::AccessibleTextRole).toString(),
                 "O-1002, With van-7 since 4 Mar");
        chip(BoardFacet::Away)->click();
        QTRY_COMPARE(orders(), (QStringList{"O-1001", "O-1002"}));
        table()->setCurrentIndex(cellOf("O-1002"));
        QTRY_COMPARE(line("side.out")->text(), "With van-7 since 4 Mar");
        QVERIFY(line("side.out")->isVisible() && !line("side.conflicts")->isVisible());
        m_window->openOrder("O-1002");
        QCOMPARE(line("head.stations")->text(), "With van-7 since 4 Mar");
        QVERIFY(line("head.stations")->isVisible());
        m_window->openOrder("O-1003");
        QVERIFY(!line("head.stations")->isVisible());
    }

    void theBoardSaysWhatIsToBeSettled()
    {
        addVanHere();
        takeAlongHere({"O-1001"});
        workInVan();
        changePairInOffice();
        need(receiveBundles(office(), {{"back.json", contentOf(m_van->path("back.json"))}}));
        openWindow();
        QTRY_COMPARE(chip(BoardFacet::Conflict)->accessibleName(), "To be settled, 1 order");
        QCOMPARE(chip(BoardFacet::Away)->accessibleName(), "Out, 0 orders");
        QCOMPARE(cellOf("O-1001").data(Qt::ToolTipRole).toString(),
                 "1 thing to settle between stations");
        chip(BoardFacet::Conflict)->click();
        QTRY_COMPARE(orders(), QStringList{"O-1001"});
        QTRY_COMPARE(line("side.conflicts")->text(), "1 thing to settle between stations");
        QVERIFY(!line("side.out")->isVisible());
        m_window->activateWindow();
        for (const char *way : {"side.settle", "rows.button.settle", "head.settle"}) {
            if (way == QLatin1String("head.settle"))
                m_window->openOrder("O-1001");
            QVERIFY2(named<QPushButton>(way)->isVisible(), way);
            named<QPushButton>(way)->click();
            QDialog *dialog = dialogOf(*m_window, "conflicts");
            QCOMPARE(dialog->windowTitle(), "Settle between stations: order O-1001");
            QTRY_COMPARE(items(*dialog).size(), 1);
            closeDialog(*dialog);
        }
        QCOMPARE(line("head.stations")->text(), "1 thing to settle between stations");
        QCOMPARE(line("head.stations")->sign(), Status::Doubtful);
    }

    void fromTheBoardToTheVanAndBack()
    {
        handOut();
        takeInInVan();
        recordInVan();
        changePairInOffice();
        bringBackFromVan();
        drop(m_window.get(), {m_van->path("back.json")});
        QDialog *dialog = dialogOf(*m_window, "take_in");
        QTRY_VERIFY(told(*dialog).startsWith("About to be taken in: "));
        QVERIFY(items(*dialog).front().startsWith("back.json: Brought back by van-7. "));
        QTest::keyClick(dialog, Qt::Key_Return);
        QTRY_COMPARE(told(*dialog), "Taken in. Something is to be settled.");
        const QStringList came = items(*dialog);
        QVERIFY2(!came.filter("O-1001: 1 new entry, to be settled: 1.").isEmpty(),
                 qPrintable(came.join('\n')));
        button(*dialog, "take_in.settle")->click();
        settleForTheOffice(*dialogOf(*m_window, "conflicts"));
        QTRY_COMPARE(chip(BoardFacet::Conflict)->accessibleName(), "To be settled, 0 orders");
        QCOMPARE(need(stationConflicts(office())).size(), 0U);
    }

    void whatStaysIsSaidBefore()
    {
        addVanHere();
        DeskRecords other(false);
        need(addVan(office(), "van-9",
                    need(publicKeyFile(const_cast<DeskRecords &>(other).records())), "key.txt",
                    false));
        takeAlongHere({"O-1001"});
        QVERIFY(cancelOrder(office(), "O-1002", "no longer wanted"));
        openWindow();
        chip(BoardFacet::Open)->click(); // closed ones too
        QTRY_COMPARE(orders().mid(0, 3), (QStringList{"O-1001", "O-1002", "O-1003"}));
        QDialog *dialog = takeAlongByKey(3);
        auto *list = dialog->findChild<QComboBox *>("take_along.van");
        QCOMPARE(list->count(), 2);
        QCOMPARE(items(*dialog),
                 (QStringList{"O-1001 Bright Bakery: With van-7 since 4 Mar: goes along again.",
                              "O-1002 Harbour Dental: Stays: it is cancelled.",
                              "O-1003 Elm Road School: Due 5 Mar: goes along."}));
        list->setCurrentText("van-9");
        QCOMPARE(items(*dialog).front(), "O-1001 Bright Bakery: With van-7 since 4 Mar: stays.");
        type(*dialog, "take_along.file", m_records->path("out.json.folder/out.json"));
        QCOMPARE(told(*dialog), "Go along with van-9: 1. Stay: 2.");
        button(*dialog, "take_along.confirm")->click();
        QTRY_VERIFY(told(*dialog).contains("out.json.folder")); // no such folder
        type(*dialog, "take_along.file", m_records->path("nine.json"));
        button(*dialog, "take_along.confirm")->click();
        QTRY_COMPARE(told(*dialog), "Order O-1003 handed out to van-9. The van takes the file in.");
        QCOMPARE(items(*dialog).mid(2),
                 (QStringList{"O-1001: Order O-1001 is with station van-7 since 2026-03-04.",
                              "O-1002: Order O-1002 is no longer open."}));
        closeDialog(*dialog);
    }

    void whatWasHandedOutIsTakenBackAtOnce()
    {
        addVanHere();
        takeAlongHere({"O-1001"});
        openWindow();
        QTRY_COMPARE(orders().size(), 8);
        QDialog *dialog = takeAlongByKey(2);
        type(*dialog, "take_along.file", m_records->path("two.json"));
        QVERIFY(!button(*dialog, "take_along.undo")->isVisible());
        button(*dialog, "take_along.confirm")->click();
        QTRY_VERIFY(button(*dialog, "take_along.undo")->isVisible());
        QTRY_COMPARE(chip(BoardFacet::Away)->accessibleName(), "Out, 2 orders");
        button(*dialog, "take_along.undo")->setFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
        QTRY_VERIFY(told(*dialog).startsWith("Nothing of it is out."));
        QCOMPARE(items(*dialog), QStringList("O-1002: Stays here.")); // the other went before
        QVERIFY(!button(*dialog, "take_along.undo")->isVisible());
        closeDialog(*dialog);
        QTRY_COMPARE(chip(BoardFacet::Away)->accessibleName(), "Out, 1 order");
    }

    void whatIsSettledIsShownAndSettledAnew()
    {
        addVanHere();
        takeAlongHere({"O-1001"});
        changePairInOffice();
        workInVan();
        need(receiveBundles(office(), {{"back.json", contentOf(m_van->path("back.json"))}}));
        const QString id = need(stationConflicts(office())).front().conflict.id;
        need(settleConflict(office(), id, "office", "first thought"));
        openWindow();
        m_window->findChild<QAction *>("action.settle")->trigger();
        QDialog *dialog = dialogOf(*m_window, "conflicts");
        QTRY_VERIFY(told(*dialog).startsWith("No station says otherwise"));
        auto *all = dialog->findChild<QCheckBox *>("conflicts.all");
        all->setFocus();
        QTest::keyClick(all, Qt::Key_Space);
        QTRY_COMPARE(items(*dialog).size(), 1);
        QVERIFY(items(*dialog).front().endsWith("settled"));
        auto *settled = dialog->findChild<QLabel *>("conflicts.settled");
        QVERIFY2(settled->text().contains("first thought"), qPrintable(settled->text()));
        QCOMPARE(button(*dialog, "conflicts.settle")->text(), "Settle it anew");
        dialog->findChild<QRadioButton *>("conflicts.side.van-7")->click();
        type(*dialog, "conflicts.because", "the van is right");
        button(*dialog, "conflicts.settle")->click();
        QTRY_COMPARE(told(*dialog), "Order O-1001 is settled: van-7.");
        QTRY_VERIFY(settled->text().contains("the van is right"));
        // The order has its values back: that is not settled anew.
        QVERIFY(settled->text().contains("change the order"));
        QVERIFY(!button(*dialog, "conflicts.settle")->isVisible());
        closeDialog(*dialog);
    }

    void whatIsNoBundleIsRefused()
    {
        openWindow();
        drop(m_window.get(), {m_records->file("bad.json", R"({"bundle":{"form":1}})")});
        QDialog *dialog = dialogOf(*m_window, "take_in");
        QTRY_COMPARE(told(*dialog), "There is nothing to take in.");
        QVERIFY(items(*dialog).front().startsWith("bad.json: No bundle, or a damaged one: "));
        QVERIFY(!button(*dialog, "take_in.confirm")->isEnabled());
        closeDialog(*dialog);
        // Somebody else's van.
        addVanHere();
        takeAlongHere({"O-1001"});
        drop(m_window.get(), {m_records->path("bad.json"), m_records->path("out.json")});
        dialog = dialogOf(*m_window, "take_in");
        QTRY_VERIFY(button(*dialog, "take_in.confirm")->isEnabled());
        QCOMPARE(items(*dialog).size(), 2);
        QTest::keyClick(dialog, Qt::Key_Return);
        QTRY_COMPARE(told(*dialog), "Not everything was taken in.");
        QVERIFY(items(*dialog).front().startsWith("out.json: Refused: It is for station "));
        closeDialog(*dialog);
    }

    /// A folder that office and vans share.
    void aBundleInTheWatchedFolderIsTold()
    {
        addVanHere();
        QDir(m_records->path("")).mkpath("shared");
        const QString shared = m_records->path("shared");
        openWindow();
        m_window->restore({{"bundle_folder", shared}});
        auto *notice = named<QWidget>("bundle_watch");
        const auto put = [&](const QString &name, const QByteArray &bytes) {
            QFile file(shared + '/' + name);
            QVERIFY(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
        };
        takeAlongHere({"O-1001"});
        put("out.json", contentOf(m_records->path("out.json"))); // is for the van
        put("list.json", "[]");
        workInVan();
        put("back.json", contentOf(m_van->path("back.json")));
        QTRY_VERIFY_WITH_TIMEOUT(notice->isVisible(), 20'000);
        QCOMPARE(line("bundle_watch.words")->text(),
                 "A bundle lies in the watched folder: back.json.");
        named<QAbstractButton>("bundle_watch.later")->click();
        QVERIFY(!notice->isVisible());
        workInVan(); // nothing new, in a bundle of its own
        put("again.json", contentOf(m_van->path("back.json")));
        QTRY_VERIFY_WITH_TIMEOUT(notice->isVisible(), 20'000);
        named<QAbstractButton>("bundle_watch.take_in")->click();
        QDialog *dialog = dialogOf(*m_window, "take_in");
        QTRY_VERIFY(button(*dialog, "take_in.confirm")->isEnabled());
        QTest::keyClick(dialog, Qt::Key_Return);
        QTRY_COMPARE(told(*dialog),
                     "Everything was taken in. Read what is marked before anybody works on it.");
        QVERIFY(items(*dialog)[1].startsWith("O-1001: 1 new entry. Some of it is dated before"));
        closeDialog(*dialog);
        QTRY_VERIFY_WITH_TIMEOUT(!notice->isVisible(), 20'000);
        QCOMPARE(m_window->place().value("bundle_folder").toString(), shared);
        QCOMPARE(need(showOrder(office(), "O-1001")).facts.size(), 1U);

        QVERIFY(QDir(shared).removeRecursively());
        QTRY_VERIFY_WITH_TIMEOUT(isSaid("The watched folder"), 20'000);
        auto *menu = m_window->findChild<QMenu *>("menu.bundle_folder");
        emit menu->aboutToShow();
        QCOMPARE(menu->actions().size(), 3);
        menu->actions().front()->trigger();
        QVERIFY(m_window->place().value("bundle_folder").toString().isEmpty());
    }

    void nothingIsToBeSettledAtFirst()
    {
        openWindow();
        QTRY_COMPARE(orders().size(), 8);
        table()->setCurrentIndex(table()->model()->index(0, 0));
        QVERIFY(!named<QAction>("rows.settle")->isEnabled());
        QVERIFY(!named<QWidget>("rows.button.settle")->isVisible());
        named<QAction>("action.settle")->trigger();
        QDialog *dialog = dialogOf(*m_window, "conflicts");
        QTRY_COMPARE(told(*dialog), "No station says otherwise: nothing is to be settled.");
        closeDialog(*dialog);
    }
};

QTEST_MAIN(VansTest)
#include "VansTest.moc"
