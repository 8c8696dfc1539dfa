#include "core/base/ColumnMap.h"

#include "core/base/Csv.h"

#include <QTest>

using namespace loopwright;

class ColumnMapTest : public QObject
{
    Q_OBJECT

    const CsvLayout m_layout{{"name", "kind"}, {"remarks", "dn_#"}, {}};

    static Result<ColumnMap> read(const QByteArray &json)
    {
        return ColumnMap::read(json, "m.json");
    }

private slots:
    void readsAFileInOurNames()
    {
        const auto map = read(R"({"columns":{"Kunde":"name","Art ":"kind","Nr. 1":"dn_1"},
            "values":{"kind":{"ISDN":"bri","":"analog"}},"ignore":["Farbe"]})");
        QVERIFY2(map, map ? "" : qPrintable(map.error().text()));
        const auto table = readCsv("Kunde,Farbe,Art,Nr. 1,remarks\r\n"
                                   "Bakery,red, ISDN ,217,ISDN\r\n\r\nCafe,,,\"2\n3\",\r\n",
                                   "f.csv", m_layout, *map);
        QVERIFY2(table, table ? "" : qPrintable(table.error().text()));
        QCOMPARE(table->header, (QStringList{"name", "", "kind", "dn_1", "remarks"}));
        QCOMPARE(table->theirs, (QStringList{"Kunde", "Farbe", "Art", "Nr. 1", "remarks"}));
        const CsvRow &first = table->rows[0], &second = table->rows[1];
        QCOMPARE(table->value(first, "name"), "Bakery");
        QCOMPARE(table->value(first, "kind"), "bri");
        QCOMPARE(table->value(first, "remarks"), "ISDN"); // a word of another column
        QCOMPARE(table->value(second, "kind"), "analog");
        QCOMPARE(second.line, 4);
        QCOMPARE(first.fields[2], " ISDN "); // as it stands there
        QCOMPARE(table->nameInFile("kind"), "Art");
        QCOMPARE(table->nameInFile("dn_2"), "dn_2");
        QCOMPARE(table->nameInFile({}), QString());
    }
    void isWrittenAsItWasRead()
    {
        const auto map =
            read(R"({"columns":{"A":"name"},"values":{"kind":{"x":"bri"}},"ignore":["B"]})");
        const auto again = read(canonicalJson(map->toJson()));
        QCOMPARE(*again, *map);
        QVERIFY(*read("{}") == (ColumnMap{"m.json", {}, {}, {}}));
    }
    void refusesWhatCannotBeMeant_data()
    {
        QTest::addColumn<QByteArray>("json");
        QTest::addColumn<QString>("text");
        const auto row = [](const char *name, const char *json, const char *text) {
            QTest::newRow(name) << QByteArray(json) << QString(text);
        };
        row("unknown key", R"({"colums":{}})", "m.json: colums: is not known");
        row("no object", R"([])", "m.json");
        row("no JSON", R"({"columns":{)", "m.json");
        row("columns no object", R"({"columns":[]})", "m.json: columns: is no object");
        row("no text", R"({"columns":{"A":3}})", "m.json: columns.A: must lead");
        row("empty", R"({"columns":{"":"name"}})", "m.json: columns.: must lead");
        row("ours twice", R"({"columns":{"A":"name","B":"name"}})",
            "m.json: columns.B: leads to \"name\", and so does \"A\"");
        row("theirs twice", R"({"columns":{"A":"name","A ":"kind"}})",
            "m.json: columns.A : is mapped twice");
        row("key twice", R"({"columns":{"A":"name","A":"kind"}})", "m.json");
        row("mapped and ignored", R"({"columns":{"A":"name"},"ignore":["B","A"]})",
            "m.json: ignore[1]: column \"A\" is both mapped and ignored");
        row("ignore no list", R"({"ignore":"A"})", "m.json: ignore: is no list");
        row("ignore no text", R"({"ignore":[1]})", "m.json: ignore[0]: is no text");
        row("values no object", R"({"values":{"kind":"x"}})", "m.json: values.kind: is no object");
        row("value no text", R"({"values":{"kind":{"x":1}}})", "m.json: values.kind.x: is no text");
        row("value twice", R"({"values":{"kind":{"x":"bri","x ":"analog"}}})",
            "m.json: values.kind.x : is mapped twice");
    }
    void refusesWhatCannotBeMeant()
    {
        QFETCH(QByteArray, json);
        QFETCH(QString, text);
        const auto map = read(json);
        QVERIFY(!map);
        QCOMPARE(map.error().code, ErrorCode::BadInput);
        QVERIFY2(map.error().text().startsWith(text), qPrintable(map.error().text()));
    }
    void refusesWhatDoesNotFitTheFile_data()
    {
        QTest::addColumn<QByteArray>("json");
        QTest::addColumn<QByteArray>("header");
        QTest::addColumn<QString>("text");
        const auto row = [](const char *name, const char *json, const char *header,
                            const char *text) {
            QTest::newRow(name) << QByteArray(json) << QByteArray(header) << QString(text);
        };
        row("unknown column of ours", R"({"columns":{"A":"nmae"}})", "A,kind",
            "m.json: columns.A: column \"nmae\" is not one of ours");
        row("of values", R"({"values":{"sort":{"x":"y"}}})", "name,kind",
            "m.json: values.sort: column \"sort\" is not one of ours");
        row("ours too far", R"({"columns":{"A":"dn_9"}})", "A,name,kind",
            "m.json: columns.A: column \"dn_9\"");
        row("not in the file", R"({"columns":{"A":"name"}})", "name,kind",
            "m.json: columns.A: f.csv has no column \"A\"");
        row("theirs has our name", R"({"columns":{"A":"name"}})", "A,name,kind",
            "f.csv: row 1: columns \"A\" and \"name\" both stand for \"name\"");
        row("theirs twice", R"({"columns":{"A":"name"}})", "A,A,kind",
            "f.csv: row 1: columns \"A\" and \"A\" both stand for \"name\"");
        row("nobody named it", R"({"columns":{"A":"name"}})", "A,kind,Shoe",
            "f.csv: row 1: column \"Shoe\" is not known");
        row("missing", R"({"columns":{"A":"name"},"ignore":["kind"]})", "A,kind",
            "f.csv: row 1: column \"kind\" is missing");
    }
    void refusesWhatDoesNotFitTheFile()
    {
        QFETCH(QByteArray, json);
        QFETCH(QByteArray, header);
        QFETCH(QString, text);
        const auto map = read(json);
        QVERIFY(map);
        const auto table = readCsv(header + "\n", "f.csv", m_layout, *map);
        QVERIFY(!table);
        QVERIFY2(table.error().text().startsWith(text), qPrintable(table.error().text()));
    }
};

QTEST_APPLESS_MAIN(ColumnMapTest)
#include "ColumnMapTest.moc"
