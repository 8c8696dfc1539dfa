#include "app/actions/Audit.h"

#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/History.h"
#include "db/OrderStore.h"
#include "tests/support/Flips.h"
#include "tests/support/SmallRecords.h"
#include "tests/support/Tamper.h"

#include <QGuiApplication>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class AuditTest : public QObject
{
    Q_OBJECT
    QTemporaryDir m_folder;
    QString m_path;
    QByteArray m_certificate;

    static QString told(Records &records)
    {
        const auto faults = auditDerived(records);
        if (!faults)
            return faults.error().text();
        QStringList said;
        for (const DerivedFault &fault : *faults)
            said << fault.subject + ": " + fault.what;
        return said.join("; ");
    }

private slots:
    void initTestCase()
    {
        m_certificate = makeSmallRecords(m_folder.filePath("original.sqlite"));
        auto records = office(m_folder.filePath("original.sqlite"));
        QCOMPARE(told(*records), QString());
        QCOMPARE(verifyHistory(*records)->broken.size(), 0u);
    }
    void init()
    {
        m_path = m_folder.filePath("r.sqlite");
        QFile::remove(m_path);
        QVERIFY(QFile::copy(m_folder.filePath("original.sqlite"), m_path));
    }
    void whatIsDerivedIsComputedAnew_data()
    {
        QTest::addColumn<QByteArray>("sql");
        QTest::addColumn<QString>("what");
        const auto row = [](const char *sql, const QByteArray &what) {
            QTest::newRow(sql) << QByteArray(sql) << QString::fromUtf8(what);
        };
        const char *open = "circuit:C-66: order A-0999: the board shows it otherwise than computed"
                           " anew (";
        const QByteArray shown(open);
        row("UPDATE order_state SET outcome = 'accepted' WHERE order_number = 'A-0999'",
            shown + "outcome)");
        row("UPDATE order_state SET stage = 'done', hazard = 1 WHERE order_number = 'A-0999'",
            shown + "hazard, stage)");
        row("UPDATE order_state SET search = 'x' WHERE order_number = 'A-0999'", shown + "search)");
        row("UPDATE order_state SET facts = 3, runs = 1, reason = '' WHERE order_number = 'A-0999'",
            shown + "facts, reason, runs)");
        row("UPDATE order_state SET taken_on = '2026-01-01' WHERE order_number = 'A-0999'",
            shown + "taken_on)");
        row("UPDATE order_state SET visits = 2 WHERE order_number = 'A-0999'", shown + "visits)");
        row("UPDATE order_state SET cable = 'x', variant = 'x' WHERE order_number = 'A-0999'",
            shown + "cable, variant)");
        row("UPDATE order_state SET accepted_on = '2026-03-01', visits = 2, taken_on = ''"
            " WHERE order_number = 'A-1001'",
            "order A-1001: the board shows it otherwise than computed anew (accepted_on, taken_on, "
            "visits)");
        row("UPDATE order_state SET customer = 'nobody' WHERE order_number = 'A-1001'",
            "order A-1001: the board shows it otherwise than computed anew (customer)");
        row("DELETE FROM order_state WHERE order_number = 'A-0999'",
            "order A-0999 is not on the board");
        row("DELETE FROM order_state", "order A-1001 is not on the board");
        row("UPDATE order_state SET criterion = 'run'; UPDATE board_tally SET orders = orders + 1",
            "counts of the board are not those of its orders");
        row("UPDATE order_state SET search = 'x' WHERE order_number = 'A-0999'",
            "search: the search index does not say what the rows say");
        row("UPDATE service_order SET premises_key = 'x' WHERE order_number = 'A-0999'",
            "order A-0999: its keys stand otherwise than computed anew (premises_key)");
        row("UPDATE service_order SET pair_key = 'x', pair_identity = 'X'"
            " WHERE order_number = 'A-0999'",
            "(pair_identity, pair_key)");
        row("UPDATE service_order SET office = 9999 WHERE order_number = 'A-0999'", "(office)");
        row("UPDATE service_order SET circuit = 9999 WHERE order_number = 'A-0999'", "(circuit)");
        row("UPDATE order_terminal SET dn_key = 'x', spid = '1' WHERE number = 2",
            "(dn_key of terminal 2, spid of terminal 2)");
        row("DELETE FROM order_terminal WHERE number = 2", "spid of terminal 2");
        row("UPDATE assignment SET value = 'x' WHERE kind = 'pair'", "which does not ask for it");
        row("UPDATE assignment SET state = 'released' WHERE kind = 'pair'",
            "pair 9 of order A-0999 is not assigned");
        row("DELETE FROM assignment WHERE kind = 'spid'", "is not assigned");
        row("UPDATE meta SET value = '1999-1' WHERE key = 'board_limits'",
            "meta: the board is said to be decided by limit set 1999-1, which is not there");
    }
    void whatIsDerivedIsComputedAnew()
    {
        QFETCH(QByteArray, sql);
        QFETCH(QString, what);
        tamper(m_path, sql);
        const auto records = Records::open(m_path);
        QVERIFY2(records, records ? "" : qPrintable(records.error().text()));
        const QString said = told(**records);
        QVERIFY2(said.contains(what), qPrintable(said));
        QVERIFY(!verifyHistory(**records)->broken.empty()); // the row is sealed besides
    }
    void aRankIsHeldAgainstTheHistory()
    {
        {
            auto records = office(m_path);
            const auto stored = OrderStore(records->database()).get("A-2001");
            QVERIFY(stored);
            auto transaction = Transaction::begin(records->database());
            QVERIFY(transaction);
            QVERIFY(OrderStore::setStatus(*transaction, "A-2001", OrderStatus::Completed));
            QVERIFY(refreshState(*records, *transaction, "A-2001"));
            QVERIFY(
                transaction->commit(orderEvent(*records, stored->order, "order_completed", {})));
            QCOMPARE(told(*records), QString());
        }
        tamper(m_path, "UPDATE service_order SET completed_rank = 3 - completed_rank + 10"
                       " WHERE completed_rank IS NOT NULL");
        const auto records = Records::open(m_path);
        QVERIFY(records);
        QVERIFY2(told(**records).contains("was not completed in the order of its rank"),
                 qPrintable(told(**records)));
    }
    void aCertificateBearsTheHeadOfItsTime()
    {
        const auto told = witnessesIn(m_certificate, "c.pdf");
        QVERIFY2(told, told ? "" : qPrintable(told.error().text()));
        QCOMPARE(told->heads.size(), 1u);
        QCOMPARE(told->certificates.size(), 1u);
        const LogHead head = told->heads.front().head;
        auto records = Records::open(m_path);
        QVERIFY(records);
        QVERIFY(head.position < logHead(**records)->head.position);
        const auto whole = verifyHistory(**records, {}, *told);
        QCOMPARE(whole->broken.size(), 0u);
        QCOMPARE(whole->witnessed[0].what,
                 QString("event %1 of the log of %2").arg(head.position).arg(head.station));
        QVERIFY(whole->witnessed[0].signedBy.startsWith("station " + head.station));
        QVERIFY(whole->witnessed.back().what.startsWith("certificate 26-" + head.station));
        // All that came since is cut off, and more: only the certificate can tell.
        records->reset();
        tamper(m_path, QByteArray("DELETE FROM event WHERE log_position >= ") +
                           QByteArray::number(head.position));
        records = Records::open(m_path);
        bool named = false;
        const auto verdict = verifyHistory(**records, {}, *told);
        for (const BrokenLink &link : verdict->broken)
            named = named || link.what.contains("the log is shorter now");
        QVERIFY(named);
    }
    void filesThatHoldNoHead_data()
    {
        QTest::addColumn<QByteArray>("file");
        for (const char *file : {"", "[]", "{}", "hello", "[{\"station\":\"ABCDEF\"}]", "%PDF-1.4",
                                 "{\"station\":\"ABCDEF\",\"position\":3,\"digest\":\"ab\","
                                 "\"time\":\"2026-03-05T12:00:00Z\"}"})
            QTest::newRow(file) << QByteArray(file);
    }
    void filesThatHoldNoHead()
    {
        QFETCH(QByteArray, file);
        const auto heads = witnessesIn(file, "f");
        QVERIFY(!heads);
        QCOMPARE(heads.error().code, ErrorCode::BadInput);
    }
    // Between them verify and audit find every flipped bit that says something; every byte in turn
    // is the long run's, soak.flips.
    void flippedBitsAreFound()
    {
        constexpr qint64 stride = 211, header = 100; // of the header every byte
        flips::Flipper flipper(m_path, m_folder.filePath("flipped.sqlite"));
        int found = 0, harmless = 0;
        QStringList missed;
        for (qint64 offset = 0; offset < flipper.size(); offset += offset < header ? 1 : stride) {
            const flips::Flip flip = flipper.flip(offset);
            found += flip == flips::Flip::Found;
            harmless += flip == flips::Flip::SaysNothing;
            if (flip == flips::Flip::Missed)
                missed << QString::number(offset);
        }
        qInfo("%d found, %d where nothing is said", found, harmless);
        QVERIFY2(missed.isEmpty(), qPrintable(missed.join(' ')));
        QVERIFY(found > 100 && harmless > 100);
    }
    void severalHeadsInOneFile()
    {
        auto records = Records::open(m_path);
        QVERIFY(records);
        const auto head = logHead(**records);
        QVERIFY(head);
        const QByteArray file = canonicalJson(QJsonArray{head->toJson(), head->toJson()});
        QCOMPARE(witnessesIn(file, "f")->heads, (std::vector<SignedHead>{*head, *head}));
        QVERIFY(head->head.text().startsWith("Loopwright log\nstation "));
        QVERIFY(head->head.text().contains(head->head.digest.toUtf8()));
    }
};

QTEST_MAIN(AuditTest)
#include "AuditTest.moc"
