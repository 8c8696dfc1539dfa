// Who may do what, row by row of the table of roles, by the actions that both faces call: each is
// tried by each role. It is done, or refused; then the history has the refusal, and nothing else is
// changed.

#include "app/actions/Acting.h"
#include "app/actions/BringBack.h"
#include "app/actions/BulkChange.h"
#include "app/actions/Certificates.h"
#include "app/actions/DeskWork.h"
#include "app/actions/ExportRecords.h"
#include "app/actions/HandOn.h"
#include "app/actions/History.h"
#include "app/actions/InstrumentLabels.h"
#include "app/actions/Keys.h"
#include "app/actions/Maintenance.h"
#include "app/actions/Plans.h"
#include "app/actions/TakeAlong.h"
#include "app/actions/Troubles.h"
#include "db/EventStore.h"
#include "tests/support/Records.h"
#include "tests/support/RoleRecords.h"

#include <QTemporaryDir>

using namespace loopwright;
using namespace loopwright::roles;

namespace {

template<class T>
Result<void> done(const Result<T> &result)
{
    return result ? Result<void>() : failure(result.error());
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

/// A copy of records that were made, with keys of its own, and who tries something in it.
struct Try
{
    const Worker &worker;
    QTemporaryDir folder;
    std::unique_ptr<Records> records;

    Try(const QString &made, const Worker &who)
        : worker(who)
    {
        if (!QFile::copy(made, path()))
            qFatal("%s cannot be copied", qPrintable(made));
        open("S1");
    }
    QString file(const QString &name) const { return folder.filePath(name); }
    QString path() const { return file("records.sqlite"); }
    void open(const QString &by)
    {
        auto opened = Records::open(path());
        if (!opened)
            qFatal("%s", qPrintable(opened.error().text()));
        records = std::move(*opened);
        records->setKeys(KeyFolder(file("keys")));
        records->setNow(now());
        records->actAs(by);
    }
    std::vector<Event> events() const
    {
        std::vector<Event> events;
        const auto read = EventStore(records->database())
                              .each(1, std::numeric_limits<qint64>::max(),
                                    [&events](const Event &event) -> Result<void> {
                                        events.push_back(event);
                                        return {};
                                    });
        return read ? events : std::vector<Event>();
    }
};

using Deed = Result<void> (*)(Try &);

Result<void> addVanSeven(Try &t)
{
    return done(addVan(*t.records, "van-7", keyOfVan(), "van.key", false));
}
Result<void> holdIt(Try &t)
{
    return done(holdOrders(*t.records, {"A-1001"}, WaitingOn::Permit, "no permit yet"));
}
Result<void> openIt(Try &t)
{
    return done(openTrouble(*t.records, {"C-91", "noise on every call"}));
}
Result<void> splitCode(Try &t)
{
    return done(applyBulk(*t.records, {OfficeChangeKind::AreaCode, "NORTH", "217", "447"}));
}

struct Tried
{
    Act act;
    const char *what;
    Deed deed;
    Deed before = nullptr; ///< by S1
};

const Tried tries[] = {
    {Act::RecordFacts, "record",
     [](Try &t) {
         const auto note = jobs::fact(90, "note", 60, {{"text", "dog in the yard"}});
         return done(
             recordFile(*t.records, jobs::recordBytes(jobs::briFields(), {note}), "more.json"));
     }},
    {Act::RecordFacts, "desk work",
     [](Try &t) {
         return done(recordDeskWork(
             *t.records, {{"A-1001"}, {DeskWhat::JumperRun, "Lee", "frame 3"}, t.records->now()}));
     }},
    {Act::LabelInstrument, "label an instrument",
     [](Try &t) {
         return done(
             labelInstrument(*t.records, {"TS-9", "S-9", "loss set", "2025-09-01", "2026-09-01"}));
     }},
    {Act::TakeOrderOnSite, "new order",
     [](Try &t) { return done(putOrder(*t.records, jobs::analogFields(), false)); }},
    {Act::TakeOrderOnSite, "open a trouble", openIt},
    {Act::IssueCertificate, "issue a certificate",
     [](Try &t) {
         IssueRequest request;
         request.order = "A-1001";
         return done(issueCertificate(*t.records, request));
     }},
    {Act::HandOn, "hand on",
     [](Try &t) {
         return refer(*t.records, "A-1001", {"the trouble desk", "T-1", WaitingOn::Office});
     }},
    {Act::VoidOwnFact, "void an own fact",
     [](Try &t) { return done(voidFact(*t.records, noteOf(t.worker), "misread")); }},
    {Act::KeepOrders, "change an order",
     [](Try &t) { return done(putOrder(*t.records, changedFields(), true)); }},
    {Act::KeepOrders, "assign",
     [](Try &t) {
         return done(assignOrders(*t.records, {{"A-1001"}, "K7"}));
     }},
    {Act::KeepOrders, "hold", holdIt},
    {Act::KeepOrders, "resume", [](Try &t) { return done(resumeOrders(*t.records, {"A-1001"})); },
     holdIt},
    {Act::KeepOrders, "complete", [](Try &t) { return completeOrder(*t.records, "A-1001"); }},
    {Act::KeepOrders, "cancel",
     [](Try &t) { return cancelOrder(*t.records, "A-1001", "not wanted any more"); }},
    {Act::KeepOrders, "close a trouble",
     [](Try &t) {
         return done(closeTrouble(
             *t.records, {"C-91-R1", "wet splice", "splice made anew", ClearedWhat::Contact}));
     },
     openIt},
    {Act::KeepOrders, "import orders",
     [](Try &t) {
         return imported(importOrders(*t.records, jobs::csv({jobs::analogFields()}), {"o.csv"}));
     }},
    {Act::KeepOrders, "import plans",
     [](Try &t) {
         return imported(importPlans(
             *t.records, "order_number,column,value\nA-1001,remarks,ring twice\n", {"p.csv"}));
     }},
    {Act::KeepRegister, "import offices",
     [](Try &t) {
         return imported(importOffices(*t.records,
                                       "office,name,protocol_variant\nSOUTH,South Street,ni2\n",
                                       {"offices.csv"}));
     }},
    {Act::KeepRegister, "import instruments",
     [](Try &t) {
         return imported(importInstruments(*t.records,
                                           "instrument,serial,kind,calibrated_on,calibration_due\n"
                                           "TS-5,S-2,loss set,2025-09-01,2026-09-01\n",
                                           {"instruments.csv"}));
     }},
    {Act::ExportInternal, "export unpublished numbers",
     [](Try &t) {
         return done(exportRecords(*t.records, {t.file("all"), true}));
     }},
    {Act::VoidAnothersFact, "void another's fact",
     [](Try &t) { return done(voidFact(*t.records, jobs::uuid(10), "it was another line")); }},
    {Act::Except, "accept with an exception",
     [](Try &t) { return done(acceptWithException(*t.records, "A-0999", {"loop"}, "so be it")); }},
    {Act::KeepLimits, "add limits",
     [](Try &t) { return done(addLimitSet(*t.records, ownLimits())); }},
    {Act::KeepPeople, "import people",
     [](Try &t) {
         return imported(
             importInstallers(*t.records, "installer,name\nK8,Jo Reed\n", {"people.csv"}));
     }},
    {Act::KeepPeople, "set another's PIN",
     [](Try &t) { return setPin(*t.records, "K7", t.records->isOnServer() ? "" : "4711"); }},
    {Act::KeepIssuer, "import the issuer",
     [](Try &t) {
         return imported(importIssuer(*t.records,
                                      "name,address,telephone,trouble_telephone\n"
                                      "Prairie,4 Hill,555-0170,555-0171\n",
                                      {"issuer.csv"}));
     }},
    {Act::Restore, "restore",
     [](Try &t) {
         t.records.reset(); // nobody may have them open
         const auto restored = restoreFrom(t.file("b.sqlite"), t.path(), {t.worker.key});
         t.open(t.worker.key);
         return done(restored);
     },
     [](Try &t) { return backupTo(*t.records, t.file("b.sqlite")); }},
    {Act::KeepKeys, "renew keys",
     [](Try &t) {
         return done(renewKeys(*t.records, {false, "in use for a year"}));
     }},
    {Act::WorkApart, "bring back",
     [](Try &t) { return done(bringBack(*t.records, {t.file("back.json")})); }},
    {Act::SendVans, "add a van", addVanSeven},
    {Act::SendVans, "take along",
     [](Try &t) {
         TakingAlong wish;
         wish.orders = QStringList{"A-1001"};
         wish.station = "van-7";
         wish.out = t.file("out.json");
         return done(takeAlong(*t.records, wish));
     },
     addVanSeven},
    {Act::LoseVan, "lose a van", [](Try &t) { return loseVan(*t.records, "van-7", "stolen"); },
     addVanSeven},
    {Act::ChangeOffice, "change all lines", splitCode},
    {Act::ChangeOffice, "take it back", [](Try &t) { return done(undoBulk(*t.records)); },
     splitCode},
};

} // namespace

class RolesTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

    QString madeRecords(bool supervised) const
    {
        return m_folder.filePath(supervised ? "supervised.sqlite" : "alone.sqlite");
    }

private slots:
    void initTestCase()
    {
        makeRecords(madeRecords(true), true);
        makeRecords(madeRecords(false), false);
    }

    void everyActIsTried() { QCOMPARE(actsWithout(tries), QStringList()); }

    void eachRoleMay_data()
    {
        QTest::addColumn<int>("row");
        QTest::addColumn<int>("worker");
        for (int i = 0; i < int(std::size(tries)); ++i)
            for (int j = 0; j < int(std::size(workers)); ++j)
                QTest::newRow(nameOfTry(tries[i].what, workers[j])) << i << j;
    }
    void eachRoleMay()
    {
        QFETCH(int, row);
        QFETCH(int, worker);
        const Tried &asked = tries[row];
        Try t(madeRecords(workers[worker].supervised), workers[worker]);
        if (asked.before)
            QVERIFY_RESULT(asked.before(t));
        t.records->actAs(t.worker.key);
        const auto before = t.events().size();
        QVERIFY(before > 0);
        const auto done = asked.deed(t);
        const auto after = t.events();
        if (may(t.worker, asked.act)) {
            QVERIFY_RESULT(done);
            QVERIFY(after.back().kind != "refused");
            QCOMPARE(after.size() > before, asked.act != Act::ExportInternal);
            return;
        }
        QVERIFY2(!done, "it was done");
        QCOMPARE(done.error().code, ErrorCode::Refused);
        const char *words =
            t.worker.role ? "is registered as" : "\"somebody\" is not in the register";
        QVERIFY2(done.error().message.contains(words), qPrintable(done.error().message));
        QCOMPARE(after.size(), before + 1); // the refusal, and nothing else
        QCOMPARE(after.back().kind, "refused");
        QCOMPARE(after.back().by, t.worker.key);
        QCOMPARE(after.back().detail["act"], toText(asked.act));
        QCOMPARE(verifyHistory(*t.records)->broken.size(), 0U);
    }
};

QTEST_MAIN(RolesTest)
#include "RolesTest.moc"
