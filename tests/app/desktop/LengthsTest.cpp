#include "app/desktop/Lengths.h"

#include "app/desktop/Language.h"

#include <QLocale>
#include <QTest>

using namespace loopwright;

class LengthsTest : public QObject
{
    Q_OBJECT

private slots:
    void cleanup() { speak("en"); }

    void asTheCountryMeasures()
    {
        QLocale::setDefault(QLocale::c());
        QVERIFY(!inMetres());
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        QVERIFY(!inMetres());
        QLocale::setDefault(QLocale(QLocale::English, QLocale::Ireland));
        QVERIFY(inMetres());
    }

    void inASentence_data()
    {
        QTest::addColumn<QString>("said");
        QTest::addColumn<bool>("metres");
        QTest::addColumn<QString>("shown");
        const auto row = [](const char *said, bool metres, const char *shown) {
            QTest::addRow("%s, %s", said, metres ? "m" : "ft")
                << QString(said) << metres << QString(shown);
        };
        const char *coils = "Load coils: 2 on 9000 ft; the rule asks for some beyond 18000 ft.";
        row(coils, false, coils);
        row(coils, true, "Load coils: 2 on 2743 m; the rule asks for some beyond 5486 m.");
        row("a tap of 24 AWG, 400 m, at 1500 ft", false, "a tap of 24 AWG, 1312 ft, at 1500 ft");
        row("a tap of 24 AWG, 400 m, at 1500 ft", true, "a tap of 24 AWG, 400 m, at 457 m");
        row("on 18000.04 ft, up to 18000 ft", true, "on 5486.41 m, up to 5486 m");
        row("on 18002 ft, up to 18001 ft", true, "on 5487.0 m, up to 5486.7 m"); // else alike
        row("88 mH, 26 AWG, 40 kHz, 9.5 mA, 3 min, 5 m/s, pair 7-1500 ft", true,
            "88 mH, 26 AWG, 40 kHz, 9.5 mA, 3 min, 5 m/s, pair 7-1500 ft");
        row("", true, "");
    }
    void inASentence()
    {
        QFETCH(QString, said);
        QFETCH(bool, metres);
        QTEST(withLengths(said, metres), "shown");
    }

    void withTheDecimalMarkOfTheLanguage()
    {
        speak("de");
        QCOMPARE(withLengths("auf 1500,5 ft", true), "auf 457,4 m");
    }
};

QTEST_MAIN(LengthsTest)
#include "LengthsTest.moc"
