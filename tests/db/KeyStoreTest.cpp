#include "db/KeyStore.h"

#include "db/Connection.h"
#include "tests/support/Records.h"

using namespace loopwright;

class KeyStoreTest : public QObject
{
    Q_OBJECT

    Database m_database = recordsInMemory();

    static PublicKey key(const QString &holder, char byte)
    {
        return {holder, QByteArray(32, byte), holder == issuerHolder ? "" : "endorser",
                holder == issuerHolder ? "" : "signature"};
    }
    Result<void> add(const PublicKey &key)
    {
        LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(m_database));
        LOOPWRIGHT_TRY(KeyStore::add(transaction, key, sampleEvent().at));
        return transaction.commit(sampleEvent(registerSubject(), "keys_made"));
    }

private slots:
    void init() { m_database = recordsInMemory(); }
    void theNewestIsInUse()
    {
        const KeyStore store(m_database);
        QVERIFY(!*store.newestOf(issuerHolder));
        for (const PublicKey &each :
             {key(issuerHolder, '1'), key("K7M4QP", '2'), key("K7M4QP", '3'), key("K7M4QR", '4')})
            QVERIFY_RESULT(add(each));
        QCOMPARE(**store.newestOf(issuerHolder), key(issuerHolder, '1'));
        QCOMPARE(**store.newestOf("K7M4QP"), key("K7M4QP", '3'));
        QCOMPARE(**store.find(key("K7M4QP", '2').fingerprint()), key("K7M4QP", '2'));
        QVERIFY(!*store.find(QString(32, '0')));
        QCOMPARE(store.all()->size(), 4u);
        QCOMPARE(store.all()->back().key, key("K7M4QR", '4'));
        QCOMPARE(store.all()->back().at, sampleEvent().at);
    }
    void knownOnce()
    {
        QVERIFY_RESULT(add(key("K7M4QP", '2')));
        const auto again = add(key("K7M4QR", '2'));
        QVERIFY(!again);
        QCOMPARE(again.error().code, ErrorCode::BadInput);
    }
    void keysAreOnlyAdded()
    {
        QVERIFY_RESULT(add(key("K7M4QP", '2')));
        for (const char *sql :
             {"UPDATE public_key SET holder = 'issuer'", "DELETE FROM public_key"})
            QVERIFY2(!m_database.connection().run(sql, "test"), sql);
    }
};

QTEST_GUILESS_MAIN(KeyStoreTest)
#include "KeyStoreTest.moc"
