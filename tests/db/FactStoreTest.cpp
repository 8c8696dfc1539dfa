#include "db/FactStore.h"

#include "db/SqliteConnection.h"
#include "tests/support/StoredJobs.h"

using namespace loopwright;
using jobs::changed;

class FactStoreTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();
    const DecisionInput m_job = jobs::input(jobs::briFields(), jobs::briFacts());

    Result<bool> add(const Fact &fact)
    {
        bool added = false;
        const auto done =
            jobs::inTransaction(m_database, "circuit:C-77", [&](Transaction &t) -> Result<void> {
                const auto result = FactStore::add(t, fact);
                if (!result)
                    return failure(result.error());
                added = *result;
                return {};
            });
        if (!done)
            return failure(done.error());
        return added;
    }
    static QStringList ids(const Result<std::vector<Fact>> &facts)
    {
        QStringList list;
        for (const Fact &fact : *facts)
            list << fact.id.right(2);
        return list;
    }
    static Fact factOf(int n, const QString &at, const QString &order = "A-1001",
                       QJsonObject body = {{"kind", "note"}, {"text", "seen"}})
    {
        body.insert("id", jobs::uuid(n));
        body.insert("at", at);
        body.insert("order", order);
        return *Fact::fromJson(body, "fact");
    }

private slots:
    void init()
    {
        m_database = recordsInMemory();
        QVERIFY_RESULT(jobs::addOffice(m_database));
        QVERIFY_RESULT(jobs::addOrder(m_database, m_job.order));
    }
    void keepsEveryFactOfAJob()
    {
        QVERIFY_RESULT(jobs::addFacts(m_database, m_job));
        const auto facts = FactStore(m_database).ofOrder("A-1001");
        QVERIFY_RESULT(facts);
        QCOMPARE(facts->size(), m_job.facts.size());
        for (std::size_t i = 0; i < facts->size(); ++i) {
            QCOMPARE(canonicalJson(facts->at(i).toJson()), canonicalJson(m_job.facts[i].toJson()));
            const auto found = FactStore(m_database).find(facts->at(i).id);
            QVERIFY_RESULT(found);
            QCOMPARE((*found)->digest(), m_job.facts[i].digest());
        }
        QVERIFY(!*FactStore(m_database).find(jobs::uuid(99)));
        QVERIFY(FactStore(m_database).ofOrder("A-9")->empty());
    }
    void oldestFirstWhateverTheOffsetAndTheFraction()
    {
        QVERIFY_RESULT(add(factOf(1, "2026-03-04T10:00:00.500-06:00")));
        QVERIFY_RESULT(add(factOf(2, "2026-03-04T16:00:00Z")));
        QVERIFY_RESULT(add(factOf(3, "2026-03-04T16:59:00+01:00")));
        QVERIFY_RESULT(add(factOf(4, "2026-03-04T10:00:01-06:00")));
        QCOMPARE(ids(FactStore(m_database).ofOrder("A-1001")),
                 (QStringList{"03", "02", "01", "04"}));
        const auto found = FactStore(m_database).find(jobs::uuid(1));
        QCOMPARE((*found)->at.text(), "2026-03-04T10:00:00.500-06:00");
    }
    void theSameFactTwiceAddsNothing()
    {
        const Fact fact = factOf(1, "2026-03-04T16:00:00Z");
        QCOMPARE(*add(fact), true);
        QCOMPARE(*add(fact), false);
        QCOMPARE(FactStore(m_database).ofOrder("A-1001")->size(), 1u);
    }
    void anIdIsForOneFact()
    {
        QVERIFY_RESULT(add(factOf(1, "2026-03-04T16:00:00Z")));
        const auto other = add(factOf(1, "2026-03-04T16:00:01Z"));
        QVERIFY(!other);
        QCOMPARE(other.error().code, ErrorCode::BadInput);
        QCOMPARE(other.error().text(), jobs::uuid(1) + ": is the id of another fact");
    }
    void anUnknownOrderIsNamed()
    {
        const auto done = add(factOf(1, "2026-03-04T16:00:00Z", "A-9"));
        QVERIFY(!done);
        QCOMPARE(done.error().code, ErrorCode::NotFound);
        QCOMPARE(done.error().message, "there is no order A-9");
    }
    void whatIsVoidedIsTold()
    {
        const auto voiding = [](int n) {
            return factOf(n, "2026-03-04T17:00:00Z", "A-1001",
                          {{"kind", "void"},
                           {"fact", jobs::uuid(1)},
                           {"because", "wrong pair"},
                           {"by", "B. Ode"}});
        };
        QVERIFY(!add(voiding(2))); // nothing to void
        QVERIFY_RESULT(add(factOf(1, "2026-03-04T16:00:00Z")));
        QVERIFY(!*FactStore(m_database).voidOf(jobs::uuid(1)));
        QVERIFY_RESULT(add(voiding(2)));
        const auto found = FactStore(m_database).voidOf(jobs::uuid(1));
        QVERIFY_RESULT(found);
        QCOMPARE((*found)->as<VoidFact>()->because, "wrong pair");
        // Another station may have struck it out too: both words stay, the first is told.
        QVERIFY_RESULT(add(voiding(3)));
        QCOMPARE(FactStore(m_database).voidOf(jobs::uuid(1)).value()->id, jobs::uuid(2));
    }
    void visitsAndSelfTestsAtOnePremises()
    {
        const ServiceOrder second = changed(
            jobs::briFields(),
            {{"order_number", "A-2"}, {"circuit_number", "C-77"}, {"premises", "12  MILL lane"}});
        const ServiceOrder elsewhere = changed(
            jobs::briFields(),
            {{"order_number", "A-3"}, {"circuit_number", "C-77"}, {"premises", "13 Mill Lane"}});
        QVERIFY_RESULT(jobs::addOrder(m_database, second));
        QVERIFY_RESULT(jobs::addOrder(m_database, elsewhere));
        const auto put = [this](int n, const char *order, QJsonObject body, const char *by = "K7",
                                const char *at = "2026-03-04T16:00:00Z") {
            body.insert("installer", by);
            QVERIFY_RESULT(add(factOf(n, at, order, body)));
        };
        const QJsonObject visit{{"kind", "visit"}};
        put(1, "A-1001", visit); // the order's own
        put(2, "A-2", visit);
        put(3, "A-2", {{"kind", "self_test"}, {"outcome", "passed"}}, "K7", "2026-03-04T15:00:00Z");
        put(4, "A-2", {{"kind", "note"}, {"text", "seen"}});
        put(5, "A-2", visit, "L2");
        put(6, "A-2", visit, "K7", "2026-03-07T16:00:00Z");
        put(7, "A-3", visit);
        put(8, "A-2", visit);
        put(9, "A-2", {{"kind", "void"}, {"fact", jobs::uuid(8)}, {"because", "x"}, {"by", "y"}});

        const FactStore store(m_database);
        const FactStore::Span day{QDate(2026, 3, 4), QDate(2026, 3, 4)};
        QCOMPARE(ids(store.visitsAtPremises(m_job.order, "K7", day)), (QStringList{"03", "02"}));
        QCOMPARE(ids(store.visitsAtPremises(m_job.order, "L2", day)), QStringList{"05"});
        QCOMPARE(ids(store.visitsAtPremises(m_job.order, day)), (QStringList{"02", "05"}));
        QCOMPARE(*store.otherOrdersAtPremises(m_job.order, day), QStringList{"A-2"});
        QCOMPARE(*store.otherOrdersAtPremises(m_job.order, {QDate(2026, 3, 9), QDate(2026, 3, 9)}),
                 QStringList());
    }
    void factsAreOnlyAdded()
    {
        QVERIFY_RESULT(add(factOf(1, "2026-03-04T16:00:00Z")));
        QList<QByteArray> edits{"UPDATE fact SET kind = 'x'", "DELETE FROM fact"};
        if (m_database.isFile()) // what else has that statement has no such way round a trigger
            edits << "REPLACE INTO fact SELECT id, uuid, service_order, 'x', at_utc, at_offset,"
                     " installer, instrument, voids, content, digest FROM fact";
        for (const QByteArray &sql : edits) {
            const auto done = editPast(m_database, sql);
            QVERIFY2(!done && done.error().message.contains("facts are only added"),
                     sql.constData());
        }
    }
    void aStoredFactThatCannotBeReadIsNamed()
    {
        QVERIFY_RESULT(add(factOf(1, "2026-03-04T16:00:00Z")));
        QVERIFY_RESULT(editPast(m_database, QByteArray("DROP TRIGGER fact_no_update") +
                                                (m_database.isFile() ? "" : " ON fact") +
                                                "; UPDATE fact SET content = '{\"id\":1}'"));
        const auto facts = FactStore(m_database).ofOrder("A-1001");
        QVERIFY(!facts);
        QCOMPARE(facts.error().code, ErrorCode::DatabaseTrouble);
        QVERIFY2(facts.error().message.contains(jobs::uuid(1)), qPrintable(facts.error().text()));
    }
};

QTEST_GUILESS_MAIN(FactStoreTest)
#include "FactStoreTest.moc"
