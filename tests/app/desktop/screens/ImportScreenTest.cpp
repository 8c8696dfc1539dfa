#include "app/desktop/screens/ImportScreen.h"

#include "app/actions/Board.h"
#include "app/actions/Register.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskRecords.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

using namespace loopwright;

class ImportScreenTest : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DeskRecords> m_records;
    std::unique_ptr<ImportScreen> m_screen;

    QString summary() const { return m_screen->findChild<SignLine *>("import.summary")->text(); }
    QString counts() const { return m_screen->findChild<QLabel *>("import.counts")->text(); }
    QPushButton *button(const QString &name) const
    {
        return m_screen->findChild<QPushButton *>(name);
    }
    QTableView *table() const { return m_screen->findChild<QTableView *>("import.findings"); }
    void import(const QString &path)
    {
        m_screen->choose(path);
        QVERIFY(button("import.start")->isEnabled());
        button("import.start")->click();
        QTRY_VERIFY(button("import.start")->isEnabled());
    }
    qsizetype orders()
    {
        const auto rows = boardRows(m_records->records(), {});
        return rows ? qsizetype(rows->size()) : -1;
    }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        m_screen = std::make_unique<ImportScreen>(m_records->workplace());
        m_screen->resize(em(100), em(50));
        m_screen->show();
    }
    void cleanup()
    {
        m_screen.reset();
        m_records.reset();
    }

    void knowsWhatAFileHolds_data()
    {
        QTest::addColumn<QByteArray>("content");
        QTest::addColumn<QString>("kind");
        QTest::newRow("orders") << DeskRecords::ordersCsv() << "orders";
        QTest::newRow("offices") << DeskRecords::officesCsv() << "offices";
        QTest::newRow("installers") << DeskRecords::installersCsv() << "installers";
        QTest::newRow("instruments") << DeskRecords::instrumentsCsv() << "instruments";
        QTest::newRow("byte-order mark")
            << "\xef\xbb\xbf" + DeskRecords::instrumentsCsv() << "instruments";
    }
    void knowsWhatAFileHolds()
    {
        QFETCH(QByteArray, content);
        QFETCH(QString, kind);
        m_screen->choose(m_records->file("some.csv", content));
        QCOMPARE(m_screen->findChild<QComboBox *>("import.kind")->currentData().toString(), kind);
    }

    void goodRowsGoIn()
    {
        import(m_records->file("more.csv", "installer,name,role\nbaker,J. Baker,installer\n"));
        QCOMPARE(summary(), "Everything in more.csv is in the records.");
        QVERIFY2(counts().startsWith("1 taken in"), qPrintable(counts()));
        QVERIFY(!table()->isVisible());
        QVERIFY(!button("import.rejects")->isVisible());
        QCOMPARE(people(m_records->records())->size(), 4);
    }

    void badRowsAreNamedAndCanBeWrittenOut()
    {
        const qsizetype before = orders();
        import(m_records->file(
            "mixed.csv",
            DeskRecords::orderHeader() +
                "O-3001,record_only,2026-03-11,Good Row,1 A Street,C-601,bri,NORTH,,19-1,voice,,"
                "217-555-0130,21755501300101,auto,,,,no,,\n"
                "O-3002,record_only,the day after,Bad Day,2 A Street,C-602,bri,NORTH,,19-2,voice,,"
                "217-555-0131,21755501310101,auto,,,,no,,\n"
                "O-3003,record_only,2026-03-11,No Office,3 A Street,C-603,bri,WEST,,19-3,voice,,"
                "217-555-0132,21755501320101,auto,,,,no,,\n"));
        QCOMPARE(orders(), before + 1);
        QVERIFY2(counts().contains("2 refused"), qPrintable(counts()));
        QVERIFY(table()->isVisible());
        const auto *model = table()->model();
        QStringList places;
        for (int row = 0; row < model->rowCount(); ++row)
            places << model->index(row, 0).data().toString() + ":" +
                          model->index(row, 1).data().toString();
        QVERIFY2(places.contains("3:due_date"), qPrintable(places.join(' ')));
        QVERIFY2(places.contains("4:office"), qPrintable(places.join(' ')));
        QVERIFY(button("import.rejects")->isVisible());
    }

    void aFileThatIsRefusedWholeChangesNothing_data()
    {
        QTest::addColumn<QByteArray>("content");
        QTest::newRow("unknown column") << QByteArray("installer,name,shoe_size\na,b,43\n");
        QTest::newRow("empty") << QByteArray();
        QTest::newRow("not UTF-8") << QByteArray("installer,name\nx,\xff\xfe\n");
    }
    void aFileThatIsRefusedWholeChangesNothing()
    {
        QFETCH(QByteArray, content);
        m_screen->findChild<QComboBox *>("import.kind")->setCurrentIndex(2);
        import(m_records->file("bad.csv", content));
        QCOMPARE(counts(), "Nothing was changed.");
        QVERIFY(!summary().isEmpty());
        QCOMPARE(people(m_records->records())->size(), 3);
    }

    void aFileThatIsNotThereIsTold()
    {
        import(m_records->path("no-such.csv"));
        QVERIFY2(summary().contains("cannot be read"), qPrintable(summary()));
    }

    void aStoppedImportChangesNothing()
    {
        QByteArray many = DeskRecords::orderHeader();
        for (int i = 0; i < 20'000; ++i)
            many += QByteArray("P-%1,record_only,2026-03-11,Many,1 Long Street,D-%1,bri,SOUTH,,"
                               "50-%1,voice,,+49 30 5%1,,auto,,,,no,,\n")
                        .replace("%1", QByteArray::number(100'000 + i));
        const qsizetype before = orders();
        m_screen->choose(m_records->file("many.csv", many));
        button("import.start")->click();
        QVERIFY(button("import.cancel")->isVisible());
        QVERIFY(!button("import.start")->isEnabled());
        QTest::qWait(100); // the window lives on meanwhile
        button("import.cancel")->click();
        QTRY_VERIFY_WITH_TIMEOUT(button("import.start")->isEnabled(), 60'000);
        QCOMPARE(counts(), "Nothing was changed.");
        QCOMPARE(orders(), before);
    }
};

QTEST_MAIN(ImportScreenTest)
#include "ImportScreenTest.moc"
