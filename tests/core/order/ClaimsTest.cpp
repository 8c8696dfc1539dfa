#include "core/order/Claims.h"

#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;

class ClaimsTest : public QObject
{
    Q_OBJECT
    static QStringList claimed(const OrderFields &changes)
    {
        OrderFields fields = jobs::briFields();
        for (auto it = changes.begin(); it != changes.end(); ++it)
            fields[it.key()] = it.value();
        QStringList list;
        for (const Claim &claim : claimsOf(jobs::order(fields)))
            list << QStringList{toText(claim.kind), claim.scope, claim.value, claim.field}.join(
                ' ');
        return list;
    }

private slots:
    void claims_data()
    {
        QTest::addColumn<OrderFields>("changes");
        QTest::addColumn<QStringList>("expected");
        const QString pair = "pair NORTH 17-204 pair", dn1 = "dn  +12175550143 dn_1",
                      dn2 = "dn  +12175550144 dn_2", spid1 = "spid NORTH 21755501430101 spid_1",
                      spid2 = "spid NORTH 21755501440101 spid_2";
        QTest::newRow("all") << OrderFields() << QStringList{pair, dn1, spid1, dn2, spid2};
        QTest::newRow("however it was typed") << OrderFields{{"dn_1", "(217) 555 0143"},
                                                             {"spid_1", "217 555 0143 0101"},
                                                             {"pair", " 17 - 204 "}}
                                              << QStringList{pair, dn1, spid1, dn2, spid2};
        QTest::newRow("two terminals of one number")
            << OrderFields{{"dn_2", "2175550143"}} << QStringList{pair, dn1, spid1, spid2};
        QTest::newRow("seven digits take the other's area code")
            << OrderFields{{"dn_2", "555-0144"}} << QStringList{pair, dn1, spid1, dn2, spid2};
        QTest::newRow("what cannot be read")
            << OrderFields{{"dn_2", "no number"}, {"spid_2", "x"}} << QStringList{pair, dn1, spid1};
        QTest::newRow("disconnect") << OrderFields{{"order_type", "disconnect"}} << QStringList();
    }
    void claims()
    {
        QFETCH(OrderFields, changes);
        QFETCH(QStringList, expected);
        QCOMPARE(claimed(changes), expected);
    }
    void aNumberIsOneWithoutItsPlus_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("typed");
        for (const char *typed : {"+49 30 1234567", "49 30 1234567", "0049 30 1234567"}) {
            QTest::addRow("dss1 %s", typed) << "dss1" << typed;
            QTest::addRow("1tr6 %s", typed) << "1tr6" << typed;
        }
        QTest::newRow("1tr6 030") << "1tr6"
                                  << "030 1234567";
        QTest::newRow("analog") << "analog"
                                << "+49 30 1234567";
    }
    void aNumberIsOneWithoutItsPlus()
    {
        QFETCH(QString, variant);
        QFETCH(QString, typed);
        ServiceOrder order = jobs::order(jobs::briFields());
        order.variant = variant;
        order.terminals = {{1, typed, {}, {}, {}}};
        QCOMPARE(claimsOf(order).at(1).value, "+49301234567");
    }
    void pairsAreOneHoweverTheyAreTyped_data()
    {
        QTest::addColumn<QString>("typed");
        for (const char *typed : {"CA12/204", "ca12/204", " ca12 / 204", "CA12 /204 "})
            QTest::newRow(typed) << QString(typed);
    }
    void pairsAreOneHoweverTheyAreTyped()
    {
        QFETCH(QString, typed);
        QCOMPARE(pairKey(typed), "CA12/204");
    }
    void dashesAreOne_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::newRow("hyphen") << "17-204";
        QTest::newRow("en dash") << QString::fromUtf16(u"17 \u2013 204");
        QTest::newRow("hyphen that does not break") << QString::fromUtf16(u"17\u2011204");
        QTest::newRow("minus sign") << QString::fromUtf16(u"17\u2212204");
        QTest::newRow("full width") << QString::fromUtf16(u"\uFF11\uFF17\uFF0D204");
        QTest::newRow("no-break space") << QString::fromUtf16(u"17\u00A0-\u00A0204");
        QTest::newRow("zero-width space") << QString::fromUtf16(u"17-\u200B204");
    }
    void dashesAreOne()
    {
        QFETCH(QString, typed);
        QCOMPARE(pairKey(typed), "17-204");
        QVERIFY(pairKey(typed) != pairKey("17/204"));
    }
    void premises()
    {
        QCOMPARE(premisesKey(" 12  Mill LANE "), premisesKey("12 mill lane"));
        QVERIFY(premisesKey("12 Mill Lane") != premisesKey("21 Mill Lane"));
    }
};

QTEST_APPLESS_MAIN(ClaimsTest)
#include "ClaimsTest.moc"
