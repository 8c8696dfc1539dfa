#include "db/AssignmentStore.h"

#include "db/SqliteConnection.h"
#include "tests/support/StoredJobs.h"

#include <rapidcheck.h>

using namespace loopwright;
using jobs::changed;
using jobs::claim;

namespace {

/// Another circuit with other identifiers, of which a test takes some back.
ServiceOrder other(const OrderFields &changes)
{
    return changed(jobs::otherBriFields("A-2", "C-88", "17-300", "217-555-0161", "217-555-0162"),
                   changes);
}

QStringList fieldsOf(const std::vector<Conflict> &conflicts)
{
    QStringList fields;
    for (const Conflict &conflict : conflicts)
        fields << conflict.field;
    return fields;
}

} // namespace

class AssignmentStoreTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();
    const ServiceOrder m_order = jobs::order(jobs::briFields());

    void complete(const ServiceOrder &order)
    {
        QVERIFY_RESULT(jobs::inTransaction(
            m_database, circuitSubject(order.circuit), [&](Transaction &t) -> Result<void> {
                LOOPWRIGHT_TRY(OrderStore::setStatus(t, order.number, OrderStatus::Completed));
                return AssignmentStore::startWorking(t, order.number);
            }));
    }
    QStringList states(const QString &circuit)
    {
        QStringList list;
        const auto assignments = AssignmentStore(m_database).ofCircuit(circuit);
        for (const Assignment &assignment : *assignments)
            if (assignment.kind == ClaimKind::Dn)
                list << assignment.value.right(2) + ' ' + assignment.order + ' ' +
                            toText(assignment.state);
        return list;
    }

private slots:
    void init()
    {
        m_database = recordsInMemory();
        QVERIFY_RESULT(jobs::addOffice(m_database));
        QVERIFY_RESULT(jobs::addOffice(m_database, "SOUTH"));
        QVERIFY_RESULT(jobs::addOrder(m_database, m_order));
        QCOMPARE(claim(m_database, m_order), std::vector<Conflict>());
    }
    void conflicts_data()
    {
        QTest::addColumn<OrderFields>("changes");
        QTest::addColumn<QStringList>("fields");
        QTest::newRow("nothing in common") << OrderFields() << QStringList();
        QTest::newRow("dn") << OrderFields{{"dn_1", "2175550144"}} << QStringList{"dn_1"};
        QTest::newRow("dn in another office")
            << OrderFields{{"dn_2", "2175550143"}, {"office", "SOUTH"}} << QStringList{"dn_2"};
        QTest::newRow("spid") << OrderFields{{"spid_2", "217 555 0143 01 01"}}
                              << QStringList{"spid_2"};
        QTest::newRow("spid in another office")
            << OrderFields{{"spid_2", "21755501430101"}, {"office", "SOUTH"}} << QStringList();
        QTest::newRow("pair") << OrderFields{{"pair", "17 - 204"}} << QStringList{"pair"};
        QTest::newRow("pair in another office")
            << OrderFields{{"pair", "17-204"}, {"office", "SOUTH"}} << QStringList();
        QTest::newRow("three") << OrderFields{{"pair", "17-204"},
                                              {"dn_1", "217-555-0143"},
                                              {"dn_2", "217-555-0144"}}
                               << QStringList{"pair", "dn_1", "dn_2"};
        QTest::newRow("disconnect")
            << OrderFields{{"pair", "17-204"}, {"order_type", "disconnect"}} << QStringList();
    }
    void conflicts()
    {
        QFETCH(OrderFields, changes);
        QFETCH(QStringList, fields);
        const ServiceOrder order = other(changes);
        QVERIFY_RESULT(jobs::addOrder(m_database, order));
        const auto before = AssignmentStore(m_database).conflictsOf(order);
        QVERIFY_RESULT(before);
        QCOMPARE(fieldsOf(*before), fields);
        QCOMPARE(claim(m_database, order), *before);
        for (const Conflict &conflict : *before)
            QCOMPARE(conflict.circuit, "C-77");
        // With a conflict nothing is planned.
        const bool plans = fields.isEmpty() && order.type != OrderType::Disconnect;
        QCOMPARE(AssignmentStore(m_database).ofOrder("A-2")->size(), plans ? 5u : 0u);
    }
    void aChangeOrderHoldsTheOldAndTheNew()
    {
        complete(m_order);
        const ServiceOrder change = changed(jobs::briFields(), {{"order_number", "A-3"},
                                                                {"order_type", "change"},
                                                                {"dn_2", "217-555-0145"},
                                                                {"spid_2", "21755501450101"}});
        QVERIFY_RESULT(jobs::addOrder(m_database, change));
        QCOMPARE(claim(m_database, change), std::vector<Conflict>());
        QCOMPARE(states("C-77"), (QStringList{"43 A-1001 working", "44 A-1001 working",
                                              "43 A-3 planned", "45 A-3 planned"}));
        const auto holder = AssignmentStore(m_database).holderOf(ClaimKind::Dn, {}, "+12175550143");
        QCOMPARE((*holder)->order, "A-1001");
        // The old number is not free before the change is completed.
        const ServiceOrder wanting = other({{"dn_1", "217-555-0144"}});
        QVERIFY_RESULT(jobs::addOrder(m_database, wanting));
        QCOMPARE(fieldsOf(claim(m_database, wanting)), QStringList{"dn_1"});
        complete(change);
        QCOMPARE(states("C-77"), (QStringList{"43 A-1001 released", "44 A-1001 released",
                                              "43 A-3 working", "45 A-3 working"}));
        QCOMPARE(claim(m_database, wanting), std::vector<Conflict>());
    }
    void aCancelledOrderReleasesWhatItPlanned()
    {
        QVERIFY_RESULT(jobs::inTransaction(m_database, "circuit:C-77", [&](Transaction &t) {
            return AssignmentStore::releasePlanned(t, m_order.number);
        }));
        QCOMPARE(states("C-77"), (QStringList{"43 A-1001 released", "44 A-1001 released"}));
        QVERIFY(!*AssignmentStore(m_database).holderOf(ClaimKind::Pair, "NORTH", "17-204"));
    }
    void aDisconnectReleasesEverything()
    {
        complete(m_order);
        const ServiceOrder end =
            changed(jobs::briFields(), {{"order_number", "A-4"}, {"order_type", "disconnect"}});
        QVERIFY_RESULT(jobs::addOrder(m_database, end));
        QCOMPARE(claim(m_database, end), std::vector<Conflict>());
        complete(end);
        QCOMPARE(*m_database.connection().number(
                     "SELECT count(*) FROM assignment WHERE state <> 'released'"),
                 0);
    }
    void completingTwiceReleasesNothing()
    {
        complete(m_order);
        complete(m_order);
        QCOMPARE(states("C-77"), (QStringList{"43 A-1001 working", "44 A-1001 working"}));
    }
    void claimingAgainKeepsWhatStays()
    {
        const ServiceOrder mended =
            changed(jobs::briFields(), {{"dn_2", "217-555-0149"}, {"spid_2", "21755501490101"}});
        QVERIFY_RESULT(jobs::addOrder(m_database, mended));
        QCOMPARE(claim(m_database, mended), std::vector<Conflict>());
        QCOMPARE(states("C-77"),
                 (QStringList{"43 A-1001 planned", "44 A-1001 released", "49 A-1001 planned"}));
        QCOMPARE(claim(m_database, mended), std::vector<Conflict>());
        QCOMPARE(states("C-77").size(), 3);
    }
    void anOrderThatNamesAnotherCircuitTakesItsValuesAlong()
    {
        const ServiceOrder moved = changed(jobs::briFields(), {{"circuit_number", "C-78"}});
        QCOMPARE(*AssignmentStore(m_database).conflictsOf(moved), std::vector<Conflict>());
        QVERIFY_RESULT(jobs::addOrder(m_database, moved));
        QCOMPARE(claim(m_database, moved), std::vector<Conflict>());
        QCOMPARE(states("C-77"), (QStringList{"43 A-1001 released", "44 A-1001 released"}));
        QCOMPARE(states("C-78"), (QStringList{"43 A-1001 planned", "44 A-1001 planned"}));
        // What another order of the old circuit holds stays there.
        const ServiceOrder second =
            changed(jobs::briFields(), {{"order_number", "A-5"}, {"circuit_number", "C-78"}});
        QVERIFY_RESULT(jobs::addOrder(m_database, second));
        QCOMPARE(claim(m_database, second), std::vector<Conflict>());
        QCOMPARE(AssignmentStore(m_database).conflictsOf(m_order)->size(), 5u);
    }
    void anOrderThatIsNotThereClaimsNothing()
    {
        auto transaction = Transaction::begin(m_database);
        QVERIFY_RESULT(transaction);
        const auto claimed = AssignmentStore::claim(*transaction, other({}));
        QVERIFY(!claimed);
        QCOMPARE(claimed.error().code, ErrorCode::NotFound);
    }
    void theTableItselfRefusesASecondCircuit()
    {
        QVERIFY_RESULT(jobs::addOrder(m_database, other({})));
        const auto done =
            editPast(m_database,
                     "INSERT INTO assignment (kind, scope, value, circuit, service_order, state)"
                     " SELECT 'dn', '', '+12175550143', circuit, id, 'planned' FROM service_order"
                     " WHERE order_number = 'A-2'");
        QVERIFY(!done);
        QCOMPARE(done.error().code, ErrorCode::BadInput);
        QVERIFY(done.error().message.contains(
            m_database.isFile() ? "another circuit holds this value" : "assignment_one_circuit"));
        QVERIFY(!editPast(m_database, "UPDATE assignment SET circuit = 2"));
        QVERIFY_RESULT(editPast(m_database, "UPDATE assignment SET state = 'released'"));
        QVERIFY(!editPast(m_database, "UPDATE assignment SET state = 'working'"));
    }
    void findsWhatTwoCircuitsWant()
    {
        QCOMPARE(*AssignmentStore(m_database).doubles(), std::vector<ValueUse>());
        const ServiceOrder wanting =
            other({{"dn_2", "2175550143"}, {"spid_1", "21755501440101"}, {"pair", "17-204"}});
        QVERIFY_RESULT(jobs::addOrder(m_database, wanting, true));
        const QStringList circuits{"C-77", "C-88"}, orders{"A-1001", "A-2"};
        const std::vector<ValueUse> expected{
            {ClaimKind::Dn, "", "+12175550143", circuits, orders},
            {ClaimKind::Pair, "NORTH", "17-204", circuits, orders},
            {ClaimKind::Spid, "NORTH", "21755501440101", circuits, orders}};
        QCOMPARE(*AssignmentStore(m_database).doubles(), expected);
        QVERIFY_RESULT(jobs::setStatus(m_database, wanting, OrderStatus::Cancelled));
        QCOMPARE(*AssignmentStore(m_database).doubles(), std::vector<ValueUse>());
    }

    void findsWhatTheAssignmentsLack()
    {
        QCOMPARE(*AssignmentStore(m_database).unassigned(), std::vector<ValueUse>());
        const ServiceOrder waiting = other({{"pair", "17-204"}});
        QVERIFY_RESULT(jobs::addOrder(m_database, waiting, true)); // held: has nothing yet
        QCOMPARE(*AssignmentStore(m_database).unassigned(), std::vector<ValueUse>());
        complete(m_order);
        QCOMPARE(*AssignmentStore(m_database).unassigned(), std::vector<ValueUse>());
        QVERIFY_RESULT(editPast(
            m_database, "UPDATE assignment SET state = 'released' WHERE value = '+12175550143'"));
        QVERIFY_RESULT(editPast(
            m_database, "UPDATE order_terminal SET spid = '21755501990101' WHERE number = 2"));
        const std::vector<ValueUse> expected{
            {ClaimKind::Dn, "", "+12175550143", {"C-77"}, {"A-1001"}},
            {ClaimKind::Spid, "NORTH", "21755501990101", {"C-77"}, {"A-1001"}}};
        QCOMPARE(*AssignmentStore(m_database).unassigned(), expected);
    }

    // Whatever orders are taken in, completed and cancelled over a few circuits and numbers, no
    // value is ever held by two circuits.
    void noValueIsEverHeldByTwoCircuits()
    {
        QVERIFY(rc::check("no value is held by two circuits", [this] {
            init();
            const int steps = *rc::gen::inRange(1, 25);
            QSet<QString> completed;
            for (int step = 0; step < steps; ++step) {
                const int circuit = *rc::gen::inRange(1, 4);
                const QString dn = QString("217-555-015%1").arg(*rc::gen::inRange(0, 4));
                const QString type =
                    *rc::gen::elementOf(std::vector<QString>{"new", "change", "disconnect"});
                // Now and then an order that is there is changed, its circuit too.
                const QString number = QString("B-%1").arg(*rc::gen::inRange(0, step + 1));
                if (completed.contains(number))
                    continue;
                const ServiceOrder order =
                    other({{"order_number", number},
                           {"order_type", type},
                           {"circuit_number", QString("C-%1").arg(circuit)},
                           {"pair", QString("9-%1").arg(*rc::gen::inRange(0, 3))},
                           {"dn_1", dn},
                           {"spid_1", QString(dn).remove('-') + "0101"}});
                RC_ASSERT(jobs::addOrder(m_database, order).has_value());
                const bool clean = claim(m_database, order).empty();
                if (clean && *rc::gen::arbitrary<bool>()) {
                    complete(order);
                    completed.insert(number);
                }
                RC_ASSERT(*m_database.connection().number(
                              "SELECT count(*) FROM (SELECT 1 FROM assignment"
                              " WHERE state <> 'released' GROUP BY kind, scope, value"
                              " HAVING count(DISTINCT circuit) > 1) AS doubles") == 0);
            }
        }));
    }
};

QTEST_GUILESS_MAIN(AssignmentStoreTest)
#include "AssignmentStoreTest.moc"
