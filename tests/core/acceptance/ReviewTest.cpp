#include "core/acceptance/Review.h"

#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;

class ReviewTest : public QObject
{
    Q_OBJECT

    static Findings of(FactKind kind, const QJsonObject &typed,
                       const OrderFields &fields = jobs::briFields())
    {
        return review(kind, typed, jobs::order(fields), jobs::limits());
    }

private slots:
    void aHazardStandsAtItsReadingWhateverElseIsTyped()
    {
        const Findings said =
            of(FactKind::Safety, {{"office_connected", "x"},
                                  {"ac_v", QJsonObject{{"tip_ground", "y"}, {"tip_ring", 61}}}});
        QCOMPARE(said.size(), 1u);
        QCOMPARE(said[0].field, "ac_v.tip_ring");
        QVERIFY(said[0].reason.startsWith("HAZARD. 61 V AC between tip and ring"));
        QVERIFY(of(FactKind::Safety, {{"ac_v", QJsonObject{{"tip_ring", 49}}}}).empty());
    }
    void aLayerThatIsDownSaysWhatToCheckFirst()
    {
        QJsonObject layer{{"layer", 1}, {"interface", "u"}, {"outcome", "up"}};
        QVERIFY(of(FactKind::Layer, layer).empty());
        layer["outcome"] = "down";
        QVERIFY(of(FactKind::Layer, layer).at(0).reason.contains("Check first"));
    }
    void aCauseIsNamedWhereTheVariantHasThatList()
    {
        const QJsonObject call{{"channel", "B1"},
                               {"direction", "out"},
                               {"service", "data"},
                               {"outcome", "failed"},
                               {"cause", 58}};
        QVERIFY(of(FactKind::Call, call).at(0).reason.contains("Check first"));
        OrderFields fields = jobs::briFields();
        fields["protocol_variant"] = "1tr6";
        QVERIFY(!of(FactKind::Call, call, fields).at(0).reason.contains("Check first"));
    }
    void aFigureOutsideItsLimitIsMarked()
    {
        QCOMPARE(of(FactKind::Loop, {{"dc_resistance_ohm", 612}, {"loss_db", 50}}).at(0).field,
                 "loss_db");
        QJsonObject reading{{"quantity", "loop_current"}, {"value", 3}, {"unit", "mA"}};
        QCOMPARE(of(FactKind::Analog, reading, jobs::analogFields()).at(0).field, "value");
        reading["value"] = 31;
        QVERIFY(of(FactKind::Analog, reading, jobs::analogFields()).empty());
    }
};

QTEST_APPLESS_MAIN(ReviewTest)
#include "ReviewTest.moc"
