#include "app/actions/Audit.h"
#include "app/actions/Board.h"
#include "app/actions/Import.h"
#include "app/actions/Orders.h"
#include "app/actions/Register.h"
#include "db/OrderStore.h"
#include "tests/support/Office.h"

#include <QTest>

using namespace loopwright;

// Conflicts of numbers, SPIDs and pairs while orders come in from files.
class ImportOrdersTest : public QObject
{
    Q_OBJECT
    std::unique_ptr<Records> m_records;

    static OrderFields order(const QString &number, const OrderFields &changes = {})
    {
        const QString n = number.right(1);
        OrderFields fields = jobs::otherBriFields(number, "C-" + n, "17-20" + n, "217-555-015" + n,
                                                  "217-555-016" + n);
        for (auto it = changes.begin(); it != changes.end(); ++it)
            fields[it.key()] = it.value();
        return fields;
    }
    ImportReport import(const QList<OrderFields> &orders, bool update = false)
    {
        ImportOptions options{"orders.csv"};
        options.update = update;
        const auto report = importOrders(*m_records, jobs::csv(orders), options);
        if (!report)
            qFatal("%s", qPrintable(report.error().text()));
        return *report;
    }
    QStringList held()
    {
        QStringList numbers;
        const auto orders = OrderStore(m_records->database()).held();
        for (const StoredOrder &stored : *orders)
            numbers << stored.order.number;
        return numbers;
    }
    /// On the board.
    QString reasonOf(const QString &number)
    {
        const auto rows = boardRows(*m_records, {});
        const auto row = std::ranges::find(*rows, number, &BoardRow::order);
        return row == rows->end() ? QString() : row->reason;
    }
    bool auditIsClean() { return auditIdentifiers(*m_records)->empty(); }

private slots:
    void init() { m_records = jobs::office(); }

    void twoOrdersOfOneFileChangePlaces()
    {
        QVERIFY(import({order("A-1"), order("A-2")}).clean());
        const ImportReport report =
            import({order("A-1", {{"pair", "17-202"}}), order("A-2", {{"pair", "17-201"}})}, true);
        QCOMPARE(held(), QStringList());
        QVERIFY(auditIsClean());
        QCOMPARE(report.held, 0); // what the board shows
        QCOMPARE(report.accepted, 2);
        QCOMPARE(report.findings.size(), 1u);
        QCOMPARE(report.findings[0].severity, Severity::Note);
        QCOMPARE(report.findings[0].row, 2);
    }
    void whatNoRowReleasesStaysHeld()
    {
        QVERIFY(import({order("A-1"), order("A-2"), order("A-3")}).clean());
        const ImportReport report =
            import({order("A-1", {{"pair", "17-202"}}), order("A-3", {{"pair", "17-209"}})}, true);
        QCOMPARE(held(), QStringList{"A-1"});
        QCOMPARE(report.held, 1);
        QCOMPARE(report.findings[0].severity, Severity::Error);
    }
    void aHeldOrderSaysWhatItWaitsForNow()
    {
        const auto waitsFor = [this](const QString &pairOn) {
            const QString reason = reasonOf("A-2");
            return reason.contains("Number 217-555-0151 is in use on circuit C-1.") &&
                   reason.contains("Pair 17-209 is in use on circuit " + pairOn) ==
                       !pairOn.isEmpty() &&
                   auditDerived(*m_records)->empty();
        };
        QVERIFY(import({order("A-1")}).clean());
        import({order("A-2", {{"pair", "17-209"},
                              {"dn_1", "217-555-0151"},
                              { "spid_1",
                                "21755501510101" }})});
        QCOMPARE(held(), QStringList{"A-2"});
        QVERIFY2(waitsFor({}), qPrintable(reasonOf("A-2")));
        QVERIFY(import({order("A-3", {{"pair", "17-209"}})}).clean());
        QVERIFY2(waitsFor("C-3."), qPrintable(reasonOf("A-2")));
        QVERIFY(cancelOrder(*m_records, "A-3", "not wanted"));
        QVERIFY2(waitsFor({}), qPrintable(reasonOf("A-2")));
        QVERIFY(putOrder(*m_records, order("A-4", {{"pair", "17-209"}}), false));
        QVERIFY2(waitsFor("C-4."), qPrintable(reasonOf("A-2")));
        QCOMPARE(held(), QStringList{"A-2"});
    }
    void anOrderMayNameAnotherCircuit()
    {
        QVERIFY(import({order("A-1")}).clean());
        QVERIFY(import({order("A-1", {{"circuit_number", "C-9"}})}, true).clean());
        QCOMPARE(held(), QStringList());
        // The circuit that it was taken from has nothing any more.
        QVERIFY(!import({order("A-2", {{"circuit_number", "C-1"}, {"pair", "17-201"}})}).clean());
        QVERIFY(!auditIsClean());
    }
};

QTEST_GUILESS_MAIN(ImportOrdersTest)
#include "ImportOrdersTest.moc"
