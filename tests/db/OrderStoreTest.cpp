#include "db/OrderStore.h"

#include "db/Connection.h"
#include "tests/support/StoredJobs.h"

using namespace loopwright;
using jobs::changed;

class OrderStoreTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();
    const ServiceOrder m_order = jobs::order(jobs::briFields());

private slots:
    void init()
    {
        m_database = recordsInMemory();
        QVERIFY_RESULT(jobs::addOffice(m_database));
    }
    void findsWhatWasPut()
    {
        QVERIFY_RESULT(jobs::addOrder(m_database, m_order, true));
        const OrderStore store(m_database);
        const auto found = store.find(m_order.number);
        QVERIFY_RESULT(found);
        QVERIFY(*found);
        QCOMPARE((*found)->order, m_order);
        QCOMPARE((*found)->status, OrderStatus::Open);
        QVERIFY((*found)->held);
        QCOMPARE((*found)->uuid.size(), 36);
        QVERIFY(!*store.find("A-9"));
        QCOMPARE(*store.count(), 1);
        QCOMPARE(*store.subjectOf(m_order.number), "circuit:C-77");
        QCOMPARE(store.subjectOf("A-9").error().code, ErrorCode::NotFound);
    }
    void replacesAnOrderAndKeepsItsName()
    {
        QVERIFY_RESULT(jobs::addOrder(m_database, m_order, true));
        const QString uuid = (*OrderStore(m_database).find(m_order.number))->uuid;
        const ServiceOrder later = changed(
            jobs::briFields(),
            {{"dn_2", ""}, {"spid_2", ""}, {"tei_2", ""}, {"pair", "18-1"}, {"dn_2_services", ""}});
        QVERIFY_RESULT(jobs::addOrder(m_database, later));
        const auto found = OrderStore(m_database).find(m_order.number);
        QCOMPARE((*found)->order, later);
        QCOMPARE((*found)->uuid, uuid);
        QVERIFY(!(*found)->held);
        QCOMPARE(*m_database.connection().number("SELECT count(*) FROM order_terminal"),
                 qint64(later.terminals.size()));
        QCOMPARE(*m_database.connection().text("SELECT dn_key FROM order_terminal"),
                 "+12175550143");
    }
    void anUnknownOfficeIsRefused()
    {
        const auto done = jobs::addOrder(m_database, changed(jobs::briFields(), {{"office", "X"}}));
        QVERIFY(!done);
        QCOMPARE(done.error().code, ErrorCode::BadInput);
        QCOMPARE(*OrderStore(m_database).count(), 0);
    }
    void theLastCompletedOrderIsTheWorkingOne()
    {
        const OrderStore store(m_database);
        const ServiceOrder change =
            changed(jobs::briFields(), {{"order_number", "A-2"}, {"order_type", "change"}});
        const ServiceOrder end =
            changed(jobs::briFields(), {{"order_number", "A-3"}, {"order_type", "disconnect"}});
        for (const ServiceOrder &order : {m_order, change, end})
            QVERIFY_RESULT(jobs::addOrder(m_database, order));
        QVERIFY(!*store.workingOn("C-77"));
        QVERIFY_RESULT(jobs::setStatus(m_database, change, OrderStatus::Completed));
        QCOMPARE((*store.workingOn("C-77"))->order, change);
        QVERIFY_RESULT(jobs::setStatus(m_database, m_order, OrderStatus::Completed));
        QCOMPARE((*store.workingOn("C-77"))->order, m_order);
        QVERIFY_RESULT(jobs::setStatus(m_database, end, OrderStatus::Completed));
        QVERIFY(!*store.workingOn("C-77"));
        // Not the order of taking in, but that of completion tells what worked before.
        QVERIFY(!*store.workedBefore("A-2"));
        QCOMPARE((*store.workedBefore(m_order.number))->order, change);
        QCOMPARE((*store.workedBefore("A-3"))->order, m_order);
        QCOMPARE(store.ofCircuit("C-77")->size(), 3u);
        QCOMPARE(store.ofCircuit("C-77")->front().order, m_order);
    }
    void statusChanges()
    {
        QVERIFY_RESULT(jobs::addOrder(m_database, m_order, true));
        QVERIFY_RESULT(jobs::setStatus(m_database, m_order, OrderStatus::Cancelled));
        const auto found = OrderStore(m_database).find(m_order.number);
        QCOMPARE((*found)->status, OrderStatus::Cancelled);
        QVERIFY(!(*found)->held);
        // Put again it stays cancelled.
        QVERIFY_RESULT(jobs::addOrder(m_database, m_order));
        QCOMPARE((*OrderStore(m_database).find(m_order.number))->status, OrderStatus::Cancelled);
        const auto unknown =
            jobs::setStatus(m_database, changed(jobs::briFields(), {{"order_number", "A-9"}}),
                            OrderStatus::Cancelled);
        QCOMPARE(unknown.error().code, ErrorCode::NotFound);
    }
    void visitsEachOpenOrder()
    {
        for (const char *number : {"A-1", "A-2", "A-3", "A-4"})
            QVERIFY_RESULT(
                jobs::addOrder(m_database, changed(jobs::briFields(), {{"order_number", number}})));
        QVERIFY_RESULT(jobs::setStatus(m_database,
                                       changed(jobs::briFields(), {{"order_number", "A-2"}}),
                                       OrderStatus::Cancelled));
        QStringList numbers;
        QVERIFY_RESULT(OrderStore(m_database).eachOpen([&](const StoredOrder &stored) {
            numbers << stored.order.number;
            return Result<void>();
        }));
        QCOMPARE(numbers, (QStringList{"A-1", "A-3", "A-4"}));
        QCOMPARE(*OrderStore(m_database).countOpen(), 3);
        QCOMPARE(*OrderStore(m_database).count(), 4);
        QVERIFY(!OrderStore(m_database).eachOpen([](const StoredOrder &) -> Result<void> {
            return failure(ErrorCode::Refused, "enough");
        }));
    }
    void ordersAndCircuitsAreNotRemoved()
    {
        QVERIFY_RESULT(jobs::addOrder(m_database, m_order));
        QVERIFY(!m_database.connection().run("DELETE FROM service_order", "test"));
        QVERIFY(!m_database.connection().run("DELETE FROM circuit", "test"));
    }
};

QTEST_GUILESS_MAIN(OrderStoreTest)
#include "OrderStoreTest.moc"
