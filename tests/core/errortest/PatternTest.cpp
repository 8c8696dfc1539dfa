#include "core/errortest/Pattern.h"

#include "core/base/Csv.h"

#include <QFile>
#include <QTest>

using namespace loopwright;

namespace {

const Pattern *patternNamed(const QString &name)
{
    for (const Pattern &pattern : patterns())
        if (name == QLatin1StringView(pattern.name))
            return &pattern;
    return nullptr;
}

struct Figures
{
    int ones = 0;
    int longestZeroRun = 0;
    int longestOneRun = 0;
};

/// Of a whole period, runs counted cyclically.
Figures figuresOf(const Pattern &pattern, quint32 start)
{
    Figures figures;
    PatternRegister source(pattern, start);
    int zeros = 0;
    int ones = 0;
    for (quint32 i = 0; i < 2 * pattern.period(); ++i) {
        const bool bit = source.next();
        zeros = bit ? 0 : zeros + 1;
        ones = bit ? ones + 1 : 0;
        figures.longestZeroRun = std::max(figures.longestZeroRun, zeros);
        figures.longestOneRun = std::max(figures.longestOneRun, ones);
        if (i < pattern.period())
            figures.ones += bit;
    }
    return figures;
}

} // namespace

class PatternTest : public QObject
{
    Q_OBJECT
private slots:
    void aFixedPatternIsToldByItsName_data()
    {
        QTest::addColumn<bool>("fixed");
        for (const char *name :
             {"All ones", "all 1s", "MARK", "space", "all-zeros", "zeroes", "1:1", "1:7", "3 in 24",
              "2-in-8", "alternating", "fixed 0x55", "single-bit octets", "1", "0"})
            QTest::newRow(name) << true;
        for (const char *name : {"prbs9", "qrss20", "QRSS", "511", "2047", "2^15-1", "2^20-1 QRSS",
                                 "PRBS 2^11", "pseudorandom", "", "O.152"})
            QTest::addRow("not %s", name) << false;
        for (const Pattern &pattern : patterns())
            QTest::addRow("not %s by key", pattern.name) << false;
    }
    void aFixedPatternIsToldByItsName()
    {
        QFETCH(bool, fixed);
        const QString tag = QString::fromUtf8(QTest::currentDataTag());
        QString name = fixed ? tag : tag.mid(4);
        if (name.endsWith(" by key"))
            name.chop(7);
        QCOMPARE(isFixedPattern(name), fixed);
    }
    // tests/data/check-values/README.md
    void agreesWithCheckValues_data()
    {
        QTest::addColumn<QStringList>("row");
        QFile file(LOOPWRIGHT_SOURCE_DIR "/tests/data/check-values/prbs.csv");
        QVERIFY(file.open(QIODevice::ReadOnly));
        const auto table = readCsv(
            file.readAll(), "prbs.csv",
            {{"case_id", "pattern", "stages", "tap", "inverted", "zero_suppressed", "seed_q1_to_qn",
              "first64", "period", "ones_per_period", "longest_zero_run", "longest_one_run"},
             {},
             {}});
        QVERIFY(table);
        QCOMPARE(table->rows.size(), 10u);
        for (const CsvRow &row : table->rows)
            QTest::newRow(qPrintable(row.fields[0])) << row.fields;
    }
    void agreesWithCheckValues()
    {
        QFETCH(QStringList, row);
        const Pattern *pattern = patternNamed(row[1]);
        QVERIFY(pattern);
        QCOMPARE(pattern->stages, row[2].toInt());
        QCOMPARE(pattern->tap, row[3].toInt());
        QCOMPARE(pattern->inverted, row[4] == "yes");
        QCOMPARE(pattern->zeroSuppressed, row[5] == "yes");
        QCOMPARE(pattern->period(), row[8].toUInt());
        const quint32 start = row[6].toUInt(nullptr, 2);
        PatternRegister source(*pattern, start);
        QString first;
        for (int i = 0; i < 64; ++i)
            first += source.next() ? '1' : '0';
        QCOMPARE(first, row[7]);
        const Figures figures = figuresOf(*pattern, start);
        QCOMPARE(figures.ones, row[9].toInt());
        QCOMPARE(figures.longestZeroRun, row[10].toInt());
        QCOMPARE(figures.longestOneRun, row[11].toInt());
    }

    void longestPatternsFigures()
    {
        // Reference c.1: 2^23-1 is inverted, 2^22 - 1 ones, zero runs up to 23.
        const Figures figures = figuresOf(patternOf(PatternKey::Prbs23), 1);
        QCOMPARE(figures.ones, (1 << 22) - 1);
        QCOMPARE(figures.longestZeroRun, 23);
        QCOMPARE(figures.longestOneRun, 22);
    }

    void keysNameAllPatterns()
    {
        QCOMPARE(allWords<PatternKey>(),
                 (QStringList{"prbs9", "prbs11", "prbs15", "prbs20", "qrss20", "prbs23"}));
        for (const Pattern &pattern : patterns())
            QCOMPARE(patternOf(pattern.key).name, pattern.name);
    }
};

QTEST_APPLESS_MAIN(PatternTest)
#include "PatternTest.moc"
