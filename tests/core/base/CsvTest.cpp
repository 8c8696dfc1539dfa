#include "core/base/Csv.h"

#include <QTest>

using namespace loopwright;

class CsvTest : public QObject
{
    Q_OBJECT
private slots:
    void countsLinesWhateverEndsThem()
    {
        for (const char *bytes : {"a\n1\n\n\"x\ny\"\n2\n", "a\r\n1\r\n\r\n\"x\r\ny\"\r\n2\r\n",
                                  "a\r1\r\r\"x\ry\"\r2\r"}) {
            const auto table = readCsv(bytes, "f.csv", {{"a"}, {}, {}});
            QVERIFY(table);
            QCOMPARE(table->rows.size(), 3u);
            QCOMPARE(table->rows[0].line, 2);
            QCOMPARE(table->rows[1].line, 4);
            QCOMPARE(table->rows[2].line, 6);
        }
    }

    void aCarriageReturnAloneEndsARowWhereItEndsTheFirst()
    {
        const auto rowsOf = [](const QByteArray &bytes) {
            const auto table = readCsv(bytes, "f.csv", {{"a", "b"}, {}, {}});
            return table ? table->rows : std::vector<CsvRow>();
        };
        const auto macs = rowsOf("a,b\r1,2\r3,4\r");
        QCOMPARE(macs.size(), 2U);
        QCOMPARE(macs[1].fields, (QStringList{"3", "4"}));
        QCOMPARE(rowsOf("a,b\r\r\n1,2\r\r\n3,4\r\r\n").size(), 2U);
        QCOMPARE(rowsOf("a,b\n1,2\r").front().fields, (QStringList{"1", "2"}));
        for (const char *bytes :
             {"a,b\n1,tw\ro\n3,4\n", "a,b\r\n1,tw\ro\r\n3,4\r\n", "a,b\n1,\"tw\"\ro\n3,4\n"}) {
            const auto rows = rowsOf(bytes);
            QCOMPARE(rows.size(), 2U);
            QVERIFY(!rows[0].trouble.isEmpty());
            QCOMPARE(rows[0].line, 2);
            QVERIFY(rows[1].trouble.isEmpty());
            QCOMPARE(rows[1].line, 3);
        }
        QVERIFY(rowsOf("a,b\n1,tw\ro\n").front().trouble.contains("carriage return"));
    }
    /// A file may begin with its mark; what a field begins with is the field's.
    void onlyTheFileHasAMark()
    {
        const auto table = readCsv("\xEF\xBB\xBF"
                                   "a,b\n\xEF\xBB\xBF"
                                   "1,2\n",
                                   "f.csv", {{"a", "b"}, {}, {}});
        QVERIFY(table);
        QCOMPARE(table->rows[0].fields.front(), QString(QChar(0xFEFF)) + "1");
        QCOMPARE(table->value(table->rows[0], "a"), QString(QChar(0xFEFF)) + "1");
    }

    void readsQuotesLineBreaksAndBom()
    {
        const auto table = readCsv("\xEF\xBB\xBFname,text\r\n\"a\"\"b\",\"one\ntwo\"\r\n\r\nc,d\n",
                                   "f.csv", {{"name", "text"}, {}, {}});
        QVERIFY(table);
        QCOMPARE(table->rows.size(), 2U);
        QCOMPARE(table->rows[0].fields, (QStringList{"a\"b", "one\ntwo"}));
        QCOMPARE(table->rows[0].line, 2);
        QCOMPARE(table->rows[1].line, 5);
    }
    void tellsTheTroubleOfARow_data()
    {
        QTest::addColumn<QByteArray>("row");
        QTest::addColumn<QString>("part");
        QTest::newRow("open quote") << QByteArray("\"x,y\n") << "never closed";
        QTest::newRow("inner quote") << QByteArray("x\"y,z\n") << "not quoted";
        QTest::newRow("behind quote") << QByteArray("\"x\"y,z\n") << "behind a closing";
        QTest::newRow("few fields") << QByteArray("x\n") << "1 fields where the header has 2";
        QTest::newRow("many fields") << QByteArray("x,y,z\n") << "3 fields where the header has 2";
    }
    void tellsTheTroubleOfARow()
    {
        QFETCH(QByteArray, row);
        QFETCH(QString, part);
        const auto table = readCsv("a,b\n" + row, "f.csv", {{"a", "b"}, {}, {}});
        QVERIFY(table);
        QVERIFY2(table->rows[0].trouble.contains(part), qPrintable(table->rows[0].trouble));
    }
    void refusesAWrongHeader_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QString>("text");
        QTest::newRow("unknown") << QByteArray("a,zz\n")
                                 << "f.csv: row 1: column \"zz\" is not known";
        QTest::newRow("twice") << QByteArray("a,a\n")
                               << "f.csv: row 1: column \"a\" stands there twice";
        QTest::newRow("missing") << QByteArray("dn_3\n") << "f.csv: row 1: column \"a\" is missing";
        QTest::newRow("empty") << QByteArray() << "f.csv: is empty: a header row is required";
        QTest::newRow("not utf-8") << QByteArray("a\nx\nb\xC3\n") << "f.csv: line 3: is not UTF-8";
        QTest::newRow("utf-16, little end first") << QByteArray("\xFF\xFE"
                                                                "a\0\n\0",
                                                                6)
                                                  << "f.csv: is UTF-16: save it as UTF-8";
        QTest::newRow("utf-16, big end first")
            << QByteArray("\0a\0\n", 4) << "f.csv: is UTF-16: save it as UTF-8";
        QTest::newRow("two marks")
            << QByteArray("\xEF\xBB\xBF\xEF\xBB\xBF"
                          "a\n")
            << "f.csv: row 1: column \"\xEF\xBB\xBF"
               "a\" is not known: its name holds a character that is not seen";
        QTest::newRow("cut off") << QByteArray("a\nx\xC3") << "f.csv: line 2: is not UTF-8";
        QTest::newRow("number 9") << QByteArray("a,dn_9\n")
                                  << "f.csv: row 1: column \"dn_9\" is not known";
    }
    void refusesAWrongHeader()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QString, text);
        const auto table = readCsv(bytes, "f.csv", {{"a"}, {"dn_#", "dn_#_services"}, {}});
        QVERIFY(!table);
        QCOMPARE(table.error().text(), text);
    }
    void writesWhatItReads()
    {
        const QStringList fields{"plain", "with,comma", "with \"quote\"", "two\nlines", ""};
        const auto table = readCsv("a,b,c,d,e\r\n" + csvRecord(fields), "f.csv",
                                   {{"a", "b", "c", "d", "e"}, {}, {}});
        QVERIFY(table);
        QCOMPARE(table->rows[0].fields, fields);
    }
    void disarmsFormulas()
    {
        QCOMPARE(spreadsheetSafe("=1+1"), "'=1+1");
        QCOMPARE(spreadsheetSafe("@x"), "'@x");
        QCOMPARE(spreadsheetSafe("-12.5"), "-12.5");
        // A number to dial; a spreadsheet would take its plus away.
        QCOMPARE(spreadsheetSafe("+12175550143"), "'+12175550143");
        QCOMPARE(spreadsheetSafe("plain"), "plain");
    }
};

QTEST_APPLESS_MAIN(CsvTest)
#include "CsvTest.moc"
