// What comes of an order that several changed: the same, whoever is named first.

#include "core/order/MergedFields.h"

#include <QTest>

#include <algorithm>

using namespace loopwright;

class MergedFieldsTest : public QObject
{
    Q_OBJECT

    /// With every order of the stations.
    OrderFields merged(const OrderFields &own, std::vector<ToldFields> told)
    {
        const OrderFields first = mergedFields(own, told);
        std::ranges::reverse(told);
        if (mergedFields(own, told) != first)
            qFatal("it matters who is named first");
        return first;
    }

private slots:
    void whatOneChangedIsTakenOver()
    {
        const OrderFields base{{"pair", "1"}, {"contact", "Ada"}};
        const ToldFields one{base, {{"pair", "2"}, {"contact", "Ada"}}};
        const ToldFields idle{base, base};
        QCOMPARE(merged(base, {one, idle}), one.now);
        QCOMPARE(merged(base, {one, one}), one.now);
    }

    void whatOneTookAwayIsGone()
    {
        const OrderFields base{{"pair", "1"}, {"contact", "Ada"}};
        QCOMPARE(merged(base, {{base, {{"pair", "1"}}}}), (OrderFields{{"pair", "1"}}));
    }

    void whatTwoChangedOtherwiseStays()
    {
        const OrderFields base{{"pair", "1"}};
        const ToldFields one{base, {{"pair", "2"}, {"contact", "Bo"}}},
            other{base, {{"pair", "3"}}};
        QCOMPARE(merged(base, {one, other}), (OrderFields{{"pair", "1"}, {"contact", "Bo"}}));
    }

    void whatTheOfficeChangedMeanwhileStays()
    {
        const OrderFields base{{"pair", "1"}}, own{{"pair", "4"}};
        QCOMPARE(merged(own, {{base, {{"pair", "2"}}}}), own);
        // Taken along again since: then it is the van alone that changed it.
        QCOMPARE(merged(own, {{own, {{"pair", "2"}}}}), (OrderFields{{"pair", "2"}}));
        // Changed there to what the office says too.
        QCOMPARE(merged(own, {{base, own}}), own);
    }
};

QTEST_APPLESS_MAIN(MergedFieldsTest)
#include "MergedFieldsTest.moc"
