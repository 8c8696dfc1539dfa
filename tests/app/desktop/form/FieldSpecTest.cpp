#include "app/desktop/form/FieldSpec.h"

#include <QTest>

using namespace loopwright;

class FieldSpecTest : public QObject
{
    Q_OBJECT

    static QJsonValue read(Answer answer, const QString &typed,
                           const char *now = "2026-03-04T15:15:00-06:00")
    {
        return valueOf({"k", "label", {}, answer}, typed, *Moment::parse(QString::fromLatin1(now)));
    }

private slots:
    void aNumberTakesCommaOrPoint()
    {
        QCOMPARE(read(Answer::Number, "28,4"), QJsonValue(28.4));
        QCOMPARE(read(Answer::Number, "28.4"), QJsonValue(28.4));
        QCOMPARE(read(Answer::Number, "612"), QJsonValue(qint64(612)));
        QCOMPARE(read(Answer::Number, "-0,5"), QJsonValue(-0.5));
        QCOMPARE(read(Answer::Number, "1,234,5"), QJsonValue("1,234,5")); // the codec refuses it
        QCOMPARE(read(Answer::Whole, "12"), QJsonValue(qint64(12)));
        QCOMPARE(read(Answer::Whole, "1,5"), QJsonValue("1,5"));
        QVERIFY(read(Answer::Number, "").isUndefined());
    }

    void aTimeIsTypedAsDigits_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("read");
        QTest::newRow("four digits") << "0814"
                                     << "2026-03-04T08:14:00-06:00";
        QTest::newRow("six digits") << "081411"
                                    << "2026-03-04T08:14:11-06:00";
        QTest::newRow("hour of one digit") << "8:14"
                                           << "2026-03-04T08:14:00-06:00";
        QTest::newRow("with seconds") << "8:14:11"
                                      << "2026-03-04T08:14:11-06:00";
        QTest::newRow("two digits") << "08:14"
                                    << "2026-03-04T08:14:00-06:00";
        QTest::newRow("whole") << "2026-03-01T08:14:00-06:00"
                               << "2026-03-01T08:14:00-06:00";
        QTest::newRow("no such hour") << "2514"
                                      << "2514";
        QTest::newRow("no such minute") << "0860"
                                        << "0860";
        QTest::newRow("three digits may be either") << "814"
                                                    << "814";
        QTest::newRow("words") << "noon"
                               << "noon";
    }
    void aTimeIsTypedAsDigits()
    {
        QFETCH(const QString, typed);
        QFETCH(const QString, read);
        QCOMPARE(FieldSpecTest::read(Answer::Clock, typed), QJsonValue(read));
    }

    void aTimeHalfADayAheadWasYesterday()
    {
        QCOMPARE(read(Answer::Clock, "2350", "2026-03-04T00:20:00-06:00"),
                 QJsonValue("2026-03-03T23:50:00-06:00"));
        QCOMPARE(read(Answer::Clock, "0030", "2026-03-04T00:20:00-06:00"),
                 QJsonValue("2026-03-04T00:30:00-06:00"));
    }

    void aDateIsTypedAsDigits()
    {
        QCOMPARE(read(Answer::Date, "20260312"), QJsonValue("2026-03-12"));
        QCOMPARE(read(Answer::Date, "2026-03-12"), QJsonValue("2026-03-12"));
        QCOMPARE(read(Answer::Date, "20261312"), QJsonValue("20261312"));
    }

    void whatMayYetBecomeATimeIsNotWrong()
    {
        for (const char *typed : {"0", "08", "081", "08141", "8:", "8:1", "08:14:", "08:14:1"})
            QVERIFY2(isBegun(Answer::Clock, typed), typed);
        for (const char *typed : {"0814", "081411", "8:14", "8:14:11", "29", "086", "x", "8.14"})
            QVERIFY2(!isBegun(Answer::Clock, typed), typed);
        QVERIFY(isBegun(Answer::Number, "-"));
        QVERIFY(!isBegun(Answer::Number, "x"));
        QVERIFY(isBegun(Answer::Date, "2026-0"));
        QVERIFY(!isBegun(Answer::Date, "2026-03-12"));
        QVERIFY(!isBegun(Answer::Date, "12.3.2026"));
    }
};

QTEST_MAIN(FieldSpecTest)
#include "FieldSpecTest.moc"
