// Who may do what, row by row of the table of roles, by the actions that both faces call.

#include "app/actions/Acting.h"

#include "app/actions/Acceptance.h"
#include "app/actions/BulkChange.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/ExportRecords.h"
#include "app/actions/HandOn.h"
#include "app/actions/History.h"
#include "app/actions/InstrumentLabels.h"
#include "app/actions/Keys.h"
#include "app/actions/Maintenance.h"
#include "app/actions/Orders.h"
#include "app/trust/Pin.h"
#include "tests/support/Office.h"
#include "tests/support/Records.h"

#include <QTemporaryDir>

using namespace loopwright;

namespace {

using Deed = std::function<Result<void>(Records &)>;

template<class T>
Result<void> done(const Result<T> &result)
{
    return result ? Result<void>() : failure(result.error());
}

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

OrderFields changedFields()
{
    OrderFields fields = jobs::briFields();
    fields["remarks"] = "ring twice";
    return fields;
}

LimitSet ownLimits()
{
    QJsonObject set = jobs::limits().toJson();
    set["version"] = "2026-own";
    return *LimitSet::fromJson(set, "limits");
}

struct Row
{
    const char *act;
    Deed deed;
};

const std::vector<Row> &rows()
{
    static const std::vector<Row> all{
        {"record_facts",
         [](Records &r) {
             return done(recordFile(
                 r,
                 jobs::recordBytes(jobs::briFields(),
                                   {jobs::fact(90, "note", 60, {{"text", "gate code told"}})}),
                 "more.json"));
         }},
        {"label_instrument",
         [](Records &r) {
             return done(
                 labelInstrument(r, {"TS-9", "S-9", "loss set", "2025-09-01", "2026-09-01"}));
         }},
        {"take_order_on_site",
         [](Records &r) {
             OrderFields fields = jobs::analogFields();
             return done(putOrder(r, fields, false, false));
         }},
        {"issue_certificate",
         [](Records &r) {
             IssueRequest request;
             request.order = "A-1001";
             return done(issueCertificate(r, request));
         }},
        {"hand_on",
         [](Records &r) {
             return refer(r, "A-1001", {"the trouble desk", "T-1", WaitingOn::Office});
         }},
        {"keep_orders", [](Records &r) { return done(putOrder(r, changedFields(), true, false)); }},
        {"keep_orders", [](Records &r) { return completeOrder(r, "A-1001"); }},
        {"keep_orders", [](Records &r) { return cancelOrder(r, "A-1001", "not wanted any more"); }},
        {"keep_orders",
         [](Records &r) {
             return imported(importOrders(r, jobs::csv({jobs::analogFields()}), {"more.csv"}));
         }},
        {"keep_register",
         [](Records &r) {
             return imported(importOffices(
                 r, "office,name,protocol_variant\nSOUTH,South Street,ni2\n", {"offices.csv"}));
         }},
        {"keep_register",
         [](Records &r) {
             return imported(
                 importInstruments(r,
                                   "instrument,serial,kind,calibrated_on,calibration_due\n"
                                   "TS-5,S-2,loss set,2025-09-01,2026-09-01\n",
                                   {"instruments.csv"}));
         }},
        {"export_internal",
         [](Records &r) {
             QTemporaryDir folder;
             return done(exportRecords(r, {folder.path() + "/x", true}));
         }},
        {"void_anothers_fact",
         [](Records &r) { return done(voidFact(r, jobs::uuid(10), "it was another line")); }},
        {"keep_limits", [](Records &r) { return done(addLimitSet(r, ownLimits())); }},
        {"keep_people",
         [](Records &r) {
             return imported(
                 importInstallers(r, "installer,name\nK8,Jo Reed\n", {"installers.csv"}));
         }},
        {"keep_keys",
         [](Records &r) {
             return done(renewKeys(r, {false, "in use for a year"}));
         }},
        {"change_office",
         [](Records &r) {
             return done(applyBulk(r, {OfficeChangeKind::AreaCode, "NORTH", "217", "447"}));
         }},
        {"keep_issuer",
         [](Records &r) {
             return imported(importIssuer(
                 r, "name,address,telephone,trouble_telephone\nPrairie,4 Hill,555-0170,555-0171\n",
                 {"issuer.csv"}));
         }},
    };
    return all;
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
    void eachRoleMay_data()
    {
        QTest::addColumn<int>("row");
        QTest::addColumn<QString>("who");
        QTest::addColumn<bool>("may");
        for (std::size_t i = 0; i < rows().size(); ++i)
            for (const auto &[who, role] :
                 {std::pair("K9", Role::Installer), // not who recorded it
                  std::pair("D4", Role::Dispatcher), std::pair("S1", Role::Supervisor)}) {
                const auto act = fromText<Act>(QString::fromLatin1(rows()[i].act));
                QTest::addRow("%d %s by %s", int(i), rows()[i].act, who)
                    << int(i) << QString(who) << (role >= leastRoleFor(*act));
            }
    }
    void eachRoleMay()
    {
        QFETCH(int, row);
        QFETCH(QString, who);
        QFETCH(bool, may);
        const Row &asked = rows()[std::size_t(row)];
        auto records = officeWithJob();
        records->actAs("S1");
        QVERIFY_RESULT(imported(
            importInstallers(*records, "installer,name\nK9,Max Poole\n", {"installers.csv"})));
        records->actAs(who);
        const auto counted = verifyHistory(*records);
        QVERIFY(counted);
        const auto before = counted->events;
        const auto done = asked.deed(*records);
        QVERIFY2(bool(done) == may, done ? "it was done" : qPrintable(done.error().text()));
        if (may)
            return;
        QCOMPARE(done.error().code, ErrorCode::Refused);
        const auto after = verifyHistory(*records);
        QVERIFY(after);
        QCOMPARE(after->events, before + 1); // the refusal, and nothing else
    }

    void aRefusalStandsInTheHistoryOfItsOrder()
    {
        auto records = officeWithJob();
        QVERIFY(!completeOrder(*records, "A-1001"));
        QVERIFY(!acceptWithException(*records, "A-1001", {"loop"}, "so be it"));
        QCOMPARE(refusals(*records, "A-1001"), (QStringList{"K7 keep_orders", "K7 except"}));
    }

    void aStrangerMayNothing()
    {
        auto records = officeWithJob();
        records->actAs("somebody");
        for (const Row &row : rows()) {
            const auto done = row.deed(*records);
            QVERIFY2(!done, row.act);
            QVERIFY2(done.error().message.contains("\"somebody\" is not in the register"),
                     qPrintable(done.error().message));
        }
        QVERIFY_RESULT(decisionNow(*records, "A-1001")); // reading is anybody's
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
