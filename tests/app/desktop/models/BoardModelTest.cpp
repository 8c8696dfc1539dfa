#include "app/desktop/models/BoardModel.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>

using namespace loopwright;

namespace {

const QDate today(2026, 3, 4);

BoardRow row(const QString &order)
{
    BoardRow row;
    row.order = order;
    row.circuit = "C-" + order;
    row.stage = stageAt(Station::Loop);
    row.outcome = OrderOutcome::Incomplete;
    row.status = OrderStatus::Open;
    row.due = today;
    return row;
}

std::vector<BoardRow> rows(int count)
{
    std::vector<BoardRow> all;
    for (int i = 0; i < count; ++i)
        all.push_back(row(QString::number(1000 + i)));
    return all;
}

QString shown(const BoardModel &model, int row, int column)
{
    return model.index(row, column).data().toString();
}

} // namespace

class BoardModelTest : public QObject
{
    Q_OBJECT

private slots:
    void keepsTheRulesOfAModel()
    {
        BoardModel model;
        QAbstractItemModelTester tester(&model,
                                        QAbstractItemModelTester::FailureReportingMode::QtTest);
        model.show(rows(3), today);
        model.show(rows(3), today);
        model.show(rows(7), today);
        model.show({}, today);
        model.show({row("7"), row("8")}, today);
        QCOMPARE(model.rowCount(), 2);
    }

    void theSameOrdersKeepTheirPlace()
    {
        BoardModel model;
        model.show(rows(3), today);
        QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
        model.show(rows(3), today); // nothing to select anew
        QCOMPARE(reset.count(), 0);
        model.show({row("9")}, today);
        QCOMPARE(reset.count(), 1);
    }

    void asksOnceForAPageThatIsLookedAt()
    {
        BoardModel model;
        QAbstractItemModelTester tester(&model,
                                        QAbstractItemModelTester::FailureReportingMode::QtTest);
        model.show(rows(boardRowsAtOnce), today);
        model.setTotal(1'000'000);
        QCOMPARE(model.rowCount(), 1'000'000);
        QTest::qWait(10); // the tester looks at rows too
        model.putNothing(0);
        QSignalSpy wanted(&model, &BoardModel::pageWanted);
        const int first = 2000 * boardRowsAtOnce;
        QCOMPARE(shown(model, first + 7, 0), "");
        QVERIFY(!model.isHere(first + 7));
        QCOMPARE(shown(model, first + 8, 0), "");
        QTRY_COMPARE(wanted.count(), 1);
        QCOMPARE(wanted.first().first().toInt(), first);
        QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
        std::vector<BoardRow> page = rows(boardRowsAtOnce);
        for (BoardRow &each : page)
            each.order.prepend("P");
        model.put(first, page);
        QVERIFY(changed.count() > 0);
        QCOMPARE(shown(model, first + 7, 0), "P1007");
        QCOMPARE(model.rowOf("P1007"), first + 7);
        QCOMPARE(model.rowOf("1007"), 7);
    }

    void holdsFewPagesHoweverManyWereLookedAt()
    {
        BoardModel model;
        model.show(rows(boardRowsAtOnce), today);
        model.setTotal(1'000'000);
        for (int page = 1; page < 50; ++page)
            model.put(page * boardRowsAtOnce, rows(boardRowsAtOnce));
        int held = 0;
        for (int page = 0; page < 50; ++page)
            held += model.isHere(page * boardRowsAtOnce);
        QCOMPARE(held, boardPagesHeld);
        QVERIFY(model.isHere(49 * boardRowsAtOnce));
    }

    void thereMayBeFewerThanWereCounted()
    {
        BoardModel model;
        QAbstractItemModelTester tester(&model,
                                        QAbstractItemModelTester::FailureReportingMode::QtTest);
        model.show(rows(boardRowsAtOnce), today);
        model.setTotal(5000);
        model.put(boardRowsAtOnce, {row("2000")});
        QCOMPARE(model.rowCount(), boardRowsAtOnce + 1);
        model.setTotal(10);
        QCOMPARE(model.rowCount(), 10);
    }

    void marksWhatChangedForAMoment()
    {
        BoardModel model;
        model.show(rows(3), today);
        std::vector<BoardRow> changed = rows(4);
        changed[1].reason = "Line: it is down.";
        model.show(changed, today, BoardModel::Mark::Changes);
        QVERIFY(!model.isMarked("1000"));
        QVERIFY(model.isMarked("1001"));
        QVERIFY(model.isMarked("1003"));
        QVERIFY(model.index(1, 0).data(Qt::BackgroundRole).isValid());
        QVERIFY(!model.index(0, 0).data(Qt::BackgroundRole).isValid());
        QTRY_VERIFY_WITH_TIMEOUT(!model.isMarked("1001"), 2 * boardMarkMs);
        QVERIFY(!model.index(1, 0).data(Qt::BackgroundRole).isValid());
    }

    void aColumnHasItsKeyAndStandsOnce()
    {
        BoardModel model;
        QSet<QString> keys;
        for (int column = 0; column < model.columnCount(); ++column) {
            const QString key = model.headerData(column, Qt::Horizontal, Qt::UserRole).toString();
            QCOMPARE(boardColumn(key), column);
            keys.insert(key);
        }
        QCOMPARE(keys.size(), model.columnCount());
        QCOMPARE(boardColumn(u"lunch"), -1);
    }

    void whatIsAcceptedIsNotLateAndSaysThatItsPaperLacks()
    {
        BoardRow order = row("1");
        order.due = today.addDays(-9);
        order.outcome = OrderOutcome::Accepted;
        order.stage = stageAt(Station::Certificate);
        order.paper = true;
        BoardModel model;
        model.show({order}, today);
        QVERIFY(!shown(model, 0, boardColumn(u"due")).contains("late"));
        QCOMPARE(shown(model, 0, boardColumn(u"why")), "Accepted; its certificate is not issued");
    }

    /// Of the pair of another order too, whatever else is to be said of this one.
    void anOpenHazardStandsBeforeEveryOtherReason()
    {
        BoardRow accepted = row("1"), cancelled = row("2");
        accepted.outcome = OrderOutcome::Accepted;
        accepted.paper = true;
        cancelled.status = OrderStatus::Cancelled;
        for (BoardRow *each : {&accepted, &cancelled}) {
            each->hazard = true;
            each->reason = "On another pair at these premises: 118 V AC.";
        }
        BoardModel model;
        model.show({accepted, cancelled}, today);
        const int why = boardColumn(u"why");
        for (int at : {0, 1})
            QVERIFY2(shown(model, at, why).contains("118 V AC"), qPrintable(shown(model, at, why)));
        QCOMPARE(shown(model, 1, boardColumn(u"outcome")), "Cancelled");
    }

    void saysHowLongAHazardIsOpen()
    {
        std::vector<BoardRow> hazards = rows(4);
        const char *readAt[] = {"2026-03-01T23:30:00-06:00", "2026-03-03T00:10:00-06:00",
                                "2026-03-04T09:15:00-06:00", "2026-03-05T08:00:00-06:00"};
        for (std::size_t i = 0; i < hazards.size(); ++i) {
            hazards[i].hazard = true;
            hazards[i].hazardAt = Moment::parse(QString(readAt[i]));
            hazards[i].reason = "Hazard.";
        }
        BoardModel model;
        model.show(hazards, today);
        const int why = boardColumn(u"why");
        QCOMPARE(shown(model, 0, why), "Open for 3 days. Hazard.");
        QCOMPARE(shown(model, 1, why), "Open for 1 day. Hazard.");
        QCOMPARE(shown(model, 2, why), "Open since today. Hazard.");
        QCOMPARE(shown(model, 3, why), "Open since today. Hazard."); // a clock that is ahead
    }

    void saysWhereTheWordsOfASearchAre()
    {
        BoardRow found = row("1"), other = row("2");
        found.customer = "Bright Bakery";
        found.premises = "12 Mill Lane";
        found.foundIn = {"dn_2", "spid_1", "contact", "related_order"};
        BoardModel model;
        model.show({found, other}, today);
        const QString said = "Found in: DN 2, SPID 1, Contact, Related order.";
        const auto tip = [&model](int row, QStringView column) {
            return model.index(row, boardColumn(column)).data(Qt::ToolTipRole).toString();
        };
        for (const char16_t *column : {u"order", u"stage", u"office"})
            QVERIFY2(tip(0, column).contains(said), qPrintable(tip(0, column)));
        QVERIFY(tip(0, u"customer").contains("12 Mill Lane"));
        QVERIFY(tip(0, u"customer").contains(said));
        QVERIFY(model.index(0, boardColumn(u"order"))
                    .data(Qt::AccessibleTextRole)
                    .toString()
                    .endsWith(said));
        QCOMPARE(tip(1, u"stage"), ""); // nothing is searched
    }

    void saysInWordsWhenItIsDue_data()
    {
        QTest::addColumn<int>("days");
        QTest::addColumn<Stage>("stage");
        QTest::addColumn<QString>("words");
        QTest::newRow("late") << -3 << stageAt(Station::Loop) << "3 days late";
        QTest::newRow("a day late") << -1 << stageAt(Station::Loop) << "1 day late";
        QTest::newRow("today") << 0 << stageAt(Station::Loop) << "today";
        QTest::newRow("tomorrow") << 1 << stageAt(Station::Loop) << "tomorrow";
        QTest::newRow("later") << 9 << stageAt(Station::Loop) << "";
        QTest::newRow("completed") << -3 << Stage::Done << "";
    }
    void saysInWordsWhenItIsDue()
    {
        QFETCH(int, days);
        QFETCH(Stage, stage);
        QFETCH(QString, words);
        BoardRow order = row("1");
        order.due = today.addDays(days);
        order.stage = stage;
        if (stage == Stage::Done)
            order.status = OrderStatus::Completed;
        BoardModel model;
        model.show({order}, today);
        const QString due = shown(model, 0, boardColumn(u"due"));
        if (words.isEmpty())
            QVERIFY2(!due.contains(u'·'), qPrintable(due));
        else
            QVERIFY2(due.endsWith("· " + words), qPrintable(due));
    }

    void tellsHeldAndCancelledApart()
    {
        BoardRow held = row("1"), cancelled = row("2"), failed = row("3");
        held.held = true;
        cancelled.status = OrderStatus::Cancelled;
        failed.outcome = OrderOutcome::NotAccepted;
        BoardModel model;
        model.show({held, cancelled, failed}, today);
        QCOMPARE(shown(model, 0, boardColumn(u"outcome")), "Held");
        QCOMPARE(shown(model, 1, boardColumn(u"outcome")), "Cancelled");
        QCOMPARE(shown(model, 2, boardColumn(u"outcome")), "Not accepted");
        QCOMPARE(model.rowOf("2"), 1);
        QCOMPARE(model.rowOf("none"), -1);
        QCOMPARE(model.index(0, boardColumn(u"installer")).data(Qt::AccessibleTextRole).toString(),
                 "Installer: none");
    }
};

QTEST_MAIN(BoardModelTest)
#include "BoardModelTest.moc"
