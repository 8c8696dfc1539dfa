#include "db/PostgresSql.h"

#include <QTest>

using namespace loopwright;

// How a statement is said to PostgreSQL (PostgreSQL 15: 4.1.2.4, `$1` for parameters by place).
class PostgresSqlTest : public QObject
{
    Q_OBJECT

private slots:
    void saysItsParametersByNumber()
    {
        const PostgresSql made =
            toPostgres("SELECT a FROM t WHERE a = :value OR b = :value AND c > :more");
        QCOMPARE(QString::fromStdString(made.text),
                 "SELECT a FROM t WHERE a = $1 OR b = $1 AND c > $2");
        QCOMPARE(made.parameters, (std::vector<std::string>{"value", "more"}));
        QVERIFY(!made.changesRows);
    }
    void leavesTextsAndCastsAlone()
    {
        const PostgresSql made = toPostgres("SELECT ':a', \":b\", x::text, 'it''s :c' FROM t");
        QCOMPARE(QString::fromStdString(made.text),
                 "SELECT ':a', \":b\", x::text, 'it''s :c' FROM t");
        QVERIFY(made.parameters.empty());
    }
    void leavesCommentsOut()
    {
        const PostgresSql made = toPostgres("-- about :a\nSELECT 1 -- and :b\nFROM t");
        QCOMPARE(QString::fromStdString(made.text).simplified(), "SELECT 1 FROM t");
        QVERIFY(made.parameters.empty());
    }
    void leavesHintsOut()
    {
        const PostgresSql made =
            toPostgres("SELECT 1 FROM a INDEXED BY a_due CROSS JOIN b NOT INDEXED ON b.id = a.b");
        QCOMPARE(QString::fromStdString(made.text), "SELECT 1 FROM a JOIN b ON b.id = a.b");
    }
    void knowsWhatChangesRows_data()
    {
        QTest::addColumn<QByteArray>("sql");
        QTest::addColumn<bool>("changes");
        for (const auto &[sql, changes] : {std::pair("INSERT INTO t VALUES (1)", true),
                                           {"-- so\nUPDATE t SET a = 1", true},
                                           {"DELETE FROM t", true},
                                           {"SELECT 1", false},
                                           {"WITH x AS (SELECT 1) SELECT 2", false}})
            QTest::newRow(sql) << QByteArray(sql) << changes;
    }
    void knowsWhatChangesRows()
    {
        QFETCH(QByteArray, sql);
        QTEST(toPostgres(sql.toStdString()).changesRows, "changes");
    }
    /// What is laid over stands in the place of something.
    void nothingIsLaidOverForNothing()
    {
        QVERIFY(postgresCatalog().troubles().isEmpty());
        QCOMPARE(postgresCatalog().statementLabels(), SqlCatalog::embedded().statementLabels());
    }
};

QTEST_GUILESS_MAIN(PostgresSqlTest)
#include "PostgresSqlTest.moc"
