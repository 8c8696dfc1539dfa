#include "core/loop/LoopMakeup.h"

#include "tests/support/FactCodec.h"
#include "tests/support/LoopGenerators.h"

using namespace loopwright;

class LoopMakeupTest : public QObject
{
    Q_OBJECT

    static QString refusalOf(const char *text)
    {
        const auto makeup = LoopMakeup::fromJson(parsedObject(text), "loop.json");
        return makeup ? QString() : makeup.error().text();
    }

private slots:
    void readsAndWritesTheSame_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("feet") << QByteArray(
            R"({"elements":[{"gauge_awg":26,"length_ft":9000,"type":"section"},{"gauge_awg":24,"length_ft":1500,"type":"bridged_tap"},{"millihenry":88,"type":"load_coil"}],"temperature_f":70})");
        QTest::newRow("metres") << QByteArray(
            R"({"elements":[{"diameter_mm":0.4,"length_m":3000.5,"type":"section"},{"millihenry":66,"ohms":6.5,"type":"load_coil"}],"temperature_c":-10.5})");
        QTest::newRow("no temperature") << QByteArray(
            R"({"elements":[{"diameter_mm":0.63,"length_ft":10,"type":"bridged_tap"}]})");
        QTest::newRow("capacitance") << QByteArray(
            R"({"capacitance_nf_per_km":43.5,"elements":[{"capacitance_nf_per_km":51.57,"gauge_awg":19,"length_m":1,"type":"section"}]})");
    }
    void readsAndWritesTheSame()
    {
        QFETCH(QByteArray, text);
        const auto makeup = LoopMakeup::fromJson(parsedObject(text), "loop.json");
        QVERIFY2(makeup, makeup ? "" : qPrintable(makeup.error().text()));
        QCOMPARE(canonicalJson(makeup->toJson()), text);
    }
    void anyMakeupSurvivesTheRoundTrip()
    {
        QVERIFY(rc::check([] {
            const LoopMakeup makeup = *anyMakeup();
            const auto again = LoopMakeup::fromJson(
                parsedObject(canonicalJson(makeup.toJson()).constData()), "again");
            RC_ASSERT(bool(again));
            RC_ASSERT(*again == makeup);
        }));
    }

    void refusesWithThePlace_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("error");
        const auto row = [](const char *name, const char *text, const char *error) {
            QTest::newRow(name) << QByteArray(text) << QString::fromUtf8(error);
        };
        row("nothing", "{}", "loop.json.elements: is required and missing");
        row("no element", R"({"elements":[]})",
            "loop.json.elements: must name at least one element");
        row("not a list", R"({"elements":{}})", "loop.json.elements: must be a list");
        row("not an object", R"({"elements":[7]})", "loop.json.elements[0]: must be an object");
        row("unknown key", R"({"elements":[{"type":"load_coil","millihenry":88}],"color":1})",
            "loop.json.color: is not a known key");
        row("unknown key within",
            R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":9,"ohms":3}]})",
            "loop.json.elements[0].ohms: is not a known key");
        row("unknown type", R"({"elements":[{"type":"splice"}]})",
            "loop.json.elements[0].type: \"splice\" is not one of section, bridged_tap, load_coil");
        row("unknown gauge", R"({"elements":[{"type":"section","gauge_awg":28,"length_ft":9}]})",
            "loop.json.elements[0].gauge_awg: must be one of 19, 22, 24, 26");
        row("unknown diameter",
            R"({"elements":[{"type":"section","diameter_mm":0.6,"length_ft":9}]})",
            "loop.json.elements[0].diameter_mm: must be one of 0.32, 0.4, 0.5, 0.63, 0.9");
        row("half a gauge", R"({"elements":[{"type":"section","gauge_awg":25.5,"length_ft":9}]})",
            "loop.json.elements[0].gauge_awg: must be a whole number");
        row("gauge as text", R"({"elements":[{"type":"section","gauge_awg":"26","length_ft":9}]})",
            "loop.json.elements[0].gauge_awg: must be a whole number");
        row("both wires",
            R"({"elements":[{"type":"section","gauge_awg":26,"diameter_mm":0.4,"length_ft":9}]})",
            "loop.json.elements[0].gauge_awg: stands beside diameter_mm; only one of the two may");
        row("no wire", R"({"elements":[{"type":"section","length_ft":9}]})",
            "loop.json.elements[0].gauge_awg: or diameter_mm is required and missing");
        row("both lengths",
            R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":9,"length_m":3}]})",
            "loop.json.elements[0].length_ft: stands beside length_m; only one of the two may");
        row("no length", R"({"elements":[{"type":"bridged_tap","gauge_awg":26}]})",
            "loop.json.elements[0].length_ft: or length_m is required and missing");
        row("both temperatures",
            R"({"temperature_f":70,"temperature_c":20,"elements":[{"type":"load_coil","millihenry":88}]})",
            "loop.json.temperature_f: stands beside temperature_c; only one of the two may");
        row("second element is wrong",
            R"({"elements":[{"type":"load_coil","millihenry":88},{"type":"load_coil"}]})",
            "loop.json.elements[1].millihenry: is required and missing");
    }
    void refusesWithThePlace()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, error);
        QCOMPARE(refusalOf(text), error);
    }

    void refusesWhatIsOutOfRange_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("place");
        const auto row = [](const char *text, const char *place) {
            QTest::newRow(text) << QByteArray(text) << QString::fromUtf8(place);
        };
        row(R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":0}]})",
            "x.elements[0].length_ft");
        row(R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":-5}]})",
            "x.elements[0].length_ft");
        row(R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":300001}]})",
            "x.elements[0].length_ft");
        row(R"({"elements":[{"type":"section","gauge_awg":26,"length_m":91441}]})",
            "x.elements[0].length_m");
        row(R"({"elements":[{"type":"load_coil","millihenry":0}]})", "x.elements[0].millihenry");
        row(R"({"elements":[{"type":"load_coil","millihenry":1001}]})", "x.elements[0].millihenry");
        row(R"({"elements":[{"type":"load_coil","millihenry":88,"ohms":-1}]})",
            "x.elements[0].ohms");
        row(R"({"temperature_f":201,"elements":[{"type":"load_coil","millihenry":88}]})",
            "x.temperature_f");
        row(R"({"temperature_c":-51,"elements":[{"type":"load_coil","millihenry":88}]})",
            "x.temperature_c");
        row(R"({"capacitance_nf_per_km":9,"elements":[{"type":"load_coil","millihenry":88}]})",
            "x.capacitance_nf_per_km");
    }
    void refusesWhatIsOutOfRange()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, place);
        const auto makeup = LoopMakeup::fromJson(parsedObject(text), "x");
        QVERIFY(!makeup);
        QCOMPARE(makeup.error().place, place);
        QVERIFY2(makeup.error().message.startsWith("must be from"),
                 qPrintable(makeup.error().message));
    }
    void refusesMoreThanTwoHundredElements()
    {
        QJsonArray many;
        for (int i = 0; i < 201; ++i)
            many << QJsonObject{{"type", "load_coil"}, {"millihenry", 88}};
        QVERIFY(!LoopMakeup::fromJson({{"elements", many}}, "x"));
        many.removeFirst();
        QVERIFY(LoopMakeup::fromJson({{"elements", many}}, "x").has_value());
    }

    void readsAnyJsonWithoutHarm()
    {
        const QStringList keys{"elements",      "type",          "gauge_awg",
                               "diameter_mm",   "length_ft",     "length_m",
                               "millihenry",    "ohms",          "other",
                               "temperature_f", "temperature_c", "capacitance_nf_per_km"};
        QVERIFY(rc::check([&keys] {
            QJsonObject object =
                anyJsonObject(keys, {"section", "bridged_tap", "load_coil", "splice"});
            QJsonArray elements;
            for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
                elements << anyJsonObject(keys, {"section", "bridged_tap", "load_coil"}, 1);
            if (*rc::gen::arbitrary<bool>())
                object.insert("elements", elements);
            const auto makeup = LoopMakeup::fromJson(object, "x");
            if (makeup)
                RC_ASSERT(LoopMakeup::fromJson(makeup->toJson(), "x").has_value());
            else
                RC_ASSERT(makeup.error().place.startsWith("x"));
        }));
    }

    void readsCsv()
    {
        const auto makeup = LoopMakeup::fromCsv(
            "element,gauge_awg,diameter_mm,length_ft,length_m,millihenry,ohms,temperature_c\r\n"
            "section,26,,9000,,,,20\r\n"
            "bridged_tap,,0.4,,250.5,,,\r\n"
            "load_coil,,,,,88,,\r\n"
            "load_coil,,,,,66,6.25,\r\n",
            "pair.csv");
        QVERIFY2(makeup, makeup ? "" : qPrintable(makeup.error().text()));
        LoopMakeup expected;
        expected.temperature = Temperature{20, true};
        expected.elements = {LoopElement::section(Wire::awg(26), {9000, LengthUnit::Foot}),
                             LoopElement::tap(Wire::millimetres(0.4), {250.5, LengthUnit::Metre}),
                             LoopElement::coil(88), LoopElement::coil(66, 6.25)};
        QVERIFY(*makeup == expected);
    }
    void refusesCsvWithRowAndColumn_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("error");
        QTest::newRow("word") << QByteArray("element,gauge_awg,length_ft\nsplice,26,9\n")
                              << "pair.csv, row 2, column element: \"splice\" is not one of "
                                 "section, bridged_tap, load_coil";
        QTest::newRow("number")
            << QByteArray("element,gauge_awg,length_ft\nsection,26,9\nsection,26,nine\n")
            << "pair.csv, row 3, column length_ft: must be a number";
        QTest::newRow("gauge")
            << QByteArray("element,gauge_awg,length_ft\nsection,27,9\n")
            << "pair.csv, row 2, column gauge_awg: must be one of 19, 22, 24, 26";
        QTest::newRow("does not belong")
            << QByteArray("element,gauge_awg,length_ft,millihenry\nsection,26,9,88\n")
            << "pair.csv, row 2, column millihenry: is not a known key";
        QTest::newRow("two temperatures")
            << QByteArray("element,gauge_awg,length_ft,temperature_f\nsection,26,9,70\nsection,26,"
                          "9,80\n")
            << "pair.csv, row 3, column temperature_f: stands in more than one row";
    }
    void refusesCsvWithRowAndColumn()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, error);
        const auto makeup = LoopMakeup::fromCsv(text, "pair.csv");
        QVERIFY(!makeup);
        QCOMPARE(makeup.error().text(), error);
    }
    void refusesACsvOfNothing()
    {
        QVERIFY(!LoopMakeup::fromCsv("", "pair.csv"));
        QVERIFY(!LoopMakeup::fromCsv("element\n", "pair.csv"));
        QVERIFY(!LoopMakeup::fromCsv("element,colour\nsection,red\n", "pair.csv"));
    }

    void addsUp()
    {
        LoopMakeup makeup;
        makeup.elements = {LoopElement::section(Wire::awg(26), {3000, LengthUnit::Foot}),
                           LoopElement::tap(Wire::awg(24), {500, LengthUnit::Foot}),
                           LoopElement::coil(88),
                           LoopElement::section(Wire::awg(24), {304.8, LengthUnit::Metre}),
                           LoopElement::tap(Wire::awg(24), {30.48, LengthUnit::Metre})};
        QCOMPARE(makeup.workingLengthFt(), 4000.0);
        QCOMPARE(makeup.bridgedTapFt(), 600.0);
        QCOMPARE(makeup.loadCoils(), 1);
        QCOMPARE(makeup.textAt(1).english(),
                 QString("bridged tap of 24 AWG, 500 ft, at 3000 ft from the "
                         "office"));
        QCOMPARE(makeup.textAt(4).english(),
                 QString("bridged tap of 24 AWG, 30.48 m, at 1219 m from the office"));
        QCOMPARE(makeup.textAt(0).english(),
                 QString("section of 26 AWG, 3000 ft, beginning at the office"));
        QCOMPARE(makeup.textAt(3).english(),
                 QString("section of 24 AWG, 304.8 m, beginning 3000 ft from the office"));
        QCOMPARE(makeup.without({1, 2}).elements.size(), std::size_t(3));
        QCOMPARE(makeup.without({1, 2}).bridgedTapFt(), 100.0);
    }
    void countsTemperatures()
    {
        QCOMPARE(LoopMakeup().temperatureF(), 70.0);
        QCOMPARE((Temperature{20, true}.fahrenheit()), 68.0);
        QCOMPARE((Temperature{20, true}.text()), QString("20 °C"));
        QVERIFY(std::abs(lowCapacitanceNfPerKm - 43.496) < 1e-3);
    }
};

QTEST_APPLESS_MAIN(LoopMakeupTest)
#include "LoopMakeupTest.moc"
