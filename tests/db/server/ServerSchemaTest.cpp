#include "db/PostgresForm.h"
#include "db/PostgresSql.h"
#include "db/SchemaFaults.h"
#include "db/SqlCatalog.h"
#include "tests/support/Records.h"
#include "tests/support/StatementParts.h"

using namespace loopwright;

// The tables on a server beside those in a file, and every statement on both.
class ServerSchemaTest : public QObject
{
    Q_OBJECT

    Database m_file = *Database::open(":memory:");
    Database m_server = *Database::open(newServerDatabase());

    Connection &server() { return m_server.connection(); }
    QStringList columnsOf(Connection &connection, const QByteArray &sql)
    {
        const auto found = connection.texts(sql);
        if (!found)
            qFatal("%s", qPrintable(found.error().text()));
        return *found;
    }

    QByteArray schemaLines()
    {
        QByteArray lines;
        const Schema schema = readSchema(server()).value();
        for (auto it = schema.begin(); it != schema.end(); ++it)
            lines += schemaDigest(*it) + ' ' + it.key() + '\n';
        return lines;
    }

private slots:
    /// Two scripts make one form: the same tables, with the same columns in the same order.
    void theTablesAreTheSame()
    {
        const QStringList tables = columnsOf(
            m_file.connection(), "SELECT name FROM sqlite_schema WHERE type = 'table'"
                                 " AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'order_search%'"
                                 " ORDER BY name");
        QCOMPARE(columnsOf(server(), "SELECT tablename FROM pg_tables WHERE schemaname = 'public'"
                                     " ORDER BY tablename"),
                 tables);
        for (const QString &table : tables) {
            const QStringList here = columnsOf(
                m_file.connection(),
                QString(
                    "SELECT name || ' ' || CASE type WHEN 'INTEGER' THEN 'bigint' ELSE 'text' END"
                    " || CASE WHEN \"notnull\" = 1 OR pk > 0 THEN ' not null' ELSE '' END"
                    " FROM pragma_table_info('%1') ORDER BY cid")
                    .arg(table)
                    .toUtf8());
            const QStringList there = columnsOf(
                server(), QString("SELECT column_name || ' ' || replace(data_type, 'json', 'text')"
                                  " || CASE is_nullable WHEN 'NO' THEN ' not null' ELSE '' END"
                                  " FROM information_schema.columns WHERE table_schema = 'public'"
                                  " AND table_name = '%1' ORDER BY ordinal_position")
                              .arg(table)
                              .toUtf8());
            QCOMPARE(there, here);
        }
    }
    void theIndexesBearTheSameNames()
    {
        QStringList there = columnsOf(server(), "SELECT indexname FROM pg_indexes"
                                                " WHERE schemaname = 'public' ORDER BY 1");
        for (const QString &name :
             columnsOf(m_file.connection(), "SELECT name FROM sqlite_schema WHERE type = 'index'"
                                            " AND sql IS NOT NULL ORDER BY name"))
            QVERIFY2(there.contains(name), qPrintable(name));
    }

    void everyStatementCanBePrepared_data()
    {
        QTest::addColumn<std::string>("label");
        QTest::addColumn<std::string>("sql");
        const SqlCatalog &catalog = server().catalog();
        for (const std::string &label : catalog.statementLabels())
            QTest::newRow(label.c_str()) << label << catalog.compose(label, partsOf(label));
    }
    void everyStatementCanBePrepared()
    {
        QFETCH(std::string, label);
        QFETCH(std::string, sql);
        PostgresSession &session = dynamic_cast<PostgresConnection &>(server()).session();
        QVERIFY_RESULT(prepared(session, label, sql));
    }

    void aFreshSchemaHasNoFaults()
    {
        const auto faults = server().schemaFaults();
        QVERIFY_RESULT(faults);
        if (!faults->isEmpty())
            qInfo("db/postgresql/schema-NNNN.txt must be:\n%s", schemaLines().constData());
        QCOMPARE(*faults, QStringList());
    }
    /// Whatever lets an edit pass unseen is named.
    void aChangedSchemaIsNamed_data()
    {
        QTest::addColumn<QByteArray>("change");
        QTest::addColumn<QByteArray>("back");
        QTest::addColumn<QString>("told");
        QTest::newRow("a trigger off")
            << QByteArray("ALTER TABLE fact DISABLE TRIGGER fact_no_update")
            << QByteArray("ALTER TABLE fact ENABLE TRIGGER fact_no_update")
            << "the trigger fact_no_update of fact was changed";
        QTest::newRow("all of a table off")
            << QByteArray("ALTER TABLE order_terminal DISABLE TRIGGER ALL")
            << QByteArray("ALTER TABLE order_terminal ENABLE TRIGGER ALL")
            << "the checks of references of order_terminal is missing";
        QTest::newRow("a trigger gone")
            << QByteArray("DROP TRIGGER fact_no_delete ON fact")
            << QByteArray("CREATE TRIGGER fact_no_delete BEFORE DELETE ON fact"
                          " FOR EACH ROW EXECUTE FUNCTION refuse('facts are only added')")
            << "the trigger fact_no_delete of fact is missing";
        QTest::newRow("a column more")
            << QByteArray("ALTER TABLE office ADD COLUMN extra text")
            << QByteArray("ALTER TABLE office DROP COLUMN extra") << "the table office was changed";
        QTest::newRow("a function that does nothing")
            << QByteArray("CREATE FUNCTION other() RETURNS integer LANGUAGE sql AS 'SELECT 1'")
            << QByteArray("DROP FUNCTION other()") << "the function other() was put in";
        QTest::newRow("a constraint gone")
            << QByteArray("ALTER TABLE assignment DROP CONSTRAINT assignment_one_circuit")
            << QByteArray("ALTER TABLE assignment ADD CONSTRAINT assignment_one_circuit EXCLUDE"
                          " USING gist (kind WITH =, scope WITH =, value WITH =, circuit WITH <>)"
                          " WHERE (state <> 'released')")
            << "the constraint assignment_one_circuit of assignment is missing";
        QTest::newRow("a rule") << QByteArray(
                                       "CREATE RULE silent AS ON DELETE TO fact DO INSTEAD NOTHING")
                                << QByteArray("DROP RULE silent ON fact")
                                << "the rule silent of fact was put in";
    }
    void aChangedSchemaIsNamed()
    {
        QFETCH(QByteArray, change);
        QFETCH(QByteArray, back);
        QFETCH(QString, told);
        QVERIFY_RESULT(editPast(m_server, change));
        const auto faults = server().schemaFaults();
        QVERIFY_RESULT(editPast(m_server, back));
        QVERIFY_RESULT(faults);
        QVERIFY2(faults->contains(told), qPrintable(faults->join('\n')));
        QCOMPARE(*server().schemaFaults(), QStringList());
    }

    void factsAreOnlyAdded()
    {
        for (const char *table : {"fact", "event", "decision", "certificate", "settlement"}) {
            const auto emptied = editPast(m_server, QByteArray("TRUNCATE ") + table + " CASCADE");
            QVERIFY2(!emptied, table);
            QCOMPARE(errorName(emptied.error().code), "bad_input");
        }
    }
};

QTEST_GUILESS_MAIN(ServerSchemaTest)
#include "ServerSchemaTest.moc"
