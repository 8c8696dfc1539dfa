// All lines of an office at once: seen beforehand, done, taken back. Longer than 400 lines: all of
// it is held against the same records, row by row.

#include "app/actions/BulkChange.h"

#include "app/actions/Audit.h"
#include "app/actions/Board.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/CertificateSet.h"
#include "app/actions/Circuits.h"
#include "app/actions/History.h"
#include "app/actions/Plans.h"
#include "app/actions/Register.h"
#include "app/actions/Troubles.h"
#include "app/actions/VerifyCertificate.h"
#include "db/AssignmentStore.h"
#include "db/BoardStore.h"
#include "db/Connection.h"
#include "db/EventStore.h"
#include "db/OrderStore.h"
#include "tests/support/Records.h"
#include "tests/support/SmallRecords.h"

#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

const OfficeChange split{OfficeChangeKind::AreaCode, "NORTH", "217", "447"};
const OfficeChange splitWithSpids{OfficeChangeKind::AreaCode, "NORTH", "217", "447", true};
const OfficeChange conversion{OfficeChangeKind::Variant, "NORTH", {}, "custom-5ess-multipoint"};

} // namespace

/// A-1001 on C-77 is completed and certified; A-0999 on C-66 and the analog A-2001 on C-90 are
/// open.
class BulkChangeTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    std::unique_ptr<Records> m_records;
    QByteArray m_certificate;

    /// Every row of what is planned and derived, all columns.
    QStringList derived()
    {
        QStringList all;
        const std::pair<const char *, const char *> tables[] = {
            {"service_order", "json_array(id, uuid, order_number, circuit, office, order_type, "
                              "due_date, installer, premises_key, pair_key, pair_identity, status, "
                              "completed_rank, held, content, digest)"},
            {"order_terminal", "json_array(id, service_order, number, dn, dn_key, spid, tei)"},
            {"assignment", "json_array(id, kind, scope, value, circuit, service_order, state)"},
            {"order_state", "json_array(service_order, order_number, status, stage, outcome, "
                            "criterion, reason, waiting_on, paper, hazard, due_date, office, "
                            "installer, circuit_number, pair, cable, variant, order_type, kind, "
                            "customer, premises, taken_on, accepted_on, visits, facts, runs, "
                            "search)"},
            {"hazard_order", "json_array(id, pair, office, service_order)"},
            {"office", "json_array(id, office, name, protocol_variant, digest)"},
            {"office_test_line", "json_array(office, label, number)"}};
        for (const auto &[table, row] : tables) {
            const auto rows = m_records->database().connection().texts(
                QByteArray("SELECT ") + row + " FROM " + table + " ORDER BY 1");
            if (!rows)
                qFatal("%s", qPrintable(rows.error().text()));
            for (const QString &each : *rows)
                all << table + (' ' + each);
        }
        return all;
    }
    void isWhole()
    {
        const auto history = verifyHistory(*m_records);
        QVERIFY_RESULT(history);
        for (const auto &fault : history->broken)
            qWarning() << fault.subject << fault.what;
        QVERIFY(history->broken.empty());
        const auto audit = auditDerived(*m_records);
        QVERIFY_RESULT(audit);
        for (const DerivedFault &fault : *audit)
            qWarning() << fault.subject << fault.what;
        QVERIFY(audit->empty());
    }
    BulkReport apply(const OfficeChange &change)
    {
        auto report = applyBulk(*m_records, change);
        if (!report)
            qFatal("%s", qPrintable(report.error().text()));
        return *report;
    }
    QStringList changesOf(const Result<BulkReport> &report)
    {
        QStringList list;
        for (const BulkLine &line : report->changes)
            list << QStringList{line.circuit, line.order, line.value.what, line.value.now}.join(
                ' ');
        return list;
    }
    QStringList keptOf(const Result<BulkReport> &report)
    {
        QStringList list;
        for (const BulkKept &line : report->cannot)
            list << QStringList{line.circuit, line.value.what, line.value.old}.join(' ');
        return list;
    }
    ServiceOrder order(const QString &number)
    {
        return OrderStore(m_records->database()).get(number)->order;
    }
    QStringList held(const QString &circuit)
    {
        QStringList values;
        const auto all = AssignmentStore(m_records->database()).ofCircuit(circuit);
        for (const Assignment &row : *all)
            if (row.state != AssignmentState::Released)
                values << toText(row.kind) + ' ' + row.value + ' ' + toText(row.state);
        values.sort();
        return values;
    }
    QString outcome(const QString &number)
    {
        const auto view = showOrder(*m_records, number);
        return toText(view->decision.outcome);
    }
    std::optional<bool> stands(QString *because = nullptr)
    {
        const auto check = verifyCertificateFile(*m_records, m_certificate);
        if (because)
            *because = check->because;
        return check->stands;
    }
    void take(const OrderFields &fields, bool update = false)
    {
        QVERIFY_RESULT(putOrder(*m_records, fields, update));
    }
    void takeInSouth(OrderFields fields)
    {
        QVERIFY(importOffices(*m_records, "office,name,protocol_variant\nSOUTH,South Street,ni2\n",
                              {"o.csv"}));
        fields["office"] = "SOUTH";
        take(fields);
    }
    QString reason(const QString &number)
    {
        return BoardStore(m_records->database()).columnsOf(number)->value("reason");
    }
    int stillHeld(const QString &number)
    {
        const auto events = EventStore(m_records->database()).ofOrder(number);
        return int(std::ranges::count(*events, stillHeldKind, &Event::kind));
    }
    /// All that A-0999 needs, by K7.
    void recordOther()
    {
        QByteArray bytes = recordBytes(briFields(), briFacts());
        for (const auto &[was, is] :
             {std::pair("A-1001", "A-0999"), std::pair("2175550143", "2175550181"),
              std::pair("2175550144", "2175550182"),
              std::pair("00000000-0000-4000-8000-", "00000000-0000-4000-9000-")})
            bytes.replace(was, is);
        m_records->actAs("K7");
        QVERIFY_RESULT(recordFile(*m_records, bytes, "job.json"));
        m_records->actAs("S1");
    }
    /// Applied and taken back, nothing is other than before.
    void undone(const QStringList &before)
    {
        isWhole();
        const auto done = undoBulk(*m_records);
        QVERIFY_RESULT(done);
        const QStringList after = derived();
        for (int i = 0; i < std::max(before.size(), after.size()); ++i)
            QCOMPARE(after.value(i), before.value(i));
        isWhole();
    }

private slots:
    void initTestCase() { m_certificate = makeSmallRecords(m_folder.filePath("made.sqlite")); }
    void init()
    {
        static int n = 0;
        const QString path = m_folder.filePath(QString("%1.sqlite").arg(++n));
        m_records.reset();
        QVERIFY(QFile::copy(m_folder.filePath("made.sqlite"), path));
        m_records = std::move(*Records::open(path));
        m_records->actAs("S1");
        m_records->setNow(Moment::parse(u"2026-04-01T09:00:00-06:00"));
    }

    void aSplitIsSeenBeforehand()
    {
        const QStringList before = derived();
        const auto report = previewBulk(*m_records, split);
        QVERIFY_RESULT(report);
        QCOMPARE(changesOf(report),
                 (QStringList{"C-77 A-1001 dn_1 447-555-0143", "C-77 A-1001 dn_2 447-555-0144",
                              "C-90 A-2001 dn_1 447-555-0150", "C-66 A-0999 dn_1 447-555-0181",
                              "C-66 A-0999 dn_2 447-555-0182"}));
        QCOMPARE(keptOf(report),
                 (QStringList{"C-77 spid_1 21755501430101", "C-77 spid_2 21755501440101",
                              "C-66 spid_1 21755501810101", "C-66 spid_2 21755501820101"}));
        QVERIFY(!report->applied);
        QCOMPARE(report->circuits, 3);
        QCOMPARE(report->certificates, 1); // of A-1001
        QCOMPARE(derived(), before);
        QVERIFY_RESULT(lastBulk(*m_records));
        QVERIFY(!lastBulk(*m_records)->has_value());
    }

    void aSplit()
    {
        const QStringList before = derived();
        QCOMPARE(stands(), std::optional(true));
        const BulkReport report = apply(split);
        QVERIFY(report.applied);
        QCOMPARE(order("A-1001").terminals[0].dn, "447-555-0143");
        QCOMPARE(order("A-1001").terminals[0].spid, "21755501430101");
        QCOMPARE(held("C-77"), (QStringList{"dn +14475550143 working", "dn +14475550144 working",
                                            "pair 17-204 working", "spid 21755501430101 working",
                                            "spid 21755501440101 working"}));
        QCOMPARE(held("C-90"), (QStringList{"dn +14475550150 planned", "pair 17-205 planned"}));
        // It was completed with the old numbers, and is found by the new ones.
        QCOMPARE(outcome("A-1001"), "accepted");
        BoardFilter filter;
        filter.text = "447-555-0143";
        QCOMPARE(boardRows(*m_records, filter)->size(), 1u);
        QString because;
        QCOMPARE(stands(&because), std::optional(false));
        QVERIFY2(because.contains("identifiers"), qPrintable(because));
        // A trouble is of the line as it is now.
        undone(before);
        QCOMPARE(stands(), std::optional(true));
    }
    void aSplitWithSpids()
    {
        const QStringList before = derived();
        QVERIFY(apply(splitWithSpids).cannot.empty());
        QCOMPARE(order("A-0999").terminals[1].spid, "44755501820101");
        QVERIFY(held("C-77").contains("spid 44755501430101 working"));
        undone(before);
    }
    void aConversion()
    {
        const QStringList before = derived();
        const BulkReport report = apply(conversion);
        QVERIFY(report.cannot.empty() && report.officeToo);
        QCOMPARE(order("A-1001").variant, "custom-5ess-multipoint");
        QCOMPARE(order("A-1001").terminals[0].spid, "0155501430");
        QVERIFY(held("C-66").contains("spid 0155501810 planned"));
        QCOMPARE(offices(*m_records)->front().protocolVariant, "custom-5ess-multipoint");
        QCOMPARE(testLinesOf(*m_records, "NORTH")->front().number.forInstallersOnly(), sentinel);
        QCOMPARE(order("A-2001").variant, "analog");
        // New orders take the new one; those with their own keep it.
        undone(before);
        QCOMPARE(offices(*m_records)->front().protocolVariant, "ni2");
    }
    void linesWithTheirOwnVariantStay()
    {
        OrderFields own = otherBriFields("A-3001", "C-31", "31", "217-555-0131", "217-555-0132");
        own["protocol_variant"] = "ni1-ewsd";
        take(own);
        apply(conversion);
        QCOMPARE(order("A-3001").variant, "ni1-ewsd");
        isWhole();
        // What stayed behind can be converted by its name.
        OfficeChange rest = conversion;
        rest.from = "ni1-ewsd";
        const BulkReport report = apply(rest);
        QVERIFY(!report.officeToo);
        QCOMPARE(order("A-3001").variant, "custom-5ess-multipoint");
        isWhole();
        // The last one first.
        QVERIFY_RESULT(undoBulk(*m_records));
        QCOMPARE(order("A-3001").variant, "ni1-ewsd");
        QVERIFY_RESULT(undoBulk(*m_records));
        QCOMPARE(order("A-0999").variant, "ni2");
        const auto none = undoBulk(*m_records);
        QCOMPARE(none.error().code, ErrorCode::Refused);
        isWhole();
    }

    void numbersThatAreTakenStay()
    {
        take(otherBriFields("A-3001", "C-31", "31", "447-555-0143", "309-555-0132"));
        const QStringList before = derived();
        const BulkReport report = apply(splitWithSpids);
        QCOMPARE(keptOf(report),
                 (QStringList{"C-77 dn_1 217-555-0143", "C-77 spid_1 21755501430101"}));
        QVERIFY(report.cannot.front().value.because.english().contains("C-31"));
        QCOMPARE(order("A-1001").terminals[0].dn, "217-555-0143");
        QCOMPARE(order("A-1001").terminals[1].dn, "447-555-0144");
        undone(before);
    }

    /// What an open order has shown of its numbers is to be shown again, and counts again when the
    /// change is taken back.
    void evidenceOfOpenOrders()
    {
        recordOther();
        QCOMPARE(outcome("A-0999"), "accepted");
        const QStringList before = derived();
        apply(split);
        QCOMPARE(outcome("A-0999"), "incomplete");
        undone(before);
        QCOMPARE(outcome("A-0999"), "accepted");
    }
    /// An open change order is judged against the line that works.
    void ordersBesideTheWorkingOne()
    {
        OrderFields change = briFields();
        change["order_number"] = "A-4001";
        change["order_type"] = "change";
        change["dn_2"] = "217-555-0149";
        change["spid_2"] = "21755501490101";
        take(change);
        OrderFields other = change;
        other["order_number"] = "A-4002";
        other["protocol_variant"] = "ni1-ewsd";
        take(other);
        QVERIFY_RESULT(openTrouble(*m_records, {"C-77", "no dial tone in the evening"}));
        const QStringList before = derived();
        const BulkReport report = apply(splitWithSpids);
        QCOMPARE(report.circuits, 3);
        QCOMPARE(order("C-77-R1").terminals[0].dn, "447-555-0143");
        QCOMPARE(order("A-4001").terminals[1].spid, "44755501490101");
        undone(before);
        apply({OfficeChangeKind::Variant, "NORTH", {}, "ni1-ewsd"});
        QCOMPARE(order("A-4001").variant, "ni1-ewsd");
        undone(before);
    }

    void heldOrdersStayHeldBehindTheirHolder()
    {
        // Older than its holder is changed, and wants the number of A-1001.
        OrderFields wants = otherBriFields("A-3001", "C-31", "31", "217-555-0143", "217-555-0132");
        take(wants);
        QVERIFY(OrderStore(m_records->database()).get("A-3001")->held);
        const QStringList before = derived();
        apply(split);
        QCOMPARE(order("A-3001").terminals[0].dn, "447-555-0143");
        QVERIFY(OrderStore(m_records->database()).get("A-3001")->held);
        QVERIFY(held("C-77").contains("dn +14475550143 working"));
        undone(before);
    }
    void anOrderElsewhereThatWaitsForANumber()
    {
        m_records->actAs("S1");
        takeInSouth(otherBriFields("A-3001", "C-31", "31", "217-555-0143", "217-555-0132"));
        QVERIFY(OrderStore(m_records->database()).get("A-3001")->held);
        const QStringList before = derived();
        apply(split);
        QVERIFY(!OrderStore(m_records->database()).get("A-3001")->held);
        undone(before);
        // Once something was done with it the number is its own.
        apply(split);
        QVERIFY_RESULT(changePlans(*m_records, {{"A-3001", {{"remarks", "ring twice"}}}}));
        const auto refused = undoBulk(*m_records);
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QVERIFY2(refused.error().message.contains("Circuit C-77: 217-555-0143 is held by circuit "
                                                  "C-31 now."),
                 qPrintable(refused.error().message));
        isWhole();
    }

    /// It waited for a number that the change frees, and for one that it does not.
    void anOrderElsewhereThatGoesOnWaiting()
    {
        takeInSouth(otherBriFields("A-3002", "C-32", "32", "309-555-0131", "309-555-0132"));
        takeInSouth(otherBriFields("A-3001", "C-31", "31", "217-555-0143", "309-555-0132"));
        QVERIFY2(reason("A-3001").contains("C-77") && reason("A-3001").contains("C-32"),
                 qPrintable(reason("A-3001")));
        const QStringList before = derived();
        apply(split);
        QVERIFY(OrderStore(m_records->database()).get("A-3001")->held);
        QVERIFY2(!reason("A-3001").contains("C-77") && reason("A-3001").contains("C-32"),
                 qPrintable(reason("A-3001")));
        QCOMPARE(stillHeld("A-3001"), 1);
        undone(before);
        QCOMPARE(stillHeld("A-3001"), 2);
    }
    /// That it waits for something more by now is nobody's work on it.
    void heldOrdersThatWaitForMoreSinceHinderNothing()
    {
        take(otherBriFields("A-3001", "C-31", "31", "217-555-0143", "309-555-0132"));
        apply(split);
        takeInSouth(otherBriFields("A-3002", "C-32", "32", "309-555-0131", "309-555-0132"));
        QCOMPARE(stillHeld("A-3001"), 1);
        QVERIFY2(reason("A-3001").contains("C-32"), qPrintable(reason("A-3001")));
        QVERIFY_RESULT(undoBulk(*m_records));
        QCOMPARE(order("A-3001").terminals[0].dn, "217-555-0143");
        isWhole();
    }

    void notTakenBackOnceSomethingWasBuiltOnIt_data()
    {
        QTest::addColumn<QString>("what");
        for (const char *what : {"changed", "recorded", "trouble", "cancelled"})
            QTest::newRow(what) << what;
    }
    void notTakenBackOnceSomethingWasBuiltOnIt()
    {
        QFETCH(QString, what);
        apply(split);
        QString circuit = "C-66";
        if (what == "changed") {
            QVERIFY_RESULT(changePlans(*m_records, {{"A-0999", {{"remarks", "ring twice"}}}}));
        } else if (what == "recorded") {
            QVERIFY_RESULT(recordFile(
                *m_records,
                recordBytes(otherFields(), {fact(90, "note", 60, {{"text", "gate code told"}})}),
                "n.json"));
        } else if (what == "trouble") {
            QVERIFY_RESULT(openTrouble(*m_records, {"C-77", "no dial tone in the evening"}));
            circuit = "C-77";
        } else {
            QVERIFY_RESULT(cancelOrder(*m_records, "A-0999", "not wanted any more"));
        }
        const QStringList before = derived();
        const auto refused = undoBulk(*m_records);
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QVERIFY2(refused.error().message.contains("Circuit " + circuit),
                 qPrintable(refused.error().message));
        QVERIFY(refused.error().message.endsWith("Nothing was taken back."));
        QCOMPARE(derived(), before);
        isWhole();
    }
    void notTakenBackOnceAnOrderIsOfTheNewCode()
    {
        apply(split);
        take(otherBriFields("A-3001", "C-31", "31", "447-555-0131", "309-555-0132"));
        // A further order on a circuit of the change, with what it has now.
        take(otherBriFields("A-3002", "C-66", "9", "447-555-0181", "447-555-0182"));
        const QStringList before = derived();
        const auto refused = undoBulk(*m_records);
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QCOMPARE(refused.error().message,
                 "Circuit C-66: order taken since then (order A-3002). Circuit C-31: order A-3001 "
                 "was taken in since then, with 447-555-0131. Nothing was taken back.");
        QCOMPARE(derived(), before);
    }
    void notTakenBackWhileAnOrderHasTheNewVariant()
    {
        OrderFields own = otherBriFields("A-3001", "C-31", "31", "309-555-0131", "309-555-0132");
        own.remove("protocol_variant"); // it gets the office's
        own["spid_1"] = "0155501310";
        own["spid_2"] = "0155501320";
        OrderFields other = otherBriFields("A-3002", "C-32", "32", "309-555-0133", "309-555-0134");
        other["protocol_variant"] = "ni2";
        apply(conversion);
        take(own);
        take(other);
        QCOMPARE(order("A-3001").variant, "custom-5ess-multipoint");
        const auto refused = undoBulk(*m_records);
        QVERIFY(!refused);
        QCOMPARE(refused.error().message,
                 "Circuit C-31: order A-3001 was taken in since then, with "
                 "custom-5ess-multipoint. Nothing was taken back.");
        // Of what is not wanted any more nothing is left to be built on.
        QVERIFY_RESULT(cancelOrder(*m_records, "A-3001", "not wanted any more"));
        QVERIFY_RESULT(undoBulk(*m_records));
        isWhole();
    }
    void whatElseHappensHindersNothing()
    {
        apply(split);
        take(otherBriFields("A-3001", "C-31", "31", "309-555-0131", "309-555-0132"));
        m_records->actAs("K7"); // refused, and told so in the circuit's history
        QVERIFY(!cancelOrder(*m_records, "A-0999", "not wanted any more"));
        QVERIFY_RESULT(decideOrder(*m_records, "A-0999")); // anybody may ask
        m_records->actAs("S1");
        QVERIFY_RESULT(undoBulk(*m_records));
        isWhole();
    }

    void eachCircuitTellsIt()
    {
        const BulkReport report = apply(splitWithSpids);
        for (const char *number : {"A-1001", "A-0999", "A-2001"}) {
            const Event event = orderHistory(*m_records, number)->back();
            QCOMPARE(event.kind, "bulk_changed");
            QCOMPARE(event.by, "S1");
            QCOMPARE(event.detail["bulk"].toString(), report.id);
        }
        const Event event = orderHistory(*m_records, "A-2001")->back();
        QCOMPARE(event.detail["changes"].toObject(),
                 (QJsonObject{{"dn_1", QJsonArray{"217-555-0150", "447-555-0150"}}}));
        const auto last = lastBulk(*m_records);
        QCOMPARE((*last)->id, report.id);
        QCOMPARE((*last)->circuits, 3);
        QVERIFY((*last)->sentence().endsWith(": 3 circuits"));
        BulkDone one = **last;
        one.circuits = 1;
        QVERIFY(one.sentence().endsWith(": 1 circuit"));
        QVERIFY(!undoBulk(*m_records, "another"));
        const auto life = showCircuit(*m_records, "C-77");
        QVERIFY(life->life.back().text.contains("447-555-0143"));
    }

    void onlySupervisors()
    {
        m_records->actAs("D4");
        QVERIFY_RESULT(previewBulk(*m_records, split)); // to look is anybody's
        const QStringList before = derived();
        QCOMPARE(applyBulk(*m_records, split).error().code, ErrorCode::Refused);
        QCOMPARE(undoBulk(*m_records).error().code, ErrorCode::Refused);
        QCOMPARE(derived(), before);
    }

    void stopped()
    {
        const QStringList before = derived();
        int asked = 0;
        const auto stop = [&asked](qint64, qint64) { return ++asked < 1; };
        const auto refused = applyBulk(*m_records, split, stop);
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QCOMPARE(derived(), before);
        apply(split);
        QCOMPARE(undoBulk(*m_records, {}, stop).error().code, ErrorCode::Refused);
        isWhole();
        undone(before);
    }

    void nothingToChange()
    {
        const auto report =
            applyBulk(*m_records, {OfficeChangeKind::AreaCode, "NORTH", "309", "447"});
        QVERIFY_RESULT(report);
        QVERIFY(report->applied && report->changes.empty() && report->cannot.empty());
        QCOMPARE(report->certificates, 0);
        QVERIFY(!lastBulk(*m_records)->has_value());
    }
    void badChanges()
    {
        const auto codeOf = [this](const OfficeChange &change) {
            return previewBulk(*m_records, change).error().code;
        };
        QCOMPARE(codeOf({OfficeChangeKind::AreaCode, "WEST", "217", "447"}), ErrorCode::NotFound);
        QCOMPARE(codeOf({OfficeChangeKind::AreaCode, "NORTH", "217", "911"}), ErrorCode::BadInput);
        QCOMPARE(codeOf({OfficeChangeKind::Variant, "NORTH", {}, "ni2"}), ErrorCode::BadInput);
    }

    void cardsOfAllCustomers()
    {
        QVERIFY(!cardsOfLastBulk(*m_records, Paper::A4));
        QVERIFY_RESULT(assignOrders(*m_records, {{"A-0999", "A-2001"}, "K7"}));
        apply(splitWithSpids);
        const auto cards = cardsOfLastBulk(*m_records, Paper::A4);
        QVERIFY_RESULT(cards);
        QCOMPARE(cards->papers, 3);
        const QString text = cards->sheet.texts.join(' ');
        QVERIFY2(text.contains("key in 4475550143"), qPrintable(text));
        QVERIFY(!text.contains("2175550143"));
        QVERIFY(!text.contains("beside certificate")); // that names the old numbers
        const QString folder = m_folder.filePath("cards");
        QVERIFY_RESULT(cardsOfLastBulk(*m_records, Paper::A4, folder));
        QCOMPARE(QDir(folder).entryList(QDir::Files),
                 (QStringList{"card-A-0999.pdf", "card-A-1001.pdf", "card-A-2001.pdf"}));
    }
    /// A certificate that was not issued before would name the old numbers.
    void noNewCertificateOfTheOldNumbers()
    {
        recordOther();
        QVERIFY_RESULT(completeOrder(*m_records, "A-0999"));
        apply(split);
        const auto refused = issueCertificate(*m_records, {"A-0999"});
        QVERIFY(!refused);
        QVERIFY2(refused.error().message.contains("would say what holds no longer"),
                 qPrintable(refused.error().message));
        QCOMPARE(previewCertificate(*m_records, "A-0999", {}).error().message,
                 refused.error().message);
        // A set names it before anything is issued, and goes on with those that may have one.
        const auto lines = linesOfSet(*m_records, "A-0999");
        QVERIFY_RESULT(lines);
        QVERIFY(!lines->front().mayHave);
        QCOMPARE(lines->front().why, refused.error().message);
        QStringList files;
        SetRequest looking{"A-0999"};
        looking.mayDeliver = [&files](const SetPapers &papers) -> Result<void> {
            for (const SetFile &file : papers.files)
                files << file.name;
            return failure(ErrorCode::Refused, "only looked at");
        };
        QCOMPARE(issueCertificateSet(*m_records, looking).error().message, "only looked at");
        QCOMPARE(files, (QStringList{"certificate-A-1001.pdf", "cover-A-0999.pdf"}));
        QVERIFY_RESULT(undoBulk(*m_records));
        QVERIFY_RESULT(issueCertificate(*m_records, {"A-0999"}));
    }
};

QTEST_MAIN(BulkChangeTest)
#include "BulkChangeTest.moc"
