#include "core/base/Figures.h"

#include "core/base/Phrasebook.h"

#include <QTest>

using namespace loopwright;

namespace {

QString asItStands(const char *source, std::optional<qint64>)
{
    return QString::fromUtf8(source);
}

const Text::Catalogue &german()
{
    static const Text::Catalogue words(asItStands, u',');
    return words;
}

using Readings = std::optional<std::pair<double, double>>;

} // namespace

class FiguresTest : public QObject
{
    Q_OBJECT

private slots:
    void aFigureHasTheMarkOfTheLanguage_data()
    {
        QTest::addColumn<QString>("english");
        QTest::addColumn<QString>("said");
        const auto row = [](const char *english, const char *said) {
            QTest::newRow(english) << QString::fromUtf8(english) << QString::fromUtf8(said);
        };
        row("28.4", "28,4");
        row("-28.4 dB", "-28,4 dB");
        row("1.5e-07", "1,5e-07");
        row("+0.5", "+0,5");
        row("3.2 kohm (0.4 %)", "3,2 kohm (0,4 %)");
        row("0.1 V, 50.2 V.", "0,1 V, 50,2 V.");
        row("12,345", "12.345");
        row("1,234,567.5", "1.234.567,5");
        row("50 V", "50 V");
    }
    void aFigureHasTheMarkOfTheLanguage()
    {
        QFETCH(QString, english);
        QFETCH(QString, said);
        QCOMPARE(figureWith(u',', english), said);
        QCOMPARE(figureWith(englishMark, english), english);
        QCOMPARE(Phrasebook({}, german()).say(english), said);
        QCOMPARE(Text("%1").arg(english).in(german()), said);
        QCOMPARE(Text::figure(english).in(german()), said);
        QCOMPARE(Text("%1").arg(english).english(), english);
    }

    /// "ohm" is a word, which a language may write with a capital; other units are the same.
    void aUnitThatIsAWordIsTranslated()
    {
        const Text::Catalogue units(
            [](const char *source, std::optional<qint64>) {
                return QString::fromUtf8(source).replace("ohm", "Ohm");
            },
            u',');
        QCOMPARE(Text::figure("692.5 ohm").in(units), "692,5 Ohm");
        QCOMPARE(Text("%1, %2").arg(QString("ohm")).arg(QString("1.2 kohm (3 ohm)")).in(units),
                 "Ohm, 1,2 kOhm (3 Ohm)");
        QCOMPARE(Phrasebook({}, units).say("692 ohm"), "692 Ohm");
        QCOMPARE(Text("pair %1").arg(QString("692 ohm")).in(units), "pair 692 ohm"); // a key
        QCOMPARE(Text::figure("692.5 ohm").english(), "692.5 ohm");
    }

    void whatIsNoFigureStays_data()
    {
        QTest::addColumn<QString>("text");
        for (const char *text :
             {"1.2.3", "T1.601", "26-0.1", "217-555-0107", "2026-03-04", "09:15", "28.4:1",
              "10.0.0.1", "a/1.5/b", "Suite 2.5", "0,123", "12.5x", "#1.5", "V1.5"})
            QTest::newRow(text) << QString(text);
    }
    void whatIsNoFigureStays()
    {
        QFETCH(QString, text);
        QCOMPARE(figureWith(u',', text), text);
    }

    void whatWasTypedStays()
    {
        QCOMPARE(Text("“%1” is not %2").arg(QString("1.5")).arg(2.5).in(german()),
                 "“1.5” is not 2,5");
        QCOMPARE(Text::verbatim("1.5 V").in(german()), "1.5 V");
        const Phrasebook book({"There is no “%1”", "%1 is the key of it"}, german());
        QCOMPARE(book.say("There is no “1.5”"), "There is no “1.5”");
        QCOMPARE(book.say("1.5", {"1.5"}), "1.5");
        QCOMPARE(book.say("Main, 1.5 V at the door"), "Main, 1.5 V at the door");
    }

    /// A pair, a circuit, an instrument may be called so.
    void aKeyStays()
    {
        for (const char *source : {"on pair %1", "Instrument %1 is known.", "order %1", "“%1”",
                                   ", reference %1", "serial %1"})
            QVERIFY2(holdsKey(source, 1), source);
        for (const char *source : {"at %1", "%1 on the pair", "in order, %1", "limit %1", "%2"})
            QVERIFY2(!holdsKey(source, 1), source);
        QCOMPARE(Text("%1 on pair %2").arg(QString("1.5 V")).arg(QString("7.101")).in(german()),
                 "1,5 V on pair 7.101");
        const Phrasebook book({"%1 was read on pair %2."}, german());
        QCOMPARE(book.say("1.5 V was read on pair 7.101."), "1,5 V was read on pair 7.101.");
    }

    void aNumberThatIsTyped()
    {
        for (const QChar mark : {QChar(u','), englishMark}) {
            QCOMPARE(typedNumber("28,4", mark), std::optional(28.4));
            QCOMPARE(typedNumber("28.4", mark), std::optional(28.4));
            QCOMPARE(typedNumber("-0,123", mark), std::optional(-0.123));
            QCOMPARE(typedNumber("1,5e-7", mark), std::optional(1.5e-7));
            QCOMPARE(typedNumber("1200", mark), std::optional(1200.0));
            QCOMPARE(typedNumber("1,2000", mark), std::optional(1.2));
            QCOMPARE(typedNumber("1.200,5", mark), std::optional<double>());
            QCOMPARE(typedNumber("1,234,567", mark), std::optional<double>());
            QCOMPARE(typedNumber("1,200", mark), std::optional<double>());
            QCOMPARE(twoReadings("1,200", mark), Readings(std::pair(1.2, 1200.0)));
            QCOMPARE(twoReadings(" -12,345 ", mark), Readings(std::pair(-12.345, -12345.0)));
            QCOMPARE(twoReadings("28,4", mark), Readings());
        }
        QCOMPARE(twoReadings("1.200", u','), Readings(std::pair(1.2, 1200.0)));
        QCOMPARE(typedNumber("1.200", u','), std::optional<double>());
        QCOMPARE(typedNumber("1.200", englishMark), std::optional(1.2)); // as ever
    }

    void whatTheProgramPutsIntoAFieldHasOneReading()
    {
        for (const char *english : {"28.4", "1.234", "1234", "0.123", "-12.345", "1.5e-07", "7"})
            for (const QChar mark : {QChar(u','), englishMark}) {
                const QString text = asTyped(english, mark);
                QCOMPARE(typedNumber(text, mark), std::optional(QString(english).toDouble()));
            }
        QCOMPARE(asTyped("28.4", u','), "28,4");
        QCOMPARE(asTyped("1.234", u','), "1,2340");
        QCOMPARE(asTyped("1.234", englishMark), "1.234");
    }
};

QTEST_APPLESS_MAIN(FiguresTest)
#include "FiguresTest.moc"
