#include "core/base/Moment.h"

#include <QTest>

using namespace loopwright;

class MomentTest : public QObject
{
    Q_OBJECT
private slots:
    void parsesIso8601_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("utc");
        QTest::newRow("offset") << "2026-03-04T09:15:00-06:00"
                                << "2026-03-04T15:15:00Z";
        QTest::newRow("z") << "2026-03-04T09:15:00Z"
                           << "2026-03-04T09:15:00Z";
        QTest::newRow("minutes") << "2026-03-04T09:15+05:30"
                                 << "2026-03-04T03:45:00Z";
        QTest::newRow("milliseconds") << "2026-03-04T09:15:00.250Z"
                                      << "2026-03-04T09:15:00.250Z";
        QTest::newRow("leap day") << "2024-02-29T00:00:00Z"
                                  << "2024-02-29T00:00:00Z";
        QTest::newRow("no offset") << "2026-03-04T09:15:00" << QString();
        QTest::newRow("no such day") << "2026-02-29T09:15:00Z" << QString();
        QTest::newRow("hour 24") << "2026-03-04T24:00:00Z" << QString();
        QTest::newRow("offset 15 h") << "2026-03-04T09:15:00+15:00" << QString();
        QTest::newRow("date alone") << "2026-03-04" << QString();
        QTest::newRow("words") << "yesterday" << QString();
    }
    void parsesIso8601()
    {
        QFETCH(QString, text);
        QFETCH(QString, utc);
        const auto moment = Moment::parse(text);
        QCOMPARE(moment.has_value(), !utc.isEmpty());
        if (moment)
            QCOMPARE(moment->utcText(), utc);
    }
    void keepsTheWritersDay()
    {
        const auto moment = Moment::parse(u"2026-03-04T23:30:00-06:00");
        QVERIFY(moment);
        QCOMPARE(moment->localDate(), QDate(2026, 3, 4));
        QCOMPARE(moment->text(), "2026-03-04T23:30:00-06:00");
    }
};

QTEST_APPLESS_MAIN(MomentTest)
#include "MomentTest.moc"
