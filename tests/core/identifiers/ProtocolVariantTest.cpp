#include "core/identifiers/ProtocolVariant.h"

#include <QSet>
#include <QTest>

using namespace loopwright;

class ProtocolVariantTest : public QObject
{
    Q_OBJECT
private slots:
    // Sources per row: National ISDN Council, spid.htm and issues.htm (ni-generic, ni2); Allied
    // Telesis ISDN adapter manual 3.6 (5ESS, DMS-100); I.430 8.2.1 (eight terminals on a bus).
    void rows_data()
    {
        QTest::addColumn<QString>("key");
        QTest::addColumn<QString>("spid");
        QTest::addColumn<int>("from");
        QTest::addColumn<int>("to");
        QTest::addColumn<int>("minDigits");
        QTest::addColumn<QString>("tei");
        QTest::addColumn<bool>("northAmerican");
        const auto row = [](const char *key, const char *spid, int from, int to, int minDigits,
                            const char *tei, bool northAmerican) {
            QTest::newRow(key) << key << spid << from << to << minDigits << tei << northAmerican;
        };
        row("ni-generic", "required", 1, 2, 14, "automatic", true);
        row("ni2", "optional", 1, 2, 3, "automatic", true);
        row("ni1", "required", 2, 2, 9, "automatic", true);
        row("ni1-5ess", "required", 2, 2, 9, "automatic", true);
        row("ni1-dms100", "required", 2, 2, 10, "automatic", true);
        row("ni1-ewsd", "required", 2, 2, 9, "automatic", true);
        row("custom-5ess-multipoint", "required", 1, 8, 9, "automatic", true);
        row("custom-5ess-p2p", "none", 0, 0, 0, "fixed_zero", true);
        row("custom-dms100", "required", 2, 2, 10, "automatic", true);
        row("dss1", "none", 0, 0, 0, "automatic", false);
        row("dss1-p2p", "none", 0, 0, 0, "fixed_zero", false);
        row("vn", "none", 0, 0, 0, "automatic", false);
        row("1tr6", "none", 0, 0, 0, "automatic", false);
        row("ins64", "none", 0, 0, 0, "automatic_or_fixed_zero", false);
        row("ts013", "none", 0, 0, 0, "automatic", false);
        row("analog", "none", 0, 0, 0, "none", false);
        QCOMPARE(allVariants().size(), 16U);
    }
    void rows()
    {
        QFETCH(QString, key);
        const ProtocolVariant *variant = findVariant(key);
        QVERIFY(variant);
        QCOMPARE(variant->key, key);
        QTEST(toText(variant->spid), "spid");
        QTEST(variant->usualSpidsFrom, "from");
        QTEST(variant->usualSpidsTo, "to");
        QTEST(variant->minDigits, "minDigits");
        QTEST(toText(variant->tei), "tei");
        QTEST(variant->northAmerican, "northAmerican");
    }

    void everyRowIsComplete()
    {
        QSet<QString> keys;
        for (const ProtocolVariant &variant : allVariants()) {
            QVERIFY(!keys.contains(variant.key));
            keys.insert(variant.key);
            QVERIFY(!variant.name.isEmpty() && !variant.region.isEmpty());
            QVERIFY(!variant.teiWords.isEmpty() && !variant.settings.empty());
            QVERIFY(!variant.bearers.empty());
            QCOMPARE(variant.spidRule != SpidRule::None, variant.hasSpid());
            QCOMPARE(!variant.spidShapes.isEmpty(), variant.hasSpid());
            QCOMPARE(variant.maxSpids > 0, variant.hasSpid());
            QCOMPARE(variant.maxDigits > 0, variant.hasSpid());
            QVERIFY(variant.maxDigits <= 20); // the rules keep no more digits
        }
    }

    void findsByExactKey()
    {
        QVERIFY(!findVariant(u""));
        QVERIFY(!findVariant(u"NI1"));
        QVERIFY(!findVariant(u"ni3"));
        QCOMPARE(nearestVariantKey(u"NI1_5ESS"), QString("ni1-5ess"));
        QCOMPARE(nearestVariantKey(u"National ISDN-2"), QString("ni2"));
        QCOMPARE(nearestVariantKey(u"ni3"), QString());
        QCOMPARE(nearestVariantKey(u""), QString());
    }
};

QTEST_APPLESS_MAIN(ProtocolVariantTest)
#include "ProtocolVariantTest.moc"
