#include "app/desktop/screens/IdentifierScreen.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/ChipRow.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/SpidParts.h"
#include "tests/support/DeskRecords.h"
#include "tests/support/FileDialog.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

using namespace loopwright;

class IdentifierScreenTest : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DeskRecords> m_records;
    std::unique_ptr<IdentifierScreen> m_desk;

    QTableView *table() const { return m_desk->findChild<QTableView *>("identifiers.verdicts"); }
    QString cell(int row, int column) const
    {
        return table()->model()->index(row, column).data().toString();
    }
    QString line(const QString &name) const
    {
        return m_desk->findChild<SignLine *>("identifiers." + name)->text();
    }
    QLineEdit *edit(const QString &name) const
    {
        return m_desk->findChild<QLineEdit *>("identifiers." + name);
    }
    void choose(const QString &variant)
    {
        auto *combo = m_desk->findChild<QComboBox *>("identifiers.variant");
        combo->setCurrentIndex(combo->findData(variant));
        QCOMPARE(combo->currentData().toString(), variant);
    }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>(false);
        m_desk = std::make_unique<IdentifierScreen>(m_records->workplace());
        m_desk->resize(em(110), em(60));
        m_desk->show();
        m_desk->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_desk.get()));
        m_desk->takeFocus();
        choose("ni-generic");
    }
    void cleanup()
    {
        m_desk.reset();
        m_records.reset();
    }

    void aTypedListGetsItsVerdicts()
    {
        auto *list = m_desk->findChild<QPlainTextEdit *>("identifiers.list");
        QTest::keyClicks(list, "21755501430101");
        QTest::keyClick(list, Qt::Key_Return);
        QTest::keyClicks(list, "2175550144O101");
        QTRY_COMPARE(table()->model()->rowCount(), 2);
        QTRY_COMPARE(cell(1, 1), "error");
        QCOMPARE(cell(0, 1), "ok");
        QCOMPARE(cell(1, 6), "21755501440101"); // the repair
        auto *chips = m_desk->findChild<ChipRow *>();
        QCOMPARE(chips->count("error"), 1);
        QCOMPARE(chips->count("ok"), 1);
        chips->findChild<QAbstractButton *>("chip.verdict.error")->click();
        QCOMPARE(table()->model()->rowCount(), 1);
        QCOMPARE(cell(0, 0), "2");
    }

    void verdictsAreSaved()
    {
        auto *list = m_desk->findChild<QPlainTextEdit *>("identifiers.list");
        auto *save = m_desk->findChild<QPushButton *>("identifiers.save");
        QSignalSpy said(m_desk.get(), &Screen::said);
        for (const auto &[spids, sentence] :
             {std::pair("21755501430101", "1 row is in %1."),
              {"21755501430101\n21755501440101", "2 rows are in %1."}}) {
            list->setPlainText(spids);
            QTRY_COMPARE(table()->model()->rowCount(), 1 + int(QByteArray(spids).count('\n')));
            QTRY_VERIFY(save->isEnabled());
            const QString path = m_records->path("verdicts-%1.csv").arg(said.size());
            filing::answer(path);
            const qsizetype before = said.size();
            save->click();
            QTRY_COMPARE(said.size(), before + 1);
            QCOMPARE(said.last().first().toString(), QString(sentence).arg(path));
        }
    }

    void anotherVariantIsAnotherVerdict()
    {
        auto *list = m_desk->findChild<QPlainTextEdit *>("identifiers.list");
        list->setPlainText("21755501430101");
        QTRY_COMPARE(cell(0, 1), "ok");
        choose("dss1"); // has no SPID
        QTRY_COMPARE(cell(0, 1), "error");
    }

    void aRowIsLookedAtClosely()
    {
        m_desk->openFile(m_records->file(
            "list.csv", "variant,spid,dn\nni2,21755501430101,217-555-0143\nni2,2175550144O101,\n"));
        QTRY_COMPARE(table()->model()->rowCount(), 2);
        table()->setCurrentIndex(table()->model()->index(0, 0));
        QCOMPARE(edit("spid")->text(), "21755501430101");
        QCOMPARE(edit("dn")->text(), "217-555-0143");
        const QString words = m_desk->findChild<SpidParts *>()->spoken();
        QVERIFY2(words.contains("217") && words.contains("555"), qPrintable(words));
        QVERIFY2(line("verdict").startsWith("ok"), qPrintable(line("verdict")));
        m_desk->findChild<QPushButton *>("identifiers.let_go")->click();
        QTRY_COMPARE(table()->model()->rowCount(), 0);
    }

    void aMalformedFileIsTold()
    {
        m_desk->openFile(m_records->file("list.csv", "variant,spid,shoe\nni2,1,2\n"));
        QTRY_VERIFY2(line("summary").contains("shoe"), qPrintable(line("summary")));
        QVERIFY(!m_desk->findChild<QPushButton *>("identifiers.save")->isEnabled());
    }

    void aCauseIsLookedUp_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("says");
        // ITU-T Q.850 (05/98), table 1.
        QTest::newRow("17") << "17"
                            << "User busy";
        QTest::newRow("88") << "88"
                            << "Incompatible destination";
        QTest::newRow("0") << "0"
                           << "from 1 to 127";
        QTest::newRow("no number") << "x"
                                   << "from 1 to 127";
    }
    void aCauseIsLookedUp()
    {
        QFETCH(QString, typed);
        QFETCH(QString, says);
        edit("cause")->setFocus();
        QTest::keyClicks(edit("cause"), typed);
        QVERIFY2(line("cause_name").contains(says, Qt::CaseInsensitive),
                 qPrintable(line("cause_name")));
    }
};

QTEST_MAIN(IdentifierScreenTest)
#include "IdentifierScreenTest.moc"
