// Who may do what on the command line, row by row of the table of roles: a command of each act,
// said by each role, is carried out, or refused with the status and code of the contract; then the
// history has the refusal, and nothing else is changed.

#include "app/actions/LimitChanges.h"
#include "db/EventStore.h"
#include "tests/support/CommandRun.h"
#include "tests/support/RoleRecords.h"

#include <QTemporaryDir>

using namespace loopwright;
using namespace loopwright::roles;

namespace {

/// In the words IN is the folder of the files that are read, OUT that of the try, OWN the worker's
/// own note.
struct Said
{
    Act act;
    QStringList words;
    QString order = {};             ///< in whose chain a refusal stands; else in the register
    QList<QStringList> before = {}; ///< said by S1, so that there is something to do it with
};

/// As `order put --set` takes them.
QStringList valuesOf(const OrderFields &fields)
{
    QStringList values;
    for (auto it = fields.begin(); it != fields.end(); ++it)
        values << it.key() + '=' + it.value();
    return values;
}

OrderFields withRemarks()
{
    OrderFields fields = jobs::briFields();
    fields["remarks"] = "ring twice";
    return fields;
}

const QStringList vanAdded{"van", "add", "van-7", "--key", "IN/van.key"};
const QStringList orderHeld{
    "order", "hold", "A-1001", "--waiting-on", "permit", "--because", "no permit for the pole yet"};
const QStringList troubleOpened{"trouble", "open", "C-91", "--symptom", "noise on every call"};
const QStringList codeSplit{"bulk", "area_code", "--office", "NORTH",   "--from",
                            "217",  "--to",      "447",      "--spids", "--apply"};

const QList<Said> &commands()
{
    static const QList<Said> all{
        {Act::RecordFacts, {"record", "IN/more.json"}, "A-1001"},
        {Act::LabelInstrument,
         {"instrument", "label", "TS-9", "--serial", "S-9", "--kind", "loss set", "--calibrated-on",
          "2025-09-01", "--calibration-due", "2026-09-01"}},
        {Act::TakeOrderOnSite,
         QStringList{"order", "put", "--set"} + valuesOf(jobs::analogFields())},
        {Act::TakeOrderOnSite, troubleOpened},
        {Act::IssueCertificate, {"certificate", "issue", "A-1001", "--out", "OUT/c.pdf"}, "A-1001"},
        {Act::HandOn,
         {"handoff", "A-1001", "--to", "the cable desk", "--reference", "T-1", "--waiting-on",
          "plant"},
         "A-1001"},
        {Act::VoidOwnFact, {"void", "OWN", "--because", "misread"}, "A-0999"},
        {Act::KeepOrders, {"order", "import", "IN/orders.csv"}},
        {Act::KeepOrders,
         QStringList{"order", "put", "--update", "--set"} + valuesOf(withRemarks())},
        {Act::KeepOrders, {"order", "assign", "A-1001", "--installer", "K7"}},
        {Act::KeepOrders, {"order", "set", "A-1001", "remarks=ring twice"}},
        {Act::KeepOrders, {"order", "set", "--in", "IN/plans.csv"}},
        {Act::KeepOrders, orderHeld},
        {Act::KeepOrders, {"order", "resume", "A-1001"}, {}, {orderHeld}},
        {Act::KeepOrders, {"order", "complete", "A-1001"}, "A-1001"},
        {Act::KeepOrders, {"order", "cancel", "A-1001", "--because", "not wanted"}, "A-1001"},
        {Act::KeepOrders,
         {"trouble", "close", "C-91-R1", "--found", "wet splice", "--cleared", "splice made anew",
          "--cause", "contact"},
         "C-91-R1",
         {troubleOpened}},
        {Act::KeepRegister, {"office", "import", "IN/offices.csv"}},
        {Act::KeepRegister, {"instrument", "import", "IN/instruments.csv"}},
        {Act::ExportInternal, {"export", "--internal", "--out", "OUT/all"}},
        {Act::VoidAnothersFact, {"void", jobs::uuid(10), "--because", "another line"}, "A-1001"},
        {Act::Except,
         {"accept", "A-0999", "--except", "loop", "--because", "the cable is replaced in May"},
         "A-0999"},
        {Act::KeepLimits, {"limits", "add", "IN/limits.json"}},
        {Act::KeepPeople, {"installer", "import", "IN/people.csv"}},
        {Act::KeepPeople, {"person", "pin", "K7", "--pin-file", "IN/pin.txt"}},
        {Act::KeepIssuer, {"issuer", "import", "IN/issuer.csv"}},
        {Act::Restore, {"restore", "OUT/backup.sqlite"}, {}, {{"backup", "OUT/backup.sqlite"}}},
        {Act::KeepKeys, {"key", "renew", "--because", "in use for a year"}},
        {Act::WorkApart, {"van", "bring", "--out", "OUT/back.json"}},
        {Act::SendVans, vanAdded},
        {Act::SendVans,
         {"van", "take", "A-1001", "--to", "van-7", "--out", "OUT/out.json"},
         {},
         {vanAdded}},
        {Act::LoseVan, {"van", "lost", "van-7", "--because", "stolen"}, {}, {vanAdded}},
        {Act::ChangeOffice, codeSplit},
        {Act::ChangeOffice, {"bulk", "undo"}, {}, {codeSplit}},
    };
    return all;
}

/// What is written to a folder alone is no event.
bool isEvent(Act act)
{
    return act != Act::ExportInternal;
}

/// How many events the records hold, and the last of them.
struct History
{
    qint64 events = 0;
    Event last;
};

History historyOf(const QString &database)
{
    const auto records = Database::open(database, Database::Access::ReadOnly);
    if (!records)
        qFatal("%s", qPrintable(records.error().text()));
    History history;
    const auto seen = EventStore(*records).each(1, std::numeric_limits<qint64>::max(),
                                                [&history](const Event &event) -> Result<void> {
                                                    ++history.events;
                                                    history.last = event;
                                                    return {};
                                                });
    if (!seen)
        qFatal("%s", qPrintable(seen.error().text()));
    return history;
}

} // namespace

class RolesTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    std::unique_ptr<QTemporaryDir> m_try;

    QString in(const QString &name) const { return m_folder.filePath(name); }
    QString database() const { return m_try->filePath("records.sqlite"); }

    void writeFiles() const
    {
        const auto note = jobs::fact(90, "note", 60, {{"text", "dog in the yard"}});
        QJsonObject limits = jobs::limits().toJson();
        limits["version"] = "2026-own";
        const std::pair<const char *, QByteArray> files[] = {
            {"more.json", jobs::recordBytes(jobs::briFields(), {note})},
            {"orders.csv", jobs::csv({jobs::analogFields()})},
            {"plans.csv", "order_number,column,value\nA-1001,remarks,ring twice\n"},
            {"offices.csv", "office,name,protocol_variant\nSOUTH,South Street,ni2\n"},
            {"instruments.csv", "instrument,serial,kind,calibrated_on,calibration_due\n"
                                "TS-5,S-2,loss set,2025-09-01,2026-09-01\n"},
            {"people.csv", "installer,name\nK8,Jo Reed\n"},
            {"pin.txt", "4711\n"},
            {"issuer.csv", "name,address,telephone,trouble_telephone\n"
                           "Prairie Line,4 Hill,555-0170,555-0171\n"},
            {"limits.json", canonicalJson(limits)},
            {"van.key", keyOfVan()},
        };
        for (const auto &[name, content] : files)
            written(in(name), content);
    }
    /// On this try's copy of the records, with keys of its own.
    Answered say(QStringList words, const Worker &worker) const
    {
        for (QString &word : words)
            if (word.startsWith("IN/"))
                word = in(word.mid(3));
            else if (word.startsWith("OUT/"))
                word = m_try->filePath(word.mid(4));
            else if (word == "OWN")
                word = noteOf(worker);
        return call(words + QStringList{"--db", database(), "--json", "--by", worker.key, "--now",
                                        now().text()});
    }
    void begin(const Worker &worker, const QList<QStringList> &before)
    {
        m_try = std::make_unique<QTemporaryDir>();
        qputenv("XDG_DATA_HOME", QFile::encodeName(m_try->filePath("home")));
        const QString made = in(worker.supervised ? "supervised.sqlite" : "alone.sqlite");
        QVERIFY(QFile::copy(made, database()));
        for (const QStringList &words : before)
            COMPARE_STATUS(say(words, workers[2]), ExitStatus::Yes);
    }

private slots:
    void initTestCase()
    {
        writeFiles();
        makeRecords(in("supervised.sqlite"), true);
        makeRecords(in("alone.sqlite"), false);
    }

    void everyActHasACommand() { QCOMPARE(actsWithout(commands()), QStringList()); }

    void eachRoleMay_data()
    {
        QTest::addColumn<int>("command");
        QTest::addColumn<int>("worker");
        for (int i = 0; i < int(commands().size()); ++i)
            for (int j = 0; j < int(std::size(workers)); ++j) {
                const QByteArray what = commands()[i].words.mid(0, 3).join(' ').toUtf8();
                QTest::newRow(nameOfTry(what, workers[j])) << i << j;
            }
    }
    void eachRoleMay()
    {
        QFETCH(int, command);
        QFETCH(int, worker);
        const Said &asked = commands()[command];
        const Worker &who = workers[worker];
        begin(who, asked.before);
        const History before = historyOf(database());
        const Answered answered = say(asked.words, who);
        const History after = historyOf(database());
        if (may(who, asked.act)) {
            COMPARE_STATUS(answered, ExitStatus::Yes);
            QCOMPARE(after.events > before.events, isEvent(asked.act));
            QVERIFY(after.last.kind != "refused");
            return;
        }
        COMPARE_STATUS(answered, ExitStatus::No);
        QCOMPARE(answered.errorCode(), "refused");
        QVERIFY2(
            answered.messages.contains(who.role ? "is registered as" : "is not in the register"),
            answered.all().constData());
        // The refusal, and nothing else.
        QCOMPARE(after.events, before.events + 1);
        QCOMPARE(after.last.kind, "refused");
        QCOMPARE(after.last.by, who.key);
        QCOMPARE(after.last.detail["act"], toText(asked.act));
        QCOMPARE(after.last.order, asked.order);
    }

    /// Each of them changes nothing that others stand on.
    void anybodyMayRead()
    {
        const Worker &stranger = workers[3];
        begin(stranger, {{"certificate", "issue", "A-1001", "--out", "OUT/c.pdf"}});
        for (const QStringList &words :
             QList<QStringList>{{"order", "list"},
                                {"order", "show", "A-1001"},
                                {"decide", "A-1001"},
                                {"history", "verify"},
                                {"audit"},
                                {"certificate", "verify", "OUT/c.pdf"},
                                {"key", "export", "--out", "OUT/keys.txt"},
                                {"export", "--out", "OUT/tables"},
                                {"backup", "OUT/b.sqlite"}})
            COMPARE_STATUS(say(words, stranger), ExitStatus::Yes);
        QVERIFY(historyOf(database()).last.kind != "refused");
    }
};

QTEST_MAIN(RolesTest)
#include "RolesTest.moc"
