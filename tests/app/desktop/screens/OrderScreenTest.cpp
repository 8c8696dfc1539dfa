#include "app/desktop/screens/OrderScreen.h"

#include "app/actions/Board.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/SignList.h"
#include "app/desktop/widgets/SpidParts.h"
#include "tests/support/DeskRecords.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>

using namespace loopwright;

class OrderScreenTest : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DeskRecords> m_records;
    std::unique_ptr<OrderScreen> m_screen;

    void show()
    {
        m_screen = std::make_unique<OrderScreen>(m_records->workplace());
        m_screen->resize(em(110), em(60));
        m_screen->show();
        m_screen->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_screen.get()));
        m_screen->refresh();
        m_screen->takeFocus();
    }
    QLineEdit *line(const QString &column) const
    {
        return m_screen->findChild<QLineEdit *>("order." + column);
    }
    Field *field(const QString &column) const
    {
        for (Field *edit : m_screen->findChildren<Field *>())
            if (edit->key() == column)
                return edit;
        return nullptr;
    }
    /// Types into a field as the keyboard does, and leaves it by Tab.
    void type(const QString &column, const QString &text)
    {
        m_screen->findChild<Form *>()->goTo(column);
        QWidget *focus = QApplication::focusWidget();
        if (auto *edit = qobject_cast<QLineEdit *>(focus))
            edit->selectAll();
        QTest::keyClicks(focus, text);
        QTest::keyClick(focus, Qt::Key_Tab);
    }
    QString verdict() const { return m_screen->findChild<SignLine *>("order.verdict")->text(); }
    QAbstractButton *button(const QString &name) const
    {
        return m_screen->findChild<QAbstractButton *>(name);
    }
    BoardRow boardRow(const QString &order)
    {
        BoardFilter filter;
        filter.text = order;
        const auto rows = boardRows(m_records->records(), filter);
        return rows && rows->size() == 1 ? rows->front() : BoardRow();
    }
    void typeWholeOrder(const QString &number)
    {
        type("order_number", number);
        type("due_date", "2026-03-12");
        type("customer", "Round Table Inn");
        type("premises", "5 Round Lane");
        type("circuit_number", "C-" + number);
        type("office", "NORTH");
        type("pair", "18-" + number.right(2));
        m_screen->findChild<QCheckBox *>("order.b1_services.voice")->click();
        type("dn_1", "217-555-0120");
        type("spid_1", "21755501200101");
        type("tei_1", "auto");
    }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        show();
    }
    void cleanup()
    {
        m_screen.reset();
        m_records.reset();
    }

    void theButtonIsInViewInALowWindow()
    {
        m_screen->resize(em(75), em(26));
        QVERIFY(m_screen->findChild<SignList *>("order.todo")->isVisible());
        const int needed = m_screen->heightForWidth(em(75));
        QVERIFY2(needed <= em(26), qPrintable(QString::number(needed))); // the page need not scroll
        const QAbstractButton *save = button("order.save");
        QTRY_COMPARE(save->visibleRegion(), QRegion(save->rect()));
    }

    void aBlankFormMarksNothingYetAndSaysWhatIsNeeded()
    {
        QCOMPARE(verdict(), "Not complete yet");
        for (const Field *edit : m_screen->findChildren<Field *>())
            QVERIFY2(!edit->isInError(), qPrintable(edit->key()));
        auto *todo = m_screen->findChild<SignList *>("order.todo");
        QVERIFY(todo->choose("order_number"));
        QVERIFY(todo->choose("customer"));
        todo->setFocus();
        QTest::keyClick(todo, Qt::Key_Return);
        QCOMPARE(QApplication::focusWidget()->objectName(), "order.customer");
    }

    void anOrderIsTakenInByKeysAlone()
    {
        QSignalSpy said(m_screen.get(), &Screen::said);
        QSignalSpy changed(m_screen.get(), &Screen::recordsChanged);
        typeWholeOrder("O-2001");
        QTRY_COMPARE(verdict(), "Ready to be taken in");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(changed.count(), 1);
        QCOMPARE(said.last().first().toString(), "Order O-2001 is taken in.");
        const BoardRow row = boardRow("O-2001");
        QCOMPARE(row.customer, "Round Table Inn");
        QVERIFY(!row.held);
        QCOMPARE(line("order_number")->text(), ""); // ready for the next one
    }

    void aWrongEntryIsMarkedAtItsFieldWithItsRepair()
    {
        type("office", "NORTH");
        type("dn_1", "217-555-0120");
        type("spid_1", "2175550120O101");
        QTRY_VERIFY(field("spid_1")->isInError());
        const Finding &finding = field("spid_1")->findings().front();
        QCOMPARE(finding.repair, "21755501200101");
        // The same sentence as an import of that row says.
        OrderFields fields;
        for (const Field *edit : m_screen->findChildren<Field *>())
            if (!edit->typed().isEmpty())
                fields.insert(edit->key(), edit->typed());
        const auto verdict = checkOrder(m_records->records(), fields);
        QVERIFY(verdict);
        QVERIFY(std::ranges::find(verdict->findings, finding) != verdict->findings.end());
        m_screen->findChild<Form *>()->goTo("spid_1");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_R, Qt::ControlModifier);
        QCOMPARE(line("spid_1")->text(), "21755501200101");
        QTRY_VERIFY(!field("spid_1")->isInError());
        const auto *parts = m_screen->findChild<SpidParts *>();
        QVERIFY(parts->isVisible());
        QVERIFY2(parts->spoken().contains("217"), qPrintable(parts->spoken()));
    }

    void aTakenNumberIsSaidPlainlyAndHeld()
    {
        typeWholeOrder("O-2002");
        type("dn_1", "217-555-0101"); // of C-501
        QTRY_COMPARE(verdict(), "Will be taken in and held");
        QVERIFY(field("dn_1")->isInError());
        QVERIFY2(field("dn_1")->sentence().contains("C-501"),
                 qPrintable(field("dn_1")->sentence()));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_S, Qt::ControlModifier);
        QVERIFY(boardRow("O-2002").held);
    }

    void theFormFollowsTheKindOfLine()
    {
        auto *kind = m_screen->findChild<QComboBox *>("order.kind");
        QVERIFY(line("spid_1")->isVisible());
        kind->setCurrentIndex(kind->findData("analog"));
        emit kind->activated(kind->currentIndex());
        QVERIFY(!line("spid_1")->isVisible());
        QVERIFY(!line("tei_1")->isVisible());
        QVERIFY(!m_screen->findChild<QWidget *>("order.b2_services")->isVisible());
        kind->setCurrentIndex(kind->findData("bri"));
        emit kind->activated(kind->currentIndex());
        type("office", "SOUTH"); // its variant has no SPID
        QVERIFY(!line("spid_1")->isVisible());
        QVERIFY(line("tei_1")->isVisible());
        type("protocol_variant", "ni2");
        QVERIFY(line("spid_1")->isVisible());
    }

    void eightTerminalsAndNoMore()
    {
        for (int n = 2; n <= 8; ++n)
            button("order.add_terminal")->click();
        QVERIFY(line("dn_8")->isVisible());
        QCOMPARE(QApplication::focusWidget(), line("dn_8"));
        QVERIFY(!button("order.add_terminal")->isVisible());
    }

    void aKilledProgramShowsTheDraftAgain()
    {
        type("order_number", "O-2003");
        type("customer", "Half Written");
        m_screen->findChild<Form *>()->goTo("premises");
        QTest::keyClicks(QApplication::focusWidget(), "5 Rou");
        QTest::qWait(Form::keepAfterMs + 200);
        // Nothing is closed in good order here, and the field is not left.
        DeskRecords other(false);
        auto again = DesktopContext::open(m_records->path(), "lind", DeskRecords::now());
        QVERIFY(again);
        OrderScreen second(**again);
        QCOMPARE(second.findChild<QLineEdit *>("order.customer")->text(), "Half Written");
        QCOMPARE(second.findChild<QLineEdit *>("order.order_number")->text(), "O-2003");
        QCOMPARE(second.findChild<QLineEdit *>("order.premises")->text(), "5 Rou");
        second.findChild<QAbstractButton *>("order.discard")->click();
        QCOMPARE(second.findChild<QLineEdit *>("order.customer")->text(), "");
    }

    void anOrderIsChanged()
    {
        m_screen->open("O-1003");
        QCOMPARE(m_screen->title(), "Change order O-1003");
        QCOMPARE(line("customer")->text(), "Elm Road School");
        QTRY_COMPARE(verdict(), "In the records as it stands here");
        QVERIFY(!button("order.save")->isEnabled());
        type("customer", "Elm Road Primary School");
        QTRY_VERIFY(button("order.save")->isEnabled());
        QSignalSpy opened(m_screen.get(), &Screen::openOrder);
        button("order.save")->click();
        QCOMPARE(boardRow("O-1003").customer, "Elm Road Primary School");
        QCOMPARE(opened.first().first().toString(), "O-1003");
    }

    void aNumberThatIsThereIsNotOverwritten()
    {
        typeWholeOrder("O-1003");
        QTRY_COMPARE(verdict(), "An order of this number is there");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(boardRow("O-1003").customer, "Elm Road School");
        button("order.existing")->click();
        QCOMPARE(line("customer")->text(), "Elm Road School");
    }

    void upAndDownChangeTheDay()
    {
        type("due_date", "2026-02-28");
        line("due_date")->setFocus();
        QTest::keyClick(line("due_date"), Qt::Key_Up);
        QCOMPARE(line("due_date")->text(), "2026-03-01");
        QTest::keyClick(line("due_date"), Qt::Key_Down);
        QCOMPARE(line("due_date")->text(), "2026-02-28");
    }
};

QTEST_MAIN(OrderScreenTest)
#include "OrderScreenTest.moc"
