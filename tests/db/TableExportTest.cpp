#include "db/TableExport.h"

#include <QTest>

using namespace loopwright;

class TableExportTest : public QObject
{
    Q_OBJECT
private slots:
    void leavesNoTableOut()
    {
        const auto database = Database::open(":memory:");
        QVERIFY(database);
        QStringList exported = exportedTables(true);
        exported.sort();
        QCOMPARE(exported, *tablesThere(*database));
    }
    void givesColumnsThenRows()
    {
        const auto database = Database::open(":memory:");
        QList<QStringList> rows;
        QVERIFY(exportTable(*database, "meta", [&rows](const QStringList &row) {
            rows << row;
            return Result<void>();
        }));
        QCOMPARE(rows.front(), (QStringList{"id", "key", "value"}));
        QVERIFY(rows.size() > 2);
    }
    void leavesTheUnpublishedOutUnlessInternal()
    {
        QVERIFY(!exportedTables(false).contains("office_test_line"));
        QVERIFY(exportedTables(true).contains("office_test_line"));
    }
};

QTEST_APPLESS_MAIN(TableExportTest)
#include "TableExportTest.moc"
