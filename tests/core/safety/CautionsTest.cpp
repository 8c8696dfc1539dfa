#include "core/safety/Cautions.h"

#include <QSet>
#include <QTest>

using namespace loopwright;

class CautionsTest : public QObject
{
    Q_OBJECT
private slots:
    void eachHasTextAndPlaceToLookUp()
    {
        QSet<QString> keys;
        for (const Caution &caution : cautions()) {
            keys << QString::fromLatin1(caution.key);
            QVERIFY(qstrlen(caution.title) > 0 && qstrlen(caution.lookUp) > 0);
            QVERIFY(QString::fromUtf8(caution.text).endsWith('.'));
        }
        QCOMPARE(keys.size(), qsizetype(cautions().size()));
    }
    // Sections of law that the cautions rest on.
    void namesTheSections_data()
    {
        QTest::addColumn<QString>("key");
        QTest::addColumn<QString>("section");
        QTest::newRow("pole") << "power_on_the_pole"
                              << "8 CCR 8614(a), (c)";
        QTest::newRow("approach") << "approach_distance"
                                  << "29 CFR 1910.268(b)(7); 8 CCR 8602(h)";
        QTest::newRow("strand") << "strand_gloves"
                                << "8 CCR 8615(a)";
        QTest::newRow("wood pole") << "wood_pole"
                                   << "8 CCR 8615(b)-(c)";
        QTest::newRow("ladder") << "ladder_roof"
                                << "29 CFR 1910.268(g)";
        QTest::newRow("manhole") << "manhole"
                                 << "29 CFR 1910.268(o)(2); 8 CCR 8616(a); the figures: rule "
                                    "on confined spaces, 29 CFR 1910.146(b) (from memory)";
    }
    void namesTheSections()
    {
        QFETCH(QString, key);
        QFETCH(QString, section);
        for (const Caution &caution : cautions())
            if (key == QLatin1StringView(caution.key)) {
                QCOMPARE(QString::fromLatin1(caution.lookUp), section);
                return;
            }
        QFAIL("no such caution");
    }
    void saysWhatItIsNot()
    {
        QVERIFY(cautionsDisclaimer().contains(
            "reminders do not replace training, permits or local code"));
    }
};

QTEST_APPLESS_MAIN(CautionsTest)
#include "CautionsTest.moc"
