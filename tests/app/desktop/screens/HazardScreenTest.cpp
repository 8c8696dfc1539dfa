#include "app/desktop/screens/HazardScreen.h"

#include "app/actions/Evidence.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskRecords.h"
#include "tests/support/Jobs.h"

#include <QCheckBox>
#include <QJsonDocument>
#include <QSignalSpy>
#include <QTableView>

using namespace loopwright;

class HazardScreenTest : public QObject
{
    Q_OBJECT

    /// 88 V from tip to ground on the pair of the order.
    static void readHazard(DeskRecords &records, const QString &order, int id)
    {
        const QJsonObject card = jobs::fact(
            id, "safety", 3,
            {{"office_connected", false},
             {"place", "terminal 4"},
             {"wet", true},
             {"ac_v", QJsonObject{{"tip_ground", 88}, {"ring_ground", 0.5}, {"tip_ring", 87.5}}},
             {"dc_v", QJsonObject{{"tip_ground", 0}, {"ring_ground", 0}, {"tip_ring", 0}}},
             {"confirmed",
              QJsonArray{"foreign_voltage", "bonding_ground", "storm", "work_position"}}});
        const QByteArray file =
            QJsonDocument(
                QJsonObject{{"order", order}, {"installer", "K7"}, {"facts", QJsonArray{card}}})
                .toJson();
        const auto recorded = recordFile(records.records(), file, "hazard.json");
        QVERIFY2(recorded, recorded ? "" : qPrintable(recorded.error().text()));
    }

private slots:
    void noneIsSaidToBeNone()
    {
        DeskRecords records(false);
        HazardScreen screen(records.workplace());
        screen.resize(em(100), em(40));
        screen.show();
        screen.refresh();
        auto *summary = screen.findChild<SignLine *>("hazards.summary");
        QTRY_COMPARE(summary->sign(), Status::Done);
        QTRY_VERIFY(summary->width() > em(90)); // on one line, at the top
        QVERIFY(summary->geometry().bottom() < em(10));
        QVERIFY(!screen.findChild<QTableView *>("hazards.list")->isVisible());
    }
    void openOnesStandFirstAndOpenTheirJob()
    {
        DeskRecords records;
        readHazard(records, "O-1003", 801);
        HazardScreen screen(records.workplace());
        screen.resize(em(110), em(40));
        screen.show();
        screen.refresh();
        auto *table = screen.findChild<QTableView *>("hazards.list");
        QTRY_VERIFY(table->model()->rowCount() > 0);
        const auto cell = [table](int column) {
            return table->model()->index(0, column).data().toString();
        };
        QCOMPARE(cell(0), "OPEN");
        QVERIFY2(cell(1).contains("88 V AC, tip to ground"), qPrintable(cell(1)));
        QCOMPARE(cell(3), "terminal 4 wet");
        QCOMPARE(cell(6), "O-1003");
        QCOMPARE(screen.findChild<SignLine *>("hazards.summary")->sign(), Status::Failed);
        QVERIFY(screen.findChild<SignLine *>("hazards.chosen")
                    ->text()
                    .contains("nobody has said yet how it was closed"));
        const QJsonObject told =
            jobs::fact(802, "referred", 9, {{"to", "power company"}, {"reference", "P-7"}});
        QVERIFY(recordFile(records.records(),
                           QJsonDocument(QJsonObject{{"order", "O-1003"},
                                                     {"installer", "rivera"},
                                                     {"facts", QJsonArray{told}}})
                               .toJson(),
                           "told.json"));
        screen.refresh();
        QTRY_VERIFY2(cell(7).startsWith("power company, reference P-7, by A. Rivera, 4 March 2026"),
                     qPrintable(cell(7)));
        QVERIFY(screen.findChild<SignLine *>("hazards.chosen")
                    ->text()
                    .contains("Told: power company, reference P-7, by A. Rivera"));
        QSignalSpy opened(&screen, &Screen::openOrder);
        screen.takeFocus();
        QTest::keyClick(table, Qt::Key_Return);
        QCOMPARE(opened.first().first().toString(), "O-1003");
    }
};

QTEST_MAIN(HazardScreenTest)
#include "HazardScreenTest.moc"
