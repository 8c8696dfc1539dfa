#include "core/base/Json.h"

#include <QJsonDocument>
#include <QTest>

using namespace loopwright;

class JsonTest : public QObject
{
    Q_OBJECT
private slots:
    // RFC 8785 section 3.2.2 (sample input and output) and appendix B (numbers).
    void writesTheSampleOfRfc8785()
    {
        const QByteArray input =
            R"({"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],
            "string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]})";
        const auto value = parseJson(input, "sample");
        QVERIFY(value);
        const QByteArray expected =
            "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
            "\"string\":\"\xE2\x82\xAC$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}";
        QCOMPARE(canonicalJson(*value), expected);
    }
    void writesNumbersAsRfc8785AppendixB_data()
    {
        QTest::addColumn<double>("value");
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("zero") << 0.0 << QByteArray("0");
        QTest::newRow("minus zero") << -0.0 << QByteArray("0");
        QTest::newRow("smallest") << 5e-324 << QByteArray("5e-324");
        QTest::newRow("largest") << 1.7976931348623157e+308
                                 << QByteArray("1.7976931348623157e+308");
        QTest::newRow("2^53") << 9007199254740992.0 << QByteArray("9007199254740992");
        QTest::newRow("2^68") << 295147905179352830000.0 << QByteArray("295147905179352830000");
        QTest::newRow("1e21-") << 9.999999999999997e+22 << QByteArray("9.999999999999997e+22");
        QTest::newRow("1e23") << 1e+23 << QByteArray("1e+23");
        QTest::newRow("333") << 333333333.3333332 << QByteArray("333333333.3333332");
        QTest::newRow("small") << 0.000001 << QByteArray("0.000001");
        QTest::newRow("smaller") << 1e-7 << QByteArray("1e-7");
        QTest::newRow("negative") << -0.0000033333333333333333
                                  << QByteArray("-0.0000033333333333333333");
    }
    void writesNumbersAsRfc8785AppendixB()
    {
        QFETCH(double, value);
        QFETCH(QByteArray, text);
        QCOMPARE(canonicalJson(QJsonValue(value)), text);
    }
    void sortsKeysByUtf16CodeUnits()
    {
        // RFC 8785 section 3.2.3.
        const auto value = parseJson("{\"\\u20ac\":1,\"\\r\":2,\"\\ufb33\":3,\"1\":4,"
                                     "\"\\ud83d\\ude00\":5,\"\\u0080\":6,\"\\u00f6\":7}",
                                     "keys");
        QVERIFY(value);
        const QString text = QString::fromUtf8(canonicalJson(*value));
        QList<int> order;
        for (const QChar c : text)
            if (c.isDigit() && text[text.indexOf(c) - 1] == ':')
                order << c.digitValue();
        QCOMPARE(text.indexOf(":2") < text.indexOf(":4"), true);
        QCOMPARE(text.indexOf(":4") < text.indexOf(":6"), true);
        QCOMPARE(text.indexOf(":6") < text.indexOf(":7"), true);
        QCOMPARE(text.indexOf(":7") < text.indexOf(":1"), true);
        QCOMPARE(text.indexOf(":1") < text.indexOf(":5"), true);
        QCOMPARE(text.indexOf(":5") < text.indexOf(":3"), true);
    }
    void digestIsTheOneOfFips180()
    {
        // FIPS 180-4 example: SHA-256("abc").
        QCOMPARE(sha256Hex("abc"),
                 "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
    void appendsAnObjectOfTexts()
    {
        const QString odd = QString::fromUtf8("\"\\\n\x01/ \xC3\xA9 \xF0\x9F\x98\x80");
        QByteArray bytes = "[";
        appendCanonicalObject(bytes, {});
        bytes += ',';
        appendCanonicalObject(bytes, {{"new", odd}, {"old", QString()}});
        bytes += ']';
        QCOMPARE(bytes, canonicalJson(QJsonArray{QJsonObject(),
                                                 QJsonObject{{"old", QString()}, {"new", odd}}}));
    }

    void namesThePlaceOfAnError_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QString>("place");
        QTest::newRow("truncated") << QByteArray("{\"a\":\n[1,") << "f.json: line 2, column 4";
        QTest::newRow("half a pair")
            << QByteArray("{\"a\":\n\"\\\\\\uD83D\"}") << "f.json: line 2, column 4";
        QTest::newRow("second half")
            << QByteArray("{\"\\uDE00\\uD83D\":1}") << "f.json: line 1, column 3";
        QTest::newRow("not a pair")
            << QByteArray("[\"\\uD83D\\\\uDE00\"]") << "f.json: line 1, column 3";
        QTest::newRow("not utf-8") << QByteArray("{\"a\":\"\xff\"}") << "f.json: line 1";
        QTest::newRow("empty") << QByteArray() << "f.json: line 1";
        QTest::newRow("deep") << QByteArray(100000, '[') << "f.json: line 1";
        QTest::newRow("NUL in a text")
            << QByteArray("{\"a\":1}\0", 8) << "f.json: line 1, column 8";
        QTest::newRow("UTF-16") << QByteArray("\xFF\xFE{\0}\0", 6) << "f.json";
    }
    void namesThePlaceOfAnError()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QString, place);
        const auto value = parseJson(bytes, "f.json");
        QVERIFY(!value);
        QVERIFY2(value.error().place.startsWith(place), qPrintable(value.error().text()));
    }
    void aKeyStandsOnce_data()
    {
        QTest::addColumn<QByteArray>("json");
        QTest::addColumn<QString>("place"); // empty if nothing is wrong
        QTest::newRow("twice") << QByteArray(R"({"a":1,"a":2})") << "f: line 1, column 8";
        QTest::newRow("the same value") << QByteArray(R"({"a":1,"a":1})") << "f: line 1, column 8";
        QTest::newRow("far apart, deep")
            << QByteArray("{\"x\":[1,\n {\"k\":{\"k\":\"k\"},\"b\":[2],\n  \"k\":0}]}")
            << "f: line 3, column 3";
        QTest::newRow("written otherwise")
            << QByteArray("{\"ab\":1,\"\\u0061b\":2}") << "f: line 1, column 9";
        QTest::newRow("in two objects") << QByteArray(R"({"x":[{"a":1},{"a":2}],"a":3})") << "";
        QTest::newRow("as a value")
            << QByteArray("{\"a\":\"a\",\"b\":\"{\\\"a\\\":1,\",\"c\":[\"a\",\"a\"],\"\\\\\":1,"
                          "\"d\":\"\\\\\"}")
            << "";
        QTest::newRow("empty") << QByteArray("{}") << "";
    }
    void aKeyStandsOnce()
    {
        QFETCH(QByteArray, json);
        QFETCH(QString, place);
        const auto read = parseJsonObject(json, "f");
        QCOMPARE(read.has_value(), place.isEmpty());
        if (!read)
            QCOMPARE(read.error().place, place);
    }
    /// U+FEFF is a character like any other there: what was written is what is read.
    void aTextThatBeginsWithAByteOrderMarkKeepsIt()
    {
        const QString mark(QChar(0xfeff));
        const QJsonObject object{{"a", QString(mark + "x")}, {QString(mark + "b"), 1}};
        const QByteArray written = canonicalJson(object);
        QVERIFY(written.contains("\"\xEF\xBB\xBFx\""));
        const auto read = parseJson("\xEF\xBB\xBF" + written, "f");
        QVERIFY(read);
        QCOMPARE(read->toObject(), object);
        QCOMPARE(canonicalJson(*read), written);
    }
    void readerNamesTheKey()
    {
        JsonReader reader(QJsonObject{{"n", "x"}, {"extra", 1}}, "facts[2]");
        QCOMPARE(reader.integer("n", 0, 5), 0);
        const auto result = reader.result();
        QVERIFY(!result);
        QCOMPARE(result.error().text(), "facts[2].n: must be a whole number");
    }
    void readerFindsUnknownKeys()
    {
        JsonReader reader(QJsonObject{{"n", 3}, {"extra", 1}}, "facts[2]");
        QCOMPARE(reader.integer("n", 0, 5), 3);
        reader.done();
        QCOMPARE(reader.result().error().text(), "facts[2].extra: is not a known key");
    }
};

QTEST_APPLESS_MAIN(JsonTest)
#include "JsonTest.moc"
