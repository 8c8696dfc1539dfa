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

    void growsWithoutLosingItsPlace()
    {
        BoardModel model;
        model.show(rows(3), today);
        QSignalSpy inserted(&model, &QAbstractItemModel::rowsInserted);
        QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
        model.show(rows(5), today);
        QCOMPARE(inserted.count(), 1);
        model.show(rows(5), today); // the same orders: nothing to select anew
        QCOMPARE(reset.count(), 0);
        model.show({row("9")}, today);
        QCOMPARE(reset.count(), 1);
    }

    void asksForMoreOnceAndOnlyWhereThereIsMore()
    {
        BoardModel model;
        model.show(rows(10), today);
        QVERIFY(!model.canFetchMore({}));
        model.setTotal(5000);
        QVERIFY(model.canFetchMore({}));
        QSignalSpy wanted(&model, &BoardModel::moreWanted);
        model.fetchMore({});
        model.fetchMore({});
        QCOMPARE(wanted.count(), 1);
        QCOMPARE(wanted.first().first().toInt(), boardRowsAtOnce);
        QVERIFY(!model.canFetchMore({}));
        model.show(rows(boardRowsAtOnce), today);
        QVERIFY(model.canFetchMore({}));
        model.setTotal(boardRowsAtOnce);
        QVERIFY(!model.canFetchMore({}));
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
        QTest::newRow("done") << -3 << Stage::Done << "";
    }
    void saysInWordsWhenItIsDue()
    {
        QFETCH(int, days);
        QFETCH(Stage, stage);
        QFETCH(QString, words);
        BoardRow order = row("1");
        order.due = today.addDays(days);
        order.stage = stage;
        BoardModel model;
        model.show({order}, today);
        const QString due = shown(model, 0, BoardModel::Due);
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
        QCOMPARE(shown(model, 0, BoardModel::Outcome), "Held");
        QCOMPARE(shown(model, 1, BoardModel::Outcome), "Cancelled");
        QCOMPARE(shown(model, 2, BoardModel::Outcome), "Not accepted");
        QCOMPARE(model.rowOf("2"), 1);
        QCOMPARE(model.rowOf("none"), -1);
        QCOMPARE(model.index(0, BoardModel::Installer).data(Qt::AccessibleTextRole).toString(),
                 "Installer: none");
    }
};

QTEST_MAIN(BoardModelTest)
#include "BoardModelTest.moc"
