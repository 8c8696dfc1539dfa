#include "app/desktop/models/TextTable.h"

#include <QAbstractItemModelTester>
#include <QTest>

using namespace loopwright;

class TextTableTest : public QObject
{
    Q_OBJECT

private slots:
    void keepsTheRulesOfAModel()
    {
        TextTable model({"What", "Value"}, 0, {1});
        QAbstractItemModelTester tester(&model,
                                        QAbstractItemModelTester::FailureReportingMode::QtTest);
        model.show({});
        model.show({{{"a number", "555-0100"}, Status::Failed, "C-1", false},
                    {{"short row"}, Status::None, "C-2", true}});
        QCOMPARE(model.rowCount(), 2);
        model.show({{{"one", "two"}, Status::None, "", false}});
        QCOMPARE(model.rowCount(), 1);
    }

    void speaksOfEmptyCells()
    {
        TextTable model({"What", "Value"});
        model.show({{{"short row"}, Status::None, "", false}});
        QCOMPARE(model.index(0, 0).data(Qt::AccessibleTextRole).toString(), "short row");
        QCOMPARE(model.index(0, 1).data(Qt::AccessibleTextRole).toString(), "Value: none");
        QCOMPARE(model.headerData(1, Qt::Horizontal, Qt::DisplayRole).toString(), "Value");
    }
};

QTEST_MAIN(TextTableTest)
#include "TextTableTest.moc"
