#include "db/EventStore.h"

#include "db/Connection.h"
#include "tests/support/Records.h"

using namespace loopwright;

class EventStoreTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();

    void commit(const QString &subject, const QString &order, const QString &kind)
    {
        auto transaction = Transaction::begin(m_database);
        QVERIFY_RESULT(transaction);
        Event event = sampleEvent(subject, kind);
        event.order = order;
        event.detail = {{"n", 1.5}, {"text", "Łódź"}};
        QVERIFY_RESULT(transaction->commit(event));
    }
    static QStringList kinds(const Result<std::vector<Event>> &events)
    {
        QStringList list;
        for (const Event &event : *events)
            list << event.kind;
        return list;
    }

private slots:
    void readsTheChainsAsTheyWereWritten()
    {
        commit("circuit:C-1", "A-1", "one");
        commit("register", "", "two");
        commit("circuit:C-2", "A-2", "three");
        commit("circuit:C-1", "A-1", "four");
        commit("circuit:C-2", "A-1", "five"); // the order was moved to another circuit
        const EventStore store(m_database);
        QCOMPARE(*store.count(), 5);
        QCOMPARE(kinds(store.ofCircuit("C-1")), (QStringList{"one", "four"}));
        QCOMPARE(kinds(store.ofOrder("A-1")), (QStringList{"one", "four", "five"}));
        QCOMPARE(kinds(store.ofOrder("")), QStringList());
        const auto events = store.ofCircuit("C-1");
        const auto chain = store.chainOf("circuit:C-1");
        QVERIFY_RESULT(chain);
        QCOMPARE(chain->length(), 2);
        HistoryChain walk("circuit:C-1");
        for (const Event &event : *events)
            QCOMPARE(walk.follow(event), std::nullopt);
        QCOMPARE(walk.head(), chain->head());
        QCOMPARE(events->front().by, "A. Rivera");
        QCOMPARE(events->front().at.text(), "2026-03-04T09:15:00-06:00");
        QCOMPARE(events->front().detail["text"].toString(), "Łódź");
        QCOMPARE(store.chainOf("circuit:C-9")->length(), 0);
    }
    void eventsAreOnlyAdded()
    {
        commit("circuit:C-1", "A-1", "one");
        QVERIFY(!m_database.connection().run("UPDATE event SET kind = 'x'", "test"));
        QVERIFY(!m_database.connection().run("DELETE FROM event", "test"));
    }
};

QTEST_GUILESS_MAIN(EventStoreTest)
#include "EventStoreTest.moc"
