#include "db/DecisionStore.h"

#include "db/Connection.h"
#include "tests/support/StoredJobs.h"

using namespace loopwright;

class DecisionStoreTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();
    const DecisionInput m_job = jobs::input(jobs::briFields(), jobs::briFacts());

private slots:
    void init()
    {
        m_database = recordsInMemory();
        QVERIFY_RESULT(jobs::addWholeJob(m_database));
    }
    void keepsInputAndResultByteForByte()
    {
        const Decision decision = decide(m_job, jobs::limits());
        QCOMPARE(decision.outcome, OrderOutcome::Accepted);
        const auto found = DecisionStore(m_database).find(decision.id);
        QVERIFY_RESULT(found);
        QVERIFY(*found);
        QCOMPARE((*found)->input, canonicalJson(m_job.toJson()));
        QCOMPARE((*found)->result, canonicalJson(decision.toJson()));
        QCOMPARE((*found)->digest, decision.digest());
        QCOMPARE((*found)->order, "A-1001");
        const auto object = parseJsonObject((*found)->input, "input");
        QVERIFY_RESULT(object);
        const auto input = DecisionInput::fromJson(*object, "input");
        QVERIFY_RESULT(input);
        QCOMPARE(canonicalJson(decide(*input, jobs::limits()).toJson()), (*found)->result);
        QCOMPARE((*DecisionStore(m_database).newestOf("A-1001"))->id, decision.id);
    }
    void theSameDecisionTwiceAddsNothing()
    {
        const Decision decision = decide(m_job, jobs::limits());
        auto transaction = Transaction::begin(m_database);
        QVERIFY_RESULT(transaction);
        QCOMPARE(*DecisionStore::add(*transaction, decision, m_job, m_job.facts[0].at), false);
        Decision other = decision;
        other.outcome = OrderOutcome::NotAccepted;
        const auto refused = DecisionStore::add(*transaction, other, m_job, m_job.facts[0].at);
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::BadInput);
        QCOMPARE(DecisionStore(m_database).ofOrder("A-1001")->size(), 1u);
    }
    void theNewestIsTheOneThatWasAddedLast()
    {
        DecisionInput later = m_job;
        later.facts.pop_back();
        const Decision decision = decide(later, jobs::limits());
        QVERIFY_RESULT(
            jobs::inTransaction(m_database, "circuit:C-77", [&](Transaction &t) -> Result<void> {
                LOOPWRIGHT_TRY(DecisionStore::add(t, decision, later, m_job.facts[0].at));
                return {};
            }));
        QCOMPARE((*DecisionStore(m_database).newestOf("A-1001"))->id, decision.id);
        QCOMPARE(DecisionStore(m_database).ofOrder("A-1001")->size(), 2u);
        QVERIFY(!*DecisionStore(m_database).newestOf("A-9"));
    }
    void decisionsAreOnlyAdded()
    {
        QVERIFY(!m_database.connection().run("UPDATE decision SET outcome = 'accepted'", "test"));
        QVERIFY(!m_database.connection().run("DELETE FROM decision", "test"));
    }
};

QTEST_GUILESS_MAIN(DecisionStoreTest)
#include "DecisionStoreTest.moc"
