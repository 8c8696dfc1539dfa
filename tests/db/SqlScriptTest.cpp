#include "db/SqlScript.h"

#include <QTest>

using namespace loopwright;

class SqlScriptTest : public QObject
{
    Q_OBJECT
private slots:
    void splits_data()
    {
        QTest::addColumn<QByteArray>("script");
        QTest::addColumn<QList<QByteArray>>("pieces");
        using Pieces = QList<QByteArray>;
        QTest::newRow("nothing") << QByteArray() << Pieces();
        QTest::newRow("comments only") << QByteArray("-- a; b\n  -- c\n") << Pieces();
        QTest::newRow("two") << QByteArray("SELECT 1;\nSELECT 2;\n")
                             << Pieces{"SELECT 1;", "SELECT 2;"};
        QTest::newRow("semicolon in a text") << QByteArray("SELECT 'a;b'; SELECT \"c;d\";")
                                             << Pieces{"SELECT 'a;b';", "SELECT \"c;d\";"};
        QTest::newRow("semicolon in a comment")
            << QByteArray("SELECT 1 -- no; end\n; /* ; */ SELECT 2;")
            << Pieces{"SELECT 1 -- no; end\n;", "/* ; */ SELECT 2;"};
        const QByteArray trigger("CREATE TRIGGER t AFTER INSERT ON x BEGIN\n"
                                 "  UPDATE y SET a = 1; UPDATE y SET b = CASE WHEN 1 THEN 2 END;\n"
                                 "END;");
        QTest::newRow("trigger") << QByteArray(trigger + "\nSELECT 1;\n-- the end")
                                 << Pieces{trigger, "SELECT 1;"};
    }
    void splits()
    {
        QFETCH(QByteArray, script);
        QFETCH(QList<QByteArray>, pieces);
        const auto found = splitSqlScript(script, "x.sql");
        QVERIFY(found);
        QList<QByteArray> texts;
        for (const SqlPiece &piece : *found)
            texts << piece.sql;
        QCOMPARE(texts, pieces);
    }
    void namesTheLine()
    {
        const auto found = splitSqlScript("SELECT 1;\n\n-- two\nSELECT 2;\nSELECT 3;", "x.sql");
        QVERIFY(found);
        QCOMPARE(found->at(1).line, 3);
        QCOMPARE(found->at(2).line, 5);
    }
    void refusesAnUnfinishedStatement()
    {
        const auto found = splitSqlScript("SELECT 1;\nSELECT 'open", "x.sql");
        QVERIFY(!found);
        QCOMPARE(found.error().place, "x.sql line 1");
    }
};

QTEST_APPLESS_MAIN(SqlScriptTest)
#include "SqlScriptTest.moc"
