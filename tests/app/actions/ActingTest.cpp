// Who acts: logins, PINs, what is one's own, and where a refusal stands. Which role may do what is
// tried in RolesTest.cpp.

#include "app/actions/Acting.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Evidence.h"
#include "app/actions/History.h"
#include "app/actions/Orders.h"
#include "app/trust/Pin.h"
#include "tests/support/Office.h"
#include "tests/support/Records.h"

using namespace loopwright;

namespace {

std::unique_ptr<Records> officeWithJob()
{
    auto records = jobs::office();
    const auto taken = importOrders(*records, jobs::csv({jobs::briFields()}), {"orders.csv"});
    if (!taken || taken->accepted != 1)
        qFatal("the order was not taken in");
    records->actAs("K7");
    records->setNow(Moment::parse(u"2026-03-04T10:00:00-06:00"));
    const auto recorded =
        recordFile(*records, jobs::recordBytes(jobs::briFields(), jobs::briFacts()), "job.json");
    if (!recorded)
        qFatal("%s", qPrintable(recorded.error().text()));
    return records;
}

Result<void> imported(const Result<ImportReport> &report)
{
    if (!report)
        return failure(report.error());
    return report->clean() ? Result<void>() : failure(ErrorCode::BadInput, "rows refused");
}

QStringList refusals(Records &records, const QString &order)
{
    QStringList acts;
    const auto events = orderHistory(records, order);
    for (const Event &event : events.value_or(std::vector<Event>()))
        if (event.kind == u"refused")
            acts << event.by + ' ' + event.detail["act"].toString();
    return acts;
}

} // namespace

class ActingTest : public QObject
{
    Q_OBJECT

private slots:
    void aRefusalStandsInTheHistoryOfItsOrder()
    {
        auto records = officeWithJob();
        QVERIFY(!completeOrder(*records, "A-1001"));
        QVERIFY(!acceptWithException(*records, "A-1001", {"loop"}, "so be it"));
        QCOMPARE(refusals(*records, "A-1001"), (QStringList{"K7 keep_orders", "K7 except"}));
    }

    void readingIsAnybodys()
    {
        auto records = officeWithJob();
        records->actAs("somebody");
        QVERIFY_RESULT(decisionNow(*records, "A-1001"));
        QVERIFY_RESULT(showOrder(*records, "A-1001"));
        QCOMPARE(verifyHistory(*records)->broken.size(), 0U);
    }

    void hisOwnEntryUntilTheVisitIsOver()
    {
        auto records = officeWithJob();
        QVERIFY_RESULT(voidFact(*records, jobs::uuid(10), "misread"));
        QVERIFY_RESULT(
            recordFile(*records,
                       jobs::recordBytes(
                           jobs::briFields(),
                           {jobs::fact(90, "visit", 125, {{"left", "2026-03-04T10:05:00-06:00"}})}),
                       "left.json"));
        QVERIFY_RESULT(voidFact(*records, jobs::uuid(11), "misread")); // it is 10:00
        records->setNow(Moment::parse(u"2026-03-04T10:06:00-06:00"));
        QVERIFY(!voidFact(*records, jobs::uuid(12), "misread"));
        records->actAs("S1");
        QVERIFY_RESULT(voidFact(*records, jobs::uuid(12), "misread"));
    }
    void hisOwnEntryUntilTheEndOfTheDay()
    {
        auto records = officeWithJob();
        records->setNow(Moment::parse(u"2026-03-04T23:59:00-06:00"));
        QVERIFY_RESULT(voidFact(*records, jobs::uuid(10), "misread"));
        records->setNow(Moment::parse(u"2026-03-05T00:01:00-06:00"));
        QVERIFY(!voidFact(*records, jobs::uuid(11), "misread"));
    }
    void aHazardIsNobodysOwn()
    {
        auto records = jobs::office();
        QVERIFY_RESULT(importOrders(*records, jobs::csv({jobs::briFields()}), {"orders.csv"}));
        records->actAs("K7");
        records->setNow(Moment::parse(u"2026-03-04T10:00:00-06:00"));
        QVERIFY_RESULT(recordFile(
            *records, jobs::recordBytes(jobs::briFields(), {jobs::safety(1, 5, 120)}), "h.json"));
        const auto done = voidFact(*records, jobs::uuid(1), "mistyped");
        QVERIFY(!done);
        QVERIFY2(done.error().message.contains("that needs a supervisor"),
                 qPrintable(done.error().message));
    }

    void whileNobodySupervisesEverybodyMay()
    {
        auto records = Records::open(":memory:");
        QVERIFY(records);
        (*records)->actAs("somebody");
        QVERIFY_RESULT(bringShippedLimits(**records));
        QVERIFY_RESULT(imported(importOffices(
            **records, "office,name,protocol_variant\nNORTH,North,ni2\n", {"offices.csv"})));
        QVERIFY_RESULT(
            imported(importOrders(**records, jobs::csv({jobs::briFields()}), {"orders.csv"})));
        QVERIFY(!acceptWithException(**records, "A-1001", {"loop"}, "so be it"));
        QVERIFY_RESULT(cancelOrder(**records, "A-1001", "not wanted any more"));
    }

    void aSupervisorIsAlwaysLeft()
    {
        auto records = jobs::office();
        const auto become = [&records](const char *rows) {
            return importInstallers(*records, QByteArray("installer,name,role\n") + rows,
                                    {.fileName = "people.csv", .update = true});
        };
        QVERIFY_RESULT(imported(become("S1,Sam Holt,installer\n"))); // Dana is one too
        const auto last = become("Dana,Dana Sample,dispatcher\n");
        QVERIFY(last);
        QCOMPARE(last->refused, 1);
        QCOMPARE(last->findings.front().code, "last_supervisor");
    }

    void aLoginIsOnePersons()
    {
        auto records = jobs::office();
        const auto report = importInstallers(
            *records,
            "installer,name,role,login\nA1,Ann Reed,installer,ann\nA2,Bo Reed,installer,ann\n",
            {"people.csv"});
        QVERIFY(report);
        QCOMPARE(report->accepted, 1);
        QCOMPARE(report->findings.front().code, "login_taken");
    }

    void whoseLoginItIs()
    {
        auto records = jobs::office();
        QVERIFY_RESULT(actFor(*records, {}));
        QCOMPARE(records->by(), records->login());
        if (records->isOnServer())
            return; // there it is the login at the server: ServerRolesTest.cpp
        QCOMPARE(records->by(), Records::loginName());
        records->actAs("Dana");
        QVERIFY_RESULT(
            imported(importInstallers(*records,
                                      "installer,name,role,login\nA1,Ann Reed,installer," +
                                          Records::loginName().toUtf8() + "\n",
                                      {"people.csv"})));
        // No variable of the environment gives rights.
        qputenv("LOGNAME", "Dana");
        qputenv("USER", "Dana");
        QVERIFY_RESULT(actFor(*records, {}));
        QCOMPARE(records->by(), "A1");
    }

    void pins()
    {
        auto records = jobs::office();
        if (records->isOnServer()) { // the login takes their place
            QVERIFY(!setPin(*records, "K7", "4711 42"));
            QVERIFY(!setPin(*records, "Dana", "4711 42"));
            QVERIFY_RESULT(setPin(*records, "K7", {}));
            return;
        }
        std::optional<QString> typed;
        int asked = 0;
        records->setPinSource([&](const Person &) {
            ++asked;
            return typed;
        });
        QVERIFY_RESULT(setPin(*records, "Dana", "4711 42"));
        const auto addPerson = [&records](const char *key) {
            return imported(importInstallers(
                *records, QByteArray("installer,name\n") + key + ",Jo Reed\n", {"people.csv"}));
        };
        QVERIFY(!addPerson("P1")); // not given
        typed = "4711 43";
        QVERIFY(!addPerson("P1"));
        typed = "4711 42";
        QVERIFY_RESULT(addPerson("P1"));
        QVERIFY_RESULT(addPerson("P2"));
        QCOMPARE(asked, 4); // it holds for the act alone
        // No act of installers or dispatchers asks.
        QVERIFY_RESULT(importOrders(*records, jobs::csv({jobs::briFields()}), {"orders.csv"}));
        QCOMPARE(asked, 4);
        typed = "wrong one";
        QVERIFY(!setPin(*records, "Dana", "9999"));
        records->actAs("K7");
        QVERIFY(!setPin(*records, "S1", "1234"));       // another's
        QVERIFY_RESULT(setPin(*records, "K7", "1234")); // his own
        records->actAs("S1");
        QVERIFY_RESULT(setPin(*records, "Dana", {})); // a supervisor takes it away
        records->actAs("Dana");
        QVERIFY_RESULT(addPerson("P3"));
    }

    void pinsAreKeptAsArgon2id()
    {
        const auto hash = pinHash("4711 42");
        QVERIFY_RESULT(hash);
        QVERIFY(hash->startsWith("$argon2id$"));
        QVERIFY(pinMatches(*hash, "4711 42"));
        QVERIFY(!pinMatches(*hash, "471142"));
        QVERIFY(!pinMatches({}, {}));
        QVERIFY(*pinHash("4711 42") != *hash); // each with a salt of its own
        for (const char *odd : {"", "123", "12\n34"})
            QVERIFY(!pinHash(odd));
    }
};

QTEST_MAIN(ActingTest)
#include "ActingTest.moc"
