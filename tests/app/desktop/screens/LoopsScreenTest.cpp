// The loops of an office: judged beside the window's thread, sorted by a click, opened by Enter.

#include "app/desktop/screens/LoopsScreen.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskRecords.h"
#include "tests/support/Jobs.h"
#include "tests/support/Loops.h"

#include <QComboBox>
#include <QFile>
#include <QHeaderView>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

using namespace loopwright;

namespace {

void found(DeskRecords &records, const QString &order, int id, const LoopMakeup &makeup)
{
    const QJsonObject job{
        {"order", order},
        {"installer", "rivera"},
        {"facts", QJsonArray{jobs::fact(id, "loop", 5, {{"makeup", makeup.toJson()}})}}};
    const auto taken = recordFile(records.workplace().records(), canonicalJson(job), "job.json");
    QVERIFY2(taken, taken ? "" : qPrintable(taken.error().text()));
}

const LoopMakeup nearby = loops::makeup({loops::section(26, 6000)});
const LoopMakeup farther = loops::makeup({loops::section(26, 9000)});
const LoopMakeup loaded =
    loops::makeup({loops::section(22, 3000), loops::coil(), loops::section(22, 3000)});

} // namespace

class LoopsScreenTest : public QObject
{
    Q_OBJECT

private slots:
    void judgesSortsAndOpens()
    {
        DeskRecords records;
        found(records, "O-1001", 901, farther);
        found(records, "O-1002", 902, loaded);
        found(records, "O-1003", 903, nearby);
        LoopsScreen screen(records.workplace());
        screen.resize(em(110), em(40));
        screen.show();
        screen.refresh();
        QCOMPARE(screen.findChild<QComboBox *>("loops.office")->currentData().toString(), "NORTH");
        auto *start = screen.findChild<QPushButton *>("loops.start");
        auto *save = screen.findChild<QPushButton *>("loops.save");
        QVERIFY(!save->isEnabled());
        start->click();
        QTRY_VERIFY(start->isEnabled());
        QVERIFY(save->isEnabled());
        auto *table = screen.findChild<QTableView *>("loops.list");
        QCOMPARE(table->model()->rowCount(), 3);
        const auto cell = [table](int row, int column) {
            return table->model()->index(row, column).data().toString();
        };
        QCOMPARE(cell(0, 3), "O-1001"); // by pair
        auto *summary = screen.findChild<SignLine *>("loops.summary");
        QVERIFY2(summary->text().contains("2 suitable, 0 marginal, 1 not suitable"),
                 qPrintable(summary->text()));
        QCOMPARE(summary->sign(), Status::Failed);

        emit table->horizontalHeader()->sectionClicked(5); // loss
        QCOMPARE(cell(0, 3), "O-1003");
        emit table->horizontalHeader()->sectionClicked(0); // verdict
        emit table->horizontalHeader()->sectionClicked(0);
        QCOMPARE(cell(0, 3), "O-1002");
        QVERIFY2(cell(0, 11).contains("load coil"), qPrintable(cell(0, 11)));
        auto *chosen = screen.findChild<SignLine *>("loops.chosen");
        QVERIFY2(chosen->text().contains("Would help"), qPrintable(chosen->text()));

        // What is shown is saved, in its order, whatever was recorded since.
        found(records, "O-1002", 904, nearby);
        const QString path = records.path("loops.csv");
        QSignalSpy said(&screen, &Screen::said);
        screen.saveAs(path);
        QTRY_COMPARE(said.size(), 1);
        QVERIFY2(said.first().first().toString().startsWith("3 loops are in"),
                 qPrintable(said.first().first().toString()));
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QList<QByteArray> lines = file.readAll().split('\n');
        QCOMPARE(lines.size(), 5); // a head, and an empty one after the last
        QVERIFY2(lines[1].contains("O-1002") && lines[1].contains("not_suitable"),
                 lines[1].constData());

        QSignalSpy opened(&screen, &Screen::openOrder);
        QTest::keyClick(table, Qt::Key_Return);
        QCOMPARE(opened.first().first().toString(), "O-1002");
    }

    void oneIsNoMany()
    {
        DeskRecords records(false);
        records.take(importOffices(records.records(), DeskRecords::officesCsv(), {}));
        records.take(importInstallers(records.records(), DeskRecords::installersCsv(), {}));
        const QByteArrayList rows = DeskRecords::ordersCsv().split('\n');
        records.take(importOrders(records.records(), rows.mid(0, 3).join('\n') + '\n', {}));
        found(records, "O-1001", 901, nearby);
        LoopsScreen screen(records.workplace());
        screen.show();
        screen.refresh();
        screen.start();
        auto *summary = screen.findChild<SignLine *>("loops.summary");
        QTRY_VERIFY2(summary->text().startsWith("1 loop of "), qPrintable(summary->text()));
        QVERIFY2(summary->text().endsWith(": 1 suitable, 0 marginal, 0 not suitable. "
                                          "Of 1 pair no make-up is recorded."),
                 qPrintable(summary->text()));
        const QString path = records.path("loop.csv");
        QSignalSpy said(&screen, &Screen::said);
        screen.saveAs(path);
        QTRY_COMPARE(said.size(), 1);
        QCOMPARE(said.first().first().toString(), QString("1 loop is in %1.").arg(path));
    }

    /// As the reader's country measures.
    void lengthsInFeetOrMetres()
    {
        DeskRecords records;
        found(records, "O-1001", 901, nearby);
        const auto lengthIn = [&records](const QLocale &locale) -> QString {
            QLocale::setDefault(locale);
            LoopsScreen screen(records.workplace());
            screen.refresh();
            auto *start = screen.findChild<QPushButton *>("loops.start");
            start->click();
            [&] { QTRY_VERIFY(start->isEnabled()); }();
            auto *model = screen.findChild<QTableView *>("loops.list")->model();
            QLocale::setDefault(QLocale::c());
            return model->headerData(8, Qt::Horizontal).toString() + ": " +
                   model->index(0, 8).data().toString();
        };
        const QString feet = lengthIn(QLocale(QLocale::English, QLocale::UnitedStates));
        QVERIFY2(feet.startsWith("Length, ft: "), qPrintable(feet));
        QCOMPARE(lengthIn(QLocale::c()), feet);
        const double length = feet.section(' ', -1).toDouble();
        QVERIFY(length > 1000);
        QCOMPARE(lengthIn(QLocale(QLocale::German, QLocale::Germany)),
                 QString("Length, m: %1").arg(length * 0.3048, 0, 'f', 0));
    }

    void whatWouldMendItInMetres()
    {
        DeskRecords records;
        found(records, "O-1002", 902, loaded);
        QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
        LoopsScreen screen(records.workplace());
        screen.refresh();
        auto *start = screen.findChild<QPushButton *>("loops.start");
        start->click();
        [&] { QTRY_VERIFY(start->isEnabled()); }();
        QLocale::setDefault(QLocale::c());
        const QString mends =
            screen.findChild<QTableView *>("loops.list")->model()->index(0, 11).data().toString();
        QVERIFY2(mends.contains(", at 914 m from "), qPrintable(mends)); // 3000 ft
        const QString chosen = screen.findChild<SignLine *>("loops.chosen")->text();
        QVERIFY2(chosen.contains(mends) && !chosen.contains(" ft"), qPrintable(chosen));
    }

    void anOfficeWithoutMakeups()
    {
        DeskRecords records;
        LoopsScreen screen(records.workplace());
        screen.show();
        screen.refresh();
        screen.start();
        auto *summary = screen.findChild<SignLine *>("loops.summary");
        QTRY_VERIFY2(summary->text().contains("no make-up is recorded"),
                     qPrintable(summary->text()));
        QVERIFY(!screen.findChild<QTableView *>("loops.list")->isVisible());
    }
};

QTEST_MAIN(LoopsScreenTest)
#include "LoopsScreenTest.moc"
