#include "db/MetaStore.h"

#include "db/Connection.h"
#include "tests/support/Records.h"

#include <QRegularExpression>
#include <QUuid>

using namespace loopwright;

class MetaStoreTest : public QObject
{
    Q_OBJECT
    /// A tag that nobody misreads.
    static QString stationOf(const Database &database)
    {
        static const QRegularExpression tag("\\A[A-HJKMNP-Z2-9]{6}\\z");
        const auto station = MetaStore(database).station();
        return station && tag.match(*station).hasMatch() ? *station : QString("none");
    }

private slots:
    void everyDatabaseHasItsOwnName()
    {
        QSet<QString> ids, stations;
        for (int i = 0; i < 20; ++i) {
            const Database database = recordsInMemory();
            const auto id = MetaStore(database).databaseId();
            QVERIFY_RESULT(id);
            const QUuid uuid = QUuid::fromString(*id);
            QCOMPARE(uuid.version(), QUuid::Random);
            QCOMPARE(uuid.variant(), QUuid::DCE);
            ids << *id;
            stations << stationOf(database);
        }
        QCOMPARE(ids.size(), 20);
        QCOMPARE(stations.size(), 20);
    }
    void aRestoredStationIsAnother()
    {
        Database database = recordsInMemory();
        for (int i = 0; i < 50; ++i) {
            const QString station = stationOf(database);
            auto transaction = Transaction::begin(database);
            QVERIFY_RESULT(transaction);
            QVERIFY_RESULT(MetaStore::drawStation(*transaction));
            QVERIFY_RESULT(transaction->commit(sampleEvent(registerSubject(), "restored")));
            QVERIFY(stationOf(database) != station);
        }
    }
    void aMissingValueIsTrouble()
    {
        const Database database = recordsInMemory();
        QVERIFY_RESULT(editPast(database, "DELETE FROM meta"));
        const auto id = MetaStore(database).databaseId();
        QVERIFY(!id);
        QCOMPARE(id.error().code, ErrorCode::DatabaseTrouble);
    }
};

QTEST_GUILESS_MAIN(MetaStoreTest)
#include "MetaStoreTest.moc"
