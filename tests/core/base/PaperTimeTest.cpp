#include "core/base/PaperTime.h"

#include <QTest>

using namespace loopwright;

namespace {

Moment at(const char *text)
{
    return *Moment::parse(QString::fromLatin1(text));
}

} // namespace

class PaperTimeTest : public QObject
{
    Q_OBJECT

private slots:
    void days()
    {
        QCOMPARE(paperDay(QDate(2026, 3, 4)), "4 March 2026");
        QCOMPARE(paperDays(QDate(2026, 3, 4), QDate(2026, 3, 4)), "4 March 2026");
        QCOMPARE(paperDays(QDate(2026, 3, 3), QDate(2026, 3, 4)), "3 March to 4 March 2026");
        QCOMPARE(paperDays(QDate(2025, 12, 31), QDate(2026, 1, 2)),
                 "31 December 2025 to 2 January 2026");
        QCOMPARE(paperDays(QDate(), QDate(2026, 3, 4)), "4 March 2026");
    }

    void timesHaveTheirZone()
    {
        QCOMPARE(paperTime(at("2026-03-04T08:32:59-06:00")), "4 March 2026, 08:32 (UTC-06:00)");
        QCOMPARE(paperTime(at("2026-03-04T08:32:00+05:30")), "4 March 2026, 08:32 (UTC+05:30)");
        QCOMPARE(paperTime(at("2026-03-04T08:32:00Z")), "4 March 2026, 08:32 (UTC+00:00)");
        QCOMPARE(paperTimes(at("2026-03-04T08:32:00-06:00"), at("2026-03-04T08:47:00-06:00")),
                 "4 March 2026, 08:32 to 08:47 (UTC-06:00)");
        QCOMPARE(paperTimes(at("2026-03-04T23:50:00-06:00"), at("2026-03-05T00:05:00-06:00")),
                 "4 March 2026, 23:50 (UTC-06:00) to 5 March 2026, 00:05 (UTC-06:00)");
    }

    void countsAndRatios()
    {
        QCOMPARE(paperCount(57600000), "57,600,000");
        QCOMPARE(paperCount(999), "999");
        QCOMPARE(paperRatio(1e-7), "1 in 10 million");
        QCOMPARE(paperRatio(5.2e-8), "1 in 19 million");
        QCOMPARE(paperRatio(1e-3), "1 in 1,000");
        QCOMPARE(paperRatio(2e-10), "1 in 5 billion");
        QCOMPARE(paperRatio(0), "0");
        QCOMPARE(paperRatio(0.5), "0.5");
    }
};

QTEST_APPLESS_MAIN(PaperTimeTest)
#include "PaperTimeTest.moc"
