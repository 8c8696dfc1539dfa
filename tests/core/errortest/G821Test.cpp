#include "core/errortest/G821.h"

#include "core/base/Csv.h"

#include <QFile>
#include <QTest>

#include <rapidcheck.h>

using namespace loopwright;

namespace {

/// "880*0 19*5 1*L"
SecondList sequence(const QString &text)
{
    SecondList seconds;
    for (const QString &token : text.split(' ', Qt::SkipEmptyParts)) {
        const QStringList parts = token.split('*');
        const Second second =
            parts[1] == "L" ? Second(std::nullopt) : Second(parts[1].toLongLong());
        seconds.insert(seconds.end(), parts[0].toULong(), second);
    }
    return seconds;
}

/// Seconds in stretches, so that runs of ten and more are common.
rc::Gen<SecondList> stretches()
{
    const auto stretch = rc::gen::pair(
        rc::gen::inRange(1, 25),
        rc::gen::weightedElement<int>({{6, 0}, {2, 1}, {1, 63}, {2, 64}, {2, 9000}, {3, -1}}));
    return rc::gen::map(rc::gen::container<std::vector<std::pair<int, int>>>(stretch),
                        [](const std::vector<std::pair<int, int>> &parts) {
                            SecondList seconds;
                            for (const auto &[count, value] : parts)
                                seconds.insert(seconds.end(), std::size_t(count),
                                               value < 0 ? Second(std::nullopt) : Second(value));
                            return seconds;
                        });
}

/// The ten-second rule said another way: from each unavailable stretch's first to its last second.
/// A stretch begins at ten S in a row and ends before the next ten N in a row.
std::vector<bool> unavailableByText(const SecondList &seconds, qint64 rate)
{
    QString text;
    for (const Second second : seconds)
        text += !second.inSync() || 1000 * second.bitErrors() >= rate ? 'S' : 'N';
    std::vector<bool> unavailable(seconds.size());
    for (qsizetype at = text.indexOf("SSSSSSSSSS"); at >= 0; at = text.indexOf("SSSSSSSSSS", at)) {
        const qsizetype back = text.indexOf("NNNNNNNNNN", at);
        const qsizetype end = back < 0 ? text.size() : back;
        std::fill(unavailable.begin() + at, unavailable.begin() + end, true);
        at = end;
    }
    return unavailable;
}

} // namespace

class G821Test : public QObject
{
    Q_OBJECT
private slots:
    // tests/data/check-values/README.md
    void agreesWithCheckValues_data()
    {
        QTest::addColumn<QStringList>("row");
        QFile file(LOOPWRIGHT_SOURCE_DIR "/tests/data/check-values/g821.csv");
        QVERIFY(file.open(QIODevice::ReadOnly));
        const auto table =
            readCsv(file.readAll(), "g821.csv",
                    {{"case_id", "description", "bit_rate_bps", "sequence", "total_s",
                      "available_s", "uas", "es", "ses", "efs", "esr", "sesr"},
                     {},
                     {}});
        QVERIFY(table);
        QCOMPARE(table->rows.size(), 24u);
        for (const CsvRow &row : table->rows)
            QTest::newRow(qPrintable(row.fields[0])) << row.fields;
    }
    void agreesWithCheckValues()
    {
        QFETCH(QStringList, row);
        const ErrorSummary summary = evaluateSeconds(sequence(row[3]), row[2].toLongLong());
        QCOMPARE(summary.seconds, row[4].toLongLong());
        QCOMPARE(summary.availableSeconds, row[5].toLongLong());
        QCOMPARE(summary.unavailableSeconds, row[6].toLongLong());
        QCOMPARE(summary.erroredSeconds, row[7].toLongLong());
        QCOMPARE(summary.severelyErroredSeconds, row[8].toLongLong());
        QCOMPARE(summary.errorFreeSeconds, row[9].toLongLong());
        const auto text = [](std::optional<double> ratio) {
            return ratio ? QString::number(*ratio, 'f', 10) : QString("undefined");
        };
        QCOMPARE(text(summary.esr), row[10]);
        QCOMPARE(text(summary.sesr), row[11]);
    }

    void countsBitsInSyncAlone()
    {
        const ErrorSummary summary = evaluateSeconds(sequence("10*0 2*L 1*7 3*L 4*1"), 64000);
        QCOMPARE(summary.bits, 15 * 64000);
        QCOMPARE(summary.bitErrors, 11);
        QCOMPARE(summary.syncLosses, 2);
        QCOMPARE(summary.outOfSyncSeconds, 5);
        QCOMPARE(*summary.ber, 11.0 / (15 * 64000));
        QCOMPARE(*summary.errorsPerErroredSecond, 11.0 / 5);
        QCOMPARE(summary.worstSecond, 7);
        QCOMPARE(summary.longestErrorFree, 10);
    }

    // G.821 counts in available time: the ten bad seconds are told, and are in the ratio over
    // everything alone.
    void tellsOverWhichTimeTheRatioIs()
    {
        const ErrorSummary summary = evaluateSeconds(sequence("100*0 10*64 100*1"), 64000);
        QCOMPARE(summary.availableBits, 200 * 64000);
        QCOMPARE(*summary.ber, 100.0 / (200 * 64000));
        QCOMPARE(*summary.berAll, 740.0 / (210 * 64000));
        QCOMPARE(summary.toJson()["ber_all"].toDouble(), 740.0 / (210 * 64000));
    }

    void tellsWhatIsProvisional()
    {
        G821 evaluator(64000);
        for (int i = 0; i < 9; ++i)
            evaluator.push(std::nullopt);
        QCOMPARE(evaluator.counts().provisionalSeconds, 9);
        QCOMPARE(evaluator.counts().severelyErroredSeconds, 9);
        evaluator.push(64);
        QCOMPARE(evaluator.counts().provisionalSeconds, 0);
        QCOMPARE(evaluator.counts().severelyErroredSeconds, 0); // counters may fall
        QCOMPARE(evaluator.counts().unavailableSeconds, 10);
        evaluator.push(0);
        QCOMPARE(evaluator.counts().provisionalSeconds, 1);
        QCOMPARE(evaluator.counts().unavailableSeconds, 11);
    }

    void marksEachSecond()
    {
        const auto marks = classify(sequence("1*0 1*1 1*64 10*L 9*0"), 64000);
        QCOMPARE(marks.size(), 22u);
        QCOMPARE(marks[0], (SecondMark{SecondClass::ErrorFree, false, true}));
        QCOMPARE(marks[1], (SecondMark{SecondClass::Errored, false, true}));
        // The second of 64 errors is the first of eleven severely errored ones in a row.
        QCOMPARE(marks[2], (SecondMark{SecondClass::Unavailable, false, true}));
        QCOMPARE(marks[3], (SecondMark{SecondClass::Unavailable, false, false}));
        QCOMPARE(marks[13], (SecondMark{SecondClass::Unavailable, true, true}));
    }

    void writesUndefinedRatiosAsNull()
    {
        const QJsonObject json = evaluateSeconds(sequence("60*L"), 64000).toJson();
        for (const char *key : {"esr", "sesr", "ber", "ber_upper_95"})
            QVERIFY2(json.value(QLatin1StringView(key)).isNull(), key);
        QCOMPARE(json["unavailable_seconds"].toInt(), 60);
    }

    void holdsTheFieldsOfTheContract()
    {
        const QJsonObject json = evaluateSeconds(sequence("10*0 1*2"), 64000).toJson();
        for (const char *key : {"seconds", "available_seconds", "unavailable_seconds",
                                "errored_seconds", "severely_errored_seconds", "error_free_seconds",
                                "esr", "sesr", "bits", "bit_errors", "ber", "ber_upper_95"})
            QVERIFY2(json.value(QLatin1StringView(key)).isDouble(), key);
    }

    void resultDoesNotDependOnChunking()
    {
        QVERIFY(rc::check("any cut gives the same counts", [] {
            const SecondList seconds = *stretches();
            G821 oneByOne(64000);
            for (const Second second : seconds)
                oneByOne.push(second);
            G821 inPieces(64000);
            std::span<const Second> rest = seconds;
            while (!rest.empty()) {
                const auto size = *rc::gen::inRange<std::size_t>(1, 200);
                inPieces.push(rest.first(std::min(size, rest.size())));
                rest = rest.subspan(std::min(size, rest.size()));
            }
            RC_ASSERT(oneByOne.counts() == inPieces.counts());
            G821 whole(64000);
            whole.push(seconds);
            RC_ASSERT(oneByOne.counts() == whole.counts());
        }));
    }

    void keepsItsInvariants()
    {
        QVERIFY(rc::check("sums and order of the counts", [] {
            const ErrorCounts counts = evaluateSeconds(*stretches(), 64000);
            RC_ASSERT(counts.availableSeconds + counts.unavailableSeconds == counts.seconds);
            RC_ASSERT(counts.severelyErroredSeconds <= counts.erroredSeconds);
            RC_ASSERT(counts.erroredSeconds <= counts.availableSeconds);
            RC_ASSERT(counts.provisionalSeconds <= 9);
        }));
    }

    void agreesWithTheRuleSaidAnotherWay()
    {
        QVERIFY(rc::check("unavailable stretches found in text", [] {
            const SecondList seconds = *stretches();
            const auto unavailable = unavailableByText(seconds, 64000);
            const auto marks = classify(seconds, 64000);
            ErrorCounts expected;
            for (std::size_t i = 0; i < seconds.size(); ++i) {
                RC_ASSERT((marks[i].kind == SecondClass::Unavailable) == unavailable[i]);
                expected.unavailableSeconds += unavailable[i];
                expected.erroredSeconds += !unavailable[i] && seconds[i] != Second(0);
                if (!unavailable[i] && seconds[i].inSync()) {
                    expected.availableBits += 64000;
                    expected.availableBitErrors += seconds[i].bitErrors();
                }
            }
            const ErrorCounts counts = evaluateSeconds(seconds, 64000);
            RC_ASSERT(counts.unavailableSeconds == expected.unavailableSeconds);
            RC_ASSERT(counts.erroredSeconds == expected.erroredSeconds);
            RC_ASSERT(counts.availableBits == expected.availableBits);
            RC_ASSERT(counts.availableBitErrors == expected.availableBitErrors);
        }));
    }

    void takesAnyRate()
    {
        // 1000 * errors >= bits, in whole numbers.
        const auto severe = [](qint64 errors, qint64 rate) {
            const SecondList seconds{errors};
            return evaluateSeconds(seconds, rate).severelyErroredSeconds;
        };
        for (const qint64 rate : {1, 999, 1000, 1001, 56000, 64000, 112000, 128000, 1984000})
            for (qint64 errors = 1; errors <= 2000; ++errors)
                QCOMPARE(severe(errors, rate), qint64(1000 * errors >= rate));
    }
};

QTEST_APPLESS_MAIN(G821Test)
#include "G821Test.moc"
