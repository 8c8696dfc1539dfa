#include "db/CertificateStore.h"

#include "db/Connection.h"
#include "tests/support/StoredJobs.h"

using namespace loopwright;

class CertificateStoreTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();
    const QString m_number = "26-K7M4QP-00001-43";
    const Moment m_at = *Moment::parse(u"2026-03-04T12:00:00-06:00");

    Result<void> add(const QString &number, double secondsLater = 0)
    {
        return jobs::inTransaction(m_database, "circuit:C-77", [&](Transaction &t) {
            const auto before = CertificateStore(m_database).find(m_number);
            StoredCertificate certificate = **before;
            certificate.number = number;
            certificate.at = certificate.at.plusSeconds(secondsLater);
            return CertificateStore::add(t, certificate);
        });
    }

private slots:
    void init()
    {
        m_database = recordsInMemory();
        QVERIFY_RESULT(jobs::addWholeJob(m_database));
    }
    void findsWhatWasIssued()
    {
        const CertificateStore store(m_database);
        const auto found = store.find(m_number);
        QVERIFY_RESULT(found);
        QVERIFY(*found);
        QCOMPARE((*found)->content["certificate"].toString(), m_number);
        QCOMPARE((*found)->digest, digestOf((*found)->content));
        QCOMPARE((*found)->order, "A-1001");
        QCOMPARE((*found)->decision, (*DecisionStore(m_database).newestOf("A-1001"))->id);
        QCOMPARE(store.ofOrder("A-1001")->size(), 1u);
        QCOMPARE(*store.numberOfFile(QString(64, 'a')), std::optional(m_number));
        QCOMPARE(*store.numberOfFile(QString(64, 'b')), std::nullopt);
        QVERIFY(!*store.find("26-K7M4QP-00002-99"));
    }
    void aFurtherIssueIsACopy()
    {
        const auto issueAgain = [&](Transaction &t) -> Result<void> {
            const auto issue =
                CertificateStore::addIssue(t, m_number, QString(64, 'c'), "letter", m_at);
            if (!issue)
                return failure(issue.error());
            return issue->issue == 2 ? Result<void>()
                                     : failure(ErrorCode::Refused, "is no second issue");
        };
        QVERIFY_RESULT(jobs::inTransaction(m_database, "circuit:C-77", issueAgain));
        const auto issues = CertificateStore(m_database).issuesOf(m_number);
        QCOMPARE(issues->size(), 2u);
        QCOMPARE(issues->front().paper, "a4");
        QCOMPARE(issues->front().issue, 1);
        QCOMPARE(issues->back().fileSha256, QString(64, 'c'));
    }
    void aNumberIsGivenOutOnce()
    {
        const auto again = add(m_number);
        QVERIFY(!again);
        QCOMPARE(again.error().code, ErrorCode::BadInput);
        QVERIFY(!jobs::inTransaction(m_database, "circuit:C-77", [&](Transaction &t) {
            const auto issue = CertificateStore::addIssue(t, "none", QString(64, 'c'), "a4", m_at);
            return issue ? Result<void>() : Result<void>(failure(issue.error()));
        }));
    }
    void sequencesRunWithinYearAndStation()
    {
        QVERIFY_RESULT(add("26-K7M4QP-00041-99"));
        QVERIFY_RESULT(add("26-K7M4QR-00099-99"));
        QVERIFY_RESULT(add("27-K7M4QP-00005-99"));
        const CertificateStore store(m_database);
        QCOMPARE(*store.nextSequence(2026, "K7M4QP"), 42);
        QCOMPARE(*store.nextSequence(2026, "K7M4QR"), 100);
        QCOMPARE(*store.nextSequence(2026, "K7M4QS"), 1);
        QCOMPARE(*store.nextSequence(2027, "K7M4QP"), 6);
    }
    /// Of one station by the order in which it gave them out, though its clock was set back in
    /// between; of two stations by their clocks.
    void theLaterOneIsLast()
    {
        QVERIFY_RESULT(add("26-K7M4QP-00002-99", -3600));
        QVERIFY_RESULT(add("26-K7M4QR-00001-99", -60));
        QStringList numbers;
        const auto before = *CertificateStore(m_database).ofOrder("A-1001");
        for (const StoredCertificate &each : before)
            numbers << each.number;
        QCOMPARE(numbers, (QStringList{"26-K7M4QR-00001-99", m_number, "26-K7M4QP-00002-99"}));
        QVERIFY_RESULT(add("26-K7M4QR-00002-99", 60));
        QCOMPARE(CertificateStore(m_database).ofOrder("A-1001")->back().number,
                 "26-K7M4QR-00002-99");
    }
    void aPaperIsDueUntilItIsWritten()
    {
        const CertificateStore store(m_database);
        const auto change = [this](const auto &work) -> Result<void> {
            LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(m_database));
            LOOPWRIGHT_TRY(work(transaction));
            return transaction.commitDraft();
        };
        QVERIFY(!*store.dueOf(m_number));
        QVERIFY_RESULT(
            change([this](Transaction &t) { return CertificateStore::setDue(t, m_number, 1); }));
        const auto due = store.dueOf(m_number);
        QVERIFY_RESULT(due);
        QVERIFY(*due);
        QCOMPARE((*due)->issue, 1);
        QCOMPARE((*due)->fileSha256, QString(64, 'a'));
        QCOMPARE((*due)->paper, "a4");
        QVERIFY_RESULT(
            change([this](Transaction &t) { return CertificateStore::clearDue(t, m_number); }));
        QVERIFY(!*store.dueOf(m_number));
    }
    void certificatesAreOnlyAdded()
    {
        for (const char *table : {"certificate", "certificate_issue"}) {
            QVERIFY(!m_database.connection().run(QByteArray("DELETE FROM ") + table, "test"));
            QVERIFY(!m_database.connection().run(
                QByteArray("UPDATE ") + table + " SET at_offset = 1", "test"));
        }
    }
};

QTEST_GUILESS_MAIN(CertificateStoreTest)
#include "CertificateStoreTest.moc"
