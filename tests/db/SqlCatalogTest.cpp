#include "db/SqlCatalog.h"

#include "db/SqliteConnection.h"
#include "tests/support/Records.h"
#include "tests/support/StatementParts.h"

#include <QDir>

#include <sqlite3.h>

using namespace loopwright;

class SqlCatalogTest : public QObject
{
    Q_OBJECT
private slots:
    void readsNamesAndParts()
    {
        SqlCatalog catalog;
        catalog.add("-- About.\n\n-- name: find\nSELECT 1\nWHERE 1\n-- part: more\nAND 2\n", "x");
        QVERIFY(catalog.troubles().isEmpty());
        QCOMPARE(*catalog.statement("x.find"), std::string("SELECT 1\nWHERE 1\n"));
        QVERIFY(!catalog.statement("x.more"));
        QCOMPARE(catalog.compose("x.find", {"x.more"}),
                 std::string("SELECT 1\nWHERE 1\nAND 2\n\n"));
        QVERIFY(catalog.compose("x.find", {"x.none"}).empty());
        QVERIFY(catalog.compose("x.none", {}).empty());
    }
    void tellsALabelThatStandsThereTwice()
    {
        SqlCatalog catalog;
        catalog.add("SELECT 0\n-- name: a\nSELECT 1\n-- name: a\nSELECT 2\n", "x");
        QCOMPARE(catalog.troubles(), (QList<QByteArray>{"x: text without a label: SELECT 0",
                                                        "x.a stands there twice"}));
    }
    void everyFileIsBuiltIn_data()
    {
        QTest::addColumn<QString>("folder");
        QTest::newRow("queries") << "queries";
        QTest::newRow("migrations") << "migrations";
    }
    void everyFileIsBuiltIn()
    {
        QFETCH(QString, folder);
        const QDir dir(LOOPWRIGHT_SOURCE_DIR "/db/" + folder);
        QVERIFY(!dir.entryList({"*.sql"}).isEmpty());
        QCOMPARE(embeddedSqlFiles(folder), dir.entryList({"*.sql"}, QDir::Files, QDir::Name));
    }

    // So a slip in a statement fails here, not in the van.
    void everyStatementCanBePrepared_data()
    {
        QTest::addColumn<std::string>("label");
        QVERIFY(SqlCatalog::embedded().troubles().isEmpty());
        for (const std::string &label : SqlCatalog::embedded().statementLabels())
            QTest::newRow(label.c_str()) << label;
    }
    void everyStatementCanBePrepared()
    {
        QFETCH(std::string, label);
        const Database database = recordsInMemory();
        const std::string sql = SqlCatalog::embedded().compose(label, partsOf(label));
        sqlite3_stmt *handle = nullptr;
        const char *rest = nullptr;
        const int code =
            sqlite3_prepare_v2(database.file().handle(), sql.c_str(), -1, &handle, &rest);
        const std::unique_ptr<sqlite3_stmt, decltype(&sqlite3_finalize)> statement(
            handle, &sqlite3_finalize);
        QVERIFY2(code == SQLITE_OK, sqlite3_errmsg(database.file().handle()));
        QVERIFY2(QByteArray(rest).trimmed().isEmpty(), "holds more than one statement");
        for (int i = 1; i <= sqlite3_bind_parameter_count(handle); ++i) {
            const char *name = sqlite3_bind_parameter_name(handle, i);
            QVERIFY2(name && name[0] == ':', "has a parameter without a name");
        }
    }
};

QTEST_GUILESS_MAIN(SqlCatalogTest)
#include "SqlCatalogTest.moc"
