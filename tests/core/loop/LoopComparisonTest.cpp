#include "core/loop/LoopComparison.h"

#include "tests/support/Jobs.h"
#include "tests/support/LoopGenerators.h"
#include "tests/support/Loops.h"

#include <QElapsedTimer>
#include <QTest>

using namespace loopwright;
using namespace loopwright::loops;

namespace {

/// What a meter would read on this pair, at 40 kHz and at 1004 Hz.
MeasuredLoop measuredOn(const LoopMakeup &truth, bool withResistance = true, bool voiceToo = false)
{
    MeasuredLoop measured;
    if (withResistance)
        measured.dcResistanceOhm = dcResistanceOhm(truth);
    measured.losses.push_back({40000, insertionLossDb(truth, 40000), {}});
    if (voiceToo)
        measured.losses.push_back(
            {1004, insertionLossDb(truth, 1004, voiceBandTerminations), voiceBandTerminations});
    return measured;
}

} // namespace

Q_DECLARE_METATYPE(LoopMakeup)

class LoopComparisonTest : public QObject
{
    Q_OBJECT
    const LimitSet m_limits = jobs::limits();

private slots:
    // The pair is not what the record says: the true make-up is measured, the recorded one judged.
    void namesWhatIsWrong_data()
    {
        QTest::addColumn<LoopMakeup>("record");
        QTest::addColumn<LoopMakeup>("truth");
        QTest::addColumn<QString>("cause");
        const auto row = [](const char *name, std::vector<LoopElement> record,
                            std::vector<LoopElement> truth, const char *cause) {
            QTest::newRow(name) << makeup(std::move(record)) << makeup(std::move(truth))
                                << QString::fromLatin1(cause);
        };
        row("as recorded", {section(26, 9000)}, {section(26, 9000)}, "as_recorded");
        row("a little longer", {section(26, 9000)}, {section(26, 9100)}, "as_recorded");
        row("a fifth longer", {section(26, 9000)}, {section(26, 10800)}, "length");
        row("shorter", {section(24, 6000), section(26, 6000)},
            {section(24, 4500), section(26, 4500)}, "length");
        row("hidden tap", {section(24, 9000)},
            {section(24, 4500), tap(24, 2000), section(24, 4500)}, "hidden_tap");
        row("tap gone", {section(24, 4500), tap(24, 3000), section(24, 4500)}, {section(24, 9000)},
            "tap_gone");
        row("forgotten coil", {section(22, 9000)}, {section(22, 3000), coil(), section(22, 6000)},
            "hidden_coil");
        row("forgotten loading", {section(22, 18000)},
            {section(22, 3000), coil(), section(22, 6000), coil(), section(22, 6000), coil(),
             section(22, 3000)},
            "hidden_coil");
        row("coil gone", {section(22, 3000), coil(), section(22, 6000)}, {section(22, 9000)},
            "coil_gone");
        row("wrong gauge", {section(24, 12000)}, {section(26, 12000)}, "gauge");
        row("wrong gauge throughout", {section(22, 1800), section(22, 5600), section(22, 2700)},
            {section(19, 1800), section(19, 5600), section(19, 2700)}, "gauge");
    }
    void namesWhatIsWrong()
    {
        QFETCH(LoopMakeup, record);
        QFETCH(LoopMakeup, truth);
        QFETCH(QString, cause);
        const LoopComparison found = compareLoop(record, measuredOn(truth), m_limits);
        QVERIFY2(toText(found.mostLikely) == cause, qPrintable(found.why.english()));
        QCOMPARE(found.agrees, cause == "as_recorded");
        QVERIFY(!found.why.isEmpty());
        QCOMPARE(found.differences.size(), std::size_t(2));
        if (found.agrees)
            return;
        QVERIFY(found.why.contains(found.candidates[0].text));
        QCOMPARE(found.toJson()["most_likely"].toString(), cause);
    }

    // One section of another gauge, taken for a wrong length: resistance and one loss cannot tell
    // them apart, so the gauge is named as well.
    void namesWhatIsPossibleToo()
    {
        const LoopComparison found = compareLoop(
            makeup({section(26, 3790), section(24, 2400), section(22, 2430)}),
            measuredOn(makeup({section(26, 3790), section(22, 2400), section(22, 2430)})),
            m_limits);
        QCOMPARE(found.mostLikely, LoopCause::Length);
        QVERIFY2(found.why.contains("Possible too:"), qPrintable(found.why.english()));
        QVERIFY2(found.why.contains("or the section of 24 AWG, 2400 ft, beginning 3790 ft from the "
                                    "office, is of 22 AWG."),
                 qPrintable(found.why.english()));
    }
    void tellsLengthInTheUnitOfTheRecord()
    {
        const auto metric = [](double metres) {
            return makeup(
                {LoopElement::section(Wire::millimetres(0.40), {metres, LengthUnit::Metre})});
        };
        const LoopComparison found = compareLoop(metric(2000), measuredOn(metric(2600)), m_limits);
        QCOMPARE(found.mostLikely, LoopCause::Length);
        QVERIFY2(found.why.contains("than the 2000 m on record"), qPrintable(found.why.english()));
    }

    // Neither at a joint nor in the middle of a section; read at four frequencies.
    void findsACoilAnywhere()
    {
        const LoopMakeup record = makeup({section(24, 4060), section(26, 2720), section(24, 4700)});
        const LoopMakeup truth = makeup(
            {section(24, 4060), section(26, 2720), section(24, 3170), coil(66), section(24, 1530)});
        MeasuredLoop measured = measuredOn(truth, true, true);
        for (const double frequency : {404.0, 2804.0})
            measured.losses.push_back({frequency,
                                       insertionLossDb(truth, frequency, voiceBandTerminations),
                                       voiceBandTerminations});
        const LoopComparison found = compareLoop(record, measured, m_limits);
        QVERIFY2(found.mostLikely == LoopCause::HiddenCoil, qPrintable(found.why.english()));
        QVERIFY(found.candidates[0].misfit < 0.1);
    }

    // Resistance 5 % and loss a few hundredths up, as a hot day does: 9000 ft of 26 AWG at 110 °F.
    void namesTheTemperature()
    {
        LoopMakeup truth = makeup({section(26, 9000)});
        truth.temperature = Temperature{110, false};
        const LoopComparison found =
            compareLoop(makeup({section(26, 9000)}), measuredOn(truth), m_limits);
        QVERIFY(!found.agrees);
        const bool likely = found.mostLikely == LoopCause::Temperature;
        const bool named = found.why.contains("the cable is at about");
        QVERIFY2(likely || named, qPrintable(found.why.english()));
    }
    void aLossAloneAsksForAResistance()
    {
        const LoopComparison found = compareLoop(
            makeup({section(24, 9000)}),
            measuredOn(makeup({section(24, 4500), tap(24, 2000), section(24, 4500)}), false),
            m_limits);
        QVERIFY(!found.agrees);
        QVERIFY(found.why.contains("A measured resistance would tell length from taps."));
        QVERIFY(found.candidates.size() > 1);
    }
    void findsTheHiddenTapsLength()
    {
        const LoopComparison found = compareLoop(
            makeup({section(24, 9000)}),
            measuredOn(makeup({section(24, 4500), tap(24, 2000), section(24, 4500)}), true, true),
            m_limits);
        QCOMPARE(found.mostLikely, LoopCause::HiddenTap);
        const double feet = found.candidates[0].makeup.bridgedTapFt();
        QVERIFY2(feet > 1200 && feet < 2400, qPrintable(QString::number(feet)));
    }
    void whatNoSingleErrorExplainsIsSaid()
    {
        MeasuredLoop measured;
        measured.dcResistanceOhm = 5000;
        measured.losses.push_back({40000, 1.0, {}});
        const LoopComparison found = compareLoop(makeup({section(26, 9000)}), measured, m_limits);
        QCOMPARE(found.mostLikely, LoopCause::Unexplained);
        QVERIFY(found.why.contains("bad joint"));
    }
    void nothingMeasuredDiffersFromNothing()
    {
        const LoopComparison found = compareLoop(makeup({section(26, 9000)}), {}, m_limits);
        QVERIFY(found.agrees && found.candidates.empty());
    }
    void theToleranceIsTheModelsError()
    {
        const LoopMakeup record = makeup({section(26, 9000)});
        const double predicted = insertionLossDb(record, 40000);
        const double error = 0.03 * predicted;
        for (const double sign : {-1.0, 1.0}) {
            MeasuredLoop measured;
            measured.losses = {{40000, predicted + sign * (error - 1e-6), {}}};
            QVERIFY(compareLoop(record, measured, m_limits).agrees);
            measured.losses = {{40000, predicted + sign * (error + 1e-6), {}}};
            QVERIFY(!compareLoop(record, measured, m_limits).agrees);
        }
        QCOMPARE(resistanceTolerance(100, m_limits), 10.0);
        QCOMPARE(resistanceTolerance(1000, m_limits), 50.0);
    }

    void neverContradictsItself()
    {
        QVERIFY(rc::check([this] {
            const LoopMakeup record = *anyMakeup();
            MeasuredLoop measured;
            measured.dcResistanceOhm = *rc::gen::inRange(0, 3000);
            measured.losses.push_back({40000, double(*rc::gen::inRange(-5, 150)), {}});
            const LoopComparison found = compareLoop(record, measured, m_limits);
            if (found.agrees) {
                RC_ASSERT(found.mostLikely == LoopCause::AsRecorded);
                return;
            }
            RC_ASSERT(found.mostLikely != LoopCause::AsRecorded);
            if (found.mostLikely == LoopCause::Unexplained)
                return;
            // Each figure within tolerance: the sum of squares is at most their number.
            RC_ASSERT(found.candidates[0].misfit <= 2.0 + 1e-9);
            RC_ASSERT(std::abs(loopMisfit(found.candidates[0].makeup, measured, m_limits) -
                               found.candidates[0].misfit) < 1e-9);
        }));
    }
    void isQuickOnTheLargestMakeup()
    {
        std::vector<LoopElement> elements;
        for (int i = 0; i < 100; ++i) {
            elements.push_back(section(24, 100));
            elements.push_back(tap(24, 20));
        }
        MeasuredLoop measured;
        measured.dcResistanceOhm = 2000;
        measured.losses.push_back({40000, 60, {}});
        QElapsedTimer timer;
        timer.start();
        QVERIFY(!compareLoop(makeup(elements), measured, m_limits).agrees);
        QVERIFY2(timer.elapsed() < 5000, qPrintable(QString::number(timer.elapsed())));
    }
};

QTEST_APPLESS_MAIN(LoopComparisonTest)
#include "LoopComparisonTest.moc"
