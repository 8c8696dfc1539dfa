// An order that is handed out again: what was written before is taken back nowhere, and what the
// office decided reaches the van.

#include "app/actions/Import.h"
#include "app/actions/Register.h"
#include "app/actions/Troubles.h"
#include "db/OrderStore.h"
#include "tests/support/Vans.h"

#include <QTest>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

class VanHandedOutAnewTest : public QObject, OfficeWithTwoVans
{
    Q_OBJECT

    /// The office gives the order other values while the van has it.
    void changeInOffice(const QMap<QString, QString> &values)
    {
        OrderFields fields = fieldsOf(office());
        for (auto each = values.begin(); each != values.end(); ++each)
            fields[each.key()] = each.value();
        office().records->changeWhatIsOut(true);
        good(putOrder(*office().records, fields, true));
    }
    static void changeInVan(Site &van, const QString &column, const QString &value)
    {
        OrderFields fields = fieldsOf(van);
        fields[column] = value;
        van.records->actAs("D4");
        good(putOrder(*van.records, fields, true));
        van.records->actAs("K7");
    }
    static OrderFields fieldsOf(Site &site)
    {
        return good(OrderStore(site.records->database()).get("A-1001")).order.fields();
    }
    static QString valueOf(Site &site, const QString &column)
    {
        return fieldsOf(site).value(column);
    }
    static QStringList codesOf(const TakenBundle &taken)
    {
        QStringList codes;
        for (const Finding &finding : taken.orders.front().findings)
            codes << finding.code;
        return codes;
    }
    std::optional<Person> personIn(Site &site, const QString &key)
    {
        for (const Person &person : good(people(*site.records)))
            if (person.key == key)
                return person;
        return std::nullopt;
    }

private slots:
    void init()
    {
        start();
        good(importOrders(*office().records, csv({briFields()}), {"o.csv"}));
    }
    void cleanup()
    {
        QCOMPARE(faults(), QStringList());
        QCOMPARE(van().faults(), QStringList());
    }

    /// Whichever was opened first, and how often.
    void anOlderHandOutTakesNothingBack_data()
    {
        QTest::addColumn<QString>("order");
        QTest::newRow("late") << "no";
        QTest::newRow("again") << "onon";
        QTest::newRow("as written") << "on";
    }
    void anOlderHandOutTakesNothingBack()
    {
        QFETCH(QString, order);
        const QByteArray old = take(office(), {"A-1001"});
        changeInOffice({{"pair", "17-990"}, {"contact", "Olga"}});
        const QByteArray now = take(office(), {"A-1001"});
        TakenBundle last;
        for (const QChar each : order)
            last = van().open(each == u'n' ? now : old);
        QCOMPARE(valueOf(van(), "pair"), QString("17-990"));
        QCOMPARE(valueOf(van(), "contact"), QString("Olga"));
        if (order == u"no")
            QCOMPARE(codesOf(last), QStringList("older_bundle"));
        office().receive(van().bring());
        QCOMPARE(valueOf(office(), "pair"), QString("17-990"));
        QCOMPARE(valueOf(office(), "contact"), QString("Olga"));
    }
    void olderRegistersAreNotTakenBack()
    {
        const QByteArray old = take(office(), {"A-1001"});
        ImportOptions update{"p.csv"};
        update.update = true;
        good(importInstallers(*office().records, "installer,name,role\nD4,Lee Ward,installer\n",
                              update));
        const QByteArray now = take(office(), {"A-1001"});
        van().open(now);
        QCOMPARE(personIn(van(), "D4")->role, Role::Installer);
        van().open(old);
        QCOMPARE(personIn(van(), "D4")->role, Role::Installer);
    }

    /// The office took the van's change in, and changed the order again.
    void whatTheOfficeKnowsOfIsNotHeldAgainstIt()
    {
        van().open(take(office(), {"A-1001"}));
        changeInVan(van(), "contact", "Vera");
        office().receive(van().bring());
        QCOMPARE(valueOf(office(), "contact"), QString("Vera"));
        changeInOffice({{"pair", "17-990"}});
        const TakenBundle opened = van().open(take(office(), {"A-1001"}));
        QCOMPARE(codesOf(opened), QStringList("pair_changed"));
        QCOMPARE(valueOf(van(), "pair"), QString("17-990"));
        QCOMPARE(valueOf(van(), "contact"), QString("Vera"));
    }
    /// Not known yet: it stays, and that is told only where the office changed the order too.
    void whatTheOfficeDoesNotKnowStays()
    {
        van().open(take(office(), {"A-1001"}));
        changeInVan(van(), "contact", "Vera");
        QCOMPARE(codesOf(van().open(take(office(), {"A-1001"}))), QStringList());
        QCOMPARE(valueOf(van(), "contact"), QString("Vera"));
        changeInOffice({{"remarks", "Ring twice"}});
        QCOMPARE(codesOf(van().open(take(office(), {"A-1001"}))), QStringList("order_changed"));
        QCOMPARE(valueOf(van(), "contact"), QString("Vera"));
        office().receive(van().bring());
        QCOMPARE(valueOf(office(), "contact"), QString("Vera"));
        QCOMPARE(valueOf(office(), "remarks"), QString("Ring twice"));
    }
    void whatTheOfficeKeepsAgainstTheVanIsTold()
    {
        van().open(take(office(), {"A-1001"}));
        changeInVan(van(), "contact", "Vera");
        changeInOffice({{"contact", "Olga"}});
        const TakenBundle received = office().receive(van().bring());
        QCOMPARE(codesOf(received), QStringList("value_kept"));
        QCOMPARE(received.orders.front().findings.front().field, QString("contact"));
        QCOMPARE(valueOf(office(), "contact"), QString("Olga"));
        // The office knows of it now: the next hand-out settles it in the van too.
        van().open(take(office(), {"A-1001"}));
        QCOMPARE(valueOf(van(), "contact"), QString("Olga"));
    }
    /// Until somebody has decided the van keeps what it has, and then takes what was decided.
    void whatIsSettledReachesTheVan_data()
    {
        QTest::addColumn<QString>("side");
        QTest::addColumn<QString>("pair");
        QTest::newRow("office") << "office"
                                << "17-990";
        QTest::newRow("van") << "van-7"
                             << "17-907";
    }
    void whatIsSettledReachesTheVan()
    {
        QFETCH(QString, side);
        QFETCH(QString, pair);
        van().open(take(office(), {"A-1001"}));
        changeInVan(van(), "pair", "17-907");
        QList<QJsonObject> facts = briFacts();
        van().record(fieldsOf(van()), facts);
        changeInOffice({{"pair", "17-990"}});
        office().receive(van().bring());
        const auto open = conflicts("A-1001", ConflictCode::OrderChanged);
        QCOMPARE(open.size(), std::size_t(1));
        const TakenBundle undecided = van().open(take(office(), {"A-1001"}));
        QVERIFY(codesOf(undecided).contains("order_changed"));
        QCOMPARE(valueOf(van(), "pair"), QString("17-907"));
        good(settleConflict(*office().records, open.front().conflict.id, side, "it is so"));
        QCOMPARE(valueOf(office(), "pair"), pair);
        van().open(take(office(), {"A-1001"}));
        QCOMPARE(valueOf(van(), "pair"), pair);
        office().receive(van().bring());
        QCOMPARE(valueOf(office(), "pair"), pair);
        QVERIFY(
            std::ranges::none_of(conflicts("A-1001", ConflictCode::OrderChanged),
                                 [](const ShownConflict &each) { return each.conflict.isOpen(); }));
    }

    /// The van went to a third pair, not knowing that the office had chosen another one.
    void aSwapInTheVanDecidesNothingAgainstTheOffice()
    {
        van().open(take(office(), {"A-1001"}));
        changeInOffice({{"pair", "17-990"}});
        OrderFields moved = fieldsOf(van());
        moved["pair"] = "17-907";
        van().record(moved, QList<QJsonObject>{fact(90, "changed", 1,
                                                    {{"what", "pair"}, {"to", "17-907"}})} +
                                briFacts());
        office().receive(van().bring());
        const auto open = conflicts("A-1001", ConflictCode::OrderChanged);
        QCOMPARE(open.size(), std::size_t(1));
        QVERIFY(!isAccepted(office().outcome()));
        good(settleConflict(*office().records, open.front().conflict.id, "office", "as planned"));
        QVERIFY(!isAccepted(office().outcome()));
        QCOMPARE(valueOf(office(), "pair"), QString("17-990"));
    }

    /// The circuit is in service in the office alone.
    void aRepairGoesAlong()
    {
        office().at("2026-03-05T12:00:00-06:00");
        office().record(briFields(), briFacts());
        good(completeOrder(*office().records, "A-1001"));
        const OpenedTrouble trouble =
            good(openTrouble(*office().records, {"C-77", "no dial tone in the evening"}));
        const TakenBundle opened = van().open(take(office(), {trouble.trouble.order}));
        QCOMPARE(opened.orders.front().verdict, BundleVerdict::Taken);
        const OrderStore orders(van().records->database());
        QCOMPARE(good(orders.get(trouble.trouble.order)).order.type, OrderType::Repair);
    }
    /// The office would not hear of it.
    void anOrderOfTheOfficeEndsThere()
    {
        van().open(take(office(), {"A-1001"}));
        van().record(briFields(), briFacts());
        van().records->actAs("D4");
        for (const auto &ended : {completeOrder(*van().records, "A-1001"),
                                  cancelOrder(*van().records, "A-1001", "not wanted")}) {
            QVERIFY(!ended);
            QCOMPARE(ended.error().code, ErrorCode::Refused);
            QVERIFY2(ended.error().message.contains("office"), qPrintable(ended.error().message));
        }
    }
};

QTEST_MAIN(VanHandedOutAnewTest)
#include "VanHandedOutAnewTest.moc"
