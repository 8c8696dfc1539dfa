#include "app/desktop/screens/ReportScreen.h"

#include "app/desktop/Theme.h"
#include "app/desktop/models/TextTable.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskRecords.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableView>

using namespace loopwright;

class ReportScreenTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<DeskRecords> m_records;
    std::unique_ptr<ReportScreen> m_screen;

    void show(bool filled = true)
    {
        m_screen.reset();
        m_records = std::make_unique<DeskRecords>(filled);
        m_screen = std::make_unique<ReportScreen>(m_records->workplace());
        m_screen->resize(em(90), em(50));
        m_screen->show();
        m_screen->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_screen.get()));
        m_screen->refresh();
    }
    QTableView *table(const char *name) const
    {
        return m_screen->findChild<QTableView *>(QLatin1StringView(name));
    }
    QString cell(const char *name, int row, int column) const
    {
        return table(name)->model()->index(row, column).data().toString();
    }
    int rows(const char *name) const
    {
        return table(name)->model() ? table(name)->model()->rowCount() : 0;
    }
    /// By the keyboard, as a person chooses.
    void choose(const char *name, const QString &word) const
    {
        auto *choice = m_screen->findChild<QComboBox *>(QLatin1StringView(name));
        choice->setCurrentIndex(choice->findData(word));
        emit choice->activated(choice->currentIndex());
    }

private slots:
    void cleanup()
    {
        m_screen.reset();
        m_records.reset();
    }

    void noOrderIsNothingToCount()
    {
        show(false);
        auto *empty = m_screen->findChild<EmptyState *>("reports.empty");
        QTRY_VERIFY(empty->isVisible());
        QVERIFY(!table("reports.figures")->isVisible());
        QCOMPARE(empty->title(), "Nothing to count");
    }

    void aFigureHasItsOrdersAndOpensThem()
    {
        show();
        choose("reports.kind", "open_age");
        QTRY_COMPARE(rows("reports.figures"), 2); // NORTH, SOUTH
        QCOMPARE(cell("reports.figures", 0, 0), "NORTH");
        QCOMPARE(cell("reports.figures", 0, 1), "7");
        QCOMPARE(m_screen->findChild<SignLine *>("reports.sum")->text().left(13), "8 open orders");
        QTRY_COMPARE(rows("reports.orders"), 7);
        m_screen->takeFocus();
        QTest::keyClick(table("reports.figures"), Qt::Key_Down);
        QTRY_COMPARE(rows("reports.orders"), 1);
        QCOMPARE(cell("reports.orders", 0, 0), "O-1005");
        QCOMPARE(m_screen->findChild<QLabel *>("reports.behind")->text(), "Orders behind SOUTH");
        QSignalSpy opened(m_screen.get(), &Screen::openOrder);
        QTest::keyClick(table("reports.figures"), Qt::Key_Return);
        QVERIFY(table("reports.orders")->hasFocus());
        QTest::keyClick(table("reports.orders"), Qt::Key_Return);
        QCOMPARE(opened.first().first().toString(), "O-1005");
    }

    void barsFollowTheFigures()
    {
        show();
        choose("reports.kind", "failing");
        QTRY_VERIFY(rows("reports.figures") > 1);
        const QAbstractItemModel *model = table("reports.figures")->model();
        const int last = model->columnCount() - 1;
        QCOMPARE(model->headerData(last, Qt::Horizontal).toString(), "Drawn");
        const auto bar = [&](int row) {
            return model->index(row, last).data(TextTable::BarRole).toDouble();
        };
        const double most = cell("reports.figures", 0, 2).toDouble(); // the most frequent is first
        for (int row = 0; row < model->rowCount(); ++row)
            QCOMPARE(bar(row), cell("reports.figures", row, 2).toDouble() / most);
        QCOMPARE(bar(0), 1.0);
    }

    void daysNarrowIt()
    {
        show();
        choose("reports.kind", "failing");
        QTRY_VERIFY(rows("reports.figures") > 1);
        auto *from = m_screen->findChild<QLineEdit *>("reports.from");
        from->setFocus();
        QTest::keyClicks(from, "2026-04-01");
        QTest::keyClick(from, Qt::Key_Return);
        QTRY_COMPARE(rows("reports.figures"), 1); // O-1007
        QTRY_COMPARE(cell("reports.orders", 0, 0), "O-1007");
        from->setText("1 April");
        QTest::keyClick(from, Qt::Key_Return);
        QTest::qWait(50);
        QCOMPARE(rows("reports.figures"), 1); // as it was, and it is said why
        bool said = false;
        for (const SignLine *line : m_screen->findChildren<SignLine *>())
            said |= line->sign() == Status::Failed && line->text() == "a day as 2026-03-31";
        QVERIFY(said);
    }

    void isSavedAsShown()
    {
        show();
        choose("reports.kind", "open_age");
        QTRY_COMPARE(rows("reports.figures"), 2);
        QSignalSpy said(m_screen.get(), &Screen::said);
        for (const char *name : {"r.csv", "r.svg", "r.pdf"}) {
            said.clear();
            m_screen->saveAs(m_records->path(name));
            QTRY_COMPARE(said.size(), 1);
            QVERIFY2(said.first().first().toString().startsWith("The report is in"),
                     qPrintable(said.first().first().toString()));
            QVERIFY(QFileInfo(m_records->path(name)).size() > 0);
        }
        said.clear();
        m_screen->saveAs("/no/such/folder/r.csv");
        QTRY_COMPARE(said.size(), 1);
        QVERIFY(!said.first().first().toString().startsWith("The report is in"));
    }

    void comesBackAsItWasLeft()
    {
        show();
        choose("reports.kind", "troubles");
        choose("reports.per", "cable");
        m_screen->findChild<QLineEdit *>("reports.to")->setText("2026-03-31");
        const QJsonObject place = m_screen->place();
        ReportScreen other(m_records->workplace());
        other.restore(place);
        QCOMPARE(other.place(), place);
        QCOMPARE(place["kind"].toString(), "troubles");
    }
};

QTEST_MAIN(ReportScreenTest)
#include "ReportScreenTest.moc"
