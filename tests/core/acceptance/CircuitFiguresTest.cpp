// What was measured of a circuit, order after order.

#include "core/acceptance/CircuitFigures.h"

#include "core/acceptance/Judge.h"
#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class CircuitFiguresTest : public QObject
{
    Q_OBJECT

    const LimitSet m_limits = limits();
    CircuitFigures m_figures;

    /// The facts of an order, on a day of its own.
    void add(OrderFields fields, QList<QJsonObject> facts, const char *number, const char *day)
    {
        fields["order_number"] = number;
        for (QJsonObject &fact : facts)
            for (const char *key : {"at", "started", "ended"})
                if (fact.contains(key))
                    fact[key] = QString(QString(day) + fact[key].toString().mid(10));
        const DecisionInput made = input(fields, facts);
        m_figures.add(made, m_limits, judge(made, m_limits));
    }
    static const CircuitFigure &named(const std::vector<CircuitFigure> &figures, const char *key)
    {
        const auto found = std::ranges::find(figures, QString(key), &CircuitFigure::key);
        if (found == figures.end())
            qFatal("no figure %s", key);
        return *found;
    }
    static QStringList keys(const std::vector<CircuitFigure> &figures)
    {
        QStringList keys;
        for (const CircuitFigure &figure : figures)
            keys << figure.key;
        return keys;
    }

private slots:
    void init() { m_figures = {}; }

    void aJobHasAFigureForWhatWasMeasured()
    {
        add(briFields(), briFacts(), "A-1", "2026-03-04");
        const auto figures = m_figures.take();
        QCOMPARE(keys(figures), QStringList({"ac_v", "dc_v", "dc_resistance", "loss_40000",
                                             "bit_error_ratio", "errored_seconds"}));
        const CircuitFigure &loss = named(figures, "loss_40000");
        QCOMPARE(loss.name.english(), QString("loss at 40 kHz"));
        QCOMPARE(loss.unit, QString("dB"));
        QCOMPARE(loss.limit, 42.0);
        QCOMPARE(loss.newest().value, 28.4);
        QCOMPARE(loss.newest().state, ReadingState::Met);
        QCOMPARE(loss.newest().pair, QString("17-204"));
        QCOMPARE(named(figures, "ac_v").newest().value, 0.2);
        QCOMPARE(named(figures, "errored_seconds").limit, 1.2); // of available seconds, in percent
    }

    /// The next order finds more resistance than the turn-up did.
    void aLaterOrderStandsBesideTheTurnUp()
    {
        add(briFields(), briFacts(), "A-1", "2026-03-04");
        QList<QJsonObject> worse = briFacts();
        worse[2]["dc_resistance_ohm"] = 1400;
        worse[2]["id"] = uuid(203);
        OrderFields change = briFields();
        change["order_type"] = "move";
        add(change, worse, "A-2", "2027-03-04");
        const auto figures = m_figures.take();
        const CircuitFigure &resistance = named(figures, "dc_resistance");
        QCOMPARE(resistance.readings.size(), 2u);
        QCOMPARE(resistance.of("A-1")->value, 612.0);
        QCOMPARE(resistance.of("A-1")->state, ReadingState::Met);
        QCOMPARE(resistance.newest().value, 1400.0);
        QCOMPARE(resistance.newest().state, ReadingState::NotMet);
        QVERIFY(!resistance.of("A-3"));
        const QJsonObject json = resistance.toJson("A-1");
        QCOMPARE(json["turn_up"]["value"].toDouble(), 612.0);
        QCOMPARE(json["newest"]["order"].toString(), QString("A-2"));
        QVERIFY(resistance.toJson({})["turn_up"].isNull());
    }

    /// What was taken again decides nothing; what was struck out is not shown.
    void onlyTheReadingThatDecidesIsJudged()
    {
        QList<QJsonObject> facts = briFacts();
        facts << fact(50, "loop", 11,
                      {{"dc_resistance_ohm", 640}, {"loss_db", 29}, {"frequency_hz", 40000}})
              << fact(51, "loop", 12, {{"dc_resistance_ohm", 9}}) << voiding(52, 13, 51, "slip");
        add(briFields(), facts, "A-1", "2026-03-04");
        const auto figures = m_figures.take();
        const CircuitFigure &resistance = named(figures, "dc_resistance");
        QCOMPARE(resistance.readings.size(), 2u);
        QCOMPARE(resistance.readings[0].state, ReadingState::Aside);
        QCOMPARE(resistance.readings[1].state, ReadingState::Met);
        QCOMPARE(resistance.of("A-1")->value, 640.0);
    }

    /// 21 mA is between marginal (20) and good (23).
    void aMarginalQuantityIsNearItsLimit()
    {
        QList<QJsonObject> facts = analogFacts();
        for (QJsonObject &fact : facts)
            if (fact.value("quantity") == "loop_current")
                fact["value"] = 21;
        add(analogFields(), facts, "A-1", "2026-03-04");
        const auto figures = m_figures.take();
        const CircuitFigure &current = named(figures, "loop_current");
        QCOMPARE(current.newest().state, ReadingState::NearLimit);
        QCOMPARE(current.limit, 23.0);
        QVERIFY(!keys(figures).contains("dial_tone")); // a yes or no has no trend
    }

    void nothingMeasuredIsNoFigure()
    {
        add(briFields(), {}, "A-1", "2026-03-04");
        QVERIFY(m_figures.take().empty());
    }
};

QTEST_GUILESS_MAIN(CircuitFiguresTest)
#include "CircuitFiguresTest.moc"
