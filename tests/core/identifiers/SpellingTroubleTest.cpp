#include "core/identifiers/SpellingTrouble.h"

#include <QTest>

using namespace loopwright;

class SpellingTroubleTest : public QObject
{
    Q_OBJECT
private slots:
    void recognises_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("code");
        QTest::addColumn<QString>("restored");
        const auto row = [](const char *typed, const char *code, const char *restored = "") {
            QTest::addRow("%s", typed) << QString::fromUtf8(typed) << code << restored;
        };
        row("2.17556E+13", "scientific");
        row("2,17556E13", "scientific");
        row("2e9", "scientific");
        row("2.1755501430101E+13", "scientific", "21755501430101");
        row("2.1755501430101E+14", "scientific");
        row("2.1755501430101E-13", "scientific");
        row("21755501430101.0", "decimal", "21755501430101");
        row(" 21755501430101,00 ", "decimal", "21755501430101");
        row("'015550143000", "apostrophe", "015550143000");
        row("\xE2\x80\x99"
            "015550143000",
            "apostrophe", "015550143000");
        row("21755501430101000000", "rounded");
        for (const char *good :
             {"", "21755501430101", "217.555.0143.0", "1.0", "217-555-0143", "E", "1E", "E+13",
              "2.E", "2175550143010101", "'", "'x", "1E1234", "100000000000000"})
            row(good, "");
    }
    void recognises()
    {
        QFETCH(QString, typed);
        const auto trouble = spellingTroubleOf(typed);
        QTEST(trouble ? trouble->code : QString(), "code");
        QTEST(trouble ? trouble->restored : QString(), "restored");
        QVERIFY(!trouble || !trouble->reason.isEmpty());
    }
};

QTEST_APPLESS_MAIN(SpellingTroubleTest)
#include "SpellingTroubleTest.moc"
