#include "core/acceptance/EvidenceDays.h"

#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class EvidenceDaysTest : public QObject
{
    Q_OBJECT

    static QJsonObject onDay(QJsonObject fact, const QString &day)
    {
        for (const char *key : {"at", "started", "ended"})
            if (fact.contains(QLatin1StringView(key)))
                fact[key] = fact[key].toString().replace("2026-03-04", day);
        return fact;
    }
    static EvidenceDays daysOf(const QList<QJsonObject> &facts)
    {
        return evidenceDays(input(briFields(), facts));
    }

private slots:
    void ofOneVisit()
    {
        const EvidenceDays days = daysOf(briFacts());
        QCOMPARE(days.newest, QDate(2026, 3, 4));
        QCOMPARE(days.visits, 1);
        QCOMPARE(daysOf({}).visits, 0);
        QVERIFY(!daysOf({}).newest.isValid());
    }
    void aReadingOnAnotherDayIsAnotherVisit()
    {
        QList<QJsonObject> facts = briFacts();
        facts << onDay(safety(20, 5), "2026-03-06") << onDay(run(21, 32), "2026-03-06");
        QCOMPARE(daysOf(facts).visits, 2);
        QCOMPARE(daysOf(facts).newest, QDate(2026, 3, 6));
        facts << voiding(22, 60, 20, "other line") << voiding(23, 60, 21, "other line");
        QCOMPARE(daysOf(facts).visits, 1);
        QCOMPARE(daysOf(facts).newest, QDate(2026, 3, 4));
    }
    void whatIsNotDoneOnSiteIsNone()
    {
        QList<QJsonObject> facts = briFacts();
        facts << onDay(fact(20, "note", 9, {{"text", "called back"}}), "2026-03-09")
              << onDay(fact(21, "referred", 9, {{"to", "desk"}, {"waiting_on", "plant"}}),
                       "2026-03-09");
        QCOMPARE(daysOf(facts).visits, 1);
        QCOMPARE(daysOf(facts).newest, QDate(2026, 3, 4));
    }
    void whatCameAfterTheEndIsNone()
    {
        QList<QJsonObject> facts = briFacts();
        facts << onDay(run(21, 32), "2026-03-20");
        DecisionInput ended = input(briFields(), facts);
        ended.afterEnd = {uuid(21)};
        QCOMPARE(evidenceDays(ended).visits, 1);
        QCOMPARE(evidenceDays(ended).newest, QDate(2026, 3, 4));
    }
    void twoVisitsOfADayAreTwo()
    {
        DecisionInput twice = input(briFields(), briFacts());
        const auto time = [](const char *text) { return *Moment::parse(QString(text)); };
        const auto visit = [&time](const char *arrived, const char *left) {
            return Visit{"K7", time(arrived), time(left), {}, {}, {}};
        };
        twice.visits = {visit("2026-03-04T08:00:00-06:00", "2026-03-04T08:20:30-06:00"),
                        visit("2026-03-04T08:21:00-06:00", "2026-03-04T10:00:00-06:00")};
        QCOMPARE(evidenceDays(twice).visits, 2);
    }
    void theDayOfAcceptance()
    {
        const QDate taken(2026, 3, 1), newest(2026, 3, 4);
        const auto day = [&](OrderStatus status, OrderOutcome outcome, QDate last) {
            return acceptanceDay(status, outcome, {last, 1}, taken);
        };
        QCOMPARE(day(OrderStatus::Open, OrderOutcome::Accepted, newest), newest);
        QCOMPARE(day(OrderStatus::Completed, OrderOutcome::AcceptedWithException, newest), newest);
        QCOMPARE(day(OrderStatus::Completed, OrderOutcome::Accepted, {}), taken); // on paper alone
        QCOMPARE(day(OrderStatus::Cancelled, OrderOutcome::Accepted, newest), QDate());
        QCOMPARE(day(OrderStatus::Open, OrderOutcome::NotAccepted, newest), QDate());
        QCOMPARE(day(OrderStatus::Open, OrderOutcome::Incomplete, newest), QDate());
    }
};

QTEST_GUILESS_MAIN(EvidenceDaysTest)
#include "EvidenceDaysTest.moc"
