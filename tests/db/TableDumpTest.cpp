#include "db/TableDump.h"

#include "tests/support/StoredJobs.h"

using namespace loopwright;

class TableDumpTest : public QObject
{
    Q_OBJECT
    static QList<QStringList> dump(const Database &database, const QString &table)
    {
        QList<QStringList> all;
        const auto done = TableDump(database).dump(table, [&all](const QStringList &row) {
            all << row;
            return Result<void>();
        });
        return done ? all : QList<QStringList>{{done.error().text()}};
    }

private slots:
    void givesEveryTable()
    {
        Database database = recordsInMemory();
        QVERIFY(*TableDump(database).isEmpty());
        QVERIFY_RESULT(jobs::addWholeJob(database));
        QVERIFY(!*TableDump(database).isEmpty());
        const auto tables = TableDump(database).tables();
        QVERIFY_RESULT(tables);
        for (const char *table : {"office", "office_test_line", "service_order", "fact", "event",
                                  "certificate_issue", "assignment", "order_state", "meta"})
            QVERIFY2(tables->contains(table), table);
        QVERIFY(tables->filter("search").isEmpty());
        for (const QString &table : *tables)
            QVERIFY2(dump(database, table).size() >= 1, qPrintable(table));
        const auto offices = dump(database, "office");
        QCOMPARE(offices.size(), 2);
        QCOMPARE(offices[0], (QStringList{"id", "office", "name", "protocol_variant", "digest"}));
        QCOMPARE(offices[1].mid(0, 4), (QStringList{"1", "NORTH", "North exchange", "ni2"}));
        QCOMPARE(dump(database, "fact").size(), 16);
        QVERIFY(isUnpublished("office_test_line") && !isUnpublished("office"));
    }
    void takesNoOtherName()
    {
        const Database database = recordsInMemory();
        QCOMPARE(dump(database, "office\"; DROP TABLE office; --").front().front(),
                 "there is no table office\"; DROP TABLE office; --");
    }
    void onlyOneTableHoldsUnpublishedNumbers()
    {
        Database database = recordsInMemory();
        QVERIFY_RESULT(jobs::addWholeJob(database));
        const auto tables = TableDump(database).tables();
        for (const QString &table : *tables) {
            bool found = false;
            for (const QStringList &row : dump(database, table))
                found = found || row.join(' ').contains("555-0199");
            QCOMPARE(found, isUnpublished(table));
        }
    }
};

QTEST_GUILESS_MAIN(TableDumpTest)
#include "TableDumpTest.moc"
