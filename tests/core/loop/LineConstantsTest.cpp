#include "core/loop/LineConstants.h"

#include "core/loop/LoopLoss.h"
#include "tests/support/CheckValues.h"

#include <QTest>

#include <cmath>

using namespace loopwright;

namespace {

/// Image attenuation of a cable.
double attenuationDbPerKm(const LineConstants &constants, double frequencyHz)
{
    return 20 * std::log10(std::exp(propagation(constants, frequencyHz).gamma.real()));
}

} // namespace

class LineConstantsTest : public QObject
{
    Q_OBJECT

    static LoopMakeup sectionOf(const CheckRow &row)
    {
        LoopMakeup makeup;
        makeup.temperature = Temperature{row["temperature_f"].toDouble(), false};
        makeup.elements = {LoopElement::section(Wire::awg(row["gauge_awg"].toInt()),
                                                {row["length_ft"].toDouble(), LengthUnit::Foot})};
        return makeup;
    }
    static double modelled(const CheckRow &row, std::optional<double> nanofarad = {})
    {
        LoopMakeup makeup = sectionOf(row);
        makeup.capacitanceNfPerKm = nanofarad;
        const double frequency = row["freq_hz"].toDouble();
        if (row["quantity"] == "loop_resistance")
            return dcResistanceOhm(makeup);
        if (row["quantity"] == "insertion_loss_135")
            return insertionLossDb(makeup, frequency);
        const double perKm = attenuationDbPerKm(
            lineConstants(makeup.elements[0].wire, makeup.temperatureF(), nanofarad), frequency);
        return row["unit"] == "dB/km" ? perKm : perKm * makeup.elements[0].length.kilometres();
    }

private slots:
    // Published figures of makers' practices; document and page stand in each row.
    void agreesWithPublishedFigures_data()
    {
        QTest::addColumn<CheckRow>("row");
        const auto rows = checkValues("loop/published-losses.csv");
        QCOMPARE(rows.size(), std::size_t(61));
        for (const CheckRow &row : rows)
            QTest::addRow("%s AWG %s ft %s Hz %s F %s", qPrintable(row["gauge_awg"]),
                          qPrintable(row["length_ft"]), qPrintable(row["freq_hz"]),
                          qPrintable(row["temperature_f"]), qPrintable(row["quantity"]))
                << row;
    }
    void agreesWithPublishedFigures()
    {
        QFETCH(CheckRow, row);
        const double model = modelled(row);
        // Computed with NumPy and mpmath, four decimals.
        QVERIFY2(std::abs(model - row["model_value"].toDouble()) <= 0.5001e-4,
                 qPrintable(QString::number(model, 'f', 6)));
        const double published = row["value"].toDouble();
        const double frequency = row["freq_hz"].toDouble();
        if (row["quantity"] == "loop_resistance")
            QVERIFY(std::abs(model - published) <= 0.02 * published);
        else if (frequency >= 3000)
            QVERIFY(std::abs(model - published) <= std::max(0.03 * published, 0.5));
    }

    // The published 1 kHz figures belong to cable of 69 to 72 nF per mile and are rounded to 0.1
    // dB.
    void thePresetFitsThePublishedVoiceBand()
    {
        int seen = 0;
        for (const CheckRow &row : checkValues("loop/published-losses.csv")) {
            if (row["freq_hz"] != "1000")
                continue;
            ++seen;
            const double published = row["value"].toDouble();
            const double usual = modelled(row);
            const double preset = modelled(row, lowCapacitanceNfPerKm);
            QVERIFY2(std::abs(preset - published) <= std::max(0.03 * published, 0.06),
                     qPrintable(QString("%1 against %2").arg(preset).arg(published)));
            QVERIFY(std::abs(preset - published) < std::abs(usual - published));
        }
        QCOMPARE(seen, 9);
    }

    // Attenuation of the table of unified constants, dB per 1000 ft at 70 °F, four decimals
    // (computed with NumPy).
    void attenuatesAsTabled_data()
    {
        QTest::addColumn<int>("gauge");
        QTest::addColumn<QList<double>>("dbPerKiloFoot");
        QTest::newRow("19") << 19 << QList<double>{0.2394, 0.5688, 0.7702, 0.9927, 1.5355};
        QTest::newRow("22") << 22 << QList<double>{0.3451, 0.9333, 1.3145, 1.5430, 2.1781};
        QTest::newRow("24") << 24 << QList<double>{0.4382, 1.2522, 1.9079, 2.1891, 2.8403};
        QTest::newRow("26") << 26 << QList<double>{0.5548, 1.6440, 2.7151, 3.1773, 3.8668};
    }
    void attenuatesAsTabled()
    {
        QFETCH(int, gauge);
        QFETCH(QList<double>, dbPerKiloFoot);
        const double frequencies[] = {1004, 10000, 40000, 80000, 196000};
        for (int i = 0; i < 5; ++i)
            QVERIFY(
                std::abs(attenuationDbPerKm(lineConstants(Wire::awg(gauge), 70), frequencies[i]) *
                             0.3048 -
                         dbPerKiloFoot[i]) < 0.51e-4);
    }

    // Published European constants at 20 °C: dB per km at 1, 10, 40 and 80 kHz, three decimals
    // (computed with NumPy).
    void attenuatesAsTabledInMillimetres_data()
    {
        QTest::addColumn<double>("diameter");
        QTest::addColumn<QList<double>>("dbPerKm");
        QTest::newRow("0.32") << 0.32 << QList<double>{1.960, 5.945, 10.414, 12.681};
        QTest::newRow("0.40") << 0.40 << QList<double>{1.810, 5.396, 8.999, 10.549};
        QTest::newRow("0.50") << 0.50 << QList<double>{1.440, 4.103, 6.169, 7.009};
        QTest::newRow("0.63") << 0.63 << QList<double>{1.077, 2.883, 4.021, 4.757};
        QTest::newRow("0.90") << 0.90 << QList<double>{0.693, 1.595, 2.272, 3.058};
    }
    void attenuatesAsTabledInMillimetres()
    {
        QFETCH(double, diameter);
        QFETCH(QList<double>, dbPerKm);
        const double frequencies[] = {1000, 10000, 40000, 80000};
        for (int i = 0; i < 4; ++i)
            QVERIFY(std::abs(attenuationDbPerKm(lineConstants(Wire::millimetres(diameter), 68),
                                                frequencies[i]) -
                             dbPerKm[i]) < 0.51e-3);
    }

    // Published resistance table (HDSL4 line card, 61223404L2-5A p. 20, table 9), ohm per 1000 ft.
    void warmsAsTheTable_data()
    {
        QTest::addColumn<int>("gauge");
        QTest::addColumn<QList<double>>("ohms");
        QTest::newRow("19") << 19 << QList<double>{16.465, 17.183, 18.261, 18.979};
        QTest::newRow("22") << 22 << QList<double>{33.006, 34.446, 36.606, 38.046};
        QTest::newRow("24") << 24 << QList<double>{52.498, 54.789, 58.225, 60.516};
        QTest::newRow("26") << 26 << QList<double>{83.475, 87.117, 92.581, 96.223};
    }
    void warmsAsTheTable()
    {
        QFETCH(int, gauge);
        QFETCH(QList<double>, ohms);
        const double temperatures[] = {70, 90, 120, 140};
        for (int i = 0; i < 4; ++i)
            QVERIFY(std::abs(lineConstants(Wire::awg(gauge), temperatures[i]).r * 0.3048 -
                             ohms[i]) < 0.0015);
    }
    void leavesMetricCableAsPublishedAt68F()
    {
        const LineConstants constants = lineConstants(Wire::millimetres(0.40), 68);
        QCOMPARE(constants.r, 280.0);
        QCOMPARE(constants.fm, 745.9e3);
        QVERIFY(lineConstants(Wire::millimetres(0.40), 120).r > 300);
    }

    // With and without leakage the two ways to the roots must meet.
    void theClosedFormAgreesWithTheGeneralOne()
    {
        for (const double frequency : {200.0, 1004.0, 40e3, 1e6}) {
            LineConstants tight = lineConstants(Wire::awg(24), 70);
            LineConstants leaky = tight;
            leaky.g0 = 1e-30;
            const Propagation a = propagation(tight, frequency);
            const Propagation b = propagation(leaky, frequency);
            QVERIFY(std::abs(a.gamma - b.gamma) < 1e-12 * std::abs(a.gamma));
            QVERIFY(std::abs(a.z0 - b.z0) < 1e-12 * std::abs(a.z0));
            QVERIFY(std::abs(a.z0 * a.y0 - 1.0) < 1e-12);
        }
    }
};

QTEST_APPLESS_MAIN(LineConstantsTest)
#include "LineConstantsTest.moc"
