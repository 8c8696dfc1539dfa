#include "core/office/Acts.h"

#include "tests/support/RoleTable.h"

#include <QTest>

using namespace loopwright;

class ActsTest : public QObject
{
    Q_OBJECT

private slots:
    void everyActIsInTheTable()
    {
        QCOMPARE(roles::actsWithout(roles::table), QStringList());
        QCOMPARE(std::size(roles::table), std::size(EnumCodes<Act>::table));
    }

    void eachRoleMay_data()
    {
        QTest::addColumn<Act>("act");
        QTest::addColumn<int>("worker");
        for (const auto &[act, word] : EnumCodes<Act>::table)
            for (int i = 0; i < int(std::size(roles::workers)); ++i)
                QTest::newRow(roles::nameOfTry(word, roles::workers[i])) << act << i;
    }
    void eachRoleMay()
    {
        QFETCH(Act, act);
        QFETCH(int, worker);
        const roles::Worker &who = roles::workers[worker];
        Actor actor{who.key, {}, who.supervised};
        if (who.role)
            actor.person = Person{who.key, "Pat Example", *who.role};
        QCOMPARE(whyNot(actor, act).isEmpty(), roles::may(who, act));
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
