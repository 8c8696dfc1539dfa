#include "core/turnup/Cause.h"

#include <QTest>

using namespace loopwright;

class CauseTest : public QObject
{
    Q_OBJECT
private slots:
    // Names as in Asterisk's causes.h, classes by number div 16 (Q.850).
    void names_data()
    {
        QTest::addColumn<int>("number");
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("classText");
        QTest::addColumn<bool>("inList");
        const auto row = [](int number, const char *name, const char *classText, bool inList) {
            QTest::addRow("%d", number) << number << name << classText << inList;
        };
        row(1, "Unallocated (unassigned) number", "normal event", true);
        row(16, "Normal call clearing", "normal event", true);
        row(17, "User busy", "normal event", true);
        row(34, "No circuit/channel available", "resource unavailable", true);
        row(57, "Bearer capability not authorised", "service or option not available", true);
        row(65, "Bearer capability not implemented", "service or option not implemented", true);
        row(88, "Incompatible destination", "invalid message", true);
        row(100, "Invalid information element contents", "protocol error", true);
        row(127, "Interworking, unspecified", "interworking", true);
        row(15, "not in the Q.850 list", "normal event", false);
        row(52, "not in the Q.850 list", "service or option not available", false);
        row(112, "not in the Q.850 list", "interworking", false);
    }
    void names()
    {
        QFETCH(int, number);
        const auto cause = causeOf(number);
        QVERIFY(cause);
        QCOMPARE(cause->number, number);
        QTEST(cause->name.english(), "name");
        QTEST(cause->classText.english(), "classText");
        QTEST(cause->inList, "inList");
        QVERIFY(!cause->checkFirst.isEmpty());
    }

    void knowsSevenBits()
    {
        for (const int number : {-1, 0, 128, 255, 100000})
            QVERIFY(!causeOf(number));
        for (int number = 1; number <= 127; ++number)
            QVERIFY(causeOf(number));
        QCOMPARE(allCauses().size(), 71U);
    }

    void unlistedTakesTheUnspecifiedOfItsClass()
    {
        QVERIFY(causeOf(52)->checkFirst.contains("63"));
        QVERIFY(causeOf(15)->checkFirst.contains("31"));
    }

    void wrongSpidIsNamedFirst() { QVERIFY(causeOf(100)->checkFirst.contains("SPID")); }

    void ownCauseList()
    {
        QVERIFY(usesQ850(*findVariant(u"ni1")));
        QVERIFY(usesQ850(*findVariant(u"dss1")));
        QVERIFY(!usesQ850(*findVariant(u"1tr6")));
        QVERIFY(!usesQ850(*findVariant(u"analog")));
        QVERIFY(whyNoCauseNames(*findVariant(u"1tr6")).contains("cause list of its own"));
    }
};

QTEST_APPLESS_MAIN(CauseTest)
#include "CauseTest.moc"
