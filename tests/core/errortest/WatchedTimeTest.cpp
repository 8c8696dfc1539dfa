#include "core/errortest/WatchedTime.h"

#include <QTest>

using namespace loopwright;

class WatchedTimeTest : public QObject
{
    Q_OBJECT

    const Moment m_started = *Moment::parse(u"2026-03-04T08:30:00-06:00");
    using Stretches = std::vector<Stretch>;

private slots:
    void whatNobodyWatchedIsAGap()
    {
        WatchedTime watched(m_started);
        watched.watch(0, 5);
        watched.watch(0, 130); // the same program goes on
        watched.watch(305, 310);
        watched.watch(305, 900);
        QCOMPARE(watched.gaps(900), (Stretches{{130, 305}}));
        QCOMPARE(watched.gaps(200), (Stretches{{130, 200}}));
        QCOMPARE(watched.gaps(100), Stretches());
    }
    void beginAndEndCountToo()
    {
        WatchedTime watched(m_started);
        watched.watch(40, 600);
        QCOMPARE(watched.gaps(606), (Stretches{{0, 40}})); // it is only behind
        QCOMPARE(watched.gaps(607), (Stretches{{0, 40}, {600, 607}}));
        QCOMPARE(WatchedTime(m_started).gaps(900), (Stretches{{0, 900}}));
    }
    void twoProgramsWatchTogether()
    {
        WatchedTime watched(m_started);
        watched.watch(0, 100);
        watched.watch(50, 300);
        watched.watch(20, 60);
        watched.watch(310, 400);
        QCOMPARE(watched.gaps(400), (Stretches{{300, 310}}));
    }
    void nothingKnownIsNoGap()
    {
        QCOMPARE(WatchedTime().gaps(900), Stretches());
        QVERIFY(!WatchedTime().isOf(m_started));
        QCOMPARE(WatchedTime::fromJson({{"watched", 7}}), WatchedTime());
    }
    void survivesItsJson()
    {
        WatchedTime watched(m_started);
        watched.watch(0, 130);
        watched.watch(305, 900);
        const WatchedTime again = WatchedTime::fromJson(watched.toJson());
        QCOMPARE(again, watched);
        QVERIFY(again.isOf(m_started));
        QVERIFY(!again.isOf(m_started.plusSeconds(1)));
    }
};

QTEST_MAIN(WatchedTimeTest)
#include "WatchedTimeTest.moc"
