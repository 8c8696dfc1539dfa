#include "db/DraftStore.h"

#include "tests/support/Records.h"

using namespace loopwright;

class DraftStoreTest : public QObject
{
    Q_OBJECT
private slots:
    void comesAndGoes()
    {
        Database database = recordsInMemory();
        const auto change = [&](auto work) {
            auto transaction = Transaction::begin(database);
            QVERIFY_RESULT(transaction);
            QVERIFY_RESULT(work(*transaction));
            QVERIFY_RESULT(transaction->commitDraft());
        };
        change([](Transaction &t) -> Result<void> {
            LOOPWRIGHT_TRY(DraftStore::put(t, "A-1", "loop", {{"loss_db", "28"}}));
            LOOPWRIGHT_TRY(DraftStore::put(t, "A-1", "loop", {{"loss_db", "28.4"}}));
            LOOPWRIGHT_TRY(DraftStore::put(t, "A-1", "calls", {}));
            return DraftStore::put(t, "", "order", {{"customer", "Q"}});
        });
        const DraftStore store(database);
        QCOMPARE(*store.find("A-1", "loop"), std::optional(QJsonObject{{"loss_db", "28.4"}}));
        QCOMPARE(store.ofOrder("A-1")->keys(), (QStringList{"calls", "loop"}));
        QCOMPARE(store.ofOrder("")->keys(), QStringList{"order"});
        change([](Transaction &t) { return DraftStore::remove(t, "A-1", "loop"); });
        change([](Transaction &t) { return DraftStore::remove(t, "A-1", "loop"); });
        QCOMPARE(*store.find("A-1", "loop"), std::nullopt);
        QCOMPARE(store.ofOrder("A-1")->keys(), QStringList{"calls"});
    }
    void goesWithTheFactThatItBecame()
    {
        Database database = recordsInMemory();
        auto transaction = Transaction::begin(database);
        QVERIFY_RESULT(transaction);
        QVERIFY_RESULT(DraftStore::put(*transaction, "A-1", "loop", {}));
        QVERIFY_RESULT(DraftStore::remove(*transaction, "A-1", "loop"));
        QVERIFY_RESULT(transaction->commit(sampleEvent(circuitSubject("C-1"))));
        QVERIFY(DraftStore(database).ofOrder("A-1")->isEmpty());
    }
};

QTEST_GUILESS_MAIN(DraftStoreTest)
#include "DraftStoreTest.moc"
