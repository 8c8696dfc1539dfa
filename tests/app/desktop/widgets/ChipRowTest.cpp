#include "app/desktop/widgets/ChipRow.h"

#include <QSignalSpy>
#include <QTest>

using namespace loopwright;

class ChipRowTest : public QObject
{
    Q_OBJECT

private slots:
    void choosesAndLetsGo()
    {
        ChipRow row("stage", "Stage", {{"loop", "Loop"}, {"safety", "Safety"}});
        auto *loop = row.findChild<QAbstractButton *>("chip.stage.loop");
        auto *safety = row.findChild<QAbstractButton *>("chip.stage.safety");
        QSignalSpy changed(&row, &ChipRow::changed);
        loop->click();
        QCOMPARE(row.chosen(), "loop");
        QVERIFY(loop->isChecked());
        safety->click();
        QCOMPARE(row.chosen(), "safety");
        QVERIFY(!loop->isChecked());
        safety->click();
        QCOMPARE(row.chosen(), "");
        QVERIFY(!safety->isChecked());
        QCOMPARE(changed.count(), 3);
    }

    void saysItsCounts()
    {
        ChipRow row("stage", "Stage", {{"loop", "Loop"}, {"safety", "Safety"}});
        row.setCounts({{"loop", 1}});
        QCOMPARE(row.count("loop"), 1);
        QCOMPARE(row.count("safety"), 0);
        QCOMPARE(row.findChild<QAbstractButton *>("chip.stage.loop")->accessibleName(),
                 "Loop, 1 order");
        QCOMPARE(row.findChild<QAbstractButton *>("chip.stage.safety")->accessibleName(),
                 "Safety, 0 orders");
        row.setCounted("row", "rows");
        row.setCounts({{"safety", 4}});
        QCOMPARE(row.findChild<QAbstractButton *>("chip.stage.safety")->accessibleName(),
                 "Safety, 4 rows");
    }

    void arrowsWalkAndEnterChooses()
    {
        ChipRow row("stage", "Stage", {{"a", "A"}, {"b", "B"}, {"c", "C"}});
        row.show();
        row.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&row));
        auto *first = row.findChild<QAbstractButton *>("chip.stage.a");
        first->setFocus();
        QTest::keyClick(first, Qt::Key_Left);
        QCOMPARE(QApplication::focusWidget()->objectName(), "chip.stage.c");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Right);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Right);
        QCOMPARE(QApplication::focusWidget()->objectName(), "chip.stage.b");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QCOMPARE(row.chosen(), "b");
    }

    void wrapsWhereThereIsNoRoom()
    {
        QList<Chip> chips;
        for (int i = 0; i < 12; ++i)
            chips.append({QString::number(i), QString("Station %1").arg(i)});
        ChipRow row("stage", "Stage", chips);
        QVERIFY(row.heightForWidth(300) > row.heightForWidth(3000));
        row.resize(300, row.heightForWidth(300));
        row.show();
        for (const QAbstractButton *button : row.findChildren<QAbstractButton *>())
            QVERIFY2(row.rect().contains(button->geometry()), qPrintable(button->objectName()));
    }
};

QTEST_MAIN(ChipRowTest)
#include "ChipRowTest.moc"
