#include "app/desktop/screens/ImportScreen.h"

#include "app/actions/Board.h"
#include "app/actions/Register.h"
#include "app/desktop/Theme.h"
#include "app/desktop/screens/ColumnMapDialog.h"
#include "app/desktop/screens/ColumnsDialog.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskRecords.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
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

    /// Orders as another office writes them.
    static QByteArray theirOrders(const QByteArray &number, const QByteArray &kind = "a/b")
    {
        return "Auftrag,Order Type,due_date,Kunde,premises,Leitung,Anschluss,office,"
               "protocol_variant,pair,b1_services,b2_services,Rufnummer,spid_1,tei_1,NT,Farbe\n" +
               number + ",new,2026-03-20,Mill Shop,2 Mill Lane,MC-" + number + "," + kind +
               ",NORTH,,M-" + number + ",voice,,21755509" + number.right(2) + ",,,no,red\n";
    }
    ColumnMapDialog *dialog() const { return m_screen->findChild<ColumnMapDialog *>("map"); }
    void stands(int column, const char *ours)
    {
        auto *chooser = dialog()->findChild<QComboBox *>(QString("map.column.%1").arg(column));
        chooser->setCurrentIndex(chooser->findData(QString::fromLatin1(ours)));
        QCOMPARE(chooser->currentData().toString(), ours);
    }
    /// The first word's meaning; those of rows that went are gone by then.
    QComboBox *word() const
    {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        return dialog()->findChild<QComboBox *>("map.word.0");
    }
    QString state() const { return dialog()->findChild<SignLine *>("map.state")->text(); }
    QPushButton *use() const { return dialog()->findChild<QPushButton *>("map.use"); }
    void sayWhatTheirsAre()
    {
        stands(0, "order_number");
        stands(3, "customer");
        stands(5, "circuit_number");
        stands(6, "kind");
        stands(12, "dn_1");
        stands(15, "nt_supplied");
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

    /// The columns are those of the reader, and the sample goes in as it is.
    void saysItsColumnsAndSavesASample()
    {
        auto *chooser = m_screen->findChild<QComboBox *>("import.kind");
        for (const ImportKind &kind : importKinds()) {
            chooser->setCurrentIndex(chooser->findData(QString(kind.key)));
            button("import.help")->click();
            auto *shown = m_screen->findChild<ColumnsDialog *>("columns");
            QVERIFY(shown && shown->isVisible());
            const auto *rows = shown->findChild<QTableView *>("columns.table")->model();
            const CsvLayout layout = kind.form().layout();
            QCOMPARE(rows->rowCount(), layout.required.size() + layout.optional.size());
            QCOMPARE(rows->index(0, 0).data().toString(), layout.required.first());
            QCOMPARE(rows->index(0, 1).data().toString(), "yes");
            QSignalSpy told(shown, &ColumnsDialog::said);
            const QString path = m_records->file(QString(kind.key) + "-sample.csv", {});
            shown->saveSample(path);
            QCOMPARE(told.size(), 1);
            shown->close();
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
            const auto head = importHeadOf(path);
            QVERIFY(head && head->isOurs(kind) && !head->rows.empty());
        }
    }

    void knowsWhatAFileHolds_data()
    {
        QTest::addColumn<QByteArray>("content");
        QTest::addColumn<QString>("kind");
        QTest::newRow("orders") << DeskRecords::ordersCsv() << "orders";
        QTest::newRow("offices") << DeskRecords::officesCsv() << "offices";
        QTest::newRow("issuer") << QByteArray("name,address,telephone,trouble_telephone\n"
                                              "Mill,1 Mill Lane,217-555-0120,217-555-0121\n")
                                << "issuer";
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

    /// A header that is not ours is asked about, once.
    void asksWhatTheColumnsStandFor()
    {
        const qsizetype before = orders();
        m_screen->choose(m_records->file("theirs.csv", theirOrders("T-01")));
        QVERIFY(button("import.columns")->isVisible());
        button("import.start")->click();
        QVERIFY(dialog());
        QVERIFY(!use()->isEnabled()); // what has our name, but for capitals and blanks, is proposed
        QCOMPARE(dialog()->findChild<QComboBox *>("map.column.1")->currentText(), "order_type");
        QVERIFY2(state().contains("order_number") && !state().contains("order_type"),
                 qPrintable(state()));
        const auto *rows = dialog()->findChild<QTableView *>("map.columns")->model();
        QCOMPARE(rows->index(3, 1).data().toString(), "Mill Shop");
        sayWhatTheirsAre();
        QVERIFY2(use()->isEnabled(), qPrintable(state()));
        stands(16, "customer"); // two for one
        QVERIFY2(state().contains("both stand for"), qPrintable(state()));
        QVERIFY(!use()->isEnabled());
        stands(16, "");
        const auto *words = dialog()->findChild<QTableView *>("map.words")->model();
        QCOMPARE(words->rowCount(), 1);
        QCOMPARE(words->index(0, 1).data().toString(), "a/b");
        QVERIFY2(state().contains("kind: a/b"), qPrintable(state()));
        word()->setCurrentText("analog");
        QVERIFY2(!state().contains("a/b"), qPrintable(state()));
        use()->click();
        QTRY_VERIFY(button("import.start")->isEnabled() && orders() == before + 1);
        QVERIFY2(counts().startsWith("1 taken in"), qPrintable(counts()));

        // In another window of another day the same header is known.
        const QJsonObject place = m_screen->place();
        m_screen = std::make_unique<ImportScreen>(m_records->workplace());
        m_screen->restore(place);
        m_screen->show();
        m_screen->findChild<QComboBox *>("import.kind")->setCurrentIndex(3);
        import(m_records->file("more.csv", theirOrders("T-02")));
        QVERIFY(!dialog());
        QCOMPARE(orders(), before + 2);
        import(m_records->file("bad.csv", theirOrders("T-03", "fax")));
        QCOMPARE(table()->model()->index(0, 0).data().toString(), "2");
        QCOMPARE(table()->model()->index(0, 1).data().toString(), "Anschluss");
        QCOMPARE(orders(), before + 2);
    }
    void letGoOfTheColumnsNothingIsImported()
    {
        const qsizetype before = orders();
        m_screen->choose(m_records->file("theirs.csv", theirOrders("T-01")));
        button("import.start")->click();
        dialog()->reject();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QVERIFY(!dialog());
        QVERIFY(button("import.start")->isEnabled());
        QCOMPARE(orders(), before);
        QVERIFY(m_screen->place().isEmpty());
        m_screen->choose(m_records->file("ours.csv", DeskRecords::ordersCsv()));
        QVERIFY(!button("import.columns")->isVisible());
    }
    void theColumnsAreSavedAndLoaded()
    {
        m_screen->choose(m_records->file("theirs.csv", theirOrders("T-01")));
        button("import.columns")->click();
        sayWhatTheirsAre();
        word()->setCurrentText("analog");
        const ColumnMap map = dialog()->map();
        QCOMPARE(map.columns.value("Kunde"), "customer");
        QCOMPARE(map.ignored, QStringList{"Farbe"});
        QCOMPARE(map.values.value("kind").value("a/b"), "analog");
        const QString path = m_records->path("map.json");
        dialog()->saveTo(path);
        dialog()->take({});
        QVERIFY(!use()->isEnabled());
        dialog()->loadFrom(path);
        QVERIFY(dialog()->map() == map);
        QVERIFY(use()->isEnabled());
        dialog()->loadFrom(m_records->file("wrong.json", R"({"columns":{"Kunde":"kunde"}})"));
        QVERIFY2(state().contains("wrong.json: columns.Kunde"), qPrintable(state()));
        QVERIFY(dialog()->map() == map); // nothing half done
    }
};

QTEST_MAIN(ImportScreenTest)
#include "ImportScreenTest.moc"
