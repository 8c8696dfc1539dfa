#include "app/desktop/widgets/Table.h"

#include "app/desktop/Theme.h"
#include "app/desktop/models/TextTable.h"

#include <QAction>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QGuiApplication>
#include <QHeaderView>
#include <QJsonObject>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>

using namespace loopwright;

class TableTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<TextTable> m_model;
    std::unique_ptr<Table> m_table;

    static QString copied() { return QGuiApplication::clipboard()->text(); }
    /// Of the current row, by the menu key; closed by whoever asks.
    QMenu *menu() const
    {
        QContextMenuEvent event(QContextMenuEvent::Keyboard, {1, 1},
                                m_table->viewport()->mapToGlobal(QPoint(1, 1)));
        QApplication::sendEvent(m_table->viewport(), &event);
        return m_table->findChild<QMenu *>("list.menu");
    }

private slots:
    void init()
    {
        m_model = std::make_unique<TextTable>(QStringList{"pair", "place", "volts"});
        m_model->show({{{"9-14", "pole 3", "48"}, Status::None, "a", false},
                       {{"9-15", "two\nlines\tand a tab", "0"}, Status::None, "b", false},
                       {{"9-16", "", "-7"}, Status::None, "c", false}});
        m_table = std::make_unique<Table>("list", "List");
        m_table->setModel(m_model.get());
        m_table->show();
        QGuiApplication::clipboard()->clear();
    }

    void theSelectedRowsAreCopied()
    {
        m_table->activateWindow(); // a shortcut holds in the active window alone
        QVERIFY(QTest::qWaitForWindowActive(m_table.get()));
        m_table->setCurrentIndex(m_model->index(1, 0));
        QTest::keyClick(m_table.get(), Qt::Key_C, Qt::ControlModifier);
        QCOMPARE(copied(), "9-15\ttwo lines and a tab\t0\n");
        QTest::keyClick(m_table.get(), Qt::Key_A, Qt::ControlModifier);
        QTest::keyClick(m_table.get(), Qt::Key_C, Qt::ControlModifier);
        QCOMPARE(copied(), "9-14\tpole 3\t48\n9-15\ttwo lines and a tab\t0\n9-16\t\t-7\n");
    }

    void onlyWhatIsShownIsCopiedInItsOrder()
    {
        m_table->setColumnEms({5, 8, 4});
        m_table->horizontalHeader()->moveSection(2, 0);
        m_table->setColumnHidden(1, true);
        m_table->selectRow(0);
        m_table->copyRows();
        QCOMPARE(copied(), "48\t9-14\n");
        m_table->setCellText(
            [](int row, int column) { return QString("%1.%2").arg(row).arg(column); });
        m_table->copyRows();
        QCOMPARE(copied(), "0.2\t0.0\n");
    }

    void aHeadingIsNotCutUnlessByHand()
    {
        TextTable model({"a very long heading indeed", "b", "the last heading, long too"});
        Table table("wide", "Wide");
        table.setModel(&model);
        table.resize(300, 200);
        table.show();
        table.setColumnEms({3, 3, 3});
        const QHeaderView *header = table.horizontalHeader();
        for (const int column : {0, 2})
            QVERIFY(header->sectionSize(column) >= header->sectionSizeHint(column));
        table.resize(1500, 200); // the last one takes what is left
        QTRY_VERIFY(header->sectionSize(2) > 2 * header->sectionSizeHint(2));
        table.resize(200, 200);
        QTRY_COMPARE(header->sectionSize(2), header->sectionSizeHint(2));
        table.horizontalHeader()->resizeSection(0, 40); // as a person drags it
        table.setColumnEms({40 / double(em(100)) * 100, 3, 3});
        QCOMPARE(header->sectionSize(0), 40);
    }

    /// What would be elided takes the room to spare, not the last column alone.
    void contentsTakeTheRoomToSpare()
    {
        const QString customer = "Harbour and Sons, Ship Chandlers";
        TextTable model({"order", "customer", "why"});
        Table table("spare", "Spare");
        table.setModel(&model);
        table.setColumnEms({3, 5, 3});
        table.resize(em(60), 200);
        table.show();
        model.show({{{"1", customer, "ok"}, Status::None, "1", false}});
        const QHeaderView *header = table.horizontalHeader();
        const int needed = table.fontMetrics().horizontalAdvance(customer);
        QTRY_VERIFY(header->sectionSize(1) > needed);
        QVERIFY(header->sectionSize(1) < needed + em(3));
        QVERIFY(table.columns().at(1).toObject().value("ems").toDouble() ==
                5); // it is nobody's wish
        const int whole = header->sectionSize(1);
        table.resize(em(12), 200);
        QTRY_VERIFY(header->sectionSize(1) < whole);
        table.resize(em(60), 200);
        QTRY_COMPARE(header->sectionSize(1), whole);
        table.horizontalHeader()->resizeSection(1, em(6)); // by hand
        table.resize(em(61), 200);
        QTest::qWait(20);
        QCOMPARE(header->sectionSize(1), em(6));
    }
    void columnsThatCanBeArrangedKeepTheirWidths()
    {
        TextTable model({"order", "customer", "why"});
        Table table("kept", "Kept");
        table.setModel(&model);
        table.setColumnEms({6, 6, 6});
        table.horizontalHeader()->setSectionsMovable(true);
        table.resize(em(60), 200);
        table.show();
        model.show({{{"1", "Harbour and Sons, Ship Chandlers", ""}, Status::None, "1", false}});
        QTest::qWait(20);
        QCOMPARE(table.horizontalHeader()->sectionSize(1), em(6));
    }

    void nothingSelectedLeavesTheClipboard()
    {
        QGuiApplication::clipboard()->setText("kept");
        m_table->clearSelection();
        m_table->copyRows();
        m_table->copyCell({});
        QCOMPARE(copied(), "kept");
    }

    void theMenuOfARowCopiesAndOpens()
    {
        QVERIFY(!menu()); // no row is current
        m_table->setCurrentIndex(m_model->index(2, 2));
        QMenu *bare = menu();
        QVERIFY(bare);
        QVERIFY(!bare->findChild<QAction *>("open")); // nobody would
        bare->findChild<QAction *>("copy.cell")->trigger();
        QCOMPARE(copied(), "-7");
        bare->findChild<QAction *>("copy.rows")->trigger();
        QCOMPARE(copied(), "9-16\t\t-7\n");
        bare->close();
        QTRY_VERIFY(!m_table->findChild<QMenu *>("list.menu"));

        QSignalSpy opened(m_table.get(), &Table::opened);
        QMenu *whole = menu();
        QVERIFY(whole);
        whole->findChild<QAction *>("open")->trigger();
        QCOMPARE(opened.size(), 1);
        QCOMPARE(opened[0][0].toModelIndex().row(), 2);
        whole->close();
    }

    void whoListensSelectsAllHimself()
    {
        QSignalSpy wanted(m_table.get(), &Table::allWanted);
        QTest::keyClick(m_table.get(), Qt::Key_A, Qt::ControlModifier);
        QCOMPARE(wanted.size(), 1);
        QVERIFY(!m_table->selectionModel()->hasSelection());
    }
};

QTEST_MAIN(TableTest)
#include "TableTest.moc"
