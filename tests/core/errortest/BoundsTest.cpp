#include "core/errortest/Bounds.h"

#include "core/base/Csv.h"
#include "core/errortest/CountText.h"

#include <QFile>
#include <QTest>

#include <cmath>

using namespace loopwright;

namespace {

/// To ten significant digits.
void compareDigits(double value, const QString &expected)
{
    const double wanted = expected.toDouble();
    QVERIFY2(std::abs(value / wanted - 1) < 5.1e-10,
             qPrintable(QString("%1 is not %2").arg(value, 0, 'e', 12).arg(expected)));
}

} // namespace

class BoundsTest : public QObject
{
    Q_OBJECT
private slots:
    // tests/data/check-values/README.md
    void agreesWithCheckValues_data()
    {
        QTest::addColumn<QStringList>("row");
        QFile file(LOOPWRIGHT_SOURCE_DIR "/tests/data/check-values/ber-bounds.csv");
        QVERIFY(file.open(QIODevice::ReadOnly));
        const auto table = readCsv(
            file.readAll(), "ber-bounds.csv",
            {{"errors", "bits", "confidence", "poisson_upper", "clopper_pearson_upper"}, {}, {}});
        QVERIFY(table);
        QCOMPARE(table->rows.size(), 33u);
        for (const CsvRow &row : table->rows)
            QTest::addRow("%s", qPrintable(row.fields.join(' '))) << row.fields;
    }
    void agreesWithCheckValues()
    {
        QFETCH(QStringList, row);
        const auto bounds =
            upperBounds({row[0].toLongLong(), row[1].toLongLong(), row[2].toDouble()});
        QVERIFY(bounds);
        compareDigits(bounds->poissonUpper, row[3]);
        compareDigits(bounds->clopperPearsonUpper, row[4]);
    }

    // Computed with mpmath at 60 digits (sums of the two distributions' terms, roots by bisection
    // and Newton).
    void staysExactFarOut_data()
    {
        QTest::addColumn<qint64>("errors");
        QTest::addColumn<qint64>("bits");
        QTest::addColumn<double>("confidence");
        QTest::addColumn<QString>("poisson");
        QTest::addColumn<QString>("clopperPearson");
        QTest::newRow("5000 of 57600000 at 0.95")
            << qint64(5000) << qint64(57600000) << 0.95 << "8.8852188878606e-5"
            << "8.885209795278e-5";
        QTest::newRow("100000 of 57600000 at 0.99")
            << qint64(100000) << qint64(57600000) << 0.99 << "0.0017489258641502"
            << "0.0017489146533081";
        QTest::newRow("1 of 9007199254740991 at 0.95")
            << qint64(1) << qint64(9007199254740991) << 0.95 << "5.2667476140195e-16"
            << "5.2667476140195e-16";
        QTest::newRow("0 of 9007199254740991 at 0.99")
            << qint64(0) << qint64(9007199254740991) << 0.99 << "5.1127659728013e-16"
            << "5.1127659728013e-16";
        QTest::newRow("6000000 of 57600000 at 0.95")
            << qint64(6000000) << qint64(57600000) << 0.95 << "0.10423664272322"
            << "0.10423289552602";
        QTest::newRow("57 of 57600000 at 0.999999")
            << qint64(57) << qint64(57600000) << 0.999999 << "1.7645279312135e-6"
            << "1.7645272475078e-6";
        QTest::newRow("3 of 57600000 at 0.000001")
            << qint64(3) << qint64(57600000) << 0.000001 << "1.2325067944205e-9"
            << "1.2325068257575e-9";
        QTest::newRow("57599999 of 57600000 at 0.95")
            << qint64(57599999) << qint64(57600000) << 0.95 << "1.0002167383645"
            << "0.99999999910949";
        QTest::newRow("500 of 1000 at 0.9")
            << qint64(500) << qint64(1000) << 0.9 << "0.52989060127541"
            << "0.52074900915023";
    }
    void staysExactFarOut()
    {
        QFETCH(qint64, errors);
        QFETCH(qint64, bits);
        QFETCH(double, confidence);
        QFETCH(QString, poisson);
        QFETCH(QString, clopperPearson);
        compareDigits(poissonUpper({errors, bits, confidence}), poisson);
        compareDigits(clopperPearsonUpper({errors, bits, confidence}), clopperPearson);
    }

    // Tables of reference b.3: largest number of errors that still proves a target in 900 s.
    void largestCountThatProves_data()
    {
        QTest::addColumn<qint64>("rate");
        QTest::addColumn<double>("target");
        QTest::addColumn<double>("confidence");
        QTest::addColumn<qint64>("errors");
        const qint64 rates[] = {56000, 64000, 128000};
        const double confidences[] = {0.90, 0.95, 0.99};
        const qint64 at1e7[3][3] = {{1, 1, 0}, {2, 1, 0}, {6, 5, 3}};
        const qint64 at1e6[3][3] = {{40, 38, 34}, {47, 44, 40}, {101, 97, 90}};
        for (int r = 0; r < 3; ++r)
            for (int c = 0; c < 3; ++c) {
                QTest::addRow("1e-7 %d %d", r, c)
                    << rates[r] << 1e-7 << confidences[c] << at1e7[r][c];
                QTest::addRow("1e-6 %d %d", r, c)
                    << rates[r] << 1e-6 << confidences[c] << at1e6[r][c];
            }
    }
    void largestCountThatProves()
    {
        QFETCH(qint64, rate);
        QFETCH(double, target);
        QFETCH(double, confidence);
        QFETCH(qint64, errors);
        const qint64 bits = 900 * rate;
        QCOMPARE(prove(errors, bits, double(rate), target, confidence).proof, Proof::Proved);
        QVERIFY(prove(errors + 1, bits, double(rate), target, confidence).proof != Proof::Proved);
    }

    // Reference b.2, minutes without an error.
    void timeNeeded_data()
    {
        QTest::addColumn<double>("target");
        QTest::addColumn<double>("confidence");
        QTest::addColumn<double>("rate");
        QTest::addColumn<double>("minutes");
        QTest::newRow("1e-6 95 56k") << 1e-6 << 0.95 << 56000.0 << 0.89;
        QTest::newRow("1e-7 90 64k") << 1e-7 << 0.90 << 64000.0 << 6.00;
        QTest::newRow("1e-7 95 64k") << 1e-7 << 0.95 << 64000.0 << 7.80;
        QTest::newRow("1e-7 99 128k") << 1e-7 << 0.99 << 128000.0 << 6.00;
        QTest::newRow("1e-8 95 64k") << 1e-8 << 0.95 << 64000.0 << 78.0;
        QTest::newRow("1e-8 95 128k") << 1e-8 << 0.95 << 128000.0 << 39.0;
    }
    void timeNeeded()
    {
        QFETCH(double, target);
        QFETCH(double, confidence);
        QFETCH(double, rate);
        QFETCH(double, minutes);
        QVERIFY(std::abs(secondsNeeded(target, rate, confidence) / 60 - minutes) <
                (minutes < 10 ? 0.005 : 0.05));
    }

    void threeWays()
    {
        const auto proved = prove(0, 57'600'000, 64000, 1e-7, 0.95);
        QCOMPARE(proved.proof, Proof::Proved);
        QCOMPARE(proved.furtherSeconds, 0.0);
        const auto open = prove(0, 6'400'000, 64000, 1e-7, 0.95);
        QCOMPARE(open.proof, Proof::NotProved);
        QVERIFY(std::abs(open.furtherSeconds - (468.083 - 100)) < 0.01);
        const auto refuted = prove(100, 57'600'000, 64000, 1e-7, 0.95);
        QCOMPARE(refuted.proof, Proof::Refuted);
        QVERIFY(refuted.lower > 1e-7);
        const auto nothing = prove(0, 0, 64000, 1e-7, 0.95);
        QCOMPARE(nothing.proof, Proof::NotProved);
        QCOMPARE(nothing.upper, 1.0);
        // Two errors already prove a run of twelve bits to be bad.
        QCOMPARE(prove(2, 12, 64000, 1e-7, 0.95).proof, Proof::Refuted);
    }

    void furtherTimeIsEnough()
    {
        for (const qint64 errors : {0, 1, 2, 5, 20}) {
            const auto open = prove(errors, 640'000, 64000, 1e-6, 0.95);
            if (open.proof != Proof::NotProved)
                continue;
            const qint64 bits = 640'000 + qint64(std::ceil(open.furtherSeconds)) * 64000;
            QCOMPARE(prove(errors, bits, 64000, 1e-6, 0.95).proof, Proof::Proved);
            QVERIFY(prove(errors, bits - 2 * 64000, 64000, 1e-6, 0.95).proof != Proof::Proved);
        }
    }

    void lowerBoundsMirrorUpperOnes()
    {
        // By definition: the lower bound from E at confidence C is the upper one from E - 1 at 1 -
        // C.
        for (const qint64 errors : {1, 2, 17, 500})
            for (const double confidence : {0.5, 0.9, 0.99}) {
                const qint64 bits = 1'000'000;
                QVERIFY(std::abs(poissonLower({errors, bits, confidence}) /
                                     poissonUpper({errors - 1, bits, 1 - confidence}) -
                                 1) < 1e-12);
                QVERIFY(std::abs(clopperPearsonLower({errors, bits, confidence}) /
                                     clopperPearsonUpper({errors - 1, bits, 1 - confidence}) -
                                 1) < 1e-12);
            }
        QCOMPARE(poissonLower({0, 100, 0.95}), 0.0);
        QCOMPARE(clopperPearsonLower({0, 100, 0.95}), 0.0);
        QVERIFY(std::abs(clopperPearsonLower({10, 10, 0.95}) - std::pow(0.05, 0.1)) < 1e-15);
    }

    void saysWhatIsProved_data()
    {
        QTest::addColumn<qint64>("errors");
        QTest::addColumn<qint64>("seconds");
        QTest::addColumn<double>("confidence");
        QTest::addColumn<QString>("sentence");
        QTest::newRow("none") << qint64(0) << qint64(580) << 0.95
                              << "no error in 9:40: BER below 8.1e-8 with 95 % confidence";
        QTest::newRow("one") << qint64(1) << qint64(900) << 0.95
                             << "1 error in 15:00: BER below 8.3e-8 with 95 % confidence";
        QTest::newRow("rounded up") << qint64(3) << qint64(900) << 0.99
                                    << "3 errors in 15:00: BER below 1.8e-7 with 99 % confidence";
        QTest::newRow("just below") << qint64(0) << qint64(937) << 0.95
                                    << "no error in 15:37: BER below 5.0e-8 with 95 % confidence";
        QTest::newRow("just above") << qint64(0) << qint64(936) << 0.95
                                    << "no error in 15:36: BER below 5.1e-8 with 95 % confidence";
        QTest::newRow("carries") << qint64(0) << qint64(471) << 0.95
                                 << "no error in 7:51: BER below 1.0e-7 with 95 % confidence";
        QTest::newRow("hours") << qint64(0) << qint64(4680) << 0.999
                               << "no error in 1:18:00: BER below 2.4e-8 with 99.9 % confidence";
        QTest::newRow("nearly sure")
            << qint64(0) << qint64(900) << 0.999999999
            << "no error in 15:00: BER below 3.6e-7 with 99.9999999 % confidence";
        QTest::newRow("nothing") << qint64(0) << qint64(0) << 0.95 << "nothing compared yet";
    }
    void saysWhatIsProved()
    {
        QFETCH(qint64, errors);
        QFETCH(qint64, seconds);
        QFETCH(double, confidence);
        QFETCH(QString, sentence);
        QCOMPARE(proofSentence(errors, seconds * 64000, seconds, confidence).english(), sentence);
    }

    void noConfidenceIsAHundredPercent()
    {
        QCOMPARE(percentText(0.95), QString("95"));
        QCOMPARE(percentText(0.999), QString("99.9"));
        QCOMPARE(percentText(0.99999949), QString("99.9999"));
        QCOMPARE(percentText(0.99999951), QString("99.99995"));
        QVERIFY(percentText(std::nextafter(1.0, 0.0)).startsWith("99.9999999999999"));
    }

    void countsWithTheirNoun()
    {
        QCOMPARE(countText(0, Counted::Bit).english(), QString("0 bits"));
        QCOMPARE(countText(1, Counted::BitError).english(), QString("1 bit error"));
        QCOMPARE(countText(2, Counted::LossOfSync).english(),
                 QString("2 losses of synchronisation"));
        QCOMPARE(countText(3, Counted::Slip).english(), QString("3 slips"));
    }

    void refusesWhatMakesNoSense()
    {
        for (const BoundInput input :
             {BoundInput{0, 0, 0.95}, BoundInput{-1, 10, 0.95}, BoundInput{11, 10, 0.95},
              BoundInput{0, 10, 0.0}, BoundInput{0, 10, 1.0}, BoundInput{0, 10, std::nan("")}}) {
            const auto bounds = upperBounds(input);
            QVERIFY(!bounds);
            QCOMPARE(bounds.error().code, ErrorCode::Usage);
        }
    }
};

QTEST_APPLESS_MAIN(BoundsTest)
#include "BoundsTest.moc"
