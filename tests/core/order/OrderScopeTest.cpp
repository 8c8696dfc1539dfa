#include "core/order/OrderScope.h"

#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class OrderScopeTest : public QObject
{
    Q_OBJECT

private slots:
    void scopeFollowsWhatChanges_data()
    {
        QTest::addColumn<QString>("type");
        QTest::addColumn<QString>("column");
        QTest::addColumn<QString>("value");
        QTest::addColumn<QString>("scope");
        QTest::newRow("new") << "new"
                             << "remarks"
                             << "x"
                             << "full";
        QTest::newRow("disconnect") << "disconnect"
                                    << "remarks"
                                    << "x"
                                    << "nothing";
        QTest::newRow("record only") << "record_only"
                                     << "dn_1"
                                     << "2175550199"
                                     << "record_only";
        QTest::newRow("repair") << "repair"
                                << "pair"
                                << "99"
                                << "repair";
        QTest::newRow("numbers") << "change"
                                 << "dn_1"
                                 << "2175550199"
                                 << "numbers_only";
        QTest::newRow("pair") << "change"
                              << "pair"
                              << "99"
                              << "full";
        QTest::newRow("variant") << "change"
                                 << "protocol_variant"
                                 << "ni1"
                                 << "full";
        QTest::newRow("service") << "change"
                                 << "b2_services"
                                 << "voice+data"
                                 << "full";
        QTest::newRow("move within") << "move"
                                     << "terminal_location"
                                     << "upstairs"
                                     << "move_within";
        QTest::newRow("move away") << "move"
                                   << "premises"
                                   << "9 Other Road"
                                   << "full";
    }
    void scopeFollowsWhatChanges()
    {
        QFETCH(QString, type);
        QFETCH(QString, column);
        QFETCH(QString, value);
        QFETCH(QString, scope);
        OrderFields fields = briFields();
        fields["order_type"] = type;
        fields[column] = value;
        QCOMPARE(toText(scopeOf(jobs::order(fields), jobs::order(briFields()))), scope);
    }
    void changeOfNothingKnownNeedsEverything()
    {
        OrderFields fields = briFields();
        fields["order_type"] = "change";
        QCOMPARE(toText(scopeOf(jobs::order(fields), {})), "full");
    }
    void tellsWhatChanged()
    {
        OrderFields fields = briFields();
        fields["remarks"] = "ring twice";
        QCOMPARE(whatChanged(jobs::order(briFields()), jobs::order(fields)),
                 std::vector<ChangedWhat>());
        fields["spid_1"] = "21755501430102";
        QCOMPARE(whatChanged(jobs::order(briFields()), jobs::order(fields)),
                 std::vector{ChangedWhat::Identifiers});
        fields["pair"] = "1";
        QCOMPARE(whatChanged(jobs::order(briFields()), jobs::order(fields)),
                 (std::vector{ChangedWhat::Pair, ChangedWhat::Identifiers}));
        QCOMPARE(whatChanged(jobs::order(briFields()), jobs::order(fields), true),
                 std::vector{ChangedWhat::Identifiers});
        fields = briFields();
        fields["office"] = "SOUTH";
        QCOMPARE(whatChanged(jobs::order(briFields()), jobs::order(fields)),
                 std::vector{ChangedWhat::LineEquipment});
    }
};

QTEST_APPLESS_MAIN(OrderScopeTest)
#include "OrderScopeTest.moc"
