// All lines of an office at once, in the window.

#include "app/desktop/screens/BulkScreen.h"

#include "app/desktop/Theme.h"
#include "app/desktop/UndoNotice.h"
#include "app/desktop/widgets/SignLine.h"
#include "db/OrderStore.h"
#include "tests/support/DeskWindow.h"

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>

using namespace loopwright;

class BulkScreenTest : public QObject, DeskWindow
{
    Q_OBJECT

    QPushButton *button(const char *name) { return named<QPushButton>(name); }
    QString summary() { return named<SignLine>("bulk.summary")->text(); }
    QAbstractItemModel *rows(const char *name) { return named<Table>(name)->model(); }
    QString dn(const QString &number)
    {
        const auto stored = OrderStore(m_records->records().database()).get(number);
        return stored->order.terminals.front().dn;
    }
    /// For a person to look at, if a folder is named for it.
    void picture(const char *name)
    {
        const QString folder = qEnvironmentVariable("LOOPWRIGHT_PICTURES");
        if (folder.isEmpty())
            return;
        for (const Look look : {Look::Light, Look::Dark}) {
            QApplication::setPalette(paletteOf(look));
            QTest::qWait(100);
            QVERIFY(m_window->grab().save(folder + "/bulk-" + name + '-' + toText(look) + ".png"));
        }
        QApplication::setPalette(paletteOf(Look::Light));
    }
    void ask(const char *from, const char *to)
    {
        named<QLineEdit>("bulk.from")->setText(from);
        named<QLineEdit>("bulk.to")->setText(to);
        button("bulk.preview")->click();
        QTRY_VERIFY(button("bulk.preview")->isEnabled());
    }

private slots:
    void init()
    {
        m_window.reset();
        m_records = std::make_unique<DeskRecords>();
        openWindow();
        m_window->showScreen("register");
        named<Table>("register.offices")->selectRow(0);
        button("register.bulk")->click();
        QCOMPARE(m_window->current()->key(), "bulk");
    }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
    }

    void showsDoesAndTakesBack()
    {
        QCOMPARE(named<QComboBox>("bulk.office")->currentData().toString(), "NORTH");
        QVERIFY(!button("bulk.apply")->isEnabled());
        ask("217", "447");
        // O-1008 is held: it wants a number that O-1001 has.
        QCOMPARE(rows("bulk.changes")->rowCount(), 10);
        QCOMPARE(rows("bulk.changes")->index(0, 4).data().toString(), "447-555-0101");
        QCOMPARE(rows("bulk.cannot")->rowCount(), 9);
        QVERIFY(rows("bulk.cannot")->index(0, 4).data().toString().contains("is kept"));
        QVERIFY(summary().contains("orders: 7, circuits: 7"));
        QCOMPARE(dn("O-1001"), "217-555-0101");
        picture("preview");

        button("bulk.apply")->click();
        QTRY_COMPARE(dn("O-1001"), "447-555-0101");
        QTRY_VERIFY(named<UndoNotice>("undo")->isVisible());
        QVERIFY(!button("bulk.apply")->isEnabled());
        QTRY_VERIFY(button("bulk.cards")->isVisible());
        named<QTabWidget>("bulk.tabs")->setCurrentIndex(1);
        picture("done");
        named<QAction>("action.undo")->trigger();
        QTRY_COMPARE(dn("O-1001"), "217-555-0101");
        QTRY_VERIFY(!button("bulk.cards")->isVisible()); // nothing to print any more
    }
    void anotherQuestionHasAnotherAnswer()
    {
        ask("217", "447");
        QVERIFY(button("bulk.apply")->isEnabled());
        named<QCheckBox>("bulk.spids")->setChecked(true);
        QVERIFY(!button("bulk.apply")->isEnabled());
        QVERIFY(!named<QTabWidget>("bulk.tabs")->isVisible());
        ask("217", "447");
        QCOMPARE(rows("bulk.cannot")->rowCount(), 0);
    }
    void whatIsNoAreaCodeIsTold()
    {
        ask("217", "911");
        QVERIFY2(summary().contains("\"911\" is no area code"), qPrintable(summary()));
        QVERIFY(!button("bulk.apply")->isEnabled());
        ask("309", "447");
        QVERIFY(summary().startsWith("No line of this office is concerned."));
    }
    void converts()
    {
        auto *kind = named<QComboBox>("bulk.kind");
        kind->setCurrentIndex(1);
        QVERIFY(!named<QLineEdit>("bulk.from")->isVisible());
        auto *variant = named<QComboBox>("bulk.variant");
        variant->setCurrentIndex(variant->findData("custom-5ess-multipoint"));
        button("bulk.preview")->click();
        QTRY_VERIFY(button("bulk.apply")->isEnabled());
        QCOMPARE(rows("bulk.changes")->index(0, 2).data().toString(), "Protocol variant");
        picture("conversion");
        QVERIFY(summary().contains("New orders of the office would take the new variant."));
    }
    void onlySupervisors()
    {
        m_records->workplace().actAs("okafor");
        ask("217", "447");
        button("bulk.apply")->click();
        QTRY_VERIFY2(summary().contains("that needs a supervisor"), qPrintable(summary()));
        QCOMPARE(dn("O-1001"), "217-555-0101");
    }
};

QTEST_MAIN(BulkScreenTest)
#include "BulkScreenTest.moc"
