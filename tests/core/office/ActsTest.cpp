#include "core/office/Acts.h"

#include <QTest>

using namespace loopwright;

/// The table of roles, written out once more: what nobody meant to change here fails.
class ActsTest : public QObject
{
    Q_OBJECT

private slots:
    void eachRoleMay_data()
    {
        QTest::addColumn<bool>("installer");
        QTest::addColumn<bool>("dispatcher");
        const auto row = [](const char *act, bool installer, bool dispatcher) {
            QTest::newRow(act) << installer << dispatcher;
        };
        for (const char *act : {"record_facts", "label_instrument", "take_order_on_site",
                                "issue_certificate", "hand_on", "void_own_fact", "work_apart"})
            row(act, true, true);
        for (const char *act : {"keep_orders", "keep_register", "export_internal", "send_vans"})
            row(act, false, true);
        for (const char *act : {"void_anothers_fact", "except", "keep_limits", "keep_people",
                                "keep_issuer", "restore", "keep_keys", "lose_van", "change_office"})
            row(act, false, false);
    }
    void eachRoleMay()
    {
        QFETCH(bool, installer);
        QFETCH(bool, dispatcher);
        const auto act = fromText<Act>(QString::fromLatin1(QTest::currentDataTag()));
        QVERIFY(act);
        const auto may = [&act](Role role) {
            return whyNot({"P1", Person{"P1", "Pat Example", role}, true}, *act).isEmpty();
        };
        QCOMPARE(may(Role::Installer), installer);
        QCOMPARE(may(Role::Dispatcher), dispatcher);
        QVERIFY(may(Role::Supervisor));
        QVERIFY(!whyNot({"stranger", {}, true}, *act).isEmpty());
        // First use: nobody is there who could allow it.
        QCOMPARE(whyNot({"stranger", {}, false}, *act).isEmpty(), *act != Act::Except);
    }

    void everyActIsInTheTable()
    {
        int rows = 0;
        for (const auto &[act, code] : EnumCodes<Act>::table)
            rows += leastRoleFor(act) <= Role::Supervisor && code[0] != 0;
        QCOMPARE(rows, 20);
    }

    void saysWhoMay()
    {
        const Actor installer{"K7", Person{"K7", "Kim Carver", Role::Installer}, true};
        QCOMPARE(
            whyNot(installer, Act::KeepOrders).english(),
            "Kim Carver is registered as an installer and may not take in, change, complete or "
            "cancel orders: that needs a dispatcher.");
        QCOMPARE(whyNot({"ada", {}, true}, Act::Except).english(),
                 "\"ada\" is not in the register and may not accept with an exception: say who "
                 "acts, a supervisor at least.");
    }
};

QTEST_APPLESS_MAIN(ActsTest)
#include "ActsTest.moc"
