#include "db/Statement.h"

#include "db/Connection.h"
#include "tests/support/Records.h"

using namespace loopwright;

class StatementTest : public QObject
{
    Q_OBJECT
    static QString errorOf(Statement &statement)
    {
        const auto result = statement.next();
        return result ? QString("none") : result.error().message;
    }

private slots:
    void bindsAndReadsByName()
    {
        Database database = recordsInMemory();
        auto transaction = Transaction::begin(database);
        QVERIFY_RESULT(transaction);
        Statement put(*transaction, "draft.put");
        put.bind("order_number", "SO-1").bind("part", "loop").bindJson("content", {{"a", 1.5}});
        QCOMPARE(*put.run(), 1);
        put.bind("part", "calls"); // the other bindings stay
        QCOMPARE(*put.run(), 1);
        Statement find(database, "draft.find");
        find.bind("order_number", "SO-1").bind("part", "calls");
        const auto content =
            firstRow(find, [](const Statement &row) { return row.json("content"); });
        QVERIFY_RESULT(content);
        QCOMPARE(content->value(), QJsonObject({{"a", 1.5}}));
        Statement parts(database, "draft.of_order");
        parts.bind("order_number", "SO-1");
        const auto all = rows(parts, [](const Statement &row) { return row.text("part"); });
        QVERIFY_RESULT(all);
        QCOMPARE(*all, (std::vector<QString>{"calls", "loop"}));
    }
    void anEmptyTextIsNoNull()
    {
        Database database = recordsInMemory();
        auto transaction = Transaction::begin(database);
        QVERIFY_RESULT(transaction);
        Statement put(*transaction, "draft.put");
        put.bind("order_number", QString()).bind("part", "x").bindJson("content", {});
        QVERIFY_RESULT(put.run());
        Statement find(database, "draft.find");
        find.bind("order_number", "").bind("part", "x");
        QVERIFY(*find.next());
        QVERIFY(!find.isNull("content"));
    }
    void keepsWhatIsNoAscii()
    {
        const QString text = QString::fromUtf8("Łódź \xF0\x9F\x93\x9E");
        Database database = recordsInMemory();
        auto transaction = Transaction::begin(database);
        QVERIFY_RESULT(transaction);
        Statement put(*transaction, "draft.put");
        put.bind("order_number", text).bind("part", "x").bindJson("content", {{"t", text}});
        QVERIFY_RESULT(put.run());
        Statement parts(database, "draft.of_order");
        parts.bind("order_number", text);
        QVERIFY(*parts.next());
    }
    /// Of a file it would be the mark.
    void keepsWhatATextBeginsWith()
    {
        const QString text = QString(QChar(QChar::ByteOrderMark)) + "x";
        Database database = recordsInMemory();
        auto transaction = Transaction::begin(database);
        QVERIFY_RESULT(transaction);
        Statement put(*transaction, "draft.put");
        put.bind("order_number", "SO-1").bind("part", text).bindJson("content", {{text, text}});
        QVERIFY_RESULT(put.run());
        Statement parts(database, "draft.of_order");
        parts.bind("order_number", "SO-1");
        const auto all = rows(parts, [](const Statement &row) { return row.text("part"); });
        QVERIFY_RESULT(all);
        QCOMPARE(*all, std::vector<QString>{text});
        Statement find(database, "draft.find");
        find.bind("order_number", "SO-1").bind("part", text);
        const auto content =
            firstRow(find, [](const Statement &row) { return row.json("content"); });
        QVERIFY_RESULT(content);
        QCOMPARE(content->value(), QJsonObject({{text, text}}));
    }
    void tellsWhatTheProgramGotWrong()
    {
        Database database = recordsInMemory();
        Statement unknown(database, "draft.nothing");
        QCOMPARE(errorOf(unknown), "there is no statement draft.nothing");
        Statement writing(database, "draft.put");
        QCOMPARE(errorOf(writing), "draft.put changes rows and needs a transaction");
        Statement unbound(database, "draft.find");
        unbound.bind("part", "x");
        QVERIFY(errorOf(unbound).contains(":order_number of draft.find is not bound"));
        Statement misnamed(database, "draft.of_order");
        misnamed.bind("order", "x");
        QVERIFY(errorOf(misnamed).contains("order of draft.of_order is not a parameter"));
        Statement column(database, "meta.value");
        column.bind("key", "station");
        const auto found =
            firstRow(column, [](const Statement &row) { return row.text("values"); });
        QVERIFY(!found);
        QVERIFY(found.error().message.contains("values of meta.value is not a column"));
    }
    void tellsAStoredTextThatCannotBeRead()
    {
        Database database = recordsInMemory();
        Statement find(database, "meta.value");
        find.bind("key", "station");
        const auto found = firstRow(find, [](const Statement &row) { return row.json("value"); });
        QVERIFY(!found);
        QCOMPARE(found.error().code, ErrorCode::DatabaseTrouble);
        QVERIFY(found.error().message.contains("value of meta.value is no JSON object"));
    }
    void aBrokenRuleOfATableIsBadInput()
    {
        Database database = recordsInMemory();
        auto transaction = Transaction::begin(database);
        QVERIFY_RESULT(transaction);
        Statement put(*transaction, "draft.put");
        put.bind("order_number", "SO-1").bind("part", "").bindJson("content", {});
        const auto done = put.run();
        QVERIFY(!done);
        QCOMPARE(done.error().code, ErrorCode::BadInput);
    }
    void twoOfOneLabelDoNotDisturbEachOther()
    {
        Database database = recordsInMemory();
        Statement first(database, "meta.value");
        Statement second(database, "meta.value");
        first.bind("key", "station");
        second.bind("key", "database");
        QVERIFY(*first.next() && *second.next());
        QCOMPARE(first.text("value").size(), 6);
        QCOMPARE(second.text("value").size(), 36);
    }
};

QTEST_GUILESS_MAIN(StatementTest)
#include "StatementTest.moc"
